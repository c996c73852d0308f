"""What a composite knows: its own fields by name in any section, and the results of its parts."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from ringland_service.core.declare import Step, asked, declared
from ringland_service.core.declare.fields import SectionField
from ringland_service.engine.answer import Answer
from ringland_service.engine.question import Path, Stated

# By component of the uncertainty, by place inside a value: the contribution of one standard
# uncertainty of that component, with its sign.
Carried = Mapping[str, Mapping[Path, float]]
CarriedBy = Mapping[str, Carried]


@dataclass(frozen=True)
class Known:
    """A value that a part can take, with its doubt, what that leaves out, and its origin.

    ``carried`` is how each component of the uncertainty moves it, ``carried.py``.
    """

    value: Any
    path: Path
    doubts: Mapping[Path, Stated] = field(default_factory=dict)
    left_out: Mapping[str, Any] = field(default_factory=dict)
    carried: Carried = field(default_factory=dict)


def known_values(inputs: Any, doubts: Mapping[Path, Stated], path: Path = ()) -> dict[str, Known]:
    """Return the values given, by field name; the fields of a section by their own names too."""
    found: dict[str, Known] = {}
    record: type = type(inputs)
    for name, f in asked(record).items():
        value = getattr(inputs, name)
        if value is None:
            continue
        here = (*path, name)
        stated = {p[len(path) :]: d for p, d in doubts.items() if p[: len(here)] == here}
        found[name] = Known(value, here, stated)
        if isinstance(f, SectionField):
            found |= known_values(value, doubts, here)
    return found


def paths(record: type, path: Path = ()) -> dict[str, Path]:
    """Return where each field of a record, or of its sections, stands."""
    found: dict[str, Path] = {}
    for name, f in asked(record).items():
        found[name] = (*path, name)
        if isinstance(f, SectionField):
            found |= paths(f.record, (*path, name))
    return found


def values(known: Mapping[str, Known]) -> dict[str, Any]:
    """Return the bare values by name."""
    return {name: k.value for name, k in known.items()}


def sources_of(step: Step, name: str) -> tuple[str, ...]:
    """Return where a part's field may come from, best first."""
    return step.sources.get(name, (name,))


def source_key(step: Step, name: str, known: Mapping[str, Known]) -> str | None:
    """Return the name of the best known source of a part's field."""
    return next((s for s in sources_of(step, name) if s in known), None)


def results_of(step: Step, part: Answer, carried: CarriedBy) -> dict[str, Known]:
    """Return a part's results as sources for later parts, under ``part.result``.

    ``carried`` is what moves each result, by its name.
    """
    found: dict[str, Known] = {}
    for name in declared(step.calculation.outputs):
        value = getattr(part.outputs, name)
        if value is not None:
            u = part.u.get(name)
            doubts: dict[Path, Stated] = {}
            if u is not None:
                doubts[(name,)] = Stated(uncertainty=2.0 * u)
            found[f"{step.part}.{name}"] = Known(
                value,
                (step.part, name),
                doubts,
                part.left_out.get(name, {}),
                carried.get(name, {}),
            )
    return found
