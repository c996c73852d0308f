"""The diagnosis and its tables as a client sees them: JSON, text, GET, batch, bad requests."""

from typing import Any

import pytest
from asking import get, post, problem, strict
from flask.testing import FlaskClient

ENGINE = {"cycle": "four_stroke", "decompressor": "none"}
WORN = {
    **ENGINE,
    "cylinder_count": 1,
    "evidence": ["blue_smoke_on_load", "dust_past_filter"],
    "level_ratio": 0.611644,
    "excess_gain": {"value": 23.9706, "unit": "%"},
    "build_up_pattern": "builds_up_but_short",
    "leak": {"value": 35.0725, "unit": "%"},
    "leak_gradeable": "yes",
    "heard_at": "oil_filler_or_breather",
    "oil_use_grade": "find_out",
}


def test_a_worn_engine(client: FlaskClient) -> None:
    found = post(client, "diagnosis", WORN)
    result = found["result"]
    assert result["statement"] == "rings or bore leads by 10.4"
    assert [row["suspect"] for row in result["suspects"]][:3] == [
        "rings_or_bore",
        "piston_damage",
        "head_joint",
    ]
    assert result["suspects"][0]["score"] == pytest.approx(12.6, rel=1e-9)
    assert found["inputs"]["evidence"] == ["blue_smoke_on_load", "dust_past_filter"]
    assert any("locked" in line for line in found["cautions"])


def test_the_text_reads_for_a_technician(client: FlaskClient) -> None:
    text = client.post("/v1/diagnosis", json=WORN, headers={"Accept": "text/plain"}).text
    lines = [" ".join(line.split()) for line in text.splitlines()]
    assert "statement rings or bore leads by 10.4" in lines
    assert "next test borescope of crown and wall, turned through the stroke" in lines
    assert "rings or bore 12.60 rings or bore worn, a ring stuck or broken" in lines
    assert "rings or bore air_at_breather 2.00 2.00 air passes the rings to the" in lines
    assert lines[
        lines.index("rings or bore wet_gain_large 2.00 2.00 oil seals ring gaps and faces") + 1
    ] == ("for a few strokes")
    assert "blue_smoke_on_load told blue smoke under acceleration or steady load" in lines
    assert max(map(len, text.splitlines())) <= 100


def test_readings_alone_can_be_asked_by_address(client: FlaskClient) -> None:
    asked = {**ENGINE, "level_ratio": "0.96", "leak": "7 %", "leak_gradeable": "yes"}
    found = strict(get(client, "diagnosis", {**asked, "strokes_to_95": 3, "last_over_expected": 1}))
    assert found["result"]["headline"] == "nothing_wrong_shown"


def test_common_practice_switched_off(client: FlaskClient) -> None:
    own = [
        {
            "evidence": "blue_smoke_on_load",
            "suspect": "rings_or_bore",
            "weight": 2.5,
            "reason": "our own count",
        }
    ]
    found = post(client, "diagnosis", {**WORN, "defaults": "off", "weights": own})["result"]
    assert found["suspects"] == [
        {
            "suspect": "rings_or_bore",
            "score": 2.5,
            "label": "rings or bore worn, a ring stuck or broken",
        }
    ]
    assert [line["why"] for line in found["lines"]] == ["our own count"]
    assert found["headline"] == "ranking_only"
    assert "next_test" not in found


BAD: list[tuple[dict[str, Any], int, str, str]] = [
    ({"evidence": "compression_low_one_cylinder"}, 400, "#/evidence", "not a list"),
    ({"evidence": ["compression_low_one_cylinder", 3]}, 400, "#/evidence/1", "3 is not one of"),
    ({"evidence": ["compression_low_one_cylinder", None]}, 400, "#/evidence/1", "leave it out"),
    ({"evidence": ["low_but_tight"]}, 400, "#/evidence/0", "'low_but_tight' is not one of"),
    (
        {"evidence": ["compression_low_one_cylinder", "compression_low_one_cylinder"]},
        422,
        "#/evidence",
        "given twice: compression_low_one_cylinder",
    ),
    ({"evidence": ["compression_low_one_cylinder"] * 80}, 422, "#/evidence", "80 entries, of 72"),
    ({}, 422, "#/evidence", "one of these is needed"),
    ({"evidence": ["crankcase_leaks"]}, 422, "#/evidence", "not on a four-stroke"),
    ({"evidence": ["decompressor_not_held_off"]}, 422, "#/evidence", "no decompressor"),
    (
        {"evidence": ["compression_low_one_cylinder"], "weak_weight": 1.2},
        422,
        "#/weak_weight",
        "count more than a moderate",
    ),
    (
        {"evidence": ["compression_low_one_cylinder"], "decompressor_state": "automatic_active"},
        422,
        "#/decompressor",
        "state",
    ),
]


