"""How long a request takes at a size and at twice that size."""

import gc
from time import process_time

from flask import Flask
from readers import Growing, send

ROUNDS = 5


def growth(app: Flask, case: Growing) -> tuple[float, float, int, int]:
    """Return the best time at the size and at twice the size, and the last answer's status, length.

    Times are in seconds, the length in bytes.

    The two are timed in turn, by the processor's time of this process, so that what else the
    machine does touches both alike or not at all. The collector rests meanwhile: a full pass of it
    goes over everything that the process holds, and falls to one of the two by chance.
    """
    requests = [case.environ(case.size), case.environ(2 * case.size)]
    best = [float("inf"), float("inf")]
    status = length = 0
    gc.disable()
    try:
        for which, environ in ROUNDS * list(enumerate(requests)):
            start = process_time()
            status, length = send(app, environ)
            best[which] = min(best[which], process_time() - start)
    finally:
        gc.enable()
    return best[0], best[1], status, length
