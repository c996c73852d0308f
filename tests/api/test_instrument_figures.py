"""An instrument's figures have bounds like stated uncertainties, in each unit, and on each reading.

Rectangular parts over root 3, a step over 2 root 3: JCGM 100:2008, 4.3.7 (from memory).
"""

import itertools
import json
import math
from fractions import Fraction
from typing import Any

import pytest
from asking import post
from flask.testing import FlaskClient
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from ringland_service.api.openapi.document import document
from ringland_service.api.reading.instrument_figures import (
    ERRORS,
    FIGURES,
    MOST_PERCENT,
    figures,
    quantities_of,
)
from ringland_service.core.calculations import CALCULATIONS
from ringland_service.core.declare.kinds import KINDS
from ringland_service.core.metrology.instruments import TYPICAL
from ringland_service.units import unit

SAME_CLIENT = settings(
    max_examples=150, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
STROKE = {"value": 66, "unit": "mm"}
BORE = {"value": 68, "unit": "mm"}


def of(value: float, symbol: str) -> dict[str, Any]:
    return {"value": value, "unit": symbol}


def described(**instrument: Any) -> dict[str, Any]:
    """Return a question that describes an instrument and reads nothing with it."""
    measuring = {"instruments": [{"id": "mine", **instrument}]}
    return {"bore": BORE, "stroke": STROKE, "measuring": measuring}


def read_with(**instrument: Any) -> dict[str, Any]:
    return described(**instrument) | {"bore": {**BORE, "instrument": "mine"}}


def schema() -> Draft202012Validator:
    """Return the document's schema of an instrument, its references at hand."""
    whole = document()
    body = whole["components"]["schemas"]["DisplacementRequest"]
    one = body["properties"]["measuring"]["properties"]["instruments"]["items"]
    return Draft202012Validator({**one, "components": whole["components"]})


SCHEMA = schema()
EVERY = [(name, symbol) for name in FIGURES for symbol in figures()]


def most_in(symbol: str) -> float:
    """Return a tenth of the widest span of what the unit's instruments read."""
    of_symbol = figures()[symbol]
    types = {t for c in CALCULATIONS for t in quantities_of(c.inputs)}
    spans = [t.span for t in types if t.kind.name == of_symbol.reads]
    return max(spans) / 10 / unit(KINDS[of_symbol.figure_kind], symbol).factor


def alike(client: FlaskClient, instrument: dict[str, Any], fits: bool) -> None:
    """Assert that document and service both take, or both refuse, an instrument."""
    answer = client.post("/v1/displacement", json=described(**instrument))
    assert answer.status_code == (200 if fits else 422), answer.text
    assert SCHEMA.is_valid({"id": "mine", **instrument}) == fits


@pytest.mark.parametrize(("name", "symbol"), EVERY)
def test_a_figure_is_bounded_in_each_unit(client: FlaskClient, name: str, symbol: str) -> None:
    most = figures()[symbol].most
    assert most == pytest.approx(most_in(symbol), rel=1e-12)
    beside = {} if name in ERRORS else {"repeat": of(most / 2, symbol)}
    alike(client, {name: of(most, symbol), **beside}, True)
    alike(client, {name: of(math.nextafter(most, math.inf), symbol), **beside}, False)
    alike(client, {name: of(1e9, symbol), **beside}, False)
    alike(client, {name: of(-1e-9, symbol), **beside}, False)


def test_a_share_of_the_reading_is_bounded(client: FlaskClient) -> None:
    alike(client, {"max_error": of(MOST_PERCENT, "%")}, True)
    alike(client, {"max_error": of(math.nextafter(MOST_PERCENT, 99), "%")}, False)


def test_a_figure_takes_no_uncertainty(client: FlaskClient) -> None:
    told = {"max_error": {**of(0.005, "mm"), "uncertainty": 0.001}}
    (fault,) = post(client, "displacement", described(**told), 422)["errors"]
    assert fault["code"] == "exact"


def test_a_bore_gauge_of_50_mm_error(client: FlaskClient) -> None:
    """U = 2 · 50/√3 = 57.7 mm (by hand), where a tenth of 20 to 160 mm is 14 mm."""
    asked = read_with(kind="bore_gauge", max_error=of(50, "mm"))
    (fault,) = post(client, "displacement", asked, 422)["errors"]
    assert fault["code"] == "out_of_bounds"
    assert fault["pointer"] == "#/bore"
    assert "57.7" in fault["detail"]
    assert "at most 14 mm" in fault["detail"]
    post(client, "displacement", read_with(kind="bore_gauge"))


ZEROS = [
    names
    for count in range(1, len(FIGURES) + 1)
    for names in itertools.combinations(FIGURES, count)
]


@pytest.mark.parametrize("names", ZEROS, ids="+".join)
def test_an_instrument_described_with_nothing_is_refused(
    client: FlaskClient, names: tuple[str, ...]
) -> None:
    for zero in (0, 0.0, 1e-12):
        nothing = {name: of(zero, "mm") for name in names}
        alike(client, nothing, False)
        answer = post(client, "displacement", described(**nothing), 422)
        (fault,) = answer["errors"]
        assert fault["pointer"] == "#/measuring/instruments/0"
    errors = [name for name in names if name in ERRORS]
    if errors:
        alike(client, nothing | {errors[0]: of(0.001, "mm")}, True)


@pytest.mark.parametrize("kind", TYPICAL)
def test_zeros_in_the_place_of_all_typical_figures(client: FlaskClient, kind: str) -> None:
    row = TYPICAL[kind]
    symbol = {"length": "mm", "volume": "cc", "pressure_gauge": "kPa"}[row["reads"]]
    zeros = {name: of(0, symbol) for name in FIGURES if name in row}
    answer = client.post("/v1/displacement", json=described(kind=kind, **zeros))
    # A share of the reading stands by itself: no absolute error takes its place.
    assert answer.status_code == (200 if "relative_error" in row else 422)
    post(client, "displacement", described(kind=kind))


@SAME_CLIENT
@given(
    bore=st.floats(25.0, 150.0),
    error=st.floats(0.0, 30.0),
    percent=st.floats(0.0, 25.0),
    setting=st.floats(0.0, 10.0),
    repeat=st.floats(0.0, 10.0),
    step=st.floats(0.0, 30.0),
    scale=st.sampled_from([1e-3, 1e-1, 1.0]),
    each=st.integers(1, 9),
    by_share=st.booleans(),
)
def test_on_a_reading_an_instrument_may_leave_what_could_be_stated(
    client: FlaskClient,
    bore: float,
    error: float,
    percent: float,
    setting: float,
    repeat: float,
    step: float,
    scale: float,
    each: int,
    by_share: bool,
) -> None:
    """The same U, stated with the reading, is taken where the instrument is, and refused so too."""
    error, setting, repeat, step = (v * scale for v in (error, setting, repeat, step))
    error = percent / 100.0 * bore if by_share else error
    u = math.sqrt(error**2 / 3 + setting**2 / 3 + repeat**2 / each + step**2 / 12)
    most = min(14.0, bore / 4.0)
    if abs(2 * u - most) < 1e-6 or u < 1e-6 or max(error, setting, repeat, step) < 1e-3:
        return
    instrument = {
        "max_error": of(percent, "%") if by_share else of(error, "mm"),
        "setting_error": of(setting, "mm"),
        "repeat": of(repeat, "mm"),
        "resolution": of(step, "mm"),
    }
    asked = read_with(**instrument) | {"bore": {**of(bore, "mm"), "instrument": "mine"}}
    asked["measuring"]["readings_each"] = each
    by_instrument = client.post("/v1/displacement", json=asked)
    stated = {"bore": {**of(bore, "mm"), "uncertainty": 2 * u}, "stroke": STROKE}
    by_statement = client.post("/v1/displacement", json=stated)
    assert by_instrument.status_code == (200 if 2 * u <= most else 422)
    assert by_statement.status_code == by_instrument.status_code
    if by_instrument.status_code == 200:
        shown = by_instrument.json["inputs"]["bore"]["uncertainty"]
        assert shown == pytest.approx(2 * u, rel=1e-9)


def test_what_it_was_set_in_counts(client: FlaskClient) -> None:
    """A gauge set in a micrometer of ± 13 mm: 2 · 13/√3 = 15.0 mm (by hand), above 14 mm."""
    instruments = [
        {"id": "mine", "repeat": of(0.001, "mm"), "set_in": "micrometer"},
        {"id": "micrometer", "max_error": of(13, "mm")},
    ]
    asked = {"bore": {**BORE, "instrument": "mine"}, "stroke": STROKE}
    measuring = {"instruments": instruments}
    (fault,) = post(client, "displacement", {**asked, "measuring": measuring}, 422)["errors"]
    assert fault["pointer"] == "#/bore"
    instruments[1]["max_error"] = of(12, "mm")
    post(client, "displacement", {**asked, "measuring": measuring})


def test_in_a_list_the_reading_is_named(client: FlaskClient) -> None:
    """± 22 % leaves 2 · 0.22/√3 = 0.254 of each reading (by hand), above a quarter and 14 mm."""
    survey = {
        "pin_axis": {"values": [68.0, 68.01], "unit": "mm", "instrument": "mine"},
        "thrust_axis": {"values": [68.0, 68.02], "unit": "mm"},
        "depth": {"values": [10, 60], "unit": "mm"},
        "measuring": {"instruments": [{"id": "mine", "max_error": of(22, "%")}]},
    }
    (fault,) = post(client, "bore-survey", survey, 422)["errors"]
    assert fault["code"] == "out_of_bounds"
    assert fault["pointer"] == "#/pin_axis/0"


def test_a_row_of_a_batch_is_refused_alone(client: FlaskClient) -> None:
    """± 10 %: 2 · 0.1 · 100/√3 = 11.5 mm fits in 14 mm; of 150 mm it is 17.3 mm (by hand)."""
    lines = [
        read_with(max_error=of(10, "%")) | {"bore": {**of(bore, "mm"), "instrument": "mine"}}
        for bore in (100, 150)
    ]
    body = "\n".join(map(json.dumps, lines)).encode()
    headers = {"Content-Type": "application/x-ndjson"}
    answer = client.post("/v1/displacement/batch", data=body, headers=headers)
    first, second = map(json.loads, answer.text.splitlines())
    assert "result" in first
    assert second["problem"]["errors"][0]["pointer"] == "#/bore"


def test_a_whole_job_names_its_own_field(client: FlaskClient) -> None:
    engine = {"bore": {**BORE, "instrument": "mine"}, "stroke": STROKE, "cycle": "four_stroke"}
    measuring = {"instruments": [{"id": "mine", "max_error": of(50, "mm")}]}
    asked = {"engine": engine, "measuring": measuring}
    (fault,) = post(client, "job-card", asked, 422)["errors"]
    assert fault["pointer"] == "#/engine/bore"


def test_bounds_are_exact_in_every_unit() -> None:
    for symbol, one in figures().items():
        base = next(f for f in figures().values() if f.figure_kind == one.figure_kind)
        kind = KINDS[one.figure_kind]
        ratio = unit(kind, base.symbol).ratio / unit(kind, symbol).ratio
        assert one.most == float(Fraction(repr(base.most)) * ratio)
