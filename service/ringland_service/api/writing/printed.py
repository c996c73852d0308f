"""An answer as people are shown it: each uncertainty at its number, and none that misleads.

The JSON keeps a bare number bare and every uncertainty; here each bare number carries its own,
and a number whose uncertainty leaves out inputs of weight goes without ± and says so.
"""

from collections.abc import Mapping
from functools import cache
from typing import Any

from ringland_service.core.declare import Calculation, Composite, Declared, asked, declared
from ringland_service.core.declare.notices import UNSTATED

REMARK = "remark"


def printed(calculation: Declared, found: Mapping[str, Any]) -> dict[str, Any]:
    """Return an answer's JSON with what is to be printed beside each number."""
    doubts, remarks = found.get("uncertainties", {}), unstated(found["warnings"])
    result = dict(found["result"])
    if isinstance(calculation, Composite):
        for part in (step.part for step in calculation.steps if step.part in result):
            result[part] = _beside(result[part], doubts, remarks, f"{part}.")
    else:
        result = _beside(result, doubts, remarks, "")
    judged = _judged(calculation)
    verdicts = [_with_remark(v, remarks.get(judged.get(v["check"], ""))) for v in found["verdicts"]]
    return {**found, "result": result, "verdicts": verdicts}


def unstated(warnings: Any) -> dict[str, str]:
    """Return, by result, what is said of the inputs of weight that state no uncertainty."""
    return {w["field"]: w["message"] for w in warnings if w["code"] == UNSTATED}


def _beside(
    result: Mapping[str, Any], doubts: Mapping[str, Any], remarks: Mapping[str, str], prefix: str
) -> dict[str, Any]:
    return {
        name: _one(value, doubts.get(prefix + name), remarks.get(prefix + name))
        for name, value in result.items()
    }


def _one(value: Any, doubt: Any, remark: str | None) -> Any:
    """Return a value with its uncertainty beside it, or with the remark instead."""
    if isinstance(value, Mapping):
        told = dict(value)
    elif doubt is None and remark is None:
        return value
    elif isinstance(value, list):
        told = {"values": value, "uncertainties": doubt}
    else:
        told = {"value": value, "uncertainty": doubt}
    return _with_remark(told, remark)


def _with_remark(told: Any, remark: str | None) -> Any:
    if remark is None:
        return told
    return {**told, REMARK: remark}


@cache
def _judged(calculation: Declared) -> Mapping[str, str]:
    """Return the public name of what each check judges, of a composite under its part."""
    if isinstance(calculation, Composite):
        return {
            check: f"{step.part}.{name}"
            for step in calculation.steps
            for check, name in _judged(step.calculation).items()
        }
    if not isinstance(calculation, Calculation):
        return {}
    known = {**asked(calculation.inputs), **declared(calculation.outputs)}
    return {c.name: known[c.value].public(c.value) for c in calculation.checks}
