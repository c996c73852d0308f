"""Job card.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._parts import MeasureNext
from ringland._generated._words import Defaults, Rule, Units
from ringland._generated.air_pressure import AirPressureResult
from ringland._generated.bore_order import BoreOrderResult
from ringland._generated.bore_survey import BoreSurveyResult
from ringland._generated.clean_up import CleanUpResult
from ringland._generated.compression_level import CompressionLevelResult
from ringland._generated.compression_ratio import CompressionRatioResult
from ringland._generated.cranking_pressure import CrankingPressureResult
from ringland._generated.crosshatch import CrosshatchResult
from ringland._generated.cylinder_spread import CylinderSpreadResult
from ringland._generated.displacement import DisplacementResult
from ringland._generated.dynamic_ratio import DynamicRatioResult
from ringland._generated.estimate import EstimateResult
from ringland._generated.fastener_order import FastenerOrderResult
from ringland._generated.hot_clearance import HotClearanceResult
from ringland._generated.liner_wall import LinerWallResult
from ringland._generated.order_card import OrderCardResult
from ringland._generated.overbore_ratio import OverboreRatioResult
from ringland._generated.oversize_choice import OversizeChoiceResult
from ringland._generated.pin_fits import PinFitsResult
from ringland._generated.piston_clearance import PistonClearanceResult
from ringland._generated.port_timing import PortTimingResult
from ringland._generated.premix import PremixResult
from ringland._generated.pressure_build_up import PressureBuildUpResult
from ringland._generated.ring_clocking import RingClockingResult
from ringland._generated.ring_gap import RingGapResult
from ringland._generated.ring_side_clearance import RingSideClearanceResult
from ringland._generated.rod_play import RodPlayResult
from ringland._generated.run_in import RunInResult
from ringland._generated.sleeve_fit import SleeveFitResult
from ringland._generated.torque_steps import TorqueStepsResult
from ringland._generated.wet_gain import WetGainResult
from ringland._types import Quantity, QuantityLike, Readings, ReadingsLike


class JobCardAbout(TypedDict):
    """What the job is about.

    Attributes
    ----------
    job : str
        job number
    machine : str
        machine
    complaint : str
        what the owner says
    notes : str
        notes from the bench
    """

    job: NotRequired[str]
    machine: NotRequired[str]
    complaint: NotRequired[str]
    notes: NotRequired[str]


class JobCardEngine(TypedDict):
    """The engine as built, and as measured.

    Attributes
    ----------
    cycle : Literal['four_stroke', 'two_stroke']
        cycle (four_stroke: four-stroke; two_stroke: two-stroke)
    valve_gear : str
        valve gear (overhead_valves: four-stroke, valves in the head; side_valve: four-stroke,
        valves beside the cylinder; ports: two-stroke, ports in the cylinder; unknown: not known: no
        bands are applied)
    decompressor : str
        kind of decompressor (none: no decompressor; automatic_exhaust_lifter: automatic, lifts the
        exhaust valve by weights or the cam; automatic_intake_side: automatic, holds the intake
        valve or closes it late; manual_lifter: manual valve lifter; manual_two_stroke_valve: manual
        valve in the head or above the exhaust port, two-stroke; unknown: not known)
    cylinders : int
        number of cylinders of this size
    bore_kind : str
        kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
        cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
        aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
    bore : QuantityLike
        nominal cylinder bore
    stroke : QuantityLike
        stroke
    rod : QuantityLike
        rod length, centre to centre
    clearance : QuantityLike
        clearance volume: above the piston at top dead centre
    chamber : QuantityLike
        combustion chamber in the head, valves and plug fitted
    gasket_bore : QuantityLike
        bore of the head gasket; without a gasket, of the joint
    gasket_area : QuantityLike
        opening of a head gasket that is not round; wins over its bore
    gasket_thickness : QuantityLike
        compressed head gasket; 0 without one
    deck : QuantityLike
        piston crown edge at top dead centre: below (+) or proud of (−) the deck
    dome : QuantityLike
        dome on the crown, never negative; 0 without one
    dish : QuantityLike
        dish and valve pockets in the crown, never negative; 0 for a flat crown
    crevice : QuantityLike
        crevice above the top ring; wins over land diameter and height
    land : QuantityLike
        diameter of the top land
    land_height : QuantityLike
        height of the top land
    burette_fill : QuantityLike
        thin liquid filled in at top dead centre up to the top of the plug hole; rings sealed with
        grease, tilted so that no bubble stays
    plug_diameter : QuantityLike
        plug thread: mean of major and minor diameter
    plug_reach : QuantityLike
        depth of the plug hole that the fill covers
    intake_closes : QuantityLike
        intake closes after bottom dead centre, crank degrees
    closing_lift : QuantityLike
        valve lift at which that closing angle is stated
    decompressor_closes : QuantityLike
        decompressor closing after bottom dead centre, crank; a manual one is shut for the test
    exhaust_port_top_below_deck : QuantityLike
        top edge of the exhaust port below the deck: the port's edge, not its chamfer; an exhaust
        valve in its low position
    transfer_port_top_below_deck : QuantityLike
        top edge of the transfer ports below the deck
    piston_edge_below_deck_at_tdc : QuantityLike
        crown edge, at the port, below (+) or proud of (−) the deck at top dead centre
    thinner_base_gasket_by : QuantityLike
        new base gasket thinner by; negative for a thicker one
    class_limit : QuantityLike
        largest displacement that the class or licence allows
    """

    cycle: NotRequired[Literal["four_stroke", "two_stroke"]]
    valve_gear: NotRequired[Literal["overhead_valves", "side_valve", "ports", "unknown"]]
    decompressor: NotRequired[
        Literal[
            "none",
            "automatic_exhaust_lifter",
            "automatic_intake_side",
            "manual_lifter",
            "manual_two_stroke_valve",
            "unknown",
        ]
    ]
    cylinders: NotRequired[int]
    bore_kind: NotRequired[
        Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
    ]
    bore: NotRequired[QuantityLike]
    stroke: NotRequired[QuantityLike]
    rod: NotRequired[QuantityLike]
    clearance: NotRequired[QuantityLike]
    chamber: NotRequired[QuantityLike]
    gasket_bore: NotRequired[QuantityLike]
    gasket_area: NotRequired[QuantityLike]
    gasket_thickness: NotRequired[QuantityLike]
    deck: NotRequired[QuantityLike]
    dome: NotRequired[QuantityLike]
    dish: NotRequired[QuantityLike]
    crevice: NotRequired[QuantityLike]
    land: NotRequired[QuantityLike]
    land_height: NotRequired[QuantityLike]
    burette_fill: NotRequired[QuantityLike]
    plug_diameter: NotRequired[QuantityLike]
    plug_reach: NotRequired[QuantityLike]
    intake_closes: NotRequired[QuantityLike]
    closing_lift: NotRequired[QuantityLike]
    decompressor_closes: NotRequired[QuantityLike]
    exhaust_port_top_below_deck: NotRequired[QuantityLike]
    transfer_port_top_below_deck: NotRequired[QuantityLike]
    piston_edge_below_deck_at_tdc: NotRequired[QuantityLike]
    thinner_base_gasket_by: NotRequired[QuantityLike]
    class_limit: NotRequired[QuantityLike]


class JobCardPlace(TypedDict):
    """Where the engine was tested.

    Attributes
    ----------
    altitude : QuantityLike
        altitude of the place (geopotential)
    air_pressure : QuantityLike
        air pressure on the spot, absolute
    weather_report : QuantityLike
        air pressure of the weather report, absolute, brought to sea level; needs the altitude
    """

    altitude: NotRequired[QuantityLike]
    air_pressure: NotRequired[QuantityLike]
    weather_report: NotRequired[QuantityLike]


class JobCardCompression(TypedDict):
    """The compression test.

    Attributes
    ----------
    reading : QuantityLike
        compression reading once it rises no more, gauge
    stroke_readings : ReadingsLike
        reading at each compression stroke of one pull, gauge
    baseline_first_over_last : float
        first over last stroke of the same gauge and hose on a sound cylinder of like size
    readings : ReadingsLike
        reading of each cylinder, gauge; same gauge, one after another, bank by bank
    layout : Literal['in_line', 'vee', 'opposed']
        how the cylinders stand; in two banks the first half of the readings is one bank (in_line:
        all cylinders in one bank, read in order; vee: two banks, read bank by bank; opposed: two
        opposed banks, read bank by bank)
    wet : QuantityLike
        reading with the oil in, gauge, same gauge and starter
    oil : QuantityLike
        oil put in, measured by syringe
    expected : QuantityLike
        pressure expected of a sound cylinder here, gauge
    limit_altitude : QuantityLike
        altitude that the limit is stated for; absent, sea level
    gauge_error : QuantityLike
        maximum error of the gauge, ± share of the reading
    repeat : QuantityLike
        how well the reading repeats, ±
    weather : QuantityLike
        weather's part of an air pressure worked out from altitude, ±
    decompressor_state : str
        decompressor during the test (none: no decompressor; automatic_held_off: automatic one held
        off during the test; automatic_active: automatic one at work during the test;
        manual_not_used: manual one not used during the test; unknown: not known)
    starter : Literal['electric', 'kick', 'rope']
        what turns the engine (electric: electric; kick: kick; rope: rope)
    throttle_open : bool
        throttle held open, a vacuum slide lifted too
    throttle_closed_manifold : QuantityLike
        intake pressure with the throttle closed, absolute
    choke_off : bool
        choke off
    engine_warm : bool
        engine warm
    plugs_out : bool
        all plugs out
    air_filter_fitted : bool
        air filter fitted
    battery : QuantityLike
        battery while cranking
    """

    reading: NotRequired[QuantityLike]
    stroke_readings: NotRequired[ReadingsLike]
    baseline_first_over_last: NotRequired[float]
    readings: NotRequired[ReadingsLike]
    layout: NotRequired[Literal["in_line", "vee", "opposed"]]
    wet: NotRequired[QuantityLike]
    oil: NotRequired[QuantityLike]
    expected: NotRequired[QuantityLike]
    limit_altitude: NotRequired[QuantityLike]
    gauge_error: NotRequired[QuantityLike]
    repeat: NotRequired[QuantityLike]
    weather: NotRequired[QuantityLike]
    decompressor_state: NotRequired[
        Literal["none", "automatic_held_off", "automatic_active", "manual_not_used", "unknown"]
    ]
    starter: NotRequired[Literal["electric", "kick", "rope"]]
    throttle_open: NotRequired[bool]
    throttle_closed_manifold: NotRequired[QuantityLike]
    choke_off: NotRequired[bool]
    engine_warm: NotRequired[bool]
    plugs_out: NotRequired[bool]
    air_filter_fitted: NotRequired[bool]
    battery: NotRequired[QuantityLike]


class JobCardCylinderSurvey(TypedDict):
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


class JobCardCylinderScore(TypedDict):
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


class JobCardCylinder(TypedDict):
    """The cylinder on the bench.

    Attributes
    ----------
    survey : JobCardCylinderSurvey
        bore survey, in place of largest and smallest bore
    bore_max : QuantityLike
        largest bore in the skirt travel
    bore_min : QuantityLike
        smallest bore in the skirt travel
    unworn_bore : QuantityLike
        that bore where no ring runs
    skirt_from : QuantityLike
        skirt travel starts at this depth below the deck
    skirt_to : QuantityLike
        skirt travel ends at this depth below the deck
    bore_temperature : QuantityLike
        temperature of the cylinder when measured
    bore_alpha : QuantityLike
        expansion of the cylinder; wins over the kind of bore
    damage : str
        worst damage found on the cylinder itself (none: looked for, none found; crack: a crack;
        hole: a hole; broken_spigot: a broken spigot; pulled_stud_boss: a pulled stud boss;
        port_bridge_broken: a broken port bridge; plating_flaked: plating flaked in the ring travel)
    surface : Literal['clean', 'glazed', 'scored', 'corroded', 'smeared']
        look of the bore's surface (clean: clean: hone marks to be seen, no score, no glaze; glazed:
        glazed: bright and hard, hone marks gone; scored: scored or seized; corroded: pitted by rust
        or corrosion; smeared: aluminium of the piston smeared on it)
    ridge : Literal['none', 'catches_a_nail', 'cut']
        ridge above the ring travel (none: no ridge above the ring travel; catches_a_nail: a ridge
        that a finger nail catches; cut: ridge cut)
    pistons_stay_in : bool
        the pistons can stay in, their rings undisturbed
    scores : Sequence[JobCardCylinderScore]
        scores, pits and seizure marks to be cut out
    wear_side_share : float
        share of the wear on the side that wore most: 0.5 even, or boring centred on the worn bore;
        1.0 all on one side; ask how the machinist centres
    liner_od : QuantityLike
        outside diameter of the liner, or of the parent wall, where it is smallest
    core_shift : QuantityLike
        distance of the bore's centre from the centre of the outside; 0 takes it as true
    liner_kind : Literal['dry', 'wet_or_air_cooled', 'parent_iron']
        kind of wall, for the floor that shops keep (dry: dry liner, carried by its cylinder all
        along; wet_or_air_cooled: wet liner, or sleeve of an air-cooled cylinder; parent_iron:
        parent iron, no liner)
    """

    survey: NotRequired[JobCardCylinderSurvey]
    bore_max: NotRequired[QuantityLike]
    bore_min: NotRequired[QuantityLike]
    unworn_bore: NotRequired[QuantityLike]
    skirt_from: NotRequired[QuantityLike]
    skirt_to: NotRequired[QuantityLike]
    bore_temperature: NotRequired[QuantityLike]
    bore_alpha: NotRequired[QuantityLike]
    damage: NotRequired[
        Literal[
            "none",
            "crack",
            "hole",
            "broken_spigot",
            "pulled_stud_boss",
            "port_bridge_broken",
            "plating_flaked",
        ]
    ]
    surface: NotRequired[Literal["clean", "glazed", "scored", "corroded", "smeared"]]
    ridge: NotRequired[Literal["none", "catches_a_nail", "cut"]]
    pistons_stay_in: NotRequired[bool]
    scores: NotRequired[Sequence[JobCardCylinderScore]]
    wear_side_share: NotRequired[float]
    liner_od: NotRequired[QuantityLike]
    core_shift: NotRequired[QuantityLike]
    liner_kind: NotRequired[Literal["dry", "wet_or_air_cooled", "parent_iron"]]


class JobCardPiston(TypedDict):
    """The piston on the bench, and its pin.

    Attributes
    ----------
    piston : QuantityLike
        piston across the thrust axis (90° to the pin), at the maker's height on the skirt
    piston_new : QuantityLike
        the piston's size when new
    height_above_skirt_bottom : QuantityLike
        height above the skirt bottom where the piston was measured
    fit : Literal['new', 'used']
        which limits apply: new fit or used parts (new: new fit: piston and bore as they go
        together; used: used parts against their service limit)
    piston_kind : str
        kind of piston (cast_air_cooled: cast, air-cooled four-stroke; cast_liquid_cooled: cast,
        liquid-cooled four-stroke; forged: forged; two_stroke_iron: two-stroke, for an iron bore;
        two_stroke_plated: two-stroke, for a plated bore)
    piston_material : str
        alloy of the piston, for its expansion (grey_iron: grey iron; steel: steel;
        piston_forged_low_silicon: low-silicon forged piston alloy; piston_cast_eutectic: eutectic
        cast piston alloy; piston_high_silicon: high-silicon piston alloy; aluminium_cylinder:
        aluminium cylinder, plated, chromed or bare; iron_sleeve_in_aluminium: iron sleeve cast in
        aluminium, effective)
    skirt_coated : bool
        the skirt carries a coating
    piston_temperature : QuantityLike
        temperature of the piston when measured
    piston_alpha : QuantityLike
        expansion of the piston; wins over its material and kind
    rering_piston : QuantityLike
        the piston that would go back with new rings: the old one as measured, or a new standard one
    pin : QuantityLike
        piston pin where nothing rubs
    pin_worn : QuantityLike
        smallest diameter of the pin: centre and both ends, two axes
    piston_pin_bore : QuantityLike
        pin bore of the piston, the larger of two axes
    small_end_bore : QuantityLike
        bore of the small end, the larger of two axes
    small_end : Literal['plain', 'press_fit', 'needle']
        kind of small end (plain: plain or bushed: the pin turns in it; press_fit: press fit: the
        pin is held by the rod; needle: needle bearing)
    heat_marks : bool
        the pin shows blue heat marks
    pin_fit : Literal['new', 'used']
        which limits apply (new: new parts, as they go together; used: used parts against their
        service limit)
    """

    piston: NotRequired[QuantityLike]
    piston_new: NotRequired[QuantityLike]
    height_above_skirt_bottom: NotRequired[QuantityLike]
    fit: NotRequired[Literal["new", "used"]]
    piston_kind: NotRequired[
        Literal[
            "cast_air_cooled",
            "cast_liquid_cooled",
            "forged",
            "two_stroke_iron",
            "two_stroke_plated",
        ]
    ]
    piston_material: NotRequired[
        Literal[
            "grey_iron",
            "steel",
            "piston_forged_low_silicon",
            "piston_cast_eutectic",
            "piston_high_silicon",
            "aluminium_cylinder",
            "iron_sleeve_in_aluminium",
        ]
    ]
    skirt_coated: NotRequired[bool]
    piston_temperature: NotRequired[QuantityLike]
    piston_alpha: NotRequired[QuantityLike]
    rering_piston: NotRequired[QuantityLike]
    pin: NotRequired[QuantityLike]
    pin_worn: NotRequired[QuantityLike]
    piston_pin_bore: NotRequired[QuantityLike]
    small_end_bore: NotRequired[QuantityLike]
    small_end: NotRequired[Literal["plain", "press_fit", "needle"]]
    heat_marks: NotRequired[bool]
    pin_fit: NotRequired[Literal["new", "used"]]


class JobCardRings(TypedDict):
    """The rings, new and old.

    Attributes
    ----------
    gap_bore : QuantityLike
        bore where the new rings were gapped: finished, or the least worn zone
    top_measured : QuantityLike
        new top ring's gap, squared with the piston
    second_measured : QuantityLike
        new second ring's gap, squared with the piston
    oil_rail_measured : QuantityLike
        oil rails' gap, the smaller; the expander is never filed
    top_factor : float
        top ring's gap as a share of the bore, where the maker gives no range
    second_factor : float
        second ring's gap as a share of the bore, where the maker gives no range
    old_gap : QuantityLike
        used ring's gap in its worn bore
    old_gap_depth : QuantityLike
        depth below the deck where it was taken
    old_gap_pin_axis : QuantityLike
        bore along the pin at that depth
    old_gap_thrust_axis : QuantityLike
        bore across the pin at that depth
    gap_when_new : QuantityLike
        the used ring's gap when new
    worn_pin_axis : QuantityLike
        worn zone where the new top ring will run, along the pin, after honing
    worn_thrust_axis : QuantityLike
        worn zone where the new top ring will run, across the pin, after honing
    rering_gap : QuantityLike
        gap of the new top ring as measured in a bore of nominal size; else the maker's whole range
        counts
    top_feeler : QuantityLike
        side clearance of the top ring by feeler, the tightest place all round
    top_groove_width : QuantityLike
        width of the top ring's groove, the narrowest place
    top_ring_width : QuantityLike
        width of the top ring, along the cylinder
    top_ring_shape : Literal['plain', 'keystone']
        sides of the top ring (plain: plain: both sides parallel; keystone: keystone: one or both
        sides tapered)
    second_feeler : QuantityLike
        side clearance of the second ring by feeler, the tightest place all round
    second_groove_width : QuantityLike
        width of the second ring's groove, the narrowest place
    second_ring_width : QuantityLike
        width of the second ring, along the cylinder
    top_groove_root : QuantityLike
        piston at the root of the top ring's groove
    top_ring_thickness : QuantityLike
        radial thickness of the top ring
    second_groove_root : QuantityLike
        piston at the root of the second ring's groove
    second_ring_thickness : QuantityLike
        radial thickness of the second ring
    measured_with_new_ring : bool
        measured with a new ring
    ring_fit : Literal['new', 'used']
        which limits apply (new: new parts, as they go together; used: used parts against their
        service limit)
    """

    gap_bore: NotRequired[QuantityLike]
    top_measured: NotRequired[QuantityLike]
    second_measured: NotRequired[QuantityLike]
    oil_rail_measured: NotRequired[QuantityLike]
    top_factor: NotRequired[float]
    second_factor: NotRequired[float]
    old_gap: NotRequired[QuantityLike]
    old_gap_depth: NotRequired[QuantityLike]
    old_gap_pin_axis: NotRequired[QuantityLike]
    old_gap_thrust_axis: NotRequired[QuantityLike]
    gap_when_new: NotRequired[QuantityLike]
    worn_pin_axis: NotRequired[QuantityLike]
    worn_thrust_axis: NotRequired[QuantityLike]
    rering_gap: NotRequired[QuantityLike]
    top_feeler: NotRequired[QuantityLike]
    top_groove_width: NotRequired[QuantityLike]
    top_ring_width: NotRequired[QuantityLike]
    top_ring_shape: NotRequired[Literal["plain", "keystone"]]
    second_feeler: NotRequired[QuantityLike]
    second_groove_width: NotRequired[QuantityLike]
    second_ring_width: NotRequired[QuantityLike]
    top_groove_root: NotRequired[QuantityLike]
    top_ring_thickness: NotRequired[QuantityLike]
    second_groove_root: NotRequired[QuantityLike]
    second_ring_thickness: NotRequired[QuantityLike]
    measured_with_new_ring: NotRequired[bool]
    ring_fit: NotRequired[Literal["new", "used"]]


class JobCardPlanPiston(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    mark : str
        what the piston is marked or sold as; carried along, never taken for a size
    piston : QuantityLike
        the piston as measured across the thrust axis, at the maker's height
    """

    mark: str
    piston: QuantityLike


