"""What a choice of lash shims is asked with: one valve or several, and the shims on offer."""

import numpy as np

from ringland_service.core.calculations.head._shim_jobs import BUCKET, GEAR
from ringland_service.core.calculations.head._shims import picks
from ringland_service.core.declare import (
    choice,
    flag,
    held,
    number,
    quantity,
    readings,
    record,
    records,
    text,
)
from ringland_service.core.quantities import valves as sizes

MEASURED = "cold, cam on its base circle, decompressor off, feeler"


@record
class Valve:
    """One of several valves; a range of its own where it differs from the others'."""

    name: str = text("which valve", example="exhaust 1", longest=30)
    old_shim_mm: float = quantity(sizes.SHIM, "shim fitted, by micrometer, not its mark")
    measured_lash_mm: float = quantity(
        sizes.LASH, f"lash with it: {MEASURED}; of both valves of one rocker each", example=0.06
    )
    lash_low_mm: float | None = quantity(
        sizes.LASH, "least lash of this valve", example=0.2, exact=True, default=None
    )
    lash_high_mm: float | None = quantity(
        sizes.LASH, "largest lash of this valve", example=0.3, exact=True, default=None
    )
    target_lash_mm: float | None = quantity(
        sizes.LASH, "lash aimed at for this valve", example=0.25, exact=True, default=None
    )
    last_lash_mm: float | None = quantity(
        sizes.LASH, "lash as it was left the last time", example=0.24, default=None
    )


@record
class Inputs:
    """One valve by itself, or several at once; shims at hand, or as the maker makes them."""

    old_shim_mm: float | None = quantity(
        sizes.SHIM, "shim fitted, by micrometer, not its mark", default=None
    )
    measured_lash_mm: float | None = quantity(
        sizes.LASH, f"lash with it: {MEASURED}", example=0.06, default=None
    )
    old_shim_mark_mm: float | None = quantity(
        sizes.SHIM, "what the shim fitted is marked", example=2.65, exact=True, default=None
    )
    last_lash_mm: float | None = quantity(
        sizes.LASH, "lash as it was left the last time", example=0.24, default=None
    )
    valves: tuple[Valve, ...] | None = records(
        Valve,
        "several valves that take their shims from one lot",
        most=16,
        example=(),
        default=None,
    )
    lash_low_mm: float | None = quantity(
        sizes.LASH, "least lash of the maker's range, cold", example=0.2, exact=True, default=None
    )
    lash_high_mm: float | None = quantity(
        sizes.LASH, "largest lash of the maker's range, cold", example=0.3, exact=True, default=None
    )
    target_lash_mm: float | None = quantity(
        sizes.LASH,
        "lash aimed at; without it the middle of the range",
        example=0.25,
        exact=True,
        default=None,
    )
    gear: str = choice("what the shim sits under", GEAR, example=BUCKET, default=BUCKET)
    stem_movement_per_lash: float = number(
        "movement at the shim per unit of measured lash: 1 for a bucket",
        low=0.4,
        high=2.0,
        example=1.0,
        default=1.0,
    )
    shims_at_hand_mm: tuple[float, ...] | None = readings(
        sizes.SHIM,
        "shims at hand, by micrometer, each piece once",
        least=1,
        most=60,
        example=None,
        default=None,
    )
    use_shims_taken_out: bool = flag(
        "the shims that come out of these valves may go into another one",
        default=False,
        example=False,
    )
    shim_step_mm: float | None = quantity(
        sizes.SHIM_STEP, "step of the shims that the maker makes", exact=True, default=None
    )
    shim_least_mm: float | None = quantity(
        sizes.SHIM, "thinnest shim that the maker makes", example=1.2, exact=True, default=None
    )
    shim_most_mm: float | None = quantity(
        sizes.SHIM, "thickest shim that the maker makes", example=3.5, exact=True, default=None
    )
    held: tuple[tuple[int, int], ...] | None = held()

    def __post_init__(self) -> None:
        """Hold the choice: copies with one value moved by its doubt keep it.

        Columns wait: they are answered row by row, and each row makes its own choice.
        """
        columns = any(isinstance(value, np.ndarray) for value in vars(self).values())
        if self.held is None and not columns:
            object.__setattr__(self, "held", picks(self))
