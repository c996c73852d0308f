"""Figures of an invented engine at random, and the sections of a job that hold them."""

from collections.abc import Callable
from random import Random
from typing import Any

Values = dict[str, Any]
Job = dict[str, Values]
PLATED = "plated_aluminium"


class Drawn:
    """Figures at random, with as many decimals as an instrument shows."""

    def __init__(self, chance: Random) -> None:
        self.chance = chance

    def real(self, low: float, high: float, decimals: int = 3) -> float:
        """Return a number between two others."""
        return round(self.chance.uniform(low, high), decimals)

    def reals(self, count: int, low: float, high: float, decimals: int = 3) -> list[float]:
        """Return several numbers between two others."""
        return [self.real(low, high, decimals) for _ in range(count)]

    def often(self, share: float = 0.5) -> bool:
        """Return whether something happens that does in a share of all cases."""
        return self.chance.random() < share

    def some(self, **values: Any) -> Values:
        """Return most of the values."""
        return {name: value for name, value in values.items() if self.often(0.7)}


# Draws the values of one section, from those of the sections before it.
Section = Callable[[Drawn, Job], Values]
