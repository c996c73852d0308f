"""An uncertainty that leaves out inputs of weight says so, by name, in every form of the answer."""

import copy
import csv
import io
import math
from collections.abc import Iterator
from typing import Any

import pytest

from ringland_service.api.faults import FieldErrors
from ringland_service.api.routes.answering import answered, answered_batch
from ringland_service.api.routes.calculation_routes import as_text
from ringland_service.api.shapes.examples import example
from ringland_service.api.writing import batch_render, flat_table
from ringland_service.api.writing.pages import job_page
from ringland_service.api.writing.printed import printed
from ringland_service.core.calculations import BY_NAME, CALCULATIONS, EVERY
from ringland_service.core.declare import Calculation, defaults, input_fields
from ringland_service.core.declare.fields import QuantityField, ReadingsField
from ringland_service.core.declare.notices import UNSTATED
from ringland_service.core.quantities.typical import typical_uncertainty
from ringland_service.engine.deadline import never
from ringland_service.engine.unstated import FIGURES, short
from ringland_service.units import unit

PLAIN = [c for c in CALCULATIONS if isinstance(c, Calculation)]
# A tenth wider is of weight; so near to it neither side is asked for.
TENTH, NEAR = 1.1, 1e-4


def remarks(found: Any) -> dict[str, str]:
    return {w["field"]: w["message"] for w in found["warnings"] if w["code"] == UNSTATED}


def names_in(message: str) -> list[str]:
    return message.removeprefix("uncertainty not stated: ").split(", ")


def expanded_of(found: Any) -> dict[str, float]:
    """The expanded uncertainty of each single result, by name."""
    own = {
        name: value["uncertainty"]
        for name, value in found["result"].items()
        if isinstance(value, dict) and value.get("uncertainty") is not None
    }
    return own | {n: u for n, u in found["uncertainties"].items() if isinstance(u, float)}


def single_readings(calculation: Calculation) -> dict[str, tuple[str, QuantityField]]:
    """The quantities of a calculation that are one reading each, by public name."""
    return {
        field.public(name): (name, field)
        for name, field in input_fields(calculation.inputs).items()
        if isinstance(field, QuantityField) and not isinstance(field, ReadingsField)
        if not field.exact
    }


def stated(data: dict[str, Any], uncertainties: dict[str, float]) -> dict[str, Any]:
    found = copy.deepcopy(data)
    for name, uncertainty in uncertainties.items():
        found[name]["uncertainty"] = uncertainty
    return found


def asked_alone(calculation: Calculation) -> Iterator[tuple[str, dict[str, Any], Any]]:
    """The example, one reading after the other stated alone, a tenth of a usual uncertainty."""
    data = example(calculation.inputs)
    for public, (_, field) in single_readings(calculation).items():
        usual = typical_uncertainty(field.type, field.example or 0.0)
        if public in data and usual is not None:
            try:
                asked_ = stated(data, {public: float(usual) / 10.0})
                yield public, asked_, answered(calculation, asked_, {})
            except FieldErrors:
                continue


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_an_input_is_named_where_stating_it_would_widen_the_result(calculation: Any) -> None:
    """The witness is the answer itself, asked again with that input's usual uncertainty stated."""
    optional = defaults(calculation.inputs)
    for public, data, found in asked_alone(calculation):
        narrow, told = expanded_of(found), remarks(found)
        for other, (name, field) in single_readings(calculation).items():
            value = data.get(other, {}).get("value")
            usual = typical_uncertainty(field.type, value) if value is not None else None
            if usual is None or "uncertainty" in found["inputs"][other]:
                continue
            try:
                wide = expanded_of(answered(calculation, stated(data, {other: float(usual)}), {}))
            except FieldErrors:
                continue
            for result, before in narrow.items():
                ratio = wide[result] / before
                if math.isclose(ratio, TENTH, rel_tol=NEAR):
                    continue
                reading = name not in FIGURES and value != optional.get(name)
                named = short(field.description) in names_in(told.get(result, ""))
                twin = [
                    n
                    for n, (_, f) in single_readings(calculation).items()
                    if n != other and short(f.description) == short(field.description)
                ]
                assert named == (reading and ratio > TENTH) or twin, (public, other, result, ratio)


