"""C09: what a gauge loses to the room between the cylinder and its check valve."""

from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.declare import (
    Calculation,
    Check,
    Figure,
    Notice,
    kinds,
    number,
    quantity,
    record,
    result,
    same,
    usual,
)
from ringland_service.core.engines import condition
from ringland_service.core.formulas import cranking, geometry
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import cited

HEYWOOD = cited("{heywood_polytropic}")


@record
class Inputs:
    """The cylinder as it compresses, and the room that the gauge adds."""

    effective_volume_cc: Number = quantity(
        quantities.CYLINDER_VOLUME, "volume swept after the intake valve or port has closed"
    )
    clearance_cc: Number = quantity(
        quantities.CLEARANCE_VOLUME, "volume above the piston at top dead centre"
    )
    hose_volume_cc: Number = quantity(
        quantities.HOSE_VOLUME,
        "room between the cylinder and the gauge's check valve: hose and bore of the adaptor",
    )
    n: Number = number(
        "compression exponent",
        low=1.0,
        high=1.4,
        warn=(1.20, 1.30),
        example=1.25,
        default=usual(1.25),
    )
    altitude_m: Number | None = quantity(quantities.ALTITUDE, "altitude of the place", default=None)
    air_pressure_kpa_abs: Number | None = quantity(
        quantities.AIR_PRESSURE, "air pressure on the spot, absolute", default=None
    )
    weather_report_kpa_abs: Number | None = same(air_pressure.Inputs, "weather_report_kpa_abs")


@record
class Outputs:
    """What the cylinder makes, what the gauge shows, and the error between them."""

    ratio: Number = result(
        "dynamic compression ratio of the cylinder",
        digits=3,
        formula="(effective_volume_cc + clearance_cc) / clearance_cc",
        source=HEYWOOD,
    )
    ratio_with_hose: Number = result(
        "ratio with the hose's room added to both ends of the stroke",
        digits=3,
        formula="(effective_volume_cc + clearance_cc + hose_volume_cc)"
        " / (clearance_cc + hose_volume_cc)",
        source=HEYWOOD,
    )
    air_pressure_here_kpa_abs: Number = result(
        "air pressure that was used, absolute",
        kind=kinds.PRESSURE_ABSOLUTE,
        digits=2,
        basis="as read on the spot, else from weather report and altitude, else that of sea level",
        source=cited("{iso_2533}"),
    )
    true_kpa: Number = result(
        "pressure without the hose, gauge",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="air_pressure_here_kpa_abs * (ratio**n - 1)",
        source=HEYWOOD,
    )
    shown_kpa: Number = result(
        "pressure that the gauge shows",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="air_pressure_here_kpa_abs * (ratio_with_hose**n - 1)",
        source=HEYWOOD,
    )
    reading_error_pct: Number = result(
        "error of the reading; negative: the gauge reads low",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * ((ratio_with_hose**n - 1) / (ratio**n - 1) - 1)",
        source=HEYWOOD,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out both pressures and the error."""
    effective, clearance, hose = (
        inputs.effective_volume_cc,
        inputs.clearance_cc,
        inputs.hose_volume_cc,
    )
    air = condition.air_here_kpa(inputs)
    ratio = geometry.compression_ratio(effective, clearance)
    with_hose = cranking.ratio_with_hose(effective, clearance, hose)
    return Outputs(
        ratio=ratio,
        ratio_with_hose=with_hose,
        air_pressure_here_kpa_abs=air,
        true_kpa=cranking.cranking_pressure_kpa(ratio, air, inputs.n),
        shown_kpa=cranking.cranking_pressure_kpa(with_hose, air, inputs.n),
        reading_error_pct=cranking.hose_error_percent(effective, clearance, hose, inputs.n),
    )


def _unfit(_: Inputs, __: Outputs) -> Limit:
    return LIMITS["gauge_hose.unfit"].limit()


def _watch(_: Inputs, outputs: Outputs) -> object:
    return outputs.reading_error_pct < (LIMITS["gauge_hose.watch"].low or 0.0)


CALCULATION = Calculation(
    name="gauge-hose-loss",
    number="C09",
    stage="engine_tests",
    title="Loss of reading in the gauge's hose",
    summary="What a compression gauge loses to the room in its hose and adaptor.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    rules=condition.AIR_PRESSURE_RULES,
    checks=(
        Check(
            "gauge_hose_error",
            "reading_error_pct",
            "error of the gauge's hose on this cylinder",
            "a gauge with its check valve at the plug end, or a shorter hose",
            _unfit,
        ),
    ),
    notices=(
        Notice(
            "hose_error",
            "reading_error_pct",
            _watch,
            "the hose takes more than 3 % off the reading: correct it, or use a gauge with its "
            "check valve at the plug end",
            common_practice=True,
        ),
        *condition.AIR_PRESSURE_NOTICES,
    ),
    cautions=("compression_test",),
    figures=(Figure("n"),),
)
