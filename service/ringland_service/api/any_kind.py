"""Quantities of any kind in one record: settle the one kind that they share."""

from collections.abc import Mapping
from typing import Any

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.quantity_fields import AnyRead, UnitRead
from ringland_service.core.declare import asked
from ringland_service.core.fields import Quantified, UnitGiven
from ringland_service.core.kinds import KINDS, Kind
from ringland_service.engine.question import Path, Stated
from ringland_service.units import spoken, unit
from ringland_service.vocabulary import AMBIGUOUS

PRESSURES = {"pressure_gauge", "pressure_absolute"}


def settle_kinds(record: type, values: dict[str, Any], doubts: dict[Path, Stated]) -> None:
    """Put quantities and units of one kind in the place of those whose kind is open.

    The kind is the one that the record's ``kind`` names, else the first that all share. Gauge
    and absolute pressure may stand side by side: the arithmetic takes them to each other.

    Raises
    ------
    Faulty
        Where they share no kind.
    """
    open_ = {n: v for n, v in values.items() if isinstance(v, (AnyRead, UnitRead))}
    if not open_:
        return
    for name, kind in _settled(record, open_, values.get("kind")).items():
        read = open_[name]
        measure = unit(kind, read.symbol)
        given = UnitGiven(read.symbol, kind, measure.ratio, measure.offset)
        if isinstance(read, UnitRead):
            values[name] = given
            continue
        values[name] = Quantified(measure.to_canonical(read.number), given, read.number)
        if read.uncertainty is not None:
            doubts[(name,)] = Stated(uncertainty=read.uncertainty * measure.factor)


def _settled(
    record: type, open_: Mapping[str, AnyRead | UnitRead], wanted: str | None
) -> dict[str, Kind]:
    shared = [k for k in KINDS.values() if all(k in read.kinds for read in open_.values())]
    if wanted is not None:
        shared = [kind for kind in shared if kind.name == wanted]
    if shared:
        return dict.fromkeys(open_, shared[0])
    pressures = {n: [k for k in read.kinds if k.name in PRESSURES] for n, read in open_.items()}
    if wanted is None and all(pressures.values()):
        return {name: kinds[0] for name, kinds in pressures.items()}
    raise Faulty([_no_kind(record, open_, wanted)])


def _no_kind(record: type, open_: Mapping[str, AnyRead | UnitRead], wanted: str | None) -> Fault:
    names = [asked(record)[name].public(name) for name in open_]
    listed = " and ".join(names)
    kind = spoken(KINDS[wanted]) if wanted else "one kind"
    symbols = dict.fromkeys(read.symbol for read in open_.values())
    hints = "".join(f"; {s}: {AMBIGUOUS[s]}" for s in symbols if s in AMBIGUOUS)
    detail = f"{listed}: not all quantities of {kind}{hints}"
    return Fault("kinds_differ", detail, None, 422, f"/{names[0]}")
