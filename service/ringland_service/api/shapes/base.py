"""What the rest of the service asks of a declared field, whatever its shape.

Each shape of field is one class below, found by ``adapter(field)`` (``registry.py``). Readers,
writers, the document and the listing ask the adapter and never the class of a field, so that a new
shape is one new class.

``Answered``   what an answer shows: inputs as parsed, and results
``Resulted``   a result, which batches show as a column
``Requested``  what a request may hold
``InCells``    what an address, a cell of CSV or a column may hold too
"""

from abc import ABC, abstractmethod
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any, ClassVar, Unpack

from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes.columns import (
    Column,
    check_bare_column,
    number_cells,
    read_entries,
)
from ringland_service.api.shapes.draft import Draft
from ringland_service.api.shapes.figures import cell
from ringland_service.api.shapes.json_checks import About, Reader
from ringland_service.api.shapes.schema_parts import Components
from ringland_service.core.declare.fields import Field, QuantityType, ResultField
from ringland_service.core.metrology.extremes import Interval
from ringland_service.engine.request import Path, Stated

# A row of the flat table, by column.
Row = dict[str, object]
# A value, and the uncertainties stated within it, by path.
Parsed = tuple[object, dict[Path, Stated]]
# Turns what the schema of a record has read into the record.
Understand = Callable[[type, dict[str, object]], Parsed]


class Answered(ABC):
    """A field as an answer shows it."""

    field: Field
    # The record of a section, or of each row of a table.
    record: type | None = None
    choices: Mapping[str, str] | None = None
    # The suggested decimals of a bare number.
    decimals: int | None = None
    # What measures it on the bench, and what a result rests on.
    instrument: str = ""
    source: str = ""
    is_section: ClassVar[bool] = False
    is_table: ClassVar[bool] = False
    # Shown without a unit: a number, a text, or a list of those.
    is_bare: ClassVar[bool] = False
    # Several bare values.
    is_bare_list: ClassVar[bool] = False
    # A number that pages show with every digit given.
    as_written: ClassVar[bool] = False

    def __init__(self, field: Field) -> None:
        self.field = field

    @abstractmethod
    def answer_schema(self) -> JsonObject:
        """Return the OpenAPI schema of what an answer shows, less its description."""

    @abstractmethod
    def answer(self, value: Any, inputs: object, system: str, u: Any = None) -> Json:
        """Return a canonical value as an answer has it.

        ``inputs`` is the record that a result was worked out from, ``system`` the units of the
        answer; ``u`` the standard uncertainty, of a value with parts by part.
        """

    def with_interval(self, told: Json, interval: Interval, inputs: object, system: str) -> Json:
        """Return the JSON of a value with its 95 % interval, where it shows one itself."""
        return told

    @abstractmethod
    def text(self, value: Any) -> str:
        """Return what the answer holds as text for people."""

    def page_text(self, value: Any) -> str:
        """Return what the answer holds as a page has it: a token of a closed list in its words."""
        return self.text(value)

    @abstractmethod
    def cell(self, value: Any) -> str:
        """Return what the answer holds as a part of the text of one cell."""

    def column_cell(self, value: Any) -> Json:
        """Return one entry of the column of a result, a number or a list, as a cell of CSV."""
        return cell(value)

    @abstractmethod
    def rows(self, part: str, name: str, value: Any) -> Iterator[Row]:
        """Yield what the answer holds as rows of the flat table."""

    def picked(self, value: Any, members: Sequence[str]) -> Json:
        """Return the single value that ``members`` of it lead to; None where they lead to none."""
        return None


class Resulted(Answered):
    """A result; ``holds`` is what its annotation says, in JSON's terms."""

    field: ResultField

    def __init__(self, field: ResultField, holds: str) -> None:
        super().__init__(field)
        self.holds = holds
        self.record = field.record
        self.choices = field.choices
        self.source = field.source
        self.decimals = field.decimals

    @abstractmethod
    def answer_column(self, values: list[Any], system: str, u: list[Any] | None) -> JsonObject:
        """Return the canonical values of a batch as a column, with ``u`` of each where any is."""


