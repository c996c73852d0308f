"""The tables of the diagnosis: whole, in words of their own, and as the trade brief weighs."""

import csv
import re
from pathlib import Path

import pytest

from ringland_service.core.calculations.diagnosis.tables import (
    AGAINST,
    EVIDENCE,
    FAMILIES_OF,
    FIGURES,
    FOR,
    NEXT_TESTS,
    RULES,
    SUSPECTS,
    WEIGHTS,
    Evidence,
    NextTest,
    Rule,
)
from ringland_service.core.engines import condition
from ringland_service.core.metrology.limits import STANDINGS

BRIEF = Path(__file__).parents[1] / "reference" / "data" / "evidence_weights.csv"
FAMILIES = {row.family for row in EVIDENCE.values()}
LACKING = {
    "valves",
    "decompressor",
    "crankcase_scavenging",
    "several_cylinders",
    "liquid_cooling",
}


def test_the_weights_are_those_of_the_brief() -> None:
    """Copied from the trade brief, not written out from the tables: 73 pieces, 238 lines."""
    lines = BRIEF.read_text("utf-8").splitlines()[1:]
    brief = {tuple(row.values()) for row in csv.DictReader(lines)}
    ours = {
        (row.id, row.family, line.suspect, line.direction, line.weight)
        for row in EVIDENCE.values()
        for line in row.lines
    }
    assert ours == brief
    assert (len(EVIDENCE), len(ours)) == (73, 238)


def test_the_figures_are_those_of_the_brief() -> None:
    figures = {name: figure.value for name, figure in FIGURES.items()}
    assert figures == {
        "decisive": 4.0,
        "strong": 2.0,
        "moderate": 1.1,
        "weak": 0.4,
        "least_score": 2.0,
        "least_lead": 1.1,
        "unsound_test_share": 0.25,
    }
    assert all(figure.reason for figure in FIGURES.values())


def test_ids_are_unique_over_the_tables_of_evidence() -> None:
    assert len(FAMILIES_OF) == 4
    assert all(re.fullmatch(r"E\d{2,3}", name) for name in EVIDENCE)
    assert all(re.fullmatch(r"[A-Z]{2}", name) for name in SUSPECTS)


@pytest.mark.parametrize("row", EVIDENCE.values(), ids=lambda row: row.id)
def test_evidence_is_whole(row: Evidence) -> None:
    assert row.lines
    assert row.standing in STANDINGS
    assert row.cycle in ("", *condition.CYCLE)
    assert set(row.needs) <= LACKING
    spoken = [line.suspect for line in row.lines]
    assert len(spoken) == len(set(spoken)), "one line a suspect"
    for line in row.lines:
        assert line.suspect in SUSPECTS
        assert line.direction in (FOR, AGAINST)
        assert line.weight in WEIGHTS
        assert line.reason


@pytest.mark.parametrize("row", RULES.values(), ids=lambda row: row.id)
def test_rules_name_what_there_is(row: Rule) -> None:
    assert {*row.all, *row.any, *row.evidence} <= EVIDENCE.keys()
    assert set(row.suspects) <= SUSPECTS.keys()
    assert set(row.families) <= FAMILIES
    assert set(row.decompressors) <= condition.DECOMPRESSOR.keys()
    assert row.gives in ("", *EVIDENCE)


@pytest.mark.parametrize("row", NEXT_TESTS, ids=lambda row: row.id)
def test_next_tests_name_what_there_is(row: NextTest) -> None:
    assert {*row.between, *row.others} <= SUSPECTS.keys()
    assert {*row.fills, *row.after} <= FAMILIES
    assert {*row.seen, *row.once} <= EVIDENCE.keys()
    assert row.needs in ("", *LACKING)
    assert row.words
    assert row.reads_as


def test_only_invalid_tests_have_something_to_put_right() -> None:
    with_cure = {name for name, row in EVIDENCE.items() if row.put_right}
    assert with_cure == set(RULES["test_not_valid"].any)
