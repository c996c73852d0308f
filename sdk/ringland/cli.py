"""The command ``ringland``: a whole job, one calculation, the list of them, or a server.

It answers in this process where the service is installed; ``--url`` or ``RINGLAND_URL`` names a
server instead. Exit codes: 0 answered (whatever the verdicts say), 2 the request is wrong,
3 the service cannot be reached or failed.
"""

import argparse
import json
import os
import re
import sys
from collections.abc import Sequence
from importlib.util import find_spec
from pathlib import Path
from typing import Any

from ringland._client import Client
from ringland._errors import (
    InvalidInput,
    MethodNotAllowed,
    RinglandError,
    ServiceError,
    ServiceMissing,
)
from ringland.embedded import HINT

WRONG, UNAVAILABLE = 2, 3
COLOURS = {"PASS": "32", "FAIL": "31", "TOO CLOSE TO CALL": "33", "NOT JUDGED": "33"}
# The words as the service prints them before a value, a long one perhaps broken over two lines;
# elsewhere they are just words.
_WORDS = "|".join(word.replace(" ", r"\s+") for word in COLOURS)
_VERDICT = re.compile(rf"\b({_WORDS})(?=:|\s+\()")


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command and return its exit code."""
    options = parsed(arguments)
    for stream in (sys.stdout, sys.stderr):
        # A console without ± or ³ shows a question mark rather than stopping.
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")
    try:
        text: str = options.run(options)
        sys.stdout.write(text)
        sys.stdout.flush()
    except RinglandError as error:
        sys.stderr.write("".join(f"{line}\n" for line in complaint(error)))
        return exit_code(error)
    except BrokenPipeError:
        # The reader has seen enough; what is left must not be written at exit.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return 0


def parsed(arguments: Sequence[str] | None) -> argparse.Namespace:
    """Return the options; fields of ``ask`` may stand before and after them."""
    known = parser()
    options, rest = known.parse_known_args(arguments)
    if rest and (not hasattr(options, "fields") or any(one.startswith("-") for one in rest)):
        known.error(f"not known here: {' '.join(rest)}")
    if rest:
        options.fields += rest
    return options


def parser() -> argparse.ArgumentParser:
    """Return the parser of the command line."""
    found = argparse.ArgumentParser(prog="ringland", description=first_line(__doc__))
    commands = found.add_subparsers(required=True, metavar="COMMAND")

    job = commands.add_parser("job", help="a whole job, from a JSON file of what is known so far")
    job.add_argument("file", help="JSON of a job card's request; - reads standard input")
    job.set_defaults(run=run_job)

    ask = commands.add_parser("ask", help="one calculation: ask displacement bore=68mm ...")
    ask.add_argument("calculation")
    ask.add_argument("fields", nargs="*", metavar="field=value")
    ask.add_argument("--file", help="JSON of the request instead of fields; - reads standard input")
    ask.set_defaults(run=run_ask)

    for command in (job, ask):
        command.add_argument("--units", choices=("metric", "us"), help="units of the answer")
        command.add_argument("--json", action="store_true", help="the whole answer as JSON")

    listed = commands.add_parser("list", help="the calculations")
    listed.set_defaults(run=run_list)
    for command in (job, ask, listed):
        command.add_argument("--url", help="a server, http://host:8000 say")

    serve = commands.add_parser("serve", help="run the service here; needs it installed")
    serve.add_argument("--host", default="127.0.0.1")
    serve.add_argument("--port", default=8000, type=int)
    serve.set_defaults(run=run_serve)
    return found


def first_line(text: str | None) -> str:
    """Return the first line of a docstring."""
    return (text or "").partition("\n")[0]


def client_of(options: argparse.Namespace) -> Client:
    """Return a client of the server named, or of the service in this process."""
    url = options.url or os.environ.get("RINGLAND_URL")
    return Client(url) if url else Client.embedded()


def run_job(options: argparse.Namespace) -> str:
    """Return the answer to a whole job."""
    return _posted(options, "job-card", options.file)


def run_ask(options: argparse.Namespace) -> str:
    """Return the answer of one calculation."""
    if options.file is not None:
        if options.fields:
            raise InvalidInput("fields and --file: give one or the other")
        return _posted(options, options.calculation, options.file)
    params = [*map(field_of, options.fields), *_shaping(options).items()]
    with client_of(options) as client:
        try:
            return _got(client, options, "GET", _path(options.calculation), params)
        except MethodNotAllowed as error:
            raise InvalidInput(
                f"{options.calculation} takes more than single values: give its request in JSON,"
                f" ringland ask {options.calculation} --file request.json"
            ) from error


def field_of(text: str) -> tuple[str, str]:
    """Return a field and its value.

    Raises
    ------
    InvalidInput
        Where there is no ``=`` between them.
    """
    name, equals, value = text.partition("=")
    if not equals or not name:
        raise InvalidInput(f"{text}: write field=value, bore=68mm say")
    return name, value


def run_list(options: argparse.Namespace) -> str:
    """Return the calculations, by stage."""
    with client_of(options) as client:
        known = client.calculations()
    width = max(len(one.name) for one in known)
    lines: list[str] = []
    for stage in dict.fromkeys(one.stage for one in known):
        lines.append(stage.replace("_", " "))
        lines += [f"  {o.name:<{width}}  {o.title}" for o in known if o.stage == stage]
    return "\n".join(lines) + "\n"


def run_serve(options: argparse.Namespace) -> str:
    """Become the server.

    Raises
    ------
    ServiceMissing
        Where the service or its server is not installed.
    """
    if find_spec("ringland_service") is None or find_spec("gunicorn") is None:
        raise ServiceMissing(HINT)
    command = [sys.executable, "-m", "gunicorn", "--bind", f"{options.host}:{options.port}"]
    command += ["--worker-class", "gthread", "--threads", "4", "--no-control-socket"]
    # In place of this process, so that signals reach the server itself.
    os.execv(sys.executable, [*command, "ringland_service.wsgi:app"])  # noqa: S606 - no shell


def _path(name: str) -> str:
    """Return the path of a calculation.

    Raises
    ------
    InvalidInput
        Where the name is none.
    """
    if not re.fullmatch(r"[a-z0-9-]+", name):
        raise InvalidInput(f"{name!r} is no calculation; ringland list shows them")
    return f"/v1/{name}"


def _posted(options: argparse.Namespace, name: str, file: str) -> str:
    # As it stands in the file: the service reads JSON more strictly, and says what is wrong.
    body = contents(file)
    with client_of(options) as client:
        return _got(client, options, "POST", _path(name), _shaping(options), body)


def contents(file: str) -> bytes:
    """Return what a file holds; ``-`` is standard input.

    Raises
    ------
    InvalidInput
        Where it cannot be read.
    """
    try:
        return sys.stdin.buffer.read() if file == "-" else Path(file).read_bytes()
    except OSError as error:
        raise InvalidInput(f"{file}: {error.strerror}") from error


def _shaping(options: argparse.Namespace) -> dict[str, str]:
    return {"units": options.units} if options.units else {}


def _got(
    client: Client,
    options: argparse.Namespace,
    method: str,
    path: str,
    params: Any,
    body: bytes | None = None,
) -> str:
    """Return an answer as it is shown: JSON, or text with its verdicts in colour."""
    caller = client.caller
    if options.json:
        answer = caller.json(method, path, body=body, params=params)
        return json.dumps(answer, ensure_ascii=False, indent=2) + "\n"
    text = caller.text(method, path, body=body, params=params)
    text = text if text.endswith("\n") else f"{text}\n"
    return coloured(text) if wants_colour() else text


def wants_colour() -> bool:
    """Return whether standard output is a terminal whose owner has not said NO_COLOR."""
    return sys.stdout.isatty() and not os.environ.get("NO_COLOR")


def coloured(text: str) -> str:
    """Return a text with its verdicts in colour; the words stay, so colour is never alone."""

    def in_colour(found: re.Match[str]) -> str:
        return f"\x1b[1;{COLOURS[' '.join(found[1].split())]}m{found[1]}\x1b[0m"

    return _VERDICT.sub(in_colour, text)


def complaint(error: RinglandError) -> list[str]:
    """Return what is wrong, one line a fault: the field, then what is wrong with it."""
    if not isinstance(error, ServiceError):
        return [str(error)]
    lines = [str(one) for one in error.errors] or [error.detail or error.title or str(error)]
    if error.more:
        lines.append(f"and {error.more} more")
    if error.status >= 500 and error.request_id:
        lines.append(f"request: {error.request_id}")
    return lines


def exit_code(error: RinglandError) -> int:
    """Return the exit code for an error."""
    if isinstance(error, InvalidInput):
        return WRONG
    if isinstance(error, ServiceError) and 400 <= error.status < 500 and error.status != 429:
        return WRONG
    return UNAVAILABLE


if __name__ == "__main__":
    sys.exit(main())
