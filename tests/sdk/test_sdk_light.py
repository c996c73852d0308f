"""What is imported when, and the public names; each in a fresh interpreter."""

import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

import ringland

ROOT = Path(__file__).parents[2]
HEAVY = ("flask", "pint", "numpy", "marshmallow", "ringland_service")


def loaded_after(code: str) -> set[str]:
    """Return the modules that a fresh interpreter has loaded after some code."""
    script = f"{code}\nimport sys\nprint(*sys.modules)"
    done = subprocess.run(
        [sys.executable, "-c", script], check=True, capture_output=True, text=True
    )
    return set(done.stdout.split())


def test_importing_the_package_loads_nothing_of_it() -> None:
    loaded = loaded_after("import ringland")
    assert not loaded & {*HEAVY, "requests", "json"}
    assert {name for name in loaded if name.startswith("ringland")} == {"ringland"}


def test_importing_the_pytest_plugin_loads_nothing_but_pytest() -> None:
    loaded = loaded_after("import ringland.pytest_plugin")
    assert "pytest" in loaded
    assert not loaded & {*HEAVY, "requests", "ringland._client"}


def test_a_client_loads_only_the_calculation_that_is_used() -> None:
    loaded = loaded_after(
        "import ringland\nclient = ringland.Client('http://127.0.0.1:1')\nclient.displacement"
    )
    assert not loaded & set(HEAVY)
    generated = {name.rpartition(".")[2] for name in loaded if "_generated." in name}
    assert generated == {"_words", "_parts", "_envelope", "displacement"}


def test_the_public_names_are_there_and_sorted() -> None:
    assert sorted(ringland.__all__) == ringland.__all__ == dir(ringland)
    for name in ringland.__all__:
        assert getattr(ringland, name) is not None
    with pytest.raises(AttributeError, match="module 'ringland' has no attribute 'Cliennt'"):
        ringland.Cliennt  # noqa: B018 - the access is the test


def test_one_version_for_everything() -> None:
    sdk = tomllib.loads((ROOT / "sdk" / "pyproject.toml").read_text("utf-8"))["project"]
    service = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    assert sdk["version"] == service["version"] == ringland.__version__
    assert sdk["optional-dependencies"]["embedded"] == [f"ringland-service=={sdk['version']}"]
