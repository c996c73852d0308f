"""The job card: parts open as inputs appear, doubt is carried on, faults name its own fields."""

import copy
from functools import cache
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ringland_service.api.reading.request import public_path, understood
from ringland_service.api.shapes.examples import example, example_of
from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Composite, asked
from ringland_service.core.declare.fields import SectionField
from ringland_service.engine.answer import Refused
from ringland_service.engine.composite import CompositeAnswer, answer_composite
from ringland_service.engine.opening import least_ways
from ringland_service.engine.question import Path

found = BY_NAME["job-card"]
assert isinstance(found, Composite)
CARD: Composite = found
EXAMPLE = example(CARD.inputs)
LEAVES = [(section, name) for section, fields in EXAMPLE.items() for name in fields]
A, B, C, D = (("engine", name) for name in "abcd")
# Fields that have no example on the job card, because they are another way to one that has.
SPARE: dict[str, Any] = {
    "clearance": {"value": 27.0, "unit": "cc"},
    "gasket_area": {"value": 3800.0, "unit": "mm²"},
    "burette_fill": {"value": 31.0, "unit": "cc"},
    "plug_diameter": {"value": 14.0, "unit": "mm"},
    "plug_reach": {"value": 19.0, "unit": "mm"},
    "air_pressure": {"value": 94.3, "unit": "kPa"},
    "wet": {"value": 960.0, "unit": "kPa"},
    "stroke_readings": {"values": [500.0, 760.0, 860.0, 880.0], "unit": "kPa"},
    "expected": {"value": 1010.0, "unit": "kPa"},
    "guide_along": {"values": [4.532, 4.514, 4.527], "unit": "mm"},
    "stem_heights": {"values": [4.468, 4.472, 4.477], "unit": "mm"},
    "shims_at_hand": {"values": [2.398, 2.451, 2.476, 2.502], "unit": "mm"},
    "use_shims_taken_out": True,
    "valves": [
        {
            "name": "intake",
            "old_shim": {"value": 2.65, "unit": "mm"},
            "measured_lash": {"value": 0.06, "unit": "mm"},
        }
    ],
    "weather_report": {"value": 101.3, "unit": "kPa"},
}


def card(*leaves: tuple[str, str]) -> dict[str, Any]:
    """The example with the given leaves only."""
    data: dict[str, Any] = {}
    for section, name in leaves:
        data.setdefault(section, {})[name] = copy.deepcopy(EXAMPLE[section][name])
    return data


def told(data: dict[str, Any]) -> CompositeAnswer:
    return answer_composite(CARD, understood(CARD, data))


@cache
def ways(name: str, *leaves: tuple[str, str]) -> tuple[tuple[Path, ...], ...]:
    return next((o.ways for o in told(card(*leaves)).open if o.part == name), ())


BORE, STROKE, ROD = ("engine", "bore"), ("engine", "stroke"), ("engine", "rod")
CLOSES, ALTITUDE = ("engine", "intake_closes"), ("place", "altitude")
CHAMBER = [
    ("engine", n) for n in ("chamber", "gasket_bore", "gasket_thickness", "deck", "dome", "dish")
]


def test_nothing_known_opens_nothing_and_says_what_to_measure() -> None:
    nothing = told({})
    assert not nothing.parts
    assert ways("displacement") == ((("engine", "bore_mm"), ("engine", "stroke_mm")),)


def test_parts_open_and_leave_the_list_as_inputs_appear() -> None:
    assert ways("displacement", BORE) == ((("engine", "stroke_mm"),),)
    both = told(card(BORE, STROKE))
    assert list(both.parts) == ["displacement"]
    assert "displacement" not in {o.part for o in both.open}
    more = told(card(BORE, STROKE, ROD, CLOSES, ALTITUDE, *CHAMBER))
    assert {"compression_ratio", "dynamic_ratio", "cranking_pressure"} <= more.parts.keys()
    assert more.taken["cranking_pressure"]["ratio"] == ("dynamic_ratio", "dynamic_ratio")


def test_doubt_of_the_chamber_reaches_the_cranking_pressure() -> None:
    data = card(BORE, STROKE, ROD, CLOSES, ALTITUDE, *CHAMBER)
    assert not told(data).parts["cranking_pressure"].u
    u = []
    for stated in (0.1, 0.2):
        data["engine"]["chamber"]["uncertainty"] = stated
        u.append(told(data).parts["cranking_pressure"].u["mid_kpa"])
    # Twice the doubt gives twice the doubt: u is linear in the stated part (JCGM 100, 5.1).
    assert u[0] > 0.0
    assert u[1] == pytest.approx(2.0 * u[0], rel=1e-6)


