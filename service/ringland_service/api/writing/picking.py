"""One result of an answer, or the word of one verdict, as plain text for a spreadsheet cell."""

from collections.abc import Sequence
from typing import cast

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.json_types import AnswerJson, Json
from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.figures import plain
from ringland_service.core.declare import Calculation, Composite, Operation


def picked(calculation: Operation, found: AnswerJson, pick: str) -> str:
    """Return what ``pick`` names, without a line end.

    It names a result, ``part.result`` in a composite, with ``.uncertainty`` or another member of a
    quantity behind it where that is wanted; or else a check.

    Raises
    ------
    FieldErrors
        Where there is no such result.
    """
    verdicts = {v["check"]: v["verdict"] for v in found["verdicts"]}
    value = _result(calculation, found["result"], pick.split("."))
    value = verdicts.get(pick) if value is None else value
    if value is None:
        allowed = sorted({*found["result"], *verdicts})
        detail = f"no single result {pick[:40]!r} in this answer"
        raise FieldErrors([FieldError("unknown_field", detail, allowed, 422, "/pick", given=pick)])
    if isinstance(value, bool):
        return "true" if value else "false"
    return plain(value) if isinstance(value, float) else str(value)


def _result(calculation: Operation, result: AnswerJson, names: Sequence[str]) -> Json:
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
    return member.shape.picked(result[name], further)
