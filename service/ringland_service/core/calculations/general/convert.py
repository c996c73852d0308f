"""C01: unit conversion, kind by kind; gauge and absolute pressure through the air pressure."""

from fractions import Fraction

from ringland_service.core.calculations.general._unlike_kinds import (
    insist_on_possible,
    taken_notices,
)
from ringland_service.core.declare import (
    Calculation,
    Notice,
    any_quantity,
    choice,
    kinds,
    quantity,
    record,
    result,
    unit_symbol,
)
from ringland_service.core.declare.fields import Quantified, UnitGiven
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.declare.significant import significant_digits
from ringland_service.core.errors import Contradiction
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import cited

SOURCE = cited("exact factors, {nist_sp_811}")
EXACT, ROUNDED = "exact", "rounded"
FACTORS = {
    EXACT: "the factor is a finite decimal: nothing is lost",
    ROUNDED: "the factor has no end: the number is right to the last digit of a float",
}


@record
class Inputs:
    """A quantity and the unit that it is wanted in."""

    value: Quantified = any_quantity("the quantity to convert", example=(165.0, "psig"))
    to: UnitGiven = unit_symbol("the unit wanted", example="kPa(g)")
    kind: str | None = choice(
        "kind of quantity, where the units leave it open (degC as a difference, say)",
        {name: name.replace("_", " ") for name in KINDS},
        example="pressure_gauge",
        default=None,
    )
    air_pressure_kpa_abs: float | None = quantity(
        quantities.AIR_PRESSURE,
        "air pressure on the spot, between gauge and absolute pressure",
        default=None,
    )


@record
class Outputs:
    """The quantity in the unit wanted."""

    converted: Quantified = result(
        "the quantity in the unit wanted",
        basis="value · factor of the unit given / factor of the unit wanted; gauge = absolute"
        " − air pressure; °C = (°F − 32) / 1.8",
        source=SOURCE,
    )
    factor: float | None = result(
        "units wanted in one unit given, where a factor alone converts",
        basis="ratio of the two units' exact factors",
        source=SOURCE,
        default=None,
    )
    exactness: str = result(
        "whether the factor is exact or rounded",
        choices=FACTORS,
        basis="a ratio of whole numbers ends as a decimal where 2 and 5 alone divide it",
        source=SOURCE,
    )
    significant_digits: int = result(
        "digits that the number given carries; as many are worth keeping",
        basis="digits of the number as given",
        source=SOURCE,
    )


def compute(inputs: Inputs) -> Outputs:
    """Convert; gauge to absolute and back by the air pressure.

    Raises
    ------
    Contradiction
        Gauge to absolute or back without the air pressure.
    OutOfBounds
        A temperature below absolute zero, a pressure below vacuum.
    """
    insist_on_possible("value", inputs.value, inputs.air_pressure_kpa_abs)
    given, wanted = inputs.value, inputs.to
    ratio = given.unit.ratio / wanted.ratio
    shifted = given.unit.offset != wanted.offset or given.kind is not wanted.kind
    canonical = given.value + _between_pressures(inputs)
    return Outputs(
        converted=Quantified(canonical, wanted, given.given),
        factor=None if shifted else float(ratio),
        exactness=EXACT if ends(ratio) and wanted.kind is not kinds.ANGLE else ROUNDED,
        significant_digits=significant_digits(given.given),
    )


def _between_pressures(inputs: Inputs) -> float:
    """Return what takes the value from its kind of pressure to the one wanted."""
    if inputs.value.kind is inputs.to.kind:
        return 0.0
    if inputs.air_pressure_kpa_abs is None:
        raise Contradiction(
            "air_pressure_kpa_abs",
            "gauge to absolute pressure, or back, takes the air pressure on the spot",
            "give air_pressure",
        )
    to_absolute = inputs.to.kind is kinds.PRESSURE_ABSOLUTE
    return inputs.air_pressure_kpa_abs if to_absolute else -inputs.air_pressure_kpa_abs


def moves_with(inputs: Inputs) -> dict[str, tuple[tuple[str, ...], ...]]:
    """Return what the converted quantity moves with: its value, and an air pressure in use."""
    air = () if inputs.value.kind is inputs.to.kind else (("air_pressure_kpa_abs",),)
    return {"converted": (("value", "value"), *air)}


def ends(ratio: Fraction) -> bool:
    """Return whether a ratio of whole numbers ends as a decimal."""
    rest = ratio.denominator
    for prime in (2, 5):
        while rest % prime == 0:
            rest //= prime
    return rest == 1


CALCULATION = Calculation(
    name="convert",
    number="C01",
    stage="general",
    title="Unit conversion",
    summary="A quantity in another unit of its kind; torque is not energy, gauge not absolute.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    notices=(
        *taken_notices("value", "to"),
        Notice(
            "air_pressure_unused",
            "air_pressure_kpa_abs",
            lambda i, o: i.air_pressure_kpa_abs is not None and i.value.kind is i.to.kind,
            "both units are of one kind: the conversion does not use the air pressure",
        ),
    ),
    one_for_one=moves_with,
    columns=False,
)
