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
from ringland_service.core.calculations.decision import choice_by_consequence, cylinder_decision
from ringland_service.core.calculations.diagnosis import diagnosis
from ringland_service.core.calculations.engine_tests import (
    charged_crank_torque,
    compression_level,
    compression_test,
    crankcase_leak,
    cranking_pressure,
    cylinder_spread,
    gauge_hose_loss,
    leak_area,
    leak_down,
    oil_use,
    pressure_build_up,
    wet_gain,
)
from ringland_service.core.calculations.general import air_pressure, convert, length_at_20c, verdict
from ringland_service.core.calculations.geometry import (
    compression_ratio,
    displacement,
    dynamic_ratio,
    overbore_ratio,
    piston_position,
    port_timing,
    squish,
    wanted_ratio,
)
from ringland_service.core.calculations.head import (
    cam_check,
    flatness,
    guide_clearance,
    lash_screw,
    lash_shim,
    valve_seat,
    valve_sink,
    valve_spring,
)
from ringland_service.core.calculations.job import job_card
from ringland_service.core.calculations.machining import (
    bore_order,
    clean_up,
    crosshatch,
    liner_wall,
    oversize_choice,
    sleeve_fit,
)
from ringland_service.core.calculations.order_card import order_card, order_card_check
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
    leak_down.CALCULATION,
    leak_area.CALCULATION,
    charged_crank_torque.CALCULATION,
    crankcase_leak.CALCULATION,
    oil_use.CALCULATION,
    diagnosis.CALCULATION,
    displacement.CALCULATION,
    compression_ratio.CALCULATION,
    overbore_ratio.CALCULATION,
    wanted_ratio.CALCULATION,
    piston_position.CALCULATION,
    dynamic_ratio.CALCULATION,
    port_timing.CALCULATION,
    squish.CALCULATION,
    bore_survey.CALCULATION,
    piston_clearance.CALCULATION,
    hot_clearance.CALCULATION,
    ring_gap.CALCULATION,
    ring_side_clearance.CALCULATION,
    pin_fits.CALCULATION,
    rod_play.CALCULATION,
    guide_clearance.CALCULATION,
    valve_seat.CALCULATION,
    valve_sink.CALCULATION,
    valve_spring.CALCULATION,
    lash_shim.CALCULATION,
    lash_screw.CALCULATION,
    flatness.CALCULATION,
    cam_check.CALCULATION,
    clean_up.CALCULATION,
    oversize_choice.CALCULATION,
    liner_wall.CALCULATION,
    bore_order.CALCULATION,
    crosshatch.CALCULATION,
    sleeve_fit.CALCULATION,
    cylinder_decision.CALCULATION,
    choice_by_consequence.CALCULATION,
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
