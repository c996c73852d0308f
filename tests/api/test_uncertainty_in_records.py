"""Uncertainty stated inside a list of records: read, carried to the results, shown, or refused."""

import copy
from collections.abc import Iterator
from typing import Any

import pytest
from asking import PLAIN, post, strict
from flask.testing import FlaskClient

from ringland_service.api.shapes.examples import example
from ringland_service.core.declare import Calculation, input_fields
from ringland_service.core.declare.fields import AnyQuantityField, QuantityField, RecordsField

U = 0.005


def mm(number: float, **uncertainty: Any) -> dict[str, Any]:
    return {"value": number, "unit": "mm", **uncertainty}


def choice(*uncertainties: dict[str, Any], **more: Any) -> dict[str, Any]:
    """Return a choice among two pistons; margins by hand 0.176 and 0.426."""
    first, second = [*uncertainties, {}, {}][:2]
    return {
        "bore_kind": "iron",
        "clean_up": mm(68.26),
        "clearance_target": mm(0.035),
        "hone_stock": mm(0.06),
        "pistons": [
            {"mark": "+0.50 mm", "size": mm(68.461, **first)},
            {"mark": "+0.75 mm", "size": mm(68.711, **second)},
        ],
        **more,
    }


def test_an_uncertainty_reaches_results_and_verdict(client: FlaskClient) -> None:
    found = post(
        client,
        "oversize-choice",
        choice({"uncertainty": U}, {"uncertainty": 0.008}),
    )
    assert found["result"]["margins"]["uncertainties"] == pytest.approx([U, 0.008], rel=1e-6)
    assert found["result"]["chosen_margin"]["uncertainty"] == pytest.approx(U, rel=1e-6)
    (verdict,) = found["verdicts"]
    assert verdict["rule"] == "guard_2u"
    assert verdict["uncertainty"]["value"] == pytest.approx(U, rel=1e-6)
    assert "no_uncertainty_stated" not in {w["code"] for w in found["warnings"]}


def test_the_echo_shows_the_uncertainty_beside_its_quantity(client: FlaskClient) -> None:
    found = post(client, "oversize-choice", choice({}, {"uncertainty": U}))
    first, second = found["inputs"]["pistons"]
    assert "uncertainty" not in first["size"]
    assert second["size"]["uncertainty"] == pytest.approx(U, rel=1e-12)


def test_an_uncertainty_has_the_unit_of_its_quantity(client: FlaskClient) -> None:
    asked_ = choice()
    asked_["pistons"][0]["size"] = {
        "value": 68.461 / 25.4,
        "unit": "in",
        "uncertainty": 2e-4,
    }
    found = post(client, "oversize-choice", asked_)
    assert found["result"]["chosen_margin"]["uncertainty"] == pytest.approx(0.00508, rel=1e-6)


def test_the_echo_of_readings_shows_their_uncertainty(client: FlaskClient) -> None:
    survey = {
        "depth": {"values": [10, 40, 70], "unit": "mm"},
        "pin_axis": {"values": [68.05, None, 68.01], "unit": "mm", "uncertainty": U},
        "thrust_axis": {"values": [68.08, 68.05, 68.02], "unit": "mm"},
    }
    found = post(client, "bore-survey", survey)["inputs"]
    assert found["pin_axis"]["uncertainties"] == [pytest.approx(U), None, pytest.approx(U)]
    assert "uncertainties" not in found["thrust_axis"]
    inner = post(client, "piston-clearance", {"piston_size": mm(67.95), "bore_survey": survey})[
        "inputs"
    ]
    assert inner["bore_survey"]["pin_axis"]["uncertainties"] == found["pin_axis"]["uncertainties"]


def uncertain(local: Any, reference: Any, **more: Any) -> dict[str, Any]:
    score = {"local": mm(68.076, **local), "depth_radial": mm(0.06), "side": "worn_side"}
    return {
        "unworn": mm(68.012, **reference),
        "bore_largest": mm(68.094),
        "wear_side_share": 1.0,
        "scores": [score],
        **more,
    }


def test_an_instrument_shared_with_another_field_cancels_in_the_difference(
    client: FlaskClient,
) -> None:
    """By hand: 2·(local − reference) + reference: of one setting 2 − 1, of two √(2² + 1²)."""
    gauge = {"zero_setting_error": mm(0.003)}
    shared = {"instruments": [{"id": "a", **gauge}, {"id": "b", **gauge}]}

    def uncertainty(local: str, reference: str) -> float:
        body = uncertain({"instrument": local}, {"instrument": reference}, measuring=shared)
        found = post(client, "clean-up", body)
        assert found["inputs"]["scores"][0]["local"]["uncertainty"] == pytest.approx(
            2 * 0.003 / 3**0.5
        )
        return float(found["result"]["score_diameter"]["uncertainty"])

    assert uncertainty("a", "a") == pytest.approx(2 * 0.003 / 3**0.5, rel=1e-6)
    assert uncertainty("a", "b") == pytest.approx(2 * 0.003 / 3**0.5 * 5**0.5, rel=1e-6)


