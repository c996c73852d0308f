"""What several works change together stands once on a card: one clearance, one ratio after.

Sources: worked by hand (solid geometry) beside each check.
"""

import copy
import itertools
import math
from typing import Any

import pytest
from flask.testing import FlaskClient
from tests.cards import JOBS

AFTER = (
    "ratio_after",
    "ratio_after",
    "geometric_ratio_after",
)


def mm(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "mm"}


def cc(value: float) -> dict[str, Any]:
    return {"value": value, "unit": "cc"}


# A side-valve single, no gasket and no deck, so that the chamber is the whole clearance volume.
ENGINE = {
    "cycle": "four_stroke",
    "valve_gear": "side_valve",
    "bore_kind": "iron",
    "bore": mm(65),
    "stroke": mm(58),
    "chamber": cc(42.67),
    "gasket_bore": mm(66.5),
    "gasket_thickness": mm(0),
    "deck": mm(0),
}
WHOLE = {name: ENGINE[name] for name in ("cycle", "valve_gear", "bore_kind", "bore", "stroke")} | {
    "clearance": cc(42.67),
    "deck": mm(0),
}
WORKS: dict[str, dict[str, dict[str, Any]]] = {
    "bore": {"plan": {"new_bore": mm(65.5)}},
    "sink": {"valve": {"sink_cut": mm(0.4), "valve_head_diameter": mm(30), "valves_cut": 1}},
    "skim": {
        "head_face": {
            "lines": {"values": [0.1] * 6, "unit": "mm"},
            "chamber_area": {"value": 4000, "unit": "mm2"},
        }
    },
    "crown": {"plan": {"new_dish": cc(1.0), "new_dome": cc(0.0)}},
    "deck": {"order": {"deck_cut": mm(0.2)}},
}


def change_cc(works: tuple[str, ...]) -> float:
    """Return what the works other than the bore change in the clearance volume, by hand."""
    bore = 65.5 if "bore" in works else 65.0
    changes = {
        "sink": math.pi / 4 * 30**2 * 0.4 / 1000,
        "skim": -4000 * 0.1 / 1000,
        "crown": 1.0,
        "deck": -math.pi / 4 * bore**2 * 0.2 / 1000,
    }
    return sum(changes.get(work, 0.0) for work in works)


def asked(client: FlaskClient, *works: str, engine: Any = None) -> dict[str, Any]:
    job: dict[str, Any] = {"engine": copy.deepcopy(engine or ENGINE)}
    for work in works:
        for section, fields in WORKS[work].items():
            job.setdefault(section, {}).update(fields)
    response = client.post("/v1/job-card?units=metric", json=job)
    assert response.status_code == 200, response.get_json()
    found: dict[str, Any] = response.get_json()
    return found


def ratios_after(card: dict[str, Any]) -> dict[str, float]:
    """Return every static ratio after that stands on a card, by part and result."""
    return {
        f"{part}.{name}": result[name]
        for part, result in card["result"].items()
        if isinstance(result, dict)
        for name in AFTER
        if name in result
    }


def test_bore_and_sunk_valve_together(client: FlaskClient) -> None:
    # By hand: swept pi/4*65^2*58 = 192.462, after 195.434; the valve gains pi/4*30^2*0.4 = 0.28274.
    # Bore alone 1 + 195.434/42.67 = 5.580; valve alone 1 + 192.462/42.9527 = 5.481;
    # together 1 + 195.434/42.9527 = 5.550.
    alone = {work: ratios_after(asked(client, work)) for work in ("bore", "sink")}
    assert alone["bore"]
    assert all(r == pytest.approx(5.580, abs=5e-4) for r in alone["bore"].values())
    assert all(r == pytest.approx(5.481, abs=5e-4) for r in alone["sink"].values())
    together = ratios_after(asked(client, "bore", "sink"))
    assert {"overbore_ratio.ratio_after", "valve_sink.ratio_after"} <= together.keys()
    assert all(ratio == pytest.approx(5.550, abs=5e-4) for ratio in together.values())


COMBINED = [
    works for size in range(1, len(WORKS) + 1) for works in itertools.combinations(WORKS, size)
]


