"""The two states that small fits are judged in."""

FIT: dict[str, str] = {
    "new": "new parts, as they go together",
    "used": "used parts against their service limit",
}
