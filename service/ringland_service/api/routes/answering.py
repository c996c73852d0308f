"""From a request's data to the JSON of its answer: one way for every form of request."""

from collections.abc import Iterator
from logging import Logger
from typing import Any, cast

from ringland_service.api.faults import Faulty
from ringland_service.api.reading import batch, batch_lines, batch_rows
from ringland_service.api.reading.request import core_fault, understood
from ringland_service.api.writing import composite_render, render
from ringland_service.api.writing.trace import trace
from ringland_service.core.declare import Calculation, Composite, Declared, asked
from ringland_service.core.declare.fields import AnyQuantityField, UnitField
from ringland_service.engine import columnar as columns
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.composite import answer_composite
from ringland_service.engine.deadline import Deadline
from ringland_service.engine.scalar import answer


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


def answered_batch(calculation: Calculation, data: Any, deadline: Deadline) -> columns.ColumnAnswer:
    """Return the answers to a batch of columns, as far as the deadline lets it come.

    Raises
    ------
    Faulty
        Where the batch as a whole cannot be read.
    """
    shared, given = batch.split(data)
    if _of_any_kind(calculation):
        return _row_by_row(calculation, shared, given, deadline)
    return columns.answer_rows(calculation, batch.read(calculation, shared, given), deadline)


def _of_any_kind(calculation: Calculation) -> bool:
    """Return whether each row may have a kind of its own, so that rows make no columns."""
    fields = asked(calculation.inputs).values()
    return any(isinstance(field, (AnyQuantityField, UnitField)) for field in fields)


def _row_by_row(
    calculation: Calculation, shared: dict[str, Any], given: dict[str, Any], deadline: Deadline
) -> columns.ColumnAnswer:
    count = batch.count_rows(calculation, given)
    batch_rows.check_columns(calculation, given)
    batch.check_shared(calculation, shared, given)
    found = columns.ColumnAnswer(calculation, count)
    for row in range(count):
        if deadline.passed():
            found.not_reached.add(row)
            continue
        try:
            data = batch_rows.single_row(calculation, shared, given, row)
            columns.put_answer(found, _single(calculation, data), row)
        except Refused as refused:
            found.problems[row] = list(refused.faults)
        except Faulty as error:
            found.problems[row] = [batch_rows.unreadable(fault) for fault in error.faults]
    return found


def _single(calculation: Calculation, data: Any) -> Answer:
    return answer(calculation, understood(calculation, data))


def answered_lines(
    calculation: Declared,
    body: bytes,
    options: dict[str, str],
    deadline: Deadline,
    logger: Logger,
) -> Iterator[bytes]:
    """Return the answers to a batch of one JSON object a line, worked out as they are asked for.

    Raises
    ------
    Faulty
        At once, where there are no lines or too many.
    """
    lines = batch_lines.lines_of(calculation, body)

    def one(data: Any) -> dict[str, Any]:
        return answered(calculation, data, options)

    return batch_lines.answered(calculation, lines, one, deadline, logger)
