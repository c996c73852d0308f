"""Order cards to be asked for: plain ones, and drawn ones for the properties."""

from typing import Any

from hypothesis import event
from hypothesis import strategies as st

from ringland_service.core.calculations.order_card import order_card
from ringland_service.core.declare import asked, defaults
from ringland_service.core.declare.fields import (
    ChoiceField,
    CountField,
    Field,
    FlagField,
    NumberField,
    QuantityField,
    ReadingsField,
    SectionField,
)
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.question import Question
from ringland_service.engine.scalar import answer

CARD = order_card.CALCULATION
PISTON: dict[str, Any] = {
    "piston_mm": 68.461,
    "clearance_low_mm": 0.03,
    "clearance_high_mm": 0.04,
    "hone_stock_mm": 0.06,
}
BORED: dict[str, Any] = {"work": "bore_and_hone", "bore_kind": "iron", **PISTON}
HONED: dict[str, Any] = {"work": "hone", "bore_kind": "iron"}
SLEEVED: dict[str, Any] = {
    "work": "sleeve",
    "bore_kind": "iron",
    "interference_mm": 0.1,
    "heat_c": 110.0,
}
REPLATED: dict[str, Any] = {"work": "replate", "bore_kind": "plated_aluminium"}
HEAD: dict[str, Any] = {"work": "heads_only", "bore_kind": "unknown"}

# What people write into the free texts of a card.
TEXTS = {
    "job": ["26-014", "26.014", "W 7/3"],
    "date": ["12 March 2026", "2026-03-12", "12.03.2026"],
    "end_up": ["arrow on the fins", "the end with the plug", "spigot down"],
    "piston_mark": ["1", "+0.50 mm, 2", "B", "first oversize, 3"],
    "piston_instrument": ["outside micrometer, 0.001 mm", "micrometer 50–75 mm"],
    "finish": ["Ra 0.4 to 0.8 µm", "Ra 0,4 µm"],
    "gasket": ["the maker's", "steel, 0.5 mm"],
    "studs": ["M8 × 1.25, oiled", "M10x1,5", "5/16 in"],
    "currency": ["EUR", "kr", "zł"],
    "wanted": ["20 March 2026", "20.03.", "next week"],
    "approver": ["the foreman", "A. N. Other"],
    "replate_to": ["standard size", "repair size, 56.250 mm"],
    "contact": ["in the middle of the face", "1.5 mm from the edge"],
}


def asked_for(inputs: dict[str, Any], **about: Any) -> Answer:
    return answer(CARD, Question(inputs=CARD.inputs(**inputs), **about))


def lines_of(inputs: dict[str, Any], **about: Any) -> dict[int, Any]:
    """Return the lines of a card by the number of their point."""
    return {line.point: line for line in asked_for(inputs, **about).outputs.lines}


def near(field: QuantityField, low: float = 0.9, high: float = 1.1) -> st.SearchStrategy[float]:
    """Return numbers of a field near its usual value, within its bounds."""
    middle = field.example if isinstance(field.example, float) else field.type.example
    least, most = max(field.type.low, low * middle), min(field.type.high, high * middle)
    return st.floats(least, most).map(lambda value: round(value, 4))


def values_of(name: str, field: Field) -> st.SearchStrategy[Any]:
    """Return values of a field as shops would write them."""
    if isinstance(field, SectionField):
        return records_of(field.record).map(lambda values: field.record(**in_order(values)))
    if isinstance(field, ReadingsField):
        return st.lists(near(field, 0.2, 4.0), min_size=1, max_size=6).map(tuple)
    if isinstance(field, QuantityField):
        return near(field)
    if isinstance(field, ChoiceField):
        return st.sampled_from(sorted(field.choices))
    if isinstance(field, FlagField):
        return st.booleans()
    if isinstance(field, CountField):
        return st.integers(field.low, field.high)
    if isinstance(field, NumberField):
        return st.floats(field.low, 1e5)
    return st.sampled_from(TEXTS[name])


def records_of(record: type) -> st.SearchStrategy[dict[str, Any]]:
    """Return the values of a record: each optional one given or not."""
    cells = {name: values_of(name, field) for name, field in asked(record).items()}
    optional = {name: cells.pop(name) for name in defaults(record) if name in cells}
    return st.fixed_dictionaries(cells, optional=optional)


def in_order(values: dict[str, Any]) -> dict[str, Any]:
    """Return values whose lower limits lie under their upper ones."""
    found = dict(values)
    for low in [name for name in values if name.endswith("_low_mm")]:
        high = low.replace("_low_", "_high_")
        if high in values:
            found[low], found[high] = sorted((values[low], values[high]))
    if {"clearance_low_mm", "clearance_high_mm"} <= found.keys():
        found["clearance_high_mm"] = found["clearance_low_mm"] + 0.0105
    return found


@st.composite
def cards(draw: st.DrawFn) -> tuple[dict[str, Any], Answer]:
    """Return the inputs of a card, and its answer; where it is refused, of one that is not."""
    values = in_order(draw(records_of(CARD.inputs)))
    if draw(st.booleans()):
        values = {**PISTON, **values}
    if values["work"] == "sleeve":
        values = {**SLEEVED, **values}
    if values["work"] in ("bore_and_hone", "hone") or (
        values["bore_kind"] == "unknown" and values["work"] != "heads_only"
    ):
        values["bore_kind"] = "iron"
    if "gasket_bore_mm" in values:
        values["gasket_bore_mm"] = values.get("piston_mm", 68.461) + draw(st.sampled_from([0.6, 2]))
    if "piston_mm" not in values:
        values.pop("piston_mark", None)
    try:
        return values, asked_for(values, defaults=draw(st.booleans()))
    except Refused:
        event("refused")
        return BORED, asked_for(BORED)
