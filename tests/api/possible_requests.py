"""Questions as requests: each quantity in a unit of its kind, taken at random."""

from typing import Any

from hypothesis import strategies as st
from possible_engines import Draw, Values, real
from possible_questions import STRATEGIES
from reference_cases import Case, cases

from ringland_service.api.reading.bounds import bounds
from ringland_service.core.declare import Declared
from ringland_service.core.declare.fields import (
    Field,
    QuantityField,
    ReadingsField,
    RecordsField,
    SectionField,
)
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.declare.records import asked
from ringland_service.units import TABLE, symbols, unit

Json = dict[str, Any]
# Their doubt may also be stated another way (gauge error, repeat, weather): not twice.
DOUBT_ELSEWHERE = {"reading_kpa", "readings_kpa", "first_again_kpa", "altitude_m", "expected_kpa"}
DOUBT_ELSEWHERE |= {"supply_kpa", "cylinder_kpa", "rocked_forward_kpa", "rocked_back_kpa"}
DOUBT_ELSEWHERE |= {"returned_readings_mm"}
DOUBT_ELSEWHERE |= {"head_step_mm", "solder_at_pin_axis_mm", "clay_intake_mm", "clay_exhaust_mm"}
PRESSURES = ("pressure_gauge", "pressure_absolute")
CASES: dict[str, list[Case]] = {}
for one in cases():
    if not one.refused:
        CASES.setdefault(one.calculation, []).append(one)


def symbol_for(draw: Draw, field: QuantityField) -> str:
    """Return one of the units that the field takes."""
    return str(draw(st.sampled_from(symbols(field.type.kind))))


def quantity(draw: Draw, name: str, field: QuantityField, value: Any, symbol: str) -> Json:
    """Return a canonical value as JSON in a unit, with a doubt as often as not."""
    measure = unit(field.type.kind, symbol)
    if isinstance(field, ReadingsField):
        numbers = [None if v in (None, "absent") else measure.from_canonical(v) for v in value]
        found: Json = {"values": numbers, "unit": symbol}
    else:
        numbers = [measure.from_canonical(value)]
        found = {"value": numbers[0], "unit": symbol}
    if name not in DOUBT_ELSEWHERE and not field.exact and draw(st.booleans()):
        most = bounds(field.type, symbol).most_uncertainty
        if field.type.low > 0 or field.type.high < 0:
            most = min([most, *(abs(one) / 4 for one in numbers if one is not None)])
        found["uncertainty"] = most * draw(real(0.001, 0.5))
    return found


def as_json(draw: Draw, record: type, values: Values) -> Json:
    """Return canonical values as the JSON of a request."""

    def shown(name: str, field: Field, value: Any) -> Any:
        if isinstance(field, SectionField):
            return as_json(draw, field.record, value)
        if isinstance(field, RecordsField):
            return [as_json(draw, field.record, one) for one in value]
        if isinstance(field, QuantityField):
            return quantity(draw, name, field, value, symbol_for(draw, field))
        return value

    known = asked(record)
    return {known[n].public(n): shown(n, known[n], v) for n, v in values.items()}


def convert(draw: Draw) -> Json:
    """Return a conversion within a kind, or between gauge and absolute pressure."""
    kind = draw(st.sampled_from(sorted(TABLE)))
    given, to = (draw(st.sampled_from(symbols(KINDS[kind]))) for _ in range(2))
    # Nothing is colder than absolute zero, or emptier than vacuum (canonical units).
    lowest = {"temperature": -273.14, "pressure_absolute": 0.0, "pressure_gauge": -101.32}.get(kind)
    least = -1e5 if lowest is None else unit(KINDS[kind], given).from_canonical(lowest)
    found = {"value": {"value": draw(real(least, 1e5)), "unit": given}, "to": to, "kind": kind}
    if kind in PRESSURES and draw(st.booleans()):
        del found["kind"]
        found |= {"value": {"value": draw(real(10, 900)), "unit": "psig"}, "to": "kPa(a)"}
        found["air_pressure"] = {"value": draw(real(14.1, 15.3)), "unit": "psia"}
    return found


