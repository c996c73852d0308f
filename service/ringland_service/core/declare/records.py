"""The words of a declaration: records, and one helper a shape of field.

>>> @record
... class Inputs:
...     bore_mm: Number = quantity(BORE, "Cylinder bore")
"""

import dataclasses
from collections.abc import Mapping
from functools import cache
from typing import Any, TypeVar, dataclass_transform, get_args, get_origin

from ringland_service.core.declare.fields import (
    FILLED_BY_THE_ENGINE,
    AnyQuantityField,
    ChoiceField,
    ChoicesField,
    CountField,
    Field,
    FindingsField,
    FlagField,
    HeldField,
    LimitSideField,
    NumberField,
    NumbersField,
    Quantified,
    QuantityField,
    QuantityType,
    ReadingsField,
    RecordsField,
    ResultField,
    SectionField,
    TextField,
    UncertaintyOfField,
    UnitField,
    UsualFiguresField,
)

T = TypeVar("T")
KEY = "ringland"
REQUIRED = dataclasses.MISSING
NO_EXAMPLE: Any = object()


def _declare(field: Field, default: Any) -> Any:
    return dataclasses.field(default=default, metadata={KEY: field})


def quantity(
    of: QuantityType,
    words: str,
    *,
    default: Any = REQUIRED,
    example: Any = None,
    exact: bool = False,
) -> Any:
    """Declare a number with a unit; an exact one takes no uncertainty."""
    example = {None: of.example, NO_EXAMPLE: None}.get(example, example)
    return _declare(QuantityField(words=words, type=of, example=example, exact=exact), default)


def readings(
    of: QuantityType,
    words: str,
    *,
    least: int,
    most: int,
    example: tuple[float, ...] | None,
    gaps: bool = False,
    default: Any = REQUIRED,
) -> Any:
    """Declare a list of readings of one quantity."""
    field = ReadingsField(words=words, type=of, least=least, most=most, gaps=gaps, example=example)
    return _declare(field, default)


def any_quantity(
    words: str,
    *,
    example: tuple[float, str] | None,
    default: Any = REQUIRED,
    exact: bool = False,
) -> Any:
    """Declare a number with a unit of any kind; an exact one takes no uncertainty."""
    return _declare(AnyQuantityField(words=words, example=example, exact=exact), default)


def unit_symbol(words: str, *, example: str, default: Any = REQUIRED) -> Any:
    """Declare a unit symbol of any kind."""
    return _declare(UnitField(words=words, example=example), default)


def number(
    words: str,
    *,
    low: float,
    high: float,
    example: float,
    warn: tuple[float | None, float | None] = (None, None),
    default: Any = REQUIRED,
) -> Any:
    """Declare a bare number."""
    field = NumberField(
        words=words, low=low, high=high, example=example, warn_low=warn[0], warn_high=warn[1]
    )
    return _declare(field, default)


def numbers(
    words: str,
    *,
    low: float,
    high: float,
    least: int,
    most: int,
    example: tuple[float, ...] | None,
    default: Any = REQUIRED,
) -> Any:
    """Declare a list of bare numbers."""
    field = NumbersField(words=words, low=low, high=high, least=least, most=most, example=example)
    return _declare(field, default)


def count(words: str, *, low: int, high: int, example: int, default: Any = REQUIRED) -> Any:
    """Declare a whole number."""
    return _declare(CountField(words=words, low=low, high=high, example=example), default)


def flag(words: str, *, default: Any = REQUIRED, example: bool = True) -> Any:
    """Declare a yes or no."""
    return _declare(FlagField(words=words, example=example), default)


def choice(
    words: str, choices: Mapping[str, str], *, example: str | None, default: Any = REQUIRED
) -> Any:
    """Declare one of a closed list of tokens."""
    return _declare(ChoiceField(words=words, choices=choices, example=example), default)


def some_of(
    words: str,
    choices: Mapping[str, str],
    *,
    example: tuple[str, ...],
    default: Any = REQUIRED,
) -> Any:
    """Declare some of a closed list of tokens."""
    return _declare(ChoicesField(words=words, choices=choices, example=example), default)


def text(words: str, *, example: str, longest: int = 400, default: Any = REQUIRED) -> Any:
    """Declare free text."""
    return _declare(TextField(words=words, example=example, longest=longest), default)


def records(
    record: type,
    words: str,
    *,
    least: int = 1,
    most: int = 50,
    example: tuple[Any, ...] | None = None,
    default: Any = REQUIRED,
) -> Any:
    """Declare a list of records; without an example of its own, one record of its examples.

    An empty example is none at all.
    """
    field = RecordsField(words=words, record=record, least=least, most=most, example=example)
    return _declare(field, default)


