"""Changed constants of a module: numbers outside of functions, which mutmut leaves alone.

Each is changed by one part in a thousand, a tolerance (below 1e-6) to its double, in a copy of
its module; then the module's own tests run. A constant made of others counts as one of its own.
"""

import ast
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

TOLERANCE = 1e-6


def numbers(source: str) -> Iterator[ast.Constant]:
    """Yield the numbers of the module's own assignments."""
    for statement in ast.parse(source).body:
        if isinstance(statement, ast.Assign | ast.AnnAssign) and statement.value is not None:
            for node in ast.walk(statement.value):
                if isinstance(node, ast.Constant) and type(node.value) in (int, float):
                    yield node


def changed(source: str, node: ast.Constant) -> str:
    """Return the source with this number changed."""
    assert isinstance(node.value, int | float)
    factor = 2.0 if 0 < node.value < TOLERANCE else 1.001
    lines = source.encode().splitlines(keepends=True)
    row = lines[node.lineno - 1]
    new = repr(node.value * factor or 0.001).encode()
    lines[node.lineno - 1] = row[: node.col_offset] + new + row[node.end_col_offset :]
    return b"".join(lines).decode()


def notice(tests: list[str]) -> bool:
    """Return whether a test fails; a run that comes to no answer is an error."""
    command = [sys.executable, "-B", "-m", "pytest", "-qx", "--hypothesis-profile=quick", *tests]
    done = subprocess.run(command, check=False, capture_output=True, text=True)
    if done.returncode not in (0, 1):
        raise RuntimeError(done.stdout + done.stderr)
    return done.returncode == 1


def survivors(module: Path, tests: list[str]) -> tuple[int, list[str]]:
    """Return how many constants a module has, and the lines whose change its tests let pass.

    The working directory is a copy that may be changed; the module is restored.
    """
    source = module.read_text("utf-8")
    places = list(numbers(source))
    if places and notice(tests):
        raise RuntimeError(f"the tests of {module} fail before anything is changed")
    passed = []
    try:
        for node in places:
            module.write_text(changed(source, node), "utf-8")
            if not notice(tests):
                passed.append(f"{module}:{node.lineno}: {source.splitlines()[node.lineno - 1]}")
    finally:
        module.write_text(source, "utf-8")
    return len(places), passed
