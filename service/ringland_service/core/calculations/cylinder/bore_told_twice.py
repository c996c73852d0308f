"""A bore told beside its survey: largest and smallest in the skirt travel, and at the old gap."""

from collections.abc import Callable

from ringland_service.core.declare import Agreement, Known
from ringland_service.core.declare.told_twice import BORE_MM, Uncertainties, apart, together
from ringland_service.core.engines import survey
from ringland_service.core.engines.survey import Survey
from ringland_service.core.numbers import Number


def _of_survey(
    name: str,
    of: Callable[[Survey, Number | None, Number | None], Number],
    label: str,
    fields: tuple[str, ...],
) -> Agreement:
    def broken(known: Known, uncertainties: Uncertainties) -> bool:
        read = of(known["bore_survey"], known.get("skirt_from_mm"), known.get("skirt_to_mm"))
        return apart(
            known[name], float(read), together(uncertainties, name, "bore_survey"), BORE_MM
        )

    return Agreement(
        (name, "bore_survey"),
        broken,
        f"the {label} bore is not the {label} of its survey in the skirt travel",
        f"the survey's own {label}, or the survey alone",
        fields=fields,
    )


AGREEMENTS = (
    _of_survey(
        "bore_largest_mm", survey.largest_between_mm, "largest", ("bore_largest_mm", "bore_survey")
    ),
    _of_survey(
        "bore_smallest_mm",
        survey.smallest_between_mm,
        "smallest",
        ("bore_smallest_mm", "bore_survey"),
    ),
)
