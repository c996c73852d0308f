"""Whole cards with parts of them taken away: cards at any stage, of every kind of job."""

import random
from typing import Any

from comparing import Json

# What shapes the answer, and is no reading.
KEPT = ("rule", "defaults", "limits", "measuring", "unit_system")


def thinned(body: Json, chance: random.Random, leave: float) -> Json:
    """Return a card less some of its sections, and less some fields of those that stay."""
    found: Json = {}
    for name, section in body.items():
        if name in KEPT:
            found[name] = section
        elif chance.random() < leave:
            found[name] = _fields(section, chance, leave)
    return found


def _fields(section: Any, chance: random.Random, leave: float) -> Any:
    if not isinstance(section, dict) or "unit" in section:
        return section
    # Most fields stay, or a section would hardly ever be worked out.
    most = 1.0 - (1.0 - leave) / 4
    return {name: value for name, value in section.items() if chance.random() < most}
