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
from ringland._generated._parts import MeasureNext, NotWorkedOut
from ringland._generated._words import Defaults, Rule, Units
from ringland._generated.air_pressure import AirPressureResult
from ringland._generated.bore_order import BoreOrderResult
from ringland._generated.bore_survey import BoreSurveyResult
from ringland._generated.cam_check import CamCheckResult
from ringland._generated.charged_crank_torque import ChargedCrankTorqueResult
from ringland._generated.clean_up import CleanUpResult
from ringland._generated.compression_level import CompressionLevelResult
from ringland._generated.compression_ratio import CompressionRatioResult
from ringland._generated.crankcase_leak import CrankcaseLeakResult
from ringland._generated.cranking_pressure import CrankingPressureResult
from ringland._generated.crosshatch import CrosshatchResult
from ringland._generated.cylinder_spread import CylinderSpreadResult
from ringland._generated.diagnosis import DiagnosisResult
from ringland._generated.displacement import DisplacementResult
from ringland._generated.dynamic_ratio import DynamicRatioResult
from ringland._generated.estimate import EstimateResult
from ringland._generated.fastener_order import FastenerOrderResult
from ringland._generated.flatness import FlatnessResult
from ringland._generated.guide_clearance import GuideClearanceResult
from ringland._generated.hot_clearance import HotClearanceResult
from ringland._generated.lash_screw import LashScrewResult
from ringland._generated.lash_shim import LashShimResult
from ringland._generated.leak_area import LeakAreaResult
from ringland._generated.leak_down import LeakDownResult
from ringland._generated.liner_wall import LinerWallResult
from ringland._generated.oil_use import OilUseResult
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
from ringland._generated.squish import SquishResult
from ringland._generated.torque_steps import TorqueStepsResult
from ringland._generated.valve_seat import ValveSeatResult
from ringland._generated.valve_sink import ValveSinkResult
from ringland._generated.valve_spring import ValveSpringResult
from ringland._generated.wanted_ratio import WantedRatioResult
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
    owner_says : str
        what the owner says
    notes : str
        notes from the bench
    """

    job: NotRequired[str]
    machine: NotRequired[str]
    owner_says: NotRequired[str]
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
    cylinder_count : int
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
    exhaust_duration_wanted : QuantityLike
        exhaust port open as wanted, crank degrees: asks for the base gasket that gives it
    transfer_duration_wanted : QuantityLike
        transfer ports open as wanted, crank degrees: asks for the base gasket that gives it
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
    cylinder_count: NotRequired[int]
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
    exhaust_duration_wanted: NotRequired[QuantityLike]
    transfer_duration_wanted: NotRequired[QuantityLike]
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
    first_again : QuantityLike
        the first cylinder read once more at the end, gauge
    layout : Literal['in_line', 'vee', 'opposed']
        how the cylinders stand; in two banks the first half of the readings is one bank (in_line:
        all cylinders in one bank, read in order; vee: two banks, read bank by bank; opposed: two
        opposed banks, read bank by bank)
    wet : QuantityLike
        reading with the oil in, gauge, same gauge and starter
    wet_oil : QuantityLike
        oil put in, measured by syringe
    n : float
        compression exponent of the gain that oil's own volume makes
    cylinder_upright : bool
        the cylinder stands upright
    expected : QuantityLike
        pressure expected of a sound cylinder here, gauge
    n_low : float
        compression exponent of a slow, cold or leaky engine
    n_mid : float
        compression exponent of a usual engine on the starter
    n_high : float
        compression exponent of a fast, warm and tight engine
    expected_altitude : QuantityLike
        altitude that the limit is stated for; absent, sea level
    gauge_error : QuantityLike
        maximum error of the gauge, ± share of the reading
    repeatability : QuantityLike
        how well the reading repeats, ±
    hose_error : QuantityLike
        error of the reading by the room in the gauge's hose; negative: it reads low
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
    first_again: NotRequired[QuantityLike]
    layout: NotRequired[Literal["in_line", "vee", "opposed"]]
    wet: NotRequired[QuantityLike]
    wet_oil: NotRequired[QuantityLike]
    n: NotRequired[float]
    cylinder_upright: NotRequired[bool]
    expected: NotRequired[QuantityLike]
    n_low: NotRequired[float]
    n_mid: NotRequired[float]
    n_high: NotRequired[float]
    expected_altitude: NotRequired[QuantityLike]
    gauge_error: NotRequired[QuantityLike]
    repeatability: NotRequired[QuantityLike]
    hose_error: NotRequired[QuantityLike]
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


class JobCardLeakDown(TypedDict):
    """The leak-down test.

    Attributes
    ----------
    supply_pressure : QuantityLike
        pressure before the restrictor, gauge, read while the air flows
    cylinder_pressure : QuantityLike
        pressure that the cylinder holds, gauge, the crank locked
    rocked_forward_pressure : QuantityLike
        the same with the crank rocked a little forward, gauge
    rocked_back_pressure : QuantityLike
        the same with the crank rocked a little back, gauge
    restrictor : QuantityLike
        bore of the tester's restrictor
    gauge_difference : QuantityLike
        cylinder gauge over supply gauge on one pressure (hose plugged); 0 for one differential
        gauge
    gauge_residual : QuantityLike
        what may be left of each gauge's error once the difference is taken out, ±
    gauge_full_scale : QuantityLike
        full scale of both gauges
    leak_gauge_error : QuantityLike
        maximum error of each gauge, ± share of full scale
    good_to : QuantityLike
        tester maker's own scale: good up to
    serviceable_to : QuantityLike
        tester maker's own scale: serviceable up to
    worn_to : QuantityLike
        tester maker's own scale: worn up to
    duty : Literal['normal', 'racing']
        what the engine is for (normal: road, field and workshop engines; racing: racing engine)
    piston_at : str
        where the piston stood (firing_tdc: firing top dead centre, all valves or ports shut;
        overlap_tdc: the other top dead centre of a four-stroke, where both valves are open;
        below_tdc: part of the way down, the crank held, to try the bore lower down; unknown: not
        known)
    heard_at : str
        where the air is heard, the loudest place (oil_filler_or_breather: oil filler, dipstick hole
        or breather; exhaust: exhaust outlet; intake: carburettor or intake; radiator: bubbles in
        radiator or header tank; neighbour_plug_hole: plug hole of the neighbour; head_joint: foam
        at head joint, plug, adaptor or stud; nowhere: somebody listened and heard nothing)
    other_restrictor : QuantityLike
        bore of the other tester's restrictor; absent, the same
    other_supply_pressure : QuantityLike
        supply of the other tester, gauge; absent, the same
    coefficient_uncertainty : QuantityLike
        how far the flow coefficients of hole and restrictors may be apart, ±
    held_at : QuantityLike
        crank angle from top dead centre at which it is held
    second : QuantityLike
        a second crank angle, to compare
    opens : QuantityLike
        crank angle after top dead centre at which a valve or port first lets the air out
    bar : QuantityLike
        bar on the crank nut, nut to hand
    """

    supply_pressure: NotRequired[QuantityLike]
    cylinder_pressure: NotRequired[QuantityLike]
    rocked_forward_pressure: NotRequired[QuantityLike]
    rocked_back_pressure: NotRequired[QuantityLike]
    restrictor: NotRequired[QuantityLike]
    gauge_difference: NotRequired[QuantityLike]
    gauge_residual: NotRequired[QuantityLike]
    gauge_full_scale: NotRequired[QuantityLike]
    leak_gauge_error: NotRequired[QuantityLike]
    good_to: NotRequired[QuantityLike]
    serviceable_to: NotRequired[QuantityLike]
    worn_to: NotRequired[QuantityLike]
    duty: NotRequired[Literal["normal", "racing"]]
    piston_at: NotRequired[Literal["firing_tdc", "overlap_tdc", "below_tdc", "unknown"]]
    heard_at: NotRequired[
        Literal[
            "oil_filler_or_breather",
            "exhaust",
            "intake",
            "radiator",
            "neighbour_plug_hole",
            "head_joint",
            "nowhere",
        ]
    ]
    other_restrictor: NotRequired[QuantityLike]
    other_supply_pressure: NotRequired[QuantityLike]
    coefficient_uncertainty: NotRequired[QuantityLike]
    held_at: NotRequired[QuantityLike]
    second: NotRequired[QuantityLike]
    opens: NotRequired[QuantityLike]
    bar: NotRequired[QuantityLike]


class JobCardCrankcase(TypedDict):
    """The test of a two-stroke's crankcase.

    Attributes
    ----------
    start : QuantityLike
        pressure test: pressure at the start, gauge; never above the maker's, 60 kPa at most
    end : QuantityLike
        pressure test: pressure at the end, gauge
    minutes : float
        pressure test: minutes from start to end
    start_temperature : QuantityLike
        pressure test: temperature at the start
    end_temperature : QuantityLike
        pressure test: temperature at the end
    vacuum_start : QuantityLike
        vacuum test: pressure at the start, gauge, below zero
    vacuum_end : QuantityLike
        vacuum test: pressure at the end, gauge, below zero
    vacuum_minutes : float
        vacuum test: minutes from start to end
    vacuum_start_temperature : QuantityLike
        vacuum test: temperature at the start
    vacuum_end_temperature : QuantityLike
        vacuum test: temperature at the end
    trapped_volume : QuantityLike
        air shut in: crankcase, ducts and hose
    plates_soaped : bool
        blanking plates, plug and hose soaped and found tight
    second_crank_position : bool
        repeated with the crank turned to another position
    """

    start: NotRequired[QuantityLike]
    end: NotRequired[QuantityLike]
    minutes: NotRequired[float]
    start_temperature: NotRequired[QuantityLike]
    end_temperature: NotRequired[QuantityLike]
    vacuum_start: NotRequired[QuantityLike]
    vacuum_end: NotRequired[QuantityLike]
    vacuum_minutes: NotRequired[float]
    vacuum_start_temperature: NotRequired[QuantityLike]
    vacuum_end_temperature: NotRequired[QuantityLike]
    trapped_volume: NotRequired[QuantityLike]
    plates_soaped: NotRequired[bool]
    second_crank_position: NotRequired[bool]


class JobCardOil(TypedDict):
    """Oil that the engine used.

    Attributes
    ----------
    added : QuantityLike
        oil added to bring the level back to where it stood
    distance_km : float
        distance covered meanwhile, km
    hours : float
        hours run meanwhile, h
    fuel_used : QuantityLike
        fuel used meanwhile
    leaks_seen : bool
        oil seen outside: joints, seals, breather
    level_read_alike : bool
        level read alike both times: hot or cold, level ground, stick screwed in or resting
    overfilled : bool
        filled above the upper mark at the start
    fuel_in_oil : bool
        oil smells of fuel or has gone thin
    not_run_in_yet : bool
        engine still running in
    """

    added: NotRequired[QuantityLike]
    distance_km: NotRequired[float]
    hours: NotRequired[float]
    fuel_used: NotRequired[QuantityLike]
    leaks_seen: NotRequired[bool]
    level_read_alike: NotRequired[bool]
    overfilled: NotRequired[bool]
    fuel_in_oil: NotRequired[bool]
    not_run_in_yet: NotRequired[bool]


class JobCardSignsWeight(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    evidence : str
        evidence (throttle_not_fully_open: throttle or choke not held fully open during the test;
        cranking_slow: cranking slow, or battery below 9.6 V while cranking, or a half-hearted kick;
        engine_cold_in_test: engine cold though the maker's figure is for a warm engine;
        readings_not_repeating: repeat readings on the same cylinder differ by more than 5 %;
        gauge_adaptor_unsuitable: gauge check valve is not at the plug end, or tyre-type core in the
        adaptor; decompressor_not_held_off: engine has an automatic decompressor and it was not held
        off; changes_with_decompressor_held_off: reading or leak changes when the decompressor is
        held off; compression_low_one_cylinder: dry reading below 0.80 of expected in one cylinder;
        compression_low_all_alike: all cylinders low by about the same share; compression_high: dry
        reading above 1.10 of expected; compression_good: dry reading 0.90 to 1.10 of expected;
        wet_gain_large: excess wet gain 15 % or more (gain less oil-volume gain); wet_gain_none:
        excess wet gain below 5 % with a low dry reading; wet_gain_some: excess wet gain 5 to 15 %;
        wet_still_low_after_gain: wet reading still below 0.80 of expected after a large gain;
        one_cylinder_low: lowest cylinder below 0.85 of highest, neighbours sound;
        two_neighbours_low: two neighbours low by about the same share (within 10 %), others sound;
        cylinders_even: spread 10 % or less; builds_up_but_short: builds up stroke by stroke and
        ends short: q below 0.8 (only with a baseline of the same gauge); fixed_leak_pattern: low
        and builds up like a fixed leak: q 0.8 or more (only with a baseline of the same gauge);
        full_in_few_strokes: full reading reached in the first three or four strokes;
        jumps_to_normal: jumps: low strokes then a sudden normal one; leak_down_tight: leak-down 10
        % or less; leak_down_large: leak-down above 30 %; low_but_tight: low compression
        (compression_low_one_cylinder or compression_low_all_alike) with leak-down 10 % or less
        (leak_down_tight); air_at_breather: air heard at oil filler, dipstick hole or breather;
        air_at_exhaust: air heard at the exhaust outlet; air_at_intake: air heard at the intake;
        bubbles_in_coolant: bubbles in the radiator or header tank; air_at_neighbour_plug_hole: air
        heard at the neighbour's plug hole; foam_at_head_joint: soapy water foams at the head joint,
        plug or stud; two_stroke_air_at_intake: air heard at the carburettor or intake at top dead
        centre; two_stroke_air_at_exhaust: air heard at the exhaust at top dead centre;
        leak_drops_after_tapping: leak drops by half or more after tapping the valve or rocking the
        crank; blue_smoke_on_overrun: blue smoke on overrun or on reopening after overrun;
        blue_smoke_on_load: blue smoke under acceleration or steady load; blue_puff_at_start: blue
        puff at start after standing, then clears; white_sweet_smoke: white smoke, sweet, does not
        clear when warm; black_smoke: black smoke; gear_oil_smoke: heavy smoke, gear-oil smell,
        gearbox level falling; plug_oily: plug oily and wet, in one cylinder; plug_steam_cleaned:
        plug and crown look steam-cleaned; plug_metal_specks: metal specks on the plug nose;
        plug_pale_blistered: plug nose blistered and very pale; thick_deposits_seen: thick hard
        deposits on crown and head through a borescope; oil_use_high_cylinder_tight: oil use above
        limit, compression and leak-down normal; oil_use_high_compression_low: oil use above limit,
        compression low; oil_use_negligible: oil use negligible; coolant_falls_no_leak_seen: coolant
        falls, no outside leak; oil_and_coolant_mixed: oil and coolant mixed;
        combustion_gas_in_coolant: combustion gas shown in the coolant by chemical test;
        crankcase_pressure_high: crankcase pressure at warm idle above the maker's limit, breather
        clear; crankcase_pressure_normal: crankcase pressure normal; crankcase_leaks: crankcase
        fails the pressure or the vacuum test; crankcase_holds: crankcase holds pressure and vacuum;
        exhaust_lash_tight: lash below the minimum on an exhaust valve of the low cylinder;
        intake_lash_tight: lash below the minimum on an intake valve of the low cylinder;
        lash_loose: lash above the maximum; exhaust_leaks_with_lash_right: lash set right, exhaust
        valve still leaks at leak-down; intake_leaks_with_lash_right: lash set right, intake valve
        still leaks at leak-down; lash_within: lash measured within limits; hardly_any_resistance:
        kick or rope starter turns with hardly any resistance; kicks_back: kicks back or starter
        stalls on compression; spits_back_through_intake: spitting back through the intake;
        pops_in_exhaust: popping in the exhaust, even puffing missing a beat; pinks_or_runs_on:
        pinking or running-on; slap_when_cold: slap when cold, fades when warm; tick_at_half_speed:
        light tick at half engine speed; overheated_or_seized: overheat or seizure reported;
        dust_past_filter: dust past the air filter; recent_valve_train_work: recent valve-train or
        chain work; stood_unused: stood unused for months; timing_marks_off: timing marks found out
        of line)
    suspect : str
        suspect (rings_or_bore: rings or bore worn, a ring stuck or broken; exhaust_valve: exhaust
        valve not sealing: seat, face, bent, carbon chip; intake_valve: intake valve not sealing:
        seat, face, bent, carbon chip; guide_or_stem_seal: valve guides or stem seals worn;
        head_joint: head gasket or joint leaking; carbon: carbon built up; lash_tight: valve lash
        too tight; lash_loose: valve lash too loose; decompressor: decompressor at work, stuck or
        out of adjustment; test_error: the test itself: throttle, speed, cold, gauge, hose, wrong
        dead centre, altitude; piston_damage: piston damaged: holed, cracked, scored, a broken land;
        cam_timing: cam timing out; crankcase_leak: crankcase not tight, or its reed leaking)
    weight : float
        what it counts: above 0 for the suspect, below 0 against; 0 takes the line out
    reason : str
        why
    """

    evidence: str
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
    weight: float
    reason: NotRequired[str]


