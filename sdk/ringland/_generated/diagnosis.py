"""Diagnosis.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import QuantityLike


class DiagnosisWeight(TypedDict):
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


@dataclass(frozen=True, kw_only=True)
class DiagnosisResultSuspect:
    """None is what cannot be known.

    Attributes
    ----------
    suspect : str
        suspect
    score : float | None
        sum of what counts
    label : str | None
        what it is
    """

    suspect: (
        Literal[
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
        | None
    ) = None
    score: float | None = None
    label: str | None = None


@dataclass(frozen=True, kw_only=True)
class DiagnosisResultLine:
    """None is what cannot be known.

    Attributes
    ----------
    suspect : str
        of whom
    evidence : str | None
        by what
    weight : float | None
        above 0 for, below 0 against
    counts : float | None
        what of it counts
    why : str | None
        the reason, and why it counts less
    """

    suspect: (
        Literal[
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
        | None
    ) = None
    evidence: str | None = None
    weight: float | None = None
    counts: float | None = None
    why: str | None = None


@dataclass(frozen=True, kw_only=True)
class DiagnosisResultAtHandItem:
    """None is what cannot be known.

    Attributes
    ----------
    evidence : str | None
        id
    known_from : Literal['told', 'measured', 'derived'] | None
        whether told, measured or derived
    label : str | None
        what it is
    """

    evidence: str | None = None
    known_from: Literal["told", "measured", "derived"] | None = None
    label: str | None = None


@dataclass(frozen=True, kw_only=True)
class DiagnosisResultContradictoryItem:
    """None is what cannot be known.

    Attributes
    ----------
    suspect : str
        of whom
    speaks_for : str | None
        for
    speaks_against : str | None
        against
    """

    suspect: (
        Literal[
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
        | None
    ) = None
    speaks_for: str | None = None
    speaks_against: str | None = None


@dataclass(frozen=True, kw_only=True)
class DiagnosisResultLeftOutItem:
    """None is what cannot be known.

    Attributes
    ----------
    id : str | None
        code or id
    why : str | None
        why
    """

    id: str | None = None
    why: str | None = None


@dataclass(frozen=True, kw_only=True)
class DiagnosisResult:
    """None is what cannot be known.

    Attributes
    ----------
    statement : str
        what the ranking amounts to
    headline : str
        the same as a word
    first : str
        who stands first; nobody where nobody is above 0
    first_label : str | None
        what that is
    lead : float | None
        by how much, over the next or over those that nothing spoke of
    next_test : str | None
        what to do next
    reads_as : str | None
        how that test reads
    parts : tuple[str | float, ...] | None
        the suspects that it parts
    look_first : tuple[str | float, ...] | None
        what to look at first, from outside
    first_tests : tuple[str | float, ...] | None
        what to test after that
    stop_when : str | None
        when to stop
    suspects : tuple[DiagnosisResultSuspect, ...]
        suspects spoken of, highest score first
    lines : tuple[DiagnosisResultLine, ...]
        what speaks for and against each, by suspect
    at_hand : tuple[DiagnosisResultAtHandItem, ...]
        the evidence that was weighed
    silent : tuple[str | float, ...]
        suspects that nothing spoke of: they stand at 0
    contradictory : tuple[DiagnosisResultContradictoryItem, ...] | None
        suspects with strong evidence both for and against: look again at both
    left_out : tuple[DiagnosisResultLeftOutItem, ...] | None
        suspects that this engine cannot have, and evidence that cannot be taken as tested
    """

    statement: str
    headline: Literal[
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
    first: (
        Literal[
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
        | None
    ) = None
    first_label: str | None = None
    lead: float | None = None
    next_test: str | None = None
    reads_as: str | None = None
    parts: tuple[str | float, ...] | None = None
    look_first: tuple[str | float, ...] | None = None
    first_tests: tuple[str | float, ...] | None = None
    stop_when: str | None = None
    suspects: tuple[DiagnosisResultSuspect, ...]
    lines: tuple[DiagnosisResultLine, ...]
    at_hand: tuple[DiagnosisResultAtHandItem, ...]
    silent: tuple[str | float, ...]
    contradictory: tuple[DiagnosisResultContradictoryItem, ...] | None = None
    left_out: tuple[DiagnosisResultLeftOutItem, ...] | None = None


class Diagnosis(Calculation[DiagnosisResult]):
    """Diagnosis.

    Which fault the evidence speaks for and which it speaks against, by how much, with the reason of
    every line, and the test that parts the leaders. Evidence is told by its id, and read out of
    measured tests. A missing test is not evidence; not heard is evidence only if somebody listened.
    """

    NAME = "diagnosis"
    RESULT = DiagnosisResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "battery": "quantity",
        "spread": "quantity",
        "excess_gain": "quantity",
        "leak": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        cycle: Literal["four_stroke", "two_stroke"],
        cylinder_count: int | None = None,
        valve_gear: Literal["overhead_valves", "side_valve", "ports", "unknown"] | None = None,
        cooling: Literal["air", "liquid", "unknown"] | None = None,
        decompressor: Literal[
            "none",
            "automatic_exhaust_lifter",
            "automatic_intake_side",
            "manual_lifter",
            "manual_two_stroke_valve",
            "unknown",
        ]
        | None = None,
        decompressor_state: Literal[
            "none", "automatic_held_off", "automatic_active", "manual_not_used", "unknown"
        ]
        | None = None,
        complaint: Literal[
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
        | None = None,
        evidence: Sequence[str] | None = None,
        throttle_open: bool | None = None,
        choke_off: bool | None = None,
        engine_warm: bool | None = None,
        battery: QuantityLike | None = None,
        level_ratio: float | None = None,
        level_gradeable: Literal[
            "yes",
            "decompressor_unknown",
            "decompressor_active",
            "conditions_not_met",
            "reading_unfit",
        ]
        | None = None,
        each_over_highest: Sequence[float] | None = None,
        layout: Literal["in_line", "vee", "opposed"] | None = None,
        spread: QuantityLike | None = None,
        adjacent_low_pair: Sequence[float] | None = None,
        excess_gain: QuantityLike | None = None,
        wet_over_expected: float | None = None,
        build_up_pattern: Literal[
            "higher_than_expected",
            "pattern_not_judged",
            "slow_but_full",
            "normal",
            "builds_up_but_short",
            "like_a_fixed_leak",
        ]
        | None = None,
        strokes_to_95: int | None = None,
        last_over_expected: float | None = None,
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
        crankcase_finding: Literal[
            "holds",
            "vacuum_not_tested",
            "pressure_not_tested",
            "leaks_under_pressure",
            "leaks_under_vacuum",
            "leaks_under_both",
            "repeat_the_test",
        ]
        | None = None,
        oil_use_grade: Literal["find_out", "worn", "usual"] | None = None,
        weights: Sequence[DiagnosisWeight] | None = None,
        decisive_weight: float | None = None,
        strong_weight: float | None = None,
        moderate_weight: float | None = None,
        weak_weight: float | None = None,
        least_score: float | None = None,
        least_lead: float | None = None,
        unsound_test_share: float | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[DiagnosisResult]:
        """Ask ``diagnosis`` one question.

        Needed: ``evidence`` or ``level_ratio`` or ``each_over_highest`` or ``spread`` or
        ``excess_gain`` or ``build_up_pattern`` or ``leak`` or ``leak_grade`` or ``heard_at`` or
        ``crankcase_finding`` or ``oil_use_grade`` or ``complaint``.

        Parameters
        ----------
        cycle : str
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        cylinder_count : int, optional
            number of cylinders of this size
        valve_gear : str, optional
            valve gear (overhead_valves: four-stroke, valves in the head; side_valve: four-stroke,
            valves beside the cylinder; ports: two-stroke, ports in the cylinder; unknown: not
            known: no bands are applied)
        cooling : str, optional
            cooling (air: air-cooled, no coolant; liquid: liquid-cooled; unknown: not known)
        decompressor : str, optional
            kind of decompressor (none: no decompressor; automatic_exhaust_lifter: automatic, lifts
            the exhaust valve by weights or the cam; automatic_intake_side: automatic, holds the
            intake valve or closes it late; manual_lifter: manual valve lifter;
            manual_two_stroke_valve: manual valve in the head or above the exhaust port, two-stroke;
            unknown: not known)
        decompressor_state : str, optional
            decompressor during the test (none: no decompressor; automatic_held_off: automatic one
            held off during the test; automatic_active: automatic one at work during the test;
            manual_not_used: manual one not used during the test; unknown: not known)
        complaint : str, optional
            what the owner complains of, for what to look at and to test first
            (no_start_no_resistance: does not start, no resistance on the starter; hard_start_weak:
            hard to start, weak; kicks_back: kicks back, starter stalls; blue_smoke: blue smoke;
            white_smoke_coolant_falls: white smoke, coolant falls; uneven_one_cylinder_weak: uneven,
            one cylinder weak; knock_or_slap: knock or slap; overheats_or_seized: overheats, or
            seized; side_valve_weak: side-valve engine, weak; decompressor_suspected: decompressor
            in uncertainty; lean_hot_surging: two-stroke runs lean, hot, surging)
        evidence : Sequence[str], optional
            what was seen, heard or found; the evidence table has each with its words
        throttle_open : bool, optional
            throttle held open, a vacuum slide lifted too
        choke_off : bool, optional
            choke off
        engine_warm : bool, optional
            engine warm
        battery : QuantityLike, optional
            battery while cranking
        level_ratio : float, optional
            compression reading over the expected one
        level_gradeable : str, optional
            whether that level can be graded (yes: the level can be graded; decompressor_unknown:
            gradeable only where it is good: a decompressor may have let pressure off;
            decompressor_active: not gradeable by level: do a leak-down; conditions_not_met:
            gradeable only where it is good: a condition of the test was not met; reading_unfit: not
            gradeable: the reading does not repeat, or the gauge is unfit)
        each_over_highest : Sequence[float], optional
            each cylinder's reading over the highest, in order
        layout : str, optional
            how the cylinders stand; in two banks the first half of the readings is one bank
            (in_line: all cylinders in one bank, read in order; vee: two banks, read bank by bank;
            opposed: two opposed banks, read bank by bank) (default in_line)
        spread : QuantityLike, optional
            highest less lowest reading, share of the highest
        adjacent_low_pair : Sequence[float], optional
            two low neighbours in one bank, counted from 1
        excess_gain : QuantityLike, optional
            gain of the wet test beyond the oil's own volume
        wet_over_expected : float, optional
            reading with oil over the expected one
        build_up_pattern : str, optional
            pattern of the build-up (higher_than_expected: more than 1.10 of the expected pressure;
            pattern_not_judged: no baseline of the same gauge on a sound cylinder; slow_but_full:
            comes up slowly and gets there; normal: normal; builds_up_but_short: comes up slowly and
            stays short: rings and bore; like_a_fixed_leak: comes up as a sound cylinder does and
            stays short: a fixed leak)
        strokes_to_95 : int, optional
            strokes until 95 % of the last reading
        last_over_expected : float, optional
            last stroke over the expected reading
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
        crankcase_finding : str, optional
            crankcase of a two-stroke under pressure and vacuum (holds: holds pressure and vacuum;
            vacuum_not_tested: holds pressure; the vacuum test is still to be made;
            pressure_not_tested: holds vacuum; the pressure test is still to be made;
            leaks_under_pressure: leaks under pressure; leaks_under_vacuum: leaks under vacuum;
            leaks_under_both: leaks under pressure and under vacuum; repeat_the_test: it gains
            instead of losing: the test is not valid)
        oil_use_grade : str, optional
            oil use (find_out: find out; worn: worn; usual: usual)
        weights : Sequence[DiagnosisWeight], optional
            weights of one's own
        decisive_weight : float, optional
            what a decisive line counts; absent, 4
        strong_weight : float, optional
            what a strong line counts; absent, 2
        moderate_weight : float, optional
            what a moderate line counts; absent, 1.1
        weak_weight : float, optional
            what a weak line counts; absent, 0.4
        least_score : float, optional
            score from which a suspect is a strong one; absent, 2
        least_lead : float, optional
            lead from which the first suspect is settled; absent, 1.1
        unsound_test_share : float, optional
            share that the readings of a test that is not valid still count; absent, 0.25
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
            "cycle": cycle,
            "cylinder_count": cylinder_count,
            "valve_gear": valve_gear,
            "cooling": cooling,
            "decompressor": decompressor,
            "decompressor_state": decompressor_state,
            "complaint": complaint,
            "evidence": evidence,
            "throttle_open": throttle_open,
            "choke_off": choke_off,
            "engine_warm": engine_warm,
            "battery": battery,
            "level_ratio": level_ratio,
            "level_gradeable": level_gradeable,
            "each_over_highest": each_over_highest,
            "layout": layout,
            "spread": spread,
            "adjacent_low_pair": adjacent_low_pair,
            "excess_gain": excess_gain,
            "wet_over_expected": wet_over_expected,
            "build_up_pattern": build_up_pattern,
            "strokes_to_95": strokes_to_95,
            "last_over_expected": last_over_expected,
            "leak": leak,
            "leak_gradeable": leak_gradeable,
            "leak_grade": leak_grade,
            "heard_at": heard_at,
            "crankcase_finding": crankcase_finding,
            "oil_use_grade": oil_use_grade,
            "weights": weights,
            "decisive_weight": decisive_weight,
            "strong_weight": strong_weight,
            "moderate_weight": moderate_weight,
            "weak_weight": weak_weight,
            "least_score": least_score,
            "least_lead": least_lead,
            "unsound_test_share": unsound_test_share,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
