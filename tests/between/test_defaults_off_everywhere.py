"""``defaults: off`` over random and known questions: nothing in the answer is common practice."""

from collections.abc import Iterator
from typing import Any

import pytest
from asking import strict
from comparing import Json
from drawing import Drawn
from flask.testing import FlaskClient
from questions import Asked, every

from between_tally import Tally
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Operation
from ringland_service.engine.standing_in import CODE

RELATION = "defaults off"
COMMON = "common_practice"
# A reading outside the usual is asked about all the same; its field's words tell what stands in.
ASKED_ALL_THE_SAME = (CODE, "outside_usual")


def standings(value: Any, where: str = "") -> Iterator[tuple[str, Any]]:
    """Yield every standing in a JSON value, with its place."""
    if isinstance(value, dict):
        for name, inner in value.items():
            if name == "standing":
                yield where, inner
            yield from standings(inner, f"{where}.{name}")
    if isinstance(value, list):
        for inner in value:
            yield from standings(inner, where)


def assert_nothing_common(answer: Json, asked: Asked) -> None:
    """Assert it of an answer; what the request itself calls common practice is its own."""
    own = {check for check, told in asked.body.get("limits", {}).items() if COMMON in told.values()}
    judged = [v for v in answer["verdicts"] if v["check"] not in own]
    result = answer["result"]
    for where, standing in (*standings(judged, "verdicts"), *standings(result, "result")):
        assert standing != COMMON, f"{asked}: {where}"
    for warned in answer["warnings"]:
        if warned["code"] not in ASKED_ALL_THE_SAME:
            assert "common practice" not in warned["message"], f"{asked}: {warned}"


@pytest.mark.parametrize("calculation", CALCULATIONS, ids=lambda c: c.name)
def test_random_and_known_questions(
    client: FlaskClient, calculation: Operation, questions: Drawn, tally: Tally
) -> None:
    drawn = [
        Asked(calculation.name, f"drawn {i}", body) for i, body in enumerate(questions(calculation))
    ]
    known = [asked for asked in every() if asked.calculation == calculation.name]
    for asked in (*drawn, *known):
        response = client.post(asked.path, json={**asked.body, "defaults": "off"})
        assert response.status_code == 200, (str(asked), response.text, asked.body)
        # A verdict of its own says whose its limit is.
        if asked.body.get("standing") != COMMON:
            assert_nothing_common(strict(response), asked)
        tally.add(0.0, str(asked))
