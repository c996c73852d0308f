"""What a schema has read, understood: records of canonical values, and the doubts stated."""

from ringland_service.api.reading.any_kind import settle_kinds
from ringland_service.api.shapes.base import Understood
from ringland_service.api.shapes.quantity_checks import Read
from ringland_service.api.shapes.registry import adapters
from ringland_service.api.shapes.schema import within
from ringland_service.engine.question import Path, Stated


def understand(record: type, loaded: dict[str, object]) -> Understood:
    """Return the record of canonical values, and the doubts stated with them, by path.

    Raises
    ------
    Faulty
        Where quantities of any kind are not of one kind.
    """
    values, doubts = understand_some(record, loaded)
    return record(**values), doubts


def understand_some(
    record: type, loaded: dict[str, object]
) -> tuple[dict[str, object], dict[Path, Stated]]:
    """Return the canonical values of the fields given, and their doubts, as ``understand``."""
    doubts: dict[Path, Stated] = {}
    values: dict[str, object] = {}
    # In the order of the declaration, so that what is said of several follows from it.
    for name, asked in adapters(record).items():
        if name not in loaded:
            continue
        value = loaded[name]
        if isinstance(value, Read):
            values[name] = value.value
            if value.stated is not None:
                doubts[(name,)] = value.stated
        else:
            public = asked.field.public(name)
            values[name], inner = within(public, asked.understood, value, understand)
            doubts |= {(name, *path): stated for path, stated in inner.items()}
    settle_kinds(record, values, doubts)
    return values, doubts
