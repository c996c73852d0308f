"""The decision for a cylinder: each way of mending it, whether it stands, and why.

A part of the cylinder's decision and of the job card: it reads the verdicts of the parts before it.
"""

from collections.abc import Callable, Sequence
from typing import Any

from ringland_service.core.calculations.decision import _fault_shown as fault
from ringland_service.core.calculations.decision import _tested as tested
from ringland_service.core.calculations.decision import damage as seen
from ringland_service.core.calculations.decision import ways_cut as cut
from ringland_service.core.calculations.decision import ways_kept as kept
from ringland_service.core.calculations.decision._conditions import (
    FALLS_OUT,
    OPEN,
    STANDINGS,
    TAKEN,
    Way,
    first_left,
)
from ringland_service.core.calculations.machining.clean_up import Score
from ringland_service.core.calculations.machining.oversize_choice import REASONS
from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    Want,
    choice,
    findings_so_far,
    flag,
    quantity,
    record,
    records,
    result,
    text,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.engines.must_not import MUST_NOT
from ringland_service.core.metrology.findings import Finding, all_pass, found
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

WAYS: dict[str, str] = {
    kept.LEAVE_ALONE: "leave it alone",
    kept.HONE: "hone lightly and fit new rings",
    kept.DEGLAZE: "deglaze by the plating maker's method and fit new rings; no stones",
    kept.SELECT: "fit a piston chosen for the sound bore, with new rings",
    cut.OVERBORE: "bore to an oversize piston",
    cut.REPLATE: "have it plated again",
    cut.SLEEVE: "fit a new sleeve",
    cut.REPLACE: "replace the cylinder",
}
IRON = ("iron", "iron_sleeve_in_aluminium")
NOT_SETTLED, FIND_OUT = "not_settled", "find_out"
DECISIONS: dict[str, str] = {
    **WAYS,
    NOT_SETTLED: "not settled: the first way that may do is still open",
    FIND_OUT: "find out the kind of bore first; no machining decision before",
}
IN_ORDER: tuple[Callable[[Any], Way], ...] = (
    kept.leave_alone,
    kept.rering,
    kept.select_piston,
    cut.overbore,
    cut.replate,
    cut.sleeve,
    cut.replace,
)
WORK_OF = {
    kept.HONE: "light_hone",
    cut.OVERBORE: "bore_and_hone",
    cut.SLEEVE: "sleeve",
    cut.REPLATE: "replate",
}
WORK = {
    "light_hone": "light hone for new rings",
    "bore_and_hone": "bore and hone to the piston",
    "sleeve": "new sleeve",
    "replate": "new plating",
}
FIND_OUT_HOW = (
    "find out the kind of bore: a magnet on the bore, the maker's sheet, a look at the top land "
    "above the ring travel"
)
ORDER = "the order of ways: leave alone, new rings, chosen piston, overbore, replate, sleeve"


@record
class Inputs(tested.Tested):
    """What was seen of the cylinder, and what tests and the parts before found."""

    bore_kind: str = choice("kind of bore", condition.BORE_KIND, example="iron_sleeve_in_aluminium")
    damage: str | None = choice(
        "worst damage found on the cylinder itself", seen.DAMAGE, example="none", default=None
    )
    surface: str | None = choice(
        "look of the bore's surface", condition.SURFACE, example="scored", default=None
    )
    ridge: str | None = choice(
        "ridge above the ring travel", seen.RIDGE, example="none", default=None
    )
    pistons_stay_in: bool | None = flag(
        "the pistons can stay in, their rings undisturbed", example=False, default=None
    )
    scores: tuple[Score, ...] | None = records(
        Score, "scores, pits and seizure marks", most=20, default=None
    )
    survey_max_mm: float | None = quantity(
        lengths.BORE, "largest bore of the survey", example=68.094, default=None
    )
    clean_up_mm: float | None = quantity(sizes.CLEAN_UP, "clean-up diameter", default=None)
    choice_reason: str | None = choice(
        "why an oversize was chosen, or none",
        REASONS,
        example="smaller_do_not_clean_up",
        default=None,
    )
    chosen: str | None = text("oversize piston chosen", example="+0.50 mm", default=None)
    finish_mm: float | None = quantity(
        lengths.BORE, "upper limit of the finish bore", example=68.501, default=None
    )
    gasket_bore_mm: float | None = quantity(
        lengths.GASKET_BORE, "bore of the head gasket", default=None
    )
    best: str | None = text("piston that fits the sound bore best", example="C", default=None)
    findings: tuple[Finding, ...] = findings_so_far()


@record
class WayRow:
    """One way of mending the cylinder."""

    way: str = result("the way", basis="as listed", source=COMMON, choices=WAYS)
    standing: str = result(
        "whether it is the way to go, possible, open, or falls out",
        basis="its conditions",
        source=COMMON,
        choices=STANDINGS,
    )
    reasons: tuple[str, ...] = result(
        "why, with the numbers", basis="its conditions", source=COMMON
    )


