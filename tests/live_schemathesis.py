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


def main() -> int:
    """Run schemathesis and return its exit code."""
    with running_gunicorn(workers=2) as address:
        command = [
            *(sys.executable, "-m", "schemathesis.cli", "--config-file", str(CONFIG)),
            *("run", f"{address}/openapi.json", "--max-examples", "30", "--workers", "2"),
            *("--phases", "examples,coverage,fuzzing"),
            *("--exclude-path-regex", SAMPLED, "--wait-for-schema", "30"),
        ]
        hooks = {"SCHEMATHESIS_HOOKS": "body_hooks", "PYTHONPATH": str(Path(__file__).parent)}
        return subprocess.run(command, check=False, env={**os.environ, **hooks}).returncode


if __name__ == "__main__":
    sys.exit(main())
