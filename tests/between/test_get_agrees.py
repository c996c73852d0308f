"""The same question by GET and by POST: the same answer to the byte, in every form."""

from typing import Any

import pytest
from comparing import Json
from drawing import Drawn
from drawing import drawn as drawn_with
from flask.testing import FlaskClient
from questions import Asked, every

from between_tally import Tally
from ringland_service.api.reading.list_text import is_list
from ringland_service.api.reading.query import offers_get, text_fields
from ringland_service.api.writing import forms
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Declared

RELATION = "GET against POST"
WITH_GET = [c for c in CALCULATIONS if offers_get(c)]


def as_query(calculation: Declared, body: Json) -> dict[str, str] | None:
    """Return a request as parameters; None where some of it has no text form."""
    known = text_fields(calculation)
    found: dict[str, str] = {}
    for name, value in body.items():
        if name == "limits":
            found |= _limits(value)
        elif name in known or name in ("rule", "defaults"):
            found[name] = as_text(value)
        else:
            return None
    return found


def as_text(value: Any) -> str:
    """Return a value of the JSON as the text of a parameter, all its digits kept."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, list):
        return ";".join(map(str, value))
    if not isinstance(value, dict):
        return str(value)
    doubt = f" +/- {value['metrology.propagation']!r}" if "uncertainty" in value else ""
    numbers = value["values"] if "values" in value else [value["value"]]
    shown = ";".join("" if number is None else repr(number) for number in numbers)
    return f"{shown} {value['unit']}{doubt}"


def has_list(body: Json) -> bool:
    """Return whether a request holds a list that a parameter can hold."""
    return any(isinstance(v, list) or (isinstance(v, dict) and "values" in v)
               for v in body.values())  # fmt: skip


def _limits(limits: Json) -> dict[str, str]:
    return {
        f"limit.{check}.{name}": as_text(told)
        for check, limit in limits.items()
        for name, told in limit.items()
    }


def assert_alike(client: FlaskClient, asked: Asked, tally: Tally) -> bool:
    """Return whether the question has a text form; assert that both ways answer alike."""
    query = as_query(asked.declaration, asked.body)
    if query is None or any(len(text) > (2000 if ";" in text else 80) for text in query.values()):
        return False
    for media_type in forms.media_types(asked.declaration):
        headers = {"Accept": media_type}
        got = client.get(asked.path, query_string=query, headers=headers)
        posted = client.post(asked.path, json=asked.body, headers=headers)
        assert got.status_code == posted.status_code == 200, (asked.body, query, got.text)
        assert got.data == posted.data, (asked.body, query)
    tally.add(0.0, str(asked))
    return True


@pytest.mark.parametrize("calculation", WITH_GET, ids=lambda c: c.name)
def test_random_and_known_questions(
    client: FlaskClient,
    calculation: Declared,
    questions: Drawn,
    tally: Tally,
    pytestconfig: pytest.Config,
) -> None:
    seed: int = pytestconfig.getoption("--between-seed")
    drawn = [
        Asked(calculation.name, f"drawn {i}", body) for i, body in enumerate(questions(calculation))
    ]
    known = [asked for asked in every() if asked.calculation == calculation.name]
    met = [asked for asked in (*drawn, *known) if assert_alike(client, asked, tally)]
    for further in range(1, 20):
        # Most have lists, which have no text form: draw on until one has none.
        if met:
            break
        bodies = drawn_with(calculation, 10, seed + further)
        more = [Asked(calculation.name, f"drawn with {seed + further}", body) for body in bodies]
        met = [asked for asked in more if assert_alike(client, asked, tally)]
    assert met, "no question of this calculation was asked both ways"
    if any(map(is_list, text_fields(calculation).values())):
        assert any(has_list(asked.body) for asked in met), "no list of it was asked both ways"
