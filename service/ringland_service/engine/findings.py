"""The verdicts of a part as findings that later parts can read."""

from typing import Any

from ringland_service.core.declare import declared, input_fields
from ringland_service.core.declare.notices import UNSTATED
from ringland_service.core.metrology.conformity import CLOSE, WORDS
from ringland_service.core.metrology.findings import Finding
from ringland_service.core.metrology.limits import Limit
from ringland_service.core.metrology.unjudged import WHY
from ringland_service.engine.response import Response, Verdict


def findings_of(part: Response) -> tuple[Finding, ...]:
    """Return the verdicts of a part as findings, in canonical units."""
    known = {**input_fields(part.calculation.inputs), **declared(part.calculation.outputs)}
    remarks = {w.field: w.message for w in part.warnings if w.code == UNSTATED}
    return tuple(
        _finding(verdict, remarks.get(known[verdict.check.value].public(verdict.check.value)))
        for verdict in part.verdicts
    )


def _finding(verdict: Verdict, remark: str | None) -> Finding:
    close = bool(verdict.judged.verdict == CLOSE and verdict.why is None)
    settle = verdict.advice if close else ""
    return Finding(
        verdict.check.name,
        str(verdict.word),
        said(verdict, remark),
        verdict.of,
        settle if verdict.why is None else verdict.to_judge,
        close,
        verdict.judged.probability,
        verdict.check.inconclusive_fails,
        verdict.interval is not None,
    )


def said(verdict: Verdict, remark: str | None = None) -> str:
    """Return a verdict as a sentence: value, limit with its standing, word.

    A remark on inputs of weight that state no uncertainty stands in place of one that leaves
    them out.
    """
    told = verdict.u is not None and remark is None
    uncertainty = f" ± {_number(verdict, 2.0 * verdict.u)}" if told else ""
    if told and verdict.interval is not None:
        low, high = (_number(verdict, end) for end in (verdict.interval.low, verdict.interval.high))
        uncertainty += f" (95 %: {low} to {high})"
    unit = f" {verdict.kind.unit}" if verdict.kind else ""
    word = WORDS[verdict.judged.verdict]
    if verdict.why is not None:
        word = f"{WORDS[verdict.word]}: {WHY[verdict.why]}"
    elif verdict.word != verdict.judged.verdict:
        word = f"{word}, counts as {WORDS[verdict.word]} ({verdict.check.inconclusive_fails})"
    value = _number(verdict, verdict.value)
    standing = verdict.limit.standing.replace("_", " ")
    limit = f"{_sides(verdict, verdict.limit)}{unit} ({standing})"
    words = f"{verdict.check.label}, {verdict.of}" if verdict.of else verdict.check.label
    beside = f" ({remark})" if remark else ""
    return f"{words}: {value}{uncertainty}{unit}{beside} against {limit}: {word}"


def _number(verdict: Verdict, value: Any) -> str:
    decimals = 3 if verdict.decimals is None else verdict.decimals
    return f"{value:.{decimals}f}"


def _sides(verdict: Verdict, limit: Limit) -> str:
    if limit.low is None:
        return f"at most {_number(verdict, limit.high)}"
    if limit.high is None:
        return f"at least {_number(verdict, limit.low)}"
    return f"{_number(verdict, limit.low)} to {_number(verdict, limit.high)}"
