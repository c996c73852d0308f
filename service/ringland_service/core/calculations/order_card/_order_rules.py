"""What no order card may ask for, and what its answer warns of."""

from collections.abc import Callable
from typing import Protocol, cast

from ringland_service.core.calculations.machining.bored import KIND_NOT_KNOWN, NEVER_BORED
from ringland_service.core.calculations.order_card import order_choices as choices
from ringland_service.core.calculations.order_card._order_heads import VALVES
from ringland_service.core.calculations.order_card._order_inputs import Inputs
from ringland_service.core.calculations.order_card._order_words import tidy
from ringland_service.core.calculations.order_card.order_choices import (
    BORE_AND_HONE,
    HEADS_ONLY,
    HONE,
    LIGHT_HONE,
    REPLATE,
    SLEEVE,
)
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond

# Limits are printed in thousandths of a millimetre.
LEAST_ZONE_MM = 0.001
ROUNDING = 1e-9


def _never_bored(kind: str) -> Rule:
    message, right = NEVER_BORED[kind]
    return Rule(
        ("work", "bore_kind"),
        lambda i: i.bore_kind == kind and i.work in (BORE_AND_HONE, HONE, LIGHT_HONE),
        f"{message}: the surface that runs would be cut away",
        f"{right}; a sleeve only where the maker or the machine shop allows it",
    )


def _needs(work: str, lacking: Callable[[Inputs], bool], message: str, right: str) -> Rule:
    # Of a bore that must not be bored at all, no more is asked.
    def broken(i: Inputs) -> bool:
        forbidden = i.bore_kind == "unknown" or (work != SLEEVE and i.bore_kind in NEVER_BORED)
        return i.work == work and not forbidden and lacking(i)

    return Rule(("work",), broken, message, right)


def _ordered(low: str, high: str, what: str) -> Rule:
    return Rule(
        (low, high),
        lambda i: beyond(getattr(i, low), getattr(i, high)),
        f"{what}: the lower limit is above the upper one",
        f"{low.removesuffix('_mm')} not above {high.removesuffix('_mm')}",
    )


def _heads_ordered(name: str, words: str) -> Rule:
    def broken(i: Inputs) -> bool:
        low, high = getattr(i.heads, f"{name}_low_mm"), getattr(i.heads, f"{name}_high_mm")
        return low is not None and high is not None and bool(beyond(low, high))

    right = f"heads.{name}_low not above heads.{name}_high"
    return Rule(("heads",), broken, f"{words}: the lower limit is above the upper one", right)


def _closer_than_it_prints(i: Inputs) -> bool:
    # A rule is asked only where its fields are given.
    zone = cast(float, i.clearance_high_mm) - cast(float, i.clearance_low_mm)
    return zone < LEAST_ZONE_MM - ROUNDING


