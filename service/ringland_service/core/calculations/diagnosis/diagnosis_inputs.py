"""What the diagnosis is asked: the engine, what was seen, what was measured, own weights."""

from typing import Any

from ringland_service.core.calculations.diagnosis.tables import (
    COMPLAINT_WORDS,
    EVIDENCE_WORDS,
    FIGURES,
    SUSPECT_WORDS,
    TOLD_WORDS,
)
from ringland_service.core.calculations.engine_tests import (
    compression_level,
    cylinder_spread,
    leak_down,
    pressure_build_up,
)
from ringland_service.core.calculations.engine_tests import crankcase_checks as crankcase
from ringland_service.core.calculations.engine_tests import leak_words as leak
from ringland_service.core.calculations.geometry import displacement
from ringland_service.core.declare import (
    NO_EXAMPLE,
    choice,
    count,
    number,
    numbers,
    quantity,
    record,
    records,
    same,
    some_of,
    text,
    usual_figures,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.metrology.limits import GRADES
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import assembly
from ringland_service.core.quantities import diagnosis as quantities

LEVEL, SPREAD = compression_level.Inputs, cylinder_spread.Inputs
AIR, LIQUID = "air", "liquid"
COOLING: dict[str, str] = {
    AIR: "air-cooled, no coolant",
    LIQUID: "liquid-cooled",
    UNKNOWN: "not known",
}


def _figure(name: str, high: float) -> Any:
    """Declare a figure of the table that the request may give instead."""
    figure = FIGURES[name]
    words = f"{figure.words}; absent, {figure.value:g}"
    return number(words, low=0.0, high=high, example=figure.value, default=None)


# Any one of these is something to weigh.
NEEDS: tuple[str, ...] = (
    "evidence",
    "level_ratio",
    "each_over_highest",
    "spread_pct",
    "excess_gain_pct",
    "build_up_pattern",
    "leak_pct",
    "leak_grade",
    "heard_at",
    "crankcase_finding",
    "oil_use_grade",
)


@record
class OwnWeight:
    """A weight of the request's own, in place of the table's, or where the table has none."""

    evidence: str = choice("evidence", EVIDENCE_WORDS, example="E141")
    suspect: str = choice("suspect", SUSPECT_WORDS, example="RB")
    weight: Number = number(
        "what it counts: above 0 for the suspect, below 0 against; 0 takes the line out",
        low=-20.0,
        high=20.0,
        example=2.0,
    )
    reason: str | None = text(
        "why", example="dust track seen behind the filter", longest=200, default=None
    )


@record
class Inputs:
    """The engine, the evidence told, the tests that are evidence by themselves, own weights."""

    cycle: str = choice("cycle", condition.CYCLE, example="four_stroke")
    cylinders: int | None = same(displacement.Inputs, "cylinders")
    valve_gear: str | None = same(LEVEL, "valve_gear")
    cooling: str | None = choice("cooling", COOLING, example=AIR, default=None)
    decompressor: str | None = same(LEVEL, "decompressor")
    decompressor_state: str | None = same(LEVEL, "decompressor_state")
    complaint_kind: str | None = choice(
        "what the owner complains of, for what to look at and to test first",
        COMPLAINT_WORDS,
        example="blue_smoke",
        default=None,
    )
    evidence: tuple[str, ...] | None = some_of(
        "what was seen, heard or found; the evidence table has each with its words",
        TOLD_WORDS,
        example=("E71", "E141"),
        default=None,
    )
    throttle_open: bool | None = same(LEVEL, "throttle_open")
    choke_off: bool | None = same(LEVEL, "choke_off")
    engine_warm: bool | None = same(LEVEL, "engine_warm")
    battery_v: Number | None = same(LEVEL, "battery_v")
    level_ratio: Number | None = number(
        "compression reading over the expected one",
        low=0.0,
        high=10.0,
        example=0.61,
        default=None,
    )
    level_gradeable: str | None = choice(
        "whether that level can be graded",
        compression_level.GRADEABLE,
        example="yes",
        default=None,
    )
    each_over_highest: tuple[float, ...] | None = numbers(
        "each cylinder's reading over the highest, in order",
        low=0.0,
        high=1.0,
        least=2,
        most=8,
        example=None,
        default=None,
    )
    layout: str = same(SPREAD, "layout", default="in_line")
    spread_pct: Number | None = quantity(
        quantities.CYLINDER_SPREAD,
        "highest less lowest reading, share of the highest",
        example=NO_EXAMPLE,
        default=None,
    )
    adjacent_low_pair: tuple[float, ...] | None = numbers(
        "two low neighbours in one bank, counted from 1",
        low=1,
        high=8,
        least=2,
        most=2,
        example=None,
        default=None,
    )
    excess_gain_pct: Number | None = quantity(
        quantities.EXCESS_GAIN, "gain of the wet test beyond the oil's own volume", default=None
    )
    wet_over_expected: Number | None = number(
        "reading with oil over the expected one", low=0.0, high=10.0, example=0.86, default=None
    )
    build_up_pattern: str | None = choice(
        "pattern of the build-up",
        pressure_build_up.PATTERNS,
        example="builds_up_but_short",
        default=None,
    )
    strokes_to_95: int | None = count(
        "strokes until 95 % of the last reading", low=1, high=12, example=5, default=None
    )
    last_over_expected: Number | None = number(
        "last stroke over the expected reading", low=0.0, high=10.0, example=0.61, default=None
    )
    leak_pct: Number | None = quantity(
        assembly.LEAK_SHARE,
        "leak-down; counts where it can be graded",
        example=35.0,
        default=None,
    )
    leak_gradeable: str | None = choice(
        "whether the common steps grade that leak-down",
        leak.GRADEABLE,
        example="yes",
        default=None,
    )
    leak_grade: str | None = choice(
        "leak-down graded already, on the tester maker's own scale say; goes before the per cent",
        leak.GRADE,
        example="tear_down",
        default=None,
    )
    heard_at: str | None = same(leak_down.Inputs, "heard_at")
    crankcase_finding: str | None = choice(
        "crankcase of a two-stroke under pressure and vacuum",
        crankcase.FINDING,
        example=None,
        default=None,
    )
    oil_use_grade: str | None = choice(
        "oil use", GRADES["oil_use"].choices, example="find_out", default=None
    )
    weights: tuple[OwnWeight, ...] | None = records(
        OwnWeight, "weights of one's own", most=300, default=None
    )
    decisive_weight: Number | None = _figure("decisive", 20.0)
    strong_weight: Number | None = _figure("strong", 20.0)
    moderate_weight: Number | None = _figure("moderate", 20.0)
    weak_weight: Number | None = _figure("weak", 20.0)
    least_score: Number | None = _figure("least_score", 100.0)
    least_lead: Number | None = _figure("least_lead", 100.0)
    unsound_test_share: Number | None = _figure("unsound_test_share", 1.0)
    usual: bool = usual_figures()
