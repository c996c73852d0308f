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
        evidence (E01: throttle or choke not held fully open during the test; E02: cranking slow, or
        battery below 9.6 V while cranking, or a half-hearted kick; E03: engine cold though the
        maker's figure is for a warm engine; E04: repeat readings on the same cylinder differ by
        more than 5 %; E05: gauge check valve is not at the plug end, or tyre-type core in the
        adaptor; E06: engine has an automatic decompressor and it was not held off; E07: reading or
        leak changes when the decompressor is held off; E10: dry reading below 0.80 of expected in
        one cylinder; E11: all cylinders low by about the same share; E12: dry reading above 1.10 of
        expected; E13: dry reading 0.90 to 1.10 of expected; E20: excess wet gain 15 % or more (gain
        less oil-volume gain); E21: excess wet gain below 5 % with a low dry reading; E22: excess
        wet gain 5 to 15 %; E23: wet reading still below 0.80 of expected after a large gain; E30:
        lowest cylinder below 0.85 of highest, neighbours sound; E31: two neighbours low by about
        the same share (within 10 %), others sound; E32: spread 10 % or less; E40: builds up stroke
        by stroke and ends short: q below 0.8 (only with a baseline of the same gauge); E41: low and
        builds up like a fixed leak: q 0.8 or more (only with a baseline of the same gauge); E42:
        full reading reached in the first three or four strokes; E43: jumps: low strokes then a
        sudden normal one; E50: leak-down 10 % or less; E51: leak-down above 30 %; E52: low
        compression (E10 or E11) with leak-down 10 % or less (E50); E60: air heard at oil filler,
        dipstick hole or breather; E61: air heard at the exhaust outlet; E62: air heard at the
        intake; E63: bubbles in the radiator or header tank; E64: air heard at the neighbour's plug
        hole; E65: soapy water foams at the head joint, plug or stud; E66: air heard at the
        carburettor or intake at top dead centre; E67: air heard at the exhaust at top dead centre;
        E68: leak drops by half or more after tapping the valve or rocking the crank; E70: blue
        smoke on overrun or on reopening after overrun; E71: blue smoke under acceleration or steady
        load; E72: blue puff at start after standing, then clears; E73: white smoke, sweet, does not
        clear when warm; E74: black smoke; E75: heavy smoke, gear-oil smell, gearbox level falling;
        E80: plug oily and wet, in one cylinder; E81: plug and crown look steam-cleaned; E82: metal
        specks on the plug nose; E83: plug nose blistered and very pale; E84: thick hard deposits on
        crown and head through a borescope; E90: oil use above limit, compression and leak-down
        normal; E91: oil use above limit, compression low; E92: oil use negligible; E100: coolant
        falls, no outside leak; E101: oil and coolant mixed; E102: combustion gas shown in the
        coolant by chemical test; E110: crankcase pressure at warm idle above the maker's limit,
        breather clear; E111: crankcase pressure normal; E112: crankcase fails the pressure or the
        vacuum test; E113: crankcase holds pressure and vacuum; E120: lash below the minimum on an
        exhaust valve of the low cylinder; E123: lash below the minimum on an intake valve of the
        low cylinder; E121: lash above the maximum; E122: lash set right, exhaust valve still leaks
        at leak-down; E124: lash set right, intake valve still leaks at leak-down; E125: lash
        measured within limits; E130: kick or rope starter turns with hardly any resistance; E131:
        kicks back or starter stalls on compression; E132: spitting back through the intake; E133:
        popping in the exhaust, even puffing missing a beat; E134: pinking or running-on; E135: slap
        when cold, fades when warm; E136: light tick at half engine speed; E140: overheat or seizure
        reported; E141: dust past the air filter; E142: recent valve-train or chain work; E143:
        stood unused for months; E144: timing marks found out of line)
    suspect : str
        suspect (RB: rings or bore worn, a ring stuck or broken; VX: exhaust valve not sealing:
        seat, face, bent, carbon chip; VI: intake valve not sealing: seat, face, bent, carbon chip;
        GS: valve guides or stem seals worn; HG: head gasket or joint leaking; CB: carbon built up;
        LT: valve lash too tight; LL: valve lash too loose; DC: decompressor at work, stuck or out
        of adjustment; TE: the test itself: throttle, speed, cold, gauge, hose, wrong dead centre,
        altitude; PS: piston damaged: holed, cracked, scored, a broken land; CT: cam timing out; CK:
        crankcase not tight, or its reed leaking)
    weight : float
        what it counts: above 0 for the suspect, below 0 against; 0 takes the line out
    reason : str
        why
    """

    evidence: str
    suspect: Literal["RB", "VX", "VI", "GS", "HG", "CB", "LT", "LL", "DC", "TE", "PS", "CT", "CK"]
    weight: float
    reason: NotRequired[str]


@dataclass(frozen=True, kw_only=True)
class DiagnosisResultSuspect:
    """None is what cannot be known.

    Attributes
    ----------
    suspect : str
        code
    score : float | None
        sum of what counts
    words : str | None
        what it is
    """

    suspect: (
        Literal["RB", "VX", "VI", "GS", "HG", "CB", "LT", "LL", "DC", "TE", "PS", "CT", "CK"] | None
    ) = None
    score: float | None = None
    words: str | None = None


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
        Literal["RB", "VX", "VI", "GS", "HG", "CB", "LT", "LL", "DC", "TE", "PS", "CT", "CK"] | None
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
    words : str | None
        what it is
    """

    evidence: str | None = None
    known_from: Literal["told", "measured", "derived"] | None = None
    words: str | None = None


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
        Literal["RB", "VX", "VI", "GS", "HG", "CB", "LT", "LL", "DC", "TE", "PS", "CT", "CK"] | None
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
    first_words : str | None
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
        Literal["RB", "VX", "VI", "GS", "HG", "CB", "LT", "LL", "DC", "TE", "PS", "CT", "CK"] | None
    ) = None
    first_words: str | None = None
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
        cylinders: int | None = None,
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
        complaint_kind: Literal[
            "no_start_no_resistance",
            "hard_start_weak",
            "kicks_back",
            "blue_smoke",
            "white_smoke_coolant_falls",
            "uneven_one_cylinder_weak",
            "knock_or_slap",
            "overheats_or_seized",
            "side_valve_weak",
            "decompressor_in_doubt",
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
        ``crankcase_finding`` or ``oil_use_grade`` or ``complaint_kind``.

        Parameters
        ----------
        cycle : str
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        cylinders : int, optional
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
        complaint_kind : str, optional
            what the owner complains of, for what to look at and to test first
            (no_start_no_resistance: does not start, no resistance on the starter; hard_start_weak:
            hard to start, weak; kicks_back: kicks back, starter stalls; blue_smoke: blue smoke;
            white_smoke_coolant_falls: white smoke, coolant falls; uneven_one_cylinder_weak: uneven,
            one cylinder weak; knock_or_slap: knock or slap; overheats_or_seized: overheats, or
            seized; side_valve_weak: side-valve engine, weak; decompressor_in_doubt: decompressor in
            doubt; lean_hot_surging: two-stroke runs lean, hot, surging)
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
            "cylinders": cylinders,
            "valve_gear": valve_gear,
            "cooling": cooling,
            "decompressor": decompressor,
            "decompressor_state": decompressor_state,
            "complaint_kind": complaint_kind,
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
