"""One truth on a card: what two parts say of one thing is one value, and nothing is judged twice.

Results of one name are one thing, before the work or after it, unless ``APART`` says why not;
``ONE`` names those that bear several names. Cards are whole, drawn, and thinned at random.
"""

import random
from collections import defaultdict
from collections.abc import Iterator
from typing import Any

import pytest
from asking import strict
from comparing import Json, difference
from drawing import Drawn
from flask.testing import FlaskClient
from questions import Asked, every
from thinning import thinned

from between_tally import Tally
from ringland_service.api.reading.request import understood
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Composite, declared
from ringland_service.core.metrology.conformity import FAIL, PASS
from ringland_service.engine.composite import answer_composite
from ringland_service.engine.known import paths

RELATION = "no contradiction"
COMPOSITES = [c for c in CALCULATIONS if isinstance(c, Composite)]
VALUE = ("value", "values", "unit")
AFTER, AT_SEA_LEVEL = "_after", "_after_at_sea_level"
# Results of one name that are not one thing, and why.
APART = {
    "grade": "of the level, the spread, the leak or the oil",
    "gradeable": "whether that test can be graded",
    "finding": "of that test",
    "parts": "the suspects that a test parts, or the parts to order",
    "lines": "of the diagnosis, or of the order",
    "floor_used": "of the squish, or of the wall",
    "gasket_wanted": "the base gasket, or the head gasket",
    "outcomes": "of gaskets, of bores, or of pistons",
    "reason": "of that choice",
    "skim": "until the face is flat, or until the ratio is the one wanted",
    "skim_in_all": "with one skim, or with the other",
    "lash_after": "with the shim as it was, or with the new one",
    "runner_up": "a shim, or a piston",
    "marks": "the pistons offered for a bore to be cut, or for the bore as it is",
    "exhaust_duration": "of a port, or of a valve",
    "oil_of_fuel": "oil used, or oil mixed into the fuel",
}
RATIO_NOW = (
    "compression_ratio.compression_ratio",
    "dynamic_ratio.static_ratio",
    "port_timing.geometric_ratio",
    "squish.ratio_before",
    "flatness.ratio_before",
    "wanted_ratio.ratio_now",
    "valve_sink.cr_before",
    "overbore_ratio.ratio_before",
)
RATIO_AFTER = (
    "overbore_ratio.ratio_after",
    "squish.ratio_after",
    "flatness.ratio_after",
    "valve_sink.cr_after",
    "dynamic_ratio_after.static_ratio",
    "port_timing_after.geometric_ratio",
    "port_timing.geometric_ratio_after",
)
AFTER_ALL_WORKS = tuple(
    (f"port_timing_after.{name}", f"port_timing.{name}_after", f"squish.{name}_after")
    for name in ("trapped_ratio", "exhaust_duration", "transfer_duration")
)
ONE = (
    RATIO_NOW,
    RATIO_AFTER,
    *AFTER_ALL_WORKS,
    ("port_timing_after.trapped_volume", "port_timing.trapped_volume_after"),
    ("port_timing_after.blowdown", "port_timing.blowdown_after"),
    ("compression_ratio.clearance", "overbore_ratio.clearance_before"),
    ("compression_ratio.swept", "overbore_ratio.swept_before"),
    ("bore_survey.max", "clean_up.symmetric"),
    ("bore_survey.min", "piston_clearance.bore_smallest_at_20c"),
    ("oversize_choice.chosen_bore_to", "bore_order.bore_to", "order_card.bore_to"),
    ("dynamic_ratio.dynamic_ratio", "wet_gain.dry_ratio"),
    ("compression_level.ratio", "pressure_build_up.last_over_expected"),
)


def stage(part: str) -> str:
    """Return whether a part tells of the engine as it is, or after the work."""
    return next((end for end in (AT_SEA_LEVEL, AFTER) if part.endswith(end)), "")


