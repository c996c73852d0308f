"""JSON as the type checker sees it: what may stand in a request, an answer or the document."""

from collections.abc import Mapping
from typing import Any, NotRequired, TypeAlias, TypedDict

Json: TypeAlias = "dict[str, Json] | list[Json] | str | float | int | bool | None"
JsonObject: TypeAlias = dict[str, Json]
# An answer, or a record within one, as it is read to be shown: what each member holds is said by
# its declaration and not by a type, so it is read by ``shapes.members`` or by a name that is known.
AnswerJson: TypeAlias = Mapping[str, Any]
# A value, limit or margin of a verdict: with a unit, or bare where what it judges has none.
JudgedJson: TypeAlias = AnswerJson | float


class LimitJson(TypedDict):
    """A limit in an answer."""

    low: JudgedJson | None
    high: JudgedJson | None
    standing: str
    source: str
    with_decompressor: NotRequired[bool]


class ToSettleJson(TypedDict):
    """What would settle a verdict."""

    target_uncertainty: JudgedJson | None
    advice: str


class IntervalJson(TypedDict):
    """Both ends of a 95 % interval."""

    low: float
    high: float


class VerdictJson(TypedDict):
    """A verdict in an answer; ``remark`` stands in one that is to be printed alone."""

    check: str
    label: str
    of: str | None
    value: JudgedJson
    uncertainty: JudgedJson | None
    interval: IntervalJson | None
    bias: str | None
    limit: LimitJson
    verdict: str
    why: str | None
    to_judge: str | None
    without_uncertainty: str | None
    conformance_probability: float | None
    margin: JudgedJson
    rule: str
    inconclusive_fails: str | None
    to_settle: ToSettleJson | None
    remark: NotRequired[str]
