"""Every calculation through its typed method, on the service itself.

What is compared with: the document's own example request, posted to the service by the web
framework's test client, which shares no code with the SDK.
"""

import dataclasses
import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from sdk_server import serving

from ringland import Answer, Client, Quantity, Readings, ServiceError, SourceUse
from ringland._generated import CLASSES
from ringland._reading import on_wire
from ringland_service.api.app import create_app

DOCUMENT = json.loads((Path(__file__).parents[2] / "openapi" / "openapi.json").read_text("utf-8"))
EXAMPLES = {
    path.removeprefix("/v1/"): operations["post"]["requestBody"]["content"]["application/json"][
        "example"
    ]
    for path, operations in DOCUMENT["paths"].items()
    if "post" in operations and not path.endswith(("/batch", ".html", ".svg"))
}


# What is in one and not in the other is told by the first test, once.
KNOWN = [name for name in EXAMPLES if name.replace("-", "_") in CLASSES]


def on_the_wire(value: Any) -> Any:
    """Return an object of the SDK as JSON has it, less what is null."""
    if dataclasses.is_dataclass(value):
        members = ((on_wire(f.name), getattr(value, f.name)) for f in dataclasses.fields(value))
        return {name: on_the_wire(one) for name, one in members if one is not None}
    return [on_the_wire(one) for one in value] if isinstance(value, tuple) else value


def without_nulls(value: Any) -> Any:
    if isinstance(value, Mapping):
        return {k: without_nulls(v) for k, v in value.items() if v is not None}
    return [without_nulls(one) for one in value] if isinstance(value, list) else value


def as_text(value: Any) -> Any:
    """Return a request with its quantities as text and its readings as pairs."""
    if isinstance(value, Mapping) and value.keys() == {"value", "unit"}:
        return f"{value['value']!r} {value['unit']}"
    if isinstance(value, Mapping) and value.keys() == {"values", "unit"}:
        return (value["values"], value["unit"])
    if isinstance(value, Mapping):
        return {k: as_text(v) for k, v in value.items()}
    return [as_text(one) for one in value] if isinstance(value, list) else value


def ask(client: Client, name: str, fields: dict[str, Any], **options: Any) -> Answer[Any]:
    answer: Answer[Any] = getattr(client, name.replace("-", "_"))(**fields, **options)
    return answer


def test_the_document_and_the_methods_name_the_same_calculations() -> None:
    assert {name.replace("-", "_") for name in EXAMPLES} == set(CLASSES)
    assert len(EXAMPLES) >= 18


@pytest.mark.parametrize("units", ["metric", "us"])
@pytest.mark.parametrize("name", KNOWN)
def test_the_typed_answer_is_the_services_answer(
    ringland_client: Client, name: str, units: str
) -> None:
    direct = create_app().test_client().post(f"/v1/{name}?units={units}", json=EXAMPLES[name])
    answer = ask(ringland_client, name, EXAMPLES[name], units=units)
    assert answer.raw == direct.get_json()
    assert (answer.calculation, answer.formulas) == (name, answer.raw["formulas"])
    assert on_the_wire(answer.result) == without_nulls(answer.raw["result"])
    for part in ("verdicts", "warnings", "cautions", "basis"):
        assert on_the_wire(getattr(answer, part)) == without_nulls(answer.raw[part]), part
    assert on_the_wire(answer.taken) == without_nulls(answer.raw.get("taken", []))


@pytest.mark.parametrize("name", KNOWN)
def test_text_and_pairs_ask_the_same_question_as_json(ringland_client: Client, name: str) -> None:
    asked = as_text(EXAMPLES[name])
    assert ask(ringland_client, name, asked).raw == ask(ringland_client, name, EXAMPLES[name]).raw
    untyped = ringland_client.ask(name, **asked)
    assert untyped.raw == ask(ringland_client, name, EXAMPLES[name]).raw


