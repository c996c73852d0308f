"""Common-practice figures that an arithmetic takes where nothing better is told.

``defaults: off`` switches them off: what rests on one is then not answered, and the answer says
which field would supply it.
"""

from collections.abc import Callable, Collection
from dataclasses import dataclass
from typing import Any


class Usual:
    """Marks a default as a common-practice figure, as against one that a request gives."""


class UsualNumber(Usual, float):
    """A number that stands in."""


class UsualCount(Usual, int):
    """A whole number that stands in."""


class UsualShares(Usual, tuple[float, ...]):
    """A list of numbers that stands in."""


def usual(value: Any) -> Any:
    """Return a default that says of itself that it is common practice."""
    if isinstance(value, tuple):
        return UsualShares(value)
    return UsualCount(value) if isinstance(value, int) else UsualNumber(value)


# In the place of a figure's results: all of them rest on it.
ALL = ("*",)


@dataclass(frozen=True)
class Figure:
    """A common-practice figure that stands in where a field is left out.

    Attributes
    ----------
    field : str
        The input that supplies it otherwise; a limit of the request where it is that.
    results : tuple of str
        Results that rest on it. Those whose formula names the field, or a result that rests on it,
        follow by themselves. ``ALL`` where all of them do.
    when : callable or None
        Takes the inputs and the names of the inputs that uncertainty moves; whether the figure
        stands in, for a column an array. None: where the field is left out.
    instead : str
        How else it could be told.
    """

    field: str
    results: tuple[str, ...] = ()
    when: Callable[[Any, Collection[str]], Any] | None = None
    instead: str = ""

    def stands_in(self, inputs: Any, moved: Collection[str]) -> Any:
        """Return whether the figure stands in; for a column an array of that."""
        if self.when is not None:
            return self.when(inputs, moved)
        value = getattr(inputs, self.field)
        return value is None or isinstance(value, Usual)
