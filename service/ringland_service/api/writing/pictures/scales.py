"""Scales of a picture: where a value lies, round ticks, labels that do not collide."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

STEPS = (1.0, 2.0, 5.0, 10.0)


@dataclass(frozen=True)
class Scale:
    """A straight scale: ``low`` lies at ``start`` and ``high`` at ``end``, in pixels."""

    low: float
    high: float
    start: float
    end: float

    def at(self, value: float) -> float:
        """Return where a value lies, in pixels."""
        share = (value - self.low) / (self.high - self.low)
        return self.start + share * (self.end - self.start)

    def holds(self, value: float) -> bool:
        """Return whether a value lies on the scale."""
        return self.low <= value <= self.high


def round_step(span: float, most: int) -> float:
    """Return the smallest step of 1, 2 or 5 times a power of ten with at most ``most`` steps.

    Raises
    ------
    ValueError
        Where the span is not above zero.
    """
    if not span > 0.0:
        raise ValueError(f"a scale needs a span above zero, not {span}")
    rough = span / most
    power = 10.0 ** math.floor(math.log10(rough))
    # A step that fits but for the last digit of a float does fit.
    return next(step * power for step in STEPS if step * power >= rough * (1.0 - 1e-9))


def ticks(low: float, high: float, step: float) -> list[float]:
    """Return the multiples of ``step`` from ``low`` to ``high``, both included."""
    dust = 1e-9
    first, last = math.ceil(low / step - dust), math.floor(high / step + dust)
    return [k * step for k in range(first, last + 1)]


def decimals_of(step: float) -> int:
    """Return the decimals that tell the multiples of a round step apart."""
    return max(0, -math.floor(math.log10(step) + 1e-9))


def spread(wanted: Sequence[float], least: float, low: float, high: float) -> list[float]:
    """Return places near those wanted, ``least`` apart and between ``low`` and ``high``.

    Parameters
    ----------
    wanted : sequence of float
        In rising order.
    least, low, high : float
        Where there is not room enough, the places begin at ``low`` and run on past ``high``.
    """
    groups: list[list[float]] = []
    for place in wanted:
        groups.append([place])
        while len(groups) > 1 and _first(groups[-1], least) - _last(groups[-2], least) < least:
            groups[-2:] = [groups[-2] + groups[-1]]
    found = [_first(group, least) + i * least for group in groups for i in range(len(group))]
    for i in range(len(found) - 1, -1, -1):
        found[i] = min(found[i], high - (len(found) - 1 - i) * least)
    for i in range(len(found)):
        found[i] = max(found[i], low + i * least)
    return found


def _first(group: Sequence[float], least: float) -> float:
    """Return where the first of a group stands when the group is centred on what it wants."""
    return sum(group) / len(group) - least * (len(group) - 1) / 2


def _last(group: Sequence[float], least: float) -> float:
    return _first(group, least) + least * (len(group) - 1)