class Requested(Answered):
    """A field that a request may hold."""

    # The listing's word for the shape.
    shape: ClassVar[str]
    # Several quantities whose units settle only together what kind they are.
    kind_is_open: ClassVar[bool] = False

    @abstractmethod
    def reader(self, **about: Unpack[About]) -> Reader:
        """Return the marshmallow field that reads its JSON."""

    def parsed(self, read: object, understand: Understand) -> Parsed:
        """Return the value of what was read, and the uncertainties stated within it."""
        return read, {}

    @abstractmethod
    def request_schema(self, components: Components) -> JsonObject:
        """Return the OpenAPI schema of its JSON; shared ones are added to ``components``."""

    def in_json(self, value: Any) -> Json:
        """Return a canonical value, as its declaration has defaults and examples, in JSON."""
        found: Json = value
        return found

    def example(self) -> Json:
        """Return the example of the field in JSON; None where it has none."""
        return None if self.field.example is None else self.in_json(self.field.example)

    def examples(self) -> JsonObject:
        """Return what the OpenAPI schema says of the example."""
        shown = self.example()
        return {} if shown is None else {"examples": [shown]}

    def described(self, schema: JsonObject) -> JsonObject:
        """Return a schema with the field's words and example."""
        return {**schema, "description": self.field.description, **self.examples()}

    def default_schema(self, value: Any) -> JsonObject:
        """Return what the OpenAPI schema says of the default."""
        return {"default": self.in_json(value)}

    def listed_example(self) -> Json:
        """Return the example as the listing has it: plain values in the canonical unit."""
        found: Json = self.field.example
        return found

    @abstractmethod
    def listing(self) -> JsonObject:
        """Return what a form needs to know of it beside its words, name and example."""

    def quantities(self) -> Iterator[QuantityType]:
        """Yield the quantities that it asks for, down to those of its records."""
        return iter(())


class InCells(Requested):
    """A field that an address, a cell of CSV and a column may hold: one value, or a list."""

    is_list: ClassVar[bool] = False
    # The member of its JSON that holds the entries of its text.
    entries_under: ClassVar[str] = ""

    @abstractmethod
    def from_text(self, text: str) -> Json:
        """Return the JSON form of its text.

        Raises
        ------
        FieldErrors
        """

    @abstractmethod
    def example_text(self) -> str:
        """Return its example in text, or one like it where it has none."""

    @abstractmethod
    def parameter_schema(self) -> JsonObject:
        """Return the OpenAPI schema of its text in an address."""

    def parameter_example(self) -> Json:
        """Return the example of the parameter of an address."""
        return self.example_text()

    def parameter_words(self) -> str:
        """Return what the document says of the parameter."""
        return self.field.description

    def text_components(self) -> Components:
        """Return the shared schemas that ``parameter_schema`` refers to, none of kinds of unit."""
        return {}

    @abstractmethod
    def column_schema(self, most: int) -> JsonObject:
        """Return the OpenAPI schema of a column of at most so many rows."""

    def csv_column(self, texts: Sequence[str], unit: str | None) -> JsonObject:
        """Return cells of CSV as the JSON of a column; what cannot be read is refused later."""
        return number_cells(texts, unit)

    def check_column(self, column: Column) -> None:
        """Refuse a column with unknown members, or without the unit that it needs.

        Raises
        ------
        ValidationError
        """
        check_bare_column(column)

    def row(self, column: Column, value: Any, row: int) -> object:
        """Return one entry of a column as the JSON of a single request.

        Raises
        ------
        FieldErrors
            Where it is a text that cannot be read.
        """
        return value

    def read_column(self, name: str, column: Column, draft: Draft) -> None:
        """Read a column into ``draft``; what is wrong with one entry is a fault of its row.

        Raises
        ------
        ValidationError
            Where the column as a whole cannot be read.
        """
        self.check_column(column)
        read_entries(draft, name, self.reader(), column, self.row)
