"""How many rows one batch may have and how long it may take: declared here and nowhere else.

Both follow from the server's own timeout (``RINGLAND_TIMEOUT_S``, 30 s by default). A batch stops
answering rows at a share of it, and the rest of the time is left for reading, for writing and for
a slow moment. The most rows of a calculation are those that its costliest batch, on one worker that
does nothing else, answers in a smaller share of the default timeout.
"""

import os
from collections.abc import Mapping

from ringland_service.core.declare import Declared

DEFAULT_TIMEOUT_S = 30
VARIABLE = "RINGLAND_TIMEOUT_S"
# Of the timeout: until rows are no longer answered; and what the most rows are to take.
DEADLINE_SHARE = 0.6
ROWS_SHARE = 0.5
# However cheap a row is.
MOST_ROWS = 10_000

# Measured (tests/bench/bench_batches.py): milliseconds [ms] for a row with uncertainty on every
# reading, as a line of JSON, with a tenth or more added; those not named stay below ``OTHERS_MS``.
OTHERS_MS = 1.4
COST_MS: Mapping[str, float] = {
    "job-card": 110.0,
    "cylinder-decision": 45.0,
    "squish": 28.0,
    "ring-clocking": 26.0,
    "piston-clearance": 12.0,
    "order-card": 9.0,
    "leak-area": 6.6,
    "bore-survey": 6.0,
    "lash-shim": 4.5,
    "diagnosis": 3.0,
    "compression-test": 3.0,
    "order-card-check": 2.5,
    "port-timing": 2.2,
    "cylinder-spread": 2.0,
    "valve-seat": 2.0,
    "cam-check": 2.0,
    "torque-steps": 2.0,
}


def most_rows(calculation: Declared) -> int:
    """Return how many rows a batch of the calculation may have: two digits, then zeros."""
    cost_ms = COST_MS.get(calculation.name, OTHERS_MS)
    rows = int(ROWS_SHARE * DEFAULT_TIMEOUT_S * 1000.0 / cost_ms)
    step = int(10 ** max(len(str(rows)) - 2, 0))
    return min(rows // step * step, MOST_ROWS)


def server_timeout_s() -> int:
    """Return the server's own timeout [s], from the variable that the server reads too.

    Raises
    ------
    ValueError
        If the variable holds anything but a whole number of at least 1.
    """
    text = os.environ.get(VARIABLE, str(DEFAULT_TIMEOUT_S))
    if not (text.isascii() and text.isdigit() and int(text) >= 1):
        raise ValueError(f"{VARIABLE} must be a whole number of at least 1; got {text!r}")
    return int(text)


def batch_seconds() -> float:
    """Return how long a batch may answer rows [s]."""
    return DEADLINE_SHARE * server_timeout_s()
