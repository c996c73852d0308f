"""Counting the cases of the harness, and the worst difference that any of them showed."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

import pytest

KEY = "between"
DEFAULT_CASES, DEFAULT_SEED = 6, 20


@dataclass
class Tally:
    """The cases of one test: how many, the worst relative difference, and where it was."""

    relation: str
    cases: int = 0
    worst: float = 0.0
    where: str = ""

    def add(self, difference: float, where: str) -> None:
        """Count one case."""
        self.cases += 1
        if difference > self.worst:
            self.worst, self.where = difference, where


def add_options(parser: pytest.Parser) -> None:
    """Add the size and the seed of the harness in ``tests/between`` to the command line."""
    group = parser.getgroup("between", "random questions of tests/between")
    group.addoption(
        "--between-cases",
        type=int,
        default=DEFAULT_CASES,
        help="random questions of each calculation and relation (%(default)s)",
    )
    group.addoption(
        "--between-seed", type=int, default=DEFAULT_SEED, help="their seed (%(default)s)"
    )


def lines(reports: Iterable[Any]) -> list[str]:
    """Return the summary: a line a relation, from what the tests' reports carry."""
    found: dict[str, Tally] = {}
    for report in reports:
        if getattr(report, "when", "") != "teardown":
            continue
        for name, told in report.user_properties:
            if name == KEY:
                relation, cases, worst, where = told
                total = found.setdefault(relation, Tally(relation))
                total.cases += cases
                if worst > total.worst:
                    total.worst, total.where = worst, where
    return [
        f"{one.relation:<28}{one.cases:>7} cases, worst relative difference {one.worst:.1e}"
        + (f" ({one.where})" if one.where else "")
        for one in sorted(found.values(), key=lambda one: one.relation)
    ]
