"""C12: the hole behind a leak-down reading, and what it reads on another tester."""

import numpy as np

from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.declare import (
    Calculation,
    Figure,
    Notice,
    Rule,
    field_like,
    kinds,
    quantity,
    record,
    result,
    usual,
)
from ringland_service.core.engines import condition
from ringland_service.core.formulas import leak
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import engine_tests as tests
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE, cited

NOZZLE = cited("{gas_dynamics}")
# What gauges of 5 kPa can still tell from no loss, and from no pressure at all.
LEAST_KPA = 1.0


def _ratio(after: str, before: str) -> str:
    """Return the formula of a pressure ratio, not below the one at which the flow is choked."""
    return f"max({after} / {before}, (2 / 2.4)**3.5)"


def _squared_flow(ratio: str) -> str:
    return f"({ratio}**(2 / 1.4) - {ratio}**(2.4 / 1.4))"


SUPPLY = "(supply_pressure_kpa + air_pressure_here_kpa_abs)"
CYLINDER = "(cylinder_pressure_kpa + air_pressure_here_kpa_abs)"


@record
class Inputs:
    """A reading, the tester that it was taken on, and the tester that it is wanted on."""

    supply_pressure_kpa: Number = quantity(
        tests.LEAK_SUPPLY, "pressure before the restrictor, gauge, read while the air flows"
    )
    cylinder_pressure_kpa: Number = quantity(
        tests.LEAK_CYLINDER, "pressure that the cylinder holds, gauge, of the same zero"
    )
    restrictor_mm: Number = quantity(
        tests.RESTRICTOR, "bore of the tester's restrictor, clean of oil and dirt"
    )
    altitude_m: Number | None = quantity(
        quantities.ALTITUDE, "altitude of the place (geopotential)", default=None
    )
    air_pressure_kpa_abs: Number | None = quantity(
        quantities.AIR_PRESSURE, "air pressure on the spot, absolute", default=None
    )
    weather_report_kpa_abs: Number | None = field_like(
        air_pressure.Inputs, "weather_report_kpa_abs"
    )
    other_restrictor_mm: Number | None = quantity(
        tests.RESTRICTOR,
        "bore of the other tester's restrictor; absent, the same",
        example=1.5,
        default=None,
    )
    other_supply_pressure_kpa: Number | None = quantity(
        tests.LEAK_SUPPLY, "supply of the other tester, gauge; absent, the same", default=None
    )
    coefficient_uncertainty_pct: Number = quantity(
        tests.FLOW_COEFFICIENT_UNCERTAINTY,
        "how far the flow coefficients of hole and restrictors may be apart, ±",
        default=usual(15.0),
        exact=True,
    )
    bore_mm: Number | None = quantity(
        lengths.BORE, "cylinder bore, to compare engines of different size", default=None
    )


