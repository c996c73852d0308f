"""The declaration of a calculation: everything else is derived from it."""

import dataclasses
from collections.abc import Callable, Collection, Mapping
from typing import Any

from ringland_service.core.declare.usual import Figure
from ringland_service.core.metrology.candidates import Candidates
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.propagation import Component
from ringland_service.core.metrology.unjudged import Unjudged

# Fields that must be given together to answer one need.
Way = tuple[str, ...]
# What a composite knows so far, by name: its own fields, and ``part.result`` of earlier steps.
Known = Mapping[str, Any]


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

    ``unless_uncertainty`` names a quantity, of the inputs or of the records in them, whose stated
    uncertainty silences it. ``common_practice`` marks one that a figure of the tables raises: it
    falls away with the common-practice figures.
    """

    code: str
    field: str
    when: Callable[[Any, Any], Any]
    message: str
    unless_uncertainty: str = ""
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
    label : str
    default : callable or None
        Takes inputs and results, returns the ``Limit`` that judges when the request gives none;
        with ``each`` perhaps a tuple of them, one a member.
    settle : str
        What would narrow the uncertainty.
    inconclusive_fails : str
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
    label: str
    settle: str
    default: Callable[[Any, Any], Limit | tuple[Limit, ...] | None] | None = None
    inconclusive_fails: str = ""
    each: str = ""
    unjudged: tuple[Unjudged, ...] = ()
    with_decompressor: bool = False


@dataclasses.dataclass(frozen=True)
class Agreement:
    """What is told in several fields that must agree within its uncertainty.

    Looked at as soon as all ``of`` are known; ``broken`` takes the known values by name and the
    expanded uncertainties (k = 2) of those that have one.

    Attributes
    ----------
    of : tuple of str
        Fields of the inputs, of a composite in any section, or ``part.result`` of a step.
    broken : callable
    message, right : str
        What is wrong, in words of the trade, and what would be right.
    fields : tuple of str
        Fields that the error names; those of ``of`` where not given. A field that is not known
        is left out.
    """

    of: tuple[str, ...]
    broken: Callable[[Known, Mapping[str, Any]], bool]
    message: str
    right: str
    fields: tuple[str, ...] = ()


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class Operation:
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
    any_of: tuple[tuple[Way, ...], ...] = ()
    rules: tuple[Rule, ...] = ()
    agreements: tuple[Agreement, ...] = ()
    cautions: tuple[str, ...] = ()
    formulas: str = "1"


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class Calculation(Operation):
    """One calculation: its fields, its arithmetic, what is judged and what rides along.

    Attributes
    ----------
    outputs : type
        Record of declared results.
    compute : callable
        Pure; takes an ``inputs`` record, returns an ``outputs`` record.
    checks : tuple of Check
    notices : tuple of Notice
    components : callable or None
        Takes the inputs, returns further components on them that no single field states.
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
    components: Callable[[Any], list[Component]] | None = None
    figures: tuple[Figure, ...] = ()
    extremes: Callable[[Any], Mapping[str, Candidates | tuple[Candidates, ...]]] | None = None
    one_for_one: Callable[[Any], Mapping[str, tuple[tuple[str, ...], ...]]] | None = None
    columns: bool = True
    columns_in: tuple[str, ...] = ()
    left_out: Callable[[Any], Collection[tuple[str | int, ...]]] | None = None
