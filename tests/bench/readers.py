"""Requests that grow: for every reader of the service, what could cost it more than its length."""

import json
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from flask import Flask
from werkzeug.test import EnvironBuilder, run_wsgi_app

JSON, CSV, LINES = "application/json", "text/csv", "application/x-ndjson"
MM = {"unit": "mm"}
BORE, STROKE = {"value": 68.0, **MM}, {"value": 66.0, **MM}
ENGINE = {"bore": BORE, "stroke": STROKE}


@dataclass(frozen=True)
class Growing:
    """A request of any size.

    Attributes
    ----------
    name : str
    size : int
        The smaller of the two sizes to compare.
    body : callable or None
        Makes the body of a size; None asks by GET.
    path : str
    kind : str
        The media type of the body.
    query, headers : callable or None
        Make the query string and the headers of a size.
    """

    name: str
    size: int
    body: Callable[[int], bytes] | None = None
    path: str = "/v1/displacement"
    kind: str = JSON
    query: Callable[[int], str] | None = None
    headers: Callable[[int], dict[str, str]] | None = None

    def __str__(self) -> str:
        return self.name

    def environ(self, size: int) -> dict[str, Any]:
        """Return the WSGI environment of the request at a size."""
        return EnvironBuilder(
            path=self.path,
            method="GET" if self.body is None else "POST",
            data=None if self.body is None else self.body(size),
            content_type=None if self.body is None else self.kind,
            query_string="" if self.query is None else self.query(size),
            headers={} if self.headers is None else self.headers(size),
        ).get_environ()


def send(app: Flask, environ: dict[str, Any]) -> tuple[int, int]:
    """Send a request once more, past any client, and return status and length of the answer."""
    environ["wsgi.input"].seek(0)
    body, status, _ = run_wsgi_app(app.wsgi_app, dict(environ), buffered=True)
    return int(status.split()[0]), len(b"".join(body))


def dumped(make: Callable[[int], Any]) -> Callable[[int], bytes]:
    """Return a maker of JSON text."""
    return lambda n: json.dumps(make(n)).encode()


def within(of: bytes, after: bytes = b"") -> Callable[[int], bytes]:
    """Return a maker of text with one part repeated."""
    return lambda n: of * n + after


def text(part: bytes) -> Callable[[int], bytes]:
    """Return a maker of one JSON text that repeats a part."""
    return lambda n: b'{"bore": "' + part * n + b'"}'


def keys(n: int) -> dict[str, int]:
    return {f"key{i}": i for i in range(n)}


def twice(n: int) -> bytes:
    """An object whose last key repeats the last but one."""
    members = [f'"key{i}": 1' for i in range(n - 1)]
    return ("{" + ", ".join([*members, members[-1]]) + "}").encode()


def columns(values: Callable[[int], list[Any]]) -> Callable[[int], bytes]:
    """Return a maker of a batch in columns."""
    return dumped(
        lambda n: {"shared": {"stroke": STROKE}, "columns": {"bore": {**MM, "values": values(n)}}}
    )


def lists(n: int, even: list[Any], odd: list[Any]) -> dict[str, Any]:
    """Return columns, by turns of one list and of another."""
    return {f"c{i}": {"values": odd if i % 2 else even} for i in range(n)}


def wide(n: int) -> bytes:
    """Return a table of columns that nobody knows."""
    return (",".join(keys(n)) + "\n" + ",".join("1" * n) + "\n").encode()


def alike(n: int) -> bytes:
    """Return a table of columns of one name."""
    return (",".join(["bore [mm]"] * n) + "\n" + ",".join("1" * n) + "\n").encode()


def beside(n: int) -> bytes:
    """Return a batch whose columns stand under shared as well."""
    return json.dumps({"columns": lists(n, [1], [1]), "shared": keys(n)}).encode()


def unlike(n: int) -> bytes:
    """Return lines, each with a field of its own that nobody knows."""
    return b"".join(b'{"bor%d": 1}\n' % i for i in range(n))


def measured(n: int) -> dict[str, Any]:
    return {**ENGINE, "measuring": {"instruments": [{"id": "a"}] * n}}


def table(row: str, head: str = "bore [mm],stroke [mm]") -> Callable[[int], bytes]:
    """Return a maker of a table of one row repeated."""
    return lambda n: (head + "\n" + f"{row}\n" * n).encode()


