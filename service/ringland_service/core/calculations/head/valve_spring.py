"""C34: load, rate, coil bind, free length and squareness of a valve spring."""

from ringland_service.core.calculations.head import _spring_checks as judged
from ringland_service.core.declare import Calculation, kinds, number, quantity, record, result
from ringland_service.core.formulas import springs
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import valves as sizes
from ringland_service.core.tables.sources import cited

HOOKE = "Hooke's law"
DIFFERENCE = "difference of two lengths"


@record
class Inputs:
    """One spring; nested springs are measured one by one."""

    load_1_n: Number | None = quantity(
        sizes.SPRING_LOAD, "smaller load, near the installed height", default=None
    )
    length_1_mm: Number | None = quantity(
        sizes.SPRING_LENGTH, "length under the smaller load", default=None
    )
    load_2_n: Number | None = quantity(
        sizes.SPRING_LOAD, "larger load, near full lift", example=380.0, default=None
    )
    length_2_mm: Number | None = quantity(
        sizes.SPRING_LENGTH, "length under the larger load", example=25.0, default=None
    )
    installed_height_mm: Number | None = quantity(
        sizes.SPRING_LENGTH,
        "installed height, valve shut; it changes with sink and shims",
        default=None,
    )
    valve_lift_mm: Number | None = quantity(sizes.VALVE_LIFT, "full lift", default=None)
    coil_bind_length_mm: Number | None = quantity(
        sizes.SPRING_LENGTH, "length with all coils shut", example=23.1, default=None
    )
    free_length_mm: Number | None = quantity(
        sizes.SPRING_LENGTH, "free length", example=39.87, default=None
    )
    free_length_new_mm: Number | None = quantity(
        sizes.SPRING_LENGTH, "free length of a new spring", example=40.0, default=None
    )
    lean_mm: Number | None = quantity(
        sizes.SPRING_LEAN, "top coil off a square, the spring standing and turned", default=None
    )
    nominal_seat_load_n: Number | None = quantity(
        sizes.SPRING_LOAD,
        "the maker's load at the installed height",
        example=155.0,
        default=None,
    )
    wire_mm: Number | None = quantity(sizes.WIRE, "diameter of the wire", default=None)
    mean_coil_dia_mm: Number | None = quantity(
        sizes.COIL_DIAMETER, "mean diameter of the coils: outside less wire", default=None
    )
    active_coils: Number | None = number(
        "coils that move: not those that lie on the ends",
        low=1.5,
        high=15,
        example=5.0,
        default=None,
    )
    shear_modulus_mpa: Number | None = quantity(
        sizes.SHEAR_MODULUS, "shear modulus of the wire", default=None
    )


