"""With ``defaults: off`` no number rests on common practice, and the answer says what it needs.

Every common-practice figure of the core is changed: the tables' rows by their standing, the
defaults of fields that are marked, the constants of modules. Common practice has no source to
check against; what is held here is that it stays out.
"""

import dataclasses
from functools import cache

import pytest
from drawn_questions import example_row
from further_cases import FURTHER
from reference_cases import Case, cases
from rows_alone import as_columns, assert_row, single

from ringland_service.core.calculations import CALCULATIONS, EVERY
from ringland_service.core.declare import Calculation, Composite, declared, defaults
from ringland_service.core.declare.fields import LimitSideField
from ringland_service.core.declare.usual import Figure, Usual
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.columnar import answer_rows
from ringland_service.engine.composite import CompositeAnswer, answer_composite
from ringland_service.engine.known import paths
from ringland_service.engine.question import Question, Stated
from ringland_service.engine.scalar import answer
from ringland_service.engine.standing_in import CODE, may_be_absent, public_place
from usual_figures import CHANGES, COMMON, changed, plain

CASES = [*cases(), *FURTHER]
Told = dict[str, str]


def told(found: Answer | CompositeAnswer) -> Told:
    """Return all that an answer says, by place."""
    if isinstance(found, CompositeAnswer):
        parts = {f"{p}.{k}": v for p, part in found.parts.items() for k, v in told(part).items()}
        return {**parts, "open": repr(found.open)}
    outputs = found.outputs
    return {
        **{f.name: repr(getattr(outputs, f.name)) for f in dataclasses.fields(outputs)},
        **{f"u of {n}": repr(u) for n, u in found.u.items()},
        **{
            f"verdict {v.check.name} {v.of}": repr((v.value, v.u, v.limit, v.judged, v.word))
            for v in found.verdicts
        },
        "warnings": repr(sorted(map(repr, found.warnings))),
        "inputs": repr(found.inputs),
    }


def asked(case: Case, defaults_on: bool) -> Told:
    """Return what the engine says to a case; a refusal is one line."""
    question = dataclasses.replace(case.question(), defaults=defaults_on)
    try:
        if isinstance(case.declaration, Composite):
            return told(answer_composite(case.declaration, question))
        return told(answer(case.declaration, question))
    except Refused as refused:
        return {"refused": str(refused)}


@pytest.mark.parametrize("name", sorted({case.calculation for case in CASES}))
def test_no_answer_moves_with_common_practice(name: str) -> None:
    own = [case for case in CASES if case.calculation == name]
    before = [asked(case, defaults_on=False) for case in own]
    with changed(tuple(CHANGES)):
        after = [asked(case, defaults_on=False) for case in own]
    for case, one, other in zip(own, before, after, strict=True):
        moved = {key for key in one.keys() | other.keys() if one.get(key) != other.get(key)}
        assert not moved, (case.name, {key: (one.get(key), other.get(key)) for key in moved})


@cache
def on(place: int) -> Told:
    """Return what a case says with common practice on and nothing changed."""
    return asked(CASES[place], defaults_on=True)


def _likely(change: str, case: Case) -> bool:
    """Return whether a case is worth trying first: its calculation is named, or has the check."""
    subject = change.partition(" ")[2]
    row = LIMITS.get(subject)
    checks = {check.name for check in case.declaration.checks}
    stem = case.calculation.replace("-", "_")
    return stem in subject or case.calculation in subject or bool(row and row.check in checks)


# What moves no case, with the reason.
MOVED_ELSEWHERE = {
    name: "an instrument is named at the door alone: see tests/api/test_defaults_off_at_the_door.py"
    for name in CHANGES
    if name.startswith("instruments")
}


@pytest.mark.parametrize("case", FURTHER, ids=str)
def test_the_further_questions_are_answered(case: Case) -> None:
    """Else they could show nothing."""
    assert "refused" not in asked(case, defaults_on=True)


