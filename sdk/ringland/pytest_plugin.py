"""A pytest plugin: the fixture ``ringland_client``, answered in the process, without a network.

pytest loads this file in every run of an environment that has the package, so it imports nothing
of the package before the fixture is used.
"""

from collections.abc import Iterator
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from ringland import Client


@pytest.fixture
def ringland_client() -> Iterator["Client"]:
    """Give a client of the embedded service; needs ``ringland[embedded]``."""
    from ringland import Client

    with Client.embedded() as client:
        yield client