def test_many_answers_warn_and_many_do_not() -> None:
    """Else the test above could hold of nothing."""
    answers = [found for c in PLAIN for _, _, found in asked_alone(c)]
    warned = [found for found in answers if remarks(found)]
    assert len(warned) > 40
    assert len(answers) - len(warned) > 40


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_where_nothing_is_stated_nothing_is_missed(calculation: Calculation) -> None:
    found = answered(calculation, example(calculation.inputs), {})
    if calculation.components is None:
        assert remarks(found) == {}
    assert set(remarks(found)) <= {*expanded_of(found), *found["uncertainties"], *lists(found)}


def lists(found: Any) -> list[str]:
    return [n for n, v in found["result"].items() if isinstance(v, dict) and "values" in v]


def test_a_jump_is_no_slope() -> None:
    """The skirt travel begins at a depth read: moved, it lets that reading in or out."""
    fit = BY_NAME["piston-clearance"]
    data = example(fit.inputs)
    assert data["skirt_from"]["value"] in data["bore_survey"]["depth"]["values"]
    alone = expanded_of(answered(fit, stated(data, {"piston_size": 0.004}), {}))["clearance_max"]
    both = stated(data, {"piston_size": 0.004, "skirt_from": 1.0})
    assert expanded_of(answered(fit, both, {}))["clearance_max"] == pytest.approx(alone, rel=1e-6)
    only = answered(fit, stated(data, {"skirt_from": 1.0}), {})
    assert "clearance_max" not in expanded_of(only)


WALL = BY_NAME["liner-wall"]
OUTSIDE, SHIFT = "outside diameter of the liner", "distance of the bore's centre"


def wall(**uncertainties: float) -> Any:
    return answered(WALL, stated(example(WALL.inputs), uncertainties), {})


def test_the_wall_names_core_shift_and_outside_diameter() -> None:
    """The case that showed it: ± 0.002 mm from the finish bore alone."""
    found = wall(finish_high=0.004)
    said = remarks(found)["wall_thinnest"]
    assert said.startswith("uncertainty not stated: ")
    assert OUTSIDE in said
    assert SHIFT in said
    # The JSON keeps the number: half of 0.004, a wall being one side of a diameter.
    assert found["result"]["wall_thinnest"]["uncertainty"] == pytest.approx(0.002, rel=1e-9)
    assert remarks(wall(finish_high=0.004, liner_od=0.03, core_shift=0.05)) == {}
    # 0.05 of the shift is large against the 0.013 that the outside would add.
    assert remarks(wall(finish_high=0.004, core_shift=0.05)).keys() == {"wall_mean"}


def test_text_prints_the_remark_and_no_plus_minus() -> None:
    lines = as_text(WALL, wall(finish_high=0.004)).splitlines()
    told = next(line for line in lines if "wall thinnest" in line)
    assert "(uncertainty not stated: outside diameter" in told
    assert "±" not in "".join(lines)
    sound = as_text(WALL, wall(finish_high=0.004, liner_od=0.03, core_shift=0.05))
    assert "3.049 ± 0.052 mm" in sound  # by hand: √(0.002² + 0.015² + 0.05²) = 0.05224


def test_the_table_names_them_beside_the_number() -> None:
    found = printed(WALL, wall(finish_high=0.004))
    rows = list(csv.DictReader(io.StringIO(flat_table.table(WALL, found))))
    told = [
        r for r in rows if r["name"] in ("wall_thinnest", "liner_wall") and r["part"] != "warning"
    ]
    assert len(told) == 2  # the result and its verdict
    assert all(OUTSIDE in row[UNSTATED] and row["uncertainty"] for row in told)
    assert not any(row[UNSTATED] for row in rows if row["name"] == "floor_used")


