"""C07: what oil in the cylinder adds to the reading, less what its volume alone adds."""

from ringland_service.core.declare import (
    Calculation,
    Figure,
    Notice,
    Rule,
    choice,
    flag,
    kinds,
    number,
    quantity,
    record,
    result,
    usual,
)
from ringland_service.core.engines import condition
from ringland_service.core.formulas import cranking, geometry, readings
from ringland_service.core.metrology.conformity import at_most
from ringland_service.core.metrology.limits import GRADES
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

HEYWOOD = cited("{heywood_polytropic}")
# Shares of the clearance volume: refused from the one, usual between the others.
LOCKING_SHARE = 0.25
USUAL_SHARES = (0.03, 0.10)


@record
class Inputs:
    """Readings without and with oil, and what is needed to know the oil's own share."""

    dry_kpa: Number = quantity(
        quantities.SETTLED_COMPRESSION, "reading before the oil, gauge", example=660.0
    )
    wet_kpa: Number = quantity(
        quantities.SETTLED_COMPRESSION,
        "reading with the oil in, gauge, same gauge and starter",
        example=930.0,
    )
    oil_ml: Number | None = quantity(
        quantities.OIL_DOSE, "oil put in, measured by syringe", default=None
    )
    clearance_cc: Number | None = quantity(
        quantities.CLEARANCE_VOLUME, "volume above the piston at top dead centre", default=None
    )
    effective_volume_cc: Number | None = quantity(
        quantities.CYLINDER_VOLUME,
        "volume swept after the intake valve or port has closed",
        default=None,
    )
    n: Number = number(
        "compression exponent",
        low=1.0,
        high=1.4,
        warn=(1.20, 1.30),
        example=1.25,
        default=usual(1.25),
    )
    expected_kpa: Number | None = quantity(
        quantities.EXPECTED, "pressure expected of a sound cylinder here, gauge", default=None
    )
    cycle: str | None = choice("cycle", condition.CYCLE, example="four_stroke", default=None)
    cylinder_upright: bool | None = flag("the cylinder stands upright", default=None)


