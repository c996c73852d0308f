"""The declaration of a calculation: everything else is derived from it.

The words of its records come from ``records.py`` and are had from here as well.
"""

import dataclasses
from collections.abc import Callable, Collection, Mapping, Sequence
from typing import Any

from ringland_service.core.candidates import Candidates
from ringland_service.core.holding import Agreement, Check, Notice, Rule, Want, Way
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
    "Agreement",
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
    agreements : tuple of Agreement
        What is told in several fields and must agree within its uncertainty.
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
    agreements: tuple[Agreement, ...] = ()
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
    extremes : callable or None
        Takes the inputs; returns, by the name of each result that rests on a largest or a smallest
        of several readings, what it is the largest or smallest of (of a list of results a tuple).
    one_for_one : callable or None
        Takes the inputs; names results that move one for one with inputs, and with which: their
        uncertainty is that of those inputs, to the last digit.
    columns : bool
        Whether ``compute`` takes columns; otherwise a batch goes row by row.
    columns_in : tuple of str
        Lists and sections of the inputs whose single readings ``compute`` takes as columns too.
    left_out : callable or None
        Takes the inputs; returns the paths of readings that no result rests on, such as pieces
        that a choice left lying. Their uncertainty is not worked through: it moves nothing.
    """

    outputs: type
    compute: Callable[[Any], Any]
    checks: tuple[Check, ...] = ()
    notices: tuple[Notice, ...] = ()
    influences: Callable[[Any], list[Influence]] | None = None
    figures: tuple[Figure, ...] = ()
    extremes: Callable[[Any], Mapping[str, Candidates | tuple[Candidates, ...]]] | None = None
    one_for_one: Callable[[Any], Mapping[str, tuple[tuple[str, ...], ...]]] | None = None
    columns: bool = True
    columns_in: tuple[str, ...] = ()
    left_out: Callable[[Any], Collection[tuple[str | int, ...]]] | None = None


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
    fixed : mapping
        Fields of the calculation that the step itself gives, whatever is known.
    when : callable
        Takes the composite's known values by name; whether the part applies to this engine.
    title : str
        Heading of the part where the calculation's own would mislead.
    wants : callable
        Takes the part's inputs and results; what more to measure or tell, that would change them.
    derive : callable
        Takes the known values and the words of the verdicts so far by check; returns further
        values for this step's sources, each with the name of the known one whose doubt it keeps.
    needs : callable
        Takes the known values; what the part needs besides for this engine, as in ``one_of``.
    without : callable
        Takes the known values; fields of the calculation that it does without for now.
    falls_out : callable
        Takes the known values; why the part is not worked out for this engine, or nothing. Asked
        only where the part would apply otherwise. A part falls out where the work that it tells
        of is not done on this engine; readings that cannot be true are refused.
    rules_out : callable
        Takes the known values once the step is done, answered or not: names that no part may rest
        on from here, each with why.
    after_work : bool
        Whether the part states what a work leaves: ruled out, it is worked out without it, or
        falls out.
    gives_way : mapping
        Result of the part to the ``part.result`` that stands in its place where that is known:
        what several works change together is worked out once, together.
    """

    part: str
    calculation: Calculation
    purpose: str
    sources: Mapping[str, tuple[str, ...]] = dataclasses.field(default_factory=dict)
    fixed: Mapping[str, Any] = dataclasses.field(default_factory=dict)
    when: Callable[[Mapping[str, Any]], bool] = lambda known: True
    title: str = ""
    wants: Callable[[Any, Any], Sequence["Want"]] = lambda inputs, outputs: ()
    derive: (
        Callable[[Mapping[str, Any], Mapping[str, str]], Mapping[str, tuple[Any, str]]] | None
    ) = None
    needs: Callable[[Mapping[str, Any]], tuple[tuple[Way, ...], ...]] = lambda known: ()
    without: Callable[[Mapping[str, Any]], tuple[str, ...]] = lambda known: ()
    falls_out: Callable[[Mapping[str, Any]], str] = lambda known: ""
    rules_out: Callable[[Mapping[str, Any]], Mapping[str, str]] = lambda known: {}
    after_work: bool = False
    gives_way: Mapping[str, str] = dataclasses.field(default_factory=dict)

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
    derived_extremes : callable or None
        Takes the known values; returns what such a value is the largest or smallest of.
    """

    steps: tuple[Step, ...]
    derive: Callable[[Mapping[str, Any]], Mapping[str, tuple[Any, str]]] | None = None
    derived_extremes: Callable[[Mapping[str, Any]], Mapping[str, Candidates]] | None = None

    @property
    def checks(self) -> tuple[Check, ...]:
        """The checks of all parts; names are unique, so one request can address any."""
        return tuple(check for step in self.steps for check in step.calculation.checks)
