"""What a reading is graded from, of the diagnosis and of the decision for a cylinder alike."""

from typing import Protocol

from ringland_service.core.numbers import Number


class Grading(Protocol):
    """Whether the common steps may grade."""

    @property
    def usual(self) -> bool: ...


class LeakDown(Grading, Protocol):
    """A leak-down, and what stands against its grade."""

    @property
    def leak_pct(self) -> Number | None: ...
    @property
    def leak_gradeable(self) -> str | None: ...
    @property
    def leak_grade(self) -> str | None: ...
    @property
    def decompressor_state(self) -> str | None: ...
