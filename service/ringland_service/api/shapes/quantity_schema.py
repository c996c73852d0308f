"""OpenAPI schemas of quantities, one component a quantity of the trade."""

from collections.abc import Sequence

from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes.bounds import Bounds, bounds
from ringland_service.api.shapes.number_text import LONGEST, plain_pattern, quantity_pattern
from ringland_service.api.shapes.quantity_checks import LARGEST, SMALLEST_UNCERTAINTY
from ringland_service.api.shapes.schema_parts import Components, one_of, pascal, text_pattern
from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.declare.kinds import KINDS, Kind
from ringland_service.units import symbols

INSTRUMENT: JsonObject = {
    "type": "string",
    "minLength": 1,
    "maxLength": 40,
    "description": "id of an instrument described in measuring",
}


def quantity_component(of: QuantityType, components: Components) -> str:
    """Add the component of a quantity and return its name."""
    name = pascal(of.name)
    if name not in components:
        components[name] = {
            "type": "object",
            "description": _described(of),
            "required": ["value", "unit"],
            "additionalProperties": False,
            "properties": {
                "value": {"type": "number"},
                "unit": one_of(symbols(of.kind)),
                "uncertainty": {
                    "type": "number",
                    "description": "expanded uncertainty (k = 2), same unit",
                },
                "instrument": INSTRUMENT,
            },
            "not": {"required": ["uncertainty", "instrument"]},
            "anyOf": branches(of, "value"),
            "examples": [{"value": of.example, "unit": of.kind.unit}],
        }
    return name


def _described(of: QuantityType) -> str:
    usual = ""
    if of.warn_low is not None or of.warn_high is not None:
        low = "" if of.warn_low is None else f"{of.warn_low:g}"
        high = "" if of.warn_high is None else f"{of.warn_high:g}"
        usual = f"; usual {low} to {high} {of.kind.unit}"
    how = f"; measured with: {of.instrument}" if of.instrument else ""
    return f"{of.description}{usual}{how}"


def branches(of: QuantityType, member: str) -> list[Json]:
    """Return the bounds of ``member`` and uncertainty, a branch for the units that share them."""
    # Aliases share a branch.
    groups: dict[Bounds, list[str]] = {}
    for symbol in symbols(of.kind):
        groups.setdefault(bounds(of, symbol), []).append(symbol)
    return [_branch(within, group, member) for within, group in groups.items()]


def _branch(within: Bounds, group: Sequence[str], member: str) -> JsonObject:
    value: JsonObject = {"minimum": within.low, "maximum": within.high}
    if member == "values":
        value = {"items": value}
    return {
        "properties": {
            "unit": {"enum": list(group)},
            member: value,
            "uncertainty": {
                "minimum": within.least_uncertainty,
                "maximum": within.most_uncertainty,
            },
        }
    }


BOUNDED: JsonObject = {"type": "number", "minimum": -LARGEST, "maximum": LARGEST}
UNCERTAINTY: JsonObject = {"type": "number", "minimum": SMALLEST_UNCERTAINTY, "maximum": LARGEST}


def any_quantity(
    allowed: Sequence[str], value: JsonObject = BOUNDED, uncertainty: JsonObject | None = None
) -> JsonObject:
    """Return the schema of a number with one of many units."""
    more: JsonObject = {} if uncertainty is None else {"uncertainty": uncertainty}
    return {
        "type": "object",
        "required": ["value", "unit"],
        "additionalProperties": False,
        "properties": {"value": value, "unit": one_of(allowed), **more},
    }


def limit_quantity(kind: Kind | None) -> JsonObject:
    """Return the schema of one side of a limit."""
    return BOUNDED if kind is None else any_quantity(symbols(kind))


ANY_TEXT = "QuantityText"
ANY_EXACT_TEXT = "QuantityLimitText"


def text_name(kind: Kind, exact: bool) -> str:
    """Return the component of a quantity's text; an exact one and a limit take no uncertainty."""
    return f"{pascal(kind.name)}{'LimitText' if exact else 'Text'}"


def text_components() -> Components:
    """Return the components of quantities in their text form, by kind."""
    found: Components = {
        ANY_TEXT: text_pattern(quantity_pattern(None), LONGEST),
        ANY_EXACT_TEXT: text_pattern(plain_pattern(None), LONGEST),
    }
    for kind in KINDS.values():
        found[text_name(kind, False)] = text_pattern(quantity_pattern(kind), LONGEST)
        found[text_name(kind, True)] = text_pattern(plain_pattern(kind), LONGEST)
    return found