class JobCardSigns(TypedDict):
    """What was seen, heard or found.

    Attributes
    ----------
    complaint : str
        what the owner complains of, for what to look at and to test first (no_start_no_resistance:
        does not start, no resistance on the starter; hard_start_weak: hard to start, weak;
        kicks_back: kicks back, starter stalls; blue_smoke: blue smoke; white_smoke_coolant_falls:
        white smoke, coolant falls; uneven_one_cylinder_weak: uneven, one cylinder weak;
        knock_or_slap: knock or slap; overheats_or_seized: overheats, or seized; side_valve_weak:
        side-valve engine, weak; decompressor_suspected: decompressor in uncertainty;
        lean_hot_surging: two-stroke runs lean, hot, surging)
    evidence : Sequence[str]
        what was seen, heard or found; the evidence table has each with its words
    cooling : Literal['air', 'liquid', 'unknown']
        cooling (air: air-cooled, no coolant; liquid: liquid-cooled; unknown: not known)
    weights : Sequence[JobCardSignsWeight]
        weights of one's own
    decisive_weight : float
        what a decisive line counts; absent, 4
    strong_weight : float
        what a strong line counts; absent, 2
    moderate_weight : float
        what a moderate line counts; absent, 1.1
    weak_weight : float
        what a weak line counts; absent, 0.4
    least_score : float
        score from which a suspect is a strong one; absent, 2
    least_lead : float
        lead from which the first suspect is settled; absent, 1.1
    unsound_test_share : float
        share that the readings of a test that is not valid still count; absent, 0.25
    """

    complaint: NotRequired[
        Literal[
            "no_start_no_resistance",
            "hard_start_weak",
            "kicks_back",
            "blue_smoke",
            "white_smoke_coolant_falls",
            "uneven_one_cylinder_weak",
            "knock_or_slap",
            "overheats_or_seized",
            "side_valve_weak",
            "decompressor_suspected",
            "lean_hot_surging",
        ]
    ]
    evidence: NotRequired[Sequence[str]]
    cooling: NotRequired[Literal["air", "liquid", "unknown"]]
    weights: NotRequired[Sequence[JobCardSignsWeight]]
    decisive_weight: NotRequired[float]
    strong_weight: NotRequired[float]
    moderate_weight: NotRequired[float]
    weak_weight: NotRequired[float]
    least_score: NotRequired[float]
    least_lead: NotRequired[float]
    unsound_test_share: NotRequired[float]


