"""Typed client of the Ringland service: the arithmetic of a top-end engine job.

>>> from ringland import Client
>>> with Client.embedded() as client:
...     answer = client.displacement(bore="68 mm", stroke=(66, "mm"))
>>> print(answer.result.displacement)
239.69 cc

``import ringland`` loads nothing but this file; each name loads its module when it is first used.
"""

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from ringland._answers import (
        Answer,
        BatchAnswer,
        CalculationInfo,
        Column,
        MoreProblems,
        RowProblem,
        RowWarning,
        ServiceVersion,
        SourceInfo,
        SourceUse,
        VerdictColumns,
    )
    from ringland._client import Client
    from ringland._errors import (
        BadRequest,
        ConnectionFailed,
        FieldError,
        Impossible,
        InvalidInput,
        MethodNotAllowed,
        NotAcceptable,
        NotFound,
        RateLimited,
        RinglandError,
        ServerFault,
        ServiceError,
        ServiceMissing,
        TimedOut,
        TlsFailed,
        TooLarge,
        UnreadableAnswer,
        UnsupportedMedia,
    )
    from ringland._generated._parts import (
        AnswerWarning,
        Basis,
        Limit,
        MeasureNext,
        NotWorkedOut,
        Taken,
        ToSettle,
        TraceStep,
        Verdict,
    )
    from ringland._transport import Timeout
    from ringland._types import Interval, Quantity, QuantityLike, Readings, ReadingsLike

__version__ = "0.1.0"

_HOMES = {
    "_answers": (
        "Answer",
        "BatchAnswer",
        "CalculationInfo",
        "Column",
        "MoreProblems",
        "RowProblem",
        "RowWarning",
        "ServiceVersion",
        "SourceInfo",
        "SourceUse",
        "VerdictColumns",
    ),
    "_generated._parts": (
        "AnswerWarning",
        "Basis",
        "Limit",
        "MeasureNext",
        "NotWorkedOut",
        "Taken",
        "ToSettle",
        "TraceStep",
        "Verdict",
    ),
    "_client": ("Client",),
    "_errors": (
        "BadRequest",
        "ConnectionFailed",
        "FieldError",
        "Impossible",
        "InvalidInput",
        "MethodNotAllowed",
        "NotAcceptable",
        "NotFound",
        "RateLimited",
        "RinglandError",
        "ServerFault",
        "ServiceError",
        "ServiceMissing",
        "TimedOut",
        "TlsFailed",
        "TooLarge",
        "UnreadableAnswer",
        "UnsupportedMedia",
    ),
    "_transport": ("Timeout",),
    "_types": ("Interval", "Quantity", "QuantityLike", "Readings", "ReadingsLike"),
}
_HOME = {name: home for home, names in _HOMES.items() for name in names}

__all__ = [
    "Answer",
    "AnswerWarning",
    "BadRequest",
    "Basis",
    "BatchAnswer",
    "CalculationInfo",
    "Client",
    "Column",
    "ConnectionFailed",
    "FieldError",
    "Impossible",
    "Interval",
    "InvalidInput",
    "Limit",
    "MeasureNext",
    "MethodNotAllowed",
    "MoreProblems",
    "NotAcceptable",
    "NotFound",
    "NotWorkedOut",
    "Quantity",
    "QuantityLike",
    "RateLimited",
    "Readings",
    "ReadingsLike",
    "RinglandError",
    "RowProblem",
    "RowWarning",
    "ServerFault",
    "ServiceError",
    "ServiceMissing",
    "ServiceVersion",
    "SourceInfo",
    "SourceUse",
    "Taken",
    "TimedOut",
    "Timeout",
    "TlsFailed",
    "ToSettle",
    "TooLarge",
    "TraceStep",
    "UnreadableAnswer",
    "UnsupportedMedia",
    "Verdict",
    "VerdictColumns",
    "__version__",
]


def __getattr__(name: str) -> Any:
    """Load the module that a public name lives in (PEP 562)."""
    home = _HOME.get(name)
    if home is None:
        raise AttributeError(f"module 'ringland' has no attribute {name!r}")
    found = getattr(import_module(f"ringland.{home}"), name)
    globals()[name] = found
    return found


def __dir__() -> list[str]:
    """Return the public names, loaded or not."""
    return sorted(__all__)
