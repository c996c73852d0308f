"""Closed lists of tokens that several calculations share, each token with its words."""

OVERHEAD = "overhead_valves"
SIDE_VALVE = "side_valve"
PORTS = "ports"
UNKNOWN = "unknown"

VALVE_GEAR: dict[str, str] = {
    OVERHEAD: "four-stroke, valves in the head",
    SIDE_VALVE: "four-stroke, valves beside the cylinder",
    PORTS: "two-stroke, ports in the cylinder",
    UNKNOWN: "not known: no bands are applied",
}

# The two states that small fits are judged in.
FIT: dict[str, str] = {
    "new": "new parts, as they go together",
    "used": "used parts against their service limit",
}
