"""What a page is made of: rows and tables of ready texts, read off an answer's JSON."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from ringland_service.api.json_types import AnswerJson, VerdictJson
from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.figures import is_texts, told_rows, words_of
from ringland_service.api.shapes.looks import page_word
from ringland_service.api.shapes.members import Member
from ringland_service.api.writing import text
from ringland_service.core.declare import Calculation
from ringland_service.core.metrology.conformity import WORDS
from ringland_service.core.metrology.unjudged import WHY
from ringland_service.core.tables.sources import NO_SOURCE


@dataclass(frozen=True)
class Row:
    """One figure: what it is, and its value with unit."""

    label: str
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

    label: str
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

    label: str
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


def results(calculation: Calculation, result: AnswerJson, leave_out: Sequence[str] = ()) -> Section:
    """Return the results of a calculation; what stands elsewhere on the page is left out."""
    found = shapes.given(calculation.outputs, result)
    return section(calculation.title, ((m, v) for m, v in found if m.name not in leave_out))


def section(title: str, given: Iterable[tuple[Member, object]]) -> Section:
    """Return values as rows, lists of texts as points, and lists of records as tables."""
    rows, points, tables = [], [], []
    for member, value in given:
        if member.shape.is_table and value:
            tables.append(table(words_of(member.name), member, told_rows(value)))
        elif is_texts(value) and text.is_long_list(member, value, LONG):
            texts = tuple(page_word(member.shape, one) for one in value)
            points.append(Points(member.shape.field.description, texts))
        elif value not in ([], "", None):
            rows.append(Row(member.shape.field.description, member.shape.page_text(value)))
    return Section(title, tuple(rows), tuple(points), tuple(tables))


def table(caption: str, member: Member, rows: Sequence[AnswerJson]) -> Table:
    """Return records as a table; a column for each field that any of them has."""
    told = [{m.name: (m, value) for m, value in member.given(row)} for row in rows]
    names = list(dict.fromkeys(name for row in told for name in row))
    heads = tuple(words_of(name) for name in names)
    cells = [
        tuple(
            Cell(head, _texts(*row[name]) if name in row else (NONE,))
            for name, head in zip(names, heads, strict=True)
        )
        for row in told
    ]
    return Table(caption, heads, tuple(cells))


NONE = "–"


def _texts(member: Member, value: object) -> tuple[str, ...]:
    if value is None or value == []:
        return (NONE,)
    if member.shape.is_bare_list and is_texts(value):
        return tuple(page_word(member.shape, one) for one in value)
    return (member.shape.page_text(value),)


def given(record: type, values: AnswerJson, leave_out: Sequence[str] = ()) -> list[Section]:
    """Return the readings as parsed: a section of the request a section of the page."""
    told = [(m, v) for m, v in shapes.given(record, values) if m.name not in leave_out]
    found = [section("Given", ((m, v) for m, v in told if not m.shape.is_section))]
    for member, value in told:
        if member.shape.is_section:
            title = words_of(member.name).capitalize()
            found.append(section(title, _flat(member, value, "")))
    return [one for one in found if one]


def _flat(member: Member, values: AnswerJson, above: str) -> Iterator[tuple[Member, object]]:
    """Yield the fields of a section, those of its own sections under both names."""
    for inner, value in member.given(values):
        if inner.shape.is_section:
            yield from _flat(inner, value, f"{above}{inner.name}.")
        else:
            yield replace(inner, name=f"{above}{inner.name}"), value


def verdicts(found: Sequence[VerdictJson]) -> list[Judged]:
    """Return verdicts in texts."""
    return [_judged(verdict) for verdict in found]


def _judged(verdict: VerdictJson) -> Judged:
    limit = verdict["limit"]
    remarks = []
    if verdict["to_settle"] is not None:
        if verdict["inconclusive_fails"]:
            remarks.append(f"Uncertainty counts as fail: {verdict['inconclusive_fails']}")
        remarks.append(f"To settle: {verdict['to_settle']['advice']}")
    if verdict["bias"] is not None:
        remarks.append(f"{verdict['bias'][:1].upper()}{verdict['bias'][1:]}")
    if verdict["why"] is not None:
        remarks.append(f"Because {WHY[verdict['why']]}")
        remarks.append(f"To judge it: {verdict['to_judge']}")
    return Judged(
        label=text.judged_on(verdict),
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
