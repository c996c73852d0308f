"""Piston-pin fits.

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


class PinFitsLimits(TypedDict, total=False):
    """Limits of your own, by check: pin-fits.

    Attributes
    ----------
    pin_in_piston : LimitAsked
        pin in the piston
    pin_in_small_end : LimitAsked
        pin in the small end
    """

    pin_in_piston: LimitAsked
    pin_in_small_end: LimitAsked


@dataclass(frozen=True, kw_only=True)
class PinFitsResult:
    """None is what cannot be known.

    Attributes
    ----------
    pin_piston : Quantity | None
        clearance of the unworn pin in the piston
    worst_piston : Quantity | None
        clearance of the pin's smallest diameter in the piston
    pin_small_end : Quantity | None
        clearance of the unworn pin in the small end; below zero for a press fit
    worst_small_end : Quantity | None
        clearance of the pin's smallest diameter in the small end
    pin_wear_step : Quantity | None
        step worn into the pin
    """

    pin_piston: Quantity | None = None
    worst_piston: Quantity | None = None
    pin_small_end: Quantity | None = None
    worst_small_end: Quantity | None = None
    pin_wear_step: Quantity | None = None


class PinFits(Calculation[PinFitsResult]):
    """Piston-pin fits.

    Clearance of the piston pin in the piston and in the small end, and the step worn into it. All
    parts cold, on two axes. Pin clips are never used twice.
    """

    NAME = "pin-fits"
    RESULT = PinFitsResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "pin": "quantity",
        "pin_worn": "quantity",
        "piston_pin_bore": "quantity",
        "small_end_bore": "quantity",
        "limits": {
            "pin_in_piston": {"low": "quantity", "high": "quantity"},
            "pin_in_small_end": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        pin: QuantityLike,
        pin_worn: QuantityLike | None = None,
        piston_pin_bore: QuantityLike | None = None,
        small_end_bore: QuantityLike | None = None,
        small_end: Literal["plain", "press_fit", "needle"] | None = None,
        heat_marks: bool | None = None,
        condition: Literal["new", "used"] | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: PinFitsLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[PinFitsResult]:
        """Ask ``pin-fits`` one question.

        Needed: ``piston_pin_bore`` or ``small_end_bore`` or ``pin_worn``.

        Parameters
        ----------
        pin : QuantityLike
            piston pin where nothing rubs
        pin_worn : QuantityLike, optional
            smallest diameter of the pin: centre and both ends, two axes
        piston_pin_bore : QuantityLike, optional
            pin bore of the piston, the larger of two axes
        small_end_bore : QuantityLike, optional
            bore of the small end, the larger of two axes
        small_end : str, optional
            kind of small end (plain: plain or bushed: the pin turns in it; press_fit: press fit:
            the pin is held by the rod; needle: needle bearing) (default plain)
        heat_marks : bool, optional
            the pin shows blue heat marks
        condition : str, optional
            which limits apply (new: new parts, as they go together; used: used parts against their
            service limit) (default used)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : PinFitsLimits, optional
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
            "pin": pin,
            "pin_worn": pin_worn,
            "piston_pin_bore": piston_pin_bore,
            "small_end_bore": small_end_bore,
            "small_end": small_end,
            "heat_marks": heat_marks,
            "condition": condition,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
