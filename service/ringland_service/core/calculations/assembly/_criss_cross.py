"""The order of fasteners: rings from the centre, criss-cross within each ring."""

import math
from collections.abc import Mapping, Sequence

from ringland_service.core.formulas.clocking import separation_deg

Place = tuple[float, float]
# Fasteners within this share of the largest distance make one ring (common practice, no source).
RING_SHARE = 0.10
# Decimals that rounding cannot disturb: of mm, and of degrees.
STEADY = 6


def order(places: Mapping[str, Place], ring_share: float = RING_SHARE) -> list[str]:
    """Return the order of tightening of one group: from its centroid outward, criss-cross.

    Fasteners within ``ring_share`` of the largest distance from the centroid make one ring.
    """
    distance, direction = _polar(places)
    reach = ring_share * max(distance.values())
    left = sorted(places, key=lambda name: (distance[name], direction[name]))
    found: list[str] = []
    while left:
        edge = round(distance[left[0]] + reach, STEADY)
        ring = [name for name in left if distance[name] <= edge]
        left = [name for name in left if distance[name] > edge]
        found += _crossed(ring, direction)
    return found


def _polar(places: Mapping[str, Place]) -> tuple[dict[str, float], dict[str, float]]:
    """Return distance from the centroid and angle about it, counter-clockwise from +x."""
    centre_x = math.fsum(x for x, _ in places.values()) / len(places)
    centre_y = math.fsum(y for _, y in places.values()) / len(places)
    distance: dict[str, float] = {}
    direction: dict[str, float] = {}
    for name, (x, y) in places.items():
        # Rounded first: a place on the axis must not fall a hair below it, to 360°.
        dx, dy = round(x - centre_x, STEADY), round(y - centre_y, STEADY)
        distance[name] = round(math.hypot(dx, dy), STEADY)
        direction[name] = round(math.degrees(math.atan2(dy, dx)) % 360.0, STEADY)
    return distance, direction


def _crossed(ring: Sequence[str], direction: Mapping[str, float]) -> list[str]:
    """Return a ring by smallest angle, then the one nearest opposite, then the next left."""
    left = sorted(ring, key=lambda name: direction[name])
    found = []
    while left:
        first = left.pop(0)
        found.append(first)
        if left:
            opposite = (direction[first] + 180.0) % 360.0
            across = min(left, key=lambda name: separation_deg(direction[name], opposite))
            left.remove(across)
            found.append(across)
    return found