def section(record: type, words: str) -> Any:
    """Declare an optional group of fields."""
    return _declare(SectionField(words=words, record=record), None)


def limit_side(check: str, side: str) -> Any:
    """Declare one side of the request's own limit of ``check``; the engine fills it."""
    return _declare(LimitSideField(words="", check=check, side=side), None)


def limit_of(check: str) -> Any:
    """Declare the request's own limit of ``check``, whole; the engine fills it."""
    return _declare(LimitSideField(words="", check=check), None)


def findings_so_far() -> Any:
    """Declare the verdicts of a composite's earlier parts; the engine fills them."""
    return _declare(FindingsField(words=""), ())


def usual_figures() -> Any:
    """Declare whether common-practice figures may stand in; the engine fills it."""
    return _declare(UsualFiguresField(words=""), True)


def uncertainty_of(name: str) -> Any:
    """Declare the standard uncertainty stated of another input; the engine fills it."""
    return _declare(UncertaintyOfField(words="", of=name), None)


def held() -> Any:
    """Declare a choice that the record makes once in its ``__post_init__``."""
    return _declare(HeldField(words=""), None)


def same(record: type, name: str, *, default: Any = None, **changed: Any) -> Any:
    """Declare a field as another record has it, optional here; ``changed`` tells what differs."""
    field = declared(record)[name]
    return _declare(dataclasses.replace(field, **changed), default)


# Fields taken over from another record: by name, or as (name here, name there).
Taken = tuple[type, tuple[str | tuple[str, str], ...]]


def optional(name: str, words: str, *taken: Taken, unsaid: tuple[str, ...] = ()) -> type:
    """Make a record of fields as other records have them, all optional.

    Fields named in ``unsaid`` go without an example, where all examples together would contradict
    each other.
    """
    fields: list[tuple[str, Any, Any]] = []
    for other, names in taken:
        for pair in names:
            here, there = (pair, pair) if isinstance(pair, str) else pair
            none = () if isinstance(declared(other)[there], RecordsField) else None
            changed = {"example": none} if here in unsaid else {}
            fields.append((here, Any, same(other, there, **changed)))
    namespace = {"__doc__": words}
    return dataclasses.make_dataclass(name, fields, namespace=namespace, frozen=True, kw_only=True)


def result(words: str, **about: Any) -> Any:
    """Declare a result; see ``ResultField`` for what may be said about it."""
    default = about.pop("default", REQUIRED)
    return _declare(ResultField(words=words, **about), default)


@dataclass_transform(
    kw_only_default=True,
    frozen_default=True,
    field_specifiers=(
        quantity,
        readings,
        any_quantity,
        unit_symbol,
        number,
        numbers,
        count,
        flag,
        choice,
        some_of,
        text,
        records,
        section,
        limit_side,
        limit_of,
        findings_so_far,
        usual_figures,
        uncertainty_of,
        held,
        same,
        result,
    ),
)
def record(cls: type[T]) -> type[T]:
    """Make a frozen, keyword-only dataclass of declared fields."""
    return dataclasses.dataclass(frozen=True, kw_only=True)(cls)


@cache
def declared(record: type) -> Mapping[str, Field]:
    """Return the declared fields of a record by name, in order."""
    return {f.name: f.metadata[KEY] for f in dataclasses.fields(record)}


@cache
def asked(record: type) -> Mapping[str, Field]:
    """Return the declared fields that a user may fill."""
    found = declared(record).items()
    return {n: f for n, f in found if not isinstance(f, FILLED_BY_THE_ENGINE)}


def result_shapes(record: type) -> dict[str, str]:
    """Return what each field of a record holds, in JSON's terms, by its annotation."""
    return {f.name: _shape(f.type) for f in dataclasses.fields(record)}


def _shape(annotation: Any) -> str:
    """Return list, string, boolean, integer, quantity or number."""
    options = [a for a in (get_args(annotation) or (annotation,)) if a is not type(None)]
    if get_origin(annotation) is tuple or any(get_origin(a) is tuple for a in options):
        return "list"
    names = {str: "string", bool: "boolean", int: "integer", Quantified: "quantity"}
    return next((word for of, word in names.items() if of in options), "number")


@cache
def defaults(record: type) -> Mapping[str, Any]:
    """Return the defaults of the optional fields by name."""
    return {
        f.name: f.default
        for f in dataclasses.fields(record)
        if f.default is not dataclasses.MISSING
    }