def verdict(draw: Draw) -> Json:
    """Return a value with a limit on one side or both, each in a unit of one kind."""
    kind = draw(st.sampled_from(["length", "torque", "force", "volume", "angle"]))
    low, value, high = sorted(draw(st.lists(real(1, 100), min_size=3, max_size=3, unique=True)))

    def side(number: float) -> Json:
        symbol = draw(st.sampled_from(symbols(KINDS[kind])))
        return {"value": unit(KINDS[kind], symbol).from_canonical(number), "unit": symbol}

    found = {"value": side(value), "low": side(low), "high": side(high)}
    found.pop(draw(st.sampled_from(["low", "high", "neither"])), None)
    if draw(st.booleans()):
        found["value"]["uncertainty"] = found["value"]["value"] * draw(real(0.001, 0.2))
    return found


def from_a_case(draw: Draw, calculation: Declared) -> Json:
    """Return a question of the reference cases, where a calculation has no strategy here."""
    case = draw(st.sampled_from(CASES[calculation.name]))
    return as_json(draw, calculation.inputs, case.inputs)


def request(draw: Draw, calculation: Declared) -> Json:
    """Return a possible request to the calculation."""
    if calculation.name == "convert":
        return convert(draw)
    if calculation.name == "verdict":
        return verdict(draw)
    strategy = STRATEGIES.get(calculation.name)
    if strategy is None:
        return from_a_case(draw, calculation)
    return as_json(draw, calculation.inputs, strategy(draw))


@st.composite
def requests(draw: Draw, calculation: Declared) -> Json:
    """Return a strategy of possible requests to a calculation."""
    return request(draw, calculation)


def of_records(field: Field) -> bool:
    """Return whether a field takes no column: a section, or a list of records."""
    return isinstance(field, (RecordsField, SectionField))


def text_of(value: Any) -> str:
    """Return a JSON value of a field as the text of a parameter, a list parted by ``;``."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, list):
        return ";".join(map(str, value))
    if not isinstance(value, dict):
        return str(value)
    doubt = f" +/- {value['metrology.propagation']:.6g}" if "uncertainty" in value else ""
    numbers = value["values"] if "values" in value else [value["value"]]
    shown = ";".join("" if number is None else f"{number:.12g}" for number in numbers)
    return f"{shown} {value['unit']}{doubt}"


def columns_of(rows: list[Json]) -> Json:
    """Return requests as the columns of a batch; all quantities of a field are in one unit."""
    columns: Json = {}
    for name in dict.fromkeys(n for row in rows for n in row):
        cells = [row.get(name) for row in rows]
        first = next(cell for cell in cells if cell is not None)
        if not isinstance(first, dict):
            columns[name] = {"values": cells}
            continue
        key = "values" if "values" in first else "value"
        numbers = [None if cell is None else cell[key] for cell in cells]
        doubts = [None if cell is None else cell.get("uncertainty") for cell in cells]
        columns[name] = {"values": numbers, "unit": first["unit"]}
        if any(doubt is not None for doubt in doubts):
            columns[name]["uncertainty"] = doubts
    return columns


def batch_of(calculation: Declared, one: Json, rows: int) -> Json:
    """Return a batch that asks one question in every row; its records are shared."""
    known = asked(calculation.inputs)
    records = {field.public(name) for name, field in known.items() if of_records(field)}
    plain = {name: value for name, value in one.items() if name not in records}
    shared = {name: value for name, value in one.items() if name in records}
    return {"columns": columns_of([plain] * rows), "shared": shared}


@st.composite
def batches(draw: Draw, calculation: Declared, rows: int = 3) -> Json:
    """Return a strategy of batches: each field in one unit, some cells empty.

    Rows with records ask one question, for only all rows together can have them.
    """
    strategy = STRATEGIES.get(calculation.name)
    if strategy is None:
        return batch_of(calculation, request(draw, calculation), rows)
    drawn = [strategy(draw) for _ in range(rows)]
    known = asked(calculation.inputs)
    if any(of_records(known[name]) for values in drawn for name in values):
        return batch_of(calculation, as_json(draw, calculation.inputs, drawn[0]), rows)
    chosen = {n: symbol_for(draw, f) for n, f in known.items() if isinstance(f, QuantityField)}
    shown = [
        {
            known[n].public(n): quantity(draw, n, known[n], v, chosen[n]) if n in chosen else v
            for n, v in values.items()
        }
        for values in drawn
    ]
    return {"columns": columns_of(shown)}
