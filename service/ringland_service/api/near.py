"""The known name that a mistyped one is closest to."""

from collections.abc import Sequence
from difflib import SequenceMatcher, get_close_matches
from functools import lru_cache

# Longer texts are no mistyped names, and comparing them would cost more than it helps.
LONGEST = 60
ALIKE = 0.65
ENOUGH = 5


def near(given: str, known: Sequence[str], alike: float = ALIKE) -> str | None:
    """Return the name among ``known`` that ``given`` most likely stands for, None where none does.

    Parameters
    ----------
    given : str
        What was sent.
    known : sequence of str
    alike : float
        Least likeness, 0 to 1, as ``difflib.SequenceMatcher.ratio`` has it.
    """
    return _near(given, tuple(known), alike) if 0 < len(given) <= LONGEST else None


@lru_cache(maxsize=4096)
def _near(given: str, known: tuple[str, ...], alike: float) -> str | None:
    plain = {name.casefold(): name for name in reversed(known)}
    text = given.strip().casefold()
    # Of names that are equally like it, one that begins alike: kPs is kPa rather than psi.
    ranked = sorted(
        get_close_matches(text, plain, ENOUGH, alike),
        key=lambda name: (-SequenceMatcher(None, name, text).ratio(), name[:1] != text[:1], name),
    )
    return plain[ranked[0]] if ranked else None
