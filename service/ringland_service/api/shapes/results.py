"""Results by their look: a quantity, a list, a table, a token, a bare value."""

from typing import Any

from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes import answer_json
from ringland_service.api.shapes.answer_json import (
    column,
    expanded,
    expanded_in,
    shown_unit,
    told_interval,
)
from ringland_service.api.shapes.base import Resulted
from ringland_service.api.shapes.looks import (
    AsBare,
    AsBareList,
    AsQuantities,
    AsQuantity,
    AsTable,
    plain_json,
)
from ringland_service.api.shapes.members import answer
from ringland_service.api.shapes.registry import adapts_result
from ringland_service.api.shapes.schema_parts import array_of, one_of
from ringland_service.core.declare.fields import Quantified, ResultField, UnitGiven
from ringland_service.core.declare.significant import decimals_for, kind_and_decimals
from ringland_service.core.metrology.extremes import Interval
from ringland_service.engine.intervals import ends


class _Measured(Resulted):
    """What a quantity and a list of them have in common: a kind, declared or that of an input."""

    field: ResultField

    def with_interval(self, told: Json, interval: Interval, inputs: object, system: str) -> Json:
        """Return the JSON of the result with its 95 % interval, of a list with one of each."""
        kind, _ = kind_and_decimals(self.field, inputs)
        if kind is None or not isinstance(told, dict):
            return told
        name = "intervals" if "values" in told else "interval"
        return {**told, name: told_interval(ends(interval), shown_unit(kind, system))}

    def answer_column(self, values: list[Any], system: str, u: list[Any] | None) -> JsonObject:
        """Return numbers with their unit; of any kind, with a unit a row where they differ."""
        first = next((v for v in values if isinstance(v, Quantified)), None)
        if first is not None:
            return self._of_any_kind(first, values, system, u)
        kind, decimals = self.field.kind, self.field.decimals
        found = column(values, kind, decimals, system)
        if u is not None and kind is not None:
            uncertainties = column(
                [expanded(one) for one in u], kind, decimals, system, difference=True
            )
            found["uncertainties"] = uncertainties["values"]
        return found

    def _of_any_kind(
        self, first: Quantified, values: list[Quantified | None], system: str, u: list[Any] | None
    ) -> JsonObject:
        if self.field.kind_of:
            plain = [None if v is None else v.value for v in values]
            found = column(plain, first.unit.kind, _digits(first), system)
        else:
            numbers: list[Json] = [None if v is None else _in_own_unit(v) for v in values]
            symbols: list[Json] = [None if v is None else v.unit.symbol for v in values]
            alike = all(v is None or v.unit == first.unit for v in values)
            unit: JsonObject = {"unit": first.unit.symbol} if alike else {"units": symbols}
            found = {"values": numbers, **unit, "decimals": 6}
        if u is not None:
            uncertainties = zip(values, u, strict=True)
            found["uncertainties"] = [
                self._uncertainty(value, one, system) for value, one in uncertainties
            ]
        return found

    def _uncertainty(self, value: Quantified | None, u: Any, system: str) -> float | None:
        """Return the expanded uncertainty of a quantity of any kind, in the unit of its column."""
        if value is None or not u:
            return None
        unit = shown_unit(value.kind, system) if self.field.kind_of else value.unit
        return expanded_in(u, unit.ratio)


def _digits(value: Quantified) -> int:
    """Return decimals that keep four decimals of a value of any kind."""
    number = value.value[0] if isinstance(value.value, tuple) else value.value
    return decimals_for(number, 4)


def _in_own_unit(value: Quantified) -> float:
    unit: UnitGiven = value.unit
    return float((value.value - unit.offset) / float(unit.ratio))


@adapts_result("quantity")
class ResultQuantity(_Measured, AsQuantity):
    """A result with a unit."""

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the quantity; of a kind that it carries itself, in its own unit."""
        if isinstance(value, Quantified):
            return answer_json.any_quantity(value, u)
        kind, decimals = kind_and_decimals(self.field, inputs)
        if kind is None:
            return plain_json(value)
        return answer_json.quantity(value, kind, decimals, system, u)


@adapts_result("quantities")
class ResultQuantities(_Measured, AsQuantities):
    """A list of results with one unit."""

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the quantities in one unit."""
        kind, decimals = kind_and_decimals(self.field, inputs)
        if kind is None:
            return plain_json(value)
        return answer_json.listed(value, kind, decimals, system, u)


@adapts_result("table")
class ResultTable(AsTable, Resulted):
    """A list of records of results."""

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the rows; kinds that hang on an input hang on those of the whole calculation."""
        return [answer(self.record, row, inputs, system, {}) for row in value]

    def answer_column(self, values: list[Any], system: str, u: list[Any] | None) -> JsonObject:
        """Return the rows of each entry, as a single answer has them."""
        return {"values": [None if v is None else self.answer(v, None, system) for v in values]}


class _Bare(AsBare, Resulted):
    def answer_column(self, values: list[Any], system: str, u: list[Any] | None) -> JsonObject:
        """Return the values as they are."""
        uncertainties: JsonObject = (
            {} if u is None else {"uncertainties": [expanded(one) for one in u]}
        )
        return {"values": values, **uncertainties}


@adapts_result("choice")
class ResultChoice(_Bare):
    """A token of a closed list."""

    def answer_schema(self) -> JsonObject:
        """Return the tokens."""
        return one_of(self.choices or ())


@adapts_result("bare")
class ResultBare(_Bare):
    """A number, a count, a text, a yes or no."""

    def answer_schema(self) -> JsonObject:
        """Return what the annotation of the result says."""
        return {"type": self.holds}


@adapts_result("list")
class ResultList(AsBareList, _Bare):
    """A list of bare numbers or of texts."""

    def answer_schema(self) -> JsonObject:
        """Return the schema of a list of either."""
        return array_of({"type": ["string", "number"]})
