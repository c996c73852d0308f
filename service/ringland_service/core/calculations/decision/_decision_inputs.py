"""What the decision for a cylinder asks: what was seen, and what tests and parts before found."""

from ringland_service.core.calculations.decision import _tested as tested
from ringland_service.core.calculations.decision import damage as seen
from ringland_service.core.calculations.machining.clean_up import Score
from ringland_service.core.calculations.machining.oversize_choice import REASONS
from ringland_service.core.declare import choice, flag, quantity, record, records, text
from ringland_service.core.engines import condition
from ringland_service.core.quantities import lengths
from ringland_service.core.quantities import machining as sizes


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
    piston_stays_in: bool | None = flag(
        "the pistons can stay in, their rings undisturbed", example=False, default=None
    )
    scores: tuple[Score, ...] | None = records(
        Score, "scores, pits and seizure marks", most=20, default=None
    )
    survey_largest_mm: float | None = quantity(
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
    finish_high_mm: float | None = quantity(
        lengths.BORE, "upper limit of the finish bore", example=68.501, default=None
    )
    gasket_bore_mm: float | None = quantity(
        lengths.GASKET_BORE, "bore of the head gasket", default=None
    )
    best: str | None = text("piston that fits the sound bore best", example="C", default=None)
