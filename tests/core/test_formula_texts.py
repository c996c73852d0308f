"""Formula texts read as a handbook sets them, and the digits worth showing."""

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.declare.expressions import names_in, shown
from ringland_service.core.declare.significant import decimals, significant_digits

# From memory: the usual order of operations, and what brackets change. By hand.
TEXTS = {
    "a - (b - c)": "a − (b − c)",
    "a - b - c": "a − b − c",
    "a / (b * c)": "a / (b · c)",
    "a + (b + c)": "a + b + c",
    "a * (b / c)": "a · b / c",
    "(a + b) * c": "(a + b) · c",
    "pi/4 * b**2 * s": "π / 4 · b² · s",
    "(a + b)**3": "(a + b)³",
    "(a * b)**0.5": "√(a · b)",
    "a**n": "a^n",
    "a**(n - 1)": "a^(n − 1)",
    "(a**n)**3": "(a^n)³",
    "-(a + b)": "−(a + b)",
    "-a * b": "−a · b",
    "max(a - b, 0)": "max(a − b, 0)",
    "r * (1 - cosd(180 - c))": "r · (1 − cos(180 − c))",
}


@pytest.mark.parametrize(("formula", "text"), TEXTS.items())
def test_a_formula_in_common_notation(formula: str, text: str) -> None:
    assert shown(formula, str) == text


def test_names_are_shown_by_what_stands_for_them() -> None:
    assert shown("pi * bore_mm", {"bore_mm": "68 mm"}.__getitem__) == "π · 68 mm"


def test_the_names_of_a_formula_in_order() -> None:
    assert names_in("pi/4 * b**2 * s + max(sqrt(b), c)") == ("b", "s", "c")


@pytest.mark.parametrize("formula", ["a if b else c", "a and b", "a[0]", "+a", "a < b"])
def test_what_is_no_formula_is_refused(formula: str) -> None:
    with pytest.raises(ValueError, match="not a formula"):
        shown(formula, str)


EXPRESSIONS = st.recursive(
    st.sampled_from("abc"),
    lambda inner: st.tuples(inner, st.sampled_from("+-*/"), inner).map(
        lambda parts: f"({parts[0]} {parts[1]} {parts[2]})"
    ),
    max_leaves=6,
)
SIGNS = str.maketrans({"−": "-", "·": "*"})
VALUES = {"a": Fraction(7), "b": Fraction(-3, 5), "c": Fraction(11, 13)}


def value(text: str) -> Fraction | None:
    """Python's own reading of a text, in exact fractions; None where it divides by zero."""
    try:
        found: Fraction = eval(text, {"__builtins__": {}}, VALUES)  # noqa: S307
    except ZeroDivisionError:
        return None
    return found


@given(formula=EXPRESSIONS)
def test_brackets_left_out_do_not_change_the_value(formula: str) -> None:
    expected = value(formula)
    if expected is not None:
        assert value(shown(formula, str).translate(SIGNS)) == expected


@pytest.mark.parametrize(
    ("number", "digits"),
    [(0.0745, 3), (68.0, 2), (72.036, 5), (100.0, 1), (1e-9, 1), (-0.02, 1), (0.0, 1)],
)
def test_significant_digits_as_written(number: float, digits: int) -> None:
    assert significant_digits(number) == digits


@pytest.mark.parametrize(
    ("number", "digits", "places"),
    [(0.0745, 3, 4), (68.0, 3, 1), (1137.63, 4, 0), (1137.63, 6, 2), (0.0, 5, 0), (-0.5, 2, 2)],
)
def test_decimals_that_show_them(number: float, digits: int, places: int) -> None:
    assert decimals(number, digits) == places


@given(st.floats(1e-6, 1e6), st.integers(1, 12))
def test_so_many_decimals_keep_the_digits(number: float, digits: int) -> None:
    last = 10.0 ** (math.floor(math.log10(number)) - digits + 1)
    assert abs(float(f"{number:.{decimals(number, digits)}f}") - number) <= 0.5001 * last
