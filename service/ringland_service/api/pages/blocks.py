"""What a page is made of: rows and tables of ready texts, read off an answer's JSON."""

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ringland_service.api import text
from ringland_service.core.declare import Calculation, asked, declared
from ringland_service.core.fields import (
    ChoiceField,
    Field,
    NumberField,
    RecordsField,
    ResultField,
    SectionField,
)
from ringland_service.core.unjudged import WHY
from ringland_service.core.verdicts import WORDS

_TOKEN = re.compile("[a-z0-9]+(_[a-z0-9]+)+")


@dataclass(frozen=True)
class Row:
    """One figure: what it is, and its value with unit."""

    words: str
    value: str


@dataclass(frozen=True)
class Cell:
    """One cell of a table; several texts stand one below the other."""

    head: str
    texts: tuple[str, ...]


@dataclass(frozen=True)
class Table:
    """A table of records, one a row."""

    caption: str
    heads: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]


@dataclass(frozen=True)
class Points:
    """Several texts under what they are."""

    words: str
    texts: tuple[str, ...]


@dataclass(frozen=True)
class Section:
    """A titled group of figures, points and tables."""

    title: str
    rows: tuple[Row, ...]
    points: tuple[Points, ...]
    tables: tuple[Table, ...]

    def __bool__(self) -> bool:
        """Return whether there is anything in it."""
        return bool(self.rows or self.points or self.tables)


@dataclass(frozen=True)
class Judged:
    """A verdict in texts; ``token`` is the word of the wire, for the style."""

    words: str
    value: str
    limit: str
    standing: str
    source: str
    verdict: str
    token: str
    margin: str
    remarks: tuple[str, ...]


def is_table(value: Any) -> bool:
    """Return whether a value is a list of records."""
    return isinstance(value, list) and bool(value) and isinstance(value[0], Mapping)


def is_texts(value: Any) -> bool:
    """Return whether a value is a list of texts."""
    return isinstance(value, list) and bool(value) and all(isinstance(one, str) for one in value)


# Texts that are longer all together stand one below the other.
LONG = 60


def results(
    calculation: Calculation, result: Mapping[str, Any], leave_out: Sequence[str] = ()
) -> Section:
    """Return the results of a calculation; what stands elsewhere on the page is left out."""
    fields = {f.public(n): f for n, f in declared(calculation.outputs).items()}
    shown = {name: value for name, value in result.items() if name not in leave_out}
    return section(calculation.title, shown, fields)


def section(title: str, values: Mapping[str, Any], fields: Mapping[str, Field]) -> Section:
    """Return values as rows, lists of texts as points, and lists of records as tables."""
    rows, points, tables = [], [], []
    for name, value in values.items():
        if is_table(value):
            tables.append(table(text.words_of(name), value, record_fields(fields[name])))
        elif is_texts(value) and sum(map(len, value)) > LONG:
            texts = tuple(value_text(one, fields[name]) for one in value)
            points.append(Points(fields[name].words, texts))
        elif value not in ([], "", None):
            rows.append(Row(fields[name].words, value_text(value, fields[name])))
    return Section(title, tuple(rows), tuple(points), tuple(tables))


def record_fields(field: Field) -> dict[str, Field]:
    """Return the fields of the records that a field lists, by public name."""
    if isinstance(field, (RecordsField, SectionField, ResultField)) and field.record is not None:
        return {f.public(n): f for n, f in asked(field.record).items()}
    return {}


def table(caption: str, rows: Sequence[Mapping[str, Any]], fields: Mapping[str, Field]) -> Table:
    """Return records as a table; a column for each field that any of them has."""
    names = list(dict.fromkeys(name for row in rows for name in row))
    heads = tuple(text.words_of(name) for name in names)
    cells = [
        tuple(
            Cell(head, _texts(row.get(name), fields.get(name)))
            for name, head in zip(names, heads, strict=True)
        )
        for row in rows
    ]
    return Table(caption, heads, tuple(cells))


def _texts(value: Any, field: Field | None) -> tuple[str, ...]:
    if value is None or value == []:
        return ("–",)
    if is_texts(value):
        return tuple(value_text(one, field) for one in value)
    return (value_text(value, field),)


def value_text(value: Any, field: Field | None) -> str:
    """Return a value as text; a token of a closed list in its words."""
    if is_texts(value):
        return "; ".join(value_text(one, field) for one in value)
    choices = field.choices if isinstance(field, (ChoiceField, ResultField)) else None
    if isinstance(value, str):
        if choices and value in choices:
            return choices[value]
        # A text of one's own is shown as it was written; a token of the wire never is.
        return text.shown(value) if _TOKEN.fullmatch(value) else value
    if isinstance(field, NumberField) and isinstance(value, float):
        return text.plain(value)
    digits = field.digits if isinstance(field, ResultField) else None
    return text.shown(value, digits)


def given(record: type, values: Mapping[str, Any], leave_out: Sequence[str] = ()) -> list[Section]:
    """Return the readings as understood: a section of the request a section of the page."""
    fields = {f.public(n): f for n, f in asked(record).items() if f.public(n) not in leave_out}
    loose = {n: v for n, v in values.items() if n in fields and not _is_section(fields[n])}
    found = [section("Given", loose, fields)]
    for name, field in fields.items():
        if isinstance(field, SectionField) and name in values:
            inner = dict(_flat(field.record, values[name], ""))
            shown = {label: value for label, (value, _) in inner.items()}
            title = text.words_of(name).capitalize()
            found.append(section(title, shown, {label: f for label, (_, f) in inner.items()}))
    return [one for one in found if one]


def _is_section(field: Field) -> bool:
    return isinstance(field, SectionField)


def _flat(
    record: type, values: Mapping[str, Any], above: str
) -> Iterator[tuple[str, tuple[Any, Field]]]:
    """Yield the fields of a section, those of its own sections under both names."""
    for name, field in asked(record).items():
        public = field.public(name)
        if public not in values:
            continue
        if isinstance(field, SectionField):
            yield from _flat(field.record, values[public], f"{above}{public}.")
        else:
            yield f"{above}{public}", (values[public], field)


# Said by the standing already.
NO_SOURCE = "common practice, no source"


def verdicts(found: Sequence[Mapping[str, Any]]) -> list[Judged]:
    """Return verdicts in texts."""
    return [_judged(verdict) for verdict in found]


def _judged(verdict: Mapping[str, Any]) -> Judged:
    limit = verdict["limit"]
    remarks = []
    if verdict["to_settle"] is not None:
        if verdict["doubt_fails"]:
            remarks.append(f"Doubt counts as fail: {verdict['doubt_fails']}")
        remarks.append(f"To settle: {verdict['to_settle']['advice']}")
    if verdict["why"] is not None:
        remarks.append(f"Because {WHY[verdict['why']]}")
        remarks.append(f"To judge it: {verdict['to_judge']}")
    return Judged(
        words=text.judged_on(verdict),
        value=text.value_text(verdict),
        limit=text.limit_sides(limit),
        standing=text.STANDING_WORDS[limit["standing"]],
        source=limit["source"].removesuffix(f"; {NO_SOURCE}"),
        verdict=WORDS[verdict["verdict"]],
        token=verdict["verdict"],
        margin=text.shown(verdict["margin"]),
        remarks=tuple(remarks),
    )
