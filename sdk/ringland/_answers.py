"""What the service answers, as typed, frozen objects."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Generic, TypeVar

from ringland._errors import UnreadableAnswer
from ringland._generated._words import Rule, Standing, VerdictWord
from ringland._reading import read, untyped
from ringland._types import Quantity

R = TypeVar("R")
Side = Quantity | float | None


@dataclass(frozen=True)
class Limit:
    """A limit with its standing: who says so, and where."""

    low: Side
    high: Side
    standing: Standing
    source: str


@dataclass(frozen=True)
class ToSettle:
    """How a verdict that is too close to call could be settled."""

    needed_uncertainty: Side
    advice: str


@dataclass(frozen=True)
class Verdict:
    """A value judged against its limit.

    Attributes
    ----------
    verdict : str
        ``pass``, ``fail`` or ``too_close_to_call``.
    without_uncertainty : str
        The word that the value alone would have got.
    margin : Quantity or float
        Distance to the nearer limit, positive inside.
    """

    check: str
    words: str
    value: Quantity | float
    uncertainty: Side
    limit: Limit
    verdict: VerdictWord
    without_uncertainty: VerdictWord
    probability_within: float | None
    margin: Quantity | float
    rule: Rule
    to_settle: ToSettle | None = None
    doubt_fails: str | None = None


@dataclass(frozen=True)
class AnswerWarning:
    """Something unusual in the request or the result; the answer stands."""

    code: str
    field: str
    message: str


@dataclass(frozen=True)
class Basis:
    """Where a result comes from: formula in words, and source."""

    field: str
    formula: str
    source: str


@dataclass(frozen=True)
class TraceStep:
    """A formula with its numbers put in."""

    field: str
    formula: str
    substituted: str
    value: float
    unit: str


@dataclass(frozen=True)
class Need:
    """What is missing: the fields of which one will do, and the same in words."""

    fields: tuple[str, ...]
    words: str


@dataclass(frozen=True)
class MeasureNext:
    """What would open a part of the answer, or settle a verdict."""

    opens: str
    why: str
    measure: tuple[Need, ...]
    advice: str


@dataclass(frozen=True)
class Answer(Generic[R]):
    """The answer of one calculation.

    Attributes
    ----------
    calculation, formulas : str
        Name, and version of the arithmetic.
    result : R
        The calculation's own results; a result that cannot be known from the inputs is None.
    inputs : mapping
        The inputs as understood, in the units of the answer.
    verdicts, warnings, cautions, basis, trace : tuple
    request_id : str
        Name of the request in the service's log.
    raw : mapping
        The whole answer as it came.
    """

    calculation: str
    formulas: str
    result: R
    inputs: Mapping[str, Any]
    verdicts: tuple[Verdict, ...]
    warnings: tuple[AnswerWarning, ...]
    cautions: tuple[str, ...]
    basis: tuple[Basis, ...]
    trace: tuple[TraceStep, ...]
    request_id: str
    raw: Mapping[str, Any] = field(repr=False)

    def verdict(self, check: str) -> Verdict:
        """Return the verdict of a check.

        Raises
        ------
        KeyError
            Where the check was not made: no limit, or the value could not be known.
        """
        for found in self.verdicts:
            if found.check == check:
                return found
        made = ", ".join(v.check for v in self.verdicts) or "none"
        raise KeyError(f"no verdict {check!r} in this answer; made: {made}")


@dataclass(frozen=True)
class _Envelope:
    """What every answer has beside its result."""

    calculation: str
    formulas: str
    verdicts: tuple[Verdict, ...]
    warnings: tuple[AnswerWarning, ...]
    cautions: tuple[str, ...]
    basis: tuple[Basis, ...]
    trace: tuple[TraceStep, ...] = ()


def read_answer(of: type[R] | None, data: Any, request_id: str) -> Answer[Any]:
    """Return the answer in JSON as an object; without ``of``, its result as a mapping.

    Raises
    ------
    UnreadableAnswer
    """
    envelope = read(_Envelope, data)
    if "result" not in data:
        raise UnreadableAnswer("the answer has no 'result'")
    result = untyped(data["result"]) if of is None else read(of, data["result"])
    return Answer(
        result=result,
        inputs=untyped(data.get("inputs", {})),
        request_id=request_id,
        raw=data,
        **vars(envelope),
    )


@dataclass(frozen=True)
class Column:
    """One result of all rows: an entry a row, None where there is none."""

    values: tuple[Any, ...]
    unit: str | None = None
    digits: int | None = None
    uncertainties: tuple[float | None, ...] | None = None


@dataclass(frozen=True)
class VerdictColumns:
    """One check of all rows."""

    verdict: tuple[VerdictWord | None, ...]
    margin: Column
    uncertainty: Column
    probability_within: tuple[float | None, ...]


@dataclass(frozen=True)
class RowProblem:
    """What is wrong with a row; rows count from 0."""

    row: int
    field: str
    code: str
    detail: str


@dataclass(frozen=True)
class RowWarning:
    """A warning, and the rows that it goes with."""

    code: str
    field: str
    message: str
    rows: tuple[int, ...]


@dataclass(frozen=True)
class BatchAnswer:
    """The answers of many rows, in the order of the rows.

    Attributes
    ----------
    rows, answered, refused : int
    results : mapping of str to Column
    verdicts : mapping of str to VerdictColumns
    problems : tuple of RowProblem
        What is wrong with the rows that have no answer; the others are answered.
    """

    calculation: str
    formulas: str
    rows: int
    answered: int
    refused: int
    results: Mapping[str, Column]
    verdicts: Mapping[str, VerdictColumns]
    problems: tuple[RowProblem, ...]
    warnings: tuple[RowWarning, ...]
    cautions: tuple[str, ...]


@dataclass(frozen=True)
class CalculationInfo:
    """A calculation that the service offers."""

    name: str
    stage: str
    title: str
    summary: str
    get: bool = False


@dataclass(frozen=True)
class ServiceVersion:
    """Version of the service, and of each calculation's arithmetic."""

    version: str
    formulas: Mapping[str, str]
