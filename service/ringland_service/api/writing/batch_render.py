"""A batch's answer, in JSON and as a flat table. Rows count from 1."""

import csv
import io
from collections import Counter
from collections.abc import Iterator
from typing import Any

import numpy as np

from ringland_service.api.reading.batch_status import NOT_REACHED, OK, REFUSED
from ringland_service.api.reading.request import public_path
from ringland_service.api.shapes.members import members as shown_members
from ringland_service.api.writing.expanded import bare, expanded, expanded_in, told_interval
from ringland_service.api.writing.flat_table import cell, column_cell
from ringland_service.api.writing.render import members, shown_digits, shown_unit
from ringland_service.core.declare import Calculation, declared
from ringland_service.core.declare.fields import Quantified, ResultField, UnitGiven
from ringland_service.core.declare.kinds import Kind
from ringland_service.core.declare.notices import UNSTATED
from ringland_service.core.declare.significant import decimals
from ringland_service.core.errors import CoreError
from ringland_service.engine.columnar import ColumnAnswer
from ringland_service.engine.scalar import cautions_of


def column(
    values: list[Any], kind: Kind | None, digits: int | None, system: str, difference: bool = False
) -> dict[str, Any]:
    """Return a column as JSON; a ``difference`` (margin, doubt) takes no offset."""
    if kind is None:
        return {"values": values}
    unit = shown_unit(kind, system)
    offset = 0.0 if difference else unit.offset
    return {
        "values": [_shown(v, offset, unit.factor) for v in values],
        "unit": unit.symbol,
        "digits": shown_digits(kind, digits, system),
    }


def _shown(value: Any, offset: float, factor: float) -> Any:
    """Return one entry of a column in the unit shown; a list where the result is one."""
    if isinstance(value, (tuple, list, np.ndarray)):
        return [_shown(one, offset, factor) for one in value]
    return None if value is None else float((value - offset) / factor)


def results(found: ColumnAnswer, system: str) -> dict[str, Any]:
    """Return the result columns by public name, each with its uncertainties where there are any."""
    shown: dict[str, Any] = {}
    for name, field in declared(found.calculation.outputs).items():
        values = found.results.get(name)
        if values is None or not isinstance(field, ResultField):
            continue
        public = field.public(name)
        if field.record is not None:
            shown[public] = {"values": [_rows(field.record, v, system) for v in values]}
            continue
        shown[public] = result_column(values, field, system)
        if name in found.u and (field.kind is not None or name in bare(found.calculation.outputs)):
            doubts = [expanded(u) for u in found.u[name]]
            doubted = column(doubts, field.kind, field.digits, system, difference=True)
            shown[public]["uncertainties"] = doubted["values"]
        elif name in found.u and any(isinstance(v, Quantified) for v in values):
            shown[public]["uncertainties"] = [
                _of_any_kind(value, u, field, system)
                for value, u in zip(values, found.u[name], strict=True)
            ]
        if name in found.intervals:
            shown[public]["intervals"] = _intervals(found.intervals[name], field.kind, system)
    return shown


def _intervals(ends: list[Any], kind: Kind | None, system: str) -> list[Any]:
    """Return a column of intervals; a list of them where the result is one."""
    found: list[Any] = told_interval(ends, None if kind is None else shown_unit(kind, system))
    return found


def _of_any_kind(value: Quantified | None, u: Any, field: ResultField, system: str) -> float | None:
    """Return the expanded uncertainty of a quantity of any kind, in the unit of its column."""
    if value is None or not u:
        return None
    unit = shown_unit(value.kind, system) if field.kind_of else value.unit
    return expanded_in(u, unit.ratio)


def _rows(record: type, rows: Any, system: str) -> list[dict[str, Any]] | None:
    """Return a table in one entry of a column as JSON, as a single answer has it."""
    return None if rows is None else [members(record, row, None, system, {}) for row in rows]


def result_column(values: list[Any], field: ResultField, system: str) -> dict[str, Any]:
    """Return one result column; of quantities of any kind, with a unit a row where they differ."""
    first = next((v for v in values if isinstance(v, Quantified)), None)
    if first is None:
        return column(values, field.kind, field.digits, system)
    if field.kind_of:
        plain = [None if v is None else v.value for v in values]
        return column(plain, first.unit.kind, _digits(first), system)
    numbers = [None if v is None else _in_unit(v, v.unit) for v in values]
    symbols = [None if v is None else v.unit.symbol for v in values]
    alike = all(v is None or v.unit == first.unit for v in values)
    unit = {"unit": first.unit.symbol} if alike else {"units": symbols}
    return {"values": numbers, **unit, "digits": 6}


def _digits(value: Quantified) -> int:
    """Return decimals that keep four digits of a value of any kind."""
    number = value.value[0] if isinstance(value.value, tuple) else value.value
    return decimals(number, 4)