class JobCardPlan(TypedDict):
    """What is meant to be done, and what is on the shelf.

    Attributes
    ----------
    new_bore : QuantityLike
        bore after machining
    new_dome : QuantityLike
        dome of the new piston; like the old one's where not given
    new_dish : QuantityLike
        dish and valve pockets of the new piston; like the old one's where not given
    new_deck : QuantityLike
        crown edge of the new piston below (+) or proud of (−) the deck; like the old one's where
        not given
    new_gasket_bore : QuantityLike
        bore of the new head gasket; kept where not given
    new_gasket_thickness : QuantityLike
        compressed new head gasket; kept where not given
    hone_removal : QuantityLike
        what the hone takes off for new rings, on the diameter; 0.010 mm where not given, nothing
        from a plated or bare silicon bore, which is only deglazed
    pistons : Sequence[JobCardPlanPiston]
        pistons on offer, each with its measured size, in any order
    clearance_low : QuantityLike
        least clearance wanted, diametral
    clearance_high : QuantityLike
        largest clearance wanted, diametral
    wanted_clearance : QuantityLike
        clearance wanted, diametral; the middle of the maker's range
    hone_stock : QuantityLike
        stock that the machinist leaves for the hone, on the diameter
    makers_largest_oversize : QuantityLike
        largest oversize that the maker allows, on the diameter, with nominal_bore
    returned_readings : ReadingsLike
        readings of the finished bore, both axes at each depth
    returned_out_of_round : QuantityLike
        out-of-round of the finished bore, difference of two diameters at one depth
    returned_taper : QuantityLike
        taper of the finished bore, difference of two diameters on one axis
    """

    new_bore: NotRequired[QuantityLike]
    new_dome: NotRequired[QuantityLike]
    new_dish: NotRequired[QuantityLike]
    new_deck: NotRequired[QuantityLike]
    new_gasket_bore: NotRequired[QuantityLike]
    new_gasket_thickness: NotRequired[QuantityLike]
    hone_removal: NotRequired[QuantityLike]
    pistons: NotRequired[Sequence[JobCardPlanPiston]]
    clearance_low: NotRequired[QuantityLike]
    clearance_high: NotRequired[QuantityLike]
    wanted_clearance: NotRequired[QuantityLike]
    hone_stock: NotRequired[QuantityLike]
    makers_largest_oversize: NotRequired[QuantityLike]
    returned_readings: NotRequired[ReadingsLike]
    returned_out_of_round: NotRequired[QuantityLike]
    returned_taper: NotRequired[QuantityLike]


