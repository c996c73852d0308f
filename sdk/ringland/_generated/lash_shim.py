"""Valve-lash shim.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings, ReadingsLike


class LashShimValve(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    name : str
        which valve
    shim : QuantityLike
        shim fitted, by micrometer, not its mark
    found : QuantityLike
        lash with it: cold, cam on its base circle, decompressor off, feeler; of both valves of one
        rocker each
    lash_low : QuantityLike
        least lash of this valve
    lash_high : QuantityLike
        largest lash of this valve
    target : QuantityLike
        lash aimed at for this valve
    found_last_time : QuantityLike
        lash as it was left the last time
    """

    name: str
    shim: QuantityLike
    found: QuantityLike
    lash_low: NotRequired[QuantityLike]
    lash_high: NotRequired[QuantityLike]
    target: NotRequired[QuantityLike]
    found_last_time: NotRequired[QuantityLike]


class LashShimLimits(TypedDict, total=False):
    """Limits of your own, by check: lash-shim.

    Attributes
    ----------
    lash_found_with_shim : LimitAsked
        lash as found
    lash_with_new_shim : LimitAsked
        lash with the chosen shim
    lash_found_each : LimitAsked
        lash as found
    lash_after_each : LimitAsked
        lash with the chosen shim
    """

    lash_found_with_shim: LimitAsked
    lash_with_new_shim: LimitAsked
    lash_found_each: LimitAsked
    lash_after_each: LimitAsked


@dataclass(frozen=True, kw_only=True)
class LashShimResultValveShim:
    """None is what cannot be known.

    Attributes
    ----------
    valve : str | None
        which valve
    outcome : Literal['leave', 'fits', 'none_fits', 'all_taken'] | None
        whether a shim on offer fits
    found : Quantity | None
        lash as found
    found_within : bool | None
        whether the lash as found is within the range
    exact : Quantity | None
        shim that would give just the lash aimed at
    thinnest : Quantity | None
        thinnest shim that keeps the lash in the range
    thickest : Quantity | None
        thickest shim that keeps the lash in the range
    fitting : int | None
        how many shims on offer fit
    shim : Quantity | None
        shim to fit
    lash : Quantity | None
        lash that it gives
    next_best : Quantity | None
        next best shim that is left
    next_best_lash : Quantity | None
        lash that the next best gives
    too_thin : Quantity | None
        where none fits: thickest shim on offer that is too thin
    too_thick : Quantity | None
        where none fits: thinnest shim on offer that is too thick
    """

    valve: str | None = None
    outcome: Literal["leave", "fits", "none_fits", "all_taken"] | None = None
    found: Quantity | None = None
    found_within: bool | None = None
    exact: Quantity | None = None
    thinnest: Quantity | None = None
    thickest: Quantity | None = None
    fitting: int | None = None
    shim: Quantity | None = None
    lash: Quantity | None = None
    next_best: Quantity | None = None
    next_best_lash: Quantity | None = None
    too_thin: Quantity | None = None
    too_thick: Quantity | None = None


@dataclass(frozen=True, kw_only=True)
class LashShimResultShimsTriedItem:
    """None is what cannot be known.

    Attributes
    ----------
    valve : str | None
        which valve
    shim : Quantity | None
        shim
    lash : Quantity | None
        lash that it would give
    outcome : str
        what becomes of it
    """

    valve: str | None = None
    shim: Quantity | None = None
    lash: Quantity | None = None
    outcome: Literal["chosen", "runner_up", "fits", "taken", "too_thick", "too_thin"] | None = None


@dataclass(frozen=True, kw_only=True)
class LashShimResult:
    """None is what cannot be known.

    Attributes
    ----------
    aimed_lash : Quantity | None
        lash aimed at
    exact_shim : Quantity | None
        shim that would give just that lash
    thinnest_within : Quantity | None
        thinnest shim that keeps the lash within the range
    thickest_within : Quantity | None
        thickest shim that keeps the lash within the range
    found_in_range : bool | None
        whether the lash as found is within the range, by the figures alone
    outcome : Literal['leave', 'fits', 'none_fits', 'all_taken'] | None
        whether a shim on offer fits
    shims_that_fit : int | None
        how many shims on offer fit
    shim_chosen : Quantity | None
        shim to fit
    lash_after : Quantity | None
        lash that it gives
    runner_up : Quantity | None
        next best shim
    runner_up_lash : Quantity | None
        lash that the next best gives
    nearest_thinner : Quantity | None
        where none fits: thickest shim on offer that is too thin
    nearest_thicker : Quantity | None
        where none fits: thinnest shim on offer that is too thick
    valve_shims : tuple[LashShimResultValveShim, ...] | None
        each of several valves, in the order given
    valves_measured : tuple[str | float, ...] | None
        the valves, in the order given
    lash_found : Readings | None
        lash of each valve as found
    valves_shimmed : tuple[str | float, ...] | None
        valves that a shim was found for
    lash_after_each : Readings | None
        lash that each of those valves comes to
    lash_margins : Readings | None
        how far inside its range each of those valves' lash comes
    shims_tried : tuple[LashShimResultShimsTriedItem, ...]
        what became of each shim; of those made to a step, those that fit and the nearest two that
        do not
    """

    aimed_lash: Quantity | None = None
    exact_shim: Quantity | None = None
    thinnest_within: Quantity | None = None
    thickest_within: Quantity | None = None
    found_in_range: bool | None = None
    outcome: Literal["leave", "fits", "none_fits", "all_taken"] | None = None
    shims_that_fit: int | None = None
    shim_chosen: Quantity | None = None
    lash_after: Quantity | None = None
    runner_up: Quantity | None = None
    runner_up_lash: Quantity | None = None
    nearest_thinner: Quantity | None = None
    nearest_thicker: Quantity | None = None
    valve_shims: tuple[LashShimResultValveShim, ...] | None = None
    valves_measured: tuple[str | float, ...] | None = None
    lash_found: Readings | None = None
    valves_shimmed: tuple[str | float, ...] | None = None
    lash_after_each: Readings | None = None
    lash_margins: Readings | None = None
    shims_tried: tuple[LashShimResultShimsTriedItem, ...]


