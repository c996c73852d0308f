"""Public names: the trade's and the metrologist's terms, one thing by one name and one shape."""

import tomllib
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path

import pytest

from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import (
    Calculation,
    Composite,
    declared,
    input_fields,
)
from ringland_service.core.declare.fields import (
    ChoiceField,
    ChoicesField,
    Field,
    QuantityField,
    ResultField,
)
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.metrology.instruments import TYPICAL

TERMS = tomllib.loads((Path(__file__).parent / "terms.toml").read_text("utf-8"))
WORDS, FORBIDDEN = set(TERMS["words"].split()), set(TERMS["forbidden"])
SAME, ALIKE = TERMS["same_thing"], TERMS["same_name"]


def within(record: type, results: bool) -> Iterator[tuple[str, Field]]:
    """Yield the public fields of a record and of those within it."""
    found = declared(record) if results else input_fields(record)
    for name, field in found.items():
        yield field.public(name), field
        inner = getattr(field, "record", None)
        if inner is not None:
            yield from within(inner, results)


def fields() -> Iterator[tuple[str, Field]]:
    """Yield every public field of every calculation and of the card."""
    for calculation in EVERY:
        yield from within(calculation.inputs, False)
        if isinstance(calculation, Calculation):
            yield from within(calculation.outputs, True)


def names() -> Iterator[str]:
    """Yield every name on the wire: fields, tokens, checks, parts, kinds, instruments."""
    for name, field in fields():
        yield name
        if isinstance(field, ChoiceField | ChoicesField):
            yield from field.choices
        if isinstance(field, ResultField):
            yield from field.choices or ()
    for calculation in EVERY:
        yield calculation.name.replace("-", "_")
        if isinstance(calculation, Calculation):
            yield from (check.name for check in calculation.checks)
        if isinstance(calculation, Composite):
            yield from (step.part for step in calculation.steps)
    yield from KINDS
    yield from TYPICAL


def words(name: str) -> set[str]:
    """Return the words of a name; numbers and single letters are symbols."""
    return {word for word in name.split("_") if len(word) > 1 and word.isalpha()}


def test_every_name_is_made_of_known_terms() -> None:
    unknown = {name: words(name) - WORDS for name in names() if words(name) - WORDS}
    assert not unknown


def test_no_name_has_a_word_that_another_term_replaced() -> None:
    assert not {name for name in names() if words(name) & FORBIDDEN or name in FORBIDDEN}
    assert not WORDS & FORBIDDEN


def test_the_terms_are_all_in_use() -> None:
    used = set().union(*(words(name) for name in names()))
    assert not WORDS - used


def shape(field: Field) -> str:
    """Return what a field holds; a single value and a list of them are told apart."""
    kind = field.type.kind if isinstance(field, QuantityField) else getattr(field, "kind", None)
    is_result = isinstance(field, ResultField)
    return f"{'Result' if is_result else type(field).__name__}:{kind.name if kind else ''}"


def test_one_thing_has_one_name() -> None:
    """By its description: a name of a section's member may be joined to the section's."""
    by_description: dict[str, set[str]] = defaultdict(set)
    for calculation in EVERY:
        for name, field in within(calculation.inputs, False):
            by_description[field.description].add(name)
    differ = {d: sorted(found) for d, found in by_description.items() if len(found) > 1}
    assert differ == {d: sorted(told["names"]) for d, told in SAME.items()}


@pytest.mark.parametrize("results", [False, True])
def test_one_name_has_one_shape(results: bool) -> None:
    by_name: dict[str, set[str]] = defaultdict(set)
    for name, field in fields():
        if isinstance(field, ResultField) is results:
            by_name[name].add(shape(field))
    differ = {name for name, found in by_name.items() if len(found) > 1}
    assert differ == set(ALIKE["results" if results else "inputs"])
