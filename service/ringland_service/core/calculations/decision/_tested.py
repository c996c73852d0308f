"""What the tests on the assembled engine said, as far as the decision for a cylinder hears it.

On a job card these come from the parts that tested; on the decision's own route they are told.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from ringland_service.core.calculations.diagnosis.diagnosis_inputs import Inputs as Diagnosis
from ringland_service.core.calculations.diagnosis.evidence_read import leak_word
from ringland_service.core.calculations.diagnosis.headline import HEADLINES, REPEAT
from ringland_service.core.calculations.diagnosis.tables import FIGURES, SUSPECT_WORDS
from ringland_service.core.calculations.engine_tests import leak_words as leak
from ringland_service.core.declare import (
    Rule,
    choice,
    field_like,
    findings_so_far,
    number,
    record,
    records,
    text,
    usual_figures,
)
from ringland_service.core.metrology.conformity import CLOSE, FAIL, PASS
from ringland_service.core.metrology.findings import Finding, all_pass, found
from ringland_service.core.metrology.limits import GRADES, Grade
from ringland_service.core.numbers import Number

LARGE = ("worn", "tear_down")
# Places where air that has passed the rings is heard.
PAST_THE_RINGS = ("rings_or_piston", "past_rings_to_the_port", "rings_or_reeds")


@record
class Ranked:
    """One suspect of the diagnosis, and its score."""

    suspect: str = choice("suspect", SUSPECT_WORDS, example="rings_or_bore")
    score: Number = number("score of the diagnosis", low=-200.0, high=200.0, example=5.1)


@record
class Tested:
    """What leak-down, wet test, compression, oil use and diagnosis said; all of it optional."""

    cycle: str | None = field_like(Diagnosis, "cycle")
    leak_pct: Number | None = field_like(Diagnosis, "leak_pct", example=12.8)
    leak_gradeable: str | None = field_like(Diagnosis, "leak_gradeable")
    leak_grade: str | None = field_like(Diagnosis, "leak_grade")
    heard_at: str | None = field_like(Diagnosis, "heard_at", example="nowhere")
    decompressor_state: str | None = field_like(Diagnosis, "decompressor_state")
    excess_gain_pct: Number | None = field_like(Diagnosis, "excess_gain_pct", example=3.0)
    level_ratio: Number | None = field_like(Diagnosis, "level_ratio", example=0.93)
    oil_use_grade: str | None = field_like(Diagnosis, "oil_use_grade", example="usual")
    diagnosis_headline: str | None = choice(
        "what the ranking of the diagnosis amounts to", HEADLINES, example="leads", default=None
    )
    suspects: tuple[Ranked, ...] | None = records(
        Ranked, "suspects as the diagnosis ranks them", most=20, default=None
    )
    next_test: str | None = text(
        "what the diagnosis would test next",
        example="measure the lash, set it right, repeat the leak-down",
        longest=600,
        default=None,
    )
    least_score: Number | None = field_like(Diagnosis, "least_score")
    least_lead: Number | None = field_like(Diagnosis, "least_lead")
    usual: bool = usual_figures()
    findings: tuple[Finding, ...] = findings_so_far()


RULES = (
    Rule(
        ("heard_at", "cycle"),
        lambda i: i.heard_at == "oil_filler_or_breather" and i.cycle == "two_stroke",
        "a two-stroke's crankcase has neither oil filler nor breather",
        "intake: there the air that passes the rings of a two-stroke is heard",
    ),
)


@dataclass(frozen=True)
class Heard:
    """The tests in words; None where a test is missing, or cannot be judged.

    ``leak``, ``wet``, ``level`` and ``oil`` are the words of their grades, ``leak_proven`` whether
    no verdict on the leak leaves it open that it is small, ``path`` where the air
    goes, ``scores`` the suspects' scores, ``least_score`` and ``least_lead`` from where a suspect
    is a strong one and a lead is one.
    """

    leak: str | None
    leak_proven: bool
    path: str | None
    wet: str | None
    level: str | None
    oil: str | None
    headline: str | None
    scores: dict[str, float]
    least_score: float | None
    least_lead: float | None

    def score(self, suspect: str) -> float:
        """Return a suspect's score; one that nothing spoke of stands at 0."""
        return self.scores.get(suspect, 0.0)

    @property
    def past_the_rings(self) -> bool:
        """Whether the air is heard where it only comes past the rings."""
        return self.path in PAST_THE_RINGS

    @property
    def elsewhere(self) -> bool:
        """Whether the air is heard in another place than that of the rings."""
        return self.path not in (None, "not_heard", *PAST_THE_RINGS)

    @property
    def not_valid(self) -> bool:
        """Whether the compression test must be repeated before it says anything."""
        return self.headline == REPEAT


def heard(i: Tested) -> Heard:
    """Return what the tests said."""
    grades: Mapping[str, Grade] = GRADES if i.usual else {}
    # Common practice switched off, only a scale of the tester's maker still grades.
    word = leak_word(i) if i.usual or i.leak_grade is not None else None
    # What lets a sound cylinder leak too leaves a small leak standing, and no large one.
    if word in LARGE and _not_judged(i, "leak_down"):
        word = None
    valid = i.diagnosis_headline != REPEAT
    level = None if _not_judged(i, "compression_least") else i.level_ratio
    wet = _word(grades, "wet_gain", i.excess_gain_pct if valid else None)
    return Heard(
        leak=None if word == leak.NOT_GRADEABLE else word,
        # The maker's limit, and the uncertainty of the reading, stand in the verdict alone.
        leak_proven=all_pass(found(i.findings, "leak_down")),
        path=leak.leak_path(i),
        wet=wet,
        level=_word(grades, "compression_level", level if valid else None),
        oil=i.oil_use_grade,
        headline=i.diagnosis_headline,
        scores={one.suspect: float(one.score) for one in i.suspects or ()},
        least_score=_figure(i, "least_score"),
        least_lead=_figure(i, "least_lead"),
    )


def _not_judged(i: Tested, check: str) -> bool:
    """Return whether a verdict on a test was asked for and could not be passed."""
    return any(f.verdict not in (PASS, FAIL, CLOSE) for f in found(i.findings, check))


def _word(grades: Mapping[str, Grade], name: str, value: Number | None) -> str | None:
    return None if value is None or name not in grades else str(grades[name].word(value))


def _figure(i: Tested, name: str) -> float | None:
    own = getattr(i, name)
    if own is not None:
        return float(own)
    return FIGURES[name].value if i.usual else None


def leader(tests: Heard, among: Sequence[str], rivals: Sequence[str]) -> str | None:
    """Return who of ``among`` is a strong suspect and leads all ``rivals``, or None."""
    best = max(among, key=tests.score, default=None)
    if best is None or tests.least_score is None or tests.least_lead is None:
        return None
    score = tests.score(best)
    next_ = max((tests.score(name) for name in rivals), default=0.0)
    strong = _at_most(tests.least_score, score) and _at_most(tests.least_lead, score - next_)
    return best if strong else None


def _at_most(a: float, b: float) -> bool:
    """Return whether a ≤ b up to the dust of added scores."""
    return a - b <= 1e-9
