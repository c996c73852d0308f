"""The committed document is what the exporter prints; the SDK is what the document gives."""

import json
import subprocess
import sys
from pathlib import Path

from ringland_service.api.openapi.document import document

ROOT = Path(__file__).parents[2]


def test_the_committed_document_is_current() -> None:
    committed = json.loads((ROOT / "openapi" / "openapi.json").read_text("utf-8"))
    assert committed == json.loads(json.dumps(document())), (
        "run: python -m ringland_service.export_openapi > openapi/openapi.json"
    )


def test_the_generated_client_is_current() -> None:
    done = subprocess.run(
        [sys.executable, str(ROOT / "sdk" / "generate.py"), "--check"],
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr
