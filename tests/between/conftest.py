"""The harness: random questions drawn once a calculation."""

from functools import cache

import pytest
from comparing import Json
from drawing import Drawn, drawn

from ringland_service.core.declare import Composite, Operation


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
