"""Valve spring.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class ValveSpringLimits(TypedDict, total=False):
    """Limits of your own, by check: valve-spring.

    Attributes
    ----------
    seat_load : LimitAsked
        load at the installed height; only the maker's range judges it
    seat_load_of_nominal : LimitAsked
        load at the installed height against the nominal one
    open_load : LimitAsked
        load at full lift; only the maker's range judges it
    spring_rate : LimitAsked
        rate of the spring; only the maker's range judges it
    coil_bind_margin : LimitAsked
        room before coil bind at full lift
    free_length : LimitAsked
        free length; only the maker's limit judges it
    free_length_loss : LimitAsked
        free length lost
    spring_lean : LimitAsked
        lean of the spring
    """

    seat_load: LimitAsked
    seat_load_of_nominal: LimitAsked
    open_load: LimitAsked
    spring_rate: LimitAsked
    coil_bind_margin: LimitAsked
    free_length: LimitAsked
    free_length_loss: LimitAsked
    spring_lean: LimitAsked


@dataclass(frozen=True, kw_only=True)
class ValveSpringResult:
    """None is what cannot be known.

    Attributes
    ----------
    rate : Quantity | None
        rate between the two loads
    seat_load : Quantity | None
        load at the installed height
    seat_load_of_nominal : Quantity | None
        load at the installed height, share of the nominal one
    open_length : Quantity | None
        length at full lift
    open_load : Quantity | None
        load at full lift
    coil_bind_margin : Quantity | None
        room that all coils together keep at full lift
    free_length_implied : Quantity | None
        free length that the two loads imply
    free_length_loss : Quantity | None
        free length lost, share of the new one
    lean_angle : Quantity | None
        lean of the spring
    spring_index : float | None
        mean coil diameter over wire
    rate_from_wire : Quantity | None
        rate that the wire gives, as a cross-check
    """

    rate: Quantity | None = None
    seat_load: Quantity | None = None
    seat_load_of_nominal: Quantity | None = None
    open_length: Quantity | None = None
    open_load: Quantity | None = None
    coil_bind_margin: Quantity | None = None
    free_length_implied: Quantity | None = None
    free_length_loss: Quantity | None = None
    lean_angle: Quantity | None = None
    spring_index: float | None = None
    rate_from_wire: Quantity | None = None


class ValveSpring(Calculation[ValveSpringResult]):
    """Valve spring.

    Rate, loads valve shut and open, room before coil bind, free length and lean of one valve
    spring, with the rate that its wire gives as a cross-check. Nested springs are measured one by
    one; a progressive spring goes in with its close coils to the head.
    """

    NAME = "valve-spring"
    RESULT = ValveSpringResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "load_1": "quantity",
        "length_1": "quantity",
        "load_2": "quantity",
        "length_2": "quantity",
        "installed_height": "quantity",
        "valve_lift": "quantity",
        "coil_bind_length": "quantity",
        "free_length": "quantity",
        "free_length_new": "quantity",
        "lean": "quantity",
        "nominal_seat_load": "quantity",
        "wire": "quantity",
        "mean_coil_diameter": "quantity",
        "shear_modulus": "quantity",
        "limits": {
            "seat_load": {"low": "quantity", "high": "quantity"},
            "seat_load_of_nominal": {"low": "quantity", "high": "quantity"},
            "open_load": {"low": "quantity", "high": "quantity"},
            "spring_rate": {"low": "quantity", "high": "quantity"},
            "coil_bind_margin": {"low": "quantity", "high": "quantity"},
            "free_length": {"low": "quantity", "high": "quantity"},
            "free_length_loss": {"low": "quantity", "high": "quantity"},
            "spring_lean": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        load_1: QuantityLike | None = None,
        length_1: QuantityLike | None = None,
        load_2: QuantityLike | None = None,
        length_2: QuantityLike | None = None,
        installed_height: QuantityLike | None = None,
        valve_lift: QuantityLike | None = None,
        coil_bind_length: QuantityLike | None = None,
        free_length: QuantityLike | None = None,
        free_length_new: QuantityLike | None = None,
        lean: QuantityLike | None = None,
        nominal_seat_load: QuantityLike | None = None,
        wire: QuantityLike | None = None,
        mean_coil_diameter: QuantityLike | None = None,
        active_coils: float | None = None,
        shear_modulus: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: ValveSpringLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[ValveSpringResult]:
        """Ask ``valve-spring`` one question.

        Needed: ``load_1`` or ``installed_height`` or ``free_length`` or ``free_length`` or
        ``free_length`` or ``wire``.

        Parameters
        ----------
        load_1 : QuantityLike, optional
            smaller load, near the installed height
        length_1 : QuantityLike, optional
            length under the smaller load
        load_2 : QuantityLike, optional
            larger load, near full lift
        length_2 : QuantityLike, optional
            length under the larger load
        installed_height : QuantityLike, optional
            installed height, valve shut; it changes with sink and shims
        valve_lift : QuantityLike, optional
            full lift
        coil_bind_length : QuantityLike, optional
            length with all coils shut
        free_length : QuantityLike, optional
            free length
        free_length_new : QuantityLike, optional
            free length of a new spring
        lean : QuantityLike, optional
            top coil off a square, the spring standing and turned
        nominal_seat_load : QuantityLike, optional
            the maker's load at the installed height
        wire : QuantityLike, optional
            diameter of the wire
        mean_coil_diameter : QuantityLike, optional
            mean diameter of the coils: outside less wire
        active_coils : float, optional
            coils that move: not those that lie on the ends
        shear_modulus : QuantityLike, optional
            shear modulus of the wire
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : ValveSpringLimits, optional
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
            "load_1": load_1,
            "length_1": length_1,
            "load_2": load_2,
            "length_2": length_2,
            "installed_height": installed_height,
            "valve_lift": valve_lift,
            "coil_bind_length": coil_bind_length,
            "free_length": free_length,
            "free_length_new": free_length_new,
            "lean": lean,
            "nominal_seat_load": nominal_seat_load,
            "wire": wire,
            "mean_coil_diameter": mean_coil_diameter,
            "active_coils": active_coils,
            "shear_modulus": shear_modulus,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