def _in_unit(value: Quantified, unit: UnitGiven) -> float:
    return float((value.value - unit.offset) / float(unit.ratio))


def verdicts(found: ColumnAnswer, system: str) -> dict[str, Any]:
    """Return the verdict columns by check."""
    shown: dict[str, Any] = {}
    for check in found.calculation.checks:
        rows = found.verdicts.get(check.name)
        if rows is None:
            continue
        kind, digits = rows.kind, rows.digits
        doubts = [None if not u else 2.0 * u for u in rows.u]
        shown[check.name] = {
            "verdict": rows.verdict,
            "why": rows.why,
            "margin": column(rows.margin, kind, digits, system, difference=True),
            "uncertainty": column(doubts, kind, digits, system, difference=True),
            "interval": _intervals(rows.interval, kind, system),
            "probability_within": [
                p if u else None for p, u in zip(rows.probability, rows.u, strict=True)
            ],
        }
    return shown


# A batch of bad rows alone would answer far more than it was asked.
MOST_PROBLEMS = 1_000


def statuses(found: ColumnAnswer) -> list[str]:
    """Return what became of each row."""
    words = [OK] * found.count
    for row in found.problems:
        words[row] = REFUSED
    for row in found.not_reached:
        words[row] = NOT_REACHED
    return words


def problem(calculation: Calculation, row: int, error: CoreError) -> dict[str, Any]:
    """Return what is wrong with a row."""
    detail = error.message + (f"; {error.right}" if error.right else "")
    named = {"row": row + 1, "field": _field(calculation, error)}
    return {**named, "code": error.code, "detail": detail}


def _field(calculation: Calculation, error: CoreError) -> str:
    return str(public_path(calculation.inputs, (error.field,))[0])


def problems(found: ColumnAnswer) -> dict[str, Any]:
    """Return the first problems in full, and of the others how many there are of each code."""
    told = [(row, error) for row in sorted(found.problems) for error in found.problems[row]]
    shown = [problem(found.calculation, row, error) for row, error in told[:MOST_PROBLEMS]]
    codes = Counter(error.code for _, error in told[MOST_PROBLEMS:])
    more = [{"code": code, "count": count} for code, count in sorted(codes.items())]
    return {"problems": shown, "more_problems": more}


def answer(found: ColumnAnswer, system: str) -> dict[str, Any]:
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


def table(found: ColumnAnswer, system: str) -> str:
    """Return a batch's answer as CSV: one line a row, a column a result, a verdict, a problem."""
    shown = {"results": results(found, system), "verdicts": verdicts(found, system)}
    columns = [("row", [str(i + 1) for i in range(found.count)]), ("status", statuses(found))]
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


def _headed(name: str, shown: dict[str, Any]) -> str:
    return f"{name} [{shown['unit']}]" if "unit" in shown else name


def _result_columns(
    calculation: Calculation, found: dict[str, Any], remarks: dict[str, list[str]]
) -> Iterator[tuple[str, list[Any]]]:
    known = shown_members(calculation.outputs)
    for name, shown in found["results"].items():
        yield _headed(name, shown), [column_cell(known[name], v) for v in shown["values"]]
        if "units" in shown:
            yield f"{name} unit", [cell(symbol) for symbol in shown["units"]]
        if "uncertainties" in shown:
            yield _headed(f"{name} U", shown), [cell(v) for v in shown["uncertainties"]]
            if name in remarks:
                yield f"{name} uncertainty not stated", remarks[name]
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


def _remarks(found: ColumnAnswer) -> dict[str, list[str]]:
    """Return, per result, a column of what is said of the inputs that state no uncertainty."""
    columns: dict[str, list[str]] = {}
    for warned, rows in found.warnings.items():
        if warned.code == UNSTATED:
            column_ = columns.setdefault(warned.field, [""] * found.count)
            for row in rows:
                column_[row] = warned.message
    return columns


def _warning_column(found: ColumnAnswer) -> list[str]:
    """Return what each row is warned of: field and code; the JSON has the messages."""
    texts: list[list[str]] = [[] for _ in range(found.count)]
    for warned, rows in found.warnings.items():
        for row in rows:
            texts[row].append(f"{warned.field}: {warned.code}")
    return [cell("; ".join(each)) for each in texts]


def _verdict_columns(found: dict[str, Any]) -> Iterator[tuple[str, list[Any]]]:
    for check, shown in found["verdicts"].items():
        yield f"{check} verdict", [cell(v) for v in shown["verdict"]]
        if any(shown["why"]):
            yield f"{check} why", [cell(v) for v in shown["why"]]
        yield (
            _headed(f"{check} margin", shown["margin"]),
            [cell(v) for v in shown["margin"]["values"]],
        )


def _problem_column(found: ColumnAnswer) -> list[str]:
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
