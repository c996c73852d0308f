"""The typed answers carry the uncertainty of a result without a unit, by its name."""

import pytest

from ringland import Client, Interval

RATIO = 8.0  # (239.691 + 34.2416) / 34.2416 by hand
BORE, STROKE, CLEARANCE = 68.0, 66.0, 34.2416


def test_a_ratio_has_its_uncertainty(ringland_client: Client) -> None:
    """By hand: the ratio is 1 + V/c, so that U = V/c²·U(c) where the clearance alone states one."""
    found = ringland_client.dynamic_ratio(
        bore=f"{BORE} mm",
        stroke=f"{STROKE} mm",
        rod="112 mm",
        clearance=f"{CLEARANCE} cc +/- 0.2",
        intake_closes="62 deg",
    )
    swept = (RATIO - 1.0) * CLEARANCE
    assert found.result.static_ratio == pytest.approx(RATIO, rel=1e-4)
    told = found.uncertainties["static_ratio"]
    assert told == pytest.approx(0.2 * swept / CLEARANCE**2, rel=1e-4)


def test_of_a_list_each_has_its_own(ringland_client: Client) -> None:
    found = ringland_client.cylinder_spread(
        readings={"values": [1180.0, 1100.0], "unit": "kPa"}, repeatability="10 kPa"
    )
    highest, other = found.uncertainties["each_over_highest"]
    assert highest is None  # one over itself
    assert other == pytest.approx(found.uncertainties["lowest_over_highest"])


def test_none_without_a_statement(ringland_client: Client) -> None:
    found = ringland_client.displacement(bore="68 mm", stroke="66 mm")
    assert found.uncertainties == {}


def test_intervals_of_readings_that_tie(ringland_client: Client) -> None:
    """Three cylinders alike: the lowest over the highest is at most 1, and reads too low."""
    found = ringland_client.cylinder_spread(
        readings={"values": [1000.0, 1000.0, 1000.0], "unit": "kPa"}, repeatability="10 kPa"
    )
    told = found.intervals["lowest_over_highest"]
    assert isinstance(told, Interval)
    assert told.low < told.high == 1.0
    each = found.intervals["each_over_highest"]
    assert isinstance(each, tuple)
    assert [type(one) for one in each] == [Interval] * 3
    assert found.result.spread.interval == Interval(0.0, pytest.approx(100.0 * (1.0 - told.low)))
    verdict = found.verdict("lowest_over_highest")
    assert verdict.interval == told
    assert verdict.rule == "interval_95"
    assert verdict.bias is not None


def test_columns_of_intervals(ringland_client: Client) -> None:
    found = ringland_client.cylinder_spread.batch(
        columns={"readings": {"unit": "kPa", "values": ["1000;1000;1000", "1000;500"]}},
        shared={"repeatability": {"value": 10, "unit": "kPa"}},
    )
    told, none = found.results["lowest_over_highest"].intervals or ()
    assert isinstance(told, Interval)
    assert none is None
    assert found.verdicts["lowest_over_highest"].interval == (told, None)
