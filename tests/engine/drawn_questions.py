"""Rows drawn from the declarations: near their examples, now and then anywhere in their bounds."""

import dataclasses
from typing import Any

from hypothesis import strategies as st

from ringland_service.core.declare import Calculation, asked, defaults
from ringland_service.core.fields import (
    ChoiceField,
    CountField,
    Field,
    FlagField,
    NumberField,
    QuantityField,
    ReadingsField,
    SectionField,
    TextField,
)

GIVEN_EXAMPLE_SHARE = 5


def is_scalar(field: Field) -> bool:
    """Whether a field can be a column of a batch."""
    return not isinstance(field, (ReadingsField, SectionField))


def bounds_of(field: Field) -> tuple[float, float]:
    """The declared bounds of a number."""
    if isinstance(field, QuantityField):
        return field.type.low, field.type.high
    assert isinstance(field, (NumberField, CountField))
    return float(field.low), float(field.high)


def near(field: Field) -> st.SearchStrategy[float]:
    """Numbers within 2 % of the example, or of the bounds' middle where there is none."""
    low, high = bounds_of(field)
    middle = field.example if field.example is not None else (low + high) / 2.0
    return st.integers(-20, 20).map(lambda i: min(max(middle * (1.0 + i / 1000.0), low), high))


def value_of(field: Field) -> st.SearchStrategy[Any]:
    """Values of one field, most of them near its example."""
    if isinstance(field, ChoiceField):
        return st.sampled_from([field.example, field.example, *field.choices])
    if isinstance(field, FlagField):
        return st.booleans()
    if isinstance(field, TextField):
        return st.just(field.example)
    low, high = bounds_of(field)
    if isinstance(field, CountField):
        return st.integers(field.low, min(field.high, field.low + 3)).map(float)
    anywhere = st.floats(low, high, allow_nan=False)
    return st.one_of(*[near(field)] * GIVEN_EXAMPLE_SHARE, anywhere)


def row_of(calculation: Calculation) -> st.SearchStrategy[dict[str, Any]]:
    """One row: every required field, any of the others; None where nothing is given."""
    optional = defaults(calculation.inputs)
    columns = {n: f for n, f in asked(calculation.inputs).items() if is_scalar(f)}
    return st.fixed_dictionaries(
        {
            name: st.none() | value_of(f) if name in optional else value_of(f)
            for name, f in columns.items()
        }
    )


def example_row(calculation: Calculation) -> dict[str, Any]:
    """The row of all declared examples."""
    columns = {n: f for n, f in asked(calculation.inputs).items() if is_scalar(f)}
    return {
        n: float(f.example) if isinstance(f, CountField) else f.example for n, f in columns.items()
    }


def doubts_of(calculation: Calculation) -> st.SearchStrategy[dict[str, float]]:
    """Expanded uncertainties of some quantities, a thousandth of their span."""
    spans = {
        n: f.type.span / 1000.0
        for n, f in asked(calculation.inputs).items()
        if isinstance(f, QuantityField) and is_scalar(f)
    }
    if not spans:
        return st.just({})
    return st.lists(st.sampled_from(sorted(spans)), unique=True, max_size=3).map(
        lambda names: {name: spans[name] for name in names}
    )


def examples(record: type) -> dict[str, Any]:
    """The declared examples of a record as values: sections filled, absent ones left out."""
    found: dict[str, Any] = {}
    for name, f in asked(record).items():
        if isinstance(f, SectionField):
            found[name] = f.record(**examples(f.record))
        elif isinstance(f, CountField) and f.example is not None:
            found[name] = float(f.example)
        elif f.example is not None:
            found[name] = f.example
    return found


def leaves(record: Any, path: tuple[str, ...] = ()) -> dict[tuple[str, ...], Any]:
    """The given fields of an inputs record by their path; a survey counts as one field."""
    found: dict[tuple[str, ...], Any] = {}
    of: type = type(record)
    for name, f in asked(of).items():
        value = getattr(record, name)
        if value is None:
            continue
        whole = not isinstance(f, SectionField) or bool(required(f.record))
        found |= {(*path, name): value} if whole else leaves(value, (*path, name))
    return found


def required(record: type) -> list[str]:
    """The fields of a record that have no default."""
    return [name for name in asked(record) if name not in defaults(record)]


def assembled(record: type, given: dict[tuple[str, ...], Any]) -> Any:
    """An inputs record from values by path; an optional section only where something is in it."""
    values: dict[str, Any] = {}
    for name, f in asked(record).items():
        if (name,) in given:
            values[name] = given[(name,)]
        elif isinstance(f, SectionField):
            inner = {path[1:]: v for path, v in given.items() if path[0] == name}
            if inner:
                values[name] = assembled(f.record, inner)
    return record(**values)


def same_floats(a: Any, b: Any) -> bool:
    """Whether two records are equal field by field."""
    return bool(dataclasses.asdict(a) == dataclasses.asdict(b))