class JobCardOrderHeads(TypedDict):
    """The head, where it is sent too.

    Attributes
    ----------
    seat_angle : QuantityLike
        angle of the valve seats
    intake_seat_width_low : QuantityLike
        intake seat, least width
    intake_seat_width_high : QuantityLike
        intake seat, largest width
    exhaust_seat_width_low : QuantityLike
        exhaust seat, least width
    exhaust_seat_width_high : QuantityLike
        exhaust seat, largest width
    contact : str
        where the seat is to touch the valve's face
    sink_max : QuantityLike
        most sink of a valve below its new place
    intake_guide_low : QuantityLike
        intake guide, least clearance
    intake_guide_high : QuantityLike
        intake guide, largest clearance
    exhaust_guide_low : QuantityLike
        exhaust guide, least clearance
    exhaust_guide_high : QuantityLike
        exhaust guide, largest clearance
    flatness_max : QuantityLike
        how flat the head's face must be
    skim_max : QuantityLike
        most that may be taken off the head's face
    valve_to_piston_checked : bool
        valve-to-piston clearance is checked for this work
    spring_installed_height : QuantityLike
        installed height of the valve springs
    """

    seat_angle: NotRequired[QuantityLike]
    intake_seat_width_low: NotRequired[QuantityLike]
    intake_seat_width_high: NotRequired[QuantityLike]
    exhaust_seat_width_low: NotRequired[QuantityLike]
    exhaust_seat_width_high: NotRequired[QuantityLike]
    contact: NotRequired[str]
    sink_max: NotRequired[QuantityLike]
    intake_guide_low: NotRequired[QuantityLike]
    intake_guide_high: NotRequired[QuantityLike]
    exhaust_guide_low: NotRequired[QuantityLike]
    exhaust_guide_high: NotRequired[QuantityLike]
    flatness_max: NotRequired[QuantityLike]
    skim_max: NotRequired[QuantityLike]
    valve_to_piston_checked: NotRequired[bool]
    spring_installed_height: NotRequired[QuantityLike]


