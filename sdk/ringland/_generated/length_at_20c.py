"""Length at 20 °C.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


@dataclass(frozen=True, kw_only=True)
class LengthAt20cResult:
    """None is what cannot be known.

    Attributes
    ----------
    bore_alpha_used : Quantity | None
        expansion coefficient of the bore, as used
    bore_at_20c : Quantity | None
        bore at 20 °C
    piston_alpha_used : Quantity | None
        expansion coefficient of the piston, as used
    piston_at_20c : Quantity | None
        piston at 20 °C
    apparent_clearance : Quantity | None
        diametral clearance as it seems, temperatures left out
    corrected_clearance : Quantity | None
        diametral clearance at 20 °C
    error_avoided : Quantity | None
        error avoided: the clearance as it seems less that at 20 °C
    """

    bore_alpha_used: Quantity | None = None
    bore_at_20c: Quantity | None = None
    piston_alpha_used: Quantity | None = None
    piston_at_20c: Quantity | None = None
    apparent_clearance: Quantity | None = None
    corrected_clearance: Quantity | None = None
    error_avoided: Quantity | None = None


class LengthAt20c(Calculation[LengthAt20cResult]):
    """Length at 20 °C.

    A bore, and the piston in it, brought to 20 °C; the clearance as it seems and as it is.
    """

    NAME = "length-at-20c"
    RESULT = LengthAt20cResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "bore_temperature": "quantity",
        "bore_alpha": "quantity",
        "piston_size": "quantity",
        "piston_temperature": "quantity",
        "piston_alpha": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        bore_temperature: QuantityLike,
        bore_alpha: QuantityLike | None = None,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
        | None = None,
        piston_size: QuantityLike | None = None,
        piston_temperature: QuantityLike | None = None,
        piston_alpha: QuantityLike | None = None,
        piston_material: Literal[
            "grey_iron",
            "steel",
            "piston_forged_low_silicon",
            "piston_cast_eutectic",
            "piston_high_silicon",
            "aluminium_cylinder",
            "iron_sleeve_in_aluminium",
        ]
        | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[LengthAt20cResult]:
        """Ask ``length-at-20c`` one question.

        Parameters
        ----------
        bore : QuantityLike
            bore, or another length or diameter, as measured
        bore_temperature : QuantityLike
            temperature of the part with the bore
        bore_alpha : QuantityLike, optional
            expansion coefficient of the bore; wins over its kind
        bore_kind : str, optional
            kind of bore; gives the expansion coefficient where none is given (iron: iron cylinder;
            iron_sleeve_in_aluminium: iron sleeve in an aluminium cylinder; plated_aluminium: plated
            aluminium; bare_silicon_aluminium: bare silicon aluminium, no plating; chromed:
            aluminium, bore hard-chromed; unknown: not known)
        piston_size : QuantityLike, optional
            piston, or another part in that bore, as measured
        piston_temperature : QuantityLike, optional
            temperature of the piston
        piston_alpha : QuantityLike, optional
            expansion coefficient of the piston; wins over its material
        piston_material : str, optional
            material of the piston; gives the expansion coefficient where none is given (grey_iron:
            grey iron; steel: steel; piston_forged_low_silicon: low-silicon forged piston alloy;
            piston_cast_eutectic: eutectic cast piston alloy; piston_high_silicon: high-silicon
            piston alloy; aluminium_cylinder: aluminium cylinder, plated, chromed or bare;
            iron_sleeve_in_aluminium: iron sleeve cast in aluminium, effective)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "bore": bore,
            "bore_temperature": bore_temperature,
            "bore_alpha": bore_alpha,
            "bore_kind": bore_kind,
            "piston_size": piston_size,
            "piston_temperature": piston_temperature,
            "piston_alpha": piston_alpha,
            "piston_material": piston_material,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
