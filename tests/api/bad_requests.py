"""The tables of bad requests: what is sent, and what must be said of it."""

import json
from dataclasses import dataclass
from typing import Any

from asking import BORE, ENGINE


@dataclass(frozen=True)
class Bad:
    """One bad request and what must be said of it."""

    name: str
    status: int
    code: str
    pointer: str
    says: str
    body: Any = None
    path: str = "displacement"

    def __str__(self) -> str:
        return self.name

    @property
    def data(self) -> bytes:
        """The body as sent."""
        return self.body if isinstance(self.body, bytes) else json.dumps(self.body).encode()


def engine(**changed: Any) -> dict[str, Any]:
    """Return a sound request with fields changed."""
    return {**ENGINE, **changed}


def bore(**changed: Any) -> dict[str, Any]:
    """Return a request whose bore has members changed."""
    return engine(bore={**BORE, **changed})


def measured(kind: str, **more: Any) -> dict[str, Any]:
    """Return a request whose bore names an instrument of a kind."""
    measuring = {"instruments": [{"id": "mine", "kind": kind}]}
    return engine(bore={**BORE, "instrument": "mine", **more}, measuring=measuring)


def limited(**sides: Any) -> dict[str, Any]:
    """Return a request with a limit on the class."""
    return engine(class_limit={"value": 250, "unit": "cc"}, limits={"class_limit": sides})


def cc(number: float) -> dict[str, Any]:
    return {"value": number, "unit": "cc"}


UNREADABLE = [
    Bad("5,000 digits", 400, "not_a_number", "#", "too long", b'{"bore": ' + b"9" * 5000 + b"}"),
    Bad("41 digits", 400, "not_a_number", "#", "41 digits", b'{"bore": ' + b"9" * 41 + b"}"),
    Bad("3,000 brackets", 400, "too_deep", "#", "24 levels", b"[" * 3000 + b"]" * 3000),
    Bad("3,000 braces", 400, "too_deep", "#", "24 levels", b'{"a":' * 3000 + b"1" + b"}" * 3000),
    Bad("brackets unclosed", 400, "too_deep", "#", "24 levels", b"[" * 100_000),
    Bad("a key twice", 400, "duplicate_key", "#", "'bore'", b'{"bore": 1, "bore": 2}'),
    Bad("a key twice within", 400, "duplicate_key", "#", "'x'", b'{"bore": {"x": 1, "x": 1}}'),
    Bad("NaN", 400, "not_a_number", "#", "NaN", b'{"bore": NaN}'),
    Bad("Infinity", 400, "not_a_number", "#", "Infinity", b'{"bore": Infinity}'),
    Bad("minus Infinity", 400, "not_a_number", "#", "-Infinity", b'{"bore": -Infinity}'),
    Bad("1e999", 400, "not_a_number", "#", "too large", b'{"bore": 1e999}'),
    Bad("-1e999", 400, "not_a_number", "#", "too large", b'{"bore": -1e999}'),
    Bad("half a pair", 400, "not_text", "#", "surrogate", b'{"bore": "\\ud800"}'),
    Bad("half a pair as key", 400, "not_text", "#", "surrogate", b'{"\\udfff": 1}'),
    Bad("raw surrogate", 400, "not_utf8", "#", "UTF-8", b'{"bore": "\xed\xa0\x80"}'),
    Bad("byte order mark", 400, "not_json", "#", "BOM", b"\xef\xbb\xbf{}"),
    Bad("UTF-16", 400, "not_utf8", "#", "UTF-8", '{"bore": 1}'.encode("utf-16")),
    Bad("UTF-16 unmarked", 400, "not_json", "#", "not JSON", '{"a": 1}'.encode("utf-16-le")),
    Bad("Latin-1", 400, "not_utf8", "#", "UTF-8", '{"bore": "é"}'.encode("latin-1")),
    Bad("empty", 400, "empty_body", "#", "send a JSON object", b""),
    Bad("blank", 400, "empty_body", "#", "send a JSON object", b" \n"),
    Bad("cut off", 400, "not_json", "#", "line 1 column", b'{"bore": '),
    Bad("single quotes", 400, "not_json", "#", "line 1 column", b"{'bore': 1}"),
    Bad("two values", 400, "not_json", "#", "Extra data", b"{} {}"),
    Bad("trailing comma", 400, "not_json", "#", "not JSON", b'{"bore": 1,}'),
    Bad("control character", 400, "not_json", "#", "control character", b'{"a": "\x00"}'),
    *(
        Bad(f"body is {text}", 400, "wrong_type", "#", "JSON object is needed", text.encode())
        for text in ("[]", "null", "true", "1", '"bore"', "[{}]")
    ),
]

