"""Columns of limits, named ``limit.<check>.low`` or ``.high``."""

from collections.abc import Mapping
from typing import Any

from marshmallow import ValidationError

from ringland_service.api.faults import Fault
from ringland_service.api.reading.batch_draft import RIGHT_COLUMN, Draft, Unreadable
from ringland_service.api.reading.envelope import LOW_ABOVE_HIGH, kinds_judged, limit_side
from ringland_service.api.reading.quantity_fields import (
    check_exact,
    check_keys,
    fail,
    faults_of,
    read_unit,
)
from ringland_service.core.declare import Calculation
from ringland_service.core.errors import Contradiction
from ringland_service.core.metrology.limits import Limit


def limit_of_column(calculation: Calculation, name: str, column: dict[str, Any]) -> tuple[str, str]:
    """Return the check and the side that a column of limits is for, its members checked."""
    check, _, side = name.removeprefix("limit.").rpartition(".")
    kinds = kinds_judged(calculation)
    if check not in kinds or side not in ("low", "high"):
        allowed = [f"limit.{known}.{s}" for known in kinds for s in ("low", "high")]
        raise fail(Fault("unknown_field", "no such limit here", allowed, given=name))
    kind = kinds[check]
    check_exact(True, column, "a limit")
    check_keys(column, frozenset({"values"} if kind is None else {"values", "unit"}), RIGHT_COLUMN)
    if kind is not None:
        read_unit(column, kind)
    return check, side


def limit_column(calculation: Calculation, draft: Draft, name: str, column: dict[str, Any]) -> None:
    """Read a column of limits, named ``limit.<check>.low`` or ``.high``."""
    check, side = limit_of_column(calculation, name, column)
    kind = kinds_judged(calculation)[check]
    values: list[Any] = [None] * draft.count
    for row, value in enumerate(column["values"]):
        given = value if kind is None else {"value": value, "unit": column.get("unit")}
        if value is None:
            continue
        try:
            values[row] = limit_side(kind, given)
        except ValidationError as error:
            draft.bad(row, Unreadable(name, faults_of(error)[0].detail))
    draft.limits[(check, side)] = values


def crossed_limits(draft: Draft, shared: Mapping[str, Limit]) -> None:
    """Note the rows whose limit has its low above its high, as a single call refuses it."""
    for check in dict.fromkeys(check for check, _ in draft.limits):
        whole = shared.get(check, Limit())
        lows = draft.limits.get((check, "low"), [None] * draft.count)
        highs = draft.limits.get((check, "high"), [None] * draft.count)
        for row, sides in enumerate(zip(lows, highs, strict=True)):
            low = whole.low if sides[0] is None else sides[0]
            high = whole.high if sides[1] is None else sides[1]
            if low is not None and high is not None and low > high:
                draft.bad(row, Contradiction(f"limit.{check}", LOW_ABOVE_HIGH))