def test_a_batch_says_in_which_rows() -> None:
    assert isinstance(WALL, Calculation)
    shared = example(WALL.inputs)
    uncertainties = [0.004, None, 1.0, 0.004]
    finish = {"values": [68.501] * 4, "unit": "mm", "uncertainty": uncertainties}
    shift = {"values": [0.2] * 4, "unit": "mm", "uncertainty": [None, None, None, 0.05]}
    del shared["finish_high"], shared["core_shift"]
    asked_ = {"shared": shared, "columns": {"finish_high": finish, "core_shift": shift}}
    answers = answered_batch(WALL, asked_, never())
    found = batch_render.answer(answers, "metric")
    by_rows = {
        (w["message"], tuple(row - 1 for row in w["rows"]))
        for w in found["warnings"]
        if w["code"] == UNSTATED and w["field"] == "wall_thinnest"
    }
    singles = {
        0: remarks(wall(finish_high=0.004)),
        3: remarks(wall(finish_high=0.004, core_shift=0.05)),
    }
    expected = {
        (told["wall_thinnest"], (row,))
        for row, told in singles.items()
        if told
        if "wall_thinnest" in told
    }
    assert by_rows == expected
    table = list(csv.DictReader(io.StringIO(batch_render.table(answers, "metric"))))
    assert [bool(line["wall_thinnest uncertainty not stated"]) for line in table] == [
        row in {r for _, rows in by_rows for r in rows} for row in range(4)
    ]


def test_what_a_part_leaves_out_is_said_by_the_parts_that_rest_on_it() -> None:
    """The ratio leaves out the chamber; so does the pressure that is expected of the ratio."""
    card = BY_NAME["job-card"]
    data = example(card.inputs)
    data["engine"]["bore"]["uncertainty"] = 0.004
    del data["engine"]["bore_kind"]
    found = answered(card, data, {})
    told = remarks(found)
    chamber = "combustion chamber in the head"
    assert chamber in told["compression_ratio.compression_ratio"]
    assert chamber in told["dynamic_ratio.dynamic_ratio"]
    assert chamber in told["cranking_pressure.mid"]
    assert "(uncertainty not stated" in job_page.page(card, found)


def test_the_figures_left_alone_are_fields_that_there_are() -> None:
    known = {name for c in EVERY if isinstance(c, Calculation) for name in input_fields(c.inputs)}
    assert known >= FIGURES


# By hand from the table of bench instruments and the words of each quantity; common practice, no
# source. Bore gauge: 2·√(0.005²/3 + 0.002²/3 + 0.002² + 0.001²/12); calliper: 2·√(0.02²/3 +
# 0.02²/12); compression gauge: 2·√((0.04·880)²/3 + 5.7735²).
USUAL = {
    ("displacement", "bore_mm"): (68.0, 0.0074162),
    ("liner-wall", "liner_od_mm"): (75.0, 0.0258199),
    ("liner-wall", "core_shift_mm"): (0.2, 0.05),
    ("compression-level", "reading_kpa"): (880.0, 42.2538),
    ("torque-steps", "final_torque_nm"): (24.0, 0.1),
    ("premix", "fuel_l"): (9.0, 0.05),
    ("displacement", "stroke_mm"): (66.0, None),
    ("compression-ratio", "crevice_cc"): (0.4, None),
}


@pytest.mark.parametrize(("field", "usual"), USUAL.items(), ids=lambda x: str(x))
def test_the_usual_uncertainty_of_a_reading(field: Any, usual: Any) -> None:
    of, name = field
    found = input_fields(BY_NAME[of].inputs)[name]
    assert isinstance(found, QuantityField)
    value, expected = usual
    got = typical_uncertainty(found.type, value)
    assert got == (None if expected is None else pytest.approx(expected, rel=1e-5))


def test_every_figure_in_the_words_of_a_quantity_is_read_in_a_unit_of_its_kind() -> None:
    """Else a figure could be taken for one in another unit."""
    for calculation in PLAIN:
        for _, field in single_readings(calculation).values():
            usual = typical_uncertainty(field.type, field.type.example)
            if usual is not None:
                assert 0.0 < usual < field.type.span
                assert unit(field.type.kind, field.type.kind.unit).factor == 1.0
