"""Every common-practice figure of the core, and a way to change them for a while.

What changes with them rests on them: with ``defaults: off`` nothing may, and with it on something
must, or the figure would be in no arithmetic at all.
"""

import dataclasses
from collections.abc import Callable, Iterable, Iterator
from contextlib import ExitStack, contextmanager
from importlib import import_module
from typing import Any
from unittest import mock

from ringland_service.core.calculations import EVERY
from ringland_service.core.calculations.diagnosis.tables import FIGURES
from ringland_service.core.declare import Calculation, defaults
from ringland_service.core.declare.usual import Usual, UsualShares, usual
from ringland_service.core.engines.materials import MATERIALS
from ringland_service.core.metrology.instruments import TYPICAL
from ringland_service.core.metrology.limits import GRADES, LIMITS

TIMES = 1.3
COMMON = "common_practice"
# Constants of modules, each common practice by its own comment or basis. Where a module takes one
# over by name, it is changed there.
CONSTANTS: tuple[tuple[str, str], ...] = (
    ("calculations.assembly._thread", "NUT_FACTOR"),
    ("calculations.assembly.run_in", "USUAL_FRACTIONS"),
    ("calculations.order_card.order_choices", "PORT_CHAMFER_MM"),
    ("calculations.order_card.order_choices", "PORT_CHAMFER_DEG"),
    ("calculations.order_card.order_choices", "BRIDGE_RELIEF_MM"),
    ("calculations.order_card.order_choices", "MOUTH_CHAMFER_MM"),
    ("calculations.order_card.order_choices", "MOUTH_CHAMFER_DEG"),
    ("calculations.order_card.order_choices", "HONE_STOCK_MM"),
    ("calculations.order_card.order_choices", "LIGHT_REMOVAL_MM"),
    ("calculations.order_card.order_choices", "FINE_STOCK_MM"),
    ("calculations.decision.hone_and_re_ring", "LIGHT_REMOVAL_MM"),
    ("calculations.geometry._squish_gaskets", "SOLDER_UNCERTAINTY_MM"),
    ("calculations.geometry._squish_gaskets", "OVER_FLOOR_MM"),
    ("calculations.head.cam_check", "LOSS_PER_DEG_MM"),
    ("formulas.cranking", "OIL_SHARE_OF_CLEARANCE"),
    ("formulas.cranking", "LEAST_OIL_ML"),
    ("formulas.cranking", "MOST_OIL_ML"),
)
Change = Callable[[], Any]


def scaled(value: Any) -> Any:
    """Return a figure changed; shares that rise to one still do."""
    if isinstance(value, UsualShares):
        return usual(tuple(v if v == 1.0 else 0.8 * v for v in value))
    if isinstance(value, tuple):
        return tuple(v if v == 1.0 else 0.8 * v for v in value)
    if isinstance(value, dict):
        return {name: TIMES * v for name, v in value.items()}
    if isinstance(value, Usual):
        return usual(int(value) + 1) if isinstance(value, int) else usual(1.04 * float(value))
    return None if value is None else TIMES * value


def _row(table: dict[str, Any], name: str, **sides: Any) -> Change:
    return lambda: mock.patch.dict(table, {name: dataclasses.replace(table[name], **sides)})


def limits() -> dict[str, Change]:
    """Return a change of each row of the table of limits that is common practice."""
    rows = {name: row for name, row in LIMITS.items() if row.standing == COMMON}
    return {
        f"limits {name}": _row(LIMITS, name, low=scaled(row.low), high=scaled(row.high))
        for name, row in rows.items()
    }


def _steps(grade: Any) -> tuple[dict[str, Any], ...]:
    return tuple(
        {k: v if k == "word" else 0.5 * v if v < 1.2 else TIMES * v for k, v in step.items()}
        for step in grade.steps
    )


def grades() -> dict[str, Change]:
    """Return a change of each ladder of grading words."""
    return {f"grades {n}": _row(GRADES, n, steps=_steps(g)) for n, g in GRADES.items()}


def materials() -> dict[str, Change]:
    """Return a change of each expansion that is common practice; the kinds of bore follow it."""
    by_kind = import_module("ringland_service.core.engines.materials")._BY_BORE_KIND
    found: dict[str, Change] = {}
    for name, row in MATERIALS.items():
        if row.standing == COMMON:
            changed = dataclasses.replace(row, alpha=TIMES * row.alpha)
            kinds = dict.fromkeys(row.bore_kinds, changed)
            found[f"materials {name}"] = lambda kinds=kinds: mock.patch.dict(by_kind, kinds)
    return found


def instruments() -> dict[str, Change]:
    """Return a change of each kind of instrument."""
    told = {"kind", "label", "reads"}
    return {
        f"instruments {kind}": _row_of(
            row, {k: TIMES * v + 0.001 for k, v in row.items() if k not in told}
        )
        for kind, row in TYPICAL.items()
    }


def _row_of(row: dict[str, Any], changed: dict[str, Any]) -> Change:
    return lambda: mock.patch.dict(row, changed)


def figures() -> dict[str, Change]:
    """Return a change of each figure of the diagnosis."""
    return {
        f"diagnosis {name}": _row(FIGURES, name, value=0.7 * figure.value)
        for name, figure in FIGURES.items()
    }


def defaults_of_fields() -> dict[str, Change]:
    """Return a change of each default of a field that is marked as common practice."""
    found: dict[str, Change] = {}
    for calculation in EVERY:
        for name, value in defaults(calculation.inputs).items():
            if isinstance(value, Usual):
                told = calculation.inputs.__init__.__kwdefaults__  # type: ignore[misc]
                found[f"default {calculation.name}.{name}"] = _row_of(told, {name: scaled(value)})
    return found


def constants() -> dict[str, Change]:
    """Return a change of each constant of a module."""
    found: dict[str, Change] = {}
    for path, name in CONSTANTS:
        module = import_module(f"ringland_service.core.{path}")
        value = scaled(getattr(module, name))
        found[f"constant {path}.{name}"] = lambda m=module, n=name, v=value: mock.patch.object(
            m, n, v
        )
    return found


CHANGES: dict[str, Change] = {
    **limits(),
    **grades(),
    **materials(),
    **instruments(),
    **figures(),
    **defaults_of_fields(),
    **constants(),
}


@contextmanager
def changed(names: Iterable[str]) -> Iterator[None]:
    """Change the named figures, and put them back."""
    with ExitStack() as stack:
        for name in names:
            stack.enter_context(CHANGES[name]())
        yield


def plain() -> list[Calculation]:
    """Return every calculation that is not put together of others."""
    return [c for c in EVERY if isinstance(c, Calculation)]
