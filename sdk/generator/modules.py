"""The files of ``ringland/_generated``, from the OpenAPI document."""

from collections.abc import Mapping
from typing import Any

from generator.calculation import NOTE, Module, answer_of, request_of
from generator.schemas import Schema, Types, Untypable, literal, named, pascal, python_name, summary

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
# What a client has beside its calculations.
TAKEN = {
    "ask",
    "batch",
    "calculations",
    "caller",
    "close",
    "embedded",
    "many",
    "sources",
    "text",
    "version",
}


def calculations(document: Schema) -> dict[str, Schema]:
    """Return the POST operation of each calculation, by name; batches and suffixes aside."""
    found = {}
    for path, operations in document["paths"].items():
        name = path.removeprefix("/v1/")
        if name != path and not {"/", "."} & set(name) and "post" in operations:
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
    components = document["components"]["schemas"]
    parts = parts_of(document)
    aliases = {literal(of): name for name, of in choices(document).items()}
    known = {f"{pascal(name)}Result": python_name(name.replace("-", "_")) for name in asked}
    for module in known.values():
        if module in TAKEN:
            raise Untypable(f"a calculation cannot be called {module}: the client has that name")
    found = {
        "__init__.py": index(asked),
        "_words.py": words(document),
        "_envelope.py": envelope(document, aliases),
        "_parts.py": answer_parts(components, parts, aliases),
    }
    for name, operation in asked.items():
        homes = {c: m for c, m in known.items() if m != name.replace("-", "_")}
        types = Types(components, homes | dict.fromkeys(parts, "_parts"), aliases)
        found[f"{name.replace('-', '_')}.py"] = Module(name, operation, types).text()
    return found


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

        return {of}(self.caller)'''
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
        self.caller = caller
{properties}
'''


def choices(document: Schema) -> dict[str, Any]:
    """Return the choices that requests and answers share, by the name of their type."""
    components = document["components"]["schemas"]
    verdict, limit = components["Verdict"]["properties"], components["Limit"]["properties"]
    operation = next(iter(calculations(document).values()))
    units = next(p for p in operation["parameters"] if p["name"] == "units")
    asked = request_of(operation, Types(components, {}))["properties"]
    return {
        "Defaults": asked["defaults"]["enum"],
        "Rule": asked["rule"]["enum"],
        "RuleApplied": verdict["rule"]["enum"],
        "Standing": limit["standing"]["enum"],
        "Units": units["schema"]["enum"],
        "VerdictWord": verdict["verdict"]["enum"],
    }


def words(document: Schema) -> str:
    """Return the module of the words that requests and answers share."""
    lines = [f"{name}: TypeAlias = {literal(of)}" for name, of in choices(document).items()]
    text = "\n".join(lines)
    head = f'"""The words that requests and answers share.\n\n{NOTE}\n"""\n'
    return f"{head}\nfrom typing import Literal, TypeAlias\n\n{text}\n"


def parts_of(document: Schema) -> list[str]:
    """Return the components that answers are made of beside their results."""
    types = Types(document["components"]["schemas"], {})
    found = {"MeasureNext", "NotWorkedOut"}
    for operation in calculations(document).values():
        for schema in answer_of(operation, types)["properties"].values():
            if "$ref" in schema.get("items", {}):
                found.add(named(schema["items"]))
    return sorted(found)


def answer_parts(components: Schema, parts: list[str], aliases: Mapping[str, str]) -> str:
    """Return the module of what answers are made of beside their results."""
    types = Types(components, {}, aliases)
    for name in parts:
        types.shown({"$ref": f"#/components/schemas/{name}"}, name)
    head = f'"""What answers are made of, beside their results.\n\n{NOTE}\n"""\n'
    imports = (
        "from dataclasses import dataclass\n"
        "from typing import Literal\n\n"
        "from ringland._generated._words import RuleApplied, Standing, VerdictWord\n"
        "from ringland._types import Interval, Quantity, Readings\n"
    )
    classes = "\n\n\n".join(types.classes)
    return f"{head}\n{imports}\n\n{classes}\n"


def envelope(document: Schema, aliases: Mapping[str, str]) -> str:
    """Return the module of what every request may carry beside its fields.

    Raises
    ------
    Untypable
        Where two calculations describe ``measuring`` differently.
    """
    types = Types(document["components"]["schemas"], {}, aliases)
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
        "from ringland._asking import Shape\n"
        "from ringland._generated._words import Standing\n"
        "from ringland._types import QuantityLike\n"
    )
    classes = "\n\n\n".join([LIMITS.strip(), *types.classes])
    shape = f"MEASURING: Shape = {types.shape(described[0])!r}"
    return f"{head}\n{imports}\n\n{classes}\n\n\n{shape}\n"
