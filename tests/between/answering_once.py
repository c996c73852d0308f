"""Prints a digest of every answer, and of refusals, in every form: run under several hash seeds."""

import json
import sys
from hashlib import sha256
from pathlib import Path

TESTS = Path(__file__).parents[1]
sys.path += [str(TESTS / name) for name in (".", "api", "reference", "core/formulas", "between")]

from bad_requests import FORMS, UNREADABLE  # noqa: E402
from questions import demo_files, examples  # noqa: E402

from ringland_service.api.writing import forms  # noqa: E402
from ringland_service.wsgi import app  # noqa: E402


def answers() -> dict[str, str]:
    """Return the digest of each answer by question and form."""
    asking = app.test_client()
    found = {}
    for asked in (*examples(), *demo_files()):
        for media_type in forms.media_types(asked.declaration):
            headers = {"Accept": media_type}
            answer = asking.post(asked.path, json=asked.body, headers=headers)
            found[f"{asked} as {media_type}"] = sha256(answer.data).hexdigest()
    for path in (
        "/v1",
        "/v1/limits",
        "/v1/units",
        "/v1/materials",
        "/v1/sources",
        "/v1/evidence",
        "/openapi.json",
    ):
        found[path] = sha256(asking.get(path).data).hexdigest()
    return found


def refusals() -> dict[str, str]:
    """Return the digest of each refusal, less the id of the request."""
    asking = app.test_client()
    found = {}
    for bad in (*UNREADABLE, *FORMS):
        body = bad.body if isinstance(bad.body, bytes) else json.dumps(bad.body).encode()
        answer = asking.post("/v1/displacement", data=body, content_type="application/json")
        told = {name: value for name, value in answer.get_json().items() if name != "request_id"}
        found[bad.name] = sha256(json.dumps(told).encode()).hexdigest()
    for asked in examples():
        told = asking.post(asked.path, json={"no_such_field": 1, "nor_this": 2}).get_json()
        told.pop("request_id")
        found[str(asked)] = sha256(json.dumps(told).encode()).hexdigest()
    return found


if __name__ == "__main__":
    what = {"answers": answers, "refusals": refusals}[sys.argv[1]]
    sys.stdout.write(json.dumps(what()))
