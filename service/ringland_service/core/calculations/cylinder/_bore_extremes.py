"""What the results of a bore survey are the largest, the smallest or the range of."""

from collections.abc import Mapping, Sequence
from typing import Any

from ringland_service.core.engines.survey import Survey
from ringland_service.core.metrology.candidates import Candidates, apart, largest, smallest, spread
from ringland_service.core.numbers import Number


def of_survey(survey: Survey, wear_from_mm: Number | None) -> dict[str, Candidates]:
    """Return the candidates by result, of a survey brought to 20 °C.

    Parameters
    ----------
    survey : Survey
        Readings as numbers, or as columns [mm].
    wear_from_mm : float, array or None
        What the wear is counted from, at 20 °C; None where it is not known [mm].
    """
    axes = {"pin": survey.pin_axis_mm, "thrust": survey.thrust_axis_mm}
    read = {axis: [v for v in values if v is not None] for axis, values in axes.items()}
    everything: list[Any] = [*read["pin"], *read["thrust"]]
    found = {"largest_mm": largest(everything), "smallest_mm": smallest(everything)}
    if wear_from_mm is not None:
        found["wear_mm"] = largest([v - wear_from_mm for v in everything])
    return found | _of_levels(axes) | _of_axes(read)


def _of_levels(axes: Mapping[str, Sequence[Any]]) -> dict[str, Candidates]:
    rows = zip(axes["pin"], axes["thrust"], strict=True)
    both = [(p, t) for p, t in rows if p is not None and t is not None]
    if not both:
        return {}
    return {
        "worn_zone_mm": largest([(p + t) / 2 for p, t in both]),
        "out_of_round_mm": apart([p - t for p, t in both]),
    }


def _of_axes(read: Mapping[str, Sequence[Any]]) -> dict[str, Candidates]:
    return {f"taper_{a}_axis_mm": spread(values) for a, values in read.items() if len(values) > 1}
