"""Each part of a card against its own route: asked what the part took, it answers the same."""

import math
from typing import Any

import pytest
from asking import post
from comparing import Json, difference, less_intervals, less_uncertainty, without
from drawing import Drawn
from flask.testing import FlaskClient
from questions import Asked, every

from between_tally import Tally
from ringland_service.api.reading.common_fields import checks_of
from ringland_service.api.reading.request import parsed
from ringland_service.api.shapes import members
from ringland_service.api.writing import render
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Composite, declared
from ringland_service.core.declare.fields import (
    FindingsField,
    NumberField,
    NumbersField,
    QuantityField,
)
from ringland_service.core.metrology.conformity import beyond
from ringland_service.engine.composite import answer_composite
from ringland_service.engine.request import field_at
from ringland_service.engine.response import Response
from ringland_service.engine.scalar import on_inputs

RELATION = "part against route"
COMPOSITES = [c for c in CALCULATIONS if isinstance(c, Composite)]
SHAPING = ("rule", "defaults")


def has_route(part: Response) -> bool:
    """Return whether the part's calculation can be asked alone, and rests on its inputs only.

    A part that reads what earlier parts found has no findings to read when it is asked alone.
    """
    calculation = part.calculation
    reads = any(isinstance(f, FindingsField) for f in declared(calculation.inputs).values())
    return calculation.name in BY_NAME and not reads


def as_request(value: Any) -> Any:
    """Return the JSON of inputs as a request states it: without the suggested digits.

    The uncertainties of readings are one figure there, so readings state them only where they
    are alike.
    """
    if isinstance(value, list):
        return [as_request(one) for one in value]
    if not isinstance(value, dict):
        return value
    if value.keys() >= {"unit", "decimals"}:
        found = {k: v for k, v in value.items() if k not in ("decimals", "uncertainties")}
        uncertainties = {u for u in value.get("uncertainties", ()) if u is not None}
        if len(uncertainties) == 1:
            found["uncertainty"] = uncertainties.pop()
        return found
    return {name: as_request(inner) for name, inner in value.items()}


def stated(part: Response) -> dict[Any, Any]:
    """Return u of the inputs as it was stated: less what a gauge or the weather adds of itself."""
    own = part.calculation.components
    added = on_inputs(own(part.inputs)) if own else {}
    found = {}
    for path, u in part.moved.items():
        left = u * u - added.get(path, 0.0) ** 2
        if left > 1e-9 * u * u:
            found[path] = math.sqrt(left)
    return found


def unsayable(part: Response) -> set[Any]:
    """Return the inputs whose uncertainty no request can say.

    A bare number takes none. What earlier parts worked out is no stated reading: the bound of
    stated uncertainties, which a slip of the unit would pass, does not hold for it.
    """
    return {path for path, u in part.moved.items() if not sayable(part, path, u)}


def sayable(part: Response, path: Any, u: float) -> bool:
    """Return whether a request can state u of an input that the part took."""
    field = field_at(part.calculation.inputs, path)
    if isinstance(field, (NumberField, NumbersField)):
        return False
    if not isinstance(field, QuantityField) or len(path) != 1:
        return True
    value = getattr(part.inputs, path[0])
    if isinstance(value, tuple):
        return True
    return not beyond(2.0 * u, field.type.most_uncertainty(value))


def own_question(part: Response, asked: Asked) -> Json:
    """Return the question to the part's own route: what the card says that the part took."""
    inputs = part.calculation.inputs
    without_example = unsayable(part)
    moved = render.by_member({p: u for p, u in stated(part).items() if p not in without_example})
    body = as_request(members.answer(inputs, part.inputs, part.inputs, "metric", moved))
    body |= {name: asked.body[name] for name in SHAPING if name in asked.body}
    checks = {check.name for check in checks_of(part.calculation)}
    limits = {n: limit for n, limit in asked.body.get("limits", {}).items() if n in checks}
    return body | ({"limits": limits} if limits else {})


def pushed_before(part: Response) -> bool:
    """Return whether noise in earlier parts pushes a result of this one, which no request says."""
    return any(source != name for name, by_source in part.pushes.items() for source in by_source)


def uncertain(body: Any) -> bool:
    """Return whether instruments are named anywhere, which parts may share."""
    return "measuring" in body


def assert_parts(client: FlaskClient, asked: Asked, tally: Tally) -> None:
    composite = asked.declaration
    assert isinstance(composite, Composite)
    found = answer_composite(composite, parsed(composite, asked.body))
    card = post(client, asked.calculation, asked.body)
    for name, part in found.parts.items():
        if not has_route(part):
            continue
        request = own_question(part, asked)
        answer = client.post(f"/v1/{part.calculation.name}", json=request)
        where = f"{asked}, part {name}: {request}"
        assert answer.status_code == 200, f"{where}\n{answer.text}"
        checks = {check.name for check in checks_of(part.calculation)}
        here: Json = {
            "result": card["result"][name],
            "verdicts": [v for v in card["verdicts"] if v["check"] in checks],
        }
        alone = {key: answer.get_json()[key] for key in here}
        # What several works change together is told of all of them, where one route knows one.
        joint = {declared(part.calculation.outputs)[n].public(n) for n in found.joint.get(name, ())}
        for told in (here, alone):
            told["result"] = without(told["result"], *joint)
        if uncertain(asked.body) or unsayable(part):
            here, alone = less_uncertainty(here), less_uncertainty(alone)
        elif pushed_before(part):
            here, alone = less_intervals(here), less_intervals(alone)
        try:
            apart = difference(here, alone)
        except AssertionError as error:
            raise AssertionError(f"{error}\n{where}") from error
        tally.add(apart, f"{asked}, {name}")


KNOWN = [asked for asked in every() if isinstance(asked.declaration, Composite)]


@pytest.mark.parametrize("asked", KNOWN, ids=str)
def test_known_cards(client: FlaskClient, asked: Asked, tally: Tally) -> None:
    assert_parts(client, asked, tally)


@pytest.mark.parametrize("calculation", COMPOSITES, ids=lambda c: c.name)
def test_random_cards(
    client: FlaskClient, calculation: Composite, questions: Drawn, tally: Tally
) -> None:
    for i, body in enumerate(questions(calculation)):
        assert_parts(client, Asked(calculation.name, f"drawn {i}", body), tally)
