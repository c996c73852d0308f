"""What a squish clearance answers: the squish now, each gasket's, and what the chosen one does."""

from typing import Any

from ringland_service.core.calculations.geometry import _squish_gaskets as gaskets
from ringland_service.core.declare import kinds, record, result
from ringland_service.core.tables.sources import NO_SOURCE as COMMON
from ringland_service.core.tables.sources import cited

STACK = "sum of lengths"
RATIO = cited("{heywood_ratio}")
BLAIR = cited("{blair}")
PLANE = "plane geometry"


def _length(words: str, **about: Any) -> Any:
    return result(words, kind=kinds.LENGTH, digits=2, **{"source": STACK, **about})


@record
class Outputs:
    """The squish now, each gasket's squish, and what the gasket chosen does."""

    squish_mm: float = _length(
        "squish clearance, mean", basis="mean of the solder readings, else squish_by_stack"
    )
    smallest_squish_mm: float = _length(
        "squish clearance at its smallest point",
        basis="smallest solder reading, else squish_by_stack",
        extreme=True,
    )
    doubt_used_mm: float = _length(
        "doubt taken off the smallest point",
        basis="squish_doubt, else 0.04 mm of crushed solder",
        source=f"as given, else {COMMON}",
    )
    smallest_less_doubt_mm: float = _length(
        "smallest point less its doubt", formula="smallest_squish_mm - doubt_used_mm"
    )
    side_difference_mm: float | None = _length(
        "difference of the solder readings",
        basis="largest − smallest solder reading",
        extreme=True,
        default=None,
    )
    squish_by_stack_mm: float | None = _length(
        "squish clearance by the stack",
        formula="deck_mm + gasket_thickness_mm + head_step_mm",
        default=None,
    )
    squish_area_share: float | None = result(
        "area of the squish band over that of the bore",
        digits=3,
        formula="1 - (bowl_dia_mm / bore_mm)**2",
        source=PLANE,
        default=None,
    )
    squish_area_mm2: float | None = result(
        "area of the squish band",
        kind=kinds.AREA,
        digits=0,
        formula="pi/4 * bore_mm**2 * squish_area_share",
        source=PLANE,
        default=None,
    )
    floor_used_mm: float | None = _length(
        "squish that must be left at the smallest point less its doubt",
        basis="lower limit of the check smallest_squish, else common practice for cycle and size",
        source=f"maker, else {COMMON}",
        default=None,
    )
    wanted_used_mm: float | None = _length(
        "squish aimed for",
        basis="squish_wanted, else the floor + 0.2 mm",
        source=f"as given, else {COMMON}",
        default=None,
    )
    gasket_wanted_mm: float | None = _length(
        "base gasket that gives the squish aimed for; negative: none is thin enough",
        formula="base_gasket_fitted_mm + wanted_used_mm - squish_mm",
        default=None,
    )
    gaskets_mm: tuple[float, ...] | None = _length(
        "base gaskets at hand, in the order given", basis="as given", default=None
    )
    squish_afters_mm: tuple[float, ...] | None = _length(
        "mean squish with each gasket", basis="squish − (fitted − gasket)", default=None
    )
    less_doubt_afters_mm: tuple[float, ...] | None = _length(
        "smallest point less its doubt with each gasket",
        basis="smallest − (fitted − gasket) − doubt_used",
        default=None,
    )
    outcomes: tuple[str, ...] | None = result(
        "whether each gasket keeps the floor",
        basis="smallest point less its doubt against floor_used",
        source=COMMON,
        choices=gaskets.OUTCOMES,
        default=None,
    )
    reason: str | None = result(
        "why this gasket, or why none",
        basis="the outcomes of the gaskets nearer to gasket_wanted",
        source=COMMON,
        choices=gaskets.REASONS,
        default=None,
    )
    nearest_gasket_mm: float | None = _length(
        "gasket at hand nearest to the one wanted, whether it keeps the floor or not",
        basis="smallest distance from gasket_wanted; on a tie the thicker",
        default=None,
    )
    nearest_less_doubt_mm: float | None = _length(
        "smallest point less its doubt with the nearest gasket",
        formula="smallest_less_doubt_mm - (base_gasket_fitted_mm - nearest_gasket_mm)",
        default=None,
    )
    chosen_gasket_mm: float | None = _length(
        "base gasket to take",
        basis="the gasket nearest to gasket_wanted that keeps the floor; on a tie the thicker",
        source=COMMON,
        default=None,
    )
    runner_up_gasket_mm: float | None = _length(
        "next nearest gasket that keeps the floor, of another thickness",
        basis="the second of the gaskets that keep the floor",
        source=COMMON,
        default=None,
    )
    thinner_by_mm: float | None = _length(
        "by how much the chosen gasket is thinner than the one fitted; negative: thicker",
        formula="base_gasket_fitted_mm - chosen_gasket_mm",
        default=None,
    )
    squish_after_mm: float | None = _length(
        "mean squish with the chosen gasket",
        formula="squish_mm - thinner_by_mm",
        default=None,
    )
    smallest_after_mm: float | None = _length(
        "smallest point with the chosen gasket",
        formula="smallest_squish_mm - thinner_by_mm",
        default=None,
    )
    after_less_doubt_mm: float | None = _length(
        "smallest point less its doubt with the chosen gasket",
        formula="smallest_less_doubt_mm - thinner_by_mm",
        default=None,
    )
    piston_proud_after_mm: float | None = _length(
        "crown edge proud of (+) or below (−) the deck with the chosen gasket",
        basis="thinner_by − crown edge below the deck now",
        default=None,
    )
    clearance_after_cc: float | None = result(
        "clearance volume with the chosen gasket",
        kind=kinds.VOLUME,
        digits=2,
        formula="clearance_cc - pi/4 * bore_mm**2 * thinner_by_mm / 1000",
        source="solid geometry",
        default=None,
    )
    ratio_before: float | None = result(
        "compression ratio now, from bottom dead centre",
        digits=2,
        formula="(pi/4 * bore_mm**2 * stroke_mm / 1000 + clearance_cc) / clearance_cc",
        source=RATIO,
        default=None,
    )
    ratio_after: float | None = result(
        "compression ratio with the chosen gasket, from bottom dead centre",
        digits=2,
        formula="(pi/4 * bore_mm**2 * stroke_mm / 1000 + clearance_after_cc) / clearance_after_cc",
        source=RATIO,
        default=None,
    )
    trapped_ratio_after: float | None = result(
        "trapped compression ratio with the chosen gasket, from the shutting of the exhaust port",
        digits=2,
        formula="(pi/4 * bore_mm**2 * (exhaust_port_top_below_deck_mm + piston_proud_after_mm)"
        " / 1000 + clearance_after_cc) / clearance_after_cc",
        source=BLAIR,
        default=None,
    )
    exhaust_duration_after_deg: float | None = result(
        "exhaust port open with the chosen gasket, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        basis="slider-crank at the travel from the crown edge at top dead centre to the port top",
        source=BLAIR,
        default=None,
    )
    transfer_duration_after_deg: float | None = result(
        "transfer ports open with the chosen gasket, crank degrees",
        kind=kinds.ANGLE,
        digits=1,
        basis="slider-crank at the travel from the crown edge at top dead centre to the port top",
        source=BLAIR,
        default=None,
    )
