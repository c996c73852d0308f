"""The declaration of a calculation: everything else is derived from it.

The words of its records come from ``records.py`` and are had from here as well.
"""

import dataclasses
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from ringland_service.core.limits import Limit
from ringland_service.core.records import (
    NO_EXAMPLE,
    REQUIRED,
    any_quantity,
    asked,
    choice,
    count,
    declared,
    defaults,
    findings_so_far,
    flag,
    held,
    limit_of,
    limit_side,
    number,
    numbers,
    optional,
    quantity,
    readings,
    record,
    records,
    result,
    result_shapes,
    same,
    section,
    some_of,
    text,
    uncertainty_of,
    unit_symbol,
    usual_figures,
)
from ringland_service.core.uncertainty import Influence
from ringland_service.core.unjudged import LOWERS, RAISES, Unjudged
from ringland_service.core.usual import Figure, usual

__all__ = [
    "LOWERS",
    "NO_EXAMPLE",
    "RAISES",
    "REQUIRED",
    "Calculation",
    "Check",
    "Composite",
    "Declared",
    "Figure",
    "Notice",
    "Rule",
    "Step",
    "Unjudged",
    "Want",
    "Way",
    "any_quantity",
    "asked",
    "choice",
    "count",
    "declared",
    "defaults",
    "findings_so_far",
    "flag",
    "held",
    "limit_of",
    "limit_side",
    "number",
    "numbers",
    "optional",
    "quantity",
    "readings",
    "record",
    "records",
    "result",
    "result_shapes",
    "same",
    "section",
    "some_of",
    "text",
    "uncertainty_of",
    "unit_symbol",
    "usual",
    "usual_figures",
]

# Fields that must be given together to answer one need.
Way = tuple[str, ...]


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
    """A warning that rides with an answer. ``when`` takes inputs and results.

    ``unless_doubted`` names a quantity, of the inputs or of the records in them, whose stated doubt
    silences it. ``common_practice`` marks one that a figure of the tables raises: it falls away
    with the common-practice figures.
    """

    code: str
    field: str
    when: Callable[[Any, Any], Any]
    message: str
    unless_doubted: str = ""
    common_practice: bool = False


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
        Takes inputs and results, returns the ``Limit`` that judges when the request gives none;
        with ``each`` perhaps a tuple of them, one a member.
    settle : str
        What would narrow the doubt.
    doubt_fails : str
        Where set, too close to call counts as fail; says why.
    each : str
        Where ``value`` is a list, each of its members gets a verdict of its own; names the list
        of results that says which is which.
    unjudged : tuple of Unjudged
        The conditions under which no verdict is due, the weightiest first.
    with_decompressor : bool
        Whether a limit may say that it is stated with the decompressor at work.
    """

    name: str
    value: str
    words: str
    settle: str
    default: Callable[[Any, Any], Limit | tuple[Limit, ...] | None] | None = None
    doubt_fails: str = ""
    each: str = ""
    unjudged: tuple[Unjudged, ...] = ()
    with_decompressor: bool = False


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
    figures : tuple of Figure
        Common-practice figures that stand in where a field is left out.
    one_for_one : callable or None
        Takes the inputs; names results that move one for one with inputs, and with which: their
        uncertainty is that of those inputs, to the last digit.
    columns : bool
        Whether ``compute`` takes columns; otherwise a batch goes row by row.
    """

    outputs: type
    compute: Callable[[Any], Any]
    checks: tuple[Check, ...] = ()
    notices: tuple[Notice, ...] = ()
    influences: Callable[[Any], list[Influence]] | None = None
    figures: tuple[Figure, ...] = ()
    one_for_one: Callable[[Any], Mapping[str, tuple[tuple[str, ...], ...]]] | None = None
    columns: bool = True


@dataclasses.dataclass(frozen=True)
class Want:
    """What to measure or tell more, and why; each way a set of fields, any one way will do.

    Where no further field would tell, ``advice`` says what to do with those given.
    """

    why: str
    ways: tuple[Way, ...] = ()
    advice: str = ""


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
    title : str
        Heading of the part where the calculation's own would mislead.
    wants : callable
        Takes the part's inputs and results; what more to measure or tell, that would change them.
    """

    part: str
    calculation: Calculation
    purpose: str
    sources: Mapping[str, tuple[str, ...]] = dataclasses.field(default_factory=dict)
    when: Callable[[Mapping[str, Any]], bool] = lambda known: True
    title: str = ""
    wants: Callable[[Any, Any], Sequence["Want"]] = lambda inputs, outputs: ()

    @property
    def heading(self) -> str:
        """What the part is called where people read it."""
        return self.title or self.calculation.title


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
