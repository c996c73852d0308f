"""Results without a unit carry their uncertainty: each of them, in every form of the answer.

GTC, a general-purpose library whose numbers carry their own uncertainty, is put through the formula
texts that the service shows; what it says of each result is the witness.
"""

import copy
import csv
import dataclasses
import io
import math
import re
from collections.abc import Iterator
from functools import cache
from typing import Any

from gtc_witness import number, witnessed
from reference_cases import BY_NAME, cases

from ringland_service.api.faults import Faulty
from ringland_service.api.reading.request import understood
from ringland_service.api.routes.answering import answered, answered_batch
from ringland_service.api.shapes.examples import example
from ringland_service.api.writing import batch_render, flat_table, render
from ringland_service.api.writing.expanded import bare
from ringland_service.api.writing.printed import printed
from ringland_service.api.writing.render import members
from ringland_service.api.writing.single_text import single_text
from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, asked, declared
from ringland_service.core.declare.fields import (
    QuantityField,
    RecordsField,
    ResultField,
    SectionField,
)
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.deadline import never
from ringland_service.engine.question import Question, fields_given
from ringland_service.engine.scalar import answer

PLAIN = [c for c in EVERY if isinstance(c, Calculation)]


def is_number(calculation: Calculation, name: str) -> bool:
    """Whether a result is a bare number that is no count, or a list of them."""
    field = declared(calculation.outputs)[name]
    annotation = {f.name: f.type for f in dataclasses.fields(calculation.outputs)}[name]
    plain = isinstance(field, ResultField) and name in bare(calculation.outputs) and not field.place
    return plain and "float" in str(annotation)


BARE = {(c.name, n) for c in PLAIN for n in declared(c.outputs) if is_number(c, n)}
# Bare numbers that no quantity of the request moves, and why.
UNMOVED = {
    ("convert", "factor"): "the exact factor of two units",
    ("compression-level", "unmet_conditions"): "a count of conditions",
    ("clean-up", "wear_side_share_used"): "a bare number of the request, which takes none",
    ("run-in", "total_minutes"): "minutes are bare numbers of the request, which take none",
    **{
        (name, result): "prices and hours are bare numbers of the request, which take none"
        for name, result in BARE
        if name == "estimate"
    },
    **{
        (name, result): "prices are bare numbers of the request, and what the uncertainty of the "
        "value leaves open is the probability itself"
        for name, result in BARE
        if name in ("choice-by-consequence", "consequences")
    },
}
SHARE = 1e-4
# First order against first order: the truncation of the central difference, (6e-6 of the scale)².
# The noise of a slope, and u to ten digits.
NEAR = 2e-9
# The oil leaves a room small against the scale of a clearance volume, which sets the step; where
# the lash is as wanted the turn has a kink, and the derivative is taken a little beside it.
WIDER = {"ratio_with_oil": 2e-9, "turn_fraction": 2e-6}


def tied(question: Question, found: Answer) -> bool:
    """Whether a largest or smallest is shared: there no derivative is the right one."""
    lists = [v for _, _, v in fields_given(question.inputs) if isinstance(v, tuple)]
    read = [v for v in lists if all(map(number, v))]
    # Of a face, the largest gap alone counts.
    ends = [max] if found.calculation.name == "flatness" else [max, min]
    return any(v.count(end(v)) > 1 for v in read for end in ends)


def doubted(record: type, data: dict[str, Any]) -> dict[str, Any]:
    """State an uncertainty on every quantity of a request that takes one."""
    for name, field in asked(record).items():
        value = data.get(field.public(name))
        if value is None:
            continue
        if isinstance(field, SectionField):
            doubted(field.record, value)
        elif isinstance(field, RecordsField):
            for one in value:
                doubted(field.record, one)
        elif isinstance(field, QuantityField) and not field.exact:
            least = min(abs(v) for v in value.get("values", [value.get("value")]) if v is not None)
            value["uncertainty"] = SHARE * (least or field.type.span / 10.0)
    return data


def as_sent(value: Any) -> Any:
    """An answer's echo of inputs as a request has them."""
    if isinstance(value, dict):
        return {k: as_sent(v) for k, v in value.items() if k != "digits"}
    return [as_sent(v) for v in value] if isinstance(value, list) else value


def requests_of(calculation: Calculation) -> Iterator[dict[str, Any]]:
    """The declared example and the inputs of each reference case."""
    yield example(calculation.inputs)
    for case in cases():
        if case.calculation == calculation.name and not case.refused:
            inputs = case.question().inputs
            yield as_sent(members(calculation.inputs, inputs, inputs, "metric", {}))


TWICE = "its doubt is stated twice"


