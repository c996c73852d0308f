"""What a part adds of itself is apart from all else that it adds, whatever it is called."""

import math

import pytest

from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Calculation, Step
from ringland_service.engine.carried import of_results
from ringland_service.engine.response import Response


def test_two_of_one_name_do_not_add_up() -> None:
    """A result that two clearances of 0.03 and 0.04 enter carries 0.05, and not 0.07."""
    check = BY_NAME["cam-check"]
    assert isinstance(check, Calculation)
    both = tuple(("clay_uncertainty", {"rests_on_both": c}) for c in (0.03, 0.04))
    part = Response(check, inputs=None, outputs=None, shares=both)
    carried = of_results(Step(part="cam_check", calculation=check, purpose=""), part, ())
    each = [places[()] for places in carried["rests_on_both"].values()]
    assert math.hypot(*each) == pytest.approx(0.05, rel=1e-12)