BENCH = {"instruments": [{"id": "gauge", "kind": "bore_gauge"}, {"id": "b", "kind": "burette"}]}
REFUSED = [
    ({"uncertainty": U, "instrument": "gauge"}, "uncertainty_twice", "size/uncertainty"),
    ({"instrument": "nobody"}, "unknown_instrument", "size/instrument"),
    ({"instrument": "b"}, "wrong_instrument", "size/instrument"),
    ({"uncertainty": 0}, "out_of_bounds", "size/uncertainty"),
    ({"uncertainty": -0.01}, "out_of_bounds", "size/uncertainty"),
    # A tenth of the span of the bounds, a quarter of the value.
    ({"uncertainty": 17.2}, "out_of_bounds", "size/uncertainty"),
]


@pytest.mark.parametrize(("uncertainty", "code", "where"), REFUSED)
def test_refused_uncertainty_is_pointed_at(
    client: FlaskClient, uncertainty: dict[str, Any], code: str, where: str
) -> None:
    found = post(client, "oversize-choice", choice({}, uncertainty, measuring=BENCH), 422)
    (fault,) = found["errors"]
    assert (fault["code"], fault["pointer"]) == (code, f"#/pistons/1/{where}")


def test_instrument_not_described_at_all(client: FlaskClient) -> None:
    (fault,) = post(client, "oversize-choice", choice({"instrument": "x"}), 422)["errors"]
    assert fault["pointer"] == "#/pistons/0/size/instrument"


def test_a_batch_shares_uncertain_records(client: FlaskClient) -> None:
    shared = uncertain({"uncertainty": U}, {})
    del shared["bore_largest"]
    largest = (68.08, 68.094, 68.2)
    body = {"shared": shared, "columns": {"bore_largest": {"values": largest, "unit": "mm"}}}
    found = strict(client.post("/v1/clean-up/batch", json=body))["results"]["clean_up"]
    for row, bore_largest in enumerate(largest):
        asked_ = {**uncertain({"uncertainty": U}, {}), "bore_largest": mm(bore_largest)}
        single = post(client, "clean-up", asked_)["result"]["clean_up"]
        assert found["values"][row] == single["value"]
        assert found["uncertainties"][row] == single.get("uncertainty")
    # By hand: the score governs until the wear alone needs more; of it 2·U of the local bore.
    assert found["uncertainties"] == [pytest.approx(2 * U), pytest.approx(2 * U), None]


def in_records() -> Iterator[tuple[Calculation, str, str, bool]]:
    """Yield every quantity in a list of records: its calculation, list, name, and if exact."""
    for calculation in PLAIN:
        for name, field in input_fields(calculation.inputs).items():
            if isinstance(field, RecordsField):
                for inner, of in input_fields(field.record).items():
                    if isinstance(of, (QuantityField, AnyQuantityField)):
                        yield calculation, field.public(name), of.public(inner), of.exact


QUANTITIES = list(in_records())
# An order of names has no figure to be uncertain of, where a score lies only says which, and the
# lash of the last time is only held against today's.
WITHOUT_A_FIGURE = {
    "fastener-order/x",
    "fastener-order/y",
    "clean-up/depth_from_deck",
    "lash-shim/found_last_time",
}


# Requests that go the other way than the example of the calculation: several valves at once.
OTHER_WAY: dict[str, dict[str, Any]] = {
    "lash-shim": {
        "valves": [
            {
                "name": "exhaust 1",
                "shim": mm(2.65),
                "found": mm(0.06),
                "lash_low": mm(0.2),
                "lash_high": mm(0.3),
                "target": mm(0.25),
                "found_last_time": mm(0.24),
            }
        ],
        "shim_step": mm(0.05),
        "shim_thinnest": mm(1.2),
        "shim_thickest": mm(3.5),
    }
}


def test_there_are_quantities_in_records() -> None:
    assert {c.name for c, *_ in QUANTITIES} >= {"clean-up", "oversize-choice", "verdict"}


@pytest.mark.parametrize(
    ("calculation", "records", "name", "exact"),
    QUANTITIES,
    ids=[f"{c.name}.{records}.{name}" for c, records, name, _ in QUANTITIES],
)
def test_uncertainty_in_a_record_is_carried_or_refused(
    client: FlaskClient, calculation: Calculation, records: str, name: str, exact: bool
) -> None:
    body = copy.deepcopy(OTHER_WAY.get(calculation.name) or example(calculation.inputs))
    given = [one.setdefault(name, {"value": 20.0, "unit": "mm"}) for one in body[records]]
    uncertainties = [(abs(one["value"]) or 1.0) / 1000.0 for one in given]
    for one, uncertainty in zip(given, uncertainties, strict=True):
        one["uncertainty"] = uncertainty
    if exact:
        (fault,) = post(client, calculation.name, body, 422)["errors"]
        assert (fault["code"], fault["pointer"]) == ("exact", f"#/{records}/0/{name}/uncertainty")
        return
    found = post(client, calculation.name, body)
    shown = [one[name]["uncertainty"] for one in found["inputs"][records]]
    assert shown == pytest.approx(uncertainties)
    moved = [path for path, u in flat(found["result"]) if "uncertain" in path and u != 0.0]
    assert bool(moved) == (f"{calculation.name}/{name}" not in WITHOUT_A_FIGURE)


