"""What the picture of a bore shows, read off the answer: readings, new size, limit, doubt."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

PIN, THRUST = "pin", "thrust"


@dataclass(frozen=True)
class Axis:
    """One axis: a diameter at 20 °C or a gap per depth, and the doubt of each, if any is stated."""

    name: str
    sizes: tuple[float | None, ...]
    doubt: float | None


@dataclass(frozen=True)
class Line:
    """A size that the bore is held against, and what it is."""

    size: float
    words: str


@dataclass(frozen=True)
class Surveyed:
    """A survey as drawn, from the deck down; all sizes in one unit, as the answer has them."""

    unit: str
    digits: int
    depth_unit: str
    depth_digits: int
    depths: tuple[float, ...]
    axes: tuple[Axis, ...]
    new: Line | None
    high: Line | None
    low: Line | None

    @property
    def sizes(self) -> list[float]:
        """All the readings of both axes."""
        return [size for axis in self.axes for size in axis.sizes if size is not None]


NEW = {"unworn_reference": "unworn reference", "nominal_bore": "nominal bore"}


def surveyed(found: Mapping[str, Any]) -> Surveyed:
    """Return what the picture shows of an answer of ``bore-survey``."""
    inputs, result = found["inputs"], found["result"]
    depth = inputs["depth"]
    order = sorted(range(len(depth["values"])), key=lambda i: depth["values"][i])
    read = {axis: inputs[f"{axis}_axis"]["values"] for axis in (THRUST, PIN)}
    # The answer gives the largest bore at 20 °C; all readings shrink or grow in its proportion.
    largest = max(size for sizes in read.values() for size in sizes if size is not None)
    to_20c = result["max"]["value"] / largest
    axes = tuple(
        Axis(
            name,
            tuple(None if sizes[i] is None else sizes[i] * to_20c for i in order),
            doubt_of(result, name),
        )
        for name, sizes in read.items()
    )
    new = _new(result)
    return Surveyed(
        unit=result["max"]["unit"],
        digits=result["max"]["digits"],
        depth_unit=depth["unit"],
        depth_digits=depth["digits"],
        depths=tuple(depth["values"][i] for i in order),
        axes=axes,
        new=new,
        high=_limit(found["verdicts"], "high", new),
        low=_limit(found["verdicts"], "low", new),
    )


def doubt_of(result: Mapping[str, Any], axis: str) -> float | None:
    """Return the expanded uncertainty of a reading on an axis; None where none is stated.

    The answer states it for the largest and the smallest bore. An axis that holds neither was
    read with the same gauge, if a doubt of its readings is stated at all: its taper tells.
    """
    for extreme in ("max", "min"):
        if result[f"{extreme}_at_axis"] == axis:
            return _stated(result[extreme])
    taper = result.get(f"taper_{axis}_axis")
    return None if taper is None or _stated(taper) is None else _stated(result["max"])


def _stated(value: Mapping[str, Any]) -> float | None:
    return value.get("uncertainty") or None


def _new(result: Mapping[str, Any]) -> Line | None:
    if "wear" not in result:
        return None
    return Line(result["max"]["value"] - result["wear"]["value"], NEW[result["wear_from"]])


def _limit(verdicts: Any, side: str, new: Line | None) -> Line | None:
    """Return a side of the limit with its standing: on the bore itself, else on its wear."""
    limits = {verdict["check"]: verdict["limit"] for verdict in verdicts}
    for check, counted_from in (("bore_max", 0.0), ("bore_wear", new.size if new else None)):
        limit = limits.get(check)
        if limit is not None and counted_from is not None and limit[side] is not None:
            standing = limit["standing"].replace("_", " ")
            return Line(counted_from + limit[side]["value"], standing)
    return None
