"""Instruments by their kind alone, by figures of their own, and ones that are not described.

Typical figures: common practice, no source; the arithmetic: JCGM 100:2008, 4.3 and 5.1 (from
memory).
"""

import math

import pytest
from bench_instruments import BORE_ALPHA, GAUGE, PISTON_ALPHA, SET_IN_IT, SIX_DIGITS, asked, typical

from ringland_service.core.errors import CoreError
from ringland_service.core.metrology.instruments import TYPICAL, Instrument, Measured, components


@pytest.mark.parametrize(
    ("kind", "u"),
    [
        ("bore_gauge", 0.00341216 / 68.0),
        ("outside_micrometer", 0.00240345 / 68.0),
    ],
)
def test_a_kind_alone_takes_the_typical_figures(kind: str, u: float) -> None:
    alpha = BORE_ALPHA if kind == "bore_gauge" else PISTON_ALPHA
    found = asked(
        "length-at-20c",
        {"bore_mm": 68.0, "bore_temperature_c": 20.0, "bore_alpha_per_k": alpha},
        {"bore_mm": kind},
        instruments=(typical(kind),),
        readings_each=3,
        temperature_uncertainty_k=2.0,
    )
    assert found.u["bore_at_20c_mm"] / 68.0 == pytest.approx(u, rel=SIX_DIGITS)


def test_typical_compression_gauge() -> None:
    """± 4 % of 700 and ± 10 kPa, both over √3: 16.1658 and 5.7735."""
    kind = "compression_gauge"
    inputs, uncertainties = {"reading_kpa": 700.0, "altitude_m": 0.0}, {"reading_kpa": kind}
    found = asked("compression-level", inputs, uncertainties, instruments=(typical(kind),))
    expected = math.hypot(16.1658, 5.7735)
    assert found.u["reading_at_sea_level_kpa"] == pytest.approx(expected, rel=SIX_DIGITS)


@pytest.mark.parametrize("kind", TYPICAL)
def test_every_kind_has_figures(kind: str) -> None:
    instrument = typical(kind)
    assert instrument.max_permissible_error > 0.0 or instrument.relative_error > 0.0
    assert instrument.reads
    assert TYPICAL[kind]["label"]


def test_repeats_narrow_the_repeat_alone() -> None:
    only = Instrument("gauge", repeatability=0.002)
    inputs = {"bore_mm": 68.0, "bore_temperature_c": 20.0, "bore_alpha_per_k": BORE_ALPHA}
    for n in (1, 4, 16):
        found = asked(
            "length-at-20c", inputs, {"bore_mm": "gauge"}, instruments=(only,), readings_each=n
        )
        assert found.u["bore_at_20c_mm"] == pytest.approx(0.002 / math.sqrt(n), rel=1e-8)


READING = Measured("gauge", ("bore_largest_mm",), 68.05, 210.0)


def test_an_instrument_that_is_not_described() -> None:
    with pytest.raises(CoreError, match="no instrument 'gauge' is described"):
        components({}, [READING], 1)


def test_a_setting_in_an_instrument_that_is_not_described() -> None:
    with pytest.raises(CoreError, match="no instrument 'micrometer' is described"):
        components({"gauge": SET_IN_IT}, [READING], 1)


def test_an_instrument_that_nothing_was_read_with() -> None:
    assert components({"gauge": GAUGE}, [], 1) == []


def test_an_error_of_zero_still_hangs_together() -> None:
    """A micrometer without error: what was set in it keeps its own errors alone."""
    exact = Instrument("micrometer")
    found = components({"gauge": SET_IN_IT, "micrometer": exact}, [READING], 1)
    assert sum(i.u**2 for i in found) == pytest.approx(
        (0.0015**2 + 0.0015**2) / 3 + 0.001**2 + 0.001**2 / 12, rel=1e-12
    )
