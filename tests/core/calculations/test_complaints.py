"""From the complaint to the first tests: the table and what it gives.

Rows: common practice, no source.
"""

import pytest
from diagnosing import diagnosed

from ringland_service.core.calculations.diagnosis.tables import COMPLAINTS


def engine(complaint: str) -> dict[str, str]:
    """Return an engine that can have the complaint."""
    row = COMPLAINTS[complaint]
    found = {"cycle": row.cycle or "four_stroke"}
    found |= {"valve_gear": row.valve_gear} if row.valve_gear else {}
    return found | ({"decompressor": "unknown"} if row.decompressor else {})


@pytest.mark.parametrize("complaint", COMPLAINTS)
def test_each_complaint_says_where_to_begin(complaint: str) -> None:
    found = diagnosed(complaint_kind=complaint, **engine(complaint))
    row = COMPLAINTS[complaint]
    assert (found.look_first, found.first_tests) == (row.look_first, row.test_next)
    assert found.stop_when == row.stop_when
    assert found.headline == "nothing_tested"


def test_with_evidence_the_ranking_speaks_and_the_complaint_stays() -> None:
    found = diagnosed(cycle="four_stroke", complaint_kind="blue_smoke", evidence=("E20", "E71"))
    assert found.first == "RB"
    assert found.first_tests == COMPLAINTS["blue_smoke"].test_next


def test_there_are_eleven_and_each_says_what_to_do() -> None:
    assert len(COMPLAINTS) == 11
    for row in COMPLAINTS.values():
        assert row.look_first
        assert row.test_next
        assert row.stop_when
