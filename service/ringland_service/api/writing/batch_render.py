"""A batch's answer, in JSON and as a flat table. Rows count from 1."""

import csv
import io
from collections import Counter
from collections.abc import Iterator
from typing import Any

from ringland_service.api.json_types import AnswerJson, Json, JsonObject
from ringland_service.api.reading.batch_status import NOT_REACHED, OK, REFUSED
from ringland_service.api.reading.request import public_path
from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.answer_json import column, shown_unit, told_interval
from ringland_service.api.shapes.figures import cell
from ringland_service.core.declare import Calculation
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.notices import UNSTATED
from ringland_service.core.errors import CoreError
from ringland_service.engine.columnar import ColumnResponse
from ringland_service.engine.scalar import cautions_of


def results(found: ColumnResponse, system: str) -> AnswerJson:
    """Return the result columns by public name, each with its uncertainties where there are any."""
    shown: JsonObject = {}
    for name, (field, shape) in shapes.results(found.calculation.outputs).items():
        if name not in found.results:
            continue
        one = shape.answer_column(found.results[name], system, found.u.get(name))
        if name in found.intervals:
            one["intervals"] = _intervals(found.intervals[name], field.kind, system)
        shown[field.public(name)] = one
    return shown


def _intervals(ends: list[Any], kind: Kind | None, system: str) -> list[Json]:
    """Return a column of intervals; a list of them where the result is one."""
    unit = None if kind is None else shown_unit(kind, system)
    return [told_interval(one, unit) for one in ends]


def verdicts(found: ColumnResponse, system: str) -> AnswerJson:
    """Return the verdict columns by check."""
    shown: JsonObject = {}
    for check in found.calculation.checks:
        rows = found.verdicts.get(check.name)
        if rows is None:
            continue
        kind, decimals = rows.kind, rows.decimals
        uncertainties = [None if not u else 2.0 * u for u in rows.u]
        shown[check.name] = {
            "verdict": rows.verdict,
            "why": rows.why,
            "margin": column(rows.margin, kind, decimals, system, difference=True),
            "uncertainty": column(uncertainties, kind, decimals, system, difference=True),
            "interval": _intervals(rows.interval, kind, system),
            "conformance_probability": [
                p if u else None for p, u in zip(rows.probability, rows.u, strict=True)
            ],
        }
    return shown


# A column of the table, under its header.
Headed = tuple[str, list[Json]]
# A batch of bad rows alone would answer far more than it was asked.
MOST_PROBLEMS = 1_000


def statuses(found: ColumnResponse) -> list[str]:
    """Return what became of each row."""
    words = [OK] * found.count
    for row in found.problems:
        words[row] = REFUSED
    for row in found.not_reached:
        words[row] = NOT_REACHED
    return words


def problem(calculation: Calculation, row: int, error: CoreError) -> AnswerJson:
    """Return what is wrong with a row."""
    detail = error.message + (f"; {error.right}" if error.right else "")
    named = {"row": row + 1, "field": _field(calculation, error)}
    return {**named, "code": error.code, "detail": detail}


def _field(calculation: Calculation, error: CoreError) -> str:
    return str(public_path(calculation.inputs, (error.field,))[0])


def problems(found: ColumnResponse) -> AnswerJson:
    """Return the first problems in full, and of the others how many there are of each code."""
    told = [(row, error) for row in sorted(found.problems) for error in found.problems[row]]
    shown = [problem(found.calculation, row, error) for row, error in told[:MOST_PROBLEMS]]
    codes = Counter(error.code for _, error in told[MOST_PROBLEMS:])
    more = [{"code": code, "count": count} for code, count in sorted(codes.items())]
    return {"problems": shown, "more_problems": more}


