"""The module of one calculation."""

from collections.abc import Iterator, Mapping

from generator.schemas import (
    Schema,
    Types,
    entry,
    pascal,
    prose,
    python_name,
    shadows,
    summary,
)

NOTE = "Generated from the OpenAPI document by sdk/generate.py; do not edit."
# More than a module needs: what it does not use is taken out when the files are tidied.
IMPORTS = """
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Standing, Units, VerdictWord
from ringland._types import Interval, Quantity, QuantityLike, Readings, ReadingsLike
"""


def request_of(operation: Schema, types: Types) -> Schema:
    """Return the schema of a request's body."""
    return types.resolved(operation["requestBody"]["content"]["application/json"]["schema"])


def answer_of(operation: Schema, types: Types) -> Schema:
    """Return the schema of an answer."""
    return types.resolved(operation["responses"]["200"]["content"]["application/json"]["schema"])


class Module:
    """The module of one calculation."""

    def __init__(self, name: str, operation: Schema, types: Types) -> None:
        self.name = name
        self.title = operation["summary"]
        self.about = operation["description"]
        self.types = types
        self.request = request_of(operation, types)
        self.answer = answer_of(operation, types)["properties"]
        self.class_name = pascal(name)

    def text(self) -> str:
        """Return the module's text."""
        arguments = {
            public: self._argument(public, schema)
            for public, schema in self.request["properties"].items()
        }
        result = self.types.shown(self.answer["result"], f"{self.class_name}Result")
        noqa = "# ruff: noqa: A002\n" if shadows(map(python_name, arguments)) else ""
        imports = "\n".join([IMPORTS.strip(), *sorted(self.types.imports)])
        classes = "\n\n\n".join([*self.types.classes, self._class(arguments, result)])
        return f'"""{summary(self.title)}\n\n{NOTE}\n"""\n{noqa}\n{imports}\n\n\n{classes}\n'

    def _argument(self, public: str, schema: Schema) -> str:
        if public == "measuring":
            return "MeasuringAsked"
        if public == "limits":
            return self._limits(schema)
        return self.types.asked(schema, f"{self.class_name}{pascal(public)}")

    def _limits(self, schema: Schema) -> str:
        """Add the class of the calculation's limits and return its name."""
        name = f"{self.class_name}Limits"
        members, about = [], []
        for check, limit in schema["properties"].items():
            side = self.types.shape(limit["properties"]["low"])
            kind = "LimitAsked" if side == "quantity" else "RatioLimitAsked"
            members.append(f"    {python_name(check)}: {kind}")
            about.append(entry(check, kind, limit))
        lines = [
            f"class {name}(TypedDict, total=False):",
            f'    """Limits of your own, by check: {self.name}.',
            *("", "    Attributes", "    ----------", *about, '    """', "", *members),
        ]
        self.types.classes.append("\n".join(lines))
        return name

    def _class(self, arguments: Mapping[str, str], result: str) -> str:
        needed = self.request.get("required", ())
        signature, about, fields = [], [], []
        for public in sorted(arguments, key=lambda name: name not in needed):
            kind, name = arguments[public], python_name(public)
            sure = public in needed
            signature.append(f"{name}: {kind}" if sure else f"{name}: {kind} | None = None")
            schema = self.types.resolved(self.request["properties"][public])
            shown = "str" if kind.startswith("Literal") else kind
            about.append(entry(name, shown if sure else f"{shown}, optional", schema))
            fields.append(f"{public!r}: {name},")
        shapes = {n: self.types.shape(s) for n, s in self.request["properties"].items()}
        shared = "'measuring': MEASURING" if shapes.pop("measuring", None) else ""
        shown_shapes = "".join(f"{n!r}: {s!r}," for n, s in shapes.items() if s)
        body = prose(self.about, 4)
        return f'''class {self.class_name}(Calculation[{result}]):
    """{summary(self.title)}

{body}
    """

    NAME = {self.name!r}
    RESULT = {result}
    SHAPES: ClassVar[Mapping[str, Shape]] = {{{shown_shapes}{shared}}}

    def __call__(
        self,
        *,
        {", ".join(signature)},
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[{result}]:
        """Ask ``{self.name}`` one question.
{self._one_of()}
        Parameters
        ----------
{_deeper(about)}
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {{{"".join(fields)}}}
        return self._answer(fields, units, trace)
'''

    def _one_of(self) -> str:
        """Return the alternatives of which one is needed, as a paragraph of the docstring."""
        groups = [
            " or ".join(f"``{option['required'][0]}``" for option in group["anyOf"])
            for group in self.request.get("allOf", ())
        ]
        return "".join(f"\n{prose(f'Needed: {text}.', 8)}\n" for text in groups)


def _deeper(entries: list[str]) -> str:
    """Return docstring entries one level further in, wrapped text kept within the width."""
    return "\n".join("    " + line for text in entries for line in _narrow(text))


def _narrow(text: str) -> Iterator[str]:
    head, _, words = text.partition("\n")
    yield head
    if words:
        # Wrapped anew, 4 columns narrower for the deeper indent.
        plain = " ".join(line.strip() for line in words.splitlines()).replace("\\\\", "\\")
        for line in prose(plain, 12).splitlines():
            yield line[4:]
