"""Whether what a composite is told in several fields agrees, within its uncertainty."""

from collections.abc import Mapping
from typing import Any

import numpy as np

from ringland_service.core.declare import Agreement, Declared
from ringland_service.core.errors import Contradiction, CoreError
from ringland_service.engine.answer import Refused
from ringland_service.engine.known import Known, known_values, values
from ringland_service.engine.question import (
    Path,
    Question,
    on_inputs,
    present,
    stated_influences,
)


def insist_agree(calculation: Declared, question: Question) -> None:
    """Raise ``Refused`` with everything told in several fields that does not agree."""
    # Mostly one of the fields is not given, and no uncertainty need be gathered.
    due = [one for one in calculation.agreements if present(question.inputs, one.of)]
    if not due:
        return
    known = known_values(question.inputs, question.doubts)
    try:
        moved = on_inputs(stated_influences(question))
    except CoreError as fault:
        raise Refused([fault]) from fault
    found = [fault for agreement in due for fault in faults(agreement, known, moved)]
    if found:
        raise Refused(found)


def faults(
    agreement: Agreement, known: Mapping[str, Known], moved: Mapping[Path, Any]
) -> list[Contradiction]:
    """Return the contradiction of a broken agreement, by the composite's own fields."""
    doubts = {name: _expanded(name, one, moved) for name, one in known.items()}
    doubts = {name: doubt for name, doubt in doubts.items() if doubt > 0.0}
    if not agreement.broken(values(known), doubts):
        return []
    named = [known[name].path for name in agreement.fields or agreement.of if name in known]
    first, *others = dict.fromkeys(".".join(map(str, path)) for path in named)
    return [Contradiction(first, agreement.message, agreement.right, tuple(others))]


def _expanded(name: str, one: Known, moved: Mapping[Path, Any]) -> float:
    """Return the expanded uncertainty (k = 2) of a field or a result; of a list, its largest."""
    if "." in name:
        stated = one.doubts.get((name.split(".")[1],))
        return 0.0 if stated is None else float(np.max(stated.uncertainty))
    of = [u for path, u in moved.items() if path[: len(one.path)] == one.path]
    return 2.0 * float(max((np.max(u) for u in of), default=0.0))
