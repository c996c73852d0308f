"""Many rows: cut into requests, joined in order, a bad row told and kept in its place."""

from typing import Any, get_type_hints

import numpy as np
import pytest
from sdk_server import Scripted, serving

from ringland import (
    BatchAnswer,
    Client,
    Column,
    InvalidInput,
    MoreProblems,
    Quantity,
    Readings,
    RowProblem,
    RowWarning,
    VerdictColumns,
)
from ringland._batch import MOST_ROWS, column_json
from ringland._lines import line_chunks
from ringland_service.api.openapi.document import document
from ringland_service.api.reading.row_budget import MOST_ROWS as TAKEN_BY_THE_SERVICE


def test_a_request_holds_what_the_service_takes() -> None:
    assert MOST_ROWS == TAKEN_BY_THE_SERVICE


def test_more_rows_than_one_request_holds(ringland_client: Client) -> None:
    count = 2 * MOST_ROWS + 3
    sizes = np.linspace(60.0, 80.0, count)
    sizes[MOST_ROWS] = np.nan
    bores = (sizes, "mm")
    columns: dict[str, Any] = {"bore": bores, "cylinders": [2] * count}
    columns["limit.class_limit.high"] = ([500.0] * MOST_ROWS + [None] * (count - MOST_ROWS), "cc")
    found = ringland_client.displacement.batch(columns=columns, shared={"stroke": "66 mm"})
    assert (found.rows, found.answered, found.refused) == (count, count - 1, 1)
    [problem] = found.problems
    assert (problem.row, problem.field, problem.code) == (MOST_ROWS + 1, "bore", "missing_field")
    values = found.results["displacement"].values
    assert len(values) == count
    assert values[MOST_ROWS] is None
    # By hand: 2 x pi/4 x bore^2 x 6.6 cm, in order.
    exact = 2 * np.pi / 4 * (sizes / 10) ** 2 * 6.6
    assert np.array(values, float) == pytest.approx(exact, rel=1e-12, nan_ok=True)
    # Only the first request's rows have a limit; the others keep their places, empty.
    words = found.verdicts["class_limit"].verdict
    assert len(words) == count
    assert set(words[:MOST_ROWS]) == {"pass", "fail"}
    assert set(words[MOST_ROWS:]) == {None}
    assert len(found.verdicts["class_limit"].margin.values) == count


def test_a_row_is_answered_as_alone(ringland_client: Client) -> None:
    columns = {"bore": Readings((68.0, 70.0), "mm", uncertainty=0.01)}
    found = ringland_client.batch(
        "displacement", columns=columns, shared={"stroke": (66, "mm")}, units="us"
    )
    for row, size in enumerate((68.0, 70.0)):
        alone = ringland_client.displacement(
            bore=Quantity(size, "mm", 0.01), stroke="66 mm", units="us"
        ).result.displacement
        column = found.results["displacement"]
        assert column.unit == alone.unit == "in3"
        assert column.values[row] == pytest.approx(alone.value, rel=1e-14)
        assert column.uncertainties is not None
        assert column.uncertainties[row] == pytest.approx(alone.uncertainty, rel=1e-12)


def test_warnings_are_told_once_with_all_their_rows(ringland_client: Client) -> None:
    count = MOST_ROWS + 2
    found = ringland_client.displacement.batch(
        columns={"bore": ([140.0] * (count - 1) + [68.0], "mm")},
        shared={"stroke": "66 mm"},
    )
    [warning] = found.warnings
    assert (warning.field, warning.rows) == ("bore", tuple(range(1, count)))


@pytest.mark.parametrize(
    ("columns", "message"),
    [
        ({}, "columns: one length is needed"),
        ({"bore": ([], "mm")}, "columns: one length is needed"),
        ({"bore": ([1, 2], "mm"), "stroke": ([1], "mm")}, "not {'bore': 2, 'stroke': 1}"),
        ({"bore": "68 mm"}, "bore: '68 mm' is no list of values"),
        ({"bore": ([68, object()], "mm")}, "bore.1: .* is not a number"),
        ({"bore": ([68, float("inf")], "mm")}, "bore.1: inf is not a number"),
    ],
)
def test_columns_that_are_none_are_named(
    ringland_client: Client, columns: dict[str, Any], message: str
) -> None:
    with pytest.raises(InvalidInput, match=message):
        ringland_client.displacement.batch(columns=columns)


