"""One adapter a shape of field: each exists, answers whatever is asked, and agrees with itself."""

from collections.abc import Iterator
from typing import Any

import pytest
from jsonschema import Draft202012Validator
from jsonschema.protocols import Validator

from ringland_service.api.openapi.document import document
from ringland_service.api.reading.understanding import understand
from ringland_service.api.shapes.base import Answered, InCells, Requested
from ringland_service.api.shapes.draft import Draft
from ringland_service.api.shapes.examples import example
from ringland_service.api.shapes.json_checks import Reader
from ringland_service.api.shapes.members import members, results
from ringland_service.api.shapes.registry import REQUESTED, RESULTED, adapter, adapters
from ringland_service.api.shapes.schema import load, schema
from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import FILLED_BY_THE_ENGINE, Field
from ringland_service.engine.composite import answer_composite
from ringland_service.engine.request import Request
from ringland_service.engine.scalar import answer

SHAPES = {
    of
    for of in vars(declared).values()
    if isinstance(of, type) and issubclass(of, Field) and of not in (Field, declared.ResultField)
    if of not in FILLED_BY_THE_ENGINE
}


def fields_of(record: type) -> Iterator[Requested]:
    """Yield the adapters of a record's fields, down to those of its sections and records."""
    for shape in adapters(record).values():
        yield shape
        if shape.record is not None:
            yield from fields_of(shape.record)


# Many records have a field in common, which is tried once.
FIELDS = {repr(shape.field): shape for of in EVERY for shape in fields_of(of.inputs)}
SHOWN = [shape for shape in FIELDS.values() if shape.example() is not None]
CELLS = [shape for shape in SHOWN if isinstance(shape, InCells)]
each_field = pytest.mark.parametrize("shape", SHOWN, ids=lambda s: type(s).__name__)
each_cell = pytest.mark.parametrize("shape", CELLS, ids=lambda s: type(s).__name__)


def validator(of: Any) -> Validator:
    """Return a validator that knows the components of the document."""
    return Draft202012Validator({**of, "components": document()["components"]})


def test_every_shape_has_its_adapter_and_no_two_share_one() -> None:
    assert set(REQUESTED) == SHAPES
    assert len(set(REQUESTED.values())) == len(REQUESTED)
    assert not any(adapter.__abstractmethods__ for adapter in REQUESTED.values())
    assert not any(adapter.__abstractmethods__ for adapter in RESULTED.values())


def test_every_adapter_is_met_by_a_declared_field() -> None:
    """So what follows tries every one of them."""
    assert {type(shape) for shape in SHOWN} == set(REQUESTED.values())
    looks = {type(shape) for of in EVERY if isinstance(of, Calculation)
             for _, shape in results(of.outputs).values()}  # fmt: skip
    looks |= {type(m.shape) for look in tables() for m in members(look).values()}
    assert looks == set(RESULTED.values())


def tables() -> set[type]:
    """Return the records of the tables among the results."""
    calculations = [of for of in EVERY if isinstance(of, Calculation)]
    shapes = [shape for of in calculations for _, shape in results(of.outputs).values()]
    return {shape.record for shape in shapes if shape.record is not None}


@pytest.mark.parametrize("of", FILLED_BY_THE_ENGINE, ids=lambda of: of.__name__)
def test_what_the_engine_fills_has_none(of: type[Field]) -> None:
    more = {declared.LimitSideField: {"check": "c"}, declared.UncertaintyOfField: {"of": "x"}}
    with pytest.raises(TypeError, match=of.__name__):
        adapter(of(description="", **more.get(of, {})))


@each_field
def test_the_example_is_read_and_allowed(shape: Requested) -> None:
    shown = shape.example()
    components: dict[str, Any] = {}
    allowed = shape.request_schema(components)
    assert allowed["description"]
    assert components.keys() <= document()["components"]["schemas"].keys()
    assert validator(allowed).is_valid(shown), (shown, allowed)
    assert shape.reader().deserialize(shown) is not None
    assert not validator(allowed).is_valid(object_of_nothing_known())
    assert shape.listing()["shape"] == shape.shape


def object_of_nothing_known() -> dict[str, Any]:
    return {"nothing of the kind": None}


