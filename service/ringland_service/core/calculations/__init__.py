"""All calculations, in order: the one place to register."""

from ringland_service.core.calculations.assembly import (
    estimate,
    fastener_order,
    premix,
    ring_clocking,
    run_in,
    torque_steps,
)
from ringland_service.core.calculations.cylinder import (
    bore_survey,
    hot_clearance,
    pin_fits,
    piston_clearance,
    ring_gap,
    ring_side_clearance,
    rod_play,
)
from ringland_service.core.calculations.decision import (
    bore_order,
    clean_up,
    crosshatch,
    cylinder_decision,
    liner_wall,
    order_card,
    order_card_check,
    oversize_choice,
    sleeve_fit,
)
from ringland_service.core.calculations.engine_tests import (
    compression_level,
    compression_test,
    cranking_pressure,
    cylinder_spread,
    gauge_hose_loss,
    pressure_build_up,
    wet_gain,
)
from ringland_service.core.calculations.general import air_pressure, convert, length_at_20c, verdict
from ringland_service.core.calculations.geometry import (
    compression_ratio,
    displacement,
    dynamic_ratio,
    overbore_ratio,
    port_timing,
)
from ringland_service.core.calculations.job import job_card
from ringland_service.core.declare import Calculation, Composite, Declared

CALCULATIONS: tuple[Declared, ...] = (
    convert.CALCULATION,
    air_pressure.CALCULATION,
    length_at_20c.CALCULATION,
    verdict.CALCULATION,
    compression_test.CALCULATION,
    compression_level.CALCULATION,
    cylinder_spread.CALCULATION,
    wet_gain.CALCULATION,
    pressure_build_up.CALCULATION,
    gauge_hose_loss.CALCULATION,
    cranking_pressure.CALCULATION,
    displacement.CALCULATION,
    compression_ratio.CALCULATION,
    overbore_ratio.CALCULATION,
    dynamic_ratio.CALCULATION,
    port_timing.CALCULATION,
    bore_survey.CALCULATION,
    piston_clearance.CALCULATION,
    hot_clearance.CALCULATION,
    ring_gap.CALCULATION,
    ring_side_clearance.CALCULATION,
    pin_fits.CALCULATION,
    rod_play.CALCULATION,
    clean_up.CALCULATION,
    oversize_choice.CALCULATION,
    liner_wall.CALCULATION,
    bore_order.CALCULATION,
    crosshatch.CALCULATION,
    sleeve_fit.CALCULATION,
    cylinder_decision.CALCULATION,
    order_card.CALCULATION,
    order_card_check.CALCULATION,
    torque_steps.CALCULATION,
    fastener_order.CALCULATION,
    ring_clocking.CALCULATION,
    premix.CALCULATION,
    run_in.CALCULATION,
    estimate.CALCULATION,
    job_card.CALCULATION,
)
BY_NAME: dict[str, Declared] = {c.name: c for c in CALCULATIONS}
# Calculations that are asked only as a part of another answer: they have no route of their own.
PARTS: dict[str, Calculation] = {
    step.calculation.name: step.calculation
    for c in CALCULATIONS
    if isinstance(c, Composite)
    for step in c.steps
    if step.calculation.name not in BY_NAME
}
EVERY: tuple[Declared, ...] = (*CALCULATIONS, *PARTS.values())
