"""What answers are made of, beside their results.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from dataclasses import dataclass
from typing import Literal

from ringland._generated._words import RuleApplied, Standing, VerdictWord
from ringland._types import Interval, Quantity


@dataclass(frozen=True, kw_only=True)
class Basis:
    """Where a result comes from: formula in words, and source.

    Attributes
    ----------
    field : str
    formula : str
    source : str
    """

    field: str
    formula: str
    source: str


@dataclass(frozen=True, kw_only=True)
class MeasureNextWayItem:
    """None is what cannot be known.

    Attributes
    ----------
    field : str
    description : str
    instrument : str
    """

    field: str
    description: str
    instrument: str


@dataclass(frozen=True, kw_only=True)
class MeasureNext:
    """What would open a part of the answer (any one way), or settle a verdict.

    Attributes
    ----------
    opens : str
    why : str
    ways : tuple[tuple[MeasureNextWayItem, ...], ...]
    advice : str
    """

    opens: str
    why: str
    ways: tuple[tuple[MeasureNextWayItem, ...], ...]
    advice: str


@dataclass(frozen=True, kw_only=True)
class NotWorkedOut:
    """A part that is not worked out for this engine, and why.

    Attributes
    ----------
    part : str
    label : str
    why : str
    """

    part: str
    label: str
    why: str


@dataclass(frozen=True, kw_only=True)
class Taken:
    """Where a part's field came from, where the names differ.

    Attributes
    ----------
    field : str
    from_ : str
    """

    field: str
    from_: str


@dataclass(frozen=True, kw_only=True)
class TraceStep:
    """A formula with its numbers put in.

    Attributes
    ----------
    field : str
    formula : str
    substituted : str
    value : float
    unit : str
    """

    field: str
    formula: str
    substituted: str
    value: float
    unit: str


@dataclass(frozen=True, kw_only=True)
class Limit:
    """A limit with its standing.

    Attributes
    ----------
    low : Quantity | float | None
    high : Quantity | float | None
    standing : Standing
    source : str
    with_decompressor : bool | None
        stated for a reading with the decompressor at work
    """

    low: Quantity | float | None
    high: Quantity | float | None
    standing: Standing
    source: str
    with_decompressor: bool | None = None


@dataclass(frozen=True, kw_only=True)
class ToSettle:
    """How a verdict that is too close to call could be settled.

    Attributes
    ----------
    target_uncertainty : Quantity | float | None
    advice : str
    """

    target_uncertainty: Quantity | float | None
    advice: str


@dataclass(frozen=True, kw_only=True)
class Verdict:
    """A verdict: value, limit, word, and how to settle or to judge it.

    Attributes
    ----------
    check : str
    label : str
    of : str | None
        of which, where several are judged
    value : Quantity | float
    uncertainty : Quantity | float | None
    interval : Interval | None
    bias : str | None
        which way noise pushes the value, where the verdict is judged from its interval
    limit : Limit
    verdict : VerdictWord
    why : str
        why no verdict is due: decompressor_at_work: a decompressor let pressure off during the
        test; decompressor_unknown: a decompressor may have let pressure off during the test;
        limit_with_decompressor: the limit is for a reading with the decompressor at work;
        throttle_not_open: throttle or choke was not held fully open; engine_cold: the engine was
        cold; cranking_slow: the starter turned too slowly; readings_not_repeating: repeat readings
        differ by more than 5 %; cylinders_not_all_told: not all cylinders of the engine were read;
        gauge_unfit: hose and adaptor take more than 10 % off the reading;
        not_at_firing_dead_centre: the piston was not at firing dead centre;
        place_of_piston_unknown: where the piston stood is not told; decompressor_lets_air_out: the
        decompressor lets air out during the leak-down; tester_outside_the_scale: the tester's
        restrictor or supply is not that of the limit, or not told; gains_instead_of_losing: the
        crankcase gained instead of losing; surface_smeared: metal is smeared on the bore: its size
        is not that of the bore; parts_at_different_temperatures: the two parts were not measured at
        one temperature; measured_elsewhere: the piston was not measured at its measuring height;
        hydraulic_adjuster: a hydraulic adjuster has no lash to measure; part_gone: the part is not
        used again; valve_seat_to_be_cut: the seat is still to be cut, which changes the lash
    to_judge : str | None
        what would make a reading that is not judged one that can be
    without_uncertainty : Literal['pass', 'fail', 'too_close_to_call', None]
    conformance_probability : float | None
    margin : Quantity | float
    rule : RuleApplied
        interval_95: the whole 95 % interval decides, where noise pushes the value one way; not a
        rule to ask for
    inconclusive_fails : str | None
    to_settle : ToSettle | None
    """

    check: str
    label: str
    of: str | None
    value: Quantity | float
    uncertainty: Quantity | float | None
    interval: Interval | None
    bias: str | None
    limit: Limit
    verdict: VerdictWord
    why: Literal[
        "decompressor_at_work",
        "decompressor_unknown",
        "limit_with_decompressor",
        "throttle_not_open",
        "engine_cold",
        "cranking_slow",
        "readings_not_repeating",
        "cylinders_not_all_told",
        "gauge_unfit",
        "not_at_firing_dead_centre",
        "place_of_piston_unknown",
        "decompressor_lets_air_out",
        "tester_outside_the_scale",
        "gains_instead_of_losing",
        "surface_smeared",
        "parts_at_different_temperatures",
        "measured_elsewhere",
        "hydraulic_adjuster",
        "part_gone",
        "valve_seat_to_be_cut",
        None,
    ]
    to_judge: str | None
    without_uncertainty: Literal["pass", "fail", "too_close_to_call", None]
    conformance_probability: float | None
    margin: Quantity | float
    rule: RuleApplied
    inconclusive_fails: str | None
    to_settle: ToSettle | None


@dataclass(frozen=True, kw_only=True)
class AnswerWarning:
    """Something unusual in the request or the result; the answer stands.

    Attributes
    ----------
    code : str
    field : str
    message : str
    """

    code: str
    field: str
    message: str
