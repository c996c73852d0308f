"""Which test comes next, by the trade brief's table of tests that part two suspects."""

from typing import Any

import pytest
from diagnosing import diagnosed

OFF = {"decompressor": "automatic_exhaust_lifter", "decompressor_state": "automatic_held_off"}
# Evidence, engine, what is told, whom it parts. The pairs are those of the brief's table C.4.
PAIRS: list[tuple[tuple[str, ...], dict[str, Any], str, tuple[str, ...]]] = [
    (
        ("compression_low_one_cylinder",),
        {},
        "leak-down with listening, then the wet test",
        ("rings_or_bore", "exhaust_valve"),
    ),
    (
        ("plug_oily", "oil_use_high_cylinder_tight"),
        {},
        "a long downhill overrun",
        ("guide_or_stem_seal", "rings_or_bore"),
    ),
    (
        ("plug_oily", "blue_smoke_on_load", "blue_puff_at_start"),
        {},
        "leak-down, and the edge of the crown",
        ("rings_or_bore", "guide_or_stem_seal"),
    ),
    (
        ("compression_low_one_cylinder", "air_at_breather"),
        {"cycle": "four_stroke"},
        "borescope of crown and wall",
        ("rings_or_bore", "piston_damage"),
    ),
    (
        ("compression_low_one_cylinder", "two_stroke_air_at_intake"),
        {"cycle": "two_stroke"},
        "borescope of crown and wall",
        ("rings_or_bore", "piston_damage"),
    ),
    (
        ("two_stroke_air_at_intake", "plug_pale_blistered"),
        {"cycle": "two_stroke"},
        "crankcase pressure and vacuum",
        ("crankcase_leak", "rings_or_bore"),
    ),
    (("jumps_to_normal",), OFF, "repeat the test by the checklist", ("decompressor", "test_error")),
    (("compression_high", "readings_not_repeating"), {}, "repeat the test by the checklist", ()),
    (
        ("spits_back_through_intake", "lash_within"),
        {},
        "leak-down, which is blind to the timing",
        ("intake_valve", "cam_timing"),
    ),
    (
        ("leak_down_tight", "compression_low_one_cylinder"),
        OFF,
        "hold the decompressor off, then check the timing marks",
        ("decompressor", "cam_timing"),
    ),
    (
        ("bubbles_in_coolant", "plug_metal_specks"),
        {"cooling": "liquid"},
        "borescope of crown and wall",
        ("piston_damage", "head_joint"),
    ),
    (
        ("plug_steam_cleaned", "plug_metal_specks"),
        {"cooling": "liquid"},
        "cooling-system pressure test",
        ("head_joint", "piston_damage"),
    ),
]


@pytest.mark.parametrize(("evidence", "engine", "words", "parts"), PAIRS, ids=str)
def test_the_test_that_parts_the_leaders(
    evidence: tuple[str, ...], engine: dict[str, Any], words: str, parts: tuple[str, ...]
) -> None:
    found = diagnosed(*evidence, **engine)
    assert words in found.next_test
    assert found.reads_as
    if parts:
        assert found.parts == parts


def test_what_has_been_done_is_not_asked_for_again() -> None:
    """The overrun fills the family smoke, holding off is shown by what it changed."""
    smoked = diagnosed(
        "compression_good",
        "leak_down_tight",
        "blue_smoke_on_overrun",
        "plug_oily",
        "oil_use_high_cylinder_tight",
    )
    assert smoked.first == "guide_or_stem_seal"
    assert smoked.next_test is None or "overrun" not in smoked.next_test
    held = diagnosed(
        "changes_with_decompressor_held_off",
        "air_at_exhaust",
        "compression_low_one_cylinder",
        **OFF,
    )
    assert "hold the decompressor off" not in held.next_test


def test_where_the_table_has_no_pair_the_evidence_that_would_part_them_is_sought() -> None:
    """Joint or exhaust valve of an air-cooled single: of the unknown, these weights differ most."""
    found = diagnosed(
        "compression_low_one_cylinder",
        "wet_gain_none",
        "foam_at_head_joint",
        cooling="air",
        cylinder_count=1,
    )
    assert found.parts == ("head_joint", "exhaust_valve")
    assert found.next_test == (
        "look whether this is so: lash set right, exhaust valve still leaks at leak-down"
    )
    assert found.reads_as == "seen: exhaust_valve is the likelier"


def test_with_nobody_suspected_the_first_test_not_yet_made() -> None:
    assert diagnosed().next_test.startswith("compression test")
    assert diagnosed("compression_good").next_test == "measure the lash, cold"
    assert diagnosed("compression_good", "lash_within").next_test.startswith(
        "leak-down at firing top dead centre"
    )
    assert diagnosed("compression_good", "lash_within", "leak_down_tight").next_test is None
    two_stroke = {"cycle": "two_stroke"}
    assert (
        diagnosed("compression_good", **two_stroke).next_test
        == "crankcase pressure and vacuum test"
    )


def test_a_first_that_is_settled_is_confirmed() -> None:
    crack = diagnosed("coolant_falls_no_leak_seen", "combustion_gas_in_coolant", cooling="liquid")
    assert "pressure test of head and liner" in crack.next_test
    assert crack.parts == ("head_joint",)
    chip = diagnosed("air_at_exhaust", "lash_within", "pops_in_exhaust")
    assert "tap the valve stem" in chip.next_test
    tapped = diagnosed(
        "air_at_exhaust",
        "leak_drops_after_tapping",
        "exhaust_leaks_with_lash_right",
        "pops_in_exhaust",
    )
    assert "tap the valve stem" not in (tapped.next_test or "")


def test_an_invalid_test_is_put_right_first() -> None:
    found = diagnosed(
        "throttle_not_fully_open", "gauge_adaptor_unsuitable", "compression_low_one_cylinder"
    )
    assert found.next_test.startswith(
        "hold throttle and choke fully open, fit the check valve at the plug end"
    )
    assert found.parts is None


def test_one_suspect_alone_has_nobody_to_be_parted_from() -> None:
    """Deposits seen in a borescope: nothing else is spoken of, and nothing is left to ask."""
    found = diagnosed("thick_deposits_seen", least_lead=5.0)
    assert (found.headline, found.next_test) == ("not_settled", None)
