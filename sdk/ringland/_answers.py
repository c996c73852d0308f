"""What the service answers, as typed, frozen objects."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, Generic, Literal, TypeAlias, TypeVar

from ringland._errors import UnreadableAnswer
from ringland._generated._parts import AnswerWarning, Basis, Taken, TraceStep, Verdict
from ringland._generated._words import VerdictWord
from ringland._reading import read, untyped
from ringland._types import Interval

R = TypeVar("R")
# Of one number, or of each of a list.
Uncertainty = float | tuple[float | None, ...]
# What became of a row of a batch.
RowStatus: TypeAlias = Literal["ok", "refused", "not_reached"]


@dataclass(frozen=True)
class Answer(Generic[R]):
    """The answer of one calculation.

    Attributes
    ----------
    calculation, formulas : str
        Name, and version of the arithmetic.
    result : R
        The calculation's own results; a result that cannot be known from the inputs is None.
    uncertainties : mapping
        Expanded uncertainty (k = 2) of each result without a unit that has one, by its name, of a
        whole job by ``part.name``; a tuple where the result is a list. A quantity carries its own.
    intervals : mapping
        The same for 95 % intervals; a quantity carries its own.
    inputs : mapping
        The inputs as understood, in the units of the answer.
    verdicts, warnings, cautions, basis, trace : tuple
    taken : tuple of Taken
        For a whole job: which reading of which part came from where, where the names differ.
    request_id : str
        Name of the request in the service's log.
    raw : mapping
        The whole answer as it came.
    """

    calculation: str
    formulas: str
    result: R
    uncertainties: Mapping[str, Uncertainty]
    intervals: Mapping[str, Interval | tuple[Interval | None, ...]]
    inputs: Mapping[str, Any]
    verdicts: tuple[Verdict, ...]
    warnings: tuple[AnswerWarning, ...]
    cautions: tuple[str, ...]
    basis: tuple[Basis, ...]
    trace: tuple[TraceStep, ...]
    taken: tuple[Taken, ...]
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
    uncertainties: Mapping[str, Any]
    intervals: Mapping[str, Interval | tuple[Interval | None, ...]]
    verdicts: tuple[Verdict, ...]
    warnings: tuple[AnswerWarning, ...]
    cautions: tuple[str, ...]
    basis: tuple[Basis, ...]
    trace: tuple[TraceStep, ...] = ()
    taken: tuple[Taken, ...] = ()


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
    about = vars(envelope)
    about["uncertainties"] = {n: _one_or_each(u) for n, u in envelope.uncertainties.items()}
    return Answer(
        result=result,
        inputs=untyped(data.get("inputs", {})),
        request_id=request_id,
        raw=data,
        **about,
    )


def _one_or_each(uncertainty: Any) -> Uncertainty:
    return tuple(uncertainty) if isinstance(uncertainty, list) else float(uncertainty)


@dataclass(frozen=True)
class Column:
    """One result of all rows: an entry a row, None where there is none.

    ``units`` has the unit of each row where they differ; then ``unit`` is None.
    """

    values: tuple[Any, ...]
    unit: str | None = None
    decimals: int | None = None
    uncertainties: tuple[Any, ...] | None = None
    units: tuple[str | None, ...] | None = None
    intervals: tuple[Interval | tuple[Interval | None, ...] | None, ...] | None = None


@dataclass(frozen=True)
class VerdictColumns:
    """One check of all rows; ``why`` says of a row that is not judged why not."""

    verdict: tuple[VerdictWord | None, ...]
    why: tuple[str | None, ...]
    margin: Column
    uncertainty: Column
    interval: tuple[Interval | None, ...]
    conformance_probability: tuple[float | None, ...]


@dataclass(frozen=True)
class RowProblem:
    """What is wrong with a row; rows count from 1."""

    row: int
    field: str
    code: str
    detail: str


@dataclass(frozen=True)
class MoreProblems:
    """How many further problems there are of one code."""

    code: str
    count: int


@dataclass(frozen=True)
class RowWarning:
    """A warning, and the rows that it goes with; rows count from 1."""

    code: str
    field: str
    message: str
    rows: tuple[int, ...]


@dataclass(frozen=True)
class BatchAnswer:
    """The answers of many rows, in the order of the rows.

    Attributes
    ----------
    rows, answered, refused, not_reached : int
    status : tuple of RowStatus
        Of each row: ``ok``, ``refused``, or ``not_reached`` where the service ran out of time;
        send such a row again.
    results : mapping of str to Column
    verdicts : mapping of str to VerdictColumns
    problems : tuple of RowProblem
        What is wrong with refused rows; of each request the first 1,000 in full.
    more_problems : tuple of MoreProblems
        How many further ones there are, by code.
    """

    calculation: str
    formulas: str
    rows: int
    answered: int
    refused: int
    not_reached: int
    status: tuple[RowStatus, ...]
    results: Mapping[str, Column]
    verdicts: Mapping[str, VerdictColumns]
    problems: tuple[RowProblem, ...]
    more_problems: tuple[MoreProblems, ...]
    warnings: tuple[RowWarning, ...]
    cautions: tuple[str, ...]


@dataclass(frozen=True)
class CalculationInfo:
    """A calculation that the service offers; ``most_rows`` is what one batch may have."""

    name: str
    stage: str
    title: str
    summary: str
    get: bool = False
    most_rows: int | None = None


@dataclass(frozen=True)
class SourceUse:
    """What rests on a source: calculations by name, limits and materials by id, methods named."""

    calculations: tuple[str, ...]
    limits: tuple[str, ...]
    materials: tuple[str, ...]
    methods: tuple[str, ...]


@dataclass(frozen=True)
class SourceInfo:
    """A standard or book that figures or formulas rest on.

    ``checked`` says what was compared with the printed text; None: nothing was, it is recalled from
    memory. ``edition`` and ``clause`` are None where none is stated.
    """

    token: str
    title: str
    edition: str | None
    clause: str | None
    checked: str | None
    used_by: SourceUse


@dataclass(frozen=True)
class ServiceVersion:
    """Version of the service, and of each calculation's arithmetic."""

    version: str
    formulas: Mapping[str, str]
