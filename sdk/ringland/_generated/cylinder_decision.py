"""Decision for the cylinder.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._parts import MeasureNext, NotWorkedOut
from ringland._generated._words import Defaults, Rule, Units
from ringland._generated.bore_order import BoreOrderResult
from ringland._generated.bore_survey import BoreSurveyResult
from ringland._generated.clean_up import CleanUpResult
from ringland._generated.displacement import DisplacementResult
from ringland._generated.liner_wall import LinerWallResult
from ringland._generated.overbore_ratio import OverboreRatioResult
from ringland._generated.oversize_choice import OversizeChoiceResult
from ringland._generated.pin_fits import PinFitsResult
from ringland._generated.piston_clearance import PistonClearanceResult
from ringland._generated.ring_gap import RingGapResult
from ringland._generated.ring_side_clearance import RingSideClearanceResult
from ringland._types import Quantity, QuantityLike, Readings, ReadingsLike


class CylinderDecisionBoreSurvey(TypedDict):
    """Bore survey, in place of largest and smallest bore.

    Attributes
    ----------
    depth : ReadingsLike
        depths below the deck; on a two-stroke clear of the port windows
    pin_axis : ReadingsLike
        bore along the piston pin at each depth, as a diameter
    thrust_axis : ReadingsLike
        bore across the piston pin (thrust) at each depth, as a diameter
    """

    depth: ReadingsLike
    pin_axis: ReadingsLike
    thrust_axis: ReadingsLike


class CylinderDecisionScore(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    local : QuantityLike
        bore at the depth of the score, beside it
    depth_radial : QuantityLike
        depth of the score below the wall beside it, radial
    depth_from_deck : QuantityLike
        where the score lies, below the deck
    side : Literal['worn_side', 'opposite', 'unknown']
        side of the bore that the score is on (worn_side: on the side that wore most; opposite:
        opposite the side that wore most; unknown: not known: the larger share of the wear is used)
        (default unknown)
    """

    local: QuantityLike
    depth_radial: QuantityLike
    depth_from_deck: NotRequired[QuantityLike]
    side: NotRequired[Literal["worn_side", "opposite", "unknown"]]


