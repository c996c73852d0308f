"""What a diagnosis refuses: evidence that cannot stand together or on this engine."""

from typing import Any

import pytest
from diagnosing import diagnosed, scores

from ringland_service.engine.response import DomainError

REFUSED = [
    (
        ("compression_low_one_cylinder", "compression_high"),
        {},
        r"compression_low_one_cylinder .* and compression_high .* cannot both be: one dry reading",
    ),
    (("leak_down_tight", "leak_down_large"), {}, r"cannot both be: one leak-down"),
    (("exhaust_lash_tight", "lash_within"), {}, r"cannot both be: lash within its limits"),
    (("compression_low_all_alike",), {"cylinder_count": 1}, r"a single has no neighbour"),
    (("decompressor_not_held_off",), {}, r"this engine has no decompressor"),
    (("crankcase_leaks",), {}, r"crankcase_leaks, .*: not on a four-stroke"),
    (
        ("blue_smoke_on_overrun", "blue_smoke_on_load"),
        {"cycle": "two_stroke"},
        r"blue_smoke_on_overrun, .*; blue_smoke_on_load, .*: not on a two-stroke",
    ),
    (
        ("compression_low_one_cylinder",),
        {"moderate_weight": 3.0},
        r"moderate line would count more than a strong one",
    ),
    (
        ("compression_low_one_cylinder",),
        {
            "weights": [
                {
                    "evidence": "compression_low_one_cylinder",
                    "suspect": "rings_or_bore",
                    "weight": w,
                }
                for w in (1.0, 2.0)
            ]
        },
        r"weighed twice: compression_low_one_cylinder for rings_or_bore",
    ),
]


@pytest.mark.parametrize(("evidence", "engine", "message"), REFUSED)
def test_what_cannot_be_is_refused(
    evidence: tuple[str, ...], engine: dict[str, Any], message: str
) -> None:
    with pytest.raises(DomainError, match=message):
        diagnosed(*evidence, **engine)


def test_tight_and_loose_lash_may_stand_together() -> None:
    """On an engine with several valves; only lash within its limits excludes both."""
    assert scores(diagnosed("exhaust_lash_tight", "lash_loose"))["lash_loose"] == 2.0
