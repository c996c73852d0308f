"""A fault found in a request: what is wrong, where, and what would be right."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Any


@dataclass(frozen=True)
class FieldError:
    """One entry of a problem's ``errors``.

    ``status`` is 400 for what cannot be read (type, unknown or missing field, unit) and 422 for
    what can be read and cannot be true (bounds, contradictions). ``given`` is the text that was
    sent in the place of a name out of ``allowed``, so that a near one can be suggested. ``also``
    holds the pointers of the other fields that a contradiction lies between.
    """

    code: str
    detail: str
    allowed: Any = None
    status: int = 400
    pointer: str = ""
    given: str | None = None
    also: tuple[str, ...] = ()

    def under(self, key: str | int) -> "FieldError":
        """Return the fault as seen from one level up."""
        step = str(key).replace("~", "~0").replace("/", "~1")
        also = tuple(f"/{step}{pointer}" for pointer in self.also)
        return replace(self, pointer=f"/{step}{self.pointer}", also=also)


class FieldErrors(Exception):
    """A request with faults, all of them at once."""

    def __init__(self, faults: Iterable[FieldError]) -> None:
        self.faults = tuple(faults)
        super().__init__()

    def __str__(self) -> str:
        """Return the faults in one line, made only where somebody reads it."""
        return "; ".join(f"{f.pointer}: {f.detail}" for f in self.faults)
