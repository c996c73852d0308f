"""Whether what a composite is told in several fields agrees, within its uncertainty."""

from collections.abc import Collection, Iterator, Mapping, Sequence
from typing import Any

import numpy as np

from ringland_service.core.declare import Agreement, Operation
from ringland_service.core.errors import Contradiction, CoreError
from ringland_service.engine.known import Known, known_values, values
from ringland_service.engine.request import (
    Path,
    Request,
    on_inputs,
    present,
    stated_components,
)
from ringland_service.engine.response import DomainError


def insist_agree(calculation: Operation, request: Request) -> None:
    """Raise ``Refused`` with everything told in several fields that does not agree."""
    # Mostly one of the fields is not given, and no uncertainty need be gathered.
    due = [one for one in calculation.agreements if present(request.inputs, one.of)]
    if not due:
        return
    known = known_values(request.inputs, request.uncertainties)
    try:
        moved = on_inputs(stated_components(request))
    except CoreError as fault:
        raise DomainError([fault]) from fault
    found = [fault for agreement in due for fault in faults(agreement, known, moved)]
    if found:
        raise DomainError(found)


def faults(
    agreement: Agreement, known: Mapping[str, Known], moved: Mapping[Path, Any]
) -> list[Contradiction]:
    """Return the contradiction of a broken agreement, by the composite's own fields."""
    uncertainties = {name: _expanded(name, one, moved) for name, one in known.items()}
    uncertainties = {
        name: uncertainty for name, uncertainty in uncertainties.items() if uncertainty > 0.0
    }
    if not agreement.broken(values(known), uncertainties):
        return []
    named = [known[name].path for name in agreement.fields or agreement.of if name in known]
    first, *others = dict.fromkeys(".".join(map(str, path)) for path in named)
    return [Contradiction(first, agreement.message, agreement.right, tuple(others))]


def as_told(
    found: Sequence[CoreError],
    rests_on: Mapping[str, Collection[str]],
    known: Mapping[str, Known],
) -> Sequence[CoreError]:
    """Return the faults of a composite under the fields that were told.

    One that lies between results alone follows from what was told: where something told is
    refused, it says nothing more.

    Parameters
    ----------
    found : sequence of CoreError
    rests_on : mapping
        Names of the fields and results that each part rests on.
    known : mapping
        Fields by their names, results as ``part.result``.
    """

    def told(name: str) -> Iterator[str]:
        if not _worked_out(name, known):
            yield name
            return
        keys = sorted(rests_on.get(name.partition(".")[0], ()))
        paths = [".".join(map(str, known[key].path)) for key in keys if key in known]
        direct = [path for path in paths if not _worked_out(path, known)]
        for path in direct or paths:
            yield from told(path)

    of_told = [f for f in found if not all(_worked_out(n, known) for n in (f.field, *f.also))]
    for fault in of_told or found:
        names = [one for name in (fault.field, *fault.also) for one in told(name)]
        fault.field, *also = dict.fromkeys(names or [fault.field])
        fault.also = tuple(also)
    return of_told or found


def _worked_out(name: str, known: Mapping[str, Known]) -> bool:
    """Return whether the name is that of a result, as against a field."""
    return "." in name and name in known


def _expanded(name: str, one: Known, moved: Mapping[Path, Any]) -> float:
    """Return the expanded uncertainty (k = 2) of a field or a result; of a list, its largest."""
    if "." in name:
        stated = one.uncertainties.get((name.split(".")[1],))
        return 0.0 if stated is None else float(np.max(stated.uncertainty))
    of = [u for path, u in moved.items() if path[: len(one.path)] == one.path]
    return 2.0 * float(max((np.max(u) for u in of), default=0.0))