class LashShim(Calculation[LashShimResult]):
    """Valve-lash shim.

    Which shim brings the lash into the maker's range, nearest the aim: from the shims at hand or
    from those that the maker makes, for one valve or for several that share one lot; with the
    runner-up, and why the others fall out. A thicker shim takes lash away.
    """

    NAME = "lash-shim"
    RESULT = LashShimResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "shim": "quantity",
        "found": "quantity",
        "shim_mark": "quantity",
        "found_last_time": "quantity",
        "valves": [
            {
                "shim": "quantity",
                "found": "quantity",
                "lash_low": "quantity",
                "lash_high": "quantity",
                "target": "quantity",
                "found_last_time": "quantity",
            }
        ],
        "lash_low": "quantity",
        "lash_high": "quantity",
        "target": "quantity",
        "shims": "readings",
        "shim_step": "quantity",
        "shim_thinnest": "quantity",
        "shim_thickest": "quantity",
        "limits": {
            "lash_found_with_shim": {"low": "quantity", "high": "quantity"},
            "lash_with_new_shim": {"low": "quantity", "high": "quantity"},
            "lash_found_each": {"low": "quantity", "high": "quantity"},
            "lash_after_each": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        shim: QuantityLike | None = None,
        found: QuantityLike | None = None,
        shim_mark: QuantityLike | None = None,
        found_last_time: QuantityLike | None = None,
        valves: Sequence[LashShimValve] | None = None,
        lash_low: QuantityLike | None = None,
        lash_high: QuantityLike | None = None,
        target: QuantityLike | None = None,
        adjuster: Literal[
            "shim_over_bucket",
            "shim_under_bucket",
            "shim_under_finger",
            "screw_at_valve",
            "screw_at_cam",
            "hydraulic",
            "ground_stem",
        ]
        | None = None,
        stem_movement_per_lash: float | None = None,
        shims: ReadingsLike | None = None,
        use_shims_taken_out: bool | None = None,
        shim_step: QuantityLike | None = None,
        shim_thinnest: QuantityLike | None = None,
        shim_thickest: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: LashShimLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[LashShimResult]:
        """Ask ``lash-shim`` one question.

        Needed: ``shim`` or ``valves``.

        Needed: ``shim_step`` or ``shims`` or ``use_shims_taken_out``.

        Parameters
        ----------
        shim : QuantityLike, optional
            shim fitted, by micrometer, not its mark
        found : QuantityLike, optional
            lash with it: cold, cam on its base circle, decompressor off, feeler
        shim_mark : QuantityLike, optional
            what the shim fitted is marked
        found_last_time : QuantityLike, optional
            lash as it was left the last time
        valves : Sequence[LashShimValve], optional
            several valves that take their shims from one lot
        lash_low : QuantityLike, optional
            least lash of the maker's range, cold
        lash_high : QuantityLike, optional
            largest lash of the maker's range, cold
        target : QuantityLike, optional
            lash aimed at; without it the middle of the range
        adjuster : str, optional
            how the lash is set (shim_over_bucket: shim on the bucket: it moves as the lash does;
            shim_under_bucket: shim under the bucket: it moves as the lash does; shim_under_finger:
            shim under a finger or rocker between cam and valve; screw_at_valve: screw at the
            valve's end of the rocker; screw_at_cam: screw at the cam's or pushrod's end of the
            rocker; hydraulic: hydraulic: there is no lash; ground_stem: none: the end of the stem
            is ground) (default shim_over_bucket)
        stem_movement_per_lash : float, optional
            movement at the shim per unit of measured lash: 1 for a bucket (default 1.0)
        shims : ReadingsLike, optional
            shims at hand, by micrometer, each piece once
        use_shims_taken_out : bool, optional
            the shims that come out of these valves may go into another one (default no)
        shim_step : QuantityLike, optional
            step of the shims that the maker makes
        shim_thinnest : QuantityLike, optional
            thinnest shim that the maker makes
        shim_thickest : QuantityLike, optional
            thickest shim that the maker makes
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : LashShimLimits, optional
            limits by check; these win over the common-practice ones
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "shim": shim,
            "found": found,
            "shim_mark": shim_mark,
            "found_last_time": found_last_time,
            "valves": valves,
            "lash_low": lash_low,
            "lash_high": lash_high,
            "target": target,
            "adjuster": adjuster,
            "stem_movement_per_lash": stem_movement_per_lash,
            "shims": shims,
            "use_shims_taken_out": use_shims_taken_out,
            "shim_step": shim_step,
            "shim_thinnest": shim_thinnest,
            "shim_thickest": shim_thickest,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
