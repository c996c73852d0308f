"""Shared fixtures: the service in process, and reproducible property tests."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from flask.testing import FlaskClient
from hypothesis import settings

import between_tally
from between_tally import KEY, Tally
from ringland_service.wsgi import app

settings.register_profile("reproducible", derandomize=True, deadline=None, database=None)
settings.load_profile("reproducible")
# For mutation testing: a wrong formula shows in its first few examples.
settings.register_profile("quick", settings.get_profile("reproducible"), max_examples=10)


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add the options of the harness in ``tests/between``."""
    between_tally.add_options(parser)


def pytest_ignore_collect(collection_path: Path, config: pytest.Config) -> bool | None:
    """Leave the contract tests out where they are deselected: collecting them makes their cases."""
    left_out = config.option.markexpr == "not long"
    return True if left_out and collection_path.name == "test_schemathesis.py" else None


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Print how many cases the harness asked, and the worst difference."""
    reports = [one for found in terminalreporter.stats.values() for one in found]
    lines = between_tally.lines(reports)
    if lines:
        terminalreporter.section("between the parts")
        for line in lines:
            terminalreporter.write_line(line)


@pytest.fixture(scope="session")
def client() -> FlaskClient:
    """The service, without a socket."""
    return app.test_client()


@pytest.fixture
def tally(request: pytest.FixtureRequest) -> Iterator[Tally]:
    """Count the cases of a test; its module says which relation it proves."""
    counted = Tally(request.module.RELATION)
    yield counted
    told = [counted.relation, counted.cases, counted.worst, counted.where]
    request.node.user_properties.append((KEY, told))
