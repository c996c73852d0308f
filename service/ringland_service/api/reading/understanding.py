"""What a schema has read, parsed: records of canonical values, and the uncertainties stated."""

from ringland_service.api.reading.any_kind import settle_kinds
from ringland_service.api.shapes.base import Parsed
from ringland_service.api.shapes.quantity_checks import Read
from ringland_service.api.shapes.registry import adapters
from ringland_service.api.shapes.schema import within
from ringland_service.engine.request import Path, Stated


def understand(record: type, loaded: dict[str, object]) -> Parsed:
    """Return the record of canonical values, and the uncertainties stated with them, by path.

    Raises
    ------
    Faulty
        Where quantities of any kind are not of one kind.
    """
    values, uncertainties = understand_some(record, loaded)
    return record(**values), uncertainties


def understand_some(
    record: type, loaded: dict[str, object]
) -> tuple[dict[str, object], dict[Path, Stated]]:
    """Return the canonical values of the fields given and uncertainties, as ``understand``."""
    uncertainties: dict[Path, Stated] = {}
    values: dict[str, object] = {}
    # In the order of the declaration, so that what is said of several follows from it.
    for name, shape in adapters(record).items():
        if name not in loaded:
            continue
        value = loaded[name]
        if isinstance(value, Read):
            values[name] = value.value
            if value.stated is not None:
                uncertainties[(name,)] = value.stated
        else:
            public = shape.field.public(name)
            values[name], inner = within(public, shape.parsed, value, understand)
            uncertainties |= {(name, *path): stated for path, stated in inner.items()}
    settle_kinds(record, values, uncertainties)
    return values, uncertainties
