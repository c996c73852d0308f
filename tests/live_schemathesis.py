"""schemathesis against a live gunicorn, about 30 examples an operation: run by ``.ci/run``."""

import os
import subprocess
import sys
from pathlib import Path

from live_server import running_gunicorn

CONFIG = Path(__file__).parent / "api" / "schemathesis.toml"
# Suffix forms are the same view with another representation: these calculations stand for all.
STAND_FOR_ALL = "displacement|wet-gain|bore-survey|order-card"
SAMPLED = rf"/v1/(?!{STAND_FOR_ALL})[a-z0-9-]+\.(txt|csv|svg|html)$"


# Every bound of every field, one at a time, takes an hour for all: these stand for all shapes.
COVERED = r"/v1/(displacement|clean-up|order-card-check)(\.txt|/batch)?$"
# One worker there: two trip over each other while the tool itself makes the cases.
RUNS = (
    ("--phases", "examples,fuzzing", "--exclude-path-regex", SAMPLED, "--workers", "2"),
    ("--phases", "coverage", "--include-path-regex", COVERED, "--workers", "1"),
)


def main() -> int:
    """Run schemathesis and return its exit code."""
    with running_gunicorn(workers=2) as address:
        return max(run(address, *options) for options in RUNS)


def run(address: str, *options: str) -> int:
    """Run some phases against the server and return the exit code."""
    command = [
        *(sys.executable, "-m", "schemathesis.cli", "--config-file", str(CONFIG)),
        *("run", f"{address}/openapi.json", "--max-examples", "30"),
        *(*options, "--wait-for-schema", "30"),
    ]
    hooks = {"SCHEMATHESIS_HOOKS": "body_hooks", "PYTHONPATH": str(Path(__file__).parent)}
    return subprocess.run(command, check=False, env={**os.environ, **hooks}).returncode


if __name__ == "__main__":
    sys.exit(main())