def answer(found: ColumnResponse, system: str) -> AnswerJson:
    """Return a batch's answer as JSON."""
    calculation = found.calculation
    words = statuses(found)
    return {
        "calculation": calculation.name,
        "formulas": calculation.formulas,
        "rows": found.count,
        "answered": words.count(OK),
        "refused": words.count(REFUSED),
        "not_reached": words.count(NOT_REACHED),
        "status": words,
        "results": results(found, system),
        "verdicts": verdicts(found, system),
        **problems(found),
        "warnings": [
            {**vars(warned), "rows": [row + 1 for row in sorted(rows)]}
            for warned, rows in found.warnings.items()
        ],
        "cautions": list(cautions_of(calculation)),
    }


def table(found: ColumnResponse, system: str) -> str:
    """Return a batch's answer as CSV: one line a row, a column a result, a verdict, a problem."""
    shown = {"results": results(found, system), "verdicts": verdicts(found, system)}
    rows: list[Json] = [str(i + 1) for i in range(found.count)]
    columns: list[Headed] = [("row", rows), ("status", list(statuses(found)))]
    columns += list(_result_columns(found.calculation, shown, _remarks(found)))
    columns += list(_verdict_columns(shown))
    if found.warnings:
        columns.append(("warnings", _warning_column(found)))
    columns.append(("problem", _problem_column(found)))
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow([name for name, _ in columns])
    writer.writerows(zip(*(values for _, values in columns), strict=True))
    return text.getvalue()


def _headed(name: str, shown: AnswerJson) -> str:
    return f"{name} [{shown['unit']}]" if "unit" in shown else name


def _result_columns(
    calculation: Calculation, found: AnswerJson, remarks: dict[str, list[str]]
) -> Iterator[Headed]:
    known = shapes.members(calculation.outputs)
    for name, shown in found["results"].items():
        yield _headed(name, shown), [known[name].shape.column_cell(v) for v in shown["values"]]
        if "units" in shown:
            yield f"{name} unit", [cell(symbol) for symbol in shown["units"]]
        if "uncertainties" in shown:
            yield _headed(f"{name} U", shown), [cell(v) for v in shown["uncertainties"]]
            if name in remarks:
                yield f"{name} uncertainty not stated", list(remarks[name])
        if "intervals" in shown:
            for end in ("low", "high"):
                yield (
                    _headed(f"{name} interval {end}", shown),
                    [cell(_end(one, end)) for one in shown["intervals"]],
                )


def _end(interval: Any, end: str) -> Any:
    """Return one end of an interval, or of each in a list; None where there is none."""
    if isinstance(interval, list):
        return [_end(one, end) for one in interval]
    return None if interval is None else interval[end]


def _remarks(found: ColumnResponse) -> dict[str, list[str]]:
    """Return, per result, a column of what is said of the inputs that state no uncertainty."""
    columns: dict[str, list[str]] = {}
    for warned, rows in found.warnings.items():
        if warned.code == UNSTATED:
            column_ = columns.setdefault(warned.field, [""] * found.count)
            for row in rows:
                column_[row] = warned.message
    return columns


def _warning_column(found: ColumnResponse) -> list[Json]:
    """Return what each row is warned of: field and code; the JSON has the messages."""
    texts: list[list[str]] = [[] for _ in range(found.count)]
    for warned, rows in found.warnings.items():
        for row in rows:
            texts[row].append(f"{warned.field}: {warned.code}")
    return [cell("; ".join(each)) for each in texts]


def _verdict_columns(found: AnswerJson) -> Iterator[Headed]:
    for check, shown in found["verdicts"].items():
        yield f"{check} verdict", [cell(v) for v in shown["verdict"]]
        if any(shown["why"]):
            yield f"{check} why", [cell(v) for v in shown["why"]]
        yield (
            _headed(f"{check} margin", shown["margin"]),
            [cell(v) for v in shown["margin"]["values"]],
        )


def _problem_column(found: ColumnResponse) -> list[Json]:
    """Return what is wrong with each row; past the first problems the field and the code."""
    texts = [""] * found.count
    told = 0
    for row in sorted(found.problems):
        for error in found.problems[row]:
            shown = problem(found.calculation, row, error)
            said = shown["detail" if told < MOST_PROBLEMS else "code"]
            texts[row] += f"{shown['field']}: {said} "
            told += 1
    return [cell(text.strip()) for text in texts]