@record
class Outputs:
    """The decision, and every way with its reasons."""

    decision: str = result(
        "what to do with the cylinder",
        basis=f"the first way that stands, in {ORDER}, replace",
        source=COMMON,
        choices=DECISIONS,
    )
    reason: str = result("why, in one line", basis="the reasons of that way", source=COMMON)
    fault_shown: str | None = result(
        "whether the fault that is mended is shown to be the cause of the complaint; absent where "
        "the cylinder is left alone, or may be",
        basis="the suspects of the diagnosis, the tests of sealing, and the bench verdicts that "
        "fail",
        source=COMMON,
        choices=fault.FAULT_SHOWN,
        default=None,
    )
    would_show: str | None = result(
        "what would show it, where it is not shown",
        basis="the suspects that stand level or before, and the tests not made yet",
        source=COMMON,
        default=None,
    )
    ways: tuple[WayRow, ...] = result(
        "every way in order, whether it stands, and why",
        basis="the verdicts of the parts before, and what was seen",
        source=COMMON,
        record=WayRow,
    )
    must_not: tuple[str, ...] = result(
        "what must not be done to a bore of this kind", basis="kind of bore", source=COMMON
    )
    work: str | None = result(
        "work that goes to the machine shop",
        basis="follows from the decision",
        source=COMMON,
        choices=WORK,
        default=None,
    )


def ways(inputs: Inputs) -> tuple[Way, ...]:
    """Return every way in the order in which it is asked after."""
    return tuple(way(inputs) for way in IN_ORDER)


def _decision(among: Sequence[Way]) -> tuple[str, str]:
    """Return the decision and the line that says why; the other ways' reasons stand with them."""
    first = first_left(among)
    assert first is not None  # noqa: S101 - another cylinder is always left
    if first.standing == OPEN:
        return NOT_SETTLED, f"may be: {WAYS[first.name]}; open: {'; '.join(first.reasons)}"
    return first.name, first.headline


def _row(way: Way, decision: str) -> WayRow:
    standing = TAKEN if way.name == decision else way.standing
    return WayRow(way=way.name, standing=standing, reasons=way.reasons)


def compute(inputs: Inputs) -> Outputs:
    """Ask each way after its conditions, and take the first that stands."""
    if inputs.bore_kind == UNKNOWN:
        return _find_out()
    among = ways(inputs)
    decision, reason = _decision(among)
    shown, would_show = _fault(inputs, among)
    return Outputs(
        decision=decision,
        reason=reason,
        fault_shown=shown,
        would_show=would_show,
        ways=tuple(_row(way, decision) for way in among),
        must_not=MUST_NOT[inputs.bore_kind],
        work=WORK_OF.get(decision),
    )


def _fault(inputs: Inputs, among: Sequence[Way]) -> tuple[str | None, str | None]:
    """Return whether the fault is shown, and what would; neither where nothing may be mended."""
    first = first_left(among)
    if first is None or first.name == kept.LEAVE_ALONE:
        return None, None
    return fault.fault_shown(inputs)


def _find_out() -> Outputs:
    open_ = tuple(WayRow(way=way, standing=OPEN, reasons=(FIND_OUT_HOW,)) for way in WAYS)
    return Outputs(decision=FIND_OUT, reason=FIND_OUT_HOW, ways=open_, must_not=MUST_NOT[UNKNOWN])


def wanted(inputs: Inputs, _: Outputs) -> tuple[Want, ...]:
    """Return what would settle the decision, or change it: of the ways down to the one taken."""
    if inputs.bore_kind == UNKNOWN:
        return (Want(FIND_OUT_HOW, (("bore_kind",),)),)
    wants: list[Want] = []
    for way in ways(inputs):
        wants += way.wants
        if way.standing != FALLS_OUT:
            break
    return tuple(dict.fromkeys(wants))


def _margin_in_doubt(inputs: Inputs) -> bool:
    return not all_pass(found(inputs.findings, "oversize_margin", "liner_wall"))


CALCULATION = Calculation(
    name="cylinder-ways",
    number="section D",
    stage="decision",
    title="Decision for the cylinder",
    summary="What to do with the cylinder, and why the other ways fall out.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    one_of=((("survey_max_mm",), ("damage",), ("pistons_stay_in",)),),
    rules=(
        *tested.RULES,
        Rule(
            ("damage", "bore_kind"),
            lambda i: i.damage == seen.FLAKED and i.bore_kind in IRON,
            "an iron bore has no plating to flake",
            "the kind of bore, or the damage, as it is",
        ),
        Rule(
            ("surface", "scores"),
            lambda i: i.surface == condition.CLEAN,
            "the surface is called clean, and scores are listed",
            "surface: scored, or no scores",
        ),
    ),
    notices=(
        Notice(
            "damage_not_told",
            "damage",
            lambda i, _: i.damage is None,
            "cracks, holes and breakage are taken as none: look for them before any machining",
        ),
        Notice(
            "centring_cut_first",
            "ways",
            lambda i, o: o.decision == cut.OVERBORE and _margin_in_doubt(i),
            "a margin is smaller than its doubt: order a measuring cut first (cut, measure, tell "
            "us before the next cut)",
        ),
    ),
    cautions=("measuring", "boring_and_honing"),
)
