"""Rows drawn from the declarations: near their examples, now and then anywhere in their bounds."""

from random import Random
from typing import Any

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

# Share of numbers drawn from the whole of their bounds; most such rows are refused.
ANYWHERE = 0.02


def is_scalar(field: Field) -> bool:
    """Whether a field can be a column of a batch."""
    return not isinstance(field, (ReadingsField, SectionField))


def bounds_of(field: Field) -> tuple[float, float]:
    """The declared bounds of a number."""
    if isinstance(field, QuantityField):
        return field.type.low, field.type.high
    assert isinstance(field, (NumberField, CountField))
    return float(field.low), float(field.high)


def near(field: Field, draw: Random) -> float:
    """Draw a number within 2 % of the example, or of the bounds' middle where there is none."""
    low, high = bounds_of(field)
    middle = field.example if field.example is not None else (low + high) / 2.0
    return min(max(middle * draw.uniform(0.98, 1.02), low), high)


def value_of(field: Field, draw: Random) -> Any:
    """Draw a value of one field, most of them near its example."""
    if isinstance(field, ChoiceField):
        return draw.choice([field.example, field.example, *field.choices])
    if isinstance(field, FlagField):
        return draw.random() < 0.5
    if isinstance(field, TextField):
        return field.example
    if isinstance(field, CountField):
        return float(draw.randint(field.low, min(field.high, field.low + 3)))
    if draw.random() < ANYWHERE:
        return draw.uniform(*bounds_of(field))
    return near(field, draw)


def drawn_row(calculation: Calculation, draw: Random) -> dict[str, Any]:
    """Draw one row: every required field, half of the others; None where nothing is given."""
    optional = defaults(calculation.inputs)
    columns = {n: f for n, f in asked(calculation.inputs).items() if is_scalar(f)}
    return {
        name: None if name in optional and draw.random() < 0.5 else value_of(f, draw)
        for name, f in columns.items()
    }


def example_row(calculation: Calculation) -> dict[str, Any]:
    """The row of all declared examples."""
    columns = {n: f for n, f in asked(calculation.inputs).items() if is_scalar(f)}
    return {
        n: float(f.example) if isinstance(f, CountField) else f.example for n, f in columns.items()
    }


def drawn_doubts(calculation: Calculation, draw: Random) -> dict[str, float]:
    """Draw expanded uncertainties of some quantities, each a thousandth of the span."""
    spans = {
        n: f.type.span / 1000.0
        for n, f in asked(calculation.inputs).items()
        if isinstance(f, QuantityField) and is_scalar(f)
    }
    names = draw.sample(sorted(spans), min(len(spans), draw.randint(0, 3)))
    return {name: spans[name] for name in names}
