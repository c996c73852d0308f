"""What rests on the expansion of a bore whose kind has one of common practice alone."""

from collections.abc import Callable, Collection
from typing import Any

import numpy as np

from ringland_service.core.declare import Figure
from ringland_service.core.engines.materials import material_of_bore
from ringland_service.core.formulas.air import REFERENCE_TEMPERATURE_C
from ringland_service.core.numbers import Number

NO_STANDARD = "common_practice"


def away_from_20c(temperature_c: Number) -> Any:
    """Return whether a part is not at 20 °C; 68 °F comes out as that but for the last digit."""
    return np.abs(temperature_c - REFERENCE_TEMPERATURE_C) > 1e-6


def no_standard(bore_kind: str | None) -> bool:
    """Return whether the table's expansion of a kind of bore is common practice alone."""
    material = material_of_bore(bore_kind)
    return material is not None and material.standing == NO_STANDARD


def expansion_of_bore(results: tuple[str, ...], when: Callable[[Any], Any] | None = None) -> Figure:
    """Return the figure of a bore's expansion where its kind has one of common practice alone.

    It counts away from 20 °C, or where the temperature is uncertain, unless ``when`` says where.
    """
    counts = when or (lambda i: away_from_20c(i.bore_temperature_c))

    def stands_in(i: Any, moved: Collection[str]) -> Any:
        if i.bore_alpha_per_k is not None or not no_standard(i.bore_kind):
            return False
        return True if "bore_temperature_c" in moved else counts(i)

    return Figure("bore_alpha_per_k", results, stands_in, "the bore at 20 °C")
