"""The rows of a batch while they are read, and what may be wrong with one of them."""

from dataclasses import dataclass, field
from typing import Any

from ringland_service.core.errors import CoreError

COLUMN_KEYS = frozenset({"values", "unit", "uncertainty"})
RIGHT_COLUMN = '{"unit": "mm", "values": [68.0, 68.5]}'


class Unreadable(CoreError):
    """A row with a value that cannot be read; its code is that of a single call."""

    def __init__(self, field: str, message: str, *, code: str = "wrong_type") -> None:
        super().__init__(field, message)
        self.code = code


@dataclass
class Draft:
    """Rows while they are read."""

    count: int
    columns: dict[str, list[Any]] = field(default_factory=dict)
    uncertainty: dict[str, Any] = field(default_factory=dict)
    limits: dict[tuple[str, str], list[Any]] = field(default_factory=dict)
    faults: dict[int, list[CoreError]] = field(default_factory=dict)

    def bad(self, row: int, error: CoreError) -> None:
        """Note what is wrong with a row."""
        self.faults.setdefault(row, []).append(error)
