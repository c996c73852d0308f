"""Where everything of the picture of a bore lies: pure functions from sizes to pixels."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from ringland_service.api.writing import text
from ringland_service.api.writing.pictures.scales import (
    Scale,
    decimals_of,
    round_step,
    spread,
    ticks,
)
from ringland_service.api.writing.pictures.surveyed import Axis, Line, Surveyed

WIDTH = 760.0
LEFT, RIGHT, TOP, BOTTOM = 84.0, 470.0, 156.0, 596.0
ROW = 17.0
# Readings that are all equal still get a scale of so many last digits.
LEAST_DIGITS = 20
# A line further out than this leaves the readings too small to read, and is told beside them.
MOST_STRETCH = 10.0
MARGIN = 0.06
MOST_TICKS = 8


@dataclass(frozen=True)
class Tick:
    """A tick of a scale."""

    at: float
    label: str


@dataclass(frozen=True)
class Mark:
    """One reading: its marker, and how far its doubt reaches to either side."""

    x: float
    y: float
    doubt: tuple[float, float] | None


@dataclass(frozen=True)
class Trace:
    """One axis: its marks, and the runs between gaps as lines and as bands of doubt."""

    name: str
    marks: tuple[Mark, ...]
    runs: tuple[tuple[Mark, ...], ...]

    @property
    def bands(self) -> list[list[tuple[float, float]]]:
        """The outline of the doubt along each run."""
        found = []
        for run in self.runs:
            known = [(mark.doubt, mark.y) for mark in run if mark.doubt is not None]
            if len(known) > 1:
                down = [(doubt[0], y) for doubt, y in known]
                found.append(down + [(doubt[1], y) for doubt, y in reversed(known)])
        return found


@dataclass(frozen=True)
class Upright:
    """A line down the picture; ``off`` is -1 or 1 where it lies off the scale to that side."""

    x: float
    off: int


@dataclass(frozen=True)
class Row:
    """The readings of one depth as text, level with the depth where there is room."""

    at: float
    y: float
    depth: str
    sizes: tuple[str, ...]
    difference: str


@dataclass(frozen=True)
class Scene:
    """The picture, in pixels."""

    left: float
    right: float
    top: float
    bottom: float
    across: Scale
    down: Scale
    sizes: tuple[Tick, ...]
    depths: tuple[Tick, ...]
    over_new: tuple[Tick, ...]
    traces: tuple[Trace, ...]
    new: Upright | None
    high: Upright | None
    low: Upright | None
    rows: tuple[Row, ...]

    @property
    def magnified(self) -> int:
        """How many times the diameters are drawn larger than the depths, to two figures."""
        times = (self.right - self.left) / (self.across.high - self.across.low)
        times /= (self.bottom - self.top) / self.down.high
        return int(float(f"{times:.1e}"))

    @property
    def hatches(self) -> list[float]:
        """Where the strokes begin that mark the wrong side of a limit."""
        count = int((self.bottom - self.top) // 14)
        return [self.top + 14.0 * i for i in range(count)]


def scene(drawn: Surveyed) -> Scene:
    """Return the picture of a survey."""
    across, down = size_scale(drawn), depth_scale(drawn.depths)
    return Scene(
        LEFT,
        RIGHT,
        TOP,
        BOTTOM,
        across,
        down,
        sizes=_size_ticks(across),
        depths=_depth_ticks(down),
        over_new=_ticks_over(drawn.new, across),
        traces=tuple(trace(axis, drawn.depths, across, down) for axis in drawn.axes),
        new=upright(drawn.new, across),
        high=upright(drawn.high, across),
        low=upright(drawn.low, across),
        rows=_rows(drawn, down),
    )


def size_scale(drawn: Surveyed) -> Scale:
    """Return the scale of diameters: readings with their doubt, and the lines that fit beside."""
    ends = [
        size + sign * (axis.doubt or 0.0)
        for axis in drawn.axes
        for size in axis.sizes
        if size is not None
        for sign in (-1, 1)
    ]
    low, high = min(ends), max(ends)
    missing = LEAST_DIGITS * 10.0**-drawn.digits - (high - low)
    if missing > 0.0:
        low, high = low - missing / 2, high + missing / 2
    most = MOST_STRETCH * (high - low)
    for line in (drawn.high, drawn.low, drawn.new):
        if line is not None and max(high, line.size) - min(low, line.size) <= most:
            low, high = min(low, line.size), max(high, line.size)
    rim = MARGIN * (high - low)
    return Scale(low - rim, high + rim, LEFT, RIGHT)


def depth_scale(depths: Sequence[float]) -> Scale:
    """Return the scale of depths: from the deck to a round depth below the last reading."""
    deepest = max(depths)
    step = round_step(deepest, 8)
    return Scale(0.0, math.ceil(deepest * 1.03 / step) * step, TOP, BOTTOM)


def _size_ticks(across: Scale) -> tuple[Tick, ...]:
    step = round_step(across.high - across.low, MOST_TICKS)
    found = ticks(across.low, across.high, step)
    return tuple(Tick(across.at(v), text.plain(v, decimals_of(step))) for v in found)


def _depth_ticks(down: Scale) -> tuple[Tick, ...]:
    step = round_step(down.high, 10)
    return tuple(
        Tick(down.at(v), text.plain(v, decimals_of(step))) for v in ticks(0.0, down.high, step)
    )


def _ticks_over(new: Line | None, across: Scale) -> tuple[Tick, ...]:
    """Return the ticks of the scale that counts from the new size."""
    if new is None:
        return ()
    step = round_step(across.high - across.low, MOST_TICKS)
    found = ticks(across.low - new.size, across.high - new.size, step)
    return tuple(
        Tick(across.at(new.size + v), _signed(text.plain(v, decimals_of(step)))) for v in found
    )


def _signed(label: str) -> str:
    if label.startswith("-"):
        return "−" + label[1:]
    return label if not float(label) else f"+{label}"


def trace(axis: Axis, depths: Sequence[float], across: Scale, down: Scale) -> Trace:
    """Return the marks of one axis; a missing reading ends a run."""
    runs: list[list[Mark]] = [[]]
    for depth, size in zip(depths, axis.sizes, strict=True):
        if size is None:
            runs.append([])
        else:
            runs[-1].append(_mark(size, depth, axis.doubt, across, down))
    kept = tuple(tuple(run) for run in runs if run)
    return Trace(axis.name, tuple(mark for run in kept for mark in run), kept)


def _mark(size: float, depth: float, doubt: float | None, across: Scale, down: Scale) -> Mark:
    reach = None if doubt is None else (across.at(size - doubt), across.at(size + doubt))
    return Mark(across.at(size), down.at(depth), reach)


def upright(line: Line | None, across: Scale) -> Upright | None:
    """Return where a line stands; at the edge where it lies off the scale."""
    if line is None:
        return None
    if across.holds(line.size):
        return Upright(across.at(line.size), 0)
    return Upright(LEFT, -1) if line.size < across.low else Upright(RIGHT, 1)


def _rows(drawn: Surveyed, down: Scale) -> tuple[Row, ...]:
    wanted = [down.at(depth) for depth in drawn.depths]
    places = spread(wanted, ROW, TOP + ROW / 2, BOTTOM - ROW / 4)
    return tuple(
        Row(
            at,
            y,
            text.plain(depth, drawn.depth_digits),
            tuple(_size(drawn, axis.sizes[i]) for axis in drawn.axes),
            _difference(drawn, i),
        )
        for i, (depth, at, y) in enumerate(zip(drawn.depths, wanted, places, strict=True))
    )


def _size(drawn: Surveyed, value: float | None) -> str:
    return "–" if value is None else text.plain(value, drawn.digits)


def _difference(drawn: Surveyed, i: int) -> str:
    first, second = (axis.sizes[i] for axis in drawn.axes)
    return _size(drawn, None if first is None or second is None else abs(first - second))
