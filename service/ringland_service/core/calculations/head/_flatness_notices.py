"""What contradicts a skim, and what the answer on a face warns of."""

from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas import facing
from ringland_service.core.metrology.conformity import beyond

LEAST_CLEARANCE_CC = 0.3
ALL_LINES = 6


def _no_room(i: Any) -> bool:
    skim = facing.skim_mm(max(i.straightedge_gaps_mm), i.skim_allowance_mm)
    loss = facing.volume_of_cut_cc(skim, i.chamber_area_at_face_mm2)
    return bool(beyond(LEAST_CLEARANCE_CC, i.clearance_cc - loss))


RULES = (
    Rule(
        ("clearance_cc", "chamber_area_at_face_mm2"),
        _no_room,
        "a skim that deep leaves no volume above the piston",
        "the clearance volume before the skim, and the chamber's area at the face; check units",
    ),
)

NOTICES = (
    Notice(
        "lines_missing",
        "straightedge_gaps_mm",
        lambda i, _: len(i.straightedge_gaps_mm) < ALL_LINES,
        "fewer than six lines: take four edges and two diagonals",
    ),
    Notice(
        "rock_test",
        "rocks",
        lambda i, _: i.rocks is None,
        "a feeler under a straightedge finds a hollow, not a crown: lay the face on a surface "
        "plate and see whether it rocks",
    ),
    Notice(
        "face_is_crowned",
        "rocks",
        lambda i, _: i.rocks is True,
        "the face rocks, so it is crowned: the straightedge shows less than it is out; find the "
        "gap at the edges on a surface plate",
    ),
    Notice(
        "skim_done_not_known",
        "skim_done_mm",
        lambda i, _: i.skim_done_mm is None,
        "the limit is on the skim in all: find out what is off already, by the head's height "
        "against the maker's",
    ),
    Notice(
        "check_after_skim",
        "skim_mm",
        lambda i, o: o.skim_mm > 0.0,
        "after a skim check squish, valve-to-piston clearance of both valves, the timing of a "
        "camshaft driven by chain from the crank, and the lash of a pushrod engine",
    ),
)
