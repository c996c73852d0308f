"""What ``GET /v1/sources`` serves: every source, what rests on it, and how it was checked."""

from collections.abc import Iterator
from typing import Any

from ringland_service.core.calculations import EVERY
from ringland_service.core.declare import Calculation, Declared, asked, declared
from ringland_service.core.declare.fields import (
    Field,
    QuantityField,
    RecordsField,
    ResultField,
    SectionField,
)
from ringland_service.core.engines.materials import MATERIALS
from ringland_service.core.metrology.limits import LIMITS
from ringland_service.core.tables.sources import SOURCES, Source, sources_of


def sources() -> dict[str, Any]:
    """Return the table of sources, each with what uses it by the declarations."""
    return {"sources": [_entry(source) for source in SOURCES.values()]}


def _entry(source: Source) -> dict[str, Any]:
    """Return one source; what is not stated of it, or was not checked, is null."""
    return {
        "token": source.token,
        "title": source.title,
        "edition": source.edition or None,
        "clause": source.clause or None,
        "checked": source.checked or None,
        "used_by": used_by(source),
    }


def used_by(source: Source) -> dict[str, list[str]]:
    """Return the names of what cites a source, by what they are."""
    return {
        "calculations": [
            of.name for of in EVERY if any(source in sources_of(text) for text in texts_of(of))
        ],
        "limits": [row.id for row in LIMITS.values() if source in sources_of(row.source)],
        "materials": [row.id for row in MATERIALS.values() if source in sources_of(row.source)],
        "methods": list(source.methods),
    }


def texts_of(of: Declared) -> Iterator[str]:
    """Yield the texts of a declaration that may cite a source.

    A composite has none of its parts' results: those are theirs.
    """
    yield of.summary
    for field in asked(of.inputs).values():
        yield from _texts_of_field(field)
    if isinstance(of, Calculation):
        yield from (notice.message for notice in of.notices)
        for field in declared(of.outputs).values():
            yield from _texts_of_field(field)


def _texts_of_field(field: Field) -> Iterator[str]:
    """Yield the texts of a field and of the records within it."""
    if isinstance(field, ResultField):
        yield field.source
    if isinstance(field, QuantityField):
        yield field.type.instrument
    if isinstance(field, (ResultField, RecordsField, SectionField)) and field.record is not None:
        for inner in declared(field.record).values():
            yield from _texts_of_field(inner)
