"""Quantities of any kind in one record: settle the one kind that they share."""

from collections.abc import Mapping, Sequence
from typing import Any

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading.hints import MARKED
from ringland_service.api.reading.quantity_fields import AnyRead, UnitRead
from ringland_service.core.declare import asked
from ringland_service.core.declare.fields import Quantified, UnitGiven
from ringland_service.core.declare.kinds import KINDS, Kind
from ringland_service.core.declare.significant import as_written
from ringland_service.engine.question import Path, Stated
from ringland_service.units import canonical_symbols, spoken, unit
from ringland_service.vocabulary import AMBIGUOUS

PRESSURES = frozenset({"pressure_gauge", "pressure_absolute"})
TEMPERATURES = frozenset({"temperature", "temperature_difference"})


def settle_kinds(record: type, values: dict[str, Any], doubts: dict[Path, Stated]) -> None:
    """Put quantities and units of one kind in the place of those whose kind is open.

    The kind is the one that the record's ``kind`` names, else the first that all share. Gauge
    and absolute pressure may stand side by side: the arithmetic takes them to each other.

    Raises
    ------
    Faulty
        Where they share no kind.
    """
    # In the declared order, so that a refusal does not hang on the order of a set.
    given = {n: values[n] for n in asked(record) if n in values}
    open_ = {n: v for n, v in given.items() if isinstance(v, (AnyRead, UnitRead))}
    if not open_:
        return
    for name, kind in _settled(record, open_, values.get("kind")).items():
        read = open_[name]
        measure = unit(kind, read.symbol)
        told = UnitGiven(
            read.symbol,
            kind,
            measure.ratio,
            measure.offset,
            measure.origin,
            values.get("kind") is None and _taken(read, kind, list(open_.values())),
            {k.name: unit(k, read.symbol).ratio for k in read.kinds},
        )
        if isinstance(read, UnitRead):
            values[name] = told
            continue
        values[name] = Quantified(measure.to_canonical(read.number), told, read.number)
        if read.uncertainty is not None:
            exact = as_written(read.uncertainty) * measure.ratio
            doubts[(name,)] = Stated(uncertainty=float(exact), exact=exact)


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


def _taken(read: AnyRead | UnitRead, kind: Kind, all_: Sequence[AnyRead | UnitRead]) -> bool:
    """Return whether a symbol left its kind open, so that the units beside it decided."""
    if kind.name in PRESSURES:
        firm = any(r.symbol in MARKED or _pressures(r) == {"pressure_absolute"} for r in all_)
        unlike = any(_pressures(r) != _pressures(read) for r in all_)
        return firm and unlike and read.symbol not in MARKED
    if kind.name == "temperature":
        open_ = all({k.name for k in r.kinds} >= TEMPERATURES for r in all_)
        return open_ and len({unit(kind, r.symbol).symbol for r in all_}) > 1
    return False


def _pressures(read: AnyRead | UnitRead) -> frozenset[str]:
    return PRESSURES & {kind.name for kind in read.kinds}


def _no_kind(record: type, open_: Mapping[str, AnyRead | UnitRead], wanted: str | None) -> Fault:
    names = [asked(record)[name].public(name) for name in open_]
    listed = " and ".join(names)
    kind = KINDS[wanted] if wanted else next(iter(open_.values())).kinds[0]
    each = ", ".join(
        f"{read.symbol} is {' or '.join(map(spoken, read.kinds))}"
        for read in {r.symbol: r for r in open_.values()}.values()
    )
    right = f"units of {spoken(kind)}: {', '.join(canonical_symbols(kind))}"
    symbols = dict.fromkeys(read.symbol for read in open_.values())
    hints = "".join(f"; {s}: {AMBIGUOUS[s]}" for s in symbols if s in AMBIGUOUS)
    of = spoken(kind) if wanted else "one kind"
    detail = f"{listed}: not all quantities of {of}: {each}; write all in {right}{hints}"
    return Fault("kinds_differ", detail, right, 422, f"/{names[0]}")
