"""Quantities and readings: what goes into a request and comes back in an answer."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from ringland._errors import InvalidInput

_NUMBER = r"[+-]?(?:[0-9]{1,12}(?:\.[0-9]{0,20})?|\.[0-9]{1,20})(?:[eE][+-]?[0-9]{1,2})?"
_UNCERTAINTY = r"(?:±|\+/-)"
_UNIT = rf"(?:(?!{_UNCERTAINTY}).)*?"
_TEXT = re.compile(
    rf"\s*({_NUMBER})(?![0-9.,;:])\s*({_UNIT})\s*(?:{_UNCERTAINTY}\s*({_NUMBER})\s*)?"
)
RIGHT = "write '68.0 mm', '68.0 mm +/- 0.004' or (68.0, 'mm')"


@dataclass(frozen=True)
class Interval:
    """The 95 % interval of a result that noise pushes one way, in the unit of the result."""

    low: float
    high: float


@dataclass(frozen=True)
class Quantity:
    """A number with its unit.

    Attributes
    ----------
    value : float
    unit : str
        One of the service's symbols for the kind of quantity.
    uncertainty : float or None
        Expanded (k = 2), in the same unit.
    instrument : str or None
        Id of an instrument described in ``measuring``, instead of an uncertainty.
    decimals : int or None
        Decimals that the service suggests for display; not sent.
    interval : Interval or None
        In an answer: of 95 %, where the value rests on the largest or smallest of readings that
        lie within their uncertainty; not sent.
    """

    value: float
    unit: str
    uncertainty: float | None = None
    instrument: str | None = None
    decimals: int | None = None
    interval: Interval | None = None

    @classmethod
    def parse(cls, text: str) -> "Quantity":
        """Return the quantity that a text states: ``68 mm``, ``68.0mm +/- 0.004``.

        Raises
        ------
        InvalidInput
            Where it is not a number with a unit.
        """
        found = _TEXT.fullmatch(text)
        if found is None:
            raise InvalidInput(f"{text[:60]!r} is not a quantity: {RIGHT}")
        number, unit, uncertainty = found.groups()
        if not unit:
            raise InvalidInput(f"{text[:60]!r} has no unit: {RIGHT}")
        return cls(_number(number), unit, None if uncertainty is None else _number(uncertainty))

    def __str__(self) -> str:
        """Return the quantity as text, with the decimals suggested, where any are."""
        uncertainty = ""
        if self.uncertainty is not None:
            uncertainty = f" ± {_shown(self.uncertainty, _enough(self.uncertainty, self.decimals))}"
        return f"{_shown(self.value, self.decimals)} {self.unit}{uncertainty}"


@dataclass(frozen=True)
class Readings:
    """Several readings of one quantity, None where one is missing.

    Attributes
    ----------
    values : tuple of float or None
    unit : str
    uncertainty : float or None
        Of each reading (k = 2), in the same unit.
    instrument : str or None
    decimals : int or None
    uncertainties : tuple of float or None, or None
        In an answer: of each value (k = 2), None where one is missing.
    intervals : tuple of Interval or None, or None
        In an answer: of 95 %, of each value that has one.
    """

    values: tuple[float | None, ...]
    unit: str
    uncertainty: float | None = None
    instrument: str | None = None
    decimals: int | None = None
    uncertainties: tuple[float | None, ...] | None = None
    intervals: tuple[Interval | None, ...] | None = None


QuantityLike: TypeAlias = str | tuple[float, str] | Quantity | Mapping[str, object]
ReadingsLike: TypeAlias = tuple[Sequence[float | None], str] | Readings | Mapping[str, object]


def _number(text: str) -> float:
    """Return a number as it is written: whole where it is written whole."""
    return int(text) if re.fullmatch(r"[+-]?[0-9]+", text) else float(text)


def _shown(value: float, decimals: int | None) -> str:
    return repr(value) if decimals is None else f"{value:.{decimals}f}"


def _enough(uncertainty: float, decimals: int | None) -> int | None:
    """Return decimals enough for one figure of the uncertainty."""
    while decimals is not None and decimals < 9 and round(uncertainty, decimals) == 0:
        decimals += 1
    return decimals
