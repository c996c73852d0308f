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
from ringland_service.api.request import understood
from ringland_service.core.calculations import BY_NAME, CALCULATIONS
from ringland_service.core.declare import Composite, declared
from ringland_service.core.verdicts import FAIL, PASS
from ringland_service.engine.composite import answer_composite

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


# What the body of a card says of the test's conditions, and the checks that it leaves unjudged.
def spoilt(body: Json) -> Iterator[tuple[str, set[str]]]:
    """Yield each condition that a card says was not met, and the verdicts that it forbids."""
    known = {n: v for part in body.values() if isinstance(part, dict) for n, v in part.items()}
    known |= {n: v for n, v in body.items() if not isinstance(v, dict)}
    low = {"compression_reading"}
    if known.get("decompressor_state") == "automatic_active":
        yield "decompressor at work", low
    for name, right in (("throttle_open", True), ("choke_off", True), ("engine_warm", True)):
        if known.get(name, right) is not right:
            yield name, low
    if known.get("piston_at") == "below_tdc":
        yield "piston below dead centre", {"leak_down"}
    if known.get("surface") == "aluminium_smeared" and known.get("fit") == "used":
        yield "smeared bore", {"piston_clearance_max", "piston_clearance_min"}


def assert_unspoilt(answer: Json, asked: Asked, tally: Tally) -> None:
    limits = asked.body.get("limits", {})
    for why, checks in spoilt(asked.body):
        for verdict in answer["verdicts"]:
            told = limits.get(verdict["check"], {})
            if verdict["check"] not in checks or told.get("with_decompressor"):
                continue
            assert verdict["verdict"] != FAIL, (why, str(asked))
            tally.add(0.0, str(asked))


def assert_whole(client: FlaskClient, asked: Asked, tally: Tally, refused: bool = False) -> None:
    """Assert all of it; a thinned card may lack what another field needs, and is refused then."""
    response = client.post(asked.path, json=asked.body)
    if refused and response.status_code in (400, 422):
        return
    assert response.status_code == 200, (str(asked), response.text, asked.body)
    answer = strict(response)
    assert_one_truth(answer, asked, tally)
    assert_judged_where_due(answer, asked, tally)
    assert_unspoilt(answer, asked, tally)


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
        assert_whole(
            client, Asked(asked.calculation, f"{asked.origin}, {i}", body), tally, refused=True
        )


@pytest.mark.parametrize("calculation", COMPOSITES, ids=lambda c: c.name)
def test_random_cards(
    client: FlaskClient, calculation: Composite, questions: Drawn, tally: Tally
) -> None:
    for i, body in enumerate(questions(calculation)):
        assert_whole(client, Asked(calculation.name, f"drawn {i}", body), tally)


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
    now, then = {"dynamic_ratio": {"static_ratio": 8.0}}, {"dynamic_ratio_after": {"static_ratio": 9}}
    assert_one_truth({"result": now | then}, asked, Tally(RELATION))
