"""Instruments of the bench, and questions whose sizes were read by them."""

import dataclasses
from typing import Any

import pytest

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.instruments import TYPICAL, Instrument
from ringland_service.engine.request import Measuring, Path, Request, Stated
from ringland_service.engine.response import Response
from ringland_service.engine.scalar import answer

BORE_ALPHA, PISTON_ALPHA = 1.1e-5, 2.05e-5
GAUGE = Instrument(
    "gauge",
    max_permissible_error=0.005,
    zero_setting_error=0.002,
    repeatability=0.002,
    resolution=0.001,
)
NEAR_ITS_RING = Instrument(
    "gauge",
    max_permissible_error=0.0015,
    zero_setting_error=0.001,
    repeatability=0.001,
    resolution=0.001,
)
MICROMETER = Instrument(
    "micrometer", max_permissible_error=0.003, repeatability=0.0015, resolution=0.001
)
FEELER = Instrument("feeler", max_permissible_error=0.005, zero_setting_error=0.01)
SIX_DIGITS = 5e-6


def typical(kind: str) -> Instrument:
    """The instrument as described by its kind alone."""
    figures = {k: v for k, v in TYPICAL[kind].items() if k not in {"kind", "label"}}
    return Instrument(id=kind, **figures)


def asked(name: str, inputs: dict[str, Any], uncertainties: dict[str, Any], **how: Any) -> Response:
    """Answer a calculation; an uncertainty is an instrument's id or an expanded uncertainty."""
    calculation = BY_NAME[name]
    assert isinstance(calculation, Calculation)
    stated: dict[Path, Stated] = {
        (field,): Stated(instrument=d) if isinstance(d, str) else Stated(uncertainty=d)
        for field, d in uncertainties.items()
    }
    bench = {i.id: i for i in how.pop("instruments", ())}
    measuring = Measuring(instruments=bench, **how)
    request = Request(
        inputs=calculation.inputs(**inputs), uncertainties=stated, measuring=measuring
    )
    return answer(calculation, request)


def fit(bore: float, piston: float, gauge: Instrument, other: Instrument, **how: Any) -> Response:
    return asked(
        "piston-clearance",
        {
            "bore_largest_mm": bore,
            "piston_size_mm": piston,
            "bore_alpha_per_k": BORE_ALPHA,
            "piston_alpha_per_k": PISTON_ALPHA,
        },
        {"bore_largest_mm": gauge.id, "piston_size_mm": other.id},
        instruments=(gauge, other),
        **how,
    )


def of_table(u: float, expanded: float) -> Any:
    assert 2.0 * u == pytest.approx(expanded, rel=SIX_DIGITS)
    return pytest.approx(u, rel=SIX_DIGITS)


def ordinary(bore: float = 68.0, piston: float = 68.0) -> Response:
    return fit(bore, piston, GAUGE, MICROMETER, readings_each=3, temperature_uncertainty_k=2.0)


SET_IN_IT = Instrument(
    "gauge",
    max_permissible_error=0.0015,
    zero_setting_error=0.0015,
    repeatability=0.001,
    resolution=0.001,
    zero_set_in="micrometer",
)
STEADY = dataclasses.replace(MICROMETER, repeatability=0.001)
