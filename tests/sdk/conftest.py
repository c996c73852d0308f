"""What the SDK's tests share: the service in the process, its document, and real small servers."""

import json
import os
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sdk_server import Scripted, serving

from ringland.pytest_plugin import ringland_client  # noqa: F401 - the fixture under test, as users get it

ROOT = Path(__file__).parents[2]


# Absolute, for the interpreters that tests start in other directories.
PATHS = [str(Path(p).resolve()) for p in os.environ.get("PYTHONPATH", "").split(os.pathsep) if p]


@pytest.fixture(autouse=True)
def no_settings(monkeypatch: pytest.MonkeyPatch) -> None:
    """Keep the machine's own settings out of the tests."""
    for name in ("RINGLAND_URL", "NO_COLOR", "HTTP_PROXY", "HTTPS_PROXY", "ALL_PROXY"):
        monkeypatch.delenv(name, raising=False)
        monkeypatch.delenv(name.lower(), raising=False)
    monkeypatch.setenv("PYTHONPATH", os.pathsep.join(PATHS))


@pytest.fixture(scope="session")
def document() -> dict[str, Any]:
    found: dict[str, Any] = json.loads((ROOT / "openapi" / "openapi.json").read_text("utf-8"))
    return found


@pytest.fixture
def scripted() -> Iterator[Scripted]:
    """Give a real server on the loopback that answers what the test puts into its script."""
    app = Scripted()
    with serving(app) as url:
        app.url = url
        yield app
