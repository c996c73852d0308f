"""Job card.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._parts import MeasureNext
from ringland._generated._words import Defaults, Rule, Units
from ringland._generated.air_pressure import AirPressureResult
from ringland._generated.compression_level import CompressionLevelResult
from ringland._generated.compression_ratio import CompressionRatioResult
from ringland._generated.cranking_pressure import CrankingPressureResult
from ringland._generated.cylinder_spread import CylinderSpreadResult
from ringland._generated.displacement import DisplacementResult
from ringland._generated.dynamic_ratio import DynamicRatioResult
from ringland._generated.overbore_ratio import OverboreRatioResult
from ringland._generated.piston_clearance import PistonClearanceResult
from ringland._generated.port_timing import PortTimingResult
from ringland._generated.pressure_build_up import PressureBuildUpResult
from ringland._generated.ring_gap import RingGapResult
from ringland._generated.wet_gain import WetGainResult
from ringland._types import QuantityLike, ReadingsLike


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
    """

    survey: NotRequired[JobCardCylinderSurvey]
    bore_max: NotRequired[QuantityLike]
    bore_min: NotRequired[QuantityLike]
    unworn_bore: NotRequired[QuantityLike]
    skirt_from: NotRequired[QuantityLike]
    skirt_to: NotRequired[QuantityLike]
    bore_temperature: NotRequired[QuantityLike]
    bore_alpha: NotRequired[QuantityLike]


class JobCardPiston(TypedDict):
    """The piston on the bench.

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


class JobCardPlan(TypedDict):
    """What is meant to be done.

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
    """

    new_bore: NotRequired[QuantityLike]
    new_dome: NotRequired[QuantityLike]
    new_dish: NotRequired[QuantityLike]
    new_deck: NotRequired[QuantityLike]
    new_gasket_bore: NotRequired[QuantityLike]
    new_gasket_thickness: NotRequired[QuantityLike]


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
    class_limit : LimitAsked
        displacement within its class
    class_limit_after : LimitAsked
        displacement after machining within its class
    gasket_clearance_per_side : LimitAsked
        gasket clear of the new bore on each side
    compression_ratio_after : RatioLimitAsked
        static compression ratio after the overbore within the maker's
    piston_clearance_max : LimitAsked
        largest clearance
    piston_clearance_min : LimitAsked
        smallest clearance
    top_ring_gap : LimitAsked
        new top ring's gap
    second_ring_gap : LimitAsked
        new second ring's gap
    oil_rail_gap : LimitAsked
        oil rails' gap
    old_ring_gap : LimitAsked
        used ring's own gap
    """

    compression_ratio: RatioLimitAsked
    compression_reading: LimitAsked
    lowest_over_highest: RatioLimitAsked
    class_limit: LimitAsked
    class_limit_after: LimitAsked
    gasket_clearance_per_side: LimitAsked
    compression_ratio_after: RatioLimitAsked
    piston_clearance_max: LimitAsked
    piston_clearance_min: LimitAsked
    top_ring_gap: LimitAsked
    second_ring_gap: LimitAsked
    oil_rail_gap: LimitAsked
    old_ring_gap: LimitAsked


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
    displacement : DisplacementResult | None
    overbore_ratio : OverboreRatioResult | None
    piston_clearance : PistonClearanceResult | None
    ring_gap : RingGapResult | None
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
    displacement: DisplacementResult | None = None
    overbore_ratio: OverboreRatioResult | None = None
    piston_clearance: PistonClearanceResult | None = None
    ring_gap: RingGapResult | None = None
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
        },
        "piston": {
            "piston": "quantity",
            "piston_new": "quantity",
            "height_above_skirt_bottom": "quantity",
            "piston_temperature": "quantity",
            "piston_alpha": "quantity",
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
        },
        "plan": {
            "new_bore": "quantity",
            "new_dome": "quantity",
            "new_dish": "quantity",
            "new_deck": "quantity",
            "new_gasket_bore": "quantity",
            "new_gasket_thickness": "quantity",
        },
        "limits": {
            "compression_reading": {"low": "quantity", "high": "quantity"},
            "class_limit": {"low": "quantity", "high": "quantity"},
            "class_limit_after": {"low": "quantity", "high": "quantity"},
            "gasket_clearance_per_side": {"low": "quantity", "high": "quantity"},
            "piston_clearance_max": {"low": "quantity", "high": "quantity"},
            "piston_clearance_min": {"low": "quantity", "high": "quantity"},
            "top_ring_gap": {"low": "quantity", "high": "quantity"},
            "second_ring_gap": {"low": "quantity", "high": "quantity"},
            "oil_rail_gap": {"low": "quantity", "high": "quantity"},
            "old_ring_gap": {"low": "quantity", "high": "quantity"},
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
            the piston on the bench
        rings : JobCardRings, optional
            the rings, new and old
        plan : JobCardPlan, optional
            what is meant to be done
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
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
