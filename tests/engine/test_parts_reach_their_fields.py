"""A part of a composite takes in whatever its calculation's own route could take."""

from typing import Any

import pytest

from ringland_service.api.routes.answering import answered
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Composite, Step, asked, declared
from ringland_service.core.declare.fields import Field, SectionField
from ringland_service.engine.known import known_values, paths, source_key
from ringland_service.engine.question import Path, field_at

COMPOSITES = [c for c in CALCULATIONS if isinstance(c, Composite)]
# What a part is not to be told, and why.
DERIVED = "read out of the job by the step itself: see tests/api/test_works_together.py"
ON_THE_JOB = "follows from the head's own parts of the job"
EXCEPTIONS = {
    ("overbore_ratio", "clearance_cc"): DERIVED,
    **{
        ("port_timing_after", name): DERIVED
        for name in (
            "exhaust_port_top_below_deck_mm",
            "transfer_port_top_below_deck_mm",
            "piston_edge_below_deck_at_tdc_mm",
            "thinner_base_gasket_by_mm",
        )
    },
    ("overbore_ratio", "skim_loss_cc"): ON_THE_JOB,
    (
        "cranking_pressure_after_at_sea_level",
        "weather_report_kpa_abs",
    ): "worked out for sea level on purpose",
    ("cranking_pressure_after_at_sea_level", "altitude_m"): "worked out for sea level on purpose",
    (
        "cranking_pressure_after_at_sea_level",
        "air_pressure_kpa_abs",
    ): "worked out for sea level on purpose",
}
FIELDS = [
    pytest.param(c, step, name, id=f"{c.name}-{step.part}-{name}")
    for c in COMPOSITES
    for step in c.steps
    for name in asked(step.calculation.inputs)
    if (step.part, name) not in EXCEPTIONS
]
MARK = object()


def sources_of(step: Step, name: str) -> tuple[str, ...]:
    return step.sources.get(name, (name,))


def results_before(composite: Composite, part: str) -> set[str]:
    found: set[str] = set()
    for step in composite.steps:
        if step.part == part:
            return found
        found |= {f"{step.part}.{name}" for name in declared(step.calculation.outputs)}
    raise AssertionError(part)


def told_alone(record: type, path: Path) -> Any:
    """The composite's inputs with nothing but a mark at the path, or an empty section there."""
    told: dict[str, Any] = dict.fromkeys(asked(record))
    if path:
        key, *rest = path
        field = asked(record)[str(key)]
        is_section = isinstance(field, SectionField)
        told[str(key)] = told_alone(field.record, tuple(rest)) if is_section else MARK
    return record(**told)


@pytest.mark.parametrize(("composite", "step", "name"), FIELDS)
def test_every_field_of_a_part_can_be_told(composite: Composite, step: Step, name: str) -> None:
    """By a field of the request that reaches the part, or by the result of an earlier part."""
    where = paths(composite.inputs)
    fields = [where[source] for source in sources_of(step, name) if source in where]
    if not fields:
        assert set(sources_of(step, name)) & results_before(composite, step.part)
    for path in fields:
        known = known_values(told_alone(composite.inputs, path), {})
        key = source_key(step, name, known)
        found = None if key is None else known[key]
        assert found is not None
        assert found.path == path


@pytest.mark.parametrize("composite", COMPOSITES, ids=lambda c: c.name)
def test_the_field_told_is_of_the_shape_that_the_part_takes(composite: Composite) -> None:
    where = paths(composite.inputs)
    for step in composite.steps:
        for name, field in asked(step.calculation.inputs).items():
            for source in sources_of(step, name):
                if source in where:
                    assert shape(field_at(composite.inputs, where[source])) == shape(field)


def shape(field: Field) -> tuple[str, ...]:
    """What kind of value a field takes."""
    of = getattr(field, "type", None)
    choices = getattr(field, "choices", None) or ()
    return (type(field).__name__, of.kind.name if of else "", *choices)


def test_exceptions_name_fields_that_there_are() -> None:
    known = {(s.part, n) for c in COMPOSITES for s in c.steps for n in asked(s.calculation.inputs)}
    assert known >= EXCEPTIONS.keys()


def test_the_use_of_a_bore_is_what_its_route_takes() -> None:
    """The bore's use moves the limits that judge it, on the route and on both composites."""
    survey = {
        "depth": {"values": [10, 40, 70], "unit": "mm"},
        "pin_axis": {"values": [68.05, 68.03, 68.01], "unit": "mm"},
        "thrust_axis": {"values": [68.06, 68.04, 68.02], "unit": "mm"},
    }
    alone = answered(BY_NAME["bore-survey"], {**survey, "use": "fresh"}, {})
    asked_ = {"survey": survey, "bore_use": "fresh"}
    decided = answered(BY_NAME["cylinder-decision"], asked_, {})
    carded = answered(BY_NAME["job-card"], {"cylinder": asked_}, {})
    checks = [v["check"] for v in alone["verdicts"]]
    assert checks
    for whole in (decided, carded):
        judged = [v for v in whole["verdicts"] if v["check"] in checks]
        assert judged == alone["verdicts"]