RULES = (
    *(_never_bored(kind) for kind in NEVER_BORED),
    Rule(
        ("work", "bore_kind"),
        lambda i: i.bore_kind == "unknown" and i.work != HEADS_ONLY,
        *KIND_NOT_KNOWN,
    ),
    _needs(
        BORE_AND_HONE,
        lambda i: i.piston_size_mm is None,
        "boring is ordered without the piston as measured",
        "give piston, as measured: the mark on it (+0.50 mm, first oversize) is not its size",
    ),
    _needs(
        BORE_AND_HONE,
        lambda i: i.clearance_low_mm is None or i.clearance_high_mm is None,
        "boring is ordered without the clearance that the piston needs",
        "give clearance_low and clearance_high: they and the piston make the finish limits",
    ),
    _needs(
        SLEEVE,
        lambda i: i.interference_mm is None,
        "a sleeve is ordered without its interference",
        "give interference, on the diameter at 20 °C, as worked out for this sleeve",
    ),
    _needs(
        SLEEVE,
        lambda i: i.heat_c is None,
        "a sleeve is ordered without the heat that it goes in by",
        "give heat: the temperature that the cylinder is brought to",
    ),
    Rule(
        ("piston_mark",),
        lambda i: bool(tidy(i.piston_mark)) and i.piston_size_mm is None,
        "the mark of a piston is given without its size",
        "give piston, as measured: the mark is not the size",
    ),
    Rule(
        ("clearance_low_mm", "clearance_high_mm"),
        _closer_than_it_prints,
        "the clearance is no two limits: its lower one must lie under the upper by 0.001 mm",
        "clearance_low under clearance_high: nobody can bore to one size",
    ),
    Rule(
        ("gasket_bore_mm", "piston_size_mm", "clearance_high_mm"),
        lambda i: at_most(i.gasket_bore_mm, i.piston_size_mm + i.clearance_high_mm),
        "the head gasket's bore is not larger than the finish bore",
        "a gasket for this bore; check both sizes and their units",
    ),
    _ordered("port_chamfer_low_mm", "port_chamfer_high_mm", "chamfer of the ports"),
    _ordered("bridge_relief_low_mm", "bridge_relief_high_mm", "relief of the exhaust bridge"),
    _ordered("mouth_chamfer_low_mm", "mouth_chamfer_high_mm", "chamfer of the mouths"),
    *(_heads_ordered(f"{valve}_seat_width", f"{valve} seat width") for valve in VALVES),
    *(_heads_ordered(f"{valve}_guide", f"{valve} guide clearance") for valve in VALVES),
)


class Sized(Protocol):
    """What the notices read of the card."""

    finish_high_mm: float | None


def _gasket_close(i: Inputs, o: Sized) -> bool:
    if not i.usual_figures or i.gasket_bore_mm is None or o.finish_high_mm is None:
        return False
    room = i.gasket_bore_mm - o.finish_high_mm
    return room < 2.0 * choices.least_gasket_room_mm() - ROUNDING


def _unused(
    names: tuple[str, ...], used: Callable[[Inputs], bool]
) -> Callable[[Inputs, object], bool]:
    return lambda i, _: not used(i) and any(getattr(i, name) is not None for name in names)


NOTICES = (
    Notice(
        "card_not_complete",
        "still_to_fill",
        lambda _, o: o.complete == "incomplete",
        "the card is not complete: write in what still_to_fill names before it goes out",
    ),
    Notice(
        "gasket_room_small",
        "gasket_bore_mm",
        _gasket_close,
        "the head gasket clears the finish bore by less than 0.25 mm on each side (common "
        "practice, no source): a gasket that reaches into the bore burns through",
        common_practice=True,
    ),
    Notice(
        "sleeve_figures_not_used",
        "interference_mm",
        _unused(("interference_mm", "heat_c", "drop_in_clearance_mm"), lambda i: i.work == SLEEVE),
        "figures of a sleeve are given, but no sleeve is ordered: they stand on no line",
    ),
    Notice(
        "plating_size_not_used",
        "replate_to",
        _unused(("replate_to",), lambda i: i.work == REPLATE),
        "a size of plating is given, but no replating is ordered: it stands on no line",
    ),
    Notice(
        "torque_figures_not_used",
        "torque_plate",
        _unused(("gasket", "torque_nm", "studs"), lambda i: i.torque_plate is True),
        "gasket, torque or studs are given, but no torque plate is ordered: they stand on no line",
    ),
    Notice(
        "port_figures_not_used",
        "port_chamfer_low_mm",
        _unused(
            (
                "port_chamfer_low_mm",
                "port_chamfer_high_mm",
                "port_chamfer_angle_deg",
                "bridge_relief_low_mm",
                "bridge_relief_high_mm",
            ),
            lambda i: i.cycle == "two_stroke" and i.work != HEADS_ONLY,
        ),
        "figures of ports are given, but the card is not of a two-stroke cylinder: they stand on "
        "no line",
    ),
)
