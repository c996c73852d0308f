"""C39: the smallest diameter that cuts all wear and scores out of a bore."""

from collections.abc import Callable
from typing import cast

import numpy as np

from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    choice,
    kinds,
    number,
    quantity,
    record,
    records,
    result,
)
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.formulas import machining
from ringland_service.core.metrology.candidates import Candidates, largest
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE

PLANE = "plane geometry"
WORN, OPPOSITE = "worn_side", "opposite"
SIDES = {
    WORN: "on the side that wore most",
    OPPOSITE: "opposite the side that wore most",
    UNKNOWN: "not known: the larger share of the wear is used",
}
GOVERNED_BY = {
    "largest_bore": "the largest bore, its wear even all round",
    "one_sided_wear": "wear on one side, with boring centred on the unworn part",
    "score": "the deepest-reaching score",
}
# Where nobody tells how the wear lies, all of it on one side is the safe figure.
WORST_SHARE = 1.0
DEEP_SCORE_MM = 0.3
MOST_WEAR_MM = 3.0


@record
class Score:
    """One score, pit or seizure mark in the wall."""

    local_mm: float = quantity(
        lengths.BORE, "bore at the depth of the score, beside it", example=68.076
    )
    depth_radial_mm: float = quantity(
        sizes.SCORE_DEPTH, "depth of the score below the wall beside it, radial"
    )
    depth_from_deck_mm: float | None = quantity(
        lengths.DEPTH, "where the score lies, below the deck", default=None
    )
    side: str = choice(
        "side of the bore that the score is on", SIDES, example=WORN, default=UNKNOWN
    )


@record
class Inputs:
    """The bore unworn and at its largest, how the wear lies, and the scores."""

    unworn_mm: float = quantity(
        lengths.BORE,
        "bore where it has not worn, at the bottom or above the ring travel: what the machinist "
        "centres on",
        example=68.012,
    )
    bore_largest_mm: float = quantity(lengths.BORE, "largest bore of the survey", example=68.094)
    wear_side_share: float | None = number(
        "share of the wear on the side that wore most: 0.5 even, or boring centred on the worn "
        "bore; 1.0 all on one side; ask how the machinist centres",
        low=0.5,
        high=1.0,
        example=1.0,
        default=None,
    )
    scores: tuple[Score, ...] | None = records(
        Score, "scores, pits and seizure marks to be cut out", most=20, default=None
    )


@record
class Outputs:
    """Diameters that cut out each kind of damage; the largest of them cleans up."""

    clean_up_mm: float = result(
        "clean-up diameter: the smallest bore that leaves no wear and no score",
        kind=kinds.LENGTH,
        decimals=3,
        basis="the largest of symmetric, one_sided and score",
        source=PLANE,
        extreme=True,
    )
    governed_by: str = result(
        "what the clean-up diameter comes from",
        basis="which of symmetric, one_sided and score is the largest",
        source=PLANE,
        choices=GOVERNED_BY,
    )
    symmetric_mm: float = result(
        "diameter that cleans up wear that is even all round",
        kind=kinds.LENGTH,
        decimals=3,
        formula="bore_largest_mm",
        source=PLANE,
    )
    one_sided_mm: float = result(
        "diameter that cleans up the wear as it lies, centred on the unworn part",
        kind=kinds.LENGTH,
        decimals=3,
        formula="unworn_mm + 2 * wear_side_share_used * (bore_largest_mm - unworn_mm)",
        source=PLANE,
    )
    wear_side_share_used: float = result(
        "share of the wear on the side that wore most, as used",
        decimals=2,
        basis="as given, else 1: all on one side, the safe figure",
        source=NO_SOURCE,
    )
    score_diameter_mm: float | None = result(
        "diameter that cleans up the score that reaches farthest",
        kind=kinds.LENGTH,
        decimals=3,
        basis="the largest of score_diameters",
        source=PLANE,
        extreme=True,
        default=None,
    )
    score_diameters_mm: tuple[float, ...] | None = result(
        "diameter that cleans up each score, in order",
        kind=kinds.LENGTH,
        decimals=3,
        basis="unworn + 2 · (share of the wear on the score's side · (local − "
        "unworn) + depth_radial); the share is wear_side_share on the worn side, 1 less "
        "it opposite, the larger of both where the side is not known",
        source=PLANE,
        default=None,
    )


def _share_of(side: str, worn_share: Number) -> Number:
    """Return the share of the wear on a score's side."""
    opposite = 1.0 - worn_share
    # Where the side is not known the larger share is the safe one.
    larger = cast(Number, np.maximum(worn_share, opposite))
    return {WORN: worn_share, OPPOSITE: opposite, UNKNOWN: larger}[side]


