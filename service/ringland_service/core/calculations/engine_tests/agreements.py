"""What a compression test may be told twice: it agrees within its uncertainty or is refused.

Each pair names both of its fields. A figure told twice agrees within the expanded uncertainty of
both together, or within the least difference that its readings can show where none is stated
(common practice, no source). Choices agree exactly.
"""

from ringland_service.core.declare import Agreement, Known
from ringland_service.core.declare.told_twice import (
    SHARE,
    Uncertainties,
    differ,
    of_one_engine,
    together,
)
from ringland_service.core.engines import condition
from ringland_service.core.metrology.conformity import beyond


def _volume(known: Known, uncertainties: Uncertainties, other: str) -> bool:
    least = SHARE * max(known["clearance_cc"], known[other])
    return differ(known, uncertainties, "clearance_cc", other, least)


def _clearance(result: str, *fields: str) -> Agreement:
    name = f"compression_ratio.{result}"
    return Agreement(
        ("clearance_cc", name),
        lambda known, uncertainties: _volume(known, uncertainties, name),
        "the clearance volume and its own parts make two different volumes",
        "volumes that agree within their uncertainty, or 1 %; or one way alone",
        fields=("clearance_cc", *fields),
    )


PARTS = ("chamber_cc", "gasket_bore_mm", "gasket_area_mm2", "gasket_thickness_mm", "deck_mm")
VOLUMES = (
    _clearance("clearance_cc", *PARTS, "burette_fill_cc"),
    _clearance("clearance_by_burette_cc", "burette_fill_cc"),
)


def _pressure_allowed(known: Known, uncertainties: Uncertainties, *names: str) -> float:
    repeat = 2.0 * float(known.get("repeatability_kpa_diff", 0.0))
    share = SHARE * max(abs(float(known["reading_kpa"])), 1.0)
    return max(together(uncertainties, *names), repeat, share)


def _last_stroke_differs(known: Known, uncertainties: Uncertainties) -> bool:
    allowed = _pressure_allowed(known, uncertainties, "reading_kpa", "stroke_readings_kpa")
    return bool(beyond(abs(known["reading_kpa"] - known["stroke_readings_kpa"][-1]), allowed))


def _of_no_cylinder(known: Known, uncertainties: Uncertainties) -> bool:
    """Return whether the reading is none of the cylinders', all of which are read."""
    taken = known["readings_kpa"]
    if len(taken) < known.get("cylinder_count", 0):
        return False
    allowed = _pressure_allowed(known, uncertainties, "reading_kpa", "readings_kpa")
    nearest = min(abs(known["reading_kpa"] - one) for one in taken)
    return bool(beyond(nearest, allowed))


READINGS = (
    Agreement(
        ("reading_kpa", "stroke_readings_kpa"),
        _last_stroke_differs,
        "the reading is not that of its last stroke",
        "the reading at which the strokes end; or the strokes alone",
    ),
    Agreement(
        ("reading_kpa", "readings_kpa"),
        _of_no_cylinder,
        "the reading is none of those of the cylinders",
        "the reading of one of the cylinders; or the readings alone",
    ),
    Agreement(
        ("readings_kpa", "cylinder_count"),
        lambda known, _: len(known["readings_kpa"]) > known["cylinder_count"],
        "more readings than the engine has cylinders",
        "one reading a cylinder, or the number of cylinders as it is",
    ),
)


ENGINE = (
    *(
        of_one_engine(rule.fields[0], rule.fields[1], broken, rule.message, rule.right)
        for rule, broken in zip(
            condition.ENGINE_RULES,
            (
                condition.decompressor_contradicts,
                lambda gear, cycle: condition.valve_gear_contradicts(cycle, gear),
                lambda kind, cycle: condition.decompressor_of_the_other_cycle(cycle, kind),
            ),
            strict=True,
        )
    ),
    of_one_engine(
        "decompressor_closes_deg",
        "decompressor",
        lambda _, kind: kind == "none",
        "there is no decompressor, and it closes at an angle",
        "the kind of decompressor, or no closing angle",
    ),
)
AGREEMENTS = (*ENGINE, *READINGS, *VOLUMES)