class JobCardCylinderBoreSurvey(TypedDict):
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
    bore_survey : JobCardCylinderBoreSurvey
        bore survey, in place of largest and smallest bore
    bore_largest : QuantityLike
        largest bore in the skirt travel
    bore_smallest : QuantityLike
        smallest bore in the skirt travel
    bore_use : Literal['used', 're_ring', 'fresh']
        what the bore is judged for (used: a used bore, to stay as it is; re_ring: a used bore, to
        be honed and given new rings; fresh: a freshly bored and honed one)
    unworn : QuantityLike
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
    piston_stays_in : bool
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

    bore_survey: NotRequired[JobCardCylinderBoreSurvey]
    bore_largest: NotRequired[QuantityLike]
    bore_smallest: NotRequired[QuantityLike]
    bore_use: NotRequired[Literal["used", "re_ring", "fresh"]]
    unworn: NotRequired[QuantityLike]
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
    piston_stays_in: NotRequired[bool]
    scores: NotRequired[Sequence[JobCardCylinderScore]]
    wear_side_share: NotRequired[float]
    liner_od: NotRequired[QuantityLike]
    core_shift: NotRequired[QuantityLike]
    liner_kind: NotRequired[Literal["dry", "wet_or_air_cooled", "parent_iron"]]


class JobCardPiston(TypedDict):
    """The piston on the bench, and its pin.

    Attributes
    ----------
    piston_size : QuantityLike
        piston across the thrust axis (90° to the pin), at the maker's height on the skirt
    piston_size_new : QuantityLike
        the piston's size when new
    measuring_height : QuantityLike
        height above the skirt bottom where the piston was measured
    piston_condition : Literal['new', 'used']
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
    new_rings_piston : QuantityLike
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
    pin_condition : Literal['new', 'used']
        which limits apply (new: new parts, as they go together; used: used parts against their
        service limit)
    """

    piston_size: NotRequired[QuantityLike]
    piston_size_new: NotRequired[QuantityLike]
    measuring_height: NotRequired[QuantityLike]
    piston_condition: NotRequired[Literal["new", "used"]]
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
    new_rings_piston: NotRequired[QuantityLike]
    pin: NotRequired[QuantityLike]
    pin_worn: NotRequired[QuantityLike]
    piston_pin_bore: NotRequired[QuantityLike]
    small_end_bore: NotRequired[QuantityLike]
    small_end: NotRequired[Literal["plain", "press_fit", "needle"]]
    heat_marks: NotRequired[bool]
    pin_condition: NotRequired[Literal["new", "used"]]


class JobCardRings(TypedDict):
    """The rings, new and old.

    Attributes
    ----------
    gap_bore : QuantityLike
        bore where the new rings were gapped: finished, or the least worn zone
    top_gap : QuantityLike
        new top ring's gap, squared with the piston
    second_gap : QuantityLike
        new second ring's gap, squared with the piston
    oil_rail_gap : QuantityLike
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
    bore_rise : QuantityLike
        bore above 20 °C when running
    ring_rise : QuantityLike
        ring above 20 °C when running
    ring_alpha : QuantityLike
        expansion of the ring
    worn_pin_axis : QuantityLike
        worn zone where the new top ring will run, along the pin, after honing
    worn_thrust_axis : QuantityLike
        worn zone where the new top ring will run, across the pin, after honing
    new_rings_gap : QuantityLike
        gap of the new top ring as measured in a bore of nominal size; else the maker's whole range
        counts
    top_feeler : QuantityLike
        side clearance of the top ring by feeler, the tightest place all round
    top_groove : QuantityLike
        width of the top ring's groove, the narrowest place
    top_width : QuantityLike
        width of the top ring, along the cylinder
    top_shape : Literal['plain', 'keystone']
        sides of the top ring (plain: plain: both sides parallel; keystone: keystone: one or both
        sides tapered)
    second_feeler : QuantityLike
        side clearance of the second ring by feeler, the tightest place all round
    second_groove : QuantityLike
        width of the second ring's groove, the narrowest place
    second_width : QuantityLike
        width of the second ring, along the cylinder
    top_groove_root : QuantityLike
        piston at the root of the top ring's groove
    top_thickness : QuantityLike
        radial thickness of the top ring
    second_groove_root : QuantityLike
        piston at the root of the second ring's groove
    second_thickness : QuantityLike
        radial thickness of the second ring
    measured_with_new_ring : bool
        measured with a new ring
    ring_condition : Literal['new', 'used']
        which limits apply (new: new parts, as they go together; used: used parts against their
        service limit)
    """

    gap_bore: NotRequired[QuantityLike]
    top_gap: NotRequired[QuantityLike]
    second_gap: NotRequired[QuantityLike]
    oil_rail_gap: NotRequired[QuantityLike]
    top_factor: NotRequired[float]
    second_factor: NotRequired[float]
    old_gap: NotRequired[QuantityLike]
    old_gap_depth: NotRequired[QuantityLike]
    old_gap_pin_axis: NotRequired[QuantityLike]
    old_gap_thrust_axis: NotRequired[QuantityLike]
    gap_when_new: NotRequired[QuantityLike]
    bore_rise: NotRequired[QuantityLike]
    ring_rise: NotRequired[QuantityLike]
    ring_alpha: NotRequired[QuantityLike]
    worn_pin_axis: NotRequired[QuantityLike]
    worn_thrust_axis: NotRequired[QuantityLike]
    new_rings_gap: NotRequired[QuantityLike]
    top_feeler: NotRequired[QuantityLike]
    top_groove: NotRequired[QuantityLike]
    top_width: NotRequired[QuantityLike]
    top_shape: NotRequired[Literal["plain", "keystone"]]
    second_feeler: NotRequired[QuantityLike]
    second_groove: NotRequired[QuantityLike]
    second_width: NotRequired[QuantityLike]
    top_groove_root: NotRequired[QuantityLike]
    top_thickness: NotRequired[QuantityLike]
    second_groove_root: NotRequired[QuantityLike]
    second_thickness: NotRequired[QuantityLike]
    measured_with_new_ring: NotRequired[bool]
    ring_condition: NotRequired[Literal["new", "used"]]


