"""The wheel: alone with what it says it needs, and typed for those who use it."""

import importlib.metadata
import re
import shutil
import subprocess
import sys
import sysconfig
import venv
import zipfile
from email import message_from_bytes
from email.message import Message
from pathlib import Path

import pytest

SDK = Path(__file__).parents[2] / "sdk"


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the wheel from a copy, since a build leaves its traces beside the sources."""
    where = tmp_path_factory.mktemp("wheel")
    source = where / "source"
    shutil.copytree(SDK, source, ignore=shutil.ignore_patterns("__pycache__", "*.egg-info"))
    command = [sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--wheel-dir"]
    subprocess.run([*command, str(where), str(source)], check=True)
    [found] = where.glob("*.whl")
    return found


def metadata(wheel: Path) -> Message:
    with zipfile.ZipFile(wheel) as archive:
        [name] = [n for n in archive.namelist() if n.endswith(".dist-info/METADATA")]
        return message_from_bytes(archive.read(name))


def needed(requirements: list[str]) -> set[str]:
    """Return the distributions behind requirements, extras and other systems left out."""
    found: set[str] = set()
    for requirement in requirements:
        matched = re.match(r"[A-Za-z0-9._-]+", requirement)
        if matched and ";" not in requirement and matched[0] not in found:
            found |= {matched[0]} | needed(importlib.metadata.requires(matched[0]) or [])
    return found


@pytest.fixture(scope="module")
def python(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return an interpreter that has the wheel, what it needs by its own word, and nothing else."""
    where = tmp_path_factory.mktemp("alone")
    venv.create(where, symlinks=True)
    base = {"base": str(where), "platbase": str(where)}
    site = Path(sysconfig.get_path("purelib", "venv", base))
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(site)
    for name in needed(metadata(wheel).get_all("Requires-Dist", [])):
        for file in importlib.metadata.files(name) or []:
            if ".." not in file.parts and "__pycache__" not in file.parts:
                target = site / file
                target.parent.mkdir(parents=True, exist_ok=True)
                shutil.copy(str(file.locate()), target)
    return Path(sysconfig.get_path("scripts", "venv", base)) / "python"


def test_it_needs_requests_alone(wheel: Path) -> None:
    told = metadata(wheel).get_all("Requires-Dist", [])
    assert [line for line in told if "extra ==" not in line] == ["requests>=2.31"]
    assert [line for line in told if "extra ==" in line] == [
        'ringland-service==0.1.0; extra == "embedded"'
    ]
    assert metadata(wheel)["Requires-Python"] == ">=3.11"


def test_it_holds_the_package_and_nothing_else(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        names = archive.namelist()
        [entries] = [n for n in names if n.endswith("entry_points.txt")]
        told = archive.read(entries).decode()
    tops = {name.split("/")[0] for name in names}
    assert {top for top in tops if not top.endswith(".dist-info")} == {"ringland"}
    assert {"ringland/py.typed", "ringland/_generated/displacement.py"} <= set(names)
    assert "[console_scripts]\nringland = ringland.cli:main" in told
    assert "[pytest11]\nringland = ringland.pytest_plugin" in told


ALONE = """
import importlib.util, ringland
assert all(importlib.util.find_spec(n) is None for n in ("flask", "numpy", "ringland_service"))
for name in ringland.__all__:
    getattr(ringland, name)
with ringland.Client("http://127.0.0.1:1", retries=0) as client:
    try:
        client.displacement(bore="68 mm", stroke="66 mm")
    except ringland.ConnectionFailed:
        pass
    else:
        raise SystemExit("somebody listens on port 1")
try:
    ringland.Client.embedded()
except ringland.ServiceMissing as error:
    print(error)
"""


def test_it_works_with_requests_alone(python: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("PYTHONPATH")
    done = subprocess.run([str(python), "-I", "-c", ALONE], capture_output=True, text=True)
    assert (done.stderr, done.returncode) == ("", 0)
    assert "pip install 'ringland[embedded]'" in done.stdout


CONSUMER = """
from collections.abc import Mapping
from typing import Any

from ringland import Answer, BatchAnswer, Client, Quantity, ServiceError

def ask(client: Client) -> float:
    answer = client.displacement(
        bore="68 mm",
        stroke=(66, "mm"),
        new_bore=Quantity(68.5, "mm", uncertainty=0.01),
        limits={"class_limit": {"high": "250 cc", "standing": "maker"}},
        measuring={"instruments": [{"id": "gauge", "kind": "bore_gauge"}]},
        units="us",
    )
    change: Quantity | None = answer.result.change
    if change is not None and answer.verdict("class_limit").verdict == "fail":
        return change.value
    batch: BatchAnswer = client.displacement.batch(columns={"bore": ([68.0, None], "mm")})
    for one in client.job_card.many([{}]):
        if not isinstance(one, ServiceError):
            print(one.result.measure_next[0].why, batch.rows)
    clearance = client.piston_clearance(
        piston_size="51.95 mm",
        bore_survey={
            "depth": ([10.0], "mm"),
            "thrust_axis": ([52.0], "mm"),
            "pin_axis": ([52.0], "mm"),
        },
    )
    untyped: Answer[Mapping[str, Any]] = client.ask("displacement", bore="68 mm", stroke="66 mm")
    print(untyped.request_id)
    largest = clearance.result.clearance_max  # absent where defaults are off and it needs a figure
    return 0.0 if largest is None else largest.value

def wrong(client: Client) -> None:
    client.displacement(bore="68 mm")  # type: ignore[call-arg]
    client.displacement(bore=68, stroke="66 mm")  # type: ignore[arg-type]
    client.displacement(bore="68 mm", strok="66 mm")  # type: ignore[call-arg]
    client.displacement(bore="68 mm", stroke="66 mm", rule="lenient")  # type: ignore[arg-type]
    answer = client.displacement(bore="68 mm", stroke="66 mm")
    answer.result.displacment  # type: ignore[attr-defined]
    answer.verdicts[0].verdict == "passed"  # type: ignore[comparison-overlap]
    limits = {"class": {"high": "1 cc"}}
    client.displacement(bore="68 mm", stroke="66 mm", limits=limits)  # type: ignore[arg-type]
    client.displacment(bore="68 mm", stroke="66 mm")  # type: ignore[attr-defined]
"""


def test_it_is_typed_for_those_who_use_it(
    python: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("PYTHONPATH")
    (tmp_path / "consumer.py").write_text(CONSUMER, encoding="utf-8")
    (tmp_path / "mypy.ini").write_text("[mypy]\nstrict = True\n", encoding="utf-8")
    command = [sys.executable, "-m", "mypy", "--python-executable", str(python), "consumer.py"]
    done = subprocess.run(command, cwd=tmp_path, capture_output=True, text=True)
    assert (done.stdout, done.returncode) == ("Success: no issues found in 1 source file\n", 0)
