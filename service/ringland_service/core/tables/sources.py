"""The standards and books that figures and formulas rest on, and texts that cite them.

A source that nobody has compared with the printed text yet says so wherever it is cited; where the
table (``sources.toml``) says how it was checked, the mark falls away. What shops do without any
published source is no row here: it is ``NO_SOURCE``, a standing of its own.
"""

from dataclasses import dataclass
from string import Formatter
from typing import Any

from ringland_service.core.tables import read_table

NO_SOURCE = "common practice, no source"
UNCHECKED = "(from memory)"


@dataclass(frozen=True)
class Source:
    """A part of a standard or book that something rests on.

    Attributes
    ----------
    token : str
        What declarations name it by.
    title : str
    edition : str
        Year or number; empty where none is stated.
    clause : str
        Number of the clause, or what to look for; empty where the whole is meant.
    checked : str
        What was compared with the printed text; empty where it was recalled from memory.
    methods : tuple of str
        What rests on it besides results, limits and materials.
    """

    token: str
    title: str
    edition: str = ""
    clause: str = ""
    checked: str = ""
    methods: tuple[str, ...] = ()

    @property
    def cited(self) -> str:
        """The source as a sentence names it, marked where it is unchecked."""
        # Standards are written ISO 1:2022, books with their edition after a comma.
        joint = ":" if self.title[-1:].isdigit() else ", "
        named = joint.join(filter(None, (self.title, self.edition)))
        located = ", ".join(filter(None, (named, self.clause)))
        return located if self.checked else f"{located} {UNCHECKED}"


class Citation(str):
    """A text that knows which sources it names; otherwise a text like any other."""

    sources: tuple[Source, ...]

    def __new__(cls, text: str, sources: tuple[Source, ...] = ()) -> "Citation":
        """Return the text with its sources."""
        found = super().__new__(cls, text)
        found.sources = sources
        return found


def _row(row: dict[str, Any]) -> Source:
    return Source(**{**row, "methods": tuple(row.get("methods", ()))})


SOURCES: dict[str, Source] = {row["token"]: _row(row) for row in read_table("sources")}


def cited(text: str) -> Citation:
    """Return a text with each ``{token}`` replaced by the source of that name.

    Raises
    ------
    KeyError
        Where the table of sources has no such token.
    """
    named = [SOURCES[token] for _, token, _, _ in Formatter().parse(text) if token is not None]
    filled = text.format_map({source.token: source.cited for source in named})
    return Citation(filled, tuple(named))


def sources_of(text: str) -> tuple[Source, ...]:
    """Return the sources that a text cites."""
    return text.sources if isinstance(text, Citation) else ()
