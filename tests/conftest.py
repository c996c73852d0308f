"""Shared fixtures: the service in process, and reproducible property tests."""

import pytest
from flask.testing import FlaskClient
from hypothesis import settings

from ringland_service.wsgi import app

settings.register_profile("reproducible", derandomize=True, deadline=None, database=None)
settings.load_profile("reproducible")
# For mutation testing: a wrong formula shows in its first few examples.
settings.register_profile("quick", settings.get_profile("reproducible"), max_examples=10)


@pytest.fixture(scope="session")
def client() -> FlaskClient:
    """The service, without a socket."""
    return app.test_client()
