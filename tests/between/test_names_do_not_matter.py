"""A result may bear the name of a member of a quantity: its declaration says what it is."""

import csv
import io

from ringland_service.api.writing import batch_render, flat_table, render
from ringland_service.api.writing.pages import blocks
from ringland_service.api.writing.picking import picked
from ringland_service.api.writing.single_text import single_text
from ringland_service.core.declare import Calculation, Composite, Step, quantity, record, result
from ringland_service.core.declare.kinds import LENGTH
from ringland_service.core.quantities.lengths import BORE
from ringland_service.engine.columnar import ColumnAnswer


@record
class Row:
    """A row with the names of a quantity."""

    value: str = result("what it is")
    unit: str = result("whose it is")
    values: tuple[str, ...] = result("its names")
    uncertainty: float = result("a share", digits=2)
    low_mm: float | None = result("a size", kind=LENGTH, digits=3, default=None)


@record
class Outputs:
    """Results with the names of a quantity and of a list of them."""

    values: tuple[Row, ...] = result("rows", record=Row)
    value: str = result("a word")
    unit: str = result("another word")
    digits: int = result("a count")
    uncertainty: bool = result("yes or no")
    uncertainties: tuple[str, ...] = result("words")


@record
class Inputs:
    """A bore."""

    bore_mm: float = quantity(BORE, "bore")


NAMED = Calculation(
    name="named",
    number="",
    stage="general",
    title="Named",
    summary="",
    inputs=Inputs,
    outputs=Outputs,
    compute=lambda inputs: None,
)
CARD = Composite(
    name="card",
    number="",
    stage="job",
    title="Card",
    summary="",
    inputs=Inputs,
    steps=(Step(part="values", calculation=NAMED, purpose=""),),
)
FOUND = Outputs(
    values=(
        Row(value="piston", unit="ours", values=("a", "b"), uncertainty=0.25, low_mm=68.5),
        Row(value="ring", unit="theirs", values=(), uncertainty=0.5),
    ),
    value="fits",
    unit="by hand",
    digits=3,
    uncertainty=True,
    uncertainties=("c", "d"),
)
RESULT = render.members(Outputs, FOUND, FOUND, "metric", {})
ANSWER = {"inputs": {}, "result": RESULT, "verdicts": [], "warnings": [], "cautions": []}
ROWS = [
    ("values 1", "value", "piston", ""),
    ("values 1", "unit", "ours", ""),
    ("values 1", "values 1", "a", ""),
    ("values 1", "values 2", "b", ""),
    ("values 1", "uncertainty", "0.25", ""),
    ("values 1", "low", "68.5", "mm"),
    ("values 2", "value", "ring", ""),
    ("values 2", "unit", "theirs", ""),
    ("values 2", "uncertainty", "0.5", ""),
    ("result", "value", "fits", ""),
    ("result", "unit", "by hand", ""),
    ("result", "digits", "3", ""),
    ("result", "uncertainty", "true", ""),
    ("result", "uncertainties 1", "c", ""),
    ("result", "uncertainties 2", "d", ""),
]


def rows(sheet: str) -> list[tuple[str, ...]]:
    columns = ("part", "name", "value", "unit")
    return [tuple(row[name] for name in columns) for row in csv.DictReader(io.StringIO(sheet))]


def test_in_csv() -> None:
    assert rows(flat_table.table(NAMED, ANSWER)) == ROWS
    card = {**ANSWER, "result": {"values": RESULT, "measure_next": []}}
    within = [("values" if part == "result" else f"values.{part}", *rest) for part, *rest in ROWS]
    assert rows(flat_table.table(CARD, card)) == within


def test_in_a_batch_as_csv() -> None:
    found = ColumnAnswer(NAMED, 1)
    found.results |= {name: [getattr(FOUND, name)] for name in RESULT}
    (row,) = csv.DictReader(io.StringIO(batch_render.table(found, "metric")))
    assert row["values"] == (
        "value: piston; unit: ours; values: a; b; uncertainty: 0.25; low: 68.5 mm"
        " | value: ring; unit: theirs; values: ; uncertainty: 0.5"
    )
    assert (row["value"], row["uncertainty"], row["uncertainties"]) == (
        "fits",
        "true",
        "c; d",
    )


def test_in_text() -> None:
    told = single_text(NAMED, ANSWER)
    for line in ("value          fits", "uncertainty    yes", "uncertainties  c, d"):
        assert line in told
    assert "68.500 mm" in told
    assert "piston" in told


def test_on_a_page() -> None:
    section = blocks.results(NAMED, RESULT)
    assert [(row.words, row.value) for row in section.rows] == [
        ("a word", "fits"),
        ("another word", "by hand"),
        ("a count", "3"),
        ("yes or no", "yes"),
        ("words", "c; d"),
    ]
    (table,) = section.tables
    assert table.heads == ("value", "unit", "values", "uncertainty", "low")
    assert [cell.texts for cell in table.rows[0]] == [
        ("piston",),
        ("ours",),
        ("a", "b"),
        ("0.25",),
        ("68.500 mm",),
    ]


def test_picked() -> None:
    assert picked(NAMED, ANSWER, "value") == "fits"
    assert picked(NAMED, ANSWER, "uncertainty") == "true"
