"""A piston in the bore as it was surveyed: what a decision needs of the clearance's own arithmetic.

Bore and piston are taken as read, so that one instrument's error on both cancels in the clearance.
"""

from dataclasses import fields

from ringland_service.core.calculations.cylinder import piston_clearance
from ringland_service.core.calculations.cylinder.piston_extremes import of_fit
from ringland_service.core.declare import field_like, record
from ringland_service.core.engines.materials import UNKNOWN
from ringland_service.core.engines.survey import Survey
from ringland_service.core.metrology.candidates import Candidates

FIT = piston_clearance.Inputs


@record
class Fitted:
    """The bore, and what bore and piston are made of."""

    bore_survey: Survey | None = field_like(FIT, "bore_survey")
    bore_largest_mm: float | None = field_like(FIT, "bore_largest_mm", example=None)
    bore_smallest_mm: float | None = field_like(FIT, "bore_smallest_mm", example=None)
    skirt_from_mm: float | None = field_like(FIT, "skirt_from_mm")
    skirt_to_mm: float | None = field_like(FIT, "skirt_to_mm")
    piston_kind: str | None = field_like(FIT, "piston_kind", example=None)
    piston_material: str | None = field_like(FIT, "piston_material", example=None)
    cycle: str | None = field_like(FIT, "cycle")
    bore_kind: str = field_like(FIT, "bore_kind", default=UNKNOWN)
    bore_temperature_c: float = field_like(FIT, "bore_temperature_c", default=20.0)
    piston_temperature_c: float = field_like(FIT, "piston_temperature_c", default=20.0)
    bore_alpha_per_k: float | None = field_like(FIT, "bore_alpha_per_k", example=None)
    piston_alpha_per_k: float | None = field_like(FIT, "piston_alpha_per_k", example=None)


TAKEN = tuple(field.name for field in fields(Fitted))


def clearance(inputs: Fitted, piston_size_mm: float) -> piston_clearance.Outputs:
    """Return the clearance of a piston in the bore of the inputs, at 20 °C."""
    return piston_clearance.compute(_fit(inputs, piston_size_mm))


def extremes(inputs: Fitted, piston_size_mm: float) -> dict[str, Candidates]:
    """Return what that piston's clearances are the largest and the smallest of, in a survey."""
    return of_fit(_fit(inputs, piston_size_mm))


def _fit(inputs: Fitted, piston_size_mm: float) -> piston_clearance.Inputs:
    taken = {name: getattr(inputs, name) for name in TAKEN}
    return FIT(piston_size_mm=piston_size_mm, **taken)
