"""Which test comes next, by the trade brief's table of tests that part two suspects."""

from typing import Any

import pytest
from diagnosing import diagnosed

OFF = {"decompressor": "automatic_exhaust_lifter", "decompressor_state": "automatic_held_off"}
# Evidence, engine, what is told, whom it parts. The pairs are those of the brief's table C.4.
PAIRS: list[tuple[tuple[str, ...], dict[str, Any], str, tuple[str, ...]]] = [
    (("E10",), {}, "leak-down with listening, then the wet test", ("RB", "VX")),
    (("E80", "E90"), {}, "a long downhill overrun", ("GS", "RB")),
    (("E80", "E71", "E72"), {}, "leak-down, and the edge of the crown", ("RB", "GS")),
    (("E10", "E60"), {"cycle": "four_stroke"}, "borescope of crown and wall", ("RB", "PS")),
    (("E10", "E66"), {"cycle": "two_stroke"}, "borescope of crown and wall", ("RB", "PS")),
    (("E66", "E83"), {"cycle": "two_stroke"}, "crankcase pressure and vacuum", ("CK", "RB")),
    (("E43",), OFF, "repeat the test by the checklist", ("DC", "TE")),
    (("E12", "E04"), {}, "repeat the test by the checklist", ()),
    (("E132", "E125"), {}, "leak-down, which is blind to the timing", ("VI", "CT")),
    (("E50", "E10"), OFF, "hold the decompressor off, then check the timing marks", ("DC", "CT")),
    (("E63", "E82"), {"cooling": "liquid"}, "borescope of crown and wall", ("PS", "HG")),
    (("E81", "E82"), {"cooling": "liquid"}, "cooling-system pressure test", ("HG", "PS")),
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
    """The overrun fills the family smoke, holding off is shown by E07."""
    smoked = diagnosed("E13", "E50", "E70", "E80", "E90")
    assert smoked.first == "GS"
    assert smoked.next_test is None or "overrun" not in smoked.next_test
    held = diagnosed("E07", "E61", "E10", **OFF)
    assert "hold the decompressor off" not in held.next_test


def test_where_the_table_has_no_pair_the_evidence_that_would_part_them_is_sought() -> None:
    """HG and VX on an air-cooled single: of what nothing is known of, their weights differ most."""
    found = diagnosed("E10", "E21", "E65", cooling="air", cylinders=1)
    assert found.parts == ("HG", "VX")
    assert found.next_test == (
        "look whether this is so: lash set right, exhaust valve still leaks at leak-down"
    )
    assert found.reads_as == "seen: VX is the likelier"


def test_with_nobody_suspected_the_first_test_not_yet_made() -> None:
    assert diagnosed().next_test.startswith("compression test")
    assert diagnosed("E13").next_test == "measure the lash, cold"
    assert diagnosed("E13", "E125").next_test.startswith("leak-down at firing top dead centre")
    assert diagnosed("E13", "E125", "E50").next_test is None
    two_stroke = {"cycle": "two_stroke"}
    assert diagnosed("E13", **two_stroke).next_test == "crankcase pressure and vacuum test"


def test_a_first_that_is_settled_is_confirmed() -> None:
    crack = diagnosed("E100", "E102", cooling="liquid")
    assert "pressure test of head and liner" in crack.next_test
    assert crack.parts == ("HG",)
    chip = diagnosed("E61", "E125", "E133")
    assert "tap the valve stem" in chip.next_test
    tapped = diagnosed("E61", "E68", "E122", "E133")
    assert "tap the valve stem" not in (tapped.next_test or "")


def test_an_invalid_test_is_put_right_first() -> None:
    found = diagnosed("E01", "E05", "E10")
    assert found.next_test.startswith(
        "hold throttle and choke fully open, fit the check valve at the plug end"
    )
    assert found.parts is None


def test_one_suspect_alone_has_nobody_to_be_parted_from() -> None:
    """Deposits seen in a borescope: nothing else is spoken of, and nothing is left to ask."""
    found = diagnosed("E84", least_lead=5.0)
    assert (found.headline, found.next_test) == ("not_settled", None)
