"""The reasons of a decision are no more precise than the verdicts that they repeat."""

import json
from pathlib import Path
from typing import Any

import pytest
from asking import post
from flask.testing import FlaskClient

from ringland_service.api.writing.printed import REMARK, printed
from ringland_service.core.calculations import BY_NAME

JOBS = sorted((Path(__file__).parents[2] / "demo_data").rglob("*.json"))


def reasons(result: dict[str, Any]) -> list[str]:
    ways = result.get("cylinder_decision", {}).get("ways", [])
    return [reason for way in ways for reason in way["reasons"]]


@pytest.mark.parametrize("job", JOBS, ids=lambda p: f"{p.parent.name}-{p.stem}")
def test_a_reason_has_the_remark_of_its_verdict(client: FlaskClient, job: Path) -> None:
    found = post(client, "job-card", json.loads(job.read_text(encoding="utf-8")))
    told = reasons(found["result"])
    for verdict in printed(BY_NAME["job-card"], found)["verdicts"]:
        words = f"{verdict['words']}: "
        about = [one.removeprefix(words) for one in told if one.startswith(words)]
        for reason in about:
            remark = verdict.get(REMARK)
            assert ("±" in reason.partition(" against ")[0]) == (
                verdict["uncertainty"] is not None and remark is None
            ), reason
            assert (f"({remark})" in reason) == (remark is not None), reason


def test_there_is_such_a_reason(client: FlaskClient) -> None:
    """The thinnest wall of the pump: the outside of its liner states no uncertainty."""
    job = next(path for path in JOBS if path.stem == "orchard_pump")
    found = post(client, "job-card", json.loads(job.read_text(encoding="utf-8")))
    (wall,) = {one for one in reasons(found["result"]) if one.startswith("thinnest wall")}
    assert "3.170 mm (uncertainty not stated: outside diameter of the liner" in wall