@record
class Outputs:
    """What the readings come to."""

    rate_n_per_mm: Number | None = result(
        "rate between the two loads",
        kind=kinds.SPRING_RATE,
        digits=2,
        formula="(load_2_n - load_1_n) / (length_1_mm - length_2_mm)",
        source=HOOKE,
        default=None,
    )
    seat_load_n: Number | None = result(
        "load at the installed height",
        kind=kinds.FORCE,
        digits=1,
        formula="load_1_n + rate_n_per_mm * (length_1_mm - installed_height_mm)",
        source=HOOKE,
        default=None,
    )
    seat_load_of_nominal_pct: Number | None = result(
        "load at the installed height, share of the nominal one",
        kind=kinds.PERCENT,
        digits=1,
        formula="100 * seat_load_n / nominal_seat_load_n",
        source="arithmetic",
        default=None,
    )
    open_length_mm: Number | None = result(
        "length at full lift",
        kind=kinds.LENGTH,
        digits=2,
        formula="installed_height_mm - valve_lift_mm",
        source=DIFFERENCE,
        default=None,
    )
    open_load_n: Number | None = result(
        "load at full lift",
        kind=kinds.FORCE,
        digits=1,
        formula="load_1_n + rate_n_per_mm * (length_1_mm - open_length_mm)",
        source=HOOKE,
        default=None,
    )
    coil_bind_margin_mm: Number | None = result(
        "room that all coils together keep at full lift",
        kind=kinds.LENGTH,
        digits=2,
        formula="open_length_mm - coil_bind_length_mm",
        source=DIFFERENCE,
        default=None,
    )
    free_length_implied_mm: Number | None = result(
        "free length that the two loads imply",
        kind=kinds.LENGTH,
        digits=2,
        formula="length_1_mm + load_1_n / rate_n_per_mm",
        source=HOOKE,
        default=None,
    )
    free_length_loss_pct: Number | None = result(
        "free length lost, share of the new one",
        kind=kinds.PERCENT,
        digits=2,
        formula="100 * (free_length_new_mm - free_length_mm) / free_length_new_mm",
        source="arithmetic",
        default=None,
    )
    lean_deg: Number | None = result(
        "lean of the spring",
        kind=kinds.ANGLE,
        digits=2,
        basis="angle whose tangent is lean / free_length",
        source="plane geometry",
        default=None,
    )
    spring_index: Number | None = result(
        "mean coil diameter over wire",
        digits=1,
        formula="mean_coil_dia_mm / wire_mm",
        source=cited("{en_13906_1}"),
        default=None,
    )
    rate_from_wire_n_per_mm: Number | None = result(
        "rate that the wire gives, as a cross-check",
        kind=kinds.SPRING_RATE,
        digits=2,
        formula="shear_modulus_mpa * wire_mm**4 / (8 * mean_coil_dia_mm**3 * active_coils)",
        source=cited("{en_13906_1}"),
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out loads, room at full lift, length lost and lean, and the cross-check by wire."""
    i = inputs
    lost = None
    if i.free_length_mm is not None and i.free_length_new_mm is not None:
        lost = springs.loss_percent(i.free_length_new_mm, i.free_length_mm)
    lean = None
    if i.lean_mm is not None and i.free_length_mm is not None:
        lean = springs.lean_deg(i.lean_mm, i.free_length_mm)
    open_mm = _open_mm(i)
    return Outputs(
        open_length_mm=open_mm,
        coil_bind_margin_mm=None
        if open_mm is None or i.coil_bind_length_mm is None
        else springs.coil_bind_margin_mm(open_mm, i.coil_bind_length_mm),
        free_length_loss_pct=lost,
        lean_deg=lean,
        **_of_loads(i, open_mm),
        **_of_wire(i),
    )


def _open_mm(i: Inputs) -> Number | None:
    if i.installed_height_mm is None or i.valve_lift_mm is None:
        return None
    return springs.open_length_mm(i.installed_height_mm, i.valve_lift_mm)


def _of_loads(i: Inputs, open_mm: Number | None) -> dict[str, Number]:
    load, length = i.load_1_n, i.length_1_mm
    if load is None or length is None or i.load_2_n is None or i.length_2_mm is None:
        return {}
    rate = springs.rate_n_per_mm(load, length, i.load_2_n, i.length_2_mm)
    found = {
        "rate_n_per_mm": rate,
        "free_length_implied_mm": springs.free_length_mm(load, length, rate),
    }
    if open_mm is not None:
        found["open_load_n"] = springs.load_n(load, length, rate, open_mm)
    if i.installed_height_mm is not None:
        seat = springs.load_n(load, length, rate, i.installed_height_mm)
        found["seat_load_n"] = seat
        if i.nominal_seat_load_n is not None:
            nominal = i.nominal_seat_load_n
            found["seat_load_of_nominal_pct"] = springs.share_percent(seat, nominal)
    return found


def _of_wire(i: Inputs) -> dict[str, Number]:
    if i.wire_mm is None or i.mean_coil_dia_mm is None:
        return {}
    found = {"spring_index": i.mean_coil_dia_mm / i.wire_mm}
    if i.active_coils is not None and i.shear_modulus_mpa is not None:
        found["rate_from_wire_n_per_mm"] = springs.rate_from_wire_n_per_mm(
            i.shear_modulus_mpa, i.wire_mm, i.mean_coil_dia_mm, i.active_coils
        )
    return found


CALCULATION = Calculation(
    name="valve-spring",
    number="C34",
    stage="head",
    title="Valve spring",
    summary="Rate, loads valve shut and open, room before coil bind, free length and lean of one "
    "valve spring, with the rate that its wire gives as a cross-check. Nested springs are measured "
    "one by one; a progressive spring goes in with its close coils to the head.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    one_of=(
        (
            ("load_1_n", "length_1_mm", "load_2_n", "length_2_mm"),
            ("installed_height_mm", "valve_lift_mm", "coil_bind_length_mm"),
            ("free_length_mm", "free_length_new_mm"),
            ("free_length_mm", "lean_mm"),
            ("free_length_mm",),
            ("wire_mm", "mean_coil_dia_mm", "active_coils", "shear_modulus_mpa"),
        ),
    ),
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "valve_springs"),
)
