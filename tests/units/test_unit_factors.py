"""Every factor of the vocabulary against definitions, tabled values and two libraries."""

import csv
import math
from fractions import Fraction
from pathlib import Path

import pint
import pytest
from scipy import constants

from ringland_service.core.declare.kinds import KINDS, Kind
from ringland_service.units import TABLE, Unit, canonical_unit, us_unit
from ringland_service.vocabulary import ALIASES, UNITS

DATA = Path(__file__).parents[1] / "reference" / "data"

# Definitions (international inch, avoirdupois pound, standard gravity, US gallon of 231 in3,
# imperial gallon, conventional mercury 13595.1 kg/m3): NIST SP 811, from memory.
INCH = Fraction("25.4")  # mm
POUND = Fraction("0.45359237")  # kg
GRAVITY = Fraction("9.80665")  # m/s2
LBF = POUND * GRAVITY  # N
PSI = LBF / INCH**2 * 1000  # kPa
MERCURY = Fraction("13595.1") * GRAVITY / 1000  # kPa per metre
US_GALLON = 231 * INCH**3 / 10**6  # L
IMPERIAL_GALLON = Fraction("4.54609")  # L
KGF_CM2 = GRAVITY * 10  # kPa
FAHRENHEIT = Fraction(5, 9)  # K

GAUGE = {
    "kPa": Fraction(1),
    "bar": Fraction(100),
    "MPa": Fraction(1000),
    "psi": PSI,
    "kgf/cm2": KGF_CM2,
    "kPa(g)": Fraction(1),
    "bar(g)": Fraction(100),
    "psig": PSI,
}
DEFINED: dict[str, dict[str, Fraction]] = {
    "length": {
        "mm": Fraction(1),
        "um": Fraction(1, 1000),
        "cm": Fraction(10),
        "in": INCH,
        "thou": INCH / 1000,
    },
    "altitude": {"m": Fraction(1), "km": Fraction(1000), "ft": 12 * INCH / 1000},
    "area": {"mm2": Fraction(1), "cm2": Fraction(100), "in2": INCH**2},
    "volume": {
        "cc": Fraction(1),
        "cm3": Fraction(1),
        "mL": Fraction(1),
        "L": Fraction(1000),
        "in3": INCH**3 / 1000,
    },
    "liquid": {
        "mL": Fraction(1),
        "cc": Fraction(1),
        "L": Fraction(1000),
        "floz_us": US_GALLON * 1000 / 128,
        "floz_imp": IMPERIAL_GALLON * 1000 / 160,
    },
    "fuel": {
        "L": Fraction(1),
        "mL": Fraction(1, 1000),
        "gal_us": US_GALLON,
        "gal_imp": IMPERIAL_GALLON,
    },
    "pressure_gauge": GAUGE,
    "pressure_absolute": {
        "kPa": Fraction(1),
        "hPa": Fraction(1, 10),
        "mbar": Fraction(1, 10),
        "bar": Fraction(100),
        "psi": PSI,
        "inHg": MERCURY * INCH / 1000,
        "mmHg": MERCURY / 1000,
        "atm": Fraction("101.325"),
        "kPa(a)": Fraction(1),
        "bar(a)": Fraction(100),
        "psia": PSI,
    },
    "pressure_difference": {
        "kPa": Fraction(1),
        "hPa": Fraction(1, 10),
        "mbar": Fraction(1, 10),
        "bar": Fraction(100),
        "MPa": Fraction(1000),
        "psi": PSI,
        "kgf/cm2": KGF_CM2,
    },
    "stress": {
        "MPa": Fraction(1),
        "N/mm2": Fraction(1),
        "GPa": Fraction(1000),
        "kgf/mm2": GRAVITY,
        "psi": PSI / 1000,
    },
    "torque": {
        "N.m": Fraction(1),
        "kgf.m": GRAVITY,
        "kgf.cm": GRAVITY / 100,
        "lbf.ft": LBF * 12 * INCH / 1000,
        "lbf.in": LBF * INCH / 1000,
    },
    "force": {"N": Fraction(1), "kN": Fraction(1000), "kgf": GRAVITY, "lbf": LBF},
    "temperature": {"degC": Fraction(1), "degF": FAHRENHEIT, "K": Fraction(1)},
    "temperature_difference": {"K": Fraction(1), "degC": Fraction(1), "degF": FAHRENHEIT},
    "mass": {
        "g": Fraction(1),
        "kg": Fraction(1000),
        "oz": POUND * 1000 / 16,
        "lb": POUND * 1000,
    },
    "spring_rate": {"N/mm": Fraction(1), "kgf/mm": GRAVITY, "lbf/in": LBF / INCH},
    "rotation": {"rpm": Fraction(1), "1/min": Fraction(1), "1/s": Fraction(60)},
    "velocity": {"m/s": Fraction(1), "m/min": Fraction(1, 60), "ft/s": 12 * INCH / 1000},
    "angle": {"deg": Fraction(1), "turn": Fraction(360)},
    "expansion": {
        "1/K": Fraction(1),
        "um/m/K": Fraction(1, 10**6),
        "1/degF": 1 / FAHRENHEIT,
    },
    "voltage": {"V": Fraction(1)},
    "percent": {"%": Fraction(1)},
}

