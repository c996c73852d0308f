"""The job card as a page: decision first, then orders, verdicts, figures, and what is missing."""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, cast

from markupsafe import Markup

from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.members import Member, Shape
from ringland_service.api.writing import text
from ringland_service.api.writing.job_text import need_texts
from ringland_service.api.writing.pages import blocks
from ringland_service.api.writing.pages.order_page import IN_PLACE, order
from ringland_service.api.writing.pages.templates import filled
from ringland_service.api.writing.pictures.bore_picture import drawing
from ringland_service.api.writing.printed import printed
from ringland_service.core.declare import Calculation, Composite, Declared, Step
from ringland_service.core.engines.survey import Survey

DECISION, ORDER = "cylinder_decision", "order_card"
SURVEY = "bore-survey"
# What the bench works from, and so what the printed card holds besides decision and order.
BENCH = (
    "diagnosis",
    "squish",
    "lash_shim",
    "lash_screw",
    "ring_gap",
    "torque_steps",
    "fastener_order",
    "ring_clocking",
    "premix",
    "parts_to_order",
    "re_check",
    "before_assembly",
    "run_in",
    "displacement",
    "overbore_ratio",
    "cranking_pressure_after",
    "estimate",
)


@dataclass(frozen=True)
class Decision:
    """The decision in words, the reason for it, and how every way stands."""

    title: str
    words: str
    reason: str
    rest: blocks.Section


@dataclass(frozen=True)
class Need:
    """What to measure next: what it tells, and the ways to it."""

    why: str
    ways: tuple[str, ...]


def page(calculation: Declared, found: Mapping[str, Any]) -> str:
    """Return the answer of ``job-card`` as a page."""
    of = cast(Composite, calculation)
    parts = shapes.parts(of)
    picture = _picture(of, found)
    found = printed(of, found)
    result = found["result"]
    about = found["inputs"].get("about", {})
    return filled(
        "job_card.html",
        title=of.title,
        about=about,
        decision=_decision(parts, result),
        order=order(result.get(ORDER, {})),
        verdicts=blocks.verdicts(found["verdicts"]),
        picture=picture,
        bench=_sections(of, result, lambda step: step.part in BENCH),
        figures=_sections(of, result, lambda step: step.part not in (*BENCH, DECISION)),
        warnings=text.warning_texts(found["warnings"]),
        needs=[Need(item["why"], tuple(need_texts(item))) for item in result["measure_next"]],
        fallen_out=result.get("not_worked_out", ()),
        given=blocks.given(of.inputs, found["inputs"], ("about",)),
        taken=[(text.words_of(t["field"]), text.words_of(t["from"])) for t in found["taken"]],
        cautions=found["cautions"],
    )


def _decision(parts: Mapping[str, Calculation], result: Mapping[str, Any]) -> Decision | None:
    """Return the decision for the cylinder, where it could be worked out."""
    made = result.get(DECISION)
    if not made:
        return None
    calculation = parts[DECISION]
    known = shapes.members(calculation.outputs)
    words, reason = (
        blocks.value_text(known[name], made[name]) if made.get(name) else ""
        for name in ("decision", "reason")
    )
    rest = blocks.results(calculation, made, ("decision", "reason"))
    return Decision(calculation.title, words, reason, rest)


def _picture(of: Composite, found: Mapping[str, Any]) -> Markup | None:
    """Return the picture of the bore, where it was surveyed."""
    survey = _survey(shapes.given(of.inputs, found["inputs"]))
    for part, calculation in shapes.parts(of).items():
        result = found["result"].get(part)
        if calculation.name == SURVEY and result and survey:
            checks = {check.name for check in calculation.checks}
            verdicts = [v for v in found["verdicts"] if v["check"] in checks]
            answer = {"inputs": survey, "result": result, "verdicts": verdicts}
            return Markup(drawing(calculation, answer, alone=False))  # noqa: S704 - escaped there
    return None


def _survey(given: Iterable[tuple[Member, Any]]) -> Mapping[str, Any] | None:
    """Return the survey as it was given, in whichever section."""
    for member, value in given:
        if member.record is Survey:
            return cast(Mapping[str, Any], value)
        if member.shape is Shape.SECTION:
            inner = _survey(member.given(value))
            if inner:
                return inner
    return None


def _sections(
    of: Composite, result: Mapping[str, Any], wanted: Callable[[Step], bool]
) -> Sequence[blocks.Section]:
    """Return the results of the parts wanted; what stands above on the page is not said again."""
    above: dict[str, Sequence[str]] = {ORDER: IN_PLACE}
    found = []
    for step in filter(wanted, of.steps):
        told, left_out = result.get(step.part, {}), above.get(step.part, ())
        shown = blocks.results(step.calculation, told, left_out)
        found.append(replace(shown, title=step.heading))
    return [section for section in found if section]
