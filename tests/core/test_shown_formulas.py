"""Every formula of the service as it is shown: read back, it gives the same number."""

import math
from typing import Any

import pytest

from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, declared
from ringland_service.core.declare.expressions import names_in, shown
from ringland_service.core.declare.fields import ResultField

FORMULAS = sorted(
    {
        field.formula
        for c in EVERY
        if isinstance(c, Calculation)
        for field in declared(c.outputs).values()
        if isinstance(field, ResultField) and field.formula
    }
)
SIGNS = str.maketrans({"−": "-", "·": "*", "²": "**2", "³": "**3", "π": "pi", "^": "**"})
COMMON: dict[str, Any] = {
    "__builtins__": {},
    "pi": math.pi,
    "sqrt": lambda x: math.sqrt(abs(x)),
    "max": max,
    "min": min,
    "abs": abs,
}
# Angles of any size are let in: what is compared is the text, not the trade.
ANGULAR: dict[str, Any] = {
    "sin": lambda x: math.sin(math.radians(x)),
    "cos": lambda x: math.cos(math.radians(x)),
    "asin": lambda x: math.asin(math.sin(x)),
    "acos": lambda x: math.acos(math.cos(x)),
}
IN_DEGREES = {f"{name}d": function for name, function in ANGULAR.items()}


def test_there_are_formulas() -> None:
    assert len(FORMULAS) > 50


@pytest.mark.parametrize("formula", [f for f in FORMULAS if "**0.5" not in f])
def test_the_shown_formula_reads_back_as_the_same(formula: str) -> None:
    """Python's own reading of both texts is the witness: no bracket was lost."""
    values = {name: 1.25 + 0.37 * i for i, name in enumerate(names_in(formula))}
    text = shown(formula, str).translate(SIGNS)
    expected = eval(formula, COMMON | IN_DEGREES | values)  # noqa: S307 (text of the service)
    found = eval(text, COMMON | ANGULAR | values)  # noqa: S307
    assert found == pytest.approx(expected, rel=1e-12)
