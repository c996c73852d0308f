"""The vocabulary of declared fields: what an input or a result can be.

Every form that a user touches (JSON, query string, column, OpenAPI, SDK, listing) is derived
from these few shapes. A field is data about a dataclass field; it holds no value.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from ringland_service.core.declare.kinds import Kind, public_name


@dataclass(frozen=True)
class QuantityType:
    """A quantity that the trade measures, with its bounds.

    Attributes
    ----------
    name : str
        Unique token; names the OpenAPI component.
    kind : Kind
    low, high : float
        Refused outside, in the canonical unit.
    description : str
    example : float
    decimals : int
        Suggested decimals in the canonical unit.
    warn_low, warn_high : float or None
        Answered with a warning outside.
    instrument : str
        What measures it on the bench.
    """

    name: str
    kind: Kind
    low: float
    high: float
    description: str
    example: float
    decimals: int = 3
    warn_low: float | None = None
    warn_high: float | None = None
    instrument: str = ""

    @property
    def span(self) -> float:
        """Width of the bounds, in the canonical unit."""
        return self.high - self.low

    @property
    def excludes_zero(self) -> bool:
        """Whether every value within the bounds is above zero, or every one below."""
        return self.low > 0 or self.high < 0

    def most_uncertainty(self, value: float) -> float:
        """Return the largest expanded uncertainty (k = 2) that a value can be meant with.

        A tenth of the span; a quarter of the value too where the bounds exclude zero (common
        practice, no source: more is a slip of the unit or the decimal point). Canonical unit.
        """
        tenth = self.span / 10.0
        return min(tenth, abs(value) / 4.0) if self.excludes_zero else tenth

    @property
    def scale(self) -> float:
        """Typical magnitude: sets the step of numeric derivatives, small against any curve."""
        return max(abs(self.example), 0.1 * self.span)


@dataclass(frozen=True, kw_only=True)
class Field:
    """What all fields share: ``required`` follows from the dataclass default."""

    description: str
    example: Any = None

    def public(self, name: str) -> str:
        """Return the field's name on the wire."""
        return name


@dataclass(frozen=True, kw_only=True)
class QuantityField(Field):
    """A number with a unit; ``exact`` where it takes no uncertainty of its own."""

    type: QuantityType
    exact: bool = False

    def public(self, name: str) -> str:
        """Return the name less the unit suffix."""
        return public_name(name, self.type.kind)


@dataclass(frozen=True, kw_only=True)
class ReadingsField(QuantityField):
    """A list of readings of one quantity, in one unit; with ``gaps`` some may be missing."""

    least: int
    most: int
    gaps: bool = False


@dataclass(frozen=True, kw_only=True)
class AnyQuantityField(Field):
    """A number with a unit of any kind; the value arrives as a ``Quantified``."""

    exact: bool = False


@dataclass(frozen=True, kw_only=True)
class NumberField(Field):
    """A bare number: a ratio, an exponent, a factor."""

    low: float
    high: float
    warn_low: float | None = None
    warn_high: float | None = None


@dataclass(frozen=True, kw_only=True)
class NumbersField(Field):
    """A list of bare numbers, each within the bounds."""

    low: float
    high: float
    least: int
    most: int


@dataclass(frozen=True, kw_only=True)
class CountField(Field):
    """A whole number."""

    low: int
    high: int


@dataclass(frozen=True, kw_only=True)
class FlagField(Field):
    """Yes or no."""


@dataclass(frozen=True, kw_only=True)
class ChoiceField(Field):
    """One of a closed list of tokens, each with its words."""

    choices: Mapping[str, str]


@dataclass(frozen=True, kw_only=True)
class ChoicesField(Field):
    """Some of a closed list of tokens, none of them twice; the list may be empty."""

    choices: Mapping[str, str]


@dataclass(frozen=True, kw_only=True)
class TextField(Field):
    """Free text that is carried along, never interpreted."""

    longest: int = 400


