"""What a diagnosis answers."""

from ringland_service.core.calculations.diagnosis import _diagnosis_rows as rows
from ringland_service.core.calculations.diagnosis import headline as concluding
from ringland_service.core.calculations.diagnosis._diagnosis_rows import TABLE
from ringland_service.core.calculations.diagnosis.tables import SUSPECT_WORDS
from ringland_service.core.declare import record, result
from ringland_service.core.tables.sources import NO_SOURCE as COMMON


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
    first_label: str | None = result("what that is", basis="as listed", source=COMMON, default=None)
    lead: float | None = result(
        "by how much, over the next or over those that nothing spoke of",
        decimals=2,
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
