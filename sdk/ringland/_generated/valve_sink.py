"""Valve sink: lash, spring and chamber.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


class ValveSinkLimits(TypedDict, total=False):
    """Limits of your own, by check: valve-sink.

    Attributes
    ----------
    lash_after_sink : LimitAsked
        lash after the work, not yet set again; only the maker's range judges it
    lash_left_after_sink : LimitAsked
        lash left after the work: below zero the valve is held open
    total_sink : LimitAsked
        sink in all; only the maker's limit judges it
    shim_room : LimitAsked
        room left for a thinner shim
    seat_load_after_sink : LimitAsked
        load of the spring after the sink; only the maker's range judges it
    """

    lash_after_sink: LimitAsked
    lash_left_after_sink: LimitAsked
    total_sink: LimitAsked
    shim_room: LimitAsked
    seat_load_after_sink: LimitAsked


@dataclass(frozen=True, kw_only=True)
class ValveSinkResult:
    """None is what cannot be known.

    Attributes
    ----------
    total_sink : Quantity
        sink in all
    lash_after : Quantity | None
        lash after the work, with the shim or screw as it was; below zero the valve is held open
    shim_needed : Quantity | None
        shim that brings the lash wanted
    shim_room_left : Quantity | None
        how much thinner the shim can still go: what the valve may sink further
    seat_load_after : Quantity | None
        load of the spring after the sink, valve shut
    seat_load_loss : Quantity | None
        load lost, share of the one before
    spring_shim_to_restore : Quantity | None
        shim under the spring that restores its installed height
    chamber_gain : Quantity | None
        what the chamber gains
    ratio_before : float | None
        compression ratio before
    ratio_after : float | None
        compression ratio after
    """

    total_sink: Quantity
    lash_after: Quantity | None = None
    shim_needed: Quantity | None = None
    shim_room_left: Quantity | None = None
    seat_load_after: Quantity | None = None
    seat_load_loss: Quantity | None = None
    spring_shim_to_restore: Quantity | None = None
    chamber_gain: Quantity | None = None
    ratio_before: float | None = None
    ratio_after: float | None = None


class ValveSink(Calculation[ValveSinkResult]):
    """Valve sink: lash, spring and chamber.

    What a valve that sits deeper after its seat was cut does to lash, spring load and chamber. An
    old shim put back over a sunk valve holds it open. Grinding the stem end only where the maker
    allows it.
    """

    NAME = "valve-sink"
    RESULT = ValveSinkResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "sink_cut": "quantity",
        "sink_now": "quantity",
        "lash_found": "quantity",
        "lash_target": "quantity",
        "lash_shim": "quantity",
        "thinnest_shim": "quantity",
        "spring_rate": "quantity",
        "seat_load_nominal": "quantity",
        "valve_head_diameter": "quantity",
        "clearance": "quantity",
        "swept": "quantity",
        "limits": {
            "lash_after_sink": {"low": "quantity", "high": "quantity"},
            "lash_left_after_sink": {"low": "quantity", "high": "quantity"},
            "total_sink": {"low": "quantity", "high": "quantity"},
            "shim_room": {"low": "quantity", "high": "quantity"},
            "seat_load_after_sink": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        sink_cut: QuantityLike,
        sink_now: QuantityLike | None = None,
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
        lash_found: QuantityLike | None = None,
        ratio_lash_per_stem_rise: float | None = None,
        lash_target: QuantityLike | None = None,
        lash_shim: QuantityLike | None = None,
        thinnest_shim: QuantityLike | None = None,
        spring_rate: QuantityLike | None = None,
        seat_load_nominal: QuantityLike | None = None,
        valve_head_diameter: QuantityLike | None = None,
        valves_cut: int | None = None,
        clearance: QuantityLike | None = None,
        swept: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: ValveSinkLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[ValveSinkResult]:
        """Ask ``valve-sink`` one question.

        Parameters
        ----------
        sink_cut : QuantityLike
            rise of the stem by this work: seat cut and valve face together, same valve before and
            after
        sink_now : QuantityLike, optional
            sink that was there before this work
        adjuster : str, optional
            how the lash is set (shim_over_bucket: shim on the bucket: it moves as the lash does;
            shim_under_bucket: shim under the bucket: it moves as the lash does; shim_under_finger:
            shim under a finger or rocker between cam and valve; screw_at_valve: screw at the
            valve's end of the rocker; screw_at_cam: screw at the cam's or pushrod's end of the
            rocker; hydraulic: hydraulic: there is no lash; ground_stem: none: the end of the stem
            is ground)
        lash_found : QuantityLike, optional
            lash before the work, cold
        ratio_lash_per_stem_rise : float, optional
            lash lost per rise of the stem: 1 where lash is measured at the stem
        lash_target : QuantityLike, optional
            lash wanted, for the shim that is needed now
        lash_shim : QuantityLike, optional
            shim fitted, by micrometer
        thinnest_shim : QuantityLike, optional
            thinnest shim that the maker has
        spring_rate : QuantityLike, optional
            rate of the valve spring
        seat_load_nominal : QuantityLike, optional
            load of the spring before the sink
        valve_head_diameter : QuantityLike, optional
            diameter of the valve head
        valves_cut : int, optional
            valves of one cylinder that sank by this much
        clearance : QuantityLike, optional
            clearance volume before: above the piston at top dead centre
        swept : QuantityLike, optional
            swept volume of one cylinder
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : ValveSinkLimits, optional
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
            "sink_cut": sink_cut,
            "sink_now": sink_now,
            "adjuster": adjuster,
            "lash_found": lash_found,
            "ratio_lash_per_stem_rise": ratio_lash_per_stem_rise,
            "lash_target": lash_target,
            "lash_shim": lash_shim,
            "thinnest_shim": thinnest_shim,
            "spring_rate": spring_rate,
            "seat_load_nominal": seat_load_nominal,
            "valve_head_diameter": valve_head_diameter,
            "valves_cut": valves_cut,
            "clearance": clearance,
            "swept": swept,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
