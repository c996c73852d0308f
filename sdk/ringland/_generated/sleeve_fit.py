"""Sleeve interference and heating.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class SleeveFitLimits(TypedDict, total=False):
    """Limits of your own, by check: sleeve-fit.

    Attributes
    ----------
    sleeve_interference : LimitAsked
        interference of the sleeve at 20 °C
    sleeve_heating : LimitAsked
        temperature of the cylinder
    sleeve_interference_left : LimitAsked
        interference left when running
    """

    sleeve_interference: LimitAsked
    sleeve_heating: LimitAsked
    sleeve_interference_left: LimitAsked


@dataclass(frozen=True, kw_only=True)
class SleeveFitResult:
    """None is what cannot be known.

    Attributes
    ----------
    interference : Quantity
        interference at 20 °C, diametral
    interference_share : float
        interference as a share of the bore
    heat_cylinder_to : Quantity | None
        temperature at which the cylinder drops over the sleeve; it cools while it is handled, so
        add 20 to 40 K
    cylinder_alpha_used : Quantity
        expansion of the cylinder that was used
    sleeve_alpha_used : Quantity
        expansion of the sleeve that was used
    interference_left : Quantity | None
        interference left at the running temperature, diametral; negative: the sleeve is loose
    interference_wanted : Quantity | None
        least interference for a sleeve that its fit alone holds: what running takes off, and what
        must be left
    """

    interference: Quantity
    interference_share: float
    heat_cylinder_to: Quantity | None = None
    cylinder_alpha_used: Quantity
    sleeve_alpha_used: Quantity
    interference_left: Quantity | None = None
    interference_wanted: Quantity | None = None


class SleeveFit(Calculation[SleeveFitResult]):
    """Sleeve interference and heating.

    Interference of a sleeve cold and running, and how hot the cylinder must be to take it. A jacket
    hotter than its sleeve holds it worse than shown. The sleeve closes in when pressed: bore it
    last, cut the deck after. Seat the flange; line up the port windows of a two-stroke before it
    grips.
    """

    NAME = "sleeve-fit"
    RESULT = SleeveFitResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "cylinder_bore": "quantity",
        "sleeve_od": "quantity",
        "drop_in_clearance": "quantity",
        "sleeve_temperature": "quantity",
        "running_temperature": "quantity",
        "cylinder_alpha": "quantity",
        "sleeve_alpha": "quantity",
        "limits": {
            "sleeve_interference": {"low": "quantity", "high": "quantity"},
            "sleeve_heating": {"low": "quantity", "high": "quantity"},
            "sleeve_interference_left": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        cylinder_bore: QuantityLike,
        sleeve_od: QuantityLike,
        drop_in_clearance: QuantityLike | None = None,
        held_by: Literal["fit_alone", "flange_or_head"] | None = None,
        sleeve_temperature: QuantityLike | None = None,
        running_temperature: QuantityLike | None = None,
        cylinder_alpha: QuantityLike | None = None,
        sleeve_alpha: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: SleeveFitLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[SleeveFitResult]:
        """Ask ``sleeve-fit`` one question.

        Parameters
        ----------
        cylinder_bore : QuantityLike
            bore of the cylinder that takes the sleeve, at 20 °C
        sleeve_od : QuantityLike
            outside of the sleeve, at 20 °C
        drop_in_clearance : QuantityLike, optional
            room wanted around the sleeve while it drops in, diametral (default 0.05 mm)
        held_by : str, optional
            what holds the sleeve in place (fit_alone: no flange and nothing clamps it: the fit
            alone holds the sleeve; flange_or_head: a flange, or the head clamped on it, holds the
            sleeve)
        sleeve_temperature : QuantityLike, optional
            temperature of the sleeve as it goes in; below 0 when chilled (default 20.0 degC)
        running_temperature : QuantityLike, optional
            temperature of sleeve and jacket when running, taken as one
        cylinder_alpha : QuantityLike, optional
            expansion of the cylinder; aluminium where not given
        sleeve_alpha : QuantityLike, optional
            expansion of the sleeve; grey iron where not given
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : SleeveFitLimits, optional
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
            "cylinder_bore": cylinder_bore,
            "sleeve_od": sleeve_od,
            "drop_in_clearance": drop_in_clearance,
            "held_by": held_by,
            "sleeve_temperature": sleeve_temperature,
            "running_temperature": running_temperature,
            "cylinder_alpha": cylinder_alpha,
            "sleeve_alpha": sleeve_alpha,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
