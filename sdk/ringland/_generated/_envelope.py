"""What every request may carry beside its fields.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Sequence
from typing import Literal, NotRequired, TypedDict

from ringland._asking import Shape
from ringland._generated._words import Standing
from ringland._types import QuantityLike


class LimitAsked(TypedDict, total=False):
    """A limit of your own, for a value with a unit; one side or both."""

    low: QuantityLike
    high: QuantityLike
    standing: Standing
    source: str


class RatioLimitAsked(TypedDict, total=False):
    """A limit of your own, for a bare number; one side or both."""

    low: float
    high: float
    standing: Standing
    source: str


class MeasuringAskedInstrument(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    id : str
    kind : str
    zero_set_in : str
    max_permissible_error : QuantityLike
        a figure of an instrument, at most a tenth of the widest span of what it reads; or a share
        of the reading
    zero_setting_error : QuantityLike
        a figure of an instrument, at most a tenth of the widest span of what it reads
    repeatability : QuantityLike
        a figure of an instrument, at most a tenth of the widest span of what it reads
    resolution : QuantityLike
        a figure of an instrument, at most a tenth of the widest span of what it reads
    short_range_error : QuantityLike
        a figure of an instrument, at most a tenth of the widest span of what it reads
    """

    id: str
    kind: NotRequired[
        Literal[
            "bore_gauge",
            "outside_micrometer",
            "depth_gauge",
            "calliper",
            "feeler",
            "burette",
            "compression_gauge",
            "small_hole_gauge",
            "stem_micrometer",
            "lash_feeler",
        ]
    ]
    zero_set_in: NotRequired[str]
    max_permissible_error: NotRequired[QuantityLike]
    zero_setting_error: NotRequired[QuantityLike]
    repeatability: NotRequired[QuantityLike]
    resolution: NotRequired[QuantityLike]
    short_range_error: NotRequired[QuantityLike]


class MeasuringAsked(TypedDict):
    """How the readings were taken; one instrument shares its setting error.

    Attributes
    ----------
    instruments : Sequence[MeasuringAskedInstrument]
    readings_each : int
        (default 1)
    temperature_uncertainty : QuantityLike
        expanded uncertainty (k = 2) of each part's temperature
    """

    instruments: NotRequired[Sequence[MeasuringAskedInstrument]]
    readings_each: NotRequired[int]
    temperature_uncertainty: NotRequired[QuantityLike]


MEASURING: Shape = {
    "instruments": [
        {
            "max_permissible_error": "quantity",
            "zero_setting_error": "quantity",
            "repeatability": "quantity",
            "resolution": "quantity",
            "short_range_error": "quantity",
        }
    ],
    "temperature_uncertainty": "quantity",
}