def asked_with_doubt(calculation: Calculation, data: dict[str, Any]) -> Any:
    """The request with uncertainties, less those that another input states already; its answer."""
    data = doubted(calculation.inputs, copy.deepcopy(data))
    for _ in range(5):
        try:
            question = understood(calculation, data)
            return data, question, answer(calculation, question)
        except Refused as refused:
            fault = refused.faults[0]
            if TWICE not in fault.message:
                return None
            public = asked(calculation.inputs)[fault.field].public(fault.field)
            del data[public]["uncertainty"]
        except Faulty:
            return None
    return None


@cache
def answers() -> dict[str, list[Any]]:
    """Every request with its question and answer, by calculation."""
    names = {name for name, _ in BARE}
    return {
        c.name: [
            one
            for one in (asked_with_doubt(c, data) for data in requests_of(c))
            if one is not None and not tied(*one[1:])
        ]
        for c in PLAIN
        if c.name in names
    }


def same(ours: Any, theirs: Any, name: str = "") -> bool:
    """Whether two uncertainties agree, or two lists of them, None where there is none."""
    if isinstance(ours, list) and isinstance(theirs, list):
        pairs = zip(ours, theirs, strict=True)
        return all(same(one, other, name) for one, other in pairs)
    if ours is None or theirs is None:
        return ours is theirs
    return math.isclose(ours, theirs, rel_tol=WIDER.get(name, NEAR))


def flat(ours: Any) -> list[float]:
    """The uncertainties of a result that there are."""
    return [u for u in (ours if isinstance(ours, list) else [ours]) if u is not None]


# Cases whose way to the result the formula texts do not tell: a survey, and expansion from a table.
SURVEYED = {"clearance_max_share"}


def compared() -> Iterator[tuple[str, dict[str, Any], dict[str, Any], Any]]:
    """Each result with its request, the service's answer and what GTC says."""
    for calculation, rows in answers().items():
        names = [name for of, name in sorted(BARE - UNMOVED.keys()) if of == calculation]
        for data, question, found in rows:
            shown = render.answer(found)
            for name in names:
                if getattr(found.outputs, name) is None:
                    continue
                try:
                    yield name, data, shown, witnessed(question, found, name)
                except KeyError:
                    assert name in SURVEYED


def test_each_bare_number_has_the_uncertainty_that_gtc_gives() -> None:
    met = set()
    for name, _, shown, theirs in compared():
        ours = shown["uncertainties"].get(name)
        if theirs is None:
            assert ours is None, name
            continue
        met.add((shown["calculation"], name))
        assert same(ours, theirs, name), name
    assert met == BARE - UNMOVED.keys()


def as_batch(data: dict[str, Any]) -> dict[str, Any]:
    """A request as a batch of two like rows: single quantities as columns, the rest shared."""
    single = {n: v for n, v in data.items() if isinstance(v, dict) and "value" in v}
    columns = {
        n: {
            "values": [v["value"]] * 2,
            "unit": v["unit"],
            **({"uncertainty": [v["uncertainty"]] * 2} if "uncertainty" in v else {}),
        }
        for n, v in single.items()
    }
    return {"shared": {n: v for n, v in data.items() if n not in single}, "columns": columns}


def test_a_batch_says_the_same_in_json_and_in_csv() -> None:
    met = set()
    for name, data, shown, _ in compared():
        batch = as_batch(data)
        ours = shown["uncertainties"].get(name)
        if ours is None or not batch["columns"]:
            continue
        calculation = BY_NAME[shown["calculation"]]
        assert isinstance(calculation, Calculation)
        found = answered_batch(calculation, batch, never())
        met.add(shown["calculation"])
        for row in batch_render.results(found, "metric")[name]["uncertainties"]:
            assert same(row, ours)
        table = list(csv.DictReader(io.StringIO(batch_render.table(found, "metric"))))
        for line in table:
            told = [float(one) for one in line[f"{name} U"].split("; ") if one]
            assert same(told, flat(ours))
    assert len(met) > 15


def test_the_table_and_the_text_of_a_single_answer_say_it() -> None:
    met = 0
    for name, _, shown, _ in compared():
        ours = shown["uncertainties"].get(name)
        if ours is None:
            continue
        calculation = BY_NAME[shown["calculation"]]
        assert isinstance(calculation, Calculation)
        rows = csv.DictReader(
            io.StringIO(flat_table.table(calculation, printed(calculation, shown)))
        )
        told = [
            float(row["uncertainty"])
            for row in rows
            if row["name"].rstrip("0123456789 ") == name and row["part"] == "result"
            if row["uncertainty"]
        ]
        assert same(told, flat(ours))
        lines = single_text(calculation, {**shown, "warnings": []})
        assert re.search(rf"{name.replace('_', ' ')} .*±", lines.replace("\n", " ")), name
        met += 1
    assert met > 200


def test_without_stated_uncertainty_there_is_none() -> None:
    for calculation in PLAIN:
        if calculation.influences is None:
            data = example(calculation.inputs)
            assert answered(calculation, data, {})["uncertainties"] == {}
