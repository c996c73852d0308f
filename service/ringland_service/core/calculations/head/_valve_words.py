"""The vocabulary of valves."""

VALVE: dict[str, str] = {"intake": "intake valve", "exhaust": "exhaust valve"}
