"""Settings of the WSGI server, read once at start.

Every figure that a site may want to change is an environment variable; a bad one stops the start
and is named. The server stands behind a buffering proxy (``nginx.conf``): a thread worker gives a
thread to each client that trickles its request, and no timeout here takes that thread back.

================================  =========================  =======================================
Variable                          Default                    Meaning
================================  =========================  =======================================
``RINGLAND_BIND``                 ``0.0.0.0:8000``           Address and port to listen on
``RINGLAND_WORKERS``              CPUs open to this process  Worker processes
``RINGLAND_THREADS``              4                          Threads in each worker
``RINGLAND_TIMEOUT_S``            30                         Silence after which a worker is killed;
                                                             batches end at 0.6 of it
``RINGLAND_GRACEFUL_TIMEOUT_S``   25                         Time to finish requests on SIGTERM
``RINGLAND_FORWARDED_ALLOW_IPS``  ``127.0.0.1,::1``          Proxies whose scheme header is believed
``RINGLAND_SERVER_ACCESS_LOG``    off                        File, or ``-`` for standard output
================================  =========================  =======================================
"""

import os
from contextlib import suppress
from typing import Any

# What the proxy lets through at most (nginx.conf: client_max_body_size).
_LARGEST_BODY_BYTES = 16 * 1024 * 1024


def _count(name: str, default: int) -> int:
    """Return a whole number of at least 1 from the environment.

    Raises
    ------
    ValueError
        If the variable holds anything else.
    """
    text = os.environ.get(name, str(default))
    if not (text.isascii() and text.isdigit() and int(text) >= 1):
        raise ValueError(
            f"{name} must be a whole number of at least 1, for example 4; got {text!r}"
        )
    return int(text)


wsgi_app = "ringland_service.wsgi:app"

# All interfaces: inside a container the loopback is out of the proxy's reach.
bind = os.environ.get("RINGLAND_BIND", "0.0.0.0:8000")

# The work is arithmetic, so more workers than CPUs only queue. The affinity mask is what this
# process may use; a CPU quota does not show in it, so with a quota set RINGLAND_WORKERS.
workers = _count("RINGLAND_WORKERS", len(os.sched_getaffinity(0)))

# Threads keep health probes and idle connections from waiting behind a calculation.
worker_class = "gthread"
threads = _count("RINGLAND_THREADS", 4)

# Loads the application once, before the fork: less memory, and a start that fails fails at once.
preload_app = True

# Longer than the 60 s for which proxies and balancers usually keep an idle connection, so that
# they close first and never send a request into one that is just being closed here.
keepalive = 75

# With threads this watches the worker's main loop, not the request: what bounds a calculation is
# the limit on its input, and a batch its deadline, which the service takes from the same variable.
timeout = _count("RINGLAND_TIMEOUT_S", 30)

# Shorter than the time the container is given to stop (compose.yaml: 35 s).
graceful_timeout = _count("RINGLAND_GRACEFUL_TIMEOUT_S", 25)

# The most the server offers: a whole question may stand in the query of a GET.
limit_request_line = 8190

# Only a named proxy may say that the client spoke TLS.
forwarded_allow_ips = os.environ.get("RINGLAND_FORWARDED_ALLOW_IPS", "127.0.0.1,::1")

# The proxy sees every request already. Start, stop and failures go to standard error.
accesslog = os.environ.get("RINGLAND_SERVER_ACCESS_LOG") or None
errorlog = "-"

# The root file system is read-only: the heartbeat file goes to memory, and no control socket is
# made in a home directory that is not there.
worker_tmp_dir = "/dev/shm"  # noqa: S108
control_socket_disable = True


def post_request(worker: Any, req: Any, environ: Any, resp: Any) -> None:
    """Read what a refusal left of the request's body, after the answer has gone out.

    Closing a connection with unread bytes in it resets it, and the answer is lost on the way:
    the client of a large batch would see a broken connection in place of the reason.
    """
    left = _LARGEST_BODY_BYTES
    with suppress(OSError):
        while left > 0 and (chunk := req.body.read(min(left, 65536))):
            left -= len(chunk)
