"""The order of sets hangs on the hash seed of the process: no byte of an answer may."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from between_tally import Tally

RELATION = "three hash seeds"
SCRIPT = Path(__file__).parent / "answering_once.py"
SEEDS = ("0", "1", "4711")


def digests(what: str) -> list[dict[str, str]]:
    """Return the digests of the answers of three processes."""
    running = [
        subprocess.Popen(
            [sys.executable, str(SCRIPT), what],
            env={**os.environ, "PYTHONHASHSEED": seed},
            stdout=subprocess.PIPE,
            text=True,
        )
        for seed in SEEDS
    ]
    found = []
    for process in running:
        out, _ = process.communicate(timeout=300)
        assert process.returncode == 0
        found.append(json.loads(out))
    return found


@pytest.mark.long
@pytest.mark.parametrize("what", ["answers", "refusals"])
def test_the_same_bytes_under_every_seed(what: str, tally: Tally) -> None:
    first, *others = digests(what)
    assert len(first) > 60
    for name in first:
        tally.add(0.0, name)
    differ = sorted({name for other in others for name in first if other[name] != first[name]})
    assert not differ
