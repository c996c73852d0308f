"""A number with a unit: of one quantity of the trade, or of any kind; and a unit alone."""

from collections.abc import Iterator, Mapping
from typing import Any, Unpack

from marshmallow import fields as ma

from ringland_service.api.faults import FieldError
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes import answer_json
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.columns import (
    Column,
    check_uncertainties,
    measured_row,
    read_quantities,
)
from ringland_service.api.shapes.draft import COLUMN_KEYS, RIGHT_COLUMN, Draft
from ringland_service.api.shapes.hints import right_form
from ringland_service.api.shapes.json_checks import About, Reader, check_keys, fail, nested
from ringland_service.api.shapes.looks import AsQuantity
from ringland_service.api.shapes.number_text import quantity_text
from ringland_service.api.shapes.quantity_checks import (
    QUANTITY_KEYS,
    Read,
    check_exact,
    check_stated_uncertainty,
    check_value,
    read_unit,
)
from ringland_service.api.shapes.quantity_schema import (
    quantity_component,
    text_name,
)
from ringland_service.api.shapes.registry import adapts
from ringland_service.api.shapes.schema_parts import (
    Components,
    measured_column,
    ref,
)
from ringland_service.core.declare.fields import (
    AnyQuantityField,
    QuantityField,
    QuantityType,
)
from ringland_service.units import symbols


class Quantity(ma.Field[Read]):
    """``{"value": 68.0, "unit": "mm", "uncertainty": 0.004}``.

    One field, not a nested schema: that keeps a request within a fraction of bare Flask.
    """

    def __init__(self, field: QuantityField, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.of = field.type
        self.exact = field.exact

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> Read:
        of = self.of
        given = check_keys(value, QUANTITY_KEYS, right_form(of))
        check_exact(self.exact, given)
        if "value" not in given:
            raise fail(
                FieldError("missing_field", "a value is missing", right_form(of)).under("value")
            )
        symbol = read_unit(given, of.kind)
        number = nested("value", check_value, of, given["value"], symbol)
        return Read(number, check_stated_uncertainty(of, given, symbol))


class Measured(AsQuantity, InCells):
    """What quantities of one kind and of any have in common."""

    field: QuantityField | AnyQuantityField

    def from_text(self, text: str) -> Json:
        """Return number and unit, and what stands behind ±."""
        return quantity_text(text, self.example_text())

    def check_column(self, column: Column) -> None:
        """Refuse unknown members, too few uncertainties, and a unit that does not fit."""
        check_exact(self.field.exact, column)
        check_keys(column, COLUMN_KEYS, RIGHT_COLUMN)
        check_uncertainties(column, len(column["values"]))
        self._check_unit(column)

    def _check_unit(self, column: Mapping[str, object]) -> None:
        raise NotImplementedError

    def row(self, column: Column, value: Any, row: int) -> object:
        """Return the number with the unit of its column."""
        return measured_row(column, value, row)


@adapts(QuantityField)
class QuantityShape(Measured):
    """A number with a unit of one kind, within the bounds of its quantity."""

    field: QuantityField
    shape = "quantity"

    def __init__(self, field: QuantityField) -> None:
        super().__init__(field)
        self.instrument = field.type.instrument

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read an object of value, unit, and perhaps the uncertainty."""
        return Quantity(self.field, **about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the reference to its quantity; what is exact takes no uncertainty."""
        found = {**ref(quantity_component(self.field.type, components))}
        found["description"] = self.field.description
        if self.field.exact:
            uncertain: list[Json] = [{"required": ["uncertainty"]}, {"required": ["instrument"]}]
            found["not"] = {"anyOf": uncertain}
        return {**found, **self.examples()}

    def in_json(self, value: float) -> Json:
        """Return a number in the canonical unit."""
        return {"value": value, "unit": self.field.type.kind.unit}

    def listing(self) -> JsonObject:
        """Return kind, units, bounds, and what measures it."""
        return quantity_listing(self.shape, self.field.type)

    def quantities(self) -> Iterator[QuantityType]:
        """Yield its one quantity."""
        yield self.field.type

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the quantity in the unit that answers show its kind in."""
        of = self.field.type
        return answer_json.quantity(value, of.kind, of.decimals, system, u)

    def example_text(self) -> str:
        """Return the example of the field, else that of its quantity."""
        of, own = self.field.type, self.field.example
        return f"{of.example if own is None else own:g} {of.kind.unit}"

    def parameter_schema(self) -> JsonObject:
        """Return the reference to the text of its kind."""
        return ref(text_name(self.field.type.kind, self.field.exact))

    def column_schema(self, most: int) -> JsonObject:
        """Return the schema of a column of numbers with a unit."""
        return measured_column("a number", symbols(self.field.type.kind), self.field.exact, most)

    def _check_unit(self, column: Mapping[str, object]) -> None:
        read_unit(column, self.field.type.kind)

    def read_column(self, name: str, column: Column, draft: Draft) -> None:
        """Read the numbers as one array."""
        check_exact(self.field.exact, column)
        read_quantities(draft, name, self.field.type, column)


def quantity_listing(shape: str, of: QuantityType) -> JsonObject:
    """Return what a form needs to know of a quantity."""
    return {
        "shape": shape,
        "kind": of.kind.name,
        "unit": of.kind.unit,
        "units": list(symbols(of.kind)),
        "low": of.low,
        "high": of.high,
        "usual_low": of.warn_low,
        "usual_high": of.warn_high,
        "decimals": of.decimals,
        "instrument": of.instrument,
    }
