"""Python types of the document's schemas, and the classes that they need."""

import builtins
import keyword
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from textwrap import fill
from typing import Any

Schema = Mapping[str, Any]
PLAIN = {"string": "str", "integer": "int", "number": "float", "boolean": "bool", "null": "None"}
KNOWN = {"QuantityValue": "Quantity", "QuantityList": "Readings", "Interval": "Interval"}
# Warning would hide the builtin.
RENAMED = {"Warning": "AnswerWarning"}
# What the document leaves without words.
WORDS = {
    "AnswerWarning": "Something unusual in the request or the result; the answer stands",
    "Basis": "Where a result comes from: formula in words, and source",
    "ToSettle": "How a verdict that is too close to call could be settled",
    "TraceStep": "A formula with its numbers put in",
}
# A choice of more symbols than this reads better as text with the list in the documentation.
LONGEST_CHOICE = 40
WIDTH = 100


class Untypable(Exception):
    """A schema that no Python type is known for."""


def pascal(name: str) -> str:
    """Return a name as a class has it."""
    return "".join(part.capitalize() for part in name.replace("-", "_").split("_"))


def one_of_many(name: str) -> str:
    """Return the name of one entry of a list: ``Instruments`` holds each an ``Instrument``."""
    if name.endswith("ies"):
        return f"{name[:-3]}y"
    return name[:-1] if name.endswith("s") else f"{name}Item"


def python_name(name: str) -> str:
    """Return a name as Python has it; a keyword gets an underscore.

    Raises
    ------
    Untypable
        Where it is no identifier.
    """
    if not name.isidentifier():
        raise Untypable(f"{name!r} is no name in Python")
    return f"{name}_" if keyword.iskeyword(name) else name


def shadows(names: Iterator[str]) -> bool:
    """Return whether a name hides a builtin."""
    return any(hasattr(builtins, name) for name in names)


def literal(choices: Any) -> str:
    """Return the type of one of several words."""
    return f"Literal[{', '.join(map(repr, choices))}]"


def clean(text: str) -> str:
    """Return a text that can stand in a docstring."""
    return text.replace("\\", "\\\\").replace('"""', "'''").strip()


def prose(text: str, indent: int) -> str:
    """Return a text wrapped and indented."""
    pad = " " * indent
    return fill(
        clean(text),
        WIDTH,
        initial_indent=pad,
        subsequent_indent=pad,
        break_long_words=False,
        break_on_hyphens=False,
    )


