"""C10: the cranking pressure that a sound cylinder should read."""

from ringland_service.core.calculations.general import air_pressure
from ringland_service.core.calculations.geometry.rod import ROD_RULES
from ringland_service.core.declare import (
    Calculation,
    Figure,
    Notice,
    Rule,
    kinds,
    number,
    quantity,
    record,
    result,
    same,
    usual,
)
from ringland_service.core.engines import condition
from ringland_service.core.formulas import crank, cranking, geometry
from ringland_service.core.formulas.elementary import minimum
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import cited

HEYWOOD = cited("{heywood_polytropic}")
USUAL_N = (1.20, 1.30)


@record
class Inputs:
    """The ratio that compression starts from, the air pressure, and what lets pressure off."""

    ratio: Number = number(
        "dynamic ratio (closing angle at 0.1 to 0.3 mm of lift) or trapped ratio of a two-stroke",
        low=2.0,
        high=18.0,
        warn=(4.5, 12.0),
        example=7.51384,
    )
    altitude_m: Number | None = quantity(
        quantities.ALTITUDE, "altitude of the place (geopotential)", default=None
    )
    air_pressure_kpa_abs: Number | None = quantity(
        quantities.AIR_PRESSURE, "air pressure on the spot, absolute", default=None
    )
    weather_report_kpa_abs: Number | None = same(air_pressure.Inputs, "weather_report_kpa_abs")
    n_low: Number = number(
        "compression exponent of a slow, cold or leaky engine",
        low=1.0,
        high=1.4,
        warn=USUAL_N,
        example=1.2,
        default=usual(1.2),
    )
    n_mid: Number = number(
        "compression exponent of a usual engine on the starter",
        low=1.0,
        high=1.4,
        warn=USUAL_N,
        example=1.25,
        default=usual(1.25),
    )
    n_high: Number = number(
        "compression exponent of a fast, warm and tight engine",
        low=1.0,
        high=1.4,
        warn=USUAL_N,
        example=1.3,
        default=usual(1.3),
    )
    throttle_closed_manifold_kpa_abs: Number | None = quantity(
        quantities.MANIFOLD, "intake pressure with the throttle closed, absolute", default=None
    )
    decompressor_closes_deg: Number | None = quantity(
        quantities.DECOMPRESSOR_ANGLE,
        "decompressor closing after bottom dead centre, crank; a manual one is shut for the test",
        default=None,
    )
    bore_mm: Number | None = quantity(
        lengths.BORE, "cylinder bore, for the decompressor", default=None
    )
    stroke_mm: Number | None = quantity(
        lengths.STROKE, "stroke, for the decompressor", default=None
    )
    rod_mm: Number | None = quantity(
        lengths.ROD, "rod, centre to centre, for the decompressor", default=None
    )
    clearance_cc: Number | None = quantity(
        quantities.CLEARANCE_VOLUME,
        "volume above the piston at top dead centre, for the decompressor",
        default=None,
    )


@record
class Outputs:
    """Expected cranking pressures, gauge, on the spot: nothing is to be corrected again."""

    air_pressure_here_kpa_abs: Number = result(
        "air pressure that was used, absolute",
        kind=kinds.PRESSURE_ABSOLUTE,
        digits=2,
        basis="as read on the spot, else the weather report or the standard atmosphere at the "
        "altitude, else 101.325",
        source=cited("{iso_2533}"),
    )
    low_kpa: Number = result(
        "expected pressure, low, gauge, throttle open",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="air_pressure_here_kpa_abs * ratio**n_low - air_pressure_here_kpa_abs",
        source=HEYWOOD,
    )
    mid_kpa: Number = result(
        "expected pressure, middle, gauge, throttle open",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="air_pressure_here_kpa_abs * ratio**n_mid - air_pressure_here_kpa_abs",
        source=HEYWOOD,
    )
    high_kpa: Number = result(
        "expected pressure, high, gauge, throttle open",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="air_pressure_here_kpa_abs * ratio**n_high - air_pressure_here_kpa_abs",
        source=HEYWOOD,
    )
    throttle_closed_mid_kpa: Number | None = result(
        "middle pressure that the same cylinder reads with the throttle closed, gauge",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="throttle_closed_manifold_kpa_abs * ratio**n_mid - air_pressure_here_kpa_abs",
        source=HEYWOOD,
        default=None,
    )
    decompressor_ratio: Number | None = result(
        "ratio left once the decompressor has closed, all pressure before that lost",
        digits=3,
        formula="1 + pi/4 * bore_mm**2 * (stroke_mm/2 * (1 + cosd(decompressor_closes_deg)) "
        "+ rod_mm - sqrt(rod_mm**2 - (stroke_mm/2 * sind(decompressor_closes_deg))**2)) "
        "/ 1000 / clearance_cc",
        source="slider-crank, plane geometry",
        default=None,
    )
    decompressor_mid_kpa: Number | None = result(
        "lower bound of the middle pressure with the decompressor at work, gauge; the true "
        "reading lies between it and the middle pressure",
        kind=kinds.PRESSURE_GAUGE,
        digits=0,
        formula="air_pressure_here_kpa_abs * min(decompressor_ratio, ratio)**n_mid "
        "- air_pressure_here_kpa_abs",
        source=HEYWOOD,
        default=None,
    )


