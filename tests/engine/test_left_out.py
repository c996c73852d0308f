"""Readings that no result rests on are left out of the uncertainty, and nothing else is.

The witness is the propagation through every reading, as it stands in JCGM 100:2008, 5.1.
"""

import dataclasses
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.calculations.head._shim_inputs import Inputs, Valve
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.instruments import Instrument
from ringland_service.core.metrology.propagation import propagate
from ringland_service.engine.request import Measuring, Request, Stated, stated_components
from ringland_service.engine.scalar import uncertainty

SHIMS = st.lists(
    st.integers(120, 350).map(lambda hundredths: hundredths / 100), min_size=1, max_size=20
)
LASH = st.integers(2, 60).map(lambda hundredths: hundredths / 100)
GAUGE = Instrument("gauge", max_permissible_error=0.003, zero_setting_error=0.001)


def lash_shim() -> Calculation:
    found = BY_NAME["lash-shim"]
    assert isinstance(found, Calculation)
    return found


@st.composite
def questions(draw: Any) -> Request:
    """One valve or several that share a lot, each shim with an uncertainty or by one instrument."""
    shims = tuple(draw(SHIMS))
    old = st.integers(150, 320).map(lambda hundredths: hundredths / 100)
    common: dict[str, Any] = {"lash_low_mm": 0.2, "lash_high_mm": 0.3, "shims_mm": shims}
    if draw(st.booleans()):
        inputs = Inputs(shim_mm=draw(old), found_mm=draw(LASH), **common)
        uncertainties = {("shim_mm",): Stated(uncertainty=0.004)}
    else:
        count = draw(st.integers(1, 4))
        valves = tuple(
            Valve(name=f"valve {i}", shim_mm=draw(old), found_mm=draw(LASH)) for i in range(count)
        )
        inputs = Inputs(valves=valves, **common)
        uncertainties = {("valves", 0, "shim_mm"): Stated(uncertainty=0.004)}
    by_gauge = draw(st.booleans())
    stated = Stated(instrument="gauge") if by_gauge else Stated(uncertainty=0.003)
    measuring = Measuring(instruments={"gauge": GAUGE})
    return Request(
        inputs=inputs, uncertainties={**uncertainties, ("shims_mm",): stated}, measuring=measuring
    )


@settings(max_examples=300)
@given(questions())
def test_the_uncertainty_is_that_of_all_shims(request: Request) -> None:
    of = lash_shim()
    components = stated_components(request)
    outputs = of.compute(request.inputs)
    whole = propagate(of.compute, request.inputs, components, outputs)
    u, _, _, _ = uncertainty(of, request.inputs, outputs, components)
    for name, value in whole.items():
        assert u[name] == pytest.approx(value, rel=1e-6, abs=1e-12), name
    assert {n for n in u if hasattr(outputs, n) and n not in vars(request.inputs)} <= whole.keys()


def test_a_long_stock_costs_what_its_few_chosen_ones_do() -> None:
    """Sixty shims with an uncertainty each: the arithmetic runs for four readings, not for 62."""
    runs = 0
    of = lash_shim()

    def compute(inputs: Any) -> Any:
        nonlocal runs
        runs += 1
        return of.compute(inputs)

    shims = tuple(round(1.2 + 0.04 * i, 3) for i in range(60))
    inputs = Inputs(
        shim_mm=2.5,
        found_mm=0.17,
        lash_low_mm=0.2,
        lash_high_mm=0.3,
        shims_mm=shims,
    )
    uncertainties = {
        (name,): Stated(uncertainty=0.004) for name in ("shims_mm", "shim_mm", "found_mm")
    }
    components = stated_components(Request(inputs=inputs, uncertainties=uncertainties))
    assert len(components) == 62
    counted = dataclasses.replace(of, compute=compute)
    u, moved, _, _ = uncertainty(counted, inputs, of.compute(inputs), components)
    assert u["lash_after_mm"] > 0
    assert len(moved) == 62
    assert runs <= 2 * 4


def test_what_is_left_out_is_declared_where_there_is_a_choice() -> None:
    found = [c.name for c in CALCULATIONS if isinstance(c, Calculation) and c.left_out]
    assert found == ["lash-shim"]
