"""Each part of a card against its own route: asked what the part took, it answers the same."""

import math
from typing import Any

import pytest
from asking import post
from comparing import Json, difference
from drawing import Drawn
from flask.testing import FlaskClient
from questions import Asked, every
from werkzeug.test import TestResponse

from between_tally import Tally
from ringland_service.api import render
from ringland_service.api.envelope import checks_of
from ringland_service.api.request import understood
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Composite, declared
from ringland_service.core.fields import FindingsField, NumberField, NumbersField
from ringland_service.engine.answer import Answer
from ringland_service.engine.composite import answer_composite
from ringland_service.engine.question import field_at
from ringland_service.engine.single import on_inputs

RELATION = "part against route"
COMPOSITES = [c for c in CALCULATIONS if isinstance(c, Composite)]
SHAPING = ("rule", "defaults")


def has_route(part: Answer) -> bool:
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
    if value.keys() >= {"unit", "digits"}:
        found = {k: v for k, v in value.items() if k not in ("digits", "uncertainties")}
        doubts = {u for u in value.get("uncertainties", ()) if u is not None}
        if len(doubts) == 1:
            found["uncertainty"] = doubts.pop()
        return found
    return {name: as_request(inner) for name, inner in value.items()}


def stated(part: Answer) -> dict[Any, Any]:
    """Return u of the inputs as it was stated: less what a gauge or the weather adds of itself."""
    own = part.calculation.influences
    added = on_inputs(own(part.inputs)) if own else {}
    found = {}
    for path, u in part.moved.items():
        left = u * u - added.get(path, 0.0) ** 2
        if left > 1e-9 * u * u:
            found[path] = math.sqrt(left)
    return found


def moves_a_ratio(part: Answer) -> bool:
    """Return whether a bare number that the part took is uncertain: no request can say that."""
    fields = (field_at(part.calculation.inputs, path) for path in part.moved)
    return any(isinstance(field, (NumberField, NumbersField)) for field in fields)


def own_question(part: Answer, asked: Asked) -> Json:
    """Return the question to the part's own route: what the card says that the part took."""
    inputs = part.calculation.inputs
    moved = render.by_member(stated(part))
    body = as_request(render.members(inputs, part.inputs, part.inputs, "metric", moved))
    body |= {name: asked.body[name] for name in SHAPING if name in asked.body}
    checks = {check.name for check in checks_of(part.calculation)}
    limits = {n: limit for n, limit in asked.body.get("limits", {}).items() if n in checks}
    return body | ({"limits": limits} if limits else {})


def uncertain(body: Any) -> bool:
    """Return whether instruments are named anywhere, which parts may share."""
    return "measuring" in body


def less_uncertainty(value: Any) -> Any:
    """Return a JSON value without uncertainties and what follows from them."""
    if isinstance(value, dict):
        # The word without uncertainty stays, and has to be the same.
        follow = ("probability_within", "to_settle", "rule", "verdict", "why", "to_judge")
        apart = ("uncertainty", "uncertainties", *follow)
        return {n: less_uncertainty(v) for n, v in value.items() if n not in apart}
    return [less_uncertainty(one) for one in value] if isinstance(value, list) else value


def too_uncertain_to_state(answer: TestResponse) -> bool:
    """Return whether the route takes no uncertainty as large as an earlier part's result has."""
    if answer.status_code != 422:
        return False
    return all(fault["pointer"].endswith("/uncertainty") for fault in answer.get_json()["errors"])


def assert_parts(client: FlaskClient, asked: Asked, tally: Tally) -> None:
    composite = asked.declaration
    assert isinstance(composite, Composite)
    found = answer_composite(composite, understood(composite, asked.body))
    card = post(client, asked.calculation, asked.body)
    for name, part in found.parts.items():
        if not has_route(part):
            continue
        question = own_question(part, asked)
        answer = client.post(f"/v1/{part.calculation.name}", json=question)
        if too_uncertain_to_state(answer):
            continue
        where = f"{asked}, part {name}: {question}"
        assert answer.status_code == 200, f"{where}\n{answer.text}"
        checks = {check.name for check in checks_of(part.calculation)}
        here: Json = {
            "result": card["result"][name],
            "verdicts": [v for v in card["verdicts"] if v["check"] in checks],
        }
        alone = {key: answer.get_json()[key] for key in here}
        if uncertain(asked.body) or moves_a_ratio(part):
            here, alone = less_uncertainty(here), less_uncertainty(alone)
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