EVERY = [(kind, symbol) for kind, symbols in UNITS.items() for symbol in symbols]
RATIONAL = [pair for pair in EVERY if pair != ("angle", "rad")]


@pytest.mark.parametrize(("kind", "symbol"), RATIONAL)
def test_factor_is_exactly_the_definition(kind: str, symbol: str) -> None:
    exact = DEFINED[kind][symbol]
    assert TABLE[kind][symbol].ratio == exact
    assert TABLE[kind][symbol].factor == float(exact)


def test_no_unit_goes_without_its_definition() -> None:
    assert {k: set(s) for k, s in DEFINED.items()} == {
        kind: set(symbols) - {"rad"} for kind, symbols in UNITS.items()
    }


def test_radian_is_180_over_pi_degrees() -> None:
    assert math.isclose(TABLE["angle"]["rad"].factor, math.degrees(1.0), rel_tol=1e-15)


# Conversion of the table of exact factors -> (kind, symbol, SI unit in the canonical one).
TABLED = {
    "inch->m": ("length", "in", 1000),
    "thou->m": ("length", "thou", 1000),
    "foot->m": ("altitude", "ft", 1),
    "cubic_inch->m3": ("volume", "in3", 10**6),
    "us_gallon->m3": ("fuel", "gal_us", 1000),
    "us_fluid_ounce->m3": ("liquid", "floz_us", 10**6),
    "lb->kg": ("mass", "lb", 1000),
    "lbf->N": ("force", "lbf", 1),
    "kgf->N": ("force", "kgf", 1),
    "psi->Pa": ("pressure_gauge", "psi", Fraction(1, 1000)),
    "bar->Pa": ("pressure_gauge", "bar", Fraction(1, 1000)),
    "kgf_per_cm2->Pa": ("pressure_gauge", "kgf/cm2", Fraction(1, 1000)),
    "atm->Pa": ("pressure_absolute", "atm", Fraction(1, 1000)),
    "mmHg_conventional->Pa": ("pressure_absolute", "mmHg", Fraction(1, 1000)),
    "inHg_conventional->Pa": ("pressure_absolute", "inHg", Fraction(1, 1000)),
    "lbf_ft->N_m": ("torque", "lbf.ft", 1),
    "lbf_in->N_m": ("torque", "lbf.in", 1),
    "kgf_m->N_m": ("torque", "kgf.m", 1),
    "kgf_cm->N_m": ("torque", "kgf.cm", 1),
    "cc->m3": ("volume", "cc", 10**6),
    "litre->m3": ("volume", "L", 10**6),
}
# Rows of the table that no calculation here has a unit for.
WITHOUT_UNIT = {"torr->Pa", "inHg_from_torr->Pa", "ozf_in->N_m", "ft_to_kft_altitude->m"}


def tabled() -> dict[str, str]:
    """Return the exact value of each conversion in the table, as it stands there."""
    lines = (DATA / "units_exact.csv").read_text("utf-8").splitlines()
    rows = csv.DictReader(line for line in lines if not line.startswith("#"))
    return {row["conversion"]: row["exact_decimal_or_ratio"] for row in rows}


@pytest.mark.parametrize(("conversion", "where"), TABLED.items(), ids=TABLED)
def test_factor_is_the_tabled_one(conversion: str, where: tuple[str, str, Fraction]) -> None:
    kind, symbol, scale = where
    exact = Fraction(tabled()[conversion].partition(" ")[0])
    assert TABLE[kind][symbol].ratio == exact * scale


def test_no_row_of_the_table_is_left_out() -> None:
    assert tabled().keys() == TABLED.keys() | WITHOUT_UNIT