@record
class Outputs:
    """The gain, and how much of it the rings are to blame for."""

    gain_pct: Number = result(
        "gain of the reading with oil",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * (wet_kpa / dry_kpa - 1)",
        source=COMMON,
    )
    dry_ratio: Number | None = result(
        "dynamic or trapped ratio without oil",
        digits=3,
        formula="(effective_volume_cc + clearance_cc) / clearance_cc",
        source="volumes",
        default=None,
    )
    ratio_with_oil: Number | None = result(
        "the ratio with all of the oil above the piston",
        digits=3,
        formula="(effective_volume_cc + clearance_cc - oil_ml) / (clearance_cc - oil_ml)",
        source="volumes",
        default=None,
    )
    volume_only_gain_pct: Number | None = result(
        "gain that the oil's volume gives on sound rings; upper bound, as some oil runs off",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * ((ratio_with_oil**n - 1) / (dry_ratio**n - 1) - 1)",
        source=HEYWOOD,
        default=None,
    )
    excess_gain_pct: Number | None = result(
        "gain beyond what the oil's volume gives",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * (wet_kpa / (dry_kpa * (1 + volume_only_gain_pct / 100)) - 1)",
        source=COMMON,
        default=None,
    )
    finding: str | None = result(
        "what the excess says of the rings; a big gap or a broken ring does not gain",
        basis="steps of the gain beyond the oil's volume",
        source=COMMON,
        common_practice=True,
        choices=GRADES["wet_gain"].choices,
        default=None,
    )
    recommended_oil_ml: Number | None = result(
        "dose for this cylinder: a tenth of its clearance volume, 0.5 to 5 mL",
        kind=kinds.LIQUID,
        digits=1,
        formula="min(max(0.1 * clearance_cc, 0.5), 5)",
        source=COMMON,
        common_practice=True,
        default=None,
    )
    wet_over_expected: Number | None = result(
        "reading with oil over the expected pressure",
        digits=3,
        formula="wet_kpa / expected_kpa",
        source=COMMON,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Compare the readings; take the oil's own share off where its volume is known."""
    expected, clearance = inputs.expected_kpa, inputs.clearance_cc
    with_oil, volume_only = _oil_share(inputs)
    excess = None
    if volume_only is not None:
        excess = cranking.excess_gain_percent(inputs.dry_kpa, inputs.wet_kpa, volume_only)
    return Outputs(
        gain_pct=cranking.gain_percent(inputs.dry_kpa, inputs.wet_kpa),
        dry_ratio=_dry_ratio(inputs),
        ratio_with_oil=with_oil,
        volume_only_gain_pct=volume_only,
        excess_gain_pct=excess,
        finding=None if excess is None else GRADES["wet_gain"].word(excess),
        recommended_oil_ml=None if clearance is None else cranking.recommended_oil_ml(clearance),
        wet_over_expected=(
            None if expected is None else readings.level_ratio(inputs.wet_kpa, expected)
        ),
    )


def _dry_ratio(inputs: Inputs) -> Number | None:
    if inputs.effective_volume_cc is None or inputs.clearance_cc is None:
        return None
    return geometry.compression_ratio(inputs.effective_volume_cc, inputs.clearance_cc)


def _oil_share(inputs: Inputs) -> tuple[Number | None, Number | None]:
    """Return the ratio with oil, and the gain from the oil's volume alone [%]."""
    effective, clearance, oil = inputs.effective_volume_cc, inputs.clearance_cc, inputs.oil_ml
    if effective is None or clearance is None or oil is None:
        return None, None
    return (
        cranking.ratio_with_oil(effective, clearance, oil),
        cranking.volume_only_gain_percent(effective, clearance, oil, inputs.n),
    )


def _unusual_dose(i: Inputs, _: Outputs) -> object:
    if i.oil_ml is None or i.clearance_cc is None:
        return False
    share = i.oil_ml / i.clearance_cc
    low, high = (limit + sign * 1e-9 for limit, sign in zip(USUAL_SHARES, (-1, 1), strict=True))
    return (share < low) | (share > high)


def _no_safe_dose(i: Inputs, o: Outputs) -> object:
    if i.clearance_cc is None or o.recommended_oil_ml is None:
        return False
    return o.recommended_oil_ml >= LOCKING_SHARE * i.clearance_cc


def _still_low(_: Inputs, o: Outputs) -> object:
    """Return whether the rings gain and the cylinder is low all the same.

    What the oil's volume adds is no gain of the rings, so the raw gain says nothing here.
    """
    if o.wet_over_expected is None or o.excess_gain_pct is None:
        return False
    level = GRADES["compression_level"].word(o.wet_over_expected)
    finding = GRADES["wet_gain"].word(o.excess_gain_pct)
    return (finding != "rings_not_shown") & ((level == "low") | (level == "very_low"))


CALCULATION = Calculation(
    name="wet-gain",
    number="C07",
    stage="engine_tests",
    title="Wet-test gain",
    summary="What oil in the cylinder adds to the compression reading, less what its volume alone "
    "adds: rings or valves.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    rules=(
        Rule(
            ("dry_kpa",),
            lambda i: i.dry_kpa <= 0,
            "no gain can be taken on a reading of nothing",
            "a dry reading above zero; a cylinder that reads nothing wants a leak-down",
        ),
        Rule(
            ("oil_ml", "clearance_cc"),
            lambda i: at_most(LOCKING_SHARE * i.clearance_cc, i.oil_ml),
            "that much oil may lock the engine and bend its rod",
            "under a quarter of the clearance volume; usual is a tenth",
        ),
    ),
    notices=(
        Notice(
            "oil_dose_unusual",
            "oil_ml",
            _unusual_dose,
            "oil outside the usual 0.03 to 0.10 of the clearance volume: too little does not seal, "
            "too much raises the reading by itself",
        ),
        Notice(
            "oil_not_measured",
            "oil_ml",
            lambda _, o: o.excess_gain_pct is None,
            "how much of the gain is the oil's own volume cannot be said without the measured "
            "oil, the clearance volume and the effective volume; a squirt may be 14 % or more",
        ),
        Notice(
            "chamber_too_small",
            "clearance_cc",
            _no_safe_dose,
            "the least dose that spreads is a quarter of this chamber or more and may lock the "
            "engine: no wet test here, do a leak-down",
        ),
        Notice(
            "second_leak",
            "wet_over_expected",
            _still_low,
            "it gains beyond the oil's own volume and is still low: the oil seals the rings, so a "
            "second leak is there, a valve or the gasket",
            common_practice=True,
        ),
        Notice(
            "two_stroke_weak_test",
            "cycle",
            lambda i, _: i.cycle == "two_stroke",
            "on a two-stroke the oil leaves by the ports: the test is weak",
        ),
        Notice(
            "cylinder_not_upright",
            "cylinder_upright",
            lambda i, _: i.cylinder_upright is False,
            "in a horizontal or inverted cylinder the oil does not spread round the ring: a small "
            "gain says little",
        ),
        Notice(
            "wet_below_dry",
            "wet_kpa",
            lambda i, _: i.wet_kpa < i.dry_kpa,
            "the wet reading is below the dry one: read both again, with the battery charged",
        ),
    ),
    cautions=("wet_test", "compression_test"),
    figures=(Figure("n"),),
)
