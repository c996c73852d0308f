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

SHIM_OVER_BUCKET, SHIM_UNDER_BUCKET = "shim_over_bucket", "shim_under_bucket"
SHIM_UNDER_FINGER = "shim_under_finger"
SCREW_AT_VALVE, SCREW_AT_CAM = "screw_at_valve", "screw_at_cam"
HYDRAULIC = "hydraulic"
# How the lash of a valve is set.
ADJUSTER: dict[str, str] = {
    SHIM_OVER_BUCKET: "shim on the bucket: it moves as the lash does",
    SHIM_UNDER_BUCKET: "shim under the bucket: it moves as the lash does",
    SHIM_UNDER_FINGER: "shim under a finger or rocker between cam and valve",
    SCREW_AT_VALVE: "screw at the valve's end of the rocker",
    SCREW_AT_CAM: "screw at the cam's or pushrod's end of the rocker",
    HYDRAULIC: "hydraulic: there is no lash",
    "ground_stem": "none: the end of the stem is ground",
}
BUCKETS = (SHIM_OVER_BUCKET, SHIM_UNDER_BUCKET)
SHIMS = (*BUCKETS, SHIM_UNDER_FINGER)
SCREWS = (SCREW_AT_VALVE, SCREW_AT_CAM)
