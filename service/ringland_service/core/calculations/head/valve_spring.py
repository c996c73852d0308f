"""C34: load, rate, coil bind, free length and squareness of a valve spring."""

from ringland_service.core.calculations.head import _spring_checks as judged
from ringland_service.core.calculations.head._spring_fields import Inputs, Outputs
from ringland_service.core.declare import Calculation
from ringland_service.core.formulas import springs
from ringland_service.core.numbers import Number


def compute(inputs: Inputs) -> Outputs:
    """Work out loads, room at full lift, length lost and lean, and the cross-check by wire."""
    i = inputs
    lost = None
    if i.free_length_mm is not None and i.free_length_new_mm is not None:
        lost = springs.loss_percent(i.free_length_new_mm, i.free_length_mm)
    lean = None
    if i.lean_mm is not None and i.free_length_mm is not None:
        lean = springs.lean_angle_deg(i.lean_mm, i.free_length_mm)
    open_mm = _open_mm(i)
    return Outputs(
        open_length_mm=open_mm,
        coil_bind_margin_mm=None
        if open_mm is None or i.coil_bind_length_mm is None
        else springs.coil_bind_margin_mm(open_mm, i.coil_bind_length_mm),
        free_length_loss_pct=lost,
        lean_angle_deg=lean,
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
    if i.wire_mm is None or i.mean_coil_diameter_mm is None:
        return {}
    found = {"spring_index": i.mean_coil_diameter_mm / i.wire_mm}
    if i.active_coils is not None and i.shear_modulus_mpa is not None:
        found["rate_from_wire_n_per_mm"] = springs.rate_from_wire_n_per_mm(
            i.shear_modulus_mpa, i.wire_mm, i.mean_coil_diameter_mm, i.active_coils
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
    any_of=(
        (
            ("load_1_n", "length_1_mm", "load_2_n", "length_2_mm"),
            ("installed_height_mm", "valve_lift_mm", "coil_bind_length_mm"),
            ("free_length_mm", "free_length_new_mm"),
            ("free_length_mm", "lean_mm"),
            ("free_length_mm",),
            ("wire_mm", "mean_coil_diameter_mm", "active_coils", "shear_modulus_mpa"),
        ),
    ),
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "valve_springs"),
)
