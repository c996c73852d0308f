"""The text form of a request: query strings and cells, turned into the JSON form.

Every field has one but for records and sections: a list is parted by ``;``.
"""

from collections.abc import Iterable, Mapping
from functools import cache
from itertools import islice

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.reading.common_fields import (
    WITH_DECOMPRESSOR,
    checks_of,
    kinds_judged,
    limit_members,
)
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.number_text import STATED, bare_number, quantity_text
from ringland_service.api.shapes.quantity_checks import NO_UNCERTAINTY
from ringland_service.api.shapes.registry import adapters
from ringland_service.api.shapes.tokens import FLAGS
from ringland_service.core.declare import Composite, Operation, defaults

MOST_PARAMETERS = 2000


@cache
def offers_get(calculation: Operation) -> bool:
    """Return whether a calculation can be asked by GET: its required inputs have a text form."""
    known, optional = adapters(calculation.inputs), defaults(calculation.inputs)
    in_text = {name for name, shape in known.items() if isinstance(shape, InCells)}
    some = [any(in_text.issuperset(way) for way in ways) for ways in calculation.any_of]
    if isinstance(calculation, Composite) and any(shape.is_section for shape in known.values()):
        return False
    return in_text.issuperset(known.keys() - optional.keys()) and all(some)


@cache
def text_fields(calculation: Operation) -> Mapping[str, InCells]:
    """Return the fields that have a text form, by public name."""
    return {
        shape.field.public(name): shape
        for name, shape in adapters(calculation.inputs).items()
        if isinstance(shape, InCells)
    }


@cache
def readings_of(calculation: Operation) -> tuple[str, ...]:
    """Return the public names of the fields that are lists of readings."""
    return tuple(n for n, shape in text_fields(calculation).items() if shape.entries_under)


def as_json(
    calculation: Operation, parameters: Iterable[tuple[str, str]], form: str
) -> tuple[JsonObject, dict[str, str]]:
    """Return the JSON form of a query string, and the options that shape the answer.

    Raises
    ------
    FieldErrors
        With every parameter that is unknown, given twice, or cannot be read.
    """
    data: JsonObject = {}
    limits: dict[str, JsonObject] = {}
    options: dict[str, str] = {}
    faults: list[FieldError] = []
    known = text_fields(calculation)
    allowed = sorted([*known, *options_of(form), "rule", "defaults"])
    for name, text in _few(parameters):
        try:
            if name in data or name in options:
                raise FieldErrors([_twice(known.get(name))])
            if name in options_of(form):
                options[name] = _option(name, text)
            elif name in ("rule", "defaults"):
                data[name] = text
            elif name.startswith("limit."):
                _limit(calculation, limits, name, text)
            elif name in known:
                data[name] = known[name].from_text(text)
            else:
                raise FieldErrors([_unknown(name, allowed)])
        except FieldErrors as error:
            faults += [fault.under(name) for fault in error.faults]
    if faults:
        raise FieldErrors(faults)
    if limits:
        data["limits"] = dict(limits)
    return data, options


def _twice(shape: InCells | None) -> FieldError:
    """Return the fault of a parameter that is repeated; of a list, its right form."""
    listed = f": one list is needed, {shape.example_text()}" if shape and shape.is_list else ""
    return FieldError("given_twice", f"this parameter is given twice{listed}")


def _few(parameters: Iterable[tuple[str, str]]) -> list[tuple[str, str]]:
    """Return the parameters of a query string, no more than any question has.

    Raises
    ------
    FieldErrors
    """
    given = list(islice(parameters, MOST_PARAMETERS + 1))
    if len(given) > MOST_PARAMETERS:
        detail = f"more than {MOST_PARAMETERS} parameters in one address; send a body instead"
        raise FieldErrors([FieldError("too_many", detail, {"most": MOST_PARAMETERS})])
    return given


def _unknown(name: str, allowed: list[str]) -> FieldError:
    return FieldError("unknown_field", "no such parameter here", allowed, given=name)


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
        raise FieldErrors([FieldError("not_a_choice", detail, list(allowed), given=text)])
    return text


def response_options(parameters: Iterable[tuple[str, str]], form: str) -> dict[str, str]:
    """Return the options of a POST, whose question stands in the body."""
    options: dict[str, str] = {}
    faults: list[FieldError] = []
    for name, text in _few(parameters):
        try:
            if name not in options_of(form):
                raise FieldErrors([_unknown(name, sorted(options_of(form)))])
            if name in options:
                raise FieldErrors([FieldError("given_twice", "this parameter is given twice")])
            options[name] = _option(name, text)
        except FieldErrors as error:
            faults += [fault.under(name) for fault in error.faults]
    if faults:
        raise FieldErrors(faults)
    return options


def _limit(calculation: Operation, limits: dict[str, JsonObject], name: str, text: str) -> None:
    """Put ``limit.<check>.<side>`` into the JSON form of the limits."""
    _, _, rest = name.partition(".")
    check, _, member = rest.rpartition(".")
    kinds = kinds_judged(calculation)
    members = {c.name: limit_members(c) for c in checks_of(calculation)}
    if check not in kinds or member not in members[check]:
        allowed = [f"limit.{one}.{m}" for one, of in members.items() for m in of]
        raise FieldErrors([FieldError("unknown_field", "no such limit here", allowed, given=name)])
    if member in ("standing", "source"):
        value: Json = text
    elif member == WITH_DECOMPRESSOR:
        value = FLAGS.get(text, text)
    elif kinds[check] is None and STATED.search(text):
        raise FieldErrors([FieldError("exact", f"a limit {NO_UNCERTAINTY}", None, 422)])
    elif kinds[check] is None:
        value = bare_number(text)
    else:
        value = quantity_text(text)
    if member in limits.setdefault(check, {}):
        raise FieldErrors([FieldError("given_twice", "this parameter is given twice")])
    limits[check][member] = value


def unknown_parameters(parameters: Iterable[str]) -> list[FieldError]:
    """Return a fault for each parameter of an address that takes none."""
    return [
        FieldError("unknown_field", "this address takes no parameters", []).under(name)
        for name in parameters
    ]
