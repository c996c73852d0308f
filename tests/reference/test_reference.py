"""Every calculation against values that are not its own output."""

import dataclasses
from typing import Any

import pytest
from reference_cases import KINDS, Case, cases, files, shown

from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, Composite
from ringland_service.core.declare.fields import Quantified
from ringland_service.engine.answer import Answer, Refused
from ringland_service.engine.composite import CompositeAnswer, answer_composite
from ringland_service.engine.scalar import answer

CASES = cases()


def answered(case: Case) -> Answer | CompositeAnswer:
    """Return the engine's answer to a case."""
    if isinstance(case.declaration, Composite):
        return answer_composite(case.declaration, case.question())
    assert isinstance(case.declaration, Calculation)
    return answer(case.declaration, case.question())


def result_of(found: Answer | CompositeAnswer, name: str) -> Any:
    """Return a result by its core name; ``part.result`` of a composite."""
    if isinstance(found, CompositeAnswer):
        part, _, name = name.partition(".")
        return getattr(found.parts[part].outputs, name) if part in found.parts else None
    value = getattr(found.outputs, name)
    if isinstance(value, tuple) and value and dataclasses.is_dataclass(value[0]):
        return [_told(row) for row in value]
    return shown(value) if isinstance(value, Quantified) else value


def _told(row: Any) -> dict[str, Any]:
    """Return a row of a table less what it does not tell."""
    told = {name: value for name, value in dataclasses.asdict(row).items() if value is not None}
    return {n: list(value) if isinstance(value, tuple) else value for n, value in told.items()}


@pytest.mark.parametrize("case", CASES, ids=str)
def test_case(case: Case) -> None:
    if case.refused:
        with pytest.raises(Refused, match=case.refused):
            answered(case)
        return
    found = answered(case)
    for name, expected in case.expect.items():
        value = result_of(found, name)
        if expected == "absent":
            assert value is None, name
        elif isinstance(expected, (int, float)) and not isinstance(expected, bool):
            assert value == pytest.approx(expected, rel=case.relative, abs=case.absolute), name
        elif isinstance(expected, list) and expected and isinstance(expected[0], (int, float)):
            assert list(value) == pytest.approx(expected, rel=case.relative, abs=case.absolute)
        else:
            assert (list(value) if isinstance(value, tuple) else value) == expected, name
    verdicts = {v.check.name: v.word for v in found.verdicts}
    assert {name: verdicts.get(name, "absent") for name in case.verdicts} == case.verdicts
    conforming = {v.check.name: v.judged.probability for v in found.verdicts}
    for name, probability in case.probability.items():
        assert conforming[name] == pytest.approx(probability, rel=2e-5, abs=1e-9), name
    codes = {warned.code for warned in found.warnings}
    assert set(case.warnings.get("codes", ())) <= codes
    assert codes.isdisjoint(case.warnings.get("absent", ()))


def test_each_calculation_has_its_file() -> None:
    assert {path.stem for path in files()} == {c.name for c in EVERY}


@pytest.mark.parametrize("path", files(), ids=lambda path: path.stem)
def test_a_calculation_is_not_only_its_own_witness(path: Any) -> None:
    own = [case for case in CASES if case.calculation == path.stem]
    assert own
    assert {case.kind for case in own} <= set(KINDS)
    assert any(case.kind != "pinned" for case in own), "pinned cases prove no arithmetic"
    assert all(case.source for case in own)


def test_every_result_is_met_by_some_case() -> None:
    missing = []
    for calculation in EVERY:
        if isinstance(calculation, Calculation):
            met = {n for c in CASES if c.calculation == calculation.name for n in c.expect}
            names = {f.name for f in dataclasses.fields(calculation.outputs)}
            missing += [f"{calculation.name}.{name}" for name in sorted(names - met)]
    assert not missing
