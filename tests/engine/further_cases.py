"""Questions whose answers hang on common-practice figures that no reference case meets."""

import dataclasses
from typing import Any

from reference_cases import Case, cases

WARM = 31.0
SLEEVE = "iron_sleeve_in_aluminium"


def _first(calculation: str) -> Case:
    return next(case for case in cases() if case.calculation == calculation)


def _like(calculation: str, name: str, *without: str, **changes: Any) -> Case:
    """Return the first reference case of a calculation with other inputs."""
    base = _first(calculation)
    kept = {n: value for n, value in base.inputs.items() if n not in without}
    return dataclasses.replace(
        base, name=name, inputs={**kept, **changes}, kind="common_practice", limits={}
    )


def _squish(name: str, cycle: str, bore_mm: float, stroke_mm: float) -> Case:
    base = _first("squish")
    inputs = {
        "solder_mm": [1.32, 1.36],
        "solder_wire_mm": 1.6,
        "cycle": cycle,
        "bore_mm": bore_mm,
        "stroke_mm": stroke_mm,
    }
    return dataclasses.replace(base, name=name, inputs=inputs, limits={})


def _fit(piston_kind: str, bore_kind: str) -> Case:
    return _like(
        "piston-clearance", f"new fit, {piston_kind}", "bore_survey",
        "skirt_from_mm", "skirt_to_mm", "piston_size_new_mm", "cycle",
        piston_size_mm=67.96, bore_largest_mm=68.01, piston_condition="new",
        piston_kind=piston_kind, bore_kind=bore_kind,
    )  # fmt: skip


def _warm(calculation: str, *without: str, **changes: Any) -> Case:
    return _like(
        calculation, "warm, in a sleeve in aluminium", *without,
        bore_kind=SLEEVE, bore_temperature_c=WARM, **changes,
    )  # fmt: skip


FURTHER: tuple[Case, ...] = (
    _like("compression-level", "two-stroke band", "expected_kpa", "weather_kpa_diff",
          cycle="two_stroke", valve_gear="ports", decompressor="none",
          decompressor_state="none"),
    _fit("cast_liquid_cooled", "iron"),
    _fit("two_stroke_iron", "iron"),
    _fit("two_stroke_plated", "plated_aluminium"),
    _like("gauge-hose-loss", "a little over 3 %", hose_volume_cc=0.18),
    _like("liner-wall", "dry liner", liner_kind="dry"),
    _like("sleeve-fit", "the fit alone, cold", "running_temperature_c"),
    _squish("two-stroke of 50 cc", "two_stroke", 40.0, 39.0),
    _squish("two-stroke of 300 cc", "two_stroke", 72.0, 73.0),
    _squish("four-stroke of 100 cc", "four_stroke", 50.0, 50.0),
    _like("cylinder-spread", "spread of 17 %", readings_kpa=[1000.0, 830.0, 990.0, 995.0]),
    _like("wet-gain", "excess of about 17 %", wet_kpa=870.0),
    _like("diagnosis", "weights of one's own, a score of 1.7", evidence=["dust_past_filter"],
          weights=[{"suspect": "rings_or_bore", "evidence": "dust_past_filter", "weight": 1.7}]),
    _like("diagnosis", "weights of one's own, a lead of 0.9", evidence=["dust_past_filter"],
          weights=[{"suspect": "rings_or_bore", "evidence": "dust_past_filter", "weight": 3.0},
                   {"suspect": "exhaust_valve", "evidence": "dust_past_filter", "weight": 2.1}]),
    _like("cam-check", "what a degree costs is not told", "exhaust_loss_per_degree_mm"),
    _like("order-card", "a bridge and the stock not told", "hone_stock_mm",
          cycle="two_stroke", exhaust_bridge=True, ring_kind="plain_iron"),
    _like("order-card", "a light hone", "hone_stock_mm", work="light_hone"),
    _warm("length-at-20c", "bore_alpha_per_k"),
    _warm("bore-survey"),
    _warm("piston-clearance"),
    _warm("piston-clearance", "bore_survey", "skirt_from_mm", "skirt_to_mm", bore_largest_mm=68.05),
    _warm("hone-and-re-ring", hone_removal_mm=0.01),
    _warm("piston-selection"),
)  # fmt: skip
