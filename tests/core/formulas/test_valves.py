"""Guides and seats, by hand, and against stems tilted and seats cut in drawn geometry."""

from math import cos, hypot, radians, sin, tan

import numpy as np
import pytest
from formula_checks import number
from hypothesis import assume, given
from scipy.optimize import brentq

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import valves

Point = tuple[float, float]


def near(value: float) -> object:
    return pytest.approx(value, rel=2e-5, abs=1e-9)


def test_worked_guide_and_seat() -> None:
    # By hand: 4.532 - 4.468; 0.118 * 38 / 58; 2.3 / 1.414214; 0.9 / 2; 0.1 / (1 - 0.5773503);
    # 0.1 / (1.7320508 - 1); (2.3 - 0.236603) / 1.414214; 2.05 / (1.414214 * 2.6).
    assert valves.guide_clearance_mm(4.532, 4.468) == near(0.064)
    assert valves.clearance_from_rock_mm(0.118, 38.0, 10.0) == near(0.0773103)
    assert valves.width_along_face_mm(25.6, 23.3, 45.0) == near(1.62635)
    assert valves.inside_rim_mm(26.5, 25.6) == near(0.45)
    assert valves.edge_change_mm(0.05, 45.0, 30.0) == near(0.236603)
    assert valves.edge_change_mm(0.05, 45.0, 60.0) == near(0.136603)
    assert valves.width_after_cut_mm(25.6, 23.3, 0.236603, 45.0) == near(1.45904)
    assert valves.place_on_face(26.5, 24.45, 2.6, 45.0) == near(0.557526)


def test_a_clearance_in_standard_fits() -> None:
    # Source: ISO 286 (from memory): 5 H7/f7, hole 5.000 to 5.012, shaft 4.978 to 4.990.
    assert valves.guide_clearance_mm(5.0, 4.99) == near(0.010)
    assert valves.guide_clearance_mm(5.012, 4.978) == near(0.034)


@given(number(0.01, 0.2), number(3, 12), number(20, 80), number(0, 60))
def test_a_stem_tilted_until_it_touches(
    clearance: float, stem: float, length: float, beyond: float
) -> None:
    # Independent: a straight stem between the guide's opposite edges, its tilt solved as a root;
    # the indicator rests on its side. The rule leaves out second-order terms.
    guide = stem + clearance

    def room(tilt: float) -> float:
        return guide * cos(tilt) - length * sin(tilt) - stem

    tilt = brentq(room, 0.0, 0.1, xtol=1e-15)
    swing = 2 * (length / 2 + beyond) * tan(tilt)
    found = valves.clearance_from_rock_mm(swing, length, beyond)
    assert found == pytest.approx(clearance, rel=5e-3)


def crossing(one: Point, one_deg: float, other: Point, other_deg: float) -> Point:
    """Return where two lines cross, each through a point at an angle from the plane across."""
    slopes = [tan(radians(one_deg)), tan(radians(other_deg))]
    sides = [s * p[0] - p[1] for s, p in zip(slopes, (one, other), strict=True)]
    x, y = np.linalg.solve([[slopes[0], -1.0], [slopes[1], -1.0]], sides)
    return float(x), float(y)


@given(number(20, 60), number(3, 10), number(15, 60), number(4, 12), number(0.005, 0.1))
def test_a_seat_cut_in_a_drawing(
    outer: float, less: float, seat: float, apart: float, feed: float
) -> None:
    # Independent: seat and cutters as straight lines; the cutter, lowered by the feed from the edge
    # that it touches, crosses the seat at the new edge.
    top, bottom = seat - apart, seat + apart
    assume(top >= 10 and bottom <= 75)
    inner = outer - less
    edges = [(d / 2, d / 2 * tan(radians(seat))) for d in (outer, inner)]
    new = [
        crossing(edge, seat, (edge[0], edge[1] - feed), cutter)
        for edge, cutter in zip(edges, (top, bottom), strict=True)
    ]
    drop = valves.edge_change_mm(feed, seat, top)
    rise = valves.edge_change_mm(feed, seat, bottom)
    assert drop == pytest.approx(outer - 2 * new[0][0], abs=1e-9)
    assert rise == pytest.approx(2 * new[1][0] - inner, abs=1e-9)
    assume(drop + rise < less)
    width = hypot(new[0][0] - new[1][0], new[0][1] - new[1][1])
    found = valves.width_after_cut_mm(outer, inner, drop + rise, seat)
    assert found == pytest.approx(width, abs=1e-9)


@given(number(0, 2), number(30, 46), number(10, 28))
def test_a_feed_for_a_change_makes_that_change(change: float, seat: float, cutter: float) -> None:
    feed = valves.feed_for_change_mm(change, seat, cutter)
    assert valves.edge_change_mm(feed, seat, cutter) == pytest.approx(change, abs=1e-12)
    assert valves.feed_for_change_mm(change, cutter, seat) == pytest.approx(feed, abs=1e-12)


@given(number(20, 60), number(0.5, 3), number(10, 80), number(0, 1))
def test_a_place_walked_along_the_face(head: float, face: float, seat: float, share: float) -> None:
    mean = head - 2 * share * face * cos(radians(seat))
    assert valves.place_on_face(head, mean, face, seat) == pytest.approx(share, abs=1e-9)
    assert valves.inside_rim_mm(head, mean) == pytest.approx(
        share * face * cos(radians(seat)), abs=1e-9
    )


def test_out_of_bounds() -> None:
    with pytest.raises(OutOfBounds, match="cutter_deg: is the angle of the seat itself"):
        valves.edge_change_mm(0.05, 45.0, np.array([30.0, 45.0]))
    with pytest.raises(OutOfBounds, match="feed_mm: these cuts take the whole contact away"):
        valves.width_after_cut_mm(25.6, 23.3, np.array([0.2, 2.4]), 45.0)
    with pytest.raises(OutOfBounds, match="feed_mm: these cuts take the whole contact away"):
        valves.width_after_cut_mm(25.5, 23.0, 2.5, 45.0)  # to the last hair: no width is left
    with pytest.raises(OutOfBounds, match="guide_length_mm: must be above zero"):
        valves.clearance_from_rock_mm(0.1, 0.0, 10.0)
    with pytest.raises(OutOfBounds, match="face_mm: must be above zero"):
        valves.place_on_face(26.5, 24.45, 0.0, 45.0)
