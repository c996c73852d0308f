"""Numbers and quantities in text: ``68.0 mm``, ``68.0mm``, ``2.677 in``, ``68.0 mm +/- 0.004``.

A ``+`` in a query string arrives as a space, so ``+/-`` half decoded (``/-``) is understood too,
and so is ``±``.
"""

import math
import re
from collections.abc import Iterable
from typing import Any

from ringland_service.api.faults import Fault, Faulty
from ringland_service.core.declare.kinds import Kind
from ringland_service.units import every_symbol, symbols

NUMBER = r"[+-]?(?:[0-9]{1,12}(?:\.[0-9]{0,20})?|\.[0-9]{1,20})(?:[eE][+-]?[0-9]{1,2})?"
PLUS_MINUS = r"(?:±|\+/-|/-)"
STATED = re.compile(PLUS_MINUS)
_NUMBER = re.compile(NUMBER)
# A bare number may be as small as a float can hold.
_BARE = re.compile(NUMBER.replace("{1,2}", "{1,3}"))
_WHOLE = re.compile(r"[+-]?[0-9]{1,12}")
LONGEST = 80


def unit_pattern(kind: Kind | None) -> str:
    """Return the pattern of a unit with the space before it."""
    known = symbols(kind) if kind else every_symbol()
    plain, counted = _alternatives(known, False), _alternatives(known, True)
    units = [rf"\s*({plain})"] * bool(plain) + [rf"\s+({counted})"] * bool(counted)
    return f"({'|'.join(units)})"


UNCERTAINTY = rf"(\s*{PLUS_MINUS}\s*{NUMBER})?"


def quantity_pattern(kind: Kind | None) -> str:
    """Return the pattern of a quantity's text, for the OpenAPI document."""
    return rf"^\s*{NUMBER}{unit_pattern(kind)}{UNCERTAINTY}\s*$"


def plain_pattern(kind: Kind | None) -> str:
    """Return the pattern of a quantity's text without an uncertainty: a limit."""
    return rf"^\s*{NUMBER}{unit_pattern(kind)}\s*$"


def _alternatives(known: Iterable[str], counted: bool) -> str:
    """Return symbols as a pattern; those that begin with a digit need a space before them."""
    chosen = sorted((s for s in known if s[0].isdigit() is counted), key=len, reverse=True)
    return "|".join(re.escape(s).replace("\\ ", " ").replace("\\-", "-") for s in chosen)


def quantity_text(text: str, example: str = "68.0 mm") -> dict[str, Any]:
    """Return the JSON form of a quantity's text.

    Raises
    ------
    Faulty
        Where it is not a number with a unit, with or without ± an uncertainty.
    """
    left, *stated = STATED.split(text, maxsplit=1) if len(text) <= LONGEST else [""]
    number, symbol = leading_number(left)
    if number is None or (stated and not is_number_text(stated[-1].strip())):
        raise Faulty([Fault("not_a_quantity", f"not a quantity: write {example}", example)])
    if not symbol:
        detail = f"a number alone has no unit: write {example}"
        raise Faulty([Fault("missing_unit", detail, example)])
    found: dict[str, Any] = {"value": number_of(number), "unit": symbol}
    if stated:
        found["uncertainty"] = number_of(stated[-1].strip())
    return found


def leading_number(text: str) -> tuple[str | None, str]:
    """Return the number that a text begins with, None where it begins with none, and the rest."""
    short = text.strip()
    number = _NUMBER.match(short)
    return (None, short) if number is None else (number[0], short[number.end() :].strip())


def is_number_text(text: str) -> bool:
    """Return whether a text is a number and nothing else."""
    return _NUMBER.fullmatch(text) is not None


def number_of(text: str) -> float:
    """Return a number as JSON would hold it: whole where it is written whole."""
    return int(text) if _WHOLE.fullmatch(text) else float(text)


def bare_number(text: str) -> float:
    """Return a number without a unit.

    Raises
    ------
    Faulty
    """
    if not _BARE.fullmatch(text) or not math.isfinite(float(text)):
        raise Faulty([Fault("wrong_type", f"not a number: {text[:40]!r}", "a number")])
    return number_of(text)