@record
class Outputs:
    """The hole, and its reading on another tester. For comparison: never a verdict."""

    air_pressure_here_kpa_abs: Number = result(
        "air pressure that was used, absolute",
        kind=kinds.PRESSURE_ABSOLUTE,
        decimals=2,
        basis="as read on the spot, else the weather report or the standard atmosphere at the "
        "altitude, else 101.325",
        source=cited("{iso_2533}"),
    )
    leak_pct: Number = result(
        "leak-down as read",
        kind=kinds.PERCENT,
        decimals=1,
        formula="100 * (supply_pressure_kpa - cylinder_pressure_kpa) / supply_pressure_kpa",
        source=NO_SOURCE,
    )
    restrictor_ratio: Number = result(
        "absolute pressure after over before the restrictor, not below 0.528, where flow is choked",
        decimals=3,
        formula=_ratio(CYLINDER, SUPPLY),
        source=NOZZLE,
    )
    hole_ratio: Number = result(
        "absolute pressure after over before the leak, not below 0.528, where flow is choked",
        decimals=3,
        formula=_ratio("air_pressure_here_kpa_abs", CYLINDER),
        source=NOZZLE,
    )
    leak_area_mm2: Number = result(
        "area of one hole that leaks as much, flow coefficients taken as equal; about ± 30 %",
        kind=kinds.AREA,
        decimals=3,
        formula=f"pi / 4 * restrictor_mm**2 * {SUPPLY} / {CYLINDER}"
        f" * sqrt({_squared_flow('restrictor_ratio')} / {_squared_flow('hole_ratio')})",
        source=NOZZLE,
    )
    leak_hole_diameter_mm: Number = result(
        "diameter of that hole, were it round",
        kind=kinds.LENGTH,
        decimals=2,
        formula="sqrt(4 * leak_area_mm2 / pi)",
        source="plane geometry",
    )
    leak_area_per_100_mm_bore_mm2: Number | None = result(
        "leak area for each 100 mm of bore: fairer than per cent between engines; no limit is "
        "commonly known",
        kind=kinds.AREA,
        decimals=3,
        formula="100 * leak_area_mm2 / bore_mm",
        source=NO_SOURCE,
        default=None,
    )
    other_leak_pct: Number | None = result(
        "what the same hole reads on the other tester",
        kind=kinds.PERCENT,
        decimals=1,
        basis="the pressure at which as much air leaves by the hole as the other restrictor lets "
        "in, solved step by step",
        source=NOZZLE,
        default=None,
    )
    other_leak_low_pct: Number | None = result(
        "the same with the coefficient of the hole less by its uncertainty",
        kind=kinds.PERCENT,
        decimals=1,
        basis="as the reading on the other tester, the area less by that share",
        source=NOZZLE,
        default=None,
    )
    other_leak_high_pct: Number | None = result(
        "the same with the coefficient of the hole more by its uncertainty",
        kind=kinds.PERCENT,
        decimals=1,
        basis="as the reading on the other tester, the area more by that share",
        source=NOZZLE,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Turn the reading into a hole, and the hole into the other tester's reading."""
    supply, cylinder = inputs.supply_pressure_kpa, inputs.cylinder_pressure_kpa
    air = condition.air_here_kpa(inputs)
    area = leak.leak_area_mm2(supply, cylinder, inputs.restrictor_mm, air)
    low, middle, high = _on_other(inputs, area, air)
    return Outputs(
        air_pressure_here_kpa_abs=air,
        leak_pct=leak.leak_percent(supply, cylinder),
        restrictor_ratio=leak.nozzle_ratio(cylinder + air, supply + air),
        hole_ratio=leak.nozzle_ratio(air, cylinder + air),
        leak_area_mm2=area,
        leak_hole_diameter_mm=leak.hole_diameter_mm(area),
        leak_area_per_100_mm_bore_mm2=(
            None if inputs.bore_mm is None else 100 * area / inputs.bore_mm
        ),
        other_leak_pct=middle,
        other_leak_low_pct=low,
        other_leak_high_pct=high,
    )


def _on_other(
    inputs: Inputs, area: Number, air: Number
) -> tuple[Number | None, Number | None, Number | None]:
    """Return the other tester's reading with the coefficient low, as it is, and high."""
    restrictor, supply = inputs.other_restrictor_mm, inputs.other_supply_pressure_kpa
    if restrictor is None and supply is None:
        return None, None, None
    restrictor = inputs.restrictor_mm if restrictor is None else restrictor
    supply = inputs.supply_pressure_kpa if supply is None else supply
    share = inputs.coefficient_uncertainty_pct / 100
    # Any of these may be a column by itself: a row of each hole for every row of the tester.
    hole, share, restrictor, supply, air = np.broadcast_arrays(area, share, restrictor, supply, air)
    # The three together: the solution's steps cost the same for one hole as for many.
    holes = np.stack([hole * (1 - share), hole, hole * (1 + share)])
    low, middle, high = np.asarray(leak.leak_percent_on_tester(holes, restrictor, supply, air))
    return low, middle, high


CALCULATION = Calculation(
    name="leak-area",
    number="C12",
    stage="engine_tests",
    title="Leak area",
    summary=cited(
        "The hole behind a leak-down reading, and what it reads on a tester with another "
        "restrictor or supply. For comparison, never a verdict: ring gaps are not nozzles. "
        "Aviation practice fixes the restrictor instead, about 1.0 mm for bores up to about "
        "127 mm: {ac_43_13_1}."
    ),
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    rules=(
        *condition.AIR_PRESSURE_RULES,
        Rule(
            ("cylinder_pressure_kpa", "supply_pressure_kpa"),
            lambda i: beyond(i.cylinder_pressure_kpa + LEAST_KPA, i.supply_pressure_kpa),
            "no pressure is lost that gauges could tell: there is no hole to size",
            "a cylinder 1 kPa or more below its supply; gauge pressures of one zero",
        ),
        Rule(
            ("cylinder_pressure_kpa",),
            lambda i: beyond(LEAST_KPA, i.cylinder_pressure_kpa),
            "the cylinder holds no pressure: the hole is larger than this tester can tell",
            "1 kPa or more; check first that the piston is at firing top dead centre",
        ),
    ),
    notices=(
        *condition.AIR_PRESSURE_NOTICES,
        Notice(
            "for_comparison_only",
            "leak_area_mm2",
            lambda _, __: True,
            "converted figures carry about ± 30 %, as ring gaps and seats are no nozzles: compare, "
            "do not judge; a dirty restrictor, a long hose or a supply read without flow adds to "
            "it",
        ),
    ),
    cautions=("leak_down",),
    figures=(Figure("coefficient_uncertainty_pct", ("other_leak_low_pct", "other_leak_high_pct")),),
)
