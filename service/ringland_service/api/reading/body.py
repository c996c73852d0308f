"""The bytes of a request's body: whole, or a fault that says what is missing."""

from flask import request
from werkzeug.exceptions import BadRequest, HTTPException

from ringland_service.api.faults import Fault, Faulty


def whole_body() -> bytes:
    """Return the body of the request, every byte that was announced.

    A body that ends early would still be read as JSON or CSV where the cut happens to fall well,
    with its last number shortened; so its length is compared with what the client announced.

    Raises
    ------
    Faulty
        Where the body ends before its Content-Length, or its chunks are not framed as HTTP/1.1
        has it (RFC 9112, 7.1).
    RequestEntityTooLarge
    """
    announced = request.content_length
    try:
        found = request.get_data()
    except BadRequest as error:
        raise _cut(announced) from error
    except HTTPException:
        raise
    # Each server has errors of its own for a body that it cannot unpack, and nothing but what the
    # client sent is at work while it is read.
    except Exception as error:
        detail = "the chunks of the body are not framed as HTTP/1.1 has it (RFC 9112, 7.1)"
        raise Faulty([Fault("broken_body", detail)]) from error
    if announced is not None and len(found) < announced:
        raise _cut(announced, len(found))
    return found


def _cut(announced: int | None, given: int | None = None) -> Faulty:
    """Return the fault of a body that ends early."""
    if announced is None:
        detail = "the body ends within a chunk; send it again"
    elif given is None:
        detail = f"the body ends before its Content-Length of {announced} bytes; send it again"
    else:
        detail = (
            f"the body ends after {given} bytes of the {announced} that its Content-Length"
            " announces; send it again"
        )
    return Faulty([Fault("incomplete_body", detail)])
