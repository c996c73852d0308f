"""The harness: random questions drawn once a calculation, and the tally of each relation."""

from collections.abc import Iterator
from functools import cache

import pytest
from comparing import Json
from drawing import Drawn, drawn

from between_tally import KEY, Tally
from ringland_service.core.declare import Composite, Operation


@pytest.fixture
def tally(request: pytest.FixtureRequest) -> Iterator[Tally]:
    """Count the cases of a test; its module says which relation it proves."""
    counted = Tally(request.module.RELATION)
    yield counted
    told = [counted.relation, counted.cases, counted.worst, counted.where]
    request.node.user_properties.append((KEY, told))


@pytest.fixture(scope="session")
def questions(pytestconfig: pytest.Config) -> Drawn:
    """Return what gives the random questions of a calculation."""
    count: int = pytestconfig.getoption("--between-cases")
    seed: int = pytestconfig.getoption("--between-seed")

    @cache
    def of(calculation: Operation) -> list[Json]:
        # A composite asks many calculations at once, and takes as long.
        few = max(count // 2, 1) if isinstance(calculation, Composite) else count
        return drawn(calculation, few, seed)

    return of
