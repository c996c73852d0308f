"""A limit met exactly reads the same in every unit: the margin, and what is said of settling it.

The exact value of a number in a unit: fractions of the definitions, carried by pint (outside) and
rounded once to a float; the service multiplies floats, which leaves dust in the last digits.
"""

from fractions import Fraction

import numpy as np
import pytest
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.core.metrology.conformity import CLOSE, PASS, judge, margin_to
from ringland_service.core.metrology.limits import Limit
from ringland_service.units import TABLE, Unit

ON_IT = "the value stands on its limit: no measurement will settle it alone"
UNITS = [(kind, symbol) for kind, table in TABLE.items() for symbol in table]
# ITS-90 and the definition of the Fahrenheit scale (from memory): where a unit's zero lies, in °C.
ZERO = {0.0: Fraction(0), -273.15: Fraction(-27315, 100)}
numbers = st.decimals("0.001", "5000", places=3, allow_nan=False).map(Fraction)


def exact(unit: Unit, number: Fraction) -> float:
    """Return the canonical value of a number in a unit, in exact fractions until the end."""
    fahrenheit = Fraction(-32) * Fraction(5, 9)
    zero = ZERO.get(unit.offset, fahrenheit)
    assert float(zero) == unit.offset
    return float(number * unit.ratio + zero)


@pytest.mark.parametrize(("kind", "symbol"), UNITS, ids=lambda part: str(part))
@given(number=numbers)
def test_margin_is_nothing_in_every_unit(kind: str, symbol: str, number: Fraction) -> None:
    unit = TABLE[kind][symbol]
    value, side = unit.to_canonical(float(number)), exact(unit, number)
    for limit in (Limit(high=side), Limit(low=side), Limit(side, abs(side) * 2 + 1e6)):
        found = judge(value, None, limit)
        assert (found.verdict, found.margin) == (PASS, 0.0)
        column = margin_to(np.array([value, value]), limit)
        assert column.tolist() == [0.0, 0.0]


def test_some_units_do_leave_dust() -> None:
    """The property above would prove nothing if floats met the exact value everywhere."""
    found = [
        symbol
        for kind, symbol in UNITS
        for number in (Fraction(k, 1000) for k in range(1, 3000, 7))
        if TABLE[kind][symbol].to_canonical(float(number)) != exact(TABLE[kind][symbol], number)
    ]
    assert {"in", "psi"} <= set(found)


def test_a_margin_beyond_the_tolerance_is_one() -> None:
    assert margin_to(1.0 + 2e-9, Limit(high=1.0)) == pytest.approx(-2e-9, rel=1e-6)
    assert margin_to(-40.0, Limit(low=-40.0)) == 0.0


@pytest.mark.parametrize(
    ("value", "side"),
    [
        ({"value": 2.001, "unit": "in"}, {"value": 50.8254, "unit": "mm"}),
        ({"value": 50.8254, "unit": "mm"}, {"value": 2.001, "unit": "in"}),
        ({"value": 50.8254, "unit": "mm"}, {"value": 50.8254, "unit": "mm"}),
        ({"value": 2001, "unit": "thou"}, {"value": 5.08254, "unit": "cm"}),
    ],
)
def test_advice_is_the_same_over_the_wire(
    client: FlaskClient, value: dict[str, object], side: dict[str, object]
) -> None:
    """2.001 in x 25.4 = 50.8254 mm."""
    request = {
        "value": value | {"uncertainty": 0.001 if value["unit"] == "in" else 0.01},
        "high": side,
    }
    response = client.post("/v1/verdict", json=request)
    found = response.get_json()
    assert response.status_code == 200, found
    verdict = found["verdicts"][0]
    assert verdict["verdict"] == CLOSE
    assert verdict["to_settle"] == {"needed_uncertainty": None, "advice": ON_IT}
    assert verdict["margin"]["value"] == 0.0
