"""The guards that every formula shares: what is refused, and in which words."""

import numpy as np
import pytest

from ringland_service.core.errors import Contradiction, OutOfBounds
from ringland_service.core.formulas import elementary


def test_a_refusal_says_field_fault_and_remedy() -> None:
    with pytest.raises(Contradiction) as refused:
        elementary.insist(False, Contradiction, "rod_mm", "is too short", "give a longer rod")
    error = refused.value
    assert (error.field, error.message, error.right) == (
        "rod_mm",
        "is too short",
        "give a longer rod",
    )
    assert str(error) == "rod_mm: is too short (give a longer rod)"


@pytest.mark.parametrize("value", [0.0, -1.0, float("nan"), np.array([1.0, 0.0])])
def test_what_is_not_above_zero(value: float) -> None:
    with pytest.raises(OutOfBounds) as refused:
        elementary.insist_positive("stroke_mm", value)
    assert str(refused.value) == "stroke_mm: must be above zero (give a number above zero)"


def test_the_least_number_above_zero_passes() -> None:
    elementary.insist_positive("stroke_mm", 5e-324)
    elementary.insist_positive("stroke_mm", np.array([5e-324, 1.0]))
