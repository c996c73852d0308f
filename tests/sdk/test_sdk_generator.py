"""The generator: up to date, telling what is not, and refusing what it cannot put into types."""

import importlib
import json
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

SDK = Path(__file__).parents[2] / "sdk"
GENERATED = SDK / "ringland" / "_generated"


def generate(*arguments: str) -> "subprocess.CompletedProcess[str]":
    command = [sys.executable, str(SDK / "generate.py"), *arguments]
    return subprocess.run(command, capture_output=True, text=True)


def test_the_generated_code_is_up_to_date_with_the_document() -> None:
    done = generate("--check")
    assert (done.returncode, done.stderr) == (0, "")


def test_what_differs_is_named_and_mended(tmp_path: Path) -> None:
    target = tmp_path / "generated"
    shutil.copytree(GENERATED, target, ignore=shutil.ignore_patterns("__pycache__"))
    (target / "displacement.py").unlink()
    (target / "_words.py").write_text("# changed\n", encoding="utf-8")
    (target / "of_old.py").write_text("", encoding="utf-8")
    done = generate("--check", "--target", str(target))
    assert done.returncode == 1
    assert done.stderr.splitlines() == [
        f"not up to date: {name}" for name in ("_words.py", "displacement.py", "of_old.py")
    ]
    assert not (target / "displacement.py").exists()
    assert generate("--target", str(target)).returncode == 0
    assert generate("--check", "--target", str(target)).returncode == 0
    assert not (target / "of_old.py").exists()


def test_the_generated_code_is_tidy() -> None:
    ruff = [sys.executable, "-m", "ruff"]
    for arguments in (["check", "--no-cache"], ["format", "--no-cache", "--check"]):
        done = subprocess.run([*ruff, *arguments, str(GENERATED)], capture_output=True, text=True)
        assert done.returncode == 0, done.stdout + done.stderr


@pytest.fixture
def generator(monkeypatch: pytest.MonkeyPatch) -> Any:
    monkeypatch.syspath_prepend(str(SDK))
    return importlib.import_module("generator.modules")


@pytest.fixture
def schemas(generator: Any) -> Any:
    return importlib.import_module("generator.schemas")


QUANTITY = {"type": "object", "properties": {"value": {"type": "number"}, "unit": {}}}
READINGS = {"type": "object", "properties": {"values": {}, "unit": {}}}


@pytest.mark.parametrize(
    ("schema", "kind"),
    [
        (QUANTITY, "QuantityLike"),
        ({"$ref": "#/components/schemas/Bore"}, "QuantityLike"),
        (READINGS, "ReadingsLike"),
        ({"type": "string", "enum": ["a", "b"]}, "Literal['a', 'b']"),
        ({"type": "string", "enum": ["on", "off"]}, "Switch"),
        ({"type": "string", "enum": [f"u{i}" for i in range(41)]}, "str"),
        ({"type": "integer"}, "int"),
        ({"type": ["number", "null"]}, "float | None"),
        ({"type": ["integer", "number"]}, "float"),
        ({"type": "array", "items": {"type": "string"}}, "Sequence[str]"),
        ({"type": "array", "items": {"properties": {"x": QUANTITY}}}, "Sequence[Row]"),
    ],
)
def test_the_type_of_what_is_asked(schemas: Any, schema: Any, kind: str) -> None:
    types = schemas.Types({"Bore": QUANTITY}, {}, {"Literal['on', 'off']": "Switch"})
    assert types.asked(schema, "Rows") == kind


@pytest.mark.parametrize(
    ("schema", "kind"),
    [
        ({"$ref": "#/components/schemas/QuantityValue"}, "Quantity"),
        ({"$ref": "#/components/schemas/Other"}, "Other"),
        ({"anyOf": [{"$ref": "#/c/QuantityValue"}, {"type": "null"}]}, "Quantity | None"),
        ({"type": "array", "items": {"type": ["string", "number"]}}, "tuple[str | float, ...]"),
        ({"type": "object"}, "Mapping[str, Any]"),
        ({"type": "object", "additionalProperties": {"type": "integer"}}, "Mapping[str, int]"),
        ({"type": "object", "properties": {"from": {"type": "string"}}}, "Part"),
    ],
)
def test_the_type_of_what_is_shown(schemas: Any, schema: Any, kind: str) -> None:
    types = schemas.Types({}, {"Other": "other"})
    assert types.shown(schema, "Part") == kind
    if kind == "Part":
        assert "    from_: str | None = None" in types.classes[0].splitlines()


@pytest.mark.parametrize("schema", [{}, {"type": "thing"}, {"oneOf": []}])
def test_a_schema_without_a_type_is_refused_by_name(schemas: Any, schema: Any) -> None:
    for of in (schemas.Types({}, {}).asked, schemas.Types({}, {}).shown):
        with pytest.raises(schemas.Untypable, match="TheField: no type for"):
            of(schema, "TheField")


def test_a_calculation_cannot_take_a_name_of_the_client(
    generator: Any, schemas: Any, document: dict[str, Any]
) -> None:
    paths = document["paths"]
    changed = {**document, "paths": {**paths, "/v1/close": paths["/v1/displacement"]}}
    with pytest.raises(schemas.Untypable, match="cannot be called close"):
        generator.files(changed)


def test_the_names_of_the_client_are_all_kept(generator: Any) -> None:
    from ringland import Client

    with Client("http://127.0.0.1:1") as client:
        own = {name for name in vars(Client) if not name.startswith("_")} | {"caller"}
        assert {name for name in vars(client) if not name.startswith("_")} <= own
    assert own <= generator.TAKEN


def test_a_field_that_hides_a_builtin_is_marked(generator: Any, document: dict[str, Any]) -> None:
    changed = json.loads(json.dumps(document))
    request = changed["components"]["schemas"]["DisplacementRequest"]["properties"]
    request["type"] = {"type": "string", "description": 'a "quoted" \\ word'}
    text = generator.files(changed)["displacement.py"]
    assert "# ruff: noqa: A002" in text
    assert "# ruff: noqa" not in generator.files(document)["displacement.py"]
    compile(text, "displacement.py", "exec")
