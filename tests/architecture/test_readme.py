"""The README's commands run, and give the answers that it prints."""

import contextlib
import io
import os
import re
import shlex
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from live_server import running_gunicorn

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text("utf-8")
BLOCKS = re.findall(r"```(\w+)([^\n]*)\n(.*?)```", README, flags=re.DOTALL)
ADDRESS = "http://127.0.0.1:8000"


def answered(language: str) -> list[tuple[str, str]]:
    """Return the blocks of a language that are followed by the answer that they give."""
    return [
        (code, BLOCKS[i + 1][2])
        for i, (name, _, code) in enumerate(BLOCKS[:-1])
        if name == language and BLOCKS[i + 1][0] == "text"
    ]


@pytest.fixture(scope="module")
def server() -> Iterator[str]:
    with running_gunicorn() as address:
        yield address


def test_readme_is_short_and_opens_with_the_job() -> None:
    lines = README.splitlines()
    assert len(lines) < 120
    assert lines[0] == "# Ringland"
    assert "compression test" in lines[2]


def test_the_two_set_up_commands_stand_in_it() -> None:
    marks = {mark.strip(): code for name, mark, code in BLOCKS if name == "bash" and mark.strip()}
    assert marks.keys() == {"setup", "tests", "server"}
    assert all(len(code.strip().splitlines()) == 1 for code in marks.values())


@pytest.mark.parametrize(("code", "answer"), answered("bash"), ids=["one number", "a verdict"])
def test_curl(code: str, answer: str, server: str) -> None:
    if shutil.which("curl") is None:
        pytest.skip("needs curl (Debian package curl)")
    command = shlex.split(code.replace("\\\n", " ").replace(ADDRESS, server))
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60)
    assert done.stdout.replace("\r\n", "\n").strip() == answer.strip()


def test_the_page_of_a_job(server: str) -> None:
    if shutil.which("curl") is None:
        pytest.skip("needs curl (Debian package curl)")
    (code,) = [code for name, _, code in BLOCKS if name == "bash" and "job-card.html" in code]
    command = shlex.split(code.replace("\\\n", " ").replace(ADDRESS, server))
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60, cwd=ROOT)
    assert done.stdout.startswith("<!doctype html>")
    assert (
        "Bore to an oversize piston" in done.stdout or "bore to an oversize piston" in done.stdout
    )


@pytest.mark.parametrize(("code", "answer"), answered("python"), ids=["client"])
def test_python(code: str, answer: str) -> None:
    out = io.StringIO()
    with contextlib.redirect_stdout(out):
        exec(compile(code, "README.md", "exec"), {})  # noqa: S102 - the README's own code
    assert out.getvalue() == answer


def test_the_shell_commands_run() -> None:
    named = re.findall(r"`(ringland (?:ask|list)[^`]*)`", README)
    assert len(named) >= 2
    for command in named:
        arguments = shlex.split(command)[1:]
        done = subprocess.run(
            [sys.executable, "-m", "ringland.cli", *arguments],
            capture_output=True,
            text=True,
            check=False,
            timeout=60,
            env={**os.environ, "NO_COLOR": "1"},
        )
        assert done.returncode == 0, done.stderr
        assert done.stdout


def test_the_demo_job_prints_a_card() -> None:
    setup = next(code for _, mark, code in BLOCKS if mark.strip() == "setup")
    path = setup.split()[-1]
    done = subprocess.run(
        [sys.executable, "-m", "ringland.cli", "job", path],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert done.returncode == 0, done.stderr
    for part in ("JOB CARD", "Verdicts", "What to measure next", "Cautions", "TOO CLOSE TO CALL"):
        assert part in done.stdout


def test_links_lead_somewhere() -> None:
    for target in re.findall(r"\]\(([^)]+)\)", README):
        assert (ROOT / target).exists(), target
