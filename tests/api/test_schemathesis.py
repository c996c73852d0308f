"""The OpenAPI document against the service, all checks on; suffix forms sampled."""

import tomllib
from pathlib import Path

import pytest
import schemathesis

import body_hooks  # noqa: F401 - registers a serializer
from ringland_service.wsgi import app

SETTINGS = tomllib.loads((Path(__file__).parent / "schemathesis.toml").read_text("utf-8"))
# The cases of this phase, some 180,000, would be made while pytest collects: the live run has it.
SETTINGS["phases"] = {"coverage": {"enabled": False}}
CONFIG = schemathesis.Config.from_dict(SETTINGS)
# Suffix forms are the same view in another representation: these calculations stand for all.
STAND_FOR_ALL = "displacement|wet-gain|bore-survey|order-card"
SUFFIXED_BUT_SAMPLED = rf"/v1/(?!{STAND_FOR_ALL})[a-z0-9-]+\.(txt|csv|svg|html)$"

schema = schemathesis.openapi.from_wsgi("/openapi.json", app, config=CONFIG).exclude(
    path_regex=SUFFIXED_BUT_SAMPLED
)


@pytest.mark.long
@schema.parametrize()
def test_conforms(case: schemathesis.Case) -> None:
    case.call_and_validate()
