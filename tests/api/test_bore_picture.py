"""The picture of a bore: scales, where each reading lies, what is told in words."""

import math
import xml.etree.ElementTree as ET
from itertools import pairwise
from typing import Any

import pytest
from asking import post
from flask.testing import FlaskClient
from hypothesis import given
from hypothesis import strategies as st

from ringland_service.api.writing.pictures import bore_layout
from ringland_service.api.writing.pictures.scales import (
    Scale,
    decimals_of,
    round_step,
    spread,
    ticks,
)
from surveys import DOUBTED, PIN, PLAIN, SURVEYS, THRUST, mm

SVG = "{http://www.w3.org/2000/svg}"


def drawn(client: FlaskClient, asked: Any, units: str = "metric") -> ET.Element:
    """Return the picture of a survey, read by an XML parser."""
    answer = client.post(f"/v1/bore-survey.svg?units={units}", json=asked)
    assert answer.status_code == 200, answer.text
    return ET.fromstring(answer.data)  # noqa: S314 - the service's own


def texts(root: ET.Element) -> list[str]:
    return [text.text or "" for text in root.iter(f"{SVG}text")]


def marked(root: ET.Element, axis: str) -> list[tuple[float, float]]:
    """Return the middle of each marker of an axis, from the deck down; not those of the legend."""
    in_legend = {id(e) for g in root.iter(f"{SVG}g") if g.get("class") == "legend" for e in g}
    found = [e for e in root.iter() if e.get("class") == axis and id(e) not in in_legend]
    circles = [(float(e.get("cx", "")), float(e.get("cy", ""))) for e in found if "cx" in e.attrib]
    squares = [
        (float(e.get("x", "")) + 4.5, float(e.get("y", "")) + 4.5) for e in found if "x" in e.attrib
    ]
    return sorted(circles + squares, key=lambda point: point[1])


def test_scale_is_straight() -> None:
    """By hand: 25 is a quarter of the way from 0 to 100, 10 to 50 px: 20 px; 150 lies beyond."""
    scale = Scale(0.0, 100.0, 10.0, 50.0)
    assert [scale.at(v) for v in (0.0, 25.0, 100.0, 150.0)] == [10.0, 20.0, 50.0, 70.0]
    assert [scale.holds(v) for v in (-0.1, 0.0, 100.0, 100.1)] == [False, True, True, False]


@pytest.mark.parametrize(
    ("span", "most", "step"),
    [(10, 10, 1), (10, 9, 2), (10, 5, 2), (10, 4, 5), (10, 1, 10), (0.09, 8, 0.02), (78, 8, 10)],
)
def test_round_steps_by_hand(span: float, most: int, step: float) -> None:
    assert round_step(span, most) == pytest.approx(step, rel=1e-12)


@given(st.floats(1e-6, 1e6), st.integers(1, 20), st.floats(-1e3, 1e3))
def test_ticks_are_round_few_and_within(span: float, most: int, low: float) -> None:
    step = round_step(span, most)
    mantissa = step / 10.0 ** math.floor(math.log10(step) + 1e-9)
    assert any(mantissa == pytest.approx(digit) for digit in (1, 2, 5))
    found = ticks(low, low + span, step)
    assert len(found) <= most + 1
    dust = 1e-8 * (step + abs(low) + span)
    assert all(low - dust <= tick <= low + span + dust for tick in found)
    labels = [f"{tick:.{decimals_of(step)}f}" for tick in found]
    assert len(set(labels)) == len(labels)


def test_a_scale_of_no_width_is_refused() -> None:
    with pytest.raises(ValueError, match="a span above zero"):
        round_step(0.0, 5)


@given(st.lists(st.floats(0, 100), min_size=1, max_size=20).map(sorted))
def test_spread_labels_keep_their_distance_and_order(wanted: list[float]) -> None:
    """At most 20 labels 5 apart need 95: they always fit between 0 and 100."""
    found = spread(wanted, 5.0, 0.0, 100.0)
    assert all(later - first >= 5.0 - 1e-9 for first, later in pairwise(found))
    assert found[0] >= -1e-9
    assert found[-1] <= 100.0 + 1e-9


def test_spread_by_hand() -> None:
    """Far apart: where wanted. 10, 11, 12 at 5 apart: centred on 11, so 6, 11, 16."""
    assert spread([10.0, 30.0], 5.0, 0.0, 100.0) == [10.0, 30.0]
    assert spread([10.0, 11.0, 12.0], 5.0, 0.0, 100.0) == [6.0, 11.0, 16.0]
    assert spread([0.0, 1.0], 5.0, 0.0, 100.0) == [0.0, 5.0]


