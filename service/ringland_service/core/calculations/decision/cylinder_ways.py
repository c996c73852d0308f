"""The decision for a cylinder: each repair option, whether it stands, and why.

A part of the cylinder's decision and of the job card: it reads the verdicts of the parts before it.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from ringland_service.core.calculations.decision import _fault_shown as fault
from ringland_service.core.calculations.decision import _tested as tested
from ringland_service.core.calculations.decision import damage as seen
from ringland_service.core.calculations.decision._conditions import (
    FALLS_OUT,
    OPEN,
    STANDINGS,
    TAKEN,
    Assessment,
)
from ringland_service.core.calculations.decision._decision_inputs import Inputs as Inputs
from ringland_service.core.calculations.decision.repair_options import (
    DECISIONS,
    FIND_OUT,
    LABELS,
    NOT_SETTLED,
    NOUNS,
    OPTIONS,
    SHOP_WORK,
    TAKEN_BY,
    Cut,
    RepairOption,
)
from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    Want,
    record,
    result,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.engines.must_not import MUST_NOT
from ringland_service.core.metrology.findings import all_pass, found
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

IRON = ("iron", "iron_sleeve_in_aluminium")
FIND_OUT_HOW = (
    "find out the kind of bore: a magnet on the bore, the maker's sheet, a look at the top land "
    "above the ring travel"
)


@record
class WayRow:
    """One repair option: ``way`` on the wire and on paper."""

    way: str = result("the way", basis="as listed", source=COMMON, choices=LABELS)
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

    way: str = result(
        "what to do with the cylinder",
        basis=f"the first way that stands, in the order of ways: {NOUNS}",
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
        choices=SHOP_WORK,
        default=None,
    )


@dataclass(frozen=True)
class Assessed:
    """A repair option, and how it stands on this cylinder."""

    option: RepairOption
    found: Assessment

    @property
    def left(self) -> bool:
        """Whether it does not fall out."""
        return self.found.standing != FALLS_OUT


def assessed(inputs: Inputs) -> tuple[Assessed, ...]:
    """Return every option that is asked of this kind of bore, in order."""
    asked = (option for option in OPTIONS if inputs.bore_kind in option.asked_of)
    return tuple(Assessed(option, option.assess(inputs)) for option in asked)


def _first_left(among: Sequence[Assessed]) -> Assessed:
    """Return the first option that does not fall out; another cylinder is always left."""
    return next(one for one in among if one.left)


def _decision(first: Assessed) -> tuple[str, str]:
    """Return the decision and the line that says why; the other options' reasons stand by them."""
    option, found = first.option, first.found
    if found.standing == OPEN:
        return NOT_SETTLED, f"may be: {option.label}; open: {'; '.join(found.reasons)}"
    return option.name, found.headline


def _row(one: Assessed, decision: str) -> WayRow:
    standing = TAKEN if one.option.name == decision else one.found.standing
    return WayRow(way=one.option.name, standing=standing, reasons=one.found.reasons)


def compute(inputs: Inputs) -> Outputs:
    """Ask each option after its conditions, and take the first that stands."""
    if inputs.bore_kind == UNKNOWN:
        return _find_out()
    among = assessed(inputs)
    first = _first_left(among)
    decision, reason = _decision(first)
    # Where nothing may have to be mended there is no fault to be shown.
    shown, would_show = fault.fault_shown(inputs) if first.option.mends else (None, None)
    taken = TAKEN_BY[decision]
    return Outputs(
        way=decision,
        reason=reason,
        fault_shown=shown,
        would_show=would_show,
        ways=tuple(_row(one, decision) for one in among),
        must_not=MUST_NOT[inputs.bore_kind],
        work=None if taken is None else taken.shop_work,
    )


def _find_out() -> Outputs:
    open_ = tuple(WayRow(way=token, standing=OPEN, reasons=(FIND_OUT_HOW,)) for token in LABELS)
    return Outputs(way=FIND_OUT, reason=FIND_OUT_HOW, ways=open_, must_not=MUST_NOT[UNKNOWN])


def wanted(inputs: Inputs, _: Outputs) -> tuple[Want, ...]:
    """Return what would settle the decision, or change it: of the options down to the one taken."""
    if inputs.bore_kind == UNKNOWN:
        return (Want(FIND_OUT_HOW, (("bore_kind",),)),)
    wants: list[Want] = []
    for one in assessed(inputs):
        wants += one.found.wants
        if one.left:
            break
    return tuple(dict.fromkeys(wants))


def _cut_on_a_close_margin(inputs: Inputs, outputs: Outputs) -> bool:
    taken = TAKEN_BY[outputs.way]
    to_oversize = taken is not None and taken.cuts is Cut.OVERSIZE
    return to_oversize and _margin_in_uncertainty(inputs)


def _margin_in_uncertainty(inputs: Inputs) -> bool:
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
    any_of=((("survey_largest_mm",), ("damage",), ("piston_stays_in",)),),
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
            _cut_on_a_close_margin,
            "a margin is smaller than its uncertainty: order a measuring cut first (cut, measure, "
            "tell "
            "us before the next cut)",
        ),
    ),
    cautions=("measuring", "boring_and_honing"),
)