def _of_scores_mm(inputs: Inputs) -> list[Number]:
    """Return the diameter that cleans up each score."""
    reference, worn_share = inputs.unworn_mm, _worn_share(inputs)
    return [
        machining.score_clean_up_mm(
            reference, one.local_mm, one.depth_radial_mm, _share_of(one.side, worn_share)
        )
        for one in inputs.scores or ()
    ]


def _worn_share(inputs: Inputs) -> float:
    return WORST_SHARE if inputs.wear_side_share is None else inputs.wear_side_share


def _one_sided_mm(inputs: Inputs) -> Number:
    share = _worn_share(inputs)
    return machining.worn_side_clean_up_mm(inputs.unworn_mm, inputs.bore_largest_mm, share)


def compute(inputs: Inputs) -> Outputs:
    """Work out what each kind of damage needs, and take the largest."""
    each = tuple(map(float, _of_scores_mm(inputs)))
    one_sided = float(_one_sided_mm(inputs))
    needs = {"largest_bore": inputs.bore_largest_mm, "one_sided_wear": one_sided}
    if each:
        needs["score"] = max(each)
    # Of equal needs the first, and so the plainest, is named.
    governing = max(needs, key=lambda name: round(needs[name], 9))
    return Outputs(
        clean_up_mm=max(needs.values()),
        governed_by=governing,
        symmetric_mm=inputs.bore_largest_mm,
        one_sided_mm=one_sided,
        wear_side_share_used=_worn_share(inputs),
        score_diameter_mm=max(each) if each else None,
        score_diameters_mm=each or None,
    )


def extremes(inputs: Inputs) -> dict[str, Candidates]:
    """Return what the clean-up diameter, and that of the scores, are the largest of."""
    scores = _of_scores_mm(inputs)
    found = {"clean_up_mm": largest([inputs.bore_largest_mm, _one_sided_mm(inputs), *scores])}
    return found | ({"score_diameter_mm": largest(scores)} if scores else {})


def _any_score(i: Inputs, holds: Callable[[Score], object]) -> bool:
    return any(holds(score) for score in i.scores or ())


CALCULATION = Calculation(
    name="clean-up",
    number="C39",
    stage="decision",
    title="Clean-up diameter",
    summary="Smallest diameter that cuts wear and scores out of a bore. A two-point gauge cannot "
    "see which side wore, and boring is centred on the unworn part: wear on one side costs twice. "
    "Corrosion pits and broken port edges count as scores.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    columns=False,
    rules=(
        Rule(
            ("unworn_mm", "bore_largest_mm"),
            lambda i: beyond(i.unworn_mm, i.bore_largest_mm),
            "the unworn reference is larger than the largest bore",
            "the reference where the rings do not run, at most the largest bore",
        ),
        Rule(
            ("bore_largest_mm", "unworn_mm"),
            lambda i: beyond(i.bore_largest_mm, i.unworn_mm + MOST_WEAR_MM),
            "more than 3 mm between the unworn and the largest bore is no wear",
            "both of the same bore; check the units and the setting of the gauge",
        ),
        Rule(
            ("scores", "bore_largest_mm"),
            lambda i: _any_score(i, lambda s: beyond(s.local_mm, i.bore_largest_mm)),
            "a score's local bore is larger than the largest bore",
            "the bore beside the score, at most bore_largest",
        ),
        Rule(
            ("scores", "unworn_mm"),
            lambda i: _any_score(i, lambda s: beyond(i.unworn_mm, s.local_mm)),
            "a score's local bore is smaller than the unworn reference",
            "the bore beside the score, at least unworn",
        ),
    ),
    notices=(
        Notice(
            "centring_not_told",
            "wear_side_share",
            lambda i, _: i.wear_side_share is None,
            "worked out as if all wear lay on one side, the safe figure: ask how the machinist "
            "centres, and find the worn side with a straightedge or from the centring cut",
        ),
        Notice(
            "score_side_unknown",
            "scores",
            lambda i, _: _any_score(i, lambda s: s.side == UNKNOWN),
            "a score's side is not known: the larger share of the wear was put on it",
        ),
        Notice(
            "deep_score",
            "scores",
            lambda i, _: _any_score(i, lambda s: s.depth_radial_mm > DEEP_SCORE_MM),
            "a score deeper than 0.3 mm, radial: check that it is a depth on the radius and in "
            "mm; look for a crack beside it",
        ),
        Notice(
            "score_depth_uncertain",
            "scores",
            lambda i, _: i.scores is not None,
            "score depth by feel is poor and counts twice on the diameter: pin gauge or replica, "
            "and state the uncertainty of each depth_radial, else that of the clean-up leaves "
            "it out",
            unless_uncertainty="depth_radial_mm",
        ),
    ),
    cautions=("measuring",),
)
