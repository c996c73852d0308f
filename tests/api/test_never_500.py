"""Whatever is sent, the answer is an answer or a problem: never a 500, never NaN."""

import json
import string
from typing import Any

import pytest
from asking import PROBLEM, strict
from flask.testing import FlaskClient
from hypothesis import example, given, settings
from hypothesis import strategies as st

from ringland_service.api.reading.query import FORMS, offers_get, text_fields
from ringland_service.api.shapes.examples import example as example_of
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Operation, input_fields
from ringland_service.core.declare.fields import RecordsField, SectionField
from ringland_service.units import every_symbol

STATUSES = {200, 400, 413, 415, 422}
BY_NAME = pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
WITH_GET = pytest.mark.parametrize(
    "calculation", [c for c in CALCULATIONS if offers_get(c)], ids=lambda c: c.name
)

NUMBERS = (
    st.integers(-(10**45), 10**45)
    | st.floats(allow_nan=False, allow_infinity=False)
    | st.sampled_from([0, -0.0, 5e-324, 1.7e308, 1e-300, 2**53 + 1, 1e9, -1e9])
)
TEXTS = st.text(max_size=20) | st.sampled_from([*every_symbol(), "on", "off", "iron", "maker"])
SCALARS = st.none() | st.booleans() | NUMBERS | TEXTS


def inner_names(record: type) -> set[str]:
    """Return the names of a record's fields and of those inside them."""
    fields = input_fields(record)
    inner = [f.record for f in fields.values() if isinstance(f, (SectionField, RecordsField))]
    names = {field.public(name) for name, field in fields.items()}
    return names.union(*map(inner_names, inner))


def names_within(calculation: Operation) -> list[str]:
    """Return words that the calculation's requests are made of, so that some values get far."""
    words = inner_names(calculation.inputs)
    words |= {
        "value",
        "unit",
        "values",
        "uncertainty",
        "instrument",
        "limits",
        "measuring",
    }
    words |= {"shared", "columns", "rule", "defaults", "low", "high", "standing", "instruments"}
    return sorted(words)


def json_of(calculation: Operation) -> st.SearchStrategy[Any]:
    """Return a strategy of JSON that talks about the calculation, or of anything."""
    keys = st.sampled_from(names_within(calculation)) | st.text(max_size=8)
    return st.recursive(
        SCALARS,
        lambda inner: st.lists(inner, max_size=4) | st.dictionaries(keys, inner, max_size=4),
        max_leaves=12,
    )


def near_misses(calculation: Operation) -> st.SearchStrategy[Any]:
    """Return a strategy of sound requests with one or two members replaced by anything."""
    sound = example_of(calculation.inputs)
    anything = json_of(calculation)
    lists = [name for name, value in sound.items() if is_list_of_records(value)]
    changes = st.dictionaries(st.sampled_from(sorted(sound)), anything, max_size=2)
    if lists:
        changes |= st.sampled_from(lists).flatmap(lambda name: one_record(name, sound, anything))
    return changes.map(lambda changed: sound | changed)


def is_list_of_records(value: Any) -> bool:
    return isinstance(value, list) and all(isinstance(one, dict) for one in value)


def one_record(
    name: str, sound: dict[str, Any], anything: st.SearchStrategy[Any]
) -> st.SearchStrategy[dict[str, Any]]:
    """Return a strategy of a list of records, a member of the first replaced by anything."""
    first, *others = sound[name]
    members = st.dictionaries(st.sampled_from(sorted(first)), anything, min_size=1, max_size=2)
    return members.map(lambda changed: {name: [first | changed, *others]})


def is_sound(answer: Any) -> None:
    """Check what every answer is, whatever was asked."""
    assert answer.status_code in STATUSES, answer.text
    if answer.status_code != 200:
        assert answer.content_type == PROBLEM
        assert strict(answer)["status"] == answer.status_code
    elif answer.content_type == "application/json":
        strict(answer)
    else:
        assert "nan" not in answer.text.lower().split(",")
    assert answer.headers["X-Request-ID"]


@pytest.mark.long
@BY_NAME
@pytest.mark.parametrize("path", ["", "/batch"])
def test_any_json(client: FlaskClient, calculation: Operation, path: str) -> None:
    @given(json_of(calculation) | near_misses(calculation))
    @settings(max_examples=60)
    def sends(body: Any) -> None:
        data = json.dumps(body).encode("utf-8", "surrogatepass")
        where = f"/v1/{calculation.name}{path}"
        is_sound(client.post(where, data=data, content_type="application/json"))

    sends()