class JobCardPlanPiston(TypedDict):
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
    clearance_target : QuantityLike
        clearance wanted, diametral; the middle of the maker's range
    hone_stock : QuantityLike
        stock that the machinist leaves for the hone, on the diameter
    largest_oversize : QuantityLike
        largest oversize that the maker allows, on the diameter, with nominal_bore
    returned_readings : ReadingsLike
        readings of the finished bore, both axes at each depth
    returned_out_of_round : QuantityLike
        out-of-round of the finished bore, difference of two diameters at one depth
    returned_taper : QuantityLike
        taper of the finished bore, difference of two diameters on one axis
    size_uncertainty : QuantityLike
        expanded uncertainty (k = 2) of one bore diameter, by the gauge that proves the work;
        instead of one stated with the readings
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
    clearance_target: NotRequired[QuantityLike]
    hone_stock: NotRequired[QuantityLike]
    largest_oversize: NotRequired[QuantityLike]
    returned_readings: NotRequired[ReadingsLike]
    returned_out_of_round: NotRequired[QuantityLike]
    returned_taper: NotRequired[QuantityLike]
    size_uncertainty: NotRequired[QuantityLike]


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


class JobCardSquish(TypedDict):
    """Squish clearance, and base gaskets at hand.

    Attributes
    ----------
    solder : ReadingsLike
        crushed solder at the pin axis, one reading a side, head torqued down with its gasket; on
        the thrust axis the piston rocks
    solder_wire : QuantityLike
        solder before it was crushed
    head_step : QuantityLike
        squish band of the head recessed in (+) or standing out of (−) its gasket face
    solder_uncertainty : QuantityLike
        uncertainty of the smallest point, expanded (k = 2); where not given, 0.04 mm of crushed
        solder (common practice, no source)
    bowl_diameter : QuantityLike
        diameter of the bowl inside the squish band
    base_gasket_fitted : QuantityLike
        base gasket fitted when the squish was measured
    base_gaskets : ReadingsLike
        base gaskets at hand, in any order
    squish_wanted : QuantityLike
        squish wanted; where not given, 0.2 mm over the floor (common practice, no source)
    """

    solder: NotRequired[ReadingsLike]
    solder_wire: NotRequired[QuantityLike]
    head_step: NotRequired[QuantityLike]
    solder_uncertainty: NotRequired[QuantityLike]
    bowl_diameter: NotRequired[QuantityLike]
    base_gasket_fitted: NotRequired[QuantityLike]
    base_gaskets: NotRequired[ReadingsLike]
    squish_wanted: NotRequired[QuantityLike]


class JobCardHeadFace(TypedDict):
    """The head's face, and the ratio wanted.

    Attributes
    ----------
    lines : ReadingsLike
        largest feeler that passes under the straightedge on each line: four edges and two
        diagonals; 0 where none passes
    face_length : QuantityLike
        longest side of the face, for the limit that shops keep
    rocks : bool
        whether the face rocks on a surface plate: then it is crowned, not hollow
    skim_allowance : QuantityLike
        metal to take off beyond the hollow, for a clean cut all over
    skim_done : QuantityLike
        metal already taken off this face, in all
    chamber_area : QuantityLike
        area of the combustion chamber at the face, as measured: it shrinks with depth
    gasket_kind : Literal['composite', 'multi_layer_steel']
        kind of gasket that the face seals (composite: composite or fibre gasket; multi_layer_steel:
        multi-layer steel gasket)
    roughness : QuantityLike
        roughness Ra of the face as it goes back
    wanted_ratio : float
        compression ratio wanted
    """

    lines: NotRequired[ReadingsLike]
    face_length: NotRequired[QuantityLike]
    rocks: NotRequired[bool]
    skim_allowance: NotRequired[QuantityLike]
    skim_done: NotRequired[QuantityLike]
    chamber_area: NotRequired[QuantityLike]
    gasket_kind: NotRequired[Literal["composite", "multi_layer_steel"]]
    roughness: NotRequired[QuantityLike]
    wanted_ratio: NotRequired[float]


class JobCardValve(TypedDict):
    """The worst valve: guide, seat and sink.

    Attributes
    ----------
    valve_kind : Literal['intake', 'exhaust']
        which valve (intake: intake valve; exhaust: exhaust valve)
    valve_condition : Literal['new', 'used']
        which limits apply (new: new parts, as they go together; used: used parts against their
        service limit)
    guide_bore : QuantityLike
        largest bore of the guide: 3 heights on 2 axes
    guide_along : ReadingsLike
        bore of the guide on the axis that rocker or cam pushes along, from the combustion side to
        the spring's
    guide_across : ReadingsLike
        bore of the guide across that axis, at the same heights
    stem_size : QuantityLike
        smallest diameter of the stem within the guide: 3 heights
    stem_heights : ReadingsLike
        diameter of the stem within the guide, from the combustion side to the spring's
    rock : QuantityLike
        whole sideways rock, total indicator reading, valve lifted about 10 mm off its seat
    guide_length : QuantityLike
        length of the guide
    rock_distance : QuantityLike
        where the indicator touches, beyond the end of the guide
    seat_outer_diameter : QuantityLike
        outer diameter of the contact, by marking blue
    seat_inner_diameter : QuantityLike
        inner diameter of the contact, by marking blue
    cut_seat_angle : QuantityLike
        angle of the seat, from the plane across the valve's axis
    valve_head_diameter : QuantityLike
        diameter of the valve head
    face_width : QuantityLike
        width of the valve's face along it, from the rim inwards
    rim : QuantityLike
        thickness of the valve's rim, along the valve
    seat_runout : QuantityLike
        run-out of the seat about the pilot in its guide, total indicator reading
    top_cutter : QuantityLike
        angle of the top cutter, which lowers the outer edge; flatter than the seat
    bottom_cutter : QuantityLike
        angle of the bottom cutter, which raises the inner edge; steeper than the seat
    feed : QuantityLike
        feed of each cutter along the valve, from where it touches
    wanted_outer_diameter : QuantityLike
        outer diameter of the contact wanted, for the feed of the top cutter
    wanted_width : QuantityLike
        width of the contact wanted, for the feed of the bottom cutter
    sink_cut : QuantityLike
        rise of the stem by this work: seat cut and valve face together, same valve before and after
    sink_now : QuantityLike
        sink that was there before this work
    lash_found : QuantityLike
        lash before the work, cold
    ratio_lash_per_stem_rise : float
        lash lost per rise of the stem: 1 where lash is measured at the stem
    thinnest_shim : QuantityLike
        thinnest shim that the maker has
    spring_rate : QuantityLike
        rate of the valve spring
    seat_load_nominal : QuantityLike
        load of the spring before the sink
    valves_cut : int
        valves of one cylinder that sank by this much
    """

    valve_kind: NotRequired[Literal["intake", "exhaust"]]
    valve_condition: NotRequired[Literal["new", "used"]]
    guide_bore: NotRequired[QuantityLike]
    guide_along: NotRequired[ReadingsLike]
    guide_across: NotRequired[ReadingsLike]
    stem_size: NotRequired[QuantityLike]
    stem_heights: NotRequired[ReadingsLike]
    rock: NotRequired[QuantityLike]
    guide_length: NotRequired[QuantityLike]
    rock_distance: NotRequired[QuantityLike]
    seat_outer_diameter: NotRequired[QuantityLike]
    seat_inner_diameter: NotRequired[QuantityLike]
    cut_seat_angle: NotRequired[QuantityLike]
    valve_head_diameter: NotRequired[QuantityLike]
    face_width: NotRequired[QuantityLike]
    rim: NotRequired[QuantityLike]
    seat_runout: NotRequired[QuantityLike]
    top_cutter: NotRequired[QuantityLike]
    bottom_cutter: NotRequired[QuantityLike]
    feed: NotRequired[QuantityLike]
    wanted_outer_diameter: NotRequired[QuantityLike]
    wanted_width: NotRequired[QuantityLike]
    sink_cut: NotRequired[QuantityLike]
    sink_now: NotRequired[QuantityLike]
    lash_found: NotRequired[QuantityLike]
    ratio_lash_per_stem_rise: NotRequired[float]
    thinnest_shim: NotRequired[QuantityLike]
    spring_rate: NotRequired[QuantityLike]
    seat_load_nominal: NotRequired[QuantityLike]
    valves_cut: NotRequired[int]


