"""What pistons and sizes an oversize is chosen among, and what the choice warns of."""

from typing import Any

from ringland_service.core.calculations.machining._candidates import AT_THE_HONE, TOO_LARGE
from ringland_service.core.calculations.machining._marks import UNIT_IN_MARK, off_its_mark
from ringland_service.core.calculations.machining.bored import BORED_RULES
from ringland_service.core.declare import Notice, Rule
from ringland_service.core.metrology.conformity import beyond

LEAST_MARGIN_MM = 0.01
OFFERED_MM = (-0.5, 3.0)
MOST_FROM_CLEAN_UP_MM = 3.0


def _not_offered_for_this_bore(i: Any) -> bool:
    low, high = OFFERED_MM
    nominal = i.nominal_bore_mm
    return nominal is not None and any(
        beyond(nominal + low, one.piston_mm) or beyond(one.piston_mm, nominal + high)
        for one in i.pistons
    )


def _far_from_clean_up(i: Any) -> bool:
    return any(beyond(abs(p.piston_mm - i.clean_up_mm), MOST_FROM_CLEAN_UP_MM) for p in i.pistons)


def _same_mark(i: Any) -> bool:
    marks = [one.mark.strip() for one in i.pistons]
    return "" in marks or len(set(marks)) < len(marks)


def _off_mark(i: Any, _: Any) -> bool:
    nominal, clearance = i.nominal_bore_mm, i.wanted_clearance_mm
    return nominal is not None and any(
        off_its_mark(one.mark, one.piston_mm, nominal, clearance) for one in i.pistons
    )


def _no_size(_: Any, o: Any) -> bool:
    return o.chosen is None


RULES = (
    *BORED_RULES,
    Rule(
        ("pistons",),
        _same_mark,
        "two pistons carry one mark, or a mark is empty",
        "a mark of its own for each piston, such as +0.50 mm and +0.50 mm B",
    ),
    Rule(
        ("pistons", "nominal_bore_mm"),
        _not_offered_for_this_bore,
        "a piston is not one offered for this bore: 0.5 mm under to 3 mm over nominal",
        "the piston across the thrust axis at the maker's height; check its unit",
    ),
    Rule(
        ("pistons", "clean_up_mm"),
        _far_from_clean_up,
        "a piston and the clean-up diameter are more than 3 mm apart",
        "pistons for this bore; check both units",
    ),
    Rule(
        ("makers_largest_oversize_mm",),
        lambda i: i.nominal_bore_mm is None,
        "an oversize means nothing without the nominal bore that it is over",
        "give nominal_bore too",
    ),
)
NOTICES = (
    Notice(
        "margin_small",
        "chosen_margin_mm",
        lambda i, o: o.chosen_margin_mm is not None and o.chosen_margin_mm < LEAST_MARGIN_MM,
        "less than 0.01 mm is left over the clean-up diameter: have the next size (runner_up) "
        "at hand and order a measuring cut first",
    ),
    Notice(
        "may_clean_up_at_the_hone",
        "outcomes",
        lambda i, o: AT_THE_HONE in o.outcomes,
        "a piston cleans up only within the hone's stock: ask the machinist whether the hone "
        "may take out the last of the damage",
    ),
    Notice(
        "none_cleans_up",
        "reason",
        _no_size,
        "no piston offered cleans up at boring: look for a larger one, else sleeve or replace",
    ),
    Notice(
        "beyond_makers_largest",
        "outcomes",
        lambda i, o: TOO_LARGE in o.outcomes,
        "a piston is larger than the maker's largest oversize and is left out",
    ),
    Notice(
        "no_larger_size",
        "runner_up",
        lambda i, o: o.chosen is not None and o.runner_up is None,
        "no larger piston is on offer: if this one does not clean up there is none to go to, "
        "and no next rebuild",
    ),
    Notice(
        "piston_not_as_marked",
        "pistons",
        _off_mark,
        "a piston measures over 0.1 mm otherwise than its mark says over the nominal bore: "
        "another piston, another nominal bore, or a reading in the wrong place; measure again "
        "before anything is ordered",
    ),
    Notice(
        "mark_without_unit",
        "marks",
        lambda i, _: any(not UNIT_IN_MARK.search(one.mark) for one in i.pistons),
        "a mark carries no unit: say +0.50 mm or +0.020 in; the two differ by 0.008 mm, and "
        "only the measured size counts",
    ),
)
