"""When a batch must end: asked between rows, so that what is done by then is answered."""

import time
from collections.abc import Callable


class Deadline:
    """A moment on a clock.

    Parameters
    ----------
    seconds : float
        From now until the deadline [s].
    clock : callable
        Returns the time [s] on a clock that never goes back.
    """

    def __init__(self, seconds: float, clock: Callable[[], float] = time.monotonic) -> None:
        self._clock = clock
        self._end = clock() + seconds

    def passed(self) -> bool:
        """Return whether the deadline has come."""
        return self._clock() >= self._end


def never() -> Deadline:
    """Return a deadline that does not come."""
    return Deadline(float("inf"))
