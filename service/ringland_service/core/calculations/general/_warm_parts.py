"""What contradicts, and what warns of, parts measured away from 20 °C."""

from collections.abc import Callable
from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.engines.choices import UNKNOWN
from ringland_service.core.formulas.air import REFERENCE_TEMPERATURE_C
from ringland_service.core.metrology.conformity import beyond

# Common practice, no source: a part fits its bore within these bounds of the measured sizes.
LARGEST_CLEARANCE_MM = 3.0
LARGEST_INTERFERENCE_MM = 0.3
SOAKED_C = (18.0, 22.0)
MOST_APART_K = 2.0


def _no_alpha(alpha_per_k: Any, material: str | None) -> bool:
    return alpha_per_k is None and material in (None, UNKNOWN)


def _needs_alpha(part: str, material: str) -> Callable[[Any], Any]:
    """Return whether a part away from 20 °C has no expansion coefficient."""

    def broken(inputs: Any) -> Any:
        given = getattr(inputs, f"{part}_alpha_per_k"), getattr(inputs, material)
        away_k = abs(getattr(inputs, f"{part}_temperature_c") - REFERENCE_TEMPERATURE_C)
        # 68 °F comes out as 20 °C but for the last digit.
        return away_k > 1e-6 if _no_alpha(*given) else False

    return broken


RULES = (
    Rule(
        ("bore_temperature_c", "bore_mm"),
        _needs_alpha("bore", "bore_kind"),
        "the bore is not at 20 °C and nothing says how it expands",
        "its expansion coefficient, or a kind of bore that is known",
    ),
    Rule(
        ("piston_temperature_c", "piston_mm"),
        _needs_alpha("piston", "piston_material"),
        "the piston is not at 20 °C and nothing says how it expands",
        "its expansion coefficient, or its material",
    ),
    Rule(
        ("piston_mm",),
        lambda i: i.piston_temperature_c is None,
        "the piston's length is given without its temperature",
        "the temperature of the piston beside its length",
    ),
    Rule(
        ("piston_mm", "bore_mm"),
        lambda i: (
            beyond(i.bore_mm, i.piston_mm + LARGEST_CLEARANCE_MM)
            | beyond(i.piston_mm, i.bore_mm + LARGEST_INTERFERENCE_MM)
        ),
        "the second part does not fit this bore",
        "a part from 3 mm under to 0.3 mm over the bore's size",
    ),
)


def _away(temperature_c: Any) -> Any:
    low, high = SOAKED_C
    return False if temperature_c is None else (temperature_c < low) | (temperature_c > high)


def _unsoaked(inputs: Any, _: Any) -> Any:
    bore_c, piston_c = inputs.bore_temperature_c, inputs.piston_temperature_c
    if inputs.piston_mm is None or piston_c is None:
        return _away(bore_c)
    return _away(bore_c) | _away(piston_c) | (abs(bore_c - piston_c) > MOST_APART_K)


def _expansion_unknown(inputs: Any, _: Any) -> bool:
    piston = inputs.piston_mm is not None
    return _no_alpha(inputs.bore_alpha_per_k, inputs.bore_kind) or (
        piston and _no_alpha(inputs.piston_alpha_per_k, inputs.piston_material)
    )


NOTICES = (
    Notice(
        "soak_two_hours",
        "bore_temperature_c",
        _unsoaked,
        "the parts differ by more than 2 K, or one is outside 18 to 22 °C: let parts, gauge and "
        "setting ring soak together for two hours and measure again; hands, hot wash, blow gun "
        "and sun warm a part (common practice, no source)",
        common_practice=True,
    ),
    Notice(
        "expansion_unknown",
        "bore_alpha_used_per_k",
        _expansion_unknown,
        "a part has no expansion coefficient, so doubt about its temperature is not carried into "
        "the result",
    ),
)
