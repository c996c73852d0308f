"""The verdicts on end gaps, and the rules of thumb where the maker gives no range."""

from dataclasses import replace
from typing import Any

import numpy as np

from ringland_service.core.declare import Check, Figure
from ringland_service.core.declare.usual import Usual
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number

TOP, SECOND = "ring_gap.new.top", "ring_gap.new.second"


def usual_range(row: str, factor: Number, bore_mm: Number) -> Limit:
    """Return the usual range of a new ring's gap, widened to a factor that the request tells."""
    limit = LIMITS[row].limit(bore_mm)
    if isinstance(factor, Usual):
        return limit
    low: Any = limit.low
    high: Any = limit.high
    told: Any = factor * bore_mm
    return replace(limit, low=np.minimum(low, told), high=np.maximum(high, told))


def _replace_above(inputs: Any, _: Any) -> Limit | None:
    bore = inputs.unworn_bore_mm
    return None if bore is None else LIMITS["ring_gap.service"].limit(bore)


SETTLE = "square the ring with the piston and try the next leaf up and down, 0.01 mm apart"

CHECKS = (
    Check(
        "top_ring_gap",
        "top_measured_mm",
        "new top ring's gap",
        SETTLE,
        lambda i, o: usual_range(TOP, i.top_factor, i.bore_mm),
    ),
    Check(
        "second_ring_gap",
        "second_measured_mm",
        "new second ring's gap",
        SETTLE,
        lambda i, o: usual_range(SECOND, i.second_factor, i.bore_mm),
    ),
    Check(
        "oil_rail_gap",
        "oil_rail_measured_mm",
        "oil rails' gap",
        SETTLE,
        lambda i, o: LIMITS["ring_gap.new.oil_rail"].limit(),
    ),
    Check(
        "old_ring_gap",
        "own_gap_mm",
        "used ring's own gap",
        "take the gap in the unworn part of the bore, where the bore adds nothing",
        _replace_above,
    ),
)
FIGURES = (
    Figure(
        "top_factor",
        ("top_wanted_mm", "file_top_mm", "top_what_to_do"),
        lambda i, _: i.top_limit_low_mm is None and isinstance(i.top_factor, Usual),
        "limits.top_ring_gap.low, the maker's least gap",
    ),
    Figure(
        "second_factor",
        ("second_wanted_mm", "file_second_mm", "second_what_to_do"),
        lambda i, _: i.second_limit_low_mm is None and isinstance(i.second_factor, Usual),
        "limits.second_ring_gap.low, the maker's least gap",
    ),
    expansion_of_bore(("hot_gap_mm",), when=lambda i: True),
)