def test_columns_in_each_form() -> None:
    wanted = {"values": [1.0, None], "unit": "mm"}
    for column in (([1.0, None], "mm"), (np.array([1.0, np.nan]), "mm"), Readings((1, None), "mm")):
        assert column_json(column, "x") == wanted
    listed = {"values": [1.0, None], "unit": "mm", "uncertainty": [0.1, None]}
    assert column_json({**listed, "uncertainty": np.array([0.1, np.nan])}, "x") == listed
    for words in (("new", "used"), ["new", "used"]):
        assert column_json(words, "x") == {"values": ["new", "used"]}
    assert column_json([True, None], "x") == {"values": [True, None]}


def test_lines_are_cut_by_rows_and_by_size() -> None:
    assert [c.count(b"\n") for c in line_chunks([{}] * (MOST_ROWS + 1))] == [MOST_ROWS, 1]
    large = {"note": "x" * (3 * 1024 * 1024)}
    assert [c.count(b"\n") for c in line_chunks([large, large, {}])] == [1, 2]
    assert list(line_chunks([])) == []


def test_a_line_too_few_is_noticed() -> None:
    app = Scripted().answers("200 OK", b"")
    with (
        serving(app) as url,
        Client(url) as client,
        pytest.raises(Exception, match="1 rows were sent, 0 came back"),
    ):
        client.many("displacement", [{}])


def promised(of: type, schema: Any) -> None:
    """Assert that a class has each member of a schema, and the words of a closed list."""
    hints = get_type_hints(of)
    assert hints.keys() >= schema["properties"].keys(), of.__name__
    for name, member in schema["properties"].items():
        words = member.get("items", member).get("enum")
        if words:
            assert repr(list(words)).strip("[]") in str(hints[name]), name


def test_the_answer_of_a_batch_has_what_the_document_promises() -> None:
    schemas = document()["components"]["schemas"]
    batch = schemas["BatchAnswer"]
    promised(BatchAnswer, batch)
    promised(Column, schemas["Column"])
    promised(VerdictColumns, batch["properties"]["verdicts"]["additionalProperties"])
    for of, name in (
        (RowProblem, "problems"),
        (MoreProblems, "more_problems"),
        (RowWarning, "warnings"),
    ):
        promised(of, batch["properties"][name]["items"])


def test_why_rows_are_not_judged(ringland_client: Client) -> None:
    """The second request's rows have no limit, so neither a verdict nor a reason."""
    asked = ringland_client.compression_level
    asked.limit.most = 2
    found = asked.batch(
        columns={
            "reading": ([65, 65, 65], "psi"),
            "limit.compression_reading.low": ([60, 90, None], "psi"),
            "decompressor": ["none", None, "none"],
        },
        shared={"altitude": "0 m", "limit_altitude": "0 m", "throttle_open": True},
    )
    assert found.verdicts["compression_reading"].why == (None, "decompressor_unknown", None)


def test_rows_of_different_units_keep_theirs(ringland_client: Client) -> None:
    """By hand: 25.4 mm are 1 inch; each of two requests is in one unit, but not in the same."""
    asked = ringland_client.convert
    asked.limit.most = 2
    found = asked.batch(columns={"value": ([25.4] * 4, "mm"), "to": ["in", "in", "mm", "mm"]})
    column = found.results["converted"]
    assert column.values == pytest.approx([1.0, 1.0, 25.4, 25.4])
    assert (column.unit, column.units) == (None, ("in", "in", "mm", "mm"))
    mixed = asked.batch(columns={"value": ([25.4] * 2, "mm"), "to": ["in", "mm"]})
    alone = mixed.results["converted"]
    assert (alone.unit, alone.units) == (None, ("in", "mm"))


def test_a_column_of_lists(ringland_client: Client) -> None:
    """A list in a row, its text, and a gap."""
    rows: list[Any] = [(120, 118, 95), "120;118;95", None]
    found = ringland_client.batch("cylinder-spread", columns={"readings": (rows, "psi")})
    assert found.status == ("ok", "ok", "refused")
    values = found.results["spread"].values
    assert values[0] == values[1] is not None