@pytest.mark.parametrize("change", [name for name in CHANGES if name not in MOVED_ELSEWHERE])
def test_with_it_on_some_answer_moves(change: str) -> None:
    """Else the test above could not fail by this figure."""
    order = sorted(range(len(CASES)), key=lambda place: not _likely(change, CASES[place]))
    for place in order:
        before = on(place)
        with changed((change,)):
            if asked(CASES[place], defaults_on=True) != before:
                return
    pytest.fail(f"no case moves with {change}")


def test_every_row_of_the_table_of_limits_is_changed() -> None:
    rows = {f"limits {name}" for name, row in LIMITS.items() if row.standing == COMMON}
    assert rows <= CHANGES.keys()
    assert len(rows) > 80


def test_every_default_of_common_practice_has_what_rests_on_it() -> None:
    for calculation in plain():
        marked = {n for n, v in defaults(calculation.inputs).items() if isinstance(v, Usual)}
        assert marked <= {figure.field for figure in calculation.figures}, calculation.name


FIGURES = [(c, figure) for c in plain() for figure in c.figures]
IDS = [f"{c.name} {figure.field} {figure.results}" for c, figure in FIGURES]


@cache
def answered_off(name: str) -> list[tuple[Case, Answer]]:
    """Return the plain answers to a calculation's cases with common practice off."""
    found = []
    for case in CASES:
        if (
            case.calculation == name
            and not case.refused
            and isinstance(case.declaration, Calculation)
        ):
            question = dataclasses.replace(case.question(), defaults=False)
            found.append((case, answer(case.declaration, question)))
    return found


@pytest.mark.parametrize(("calculation", "figure"), FIGURES, ids=IDS)
def test_the_answer_says_what_it_needs(calculation: Calculation, figure: Figure) -> None:
    """And is without what rests on the figure, and takes the field where it is told."""
    place = public_place(calculation, figure.field)
    lacking = [
        (case, found)
        for case, found in answered_off(calculation.name)
        if any(w.code == CODE and w.field == place for w in found.warnings)
    ]
    assert lacking, "no case needs it"
    case, found = lacking[0]
    with_it = answer(calculation, case.question())
    lost = {
        name
        for name in may_be_absent(calculation)
        if getattr(with_it.outputs, name) is not None and getattr(found.outputs, name) is None
    }
    assert lost
    assert not lost & found.u.keys()
    assert not any(v.check.value in lost for v in found.verdicts)


@pytest.mark.parametrize(("calculation", "figure"), FIGURES, ids=IDS)
def test_the_figure_can_be_told(calculation: Calculation, figure: Figure) -> None:
    field = declared(calculation.inputs)[figure.field]
    if isinstance(field, LimitSideField):
        assert field.check in {check.name for check in calculation.checks}
        return
    assert figure.field in defaults(calculation.inputs)
    assert field.words


@pytest.mark.parametrize("field", ["top_factor", "second_factor"])
def test_a_figure_told_is_no_stand_in(field: str) -> None:
    """Even where it is the usual one to the digit."""
    (calculation,) = [c for c in plain() if c.name == "ring-gap"]
    usual = defaults(calculation.inputs)[field]
    given = {"bore_mm": 68.496, field: float(usual)}
    found = answer(calculation, Question(inputs=calculation.inputs(**given), defaults=False))
    wanted = field.replace("factor", "wanted_mm")
    # By hand: 0.004 and 0.005 of 68.496 mm.
    assert getattr(found.outputs, wanted) == pytest.approx(68.496 * float(usual))
    other = {"top_wanted_mm", "second_wanted_mm"} - {wanted}
    assert getattr(found.outputs, other.pop()) is None


def test_the_makers_range_stands_in_for_the_factor() -> None:
    (calculation,) = [c for c in plain() if c.name == "ring-gap"]
    question = Question(
        inputs=calculation.inputs(bore_mm=68.496, top_measured_mm=0.2),
        limits={"top_ring_gap": Limit(0.3, 0.5)},
        defaults=False,
    )
    found = answer(calculation, question)
    assert found.outputs.top_wanted_mm == 0.3
    assert found.outputs.file_top_mm == pytest.approx(0.1)
    assert found.outputs.second_wanted_mm is None


