"""A Monte Carlo of a card: every component drawn from a normal distribution, the chain run again.

Sampled are the parts that take columns, and of those that go row by row the ones of which an
uncertain result enters another part. What a card chose is held, as in the chain itself.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from direct_propagation import Direct, components
from whole_chain import Chain

DRAWS = 20_000
# A result is a straight line where so many u away it lies off by less than this share of the way.
FAR, STRAIGHT = 4.0, 1.0 / 16.0


@dataclass(frozen=True)
class Spread:
    """The standard deviation of a result over all draws, and that of this estimate."""

    deviation: Any
    noise: Any


def sampled(chain: Chain, found: Mapping[str, Direct]) -> frozenset[str]:
    """Return the parts that are drawn."""
    feeding = {
        key.split(".")[0]
        for one in chain.workings
        for key in one.takes.values()
        if key in found and np.any(found[key].u > found[key].dust)
    }
    columns = {one.step.part for one in chain.workings if one.step.calculation.columns}
    return frozenset(feeding | columns)


def spreads(chain: Chain, parts: frozenset[str], seed: int) -> dict[str, Spread]:
    """Return the spread of every number that the draws move, by ``part.result``."""
    chance = np.random.default_rng(seed)
    by = [(one, chance.standard_normal(DRAWS)) for one in components(chain)]
    return {
        name: _spread(np.asarray(value))
        for name, value in chain.run(by, parts).items()
        if np.shape(value)[-1:] == (DRAWS,)
    }


def _spread(drawn: Any) -> Spread:
    """Return the spread of draws along the last axis; its noise by their fourth moment.

    References
    ----------
    Var(s²) = (μ4 − σ⁴) / n for many draws (from memory).
    """
    apart = drawn - drawn.mean(axis=-1, keepdims=True)
    square = np.mean(apart**2, axis=-1)
    fourth = np.mean(apart**4, axis=-1)
    noise = np.sqrt((fourth - square**2) / DRAWS)
    return Spread(np.sqrt(square), noise / (2.0 * np.sqrt(np.maximum(square, 1e-300))))


def straight(chain: Chain, found: Mapping[str, Direct]) -> Iterator[str]:
    """Yield the results that are straight lines over what moves them.

    One that bends is off first order: readings that nearly tie under an extreme, a choice that
    tips, a curve. Looked at is each component by itself, and all together where they move the
    result most.
    """
    parts = components(chain)
    sides = (FAR, -FAR)
    alone = [(n, far, chain.run([(one, far)])) for n, one in enumerate(parts) for far in sides]
    for name, of in found.items():
        if of.bent or not np.any(of.u > of.dust):
            continue
        ends = [(far * of.slopes[n], run[name]) for n, far, run in alone]
        for steepest in of.slopes.reshape(len(parts), -1).T:
            together = steepest / max(float(np.linalg.norm(steepest)), of.dust)
            for far in sides:
                by = [(one, float(far * share)) for one, share in zip(parts, together, strict=True)]
                ends.append((far * np.tensordot(together, of.slopes, 1), chain.run(by)[name]))
        if all(_is_straight(of, rise, end) for rise, end in ends):
            yield name


def _is_straight(of: Direct, rise: Any, end: Any) -> bool:
    """Return whether a result moved far ends where its slopes lead."""
    if np.shape(end) != of.u.shape:
        return False
    off = np.abs(np.asarray(end) - of.value - rise)
    return bool(np.all(off <= FAR * (STRAIGHT * of.u + of.dust)))