@dataclass
class Types:
    """Types of one module, with the classes that they need, in the order of their making.

    Attributes
    ----------
    components : mapping
        The document's schemas by name.
    homes : mapping
        Module of each component that another module defines.
    aliases : mapping
        Name of each choice that ``_words`` defines, by its type.
    """

    components: Mapping[str, Schema]
    homes: Mapping[str, str]
    aliases: Mapping[str, str] = field(default_factory=dict)
    classes: list[str] = field(default_factory=list)
    imports: set[str] = field(default_factory=set)

    def resolved(self, schema: Schema) -> Schema:
        """Return a schema with its reference followed."""
        if "$ref" not in schema:
            return schema
        return {**self.components[named(schema)], **schema}

    def asked(self, schema: Schema, name: str) -> str:
        """Return the type of a field of a request; ``name`` is for a class that it needs."""
        schema = self.resolved(schema)
        kind = shape(schema)
        if kind is not None:
            return {"quantity": "QuantityLike", "readings": "ReadingsLike"}[kind]
        if "enum" in schema:
            return self._choice(schema) if len(schema["enum"]) <= LONGEST_CHOICE else "str"
        if schema.get("type") == "array":
            return f"Sequence[{self.asked(schema['items'], one_of_many(name))}]"
        if "properties" in schema:
            return self.typed_dict(schema, name)
        return plain(schema, name)

    def _choice(self, schema: Schema) -> str:
        kind = literal(schema["enum"])
        return self.aliases.get(kind, kind)

    def typed_dict(self, schema: Schema, name: str) -> str:
        """Add the class of a section and return its name."""
        needed = schema.get("required", ())
        members, about = [], []
        for public, one in schema["properties"].items():
            if python_name(public) != public:
                raise Untypable(f"{name}.{public}: a keyword cannot be a key of a class")
            kind = self.asked(one, f"{name}{pascal(public)}")
            members.append(f"    {public}: {kind if public in needed else f'NotRequired[{kind}]'}")
            about.append(entry(public, kind, self.resolved(one)))
        words = schema.get("description", "") or "Fields of one entry"
        self.classes.append(class_text(f"class {name}(TypedDict):", words, about, members))
        return name

    def shape(self, schema: Schema) -> Any:
        """Return how a field is put into JSON; None where it goes as it is."""
        schema = self.resolved(schema)
        kind = shape(schema)
        if kind is not None:
            return kind
        if schema.get("type") == "array":
            inner = self.shape(schema["items"])
            return [inner] if inner else None
        inner = {n: self.shape(s) for n, s in schema.get("properties", {}).items()}
        return {n: s for n, s in inner.items() if s} or None

    def shown(self, schema: Schema, name: str) -> str:
        """Return the type of a member of an answer."""
        if "$ref" in schema:
            return self._component(named(schema))
        if "anyOf" in schema:
            kinds = [self.shown(one, name) for one in schema["anyOf"]]
            return " | ".join(dict.fromkeys(kinds))
        if "enum" in schema:
            return self._choice(schema)
        if schema.get("type") == "array":
            return f"tuple[{self.shown(schema['items'], one_of_many(name))}, ...]"
        if "properties" in schema:
            return self.dataclass(schema, name)
        if schema.get("type") == "object":
            inner = schema.get("additionalProperties")
            of = self.shown(inner, one_of_many(name)) if isinstance(inner, Mapping) else "Any"
            return f"Mapping[str, {of}]"
        return plain(schema, name)

    def _component(self, name: str) -> str:
        if name in KNOWN:
            return KNOWN[name]
        of = RENAMED.get(name, name)
        if name in self.homes:
            self.imports.add(f"from ringland._generated.{self.homes[name]} import {of}")
            return of
        return self.dataclass(self.components[name], of)

    def dataclass(self, schema: Schema, name: str) -> str:
        """Add the class of a record in an answer and return its name."""
        needed = schema.get("required", ())
        members, about = [], []
        for public, one in schema["properties"].items():
            kind = self.shown(one, f"{name}{pascal(public)}")
            sure = kind if public in needed else f"{kind} | None"
            default = "" if sure == kind else " = None"
            members.append(f"    {python_name(public)}: {sure}{default}")
            about.append(entry(python_name(public), sure, one))
        words = schema.get("description") or WORDS.get(name, "None is what cannot be known")
        head = f"@dataclass(frozen=True, kw_only=True)\nclass {name}:"
        found = class_text(head, words, about, members)
        if found not in self.classes:
            self.classes.append(found)
        return name


def named(schema: Schema) -> str:
    """Return the name of the component that a schema refers to."""
    return str(schema["$ref"]).rpartition("/")[2]


def shape(schema: Schema) -> str | None:
    """Return quantity or readings, where a resolved schema is one."""
    members = schema.get("properties", {}).keys()
    if {"value", "unit"} <= members:
        return "quantity"
    return "readings" if {"values", "unit"} <= members else None


def plain(schema: Schema, name: str) -> str:
    """Return the type of a bare value.

    Raises
    ------
    Untypable
        Where the schema says nothing that is understood here.
    """
    kinds = schema.get("type")
    listed = [kinds] if isinstance(kinds, str) else kinds or []
    if not listed or not set(listed) <= PLAIN.keys():
        raise Untypable(f"{name}: no type for {dict(schema)!r:.200}")
    # A number is the wider of the two in Python's types, as in JSON's.
    found = [k for k in listed if k != "integer" or "number" not in listed]
    return " | ".join(PLAIN[k] for k in found)


def entry(name: str, kind: str, schema: Schema) -> str:
    """Return a member as numpydoc lists it."""
    usual = schema.get("default")
    if isinstance(usual, Mapping):
        usual = f"{usual['value']} {usual['unit']}"
    elif isinstance(usual, bool):
        usual = "yes" if usual else "no"
    words = str(schema.get("description", ""))
    if usual not in (None, ""):
        words = f"{words} (default {usual})"
    short = kind if len(kind) < 60 else "str"
    return f"    {name} : {clean(short)}" + (f"\n{prose(words, 8)}" if words else "")


def class_text(head: str, words: str, about: list[str], members: list[str]) -> str:
    """Return a class of annotated members."""
    first, _, rest = words.partition(". ")
    lines = [head, f'    """{summary(first)}']
    if rest:
        lines += ["", prose(rest, 4)]
    lines += ["", "    Attributes", "    ----------", *about, '    """', "", *members]
    return "\n".join(lines)


def summary(words: str) -> str:
    """Return the first line of a docstring: a capital, a full stop, one line."""
    text = clean(words).rstrip(".")
    most = WIDTH - 8
    if len(text) > most:
        text = text[:most].rsplit(" ", 1)[0].rstrip(",;:") + " …"
    return f"{text[:1].upper()}{text[1:]}."