def things(result: Json) -> dict[Any, dict[str, Any]]:
    """Return what is said of each thing, by the results that say it."""
    found: dict[Any, dict[str, Any]] = defaultdict(dict)
    said = {
        f"{part}.{name}": value
        for part, results in result.items()
        if isinstance(results, dict)
        for name, value in results.items()
        if value is not None
    }
    for place, value in said.items():
        part, name = place.split(".")
        if name not in APART:
            # The air of the place is one, before the work and after it.
            when = stage(part) if name != "air_pressure_here" else part.endswith(AT_SEA_LEVEL)
            found[(name, when)][place] = value
    for places in ONE:
        found[places] = {place: said[place] for place in places if place in said}
    return found


def bare(value: Any) -> Any:
    """Return a result without its uncertainty, which hangs on what its part was told."""
    return {k: v for k, v in value.items() if k in VALUE} if isinstance(value, dict) else value


def assert_one_truth(answer: Json, asked: Asked, tally: Tally) -> None:
    for said in things(answer["result"]).values():
        (first, value), *others = said.items() or [("", None)]
        for place, other in others:
            apart = difference(bare(value), bare(other), f"{first} and {place}")
            tally.add(apart, f"{asked}, {first} and {place}")


def assert_judged_where_due(answer: Json, asked: Asked, tally: Tally) -> None:
    """Assert that no verdict stands where a condition of its test was not met, and none twice."""
    composite = asked.declaration
    assert isinstance(composite, Composite)
    found = answer_composite(composite, understood(composite, asked.body))
    for part in found.parts.values():
        for verdict in part.verdicts:
            for unjudged in verdict.check.unjudged:
                if not unjudged.when(part.inputs, part.outputs, verdict.limit):
                    continue
                allowed = {PASS} if unjudged.lets_pass(verdict.limit) else set()
                assert verdict.word not in {PASS, FAIL} - allowed, (unjudged.why, str(asked))
                tally.add(0.0, str(asked))
    judged = [(v["check"], v.get("of")) for v in answer["verdicts"]]
    assert len(judged) == len(set(judged))


LEVEL, LEAK = frozenset({"compression_reading"}), frozenset({"leak_down"})
BORE = frozenset({"bore_max", "out_of_round", "taper_pin_axis", "taper_thrust_axis", "bore_wear"})
# What a card may say of a test's conditions, in whichever section: then none of these fails.
SPOILT: dict[tuple[str, Any], frozenset[str]] = {
    ("decompressor_state", "automatic_active"): LEVEL | LEAK,
    ("throttle_open", False): LEVEL,
    ("choke_off", False): LEVEL,
    ("engine_warm", False): LEVEL,
    ("plugs_out", False): LEVEL,
    ("piston_at", "below_tdc"): LEAK,
    ("piston_at", "overlap_tdc"): LEAK,
    ("piston_at", "unknown"): LEAK,
    ("surface", "smeared"): BORE,
}


def assert_none_fails_that_was_spoilt(answer: Json, asked: Asked, tally: Tally) -> None:
    body = asked.body
    known = {(n, v) for n, v in told_of(body) if isinstance(v, (str, bool))}
    for said in known & SPOILT.keys():
        for verdict in answer["verdicts"]:
            working = body.get("limits", {}).get(verdict["check"], {}).get("with_decompressor")
            if verdict["check"] in SPOILT[said] and not working:
                assert verdict["verdict"] != FAIL, (said, str(asked))
                tally.add(0.0, str(asked))


def told_of(body: Json) -> Iterator[tuple[str, Any]]:
    """Yield the fields of a card and of its sections."""
    for name, value in body.items():
        yield name, value
        if isinstance(value, dict) and "unit" not in value:
            yield from value.items()


