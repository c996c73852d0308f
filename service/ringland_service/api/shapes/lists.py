"""Lists in text: entries parted by ``;``, of readings one unit and one ± at the end.

``120;118;95;121 psi``, ``68.02;;68.03 mm +/- 0.004`` (an empty place is a reading that is missing),
``0.3;0.4;0.3``, ``E71;E141``. A comma parts nothing: many sheets write it for the decimal point.
"""

from abc import abstractmethod
from collections.abc import Iterable, Iterator, Sequence
from typing import Any, ClassVar

from marshmallow import ValidationError

from ringland_service.api.faults import FieldError, FieldErrors
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.columns import Column, check_bare_column, text_cell, with_unit
from ringland_service.api.shapes.draft import Draft, Unreadable
from ringland_service.api.shapes.json_checks import Reader, faults_of
from ringland_service.api.shapes.quantity_checks import Read
from ringland_service.api.shapes.schema_parts import batch_column, text_pattern

SEPARATOR = ";"
# A whole address with more than 2048 characters does not fit into a spreadsheet's cell.
LONGEST_LIST = 2000


class ListShape(InCells):
    """A list that a cell can hold; records and sections are none."""

    is_list: ClassVar[bool] = True

    @abstractmethod
    def entry(self, text: str) -> Json:
        """Return one entry in JSON.

        Raises
        ------
        FieldErrors
        """

    @abstractmethod
    def pattern(self) -> str:
        """Return the pattern of the list's text, for the OpenAPI document."""

    def from_text(self, text: str) -> Json:
        """Return the list; what its entries may be is left to the reader.

        Raises
        ------
        FieldErrors
            With each place that cannot be read.
        """
        return self.entries(text)

    def entries(self, text: str) -> list[Json]:
        """Return the entries of a text that has no unit of its own, as a column's cell.

        Raises
        ------
        FieldErrors
        """
        self.check_whole(text)
        return self.each(text.split(SEPARATOR))

    def check_whole(self, text: str) -> None:
        """Refuse a text that is too long, or has a comma."""
        if len(text) > LONGEST_LIST:
            detail = f"a list of {len(text)} characters; {LONGEST_LIST} fit: send a body instead"
            raise FieldErrors([FieldError("out_of_bounds", detail, {"longest": LONGEST_LIST}, 422)])
        if "," in text:
            right = self.example_text()
            detail = f"a comma neither parts a list nor marks a decimal: write {right}"
            raise FieldErrors([FieldError("wrong_type", detail, right)])

    def each(self, texts: Sequence[str]) -> list[Json]:
        """Return each entry in JSON; all that cannot be read are told, each with its place."""
        found: list[Json] = []
        faults: list[FieldError] = []
        for place, text in enumerate(texts):
            try:
                found.append(self.entry(text.strip()))
            except FieldErrors as error:
                faults += [fault.under(place) for fault in error.faults]
        if faults:
            raise FieldErrors(faults)
        return found

    def empty_place(self) -> FieldErrors:
        """Return the fault of an entry that is missing where each is needed."""
        right = self.example_text()
        return FieldErrors(
            [FieldError("wrong_type", f"an empty place in a list: write {right}", right)]
        )

    def parameter_schema(self) -> JsonObject:
        """Return the pattern of the text."""
        return text_pattern(self.pattern(), LONGEST_LIST)

    def parameter_words(self) -> str:
        """Return the words, and how the list is written."""
        example = self.example_text()
        return f"{self.field.description}; entries parted by ;{self.of_gaps()}; such as {example}"

    def of_gaps(self) -> str:
        """Return what is said of empty places, where any may be."""
        return ""

    def column_schema(self, most: int) -> JsonObject:
        """Return the schema of a column of lists without a unit."""
        return batch_column(f"a list, or its text such as {self.example_text()},", {}, most)

    def csv_column(self, texts: Sequence[str], unit: str | None) -> JsonObject:
        """Return the texts of lists; they are parted where their column is read."""
        return with_unit([text_cell(text) for text in texts], unit)

    def check_column(self, column: Column) -> None:
        """Refuse all but values."""
        check_bare_column(column, f'{{"values": ["{self.example_text()}"]}}')

    def row(self, column: Column, value: Any, row: int) -> object:
        """Return the list in one row; a text is parted."""
        return self.entries(value) if isinstance(value, str) else value

    def read_column(self, name: str, column: Column, draft: Draft) -> None:
        """Read the lists one by one; all faults of one are faults of its row, each with its place.

        Raises
        ------
        ValidationError
            Where the column as a whole cannot be read.
        """
        self.check_column(column)
        values: list[object] = [None] * draft.count
        stated: list[object] = [None] * draft.count
        reader = self.reader()
        for row, value in enumerate(column["values"]):
            found = None if value is None else self._read(reader, name, column, row, draft)
            if isinstance(found, Read):
                values[row] = found.value
                stated[row] = found.stated and found.stated.uncertainty
            else:
                values[row] = found
        draft.columns[name] = values
        if any(one is not None for one in stated):
            draft.uncertainty[name] = stated

    def _read(self, reader: Reader, name: str, column: Column, row: int, draft: Draft) -> object:
        """Return what one row of a column holds; None where it cannot be read."""
        try:
            found: object = reader.deserialize(self.row(column, column["values"][row], row))
        except (FieldErrors, ValidationError) as error:
            for fault in error.faults if isinstance(error, FieldErrors) else faults_of(error):
                detail = in_words(fault.pointer) + fault.detail
                draft.bad(row, Unreadable(name, detail, code=fault.code))
            return None
        return found


def in_words(pointer: str) -> str:
    """Return the place in a list that a pointer ends in, counted from 1; empty where in none."""
    last = pointer.rpartition("/")[2]
    return f"entry {int(last) + 1}: " if last.isdecimal() else ""


def placed(faults: Iterable[FieldError], lists: Iterable[str]) -> Iterator[FieldError]:
    """Yield faults of a question in text: its readings have no ``values`` to point into."""
    known = tuple(f"/{name}/values" for name in lists)
    for fault in faults:
        start = next((one for one in known if f"{fault.pointer}/".startswith(f"{one}/")), "")
        rest = fault.pointer[len(start) :]
        pointer = start.removesuffix("/values") + rest if start else fault.pointer
        yield FieldError(**{**vars(fault), "pointer": pointer})


def joined(numbers: Iterable[float | None]) -> str:
    """Return numbers as the text of a list; nothing where one is missing."""
    return SEPARATOR.join("" if n is None else f"{n:.10g}" for n in numbers)
