"""The vocabularies of the order card, and the figures that shops use where none is given."""

from ringland_service.core.metrology.limits import LIMITS

BORE_AND_HONE, HONE, LIGHT_HONE, SLEEVE, REPLATE, HEADS_ONLY = (
    "bore_and_hone",
    "hone",
    "light_hone",
    "sleeve",
    "replate",
    "heads_only",
)
WORK: dict[str, str] = {
    BORE_AND_HONE: "bore, and hone to the finish limits",
    HONE: "hone to the finish limits, no boring",
    LIGHT_HONE: "light hone for new rings, the bore keeps its size",
    SLEEVE: "fit an iron sleeve, then bore and hone it",
    REPLATE: "replate, and finish by the plating maker's method",
    HEADS_ONLY: "work on the head alone",
}
BORED = (BORE_AND_HONE, SLEEVE)
BORING_CENTRE: dict[str, str] = {
    "unworn_bottom": "on the unworn bottom of the bore",
    "existing_centre": "on the existing centre of the worn bore",
    "true_up": "true up: square to the base face and on the centre of the spigot",
}
HONED: dict[str, str] = {
    "cold": "cold, at room temperature",
    "hot": "hot, with hot coolant going round",
}
PLATED = ("plated_aluminium", "chromed")

# All below: common practice, no source.
PORT_CHAMFER_MM = (0.3, 0.5)
PORT_CHAMFER_DEG = (30.0, 45.0)
BRIDGE_RELIEF_MM = (0.03, 0.08)
MOUTH_CHAMFER_MM = (0.5, 1.0)
MOUTH_CHAMFER_DEG = (30.0,)
HONE_STOCK_MM = (0.05, 0.10)
LIGHT_REMOVAL_MM = 0.010
FINE_STOCK_MM = (0.01, 0.02)


def usual_form_mm(what: str) -> float | None:
    """Return the usual limit of ``out_of_round`` or ``taper`` of a finished bore."""
    return LIMITS[f"returned.{what}"].high


def usual_angle_deg(cycle: str | None) -> tuple[float, float] | None:
    """Return the usual limits of the included angle of a crosshatch."""
    if cycle is None:
        return None
    row = LIMITS[f"crosshatch.{cycle}"]
    return row.low or 0.0, row.high or 0.0


def usual_wall_mm(liner_kind: str | None) -> float | None:
    """Return the wall that shops leave of a kind of liner."""
    return None if liner_kind is None else LIMITS[f"liner_wall.{liner_kind}"].low


def least_gasket_room_mm() -> float:
    """Return by how much a gasket's bore must clear the cylinder, on each side."""
    return LIMITS["gasket_overlap"].low or 0.0
