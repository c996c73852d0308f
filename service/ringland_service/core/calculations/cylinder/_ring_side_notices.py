"""What rings and grooves must agree with, and what an answer on their clearances warns of."""

from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import at_most, beyond

# common practice, no source
FEELER_MM = 0.02
MOST_SIDE_MM = 1.0
TIGHT_MM = 0.01
PLAIN = "plain"
SHAPE: dict[str, str] = {
    PLAIN: "plain: both sides parallel",
    "keystone": "keystone: one or both sides tapered",
}


def _wider(ring: str) -> Rule:
    return Rule(
        (f"{ring}_ring_width_mm", f"{ring}_groove_width_mm"),
        lambda i: beyond(
            getattr(i, f"{ring}_ring_width_mm"),
            getattr(i, f"{ring}_groove_width_mm") + FEELER_MM,
        ),
        "the ring is wider than its groove",
        "a ring that goes into this groove: clean the carbon out; check sizes and units",
    )


def _narrower(ring: str) -> Rule:
    return Rule(
        (f"{ring}_ring_width_mm", f"{ring}_groove_width_mm"),
        lambda i: beyond(
            getattr(i, f"{ring}_groove_width_mm"),
            getattr(i, f"{ring}_ring_width_mm") + MOST_SIDE_MM,
        ),
        "the groove is more than 1 mm wider than the ring",
        "the width of this ring's own groove, along the cylinder",
    )


def _too_deep(ring: str) -> Rule:
    root, bore = f"{ring}_groove_root_mm", "bore_mm"
    return Rule(
        (root, bore),
        lambda i: at_most(i.bore_mm, getattr(i, root)),
        "the root of the groove is not smaller than the bore",
        "the piston's diameter at the bottom of the groove",
    )


RULES = (
    *(make(ring) for ring in ("top", "second") for make in (_wider, _narrower, _too_deep)),
    Rule(
        ("top_ring_shape",),
        lambda i: i.top_ring_shape != PLAIN and _any_side(i, "top"),
        "a keystone ring has no plain side clearance",
        "leave out its widths and feeler; judge it by the maker's method",
    ),
)


def _any_side(i: Any, ring: str) -> bool:
    names = ("groove_width_mm", "ring_width_mm", "feeler_mm")
    return any(getattr(i, f"{ring}_{name}") is not None for name in names)


def _both_ways(ring: str) -> Notice:
    def given(i: Any, _: Any) -> bool:
        names = ("groove_width_mm", "ring_width_mm", "feeler_mm")
        return all(getattr(i, f"{ring}_{name}") is not None for name in names)

    return Notice(
        "feeler_used",
        f"{ring}_feeler_mm",
        given,
        "widths and feeler both given: the feeler is used, it finds the narrowest place",
    )


def _proud(ring: str) -> Notice:
    def when(_: Any, o: Any) -> Any:
        back = getattr(o, f"{ring}_back_clearance_mm")
        # No room but for what a conversion of units leaves is no room.
        return False if back is None else back <= 1e-9

    return Notice(
        "ring_proud",
        f"{ring}_back_clearance_mm",
        when,
        "no room behind the ring: it would stand proud of the piston and hold it off the bore; "
        "wrong ring or wrong groove",
    )


def _tight(ring: str) -> Notice:
    def when(_: Any, o: Any) -> Any:
        side = getattr(o, f"{ring}_side_clearance_mm")
        return False if side is None else side < TIGHT_MM

    return Notice(
        "ring_tight_in_groove",
        f"{ring}_side_clearance_mm",
        when,
        "less than 0.01 mm: the ring sticks when hot; carbon in the groove, a bent land, or the "
        "wrong ring",
    )


def _half_side(ring: str) -> Notice:
    def when(i: Any, _: Any) -> bool:
        widths = (f"{ring}_groove_width_mm", f"{ring}_ring_width_mm")
        return sum(getattr(i, name) is not None for name in widths) == 1

    return Notice(
        "one_width_missing",
        f"{ring}_groove_width_mm",
        when,
        "a side clearance takes the width of the groove and that of the ring",
    )


def _half_back(ring: str) -> Notice:
    def when(i: Any, _: Any) -> bool:
        names = ("bore_mm", f"{ring}_groove_root_mm", f"{ring}_ring_thickness_mm")
        given = [getattr(i, name) is not None for name in names]
        return any(given[1:]) and not all(given)

    return Notice(
        "back_clearance_incomplete",
        f"{ring}_groove_root_mm",
        when,
        "a back clearance takes the bore, the groove's root and the ring's radial thickness",
    )


NOTICES = (
    *(
        make(ring)
        for ring in ("top", "second")
        for make in (_both_ways, _tight, _proud, _half_side, _half_back)
    ),
    Notice(
        "worn_ring_in_worn_groove",
        "fit",
        lambda i, _: not i.measured_with_new_ring,
        "with a worn ring the figure is neither the groove's nor the ring's wear: a worn ring in a "
        "worn groove reads good and bad at once; measure with a new ring",
    ),
)
