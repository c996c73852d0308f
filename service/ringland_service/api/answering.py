"""From a request's data to the JSON of its answer: one way for every form of request."""

import json
from typing import Any, cast

from ringland_service.api import batch, batch_render, batch_rows, composite_render, problems, render
from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.json_reader import read as read_json
from ringland_service.api.request import core_fault, understood
from ringland_service.api.trace import trace
from ringland_service.core.declare import Calculation, Composite, Declared, asked
from ringland_service.core.fields import AnyQuantityField, UnitField
from ringland_service.engine import columns
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.composite import answer_composite
from ringland_service.engine.single import answer


def answered(calculation: Declared, data: Any, options: dict[str, str]) -> dict[str, Any]:
    """Return the answer to one question as JSON.

    Raises
    ------
    Faulty
        With every fault of the request.
    """
    question = understood(calculation, data)
    system = options.get("units", "metric")
    try:
        if isinstance(calculation, Composite):
            return composite_render.answer(answer_composite(calculation, question), system)
        found = answer(cast(Calculation, calculation), question)
    except Refused as refused:
        raise Faulty([core_fault(calculation, fault) for fault in refused.faults]) from refused
    shown = render.answer(found, system)
    if options.get("trace") == "true":
        shown["trace"] = trace(found)
    return shown


def answered_batch(calculation: Calculation, data: Any, options: dict[str, str]) -> dict[str, Any]:
    """Return the answers to a batch in JSON.

    Raises
    ------
    Faulty
        Where the batch as a whole cannot be read.
    """
    shared, given = batch.split(data)
    if _of_any_kind(calculation):
        found = _row_by_row(calculation, shared, given)
    else:
        found = columns.answer_rows(calculation, batch.read(calculation, shared, given))
    return batch_render.answer(found, options.get("units", "metric"))


def _of_any_kind(calculation: Calculation) -> bool:
    """Return whether each row may have a kind of its own, so that rows make no columns."""
    fields = asked(calculation.inputs).values()
    return any(isinstance(field, (AnyQuantityField, UnitField)) for field in fields)


def _row_by_row(
    calculation: Calculation, shared: dict[str, Any], given: dict[str, Any]
) -> columns.ColumnAnswer:
    batch.count_rows(given)
    batch_rows.check_columns(calculation, given)
    batch.check_shared(calculation, shared, given)
    rows = list(batch_rows.single_rows(shared, given))
    found = columns.ColumnAnswer(calculation, len(rows))
    for row, data in enumerate(rows):
        try:
            columns.put_answer(found, _single(calculation, data), row)
        except Refused as refused:
            found.problems[row] = list(refused.faults)
        except Faulty as error:
            found.problems[row] = [batch_rows.unreadable(fault) for fault in error.faults]
    return found


def _single(calculation: Calculation, data: Any) -> Answer:
    return answer(calculation, understood(calculation, data))


def answered_lines(calculation: Declared, body: bytes, options: dict[str, str]) -> str:
    """Return the answers to a batch of one JSON object a line, each an answer or a problem.

    Raises
    ------
    Faulty
        Where there are no lines, or too many.
    """
    lines = [line for line in body.split(b"\n") if line.strip()]
    if not 1 <= len(lines) <= batch.MOST_ROWS:
        detail = f"1 to {batch.MOST_ROWS} lines are needed, {len(lines)} given"
        raise Faulty([Fault("wrong_count", detail, {"most": batch.MOST_ROWS}, 422)])
    return "".join(
        json.dumps(_line(calculation, line, options), ensure_ascii=False) + "\n" for line in lines
    )


def _line(calculation: Declared, line: bytes, options: dict[str, str]) -> dict[str, Any]:
    try:
        return answered(calculation, read_json(line), options)
    except Faulty as error:
        return problems.of_faults(error.faults)