def test_doubt_of_the_chamber_in_the_pressure_is_the_slope_of_the_whole_chain() -> None:
    """u(p) = |dp/dV|·u(V), the slope taken by moving the chamber through the whole card."""
    data = card(BORE, STROKE, ROD, CLOSES, ALTITUDE, *CHAMBER)

    def pressure_kpa(chamber_cc: float) -> float:
        data["engine"]["chamber"] = {"value": chamber_cc, "unit": "cc"}
        return float(told(data).parts["cranking_pressure"].outputs.mid_kpa)

    slope = (pressure_kpa(27.7) - pressure_kpa(27.5)) / 0.2
    data["engine"]["chamber"] = {"value": 27.6, "unit": "cc", "uncertainty": 0.1}
    u = told(data).parts["cranking_pressure"].u["mid_kpa"]
    assert u == pytest.approx(abs(slope) * 0.05, rel=1e-3)


def test_a_fault_of_a_part_names_the_field_of_the_card() -> None:
    data = card(BORE, STROKE, *CHAMBER)
    data["engine"]["gasket_bore"]["value"] = 60.0
    with pytest.raises(Refused, match="overhangs") as refused:
        told(data)
    assert {fault.field for fault in refused.value.faults} == {"engine.gasket_bore_mm"}


def test_a_fault_of_a_part_under_another_name_names_the_field_of_the_card() -> None:
    """The wet gain knows ``dry_kpa``; on the card it is the reading of the compression test."""
    wet = {"reading": {"value": 0.0, "unit": "kPa"}, "wet": SPARE["wet"]}
    with pytest.raises(Refused, match="reading of nothing") as refused:
        told({"compression": wet})
    assert {fault.field for fault in refused.value.faults} == {"compression.reading_kpa"}


def test_where_a_field_of_another_name_was_taken_from_is_told() -> None:
    """The ring gap knows ``bore_mm``; the card calls it the bore where the rings were gapped."""
    taken = told(card(("rings", "gap_bore"), ("rings", "top_measured"))).taken
    assert taken["ring_gap"]["bore_mm"] == ("rings", "gap_bore_mm")


def test_least_ways_keeps_no_larger_set_beside_a_smaller_one() -> None:
    one, two = frozenset({A}), frozenset({A, B})
    assert least_ways([[two, one]]) == ((A,),)
    assert least_ways([[frozenset({A}), frozenset({B})], [frozenset({A})]]) == ((A,),)
    assert least_ways([]) == ()


PATHS = st.frozensets(st.sampled_from([A, B, C, D]), min_size=1, max_size=3)


@given(needs=st.lists(st.lists(PATHS, min_size=1, max_size=3), min_size=1, max_size=3))
def test_least_ways_are_sufficient_and_minimal(needs: list[list[frozenset[Path]]]) -> None:
    """By definition: each way meets every need, and no field of it can be spared."""

    def meets(have: frozenset[Path]) -> bool:
        return all(any(way <= have for way in need) for need in needs)

    listed = [frozenset(way) for way in least_ways(needs)]
    assert 1 <= len(listed) <= 3
    assert len(set(listed)) == len(listed)
    assert [len(way) for way in listed] == sorted(len(way) for way in listed)
    for way in listed:
        assert meets(way)
        assert not any(meets(way - {path}) for path in way)


@settings(max_examples=60)
@given(
    known=st.lists(st.sampled_from(LEAVES), unique=True, max_size=40),
    more=st.sampled_from(LEAVES),
)
def test_one_more_field_makes_no_part_vanish(
    known: list[tuple[str, str]], more: tuple[str, str]
) -> None:
    try:
        before, after = told(card(*known)), told(card(*known, more))
    except Refused:
        return
    # What falls out says so, and takes with it what rests on it.
    lost = before.parts.keys() - after.parts.keys() - after.fallen_out.keys()
    resting = {part for part in lost if part.split("_after")[0] != part}
    assert not lost - (resting if after.fallen_out else set())


def filled(data: dict[str, Any], way: tuple[Path, ...]) -> dict[str, Any]:
    """The card with the fields of a way filled by their examples."""
    for path in way:
        fill(data, CARD.inputs, path)
    return data


def fill(data: dict[str, Any], record: type, path: Path) -> None:
    """Fill one field of a record, or of a section of it, by its example."""
    name, *rest = path
    field = asked(record)[name]
    public = str(public_path(record, (name,))[0])
    if rest:
        assert isinstance(field, SectionField), path
        fill(data.setdefault(public, {}), field.record, tuple(rest))
        return
    value = example_of(field)
    value = SPARE.get(public) if value is None else value
    assert value is not None, f"no example for {public}"
    data[public] = value


@settings(max_examples=40)
@given(known=st.lists(st.sampled_from(LEAVES), unique=True, max_size=12))
def test_every_way_named_opens_its_part(known: list[tuple[str, str]]) -> None:
    try:
        now = told(card(*known))
    except Refused:
        return
    for waiting in now.open:
        for way in waiting.ways:
            try:
                then = told(filled(card(*known), way))
            except Refused:
                continue
            assert waiting.part in then.parts, (waiting.part, way)
