"""A column of rows says what each row says alone: the same numbers, words, doubt and refusals."""

import math
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation, asked, defaults
from ringland_service.core.fields import (
    ChoiceField,
    CountField,
    Field,
    FlagField,
    NumberField,
    QuantityField,
    ReadingsField,
    TextField,
)
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.columns import ColumnAnswer, Rows, answer_rows
from ringland_service.engine.question import Path, Question, Stated
from ringland_service.engine.single import answer

IN_COLUMNS = [c for c in CALCULATIONS if isinstance(c, Calculation) and c.columns]
ROWS = 4
ULPS = 4
Row = dict[str, Any]


def numbers_near(low: float, high: float, example: Any) -> st.SearchStrategy[float]:
    """Numbers within 20 % of the example, or anywhere in the bounds where there is none."""
    if example is not None:
        aside = 0.2 * abs(example) or 0.01 * (high - low)
        low, high = max(low, example - aside), min(high, example + aside)
    return st.floats(low, high, allow_subnormal=False)


def values_of(of: Field) -> st.SearchStrategy[Any] | None:
    """Values of a field that stands in one cell; None for sections and lists."""
    if isinstance(of, ReadingsField):
        return None
    if isinstance(of, QuantityField):
        return numbers_near(of.type.low, of.type.high, of.example)
    if isinstance(of, NumberField):
        return numbers_near(of.low, of.high, of.example)
    if isinstance(of, CountField):
        return st.integers(of.low, of.high).map(float)
    if isinstance(of, ChoiceField):
        return st.sampled_from(list(of.choices))
    if isinstance(of, FlagField):
        return st.booleans()
    return st.just(of.example) if isinstance(of, TextField) else None


def rows_of(calculation: Calculation) -> st.SearchStrategy[Row]:
    """Rows with every required field and some of the optional ones."""
    optional = defaults(calculation.inputs)
    cells: dict[str, st.SearchStrategy[Any]] = {}
    for name, of in asked(calculation.inputs).items():
        values = values_of(of)
        if values is None:
            assert name in optional, f"{name} is required and has no cell"
            continue
        cells[name] = st.none() | values if name in optional else values
    return st.fixed_dictionaries(cells)


def doubtful(calculation: Calculation) -> str:
    """The first required quantity, else the first quantity."""
    optional = defaults(calculation.inputs)
    cells = asked(calculation.inputs).items()
    names = [
        n for n, f in cells if isinstance(f, QuantityField) and not isinstance(f, ReadingsField)
    ]
    return min(names, key=lambda name: name in optional)


def alone(calculation: Calculation, row: Row, doubts: dict[str, float]) -> Answer | Refused:
    given_ = {name: value for name, value in row.items() if value is not None}
    stated: dict[Path, Stated] = {
        (n,): Stated(uncertainty=u) for n, u in doubts.items() if n in given_
    }
    try:
        return answer(calculation, Question(calculation.inputs(**given_), doubts=stated))
    except Refused as refused:
        return refused


def same(a: Any, b: Any) -> bool:
    if isinstance(a, float) and isinstance(b, float):
        return abs(a - b) <= ULPS * math.ulp(max(abs(a), abs(b)))
    return bool(a == b)


def assert_same_answer(found: ColumnAnswer, row: int, one: Answer) -> None:
    for name, column in found.results.items():
        assert same(column[row], getattr(one.outputs, name)), name
    given_ = {n for n in vars(one.outputs) if getattr(one.outputs, n) is not None}
    assert given_ <= found.results.keys()
    for name, u in found.u.items():
        expected = one.u.get(name)
        assert (u[row] is None) == (expected is None), name
        if expected is not None:
            assert u[row] == pytest.approx(expected, rel=1e-9, abs=1e-15), name
    words = {v.check.name: v.word for v in one.verdicts}
    columns = {name: v.verdict[row] for name, v in found.verdicts.items()}
    assert {name: word for name, word in columns.items() if word is not None} == words


@pytest.mark.parametrize("calculation", IN_COLUMNS, ids=lambda c: c.name)
@pytest.mark.parametrize("doubt", [False, True], ids=["plain", "with_doubt"])
@settings(max_examples=25, suppress_health_check=[HealthCheck.too_slow])
@given(data=st.data())
def test_columns_agree_with_single_answers(
    calculation: Calculation, doubt: bool, data: st.DataObject
) -> None:
    """The single answer, itself held to outside values, is the witness."""
    rows = data.draw(st.lists(rows_of(calculation), min_size=ROWS, max_size=ROWS))
    field = doubtful(calculation)
    of: Any = asked(calculation.inputs)[field]
    shares = st.floats(1e-5, 1e-3)
    stated = [data.draw(shares) * of.type.span if doubt else None for _ in rows]
    uncertainty = [None if row[field] is None else u for row, u in zip(rows, stated, strict=True)]
    found = answer_rows(
        calculation,
        Rows(
            count=ROWS,
            columns={name: [row[name] for row in rows] for name in rows[0]},
            shared={},
            question=Question(inputs=None),
            uncertainty={field: uncertainty} if doubt else {},
        ),
    )
    each = [
        alone(calculation, row, {} if u is None else {field: u})
        for row, u in zip(rows, uncertainty, strict=True)
    ]
    refused = {i: one for i, one in enumerate(each) if isinstance(one, Refused)}
    assert found.problems.keys() == refused.keys()
    for i, one in enumerate(each):
        if isinstance(one, Answer):
            assert_same_answer(found, i, one)
        else:
            assert list(map(str, found.problems[i])) == list(map(str, one.faults))
            assert all(column[i] is None for column in found.results.values())


@pytest.mark.parametrize("calculation", IN_COLUMNS, ids=lambda c: c.name)
def test_the_declared_example_is_answered(calculation: Calculation) -> None:
    """Else the agreement above could be one of refusals alone."""
    row = {
        n: float(f.example) if isinstance(f, CountField) else f.example
        for n, f in asked(calculation.inputs).items()
        if values_of(f) is not None
    }
    assert isinstance(alone(calculation, row, {}), Answer)