@dataclass(frozen=True, kw_only=True)
class RecordsField(Field):
    """A list of records of one shape."""

    record: type
    least: int = 1
    most: int = 50


@dataclass(frozen=True, kw_only=True)
class SectionField(Field):
    """An optional group of fields."""

    record: type


@dataclass(frozen=True, kw_only=True)
class LimitSideField(Field):
    """The request's own limit of a check, or one side of it; filled by the engine alone."""

    check: str
    side: str = ""


@dataclass(frozen=True, kw_only=True)
class FindingsField(Field):
    """The verdicts passed by earlier parts of a composite; filled by the engine alone."""


@dataclass(frozen=True, kw_only=True)
class HeldField(Field):
    """A choice that a record makes of its own values once; never asked of the user.

    The uncertainty of a result is found by moving one input a little. Near a balance that would
    tip the choice, and the step to another piston would pass for uncertainty. Moved copies keep
    the choice.
    """


@dataclass(frozen=True, kw_only=True)
class UsualFiguresField(Field):
    """Whether common-practice figures may stand in (``defaults``); filled by the engine alone."""


@dataclass(frozen=True, kw_only=True)
class UncertaintyOfField(Field):
    """The standard uncertainty stated of another input; filled by the engine alone."""

    of: str


FILLED_BY_THE_ENGINE = (
    LimitSideField,
    FindingsField,
    HeldField,
    UsualFiguresField,
    UncertaintyOfField,
)


@dataclass(frozen=True, kw_only=True)
class ResultField(Field):
    """A result: a quantity, a bare number, a count, a word, or a list of those.

    ``kind_of`` names the input of any kind whose kind the result has. ``formula`` is an expression
    in the names of the record's inputs and results; it is shown in words as the basis, and with
    numbers put in as the trace. ``basis`` says it in prose where an expression would mislead.
    ``record`` is the record of declared results that each row of a table has.
    ``common_practice`` marks a grade that falls away when the common-practice limits are switched
    off; ``extreme`` marks a largest or smallest of readings, where uncertainty may leave open which
    reading leads (the calculation's ``extremes`` says which readings); ``place`` marks where an
    extreme stands: no uncertainty shifts it.
    """

    kind: Kind | None = None
    kind_of: str = ""
    decimals: int | None = None
    formula: str = ""
    basis: str = ""
    source: str = ""
    choices: Mapping[str, str] | None = None
    record: type | None = None
    common_practice: bool = False
    extreme: bool = False
    place: bool = False

    def public(self, name: str) -> str:
        """Return the name less the unit suffix."""
        return public_name(name, self.kind)


@dataclass(frozen=True, kw_only=True)
class UnitField(Field):
    """A unit symbol of any kind; the value arrives as a ``UnitGiven``."""


@dataclass(frozen=True)
class UnitGiven:
    """A unit of one kind: canonical = value·ratio + offset.

    Attributes
    ----------
    ratio, origin : Fraction
        Factor and offset, exact.
    taken : bool
        Whether the symbol left its kind open (``bar`` between gauge and absolute) and the units
        beside it decided.
    ratios : mapping
        Exact factor of the symbol in every kind that knows it, by the kind's name.
    """

    symbol: str
    kind: Kind
    ratio: Fraction
    offset: float
    origin: Fraction = field(default=Fraction(0), compare=False)
    taken: bool = field(default=False, compare=False)
    ratios: Mapping[str, Fraction] = field(default_factory=dict, compare=False)


@dataclass(frozen=True)
class Quantified:
    """A value of any kind: the number in the canonical unit of its kind, and how it was given."""

    value: Any
    unit: UnitGiven
    given: float = 0.0

    @property
    def kind(self) -> Kind:
        """The kind of quantity."""
        return self.unit.kind


def kind_of(of: Field) -> Kind | None:
    """Return the kind that a field declares; None for a bare number, a word, or any kind."""
    if isinstance(of, ResultField):
        return of.kind
    return of.type.kind if isinstance(of, QuantityField) else None
