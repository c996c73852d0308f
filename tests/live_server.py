"""A real gunicorn on an ephemeral loopback port, for the tests that need a socket."""

import re
import subprocess
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager

LISTENING = re.compile(r"Listening at: (http://127\.0\.0\.1:\d+)")


@contextmanager
def running_gunicorn(
    workers: int = 1, options: Sequence[str] = (), log: list[str] | None = None
) -> Iterator[str]:
    """Run the service until the block ends; yield its address.

    ``options`` are further ones of the command; ``log`` takes what the server logged, at the end.
    """
    command = [
        *(sys.executable, "-m", "gunicorn", "--bind", "127.0.0.1:0"),
        # No limit on the address line: what the server itself refuses is not the service's answer.
        *options,
        *("--workers", str(workers), "--no-control-socket", "--limit-request-line", "0"),
        "ringland_service.wsgi:app",
    ]
    with subprocess.Popen(command, stderr=subprocess.PIPE, text=True) as process:
        assert process.stderr is not None
        try:
            yield _address(iter(process.stderr.readline, ""))
        finally:
            process.terminate()
            _, logged = process.communicate(timeout=30)
            if log is not None:
                log.append(logged)


def _address(lines: Iterator[str]) -> str:
    """Return the address that the log names; it is logged before the first request is taken."""
    seen = []
    for line in lines:
        seen.append(line)
        match = LISTENING.search(line)
        if match:
            return match[1]
    raise AssertionError("gunicorn did not start:\n" + "".join(seen))
