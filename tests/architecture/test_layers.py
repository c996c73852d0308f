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
# The rooms, lowest first: a module imports from its own room and from those above it in this list.
ROOMS = (
    "core",
    "core.tables",
    "core.formulas",
    "core.metrology",
    "core.declare",
    "core.quantities",
    "core.engines",
    "core.calculations.general",
    "core.calculations.geometry",
    "core.calculations.cylinder",
    "core.calculations.head",
    "core.calculations.assembly",
    "core.calculations.engine_tests",
    "core.calculations.diagnosis",
    "core.calculations.machining",
    "core.calculations.order_card",
    "core.calculations.decision",
    "core.calculations.job",
    "core.calculations",
    "vocabulary",
    "units",
    "engine",
    "api",
    "api.shapes",
    "api.reading",
    "api.writing",
    "api.openapi",
    "api.routes",
    "api.app",
    "wsgi",
    "export_openapi",
)


def modules() -> list[Path]:
    return sorted(PACKAGE.rglob("*.py"))


def dotted(path: Path) -> str:
    parts = path.relative_to(PACKAGE).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


MODULES = {dotted(path): path for path in modules() if dotted(path)}


def room_of(module: str) -> str:
    """Return the narrowest room that a module lies in."""
    parts = module.split(".")
    names = (".".join(parts[:n]) for n in range(len(parts), 0, -1))
    return next(name for name in names if name in ROOMS)


def imports_of(path: Path) -> set[str]:
    """Return the modules imported, the project's own by their place below the package."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: relative import"
            module = str(node.module)
            inner = module.removeprefix("ringland_service").lstrip(".")
            within = {f"{inner}.{alias.name}".lstrip(".") for alias in node.names}
            own = within & MODULES.keys()
            found |= {f"ringland_service.{name}" for name in own} or {module}
    return found


def own_imports(path: Path) -> set[str]:
    names = (name for name in imports_of(path) if name.startswith("ringland_service."))
    return {name.removeprefix("ringland_service.") for name in names}


ARROWS = {name: own_imports(path) for name, path in MODULES.items()}


def test_imports_run_one_way() -> None:
    place = {name: ROOMS.index(room_of(name)) for name in MODULES}
    up = [f"{a} -> {b}" for a, names in ARROWS.items() for b in names if place[b] > place[a]]
    assert not up, "imports from a room above its own"


def test_no_modules_import_each_other_in_a_circle() -> None:
    left = {name: set(names) for name, names in ARROWS.items()}
    while free := {name for name, names in left.items() if not names & left.keys()}:
        left = {name: names for name, names in left.items() if name not in free}
    assert not left, "these import each other, directly or through others"


def test_private_modules_stay_in_their_folder() -> None:
    outside = [
        f"{name} -> {other}"
        for name, names in ARROWS.items()
        for other in names
        if other.rpartition(".")[2].startswith("_")
        if MODULES[other].parent != MODULES[name].parent
    ]
    assert not outside, "a private module (_name) is imported from its own folder only"


def test_every_room_is_lived_in() -> None:
    assert {room_of(name) for name in MODULES} == set(ROOMS)


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
