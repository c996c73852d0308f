"""What rests on the expansion of a bore whose kind has one of common practice alone."""

from collections.abc import Callable, Collection

from ringland_service.core.declare import Figure
from ringland_service.core.engines._shapes import WarmBore
from ringland_service.core.engines.materials import material_of_bore
from ringland_service.core.formulas.air import REFERENCE_TEMPERATURE_C
from ringland_service.core.formulas.elementary import absolute
from ringland_service.core.numbers import Number, Truth

NO_STANDARD = "common_practice"


def away_from_20c(temperature_c: Number) -> Truth:
    """Return whether a part is not at 20 °C; 68 °F comes out as that but for the last digit."""
    return absolute(temperature_c - REFERENCE_TEMPERATURE_C) > 1e-6


def no_standard(bore_kind: str | None) -> bool:
    """Return whether the table's expansion of a kind of bore is common practice alone."""
    material = material_of_bore(bore_kind)
    return material is not None and material.standing == NO_STANDARD


def _away(i: WarmBore) -> Truth:
    return away_from_20c(i.bore_temperature_c)


def expansion_of_bore(
    results: tuple[str, ...], when: Callable[[WarmBore], Truth] | None = None
) -> Figure:
    """Return the figure of a bore's expansion where its kind has one of common practice alone.

    It counts away from 20 °C, or where the temperature is uncertain, unless ``when`` says where.
    """
    counts = when or _away

    def stands_in(i: WarmBore, moved: Collection[str]) -> Truth:
        if i.bore_alpha_per_k is not None or not no_standard(i.bore_kind):
            return False
        # At 20 °C the expansion moves nothing, but an uncertain temperature is not just 20 °C.
        return True if "bore_temperature_c" in moved else counts(i)

    return Figure("bore_alpha_per_k", results, stands_in, "the bore at 20 °C")
