"""A clock for deadlines that moves only as a test says: no test here waits."""

from collections.abc import Iterator
from contextlib import contextmanager

from flask.testing import FlaskClient

from ringland_service.api.app import create_app


class Clock:
    """Tells the time, and goes on by ``step`` seconds each time that it is asked."""

    def __init__(self, step: float = 0.0) -> None:
        self.now = 0.0
        self.step = step

    def __call__(self) -> float:
        found = self.now
        self.now += self.step
        return found


@contextmanager
def ending_after(rows: int) -> Iterator[FlaskClient]:
    """Yield a client of a service whose batches have time for so many looks at the clock."""
    app = create_app({"BATCH_SECONDS": rows + 0.5, "CLOCK": Clock(step=1.0)})
    with app.test_client() as client:
        yield client
