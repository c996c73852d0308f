"""How far two answers differ: numbers by their relative difference, all else exactly."""

import json
from collections.abc import Collection
from typing import Any

Json = dict[str, Any]
# Rounding in the last digits of the readings; uncertainties go through numeric derivatives.
SAME, SAME_UNCERTAINTY = 1e-9, 1e-6
# Differences of numbers that all but cancel are held against this instead of their own size.
SMALL = 0.01
LOOSE = {
    "uncertainty",
    "uncertainties",
    "interval",
    "intervals",
    "conformance_probability",
    "target_uncertainty",
}


def difference(one: Any, other: Any, where: str = "", loose: bool = False) -> float:
    """Return the worst relative difference of the numbers of two JSON values.

    Raises
    ------
    AssertionError
        Where they differ by more than rounding, with the place and both values.
    """
    if isinstance(one, dict) and isinstance(other, dict):
        one, other = _with_uncertainty_of(one, other), _with_uncertainty_of(other, one)
        assert one.keys() == other.keys(), told(where, one, other)
        return max(
            (difference(one[k], other[k], f"{where}.{k}", loose or k in LOOSE) for k in one),
            default=0.0,
        )
    if isinstance(one, list) and isinstance(other, list):
        assert len(one) == len(other), told(where, one, other)
        pairs = enumerate(zip(one, other, strict=True))
        return max((difference(a, b, f"{where}[{i}]", loose) for i, (a, b) in pairs), default=0.0)
    if is_number(one) and is_number(other):
        apart = abs(one - other) / max(abs(one), abs(other), SMALL)
        assert apart <= (SAME_UNCERTAINTY if loose else SAME), told(where, one, other)
        return float(apart)
    assert one == other, told(where, one, other)
    return 0.0


def _with_uncertainty_of(one: Json, other: Json) -> Json:
    """Return a value with an uncertainty of nothing, where the other has next to none.

    What no uncertainty moves has none; in other units its last digits may move it by rounding.
    """
    rounded = SAME_UNCERTAINTY * SMALL
    if "uncertainty" in one or not 0.0 <= _number(other.get("uncertainty")) <= rounded:
        return one
    return {**one, "uncertainty": 0.0}


def _number(value: Any) -> float:
    return float(value) if is_number(value) else -1.0


def is_number(value: Any) -> bool:
    """Return whether a JSON value is a number."""
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def told(where: str, one: Any, other: Any) -> str:
    """Return what differs, to be read in a report."""
    return f"{where}: {shown(one)} here, {shown(other)} there"


def shown(value: Any) -> str:
    """Return a JSON value, cut to what a line can hold."""
    text = json.dumps(value, ensure_ascii=False)
    return text if len(text) <= 400 else text[:400] + "…"


def without(answer: Json, *names: str) -> Json:
    """Return an answer less some of its members."""
    return {name: value for name, value in answer.items() if name not in names}


# The word without uncertainty stays, and has to be the same.
FOLLOW = ("conformance_probability", "to_settle", "rule", "verdict", "why", "to_judge")
OF_INTERVALS = ("interval", "intervals", "bias", *FOLLOW)


def less_intervals(value: Any, apart: Collection[str] = OF_INTERVALS) -> Any:
    """Return a JSON value without intervals and what follows from them."""
    if isinstance(value, dict):
        return {n: less_intervals(v, apart) for n, v in value.items() if n not in apart}
    return [less_intervals(one, apart) for one in value] if isinstance(value, list) else value


def less_uncertainty(value: Any) -> Any:
    """Return a JSON value without uncertainties, intervals and what follows from them."""
    return less_intervals(value, ("uncertainty", "uncertainties", *OF_INTERVALS))


def in_any_order(value: Any) -> Any:
    """Return a JSON value with every list in one order, so that only what is in it counts."""
    if isinstance(value, dict):
        return {name: in_any_order(inner) for name, inner in value.items()}
    if isinstance(value, list):
        return sorted(map(in_any_order, value), key=_by_digits)
    return value


def _by_digits(value: Any) -> str:
    """Return what sorts alike whatever the last digits of numbers are."""
    return json.dumps(_rounded(value), sort_keys=True)


def _rounded(value: Any) -> Any:
    if isinstance(value, dict):
        return {name: _rounded(inner) for name, inner in value.items()}
    if isinstance(value, list):
        return [_rounded(inner) for inner in value]
    return f"{value:.6g}" if isinstance(value, float) else value
