"""Quantities and readings: texts, JSON, numbers of other libraries."""

from decimal import Decimal
from fractions import Fraction
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland import InvalidInput, Quantity, Readings
from ringland._asking import asked_json, plain_json
from ringland._reading import read, untyped


@pytest.mark.parametrize(
    ("text", "quantity"),
    [
        ("68 mm", Quantity(68, "mm")),
        ("68.0mm", Quantity(68.0, "mm")),
        ("  2.677 in ", Quantity(2.677, "in")),
        ("-0.5 mm", Quantity(-0.5, "mm")),
        (".5e1 cc", Quantity(5.0, "cc")),
        ("68.0 mm +/- 0.004", Quantity(68.0, "mm", 0.004)),
        ("68.0 mm±0.004", Quantity(68.0, "mm", 0.004)),
        ("12 kgf/cm2 +/- 1", Quantity(12, "kgf/cm2", 1)),
        ("11.5 1e-6/K", Quantity(11.5, "1e-6/K")),
        ("3 cu in", Quantity(3, "cu in")),
        ("20 °C", Quantity(20, "°C")),
    ],
)
def test_a_text_is_a_quantity(text: str, quantity: Quantity) -> None:
    assert Quantity.parse(text) == quantity


@pytest.mark.parametrize(
    "text", ["", "mm", "68", "68 +/- 1", "68,5 mm", "1.2.3 mm", "nan mm", "68 mm +/- x", "٦٨ mm"]
)
def test_another_text_is_refused_with_the_right_form(text: str) -> None:
    with pytest.raises(InvalidInput, match=r"write '68.0 mm', '68.0 mm \+/- 0.004' or"):
        Quantity.parse(text)


NUMBERS = st.floats(-1e9, 1e9).filter(lambda x: x == 0 or abs(x) > 1e-9)


@given(value=NUMBERS, uncertainty=st.none() | st.floats(1e-6, 1e3))
def test_a_quantity_survives_its_text(value: float, uncertainty: float | None) -> None:
    quantity = Quantity(value, "mm", uncertainty)
    assert Quantity.parse(str(quantity)) == quantity


@pytest.mark.parametrize(
    ("quantity", "text"),
    [
        (Quantity(239.6909, "cc", decimals=1), "239.7 cc"),
        (Quantity(0.1234, "mm", 0.004, decimals=3), "0.123 mm ± 0.004"),
        (Quantity(68, "mm"), "68 mm"),
        (Quantity(7.0, "cc", 0.003, decimals=1), "7.0 cc ± 0.003"),
    ],
)
def test_the_decimals_suggested_are_shown(quantity: Quantity, text: str) -> None:
    assert str(quantity) == text


@pytest.mark.parametrize(
    ("given_", "sent"),
    [
        ("68 mm", {"value": 68, "unit": "mm"}),
        ((Fraction(1, 2), "mm"), {"value": 0.5, "unit": "mm"}),
        ((np.float32(0.5), "mm"), {"value": 0.5, "unit": "mm"}),
        ((np.int64(68), "mm"), {"value": 68, "unit": "mm"}),
        (
            Quantity(68, "mm", instrument="gauge", decimals=2),
            {"value": 68, "unit": "mm", "instrument": "gauge"},
        ),
        (
            {"value": np.float64(68), "unit": "mm", "uncertainty": None},
            {"value": 68.0, "unit": "mm"},
        ),
    ],
)
def test_a_quantity_is_sent(given_: Any, sent: dict[str, Any]) -> None:
    found = asked_json(given_, "quantity", "bore")
    assert found == sent
    assert {type(v) for v in found.values()} <= {int, float, str}


@pytest.mark.parametrize(
    "given_",
    [
        ([68.0, None], "mm"),
        (np.array([68.0]), "mm"),
        Readings((68.0, None), "mm", uncertainty=0.004),
        {"values": (68.0,), "unit": "mm"},
    ],
)
def test_readings_are_sent(given_: Any) -> None:
    found = asked_json(given_, "readings", "bore")
    assert found["values"][0] == 68.0
    assert isinstance(found["values"], list)
    assert found.get("uncertainty") == getattr(given_, "uncertainty", None)


@pytest.mark.parametrize(
    ("value", "shape", "message"),
    [
        ("68 mm", "readings", "b: '68 mm' is no list of readings: write"),
        (("68", "mm"), "readings", "b: '68' is no list of values"),
        (([1.0, float("inf")], "mm"), "readings", "b: inf is not a number"),
        (Decimal(1), "quantity", "b: .* is not a quantity"),
        ((Decimal(1), "mm"), "quantity", "b: .* is not a number"),
        ([{"x": 1}], [{"x": "quantity"}], "b.0.x: 1 is not a quantity"),
        (object(), None, "b: .* is no list of values"),
    ],
)
def test_what_cannot_be_sent_names_its_place(value: Any, shape: Any, message: str) -> None:
    with pytest.raises(InvalidInput, match=message):
        asked_json(value, shape, "b")


def test_a_section_is_sent_by_the_shape_of_its_fields() -> None:
    section = {"bore": "68 mm", "note": "68 mm", "stroke": None, "depths": ([1.0], "mm")}
    assert asked_json(section, {"bore": "quantity", "depths": "readings"}, "engine") == {
        "bore": {"value": 68, "unit": "mm"},
        "note": "68 mm",
        "depths": {"values": [1.0], "unit": "mm"},
    }


def test_without_a_shape_only_what_is_clear_is_changed() -> None:
    given_ = {
        "a": (1, "mm"),
        "b": ([1], "mm"),
        "c": ("x", "y"),
        "d": "1 mm",
        "e": Readings((), "x"),
    }
    assert plain_json(given_, "f") == {
        "a": {"value": 1, "unit": "mm"},
        "b": {"values": [1], "unit": "mm"},
        "c": ["x", "y"],
        "d": "1 mm",
        "e": {"values": [], "unit": "x"},
    }


def test_unknown_members_are_ignored() -> None:
    data = {"value": 1, "unit": "mm", "decimals": 2, "later": {"deep": []}}
    assert read(Quantity, data) == Quantity(1.0, "mm", decimals=2)
    assert untyped({"x": [data], "y": {"values": [1, None], "unit": "mm", "later": 1}}) == {
        "x": [Quantity(1.0, "mm", decimals=2)],
        "y": Readings((1.0, None), "mm"),
    }


def test_a_result_named_like_a_quantity_is_none() -> None:
    """A job card has a result ``values``: records, which no unit belongs to."""
    rows = {"values": [{"what": "bore", "low": {"value": 1, "unit": "mm"}}], "unit": "each"}
    assert untyped(rows) == {
        "values": [{"what": "bore", "low": Quantity(1.0, "mm")}],
        "unit": "each",
    }
