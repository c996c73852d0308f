"""The declaration of a calculation: everything else is derived from it.

>>> @record
... class Inputs:
...     bore_mm: Number = quantity(BORE, "Cylinder bore")
"""

import dataclasses
from collections.abc import Callable, Mapping
from functools import cache
from typing import Any, TypeVar, dataclass_transform, get_args, get_origin

from ringland_service.core.fields import (
    AnyQuantityField,
    ChoiceField,
    CountField,
    Field,
    FindingsField,
    FlagField,
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
    UnitField,
)
from ringland_service.core.limits import Limit
from ringland_service.core.uncertainty import Influence

T = TypeVar("T")
KEY = "ringland"
# Fields that must be given together to answer one need.
Way = tuple[str, ...]
REQUIRED = dataclasses.MISSING
NO_EXAMPLE: Any = object()


def _declare(field: Field, default: Any) -> Any:
    return dataclasses.field(default=default, metadata={KEY: field})


def quantity(of: QuantityType, words: str, *, default: Any = REQUIRED, example: Any = None) -> Any:
    """Declare a number with a unit."""
    example = {None: of.example, NO_EXAMPLE: None}.get(example, example)
    return _declare(QuantityField(words=words, type=of, example=example), default)


def readings(
    of: QuantityType,
    words: str,
    *,
    least: int,
    most: int,
    example: tuple[float, ...],
    gaps: bool = False,
    default: Any = REQUIRED,
) -> Any:
    """Declare a list of readings of one quantity."""
    field = ReadingsField(words=words, type=of, least=least, most=most, gaps=gaps, example=example)
    return _declare(field, default)


def any_quantity(words: str, *, example: tuple[float, str] | None, default: Any = REQUIRED) -> Any:
    """Declare a number with a unit of any kind."""
    return _declare(AnyQuantityField(words=words, example=example), default)


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
    example: tuple[float, ...],
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


def choice(words: str, choices: Mapping[str, str], *, example: str, default: Any = REQUIRED) -> Any:
    """Declare one of a closed list of tokens."""
    return _declare(ChoiceField(words=words, choices=choices, example=example), default)


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
    """Declare a list of records; without an example of its own, one record of its examples."""
    field = RecordsField(words=words, record=record, least=least, most=most, example=example)
    return _declare(field, default)


def section(record: type, words: str) -> Any:
    """Declare an optional group of fields."""
    return _declare(SectionField(words=words, record=record), None)


def limit_side(check: str, side: str) -> Any:
    """Declare one side of the request's own limit of ``check``; the engine fills it."""
    return _declare(LimitSideField(words="", check=check, side=side), None)


def findings_so_far() -> Any:
    """Declare the verdicts of a composite's earlier parts; the engine fills them."""
    return _declare(FindingsField(words=""), ())


def same(record: type, name: str, *, default: Any = None, **changed: Any) -> Any:
    """Declare a field as another record has it, optional here; ``changed`` tells what differs."""
    field = declared(record)[name]
    return _declare(dataclasses.replace(field, **changed), default)


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
        text,
        records,
        section,
        limit_side,
        findings_so_far,
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
    filled = (LimitSideField, FindingsField)
    return {n: f for n, f in declared(record).items() if not isinstance(f, filled)}


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


@dataclasses.dataclass(frozen=True)
class Rule:
    """A rule between fields. Skipped while one of the fields is absent.

    ``broken`` takes the inputs and answers a bool, or an array of them for a column.
    ``field`` (the first of ``fields``) is the one that the error names.
    """

    fields: tuple[str, ...]
    broken: Callable[[Any], Any]
    message: str
    right: str


@dataclasses.dataclass(frozen=True)
class Notice:
    """A warning that rides with an answer. ``when`` takes inputs and results."""

    code: str
    field: str
    when: Callable[[Any, Any], Any]
    message: str


@dataclasses.dataclass(frozen=True)
class Check:
    """A verdict to be passed on one value.

    Attributes
    ----------
    name : str
        Unique over all calculations, so that a whole job can address it.
    value : str
        Name of the result (or input) judged.
    words : str
    default : callable or None
        Takes inputs and results, returns the ``Limit`` that judges when the request gives none.
    settle : str
        What would narrow the doubt.
    doubt_fails : str
        Where set, too close to call counts as fail; says why.
    """

    name: str
    value: str
    words: str
    settle: str
    default: Callable[[Any, Any], Limit | None] | None = None
    doubt_fails: str = ""


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class Declared:
    """What every question under ``/v1`` has.

    Attributes
    ----------
    name : str
        Path under ``/v1``.
    number : str
        Number in the trade's list of calculations.
    stage, title, summary : str
    inputs : type
        Record of declared fields.
    one_of : tuple of tuple of Way
        Each a list of ways, of which one must be given; a way is one field, or several together.
    rules : tuple of Rule
    cautions : tuple of str
        Steps of the table of cautions that ride with every answer.
    formulas : str
        Version of the arithmetic; part of every answer and of the cache tag.
    """

    name: str
    number: str
    stage: str
    title: str
    summary: str
    inputs: type
    one_of: tuple[tuple[Way, ...], ...] = ()
    rules: tuple[Rule, ...] = ()
    cautions: tuple[str, ...] = ()
    formulas: str = "1"


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class Calculation(Declared):
    """One calculation: its fields, its arithmetic, what is judged and what rides along.

    Attributes
    ----------
    outputs : type
        Record of declared results.
    compute : callable
        Pure; takes an ``inputs`` record, returns an ``outputs`` record.
    checks : tuple of Check
    notices : tuple of Notice
    influences : callable or None
        Takes the inputs, returns further influences on them that no single field states.
    columns : bool
        Whether ``compute`` takes columns; otherwise a batch goes row by row.
    """

    outputs: type
    compute: Callable[[Any], Any]
    checks: tuple[Check, ...] = ()
    notices: tuple[Notice, ...] = ()
    influences: Callable[[Any], list[Influence]] | None = None
    columns: bool = True


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class Step:
    """One part of a composite: a calculation, and where its inputs come from.

    Attributes
    ----------
    part : str
        Name of the part in the answer.
    calculation : Calculation
    purpose : str
        What the part tells; said where it is still open.
    sources : mapping
        Field of the calculation to where it may come from, best first: a field of the
        composite, or ``part.result`` of an earlier step. Fields not named come from the
        composite's field of the same name.
    when : callable
        Takes the composite's known values by name; whether the part applies to this engine.
    """

    part: str
    calculation: Calculation
    purpose: str
    sources: Mapping[str, tuple[str, ...]] = dataclasses.field(default_factory=dict)
    when: Callable[[Mapping[str, Any]], bool] = lambda known: True


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class Composite(Declared):
    """Several calculations in one answer, each as soon as its inputs are known.

    Attributes
    ----------
    steps : tuple of Step
        In order; a later one may use the results of an earlier one.
    derive : callable or None
        Takes the known values by name; returns further ones, each with the name of the field
        that it was taken from (and whose doubt it keeps).
    """

    steps: tuple[Step, ...]
    derive: Callable[[Mapping[str, Any]], Mapping[str, tuple[Any, str]]] | None = None

    @property
    def checks(self) -> tuple[Check, ...]:
        """The checks of all parts; names are unique, so one request can address any."""
        return tuple(check for step in self.steps for check in step.calculation.checks)
