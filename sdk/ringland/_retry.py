"""Whether a request is tried again, and when: three small functions, each tested alone.

Every request of this service is pure computation: it stores nothing and has no effect, so a POST
is as safe to send twice as a GET.
"""

import math
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime

RETRIED = frozenset({429, 502, 503, 504})
FIRST_DELAY_S = 0.25
LONGEST_DELAY_S = 8.0
LONGEST_RETRY_AFTER_S = 30.0
SPREAD = 0.25


def decision(attempt: int, retries: int, status: int | None) -> bool:
    """Return whether to try again.

    Parameters
    ----------
    attempt : int
        Tries that have failed so far, from 1.
    retries : int
        Further tries allowed.
    status : int or None
        Status of the answer; None where the connection failed. A 500 is a fault that the same
        request meets again, so it is not retried. A TLS fault never gets here.
    """
    return attempt <= retries and (status is None or status in RETRIED)


def delay(attempt: int, retry_after: float | None) -> float | None:
    """Return the wait before the next try [s], or None to give up.

    What Retry-After asks for is kept; a wait above ``LONGEST_RETRY_AFTER_S`` is left to the
    caller, since coming back earlier than asked would be rude and waiting would look like a hang.
    """
    if retry_after is not None:
        return retry_after if retry_after <= LONGEST_RETRY_AFTER_S else None
    return min(FIRST_DELAY_S * 2.0 ** (attempt - 1), LONGEST_DELAY_S)


def jitter(delay_s: float, chance: float) -> float:
    """Return the wait [s] stretched by up to a quarter, so that callers do not return in step.

    Parameters
    ----------
    delay_s : float
    chance : float
        A random number from 0 to 1. Never shortens: Retry-After is a least wait.
    """
    return delay_s * (1.0 + SPREAD * chance)


def retry_after(header: str | None, now: datetime) -> float | None:
    """Return the wait that a Retry-After header asks for [s], or None where it says nothing.

    Both forms of RFC 9110, section 10.2.3: seconds, or an HTTP date. A date gone by means now.
    """
    text = (header or "").strip()
    if not text:
        return None
    try:
        seconds = float(text)
    except ValueError:
        return _until(text, now)
    return seconds if math.isfinite(seconds) and seconds >= 0.0 else None


def _until(text: str, now: datetime) -> float | None:
    try:
        then = parsedate_to_datetime(text)
    except ValueError:
        return None
    if then.tzinfo is None:
        then = then.replace(tzinfo=UTC)
    return max((then - now).total_seconds(), 0.0)
