"""The files of ``ringland/_generated``, from the OpenAPI document."""

from collections.abc import Iterator, Mapping
from typing import Any

from generator.schemas import (
    Schema,
    Types,
    Untypable,
    entry,
    literal,
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

from ringland._answers import Answer, MeasureNext
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import LimitAsked, MeasuringAsked, RatioLimitAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, Readings, ReadingsLike
"""
LIMITS = '''
class LimitAsked(TypedDict, total=False):
    """A limit of your own, for a value with a unit; one side or both."""

    low: QuantityLike
    high: QuantityLike
    standing: Standing
    source: str


class RatioLimitAsked(TypedDict, total=False):
    """A limit of your own, for a bare number; one side or both."""

    low: float
    high: float
    standing: Standing
    source: str
'''
ENVELOPE = {"rule": "Rule", "defaults": "Defaults", "measuring": "MeasuringAsked"}
# What a client has beside its calculations.
TAKEN = {"ask", "batch", "calculations", "close", "embedded", "many", "text", "version"}


def calculations(document: Schema) -> dict[str, Schema]:
    """Return the POST operation of each calculation, by name."""
    found = {}
    for path, operations in document["paths"].items():
        name = path.removeprefix("/v1/")
        if name != path and "/" not in name and "post" in operations:
            found[name] = operations["post"]
    return found


def files(document: Schema) -> dict[str, str]:
    """Return the text of each file by name.

    Raises
    ------
    Untypable
        Where the document says what cannot be put into Python's types.
    """
    asked = calculations(document)
    known = {f"{pascal(name)}Result": python_name(name.replace("-", "_")) for name in asked}
    for module in known.values():
        if module in TAKEN:
            raise Untypable(f"a calculation cannot be called {module}: the client has that name")
    found = {
        "__init__.py": index(asked),
        "_words.py": words(document),
        "_envelope.py": envelope(document),
    }
    for name, operation in asked.items():
        homes = {c: m for c, m in known.items() if m != name.replace("-", "_")}
        types = Types(document["components"]["schemas"], homes)
        found[f"{name.replace('-', '_')}.py"] = Module(name, operation, types).text()
    return found


def request_of(operation: Schema, types: Types) -> Schema:
    """Return the schema of a request's body."""
    return types.resolved(operation["requestBody"]["content"]["application/json"]["schema"])


class Module:
    """The module of one calculation."""

    def __init__(self, name: str, operation: Schema, types: Types) -> None:
        self.name = name
        self.title = operation["summary"]
        self.about = operation["description"]
        self.types = types
        self.request = request_of(operation, types)
        answer = operation["responses"]["200"]["content"]["application/json"]["schema"]
        self.answer = types.resolved(answer)["properties"]
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
        if public in ENVELOPE:
            return ENVELOPE[public]
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
        shapes = {n: s for n, s in shapes.items() if s}
        body = prose(self.about, 4)
        return f'''class {self.class_name}(Calculation[{result}]):
    """{summary(self.title)}

{body}
    """

    NAME = {self.name!r}
    RESULT = {result}
    SHAPES: ClassVar[Mapping[str, Shape]] = {shapes!r}

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


def index(asked: Mapping[str, Schema]) -> str:
    """Return the package's own module: each calculation by name, loaded when first used."""
    modules = {name.replace("-", "_"): (pascal(name), op) for name, op in asked.items()}
    imports = "\n".join(
        f"    from ringland._generated.{module} import {of}"
        for module, (of, _) in sorted(modules.items())
    )
    classes = {module: of for module, (of, _) in modules.items()}
    properties = "\n".join(
        f'''
    @property
    def {module}(self) -> "{of}":
        """{summary(operation["summary"])}"""
        from ringland._generated.{module} import {of}

        return {of}(self._caller)'''
        for module, (of, operation) in modules.items()
    )
    return f'''"""The calculations of a client, each loaded when it is first used.

{NOTE}
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ringland._caller import Caller
{imports}

CLASSES = {classes!r}


class Calculations:
    """One property a calculation; call it with the calculation's fields."""

    def __init__(self, caller: "Caller") -> None:
        self._caller = caller
{properties}
'''


def words(document: Schema) -> str:
    """Return the module of the words that requests and answers share."""
    components = document["components"]["schemas"]
    verdict, limit = components["Verdict"]["properties"], components["Limit"]["properties"]
    operation = next(iter(calculations(document).values()))
    units = next(p for p in operation["parameters"] if p["name"] == "units")
    switch = request_of(operation, Types(components, {}))["properties"]["defaults"]
    choices: dict[str, Any] = {
        "Defaults": switch["enum"],
        "Rule": verdict["rule"]["enum"],
        "Standing": limit["standing"]["enum"],
        "Units": units["schema"]["enum"],
        "VerdictWord": verdict["verdict"]["enum"],
    }
    lines = [f"{name}: TypeAlias = {literal(of)}" for name, of in choices.items()]
    text = "\n".join(lines)
    head = f'"""The words that requests and answers share.\n\n{NOTE}\n"""\n'
    return f"{head}\nfrom typing import Literal, TypeAlias\n\n{text}\n"


def envelope(document: Schema) -> str:
    """Return the module of what every request may carry beside its fields.

    Raises
    ------
    Untypable
        Where two calculations describe ``measuring`` differently.
    """
    types = Types(document["components"]["schemas"], {})
    described = [
        request_of(operation, types)["properties"]["measuring"]
        for operation in calculations(document).values()
    ]
    if any(one != described[0] for one in described):
        raise Untypable("measuring: the calculations describe it differently")
    types.typed_dict(described[0], "MeasuringAsked")
    head = f'"""What every request may carry beside its fields.\n\n{NOTE}\n"""\n'
    imports = (
        "from collections.abc import Sequence\n"
        "from typing import Literal, NotRequired, TypedDict\n\n"
        "from ringland._generated._words import Standing\n"
        "from ringland._types import QuantityLike\n"
    )
    classes = "\n\n\n".join([LIMITS.strip(), *types.classes])
    return f"{head}\n{imports}\n\n{classes}\n"
