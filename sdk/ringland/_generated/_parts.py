"""What answers are made of, beside their results.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from dataclasses import dataclass

from ringland._generated._words import Rule, Standing, VerdictWord
from ringland._types import Quantity


@dataclass(frozen=True, kw_only=True)
class Basis:
    """Where a result comes from: formula in words, and source.

    Attributes
    ----------
    field : str
    formula : str
    source : str
    """

    field: str
    formula: str
    source: str


@dataclass(frozen=True, kw_only=True)
class MeasureNextWayItem:
    """None is what cannot be known.

    Attributes
    ----------
    field : str
    words : str
    instrument : str
    """

    field: str
    words: str
    instrument: str


@dataclass(frozen=True, kw_only=True)
class MeasureNext:
    """What would open a part of the answer (any one way), or settle a verdict.

    Attributes
    ----------
    opens : str
    why : str
    ways : tuple[tuple[MeasureNextWayItem, ...], ...]
    advice : str
    """

    opens: str
    why: str
    ways: tuple[tuple[MeasureNextWayItem, ...], ...]
    advice: str


@dataclass(frozen=True, kw_only=True)
class Taken:
    """Where a part's field came from, where the names differ.

    Attributes
    ----------
    field : str
    from_ : str
    """

    field: str
    from_: str


@dataclass(frozen=True, kw_only=True)
class TraceStep:
    """A formula with its numbers put in.

    Attributes
    ----------
    field : str
    formula : str
    substituted : str
    value : float
    unit : str
    """

    field: str
    formula: str
    substituted: str
    value: float
    unit: str


@dataclass(frozen=True, kw_only=True)
class Limit:
    """A limit with its standing.

    Attributes
    ----------
    low : Quantity | float | None
    high : Quantity | float | None
    standing : Standing
    source : str
    """

    low: Quantity | float | None
    high: Quantity | float | None
    standing: Standing
    source: str


@dataclass(frozen=True, kw_only=True)
class ToSettle:
    """How a verdict that is too close to call could be settled.

    Attributes
    ----------
    needed_uncertainty : Quantity | float | None
    advice : str
    """

    needed_uncertainty: Quantity | float | None
    advice: str


@dataclass(frozen=True, kw_only=True)
class Verdict:
    """A verdict: value, limit, three-way word, and how to settle it.

    Attributes
    ----------
    check : str
    words : str
    of : str | None
        of which, where several are judged
    value : Quantity | float
    uncertainty : Quantity | float | None
    limit : Limit
    verdict : VerdictWord
    without_uncertainty : VerdictWord
    probability_within : float | None
    margin : Quantity | float
    rule : Rule
    doubt_fails : str | None
    to_settle : ToSettle | None
    """

    check: str
    words: str
    of: str | None
    value: Quantity | float
    uncertainty: Quantity | float | None
    limit: Limit
    verdict: VerdictWord
    without_uncertainty: VerdictWord
    probability_within: float | None
    margin: Quantity | float
    rule: Rule
    doubt_fails: str | None
    to_settle: ToSettle | None


@dataclass(frozen=True, kw_only=True)
class AnswerWarning:
    """Something unusual in the request or the result; the answer stands.

    Attributes
    ----------
    code : str
    field : str
    message : str
    """

    code: str
    field: str
    message: str
