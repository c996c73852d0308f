"""The declarations keep their own rules: names, suffixes, examples, formula texts."""

import dataclasses
import math
import re
from typing import Any

import pytest
from reference_cases import Case, cases

from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, asked, declared
from ringland_service.core.declare.expressions import FUNCTIONS, names_in
from ringland_service.core.declare.fields import RecordsField, ResultField, SectionField, kind_of
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.declare.notices import CAUTIONS
from ringland_service.engine.scalar import answer

PLAIN = [c for c in EVERY if isinstance(c, Calculation)]
SUFFIXES = sorted({kind.suffix for kind in KINDS.values()}, key=len, reverse=True)


def records_of(record: type) -> list[type]:
    """Return a record and those inside it."""
    holders = (SectionField, RecordsField)
    inner = [f.record for f in asked(record).values() if isinstance(f, holders)]
    return [record, *(r for one in inner for r in records_of(one))]


@pytest.mark.parametrize("calculation", EVERY, ids=lambda c: c.name)
def test_suffix_and_kind_agree(calculation: Any) -> None:
    records = records_of(calculation.inputs)
    records += [calculation.outputs] if isinstance(calculation, Calculation) else []
    for record in records:
        for name, field in asked(record).items():
            kind = kind_of(field)
            if kind is not None:
                assert name.endswith(kind.suffix), f"{name} is a {kind.name}"


@pytest.mark.parametrize("calculation", EVERY, ids=lambda c: c.name)
def test_public_names_are_unique(calculation: Any) -> None:
    records = records_of(calculation.inputs)
    records += [calculation.outputs] if isinstance(calculation, Calculation) else []
    for record in records:
        public = [field.public(name) for name, field in asked(record).items()]
        assert len(public) == len(set(public))
        assert all(re.fullmatch(r"[a-z][a-z0-9_]*", name) for name in public)


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_results_and_inputs_have_names_of_their_own(calculation: Calculation) -> None:
    assert not asked(calculation.inputs).keys() & declared(calculation.outputs).keys()


def test_check_names_are_unique_over_all() -> None:
    names = [check.name for c in PLAIN for check in c.checks]
    assert len(names) == len(set(names))


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_checks_rules_and_notices_name_what_there_is(calculation: Calculation) -> None:
    inputs, outputs = asked(calculation.inputs), declared(calculation.outputs)
    for check in calculation.checks:
        assert check.value in inputs or check.value in outputs
        assert check.settle
    for rule in calculation.rules:
        assert set(rule.fields) <= inputs.keys()
    for notice in calculation.notices:
        assert notice.field in inputs or notice.field in outputs
    for ways in calculation.one_of:
        assert {name for way in ways for name in way} <= inputs.keys()


@pytest.mark.parametrize("calculation", EVERY, ids=lambda c: c.name)
def test_cautions_are_in_the_table(calculation: Any) -> None:
    assert set(calculation.cautions) <= CAUTIONS.keys()


@pytest.mark.parametrize("calculation", PLAIN, ids=lambda c: c.name)
def test_every_result_says_where_it_comes_from(calculation: Calculation) -> None:
    for name, field in declared(calculation.outputs).items():
        assert isinstance(field, ResultField)
        assert field.source, name
        assert bool(field.formula) != bool(field.basis), f"{name}: a formula or prose, not both"


def degrees(function: Any) -> Any:
    return lambda x: function(math.radians(x))


NAMESPACE = {
    "pi": math.pi,
    "sqrt": math.sqrt,
    "sind": degrees(math.sin),
    "cosd": degrees(math.cos),
    "asind": lambda x: math.degrees(math.asin(x)),
    "acosd": lambda x: math.degrees(math.acos(x)),
    "max": max,
    "min": min,
    "abs": abs,
}


def test_the_namespace_is_the_vocabulary() -> None:
    assert NAMESPACE.keys() - {"pi"} == set(FUNCTIONS)


@pytest.mark.parametrize(
    "case",
    [c for c in cases() if isinstance(c.declaration, Calculation) and not c.refused],
    ids=str,
)
def test_the_formula_shown_gives_the_result(case: Case) -> None:
    """The text of a formula is evaluated, so that it cannot drift from the arithmetic."""
    calculation = case.declaration
    assert isinstance(calculation, Calculation)
    found = answer(calculation, case.question())
    known = {f.name: getattr(found.outputs, f.name) for f in dataclasses.fields(found.outputs)}
    known |= {f.name: getattr(found.inputs, f.name) for f in dataclasses.fields(found.inputs)}
    for name, field in declared(calculation.outputs).items():
        if not isinstance(field, ResultField) or not field.formula or known[name] is None:
            continue
        assert set(names_in(field.formula)) <= known.keys(), f"{name}: unknown name in its formula"
        value = eval(field.formula, {"__builtins__": {}}, NAMESPACE | known)  # noqa: S307
        assert value == pytest.approx(known[name], rel=1e-9, abs=1e-9), name
