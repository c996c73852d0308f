"""Lets schemathesis send bodies whose form a schema cannot say."""

import csv
import io
from typing import Any

import schemathesis


@schemathesis.serializer("application/x-ndjson")
def lines(context: Any, value: Any) -> bytes:
    """Return the text as bytes."""
    return str(value).encode("utf-8", "replace")


@schemathesis.serializer("text/csv")
def table(context: Any, value: Any) -> bytes:
    """Return the text as the one cell of a well-formed table; test_never_500 sends any bytes."""
    text = io.StringIO()
    csv.writer(text).writerow([str(value)])
    return text.getvalue().encode("utf-8", "replace")
