"""The kinds of quantity, each with its canonical unit and the suffix that names carry.

A kind is more than a dimension: torque is not energy, a temperature difference is not a
temperature, gauge pressure is not absolute pressure. Which unit symbols a kind accepts stands
in ``units.py``; here only the canonical unit and the one used by ``units=us``.
"""

from dataclasses import dataclass


@dataclass(frozen=True)
class Kind:
    """A kind of quantity.

    Attributes
    ----------
    name : str
        Token on the wire.
    unit : str
        Canonical unit: what the core computes in and what answers carry by default.
    suffix : str
        Suffix of names in the core (``bore_mm``); the public name drops it.
    us : str
        Unit of answers under ``units=us``.
    """

    name: str
    unit: str
    suffix: str
    us: str


LENGTH = Kind("length", "mm", "_mm", "in")
ALTITUDE = Kind("altitude", "m", "_m", "ft")
AREA = Kind("area", "mm2", "_mm2", "in2")
VOLUME = Kind("volume", "cc", "_cc", "in3")
LIQUID = Kind("liquid", "mL", "_ml", "floz_us")
FUEL = Kind("fuel", "L", "_l", "gal_us")
PRESSURE_GAUGE = Kind("pressure_gauge", "kPa", "_kpa", "psi")
PRESSURE_ABSOLUTE = Kind("pressure_absolute", "kPa", "_kpa_abs", "psi")
PRESSURE_DIFFERENCE = Kind("pressure_difference", "kPa", "_kpa_diff", "psi")
STRESS = Kind("stress", "MPa", "_mpa", "psi")
TORQUE = Kind("torque", "N.m", "_nm", "lbf.ft")
FORCE = Kind("force", "N", "_n", "lbf")
TEMPERATURE = Kind("temperature", "degC", "_c", "degF")
TEMPERATURE_DIFFERENCE = Kind("temperature_difference", "K", "_k", "degF")
MASS = Kind("mass", "g", "_g", "oz")
SPRING_RATE = Kind("spring_rate", "N/mm", "_n_per_mm", "lbf/in")
ROTATION = Kind("rotation", "rpm", "_rpm", "rpm")
VELOCITY = Kind("velocity", "m/s", "_m_s", "ft/s")
ANGLE = Kind("angle", "deg", "_deg", "deg")
EXPANSION = Kind("expansion", "1/K", "_per_k", "1/degF")
VOLTAGE = Kind("voltage", "V", "_v", "V")
PERCENT = Kind("percent", "%", "_pct", "%")

KINDS: dict[str, Kind] = {
    kind.name: kind
    for kind in (
        LENGTH,
        ALTITUDE,
        AREA,
        VOLUME,
        LIQUID,
        FUEL,
        PRESSURE_GAUGE,
        PRESSURE_ABSOLUTE,
        PRESSURE_DIFFERENCE,
        STRESS,
        TORQUE,
        FORCE,
        TEMPERATURE,
        TEMPERATURE_DIFFERENCE,
        MASS,
        SPRING_RATE,
        ROTATION,
        VELOCITY,
        ANGLE,
        EXPANSION,
        VOLTAGE,
        PERCENT,
    )
}


def public_name(name: str, kind: Kind | None) -> str:
    """Return the name on the wire: the core's name less its unit suffix."""
    return name.removesuffix(kind.suffix) if kind else name
