"""The typed answers carry the uncertainty of a result without a unit, by its name."""

import pytest

from ringland import Client

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
