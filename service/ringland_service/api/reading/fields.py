"""marshmallow fields for the shapes without a unit: thin and strict, one a shape."""

from typing import Any

from marshmallow import fields

from ringland_service.api.faults import Fault
from ringland_service.api.reading.quantity_fields import fail, is_number, nested, show
from ringland_service.core.declare import fields as declared


class Number(fields.Field[float]):
    """A bare number within its bounds."""

    def __init__(self, field: declared.NumberField, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.field = field

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> float:
        if not is_number(value):
            raise fail(Fault("wrong_type", f"not a number: {show(value)}", "a number"))
        return float(_within(self.field, value))


class Numbers(fields.Field[tuple[float, ...]]):
    """A list of bare numbers within their bounds."""

    def __init__(self, field: declared.NumbersField, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.field = field
        one = declared.NumberField(words=field.words, low=field.low, high=field.high)
        self.one = Number(one)

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> tuple[float, ...]:
        field = self.field
        if not isinstance(value, list):
            raise fail(Fault("wrong_type", f"not a list of numbers: {show(value)}", [field.low]))
        if not field.least <= len(value) <= field.most:
            detail = f"{field.least} to {field.most} numbers are needed, {len(value)} given"
            allowed = {"least": field.least, "most": field.most}
            raise fail(Fault("wrong_count", detail, allowed, 422))
        return tuple(nested(i, self._number, number) for i, number in enumerate(value))

    def _number(self, number: Any) -> float:
        if number is None:
            raise fail(Fault("null", "null is no number: leave it out of the list"))
        return float(self.one.deserialize(number))


class Count(fields.Field[int]):
    """A whole number within its bounds; 2.0 is one, as JSON Schema has it."""

    def __init__(self, field: declared.CountField, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.field = field

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> int:
        if not is_number(value) or value != int(value):
            raise fail(Fault("wrong_type", f"not a whole number: {show(value)}", "a whole number"))
        return int(_within(self.field, value))


def _within(field: declared.NumberField | declared.CountField, value: Any) -> Any:
    if not field.low <= value <= field.high:
        detail = f"{field.words}: {value:.6g} is outside {field.low:g} to {field.high:g}"
        raise fail(Fault("out_of_bounds", detail, {"low": field.low, "high": field.high}, 422))
    return value


class Flag(fields.Field[bool]):
    """true or false."""

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> bool:
        if not isinstance(value, bool):
            raise fail(Fault("wrong_type", f"neither true nor false: {show(value)}", [True, False]))
        return value


class Choice(fields.Field[str]):
    """One token of a closed list."""

    def __init__(self, tokens: tuple[str, ...], **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.tokens = tokens

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> str:
        if not isinstance(value, str) or value not in self.tokens:
            allowed = list(self.tokens)
            detail = f"{show(value)} is not one of {allowed}"
            given = value if isinstance(value, str) else None
            raise fail(Fault("not_a_choice", detail, allowed, given=given))
        return value


class Choices(fields.Field[tuple[str, ...]]):
    """Some tokens of a closed list, none of them twice."""

    def __init__(self, tokens: tuple[str, ...], **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.tokens = tokens
        self.one = Choice(tokens)

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> tuple[str, ...]:
        if not isinstance(value, list):
            detail = f'not a list: {show(value)}; write ["{self.tokens[0]}"]'
            raise fail(Fault("wrong_type", detail, [self.tokens[0]]))
        if len(value) > len(self.tokens):
            detail = f"{len(value)} entries, of {len(self.tokens)} that there are"
            raise fail(Fault("wrong_count", detail, {"most": len(self.tokens)}, 422))
        found = tuple(nested(i, self._token, token) for i, token in enumerate(value))
        twice = sorted({token for token in found if found.count(token) > 1})
        if twice:
            detail = f"given twice: {', '.join(twice)}"
            raise fail(Fault("given_twice", detail, "each once", 422))
        return found

    def _token(self, token: Any) -> str:
        if token is None:
            raise fail(Fault("null", "null is no choice: leave it out of the list"))
        return str(self.one.deserialize(token))


class Text(fields.Field[str]):
    """A text up to a length."""

    def __init__(self, longest: int, shortest: int = 0, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.shortest = shortest
        self.longest = longest

    def _deserialize(self, value: Any, attr: Any, data: Any, **kwargs: Any) -> str:
        if not isinstance(value, str):
            raise fail(Fault("wrong_type", f"not a text: {show(value)}", "a text"))
        if not self.shortest <= len(value) <= self.longest:
            allowed = {"shortest": self.shortest, "longest": self.longest}
            detail = f"a text of {len(value)} characters; {self.shortest} to {self.longest} fit"
            raise fail(Fault("out_of_bounds", detail, allowed, 422))
        return value
