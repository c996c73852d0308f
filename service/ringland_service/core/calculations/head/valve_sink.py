"""C33: what a valve that sits deeper does to lash, spring and chamber."""

from ringland_service.core.calculations.head import _sink_checks as judged
from ringland_service.core.calculations.head._sink_fields import Inputs, Outputs
from ringland_service.core.declare import Calculation
from ringland_service.core.formulas import geometry, lash, springs
from ringland_service.core.numbers import Number


def compute(inputs: Inputs) -> Outputs:
    """Work out what the sink does to lash, spring and chamber."""
    earlier = inputs.sink_now_mm
    return Outputs(
        total_sink_mm=inputs.sink_cut_mm if earlier is None else inputs.sink_cut_mm + earlier,
        **_of_lash(inputs),
        **_of_spring(inputs),
        **_of_chamber(inputs),
    )


def _of_lash(i: Inputs) -> dict[str, Number]:
    before, ratio, wanted = i.lash_found_mm, i.ratio_lash_per_stem_rise, i.lash_target_mm
    if before is None or ratio is None:
        return {}
    after = lash.lash_after_sink_mm(before, i.sink_cut_mm, ratio)
    found = {"lash_after_mm": after}
    if i.lash_shim_mm is not None and wanted is not None:
        shim = lash.shim_for_lash_mm(i.lash_shim_mm, after, wanted, 1 / ratio)
        found["shim_needed_mm"] = shim
        if i.thinnest_shim_mm is not None:
            found["shim_room_left_mm"] = shim - i.thinnest_shim_mm
    return found


def _of_spring(i: Inputs) -> dict[str, Number]:
    load, rate = i.seat_load_nominal_n, i.spring_rate_n_per_mm
    if load is None or rate is None:
        return {}
    after = springs.load_n(load, 0.0, rate, i.sink_cut_mm)
    return {
        "seat_load_after_n": after,
        "seat_load_loss_pct": springs.loss_percent(load, after),
        "spring_shim_to_restore_mm": i.sink_cut_mm,
    }


def _of_chamber(i: Inputs) -> dict[str, Number]:
    found: dict[str, Number] = {}
    clearance, swept = i.clearance_cc, i.swept_cc
    if clearance is not None and swept is not None:
        found["ratio_before"] = geometry.compression_ratio(swept, clearance)
    if i.valve_head_diameter_mm is None or i.valves_cut is None:
        return found
    gain = geometry.disc_volume_cc(i.valve_head_diameter_mm, i.sink_cut_mm) * i.valves_cut
    found["chamber_gain_cc"] = gain
    if clearance is not None and swept is not None:
        found["ratio_after"] = geometry.compression_ratio(swept, clearance + gain)
    return found


CALCULATION = Calculation(
    name="valve-sink",
    number="C33",
    stage="head",
    title="Valve sink: lash, spring and chamber",
    summary="What a valve that sits deeper after its seat was cut does to lash, spring load and "
    "chamber. An old shim put back over a sunk valve holds it open. Grinding the stem end only "
    "where the maker allows it.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "seat_cutting", "valve_springs", "exhaust_valves"),
)