BODIES = [
    ("keys, unknown", 1_000, dumped(keys)),
    ("keys, too many", 20_000, dumped(keys)),
    ("keys, one twice", 1_000, twice),
    ("keys, too many, one twice", 50_000, twice),
    ("keys, all alike", 50_000, lambda n: b"{" + b'"a": 1, ' * n + b'"a": 1}'),
    ("keys within a quantity", 1_000, dumped(lambda n: {**ENGINE, "bore": keys(n)})),
    ("keys within limits", 1_000, dumped(lambda n: {**ENGINE, "limits": keys(n)})),
    ("objects in a list", 30_000, dumped(lambda n: {"bore": [{"a": 1}] * n})),
    ("one key, long", 100_000, lambda n: b'{"' + b"k" * n + b'": 1}'),
    ("brackets, nested", 200_000, lambda n: b"[" * n + b"]" * n),
    ("brackets, unclosed", 100_000, within(b"[")),
    ("braces, nested", 100_000, lambda n: b'{"a":' * n + b"1" + b"}" * n),
    ("brackets, flat", 50_000, lambda n: b'{"bore": [' + b"[]," * n + b"[]]}"),
    ("brackets, in steps", 20_000, lambda n: b"[" + b"[[[[[[]]]]]]," * n + b"[]]"),
    ("brackets in a text", 200_000, text(b"[{")),
    ("text, plain", 200_000, text(b"x")),
    ("text, of escapes", 200_000, text(b"\\\\")),
    ("text, of quotes", 200_000, text(b'\\"')),
    ("text, of pairs", 50_000, text(b"\\ud83d\\ude00")),
    ("text, not closed", 100_000, lambda n: b'{"bore": "' + b'\\"' * n),
    ("text, brackets, not closed", 200_000, lambda n: b"[" * 30 + b'"' + b'\\"[' * n),
    ("texts, many", 50_000, dumped(lambda n: {"bore": ["é"] * n})),
    ("texts with pairs, many", 20_000, lambda n: b'{"bore": [' + b'"\\ud83d\\ude00",' * n + b"1]}"),
    ("white space", 200_000, lambda n: b" " * n + b"{}"),
    ("lines before a fault", 200_000, lambda n: b"\n" * n + b"{x"),
    ("decimals", 100_000, lambda n: b'{"bore": ' + b"9" * n + b"}"),
    ("digits after the point", 100_000, lambda n: b'{"bore": 1.' + b"1" * n + b"}"),
    ("zeros before the point's digits", 100_000, lambda n: b'{"bore": 0.' + b"0" * n + b"1}"),
    ("digits of an exponent", 100_000, lambda n: b'{"bore": 1e' + b"0" * n + b"1}"),
    ("bytes that are no text", 200_000, within(b"\xff")),
    ("a unit, long", 100_000, dumped(lambda n: {**ENGINE, "bore": {"value": 68, "unit": "m" * n}})),
    ("a choice, long", 100_000, dumped(lambda n: {**ENGINE, "rule": "r" * n})),
    ("a check, long", 100_000, dumped(lambda n: {**ENGINE, "limits": {"c" * n: {}}})),
    (
        "an instrument's name, long",
        100_000,
        dumped(lambda n: {**ENGINE, "bore": {**BORE, "instrument": "i" * n}}),
    ),
    (
        "instruments",
        30_000,
        dumped(lambda n: {**ENGINE, "measuring": {"instruments": [{"id": "a"}] * n}}),
    ),
]
ELSEWHERE = [
    (
        "readings",
        100_000,
        "cylinder-spread",
        dumped(lambda n: {"readings": {"values": [900] * n, "unit": "kPa"}}),
    ),
    ("records", 30_000, "bore-survey", dumped(lambda n: {"readings": [{}] * n})),
    ("choices", 50_000, "job-card", dumped(lambda n: {"engine": {}, "complaints": ["smoke"] * n})),
]
BATCHES = [
    ("rows", 5_000, JSON, columns(lambda n: [68.0 + i / n for i in range(n)])),
    ("rows, bad", 2_500, JSON, columns(lambda n: ["x"] * n)),
    ("rows, out of bounds", 2_500, JSON, columns(lambda n: [1.0] * n)),
    ("rows, too many", 100_000, JSON, columns(lambda n: [68.0] * n)),
    ("columns, unknown", 1_000, JSON, dumped(lambda n: {"columns": lists(n, [1], [1])})),
    ("columns that are none", 1_000, JSON, dumped(lambda n: {"columns": keys(n)})),
    ("columns of unlike length", 1_000, JSON, dumped(lambda n: {"columns": lists(n, [1], [1, 2])})),
    ("columns beside shared", 1_000, JSON, beside),
    ("table rows", 4_000, CSV, table("68.0,66.0")),
    ("table rows, bad", 2_500, CSV, table("x,66.0")),
    ("table rows, too many", 50_000, CSV, table("68.0,66.0")),
    ("table rows, ragged", 50_000, CSV, table("68.0")),
    ("table rows, empty", 100_000, CSV, table("")),
    ("table columns, unknown", 1_000, CSV, wide),
    ("table columns, alike", 1_000, CSV, alike),
    ("table columns, too many", 50_000, CSV, lambda n: b"a," * n + b"a\n" + b"1," * n + b"1\n"),
    ("table header of blanks", 50_000, CSV, lambda n: b"bore" + b" " * n + b"x\n1\n"),
    ("table header of letters", 50_000, CSV, lambda n: b"b" * n + b"!\n1\n"),
    ("table header of brackets", 50_000, CSV, lambda n: b"bore " + b"[" * n + b"\n1\n"),
    ("table cell, digits", 50_000, CSV, lambda n: b"bore [mm]\n" + b"9" * n + b"\n"),
    ("table cell, long", 100_000, CSV, lambda n: b"bore [mm]\n" + b"x" * n + b"\n"),
    ("table of quotes", 200_000, CSV, within(b'"')),
    ("lines", 300, LINES, lambda n: (json.dumps(ENGINE) + "\n").encode() * n),
    ("lines, bad", 300, LINES, within(b'{"boar": 1, "strok": 2}\n')),
    ("lines, each bad in its way", 300, LINES, unlike),
    ("lines, no JSON", 1_000, LINES, within(b"x\n")),
    ("lines, empty", 100_000, LINES, within(b"\n")),
    ("lines, too many", 50_000, LINES, within(b"{}\n")),
    ("line, long", 100_000, LINES, lambda n: b'{"bore": "' + b"x" * n + b'"}\n'),
]  # fmt: skip
QUERIES = [
    ("parameters, unknown", 1_000, lambda n: "&".join(f"p{i}=1" for i in range(n))),
    ("parameters, too many", 50_000, lambda n: "&".join(f"p{i}=1" for i in range(n))),
    ("parameter, many times", 1_000, lambda n: "&".join(["bore=68mm"] * n)),
    ("parameter, far too many times", 50_000, lambda n: "&".join(["bore=68mm"] * n)),
    ("limits, unknown", 1_000, lambda n: "&".join(f"limit.c{i}.low=1" for i in range(n))),
    ("separators", 40_000, lambda n: "&" * n),
    ("name, long", 40_000, lambda n: "b" * n + "=1"),
    ("name, of dots", 40_000, lambda n: "limit" + "." * n + "=1"),
    ("value, of digits", 40_000, lambda n: "bore=" + "9" * n + "mm"),
    ("value, of blanks", 40_000, lambda n: "bore=68" + "+" * n + "mm"),
    ("value, of signs", 40_000, lambda n: "bore=68mm" + "%C2%B1" * n),
    ("value, of escapes", 40_000, lambda n: "bore=" + "%20" * n),
    ("value, of broken escapes", 40_000, lambda n: "bore=" + "%ff" * n),
    ("count, of digits", 40_000, lambda n: "cylinder_count=" + "1" * n),
    ("count, of points", 40_000, lambda n: "cylinder_count=" + "1." * n),
    ("choice, long", 40_000, lambda n: "rule=" + "g" * n),
    ("option, long", 40_000, lambda n: "units=" + "u" * n),
]
HEADERS = [
    ("Accept, many forms", "Accept", 1_000, lambda n: ", ".join(f"a/b{i};q=0.5" for i in range(n))),
    ("Accept, many parameters", "Accept", 1_000, lambda n: "text/csv" + ";a=b" * n),
    ("Accept, blanks", "Accept", 8_000, lambda n: "text/csv;" + " " * n + "x"),
    ("Accept, quotes", "Accept", 8_000, lambda n: 'text/csv;a="' + '\\"' * n),
    ("If-None-Match, many", "If-None-Match", 2_000, lambda n: ", ".join(['"a"'] * n)),
    ("If-None-Match, blanks", "If-None-Match", 8_000, lambda n: " " * n + "x"),
    ("X-Request-ID, long", "X-Request-ID", 50_000, lambda n: "a" * n + "!"),
]  # fmt: skip
TYPES = [
    ("Content-Type, many parameters", 1_000, lambda n: "application/json" + ";a=b" * n),
    ("Content-Type, blanks", 8_000, lambda n: "application/json;" + " " * n + "x"),
    ("Content-Type, quotes", 8_000, lambda n: 'application/json;a="' + '\\"' * n),
]
GOOD = "bore=68mm&stroke=66mm"

GROWING = [
    *(Growing(name, size, body) for name, size, body in BODIES),
    *(Growing(name, size, body, f"/v1/{path}") for name, size, path, body in ELSEWHERE),
    *(Growing(n, size, body, "/v1/displacement/batch", kind) for n, size, kind, body in BATCHES),
    *(Growing(f"query: {name}", size, query=query) for name, size, query in QUERIES),
    *(
        Growing(
            f"header: {name}",
            size,
            query=lambda n: GOOD,
            headers=lambda n, header=header, make=make: {header: make(n)},  # type: ignore[misc]
        )
        for name, header, size, make in HEADERS
    ),
    *(
        Growing(
            f"header: {name}",
            size,
            dumped(lambda n: ENGINE),
            headers=lambda n, make=make: {"Content-Type": make(n)},  # type: ignore[misc]
        )
        for name, size, make in TYPES
    ),
]
