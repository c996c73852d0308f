"""ruff and mypy --strict over service and SDK, as part of the test command."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize(
    "command",
    [
        ["ruff", "check", "."],
        ["ruff", "format", "--check", "."],
        ["mypy", "service/ringland_service", "sdk/ringland"],
    ],
    ids=["ruff check", "ruff format", "mypy --strict"],
)
def test_clean(command: list[str], tmp_path: Path) -> None:
    tool, *arguments = command
    cache = ["--cache-dir", str(tmp_path)]
    done = subprocess.run(
        [sys.executable, "-m", tool, *arguments, *cache],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr
