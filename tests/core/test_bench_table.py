"""Rows of the table of bench uncertainty, combined by `verdict`.

Source of the figures: the trade brief's table of bench uncertainty, 6 digits (common practice, no
source); the combination is that of JCGM 100:2008, 5.1 (from memory).
"""

import math
from typing import Any

import pytest

from ringland_service.core.calculations.general import verdict
from ringland_service.core.declare.fields import Quantified, UnitGiven
from ringland_service.core.declare.kinds import LENGTH, PERCENT, TORQUE, Kind
from ringland_service.engine.request import Request
from ringland_service.engine.scalar import answer
from ringland_service.units import canonical_unit

# A leak of 11.3043 %: 690 kPa in, 612 kPa kept. Points a kilopascal of each gauge's error moves.
BEFORE, AFTER = 100.0 / 690.0, 100.0 * 612.0 / 690.0**2


def quantified(value: float, kind: Kind) -> Quantified:
    unit = canonical_unit(kind)
    return Quantified(value, UnitGiven(unit.symbol, kind, unit.ratio, unit.offset), value)


# Row, kind, value, maximum errors, resolutions, (standard deviation, readings), u, U at k = 2.
ROWS: list[tuple[str, Kind, float, list[float], list[float], list[Any], float, float]] = [
    ("stem to guide", LENGTH, 0.064, [0.003, 0.002], [0.001], [(0.001, 3)], 0.00217945, 0.0043589),
    ("valve lash", LENGTH, 0.16, [0.01, 0.005, 0.005], [], [], 0.00707107, 0.0141421),
    ("squish, solder", LENGTH, 1.34, [0.003, 0.03], [], [(0.01, 2)], 0.0187883, 0.0375766),
    ("leak, two gauges", PERCENT, 11.3043, [16 * BEFORE, 16 * AFTER], [], [], 1.78951, 3.57903),
    ("leak, zero taken out", PERCENT, 11.3043, [3 * BEFORE, 3 * AFTER], [], [], 0.335534, 0.671068),
    ("torque, wrench 4 %", TORQUE, 24.0, [0.96], [], [], 0.554256, 1.10851),
]


@pytest.mark.parametrize(
    ("kind", "value", "errors", "steps", "repeats", "u", "expanded"),
    [row[1:] for row in ROWS],
    ids=[row[0] for row in ROWS],
)
def test_row(
    kind: Kind,
    value: float,
    errors: list[float],
    steps: list[float],
    repeats: list[tuple[float, float]],
    u: float,
    expanded: float,
) -> None:
    parts = [verdict.Part(max_permissible_error=quantified(error, kind)) for error in errors]
    parts += [verdict.Part(resolution=quantified(step, kind)) for step in steps]
    parts += [
        verdict.Part(standard_deviation=quantified(s, kind), readings_averaged=float(n))
        for s, n in repeats
    ]
    given = verdict.Inputs(
        value=quantified(value, kind), high=quantified(2.0 * value, kind), parts=tuple(parts)
    )
    found = answer(verdict.CALCULATION, Request(given))
    assert found.outputs.combined_uncertainty == pytest.approx(u, rel=5e-6)
    assert found.outputs.expanded_uncertainty == pytest.approx(expanded, rel=5e-6)
    assert found.u["judged_value"] == pytest.approx(u, rel=5e-6)
    by_hand = [e / math.sqrt(3) for e in errors] + [q / math.sqrt(12) for q in steps]
    by_hand += [s / math.sqrt(n) for s, n in repeats]
    assert found.outputs.combined_uncertainty == pytest.approx(math.hypot(*by_hand), rel=1e-12)
