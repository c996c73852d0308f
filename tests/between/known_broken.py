"""Cases of the harness that another change is to mend: each fails until then, and must."""

from collections.abc import Callable, Iterable, Mapping
from typing import Any

import pytest


def marked(
    cases: Iterable[Any], broken: Mapping[str, str], name: Callable[[Any], str] = str
) -> list[Any]:
    """Return cases as parameters; those that are known to break are marked with the reason."""
    found = []
    for one in cases:
        reason = broken.get(name(one))
        marks = [] if reason is None else [pytest.mark.xfail(reason=reason, strict=True)]
        found.append(pytest.param(one, id=name(one), marks=marks))
    return found