class JobCardSpring(TypedDict):
    """One valve spring.

    Attributes
    ----------
    load_1 : QuantityLike
        smaller load, near the installed height
    length_1 : QuantityLike
        length under the smaller load
    load_2 : QuantityLike
        larger load, near full lift
    length_2 : QuantityLike
        length under the larger load
    installed_height : QuantityLike
        installed height, valve shut; it changes with sink and shims
    valve_lift : QuantityLike
        full lift
    coil_bind_length : QuantityLike
        length with all coils shut
    free_length : QuantityLike
        free length
    free_length_new : QuantityLike
        free length of a new spring
    lean : QuantityLike
        top coil off a square, the spring standing and turned
    nominal_seat_load : QuantityLike
        the maker's load at the installed height
    wire : QuantityLike
        diameter of the wire
    mean_coil_diameter : QuantityLike
        mean diameter of the coils: outside less wire
    active_coils : float
        coils that move: not those that lie on the ends
    shear_modulus : QuantityLike
        shear modulus of the wire
    """

    load_1: NotRequired[QuantityLike]
    length_1: NotRequired[QuantityLike]
    load_2: NotRequired[QuantityLike]
    length_2: NotRequired[QuantityLike]
    installed_height: NotRequired[QuantityLike]
    valve_lift: NotRequired[QuantityLike]
    coil_bind_length: NotRequired[QuantityLike]
    free_length: NotRequired[QuantityLike]
    free_length_new: NotRequired[QuantityLike]
    lean: NotRequired[QuantityLike]
    nominal_seat_load: NotRequired[QuantityLike]
    wire: NotRequired[QuantityLike]
    mean_coil_diameter: NotRequired[QuantityLike]
    active_coils: NotRequired[float]
    shear_modulus: NotRequired[QuantityLike]


