"""Every reader's cost grows with the request, not faster: a ratio, so no machine is too slow."""

import pytest
from flask.testing import FlaskClient
from growth import growth
from readers import GROWING, Growing

MOST = 2.5
TRIES = 3
# Of a refusal, whatever is sent.
MOST_BYTES = 64_000


@pytest.mark.parametrize("case", GROWING, ids=str)
def test_twice_the_request_costs_at_most_two_and_a_half_times(
    client: FlaskClient, case: Growing
) -> None:
    """What grows with the square stays above in each try; what else the machine does, does not."""
    for _ in range(TRIES):
        once, double, status, length = growth(client.application, case)
        assert status < 500
        assert status < 400 or length < MOST_BYTES
        if double <= MOST * once:
            return
    pytest.fail(f"{case}: {double / once:.2f} times the time")