@pytest.mark.parametrize("units", ["metric", "us"])
@pytest.mark.parametrize("name", SURVEYS)
def test_picture_is_well_formed(client: FlaskClient, name: str, units: str) -> None:
    root = drawn(client, SURVEYS[name], units)
    assert root.tag == f"{SVG}svg"
    assert root.get("role") == "img"
    named = [e.get("id") for tag in ("title", "desc") for e in root.iter(f"{SVG}{tag}")]
    assert (root.get("aria-labelledby") or "").split() == named
    assert not [e.tag for e in root.iter() if e.tag.rpartition("}")[2] in ("script", "style", "a")]
    assert "nan" not in ET.tostring(root, "unicode").lower()
    sizes = [float(e.get("font-size", "12")) for e in (root, *root.iter(f"{SVG}text"))]
    assert min(sizes) >= 11


@pytest.mark.parametrize("units", ["metric", "us"])
@pytest.mark.parametrize("name", SURVEYS)
def test_each_reading_has_its_marker(client: FlaskClient, name: str, units: str) -> None:
    """The markers are a straight map of the readings, across and down."""
    asked = SURVEYS[name]
    root = drawn(client, asked, units)
    pairs = []
    for axis in ("pin", "thrust"):
        read = asked[f"{axis}_axis"]["values"]
        rows = sorted(zip(asked["depth"]["values"], read, strict=True))
        kept = [(size, depth) for depth, size in rows if size is not None]
        points = marked(root, axis)
        assert len(points) == len(kept)
        pairs += list(zip(kept, points, strict=True))
    for along in (0, 1):
        (low, at_low), (high, at_high) = (
            (value[along], point[along])
            for value, point in (
                choose(pairs, key=lambda pair: pair[0][along]) for choose in (min, max)
            )
        )
        for value, point in pairs:
            share = 0.0 if high == low else (value[along] - low) / (high - low)
            assert point[along] == pytest.approx(at_low + share * (at_high - at_low), abs=0.03)


def test_marker_worked_by_hand(client: FlaskClient) -> None:
    """Sizes 73.000 and 73.050, no limit and no new size, so that the scale is readings alone.

    Span 0.050; 6 % of it on each side: 72.997 to 73.053 over 84 to 470 px, so 73.000 lies at
    84 + 386·0.003/0.056 = 104.68 px and 73.050 at 84 + 386·0.053/0.056 = 449.32 px. Depth 40: steps
    of 5, 40·1.03 = 41.2 rounded up to 45 over 156 to 596 px: 10 mm at 156 + 440·10/45 = 253.78 px
    and 40 mm at 156 + 440·40/45 = 547.11 px.
    """
    asked = {
        "depth": mm(10, 40),
        "pin_axis": mm(73.0, 73.0),
        "thrust_axis": mm(73.05, 73.0),
        "defaults": "off",
    }
    root = drawn(client, asked)
    top, bottom = marked(root, "thrust")
    assert top == pytest.approx((449.32, 253.78), abs=0.011)
    assert bottom == pytest.approx((104.68, 547.11), abs=0.011)
    assert marked(root, "pin")[0] == pytest.approx((104.68, 253.78), abs=0.011)


def test_all_equal_readings_still_have_a_scale(client: FlaskClient) -> None:
    """By hand: 20 last digits around 73.000, so 72.990 to 73.010; the middle at 277 px."""
    points = marked(drawn(client, SURVEYS["all equal"]), "pin")
    assert [x for x, _ in points] == pytest.approx([277.0, 277.0], abs=0.01)


def test_gaps_break_the_line(client: FlaskClient) -> None:
    root = drawn(client, SURVEYS["gaps"])
    runs = [
        len((e.get("points") or "").split())
        for axis in ("pin", "thrust")
        for e in root.iter(f"{SVG}polyline")
        if e.get("class") == axis
    ]
    # Depth by depth: pin read, gap, read, read, read; thrust three read, gap, read.
    assert runs == [1, 3, 3, 1]
    assert texts(root).count("–") == 4
    assert "pin not read" in (root.findtext(f"{SVG}desc") or "")


def by_class(root: ET.Element, name: str) -> list[ET.Element]:
    return [e for e in root.iter() if e.get("class") == name]


