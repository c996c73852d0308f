"""A bore told beside its survey: largest and smallest in the skirt travel, and at the old gap."""

from collections.abc import Callable
from typing import Any

from ringland_service.core.declare import Agreement
from ringland_service.core.declare.told_twice import BORE_MM, Doubts, Known, apart, together
from ringland_service.core.engines import survey


def _of_survey(
    name: str, of: Callable[[Any, Any, Any], Any], words: str, fields: tuple[str, ...]
) -> Agreement:
    def broken(known: Known, doubts: Doubts) -> bool:
        read = of(known["survey"], known.get("skirt_from_mm"), known.get("skirt_to_mm"))
        return apart(known[name], float(read), together(doubts, name, "survey"), BORE_MM)

    return Agreement(
        (name, "survey"),
        broken,
        f"the {words} bore is not the {words} of its survey in the skirt travel",
        f"the survey's own {words}, or the survey alone",
        fields=fields,
    )


AGREEMENTS = (
    _of_survey("bore_max_mm", survey.largest_between_mm, "largest", ("bore_max_mm", "survey")),
    _of_survey("bore_min_mm", survey.smallest_between_mm, "smallest", ("bore_min_mm", "survey")),
)
