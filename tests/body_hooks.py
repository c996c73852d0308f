"""Lets schemathesis send bodies whose form a schema cannot say, or that it cannot make whole."""

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


@schemathesis.hook
def before_load_schema(context: Any, raw_schema: dict[str, Any]) -> None:
    """Leave ``measuring`` out of the job card: with it the card is more than the generator holds.

    Every other operation has the same ``measuring``, which is made and tried there.
    """
    del raw_schema["components"]["schemas"]["JobCardRequest"]["properties"]["measuring"]
