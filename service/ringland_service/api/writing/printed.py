"""An answer as people are shown it: each uncertainty at its number, and none that misleads.

The JSON keeps a bare number bare and every uncertainty; here each bare number carries its own,
and a number whose uncertainty leaves out inputs of weight goes without ± and says so.
"""

from collections.abc import Mapping, Sequence
from functools import cache

from ringland_service.api.json_types import AnswerJson
from ringland_service.api.shapes.figures import REMARK, told_record
from ringland_service.core.declare import Calculation, Composite, Operation, declared, input_fields
from ringland_service.core.declare.notices import UNSTATED


def printed(calculation: Operation, found: AnswerJson) -> AnswerJson:
    """Return an answer's JSON with what is to be printed beside each number."""
    remarks = unstated(found["warnings"])
    beside = {name: found.get(name, {}) for name in ("uncertainties", "intervals")}
    result: dict[str, object] = dict(found["result"])
    if isinstance(calculation, Composite):
        for part in (step.part for step in calculation.steps if step.part in result):
            result[part] = _beside(told_record(result[part]), beside, remarks, f"{part}.")
    else:
        result = _beside(result, beside, remarks, "")
    judged = _judged(calculation)
    verdicts = [_with_remark(v, remarks.get(judged.get(v["check"], ""))) for v in found["verdicts"]]
    return {**found, "result": result, "verdicts": verdicts}


def unstated(warnings: Sequence[AnswerJson]) -> dict[str, str]:
    """Return, by result, what is said of the inputs of weight that state no uncertainty."""
    return {w["field"]: w["message"] for w in warnings if w["code"] == UNSTATED}


def _beside(
    result: AnswerJson,
    beside: Mapping[str, AnswerJson],
    remarks: Mapping[str, str],
    prefix: str,
) -> dict[str, object]:
    """Return results with what stands beside each: ``uncertainties`` and ``intervals`` by name."""
    return {
        name: _one(
            value,
            {of: by_name.get(prefix + name) for of, by_name in beside.items()},
            remarks.get(prefix + name),
        )
        for name, value in result.items()
    }


SINGULAR = {"uncertainties": "uncertainty", "intervals": "interval"}


def _one(value: object, beside: AnswerJson, remark: str | None) -> object:
    """Return a value with what stands beside it, or with the remark instead."""
    known = {of: one for of, one in beside.items() if one is not None}
    told: AnswerJson
    if isinstance(value, Mapping):
        told = value
    elif not known and remark is None:
        return value
    elif isinstance(value, list):
        told = {"values": value, **known}
    else:
        told = {"value": value, **{SINGULAR[of]: one for of, one in known.items()}}
    return _with_remark(told, remark)


def _with_remark(told: AnswerJson, remark: str | None) -> AnswerJson:
    return told if remark is None else {**told, REMARK: remark}


@cache
def _judged(calculation: Operation) -> Mapping[str, str]:
    """Return the public name of what each check judges, of a composite under its part."""
    if isinstance(calculation, Composite):
        return {
            check: f"{step.part}.{name}"
            for step in calculation.steps
            for check, name in _judged(step.calculation).items()
        }
    if not isinstance(calculation, Calculation):
        return {}
    known = {**input_fields(calculation.inputs), **declared(calculation.outputs)}
    return {c.name: known[c.value].public(c.value) for c in calculation.checks}