DECOMPRESSOR_SIZES = ("bore_mm", "stroke_mm", "rod_mm", "clearance_cc")


def compute(inputs: Inputs) -> Outputs:
    """Compress the air of the spot by the ratio, at the three exponents."""
    air = _air_kpa(inputs)
    manifold = inputs.throttle_closed_manifold_kpa_abs
    closed = None
    if manifold is not None:
        closed = cranking.cranking_pressure_kpa(inputs.ratio, air, inputs.n_mid, manifold)
    left = _decompressor_ratio(inputs)
    after_decompressor = None
    if left is not None:
        after_decompressor = cranking.cranking_pressure_kpa(
            minimum(left, inputs.ratio), air, inputs.n_mid
        )
    return Outputs(
        air_pressure_here_kpa_abs=air,
        low_kpa=cranking.cranking_pressure_kpa(inputs.ratio, air, inputs.n_low),
        mid_kpa=cranking.cranking_pressure_kpa(inputs.ratio, air, inputs.n_mid),
        high_kpa=cranking.cranking_pressure_kpa(inputs.ratio, air, inputs.n_high),
        throttle_closed_mid_kpa=closed,
        decompressor_ratio=left,
        decompressor_mid_kpa=after_decompressor,
    )


def _air_kpa(inputs: Inputs) -> Number:
    return condition.air_here_kpa(inputs)


def _decompressor_ratio(inputs: Inputs) -> Number | None:
    """Return the ratio left after the decompressor has closed, where all its sizes are known."""
    closes = inputs.decompressor_closes_deg
    bore, stroke, rod = inputs.bore_mm, inputs.stroke_mm, inputs.rod_mm
    clearance = inputs.clearance_cc
    if closes is None or bore is None or stroke is None or rod is None or clearance is None:
        return None
    effective = crank.effective_stroke_mm(stroke, rod, closes)
    return geometry.compression_ratio(geometry.swept_volume_cc(bore, effective), clearance)


def _sizes_missing(inputs: Inputs) -> bool:
    return any(getattr(inputs, name) is None for name in DECOMPRESSOR_SIZES)


def _closes_early(inputs: Inputs, outputs: Outputs) -> object:
    left = outputs.decompressor_ratio
    return False if left is None else left > inputs.ratio


CALCULATION = Calculation(
    name="cranking-pressure",
    number="C10",
    stage="engine_tests",
    title="Expected cranking pressure",
    summary="What a sound cylinder reads on the starter here, with the throttle open or closed "
    "and with a decompressor at work. The maker's figure wins. Supercharged engines crank "
    "unboosted; side-valve engines go by their own ratio and closing angle.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    figures=(Figure("n_low"), Figure("n_mid"), Figure("n_high")),
    rules=(
        Rule(
            ("n_low", "n_mid", "n_high"),
            lambda i: (i.n_low > i.n_mid) | (i.n_mid > i.n_high),
            "the exponents are not in order",
            "n_low, n_mid, n_high rising; usual are 1.20, 1.25, 1.30",
        ),
        Rule(
            ("throttle_closed_manifold_kpa_abs",),
            lambda i: beyond(i.throttle_closed_manifold_kpa_abs, _air_kpa(i)),
            "the intake pressure is above the air pressure",
            "absolute pressure behind the closed throttle, up to the air pressure",
        ),
        Rule(
            ("decompressor_closes_deg",),
            _sizes_missing,
            "the closing angle of a decompressor says nothing without the engine's sizes",
            "give bore, stroke, rod and clearance too",
        ),
        *ROD_RULES,
        *condition.AIR_PRESSURE_RULES,
    ),
    notices=(
        *condition.AIR_PRESSURE_NOTICES,
        Notice(
            "decompressor_closes_first",
            "decompressor_closes_deg",
            _closes_early,
            "the decompressor closes before the ratio's own valve or port does: it takes nothing "
            "away",
        ),
        Notice(
            "nothing_to_read",
            "throttle_closed_mid_kpa",
            lambda _, o: (
                False if o.throttle_closed_mid_kpa is None else o.throttle_closed_mid_kpa < 0
            ),
            "with that little air behind the throttle the cylinder does not come above air "
            "pressure: a gauge shows nothing",
        ),
    ),
)