def test_band_of_doubt(client: FlaskClient) -> None:
    """± U to either side: U of the largest bore from the answer, in the scale of the picture."""
    root = drawn(client, DOUBTED)
    answer = post(client, "bore-survey", DOUBTED)
    doubt = answer["result"]["max"]["uncertainty"]
    (x_low, _), (x_high, _) = marked(root, "pin")[-1], marked(root, "thrust")[0]
    per_mm = (x_high - x_low) / (THRUST[0] - PIN[-1])
    bands = by_class(root, "doubt")
    assert len(bands) == 2
    for band, axis in zip(bands, ("thrust", "pin"), strict=True):
        edges = [float(p.split(",")[0]) for p in (band.get("points") or "").split()]
        left, right = edges[: len(edges) // 2], edges[: len(edges) // 2 - 1 : -1]
        middles = [x for x, _ in marked(root, axis)]
        assert [x - doubt * per_mm for x in middles] == pytest.approx(left, abs=0.05)
        assert [x + doubt * per_mm for x in middles] == pytest.approx(right, abs=0.05)
    assert any("± 0.007 mm (k = 2), doubt of a reading" in text for text in texts(root))


def test_doubt_of_one_axis_is_not_drawn_on_the_other(client: FlaskClient) -> None:
    root = drawn(client, SURVEYS["gaps"])
    assert len(by_class(root, "reach")) == 4  # the readings of the pin axis
    assert any(text == "pin ± 0.004 mm (k = 2)" for text in texts(root))
    assert not by_class(drawn(client, PLAIN), "reach")


def test_limits_and_new_size_stand_where_they_are(client: FlaskClient) -> None:
    root = drawn(client, SURVEYS["limit on both sides"])
    assert len(by_class(root, "limit")) == 2
    assert len(by_class(root, "new")) == 1
    shown = " | ".join(texts(root))
    assert "limit at most 73.060 mm (maker)" in shown
    assert "limit at least 73.000 mm (maker)" in shown
    assert "new size 73.000 mm (nominal bore)" in shown
    none = drawn(client, SURVEYS["no limit, no doubt"])
    assert not by_class(none, "limit")
    assert not by_class(none, "new")
    assert not any("limit" in text or "new size" in text for text in texts(none))


def test_limit_on_the_wear_counts_from_the_new_size(client: FlaskClient) -> None:
    """No nominal bore, so no limit on the bore itself: 73.008 + 0.100 mm of wear."""
    root = drawn(client, SURVEYS["limit on the wear alone"])
    assert any("limit at most 73.108 mm (common practice)" in text for text in texts(root))


def test_lines_far_off_leave_the_readings_their_room(client: FlaskClient) -> None:
    root = drawn(client, SURVEYS["new size off the scale"])
    assert len(by_class(root, "off")) == 2
    assert not by_class(root, "new")
    assert any("new size 72.000 mm (nominal bore), off scale" in text for text in texts(root))
    xs = [x for x, _ in marked(root, "pin") + marked(root, "thrust")]
    assert max(xs) - min(xs) > 0.8 * (bore_layout.RIGHT - bore_layout.LEFT)


def test_sizes_are_those_at_20c(client: FlaskClient) -> None:
    """Iron, 11.5e-6 per K or near it: 73.063 mm read at 35 °C is 0.013 mm less at 20 °C."""
    asked = SURVEYS["warm, out of order"]
    answer = post(client, "bore-survey", asked)
    largest = answer["result"]["max"]["value"]
    assert 73.063 - largest == pytest.approx(0.0126, abs=0.002)
    shown = texts(drawn(client, asked))
    assert f"{largest:.3f}" in shown
    assert "73.063" not in shown


def test_axes_are_labelled_with_units_at_round_numbers(client: FlaskClient) -> None:
    shown = texts(drawn(client, DOUBTED))
    assert any(text.startswith("bore diameter at 20 °C [mm]") for text in shown)
    assert "depth below the deck [mm]" in shown
    assert {"0", "10", "90", "73.00", "73.02", "73.10", "0.00", "+0.02"} <= set(shown)
    inches = texts(drawn(client, DOUBTED, "us"))
    assert "depth below the deck [in]" in inches
    assert {"0.0", "0.5", "2.874", "2.875", "+0.001"} <= set(inches)


def test_verdicts_and_description_are_told(client: FlaskClient) -> None:
    root = drawn(client, DOUBTED)
    assert {"73.063 ± 0.007 mm", "too close to call", "pass"} <= set(texts(root))
    told = root.findtext(f"{SVG}desc") or ""
    assert "At 9.0 mm below the deck: thrust 73.063 mm, pin 73.041 mm." in told
    assert "largest bore: pass." in told
