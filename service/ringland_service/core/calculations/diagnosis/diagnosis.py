"""Section C: which fault the evidence speaks for, which it speaks against, and what parts them."""

from collections.abc import Mapping
from typing import Required, TypedDict

from ringland_service.core.calculations.diagnosis import _diagnosis_notices as notices
from ringland_service.core.calculations.diagnosis import _diagnosis_rows as rows
from ringland_service.core.calculations.diagnosis import _evidence_checks as checks
from ringland_service.core.calculations.diagnosis import _evidence_weighed as weighing
from ringland_service.core.calculations.diagnosis import evidence_read as read
from ringland_service.core.calculations.diagnosis import headline as concluding
from ringland_service.core.calculations.diagnosis._diagnosis_outputs import Outputs as Outputs
from ringland_service.core.calculations.diagnosis._next_test import next_test
from ringland_service.core.calculations.diagnosis.diagnosis_inputs import NEEDS, Inputs
from ringland_service.core.calculations.diagnosis.tables import COMPLAINTS, SUSPECT_WORDS, SUSPECTS
from ringland_service.core.declare import Calculation


def compute(inputs: Inputs) -> Outputs:
    """Weigh the evidence at hand and say what it amounts to."""
    figures = weighing.figures_of(inputs)
    known, out = read.at_hand(inputs), checks.left_out(inputs)
    checks.insist(inputs, known, figures)
    found = weighing.weighed(inputs, known, out, figures)
    scores = weighing.scores(found)
    silent = tuple(name for name in SUSPECTS if name not in scores and name not in out)
    return Outputs(
        **_complained(inputs.complaint),
        **_concluded(inputs, known, concluding.standing(scores, silent), figures),
        suspects=tuple(
            rows.SuspectRow(suspect=name, score=score, label=SUSPECT_WORDS[name])
            for name, score in scores.items()
        ),
        lines=rows.line_rows(found, scores),
        at_hand=rows.evidence_rows(known),
        silent=silent,
        contradictory=rows.contradictory(found, figures),
        left_out=rows.left_out(out | read.unwanted(inputs)),
    )


class _Begun(TypedDict, total=False):
    """The results that a complaint gives."""

    look_first: tuple[str, ...]
    first_tests: tuple[str, ...]
    stop_when: str


class _Concluded(TypedDict, total=False):
    """The results that the ranking gives; left out where nobody stands first, or no test is due."""

    headline: Required[str]
    statement: Required[str]
    first: str
    first_label: str
    lead: float
    next_test: str
    reads_as: str
    parts: tuple[str, ...] | None


def _complained(kind: str | None) -> _Begun:
    """Return what to do first about a complaint."""
    if kind is None:
        return {}
    complaint = COMPLAINTS[kind]
    return {
        "look_first": complaint.look_first,
        "first_tests": complaint.test_next,
        "stop_when": complaint.stop_when,
    }


def _concluded(
    i: Inputs, known: Mapping[str, str], at: concluding.Standing, figures: Mapping[str, float]
) -> _Concluded:
    """Return the results that say what the ranking amounts to, and what comes next."""
    word = concluding.headline(i, known, at, figures)
    following = next_test(i, known, word, at, figures)
    found: _Concluded = {"headline": word, "statement": concluding.statement(word, at)}
    if at.first is not None and at.score > 0:
        found |= {"first": at.first, "first_label": SUSPECT_WORDS[at.first], "lead": at.lead}
    if following is not None:
        found |= {"next_test": following.label, "reads_as": following.reads_as}
        found |= {"parts": following.parts or None}
    return found


CALCULATION = Calculation(
    name="diagnosis",
    number="section C",
    stage="engine_tests",
    title="Diagnosis",
    summary="Which fault the evidence speaks for and which it speaks against, by how much, with "
    "the reason of every line, and the test that parts the leaders. Evidence is told by its id, "
    "and read out of measured tests. A missing test is not evidence; not heard is evidence only "
    "if somebody listened.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    columns=False,
    any_of=(tuple((name,) for name in (*NEEDS, "complaint")),),
    rules=notices.RULES,
    notices=notices.NOTICES,
    cautions=("compression_test", "leak_down", "symptom_run", "cooling_test", "battery"),
)
