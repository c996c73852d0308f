"""Quantities and units whose kind is settled only by what stands beside them."""

from collections.abc import Mapping
from typing import Any, Unpack

from marshmallow import fields as ma

from ringland_service.api.faults import FieldError
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes import answer_json
from ringland_service.api.shapes.hints import right_form
from ringland_service.api.shapes.json_checks import About, Reader, check_keys, fail, nested
from ringland_service.api.shapes.looks import AsBare
from ringland_service.api.shapes.quantity import Measured
from ringland_service.api.shapes.quantity_checks import (
    LARGEST,
    QUANTITY_KEYS,
    SMALLEST_UNCERTAINTY,
    AnyRead,
    UnitRead,
    any_number,
    any_unit,
    check_exact,
)
from ringland_service.api.shapes.quantity_schema import (
    ANY_EXACT_TEXT,
    ANY_TEXT,
    UNCERTAINTY,
    any_quantity,
)
from ringland_service.api.shapes.registry import adapts
from ringland_service.api.shapes.schema_parts import Components, measured_column, one_of, ref
from ringland_service.api.shapes.tokens import Worded
from ringland_service.core.declare.fields import AnyQuantityField, UnitField
from ringland_service.units import every_symbol

# What a quantity of any kind looks like where the field itself shows none.
ANY_EXAMPLE = (68.0, "mm")


class AnyQuantity(ma.Field[AnyRead]):
    """A number with a unit of any kind; every kind that knows the unit is kept."""

    def __init__(self, field: AnyQuantityField, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.exact = field.exact

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> AnyRead:
        given = check_keys(value, QUANTITY_KEYS - {"instrument"}, right_form(None))
        check_exact(self.exact, given)
        if "value" not in given:
            raise fail(FieldError("missing_field", "a value is missing").under("value"))
        if "unit" not in given:
            raise fail(FieldError("missing_unit", "a unit is missing, such as mm").under("unit"))
        number = nested("value", any_number, given["value"], -LARGEST)
        uncertainty = None
        if "uncertainty" in given:
            uncertainty = nested(
                "uncertainty", any_number, given["uncertainty"], SMALLEST_UNCERTAINTY
            )
        symbol, found = nested("unit", any_unit, given["unit"])
        return AnyRead(number, symbol, found, uncertainty)


@adapts(AnyQuantityField)
class AnyQuantityShape(Measured):
    """A number with a unit of any kind."""

    field: AnyQuantityField
    shape = "any_quantity"
    kind_is_open = True

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read number and unit; the kind is settled with the fields beside it."""
        return AnyQuantity(self.field, **about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the schema of a number with any unit that there is."""
        uncertainty = None if self.field.exact else UNCERTAINTY
        return self.described(any_quantity(every_symbol(), uncertainty=uncertainty))

    def in_json(self, value: tuple[float, str]) -> Json:
        """Return a number in the unit that the declaration has beside it."""
        return {"value": value[0], "unit": value[1]}

    def listing(self) -> JsonObject:
        """Return the word for the shape; it has no bounds."""
        return {"shape": self.shape}

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the quantity in its own unit, as it was given."""
        return answer_json.any_quantity(value, u, as_given=True)

    def example_text(self) -> str:
        """Return the example of the field, else a length."""
        value, unit = self.field.example or ANY_EXAMPLE
        return f"{value:g} {unit}"

    def parameter_schema(self) -> JsonObject:
        """Return the reference to the text of any kind."""
        return ref(ANY_EXACT_TEXT if self.field.exact else ANY_TEXT)

    def column_schema(self, most: int) -> JsonObject:
        """Return the schema of a column of numbers with any unit."""
        return measured_column("a number", every_symbol(), self.field.exact, most)

    def _check_unit(self, column: Mapping[str, object]) -> None:
        nested("unit", any_unit, column.get("unit"))


class UnitSymbol(ma.Field[UnitRead]):
    """A unit symbol of any kind."""

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> UnitRead:
        return UnitRead(*any_unit(value))


@adapts(UnitField)
class UnitShape(Worded, AsBare):
    """A unit symbol of any kind."""

    field: UnitField
    shape = "unit"
    kind_is_open = True

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read a symbol; the kind is settled with the fields beside it."""
        return UnitSymbol(**about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the list of all symbols."""
        return self.described(one_of(every_symbol()))

    def listing(self) -> JsonObject:
        """Return the word for the shape."""
        return {"shape": self.shape}

    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return the symbol as it was given."""
        symbol: str = value.symbol
        return symbol

    def parameter_schema(self) -> JsonObject:
        """Return the list of all symbols."""
        return one_of(every_symbol())
