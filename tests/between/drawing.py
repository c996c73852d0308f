"""Random questions about possible engines, drawn from the declarations with a seed."""

from collections.abc import Callable
from typing import Any

import hypothesis
from comparing import Json
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st
from possible_requests import batches, requests

from ringland_service.core.declare import Operation

# What gives the random questions of a calculation.
Drawn = Callable[[Operation], list[Json]]


def drawn(calculation: Operation, count: int, seed: int) -> list[Json]:
    """Return possible requests to a calculation."""
    return _taken(requests(calculation), count, seed)


def drawn_batches(calculation: Operation, count: int, seed: int) -> list[Json]:
    """Return possible batches of three rows each."""
    return _taken(batches(calculation), count, seed)


def _taken(strategy: st.SearchStrategy[Any], count: int, seed: int) -> list[Json]:
    found: list[Json] = []

    @hypothesis.seed(seed)
    @settings(
        max_examples=count,
        phases=[Phase.generate],
        derandomize=False,
        suppress_health_check=list(HealthCheck),
    )
    @given(strategy)
    def take(body: Json) -> None:
        found.append(body)

    take()
    return found