class CylinderDecisionPiston(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    mark : str
        what the piston is marked or sold as; carried along, never taken for a size
    size : QuantityLike
        the piston as measured across the thrust axis, at the maker's height
    """

    mark: str
    size: QuantityLike


class CylinderDecisionSuspect(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    suspect : str
        suspect (rings_or_bore: rings or bore worn, a ring stuck or broken; exhaust_valve: exhaust
        valve not sealing: seat, face, bent, carbon chip; intake_valve: intake valve not sealing:
        seat, face, bent, carbon chip; guide_or_stem_seal: valve guides or stem seals worn;
        head_joint: head gasket or joint leaking; carbon: carbon built up; lash_tight: valve lash
        too tight; lash_loose: valve lash too loose; decompressor: decompressor at work, stuck or
        out of adjustment; test_error: the test itself: throttle, speed, cold, gauge, hose, wrong
        dead centre, altitude; piston_damage: piston damaged: holed, cracked, scored, a broken land;
        cam_timing: cam timing out; crankcase_leak: crankcase not tight, or its reed leaking)
    score : float
        score of the diagnosis
    """

    suspect: Literal[
        "rings_or_bore",
        "exhaust_valve",
        "intake_valve",
        "guide_or_stem_seal",
        "head_joint",
        "carbon",
        "lash_tight",
        "lash_loose",
        "decompressor",
        "test_error",
        "piston_damage",
        "cam_timing",
        "crankcase_leak",
    ]
    score: float


class CylinderDecisionLimits(TypedDict, total=False):
    """Limits of your own, by check: cylinder-decision.

    Attributes
    ----------
    bore_largest : LimitAsked
        largest bore
    out_of_round : LimitAsked
        largest out-of-round, difference of two diameters
    taper_pin_axis : LimitAsked
        taper on the pin axis, difference of diameters
    taper_thrust_axis : LimitAsked
        taper on the thrust axis, difference of diameters
    bore_wear : LimitAsked
        wear of the bore
    piston_clearance_max : LimitAsked
        largest clearance
    piston_clearance_min : LimitAsked
        smallest clearance
    top_ring_side : LimitAsked
        side clearance of the top ring
    second_ring_side : LimitAsked
        side clearance of the second ring
    top_ring_back : LimitAsked
        room behind the top ring
    second_ring_back : LimitAsked
        room behind the second ring
    pin_in_piston : LimitAsked
        pin in the piston
    pin_in_small_end : LimitAsked
        pin in the small end
    oversize_margin : LimitAsked
        margin of the chosen piston at boring
    returned_smallest : LimitAsked
        smallest reading of the work returned
    returned_largest : LimitAsked
        largest reading of the work returned
    returned_out_of_round : LimitAsked
        out-of-round of the work returned
    returned_taper : LimitAsked
        taper of the work returned
    liner_wall : LimitAsked
        thinnest wall after boring
    top_ring_gap_new : LimitAsked
        new top ring's gap
    second_ring_gap_new : LimitAsked
        new second ring's gap
    oil_rail_gap_new : LimitAsked
        oil rails' gap
    ring_gap_used : LimitAsked
        used ring's own gap
    class_limit : LimitAsked
        displacement within its class
    class_limit_after : LimitAsked
        displacement after machining within its class, at the largest finish bore
    gasket_clearance_per_side : LimitAsked
        gasket clear of the new bore on each side
    compression_ratio_after : RatioLimitAsked
        static compression ratio after the overbore within the maker's
    re_ring_bore : LimitAsked
        largest bore after the hone
    re_ring_out_of_round : LimitAsked
        out-of-round of a bore to be kept, difference of two diameters
    re_ring_taper_pin_axis : LimitAsked
        pin-axis taper of a bore to be kept, difference of two diameters
    re_ring_taper_thrust_axis : LimitAsked
        thrust-axis taper of a bore to be kept, difference of two diameters
    re_ring_clearance : LimitAsked
        clearance after the hone
    re_ring_ring_gap : LimitAsked
        gap of a new top ring in the worn zone
    re_ring_score : LimitAsked
        deepest score against what the hone takes off, radial
    selected_piston_min : LimitAsked
        smallest clearance of each piston on offer
    selected_piston_max : LimitAsked
        largest clearance of each piston on offer
    """

    bore_largest: LimitAsked
    out_of_round: LimitAsked
    taper_pin_axis: LimitAsked
    taper_thrust_axis: LimitAsked
    bore_wear: LimitAsked
    piston_clearance_max: LimitAsked
    piston_clearance_min: LimitAsked
    top_ring_side: LimitAsked
    second_ring_side: LimitAsked
    top_ring_back: LimitAsked
    second_ring_back: LimitAsked
    pin_in_piston: LimitAsked
    pin_in_small_end: LimitAsked
    oversize_margin: LimitAsked
    returned_smallest: LimitAsked
    returned_largest: LimitAsked
    returned_out_of_round: LimitAsked
    returned_taper: LimitAsked
    liner_wall: LimitAsked
    top_ring_gap_new: LimitAsked
    second_ring_gap_new: LimitAsked
    oil_rail_gap_new: LimitAsked
    ring_gap_used: LimitAsked
    class_limit: LimitAsked
    class_limit_after: LimitAsked
    gasket_clearance_per_side: LimitAsked
    compression_ratio_after: RatioLimitAsked
    re_ring_bore: LimitAsked
    re_ring_out_of_round: LimitAsked
    re_ring_taper_pin_axis: LimitAsked
    re_ring_taper_thrust_axis: LimitAsked
    re_ring_clearance: LimitAsked
    re_ring_ring_gap: LimitAsked
    re_ring_score: LimitAsked
    selected_piston_min: LimitAsked
    selected_piston_max: LimitAsked


@dataclass(frozen=True, kw_only=True)
class HoneAndReRingResult:
    """None is what cannot be known.

    Attributes
    ----------
    hone_removal_used : Quantity | None
        what the hone takes off, on the diameter
    bore_after_hone : Quantity | None
        largest bore after the hone
    worn_zone_growth : Quantity | None
        what the worn zone adds to the gap of a new ring, after the hone
    worn_zone_gap_low : Quantity | None
        smallest gap of the new top ring in the worn zone
    worn_zone_gap_high : Quantity | None
        largest gap of the new top ring in the worn zone
    clearance_after_hone : Quantity | None
        clearance of the piston after the hone, in the largest bore of the skirt travel
    deepest_score : Quantity | None
        depth of the deepest score, radial
    """

    hone_removal_used: Quantity | None = None
    bore_after_hone: Quantity | None = None
    worn_zone_growth: Quantity | None = None
    worn_zone_gap_low: Quantity | None = None
    worn_zone_gap_high: Quantity | None = None
    clearance_after_hone: Quantity | None = None
    deepest_score: Quantity | None = None


@dataclass(frozen=True, kw_only=True)
class PistonSelectionResult:
    """None is what cannot be known.

    Attributes
    ----------
    marks : tuple[str | float, ...] | None
        pistons offered, in the order given
    clearance_mins : Readings | None
        clearance of each piston in the smallest bore of the skirt travel, diametral
    clearance_maxs : Readings | None
        clearance of each piston in the largest bore of the skirt travel, diametral
    outcomes : tuple[str | float, ...] | None
        how each piston fits, by the figures alone
    best : str | None
        the piston that sits most central in the new fit
    best_piston : Quantity | None
        size of that piston
    best_fits : bool | None
        whether it lies within the new fit, by the figures alone
    """

    marks: tuple[str | float, ...] | None = None
    clearance_mins: Readings | None = None
    clearance_maxs: Readings | None = None
    outcomes: tuple[str | float, ...] | None = None
    best: str | None = None
    best_piston: Quantity | None = None
    best_fits: bool | None = None


@dataclass(frozen=True, kw_only=True)
class CylinderWaysResultWay:
    """None is what cannot be known.

    Attributes
    ----------
    way : str
        the way
    standing : Literal['taken', 'possible', 'open', 'falls_out'] | None
        whether it is the way to go, possible, open, or falls out
    reasons : tuple[str | float, ...] | None
        why, with the numbers
    """

    way: (
        Literal[
            "leave_alone",
            "hone_and_re_ring",
            "deglaze_and_re_ring",
            "select_piston",
            "overbore",
            "replate",
            "sleeve",
            "replace",
        ]
        | None
    ) = None
    standing: Literal["taken", "possible", "open", "falls_out"] | None = None
    reasons: tuple[str | float, ...] | None = None


@dataclass(frozen=True, kw_only=True)
class CylinderWaysResult:
    """None is what cannot be known.

    Attributes
    ----------
    way : str
        what to do with the cylinder
    reason : str
        why, in one line
    fault_shown : Literal['shown', 'not_shown', 'contradicted'] | None
        whether the fault that is mended is shown to be the cause of the complaint; absent where the
        cylinder is left alone, or may be
    would_show : str | None
        what would show it, where it is not shown
    ways : tuple[CylinderWaysResultWay, ...]
        every way in order, whether it stands, and why
    must_not : tuple[str | float, ...]
        what must not be done to a bore of this kind
    work : str
        work that goes to the machine shop
    """

    way: Literal[
        "leave_alone",
        "hone_and_re_ring",
        "deglaze_and_re_ring",
        "select_piston",
        "overbore",
        "replate",
        "sleeve",
        "replace",
        "not_settled",
        "find_out_the_kind",
    ]
    reason: str
    fault_shown: Literal["shown", "not_shown", "contradicted"] | None = None
    would_show: str | None = None
    ways: tuple[CylinderWaysResultWay, ...]
    must_not: tuple[str | float, ...]
    work: Literal["light_hone", "bore_and_hone", "sleeve", "replate"] | None = None


@dataclass(frozen=True, kw_only=True)
class CylinderDecisionResult:
    """None is what cannot be known.

    Attributes
    ----------
    bore_survey : BoreSurveyResult | None
    piston_clearance : PistonClearanceResult | None
    ring_side_clearance : RingSideClearanceResult | None
    pin_fits : PinFitsResult | None
    clean_up : CleanUpResult | None
    oversize_choice : OversizeChoiceResult | None
    bore_order : BoreOrderResult | None
    liner_wall : LinerWallResult | None
    ring_gap : RingGapResult | None
    displacement : DisplacementResult | None
    overbore_ratio : OverboreRatioResult | None
    hone_and_re_ring : HoneAndReRingResult | None
    piston_selection : PistonSelectionResult | None
    cylinder_decision : CylinderWaysResult | None
    not_worked_out : tuple[NotWorkedOut, ...] | None
    measure_next : tuple[MeasureNext, ...]
    """

    bore_survey: BoreSurveyResult | None = None
    piston_clearance: PistonClearanceResult | None = None
    ring_side_clearance: RingSideClearanceResult | None = None
    pin_fits: PinFitsResult | None = None
    clean_up: CleanUpResult | None = None
    oversize_choice: OversizeChoiceResult | None = None
    bore_order: BoreOrderResult | None = None
    liner_wall: LinerWallResult | None = None
    ring_gap: RingGapResult | None = None
    displacement: DisplacementResult | None = None
    overbore_ratio: OverboreRatioResult | None = None
    hone_and_re_ring: HoneAndReRingResult | None = None
    piston_selection: PistonSelectionResult | None = None
    cylinder_decision: CylinderWaysResult | None = None
    not_worked_out: tuple[NotWorkedOut, ...] | None = None
    measure_next: tuple[MeasureNext, ...]


class CylinderDecision(Calculation[CylinderDecisionResult]):
    """Decision for the cylinder.

    Leave it, hone and fit new rings, choose a piston, bore, plate, sleeve or replace: the first way
    that stands, why each other way falls out, with its numbers, and what to measure where it is
    open. A plated, chromed or bare silicon bore is never sent for boring; an unknown bore gets no
    machining decision.
    """

    NAME = "cylinder-decision"
    RESULT = CylinderDecisionResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "stroke": "quantity",
        "class_limit": "quantity",
        "chamber": "quantity",
        "gasket_bore": "quantity",
        "gasket_area": "quantity",
        "gasket_thickness": "quantity",
        "deck": "quantity",
        "dome": "quantity",
        "dish": "quantity",
        "crevice": "quantity",
        "clearance": "quantity",
        "base_gasket_thinner_by": "quantity",
        "deck_cut": "quantity",
        "skim_loss": "quantity",
        "sink_gain": "quantity",
        "new_dome": "quantity",
        "new_dish": "quantity",
        "new_deck": "quantity",
        "new_gasket_bore": "quantity",
        "new_gasket_thickness": "quantity",
        "bore_survey": {"depth": "readings", "pin_axis": "readings", "thrust_axis": "readings"},
        "bore_largest": "quantity",
        "bore_smallest": "quantity",
        "unworn": "quantity",
        "skirt_from": "quantity",
        "skirt_to": "quantity",
        "bore_temperature": "quantity",
        "bore_alpha": "quantity",
        "scores": [
            {"local": "quantity", "depth_radial": "quantity", "depth_from_deck": "quantity"}
        ],
        "liner_od": "quantity",
        "core_shift": "quantity",
        "piston_size": "quantity",
        "piston_size_new": "quantity",
        "measuring_height": "quantity",
        "piston_temperature": "quantity",
        "piston_alpha": "quantity",
        "new_rings_piston": "quantity",
        "pin": "quantity",
        "pin_worn": "quantity",
        "piston_pin_bore": "quantity",
        "small_end_bore": "quantity",
        "top_gap": "quantity",
        "second_gap": "quantity",
        "oil_rail_gap": "quantity",
        "old_gap": "quantity",
        "old_gap_depth": "quantity",
        "old_gap_pin_axis": "quantity",
        "old_gap_thrust_axis": "quantity",
        "gap_when_new": "quantity",
        "bore_rise": "quantity",
        "ring_rise": "quantity",
        "ring_alpha": "quantity",
        "worn_pin_axis": "quantity",
        "worn_thrust_axis": "quantity",
        "new_rings_gap": "quantity",
        "top_feeler": "quantity",
        "top_groove": "quantity",
        "top_width": "quantity",
        "second_feeler": "quantity",
        "second_groove": "quantity",
        "second_width": "quantity",
        "top_groove_root": "quantity",
        "top_thickness": "quantity",
        "second_groove_root": "quantity",
        "second_thickness": "quantity",
        "hone_removal": "quantity",
        "pistons": [{"size": "quantity"}],
        "clearance_low": "quantity",
        "clearance_high": "quantity",
        "clearance_target": "quantity",
        "hone_stock": "quantity",
        "largest_oversize": "quantity",
        "returned_readings": "readings",
        "returned_out_of_round": "quantity",
        "returned_taper": "quantity",
        "size_uncertainty": "quantity",
        "leak": "quantity",
        "excess_gain": "quantity",
        "limits": {
            "bore_largest": {"low": "quantity", "high": "quantity"},
            "out_of_round": {"low": "quantity", "high": "quantity"},
            "taper_pin_axis": {"low": "quantity", "high": "quantity"},
            "taper_thrust_axis": {"low": "quantity", "high": "quantity"},
            "bore_wear": {"low": "quantity", "high": "quantity"},
            "piston_clearance_max": {"low": "quantity", "high": "quantity"},
            "piston_clearance_min": {"low": "quantity", "high": "quantity"},
            "top_ring_side": {"low": "quantity", "high": "quantity"},
            "second_ring_side": {"low": "quantity", "high": "quantity"},
            "top_ring_back": {"low": "quantity", "high": "quantity"},
            "second_ring_back": {"low": "quantity", "high": "quantity"},
            "pin_in_piston": {"low": "quantity", "high": "quantity"},
            "pin_in_small_end": {"low": "quantity", "high": "quantity"},
            "oversize_margin": {"low": "quantity", "high": "quantity"},
            "returned_smallest": {"low": "quantity", "high": "quantity"},
            "returned_largest": {"low": "quantity", "high": "quantity"},
            "returned_out_of_round": {"low": "quantity", "high": "quantity"},
            "returned_taper": {"low": "quantity", "high": "quantity"},
            "liner_wall": {"low": "quantity", "high": "quantity"},
            "top_ring_gap_new": {"low": "quantity", "high": "quantity"},
            "second_ring_gap_new": {"low": "quantity", "high": "quantity"},
            "oil_rail_gap_new": {"low": "quantity", "high": "quantity"},
            "ring_gap_used": {"low": "quantity", "high": "quantity"},
            "class_limit": {"low": "quantity", "high": "quantity"},
            "class_limit_after": {"low": "quantity", "high": "quantity"},
            "gasket_clearance_per_side": {"low": "quantity", "high": "quantity"},
            "re_ring_bore": {"low": "quantity", "high": "quantity"},
            "re_ring_out_of_round": {"low": "quantity", "high": "quantity"},
            "re_ring_taper_pin_axis": {"low": "quantity", "high": "quantity"},
            "re_ring_taper_thrust_axis": {"low": "quantity", "high": "quantity"},
            "re_ring_clearance": {"low": "quantity", "high": "quantity"},
            "re_ring_ring_gap": {"low": "quantity", "high": "quantity"},
            "re_ring_score": {"low": "quantity", "high": "quantity"},
            "selected_piston_min": {"low": "quantity", "high": "quantity"},
            "selected_piston_max": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
        | None = None,
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        bore: QuantityLike | None = None,
        stroke: QuantityLike | None = None,
        cylinder_count: int | None = None,
        class_limit: QuantityLike | None = None,
        chamber: QuantityLike | None = None,
        gasket_bore: QuantityLike | None = None,
        gasket_area: QuantityLike | None = None,
        gasket_thickness: QuantityLike | None = None,
        deck: QuantityLike | None = None,
        dome: QuantityLike | None = None,
        dish: QuantityLike | None = None,
        crevice: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        base_gasket_thinner_by: QuantityLike | None = None,
        deck_cut: QuantityLike | None = None,
        skim_loss: QuantityLike | None = None,
        sink_gain: QuantityLike | None = None,
        new_dome: QuantityLike | None = None,
        new_dish: QuantityLike | None = None,
        new_deck: QuantityLike | None = None,
        new_gasket_bore: QuantityLike | None = None,
        new_gasket_thickness: QuantityLike | None = None,
        bore_survey: CylinderDecisionBoreSurvey | None = None,
        bore_largest: QuantityLike | None = None,
        bore_smallest: QuantityLike | None = None,
        bore_use: Literal["used", "re_ring", "fresh"] | None = None,
        unworn: QuantityLike | None = None,
        skirt_from: QuantityLike | None = None,
        skirt_to: QuantityLike | None = None,
        bore_temperature: QuantityLike | None = None,
        bore_alpha: QuantityLike | None = None,
        damage: Literal[
            "none",
            "crack",
            "hole",
            "broken_spigot",
            "pulled_stud_boss",
            "port_bridge_broken",
            "plating_flaked",
        ]
        | None = None,
        surface: Literal["clean", "glazed", "scored", "corroded", "smeared"] | None = None,
        ridge: Literal["none", "catches_a_nail", "cut"] | None = None,
        piston_stays_in: bool | None = None,
        scores: Sequence[CylinderDecisionScore] | None = None,
        wear_side_share: float | None = None,
        liner_od: QuantityLike | None = None,
        core_shift: QuantityLike | None = None,
        liner_kind: Literal["dry", "wet_or_air_cooled", "parent_iron"] | None = None,
        piston_size: QuantityLike | None = None,
        piston_size_new: QuantityLike | None = None,
        measuring_height: QuantityLike | None = None,
        piston_condition: Literal["new", "used"] | None = None,
        piston_kind: Literal[
            "cast_air_cooled",
            "cast_liquid_cooled",
            "forged",
            "two_stroke_iron",
            "two_stroke_plated",
        ]
        | None = None,
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
        skirt_coated: bool | None = None,
        piston_temperature: QuantityLike | None = None,
        piston_alpha: QuantityLike | None = None,
        new_rings_piston: QuantityLike | None = None,
        pin: QuantityLike | None = None,
        pin_worn: QuantityLike | None = None,
        piston_pin_bore: QuantityLike | None = None,
        small_end_bore: QuantityLike | None = None,
        small_end: Literal["plain", "press_fit", "needle"] | None = None,
        heat_marks: bool | None = None,
        pin_condition: Literal["new", "used"] | None = None,
        top_gap: QuantityLike | None = None,
        second_gap: QuantityLike | None = None,
        oil_rail_gap: QuantityLike | None = None,
        top_factor: float | None = None,
        second_factor: float | None = None,
        old_gap: QuantityLike | None = None,
        old_gap_depth: QuantityLike | None = None,
        old_gap_pin_axis: QuantityLike | None = None,
        old_gap_thrust_axis: QuantityLike | None = None,
        gap_when_new: QuantityLike | None = None,
        bore_rise: QuantityLike | None = None,
        ring_rise: QuantityLike | None = None,
        ring_alpha: QuantityLike | None = None,
        worn_pin_axis: QuantityLike | None = None,
        worn_thrust_axis: QuantityLike | None = None,
        new_rings_gap: QuantityLike | None = None,
        top_feeler: QuantityLike | None = None,
        top_groove: QuantityLike | None = None,
        top_width: QuantityLike | None = None,
        top_shape: Literal["plain", "keystone"] | None = None,
        second_feeler: QuantityLike | None = None,
        second_groove: QuantityLike | None = None,
        second_width: QuantityLike | None = None,
        top_groove_root: QuantityLike | None = None,
        top_thickness: QuantityLike | None = None,
        second_groove_root: QuantityLike | None = None,
        second_thickness: QuantityLike | None = None,
        measured_with_new_ring: bool | None = None,
        ring_condition: Literal["new", "used"] | None = None,
        hone_removal: QuantityLike | None = None,
        pistons: Sequence[CylinderDecisionPiston] | None = None,
        clearance_low: QuantityLike | None = None,
        clearance_high: QuantityLike | None = None,
        clearance_target: QuantityLike | None = None,
        hone_stock: QuantityLike | None = None,
        largest_oversize: QuantityLike | None = None,
        returned_readings: ReadingsLike | None = None,
        returned_out_of_round: QuantityLike | None = None,
        returned_taper: QuantityLike | None = None,
        size_uncertainty: QuantityLike | None = None,
        leak: QuantityLike | None = None,
        leak_gradeable: Literal[
            "yes",
            "not_at_firing_tdc",
            "upper_bound",
            "decompressor_active",
            "restrictor_not_known",
            "restrictor_outside",
            "supply_outside",
        ]
        | None = None,
        leak_grade: Literal["tear_down", "worn", "serviceable", "good", "not_gradeable"]
        | None = None,
        heard_at: Literal[
            "oil_filler_or_breather",
            "exhaust",
            "intake",
            "radiator",
            "neighbour_plug_hole",
            "head_joint",
            "nowhere",
        ]
        | None = None,
        decompressor_state: Literal[
            "none", "automatic_held_off", "automatic_active", "manual_not_used", "unknown"
        ]
        | None = None,
        excess_gain: QuantityLike | None = None,
        level_ratio: float | None = None,
        oil_use_grade: Literal["find_out", "worn", "usual"] | None = None,
        diagnosis_headline: Literal[
            "test_not_valid",
            "nothing_wrong_shown",
            "no_strong_suspect",
            "hold_decompressor_off_first",
            "measure_lash_first",
            "not_settled",
            "leads",
            "nothing_tested",
            "ranking_only",
            "nothing_weighed",
        ]
        | None = None,
        suspects: Sequence[CylinderDecisionSuspect] | None = None,
        next_test: str | None = None,
        least_score: float | None = None,
        least_lead: float | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: CylinderDecisionLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[CylinderDecisionResult]:
        """Ask ``cylinder-decision`` one question.

        Parameters
        ----------
        bore_kind : str, optional
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        bore : QuantityLike, optional
            cylinder bore
        stroke : QuantityLike, optional
            stroke
        cylinder_count : int, optional
            number of cylinders of this size
        class_limit : QuantityLike, optional
            largest displacement that the class or licence allows
        chamber : QuantityLike, optional
            combustion chamber in the head before; kept but for what head work is told
        gasket_bore : QuantityLike, optional
            bore of the head gasket; without a gasket, of the joint
        gasket_area : QuantityLike, optional
            opening of a head gasket that is not round; wins over its bore
        gasket_thickness : QuantityLike, optional
            compressed head gasket; 0 without one
        deck : QuantityLike, optional
            piston crown edge at top dead centre: below (+) or proud of (−) the deck
        dome : QuantityLike, optional
            dome of the old piston, never negative
        dish : QuantityLike, optional
            dish and valve pockets of the old piston, never negative
        crevice : QuantityLike, optional
            crevice above the top ring; kept
        clearance : QuantityLike, optional
            clearance volume before, measured whole; counts before the sum of its parts
        base_gasket_thinner_by : QuantityLike, optional
            new base gasket thinner by; negative for a thicker one
        deck_cut : QuantityLike, optional
            metal taken off the cylinder's deck
        skim_loss : QuantityLike, optional
            what a skim of the head takes from the chamber
        sink_gain : QuantityLike, optional
            what the chamber gains by valves that sit deeper
        new_dome : QuantityLike, optional
            dome of the new piston; like the old one's where not given
        new_dish : QuantityLike, optional
            dish and valve pockets of the new piston; like the old one's where not given
        new_deck : QuantityLike, optional
            crown edge of the new piston below (+) or proud of (−) the deck; like the old one's
            where not given
        new_gasket_bore : QuantityLike, optional
            bore of the new head gasket; kept where not given
        new_gasket_thickness : QuantityLike, optional
            compressed new head gasket; kept where not given
        bore_survey : CylinderDecisionBoreSurvey, optional
            bore survey, in place of largest and smallest bore
        bore_largest : QuantityLike, optional
            largest bore in the skirt travel
        bore_smallest : QuantityLike, optional
            smallest bore in the skirt travel
        bore_use : str, optional
            what the bore is judged for (used: a used bore, to stay as it is; re_ring: a used bore,
            to be honed and given new rings; fresh: a freshly bored and honed one)
        unworn : QuantityLike, optional
            that bore where no ring runs
        skirt_from : QuantityLike, optional
            skirt travel starts at this depth below the deck
        skirt_to : QuantityLike, optional
            skirt travel ends at this depth below the deck
        bore_temperature : QuantityLike, optional
            temperature of the cylinder when measured
        bore_alpha : QuantityLike, optional
            expansion of the cylinder; wins over the kind of bore
        damage : str, optional
            worst damage found on the cylinder itself (none: looked for, none found; crack: a crack;
            hole: a hole; broken_spigot: a broken spigot; pulled_stud_boss: a pulled stud boss;
            port_bridge_broken: a broken port bridge; plating_flaked: plating flaked in the ring
            travel)
        surface : str, optional
            look of the bore's surface (clean: clean: hone marks to be seen, no score, no glaze;
            glazed: glazed: bright and hard, hone marks gone; scored: scored or seized; corroded:
            pitted by rust or corrosion; smeared: aluminium of the piston smeared on it)
        ridge : str, optional
            ridge above the ring travel (none: no ridge above the ring travel; catches_a_nail: a
            ridge that a finger nail catches; cut: ridge cut)
        piston_stays_in : bool, optional
            the pistons can stay in, their rings undisturbed
        scores : Sequence[CylinderDecisionScore], optional
            scores, pits and seizure marks to be cut out
        wear_side_share : float, optional
            share of the wear on the side that wore most: 0.5 even, or boring centred on the worn
            bore; 1.0 all on one side; ask how the machinist centres
        liner_od : QuantityLike, optional
            outside diameter of the liner, or of the parent wall, where it is smallest
        core_shift : QuantityLike, optional
            distance of the bore's centre from the centre of the outside; 0 takes it as true
        liner_kind : str, optional
            kind of wall, for the floor that shops keep (dry: dry liner, carried by its cylinder all
            along; wet_or_air_cooled: wet liner, or sleeve of an air-cooled cylinder; parent_iron:
            parent iron, no liner)
        piston_size : QuantityLike, optional
            piston across the thrust axis (90° to the pin), at the maker's height on the skirt
        piston_size_new : QuantityLike, optional
            the piston's size when new
        measuring_height : QuantityLike, optional
            height above the skirt bottom where the piston was measured
        piston_condition : str, optional
            which limits apply: new fit or used parts (new: new fit: piston and bore as they go
            together; used: used parts against their service limit)
        piston_kind : str, optional
            kind of piston (cast_air_cooled: cast, air-cooled four-stroke; cast_liquid_cooled: cast,
            liquid-cooled four-stroke; forged: forged; two_stroke_iron: two-stroke, for an iron
            bore; two_stroke_plated: two-stroke, for a plated bore)
        piston_material : str, optional
            alloy of the piston, for its expansion (grey_iron: grey iron; steel: steel;
            piston_forged_low_silicon: low-silicon forged piston alloy; piston_cast_eutectic:
            eutectic cast piston alloy; piston_high_silicon: high-silicon piston alloy;
            aluminium_cylinder: aluminium cylinder, plated, chromed or bare;
            iron_sleeve_in_aluminium: iron sleeve cast in aluminium, effective)
        skirt_coated : bool, optional
            the skirt carries a coating
        piston_temperature : QuantityLike, optional
            temperature of the piston when measured
        piston_alpha : QuantityLike, optional
            expansion of the piston; wins over its material and kind
        new_rings_piston : QuantityLike, optional
            the piston that would go back with new rings: the old one as measured, or a new standard
            one
        pin : QuantityLike, optional
            piston pin where nothing rubs
        pin_worn : QuantityLike, optional
            smallest diameter of the pin: centre and both ends, two axes
        piston_pin_bore : QuantityLike, optional
            pin bore of the piston, the larger of two axes
        small_end_bore : QuantityLike, optional
            bore of the small end, the larger of two axes
        small_end : str, optional
            kind of small end (plain: plain or bushed: the pin turns in it; press_fit: press fit:
            the pin is held by the rod; needle: needle bearing)
        heat_marks : bool, optional
            the pin shows blue heat marks
        pin_condition : str, optional
            which limits apply (new: new parts, as they go together; used: used parts against their
            service limit)
        top_gap : QuantityLike, optional
            new top ring's gap, squared with the piston
        second_gap : QuantityLike, optional
            new second ring's gap, squared with the piston
        oil_rail_gap : QuantityLike, optional
            oil rails' gap, the smaller; the expander is never filed
        top_factor : float, optional
            top ring's gap as a share of the bore, where the maker gives no range
        second_factor : float, optional
            second ring's gap as a share of the bore, where the maker gives no range
        old_gap : QuantityLike, optional
            used ring's gap in its worn bore
        old_gap_depth : QuantityLike, optional
            depth below the deck where it was taken
        old_gap_pin_axis : QuantityLike, optional
            bore along the pin at that depth
        old_gap_thrust_axis : QuantityLike, optional
            bore across the pin at that depth
        gap_when_new : QuantityLike, optional
            the used ring's gap when new
        bore_rise : QuantityLike, optional
            bore above 20 °C when running
        ring_rise : QuantityLike, optional
            ring above 20 °C when running
        ring_alpha : QuantityLike, optional
            expansion of the ring
        worn_pin_axis : QuantityLike, optional
            worn zone where the new top ring will run, along the pin, after honing
        worn_thrust_axis : QuantityLike, optional
            worn zone where the new top ring will run, across the pin, after honing
        new_rings_gap : QuantityLike, optional
            gap of the new top ring as measured in a bore of nominal size; else the maker's whole
            range counts
        top_feeler : QuantityLike, optional
            side clearance of the top ring by feeler, the tightest place all round
        top_groove : QuantityLike, optional
            width of the top ring's groove, the narrowest place
        top_width : QuantityLike, optional
            width of the top ring, along the cylinder
        top_shape : str, optional
            sides of the top ring (plain: plain: both sides parallel; keystone: keystone: one or
            both sides tapered)
        second_feeler : QuantityLike, optional
            side clearance of the second ring by feeler, the tightest place all round
        second_groove : QuantityLike, optional
            width of the second ring's groove, the narrowest place
        second_width : QuantityLike, optional
            width of the second ring, along the cylinder
        top_groove_root : QuantityLike, optional
            piston at the root of the top ring's groove
        top_thickness : QuantityLike, optional
            radial thickness of the top ring
        second_groove_root : QuantityLike, optional
            piston at the root of the second ring's groove
        second_thickness : QuantityLike, optional
            radial thickness of the second ring
        measured_with_new_ring : bool, optional
            measured with a new ring
        ring_condition : str, optional
            which limits apply (new: new parts, as they go together; used: used parts against their
            service limit)
        hone_removal : QuantityLike, optional
            what the hone takes off for new rings, on the diameter; 0.010 mm where not given,
            nothing from a plated or bare silicon bore, which is only deglazed
        pistons : Sequence[CylinderDecisionPiston], optional
            pistons on offer, each with its measured size, in any order
        clearance_low : QuantityLike, optional
            least clearance wanted, diametral
        clearance_high : QuantityLike, optional
            largest clearance wanted, diametral
        clearance_target : QuantityLike, optional
            clearance wanted, diametral; the middle of the maker's range
        hone_stock : QuantityLike, optional
            stock that the machinist leaves for the hone, on the diameter
        largest_oversize : QuantityLike, optional
            largest oversize that the maker allows, on the diameter, with nominal_bore
        returned_readings : ReadingsLike, optional
            readings of the finished bore, both axes at each depth
        returned_out_of_round : QuantityLike, optional
            out-of-round of the finished bore, difference of two diameters at one depth
        returned_taper : QuantityLike, optional
            taper of the finished bore, difference of two diameters on one axis
        size_uncertainty : QuantityLike, optional
            expanded uncertainty (k = 2) of one bore diameter, by the gauge that proves the work;
            instead of one stated with the readings
        leak : QuantityLike, optional
            leak-down; counts where it can be graded
        leak_gradeable : str, optional
            whether the common steps grade that leak-down (yes: the common steps hold for this
            tester; not_at_firing_tdc: the piston is not at firing top dead centre; upper_bound: a
            decompressor lets air out as well: the figure is an upper bound, and 10 % or less proves
            the cylinder tight; decompressor_active: a decompressor lets the air out;
            restrictor_not_known: the restrictor is not known; restrictor_outside: a restrictor
            outside 0.9 to 1.1 mm: other steps hold there; supply_outside: a supply outside 550 to
            700 kPa: other steps hold there)
        leak_grade : str, optional
            leak-down graded already, on the tester maker's own scale say; goes before the per cent
            (tear_down: tear down; worn: worn; serviceable: serviceable; good: good; not_gradeable:
            not gradeable by the common steps)
        heard_at : str, optional
            where the air is heard, the loudest place (oil_filler_or_breather: oil filler, dipstick
            hole or breather; exhaust: exhaust outlet; intake: carburettor or intake; radiator:
            bubbles in radiator or header tank; neighbour_plug_hole: plug hole of the neighbour;
            head_joint: foam at head joint, plug, adaptor or stud; nowhere: somebody listened and
            heard nothing)
        decompressor_state : str, optional
            decompressor during the test (none: no decompressor; automatic_held_off: automatic one
            held off during the test; automatic_active: automatic one at work during the test;
            manual_not_used: manual one not used during the test; unknown: not known)
        excess_gain : QuantityLike, optional
            gain of the wet test beyond the oil's own volume
        level_ratio : float, optional
            compression reading over the expected one
        oil_use_grade : str, optional
            oil use (find_out: find out; worn: worn; usual: usual)
        diagnosis_headline : str, optional
            what the ranking of the diagnosis amounts to (test_not_valid: test not valid: repeat;
            nothing_wrong_shown: nothing wrong shown by these tests; no_strong_suspect: no strong
            suspect from these tests; hold_decompressor_off_first: not settled: hold the
            decompressor off and repeat first; measure_lash_first: not settled: measure the lash
            first; not_settled: not settled; leads: a suspect leads; nothing_tested: nothing tested
            or seen yet: the complaint says where to begin; ranking_only: ranking only: common
            practice is off, and no figure says when a lead is one; nothing_weighed: nothing
            weighed: common practice is off, and the request weighs none of this)
        suspects : Sequence[CylinderDecisionSuspect], optional
            suspects as the diagnosis ranks them
        next_test : str, optional
            what the diagnosis would test next
        least_score : float, optional
            score from which a suspect is a strong one; absent, 2
        least_lead : float, optional
            lead from which the first suspect is settled; absent, 1.1
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : CylinderDecisionLimits, optional
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
            "bore_kind": bore_kind,
            "cycle": cycle,
            "bore": bore,
            "stroke": stroke,
            "cylinder_count": cylinder_count,
            "class_limit": class_limit,
            "chamber": chamber,
            "gasket_bore": gasket_bore,
            "gasket_area": gasket_area,
            "gasket_thickness": gasket_thickness,
            "deck": deck,
            "dome": dome,
            "dish": dish,
            "crevice": crevice,
            "clearance": clearance,
            "base_gasket_thinner_by": base_gasket_thinner_by,
            "deck_cut": deck_cut,
            "skim_loss": skim_loss,
            "sink_gain": sink_gain,
            "new_dome": new_dome,
            "new_dish": new_dish,
            "new_deck": new_deck,
            "new_gasket_bore": new_gasket_bore,
            "new_gasket_thickness": new_gasket_thickness,
            "bore_survey": bore_survey,
            "bore_largest": bore_largest,
            "bore_smallest": bore_smallest,
            "bore_use": bore_use,
            "unworn": unworn,
            "skirt_from": skirt_from,
            "skirt_to": skirt_to,
            "bore_temperature": bore_temperature,
            "bore_alpha": bore_alpha,
            "damage": damage,
            "surface": surface,
            "ridge": ridge,
            "piston_stays_in": piston_stays_in,
            "scores": scores,
            "wear_side_share": wear_side_share,
            "liner_od": liner_od,
            "core_shift": core_shift,
            "liner_kind": liner_kind,
            "piston_size": piston_size,
            "piston_size_new": piston_size_new,
            "measuring_height": measuring_height,
            "piston_condition": piston_condition,
            "piston_kind": piston_kind,
            "piston_material": piston_material,
            "skirt_coated": skirt_coated,
            "piston_temperature": piston_temperature,
            "piston_alpha": piston_alpha,
            "new_rings_piston": new_rings_piston,
            "pin": pin,
            "pin_worn": pin_worn,
            "piston_pin_bore": piston_pin_bore,
            "small_end_bore": small_end_bore,
            "small_end": small_end,
            "heat_marks": heat_marks,
            "pin_condition": pin_condition,
            "top_gap": top_gap,
            "second_gap": second_gap,
            "oil_rail_gap": oil_rail_gap,
            "top_factor": top_factor,
            "second_factor": second_factor,
            "old_gap": old_gap,
            "old_gap_depth": old_gap_depth,
            "old_gap_pin_axis": old_gap_pin_axis,
            "old_gap_thrust_axis": old_gap_thrust_axis,
            "gap_when_new": gap_when_new,
            "bore_rise": bore_rise,
            "ring_rise": ring_rise,
            "ring_alpha": ring_alpha,
            "worn_pin_axis": worn_pin_axis,
            "worn_thrust_axis": worn_thrust_axis,
            "new_rings_gap": new_rings_gap,
            "top_feeler": top_feeler,
            "top_groove": top_groove,
            "top_width": top_width,
            "top_shape": top_shape,
            "second_feeler": second_feeler,
            "second_groove": second_groove,
            "second_width": second_width,
            "top_groove_root": top_groove_root,
            "top_thickness": top_thickness,
            "second_groove_root": second_groove_root,
            "second_thickness": second_thickness,
            "measured_with_new_ring": measured_with_new_ring,
            "ring_condition": ring_condition,
            "hone_removal": hone_removal,
            "pistons": pistons,
            "clearance_low": clearance_low,
            "clearance_high": clearance_high,
            "clearance_target": clearance_target,
            "hone_stock": hone_stock,
            "largest_oversize": largest_oversize,
            "returned_readings": returned_readings,
            "returned_out_of_round": returned_out_of_round,
            "returned_taper": returned_taper,
            "size_uncertainty": size_uncertainty,
            "leak": leak,
            "leak_gradeable": leak_gradeable,
            "leak_grade": leak_grade,
            "heard_at": heard_at,
            "decompressor_state": decompressor_state,
            "excess_gain": excess_gain,
            "level_ratio": level_ratio,
            "oil_use_grade": oil_use_grade,
            "diagnosis_headline": diagnosis_headline,
            "suspects": suspects,
            "next_test": next_test,
            "least_score": least_score,
            "least_lead": least_lead,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
