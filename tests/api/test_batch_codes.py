"""A row of a batch is refused with the code and the words of the same question alone."""

from typing import Any

import pytest
from asking import problem, strict
from flask.testing import FlaskClient

from ringland_service.api.reading.query import is_scalar, offers_get, text_fields
from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Calculation
from ringland_service.core.declare.fields import AnyQuantityField, Field, QuantityField

QUANTITIES = (QuantityField, AnyQuantityField)


def scalar_fields(calculation: Calculation) -> dict[str, Field]:
    """The fields of one value, by public name."""
    return {name: f for name, f in text_fields(calculation).items() if is_scalar(f)}


COLUMNS = [
    c
    for c in CALCULATIONS
    if isinstance(c, Calculation) and offers_get(c)
    if not all(isinstance(f, QUANTITIES) for f in scalar_fields(c).values())
]
BAD: list[Any] = ["nonsense", 1.5, -1e9, 1e30, True, ["nonsense"]]


@pytest.mark.parametrize("calculation", COLUMNS, ids=lambda c: c.name)
def test_a_bad_value_has_the_code_of_a_single_call(
    client: FlaskClient, calculation: Calculation
) -> None:
    data = example(calculation.inputs)
    for name, field in scalar_fields(calculation).items():
        if isinstance(field, QUANTITIES):
            continue
        shared = {n: v for n, v in data.items() if n != name}
        for bad in BAD:
            alone = client.post(f"/v1/{calculation.name}", json={**shared, name: bad})
            if alone.status_code == 200:
                continue
            told = problem(alone, alone.status_code)["errors"]
            body = {"shared": shared, "columns": {name: {"values": [bad]}}}
            answer = client.post(f"/v1/{calculation.name}/batch", json=body)
            assert answer.status_code == 200, answer.text
            rows = {(r["field"], r["code"]) for r in strict(answer)["problems"]}
            assert rows == {(f["pointer"].split("/")[1], f["code"]) for f in told}, bad
