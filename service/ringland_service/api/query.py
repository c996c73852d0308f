"""The text form of a request: query strings and cells, turned into the JSON form.

``68.0 mm``, ``68.0mm``, ``2.677 in``, ``68.0 mm +/- 0.004``. A ``+`` in a query string arrives as
a space, so ``+/-`` half decoded (``/-``) is understood too, and so is ``±``.
"""

import math
import re
from collections.abc import Iterable, Mapping
from functools import cache
from itertools import islice
from typing import Any

from ringland_service.api.envelope import (
    WITH_DECOMPRESSOR,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.quantity_fields import NO_UNCERTAINTY
from ringland_service.core import fields as declared
from ringland_service.core.declare import Composite, Declared, asked, defaults
from ringland_service.core.fields import Field
from ringland_service.core.kinds import Kind
from ringland_service.units import every_symbol, symbols

NUMBER = r"[+-]?(?:[0-9]{1,12}(?:\.[0-9]{0,20})?|\.[0-9]{1,20})(?:[eE][+-]?[0-9]{1,2})?"
PLUS_MINUS = r"(?:±|\+/-|/-)"
_NUMBER = re.compile(NUMBER)
# A bare number may be as small as a float can hold.
_BARE = re.compile(NUMBER.replace("{1,2}", "{1,3}"))
_SEPARATOR = re.compile(PLUS_MINUS)
_WHOLE = re.compile(r"[+-]?[0-9]{1,12}")
LONGEST = 80
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
    """Return whether a field has a text form."""
    if isinstance(field, declared.ReadingsField):
        return False
    return isinstance(field, (declared.QuantityField, *TEXT_SHAPES))


@cache
def offers_get(calculation: Declared) -> bool:
    """Return whether a calculation can be asked by GET: its required inputs are scalars."""
    known, optional = asked(calculation.inputs), defaults(calculation.inputs)
    needed = [field for name, field in known.items() if name not in optional]
    some = [
        any(all(is_scalar(known[name]) for name in way) for way in ways)
        for ways in calculation.one_of
    ]
    whole = not any(isinstance(field, declared.SectionField) for field in known.values())
    if isinstance(calculation, Composite) and not whole:
        return False
    return all(map(is_scalar, needed)) and all(some)


@cache
def scalar_fields(calculation: Declared) -> dict[str, Field]:
    """Return the fields that have a text form, by public name."""
    return {
        field.public(name): field
        for name, field in asked(calculation.inputs).items()
        if is_scalar(field)
    }


def quantity_pattern(kind: Kind | None) -> str:
    """Return the pattern of a quantity's text, for the OpenAPI document."""
    known = symbols(kind) if kind else every_symbol()
    plain, counted = _alternatives(known, False), _alternatives(known, True)
    units = [rf"\s*({plain})"] * bool(plain) + [rf"\s+({counted})"] * bool(counted)
    return rf"^\s*{NUMBER}({'|'.join(units)})(\s*{PLUS_MINUS}\s*{NUMBER})?\s*$"


def plain_pattern(kind: Kind | None) -> str:
    """Return the pattern of a quantity's text without a doubt: a limit."""
    return quantity_pattern(kind).replace(rf"(\s*{PLUS_MINUS}\s*{NUMBER})?", "")


def _alternatives(known: Iterable[str], counted: bool) -> str:
    """Return symbols as a pattern; those that begin with a digit need a space before them."""
    chosen = sorted((s for s in known if s[0].isdigit() is counted), key=len, reverse=True)
    return "|".join(re.escape(s).replace("\\ ", " ").replace("\\-", "-") for s in chosen)


# What a quantity of any kind looks like where the field itself shows none.
ANY_EXAMPLE = (68.0, "mm")


def quantity_text(text: str, example: str = "68.0 mm") -> dict[str, Any]:
    """Return the JSON form of a quantity's text.

    Raises
    ------
    Faulty
        Where it is not a number with a unit, with or without ± a doubt.
    """
    left, *doubt = _SEPARATOR.split(text, maxsplit=1) if len(text) <= LONGEST else [""]
    number = _NUMBER.match(left.strip())
    if number is None or (doubt and not _NUMBER.fullmatch(doubt[-1].strip())):
        raise Faulty([Fault("not_a_quantity", f"not a quantity: write {example}", example)])
    symbol = left.strip()[number.end() :].strip()
    if not symbol:
        detail = f"a number alone has no unit: write {example}"
        raise Faulty([Fault("missing_unit", detail, example)])
    found: dict[str, Any] = {"value": _float(number[0]), "unit": symbol}
    if doubt:
        found["uncertainty"] = _float(doubt[-1].strip())
    return found


def _float(text: str) -> float:
    """Return a number as JSON would hold it: whole where it is written whole."""
    return int(text) if _WHOLE.fullmatch(text) else float(text)


def scalar_text(field: Field, text: str) -> Any:
    """Return the JSON form of a field's text."""
    if isinstance(field, (declared.QuantityField, declared.AnyQuantityField)):
        return quantity_text(text, example_text(field))
    if isinstance(field, (declared.NumberField, declared.CountField)):
        if not _BARE.fullmatch(text) or not math.isfinite(float(text)):
            raise Faulty([Fault("wrong_type", f"not a number: {text[:40]!r}", "a number")])
        return _float(text)
    if isinstance(field, declared.FlagField):
        return FLAGS.get(text, text)
    return text


def parameter_example(field: Field) -> Any:
    """Return the example of a query parameter."""
    shapes = (declared.NumberField, declared.CountField, declared.FlagField)
    return field.example if isinstance(field, shapes) else example_text(field)


def example_text(field: Field) -> str:
    """Return the text form of a field's example."""
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
    known = scalar_fields(calculation)
    allowed = sorted([*known, *options_of(form), "rule", "defaults"])
    for name, text in _few(parameters):
        try:
            if name in data or name in options:
                raise Faulty([Fault("given_twice", "this parameter is given twice")])
            if name in options_of(form):
                options[name] = _option(name, text)
            elif name in ("rule", "defaults"):
                data[name] = text
            elif name.startswith("limit."):
                _limit(calculation, data, name, text)
            elif name in known:
                data[name] = scalar_text(known[name], text)
            else:
                raise Faulty([_unknown(name, allowed)])
        except Faulty as error:
            faults += [fault.under(name) for fault in error.faults]
    if faults:
        raise Faulty(faults)
    return data, options


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
    elif kinds[check] is None and _SEPARATOR.search(text):
        raise Faulty([Fault("exact", f"a limit {NO_UNCERTAINTY}", None, 422)])
    elif kinds[check] is None:
        value = scalar_text(RATIO, text)
    else:
        value = quantity_text(text)
    limits = data.setdefault("limits", {})
    if member in limits.setdefault(check, {}):
        raise Faulty([Fault("given_twice", "this parameter is given twice")])
    limits[check][member] = value


FLAGS = {"true": True, "false": False}
RATIO = declared.NumberField(words="a bare number", low=-1e9, high=1e9)


def unknown_parameters(parameters: Iterable[str]) -> list[Fault]:
    """Return a fault for each parameter of an address that takes none."""
    return [
        Fault("unknown_field", "this address takes no parameters", []).under(name)
        for name in parameters
    ]
