"""Mutation testing of the arithmetic: changes it bit by bit and counts what the tests notice.

    python tests/mutation/run_mutants.py                  # every module under [tool.mutmut]
    python tests/mutation/run_mutants.py bore conformity    # these modules afresh

Without a name, functions that did not change keep their results: name a module whose tests
changed, or remove build/mutation.

Works on a copy in build/mutation, since the tool wants the package beside the tests. What the
tests cannot notice is named in unnoticed.toml with the reason; every other survivor is printed as
a change of the source, and the exit status is then 1.
"""

# ruff: noqa: T201 - a command, which prints its table
import json
import os
import re
import shutil
import subprocess
import sys
import tomllib
from collections import Counter
from pathlib import Path
from typing import Any

import constants
from mutmut.mutation.diff_apply import get_diff_for_mutant
from mutmut.stats import status_by_exit_code

ROOT = Path(__file__).resolve().parents[2]
COPY = ROOT / "build" / "mutation"
PACKAGE = "ringland_service"
COLUMNS = ("killed", "timeout", "unnoticed", "survived")
REASONS: list[dict[str, str]] = tomllib.loads(
    (ROOT / "tests" / "mutation" / "unnoticed.toml").read_text("utf-8")
)["change"]


def lay_out() -> None:
    """Bring the copy up to date; times are kept, so that unchanged modules keep their results."""
    shutil.rmtree(COPY / "mutants" / "tests", ignore_errors=True)
    for source, target in (("service/ringland_service", PACKAGE), ("tests", "tests")):
        shutil.copytree(ROOT / source, COPY / target, dirs_exist_ok=True)
    tables = Path(PACKAGE, "core", "tables")
    shutil.copytree(COPY / tables, COPY / "mutants" / tables, dirs_exist_ok=True)
    shutil.copy2(ROOT / "pyproject.toml", COPY)


def results() -> dict[Path, dict[str, str]]:
    """Status of each mutant by module."""
    found = {}
    for meta in sorted(Path("mutants", PACKAGE).rglob("*.py.meta")):
        codes: dict[str, Any] = json.loads(meta.read_text("utf-8"))["exit_code_by_key"]
        module = meta.relative_to("mutants").with_suffix("")
        found[module] = {name: status_by_exit_code[code] for name, code in codes.items()}
    return found


def is_named(module: Path, function: str, change: str) -> bool:
    """Whether a surviving change is one of those that the tests cannot notice."""
    return any(
        row["change"] in change
        and row.get("module", module.stem) == module.stem
        and function.endswith(row.get("function", ""))
        for row in REASONS
    )


def judged(module: Path, statuses: dict[str, str]) -> tuple[Counter[str], list[str]]:
    """Count the mutants of a module by status, and tell the survivors that nothing excuses."""
    count: Counter[str] = Counter()
    changes: list[str] = []
    for name, status in statuses.items():
        if status not in ("killed", "timeout"):
            diff = get_diff_for_mutant(name, path=module)
            function = name.rsplit(".", 1)[1].split("__mutmut_")[0]
            added = (row[1:].strip() for row in diff.splitlines()[3:] if row.startswith("+"))
            named = is_named(module, function, " ".join(added))
            changes += [] if named else [f"{name}: {status}\n{diff}"]
            status = "unnoticed" if named else "survived"
        count[status] += 1
    add_constants(module, count, changes)
    return count, changes


def add_constants(module: Path, count: Counter[str], changes: list[str]) -> None:
    """Do the same for the numbers outside of functions, each by a run of its own."""
    word = re.compile(rf"\b{module.stem}\b")
    tests = Path("tests/core").glob("**/test_*.py")
    own = [str(path) for path in tests if word.search(path.read_text("utf-8"))]
    number, passed = constants.survivors(module, own)
    unnamed = [change for change in passed if not is_named(module, "", change)]
    count["killed"] += number - len(passed)
    count["unnoticed"] += len(passed) - len(unnamed)
    count["survived"] += len(unnamed)
    changes += unnamed


def report(modules: list[str]) -> bool:
    """Print the table and the survivors; return whether there are none."""
    print(f"{'module':<16}{'mutants':>9}" + "".join(f"{column:>11}" for column in COLUMNS))
    total: Counter[str] = Counter()
    told: list[str] = []
    for module, statuses in results().items():
        if statuses and (not modules or module.stem in modules):
            count, changes = judged(module, statuses)
            print(line(module.stem, count), flush=True)
            total += count
            told += changes
    print(line("all", total))
    print(*told, sep="\n\n")
    return not told


def line(name: str, count: Counter[str]) -> str:
    """Return a line of the table."""
    return f"{name:<16}{count.total():>9}" + "".join(f"{count[column]:>11}" for column in COLUMNS)


def main(modules: list[str]) -> int:
    """Run the mutants of these modules, of all when none is named."""
    lay_out()
    os.chdir(COPY)
    patterns = [f"{PACKAGE}.core.*{module}.x*" for module in modules]
    mutmut = Path(sys.executable).with_name("mutmut")
    subprocess.run([mutmut, "run", "--max-children", "1", *patterns], check=True)
    return 0 if report(modules) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
