"""Valve stem to guide clearance.

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
from ringland._types import Quantity, QuantityLike, ReadingsLike


class GuideClearanceLimits(TypedDict, total=False):
    """Limits of your own, by check: guide-clearance.

    Attributes
    ----------
    guide_clearance : LimitAsked
        clearance of the stem by two diameters
    guide_clearance_from_rock : LimitAsked
        clearance of the stem by rocking
    valve_rock : LimitAsked
        whole rock of the valve at about 10 mm lift
    """

    guide_clearance: LimitAsked
    guide_clearance_from_rock: LimitAsked
    valve_rock: LimitAsked


@dataclass(frozen=True, kw_only=True)
class GuideClearanceResult:
    """None is what cannot be known.

    Attributes
    ----------
    guide_largest : Quantity | None
        largest bore of the guide
    guide_bell_mouth : Quantity | None
        bell mouth: larger end of the guide less the smallest bore between its ends
    guide_out_of_round : Quantity | None
        out-of-round of the guide: largest difference of its two axes at one height
    stem_smallest : Quantity | None
        smallest diameter of the stem
    stem_taper : Quantity | None
        taper or wear of the stem: largest less smallest diameter
    clearance_direct : Quantity | None
        clearance by two diameters
    clearance_from_rock : Quantity | None
        clearance that the rock implies in a guide of one bore all along
    """

    guide_largest: Quantity | None = None
    guide_bell_mouth: Quantity | None = None
    guide_out_of_round: Quantity | None = None
    stem_smallest: Quantity | None = None
    stem_taper: Quantity | None = None
    clearance_direct: Quantity | None = None
    clearance_from_rock: Quantity | None = None


class GuideClearance(Calculation[GuideClearanceResult]):
    """Valve stem to guide clearance.

    Clearance of a valve stem in its guide, from two diameters and from rocking the valve. Guides
    wear bell-mouthed, so that rocking reads more; a bent stem looks like a worn guide: roll the
    stem before you condemn the guide.
    """

    NAME = "guide-clearance"
    RESULT = GuideClearanceResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "guide_bore": "quantity",
        "guide_along": "readings",
        "guide_across": "readings",
        "stem_size": "quantity",
        "stem_heights": "readings",
        "rock": "quantity",
        "guide_length": "quantity",
        "rock_distance": "quantity",
        "limits": {
            "guide_clearance": {"low": "quantity", "high": "quantity"},
            "guide_clearance_from_rock": {"low": "quantity", "high": "quantity"},
            "valve_rock": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        valve_kind: Literal["intake", "exhaust"],
        condition: Literal["new", "used"] | None = None,
        guide_bore: QuantityLike | None = None,
        guide_along: ReadingsLike | None = None,
        guide_across: ReadingsLike | None = None,
        stem_size: QuantityLike | None = None,
        stem_heights: ReadingsLike | None = None,
        rock: QuantityLike | None = None,
        guide_length: QuantityLike | None = None,
        rock_distance: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: GuideClearanceLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[GuideClearanceResult]:
        """Ask ``guide-clearance`` one question.

        Needed: ``guide_bore`` or ``guide_along`` or ``guide_bore`` or ``guide_along`` or ``rock``.

        Parameters
        ----------
        valve_kind : str
            which valve (intake: intake valve; exhaust: exhaust valve)
        condition : str, optional
            which limits apply (new: new parts, as they go together; used: used parts against their
            service limit) (default used)
        guide_bore : QuantityLike, optional
            largest bore of the guide: 3 heights on 2 axes
        guide_along : ReadingsLike, optional
            bore of the guide on the axis that rocker or cam pushes along, from the combustion side
            to the spring's
        guide_across : ReadingsLike, optional
            bore of the guide across that axis, at the same heights
        stem_size : QuantityLike, optional
            smallest diameter of the stem within the guide: 3 heights
        stem_heights : ReadingsLike, optional
            diameter of the stem within the guide, from the combustion side to the spring's
        rock : QuantityLike, optional
            whole sideways rock, total indicator reading, valve lifted about 10 mm off its seat
        guide_length : QuantityLike, optional
            length of the guide
        rock_distance : QuantityLike, optional
            where the indicator touches, beyond the end of the guide
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : GuideClearanceLimits, optional
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
            "valve_kind": valve_kind,
            "condition": condition,
            "guide_bore": guide_bore,
            "guide_along": guide_along,
            "guide_across": guide_across,
            "stem_size": stem_size,
            "stem_heights": stem_heights,
            "rock": rock,
            "guide_length": guide_length,
            "rock_distance": rock_distance,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
