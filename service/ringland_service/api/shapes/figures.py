"""Numbers, quantities and words as text: what text, CSV and pages are made of."""

from collections.abc import Mapping, Sequence
from decimal import Decimal
from typing import Final, TypedDict, TypeGuard, cast

from ringland_service.api.json_types import IntervalJson, Json

# Stands beside a number whose uncertainty would mislead, and says why; see ``printed``.
REMARK: Final = "remark"
NOTHING = "none"
# A spreadsheet takes a text that begins so for a formula.
FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r")


class Told(TypedDict, total=False):
    """A quantity as it is to be printed, or a bare value as one without a unit."""

    value: object
    unit: str
    decimals: int
    uncertainty: float | None
    interval: IntervalJson | None
    remark: str


class ToldList(TypedDict, total=False):
    """A list of quantities as it is to be printed, or of bare values without a unit."""

    values: Sequence[object]
    unit: str
    decimals: int
    uncertainties: Sequence[float | None] | None
    intervals: Sequence[IntervalJson | None] | None
    remark: str


def told_value(value: object) -> Told:
    """Return a quantity, or a bare value as one without a unit; see ``printed``."""
    return cast(Told, value) if isinstance(value, Mapping) else {"value": value}


def told_list(value: object) -> ToldList:
    """Return a list of quantities, or of bare values as one without a unit; see ``printed``."""
    if isinstance(value, Mapping):
        return cast(ToldList, value)
    return {"values": cast(Sequence[object], value)}


def told_record(value: object) -> Mapping[str, object]:
    """Return a section, or a row of a table, of an answer."""
    return cast(Mapping[str, object], value)


def told_rows(value: object) -> Sequence[Mapping[str, object]]:
    """Return the rows of a table of an answer."""
    return cast(Sequence[Mapping[str, object]], value)


def plain(value: float, decimals: int | None = None) -> str:
    """Return a number as text: decimal point, no exponent, no thousands separator."""
    if decimals is not None:
        text = f"{value:.{decimals}f}"
        return text[1:] if text.startswith("-") and not float(text) else text
    text = repr(float(value))
    if "e" in text:
        text = f"{Decimal(text):f}"
    text = text.removesuffix(".0")
    return "0" if text == "-0" else text


def bare(value: object, decimals: int | None = None) -> str:
    """Return a number, a yes or no, or a text; ``decimals`` are the decimals of a number."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return plain(value, 4 if decimals is None else decimals)
    return value.replace("_", " ") if isinstance(value, str) else str(value)


def bare_list(values: Sequence[object], decimals: int | None) -> str:
    """Return a list of bare values."""
    between = "; " if any("," in str(item) for item in values) else ", "
    return between.join(bare(item, decimals) for item in values) or NOTHING


def quantity(value: Told, bare_decimals: int | None = None) -> str:
    """Return a quantity, or a bare number, with its uncertainty; a remark stands for ±."""
    uncertainty, between = value.get("uncertainty"), value.get("interval")
    return _measured(value, [value["value"]], [uncertainty], [between], bare_decimals)


def quantities(value: ToldList, bare_decimals: int | None = None) -> str:
    """Return a list of quantities, or of bare numbers, each with its uncertainty."""
    none = [None] * len(value["values"])
    uncertainties, intervals = value.get("uncertainties") or none, value.get("intervals") or none
    return _measured(value, value["values"], uncertainties, intervals, bare_decimals)


def _measured(
    value: Told | ToldList,
    numbers: Sequence[object],
    uncertainties: Sequence[float | None],
    intervals: Sequence[IntervalJson | None],
    bare_decimals: int | None,
) -> str:
    decimals = value.get("decimals", 4 if bare_decimals is None else bare_decimals)
    if REMARK in value:
        uncertainties, intervals = [None] * len(numbers), [None] * len(numbers)
    found = zip(numbers, uncertainties, intervals, strict=True)
    each = ", ".join(_with_uncertainty(v, u, between, decimals) for v, u, between in found)
    remark = f" ({value[REMARK]})" if REMARK in value else ""
    return f"{each} {value.get('unit', '')}".rstrip() + remark


def _with_uncertainty(
    value: object,
    uncertainty: float | None,
    between: IntervalJson | None,
    decimals: int,
) -> str:
    """Return a number with its expanded uncertainty and its 95 % interval, where it has them."""
    if not isinstance(value, float):
        return "–" if value is None else bare(value)
    text = plain(value, decimals)
    if uncertainty is not None:
        text += f" ± {plain(uncertainty, uncertainty_decimals(uncertainty, decimals))}"
    return text if between is None else f"{text} ({interval(between, decimals)})"


def interval(ends: IntervalJson, decimals: int) -> str:
    """Return a 95 % interval, to the decimals that its width bears."""
    enough = uncertainty_decimals(ends["high"] - ends["low"], decimals)
    return f"95 %: {plain(ends['low'], enough)} to {plain(ends['high'], enough)}"


def uncertainty_decimals(uncertainty: float, decimals: int) -> int:
    """Return decimals enough for one figure of an uncertainty."""
    while decimals < 9 and round(uncertainty, decimals) == 0:
        decimals += 1
    return decimals


def words_of(name: str) -> str:
    """Return a name of the wire as words."""
    return name.replace("_", " ").replace(".", ", ")


def cell(value: object) -> Json:
    """Return a bare value, or a list of them, as a cell of CSV.

    A text that a spreadsheet would take for a formula is quoted off.
    """
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, float):
        return plain(value)
    if isinstance(value, (tuple, list)):
        return "; ".join(str(cell(one)) for one in value)
    if isinstance(value, str) and value.startswith(FORMULA_STARTS):
        return "'" + value
    return cast(Json, value)


def is_texts(value: object) -> TypeGuard[list[str]]:
    """Return whether a value is a list of texts, with any in it."""
    return isinstance(value, list) and bool(value) and all(isinstance(one, str) for one in value)
