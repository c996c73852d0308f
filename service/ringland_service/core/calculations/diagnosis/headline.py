"""What the ranking amounts to: the first headline that fits, and the sentence that says it."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from ringland_service.core.calculations.diagnosis._evidence_weighed import DUST, not_valid
from ringland_service.core.calculations.diagnosis.diagnosis_inputs import NEEDS
from ringland_service.core.calculations.diagnosis.tables import RULES
from ringland_service.core.engines import condition
from ringland_service.core.metrology.conformity import at_most

REPEAT, NOTHING, WEAK = "test_not_valid", "nothing_wrong_shown", "no_strong_suspect"
DECOMPRESSOR_FIRST, LASH_FIRST = "hold_decompressor_off_first", "measure_lash_first"
NOT_SETTLED, LEADS = "not_settled", "leads"
RANKED, UNWEIGHED, UNTESTED = "ranking_only", "nothing_weighed", "nothing_tested"
HEADLINES: dict[str, str] = {
    REPEAT: "test not valid: repeat",
    NOTHING: "nothing wrong shown by these tests",
    WEAK: "no strong suspect from these tests",
    DECOMPRESSOR_FIRST: "not settled: hold the decompressor off and repeat first",
    LASH_FIRST: "not settled: measure the lash first",
    NOT_SETTLED: "not settled",
    LEADS: "a suspect leads",
    UNTESTED: "nothing tested or seen yet: the complaint says where to begin",
    RANKED: "ranking only: common practice is off, and no figure says when a lead is one",
    UNWEIGHED: "nothing weighed: common practice is off, and the request weighs none of this",
}


@dataclass(frozen=True)
class Standing:
    """Who leads, who is next, and by how much; suspects that nothing spoke of stand at 0."""

    first: str | None
    next: str | None
    score: float
    next_score: float
    lead: float


def standing(scores: Mapping[str, float], silent: Collection[str]) -> Standing:
    """Return who leads: best first in ``scores``; ``silent`` are those that nothing spoke of."""
    first, second = (*scores, None, None)[:2]
    best, then = (0.0 if name is None else scores[name] for name in (first, second))
    others = [scores[name] for name in scores if name != first] + [0.0] * bool(silent)
    return Standing(first, second, best, then, round(best - max(others, default=0.0), DUST))


def headline(i: Any, evidence: Collection[str], at: Standing, figures: Mapping[str, float]) -> str:
    """Return the first headline that fits."""
    if not_valid(evidence):
        return REPEAT
    if not any(_told(getattr(i, name)) for name in NEEDS):
        return UNTESTED
    if at.first is None and not i.usual:
        return UNWEIGHED
    if set(RULES["nothing_wrong"].all) <= set(evidence) and at_most(at.score, 0.0):
        return NOTHING
    if not {"least_score", "least_lead"} <= figures.keys():
        return RANKED
    if at.first is None or not at_most(figures["least_score"], at.score):
        return WEAK
    return _valve_first(i, evidence, at) or _by_lead(at, figures["least_lead"])


def _told(value: Any) -> bool:
    return value is not None and len(np.atleast_1d(value)) > 0


def _valve_first(i: Any, evidence: Collection[str], at: Standing) -> str:
    """Return what comes before a valve is blamed, or nothing."""
    decompressor, lash = RULES["valve_and_decompressor"], RULES["valve_and_lash"]
    if at.first in decompressor.suspects and _in_play(i) and _none(evidence, decompressor.any):
        return DECOMPRESSOR_FIRST
    if at.first in lash.suspects and _none(evidence, lash.any):
        return LASH_FIRST
    return ""


def _in_play(i: Any) -> bool:
    """Return whether a decompressor may have let pressure off."""
    kind, state = i.decompressor, i.decompressor_state
    return state == condition.ACTIVE or condition.decompressor_uncertain(kind, state)


def _none(evidence: Collection[str], among: Collection[str]) -> bool:
    return set(evidence).isdisjoint(among)


def _by_lead(at: Standing, least: float) -> str:
    return LEADS if at_most(least, at.lead) else NOT_SETTLED


def statement(word: str, at: Standing) -> str:
    """Return the headline as the sentence told."""
    if word != LEADS:
        return HEADLINES[word]
    return f"{at.first} leads by {shown(at.lead)}"


def shown(score: float) -> str:
    """Return a score as text: one decimal, or as many as it has up to three."""
    text = f"{score:.3f}".rstrip("0")
    return text + "0" if text.endswith(".") else text
