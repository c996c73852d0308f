"""What the clearances of a piston in a surveyed bore are the largest and the smallest of."""

from typing import Any

from ringland_service.core.calculations.cylinder import piston_fit as parts
from ringland_service.core.engines.survey import readings_between
from ringland_service.core.formulas import fits
from ringland_service.core.formulas.air import length_at_20c_mm
from ringland_service.core.metrology.candidates import Candidates, largest, smallest


def of_fit(i: Any) -> dict[str, Candidates]:
    """Return the candidates by result, at 20 °C; none without a survey."""
    if i.bore_survey is None:
        return {}
    bores, among = readings_between(i.bore_survey, i.skirt_from_mm, i.skirt_to_mm)
    alpha = parts.bore_alpha_per_k(i)
    sizes = [length_at_20c_mm(bore, i.bore_temperature_c, alpha) for bore in bores]
    piston = length_at_20c_mm(i.piston_size_mm, i.piston_temperature_c, parts.piston_alpha_per_k(i))
    rooms = [fits.clearance_mm(size, piston) for size in sizes]
    shares = [fits.clearance_share(r, s) for r, s in zip(rooms, sizes, strict=True)]
    return {
        "clearance_max_mm": largest(rooms, among),
        "bore_largest_at_20c_mm": largest(sizes, among),
        "clearance_max_share": largest(shares, among),
        "clearance_min_mm": smallest(rooms, among),
        "bore_smallest_at_20c_mm": smallest(sizes, among),
    }
