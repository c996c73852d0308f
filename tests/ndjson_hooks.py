"""Lets schemathesis send bodies of one JSON object a line, as the text that it generated."""

from typing import Any

import schemathesis


@schemathesis.serializer("application/x-ndjson")
def lines(context: Any, value: Any) -> bytes:
    """Return the text as bytes."""
    return str(value).encode("utf-8", "replace")