COMPOSITES = [c for c in EVERY if isinstance(c, Composite)]


@pytest.mark.parametrize("composite", COMPOSITES, ids=lambda c: c.name)
def test_a_composite_takes_every_figure_that_its_parts_need(composite: Composite) -> None:
    where = paths(composite.inputs)
    for step in composite.steps:
        for figure in step.calculation.figures:
            field = declared(step.calculation.inputs)[figure.field]
            if not isinstance(field, LimitSideField):
                sources = step.sources.get(figure.field, (figure.field,))
                assert where.keys() & set(sources), (step.part, figure.field)


IN_COLUMNS = [c for c in CALCULATIONS if isinstance(c, Calculation) and c.columns]


@pytest.mark.parametrize("calculation", IN_COLUMNS, ids=lambda c: c.name)
def test_columns_leave_out_the_same(calculation: Calculation) -> None:
    """The single answer is the witness; one row leaves every optional field out, one is by example.

    A sleeve in aluminium at 20 °C and warm in one column parts rows in what stands in.
    """
    example = example_row(calculation)
    optional = defaults(calculation.inputs)
    least = {n: None if n in optional else value for n, value in example.items()}
    usual = {n: None if isinstance(optional.get(n), Usual) else v for n, v in example.items()}
    rows = [example, least, usual, example]
    if {"bore_kind", "bore_temperature_c"} <= example.keys():
        sleeve = {**example, "bore_kind": "iron_sleeve_in_aluminium", "bore_alpha_per_k": None}
        rows += [{**sleeve, "bore_temperature_c": t} for t in (20.0, 31.0, 20.0)]
    off = Question(inputs=None, defaults=False)
    found = answer_rows(calculation, as_columns(rows, question=off))
    for i, row in enumerate(rows):
        assert_row(found, i, single(calculation, row, {}, defaults=False))


def test_uncertain_temperature_alone_brings_the_expansion_in() -> None:
    """At 20 °C the sleeve's usual expansion moves no size, but it moves its uncertainty."""
    (calculation,) = [c for c in plain() if c.name == "piston-clearance"]
    inputs = calculation.inputs(
        piston_mm=67.95, bore_max_mm=68.0, bore_kind="iron_sleeve_in_aluminium"
    )
    still = answer(calculation, Question(inputs=inputs, defaults=False))
    assert still.outputs.clearance_max_mm == pytest.approx(0.05)
    doubts = {("bore_temperature_c",): Stated(uncertainty=2.0)}
    moved = answer(calculation, Question(inputs=inputs, defaults=False, doubts=doubts))
    assert moved.outputs.clearance_max_mm is None
    assert any(w.code == CODE and w.field == "bore_alpha" for w in moved.warnings)


@pytest.mark.parametrize("calculation", plain(), ids=lambda c: c.name)
def test_a_warning_that_appeals_to_common_practice_falls_away_with_it(
    calculation: Calculation,
) -> None:
    appeals = [n for n in calculation.notices if "common practice" in n.message]
    assert [n.code for n in appeals if not n.common_practice] == []


def test_a_default_limit_of_what_is_absent_is_not_reckoned() -> None:
    """A new fit is judged by a share of the bore at 20 °C, which rests on the sleeve's figure."""
    (calculation,) = [c for c in plain() if c.name == "piston-clearance"]
    inputs = calculation.inputs(
        piston_mm=67.95,
        bore_max_mm=68.0,
        bore_kind="iron_sleeve_in_aluminium",
        bore_temperature_c=31.0,
        piston_kind="cast_air_cooled",
        fit="new",
    )
    found = answer(calculation, Question(inputs=inputs, defaults=False))
    assert found.outputs.clearance_max_mm is None
    assert found.verdicts == ()
