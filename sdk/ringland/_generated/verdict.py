"""Combined uncertainty and three-way verdict.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Standing, Units
from ringland._types import Quantity, QuantityLike, Readings


class VerdictPart(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    label : str
        what this part is
    max_permissible_error : QuantityLike
        maximum error of the instrument, ± (rectangular)
    resolution : QuantityLike
        step of the instrument's scale
    standard_deviation : QuantityLike
        standard deviation of one reading, the shop's own over many
    readings_averaged : float
        readings averaged, for a standard deviation (default 1.0)
    of_a_difference : Literal['yes', 'no']
        whether a resolution counts twice, as in a difference of two readings (yes: a difference of
        two readings; no: one reading) (default no)
    temperature_uncertainty : QuantityLike
        expanded uncertainty (k = 2) of the part's temperature
    alpha : QuantityLike
        expansion of the part, with its temperature uncertainty
    size : QuantityLike
        measured size of the part, with its temperature uncertainty
    """

    label: NotRequired[str]
    max_permissible_error: NotRequired[QuantityLike]
    resolution: NotRequired[QuantityLike]
    standard_deviation: NotRequired[QuantityLike]
    readings_averaged: NotRequired[float]
    of_a_difference: NotRequired[Literal["yes", "no"]]
    temperature_uncertainty: NotRequired[QuantityLike]
    alpha: NotRequired[QuantityLike]
    size: NotRequired[QuantityLike]


class VerdictLimits(TypedDict, total=False):
    """Limits of your own, by check: verdict.

    Attributes
    ----------
    value_within : RatioLimitAsked
        value within its limits
    """

    value_within: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class VerdictResult:
    """None is what cannot be known.

    Attributes
    ----------
    judged_value : Quantity
        the value judged, gauge or absolute as its limits are
    combined_uncertainty : Quantity | None
        combined standard uncertainty of the parts
    expanded_uncertainty : Quantity | None
        expanded uncertainty of the parts, k = 2
    part_uncertainties : Readings | None
        standard uncertainty of each part
    """

    judged_value: Quantity
    combined_uncertainty: Quantity | None = None
    expanded_uncertainty: Quantity | None = None
    part_uncertainties: Readings | None = None


class Verdict(Calculation[VerdictResult]):
    """Combined uncertainty and three-way verdict.

    A value against its limits: pass, fail, or too close to call, and how to settle it.
    """

    NAME = "verdict"
    RESULT = VerdictResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "value": "quantity",
        "low": "quantity",
        "high": "quantity",
        "parts": [
            {
                "max_permissible_error": "quantity",
                "resolution": "quantity",
                "standard_deviation": "quantity",
                "temperature_uncertainty": "quantity",
                "alpha": "quantity",
                "size": "quantity",
            }
        ],
        "air_pressure": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        value: QuantityLike,
        low: QuantityLike | None = None,
        high: QuantityLike | None = None,
        standing: Standing | None = None,
        source: str | None = None,
        parts: Sequence[VerdictPart] | None = None,
        kind: Literal[
            "length",
            "altitude",
            "area",
            "volume",
            "liquid",
            "fuel",
            "pressure_gauge",
            "pressure_absolute",
            "pressure_difference",
            "stress",
            "torque",
            "force",
            "temperature",
            "temperature_difference",
            "mass",
            "spring_rate",
            "rotation",
            "velocity",
            "angle",
            "expansion",
            "voltage",
            "percent",
        ]
        | None = None,
        air_pressure: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: VerdictLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[VerdictResult]:
        """Ask ``verdict`` one question.

        Needed: ``low`` or ``high``.

        Parameters
        ----------
        value : QuantityLike
            the value judged
        low : QuantityLike, optional
            lower limit; a limit takes no uncertainty
        high : QuantityLike, optional
            upper limit; a limit takes no uncertainty
        standing : Standing, optional
            standing of the limits (maker: the maker's figure for the part in hand; it always wins;
            common_practice: what shops use when no maker's figure is at hand; no published source;
            standard: a published standard or handbook, named as the source; computed: follows from
            the formula alone) (default maker)
        source : str, optional
            source of the limits
        parts : Sequence[VerdictPart], optional
            parts of the uncertainty, instead of one stated with the value
        kind : str, optional
            kind of quantity, where the units leave it open (degC as a difference, say) (length:
            length; altitude: altitude; area: area; volume: volume; liquid: liquid; fuel: fuel;
            pressure_gauge: pressure gauge; pressure_absolute: pressure absolute;
            pressure_difference: pressure difference; stress: stress; torque: torque; force: force;
            temperature: temperature; temperature_difference: temperature difference; mass: mass;
            spring_rate: spring rate; rotation: rotation; velocity: velocity; angle: angle;
            expansion: expansion; voltage: voltage; percent: percent)
        air_pressure : QuantityLike, optional
            air pressure on the spot, between a gauge value and an absolute limit, or the other way;
            101.325 kPa where none is given
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : VerdictLimits, optional
            limits by check; these win over the common-practice ones
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "value": value,
            "low": low,
            "high": high,
            "standing": standing,
            "source": source,
            "parts": parts,
            "kind": kind,
            "air_pressure": air_pressure,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
