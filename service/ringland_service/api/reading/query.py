"""The text form of a request: query strings and cells, turned into the JSON form.

Every field has one but for records and sections: a list is parted by ``;``.
"""

from collections.abc import Iterable, Mapping
from functools import cache
from itertools import islice
from typing import Any

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading.envelope import (
    WITH_DECOMPRESSOR,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.reading.list_text import ListField, is_list, list_example, list_text
from ringland_service.api.reading.number_text import STATED, bare_number, quantity_text
from ringland_service.api.reading.quantity_fields import NO_UNCERTAINTY
from ringland_service.core.declare import Composite, Declared, asked, defaults
from ringland_service.core.declare import fields as declared
from ringland_service.core.declare.fields import Field

MOST_PARAMETERS = 2000

TEXT_SHAPES = (
    declared.NumberField,
    declared.CountField,
    declared.FlagField,
    declared.ChoiceField,
    declared.TextField,
    declared.AnyQuantityField,
    declared.UnitField,
)


def is_scalar(field: Field) -> bool:
    """Return whether a field is one value."""
    if isinstance(field, declared.ReadingsField):
        return False
    return isinstance(field, (declared.QuantityField, *TEXT_SHAPES))


def has_text(field: Field) -> bool:
    """Return whether a field has a text form: one value, or a list that a cell can hold."""
    return is_scalar(field) or is_list(field)


@cache
def offers_get(calculation: Declared) -> bool:
    """Return whether a calculation can be asked by GET: its required inputs have a text form."""
    known, optional = asked(calculation.inputs), defaults(calculation.inputs)
    needed = [field for name, field in known.items() if name not in optional]
    some = [
        any(all(has_text(known[name]) for name in way) for way in ways)
        for ways in calculation.one_of
    ]
    whole = not any(isinstance(field, declared.SectionField) for field in known.values())
    if isinstance(calculation, Composite) and not whole:
        return False
    return all(map(has_text, needed)) and all(some)


@cache
def text_fields(calculation: Declared) -> dict[str, Field]:
    """Return the fields that have a text form, by public name."""
    return {
        field.public(name): field
        for name, field in asked(calculation.inputs).items()
        if has_text(field)
    }


@cache
def readings_of(calculation: Declared) -> tuple[str, ...]:
    """Return the public names of the fields that are lists of readings."""
    known = text_fields(calculation)
    return tuple(n for n, f in known.items() if isinstance(f, declared.ReadingsField))


# What a quantity of any kind looks like where the field itself shows none.
ANY_EXAMPLE = (68.0, "mm")


def field_text(field: Field, text: str) -> Any:
    """Return the JSON form of a field's text."""
    if isinstance(field, ListField):
        return list_text(field, text)
    if isinstance(field, (declared.QuantityField, declared.AnyQuantityField)):
        return quantity_text(text, example_text(field))
    if isinstance(field, (declared.NumberField, declared.CountField)):
        return bare_number(text)
    if isinstance(field, declared.FlagField):
        return FLAGS.get(text, text)
    return text


def parameter_example(field: Field) -> Any:
    """Return the example of a query parameter."""
    shapes = (declared.NumberField, declared.CountField, declared.FlagField)
    return field.example if isinstance(field, shapes) else example_text(field)


def example_text(field: Field) -> str:
    """Return the text form of a field's example."""
    if isinstance(field, ListField):
        return list_example(field)
    if isinstance(field, declared.QuantityField) and field.example is None:
        return f"{field.type.example:g} {field.type.kind.unit}"
    if isinstance(field, declared.QuantityField):
        return f"{field.example:g} {field.type.kind.unit}"
    if isinstance(field, declared.AnyQuantityField):
        value, unit = field.example or ANY_EXAMPLE
        return f"{value:g} {unit}"
    if isinstance(field, declared.FlagField):
        return "true" if field.example else "false"
    return str(field.example)


def as_json(
    calculation: Declared, parameters: Iterable[tuple[str, str]], form: str
) -> tuple[dict[str, Any], dict[str, str]]:
    """Return the JSON form of a query string, and the options that shape the answer.

    Raises
    ------
    Faulty
        With every parameter that is unknown, given twice, or cannot be read.
    """
    data: dict[str, Any] = {}
    options: dict[str, str] = {}
    faults: list[Fault] = []
    known = text_fields(calculation)
    allowed = sorted([*known, *options_of(form), "rule", "defaults"])
    for name, text in _few(parameters):
        try:
            if name in data or name in options:
                raise Faulty([_twice(known.get(name))])
            if name in options_of(form):
                options[name] = _option(name, text)
            elif name in ("rule", "defaults"):
                data[name] = text
            elif name.startswith("limit."):
                _limit(calculation, data, name, text)
            elif name in known:
                data[name] = field_text(known[name], text)
            else:
                raise Faulty([_unknown(name, allowed)])
        except Faulty as error:
            faults += [fault.under(name) for fault in error.faults]
    if faults:
        raise Faulty(faults)
    return data, options


def _twice(field: Field | None) -> Fault:
    """Return the fault of a parameter that is repeated; of a list, its right form."""
    listed = f": one list is needed, {list_example(field)}" if isinstance(field, ListField) else ""
    return Fault("given_twice", f"this parameter is given twice{listed}")


def _few(parameters: Iterable[tuple[str, str]]) -> list[tuple[str, str]]:
    """Return the parameters of a query string, no more than any question has.

    Raises
    ------
    Faulty
    """
    given = list(islice(parameters, MOST_PARAMETERS + 1))
    if len(given) > MOST_PARAMETERS:
        detail = f"more than {MOST_PARAMETERS} parameters in one address; send a body instead"
        raise Faulty([Fault("too_many", detail, {"most": MOST_PARAMETERS})])
    return given


def _unknown(name: str, allowed: list[str]) -> Fault:
    return Fault("unknown_field", "no such parameter here", allowed, given=name)


# Options that shape the answer, not the question: what they may be, or None for a free name.
SHAPING: Mapping[str, tuple[str, ...] | None] = {
    "units": ("metric", "us"),
    "trace": ("true", "false"),
    "errors": ("status", "text"),
    "pick": None,
}
# The options of each form of answer; by Accept, only those that all forms share.
FORMS: Mapping[str, tuple[str, ...]] = {
    "": ("units", "trace"),
    ".txt": ("units", "trace", "errors", "pick"),
    ".csv": ("units",),
    "batch": ("units",),
}


def options_of(form: str) -> tuple[str, ...]:
    """Return the options that a form of answer takes; a page or a picture takes the units alone."""
    return FORMS.get(form, ("units",))


def _option(name: str, text: str) -> str:
    allowed = SHAPING[name]
    if allowed is not None and text not in allowed:
        detail = f"{text[:40]!r} is not one of {list(allowed)}"
        raise Faulty([Fault("not_a_choice", detail, list(allowed), given=text)])
    return text


def shaping(parameters: Iterable[tuple[str, str]], form: str) -> dict[str, str]:
    """Return the options of a POST, whose question stands in the body."""
    options: dict[str, str] = {}
    faults: list[Fault] = []
    for name, text in _few(parameters):
        try:
            if name not in options_of(form):
                raise Faulty([_unknown(name, sorted(options_of(form)))])
            if name in options:
                raise Faulty([Fault("given_twice", "this parameter is given twice")])
            options[name] = _option(name, text)
        except Faulty as error:
            faults += [fault.under(name) for fault in error.faults]
    if faults:
        raise Faulty(faults)
    return options


def _limit(calculation: Declared, data: dict[str, Any], name: str, text: str) -> None:
    """Put ``limit.<check>.<side>`` into the JSON form of the limits."""
    _, _, rest = name.partition(".")
    check, _, member = rest.rpartition(".")
    kinds = kinds_judged(calculation)
    members = {c.name: limit_members(c) for c in checks_of(calculation)}
    if check not in kinds or member not in members[check]:
        allowed = [f"limit.{one}.{m}" for one, of in members.items() for m in of]
        raise Faulty([Fault("unknown_field", "no such limit here", allowed, given=name)])
    if member in ("standing", "source"):
        value: Any = text
    elif member == WITH_DECOMPRESSOR:
        value = FLAGS.get(text, text)
    elif kinds[check] is None and STATED.search(text):
        raise Faulty([Fault("exact", f"a limit {NO_UNCERTAINTY}", None, 422)])
    elif kinds[check] is None:
        value = bare_number(text)
    else:
        value = quantity_text(text)
    limits = data.setdefault("limits", {})
    if member in limits.setdefault(check, {}):
        raise Faulty([Fault("given_twice", "this parameter is given twice")])
    limits[check][member] = value


FLAGS = {"true": True, "false": False}


def unknown_parameters(parameters: Iterable[str]) -> list[Fault]:
    """Return a fault for each parameter of an address that takes none."""
    return [
        Fault("unknown_field", "this address takes no parameters", []).under(name)
        for name in parameters
    ]
