"""How the cost of reading grows with the request: ``python tests/bench/bench_readers.py``.

Each row sends one request at a size and at twice that size, in one process, best of five of each;
``tests/bench/test_linear.py`` holds the ratios below 2.5.
"""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

from growth import growth
from readers import GROWING

from ringland_service.wsgi import app


def main() -> None:
    """Print the table of times and ratios."""
    for case in GROWING:
        once, double, status, _ = growth(app, case)
        ratio = double / once
        print(f"{case.name:<44} {status} {case.size:>9} {once * 1e3:9.2f} ms  {ratio:5.2f}")  # noqa: T201


if __name__ == "__main__":
    main()
