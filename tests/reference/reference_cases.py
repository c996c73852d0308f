"""Reading the reference cases: one TOML file a calculation, one case an outside or worked value."""

import tomllib
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Any

from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, Composite, input_fields
from ringland_service.core.declare.fields import (
    AnyQuantityField,
    Quantified,
    RecordsField,
    SectionField,
    UnitField,
    UnitGiven,
)
from ringland_service.core.declare.kinds import KINDS as QUANTITY_KINDS
from ringland_service.core.metrology.conformity import DEFAULT_RULE
from ringland_service.core.metrology.limits import Limit
from ringland_service.engine.request import Path as FieldPath
from ringland_service.engine.request import Request, Stated
from ringland_service.units import unit as measure

BY_NAME = {calculation.name: calculation for calculation in EVERY}
FOLDER = Path(__file__).parent
KINDS = ("published", "derived", "independent", "common_practice", "pinned")


@dataclass(frozen=True)
class Case:
    """One reference case, in canonical units and core names.

    A quantity of any kind is a table of ``value``, ``unit`` and ``kind``; a unit of any kind one
    of ``unit`` and ``kind``. ``refused`` is a pattern of the refusal that a case must meet instead
    of an answer. ``probability`` is of conforming, per check, to 6 digits.
    """

    calculation: str
    kind: str
    name: str
    source: str
    inputs: dict[str, Any]
    expect: dict[str, Any] = field(default_factory=dict)
    verdicts: dict[str, str] = field(default_factory=dict)
    probability: dict[str, float] = field(default_factory=dict)
    uncertainty: dict[str, float] = field(default_factory=dict)
    limits: dict[str, dict[str, Any]] = field(default_factory=dict)
    warnings: dict[str, list[str]] = field(default_factory=dict)
    refused: str = ""
    rule: str = DEFAULT_RULE
    relative: float = 1e-9
    absolute: float = 1e-9

    def __str__(self) -> str:
        return f"{self.calculation}: {self.name}"

    @property
    def declaration(self) -> Calculation | Composite:
        """The calculation that the case asks."""
        found = BY_NAME[self.calculation]
        assert isinstance(found, (Calculation, Composite))
        return found

    def request(self) -> Request:
        """The case as a question to the engine."""
        return Request(
            inputs=filled(self.declaration.inputs, self.inputs),
            uncertainties={path_of(n): Stated(uncertainty=u) for n, u in self.uncertainty.items()},
            limits={check: Limit(**sides) for check, sides in self.limits.items()},
            rule=self.rule,
        )


def path_of(name: str) -> FieldPath:
    """Return the path of a dotted name: ``pistons.0.size_mm`` leads into a list of records."""
    return tuple(int(key) if key.isdecimal() else key for key in name.split("."))


def filled(record: type, values: dict[str, Any]) -> Any:
    """Return a record of the values: lists as tuples or records, tables as sections."""
    known = input_fields(record)
    return record(**{name: _value(known[name], value) for name, value in values.items()})


def _value(declared_field: Any, value: Any) -> Any:
    if isinstance(declared_field, SectionField):
        return filled(declared_field.record, value)
    if isinstance(declared_field, RecordsField):
        return tuple(filled(declared_field.record, one) for one in value)
    if isinstance(declared_field, AnyQuantityField):
        return quantified(**value)
    if isinstance(declared_field, UnitField):
        return unit_given(**value)
    if isinstance(value, list):
        return tuple(None if v == "absent" else _number(v) for v in value)
    return _number(value)


def unit_given(unit: str, kind: str) -> UnitGiven:
    """Return a unit as the door understands it."""
    found = measure(QUANTITY_KINDS[kind], unit)
    return UnitGiven(unit, QUANTITY_KINDS[kind], found.ratio, found.offset, found.origin)


def quantified(value: float, unit: str, kind: str) -> Quantified:
    """Return a quantity of any kind as the door understands it."""
    found = measure(QUANTITY_KINDS[kind], unit)
    return Quantified(found.to_canonical(float(value)), unit_given(unit, kind), float(value))


def shown(quantity: Quantified) -> float:
    """Return the number of a quantity in its own unit."""
    return float(measure(quantity.kind, quantity.unit.symbol).from_canonical(quantity.value))


def _number(value: Any) -> Any:
    """Return a number as a float, as the door makes it; a count stays whole there too."""
    return float(value) if isinstance(value, int) and not isinstance(value, bool) else value


def files() -> list[Path]:
    """Return the files of cases."""
    return sorted(FOLDER.glob("*.toml"))


@cache
def cases() -> list[Case]:
    """Return all cases of all files; they are read once, for nobody changes them."""
    found = []
    for path in files():
        data = tomllib.loads(path.read_text("utf-8"))
        found += [Case(calculation=data["calculation"], **case) for case in data["case"]]
    return found