@each_cell
def test_its_text_is_read_like_the_example(shape: InCells) -> None:
    reader = shape.reader()
    read = reader.deserialize(shape.from_text(shape.example_text()))
    assert read == reader.deserialize(shape.example())
    given = shape.parameter_example()
    assert validator(shape.parameter_schema()).is_valid(given), given
    assert shape.text_components().keys() <= document()["components"]["schemas"].keys()
    assert shape.field.description in shape.parameter_words()


@each_cell
def test_a_column_reads_what_a_request_reads(shape: InCells) -> None:
    """From JSON and from CSV, whole and row by row."""
    text = shape.example_text()
    unit = {"unit": text.rpartition(" ")[2]} if takes_a_unit(shape) else {}
    from_csv = shape.csv_column([text.rpartition(" ")[0] if unit else text, ""], unit.get("unit"))
    assert from_csv["values"][1] is None
    shape.check_column(from_csv)
    assert validator(shape.column_schema(5)).is_valid(from_csv)
    alone = shape.reader().deserialize(shape.row(from_csv, from_csv["values"][0], 0))
    assert alone == shape.reader().deserialize(shape.example())
    draft = Draft(2)
    shape.read_column("field", from_csv, draft)
    assert not draft.faults
    assert draft.columns["field"][0] == getattr(alone, "value", alone)
    assert draft.columns["field"][1] is None


def takes_a_unit(shape: InCells) -> bool:
    return "unit" in shape.column_schema(5)["properties"]


@pytest.mark.parametrize("of", EVERY, ids=lambda of: of.name)
def test_an_answer_has_the_shape_that_is_said(of: Any) -> None:
    """As JSON against its schema, as text, cell, page and rows: none of them is empty."""
    read = load(schema(of.inputs), example(of.inputs))
    inputs, _ = understand(of.inputs, read)
    assert_shown(of.inputs, inputs, inputs)
    if isinstance(of, Calculation):
        outputs = answer(of, Request(inputs=inputs)).outputs
        assert_shown(of.outputs, outputs, inputs)
        assert_columns(of, outputs, inputs)
    else:
        assert answer_composite(of, Request(inputs=inputs)).calculation is of


def assert_shown(record: type, values: Any, inputs: Any) -> None:
    """Assert that every field held is shown in all forms."""
    for member in members(record).values():
        value, shape = getattr(values, member.key), member.shape
        if value is not None:
            shown = shape.answer(value, inputs, "metric")
            assert validator(shape.answer_schema()).is_valid(shown), (member.name, shown)
            assert_told(member.name, shape, shown)


def assert_told(name: str, shape: Answered, shown: Any) -> None:
    something = shown not in ("", [], {})
    told = (shape.text(shown), shape.page_text(shown), shape.cell(shown))
    assert all(told) or not something, (name, told)
    rows = list(shape.rows("part", name, shown))
    assert rows or not something, name
    assert all(name in f"{row['part']}.{row['name']}" for row in rows)
    if shape.is_section or shape.is_table:
        assert shape.picked(shown, []) is None


def assert_columns(of: Calculation, outputs: Any, inputs: Any) -> None:
    """Assert that a column holds what a single answer shows, none where a row has none."""
    for name, (field, shape) in results(of.outputs).items():
        value = getattr(outputs, name)
        if value is None or field.kind_of or shape.is_table:
            continue
        column = shape.answer_column([value, None], "metric", None)
        shown = shape.answer(value, inputs, "metric")
        if isinstance(shown, dict):
            shown = shown["values"] if "values" in shown else shown["value"]
        first = column["values"][0]
        assert (list(first) if isinstance(first, tuple) else first) == shown
        assert column["values"][1] is None


def test_a_reader_reads_the_same_bare_or_bound() -> None:
    """Columns read by a reader of their own, requests by that of the schema."""
    for of in EVERY:
        bound: dict[str, Reader] = schema(of.inputs).fields
        shown = example(of.inputs)
        for name, shape in adapters(of.inputs).items():
            given = shown.get(shape.field.public(name))
            if given is not None:
                assert shape.reader().deserialize(given) == bound[name].deserialize(given)