def test_one_answer_in_full(ringland_client: Client) -> None:
    # By hand: pi/4 x 6.8^2 x 6.6 = 239.691 cc; 250 - 239.691 = 10.309 cc.
    answer = ringland_client.displacement(
        bore="68 mm",
        stroke=(66, "mm"),
        cylinders=1,
        limits={"class_limit": {"high": "250 cc", "source": "class rules"}},
        trace=True,
    )
    assert answer.result.displacement.value == pytest.approx(239.691, abs=5e-4)
    assert str(answer.result.displacement) == "239.7 cc"
    assert answer.result.new_displacement is None
    verdict = answer.verdict("class_limit")
    assert (verdict.verdict, verdict.limit.source) == ("pass", "class rules")
    assert isinstance(verdict.margin, Quantity)
    assert verdict.margin.value == pytest.approx(10.309, abs=5e-4)
    assert answer.inputs["bore"] == Quantity(68.0, "mm", digits=answer.inputs["bore"].digits)
    assert answer.trace[0].field == "displacement"
    assert len(answer.request_id) == 32
    with pytest.raises(KeyError, match="no verdict 'bore' in this answer; made: class_limit"):
        answer.verdict("bore")


def test_the_doubt_of_a_quantity_arrives(ringland_client: Client) -> None:
    # By hand: the relative doubt is twice the bore's: 239.691 x 2 x 0.01 / 68 = 0.0705.
    for bore in ("68 mm +/- 0.01", "68mm±0.01", Quantity(68, "mm", 0.01)):
        answer = ringland_client.displacement(bore=bore, stroke="66 mm")
        assert answer.result.displacement.uncertainty == pytest.approx(0.0705, abs=5e-5)


def test_an_instrument_is_named_on_a_quantity(ringland_client: Client) -> None:
    answer = ringland_client.displacement(
        bore=Quantity(68, "mm", instrument="gauge"),
        stroke="66 mm",
        measuring={"instruments": [{"id": "gauge", "max_error": "0.01 mm"}]},
    )
    assert answer.result.displacement.uncertainty is not None


def test_readings_with_a_gap_are_asked_and_answered(ringland_client: Client) -> None:
    answer = ringland_client.cylinder_spread(readings=Readings((900.0, 840.0), "kPa"))
    # By hand: (900 - 840) / 900 = 6.667 %.
    assert answer.result.spread.value == pytest.approx(6.667, abs=5e-4)
    assert answer.inputs["readings"].values == (900.0, 840.0)


def test_over_a_socket_the_answer_is_the_same(ringland_client: Client) -> None:
    with serving(create_app()) as url, Client(url) as client:
        remote = client.displacement(bore="68 mm", stroke="66 mm", units="us")
        text = client.text("displacement", bore="68 mm", stroke="66 mm")
    assert remote.raw == ringland_client.displacement(bore="68 mm", stroke="66 mm", units="us").raw
    assert "displacement  239.7 cc" in text


def test_the_service_tells_what_it_is(ringland_client: Client) -> None:
    listed = {one.name: one for one in ringland_client.calculations()}
    version = ringland_client.version()
    assert set(listed) == set(version.formulas) >= set(EXAMPLES)
    assert listed["displacement"].stage == "geometry"
    assert listed["displacement"].get is True


def test_sources_are_typed(ringland_client: Client) -> None:
    found = {source.token: source for source in ringland_client.sources()}
    unchecked = found["jcgm_106_rules"]
    assert (unchecked.title, unchecked.edition, unchecked.checked) == ("JCGM 106", "2012", None)
    assert unchecked.used_by == SourceUse((), (), (), ("verdicts",))
    assert "M10" in str(found["iso_898_1_proof_load"].checked)
    assert found["iso_606"].used_by.calculations == ("cam-check",)


def test_many_whole_requests_keep_their_order(ringland_client: Client) -> None:
    rows = [{"bore": (size, "mm"), "stroke": "66 mm"} for size in (60, 70_000, 80)]
    first, refused, last = ringland_client.displacement.many(rows, units="us")
    assert isinstance(first, Answer)
    assert isinstance(last, Answer)
    assert first.result.displacement.unit == "in3"
    assert first.result.displacement.value < last.result.displacement.value
    assert isinstance(refused, ServiceError)
    assert (refused.status, refused.errors[0].field) == (422, "bore.value")
