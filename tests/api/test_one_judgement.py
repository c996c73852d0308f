"""One answer judges one thing once: its figures, verdicts, warnings and sentences agree."""

import copy
from typing import Any

import pytest
from asking import post
from flask.testing import FlaskClient
from tests.cards import JOBS


def mm(value: float, u: float | None = None) -> dict[str, Any]:
    told = {"value": value, "unit": "mm"}
    return told if u is None else {**told, "uncertainty": u}


def kpa(value: float, u: float | None = None) -> dict[str, Any]:
    return {**mm(value, u), "unit": "kPa"}


def codes(answer: dict[str, Any]) -> set[str]:
    return {warning["code"] for warning in answer["warnings"]}


RING_GAPS = {
    "top_ring_gap": "gap of the new top ring, in its bore",
    "second_ring_gap": "gap of the new second ring, in its bore",
}


@pytest.mark.parametrize("factor", [None, 0.0042, 0.006])
@pytest.mark.parametrize("told", [(), ("top_ring_gap",), tuple(RING_GAPS)])
@pytest.mark.parametrize("name", ["orchard_pump", "crawler_twin"])
def test_a_ring_is_read_again_against_the_range_that_it_is_judged_by(
    client: FlaskClient, name: str, told: tuple[str, ...], factor: float | None
) -> None:
    job = copy.deepcopy(JOBS[name])
    job["rings"] |= {"top_measured": mm(0.3), "second_measured": mm(0.4)}
    if factor is not None:
        job["rings"] |= {"top_factor": factor, "second_factor": factor}
    for check in RING_GAPS:
        job["limits"].pop(check, None)
    job["limits"] |= {check: {"low": mm(0.25), "high": mm(0.45)} for check in told}
    card = post(client, "job-card?units=metric", job)
    rows = card["result"]["re_check"]
    listed = {row["what"]: row for row in rows.get("values", []) + rows.get("usual_values", [])}
    judged = {v["check"]: v["limit"] for v in card["verdicts"] if v["check"] in RING_GAPS}
    assert judged.keys() == RING_GAPS.keys()
    for check, limit in judged.items():
        row = listed[RING_GAPS[check]]
        assert row["standing"] == limit["standing"]
        for side in ("low", "high"):
            assert row[side]["value"] == pytest.approx(limit[side]["value"])


@pytest.mark.parametrize("low", [0.25, 0.33, 0.35, 0.36, 0.42])
def test_the_second_ring_is_filed_no_smaller_than_the_first(
    client: FlaskClient, low: float
) -> None:
    """Common practice, no source: pressure trapped under a smaller gap lifts the top ring."""
    asked = {
        "bore": mm(65.6),
        "top_measured": mm(0.2),
        "second_measured": mm(0.2),
        "limits": {"top_ring_gap": {"low": mm(low), "high": mm(0.5)}},
    }
    found = post(client, "ring-gap", asked)
    second = found["result"]["second_wanted"]["value"]
    # By hand: 0.005 of 65.6 mm, and the usual range ends at 0.0055 of it.
    assert second == pytest.approx(min(max(0.328, low), 0.3608))
    assert ("second_gap_smaller" in codes(found)) is (low > 0.3608)
    assert found["result"]["file_second"]["value"] == pytest.approx(second - 0.2)
