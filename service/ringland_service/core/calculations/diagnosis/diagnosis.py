"""Section C: which fault the evidence speaks for, which it speaks against, and what parts them."""

from collections.abc import Mapping
from typing import Any

from ringland_service.core.calculations.diagnosis import _diagnosis_notices as notices
from ringland_service.core.calculations.diagnosis import _diagnosis_rows as rows
from ringland_service.core.calculations.diagnosis import _evidence_checks as checks
from ringland_service.core.calculations.diagnosis import _evidence_weighed as weighing
from ringland_service.core.calculations.diagnosis import evidence_read as read
from ringland_service.core.calculations.diagnosis import headline as concluding
from ringland_service.core.calculations.diagnosis._next_test import next_test
from ringland_service.core.calculations.diagnosis.diagnosis_inputs import NEEDS, Inputs
from ringland_service.core.calculations.diagnosis.tables import COMPLAINTS, SUSPECT_WORDS, SUSPECTS
from ringland_service.core.declare import Calculation, record, result
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

TABLE = f"the table of evidence; {COMMON}"


@record
class Outputs:
    """The ranking, its headline, the next test, and every line that was weighed."""

    statement: str = result(
        "what the ranking amounts to",
        basis="the first headline that fits",
        source=COMMON,
    )
    headline: str = result(
        "the same as a word",
        basis="in this order: test not valid; nothing wrong; nobody strong; a valve before the "
        "decompressor or the lash is known; the lead too small; the leader",
        source=COMMON,
        choices=concluding.HEADLINES,
    )
    first: str | None = result(
        "who stands first; nobody where nobody is above 0",
        basis="highest score",
        source=COMMON,
        choices=SUSPECT_WORDS,
        default=None,
    )
    first_words: str | None = result("what that is", basis="as listed", source=COMMON, default=None)
    lead: float | None = result(
        "by how much, over the next or over those that nothing spoke of",
        digits=2,
        basis="difference of the scores",
        source=COMMON,
        place=True,
        default=None,
    )
    next_test: str | None = result(
        "what to do next",
        basis="the test that parts the leaders",
        source=COMMON,
        default=None,
    )
    reads_as: str | None = result(
        "how that test reads", basis="as listed", source=COMMON, default=None
    )
    parts: tuple[str, ...] | None = result(
        "the suspects that it parts",
        basis="the leaders",
        source=COMMON,
        default=None,
    )
    look_first: tuple[str, ...] | None = result(
        "what to look at first, from outside",
        basis="the table of complaints",
        source=COMMON,
        default=None,
    )
    first_tests: tuple[str, ...] | None = result(
        "what to test after that", basis="the table of complaints", source=COMMON, default=None
    )
    stop_when: str | None = result(
        "when to stop", basis="the table of complaints", source=COMMON, default=None
    )
    suspects: tuple[rows.SuspectRow, ...] = result(
        "suspects spoken of, highest score first",
        basis="per suspect the sum of its lines; of a family only the strongest for and the "
        "strongest against",
        source=TABLE,
        record=rows.SuspectRow,
    )
    lines: tuple[rows.LineRow, ...] = result(
        "what speaks for and against each, by suspect",
        basis="the table of evidence, and the weights of the request",
        source=TABLE,
        record=rows.LineRow,
    )
    at_hand: tuple[rows.EvidenceRow, ...] = result(
        "the evidence that was weighed",
        basis="told, measured, or derived",
        source=TABLE,
        record=rows.EvidenceRow,
    )
    silent: tuple[str, ...] = result(
        "suspects that nothing spoke of: they stand at 0", basis="no line", source=COMMON
    )
    contradictory: tuple[rows.Contradictory, ...] | None = result(
        "suspects with strong evidence both for and against: look again at both",
        basis="lines that count, of strong weight or more",
        source=COMMON,
        record=rows.Contradictory,
        default=None,
    )
    left_out: tuple[rows.LeftOut, ...] | None = result(
        "suspects that this engine cannot have, and evidence that cannot be taken as tested",
        basis="cycle, decompressor; baseline of the build-up, grading of the leak-down",
        source=COMMON,
        record=rows.LeftOut,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Weigh the evidence at hand and say what it amounts to."""
    figures = weighing.figures_of(inputs)
    known, out = read.at_hand(inputs), checks.left_out(inputs)
    checks.insist(inputs, known, figures)
    found = weighing.weighed(inputs, known, out, figures)
    scores = weighing.scores(found)
    silent = tuple(name for name in SUSPECTS if name not in scores and name not in out)
    return Outputs(
        **_complained(inputs.complaint_kind),
        **_concluded(inputs, known, concluding.standing(scores, silent), figures),
        suspects=tuple(
            rows.SuspectRow(suspect=name, score=score, words=SUSPECT_WORDS[name])
            for name, score in scores.items()
        ),
        lines=rows.line_rows(found, scores),
        at_hand=rows.evidence_rows(known),
        silent=silent,
        contradictory=rows.contradictory(found, figures),
        left_out=rows.left_out(out | read.unwanted(inputs)),
    )


def _complained(kind: str | None) -> dict[str, Any]:
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
) -> dict[str, Any]:
    """Return the results that say what the ranking amounts to, and what comes next."""
    word = concluding.headline(i, known, at, figures)
    following = next_test(i, known, word, at, figures)
    found: dict[str, Any] = {"headline": word, "statement": concluding.statement(word, at)}
    if at.first is not None and at.score > 0:
        found |= {"first": at.first, "first_words": SUSPECT_WORDS[at.first], "lead": at.lead}
    if following is not None:
        found |= {"next_test": following.words, "reads_as": following.reads_as}
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
    one_of=(tuple((name,) for name in (*NEEDS, "complaint_kind")),),
    rules=notices.RULES,
    notices=notices.NOTICES,
    cautions=("compression_test", "leak_down", "symptom_run", "cooling_test", "battery"),
)