FORMS = [
    Bad("unknown field", 400, "unknown_field", "#/boar", "not known", engine(boar=BORE)),
    Bad("missing field", 400, "missing_field", "#/stroke", "as 66 mm", {"bore": BORE}),
    Bad("null field", 400, "null", "#/bore", "leave the field out", engine(bore=None)),
    Bad("null value", 400, "wrong_type", "#/bore/value", "not a number", bore(value=None)),
    Bad("bool", 400, "wrong_type", "#/bore/value", "not a number: True", bore(value=True)),
    Bad("text", 400, "wrong_type", "#/bore/value", "not a number: '68'", bore(value="68")),
    Bad("list", 400, "wrong_type", "#/bore/value", "not a number", bore(value=[68])),
    Bad("bare number", 400, "not_a_quantity", "#/bore", '{"value": 68', engine(bore=68)),
    Bad("text quantity", 400, "not_a_quantity", "#/bore", '{"value": 68', engine(bore="68 mm")),
    Bad("no value", 400, "missing_field", "#/bore/value", "missing", engine(bore={"unit": "mm"})),
    Bad("no unit", 400, "missing_unit", "#/bore", "such as mm", engine(bore={"value": 68})),
    Bad("null unit", 400, "missing_unit", "#/bore", "such as mm", bore(unit=None)),
    Bad("number as unit", 400, "wrong_type", "#/bore/unit", "a text", bore(unit=25.4)),
    Bad("unknown unit", 400, "unknown_unit", "#/bore/unit", "length", bore(unit="furlong")),
    Bad("unit of another kind", 400, "unknown_unit", "#/bore/unit", "length", bore(unit="cc")),
    Bad("unknown member", 400, "unknown_field", "#/bore/u", "'u'", bore(u=1)),
    Bad(
        "text as count",
        400,
        "wrong_type",
        "#/cylinder_count",
        "whole number",
        engine(cylinder_count="2"),
    ),
    Bad(
        "bool as count",
        400,
        "wrong_type",
        "#/cylinder_count",
        "whole number",
        engine(cylinder_count=True),
    ),
    Bad(
        "part of a count",
        400,
        "wrong_type",
        "#/cylinder_count",
        "whole number",
        engine(cylinder_count=1.5),
    ),
    Bad("rule unknown", 400, "not_a_choice", "#/rule", "guard_2u", engine(rule="lenient")),
    Bad("defaults bool", 400, "not_a_choice", "#/defaults", "'on'", engine(defaults=True)),
    Bad(
        "choice unknown",
        400,
        "not_a_choice",
        "#/bore_kind",
        "iron",
        {"bore": BORE, "bore_kind": "cheese"},
        "ring-gap",
    ),
    Bad(
        "number as flag",
        400,
        "wrong_type",
        "#/throttle_open",
        "neither true nor false",
        {"reading": {"value": 880, "unit": "kPa"}, "throttle_open": 1},
        "compression-level",
    ),
    Bad(
        "bare readings",
        400,
        "not_a_quantity",
        "#/readings",
        '"values"',
        {"readings": [1180, 760]},
        "cylinder-spread",
    ),
    Bad(
        "one of the readings",
        400,
        "wrong_type",
        "#/readings/values/1",
        "'x'",
        {"readings": {"values": [1180, "x"], "unit": "kPa"}},
        "cylinder-spread",
    ),
    Bad(
        "section is a list",
        400,
        "wrong_type",
        "#/engine",
        "JSON object",
        {"engine": []},
        "job-card",
    ),
    Bad(
        "field of a section",
        400,
        "unknown_field",
        "#/engine/boar",
        "not known",
        {"engine": {"boar": BORE}},
        "job-card",
    ),
]


QUERIES = [
    ("displacement", "bore=68mm&bore=69mm&stroke=66mm", "given_twice", "#/bore", "twice"),
    ("displacement", "bore=68mm&stroke=66mm&x=1", "unknown_field", "#/x", "no such parameter"),
    ("displacement", "bore=68&stroke=66mm", "missing_unit", "#/bore", "write 68 mm"),
    ("displacement", "bore=&stroke=66mm", "not_a_quantity", "#/bore", "write 68 mm"),
    ("displacement", "bore=abc&stroke=66mm", "not_a_quantity", "#/bore", "write 68 mm"),
    ("displacement", "bore=68,5mm&stroke=66mm", "unknown_unit", "#/bore/unit", "length"),
    ("displacement", "bore=NaN mm&stroke=66mm", "not_a_quantity", "#/bore", "write 68 mm"),
    ("displacement", "bore=1_0mm&stroke=66mm", "unknown_unit", "#/bore/unit", "length"),
    ("displacement", "bore=٦٨mm&stroke=66mm", "not_a_quantity", "#/bore", "write 68 mm"),
    ("displacement", "bore=68mm%2B/-x&stroke=66mm", "not_a_quantity", "#/bore", "write 68 mm"),
    (
        "displacement",
        "bore=68mm&stroke=66mm&cylinder_count=two",
        "wrong_type",
        "#/cylinder_count",
        "number",
    ),
    ("displacement", "bore=68mm&stroke=66mm&units=si", "not_a_choice", "#/units", "metric"),
    ("displacement", "bore=68mm&stroke=66mm&trace=1", "not_a_choice", "#/trace", "true"),
    ("displacement", "bore=68mm", "missing_field", "#/stroke", "needed: stroke, such as 66 mm"),
    ("displacement", "", "missing_field", "#/bore", "needed"),
    ("displacement", "bore=68mm&stroke=66mm&pick=swept", "unknown_field", "#/pick", "no such"),
    (
        "displacement",
        "bore=68mm&stroke=66mm&limit.class.high=1cc",
        "unknown_field",
        "#/limit.class.high",
        "no such limit",
    ),
    (
        "displacement",
        "bore=68mm&stroke=66mm&limit.class_limit.high=1",
        "missing_unit",
        "#/limit.class_limit.high",
        "write",
    ),
    (
        "compression-ratio",
        "limit.compression_ratio.high=9&limit.compression_ratio.high=10",
        "given_twice",
        "#/limit.compression_ratio.high",
        "twice",
    ),
    (
        "compression-ratio",
        "limit.compression_ratio.middle=9",
        "unknown_field",
        "#/limit.compression_ratio.middle",
        "no such limit",
    ),
]
