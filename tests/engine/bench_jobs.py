"""Whole jobs of invented engines, read with one set of instruments that all their parts share.

The same seed gives the same job. Which readings name an instrument, state an uncertainty or state
none is drawn as well.
"""

from collections.abc import Mapping
from random import Random
from typing import Any

from worn_engines import worn_engine

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import input_fields
from ringland_service.core.declare.fields import (
    Field,
    QuantityField,
    ReadingsField,
    RecordsField,
    SectionField,
)

Json = dict[str, Any]
CARD = BY_NAME["job-card"]
# What a field says of the uncertainty of others, which state none then: it would be told twice.
SAID_BY = {
    "gauge_error_pct": ("reading_kpa", "readings_kpa", "stroke_readings_kpa"),
    "weather_kpa_diff": ("altitude_m",),
    "leak_gauge_error_pct": ("supply_pressure_kpa", "cylinder_pressure_kpa"),
    "solder_uncertainty_mm": ("solder_mm",),
    "clay_uncertainty_mm": ("clay_intake_mm", "clay_exhaust_mm"),
}
# Which instruments of the bench read a kind of quantity; the last one what is below 5 mm.
READERS = {
    "length": ("bore gauge", "micrometer", "calliper", "feeler"),
    "volume": ("burette",),
    "angle": ("degree wheel",),
    "pressure_gauge": ("pressure gauge",),
}
SMALL_MM = 5.0
FIGURES = {
    "calliper": (0.006, "mm"),
    "feeler": (0.003, "mm"),
    "burette": (0.02, "cc"),
    "degree wheel": (0.5, "deg"),
    "pressure gauge": (2.0, "%"),
}


def bench_job(seed: int) -> Json:
    """Return a job card's request."""
    chance = Random(seed)
    sections = worn_engine(chance)
    named = {name for values in sections.values() for name in values}
    bench = _Bench(chance, {one for name in named for one in SAID_BY.get(name, ())})
    found = {
        name: bench.told(section.record, sections[name])
        for name, section in input_fields(CARD.inputs).items()
        if isinstance(section, SectionField) and name in sections
    }
    return {**found, "measuring": bench.measuring()}


class _Bench:
    """The instruments of a bench, and how each reading of a job was taken."""

    def __init__(self, chance: Random, elsewhere: set[str]) -> None:
        self.chance, self.elsewhere = chance, elsewhere

    def measuring(self) -> Json:
        """Return the instruments, and perhaps the uncertainty of temperatures."""
        described = [
            {"id": name, "max_permissible_error": {"value": value, "unit": unit}}
            for name, (value, unit) in FIGURES.items()
        ]
        micrometer = {"id": "micrometer", "kind": "outside_micrometer"}
        found: Json = {"instruments": [micrometer, self._bore_gauge(), *described]}
        found["readings_each"] = self.chance.randint(1, 5)
        if self.chance.random() < 0.6:
            kelvin = round(self.chance.uniform(0.3, 2.0), 2)
            found["temperature_uncertainty"] = {"value": kelvin, "unit": "K"}
        return found

    def _bore_gauge(self) -> Json:
        """Return a gauge of its kind, or with its own figures, perhaps set in the micrometer."""
        if self.chance.random() < 0.4:
            return {"id": "bore gauge", "kind": "bore_gauge"}
        error = round(self.chance.uniform(0.001, 0.004), 4)
        figures = {"max_permissible_error": error, "zero_setting_error": 0.002}
        figures |= {"repeatability": 0.001, "resolution": 0.001}
        if self.chance.random() < 0.5:
            figures["short_range_error"] = error / 3.0
        told = {name: {"value": value, "unit": "mm"} for name, value in figures.items()}
        set_in = {"zero_set_in": "micrometer"} if self.chance.random() < 0.7 else {}
        return {"id": "bore gauge", **told, **set_in}

    def told(self, record: type, values: Mapping[str, Any]) -> Json:
        """Return a record as it is told: quantities with their units and how they were read."""
        known = input_fields(record)
        return {known[n].public(n): self._one(n, known[n], v) for n, v in values.items()}

    def _one(self, name: str, field: Field, value: Any) -> Any:
        if isinstance(field, SectionField):
            return self.told(field.record, value)
        if isinstance(field, RecordsField):
            return [self.told(field.record, one) for one in value]
        if not isinstance(field, QuantityField):
            return value
        several = "values" if isinstance(field, ReadingsField) else "value"
        return {several: value, "unit": field.type.kind.unit, **self._read(name, field, value)}

    def _read(self, name: str, field: QuantityField, value: Any) -> Json:
        """Return the instrument that took a reading, or its uncertainty, or neither."""
        if field.exact or name in self.elsewhere:
            return {}
        least = min(map(abs, value)) if isinstance(value, list) else abs(value)
        readers = READERS.get(field.type.kind.name, ())
        if field.type.kind.name == "length":
            readers = readers[-1:] if least < SMALL_MM else readers[:-1]
        drawn = self.chance.random()
        if drawn < 0.6 and readers:
            return {"instrument": self.chance.choice(readers)}
        if drawn < 0.8:
            most = 0.02 * field.type.most_uncertainty(least)
            return {"uncertainty": min(most, 0.01) if "length" in field.type.kind.name else most}
        return {}