@BY_NAME
def test_any_json_in_batches(client: FlaskClient, calculation: Operation) -> None:
    """Columns of anything under the names of the fields."""
    fields = input_fields(calculation.inputs)
    names = st.sampled_from([field.public(name) for name, field in fields.items()])
    values = st.lists(SCALARS, min_size=1, max_size=3) | SCALARS
    column = st.fixed_dictionaries(
        {"values": values}, optional={"unit": TEXTS, "uncertainty": values}
    )

    @given(st.dictionaries(names, column | SCALARS, max_size=4), json_of(calculation))
    @settings(max_examples=60)
    def sends(columns: Any, shared: Any) -> None:
        shared = shared if isinstance(shared, dict) else {}
        body = {"columns": columns, "shared": shared}
        is_sound(client.post(f"/v1/{calculation.name}/batch", json=body))
        line = json.dumps(columns).encode() + b"\n" + json.dumps(shared).encode()
        lines = "application/x-ndjson"
        answer = client.post(f"/v1/{calculation.name}/batch", data=line, content_type=lines)
        assert answer.status_code == 200
        assert len(answer.text.splitlines()) == 2

    sends()


@pytest.mark.parametrize(
    "content_type",
    ["application/json", "text/csv", "application/x-ndjson", "text/plain", "application/json; x"],
)
@BY_NAME
def test_any_bytes(client: FlaskClient, calculation: Operation, content_type: str) -> None:
    @given(st.binary(max_size=60))
    @example(b"\x00")
    @example(b"bore [mm],bore [mm]\n1,2\n")
    @example(b'"')
    @example(b"bore [mm]\n\x001\n")
    @example(b"\xff\xfe{\x00}\x00")
    @example(b"[" * 5000)
    @example(b'{"a":' * 5000)
    @example(b"9" * 5000)
    @settings(max_examples=25)
    def sends(body: bytes) -> None:
        for path in ("", "/batch"):
            where = f"/v1/{calculation.name}{path}"
            is_sound(client.post(where, data=body, content_type=content_type))

    sends()


@WITH_GET
@pytest.mark.parametrize("suffix", ["", ".txt", ".csv"])
def test_any_query(client: FlaskClient, calculation: Operation, suffix: str) -> None:
    known = [*text_fields(calculation), *FORMS[suffix], "rule", "defaults", "limit.x.high"]
    words = st.sampled_from(["1 mm", "68mm", "1e9 kPa", "on", "text", "us", "true", "1 / 0 mm"])
    texts = st.text(max_size=20) | words | st.text(string.digits + "+-.eE/± m%", max_size=12)

    @given(st.lists(st.tuples(st.sampled_from(known) | st.text(max_size=8), texts), max_size=6))
    @settings(max_examples=50)
    def sends(parameters: list[tuple[str, str]]) -> None:
        pairs = {name.encode("utf-8", "replace").decode(): text for name, text in parameters}
        is_sound(client.get(f"/v1/{calculation.name}{suffix}", query_string=pairs))

    sends()


@pytest.mark.parametrize(
    "query",
    ["%ff=%fe", "bore=%ff", "bore=%00", "&&&", "=", "bore", "bore=%ED%A0%80", "a" * 4000, "%"],
)
@WITH_GET
def test_any_raw_query(client: FlaskClient, calculation: Operation, query: str) -> None:
    is_sound(client.get(f"/v1/{calculation.name}?{query}"))


def test_numbers_at_the_edge_of_a_float(client: FlaskClient) -> None:
    """A reading next to nothing: its uncertainty overflows, so it is refused and never infinite."""
    asked_ = {
        "reading": {"value": 2.2250738585072014e-308, "unit": "psi"},
        "wet": {"value": 1.8e-129, "unit": "kgf/cm2", "uncertainty": 1.16},
    }
    answer = client.post("/v1/wet-gain", json=asked_)
    assert (answer.status_code, answer.content_type) == (422, PROBLEM)
    assert "no finite" in strict(answer)["detail"]
    columns = {name: {**q, "values": [q["value"], 700.0]} for name, q in asked_.items()}
    for column in columns.values():
        del column["value"]
    batch = strict(client.post("/v1/wet-gain/batch", json={"columns": columns}))
    assert 1 in {problem["row"] for problem in batch["problems"]}
