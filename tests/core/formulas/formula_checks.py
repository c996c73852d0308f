"""What the tests of the formulas share: outside tables, drawn columns, a numeric slider-crank."""

import csv
from math import cos, hypot, radians, sin
from pathlib import Path

from hypothesis import strategies as st
from scipy.optimize import brentq

DATA = Path(__file__).resolve().parents[2] / "reference" / "data"


def rows(file_name: str, table: int = 0) -> list[dict[str, str]]:
    """Rows of one table of an outside data file; a comment line amid the rows starts the next."""
    tables: list[list[str]] = [[]]
    for line in (DATA / file_name).read_text(encoding="utf-8").splitlines():
        if not line.startswith("#"):
            tables[-1].append(line)
        elif tables[-1]:
            tables.append([])
    return list(csv.DictReader(tables[table]))


def number(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high, allow_nan=False, allow_infinity=False)


def piston_height_mm(radius: float, rod: float, offset: float, angle_deg: float) -> float:
    """Height of the pin above the crank axis, found as a root: the rod keeps its length."""
    across = radius * sin(radians(angle_deg)) - offset
    crank_height = radius * cos(radians(angle_deg))

    def stretch(height: float) -> float:
        return hypot(across, height - crank_height) - rod

    return float(brentq(stretch, crank_height, crank_height + rod + 1, xtol=1e-13, rtol=1e-15))
