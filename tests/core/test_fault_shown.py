"""Whether the fault that a cylinder is mended for is shown by the tests, and what would show it.

Source: the trade brief, how decision and tests speak to each other (common practice, no source).
"""

import dataclasses
from typing import Any

import pytest
from cylinders import HEALTHY, LIGHT, ON_THE_SHELF, asked, decided, ranked

from ringland_service.core.calculations.decision import damage as _damage
from ringland_service.core.calculations.decision._fault_shown import EXPLAINS, SHORT
from ringland_service.core.calculations.decision._sealing import CAUSES, OF_CYLINDER, RIVALS
from ringland_service.core.calculations.decision.cylinder_decision import CALCULATION
from ringland_service.core.calculations.diagnosis.tables import SUSPECTS
from ringland_service.core.engines import condition
from ringland_service.core.metrology.limits import Limit

LEAK = {"leak_gradeable": "yes"}
# Bored for its taper of 0.048 against 0.030, and for 59.950 in 60.060: 0.110 against 0.100.
WORN = dataclasses.replace(LIGHT, thrust_axis_mm=(60.060, 60.030, 60.012))
BORED: dict[str, Any] = {**HEALTHY, **ON_THE_SHELF, "bore_survey": WORN, "piston_stays_in": False}


@pytest.mark.parametrize(
    ("tests", "shown"),
    [
        ({"suspects": ranked(rings_or_bore=10.4)}, "shown"),
        ({"suspects": ranked(rings_or_bore=2.0, exhaust_valve=0.9)}, "shown"),
        ({"suspects": ranked(rings_or_bore=2.0, exhaust_valve=0.91)}, "not_shown"),
        ({"suspects": ranked(rings_or_bore=1.99)}, "not_shown"),
        ({"suspects": ranked(rings_or_bore=1.5), "least_score": 1.5}, "shown"),
        ({"suspects": ranked(rings_or_bore=3.0, piston_damage=2.5)}, "shown"),
        ({"suspects": ranked(piston_damage=6.0, crankcase_leak=5.1, rings_or_bore=1.8)}, "shown"),
        (
            {"suspects": ranked(rings_or_bore=5.0), "diagnosis_headline": "test_not_valid"},
            "not_shown",
        ),
        ({"suspects": ranked(exhaust_valve=5.0, rings_or_bore=1.9)}, "contradicted"),
        ({"suspects": ranked(exhaust_valve=5.0, rings_or_bore=2.0)}, "not_shown"),
        (
            {"suspects": ranked(exhaust_valve=5.0), "diagnosis_headline": "measure_lash_first"},
            "not_shown",
        ),
        ({"suspects": ranked(test_error=5.0, rings_or_bore=1.0)}, "not_shown"),
        (
            {"suspects": ranked(rings_or_bore=-4.0, piston_damage=-4.0), **LEAK, "leak_pct": 8.0},
            "contradicted",
        ),
        ({"suspects": ranked(rings_or_bore=-4.0, piston_damage=-4.0)}, "not_shown"),
        ({**LEAK, "leak_pct": 10.0}, "contradicted"),
        ({**LEAK, "leak_pct": 10.1}, "not_shown"),
        ({}, "not_shown"),
    ],
)
def test_whether_the_fault_is_shown(tests: dict[str, Any], shown: str) -> None:
    """The rings and bore explain the taper, and they and the piston the clearance."""
    found = asked({**BORED, **tests})
    assert decided(found).way == "overbore"
    assert decided(found).fault_shown == shown
    assert (decided(found).would_show is None) == (shown == "shown")


def test_a_suspect_that_leads_must_explain_what_fails() -> None:
    """All passes but the pin in the piston: damage of the piston explains it, rings do not."""
    loose = {**BORED, "bore_survey": LIGHT, "piston_pin_bore_mm": 15.050}
    rings = decided(asked(loose, suspects=ranked(rings_or_bore=5.0)))
    assert (rings.way, rings.fault_shown) == ("overbore", "not_shown")
    assert rings.would_show.startswith("the rings lead, but nothing that fails on the bench")
    assert decided(asked(loose, suspects=ranked(piston_damage=5.0))).fault_shown == "shown"