class JobCardOrder(TypedDict):
    """What the order to the machinist states besides.

    Attributes
    ----------
    date : str
        date of the order
    cylinder_number : int
        number of the cylinder sent
    end_up : str
        which end is up, as a mark on the cylinder says it
    exhaust_side_marked : bool
        the exhaust side is marked on the cylinder
    parts_sent : int
        parts sent, counted
    piston_mark : str
        number or mark on the piston, its own for each cylinder
    piston_instrument : str
        what measured the piston
    inches_too : bool
        give bore sizes in inches as well
    replate_to : str
        size that the plating goes to: standard, or the repair size with its unit
    out_of_round_max : QuantityLike
        most out-of-round, difference of two diameters
    taper_max : QuantityLike
        most taper, difference of two diameters
    proof_depths : ReadingsLike
        depths from the deck at which size and form are to be proven
    boring_centre : Literal['unworn_bottom', 'existing_centre', 'true_up']
        what boring is centred on (unworn_bottom: on the unworn bottom of the bore; existing_centre:
        on the existing centre of the worn bore; true_up: true up: square to the base face and on
        the centre of the spigot)
    finish : str
        surface wanted, each figure with its unit; the ring maker's comes first
    torque_plate : bool
        bored and honed with a torque plate
    gasket : str
        kind of head gasket under the torque plate
    torque : QuantityLike
        torque on the studs of the torque plate
    studs : str
        studs or bolts of the torque plate
    honed : Literal['cold', 'hot']
        cold or hot while it is honed (cold: cold, at room temperature; hot: hot, with hot coolant
        going round)
    port_chamfer_low : QuantityLike
        chamfer at the edges of all ports, least width
    port_chamfer_high : QuantityLike
        chamfer at the edges of all ports, largest width
    port_chamfer_angle : QuantityLike
        angle of the port chamfer to the bore's wall
    exhaust_bridge : bool
        the exhaust port has a bridge
    bridge_relief_low : QuantityLike
        relief of the exhaust bridge, least, radial
    bridge_relief_high : QuantityLike
        relief of the exhaust bridge, largest, radial
    mouth_chamfer_low : QuantityLike
        chamfer at both mouths of the bore, least width
    mouth_chamfer_high : QuantityLike
        chamfer at both mouths of the bore, largest width
    mouth_chamfer_angle : QuantityLike
        angle of the mouth chamfer to the bore's wall
    deck_height : QuantityLike
        height of the cylinder as sent, base face to deck face
    deck_cut : QuantityLike
        what is ordered off the deck face; left out, the deck is not touched
    wall_floor : QuantityLike
        wall that must be left, radial
    heads : JobCardOrderHeads
        the head, where it is sent too
    price_limit : float
        price that the work must not pass without a call, in the currency named
    wanted : str
        date wanted
    approver : str
        who may approve changes
    """

    date: NotRequired[str]
    cylinder_number: NotRequired[int]
    end_up: NotRequired[str]
    exhaust_side_marked: NotRequired[bool]
    parts_sent: NotRequired[int]
    piston_mark: NotRequired[str]
    piston_instrument: NotRequired[str]
    inches_too: NotRequired[bool]
    replate_to: NotRequired[str]
    out_of_round_max: NotRequired[QuantityLike]
    taper_max: NotRequired[QuantityLike]
    proof_depths: NotRequired[ReadingsLike]
    boring_centre: NotRequired[Literal["unworn_bottom", "existing_centre", "true_up"]]
    finish: NotRequired[str]
    torque_plate: NotRequired[bool]
    gasket: NotRequired[str]
    torque: NotRequired[QuantityLike]
    studs: NotRequired[str]
    honed: NotRequired[Literal["cold", "hot"]]
    port_chamfer_low: NotRequired[QuantityLike]
    port_chamfer_high: NotRequired[QuantityLike]
    port_chamfer_angle: NotRequired[QuantityLike]
    exhaust_bridge: NotRequired[bool]
    bridge_relief_low: NotRequired[QuantityLike]
    bridge_relief_high: NotRequired[QuantityLike]
    mouth_chamfer_low: NotRequired[QuantityLike]
    mouth_chamfer_high: NotRequired[QuantityLike]
    mouth_chamfer_angle: NotRequired[QuantityLike]
    deck_height: NotRequired[QuantityLike]
    deck_cut: NotRequired[QuantityLike]
    wall_floor: NotRequired[QuantityLike]
    heads: NotRequired[JobCardOrderHeads]
    price_limit: NotRequired[float]
    wanted: NotRequired[str]
    approver: NotRequired[str]


class JobCardBottom(TypedDict):
    """The rod and the crank below.

    Attributes
    ----------
    big_end_side : QuantityLike
        side clearance of the big end, feeler
    big_end_radial : QuantityLike
        radial play of the big end, pulled and pushed along the cylinder axis, not sideways
    big_end : Literal['rollers', 'plain']
        kind of big end (rollers: rollers or needles on a built-up crank; plain: plain shell
        bearings)
    small_end_tip_rock : QuantityLike
        whole sideways rock at the small end
    big_end_width : QuantityLike
        width of the big end
    runout_tir_left : QuantityLike
        run-out of the left journal between centres, total indicator reading
    runout_tir_right : QuantityLike
        run-out of the right journal between centres, total indicator reading
    rod_fit : Literal['new', 'used']
        which limits apply (new: new parts, as they go together; used: used parts against their
        service limit)
    """

    big_end_side: NotRequired[QuantityLike]
    big_end_radial: NotRequired[QuantityLike]
    big_end: NotRequired[Literal["rollers", "plain"]]
    small_end_tip_rock: NotRequired[QuantityLike]
    big_end_width: NotRequired[QuantityLike]
    runout_tir_left: NotRequired[QuantityLike]
    runout_tir_right: NotRequired[QuantityLike]
    rod_fit: NotRequired[Literal["new", "used"]]


class JobCardHone(TypedDict):
    """The machinist's hone.

    Attributes
    ----------
    spindle : QuantityLike
        spindle speed of the hone
    hone_travel : QuantityLike
        travel of the hone, end to end, overtravel at both ends counted
    full_cycles : QuantityLike
        full strokes, down and up, a minute; not single strokes
    wanted_included : QuantityLike
        wanted included angle, between the two families of lines; twice what each line makes with
        horizontal
    stroke_drive : Literal['constant', 'crank', 'unknown']
        how the stroke is driven (constant: constant speed, turned round at the ends (hydraulic, or
        by hand); crank: driven by a crank, fastest at mid-stroke; unknown: not known)
    ring_kind : Literal['plain_iron', 'coated']
        kind of rings that will run on it (plain_iron: plain iron ring; coated: coated or nitrided
        ring)
    """

    spindle: NotRequired[QuantityLike]
    hone_travel: NotRequired[QuantityLike]
    full_cycles: NotRequired[QuantityLike]
    wanted_included: NotRequired[QuantityLike]
    stroke_drive: NotRequired[Literal["constant", "crank", "unknown"]]
    ring_kind: NotRequired[Literal["plain_iron", "coated"]]


class JobCardSleeve(TypedDict):
    """A new sleeve.

    Attributes
    ----------
    cylinder_bore : QuantityLike
        bore of the cylinder that takes the sleeve, at 20 °C
    sleeve_od : QuantityLike
        outside of the sleeve, at 20 °C
    drop_in_clearance : QuantityLike
        room wanted around the sleeve while it drops in, diametral
    held_by : Literal['fit_alone', 'flange_or_head']
        what holds the sleeve in place (fit_alone: no flange and nothing clamps it: the fit alone
        holds the sleeve; flange_or_head: a flange, or the head clamped on it, holds the sleeve)
    sleeve_temperature : QuantityLike
        temperature of the sleeve as it goes in; below 0 when chilled
    running_temperature : QuantityLike
        temperature of sleeve and jacket when running, taken as one
    alpha_cylinder : QuantityLike
        expansion of the cylinder; aluminium where not given
    alpha_sleeve : QuantityLike
        expansion of the sleeve; grey iron where not given
    """

    cylinder_bore: NotRequired[QuantityLike]
    sleeve_od: NotRequired[QuantityLike]
    drop_in_clearance: NotRequired[QuantityLike]
    held_by: NotRequired[Literal["fit_alone", "flange_or_head"]]
    sleeve_temperature: NotRequired[QuantityLike]
    running_temperature: NotRequired[QuantityLike]
    alpha_cylinder: NotRequired[QuantityLike]
    alpha_sleeve: NotRequired[QuantityLike]


