"""The table of values out of bounds or against each other: what is sent, what must be said."""

from asking import ENGINE
from bad_requests import Bad, bore, cc, engine, limited, measured

BOUNDS = [
    Bad("too small", 422, "out_of_bounds", "#/bore/value", "20 to 160 mm", bore(value=19.999)),
    Bad("too large", 422, "out_of_bounds", "#/bore/value", "20 to 160 mm", bore(value=160.001)),
    Bad("negative", 422, "out_of_bounds", "#/bore/value", "20 to 160 mm", bore(value=-68)),
    Bad("inches as mm", 422, "out_of_bounds", "#/bore/value", "25.4", bore(value=2.677)),
    Bad("mm as inches", 422, "out_of_bounds", "#/bore/value", "68 mm would fit", bore(unit="in")),
    Bad("1e39", 422, "out_of_bounds", "#/bore/value", "1e+39", bore(value=10**39)),
    Bad("count", 422, "out_of_bounds", "#/cylinder_count", "1 to 8", engine(cylinder_count=9)),
    Bad(
        "count 1e300",
        422,
        "out_of_bounds",
        "#/cylinder_count",
        "1 to 8",
        engine(cylinder_count=1e300),
    ),
    Bad("ratio", 422, "out_of_bounds", "#/ratio", "2 to 18", {"ratio": 1.5}, "cranking-pressure"),
    Bad("U 0", 422, "out_of_bounds", "#/bore/uncertainty", "above 0", bore(uncertainty=0)),
    Bad("U negative", 422, "out_of_bounds", "#/bore/uncertainty", "above 0", bore(uncertainty=-1)),
    Bad("U of a tenth", 422, "out_of_bounds", "#/bore/uncertainty", "14 mm", bore(uncertainty=15)),
    Bad("U text", 400, "wrong_type", "#/bore/uncertainty", "not a number", bore(uncertainty="1")),
    Bad("U null", 400, "wrong_type", "#/bore/uncertainty", "not a number", bore(uncertainty=None)),
    Bad(
        "U above a quarter of the value", 422, "out_of_bounds", "#/bore/uncertainty",
        "at most 6 mm", bore(value=24, uncertainty=6.001),
    ),
    Bad(
        "U and instrument", 422, "uncertainty_twice", "#/bore/uncertainty", "not both",
        measured("outside_micrometer", uncertainty=0.004),
    ),
    Bad(
        "instrument not described", 422, "unknown_instrument", "#/bore/instrument", "measuring",
        bore(instrument="theirs"),
    ),
    Bad(
        "instrument of another kind", 422, "wrong_instrument", "#/bore/instrument",
        "reads volume, not length", measured("burette"),
    ),
    Bad(
        "instrument is no text", 400, "wrong_type", "#/bore/instrument", "1 to 40 characters",
        bore(instrument=1),
    ),
    Bad(
        "instrument of no known kind", 400, "not_a_choice", "#/measuring/instruments/0/kind",
        "bore_gauge", measured("ruler"),
    ),
    Bad(
        "instrument without a figure", 400, "missing_field", "#/measuring/instruments/0",
        "kind, or a figure", engine(measuring={"instruments": [{"id": "a"}]}),
    ),
    Bad(
        "two instruments of one id", 422, "contradiction", "#/measuring", "one id",
        engine(measuring={"instruments": [{"id": "a", "kind": "feeler"}] * 2}),
    ),
    Bad(
        "too many instruments", 400, "wrong_type", "#/measuring/instruments", "at most 20",
        engine(measuring={"instruments": [{}] * 21}),
    ),
    Bad(
        "limit of no check", 400, "unknown_field", "#/limits/class", "no check 'class'",
        engine(limits={"class": {"high": cc(250)}}),
    ),
    Bad(
        "low above high", 422, "contradiction", "#/limits/class_limit", "low is above high",
        limited(low=cc(250), high=cc(249)),
    ),
    Bad(
        "limit without sides", 422, "missing_field", "#/limits/class_limit", "low or a high",
        limited(standing="maker"),
    ),
    Bad(
        "limit of unknown standing", 400, "not_a_choice", "#/limits/class_limit/standing", "maker",
        limited(high=cc(250), standing="rumour"),
    ),
    Bad(
        "limit without unit", 400, "not_a_quantity", "#/limits/class_limit/high", "cc",
        limited(high=250),
    ),
    Bad(
        "limit of another kind", 400, "unknown_unit", "#/limits/class_limit/high/unit", "volume",
        limited(high={"value": 1, "unit": "mm"}),
    ),
    Bad(
        "source too long", 422, "out_of_bounds", "#/limits/class_limit/source", "201 characters",
        limited(high=cc(250), source="x" * 201),
    ),
    Bad(
        "too few readings", 422, "wrong_count", "#/readings/values", "2 to 8",
        {"readings": {"values": [1180], "unit": "kPa"}}, "cylinder-spread",
    ),
    Bad(
        "none of several ways", 422, "missing_field", "#/altitude", "altitude or air_pressure",
        {}, "air-pressure",
    ),
    Bad(
        "contradiction", 422, "contradiction", "#/gasket_bore", "12 mm above",
        {
            **ENGINE, "chamber": cc(27.6), "deck": {"value": 0.3, "unit": "mm"},
            "gasket_thickness": {"value": 0.5, "unit": "mm"},
            "gasket_bore": {"value": 67.9, "unit": "mm"},
        },
        "compression-ratio",
    ),
]  # fmt: skip
