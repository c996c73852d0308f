"""Write ``ringland/_generated`` from the OpenAPI document, or check that it is up to date.

``python sdk/generate.py`` writes; ``--check`` compares, and exits 1 with the names that differ.
"""

import argparse
import json
import subprocess
import sys
from pathlib import Path
from tempfile import TemporaryDirectory

from generator.modules import files

ROOT = Path(__file__).resolve().parents[1]
DOCUMENT = ROOT / "openapi" / "openapi.json"
TARGET = ROOT / "sdk" / "ringland" / "_generated"


def generated(document: Path) -> dict[str, str]:
    """Return the text of each file by name, tidied."""
    texts = files(json.loads(document.read_text(encoding="utf-8")))
    with TemporaryDirectory() as where:
        for name, text in texts.items():
            Path(where, name).write_text(text, encoding="utf-8")
        _tidy("check", "--quiet", "--fix", "--select", "F401,I", where)
        _tidy("format", "--quiet", where)
        return {name: Path(where, name).read_text(encoding="utf-8") for name in sorted(texts)}


def _tidy(*arguments: str) -> None:
    command = [sys.executable, "-m", "ruff", arguments[0], "--no-cache"]
    # The package's own imports are its own wherever the files lie.
    for config in (str(ROOT / "pyproject.toml"), 'lint.isort.known-first-party=["ringland"]'):
        command += ["--config", config]
    subprocess.run([*command, *arguments[1:]], check=True)  # noqa: S603


def differing(texts: dict[str, str], target: Path) -> list[str]:
    """Return the names of the files that are not as they should be: changed, missing, left over."""
    there = {path.name: path.read_text(encoding="utf-8") for path in target.glob("*.py")}
    return sorted(name for name in texts | there if texts.get(name) != there.get(name))


def write(texts: dict[str, str], target: Path) -> None:
    """Write the files, and remove those of calculations that are gone."""
    target.mkdir(parents=True, exist_ok=True)
    for name in differing(texts, target):
        if name in texts:
            (target / name).write_text(texts[name], encoding="utf-8")
        else:
            (target / name).unlink()


def main(arguments: list[str] | None = None) -> int:
    """Run the command and return its exit code."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("--check", action="store_true", help="compare, write nothing")
    parser.add_argument("--document", type=Path, default=DOCUMENT)
    parser.add_argument("--target", type=Path, default=TARGET)
    options = parser.parse_args(arguments)
    texts = generated(options.document)
    wrong = differing(texts, options.target)
    if options.check:
        for name in wrong:
            sys.stderr.write(f"not up to date: {name}\n")
        return 1 if wrong else 0
    write(texts, options.target)
    return 0


if __name__ == "__main__":
    sys.exit(main())