class JobCardHot(TypedDict):
    """Temperatures when running.

    Attributes
    ----------
    bore_hot : QuantityLike
        temperature of the cylinder when running
    piston_hot : QuantityLike
        temperature of the piston skirt when running
    """

    bore_hot: NotRequired[QuantityLike]
    piston_hot: NotRequired[QuantityLike]


class JobCardTorque(TypedDict):
    """One kind of fastener and its torque.

    Attributes
    ----------
    final_torque : QuantityLike
        final torque at the fastener
    stage_fractions : Sequence[float]
        stages as shares of the final torque, rising to 1 (40, 70, 100 % is common practice)
    wrench_length : QuantityLike
        wrench, from the centre of the grip (not the end of the handle) to the square
    adapter_extension : QuantityLike
        adapter, from the square to the centre of the fastener; 0 without one
    adapter_angle : QuantityLike
        angle of the adapter: 0 straight on, 90 across, 180 back to the hand
    wrench_top : QuantityLike
        top of the wrench's range
    thread_dia : QuantityLike
        nominal diameter of the thread
    pitch : QuantityLike
        pitch of the thread, mm per turn
    thread_pitch_dia : QuantityLike
        pitch diameter of the thread; else that of the metric profile
    thread_minor_dia : QuantityLike
        minor diameter at the root; else that of the metric profile
    stress_area : QuantityLike
        stress area; else from pitch and minor diameter
    nut_factor : float
        nut factor K in torque = K · diameter · clamp
    thread_friction : float
        friction in the thread
    head_friction : float
        friction under the head; with the thread's it gives the nut factor where none is given
    lubricant : Literal['dry', 'oiled', 'moly_paste', 'unknown']
        what is on thread and head; gives the nut factor where nothing better is known (dry: dry and
        clean: nut factor 0.20; oiled: engine oil: nut factor 0.165, middle of 0.15 to 0.18;
        moly_paste: molybdenum paste: nut factor 0.115, middle of 0.10 to 0.13; unknown: not known)
    nut_factor_band : float
        band of the nut factor, ± share (0.25: common practice)
    proof_stress : QuantityLike
        proof stress of the fastener
    fastener_use : Literal['reusable', 'single_use']
        whether the fastener is used again; the stricter limit holds where nothing is said
        (reusable: used again: clamp at most 0.75 of proof; single_use: for single use: clamp at
        most 0.90 of proof)
    turns : ReadingsLike
        turns after the torque stages, one an angle stage
    thread_engagement : QuantityLike
        length of thread engaged
    threads_in_aluminium : bool
        the fastener goes into aluminium without an insert
    """

    final_torque: NotRequired[QuantityLike]
    stage_fractions: NotRequired[Sequence[float]]
    wrench_length: NotRequired[QuantityLike]
    adapter_extension: NotRequired[QuantityLike]
    adapter_angle: NotRequired[QuantityLike]
    wrench_top: NotRequired[QuantityLike]
    thread_dia: NotRequired[QuantityLike]
    pitch: NotRequired[QuantityLike]
    thread_pitch_dia: NotRequired[QuantityLike]
    thread_minor_dia: NotRequired[QuantityLike]
    stress_area: NotRequired[QuantityLike]
    nut_factor: NotRequired[float]
    thread_friction: NotRequired[float]
    head_friction: NotRequired[float]
    lubricant: NotRequired[Literal["dry", "oiled", "moly_paste", "unknown"]]
    nut_factor_band: NotRequired[float]
    proof_stress: NotRequired[QuantityLike]
    fastener_use: NotRequired[Literal["reusable", "single_use"]]
    turns: NotRequired[ReadingsLike]
    thread_engagement: NotRequired[QuantityLike]
    threads_in_aluminium: NotRequired[bool]


