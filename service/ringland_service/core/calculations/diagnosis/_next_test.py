"""The test that comes next: the one that parts the leaders."""

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from ringland_service.core.calculations.diagnosis import headline
from ringland_service.core.calculations.diagnosis._evidence_checks import lacks
from ringland_service.core.calculations.diagnosis.tables import (
    EVIDENCE,
    FOR,
    NEXT_TESTS,
    RULES,
    Evidence,
    NextTest,
)
from ringland_service.core.metrology.conformity import at_most

BY_ID = {test.id: test for test in NEXT_TESTS}


@dataclass(frozen=True)
class Next:
    """A test, how it reads, and the suspects that it parts."""

    words: str
    reads_as: str
    parts: tuple[str, ...] = ()


def next_test(
    i: Any,
    evidence: Collection[str],
    word: str,
    at: headline.Standing,
    figures: Mapping[str, float],
) -> Next | None:
    """Return the test that comes next, or None where none would tell more."""
    at_hand = set(evidence)
    if word == headline.REPEAT:
        return _repeated(evidence)
    if not i.usual:
        return None
    if set(RULES["kick_back"].all) <= at_hand:
        return _of(BY_ID["kick_back"])
    if word == headline.NOTHING:
        return None
    if word == headline.DECOMPRESSOR_FIRST:
        return _of(BY_ID["decompressor_or_lash"], ("DC", str(at.first)))
    if word == headline.LASH_FIRST:
        return _of(BY_ID["valve_or_lash"], ("LT", str(at.first)))
    if at.first is None or at_most(at.score, 0.0):
        return _of_some(i, at_hand, [test for test in NEXT_TESTS if test.begins])
    if word == headline.LEADS:
        return _settling(i, at_hand, at, figures)
    return _parting(i, at_hand, at)


def _of(test: NextTest, parts: tuple[str, ...] = ()) -> Next:
    return Next(test.words, test.reads_as, parts)


def _of_some(
    i: Any, evidence: set[str], tests: Iterable[NextTest], parts: tuple[str, ...] = ()
) -> Next | None:
    """Return the first of the tests that can be made here and has not been made."""
    return next((_of(test, parts) for test in tests if _open(i, evidence, test)), None)


def _repeated(evidence: Collection[str]) -> Next:
    first = [EVIDENCE[name].put_right for name in evidence if EVIDENCE[name].put_right]
    repeat = BY_ID["repeat"]
    return Next(f"{', '.join(first)}; then {repeat.words}", repeat.reads_as)


def _settling(
    i: Any, evidence: set[str], at: headline.Standing, figures: Mapping[str, float]
) -> Next | None:
    """Return what confirms the first, or parts it from a next that is a strong suspect too."""
    first = str(at.first)
    sure = [t for t in NEXT_TESTS if first in t.between and (t.settled or t.anybody)]
    found = _of_some(i, evidence, sure, (first,))
    if found is None and at_most(figures["least_score"], at.next_score):
        return _parting(i, evidence, at)
    return found


def _parting(i: Any, evidence: set[str], at: headline.Standing) -> Next | None:
    if at.next is None:
        return None
    pair = (str(at.first), at.next)
    tests = [test for test in NEXT_TESTS if not test.settled and _between(test, pair)]
    return _of_some(i, evidence, tests, pair) or _by_the_table(i, evidence, pair)


def _between(test: NextTest, pair: tuple[str, str]) -> bool:
    for one, other in (pair, pair[::-1]):
        if one in test.between and (test.anybody or other in test.others):
            return True
    return False


def _open(i: Any, evidence: set[str], test: NextTest) -> bool:
    """Return whether a test can be made here, is called for, and has not been made."""
    families = {EVIDENCE[name].family for name in evidence}
    done = bool(test.fills) and set(test.fills) <= families
    done = done or not evidence.isdisjoint(test.once)
    called = not test.after or not families.isdisjoint(test.after)
    called = called and (not test.seen or not evidence.isdisjoint(test.seen))
    return called and not done and test.needs not in lacks(i)


def _by_the_table(i: Any, evidence: set[str], pair: tuple[str, str]) -> Next | None:
    """Return what to look for, that would part the two by most, of what nothing is known of."""
    families = {EVIDENCE[name].family for name in evidence}
    best, most = None, 0.0
    for row in _possible(i, evidence):
        apart = abs(_says(row, pair[0]) - _says(row, pair[1]))
        if row.family not in families and apart > most:
            best, most = row, apart
    if best is None:
        return None
    return Next(f"look whether this is so: {best.words}", _reads(best, pair), pair)


def _possible(i: Any, evidence: set[str]) -> Iterator[Evidence]:
    """Yield the evidence that this engine may show, and that somebody may set out to find."""
    missing = lacks(i)
    for row in EVIDENCE.values():
        of_engine = row.cycle in ("", i.cycle) and missing.isdisjoint(row.needs)
        if of_engine and row.id not in evidence and row.family not in NEVER_SOUGHT:
            yield row


# Nobody sets out to find these: they are how a test was made, or what the owner tells.
NEVER_SOUGHT = (
    "conditions",
    "history",
    "feel",
    "level",
    "spread",
    "decompressor",
    "level cross-check",
)
STEPS: Mapping[str, int] = {"decisive": 4, "strong": 3, "moderate": 2, "weak": 1}


def _says(row: Evidence, suspect: str) -> int:
    for line in row.lines:
        if line.suspect == suspect:
            return STEPS[line.weight] if line.direction == FOR else -STEPS[line.weight]
    return 0


def _reads(row: Evidence, pair: tuple[str, str]) -> str:
    likelier = max(pair, key=lambda suspect: _says(row, suspect))
    return f"seen: {likelier} is the likelier"
