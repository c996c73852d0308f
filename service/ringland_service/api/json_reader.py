"""A strict JSON reader: what JSON cannot say, or says twice, is a fault and never a surprise."""

import json
import math
from typing import Any, NoReturn

from ringland_service.api.faults import Fault, Faulty

LONGEST_INTEGER = 40
DEEPEST = 24


def _refuse(code: str, detail: str) -> NoReturn:
    raise Faulty([Fault(code, detail)])


def _pairs(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        names = [name for name, _ in pairs]
        twice = next(name for name in names if names.count(name) > 1)
        _refuse("duplicate_key", f"the key {twice[:60]!r} stands twice in one object")
    return found


def _constant(text: str) -> NoReturn:
    _refuse("not_a_number", f"{text} is not a number in JSON; leave the field out instead")


def _float(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        _refuse("not_a_number", f"{text[:40]} is too large for a number")
    return value


def _int(text: str) -> int:
    if len(text) > LONGEST_INTEGER:
        _refuse("not_a_number", f"a whole number of {len(text)} digits is too long")
    return int(text)


def _check_depth(text: str) -> None:
    """Refuse brackets nested deeper than any question here, before the parser recurses."""
    if text.count("[") + text.count("{") <= DEEPEST:
        return
    depth = 0
    quoted = escaped = False
    for character in text:
        if quoted:
            escaped, quoted = (
                character == "\\" and not escaped,
                character != '"' or escaped,
            )
        elif character == '"':
            quoted = True
        elif character in "[{":
            depth += 1
            if depth > DEEPEST:
                _refuse("too_deep", f"brackets are nested deeper than {DEEPEST} levels")
        elif character in "]}":
            depth -= 1


def read(body: bytes) -> Any:
    """Return the JSON value of a request body.

    Raises
    ------
    Faulty
        Not UTF-8, not JSON, nested too deep, a key twice in one object, a number that is not
        finite or has more digits than any number here, or a text with half a surrogate pair.
    """
    try:
        text = body.decode("utf-8")
    except UnicodeDecodeError:
        _refuse("not_utf8", "the body is not UTF-8 text")
    if not text.strip():
        _refuse("empty_body", "the body is empty; send a JSON object, {} at the least")
    _check_depth(text)
    try:
        value = json.loads(
            text,
            object_pairs_hook=_pairs,
            parse_constant=_constant,
            parse_float=_float,
            parse_int=_int,
        )
    except json.JSONDecodeError as error:
        _refuse("not_json", f"not JSON: {error.msg} at line {error.lineno} column {error.colno}")
    if "\\u" in text:
        _check_surrogates(value)
    return value


def _check_surrogates(value: Any) -> None:
    if isinstance(value, str):
        if any("\ud800" <= character <= "\udfff" for character in value):
            _refuse("not_text", "a text holds half of a surrogate pair")
    elif isinstance(value, dict):
        for name, item in value.items():
            _check_surrogates(name)
            _check_surrogates(item)
    elif isinstance(value, list):
        for item in value:
            _check_surrogates(item)
