"""What a usual reading of a quantity is uncertain by, from the instrument that its words name.

It judges how much an input without a stated uncertainty weighs, and nothing else: no figure from
here enters a result or its uncertainty. Standing: common practice, no source.

A quantity whose words name the maker's sheet, a table or no instrument at all is a figure, not a
reading: it has none.
"""

import math
import re
from functools import cache

import numpy as np

from ringland_service.core.declare.fields import QuantityType
from ringland_service.core.metrology.instruments import ROOT3, TYPICAL
from ringland_service.core.numbers import Number

# The last figure of the first instrument named, the smaller where two bound it: "0.1 to 1 N.m".
_FIGURE = re.compile(
    r"(?P<least>\d+(?:\.\d+)?)(?: to \d+(?:\.\d+)?)? ?(?P<unit>N\.m|mm²|mm|cc|mL|L|kPa|°C|°|V|N|%)"
)
_NO_READING = ("maker", "table", "tester maker")
# Unit of a figure, and of the quantity, to the factor between them.
_FACTORS = {
    **{(unit, unit): 1.0 for unit in ("N.m", "mm", "cc", "mL", "L", "kPa", "V", "N", "%")},
    ("mm²", "mm2"): 1.0,
    ("°C", "degC"): 1.0,
    ("°", "deg"): 1.0,
    ("mL", "L"): 1e-3,
}


def typical_uncertainty(of: QuantityType, value: Number) -> Number | None:
    """Return the expanded uncertainty (k = 2) of a usual reading, in the canonical unit.

    Parameters
    ----------
    of : QuantityType
    value : float or array
        The reading: the error of some gauges is a share of it.

    Returns
    -------
    float, array or None
        The larger of the figure that the quantity's words name and of what the table of bench
        instruments gives; None where the words name no instrument.
    """
    figure, constant, relative = _figures(of.instrument, of.kind.name, of.kind.unit)
    if figure is None and not constant and not relative:
        return None
    if not relative:
        return max(figure or 0.0, 2.0 * constant)
    return np.maximum(figure or 0.0, 2.0 * np.hypot(constant, relative * np.abs(value)))


@cache
def _figures(instrument: str, kind: str, unit: str) -> tuple[float | None, float, float]:
    """Return the figure named, and u by the table of instruments: constant, and as a share."""
    if instrument.startswith(_NO_READING):
        return None, 0.0, 0.0
    return (_named(instrument, unit), *_tabled(instrument, kind))


def _named(instrument: str, unit: str) -> float | None:
    """Return the figure that the quantity's words name, in its canonical unit."""
    found = _FIGURE.search(instrument)
    if found is None:
        return None
    units = (found["unit"], unit)
    return float(found["least"]) * _FACTORS[units] if units in _FACTORS else None


def _tabled(instrument: str, kind: str) -> tuple[float, float]:
    """Return u of the bench instrument that the words begin with, from the table's figures."""
    words = instrument.replace("-", " ")
    for row in TYPICAL.values():
        starts = (row["kind"].replace("_", " "), row["label"])
        if row["reads"] == kind and words.startswith(starts):
            parts = (
                row.get("max_permissible_error", 0.0) / ROOT3,
                row.get("zero_setting_error", 0.0) / ROOT3,
                row.get("repeatability", 0.0),
                row.get("resolution", 0.0) / (2.0 * ROOT3),
            )
            return math.hypot(*parts), row.get("relative_error", 0.0) / ROOT3
    return 0.0, 0.0
