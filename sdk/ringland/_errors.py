"""The errors that this package raises.

::

    RinglandError
    ├── InvalidInput            refused here, before anything was sent (also a ValueError)
    ├── ServiceMissing          embedded use without the service installed (also an ImportError)
    ├── UnreadableAnswer        an answer that is not what the service promises
    ├── ConnectionFailed        no answer came
    │   ├── TimedOut            … in time
    │   └── TlsFailed           … over TLS: certificate, protocol; never tried again
    └── ServiceError            the service answered with a problem (RFC 9457)
        ├── BadRequest          400  cannot be read: a field unknown, missing, of the wrong form
        ├── NotFound            404  no such calculation or page
        ├── MethodNotAllowed    405
        ├── NotAcceptable       406
        ├── TooLarge            413
        ├── UnsupportedMedia    415
        ├── Impossible          422  can be read and cannot be true: out of bounds, contradiction
        ├── RateLimited         429  ``retry_after`` says when to come back
        └── ServerFault         5xx
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any


class RinglandError(Exception):
    """Any error of this package."""


class InvalidInput(RinglandError, ValueError):
    """What was given cannot be sent; the message names the field and shows the right form."""


class ServiceMissing(RinglandError, ImportError):
    """The service is not installed in this environment."""


class UnreadableAnswer(RinglandError):
    """An answer that is not what the service promises; another version, or not the service."""


class ConnectionFailed(RinglandError):
    """No answer came: no connection, or it broke."""


class TimedOut(ConnectionFailed):
    """No answer came in time."""


class TlsFailed(ConnectionFailed):
    """The connection could not be secured."""


@dataclass(frozen=True)
class FieldError:
    """What is wrong with one field of a request.

    Attributes
    ----------
    code : str
        Stable token of the kind of fault.
    pointer : str
        JSON Pointer in URI-fragment form, ``#/survey/bore/0`` say.
    detail : str
        What is wrong, in words.
    allowed : Any
        What would be right, where the service says.
    pointers : tuple of str
        All fields that a contradiction lies between, that of ``pointer`` first; else empty.
    """

    code: str
    pointer: str
    detail: str
    allowed: Any = None
    pointers: tuple[str, ...] = ()

    @property
    def field(self) -> str:
        """The field in words: ``survey.bore.0``; ``request`` for the request as a whole."""
        steps = self.pointer.lstrip("#").strip("/").split("/")
        return ".".join(s.replace("~1", "/").replace("~0", "~") for s in steps) or "request"

    def __str__(self) -> str:
        """Return the fault in one line."""
        return f"{self.field}: {self.detail}"


class ServiceError(RinglandError):
    """The service answered with a problem.

    Attributes
    ----------
    status : int
    type : str
        Path (or address) of the page that explains this kind of problem.
    title, detail : str
    errors : tuple of FieldError
        The faults of the request, all at once.
    more : int
        How many faults there are beyond those in ``errors``.
    request_id : str
        Name of the request in the service's log.
    retry_after : float or None
        Seconds [s] after which the service wants to be asked again, where it says.
    """

    def __init__(
        self,
        status: int,
        *,
        type: str = "about:blank",  # noqa: A002 - the member's name in RFC 9457
        title: str = "",
        detail: str = "",
        errors: tuple[FieldError, ...] = (),
        more: int = 0,
        request_id: str = "",
        retry_after: float | None = None,
    ) -> None:
        self.status = status
        self.type = type
        self.title = title
        self.detail = detail
        self.errors = errors
        self.more = more
        self.request_id = request_id
        self.retry_after = retry_after
        super().__init__(status, type, title, detail)

    def __str__(self) -> str:
        """Return status, what is wrong field by field, and the request's id."""
        said = "; ".join(map(str, self.errors)) or self.detail or self.title
        said += f"; and {self.more} more" if self.more else ""
        named = f" (request {self.request_id})" if self.request_id else ""
        return f"{self.status}: {said}{named}"

    def __repr__(self) -> str:
        """Return type of error, status and request id."""
        return f"{type(self).__name__}(status={self.status}, request_id={self.request_id!r})"


class BadRequest(ServiceError):
    """400: the request cannot be read."""


class NotFound(ServiceError):
    """404: there is nothing at this address."""


class MethodNotAllowed(ServiceError):
    """405: the address does not take this method."""


class NotAcceptable(ServiceError):
    """406: the answer does not come in the form wanted."""


class TooLarge(ServiceError):
    """413: the request is larger than the service reads."""


class UnsupportedMedia(ServiceError):
    """415: the service does not read this form of body."""


class Impossible(ServiceError):
    """422: the request can be read and cannot be true."""


class RateLimited(ServiceError):
    """429: too many requests; ``retry_after`` says when to come back."""


class ServerFault(ServiceError):
    """5xx: the service, or what stands before it, failed."""


BY_STATUS: Mapping[int, type[ServiceError]] = {
    400: BadRequest,
    404: NotFound,
    405: MethodNotAllowed,
    406: NotAcceptable,
    413: TooLarge,
    415: UnsupportedMedia,
    422: Impossible,
    429: RateLimited,
}


def class_for(status: int) -> type[ServiceError]:
    """Return the class of error for a status."""
    return ServerFault if status >= 500 else BY_STATUS.get(status, ServiceError)


def from_problem(
    status: int, problem: Any, *, request_id: str = "", retry_after: float | None = None
) -> ServiceError:
    """Return the error for a problem's JSON; unknown members are ignored.

    What is not a problem at all (the page of a proxy, say) becomes an error that says so.
    """
    if not isinstance(problem, Mapping):
        detail = "the answer is not the service's own; something before it answered"
        return class_for(status)(
            status, detail=detail, request_id=request_id, retry_after=retry_after
        )
    return class_for(status)(
        status,
        type=str(problem.get("type", "about:blank")),
        title=str(problem.get("title", "")),
        detail=str(problem.get("detail", "")),
        errors=tuple(_field_errors(problem.get("errors", ()))),
        more=more if isinstance(more := problem.get("more"), int) else 0,
        request_id=str(problem.get("request_id") or request_id),
        retry_after=retry_after,
    )


def _field_errors(entries: Any) -> Iterable[FieldError]:
    # A list that several entries share stands with the first of them.
    told: dict[str, Any] = {}
    for entry in entries if isinstance(entries, list) else ():
        if isinstance(entry, Mapping):
            pointer, allowed = str(entry.get("pointer", "")), entry.get("allowed")
            if allowed is None:
                allowed = told.get(str(entry.get("allowed_at")))
            else:
                told.setdefault(pointer, allowed)
            yield FieldError(
                code=str(entry.get("code", "")),
                pointer=pointer,
                detail=str(entry.get("detail", "")),
                allowed=allowed,
                pointers=tuple(map(str, entry.get("pointers") or ())),
            )
