"""Rows drawn from the declarations: near their examples, now and then anywhere in their bounds."""

from typing import Any

from hypothesis import strategies as st

from ringland_service.core.declare import Calculation, asked, defaults
from ringland_service.core.declare.fields import (
    ChoiceField,
    ChoicesField,
    CountField,
    Field,
    FlagField,
    NumberField,
    NumbersField,
    QuantityField,
    ReadingsField,
    RecordsField,
    SectionField,
    TextField,
)

Row = dict[str, Any]
# How far the numbers of a row lie from their examples: most rows of the first are answered.
FINE, CLOSE, LOOSE = 2e-4, 0.02, 0.2


def columns_of(calculation: Calculation) -> dict[str, Field]:
    """Return the fields that can be columns of a batch: no sections, no lists."""
    whole = (ReadingsField, NumbersField, ChoicesField, RecordsField, SectionField)
    return {n: f for n, f in asked(calculation.inputs).items() if not isinstance(f, whole)}


def quantities_of(calculation: Calculation) -> dict[str, QuantityField]:
    """Return the columns that are quantities."""
    columns = columns_of(calculation).items()
    return {name: field for name, field in columns if isinstance(field, QuantityField)}


def bounds_of(field: Field) -> tuple[float, float]:
    """Return the declared bounds of a number."""
    if isinstance(field, QuantityField):
        return field.type.low, field.type.high
    assert isinstance(field, (NumberField, CountField))
    return float(field.low), float(field.high)


def anywhere(field: Field) -> st.SearchStrategy[float]:
    """Return the numbers within the bounds of a field."""
    return st.floats(*bounds_of(field), allow_subnormal=False)


def near(field: Field, share: float) -> st.SearchStrategy[float]:
    """Return the numbers about the example, or about the bounds' middle where there is none."""
    low, high = bounds_of(field)
    if field.example is None and share == LOOSE:
        return anywhere(field)
    middle = (low + high) / 2.0 if field.example is None else field.example
    aside = share * abs(middle) or 0.01 * (high - low)
    return st.floats(max(low, middle - aside), min(high, middle + aside), allow_subnormal=False)


def values_of(field: Field, share: float) -> st.SearchStrategy[Any]:
    """Return the values of one field."""
    if isinstance(field, ChoiceField):
        return st.just(field.example) | st.sampled_from(list(field.choices))
    if isinstance(field, FlagField):
        return st.booleans()
    if isinstance(field, TextField):
        return st.just(field.example)
    if isinstance(field, CountField):
        few = st.integers(field.low, min(field.high, field.low + 3))
        return (few | st.integers(field.low, field.high)).map(float)
    return near(field, share)


@st.composite
def rows_of(draw: st.DrawFn, calculation: Calculation) -> Row:
    """Return a row: every required field, some of the others; None where nothing is given."""
    optional = defaults(calculation.inputs)
    columns = columns_of(calculation)
    share = draw(st.sampled_from([FINE, CLOSE, LOOSE]))
    row: Row = {}
    for name, field in columns.items():
        values = values_of(field, share)
        row[name] = draw(st.none() | values if name in optional else values)
    astray = draw(st.sampled_from([None, None, None, *sorted(row)]))
    if astray is not None and isinstance(columns[astray], (QuantityField, NumberField)):
        row[astray] = draw(anywhere(columns[astray]))
    return row


def example_row(calculation: Calculation) -> Row:
    """Return the row of all declared examples."""
    return {
        n: float(f.example) if isinstance(f, CountField) else f.example
        for n, f in columns_of(calculation).items()
    }


@st.composite
def doubts_of(
    draw: st.DrawFn, calculation: Calculation, rows: list[Row]
) -> dict[str, list[float | None]]:
    """Return expanded uncertainties of one to three quantities, another in each row.

    Each is up to a thousandth of the span of its bounds; there is none where no value is given.
    """
    known = quantities_of(calculation)
    names = st.lists(st.sampled_from(sorted(known)), min_size=1, max_size=3, unique=True)
    share = st.floats(1e-5, 1e-3)
    return {
        name: [None if row[name] is None else draw(share) * known[name].type.span for row in rows]
        for name in draw(names)
    }
