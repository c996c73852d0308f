"""What a stem in its guide is worked out from, and what is answered."""

from ringland_service.core.calculations.head._valve_words import VALVE
from ringland_service.core.declare import choice, kinds, quantity, readings, record, result
from ringland_service.core.engines.choices import FIT
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import valves as sizes

DIFFERENCE = "difference of two diameters"
READ = "as read"
HEIGHTS = "from the combustion side to the spring's"
Readings = tuple[float, ...]


@record
class Inputs:
    """What gauge, micrometer and dial indicator read on one valve and its guide, both clean."""

    valve_kind: str = choice("which valve", VALVE, example="intake")
    condition: str = choice("which limits apply", FIT, example="used", default="used")
    guide_bore_mm: Number | None = quantity(
        sizes.GUIDE, "largest bore of the guide: 3 heights on 2 axes", default=None
    )
    guide_along_mm: Readings | None = readings(
        sizes.GUIDE,
        f"bore of the guide on the axis that rocker or cam pushes along, {HEIGHTS}",
        least=3,
        most=5,
        example=None,
        default=None,
    )
    guide_across_mm: Readings | None = readings(
        sizes.GUIDE,
        "bore of the guide across that axis, at the same heights",
        least=3,
        most=5,
        example=None,
        default=None,
    )
    stem_size_mm: Number | None = quantity(
        sizes.STEM, "smallest diameter of the stem within the guide: 3 heights", default=None
    )
    stem_heights_mm: Readings | None = readings(
        sizes.STEM,
        f"diameter of the stem within the guide, {HEIGHTS}",
        least=2,
        most=6,
        example=None,
        default=None,
    )
    rock_mm: Number | None = quantity(
        sizes.ROCK,
        "whole sideways rock, total indicator reading, valve lifted about 10 mm off its seat",
        default=None,
    )
    guide_length_mm: Number | None = quantity(
        sizes.GUIDE_LENGTH, "length of the guide", default=None
    )
    rock_distance_mm: Number | None = quantity(
        sizes.BEYOND_GUIDE, "where the indicator touches, beyond the end of the guide", default=None
    )


@record
class Outputs:
    """Clearances are diametral."""

    guide_largest_mm: Number | None = result(
        "largest bore of the guide",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest of the readings, or the one given",
        source=READ,
        extreme=True,
        default=None,
    )
    guide_bell_mouth_mm: Number | None = result(
        "bell mouth: larger end of the guide less the smallest bore between its ends",
        kind=kinds.LENGTH,
        decimals=3,
        basis="on either axis the larger end less the smallest bore between; the larger of both",
        source=DIFFERENCE,
        extreme=True,
        default=None,
    )
    guide_out_of_round_mm: Number | None = result(
        "out-of-round of the guide: largest difference of its two axes at one height",
        kind=kinds.LENGTH,
        decimals=3,
        basis="at each height the difference of both axes, without sign; the largest",
        source=DIFFERENCE,
        extreme=True,
        default=None,
    )
    stem_smallest_mm: Number | None = result(
        "smallest diameter of the stem",
        kind=kinds.LENGTH,
        decimals=3,
        basis="smallest of the readings, or the one given",
        source=READ,
        extreme=True,
        default=None,
    )
    stem_taper_mm: Number | None = result(
        "taper or wear of the stem: largest less smallest diameter",
        kind=kinds.LENGTH,
        decimals=3,
        basis="largest less smallest of the readings",
        source=DIFFERENCE,
        extreme=True,
        default=None,
    )
    clearance_direct_mm: Number | None = result(
        "clearance by two diameters",
        kind=kinds.LENGTH,
        decimals=3,
        formula="guide_largest_mm - stem_smallest_mm",
        source=DIFFERENCE,
        default=None,
    )
    clearance_from_rock_mm: Number | None = result(
        "clearance that the rock implies in a guide of one bore all along",
        kind=kinds.LENGTH,
        decimals=3,
        formula="rock_mm * guide_length_mm / (guide_length_mm + 2 * rock_distance_mm)",
        source="similar triangles",
        default=None,
    )
