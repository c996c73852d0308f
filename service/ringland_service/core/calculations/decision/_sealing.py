"""Whether the tests speak for or against the rings: the one table of it.

The steps (20 and 30 % of leak, 5 and 15 % of excess gain, 0.90 of the expected reading) are those
of the table of grades. A test that is missing or cannot be judged speaks neither for nor against.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import cast

from ringland_service.core.calculations.decision._conditions import Condition, broken, holds
from ringland_service.core.calculations.decision._decision_inputs import Inputs
from ringland_service.core.calculations.decision._tested import LARGE, Heard, heard, leader
from ringland_service.core.calculations.diagnosis.tables import SUSPECTS
from ringland_service.core.calculations.engine_tests.leak_words import HEARD_AT

# The suspects that a mended cylinder cures, and those that cause what it suffers from: damage and
# its cause are no rivals.
OF_CYLINDER = ("rings_or_bore", "piston_damage")
CAUSES = ("crankcase_leak",)
RIVALS = tuple(name for name in SUSPECTS if name not in (*OF_CYLINDER, *CAUSES))
LEAK_SERVICEABLE = ("good", "serviceable")
FULL = ("good", "high")


@dataclass(frozen=True)
class Says:
    """One thing that tests may say of the rings: when they do, and the sentence."""

    id: str
    when: Callable[[Heard], bool]
    words: Callable[[Inputs], str]


def rings_lead(tests: Heard) -> bool:
    """Return whether rings and bore lead the suspects of other parts."""
    return leader(tests, ("rings_or_bore",), RIVALS) == "rings_or_bore" and not tests.not_valid


def _piston_leads(tests: Heard) -> bool:
    return leader(tests, ("piston_damage",), RIVALS) == "piston_damage" and not tests.not_valid


SEALS = (
    Says(
        "leak_down",
        lambda t: t.leak in LEAK_SERVICEABLE and t.leak_proven,
        lambda i: f"{_leak(i)} ({_serviceable(i)})",
    ),
    Says(
        "wet_gain_and_level",
        lambda t: t.wet == "rings_not_shown" and t.level in FULL,
        lambda i: (
            f"{_excess(i)} (under 5 %, common practice) and {i.level_ratio:.2f} of the expected "
            "reading (0.90 or more, common practice)"
        ),
    ),
    Says(
        "wet_gain_and_leak_elsewhere",
        lambda t: t.wet == "rings_not_shown" and t.leak in LARGE and t.elsewhere,
        lambda i: (
            f"{_excess(i)} (under 5 %, common practice) and {_leak(i)} that is heard elsewhere, at "
            f"{_place(i)} (the leak-down after the work confirms it)"
        ),
    ),
)
AGAINST = (
    Says(
        "leak_down",
        lambda t: t.leak == "tear_down" and t.past_the_rings,
        lambda i: f"{_leak(i)} ({_torn_down(i)}), heard at {_place(i)}: the air passes the rings",
    ),
    Says(
        "wet_gain",
        lambda t: t.wet == "rings_and_bore",
        lambda i: f"{_excess(i)} (15 % or more, common practice): oil seals what the rings do not",
    ),
    Says(
        "oil_use",
        lambda t: t.oil == "find_out" and rings_lead(t),
        lambda i: "the engine uses too much oil, and rings or bore lead the suspects",
    ),
    Says(
        "suspects_rings",
        lambda t: t.oil != "find_out" and rings_lead(t),
        lambda i: "rings or bore lead the suspects of the diagnosis",
    ),
    Says(
        "suspects_piston",
        lambda t: not rings_lead(t) and _piston_leads(t),
        lambda i: "the piston leads the suspects of the diagnosis: it does not stay in",
    ),
)


def _leak(i: Inputs) -> str:
    if i.leak_pct is not None:
        return f"a leak-down of {i.leak_pct:.1f} %"
    return f"a leak-down graded {str(i.leak_grade).replace('_', ' ')}"


# The sentences are asked for only where their condition has found the test told.
def _place(i: Inputs) -> str:
    return HEARD_AT[cast(str, i.heard_at)]


def _serviceable(i: Inputs) -> str:
    scale = i.leak_grade is not None
    return OF_MAKER["serviceable"] if scale else "20 % or less, common practice"


def _torn_down(i: Inputs) -> str:
    return OF_MAKER["tear_down"] if i.leak_grade is not None else "above 30 %, common practice"


OF_MAKER = {
    "serviceable": "serviceable or better on the scale told",
    "tear_down": "to be torn down on the scale told",
}


def _excess(i: Inputs) -> str:
    excess = cast(float, i.excess_gain_pct)
    if excess < 0:
        return f"no gain beyond the oil's own volume ({excess:.1f} %)"
    return f"a gain of {excess:.1f} % beyond the oil's own volume"


def sealing(i: Inputs) -> str | None:
    """Return by what the tests show that the rings seal, in words; None where they do not."""
    tests = heard(i)
    return next((one.words(i) for one in SEALS if one.when(tests)), None)


def stands_in(i: Inputs) -> Condition | None:
    """Return what stands in for measurements that a piston left in its bore does not allow."""
    shown = sealing(i) if i.piston_stays_in else None
    if shown is None:
        return None
    said = f"{shown}: the rings seal, which stands in for what cannot be read"
    return holds(f"{said} while the piston stays in")


def speaks_against(i: Inputs) -> Iterator[Condition]:
    """Yield what the tests say against rings that stay in."""
    tests = heard(i)
    for one in AGAINST:
        if one.when(tests):
            yield broken(one.words(i))