def test_too_close_to_call_shows_nothing() -> None:
    """Too close counts as fail for new rings, and is no bench verdict that fails."""
    uncertainty = {"bore_survey.pin_axis_mm": 0.007, "bore_survey.thrust_axis_mm": 0.007}
    out = {
        **HEALTHY,
        **ON_THE_SHELF,
        "piston_stays_in": False,
        "suspects": ranked(rings_or_bore=5.0),
    }
    found = asked(out, uncertainties=uncertainty, limits={"bore_largest": Limit(None, 60.025)})
    assert decided(found).way == "overbore"
    assert decided(found).fault_shown == "not_shown"


@pytest.mark.parametrize(
    ("tests", "said"),
    [
        (
            {
                "suspects": ranked(
                    rings_or_bore=2.2, exhaust_valve=2.2, intake_valve=2.2, head_joint=1.5
                )
            },
            "exhaust and intake valve, and head gasket stand level with the rings: leak-down "
            "before anything is fitted",
        ),
        (
            {"suspects": ranked(exhaust_valve=1.1, intake_valve=1.1, rings_or_bore=1.1)},
            "exhaust and intake valve stand level with the rings: leak-down before anything is "
            "fitted",
        ),
        (
            {
                **LEAK,
                "leak_pct": 25.0,
                "suspects": ranked(rings_or_bore=2.0, exhaust_valve=1.5),
                "next_test": "wait",
            },
            "exhaust valve stands level with the rings: wait before anything is fitted",
        ),
        (
            {**LEAK, "leak_pct": 25.0, "suspects": ranked(rings_or_bore=1.0, exhaust_valve=1.5)},
            "exhaust valve stands level with the rings: wet test before anything is fitted",
        ),
        (
            {"leak_pct": 25.0, "suspects": ranked(test_error=4.0, rings_or_bore=1.0)},
            "the test itself stands before the rings: a leak-down that can be graded before "
            "anything is fitted",
        ),
        ({}, "no diagnosis speaks of it: leak-down, before anything is fitted"),
        (
            {"suspects": ranked(rings_or_bore=0.9, piston_damage=0.0, head_joint=-0.4)},
            "no test speaks strongly for the rings: leak-down, before anything is fitted",
        ),
        (
            {"suspects": ranked(exhaust_valve=5.0, rings_or_bore=0.4)},
            "the tests point to exhaust valve: see to that first, then test again, before "
            "anything is fitted",
        ),
    ],
)
def test_what_would_show_it(tests: dict[str, Any], said: str) -> None:
    assert decided(asked({**BORED, **tests})).would_show == said


def test_nothing_is_said_of_a_fault_while_the_kind_of_bore_is_unknown() -> None:
    found = asked({**BORED, "bore_kind": "unknown", "suspects": ranked(rings_or_bore=5.0)})
    assert decided(found).fault_shown is None


@pytest.mark.parametrize(
    ("damage", "suspect"), [("crack", "head_joint"), ("hole", "piston_damage")]
)
def test_damage_seen_is_explained_too(damage: str, suspect: str) -> None:
    found = asked({"bore_kind": "iron", "damage": damage, "suspects": ranked(**{suspect: 4.0})})
    assert (decided(found).way, decided(found).fault_shown) == ("replace", "shown")


def test_the_tables_name_what_there_is() -> None:
    assert SHORT.keys() == SUSPECTS.keys()
    assert {*OF_CYLINDER, *CAUSES, *RIVALS} == SUSPECTS.keys()
    assert set(OF_CYLINDER) <= set(EXPLAINS) <= SUSPECTS.keys()
    checks = {check.name for check in CALCULATION.checks}
    for what in EXPLAINS.values():
        assert set(what) <= {*checks, *condition.SURFACE, *_damage.DAMAGE}
