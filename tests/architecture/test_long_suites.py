"""The README's command leaves the long suites out; ``.ci/run`` runs them all the same."""

import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
# What takes longest and tells least about where a fault lies.
LONG = (
    "api/test_possible_engines.py",
    "api/test_schemathesis.py",
    "between/test_hash_seeds.py",
    "engine/test_draws_of_jobs.py",
)


def collected(*options: str) -> set[str]:
    """Return the files of tests that pytest would run."""
    done = subprocess.run(
        [sys.executable, "-m", "pytest", "-q", "--collect-only", *options, "tests"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return set(re.findall(r"^tests/([\w/]+\.py)", done.stdout, flags=re.MULTILINE))


@pytest.mark.long
def test_the_marker_parts_the_suites() -> None:
    """Every file is in one of the two runs of ``.ci/run``."""
    usual, long = collected(), collected("-m", "long")
    everything = {str(p.relative_to(ROOT / "tests")) for p in (ROOT / "tests").rglob("test_*.py")}
    assert usual | long == everything
    assert set(LONG) <= long
    assert not set(LONG) & usual


def test_the_run_of_everything_adds_them() -> None:
    script = (ROOT / ".ci" / "run").read_text("utf-8")
    assert script.index('-c "$command"') < script.index("pytest -n auto -m long")
    assert script.index("-m long") < script.index("grep -q '^SKIPPED'")