def flat(value: Any, path: str = "") -> Iterator[tuple[str, Any]]:
    """Yield the leaves of JSON by their path."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from flat(inner, f"{path}/{key}")
    elif isinstance(value, list):
        for place, inner in enumerate(value):
            yield from flat(inner, f"{path}/{place}")
    else:
        yield path, value


def test_no_uncertainty_of_a_uncertainty(client: FlaskClient) -> None:
    part = {"max_permissible_error": mm(0.005, uncertainty=0.001)}
    asked_ = {"value": mm(0.0745), "high": mm(0.08), "parts": [{"resolution": mm(0.001)}, part]}
    (fault,) = post(client, "verdict", asked_, 422)["errors"]
    assert fault["pointer"] == "#/parts/1/max_permissible_error/uncertainty"
    assert "takes no uncertainty of its own" in fault["detail"]


def test_units_that_do_not_go_together_are_pointed_at_in_their_record(client: FlaskClient) -> None:
    part = {"max_permissible_error": mm(0.005), "resolution": {"value": 1, "unit": "degC"}}
    asked_ = {"value": mm(0.0745), "high": mm(0.08), "parts": [part]}
    (fault,) = post(client, "verdict", asked_, 422)["errors"]
    assert fault["code"] == "kinds_differ"
    assert fault["pointer"] in ("#/parts/0/max_permissible_error", "#/parts/0/resolution")


def test_a_composite_shows_and_carries_the_uncertainty_in_its_sections(client: FlaskClient) -> None:
    engine = {"bore": mm(68.0, uncertainty=0.01), "stroke": mm(66.0)}
    found = post(client, "job-card", {"engine": {**engine, "cycle": "four_stroke"}})
    assert found["inputs"]["engine"]["bore"]["uncertainty"] == pytest.approx(0.01)
    assert "uncertainty" not in found["inputs"]["engine"]["stroke"]


def test_a_composite_carries_the_uncertainty_in_its_records(client: FlaskClient) -> None:
    """By hand: score 68.012 + 2·(0.064 + 0.06), of it 2·U of the depth; margin less clean-up."""
    score = {"local": mm(68.076), "depth_radial": mm(0.06, uncertainty=0.01), "side": "worn_side"}
    readings = {
        "depth": {"values": [8, 45, 85], "unit": "mm"},
        "pin_axis": {"values": [68.062, 68.034, 68.012], "unit": "mm"},
        "thrust_axis": {"values": [68.094, 68.052, 68.016], "unit": "mm"},
    }
    body = {
        "bore_survey": readings,
        **{n: v for n, v in choice({"uncertainty": U}).items() if n != "clean_up"},
        "unworn": mm(68.012),
        "wear_side_share": 1.0,
        "scores": [score],
    }
    found = post(client, "cylinder-decision", body)
    assert found["inputs"]["scores"][0]["depth_radial"]["uncertainty"] == pytest.approx(0.01)
    assert found["result"]["clean_up"]["clean_up"]["value"] == pytest.approx(68.26)
    assert found["result"]["clean_up"]["clean_up"]["uncertainty"] == pytest.approx(0.02, rel=1e-6)
    (margin,) = [v for v in found["verdicts"] if v["check"] == "oversize_margin"]
    expected = (0.02**2 + U**2) ** 0.5
    assert margin["uncertainty"]["value"] == pytest.approx(expected, rel=1e-6)


def test_one_uncertain_piston_of_two_leaves_the_other_without_uncertainty(
    client: FlaskClient,
) -> None:
    body = {
        "bore_kind": "plated_aluminium",
        "cycle": "two_stroke",
        "bore_survey": {
            "depth": {"values": [25, 45], "unit": "mm"},
            "pin_axis": {"values": [56.01, 56.0], "unit": "mm"},
            "thrust_axis": {"values": [56.012, 56.002], "unit": "mm"},
        },
        "skirt_from": mm(18),
        "skirt_to": mm(60),
        "piston_size": mm(55.93),
        "clearance_low": mm(0.04),
        "clearance_high": mm(0.08),
        "pistons": [
            {"mark": "A", "size": mm(55.94, uncertainty=U)},
            {"mark": "B", "size": mm(55.95)},
        ],
    }
    found = post(client, "cylinder-decision", body)["verdicts"]
    rules = {v["of"]: v["rule"] for v in found if v["check"] == "selected_piston_max"}
    assert rules == {"A": "guard_2u", "B": "simple"}
