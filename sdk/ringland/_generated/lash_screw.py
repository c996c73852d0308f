"""Adjusting screw of the valve lash.

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


class LashScrewLimits(TypedDict, total=False):
    """Limits of your own, by check: lash-screw.

    Attributes
    ----------
    lash_as_found : LimitAsked
        lash as found; only the maker's range judges it
    """

    lash_as_found: LimitAsked


@dataclass(frozen=True, kw_only=True)
class LashScrewResult:
    """None is what cannot be known.

    Attributes
    ----------
    turn : Quantity
        turn of the screw
    turn_fraction : float
        turn of the screw in turns
    turn_sense : Literal['in', 'out', 'none']
        which way, a right-hand screw
    lash_at_cam_end : Quantity | None
        wanted lash as it is at the cam or pushrod
    """

    turn: Quantity
    turn_fraction: float
    turn_sense: Literal["in", "out", "none"]
    lash_at_cam_end: Quantity | None = None


class LashScrew(Calculation[LashScrewResult]):
    """Adjusting screw of the valve lash.

    How far to turn an adjusting screw and which way, and what the lash is at the cam's end of the
    rocker. Lash hot and cold differs, by 0.05 mm and more on air-cooled pushrod engines: set it in
    the state that the maker states it for.
    """

    NAME = "lash-screw"
    RESULT = LashScrewResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "found": "quantity",
        "target": "quantity",
        "screw_pitch": "quantity",
        "limits": {"lash_as_found": {"low": "quantity", "high": "quantity"}},
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        found: QuantityLike,
        target: QuantityLike,
        screw_pitch: QuantityLike,
        adjuster: Literal[
            "shim_over_bucket",
            "shim_under_bucket",
            "shim_under_finger",
            "screw_at_valve",
            "screw_at_cam",
            "hydraulic",
            "ground_stem",
        ],
        rocker_ratio: float | None = None,
        pad_worn_hollow: bool | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: LashScrewLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[LashScrewResult]:
        """Ask ``lash-screw`` one question.

        Parameters
        ----------
        found : QuantityLike
            lash at the valve as measured, cold, cam on its base circle
        target : QuantityLike
            lash wanted at the valve, cold
        screw_pitch : QuantityLike
            pitch of the adjusting screw
        adjuster : str
            how the lash is set (shim_over_bucket: shim on the bucket: it moves as the lash does;
            shim_under_bucket: shim under the bucket: it moves as the lash does; shim_under_finger:
            shim under a finger or rocker between cam and valve; screw_at_valve: screw at the
            valve's end of the rocker; screw_at_cam: screw at the cam's or pushrod's end of the
            rocker; hydraulic: hydraulic: there is no lash; ground_stem: none: the end of the stem
            is ground)
        rocker_ratio : float, optional
            ratio of the rocker, valve : cam
        pad_worn_hollow : bool, optional
            the pad or stem end is worn hollow (default no)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : LashScrewLimits, optional
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
            "found": found,
            "target": target,
            "screw_pitch": screw_pitch,
            "adjuster": adjuster,
            "rocker_ratio": rocker_ratio,
            "pad_worn_hollow": pad_worn_hollow,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
