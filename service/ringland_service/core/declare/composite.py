"""The declaration of a composite: several calculations in one answer."""

import dataclasses
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from ringland_service.core.declare.calculation import Calculation, Check, Known, Operation, Way
from ringland_service.core.metrology.candidates import Candidates

# Further values by name, each with the name of the known one whose uncertainty it keeps.
Derived = Mapping[str, tuple[Any, str]]


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
        values for this step's bindings, each with the name of the one whose uncertainty it has.
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
    when: Callable[[Known], bool] = lambda known: True
    title: str = ""
    wants: Callable[[Any, Any], Sequence[Want]] = lambda inputs, outputs: ()
    derive: Callable[[Known, Mapping[str, str]], Derived] | None = None
    needs: Callable[[Known], tuple[tuple[Way, ...], ...]] = lambda known: ()
    without: Callable[[Known], tuple[str, ...]] = lambda known: ()
    falls_out: Callable[[Known], str] = lambda known: ""
    rules_out: Callable[[Known], Mapping[str, str]] = lambda known: {}
    after_work: bool = False
    gives_way: Mapping[str, str] = dataclasses.field(default_factory=dict)

    @property
    def heading(self) -> str:
        """What the part is called where people read it."""
        return self.title or self.calculation.title


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class Composite(Operation):
    """Several calculations in one answer, each as soon as its inputs are known.

    Attributes
    ----------
    steps : tuple of Step
        In order; a later one may use the results of an earlier one.
    derive : callable or None
        Takes the known values by name; returns further ones, each with the name of the field
        that it was taken from (and whose uncertainty it keeps).
    derived_extremes : callable or None
        Takes the known values; returns what such a value is the largest or smallest of.
    """

    steps: tuple[Step, ...]
    derive: Callable[[Known], Derived] | None = None
    derived_extremes: Callable[[Known], Mapping[str, Candidates]] | None = None

    @property
    def checks(self) -> tuple[Check, ...]:
        """The checks of all parts; names are unique, so one request can address any."""
        return tuple(check for step in self.steps for check in step.calculation.checks)
