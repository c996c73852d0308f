"""What the mark of a piston says of its oversize: carried along, compared, never taken for a size.

A mark without a unit may be millimetres or inches: +0.50 is 0.50 mm, +0.020 is 0.508 mm.
"""

import re

from ringland_service.core.metrology.conformity import beyond

UNIT_IN_MARK = re.compile(r"mm|in\b|inch|\"|″|thou", re.IGNORECASE)
OVERSIZE = re.compile(r"\+\s*([0-9]{0,3}\.?[0-9]{1,4})\s*(mm|inch|in\b|\"|″|thou)?", re.IGNORECASE)
MM_PER_INCH, MM_PER_THOU = 25.4, 0.0254
# A piston that differs by more from what its mark says is another one, or wrongly read
# (common practice, no source).
MOST_OFF_MARK_MM = 0.1


def oversizes_mm(mark: str) -> tuple[float, ...]:
    """Return the oversizes that a mark may mean, on the diameter [mm]; none where it says none."""
    found = OVERSIZE.search(mark)
    if found is None:
        return ()
    number, unit = float(found[1]), (found[2] or "").lower()
    if unit == "mm":
        return (number,)
    if unit == "thou":
        return (number * MM_PER_THOU,)
    return (number * MM_PER_INCH,) if unit else (number, number * MM_PER_INCH)


def off_its_mark(mark: str, piston_mm: float, nominal_bore_mm: float, clearance_mm: float) -> bool:
    """Return whether a piston measures otherwise than any oversize that its mark may mean.

    Parameters
    ----------
    mark : str
    piston_mm : float
        As measured [mm].
    nominal_bore_mm : float
        Bore of a standard piston [mm].
    clearance_mm : float
        Clearance wanted; the piston is smaller than its bore by about that [mm].
    """
    oversize = piston_mm + clearance_mm - nominal_bore_mm
    marked = oversizes_mm(mark)
    return bool(marked) and all(beyond(abs(oversize - one), MOST_OFF_MARK_MM) for one in marked)