class JobCardFasteningFastener(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    id : str
        number or name of the fastener
    x : QuantityLike
        place along x
    y : QuantityLike
        place along y
    group : int
        group by size of thread: 1 the largest, tightened first (default 1)
    """

    id: str
    x: QuantityLike
    y: QuantityLike
    group: NotRequired[int]


class JobCardFastening(TypedDict):
    """Where the fasteners of one face stand.

    Attributes
    ----------
    fasteners : Sequence[JobCardFasteningFastener]
        fasteners of one face, seen from above; x to the right, y up, any zero
    tighten_stages : int
        number of torque stages
    relief_steps : int
        number of rounds in which the fasteners are relieved
    relief_step_turn : QuantityLike
        turn of each fastener in one round of relief
    """

    fasteners: NotRequired[Sequence[JobCardFasteningFastener]]
    tighten_stages: NotRequired[int]
    relief_steps: NotRequired[int]
    relief_step_turn: NotRequired[QuantityLike]


class JobCardClockingGap(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    name : str
        name of the ring
    kind : Literal['compression', 'expander', 'rail']
        kind of ring (compression: compression ring, or an oil ring in one piece; expander: expander
        of the oil ring; rail: rail of the oil ring)
    angle : QuantityLike
        where its gap stands
    """

    name: str
    kind: Literal["compression", "expander", "rail"]
    angle: QuantityLike


class JobCardClockingRingPin(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    name : str
        name of the ring
    pin_angle : QuantityLike
        where its pin stands
    """

    name: str
    pin_angle: QuantityLike


class JobCardClockingPortWindow(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    from_angle : QuantityLike
        the window begins
    to_angle : QuantityLike
        the window ends
    """

    from_angle: QuantityLike
    to_angle: QuantityLike


class JobCardClocking(TypedDict):
    """Where the ring gaps go.

    Attributes
    ----------
    zero_and_sense : str
        zero and sense of all angles
    thrust_axis : QuantityLike
        one end of the thrust axis; the pin axis lies at 90° to it
    gaps : Sequence[JobCardClockingGap]
        gaps of one piston's rings
    ring_pins : Sequence[JobCardClockingRingPin]
        two-stroke: pins that hold the ring ends, one a ring
    ring_count : int
        two-stroke: number of rings
    port_windows : Sequence[JobCardClockingPortWindow]
        two-stroke: port windows that the rings pass
    ring_end_half_width : QuantityLike
        two-stroke: how far the ring ends reach to either side of their pin
    """

    zero_and_sense: NotRequired[str]
    thrust_axis: NotRequired[QuantityLike]
    gaps: NotRequired[Sequence[JobCardClockingGap]]
    ring_pins: NotRequired[Sequence[JobCardClockingRingPin]]
    ring_count: NotRequired[int]
    port_windows: NotRequired[Sequence[JobCardClockingPortWindow]]
    ring_end_half_width: NotRequired[QuantityLike]


class JobCardFuel(TypedDict):
    """Fuel and oil of a two-stroke.

    Attributes
    ----------
    fuel : QuantityLike
        fuel to be mixed, without oil
    ratio_fuel_to_oil : float
        fuel to oil by volume: 32 stands for 32:1
    tank_has : QuantityLike
        mix that the tank already holds, fuel and oil together
    tank_ratio : float
        fuel to oil of the mix in the tank
    """

    fuel: NotRequired[QuantityLike]
    ratio_fuel_to_oil: NotRequired[float]
    tank_has: NotRequired[QuantityLike]
    tank_ratio: NotRequired[float]


class JobCardRunningInStep(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    fraction : float
        share of rated speed
    minutes : float
        minutes in this step; 0 for the open end
    """

    fraction: float
    minutes: float


class JobCardRunningIn(TypedDict):
    """Running in.

    Attributes
    ----------
    rated_speed : QuantityLike
        rated speed
    steps : Sequence[JobCardRunningInStep]
        steps of running in, with varied load; without them 50, 60, 75 and 100 % of rated speed
    compression_before : QuantityLike
        compression before running in, gauge
    compression_after : QuantityLike
        compression after running in, gauge
    leak_before : QuantityLike
        leak-down before running in
    leak_after : QuantityLike
        leak-down after running in
    """

    rated_speed: NotRequired[QuantityLike]
    steps: NotRequired[Sequence[JobCardRunningInStep]]
    compression_before: NotRequired[QuantityLike]
    compression_after: NotRequired[QuantityLike]
    leak_before: NotRequired[QuantityLike]
    leak_after: NotRequired[QuantityLike]


class JobCardPricePart(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    words : str
        what it is
    quantity : float
        how many (default 1.0)
    price : float
        price of one, without markup and tax
    """

    words: str
    quantity: NotRequired[float]
    price: float


class JobCardPriceMachineShopItem(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    words : str
        what it is
    quantity : float
        how many (default 1.0)
    price : float
        price of one, without markup and tax
    """

    words: str
    quantity: NotRequired[float]
    price: float


class JobCardPrice(TypedDict):
    """Prices.

    Attributes
    ----------
    currency : str
        currency of all prices and totals
    parts : Sequence[JobCardPricePart]
        parts
    machine_shop : Sequence[JobCardPriceMachineShopItem]
        work of the machine shop
    labour_hours : float
        hours of labour
    labour_rate : float
        price of one hour, without tax
    consumables : float
        consumables, without tax
    parts_markup : float
        markup on parts: 0.15 stands for 15 %
    machine_markup : float
        markup on the machine shop: 0.1 stands for 10 %
    contingency : float
        contingency on the subtotal: 0.1 stands for 10 %
    tax : float
        tax: 0.19 stands for 19 %
    labour_tax : float
        tax on labour, where it differs
    replacement_cost : float
        price of a replacement, with tax as the total has it
    money_decimals : int
        decimals of the currency, to which the final total is rounded
    price_of : Literal['re_ring', 'overbore', 'plated_cylinder', 'head']
        kind of work, for the parts that usually go with it (re_ring: new rings in the bore as it
        is; overbore: bored to an oversize piston; plated_cylinder: plated cylinder with a piston of
        its grade; head: work on valves and head)
    """

    currency: NotRequired[str]
    parts: NotRequired[Sequence[JobCardPricePart]]
    machine_shop: NotRequired[Sequence[JobCardPriceMachineShopItem]]
    labour_hours: NotRequired[float]
    labour_rate: NotRequired[float]
    consumables: NotRequired[float]
    parts_markup: NotRequired[float]
    machine_markup: NotRequired[float]
    contingency: NotRequired[float]
    tax: NotRequired[float]
    labour_tax: NotRequired[float]
    replacement_cost: NotRequired[float]
    money_decimals: NotRequired[int]
    price_of: NotRequired[Literal["re_ring", "overbore", "plated_cylinder", "head"]]


class JobCardLimits(TypedDict, total=False):
    """Limits of your own, by check: job-card.

    Attributes
    ----------
    compression_ratio : RatioLimitAsked
        static compression ratio within the maker's
    compression_reading : LimitAsked
        compression, brought to the altitude of its limit
    lowest_over_highest : RatioLimitAsked
        lowest cylinder over the highest
    bore_max : LimitAsked
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
    top_ring_gap : LimitAsked
        new top ring's gap
    second_ring_gap : LimitAsked
        new second ring's gap
    oil_rail_gap : LimitAsked
        oil rails' gap
    old_ring_gap : LimitAsked
        used ring's own gap
    class_limit : LimitAsked
        displacement within its class
    class_limit_after : LimitAsked
        displacement after machining within its class
    gasket_clearance_per_side : LimitAsked
        gasket clear of the new bore on each side
    compression_ratio_after : RatioLimitAsked
        static compression ratio after the overbore within the maker's
    rering_bore : LimitAsked
        largest bore after the hone
    rering_out_of_round : LimitAsked
        out-of-round of a bore to be kept, difference of two diameters
    rering_taper_pin_axis : LimitAsked
        pin-axis taper of a bore to be kept, difference of two diameters
    rering_taper_thrust_axis : LimitAsked
        thrust-axis taper of a bore to be kept, difference of two diameters
    rering_clearance : LimitAsked
        clearance after the hone
    rering_ring_gap : LimitAsked
        gap of a new top ring in the worn zone
    rering_score : LimitAsked
        deepest score against what the hone takes off, radial
    selected_piston_min : LimitAsked
        smallest clearance of each piston on offer
    selected_piston_max : LimitAsked
        largest clearance of each piston on offer
    big_end_side : LimitAsked
        side clearance of the big end
    big_end_radial : LimitAsked
        radial play of the big end
    small_end_tip_rock : LimitAsked
        rock at the small end; only the maker's limit judges it
    crank_runout_left : LimitAsked
        run-out of the left journal
    crank_runout_right : LimitAsked
        run-out of the right journal
    included_angle : LimitAsked
        included angle of the crosshatch
    sleeve_interference : LimitAsked
        interference of the sleeve at 20 °C
    sleeve_heating : LimitAsked
        temperature of the cylinder
    sleeve_interference_left : LimitAsked
        interference left when running
    clamp_over_proof : RatioLimitAsked
        clamp load over proof load
    thread_engagement : RatioLimitAsked
        thread engaged in aluminium over its diameter
    compression_gap_separation : LimitAsked
        compression gaps apart
    compression_gap_to_axis : LimitAsked
        compression gaps off the thrust and pin axes
    rail_arc_from_expander : LimitAsked
        rails from the expander's gap
    rail_to_compression_gap : LimitAsked
        rails off the compression gaps
    ring_end_margin : LimitAsked
        wall between ring ends and port windows
    repair_over_replacement : RatioLimitAsked
        price of the job over a replacement
    """

    compression_ratio: RatioLimitAsked
    compression_reading: LimitAsked
    lowest_over_highest: RatioLimitAsked
    bore_max: LimitAsked
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
    top_ring_gap: LimitAsked
    second_ring_gap: LimitAsked
    oil_rail_gap: LimitAsked
    old_ring_gap: LimitAsked
    class_limit: LimitAsked
    class_limit_after: LimitAsked
    gasket_clearance_per_side: LimitAsked
    compression_ratio_after: RatioLimitAsked
    rering_bore: LimitAsked
    rering_out_of_round: LimitAsked
    rering_taper_pin_axis: LimitAsked
    rering_taper_thrust_axis: LimitAsked
    rering_clearance: LimitAsked
    rering_ring_gap: LimitAsked
    rering_score: LimitAsked
    selected_piston_min: LimitAsked
    selected_piston_max: LimitAsked
    big_end_side: LimitAsked
    big_end_radial: LimitAsked
    small_end_tip_rock: LimitAsked
    crank_runout_left: LimitAsked
    crank_runout_right: LimitAsked
    included_angle: LimitAsked
    sleeve_interference: LimitAsked
    sleeve_heating: LimitAsked
    sleeve_interference_left: LimitAsked
    clamp_over_proof: RatioLimitAsked
    thread_engagement: RatioLimitAsked
    compression_gap_separation: LimitAsked
    compression_gap_to_axis: LimitAsked
    rail_arc_from_expander: LimitAsked
    rail_to_compression_gap: LimitAsked
    ring_end_margin: LimitAsked
    repair_over_replacement: RatioLimitAsked


@dataclass(frozen=True, kw_only=True)
class HoneAndReringResult:
    """None is what cannot be known.

    Attributes
    ----------
    hone_removal_used : Quantity
        what the hone takes off, on the diameter
    bore_after_hone : Quantity
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

    hone_removal_used: Quantity
    bore_after_hone: Quantity
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
    marks : tuple[str | float, ...]
        pistons offered, in the order given
    clearance_mins : Readings
        clearance of each piston in the smallest bore of the skirt travel, diametral
    clearance_maxs : Readings
        clearance of each piston in the largest bore of the skirt travel, diametral
    outcomes : tuple[str | float, ...]
        how each piston fits, by the figures alone
    best : str
        the piston that sits most central in the new fit
    best_piston : Quantity
        size of that piston
    best_fits : bool
        whether it lies within the new fit, by the figures alone
    """

    marks: tuple[str | float, ...]
    clearance_mins: Readings
    clearance_maxs: Readings
    outcomes: tuple[str | float, ...]
    best: str
    best_piston: Quantity
    best_fits: bool


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
            "hone_and_rering",
            "deglaze_and_rering",
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
    decision : str
        what to do with the cylinder
    reason : str
        why, in one line
    ways : tuple[CylinderWaysResultWay, ...]
        every way in order, whether it stands, and why
    must_not : tuple[str | float, ...]
        what must not be done to a bore of this kind
    work : str
        work that goes to the machine shop
    """

    decision: Literal[
        "leave_alone",
        "hone_and_rering",
        "deglaze_and_rering",
        "select_piston",
        "overbore",
        "replate",
        "sleeve",
        "replace",
        "not_settled",
        "find_out",
    ]
    reason: str
    ways: tuple[CylinderWaysResultWay, ...]
    must_not: tuple[str | float, ...]
    work: Literal["light_hone", "bore_and_hone", "sleeve", "replate"] | None = None


@dataclass(frozen=True, kw_only=True)
class PartsToOrderResultPart:
    """None is what cannot be known.

    Attributes
    ----------
    part : str | None
        what to order
    why : str | None
        why
    pieces : int | None
        how many, for all cylinders
    """

    part: str | None = None
    why: str | None = None
    pieces: int | None = None


@dataclass(frozen=True, kw_only=True)
class PartsToOrderResult:
    """None is what cannot be known.

    Attributes
    ----------
    parts : tuple[PartsToOrderResultPart, ...]
        parts that the decision asks for
    always_new : tuple[str | float, ...]
        new at every job, whatever the decision
    """

    parts: tuple[PartsToOrderResultPart, ...]
    always_new: tuple[str | float, ...]


@dataclass(frozen=True, kw_only=True)
class ReCheckResultValue:
    """None is what cannot be known.

    Attributes
    ----------
    what : str | None
        what to read
    standing : str | None
        where its limits come from
    low : Quantity | None
        not under this
    high : Quantity | None
        not over this
    """

    what: str | None = None
    standing: str | None = None
    low: Quantity | None = None
    high: Quantity | None = None


@dataclass(frozen=True, kw_only=True)
class ReCheckResultUsualValue:
    """None is what cannot be known.

    Attributes
    ----------
    what : str | None
        what to read
    standing : str | None
        where its limits come from
    low : Quantity | None
        not under this
    high : Quantity | None
        not over this
    """

    what: str | None = None
    standing: str | None = None
    low: Quantity | None = None
    high: Quantity | None = None


@dataclass(frozen=True, kw_only=True)
class ReCheckResult:
    """None is what cannot be known.

    Attributes
    ----------
    values : tuple[ReCheckResultValue, ...] | None
        values of the order and of the maker
    usual_values : tuple[ReCheckResultUsualValue, ...] | None
        values that shops keep where the maker gives none
    """

    values: tuple[ReCheckResultValue, ...] | None = None
    usual_values: tuple[ReCheckResultUsualValue, ...] | None = None


@dataclass(frozen=True, kw_only=True)
class BeforeAssemblyResult:
    """None is what cannot be known.

    Attributes
    ----------
    root_cause : tuple[str | float, ...]
        causes to look for, in this order
    checks : tuple[str | float, ...]
        to be tried before the cylinder goes on
    clean_out : tuple[str | float, ...] | None
        after a seizure, or where anything broke: what to clean out
    """

    root_cause: tuple[str | float, ...]
    checks: tuple[str | float, ...]
    clean_out: tuple[str | float, ...] | None = None


@dataclass(frozen=True, kw_only=True)
class JobCardResult:
    """None is what cannot be known.

    Attributes
    ----------
    compression_ratio : CompressionRatioResult | None
    dynamic_ratio : DynamicRatioResult | None
    port_timing : PortTimingResult | None
    cranking_pressure : CrankingPressureResult | None
    air_pressure : AirPressureResult | None
    compression_level : CompressionLevelResult | None
    cylinder_spread : CylinderSpreadResult | None
    wet_gain : WetGainResult | None
    pressure_build_up : PressureBuildUpResult | None
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
    hone_and_rering : HoneAndReringResult | None
    piston_selection : PistonSelectionResult | None
    cylinder_decision : CylinderWaysResult | None
    rod_play : RodPlayResult | None
    dynamic_ratio_after : DynamicRatioResult | None
    cranking_pressure_after : CrankingPressureResult | None
    hot_clearance : HotClearanceResult | None
    crosshatch : CrosshatchResult | None
    sleeve_fit : SleeveFitResult | None
    order_card : OrderCardResult | None
    parts_to_order : PartsToOrderResult | None
    re_check : ReCheckResult | None
    before_assembly : BeforeAssemblyResult | None
    torque_steps : TorqueStepsResult | None
    fastener_order : FastenerOrderResult | None
    ring_clocking : RingClockingResult | None
    premix : PremixResult | None
    run_in : RunInResult | None
    estimate : EstimateResult | None
    measure_next : tuple[MeasureNext, ...]
    """

    compression_ratio: CompressionRatioResult | None = None
    dynamic_ratio: DynamicRatioResult | None = None
    port_timing: PortTimingResult | None = None
    cranking_pressure: CrankingPressureResult | None = None
    air_pressure: AirPressureResult | None = None
    compression_level: CompressionLevelResult | None = None
    cylinder_spread: CylinderSpreadResult | None = None
    wet_gain: WetGainResult | None = None
    pressure_build_up: PressureBuildUpResult | None = None
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
    hone_and_rering: HoneAndReringResult | None = None
    piston_selection: PistonSelectionResult | None = None
    cylinder_decision: CylinderWaysResult | None = None
    rod_play: RodPlayResult | None = None
    dynamic_ratio_after: DynamicRatioResult | None = None
    cranking_pressure_after: CrankingPressureResult | None = None
    hot_clearance: HotClearanceResult | None = None
    crosshatch: CrosshatchResult | None = None
    sleeve_fit: SleeveFitResult | None = None
    order_card: OrderCardResult | None = None
    parts_to_order: PartsToOrderResult | None = None
    re_check: ReCheckResult | None = None
    before_assembly: BeforeAssemblyResult | None = None
    torque_steps: TorqueStepsResult | None = None
    fastener_order: FastenerOrderResult | None = None
    ring_clocking: RingClockingResult | None = None
    premix: PremixResult | None = None
    run_in: RunInResult | None = None
    estimate: EstimateResult | None = None
    measure_next: tuple[MeasureNext, ...]


class JobCard(Calculation[JobCardResult]):
    """Job card.

    The whole job in one call, from whatever is known so far, and what to measure next.
    """

    NAME = "job-card"
    RESULT = JobCardResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "engine": {
            "bore": "quantity",
            "stroke": "quantity",
            "rod": "quantity",
            "clearance": "quantity",
            "chamber": "quantity",
            "gasket_bore": "quantity",
            "gasket_area": "quantity",
            "gasket_thickness": "quantity",
            "deck": "quantity",
            "dome": "quantity",
            "dish": "quantity",
            "crevice": "quantity",
            "land": "quantity",
            "land_height": "quantity",
            "burette_fill": "quantity",
            "plug_diameter": "quantity",
            "plug_reach": "quantity",
            "intake_closes": "quantity",
            "closing_lift": "quantity",
            "decompressor_closes": "quantity",
            "exhaust_port_top_below_deck": "quantity",
            "transfer_port_top_below_deck": "quantity",
            "piston_edge_below_deck_at_tdc": "quantity",
            "thinner_base_gasket_by": "quantity",
            "class_limit": "quantity",
        },
        "place": {"altitude": "quantity", "air_pressure": "quantity", "weather_report": "quantity"},
        "compression": {
            "reading": "quantity",
            "stroke_readings": "readings",
            "readings": "readings",
            "wet": "quantity",
            "oil": "quantity",
            "expected": "quantity",
            "limit_altitude": "quantity",
            "gauge_error": "quantity",
            "repeat": "quantity",
            "weather": "quantity",
            "throttle_closed_manifold": "quantity",
            "battery": "quantity",
        },
        "cylinder": {
            "survey": {"depth": "readings", "pin_axis": "readings", "thrust_axis": "readings"},
            "bore_max": "quantity",
            "bore_min": "quantity",
            "unworn_bore": "quantity",
            "skirt_from": "quantity",
            "skirt_to": "quantity",
            "bore_temperature": "quantity",
            "bore_alpha": "quantity",
            "scores": [
                {"local": "quantity", "depth_radial": "quantity", "depth_from_deck": "quantity"}
            ],
            "liner_od": "quantity",
            "core_shift": "quantity",
        },
        "piston": {
            "piston": "quantity",
            "piston_new": "quantity",
            "height_above_skirt_bottom": "quantity",
            "piston_temperature": "quantity",
            "piston_alpha": "quantity",
            "rering_piston": "quantity",
            "pin": "quantity",
            "pin_worn": "quantity",
            "piston_pin_bore": "quantity",
            "small_end_bore": "quantity",
        },
        "rings": {
            "gap_bore": "quantity",
            "top_measured": "quantity",
            "second_measured": "quantity",
            "oil_rail_measured": "quantity",
            "old_gap": "quantity",
            "old_gap_depth": "quantity",
            "old_gap_pin_axis": "quantity",
            "old_gap_thrust_axis": "quantity",
            "gap_when_new": "quantity",
            "worn_pin_axis": "quantity",
            "worn_thrust_axis": "quantity",
            "rering_gap": "quantity",
            "top_feeler": "quantity",
            "top_groove_width": "quantity",
            "top_ring_width": "quantity",
            "second_feeler": "quantity",
            "second_groove_width": "quantity",
            "second_ring_width": "quantity",
            "top_groove_root": "quantity",
            "top_ring_thickness": "quantity",
            "second_groove_root": "quantity",
            "second_ring_thickness": "quantity",
        },
        "plan": {
            "new_bore": "quantity",
            "new_dome": "quantity",
            "new_dish": "quantity",
            "new_deck": "quantity",
            "new_gasket_bore": "quantity",
            "new_gasket_thickness": "quantity",
            "hone_removal": "quantity",
            "pistons": [{"piston": "quantity"}],
            "clearance_low": "quantity",
            "clearance_high": "quantity",
            "wanted_clearance": "quantity",
            "hone_stock": "quantity",
            "makers_largest_oversize": "quantity",
            "returned_readings": "readings",
            "returned_out_of_round": "quantity",
            "returned_taper": "quantity",
        },
        "order": {
            "out_of_round_max": "quantity",
            "taper_max": "quantity",
            "proof_depths": "readings",
            "torque": "quantity",
            "port_chamfer_low": "quantity",
            "port_chamfer_high": "quantity",
            "port_chamfer_angle": "quantity",
            "bridge_relief_low": "quantity",
            "bridge_relief_high": "quantity",
            "mouth_chamfer_low": "quantity",
            "mouth_chamfer_high": "quantity",
            "mouth_chamfer_angle": "quantity",
            "deck_height": "quantity",
            "deck_cut": "quantity",
            "wall_floor": "quantity",
            "heads": {
                "seat_angle": "quantity",
                "intake_seat_width_low": "quantity",
                "intake_seat_width_high": "quantity",
                "exhaust_seat_width_low": "quantity",
                "exhaust_seat_width_high": "quantity",
                "sink_max": "quantity",
                "intake_guide_low": "quantity",
                "intake_guide_high": "quantity",
                "exhaust_guide_low": "quantity",
                "exhaust_guide_high": "quantity",
                "flatness_max": "quantity",
                "skim_max": "quantity",
                "spring_installed_height": "quantity",
            },
        },
        "bottom": {
            "big_end_side": "quantity",
            "big_end_radial": "quantity",
            "small_end_tip_rock": "quantity",
            "big_end_width": "quantity",
            "runout_tir_left": "quantity",
            "runout_tir_right": "quantity",
        },
        "hone": {
            "spindle": "quantity",
            "hone_travel": "quantity",
            "full_cycles": "quantity",
            "wanted_included": "quantity",
        },
        "sleeve": {
            "cylinder_bore": "quantity",
            "sleeve_od": "quantity",
            "drop_in_clearance": "quantity",
            "sleeve_temperature": "quantity",
            "running_temperature": "quantity",
            "alpha_cylinder": "quantity",
            "alpha_sleeve": "quantity",
        },
        "hot": {"bore_hot": "quantity", "piston_hot": "quantity"},
        "torque": {
            "final_torque": "quantity",
            "wrench_length": "quantity",
            "adapter_extension": "quantity",
            "adapter_angle": "quantity",
            "wrench_top": "quantity",
            "thread_dia": "quantity",
            "pitch": "quantity",
            "thread_pitch_dia": "quantity",
            "thread_minor_dia": "quantity",
            "stress_area": "quantity",
            "proof_stress": "quantity",
            "turns": "readings",
            "thread_engagement": "quantity",
        },
        "fastening": {
            "fasteners": [{"x": "quantity", "y": "quantity"}],
            "relief_step_turn": "quantity",
        },
        "clocking": {
            "thrust_axis": "quantity",
            "gaps": [{"angle": "quantity"}],
            "ring_pins": [{"pin_angle": "quantity"}],
            "port_windows": [{"from_angle": "quantity", "to_angle": "quantity"}],
            "ring_end_half_width": "quantity",
        },
        "fuel": {"fuel": "quantity", "tank_has": "quantity"},
        "running_in": {
            "rated_speed": "quantity",
            "compression_before": "quantity",
            "compression_after": "quantity",
            "leak_before": "quantity",
            "leak_after": "quantity",
        },
        "limits": {
            "compression_reading": {"low": "quantity", "high": "quantity"},
            "bore_max": {"low": "quantity", "high": "quantity"},
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
            "top_ring_gap": {"low": "quantity", "high": "quantity"},
            "second_ring_gap": {"low": "quantity", "high": "quantity"},
            "oil_rail_gap": {"low": "quantity", "high": "quantity"},
            "old_ring_gap": {"low": "quantity", "high": "quantity"},
            "class_limit": {"low": "quantity", "high": "quantity"},
            "class_limit_after": {"low": "quantity", "high": "quantity"},
            "gasket_clearance_per_side": {"low": "quantity", "high": "quantity"},
            "rering_bore": {"low": "quantity", "high": "quantity"},
            "rering_out_of_round": {"low": "quantity", "high": "quantity"},
            "rering_taper_pin_axis": {"low": "quantity", "high": "quantity"},
            "rering_taper_thrust_axis": {"low": "quantity", "high": "quantity"},
            "rering_clearance": {"low": "quantity", "high": "quantity"},
            "rering_ring_gap": {"low": "quantity", "high": "quantity"},
            "rering_score": {"low": "quantity", "high": "quantity"},
            "selected_piston_min": {"low": "quantity", "high": "quantity"},
            "selected_piston_max": {"low": "quantity", "high": "quantity"},
            "big_end_side": {"low": "quantity", "high": "quantity"},
            "big_end_radial": {"low": "quantity", "high": "quantity"},
            "small_end_tip_rock": {"low": "quantity", "high": "quantity"},
            "crank_runout_left": {"low": "quantity", "high": "quantity"},
            "crank_runout_right": {"low": "quantity", "high": "quantity"},
            "included_angle": {"low": "quantity", "high": "quantity"},
            "sleeve_interference": {"low": "quantity", "high": "quantity"},
            "sleeve_heating": {"low": "quantity", "high": "quantity"},
            "sleeve_interference_left": {"low": "quantity", "high": "quantity"},
            "compression_gap_separation": {"low": "quantity", "high": "quantity"},
            "compression_gap_to_axis": {"low": "quantity", "high": "quantity"},
            "rail_arc_from_expander": {"low": "quantity", "high": "quantity"},
            "rail_to_compression_gap": {"low": "quantity", "high": "quantity"},
            "ring_end_margin": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        about: JobCardAbout | None = None,
        engine: JobCardEngine | None = None,
        place: JobCardPlace | None = None,
        compression: JobCardCompression | None = None,
        cylinder: JobCardCylinder | None = None,
        piston: JobCardPiston | None = None,
        rings: JobCardRings | None = None,
        plan: JobCardPlan | None = None,
        order: JobCardOrder | None = None,
        bottom: JobCardBottom | None = None,
        hone: JobCardHone | None = None,
        sleeve: JobCardSleeve | None = None,
        hot: JobCardHot | None = None,
        torque: JobCardTorque | None = None,
        fastening: JobCardFastening | None = None,
        clocking: JobCardClocking | None = None,
        fuel: JobCardFuel | None = None,
        running_in: JobCardRunningIn | None = None,
        price: JobCardPrice | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: JobCardLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[JobCardResult]:
        """Ask ``job-card`` one question.

        Parameters
        ----------
        about : JobCardAbout, optional
            what the job is about
        engine : JobCardEngine, optional
            the engine as built, and as measured
        place : JobCardPlace, optional
            where the engine was tested
        compression : JobCardCompression, optional
            the compression test
        cylinder : JobCardCylinder, optional
            the cylinder on the bench
        piston : JobCardPiston, optional
            the piston on the bench, and its pin
        rings : JobCardRings, optional
            the rings, new and old
        plan : JobCardPlan, optional
            what is meant to be done, and what is on the shelf
        order : JobCardOrder, optional
            what the order to the machinist states besides
        bottom : JobCardBottom, optional
            the rod and the crank below
        hone : JobCardHone, optional
            the machinist's hone
        sleeve : JobCardSleeve, optional
            a new sleeve
        hot : JobCardHot, optional
            temperatures when running
        torque : JobCardTorque, optional
            one kind of fastener and its torque
        fastening : JobCardFastening, optional
            where the fasteners of one face stand
        clocking : JobCardClocking, optional
            where the ring gaps go
        fuel : JobCardFuel, optional
            fuel and oil of a two-stroke
        running_in : JobCardRunningIn, optional
            running in
        price : JobCardPrice, optional
            prices
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice limits judge where the request gives none (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : JobCardLimits, optional
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
            "about": about,
            "engine": engine,
            "place": place,
            "compression": compression,
            "cylinder": cylinder,
            "piston": piston,
            "rings": rings,
            "plan": plan,
            "order": order,
            "bottom": bottom,
            "hone": hone,
            "sleeve": sleeve,
            "hot": hot,
            "torque": torque,
            "fastening": fastening,
            "clocking": clocking,
            "fuel": fuel,
            "running_in": running_in,
            "price": price,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
