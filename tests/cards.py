"""Cards to show: whole jobs from the demo data, hostile texts, orders with and without gaps."""

import json
from pathlib import Path
from typing import Any

from ringland_service.api.shapes.examples import example
from ringland_service.core.calculations import BY_NAME

DEMO = Path(__file__).parents[1] / "demo_data"
HOSTILE = "<script>alert('job')</script> & \"quoted\" </title></style> \x00\x0b ‮ {{ 7 * 7 }}"
JOBS: dict[str, dict[str, Any]] = {
    path.stem: json.loads(path.read_text("utf-8")) for path in sorted(DEMO.glob("*.json"))
}

# A job of a few numbers, whose card can be worked out by hand.
CLEARANCE = {
    "about": {"job": "26-099", "owner_says": "knocks when cold"},
    "cylinder": {
        "bore_largest": {"value": 73.052, "unit": "mm", "uncertainty": 0.006},
        "bore_smallest": {"value": 73.040, "unit": "mm", "uncertainty": 0.006},
    },
    "piston": {
        "piston_size": {"value": 72.931, "unit": "mm", "uncertainty": 0.004},
        "piston_condition": "used",
    },
    "compression": {"wet": {"value": 118, "unit": "psi"}},
    "limits": {
        "piston_clearance_max": {
            "high": {"value": 0.12, "unit": "mm"},
            "standing": "maker",
            "source": "workshop manual of the pump",
        }
    },
}
JOBS |= {
    "clearance": CLEARANCE,
    "example": example(BY_NAME["job-card"].inputs),
    "nothing": {},
    "hostile": {
        "about": {
            "job": HOSTILE[:60],
            "machine": HOSTILE,
            "owner_says": HOSTILE,
            "notes": "x" * 800,
        }
    },
}
ORDER = example(BY_NAME["order-card"].inputs)
LEAST = ("work", "bore_kind", "cycle", "piston_size", "clearance_low", "clearance_high")
ORDERS: dict[str, dict[str, Any]] = {
    "full": ORDER,
    "least": {name: ORDER[name] for name in LEAST},
    "hostile": {**ORDER, "job": HOSTILE[:40], "approver": HOSTILE[:60]},
}
