"""Bore surveys of invented cylinders, each a case that the picture must show."""

from typing import Any


def mm(*values: float | None, **uncertainty: Any) -> dict[str, Any]:
    """Return readings in millimetres."""
    return {"unit": "mm", "values": list(values), **uncertainty}


GAUGE = {"instrument": "gauge"}
MEASURING = {
    "instruments": [{"id": "gauge", "kind": "bore_gauge"}],
    "readings_each": 3,
    "temperature_uncertainty": {"value": 2, "unit": "K"},
}
NOMINAL = {"value": 73.0, "unit": "mm"}
DEPTH = mm(9, 24, 42, 60, 78)
PIN = (73.041, 73.034, 73.025, 73.018, 73.009)
THRUST = (73.063, 73.052, 73.038, 73.024, 73.011)
PLAIN = {"depth": DEPTH, "pin_axis": mm(*PIN), "thrust_axis": mm(*THRUST)}
UNCERTAINTYED = {
    "depth": DEPTH,
    "pin_axis": mm(*PIN, **GAUGE),
    "thrust_axis": mm(*THRUST, **GAUGE),
    "nominal_bore": NOMINAL,
    "measuring": MEASURING,
}
MAKER = {
    "low": {"value": 73.0, "unit": "mm"},
    "high": {"value": 73.06, "unit": "mm"},
    "standing": "maker",
    "source": '<script>alert(1)</script> & "sons\'" \x00\x0b\ufffe',
}
DEPTHS = (5, 8, 10, 12, 15, 20, 30, 45, 60, 70, 75, 78)
SURVEYS: dict[str, dict[str, Any]] = {
    "uncertainty and limit": UNCERTAINTYED,
    "no limit, no uncertainty": {**PLAIN, "defaults": "off"},
    "limit on both sides": {**UNCERTAINTYED, "limits": {"bore_largest": MAKER}},
    "limit on the wear alone": {**PLAIN, "unworn": {"value": 73.008, "unit": "mm"}},
    "gaps": {
        "depth": DEPTH,
        "pin_axis": mm(73.041, None, 73.025, 73.018, 73.009, uncertainty=0.004),
        "thrust_axis": mm(73.063, 73.052, 73.038, None, 73.011),
        "nominal_bore": NOMINAL,
    },
    "one reading on an axis": {
        "depth": mm(10, 50),
        "pin_axis": mm(73.0, None, uncertainty=0.01),
        "thrust_axis": mm(73.01, 73.03),
    },
    "all equal": {
        "depth": mm(10, 50),
        "pin_axis": mm(73.0, 73.0),
        "thrust_axis": mm(73.0, 73.0),
        "defaults": "off",
    },
    "twelve depths": {
        "depth": mm(*DEPTHS),
        "pin_axis": mm(*(68.02 - 0.001 * i for i in range(12)), **GAUGE),
        "thrust_axis": mm(*(68.05 - 0.003 * i for i in range(12)), **GAUGE),
        "unworn": {"value": 68.012, "unit": "mm"},
        "bore_use": "re_ring",
        "measuring": MEASURING,
    },
    "twenty depths close together": {
        "depth": mm(*range(100, 120)),
        "pin_axis": mm(*(100.0 + 0.01 * i for i in range(20))),
        "thrust_axis": mm(*(100.0 - 0.01 * i for i in range(20)), uncertainty=0.03),
        "nominal_bore": {"value": 100.0, "unit": "mm"},
    },
    "new size off the scale": {**PLAIN, "nominal_bore": {"value": 72.0, "unit": "mm"}},
    "warm, out of order": {
        "depth": mm(78, 9, 42),
        "pin_axis": mm(73.009, 73.041, 73.025),
        "thrust_axis": mm(73.011, 73.063, 73.038),
        "nominal_bore": NOMINAL,
        "bore_temperature": {"value": 35, "unit": "degC"},
        "bore_kind": "iron",
    },
}
