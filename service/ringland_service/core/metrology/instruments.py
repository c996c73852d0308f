"""From instruments to influences: what the bench's tools do to each reading.

An instrument's error has parts that its readings share and parts of each reading's own:

- its maximum error (± a, rectangular: a/√3). Over a short range one gauge repeats its own
  error; where a ``short_range_error`` e is stated, a difference of two of its readings carries
  e/√3 in all, so each reading owns e/√6 and the rest of a/√3 is shared.
- the error of its setting, shared by all of its readings (± s: s/√3);
- the error of the instrument it was set in, shared with that one's readings (``set_in``);
- repeat: r/√n of each reading's own, n readings each;
- resolution: q/(2√3) of each reading's own.

References
----------
JCGM 100:2008, 4.3.7: rectangular distribution; trade's table of bench uncertainty
(common practice, no source).
"""

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.propagation import Influence, Move
from ringland_service.core.tables import read_table

ROOT3 = math.sqrt(3.0)


@dataclass(frozen=True)
class Instrument:
    """An instrument of the bench. Errors are in the canonical unit of what it reads.

    ``relative_error`` is a maximum error as a share of the reading (a pressure gauge); ``reads``
    names the kind of quantity that it measures; ``typical`` the figures that are those of its kind,
    common practice, and not its own.
    """

    id: str
    max_error: float = 0.0
    relative_error: float = 0.0
    setting_error: float = 0.0
    repeat: float = 0.0
    resolution: float = 0.0
    short_range_error: float | None = None
    set_in: str | None = None
    reads: str = ""
    typical: frozenset[str] = frozenset()

    def own(self) -> "Instrument":
        """Return the instrument with no figure but its own."""
        none: dict[str, Any] = {
            name: None if name == "short_range_error" else 0.0 for name in self.typical
        }
        return replace(self, **none, typical=frozenset()) if none else self


@dataclass(frozen=True)
class Measured:
    """One reading taken with an instrument."""

    instrument: str
    path: tuple[str | int, ...]
    value: float
    scale: float

    @property
    def move(self) -> Move:
        """The move of this reading alone."""
        return Move(self.path, self.scale)


TYPICAL: dict[str, dict[str, Any]] = {row["kind"]: row for row in read_table("instruments")}


def _error_at(instrument: Instrument, value: float) -> float:
    """Return the maximum error at a reading."""
    return instrument.max_error + instrument.relative_error * abs(value)


def _shared_move(instrument: Instrument, reading: Measured, largest: float) -> Move:
    """Return how an error that all readings share moves one, against the largest of them."""
    most = _error_at(instrument, largest)
    by = _error_at(instrument, reading.value) / most if most > 0.0 else 1.0
    return Move(reading.path, reading.scale, by)


def _own_and_shared(instrument: Instrument, value: float) -> tuple[float, float]:
    """Return u of the maximum error: each reading's own part, and the shared part."""
    whole = _error_at(instrument, value) / ROOT3
    if instrument.short_range_error is None:
        return whole, 0.0
    own = min(instrument.short_range_error / math.sqrt(6.0), whole)
    return own, math.sqrt(max(whole * whole - own * own, 0.0))


def own_influences(
    instrument: Instrument, reading: Measured, readings_each: int
) -> list[Influence]:
    """Return what moves this reading alone."""
    own, _ = _own_and_shared(instrument, reading.value)
    parts = {
        "own error": own,
        "repeat": instrument.repeat / math.sqrt(readings_each),
        "resolution": instrument.resolution / (2.0 * ROOT3),
    }
    label = ".".join(map(str, reading.path))
    return [
        Influence(f"{instrument.id}: {part} ({label})", u, (reading.move,))
        for part, u in parts.items()
        if u > 0.0
    ]


def shared_influences(
    instrument: Instrument, readings: Sequence[Measured], hung_on: Sequence[Measured]
) -> list[Influence]:
    """Return what moves all readings of the instrument together.

    ``hung_on`` are the readings of instruments that were set in this one: its maximum error is
    theirs too. An error that is a share of the reading moves each reading by that share.
    """
    largest = max((abs(r.value) for r in (*readings, *hung_on)), default=0.0)
    own, shared = _own_and_shared(instrument, largest)
    moves = tuple(r.move for r in readings)
    alike = tuple(_shared_move(instrument, r, largest) for r in (*readings, *hung_on))
    found = []
    if hung_on:
        whole = math.hypot(own, shared)
        found += [Influence(f"{instrument.id}: error", whole, alike)] if whole > 0.0 else []
    elif shared > 0.0 and moves:
        found.append(Influence(f"{instrument.id}: shared error", shared, alike))
    if instrument.setting_error > 0.0 and moves:
        found.append(
            Influence(f"{instrument.id}: setting", instrument.setting_error / ROOT3, moves)
        )
    return found


def influences(
    instruments: Mapping[str, Instrument], readings: Sequence[Measured], readings_each: int
) -> list[Influence]:
    """Return the influences of the bench on the readings.

    Parameters
    ----------
    instruments : mapping
        By id.
    readings : sequence of Measured
        Each naming an instrument in ``instruments``.
    readings_each : int
        Readings averaged into each value; divides the repeat by √n.

    Raises
    ------
    CoreError
        Where a reading or a setting names an instrument that is not described.
    """
    for name in [r.instrument for r in readings] + [
        i.set_in for i in instruments.values() if i.set_in
    ]:
        if name not in instruments:
            raise CoreError(
                "instrument", f"no instrument {name!r} is described", "describe it in measuring"
            )
    found: list[Influence] = []
    for instrument in instruments.values():
        taken = [r for r in readings if r.instrument == instrument.id]
        hung = [r for r in readings if instruments[r.instrument].set_in == instrument.id]
        found += shared_influences(instrument, taken, hung)
        for reading in taken:
            found += own_influences(
                _without_max_error(instrument) if hung else instrument, reading, readings_each
            )
    return found


def _without_max_error(instrument: Instrument) -> Instrument:
    """Return the instrument less its maximum error, where that is already shared as a whole."""
    return Instrument(id=instrument.id, repeat=instrument.repeat, resolution=instrument.resolution)
