"""The three decisions of a retry, each alone; Retry-After as RFC 9110, section 10.2.3 has it."""

from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ringland import _retry

NOW = datetime(2026, 3, 1, 12, 0, 0, tzinfo=UTC)


@pytest.mark.parametrize(
    ("attempt", "retries", "status", "again"),
    [
        (1, 2, None, True),
        (2, 2, None, True),
        (3, 2, None, False),
        (1, 0, None, False),
        *((1, 2, status, True) for status in (429, 502, 503, 504)),
        *((1, 2, status, False) for status in (200, 302, 400, 404, 408, 409, 413, 422, 500, 501)),
    ],
)
def test_decision(attempt: int, retries: int, status: int | None, again: bool) -> None:
    assert _retry.decision(attempt, retries, status) is again


@pytest.mark.parametrize(
    ("attempt", "asked", "wait"),
    [
        (1, None, 0.25),
        (2, None, 0.5),
        (3, None, 1.0),
        (6, None, 8.0),
        (60, None, 8.0),
        (1, 0.0, 0.0),
        (3, 7.5, 7.5),
        (1, 30.0, 30.0),
        (1, 30.1, None),
    ],
)
def test_delay(attempt: int, asked: float | None, wait: float | None) -> None:
    assert _retry.delay(attempt, asked) == wait


@given(wait=st.floats(0.0, 30.0), chance=st.floats(0.0, 1.0))
def test_jitter_never_shortens_and_adds_a_quarter_at_most(wait: float, chance: float) -> None:
    assert wait <= _retry.jitter(wait, chance) <= 1.25 * wait


def test_jitter_is_proportional() -> None:
    assert [_retry.jitter(4.0, chance) for chance in (0.0, 0.5, 1.0)] == [4.0, 4.5, 5.0]


@pytest.mark.parametrize(
    ("header", "wait"),
    [
        (None, None),
        ("", None),
        ("0", 0.0),
        (" 120 ", 120.0),
        ("1.5", 1.5),
        ("-1", None),
        ("nan", None),
        ("inf", None),
        ("soon", None),
        ("Sun, 01 Mar 2026 12:00:10 GMT", 10.0),
        ("Sun, 01 Mar 2026 11:00:00 GMT", 0.0),
        ("Sun, 01 Mar 2026 12:00:10 -0000", 10.0),
        ("Sun, 99 Mar 2026 12:00:10 GMT", None),
    ],
)
def test_retry_after(header: str | None, wait: float | None) -> None:
    assert _retry.retry_after(header, NOW) == wait
