"""What contradicts a wanted compression ratio, and what its answer warns of."""

from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas import geometry
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.tables.sources import cited

# A chamber may overlap its cylinder a little at the face, no more (common practice, no source).
CHAMBER_OVER_BORE = 1.3
# A change of the ratio that is worth a look at fuel and mixture: common practice, no source.
FELT = 0.05

RULES = (
    Rule(
        ("chamber_area_at_face_mm2", "bore_mm"),
        lambda i: beyond(
            i.chamber_area_at_face_mm2, CHAMBER_OVER_BORE * geometry.piston_area_mm2(i.bore_mm)
        ),
        "a chamber more than 1.3 times as wide as the bore's area is not this cylinder's",
        "the area of the chamber at the head's face; check its unit",
    ),
    Rule(
        ("clearance_cc", "swept_cc"),
        lambda i: beyond(i.clearance_cc, i.swept_cc / 2),
        "these volumes make a ratio under 3: are they swapped?",
        "swept: what the piston sweeps in one cylinder; clearance: what is left above it",
    ),
)


def _positive(_: Any, outputs: Any) -> Any:
    return outputs.remove_cc > 0.0


def _negative(_: Any, outputs: Any) -> Any:
    return outputs.remove_cc < 0.0


def _changed(inputs: Any, outputs: Any) -> Any:
    return abs(inputs.wanted_ratio - outputs.ratio_now) >= FELT


NOTICES = (
    Notice(
        "head_comes_down",
        "remove_cc",
        _positive,
        "a lower head brings the valves nearer to the piston (a skim or a thinner head gasket), "
        "shifts the timing of a camshaft driven from the crank, and takes lash from a pushrod "
        "engine: check all three after",
    ),
    Notice(
        "ratio_to_be_lowered",
        "remove_cc",
        _negative,
        "the ratio wanted is lower than now: only a thicker gasket or more chamber gives it, no "
        "cut does",
    ),
    Notice(
        "ratio_changed",
        "wanted_ratio",
        _changed,
        cited(
            "a changed ratio calls for a look at fuel octane, ignition timing and jetting: one "
            "more ratio asks for about 3 to 5 octane numbers; {heywood_octane}"
        ),
    ),
    Notice(
        "squish_not_known",
        "squish_mm",
        lambda i, _: i.squish_mm is None,
        "without the squish now nothing says whether piston and head stay apart: measure it",
    ),
    Notice(
        "skim_done_not_known",
        "skim_done_mm",
        lambda i, o: i.skim_done_mm is None and o.skim_mm is not None,
        "the limit is on the skim in all: find out what is off already, by the head's height "
        "against a new one",
    ),
)