def test_what_spoils_a_test_is_a_field_of_the_card_and_its_checks_are_of_parts() -> None:
    card = BY_NAME["job-card"]
    assert isinstance(card, Composite)
    checks = {check.name for step in card.steps for check in step.calculation.checks}
    assert set().union(*SPOILT.values()) <= checks
    assert {name for name, _ in SPOILT} <= paths(card.inputs).keys()


def assert_whole(client: FlaskClient, asked: Asked, tally: Tally, refused: bool = False) -> None:
    """Assert all of it; a thinned card may lack what another field needs, and is refused then."""
    response = client.post(asked.path, json=asked.body)
    if refused and response.status_code in (400, 422):
        return
    assert response.status_code == 200, (str(asked), response.text, asked.body)
    answer = strict(response)
    assert_one_truth(answer, asked, tally)
    assert_judged_where_due(answer, asked, tally)
    assert_none_fails_that_was_spoilt(answer, asked, tally)


# No default judges a compression reading; against these some pass and some fail.
LIMITS = {
    "compression_reading": {"low": {"value": 800, "unit": "kPa"}},
    "leak_down": {"high": {"value": 15, "unit": "%"}},
}


def with_limits(composite: Composite, body: Json) -> Json:
    """Return a card with the limits that its parts' checks take."""
    checks = {check.name for step in composite.steps for check in step.calculation.checks}
    told = {name: limit for name, limit in LIMITS.items() if name in checks}
    return {**body, "limits": told} if told else body


KNOWN = [asked for asked in every() if isinstance(asked.declaration, Composite)]


@pytest.mark.parametrize("asked", KNOWN, ids=str)
def test_known_cards_whole_and_thinned(
    client: FlaskClient, asked: Asked, tally: Tally, pytestconfig: pytest.Config
) -> None:
    assert_whole(client, asked, tally)
    seed = pytestconfig.getoption("--between-seed")
    for i in range(pytestconfig.getoption("--between-cases")):
        chance = random.Random(f"{asked} {seed} {i}")
        body = thinned(asked.body, chance, leave=chance.choice((0.6, 0.8, 0.9)))
        body = with_limits(asked.declaration, body) if i % 2 else body
        assert_whole(
            client, Asked(asked.calculation, f"{asked.origin}, {i}", body), tally, refused=True
        )


@pytest.mark.parametrize("calculation", COMPOSITES, ids=lambda c: c.name)
def test_random_cards(
    client: FlaskClient, calculation: Composite, questions: Drawn, tally: Tally
) -> None:
    for i, body in enumerate(questions(calculation)):
        assert_whole(client, Asked(calculation.name, f"drawn {i}", body), tally)
        judged = Asked(calculation.name, f"drawn {i}, a limit told", with_limits(calculation, body))
        assert_whole(client, judged, tally)


def test_every_result_named_here_is_one_of_the_card() -> None:
    card = BY_NAME["job-card"]
    assert isinstance(card, Composite)
    parts = {
        step.part: {field.public(n) for n, field in declared(step.calculation.outputs).items()}
        for step in card.steps
    }
    for places in ONE:
        for place in places:
            part, name = place.split(".")
            assert name in parts[part], place
    for name in APART:
        assert sum(name in names for names in parts.values()) >= 2, name


def test_two_values_of_one_thing_are_found() -> None:
    """Else the relation could not fail."""
    asked = next(a for a in KNOWN if a.origin == "orchard_pump.json")
    ratio = {"compression_ratio": {"compression_ratio": 8.0}, "flatness": {"ratio_before": 8.1}}
    named = {"bore_order": {"zone": {"value": 0.01}}, "order_card": {"zone": {"value": 0.02}}}
    for result in (ratio, named):
        with pytest.raises(AssertionError):
            assert_one_truth({"result": result}, asked, Tally(RELATION))
    # After the work is another thing.
    now, then = (
        {"dynamic_ratio": {"static_ratio": 8.0}},
        {"dynamic_ratio_after": {"static_ratio": 9}},
    )
    assert_one_truth({"result": now | then}, asked, Tally(RELATION))
