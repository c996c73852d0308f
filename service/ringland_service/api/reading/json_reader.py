"""A strict JSON reader: what JSON cannot say, or says twice, is a fault and never a surprise."""

import json
import math
import re
from typing import Any, NoReturn

from ringland_service.api.faults import Fault, Faulty

_SURROGATE = re.compile(rb"\\u[dD][89a-fA-F]")
LONGEST_INTEGER = 40
DEEPEST = 24
# Far more than any record here has fields.
MOST_MEMBERS = 2000


def _refuse(code: str, detail: str) -> NoReturn:
    raise Faulty([Fault(code, detail)])


def _pairs(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    if len(pairs) > MOST_MEMBERS:
        detail = f"{len(pairs)} members in one object; at most {MOST_MEMBERS} are read"
        raise Faulty([Fault("too_many", detail, {"most": MOST_MEMBERS})])
    found = dict(pairs)
    if len(found) != len(pairs):
        seen: set[str] = set()
        for name, _ in pairs:
            if name in seen:
                _refuse("duplicate_key", f"the key {name[:60]!r} stands twice in one object")
            seen.add(name)
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


# Every bracket as one of two; all else is left out.
_TO_SQUARE = bytes.maketrans(b"{}", b"[]")
_NO_BRACKET = bytes(code for code in range(256) if code not in b"[]{}")


def _check_depth(body: bytes) -> None:
    """Refuse brackets nested deeper than any question here, before the parser recurses.

    No step walks the text in Python, and each takes time in proportion to the text: escapes go
    first, then what stands in quotes, then all but the brackets; then the innermost pairs go, one
    level a round. Text that is no JSON may be judged wrongly here; the parser refuses it in any
    case, and within twice the depth.
    """
    if body.count(b"[") + body.count(b"{") <= DEEPEST:
        return
    bare = body.replace(b"\\\\", b"").replace(b'\\"', b"")
    left = b"".join(bare.split(b'"')[::2]).translate(_TO_SQUARE, _NO_BRACKET)
    for _ in range(DEEPEST):
        if b"[]" not in left:
            break
        left = left.replace(b"[]", b"")
    if b"[]" in left or left.count(b"[") > DEEPEST:
        _refuse("too_deep", f"brackets are nested deeper than {DEEPEST} levels")


def read(body: bytes) -> Any:
    """Return the JSON value of a request body.

    Raises
    ------
    Faulty
        Not UTF-8, not JSON, nested too deep, a key twice or too many keys in one object, a number
        that is not finite or has more digits than any number here, or a text with half a surrogate
        pair.
    """
    try:
        text = body.decode("utf-8")
    except UnicodeDecodeError:
        _refuse("not_utf8", "the body is not UTF-8 text")
    if not text.strip():
        _refuse("empty_body", "the body is empty; send a JSON object, {} at the least")
    _check_depth(body)
    try:
        value = json.loads(
            text,
            object_pairs_hook=_pairs,
            parse_constant=_constant,
            parse_float=_float,
            parse_int=_int,
        )
    except json.JSONDecodeError as error:
        # Some of the parser's messages end in "at" already.
        where = f"at line {error.lineno} column {error.colno}"
        _refuse("not_json", f"not JSON: {error.msg.removesuffix(' at')} {where}")
    if _SURROGATE.search(body):
        _check_surrogates(value)
    return value


def _check_surrogates(value: Any) -> None:
    if isinstance(value, str):
        try:
            value.encode()
        except UnicodeEncodeError:
            _refuse("not_text", "a text holds half of a surrogate pair")
    elif isinstance(value, dict):
        for name, item in value.items():
            _check_surrogates(name)
            _check_surrogates(item)
    elif isinstance(value, list):
        for item in value:
            _check_surrogates(item)
