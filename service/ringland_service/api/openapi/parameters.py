"""OpenAPI query parameters of the text form: fields, limits, options."""

from typing import Any

from ringland_service.api.openapi.fields import Components, pascal, ref
from ringland_service.api.reading import query
from ringland_service.api.reading.envelope import (
    LONGEST_SOURCE,
    WITH_DECOMPRESSOR,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.reading.list_text import (
    LONGEST_LIST,
    ListField,
    list_pattern,
    list_words,
)
from ringland_service.api.reading.number_text import LONGEST, plain_pattern, quantity_pattern
from ringland_service.api.reading.quantity_fields import LARGEST
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare import Declared, asked, defaults
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field
from ringland_service.core.declare.kinds import KINDS, Kind
from ringland_service.core.metrology.conformity import RULES
from ringland_service.core.metrology.limits import STANDINGS
from ringland_service.units import every_symbol


def field_parameters(calculation: Declared) -> list[dict[str, Any]]:
    """Return the query parameters of a calculation's fields."""
    optional = defaults(calculation.inputs)
    return [
        {
            "name": field.public(name),
            "in": "query",
            "required": name not in optional,
            "description": list_words(field) if isinstance(field, ListField) else field.words,
            "schema": _text_schema(field),
            **_example(field),
        }
        for name, field in asked(calculation.inputs).items()
        if query.has_text(field)
    ]


def _example(field: Field) -> dict[str, Any]:
    return {} if field.example is None else {"example": query.parameter_example(field)}


def _pattern(pattern: str, longest: int = LONGEST) -> dict[str, Any]:
    return {"type": "string", "maxLength": longest, "pattern": pattern}


ANY_TEXT = "QuantityText"
ANY_EXACT_TEXT = "QuantityLimitText"


def _quantity_text(kind: Kind) -> str:
    return f"{pascal(kind.name)}Text"


def _limit_text(kind: Kind) -> str:
    return f"{pascal(kind.name)}LimitText"


def _list_text(field: declared.ReadingsField | declared.NumbersField) -> str:
    """Return the component of a list's text; fields alike in kind and count share it."""
    of = pascal(field.type.kind.name) if isinstance(field, declared.ReadingsField) else "Number"
    marks = "".join(m.capitalize() for m in ("gaps", "exact") if getattr(field, m, False))
    return f"{of}List{field.least}To{field.most}{marks}Text"


def text_components() -> Components:
    """Return the components of quantities in their text form, by kind."""
    found: Components = {
        ANY_TEXT: _pattern(quantity_pattern(None)),
        ANY_EXACT_TEXT: _pattern(plain_pattern(None)),
    }
    for kind in KINDS.values():
        found[_quantity_text(kind)] = _pattern(quantity_pattern(kind))
        found[_limit_text(kind)] = _pattern(plain_pattern(kind))
    for calculation in CALCULATIONS:
        for field in query.text_fields(calculation).values():
            if isinstance(field, (declared.ReadingsField, declared.NumbersField)):
                found[_list_text(field)] = _pattern(list_pattern(field), LONGEST_LIST)
    return found


def _text_schema(field: Field) -> dict[str, Any]:
    if isinstance(field, declared.ChoicesField):
        return _pattern(list_pattern(field), LONGEST_LIST)
    if isinstance(field, (declared.ReadingsField, declared.NumbersField)):
        return ref(_list_text(field))
    if isinstance(field, declared.QuantityField):
        kind = field.type.kind
        return ref(_limit_text(kind) if field.exact else _quantity_text(kind))
    if isinstance(field, declared.AnyQuantityField):
        return ref(ANY_EXACT_TEXT if field.exact else ANY_TEXT)
    if isinstance(field, (declared.NumberField, declared.CountField)):
        shape = "integer" if isinstance(field, declared.CountField) else "number"
        return {"type": shape, "minimum": field.low, "maximum": field.high}
    if isinstance(field, declared.FlagField):
        return {"type": "boolean"}
    if isinstance(field, declared.ChoiceField):
        return {"type": "string", "enum": list(field.choices)}
    if isinstance(field, declared.UnitField):
        return {"type": "string", "enum": list(every_symbol())}
    assert isinstance(field, declared.TextField)  # noqa: S101 - the last scalar shape
    return {"type": "string", "maxLength": field.longest}


def limit_parameters(calculation: Declared) -> list[dict[str, Any]]:
    """Return the query parameters of rule, defaults and the checks' limits."""
    found = [
        _parameter("rule", {"type": "string", "enum": list(RULES)}, "decision rule"),
        _parameter(
            "defaults",
            {"type": "string", "enum": ["on", "off"]},
            "whether common-practice figures stand in, as limits and in the arithmetic",
        ),
    ]
    members = {check.name: limit_members(check) for check in checks_of(calculation)}
    for check, kind in kinds_judged(calculation).items():
        side: dict[str, Any] = {"type": "number", "minimum": -LARGEST, "maximum": LARGEST}
        if kind is not None:
            side = ref(_limit_text(kind))
        for name in ("low", "high"):
            found.append(_parameter(f"limit.{check}.{name}", side, f"{name} limit of {check}"))
        standing = {"type": "string", "enum": list(STANDINGS)}
        found.append(_parameter(f"limit.{check}.standing", standing, f"standing of {check}"))
        source = {"type": "string", "maxLength": LONGEST_SOURCE}
        found.append(_parameter(f"limit.{check}.source", source, f"source of {check}"))
        if WITH_DECOMPRESSOR in members[check]:
            words = f"{check}: stated with the decompressor at work"
            name = f"limit.{check}.{WITH_DECOMPRESSOR}"
            found.append(_parameter(name, {"type": "boolean"}, words))
    return found


def _parameter(name: str, schema: dict[str, Any], words: str) -> dict[str, Any]:
    return {
        "name": name,
        "in": "query",
        "required": False,
        "description": words,
        "schema": schema,
    }


SHAPING_WORDS = {
    "units": "units of the answer",
    "trace": "whether to show each formula with its numbers",
    "pick": "the one result (or check) to answer, alone",
}


def shaping_parameter(name: str) -> dict[str, Any]:
    """Return the parameter of an option that shapes the answer."""
    allowed = query.SHAPING[name]
    schema: dict[str, Any] = {"type": "string", "maxLength": 80}
    if allowed is not None:
        schema = {"type": "string", "enum": list(allowed)}
    return _parameter(name, schema, SHAPING_WORDS[name])
