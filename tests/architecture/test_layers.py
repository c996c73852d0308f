"""Imports run one way: core < units < engine < api; the core knows no framework."""

import ast
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

import ringland_service

PACKAGE = Path(ringland_service.__file__).parent
ROOT = PACKAGE.parents[1]
CORE_MAY = {"numpy"}
# Layer by first path part below the package, lowest first.
LAYERS = {"core": 0, "vocabulary": 1, "units": 1, "engine": 2, "api": 3, "wsgi": 4}


def modules() -> list[Path]:
    return sorted(PACKAGE.rglob("*.py"))


def layer_of(dotted: str) -> int | None:
    part = dotted.removeprefix("ringland_service").lstrip(".").partition(".")[0]
    return LAYERS.get(part)


def imports_of(path: Path) -> set[str]:
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: relative import"
            found.add(str(node.module))
            if node.module == "ringland_service":
                found |= {f"ringland_service.{alias.name}" for alias in node.names}
    return found


def own_layer(path: Path) -> int | None:
    parts = path.relative_to(PACKAGE).with_suffix("").parts
    return layer_of(".".join(["ringland_service", *parts]))


LAYERED = [path for path in modules() if own_layer(path) is not None]


@pytest.mark.parametrize("path", LAYERED, ids=lambda p: str(p.relative_to(PACKAGE)))
def test_no_module_imports_from_a_layer_above(path: Path) -> None:
    own = own_layer(path)
    assert own is not None
    for name in imports_of(path):
        other = layer_of(name) if name.startswith("ringland_service.") else None
        assert other is None or other <= own, f"{path.name} imports {name}"


@pytest.mark.parametrize(
    "path", sorted((PACKAGE / "core").rglob("*.py")), ids=lambda p: str(p.relative_to(PACKAGE))
)
def test_core_imports_numpy_and_the_standard_library_alone(path: Path) -> None:
    for name in imports_of(path):
        top = name.partition(".")[0]
        known = top == "ringland_service" or top in CORE_MAY or top in sys.stdlib_module_names
        assert known, f"{path.name} imports {name}"


BLOCKED = """
import sys
import tomllib
class Wall:
    def find_spec(self, name, path=None, target=None):
        if name.partition(".")[0] in {"flask", "marshmallow", "pint", "werkzeug", "requests"}:
            raise ImportError("blocked: " + name)
sys.meta_path.insert(0, Wall())
import ringland_service.core.calculations as c
print(len(c.CALCULATIONS))
"""


def test_core_runs_where_the_frameworks_are_missing() -> None:
    done = subprocess.run(
        [sys.executable, "-c", BLOCKED], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    assert int(done.stdout) > 0


def test_no_file_needs_scrolling() -> None:
    long = [
        f"{path.relative_to(ROOT)}: {count}"
        for folder in ("service", "sdk", "tests")
        for path in (ROOT / folder).rglob("*.py")
        if "_generated" not in path.parts and "build" not in path.parts
        if (count := len(path.read_text("utf-8").splitlines())) > 330
    ]
    assert not long, "split by subject"


def test_the_two_distributions_have_one_version() -> None:
    service = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    sdk = tomllib.loads((ROOT / "sdk" / "pyproject.toml").read_text("utf-8"))["project"]
    assert service["version"] == sdk["version"] == ringland_service.__version__
