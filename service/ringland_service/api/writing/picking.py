"""One result of an answer, or the word of one verdict, as plain text for a spreadsheet cell."""

from collections.abc import Mapping, Sequence
from typing import Any, cast

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.members import Shape
from ringland_service.api.writing import text
from ringland_service.core.declare import Calculation, Composite, Declared


def picked(calculation: Declared, found: Mapping[str, Any], pick: str) -> str:
    """Return what ``pick`` names, without a line end.

    It names a result, ``part.result`` in a composite, with ``.uncertainty`` or another member of a
    quantity behind it where that is wanted; or else a check.

    Raises
    ------
    Faulty
        Where there is no such result.
    """
    verdicts = {v["check"]: v["verdict"] for v in found["verdicts"]}
    value = _result(calculation, found["result"], pick.split("."))
    value = verdicts.get(pick) if value is None else value
    if value is None:
        allowed = sorted({*found["result"], *verdicts})
        detail = f"no single result {pick[:40]!r} in this answer"
        raise Faulty([Fault("unknown_field", detail, allowed, 422, "/pick", given=pick)])
    if isinstance(value, bool):
        return "true" if value else "false"
    return text.plain(value) if isinstance(value, float) else str(value)


def _result(calculation: Declared, result: Mapping[str, Any], names: Sequence[str]) -> Any:
    """Return the single value that the names lead to; None where they lead to none."""
    if isinstance(calculation, Composite):
        part, *names = names
        known = shapes.parts(calculation)
        if part not in known or part not in result or not names:
            return None
        calculation, result = known[part], result[part]
    name, *further = names
    member = shapes.members(cast(Calculation, calculation).outputs).get(name)
    if member is None or name not in result:
        return None
    if member.shape is Shape.QUANTITY and len(further) <= 1:
        return result[name].get(*(further or ["value"]))
    return result[name] if member.shape is Shape.PLAIN and not further else None
