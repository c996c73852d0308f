"""Invented cylinders for the decision: a healthy one of each kind, to be spoiled one thing a time.

Figures are worked by hand beside the tests that use them.
"""

from typing import Any

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.calculations.decision._tested import Ranked
from ringland_service.core.calculations.machining.clean_up import Score
from ringland_service.core.calculations.machining.oversize_choice import Offered
from ringland_service.core.declare import Composite
from ringland_service.core.engines.survey import Survey
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.composite import CompositeAnswer, answer_composite
from ringland_service.engine.question import Question, Stated

DECISION = BY_NAME["cylinder-decision"]
assert isinstance(DECISION, Composite)

# Nominal 60.000, worn 0.010 on the thrust axis at the top; service limit 60.100.
LIGHT = Survey(
    depth_mm=(8.0, 30.0, 60.0),
    pin_axis_mm=(60.014, 60.012, 60.010),
    thrust_axis_mm=(60.020, 60.016, 60.012),
)
HEALTHY: dict[str, Any] = {
    "bore_kind": "iron",
    "cycle": "four_stroke",
    "bore_mm": 60.0,
    "stroke_mm": 50.0,
    "survey": LIGHT,
    "unworn_bore_mm": 60.010,
    "damage": "none",
    "surface": "clean",
    "ridge": "none",
    "pistons_stay_in": True,
    "piston_mm": 59.950,
    "old_gap_mm": 0.30,
    "old_gap_depth_mm": 60.0,
    "rering_gap_mm": 0.20,
    "top_feeler_mm": 0.05,
    "pin_mm": 15.000,
    "piston_pin_bore_mm": 15.010,
}
LIMITS = {
    "bore_max": Limit(None, 60.100),
    "out_of_round": Limit(None, 0.025),
    "taper_pin_axis": Limit(None, 0.030),
    "taper_thrust_axis": Limit(None, 0.030),
    "piston_clearance_max": Limit(None, 0.100),
    "old_ring_gap": Limit(None, 0.500),
    "top_ring_side": Limit(None, 0.100),
    "pin_in_piston": Limit(None, 0.040),
    "liner_wall": Limit(2.0, None),
}
OVERSIZES = (
    Offered(mark="+0.25 mm", piston_mm=60.215),
    Offered(mark="+0.50 mm", piston_mm=60.465),
)
# Finish 60.250 and 60.500, bore-to 60.190 and 60.440.
ON_THE_SHELF: dict[str, Any] = {
    "pistons": OVERSIZES,
    "clearance_low_mm": 0.030,
    "clearance_high_mm": 0.040,
    "hone_stock_mm": 0.060,
    "wear_side_share": 0.5,
    "liner_od_mm": 68.0,
}
PLATED: dict[str, Any] = {
    **HEALTHY,
    "bore_kind": "plated_aluminium",
    "cycle": "two_stroke",
    "piston_mm": 59.880,
    "pistons": (
        Offered(mark="A", piston_mm=59.940),
        Offered(mark="B", piston_mm=59.950),
        Offered(mark="C", piston_mm=59.960),
    ),
    "clearance_low_mm": 0.048,
    "clearance_high_mm": 0.072,
}
__all__ = ["HEALTHY", "LIGHT", "LIMITS", "ON_THE_SHELF", "OVERSIZES", "PLATED", "Score", "asked"]


def ranked(**scores: float) -> tuple[Ranked, ...]:
    """Return suspects as a diagnosis ranks them."""
    return tuple(Ranked(suspect=name, score=score) for name, score in scores.items())


def asked(
    base: dict[str, Any],
    doubts: dict[str, float] | None = None,
    limits: dict[str, Limit] | None = None,
    **changed: Any,
) -> CompositeAnswer:
    """Return the decision for a cylinder with some things changed; None takes a thing away."""
    given = {name: value for name, value in {**base, **changed}.items() if value is not None}
    assert isinstance(DECISION, Composite)
    stated = {tuple(name.split(".")): Stated(uncertainty=u) for name, u in (doubts or {}).items()}
    question = Question(
        inputs=DECISION.inputs(**given), doubts=stated, limits={**LIMITS, **(limits or {})}
    )
    return answer_composite(DECISION, question)


def decided(found: CompositeAnswer) -> Any:
    """Return the results of the decision."""
    return found.parts["cylinder_decision"].outputs


def way(found: CompositeAnswer, name: str) -> Any:
    """Return one way's row."""
    return next(row for row in decided(found).ways if row.way == name)


def wants(found: CompositeAnswer) -> set[str]:
    """Return the fields that the decision asks for."""
    return {
        path[-1]
        for one in found.open
        if one.part == "cylinder_decision"
        for fields in one.ways
        for path in fields
    }
