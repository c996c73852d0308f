"""Refusals that stay small: sorted, the first faults in full, the others counted.

Whatever is sent, the answer is a short one: names and details are cut, a list of what is allowed
stands once, and what does not fit is counted. The order follows from the places alone, so the same
request is always answered with the same bytes.
"""

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any

from ringland_service.api.faults import FieldError
from ringland_service.api.near import near

MOST_FAULTS = 50
# Of the entries in JSON, as UTF-8; with the rest of a problem they stay below 64 kB.
MOST_BYTES = 36_000
# The search for a near name is the dear part of a refusal.
MOST_HINTS = 10
LONGEST_STEP = 80
LONGEST_POINTER = 800
LONGEST_DETAIL = 1200
IN_SUMMARY = 3
LONGEST_SUMMARY = 3500


@dataclass(frozen=True)
class Refusal:
    """What a refusal says of its faults.

    Attributes
    ----------
    detail : str
        The first faults in one line, and how many more there are.
    entries : list of dict
        The faults in JSON, at most ``MOST_FAULTS``.
    more : int
        How many faults there are beyond the entries.
    """

    detail: str
    entries: list[dict[str, Any]]
    more: int


def refusal(faults: Sequence[FieldError]) -> Refusal:
    """Return what a refusal says of faults, which may be any number of any length."""
    # Alike to the letter, so they tell nothing twice.
    distinct = list({_place_and_words(fault): fault for fault in faults}.values())
    first = list(_worded(sorted(distinct, key=_in_order)[:MOST_FAULTS]))
    entries = list(_entries(first))
    more = len(distinct) - len(entries)
    said = "; ".join(f"{f.pointer.lstrip('/') or 'body'}: {f.detail}" for f in first[:IN_SUMMARY])
    said = cut(said, LONGEST_SUMMARY)
    if len(distinct) > IN_SUMMARY:
        said += f"; and {len(distinct) - IN_SUMMARY} more"
    if more:
        said += f" (errors holds the first {len(entries)} of {len(distinct)}; and {more} more)"
    return Refusal(said, entries, more)


def _place_and_words(fault: FieldError) -> tuple[str, str, str]:
    return fault.pointer, fault.code, fault.detail


def _in_order(fault: FieldError) -> tuple[Any, ...]:
    """Return what faults are sorted by: the place, entries of a list by number; then the words."""
    steps = tuple(map(_step_in_order, fault.pointer.split("/")))
    return steps, fault.code, fault.detail


def _step_in_order(step: str) -> tuple[int, int, str]:
    number = len(step) <= 9 and step.isascii() and step.isdigit()
    return (0, int(step), "") if number else (1, 0, step)


def _worded(faults: Sequence[FieldError]) -> Iterator[FieldError]:
    """Yield faults with near names suggested, places and details cut."""
    hints = 0
    for fault in faults:
        hint = ""
        if fault.given is not None and fault.allowed and hints < MOST_HINTS:
            hints += 1
            found = near(fault.given, [name for name in fault.allowed if isinstance(name, str)])
            hint = f"; did you mean {found}?" if found else ""
        detail = cut(fault.detail, LONGEST_DETAIL) + hint
        yield replace(fault, detail=detail, pointer=_cut_pointer(fault.pointer))


def cut(text: str, longest: int) -> str:
    """Return a text, its end replaced by … where it is too long to be repeated."""
    return text if len(text) <= longest else text[:longest] + "…"


def _cut_pointer(pointer: str) -> str:
    """Return a pointer with over-long names cut."""
    return cut("/".join(cut(step, LONGEST_STEP) for step in pointer.split("/")), LONGEST_POINTER)


def _entries(faults: Sequence[FieldError]) -> Iterator[dict[str, Any]]:
    """Yield faults as entries of ``errors``, until they would take too many bytes.

    Pointers are in URI-fragment form; a fault between several fields lists them all, its own first.
    A list of what is allowed stands with the first fault that
    it belongs to; ``allowed_at`` of the others is the pointer of that one.
    """
    left = MOST_BYTES
    told: dict[str, str] = {}
    for fault in faults:
        pointer = f"#{fault.pointer}"
        entry = {
            "code": fault.code,
            "pointer": pointer,
            "detail": fault.detail,
            "allowed": fault.allowed,
        }
        if isinstance(fault.allowed, list):
            first = told.setdefault(json.dumps(fault.allowed), pointer)
            if first != pointer:
                entry |= {"allowed": None, "allowed_at": first}
        if fault.also:
            entry["pointers"] = [f"#{one}" for one in (fault.pointer, *fault.also)]
        left -= len(json.dumps(entry, ensure_ascii=False).encode("utf-8", "replace"))
        if left < 0:
            return
        yield entry