# scipy.constants holds SI values; the scale leads to the canonical unit.
SCIPY = {
    ("length", "in"): constants.inch * 1e3,
    ("length", "thou"): constants.mil * 1e3,
    ("length", "um"): constants.micron * 1e3,
    ("altitude", "ft"): constants.foot,
    ("area", "in2"): constants.inch**2 * 1e6,
    ("volume", "in3"): constants.inch**3 * 1e6,
    ("volume", "L"): constants.liter * 1e6,
    ("liquid", "floz_us"): constants.fluid_ounce_US * 1e6,
    ("liquid", "floz_imp"): constants.fluid_ounce_imp * 1e6,
    ("fuel", "gal_us"): constants.gallon_US * 1e3,
    ("fuel", "gal_imp"): constants.gallon_imp * 1e3,
    ("pressure_gauge", "psi"): constants.psi / 1e3,
    ("pressure_gauge", "bar"): constants.bar / 1e3,
    ("pressure_gauge", "kgf/cm2"): constants.kgf / constants.centi**2 / 1e3,
    ("pressure_absolute", "atm"): constants.atm / 1e3,
    ("torque", "lbf.ft"): constants.lbf * constants.foot,
    ("torque", "lbf.in"): constants.lbf * constants.inch,
    ("torque", "kgf.m"): constants.kgf,
    ("force", "kgf"): constants.kgf,
    ("force", "lbf"): constants.lbf,
    ("temperature_difference", "degF"): constants.degree_Fahrenheit,
    ("mass", "oz"): constants.ounce * 1e3,
    ("mass", "lb"): constants.pound * 1e3,
    ("spring_rate", "lbf/in"): constants.lbf / constants.inch / 1e3,
    ("rotation", "1/s"): constants.minute,
    ("velocity", "m/min"): 1.0 / constants.minute,
    ("velocity", "ft/s"): constants.foot,
    ("angle", "rad"): 1.0 / constants.degree,
}


@pytest.mark.parametrize(("where", "expected"), SCIPY.items(), ids=lambda v: str(v))
def test_factor_agrees_with_scipy(where: tuple[str, str], expected: float) -> None:
    kind, symbol = where
    assert TABLE[kind][symbol].factor == pytest.approx(expected, rel=1e-14)


def test_mercury_is_the_conventional_one() -> None:
    """scipy's mmHg is the torr, 1.4e-7 smaller; barometers are marked in conventional mercury."""
    assert TABLE["pressure_absolute"]["mmHg"].factor * 1e3 == pytest.approx(
        constants.mmHg, rel=2e-7
    )
    assert TABLE["pressure_absolute"]["mmHg"].factor * 1e3 > constants.mmHg


@pytest.fixture(scope="module")
def registry() -> "pint.UnitRegistry[float]":
    """A registry of its own, in floats: the service's is in fractions."""
    return pint.UnitRegistry()


@pytest.mark.parametrize("number", [0.0, 1.0, 68.0, 1234.5678])
@pytest.mark.parametrize(("kind", "symbol"), EVERY)
def test_values_agree_with_pint(
    registry: "pint.UnitRegistry[float]", kind: str, symbol: str, number: float
) -> None:
    spelling, canonical = UNITS[kind][symbol], next(iter(UNITS[kind].values()))
    if kind == "temperature":
        expected = registry.Quantity(number, spelling).to(canonical).magnitude
    else:
        ratio = registry.parse_expression(spelling) / registry.parse_expression(canonical)
        expected = number * ratio.to("dimensionless").magnitude
    assert TABLE[kind][symbol].to_canonical(number) == pytest.approx(expected, rel=1e-13, abs=1e-12)


def points() -> list[dict[str, str]]:
    lines = (DATA / "temperature_points.csv").read_text("utf-8").splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("#")))


@pytest.mark.parametrize("point", points(), ids=lambda p: f"{p['degC']} degC")
def test_temperature_points(point: dict[str, str]) -> None:
    table, celsius = TABLE["temperature"], float(point["degC"])
    for symbol, column in (("degF", "degF_scipy"), ("degF", "degF_astropy"), ("K", "K_scipy")):
        expected = float(point[column])
        assert table[symbol].from_canonical(celsius) == pytest.approx(expected, abs=2e-13)
        assert table[symbol].to_canonical(expected) == pytest.approx(celsius, abs=2e-13)


def test_temperature_points_are_all_there() -> None:
    assert len(points()) == 12


@pytest.mark.parametrize(("alias", "symbol"), ALIASES.items())
def test_alias_is_the_symbol_wherever_the_symbol_is(alias: str, symbol: str) -> None:
    kinds = [kind for kind, symbols in UNITS.items() if symbol in symbols]
    assert kinds
    for kind in kinds:
        assert TABLE[kind][alias] is TABLE[kind][symbol]
    assert all(alias not in TABLE[kind] for kind in TABLE.keys() - set(kinds))


def test_no_alias_hides_a_symbol() -> None:
    symbols = {symbol for units in UNITS.values() for symbol in units}
    assert not symbols & ALIASES.keys()


@pytest.mark.parametrize("kind", KINDS.values(), ids=lambda k: k.name)
def test_canonical_unit_is_one_and_comes_first(kind: Kind) -> None:
    unit = canonical_unit(kind)
    assert (unit.factor, unit.offset, unit.symbol) == (1.0, 0.0, kind.unit)
    assert next(iter(UNITS[kind.name])) == kind.unit
    assert isinstance(us_unit(kind), Unit)


def test_kinds_and_vocabulary_are_of_one_length() -> None:
    assert list(UNITS) == list(KINDS)