class JobCardLashValve(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    name : str
        which valve
    shim : QuantityLike
        shim fitted, by micrometer, not its mark
    found : QuantityLike
        lash with it: cold, cam on its base circle, decompressor off, feeler; of both valves of one
        rocker each
    lash_low : QuantityLike
        least lash of this valve
    lash_high : QuantityLike
        largest lash of this valve
    target : QuantityLike
        lash aimed at for this valve
    found_last_time : QuantityLike
        lash as it was left the last time
    """

    name: str
    shim: QuantityLike
    found: QuantityLike
    lash_low: NotRequired[QuantityLike]
    lash_high: NotRequired[QuantityLike]
    target: NotRequired[QuantityLike]
    found_last_time: NotRequired[QuantityLike]


class JobCardLash(TypedDict):
    """Valve lash.

    Attributes
    ----------
    shim : QuantityLike
        shim fitted, by micrometer, not its mark
    found : QuantityLike
        lash with it: cold, cam on its base circle, decompressor off, feeler
    shim_mark : QuantityLike
        what the shim fitted is marked
    found_last_time : QuantityLike
        lash as it was left the last time
    valves : Sequence[JobCardLashValve]
        several valves that take their shims from one lot
    lash_low : QuantityLike
        least lash of the maker's range, cold
    lash_high : QuantityLike
        largest lash of the maker's range, cold
    target : QuantityLike
        lash aimed at; without it the middle of the range
    adjuster : str
        how the lash is set (shim_over_bucket: shim on the bucket: it moves as the lash does;
        shim_under_bucket: shim under the bucket: it moves as the lash does; shim_under_finger: shim
        under a finger or rocker between cam and valve; screw_at_valve: screw at the valve's end of
        the rocker; screw_at_cam: screw at the cam's or pushrod's end of the rocker; hydraulic:
        hydraulic: there is no lash; ground_stem: none: the end of the stem is ground)
    stem_movement_per_lash : float
        movement at the shim per unit of measured lash: 1 for a bucket
    shims : ReadingsLike
        shims at hand, by micrometer, each piece once
    use_shims_taken_out : bool
        the shims that come out of these valves may go into another one
    shim_step : QuantityLike
        step of the shims that the maker makes
    shim_thinnest : QuantityLike
        thinnest shim that the maker makes
    shim_thickest : QuantityLike
        thickest shim that the maker makes
    screw_pitch : QuantityLike
        pitch of the adjusting screw
    rocker_ratio : float
        ratio of the rocker, valve : cam
    pad_worn_hollow : bool
        the pad or stem end is worn hollow
    """

    shim: NotRequired[QuantityLike]
    found: NotRequired[QuantityLike]
    shim_mark: NotRequired[QuantityLike]
    found_last_time: NotRequired[QuantityLike]
    valves: NotRequired[Sequence[JobCardLashValve]]
    lash_low: NotRequired[QuantityLike]
    lash_high: NotRequired[QuantityLike]
    target: NotRequired[QuantityLike]
    adjuster: NotRequired[
        Literal[
            "shim_over_bucket",
            "shim_under_bucket",
            "shim_under_finger",
            "screw_at_valve",
            "screw_at_cam",
            "hydraulic",
            "ground_stem",
        ]
    ]
    stem_movement_per_lash: NotRequired[float]
    shims: NotRequired[ReadingsLike]
    use_shims_taken_out: NotRequired[bool]
    shim_step: NotRequired[QuantityLike]
    shim_thinnest: NotRequired[QuantityLike]
    shim_thickest: NotRequired[QuantityLike]
    screw_pitch: NotRequired[QuantityLike]
    rocker_ratio: NotRequired[float]
    pad_worn_hollow: NotRequired[bool]


class JobCardCam(TypedDict):
    """Cam lobes, cam timing, valves to piston.

    Attributes
    ----------
    lobe_height : QuantityLike
        height of the lobe, nose to heel
    base_circle : QuantityLike
        diameter of the base circle
    lobe_height_new : QuantityLike
        height of a new lobe
    cam_drive : Literal['chain', 'crankcase']
        where the camshaft sits and what drives it (chain: camshaft in the head, chain or toothed
        belt from the crankshaft, slack run on a tensioner; crankcase: camshaft in the crankcase:
        its timing does not move with the head)
    chain_pitch : QuantityLike
        pitch of the timing chain or toothed belt
    cam_sprocket_teeth : int
        teeth of the cam sprocket
    stack_lowered : QuantityLike
        how much nearer head and crankshaft come: skims, thinner gaskets (a thinner gasket counts as
        a skim); negative: farther
    intake_opens_btdc : QuantityLike
        intake opens before top dead centre, crank
    intake_closes_abdc : QuantityLike
        intake closes after bottom dead centre, crank
    exhaust_opens_bbdc : QuantityLike
        exhaust opens before bottom dead centre, crank
    exhaust_closes_atdc : QuantityLike
        exhaust closes after top dead centre, crank
    event_lift : QuantityLike
        valve lift at which the events are stated
    clay_intake : QuantityLike
        clearance of the intake valve before the change, lash set
    clay_exhaust : QuantityLike
        clearance of the exhaust valve before the change, lash set
    clay_uncertainty : QuantityLike
        uncertainty of either clearance, expanded (k = 2)
    valve_tilt : QuantityLike
        tilt of the valves from the cylinder axis; where not given, the whole height counts
    pocket_square : bool
        whether the valve pocket's floor is square to the valve; else the whole height counts
    intake_sink : QuantityLike
        how much deeper the intake valve sits than when the clearance was taken
    exhaust_sink : QuantityLike
        how much deeper the exhaust valve sits than when the clearance was taken
    lash_reset : bool
        whether the lash is set again after the seats were cut: only then sink gives room
    exhaust_loss_per_degree : QuantityLike
        clearance that the exhaust valve loses for each crank degree of retard; where not given,
        0.06 mm near 10° before top dead centre (common practice, no source)
    intake_loss_per_degree : QuantityLike
        clearance that the intake valve loses for each crank degree of advance; where not given,
        0.06 mm (common practice, no source)
    """

    lobe_height: NotRequired[QuantityLike]
    base_circle: NotRequired[QuantityLike]
    lobe_height_new: NotRequired[QuantityLike]
    cam_drive: NotRequired[Literal["chain", "crankcase"]]
    chain_pitch: NotRequired[QuantityLike]
    cam_sprocket_teeth: NotRequired[int]
    stack_lowered: NotRequired[QuantityLike]
    intake_opens_btdc: NotRequired[QuantityLike]
    intake_closes_abdc: NotRequired[QuantityLike]
    exhaust_opens_bbdc: NotRequired[QuantityLike]
    exhaust_closes_atdc: NotRequired[QuantityLike]
    event_lift: NotRequired[QuantityLike]
    clay_intake: NotRequired[QuantityLike]
    clay_exhaust: NotRequired[QuantityLike]
    clay_uncertainty: NotRequired[QuantityLike]
    valve_tilt: NotRequired[QuantityLike]
    pocket_square: NotRequired[bool]
    intake_sink: NotRequired[QuantityLike]
    exhaust_sink: NotRequired[QuantityLike]
    lash_reset: NotRequired[bool]
    exhaust_loss_per_degree: NotRequired[QuantityLike]
    intake_loss_per_degree: NotRequired[QuantityLike]


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
    runout_left : QuantityLike
        run-out of the left journal between centres, total indicator reading
    runout_right : QuantityLike
        run-out of the right journal between centres, total indicator reading
    rod_condition : Literal['new', 'used']
        which limits apply (new: new parts, as they go together; used: used parts against their
        service limit)
    """

    big_end_side: NotRequired[QuantityLike]
    big_end_radial: NotRequired[QuantityLike]
    big_end: NotRequired[Literal["rollers", "plain"]]
    small_end_tip_rock: NotRequired[QuantityLike]
    big_end_width: NotRequired[QuantityLike]
    runout_left: NotRequired[QuantityLike]
    runout_right: NotRequired[QuantityLike]
    rod_condition: NotRequired[Literal["new", "used"]]


class JobCardHone(TypedDict):
    """The machinist's hone.

    Attributes
    ----------
    spindle_speed : QuantityLike
        spindle speed of the hone
    travel : QuantityLike
        travel of the hone, end to end, overtravel at both ends counted
    strokes_per_minute : QuantityLike
        full strokes, down and up, a minute; not single strokes
    included_angle : QuantityLike
        wanted included angle, between the two families of lines; twice what each line makes with
        horizontal
    stroke_drive : Literal['constant', 'crank', 'unknown']
        how the stroke is driven (constant: constant speed, turned round at the ends (hydraulic, or
        by hand); crank: driven by a crank, fastest at mid-stroke; unknown: not known)
    ring_kind : Literal['plain_iron', 'coated']
        kind of rings that will run on it (plain_iron: plain iron ring; coated: coated or nitrided
        ring)
    """

    spindle_speed: NotRequired[QuantityLike]
    travel: NotRequired[QuantityLike]
    strokes_per_minute: NotRequired[QuantityLike]
    included_angle: NotRequired[QuantityLike]
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
    cylinder_alpha : QuantityLike
        expansion of the cylinder; aluminium where not given
    sleeve_alpha : QuantityLike
        expansion of the sleeve; grey iron where not given
    """

    cylinder_bore: NotRequired[QuantityLike]
    sleeve_od: NotRequired[QuantityLike]
    drop_in_clearance: NotRequired[QuantityLike]
    held_by: NotRequired[Literal["fit_alone", "flange_or_head"]]
    sleeve_temperature: NotRequired[QuantityLike]
    running_temperature: NotRequired[QuantityLike]
    cylinder_alpha: NotRequired[QuantityLike]
    sleeve_alpha: NotRequired[QuantityLike]


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
    thread_diameter : QuantityLike
        nominal diameter of the thread
    pitch : QuantityLike
        pitch of the thread, mm per turn
    thread_pitch_diameter : QuantityLike
        pitch diameter of the thread; else that of the metric profile
    thread_minor_diameter : QuantityLike
        minor diameter at the root; else that of the metric profile
    stress_area : QuantityLike
        stress area; else from pitch and minor diameter
    nut_factor : float
        nut factor K in torque = K · diameter · clamp
    thread_friction : float
        friction in the thread
    head_friction : float
        friction under the head; with the thread's it gives the nut factor where none is given
    bearing_over_thread : float
        mean diameter of the bearing face under the head over the thread's, for the nut factor from
        both frictions (1.3: common practice)
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
    thread_diameter: NotRequired[QuantityLike]
    pitch: NotRequired[QuantityLike]
    thread_pitch_diameter: NotRequired[QuantityLike]
    thread_minor_diameter: NotRequired[QuantityLike]
    stress_area: NotRequired[QuantityLike]
    nut_factor: NotRequired[float]
    thread_friction: NotRequired[float]
    head_friction: NotRequired[float]
    bearing_over_thread: NotRequired[float]
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
    ring_share : float
        share of the largest distance from the centroid within which fasteners make one ring
    """

    fasteners: NotRequired[Sequence[JobCardFasteningFastener]]
    tighten_stages: NotRequired[int]
    relief_steps: NotRequired[int]
    relief_step_turn: NotRequired[QuantityLike]
    ring_share: NotRequired[float]


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
    thrust_axis_angle : QuantityLike
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
    thrust_axis_angle: NotRequired[QuantityLike]
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
    ratio : float
        fuel to oil by volume: 32 stands for 32:1
    tank_has : QuantityLike
        mix that the tank already holds, fuel and oil together
    tank_ratio : float
        fuel to oil of the mix in the tank
    """

    fuel: NotRequired[QuantityLike]
    ratio: NotRequired[float]
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
    label : str
        what it is
    quantity : float
        how many (default 1.0)
    price : float
        price of one, without markup and tax
    """

    label: str
    quantity: NotRequired[float]
    price: float


class JobCardPriceMachineShopItem(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    label : str
        what it is
    quantity : float
        how many (default 1.0)
    price : float
        price of one, without markup and tax
    """

    label: str
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
    of_way : Literal['re_ring', 'overbore', 'plated_cylinder', 'head']
        kind of work, for the parts that usually go with it (re_ring: new rings in the bore as it
        is; overbore: bored to an oversize piston; plated_cylinder: plated cylinder with a piston of
        its grade; head: work on valves and head)
    cost_of_reuse : float
        cost of using the part again, with tax
    cost_of_repair : float
        cost of the repair or of a new part, with tax
    cost_of_comeback : float
        cost of a comeback: taking it apart again, and what breaks with the part, with tax
    failure_hurts : bool
        the part's failure can hurt someone: then no choice is named by cost
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
    of_way: NotRequired[Literal["re_ring", "overbore", "plated_cylinder", "head"]]
    cost_of_reuse: NotRequired[float]
    cost_of_repair: NotRequired[float]
    cost_of_comeback: NotRequired[float]
    failure_hurts: NotRequired[bool]


class JobCardLimits(TypedDict, total=False):
    """Limits of your own, by check: job-card.

    Attributes
    ----------
    compression_ratio : RatioLimitAsked
        static compression ratio within the maker's
    compression_least : LimitAsked
        compression, brought to the altitude of its limit
    lowest_over_highest : RatioLimitAsked
        lowest cylinder over the highest
    leak_down : LimitAsked
        leak-down
    charged_peak_torque : LimitAsked
        peak torque on the charged crank
    crankcase_pressure_loss : LimitAsked
        pressure that the crankcase loses a minute
    crankcase_vacuum_loss : LimitAsked
        vacuum that the crankcase loses a minute
    oil_per_1000_km : LimitAsked
        oil used for each 1000 km
    oil_per_hour : LimitAsked
        oil used for each hour
    oil_of_fuel : LimitAsked
        oil used as a share of the fuel
    smallest_squish : LimitAsked
        squish at its smallest point
    squish_side_difference : LimitAsked
        squish from side to side
    smallest_squish_after : LimitAsked
        smallest point with the chosen gasket
    flatness : LimitAsked
        flatness of the face
    skim_in_all : LimitAsked
        metal off the face in all
    face_roughness : LimitAsked
        roughness Ra of the face
    squish_before : LimitAsked
        squish now
    skim_for_ratio : LimitAsked
        metal off the head in all
    squish_after_skim : LimitAsked
        squish after the skim
    gasket_for_ratio : LimitAsked
        head gasket that gives the ratio
    squish_after_gasket : LimitAsked
        squish with that gasket
    squish_after_deck_cut : LimitAsked
        squish after the cut of the deck
    guide_clearance : LimitAsked
        clearance of the stem by two diameters
    guide_clearance_from_rock : LimitAsked
        clearance of the stem by rocking
    valve_rock : LimitAsked
        whole rock of the valve at about 10 mm lift
    seat_width : LimitAsked
        width of the contact as found
    seat_width_after_top_cut : LimitAsked
        width after the top cutter alone
    seat_width_after_both : LimitAsked
        width after both cutters
    contact_place : RatioLimitAsked
        middle of the contact on the valve's face
    seat_runout : LimitAsked
        run-out of the seat
    valve_rim : LimitAsked
        thickness of the valve's rim
    lash_after_sink : LimitAsked
        lash after the work, not yet set again; only the maker's range judges it
    lash_left_after_sink : LimitAsked
        lash left after the work: below zero the valve is held open
    total_sink : LimitAsked
        sink in all; only the maker's limit judges it
    shim_room : LimitAsked
        room left for a thinner shim
    seat_load_after_sink : LimitAsked
        load of the spring after the sink; only the maker's range judges it
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
    lash_found_with_shim : LimitAsked
        lash as found
    lash_with_new_shim : LimitAsked
        lash with the chosen shim
    lash_found_each : LimitAsked
        lash as found
    lash_after_each : LimitAsked
        lash with the chosen shim
    lash_as_found : LimitAsked
        lash as found; only the maker's range judges it
    lobe_height : LimitAsked
        height of the lobe
    lobe_wear : LimitAsked
        height that the lobe has lost
    intake_valve_to_piston : LimitAsked
        room between intake valve and piston
    exhaust_valve_to_piston : LimitAsked
        room between exhaust valve and piston
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
    compression_least: LimitAsked
    lowest_over_highest: RatioLimitAsked
    leak_down: LimitAsked
    charged_peak_torque: LimitAsked
    crankcase_pressure_loss: LimitAsked
    crankcase_vacuum_loss: LimitAsked
    oil_per_1000_km: LimitAsked
    oil_per_hour: LimitAsked
    oil_of_fuel: LimitAsked
    smallest_squish: LimitAsked
    squish_side_difference: LimitAsked
    smallest_squish_after: LimitAsked
    flatness: LimitAsked
    skim_in_all: LimitAsked
    face_roughness: LimitAsked
    squish_before: LimitAsked
    skim_for_ratio: LimitAsked
    squish_after_skim: LimitAsked
    gasket_for_ratio: LimitAsked
    squish_after_gasket: LimitAsked
    squish_after_deck_cut: LimitAsked
    guide_clearance: LimitAsked
    guide_clearance_from_rock: LimitAsked
    valve_rock: LimitAsked
    seat_width: LimitAsked
    seat_width_after_top_cut: LimitAsked
    seat_width_after_both: LimitAsked
    contact_place: RatioLimitAsked
    seat_runout: LimitAsked
    valve_rim: LimitAsked
    lash_after_sink: LimitAsked
    lash_left_after_sink: LimitAsked
    total_sink: LimitAsked
    shim_room: LimitAsked
    seat_load_after_sink: LimitAsked
    seat_load: LimitAsked
    seat_load_of_nominal: LimitAsked
    open_load: LimitAsked
    spring_rate: LimitAsked
    coil_bind_margin: LimitAsked
    free_length: LimitAsked
    free_length_loss: LimitAsked
    spring_lean: LimitAsked
    lash_found_with_shim: LimitAsked
    lash_with_new_shim: LimitAsked
    lash_found_each: LimitAsked
    lash_after_each: LimitAsked
    lash_as_found: LimitAsked
    lobe_height: LimitAsked
    lobe_wear: LimitAsked
    intake_valve_to_piston: LimitAsked
    exhaust_valve_to_piston: LimitAsked
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
class ConsequencesResultChoice:
    """None is what cannot be known.

    Attributes
    ----------
    check : str | None
        the check
    of : str | None
        of which, where there are several
    conformance_probability : float | None
        probability that the part is within its limit
    probability_beyond : float | None
        probability that the part is beyond its limit
    expected_cost_of_reuse : float | None
        cost of using the part again, on average over many such parts
    cheaper : Literal['reuse', 'repair', 'either'] | None
        cheaper choice on average; absent where the part's failure hurts
    """

    check: str | None = None
    of: str | None = None
    conformance_probability: float | None = None
    probability_beyond: float | None = None
    expected_cost_of_reuse: float | None = None
    cheaper: Literal["reuse", "repair", "either"] | None = None


@dataclass(frozen=True, kw_only=True)
class ConsequencesResult:
    """None is what cannot be known.

    Attributes
    ----------
    break_even_probability : float
        probability beyond the limit above which the repair is the cheaper
    choices : tuple[ConsequencesResultChoice, ...] | None
        verdicts too close to call, each with the choice that costs less on average
    not_by_cost : tuple[str | float, ...] | None
        too close to call, and not judged by cost since uncertainty counts as a fail there
    not_weighed : tuple[str | float, ...] | None
        too close to call, and not weighed: judged from an interval, as its readings tie, so that no
        probability is known
    """

    break_even_probability: float
    choices: tuple[ConsequencesResultChoice, ...] | None = None
    not_by_cost: tuple[str | float, ...] | None = None
    not_weighed: tuple[str | float, ...] | None = None


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
    leak_down : LeakDownResult | None
    leak_area : LeakAreaResult | None
    charged_crank_torque : ChargedCrankTorqueResult | None
    crankcase_leak : CrankcaseLeakResult | None
    oil_use : OilUseResult | None
    diagnosis : DiagnosisResult | None
    squish : SquishResult | None
    flatness : FlatnessResult | None
    wanted_ratio : WantedRatioResult | None
    guide_clearance : GuideClearanceResult | None
    valve_seat : ValveSeatResult | None
    valve_sink : ValveSinkResult | None
    valve_spring : ValveSpringResult | None
    lash_shim : LashShimResult | None
    lash_screw : LashScrewResult | None
    cam_check : CamCheckResult | None
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
    rod_play : RodPlayResult | None
    dynamic_ratio_after : DynamicRatioResult | None
    port_timing_after : PortTimingResult | None
    cranking_pressure_after : CrankingPressureResult | None
    cranking_pressure_after_at_sea_level : CrankingPressureResult | None
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
    consequences : ConsequencesResult | None
    estimate : EstimateResult | None
    not_worked_out : tuple[NotWorkedOut, ...] | None
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
    leak_down: LeakDownResult | None = None
    leak_area: LeakAreaResult | None = None
    charged_crank_torque: ChargedCrankTorqueResult | None = None
    crankcase_leak: CrankcaseLeakResult | None = None
    oil_use: OilUseResult | None = None
    diagnosis: DiagnosisResult | None = None
    squish: SquishResult | None = None
    flatness: FlatnessResult | None = None
    wanted_ratio: WantedRatioResult | None = None
    guide_clearance: GuideClearanceResult | None = None
    valve_seat: ValveSeatResult | None = None
    valve_sink: ValveSinkResult | None = None
    valve_spring: ValveSpringResult | None = None
    lash_shim: LashShimResult | None = None
    lash_screw: LashScrewResult | None = None
    cam_check: CamCheckResult | None = None
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
    rod_play: RodPlayResult | None = None
    dynamic_ratio_after: DynamicRatioResult | None = None
    port_timing_after: PortTimingResult | None = None
    cranking_pressure_after: CrankingPressureResult | None = None
    cranking_pressure_after_at_sea_level: CrankingPressureResult | None = None
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
    consequences: ConsequencesResult | None = None
    estimate: EstimateResult | None = None
    not_worked_out: tuple[NotWorkedOut, ...] | None = None
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
            "exhaust_duration_wanted": "quantity",
            "transfer_duration_wanted": "quantity",
            "class_limit": "quantity",
        },
        "place": {"altitude": "quantity", "air_pressure": "quantity", "weather_report": "quantity"},
        "compression": {
            "reading": "quantity",
            "stroke_readings": "readings",
            "readings": "readings",
            "first_again": "quantity",
            "wet": "quantity",
            "wet_oil": "quantity",
            "expected": "quantity",
            "expected_altitude": "quantity",
            "gauge_error": "quantity",
            "repeatability": "quantity",
            "hose_error": "quantity",
            "weather": "quantity",
            "throttle_closed_manifold": "quantity",
            "battery": "quantity",
        },
        "leak_down": {
            "supply_pressure": "quantity",
            "cylinder_pressure": "quantity",
            "rocked_forward_pressure": "quantity",
            "rocked_back_pressure": "quantity",
            "restrictor": "quantity",
            "gauge_difference": "quantity",
            "gauge_residual": "quantity",
            "gauge_full_scale": "quantity",
            "leak_gauge_error": "quantity",
            "good_to": "quantity",
            "serviceable_to": "quantity",
            "worn_to": "quantity",
            "other_restrictor": "quantity",
            "other_supply_pressure": "quantity",
            "coefficient_uncertainty": "quantity",
            "held_at": "quantity",
            "second": "quantity",
            "opens": "quantity",
            "bar": "quantity",
        },
        "crankcase": {
            "start": "quantity",
            "end": "quantity",
            "start_temperature": "quantity",
            "end_temperature": "quantity",
            "vacuum_start": "quantity",
            "vacuum_end": "quantity",
            "vacuum_start_temperature": "quantity",
            "vacuum_end_temperature": "quantity",
            "trapped_volume": "quantity",
        },
        "oil": {"added": "quantity", "fuel_used": "quantity"},
        "cylinder": {
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
        },
        "piston": {
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
        },
        "rings": {
            "gap_bore": "quantity",
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
        },
        "plan": {
            "new_bore": "quantity",
            "new_dome": "quantity",
            "new_dish": "quantity",
            "new_deck": "quantity",
            "new_gasket_bore": "quantity",
            "new_gasket_thickness": "quantity",
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
        "squish": {
            "solder": "readings",
            "solder_wire": "quantity",
            "head_step": "quantity",
            "solder_uncertainty": "quantity",
            "bowl_diameter": "quantity",
            "base_gasket_fitted": "quantity",
            "base_gaskets": "readings",
            "squish_wanted": "quantity",
        },
        "head_face": {
            "lines": "readings",
            "face_length": "quantity",
            "skim_allowance": "quantity",
            "skim_done": "quantity",
            "chamber_area": "quantity",
            "roughness": "quantity",
        },
        "valve": {
            "guide_bore": "quantity",
            "guide_along": "readings",
            "guide_across": "readings",
            "stem_size": "quantity",
            "stem_heights": "readings",
            "rock": "quantity",
            "guide_length": "quantity",
            "rock_distance": "quantity",
            "seat_outer_diameter": "quantity",
            "seat_inner_diameter": "quantity",
            "cut_seat_angle": "quantity",
            "valve_head_diameter": "quantity",
            "face_width": "quantity",
            "rim": "quantity",
            "seat_runout": "quantity",
            "top_cutter": "quantity",
            "bottom_cutter": "quantity",
            "feed": "quantity",
            "wanted_outer_diameter": "quantity",
            "wanted_width": "quantity",
            "sink_cut": "quantity",
            "sink_now": "quantity",
            "lash_found": "quantity",
            "thinnest_shim": "quantity",
            "spring_rate": "quantity",
            "seat_load_nominal": "quantity",
        },
        "spring": {
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
        },
        "lash": {
            "shim": "quantity",
            "found": "quantity",
            "shim_mark": "quantity",
            "found_last_time": "quantity",
            "valves": [
                {
                    "shim": "quantity",
                    "found": "quantity",
                    "lash_low": "quantity",
                    "lash_high": "quantity",
                    "target": "quantity",
                    "found_last_time": "quantity",
                }
            ],
            "lash_low": "quantity",
            "lash_high": "quantity",
            "target": "quantity",
            "shims": "readings",
            "shim_step": "quantity",
            "shim_thinnest": "quantity",
            "shim_thickest": "quantity",
            "screw_pitch": "quantity",
        },
        "cam": {
            "lobe_height": "quantity",
            "base_circle": "quantity",
            "lobe_height_new": "quantity",
            "chain_pitch": "quantity",
            "stack_lowered": "quantity",
            "intake_opens_btdc": "quantity",
            "intake_closes_abdc": "quantity",
            "exhaust_opens_bbdc": "quantity",
            "exhaust_closes_atdc": "quantity",
            "event_lift": "quantity",
            "clay_intake": "quantity",
            "clay_exhaust": "quantity",
            "clay_uncertainty": "quantity",
            "valve_tilt": "quantity",
            "intake_sink": "quantity",
            "exhaust_sink": "quantity",
            "exhaust_loss_per_degree": "quantity",
            "intake_loss_per_degree": "quantity",
        },
        "bottom": {
            "big_end_side": "quantity",
            "big_end_radial": "quantity",
            "small_end_tip_rock": "quantity",
            "big_end_width": "quantity",
            "runout_left": "quantity",
            "runout_right": "quantity",
        },
        "hone": {
            "spindle_speed": "quantity",
            "travel": "quantity",
            "strokes_per_minute": "quantity",
            "included_angle": "quantity",
        },
        "sleeve": {
            "cylinder_bore": "quantity",
            "sleeve_od": "quantity",
            "drop_in_clearance": "quantity",
            "sleeve_temperature": "quantity",
            "running_temperature": "quantity",
            "cylinder_alpha": "quantity",
            "sleeve_alpha": "quantity",
        },
        "hot": {"bore_hot": "quantity", "piston_hot": "quantity"},
        "torque": {
            "final_torque": "quantity",
            "wrench_length": "quantity",
            "adapter_extension": "quantity",
            "adapter_angle": "quantity",
            "wrench_top": "quantity",
            "thread_diameter": "quantity",
            "pitch": "quantity",
            "thread_pitch_diameter": "quantity",
            "thread_minor_diameter": "quantity",
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
            "thrust_axis_angle": "quantity",
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
            "compression_least": {"low": "quantity", "high": "quantity"},
            "leak_down": {"low": "quantity", "high": "quantity"},
            "charged_peak_torque": {"low": "quantity", "high": "quantity"},
            "crankcase_pressure_loss": {"low": "quantity", "high": "quantity"},
            "crankcase_vacuum_loss": {"low": "quantity", "high": "quantity"},
            "oil_per_1000_km": {"low": "quantity", "high": "quantity"},
            "oil_per_hour": {"low": "quantity", "high": "quantity"},
            "oil_of_fuel": {"low": "quantity", "high": "quantity"},
            "smallest_squish": {"low": "quantity", "high": "quantity"},
            "squish_side_difference": {"low": "quantity", "high": "quantity"},
            "smallest_squish_after": {"low": "quantity", "high": "quantity"},
            "flatness": {"low": "quantity", "high": "quantity"},
            "skim_in_all": {"low": "quantity", "high": "quantity"},
            "face_roughness": {"low": "quantity", "high": "quantity"},
            "squish_before": {"low": "quantity", "high": "quantity"},
            "skim_for_ratio": {"low": "quantity", "high": "quantity"},
            "squish_after_skim": {"low": "quantity", "high": "quantity"},
            "gasket_for_ratio": {"low": "quantity", "high": "quantity"},
            "squish_after_gasket": {"low": "quantity", "high": "quantity"},
            "squish_after_deck_cut": {"low": "quantity", "high": "quantity"},
            "guide_clearance": {"low": "quantity", "high": "quantity"},
            "guide_clearance_from_rock": {"low": "quantity", "high": "quantity"},
            "valve_rock": {"low": "quantity", "high": "quantity"},
            "seat_width": {"low": "quantity", "high": "quantity"},
            "seat_width_after_top_cut": {"low": "quantity", "high": "quantity"},
            "seat_width_after_both": {"low": "quantity", "high": "quantity"},
            "seat_runout": {"low": "quantity", "high": "quantity"},
            "valve_rim": {"low": "quantity", "high": "quantity"},
            "lash_after_sink": {"low": "quantity", "high": "quantity"},
            "lash_left_after_sink": {"low": "quantity", "high": "quantity"},
            "total_sink": {"low": "quantity", "high": "quantity"},
            "shim_room": {"low": "quantity", "high": "quantity"},
            "seat_load_after_sink": {"low": "quantity", "high": "quantity"},
            "seat_load": {"low": "quantity", "high": "quantity"},
            "seat_load_of_nominal": {"low": "quantity", "high": "quantity"},
            "open_load": {"low": "quantity", "high": "quantity"},
            "spring_rate": {"low": "quantity", "high": "quantity"},
            "coil_bind_margin": {"low": "quantity", "high": "quantity"},
            "free_length": {"low": "quantity", "high": "quantity"},
            "free_length_loss": {"low": "quantity", "high": "quantity"},
            "spring_lean": {"low": "quantity", "high": "quantity"},
            "lash_found_with_shim": {"low": "quantity", "high": "quantity"},
            "lash_with_new_shim": {"low": "quantity", "high": "quantity"},
            "lash_found_each": {"low": "quantity", "high": "quantity"},
            "lash_after_each": {"low": "quantity", "high": "quantity"},
            "lash_as_found": {"low": "quantity", "high": "quantity"},
            "lobe_height": {"low": "quantity", "high": "quantity"},
            "lobe_wear": {"low": "quantity", "high": "quantity"},
            "intake_valve_to_piston": {"low": "quantity", "high": "quantity"},
            "exhaust_valve_to_piston": {"low": "quantity", "high": "quantity"},
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
        leak_down: JobCardLeakDown | None = None,
        crankcase: JobCardCrankcase | None = None,
        oil: JobCardOil | None = None,
        signs: JobCardSigns | None = None,
        cylinder: JobCardCylinder | None = None,
        piston: JobCardPiston | None = None,
        rings: JobCardRings | None = None,
        plan: JobCardPlan | None = None,
        order: JobCardOrder | None = None,
        squish: JobCardSquish | None = None,
        head_face: JobCardHeadFace | None = None,
        valve: JobCardValve | None = None,
        spring: JobCardSpring | None = None,
        lash: JobCardLash | None = None,
        cam: JobCardCam | None = None,
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
        leak_down : JobCardLeakDown, optional
            the leak-down test
        crankcase : JobCardCrankcase, optional
            the test of a two-stroke's crankcase
        oil : JobCardOil, optional
            oil that the engine used
        signs : JobCardSigns, optional
            what was seen, heard or found
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
        squish : JobCardSquish, optional
            squish clearance, and base gaskets at hand
        head_face : JobCardHeadFace, optional
            the head's face, and the ratio wanted
        valve : JobCardValve, optional
            the worst valve: guide, seat and sink
        spring : JobCardSpring, optional
            one valve spring
        lash : JobCardLash, optional
            valve lash
        cam : JobCardCam, optional
            cam lobes, cam timing, valves to piston
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
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
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
            "leak_down": leak_down,
            "crankcase": crankcase,
            "oil": oil,
            "signs": signs,
            "cylinder": cylinder,
            "piston": piston,
            "rings": rings,
            "plan": plan,
            "order": order,
            "squish": squish,
            "head_face": head_face,
            "valve": valve,
            "spring": spring,
            "lash": lash,
            "cam": cam,
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
