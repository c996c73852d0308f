"""What a page is made of: rows and tables of ready texts, read off an answer's JSON."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.members import Member, Shape
from ringland_service.api.writing import text
from ringland_service.core.declare import Calculation
from ringland_service.core.declare.fields import NumberField
from ringland_service.core.metrology.conformity import WORDS
from ringland_service.core.metrology.unjudged import WHY
from ringland_service.core.tables.sources import NO_SOURCE

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


# Texts that are longer all together stand one below the other.
LONG = 60


def results(
    calculation: Calculation, result: Mapping[str, Any], leave_out: Sequence[str] = ()
) -> Section:
    """Return the results of a calculation; what stands elsewhere on the page is left out."""
    found = shapes.given(calculation.outputs, result)
    return section(calculation.title, ((m, v) for m, v in found if m.name not in leave_out))


def section(title: str, given: Iterable[tuple[Member, Any]]) -> Section:
    """Return values as rows, lists of texts as points, and lists of records as tables."""
    rows, points, tables = [], [], []
    for member, value in given:
        if text.is_table(member, value):
            tables.append(table(text.words_of(member.name), member, value))
        elif text.is_long_list(member, value, LONG):
            texts = tuple(bare_text(member, one) for one in value)
            points.append(Points(member.field.words, texts))
        elif value not in ([], "", None):
            rows.append(Row(member.field.words, value_text(member, value)))
    return Section(title, tuple(rows), tuple(points), tuple(tables))


def table(caption: str, member: Member, rows: Sequence[Mapping[str, Any]]) -> Table:
    """Return records as a table; a column for each field that any of them has."""
    told = [{m.name: (m, value) for m, value in member.given(row)} for row in rows]
    names = list(dict.fromkeys(name for row in told for name in row))
    heads = tuple(text.words_of(name) for name in names)
    cells = [
        tuple(
            Cell(head, _texts(*row[name]) if name in row else (NONE,))
            for name, head in zip(names, heads, strict=True)
        )
        for row in told
    ]
    return Table(caption, heads, tuple(cells))


NONE = "–"


def _texts(member: Member, value: Any) -> tuple[str, ...]:
    if value is None or value == []:
        return (NONE,)
    if text.is_texts(member, value):
        return tuple(bare_text(member, one) for one in value)
    return (value_text(member, value),)


def value_text(member: Member, value: Any) -> str:
    """Return a value as text; a token of a closed list in its words."""
    if text.is_texts(member, value):
        return "; ".join(bare_text(member, one) for one in value)
    if member.shape is Shape.PLAIN and not isinstance(value, Mapping):
        return bare_text(member, value)
    return text.shown(member, value)


def bare_text(member: Member, value: Any) -> str:
    """Return a bare value, or one of a list of them, as text."""
    if isinstance(value, str):
        if member.choices and value in member.choices:
            return member.choices[value]
        # A text of one's own is shown as it was written; a token of the wire never is.
        return text.bare(value) if _TOKEN.fullmatch(value) else value
    if isinstance(member.field, NumberField) and isinstance(value, float):
        return text.plain(value)
    return text.bare(value, member.digits)


def given(record: type, values: Mapping[str, Any], leave_out: Sequence[str] = ()) -> list[Section]:
    """Return the readings as understood: a section of the request a section of the page."""
    told = [(m, v) for m, v in shapes.given(record, values) if m.name not in leave_out]
    found = [section("Given", ((m, v) for m, v in told if m.shape is not Shape.SECTION))]
    for member, value in told:
        if member.shape is Shape.SECTION:
            title = text.words_of(member.name).capitalize()
            found.append(section(title, _flat(member, value, "")))
    return [one for one in found if one]


def _flat(member: Member, values: Mapping[str, Any], above: str) -> Iterator[tuple[Member, Any]]:
    """Yield the fields of a section, those of its own sections under both names."""
    for inner, value in member.given(values):
        if inner.shape is Shape.SECTION:
            yield from _flat(inner, value, f"{above}{inner.name}.")
        else:
            yield replace(inner, name=f"{above}{inner.name}"), value


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
    if verdict["bias"] is not None:
        remarks.append(f"{verdict['bias'][:1].upper()}{verdict['bias'][1:]}")
    if verdict["why"] is not None:
        remarks.append(f"Because {WHY[verdict['why']]}")
        remarks.append(f"To judge it: {verdict['to_judge']}")
    return Judged(
        words=text.judged_on(verdict),
        value=text.value_text(verdict),
        limit=text.limit_sides(limit),
        standing=text.STANDING_WORDS[limit["standing"]],
        # Common practice is said by the standing already.
        source=limit["source"].removesuffix(f"; {NO_SOURCE}"),
        verdict=WORDS[verdict["verdict"]],
        token=verdict["verdict"],
        margin=text.judged_number(verdict["margin"]),
        remarks=tuple(remarks),
    )
