"""Lists in text: entries parted by ``;``, of readings one unit and one ± at the end.

``120;118;95;121 psi``, ``68.02;;68.03 mm +/- 0.004`` (an empty place is a reading that is missing),
``0.3;0.4;0.3``, ``E71;E141``. A comma parts nothing: many sheets write it for the decimal point.
"""

from collections.abc import Iterable, Iterator
from typing import Any

from ringland_service.api.faults import Fault, Faulty
from ringland_service.api.reading.number_text import (
    NUMBER,
    STATED,
    UNCERTAINTY,
    bare_number,
    is_number_text,
    leading_number,
    number_of,
    unit_pattern,
)
from ringland_service.api.reading.quantity_fields import show
from ringland_service.core.declare.fields import ChoicesField, Field, NumbersField, ReadingsField

SEPARATOR = ";"
# A whole address with more than 2048 characters does not fit into a spreadsheet's cell.
LONGEST_LIST = 2000

ListField = ReadingsField | NumbersField | ChoicesField


def is_list(field: Field) -> bool:
    """Return whether a field is a list that a cell can hold; records and sections are none."""
    return isinstance(field, ListField)


def list_text(field: ListField, text: str) -> Any:
    """Return the JSON form of a list's text: of readings an object, else a list.

    Raises
    ------
    Faulty
        With each place that cannot be read; what the entries may be is left to the reader.
    """
    _check_whole(field, text)
    if isinstance(field, ReadingsField):
        return _readings(field, text)
    return entries(field, text)


def entries(field: ListField, text: str) -> list[Any]:
    """Return the entries of a list's text that has no unit of its own, as a column's cell.

    Raises
    ------
    Faulty
    """
    _check_whole(field, text)
    if isinstance(field, ChoicesField) and not text.strip():
        return []
    return _each(field, text.split(SEPARATOR))


def _check_whole(field: ListField, text: str) -> None:
    if len(text) > LONGEST_LIST:
        detail = f"a list of {len(text)} characters; {LONGEST_LIST} fit: send a body instead"
        raise Faulty([Fault("out_of_bounds", detail, {"longest": LONGEST_LIST}, 422)])
    if "," in text:
        right = list_example(field)
        detail = f"a comma neither parts a list nor marks a decimal: write {right}"
        raise Faulty([Fault("wrong_type", detail, right)])


def _readings(field: ReadingsField, text: str) -> dict[str, Any]:
    right = list_example(field)
    left, *stated = STATED.split(text, maxsplit=1)
    *before, last = left.split(SEPARATOR)
    number, symbol = leading_number(last)
    # Where places may be empty all may be: what then cannot be worked out is said by the reader.
    told = any(one.strip() for one in (*before, number or "")) or (field.gaps and before)
    if not told or (stated and not is_number_text(stated[-1].strip())):
        raise Faulty([Fault("not_a_quantity", f"not a list of readings: write {right}", right)])
    numbers = _each(field, [*before, number or ""])
    if not symbol:
        detail = f"numbers alone have no unit: write {right}"
        raise Faulty([Fault("missing_unit", detail, right)])
    found: dict[str, Any] = {"values": numbers, "unit": symbol}
    if stated:
        found["uncertainty"] = number_of(stated[-1].strip())
    return found


def _each(field: ListField, texts: list[str]) -> list[Any]:
    """Return each entry in JSON; all that cannot be read are told, each with its place."""
    found: list[Any] = []
    faults: list[Fault] = []
    for place, text in enumerate(texts):
        try:
            found.append(_entry(field, text.strip()))
        except Faulty as error:
            faults += [fault.under(place) for fault in error.faults]
    if faults:
        raise Faulty(faults)
    return found


def _entry(field: ListField, text: str) -> Any:
    right = list_example(field)
    if not text:
        if isinstance(field, ReadingsField) and field.gaps:
            return None
        raise Faulty([Fault("wrong_type", f"an empty place in a list: write {right}", right)])
    if isinstance(field, ChoicesField):
        return text
    if isinstance(field, NumbersField):
        return bare_number(text)
    if not is_number_text(text):
        # Most likely each entry was given its own unit.
        end = ", one unit and one ± end the list" if leading_number(text)[0] else ""
        detail = f"not a number: {show(text)}{end}: write {right}"
        raise Faulty([Fault("wrong_type", detail, right)])
    return number_of(text)


def in_words(pointer: str) -> str:
    """Return the place in a list that a pointer ends in, counted from 1; empty where in none."""
    last = pointer.rpartition("/")[2]
    return f"entry {int(last) + 1}: " if last.isdecimal() else ""


def placed(faults: Iterable[Fault], lists: Iterable[str]) -> Iterator[Fault]:
    """Yield faults of a question in text: its readings have no ``values`` to point into."""
    known = tuple(f"/{name}/values" for name in lists)
    for fault in faults:
        start = next((one for one in known if f"{fault.pointer}/".startswith(f"{one}/")), "")
        rest = fault.pointer[len(start) :]
        pointer = start.removesuffix("/values") + rest if start else fault.pointer
        yield Fault(**{**vars(fault), "pointer": pointer})


def list_pattern(field: ListField) -> str:
    """Return the pattern of a list's text, for the OpenAPI document."""
    if isinstance(field, ChoicesField):
        one = f"({'|'.join(field.choices)})"
        return rf"^\s*({one}(\s*;\s*{one}){{0,{len(field.choices) - 1}}}\s*)?$"
    counted = f"{{{field.least - 1},{field.most - 1}}}"
    if isinstance(field, NumbersField):
        return rf"^\s*{NUMBER}(\s*;\s*{NUMBER}){counted}\s*$"
    stated = "" if field.exact else UNCERTAINTY
    unit = unit_pattern(field.type.kind)
    if not field.gaps:
        return rf"^\s*{NUMBER}(\s*;\s*{NUMBER}){counted}{unit}{stated}\s*$"
    # A blank belongs to the place before it, so that nothing can be read in two ways.
    return rf"^\s*({NUMBER}\s*)?(;\s*({NUMBER}\s*)?){counted}{unit}{stated}\s*$"


def list_example(field: ListField) -> str:
    """Return a list in text as it would be right: its example, or one like the example."""
    if isinstance(field, ReadingsField):
        return f"{_joined(field.example or _made(field))} {field.type.kind.unit}"
    if isinstance(field, ChoicesField):
        return SEPARATOR.join(field.example or tuple(field.choices)[:2])
    return _joined(field.example or _spread(field))


def _joined(numbers: Iterable[float | None]) -> str:
    return SEPARATOR.join("" if n is None else f"{n:.10g}" for n in numbers)


def _made(field: ReadingsField) -> list[float]:
    """Return a few readings around the example of their quantity."""
    of = field.type
    few = min(max(field.least, 3), field.most)
    return [min(max(round(of.example * (1 - i / 50), of.digits), of.low), of.high)
            for i in range(few)]  # fmt: skip


def _spread(field: NumbersField) -> list[float]:
    """Return a few numbers evenly between the bounds."""
    few = min(max(field.least, 2), field.most)
    step = (field.high - field.low) / (few + 1)
    return [round(field.low + step * (i + 1), 3) for i in range(few)]


def list_words(field: ListField) -> str:
    """Return how a list is written, for people."""
    gap = "; an empty place for a missing one" if getattr(field, "gaps", False) else ""
    return f"{field.words}; entries parted by ;{gap}; such as {list_example(field)}"
