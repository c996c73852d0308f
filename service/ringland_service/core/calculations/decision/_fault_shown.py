"""Whether the fault that a cylinder is mended for is shown to be the cause of the complaint."""

from collections.abc import Sequence

from ringland_service.core.calculations.decision._decision_inputs import Inputs
from ringland_service.core.calculations.decision._sealing import (
    OF_CYLINDER,
    RIVALS,
    sealing,
)
from ringland_service.core.calculations.decision._tested import Heard, heard, leader
from ringland_service.core.calculations.diagnosis.headline import LEADS
from ringland_service.core.metrology.conformity import FAIL
from ringland_service.core.metrology.findings import found

SHOWN, NOT_SHOWN, CONTRADICTED = "shown", "not_shown", "contradicted"
FAULT_SHOWN: dict[str, str] = {
    SHOWN: "shown: a suspect of this cylinder leads, and explains what fails on the bench",
    NOT_SHOWN: "not shown by the tests made so far",
    CONTRADICTED: "contradicted: the tests point elsewhere",
}
# Which suspect explains which bench verdict that fails, and what was seen (common practice).
EXPLAINS: dict[str, tuple[str, ...]] = {
    "rings_or_bore": (
        "bore_largest",
        "bore_wear",
        "out_of_round",
        "taper_pin_axis",
        "taper_thrust_axis",
        "ring_gap_used",
        "top_ring_side",
        "second_ring_side",
        "piston_clearance_max",
        "glazed",
        "scored",
        "corroded",
        "plating_flaked",
        "port_bridge_broken",
    ),
    "piston_damage": (
        "piston_clearance_max",
        "top_ring_side",
        "second_ring_side",
        "pin_in_piston",
        "scored",
        "smeared",
        "hole",
        "broken_spigot",
        "port_bridge_broken",
    ),
    # A cracked cylinder leaks like its joint.
    "head_joint": ("crack", "pulled_stud_boss"),
}
SHORT: dict[str, str] = {
    "rings_or_bore": "the rings",
    "exhaust_valve": "exhaust valve",
    "intake_valve": "intake valve",
    "guide_or_stem_seal": "valve guides",
    "head_joint": "head gasket",
    "carbon": "carbon",
    "lash_tight": "tight lash",
    "lash_loose": "loose lash",
    "decompressor": "decompressor",
    "test_error": "the test itself",
    "piston_damage": "the piston",
    "cam_timing": "cam timing",
    "crankcase_leak": "crankcase",
}
BEFORE = "before anything is fitted"


def fault_shown(i: Inputs) -> tuple[str, str | None]:
    """Return whether the fault is shown, and what would show it where it is not."""
    tests = heard(i)
    explaining = tuple(name for name, what in EXPLAINS.items() if failing(i) & set(what))
    others = tuple(name for name in RIVALS if name not in explaining)
    if not tests.not_valid and leader(tests, explaining, others) is not None:
        return SHOWN, None
    own = tuple(dict.fromkeys((*OF_CYLINDER, *explaining)))
    elsewhere = _leads_elsewhere(tests, own, others)
    if elsewhere is not None:
        said = f"the tests point to {SHORT[elsewhere]}: see to that first, then test again"
        return CONTRADICTED, f"{said}, {BEFORE}"
    if _rings_seal(i, tests, own):
        said = f"the tests show rings that seal, by {sealing(i)}"
        return CONTRADICTED, f"{said}: find what else explains the complaint, {BEFORE}"
    return NOT_SHOWN, _would_show(i, tests, own, others)


def failing(i: Inputs) -> set[str]:
    """Return what fails on the bench: checks that fail, and damage that was seen."""
    checks = {name for names in EXPLAINS.values() for name in names}
    failed = {f.check for f in found(i.findings, *checks) if f.verdict == FAIL}
    return failed | {seen for seen in (i.surface, i.damage) if seen in checks}


def _best(tests: Heard, among: Sequence[str]) -> float:
    return max(tests.score(name) for name in among)


def _leads_elsewhere(tests: Heard, own: Sequence[str], others: Sequence[str]) -> str | None:
    """Return the suspect of another part that leads, where none of this part is a strong one."""
    if tests.headline not in (None, LEADS):
        return None
    first = leader(tests, [name for name in others if name != "test_error"], (*own, "test_error"))
    if first is None or tests.least_score is None:
        return None
    return first if _best(tests, own) < tests.least_score else None


def _rings_seal(i: Inputs, tests: Heard, own: Sequence[str]) -> bool:
    """Return whether the tests show rings that seal, with nothing left that speaks against them."""
    if not tests.scores:
        return tests.leak == "good"
    return sealing(i) is not None and _best(tests, own) < 0.0


def _would_show(i: Inputs, tests: Heard, own: Sequence[str], others: Sequence[str]) -> str:
    """Return what would show the fault, as one line."""
    if tests.not_valid:
        return f"the compression test is not valid: {i.next_test or 'repeat it'}, {BEFORE}"
    if not tests.scores:
        return f"no diagnosis speaks of it: {_test(i, tests)}, {BEFORE}"
    best = max(own, key=tests.score)
    if leader(tests, own, others) is not None:
        said = f"{SHORT[best]} {_verb(best, 'leads', 'lead')}, but nothing that fails on the bench"
        return f"{said} bears it out: measure what it would explain, {BEFORE}"
    beside = _beside(tests, tests.score(best), others)
    if not beside:
        return f"no test speaks strongly for {SHORT[best]}: {_test(i, tests)}, {BEFORE}"
    level = tests.scores[beside[0]] - tests.score(best) < (tests.least_lead or 0.0)
    one = len(beside) == 1 and beside[0] not in ("guide_or_stem_seal",)
    stand = f"{'stands' if one else 'stand'} {'level with' if level else 'before'}"
    return f"{_listed(beside)} {stand} {SHORT[best]}: {_test(i, tests)} {BEFORE}"


def _verb(name: str, one: str, several: str) -> str:
    return several if name == "rings_or_bore" else one


def _beside(tests: Heard, own: float, others: Sequence[str]) -> list[str]:
    """Return the suspects of other parts that stand level with this one or before it, best first.

    Only those that something speaks for.
    """
    near = own - (tests.least_lead or 0.0)
    found_ = [n for n in others if tests.score(n) > max(near, 0.0)]
    return sorted(found_, key=lambda name: -tests.scores[name])


def _listed(names: Sequence[str]) -> str:
    valves = ("exhaust_valve", "intake_valve")
    words = [SHORT[name] for name in names if name not in valves]
    valve = " and ".join(SHORT[v].removesuffix(" valve") for v in valves if v in names)
    words = [f"{valve} valve", *words] if valve else words
    if len(words) == 1:
        return words[0]
    return f"{', '.join(words[:-1])}{',' if ' and ' in words[0] else ''} and {words[-1]}"


def _test(i: Inputs, tests: Heard) -> str:
    """Return the test that would tell: leak-down first, then what the diagnosis asks for."""
    if tests.leak is None:
        return "leak-down" if i.leak_pct is None else "a leak-down that can be graded"
    if i.next_test is not None:
        return str(i.next_test)
    return "wet test" if tests.wet is None else "leak-down again, listening at every opening"
