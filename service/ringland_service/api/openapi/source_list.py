"""What ``GET /v1/sources`` serves: every source, what rests on it, and how it was checked."""

from collections.abc import Iterator

from ringland_service.api.json_types import JsonObject
from ringland_service.api.shapes.members import members
from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, Operation
from ringland_service.core.engines.materials import MATERIALS
from ringland_service.core.metrology.limits import LIMITS
from ringland_service.core.tables.sources import SOURCES, Source, sources_of


def sources() -> JsonObject:
    """Return the table of sources, each with what uses it by the declarations."""
    return {"sources": [_entry(source) for source in SOURCES.values()]}


def _entry(source: Source) -> JsonObject:
    """Return one source; what is not stated of it, or was not checked, is null."""
    return {
        "token": source.token,
        "title": source.title,
        "edition": source.edition or None,
        "clause": source.clause or None,
        "checked": source.checked or None,
        "used_by": used_by(source),
    }


def used_by(source: Source) -> JsonObject:
    """Return the names of what cites a source, by what they are."""
    return {
        "calculations": [
            of.name for of in EVERY if any(source in sources_of(text) for text in texts_of(of))
        ],
        "limits": [row.id for row in LIMITS.values() if source in sources_of(row.source)],
        "materials": [row.id for row in MATERIALS.values() if source in sources_of(row.source)],
        "methods": list(source.methods),
    }


def texts_of(of: Operation) -> Iterator[str]:
    """Yield the texts of a declaration that may cite a source.

    A composite has none of its parts' results: those are theirs.
    """
    yield of.summary
    yield from _texts_of_fields(of.inputs)
    if isinstance(of, Calculation):
        yield from (notice.message for notice in of.notices)
        yield from _texts_of_fields(of.outputs)


def _texts_of_fields(record: type) -> Iterator[str]:
    """Yield the texts of the fields of a record, and of the records within it."""
    for member in members(record).values():
        yield member.shape.source
        yield member.shape.instrument
        if member.shape.record is not None:
            yield from _texts_of_fields(member.shape.record)