@pytest.mark.parametrize(
    ("more", "status", "pointer", "words"), BAD, ids=lambda value: str(value)[:40]
)
def test_bad_requests_say_what_is_wrong(
    client: FlaskClient, more: dict[str, Any], status: int, pointer: str, words: str
) -> None:
    found = problem(client.post("/v1/diagnosis", json={**ENGINE, **more}), status)
    (fault,) = found["errors"]
    assert fault["pointer"] == pointer
    assert words in fault["detail"]


def test_columns_carry_the_tables_too(client: FlaskClient) -> None:
    """Each entry of a table's column is what the single answer has."""
    shared = {**ENGINE, "evidence": ["blue_smoke_on_load"]}
    ratios = [0.6, 0.96]
    columns = {"level_ratio": {"values": ratios}}
    answer = client.post("/v1/diagnosis/batch", json={"shared": shared, "columns": columns})
    assert answer.status_code == 200
    found = strict(answer)["results"]
    for place, ratio in enumerate(ratios):
        single = post(client, "diagnosis", {**shared, "level_ratio": ratio})["result"]
        for name in ("statement", "suspects", "lines", "at_hand", "left_out"):
            assert found[name]["values"][place] == single[name]


def test_columns_as_a_sheet(client: FlaskClient) -> None:
    sheet = "cycle,decompressor,level_ratio,heard_at\nfour_stroke,none,0.6,exhaust\n"
    answer = client.post("/v1/diagnosis/batch", data=sheet, content_type="text/csv")
    head, line = answer.text.splitlines()
    assert head.startswith("row,status,statement,headline,first,")
    assert line.startswith(
        "1,ok,not settled: measure the lash first,measure_lash_first,exhaust_valve,"
    )
    assert "suspect: exhaust_valve; score: 3.1; label: exhaust valve" in line


def test_a_batch_goes_a_job_a_line(client: FlaskClient) -> None:
    lines = '{"cycle": "two_stroke", "evidence": ["crankcase_leaks"]}\n{"cycle": "two_stroke"}\n'
    answer = client.post("/v1/diagnosis/batch", data=lines, content_type="application/x-ndjson")
    assert answer.status_code == 200
    first, second = answer.text.splitlines()
    assert "crankcase leak leads by 4.0" in first
    assert "one of these is needed" in second


def test_the_table_of_evidence(client: FlaskClient) -> None:
    table = strict(client.get("/v1/evidence"))
    assert table.keys() == {
        "suspects",
        "evidence",
        "figures",
        "rules",
        "complaints",
        "next_tests",
        "standings",
    }
    assert len(table["complaints"]) == 11
    by_id = {row["id"]: row for row in table["evidence"]}
    assert len(by_id) == 73
    rings = {line["suspect"]: line for line in by_id["wet_gain_large"]["lines"]}["rings_or_bore"]
    assert (rings["direction"], rings["weight"], rings["counts"]) == ("for", "strong", 2.0)
    valve = {line["suspect"]: line for line in by_id["wet_gain_large"]["lines"]}["exhaust_valve"]
    assert (valve["direction"], valve["counts"]) == ("against", -1.1)
    assert by_id["low_but_tight"]["derived"] is True
    for name in ("suspects", "evidence", "figures", "rules", "next_tests"):
        for row in table[name]:
            assert row["label"], row["id"]
            assert row["standing"] == "common_practice"
            assert row["source"] == "common practice, no source"
    assert all(line["reason"] for row in table["evidence"] for line in row["lines"])


def test_the_table_tells_what_a_request_may_tell(client: FlaskClient) -> None:
    listed = {c["name"]: c for c in strict(client.get("/v1"))["calculations"]}["diagnosis"]
    (field,) = [f for f in listed["fields"] if f["name"] == "evidence"]
    assert field["shape"] == "choices"
    table = strict(client.get("/v1/evidence"))["evidence"]
    told = {row["id"]: row["label"] for row in table if not row.get("derived")}
    assert field["choices"] == told