@pytest.mark.parametrize("engine", [ENGINE, WHOLE], ids=["by_parts", "whole"])
@pytest.mark.parametrize("works", COMBINED, ids="+".join)
def test_every_combination_has_one_ratio_after(
    client: FlaskClient, works: tuple[str, ...], engine: dict[str, Any]
) -> None:
    card = asked(client, *works, engine=engine)
    bore = 65.5 if "bore" in works else 65.0
    swept = math.pi / 4 * bore**2 * 58 / 1000
    expected = 1 + swept / (42.67 + change_cc(works))
    found = ratios_after(card)
    assert found
    assert all(ratio == pytest.approx(expected, rel=1e-9) for ratio in found.values()), found
    # What stands in another's place says so.
    replaced = {row["field"]: row["from"] for row in card["taken"]}
    for place in found.keys() - {"overbore_ratio.ratio_after"}:
        if "overbore_ratio.ratio_after" in found:
            assert replaced[place] == "overbore_ratio.ratio_after"


def test_a_flat_face_is_not_skimmed_in_the_ratio_after(client: FlaskClient) -> None:
    job = {"engine": ENGINE, **copy.deepcopy(WORKS["skim"]), **WORKS["bore"]}
    job["head_face"]["lines"]["values"] = [0.01] * 6
    card = client.post("/v1/job-card?units=metric", json=job).get_json()
    # By hand: the bore alone, 1 + 195.434/42.67.
    assert all(r == pytest.approx(5.580, abs=5e-4) for r in ratios_after(card).values())


def test_the_verdict_is_on_the_one_ratio(client: FlaskClient) -> None:
    job = {"engine": ENGINE, **WORKS["sink"], **WORKS["bore"]}
    limit = {"high": {"value": 5.56}, "standing": "maker", "source": "manual"}
    job["limits"] = {"compression_ratio_after": {**limit, "high": 5.56}}
    card = client.post("/v1/job-card?units=metric", json=job).get_json()
    verdict = next(v for v in card["verdicts"] if v["check"] == "compression_ratio_after")
    assert verdict["value"] == pytest.approx(5.550, abs=5e-4)
    assert verdict["verdict"] == "pass"


def two_stroke(client: FlaskClient, **plan: Any) -> dict[str, Any]:
    job = copy.deepcopy(JOBS["ridge_two_stroke"])
    job["engine"] |= {"bore_kind": "iron", "deck": mm(0)}
    job["piston"].pop("piston_kind")
    job["plan"] = {**plan}
    response = client.post("/v1/job-card?units=metric", json=job)
    card: dict[str, Any] = response.get_json()
    assert response.status_code == 200, card
    return card


def test_new_bore_and_base_gasket_of_a_two_stroke(client: FlaskClient) -> None:
    card = two_stroke(client, new_bore=mm(52.25))
    result = card["result"]
    thinner = result["squish"]["thinner_by"]["value"]
    if result["cylinder_decision"]["way"] not in ("overbore", "not_settled"):
        pytest.fail(result["cylinder_decision"]["way"])
    assert thinner > 0
    # By hand: clearance 8.6 less the disc that the gasket gives up under the new bore; the trapped
    # volume is the disc from the exhaust port's top (24.6 below the deck) to the crown's edge.
    area = math.pi / 4 * 52.25**2 / 1000
    clearance = 8.6 - area * thinner
    trapped = 1 + area * (24.6 + thinner) / clearance
    static = 1 + area * 44 / clearance
    assert all(r == pytest.approx(static, rel=1e-9) for r in ratios_after(card).values())
    for part, name in (
        ("squish", "trapped_ratio_after"),
        ("port_timing_after", "trapped_ratio"),
    ):
        assert result[part][name] == pytest.approx(trapped, rel=1e-9), part
    used = {row["field"]: row["from"] for row in card["taken"]}
    assert used["cranking_pressure_after.ratio"] == "port_timing_after.trapped_ratio"


@pytest.mark.parametrize("name", JOBS)
def test_no_card_states_two_ratios_after(client: FlaskClient, name: str) -> None:
    card = client.post("/v1/job-card?units=metric", json=JOBS[name]).get_json()
    found = set(ratios_after(card).values())
    dynamic = card["result"].get("dynamic_ratio_after", {})
    found |= {dynamic["static_ratio"]} if dynamic else set()
    assert max(found, default=0.0) - min(found, default=0.0) < 1e-9, ratios_after(card)
