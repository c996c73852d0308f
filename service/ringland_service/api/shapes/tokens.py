"""Yes or no, tokens of a closed list, and free text."""

from collections.abc import Mapping, Sequence
from typing import Unpack

from marshmallow import fields as ma

from ringland_service.api.faults import FieldError
from ringland_service.api.json_types import Json, JsonObject
from ringland_service.api.shapes.base import InCells
from ringland_service.api.shapes.columns import text_cell
from ringland_service.api.shapes.json_checks import About, Reader, fail, nested, show
from ringland_service.api.shapes.lists import SEPARATOR, ListShape
from ringland_service.api.shapes.looks import AsBare, AsBareList
from ringland_service.api.shapes.registry import adapts
from ringland_service.api.shapes.schema_parts import (
    TEXT,
    Components,
    array_of,
    batch_column,
    one_of,
)
from ringland_service.core.declare.fields import ChoiceField, ChoicesField, FlagField, TextField

FLAGS: Mapping[str, bool] = {"true": True, "false": False}


class Flag(ma.Field[bool]):
    """true or false."""

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> bool:
        if not isinstance(value, bool):
            raise fail(
                FieldError("wrong_type", f"neither true nor false: {show(value)}", [True, False])
            )
        return value


class Choice(ma.Field[str]):
    """One token of a closed list."""

    def __init__(self, tokens: tuple[str, ...], **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.tokens = tokens

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> str:
        if not isinstance(value, str) or value not in self.tokens:
            allowed = list(self.tokens)
            detail = f"{show(value)} is not one of {allowed}"
            given = value if isinstance(value, str) else None
            raise fail(FieldError("not_a_choice", detail, allowed, given=given))
        return value


class Choices(ma.Field[tuple[str, ...]]):
    """Some tokens of a closed list, none of them twice."""

    def __init__(self, tokens: tuple[str, ...], **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.tokens = tokens
        self.one = Choice(tokens)

    def _deserialize(
        self, value: object, attr: object, data: object, **kwargs: object
    ) -> tuple[str, ...]:
        if not isinstance(value, list):
            detail = f'not a list: {show(value)}; write ["{self.tokens[0]}"]'
            raise fail(FieldError("wrong_type", detail, [self.tokens[0]]))
        if len(value) > len(self.tokens):
            detail = f"{len(value)} entries, of {len(self.tokens)} that there are"
            raise fail(FieldError("wrong_count", detail, {"most": len(self.tokens)}, 422))
        found = tuple(nested(i, self._token, token) for i, token in enumerate(value))
        twice = sorted({token for token in found if found.count(token) > 1})
        if twice:
            detail = f"given twice: {', '.join(twice)}"
            raise fail(FieldError("given_twice", detail, "each once", 422))
        return found

    def _token(self, token: object) -> str:
        if token is None:
            raise fail(FieldError("null", "null is no choice: leave it out of the list"))
        return str(self.one.deserialize(token))


class Text(ma.Field[str]):
    """A text up to a length."""

    def __init__(self, longest: int, shortest: int = 0, **about: Unpack[About]) -> None:
        super().__init__(**about)
        self.shortest = shortest
        self.longest = longest

    def _deserialize(self, value: object, attr: object, data: object, **kwargs: object) -> str:
        if not isinstance(value, str):
            raise fail(FieldError("wrong_type", f"not a text: {show(value)}", "a text"))
        if not self.shortest <= len(value) <= self.longest:
            allowed = {"shortest": self.shortest, "longest": self.longest}
            detail = f"a text of {len(value)} characters; {self.shortest} to {self.longest} fit"
            raise fail(FieldError("out_of_bounds", detail, allowed, 422))
        return value


@adapts(FlagField)
class FlagShape(AsBare, InCells):
    """Yes or no."""

    field: FlagField
    shape = "flag"

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read true or false."""
        return Flag(**about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the type."""
        return self.described({"type": "boolean"})

    def listing(self) -> JsonObject:
        """Return the word for the shape."""
        return {"shape": self.shape}

    def answer_schema(self) -> JsonObject:
        """Return the type."""
        return {"type": "boolean"}

    def from_text(self, text: str) -> Json:
        """Return true or false; any other text is left for the reader to refuse."""
        return FLAGS.get(text, text)

    def example_text(self) -> str:
        """Return the example as JSON writes it."""
        return "true" if self.field.example else "false"

    def parameter_schema(self) -> JsonObject:
        """Return the type."""
        return {"type": "boolean"}

    def parameter_example(self) -> Json:
        """Return the example as it is in JSON."""
        return bool(self.field.example)

    def column_schema(self, most: int) -> JsonObject:
        """Return the schema of a column of flags."""
        return batch_column("true or false", {}, most)

    def csv_column(self, texts: Sequence[str], unit: str | None) -> JsonObject:
        """Return flags, whatever unit the header names."""
        return {"values": [self.from_text(text) if text else None for text in texts]}


class Worded(InCells):
    """What tokens and free texts have in common: their text is themselves."""

    def from_text(self, text: str) -> Json:
        """Return the text itself."""
        return text

    def example_text(self) -> str:
        """Return the example."""
        return str(self.field.example)

    def answer_schema(self) -> JsonObject:
        """Return the schema of a text."""
        return TEXT

    def column_schema(self, most: int) -> JsonObject:
        """Return the schema of a column of texts."""
        return batch_column("a text", {}, most)

    def csv_column(self, texts: Sequence[str], unit: str | None) -> JsonObject:
        """Return texts, whatever unit the header names."""
        return {"values": [text_cell(text) for text in texts]}


@adapts(ChoiceField)
class ChoiceShape(Worded, AsBare):
    """One of a closed list of tokens."""

    field: ChoiceField
    shape = "choice"
    choices: Mapping[str, str]

    def __init__(self, field: ChoiceField) -> None:
        super().__init__(field)
        self.choices = field.choices

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read one token."""
        return Choice(tuple(self.choices), **about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the tokens, each with its words."""
        words = "; ".join(f"{token}: {text}" for token, text in self.choices.items())
        found = self.described(one_of(self.choices))
        return {**found, "description": f"{self.field.description} ({words})"}

    def listing(self) -> JsonObject:
        """Return the tokens, each with its words."""
        return {"shape": self.shape, "choices": dict(self.choices)}

    def parameter_schema(self) -> JsonObject:
        """Return the tokens."""
        return one_of(self.choices)


@adapts(TextField)
class TextShape(Worded, AsBare):
    """Free text that is carried along."""

    field: TextField
    shape = "text"

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read a text up to its length."""
        return Text(self.field.longest, **about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the length."""
        return self.described(self.parameter_schema())

    def listing(self) -> JsonObject:
        """Return the length."""
        return {"shape": self.shape, "longest": self.field.longest}

    def parameter_schema(self) -> JsonObject:
        """Return the length."""
        return {"type": "string", "maxLength": self.field.longest}


@adapts(ChoicesField)
class ChoicesShape(AsBareList, ListShape):
    """Some of a closed list of tokens, none of them twice."""

    field: ChoicesField
    shape = "choices"
    choices: Mapping[str, str]

    def __init__(self, field: ChoicesField) -> None:
        super().__init__(field)
        self.choices = field.choices

    def reader(self, **about: Unpack[About]) -> Reader:
        """Read a list of tokens."""
        return Choices(tuple(self.choices), **about)

    def request_schema(self, components: Components) -> JsonObject:
        """Return the tokens; a list holds each once at the most."""
        counted: JsonObject = {"uniqueItems": True, "maxItems": len(self.choices)}
        return self.described({"type": "array", **counted, "items": one_of(self.choices)})

    def in_json(self, value: Sequence[str]) -> Json:
        """Return a list."""
        return list(value)

    def listing(self) -> JsonObject:
        """Return the tokens with their words, and how several are written."""
        words: JsonObject = dict(self.choices)
        return {"shape": self.shape, "choices": words, "text": self.example_text()}

    def answer_schema(self) -> JsonObject:
        """Return the schema of a list of texts."""
        return array_of(TEXT)

    def entries(self, text: str) -> list[Json]:
        """Return the tokens; an empty text is a list of none."""
        self.check_whole(text)
        return super().entries(text) if text.strip() else []

    def entry(self, text: str) -> Json:
        """Return a token, known or not."""
        if not text:
            raise self.empty_place()
        return text

    def example_text(self) -> str:
        """Return the example, else the first two tokens."""
        return SEPARATOR.join(self.field.example or tuple(self.choices)[:2])

    def pattern(self) -> str:
        """Return tokens, no more than there are."""
        one = f"({'|'.join(self.choices)})"
        return rf"^\s*({one}(\s*;\s*{one}){{0,{len(self.choices) - 1}}}\s*)?$"
