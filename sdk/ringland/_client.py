"""The client: one method a calculation, typed; and the untyped ways beside it."""

from collections.abc import Iterable, Mapping
from importlib import import_module
from types import TracebackType
from typing import TYPE_CHECKING, Any

from ringland._answers import (
    Answer,
    BatchAnswer,
    CalculationInfo,
    ServiceVersion,
    SourceInfo,
    read_answer,
)
from ringland._batch import ColumnLike
from ringland._calculation import Calculation, options
from ringland._caller import Caller
from ringland._errors import ServiceError
from ringland._generated import CLASSES, Calculations
from ringland._generated._words import Units
from ringland._reading import read
from ringland._transport import Timeout, Transport, session_of_own

if TYPE_CHECKING:
    from wsgiref.types import WSGIApplication

    import requests


class Client(Calculations):
    """A client of one service.

    Parameters
    ----------
    base_url : str
        ``http://host:8000``, say.
    timeout : Timeout or float
        A number is the total for one call [s], retries and waits included.
    retries : int
        Further tries after a connection that failed or a 429, 502, 503 or 504.
    session : requests.Session, optional
        One of your own, with headers, proxies or certificates; you close it.

    Notes
    -----
    Use it as a context manager, or call ``close``. Calls from several threads share the pool of
    connections.
    """

    def __init__(
        self,
        base_url: str,
        *,
        timeout: Timeout | float = Timeout(),  # noqa: B008 - frozen
        retries: int = 2,
        session: "requests.Session | None" = None,
    ) -> None:
        transport = Transport(
            base_url,
            session or session_of_own(),
            timeout=Timeout.of(timeout),
            retries=retries,
        )
        super().__init__(Caller(transport))
        self._closes = transport.session if session is None else None

    @classmethod
    def embedded(cls, app: "WSGIApplication | None" = None) -> "Client":
        """Return a client of the service in this process: no socket, no server to start.

        Parameters
        ----------
        app : WSGI application, optional
            Another one than the installed service's.

        Raises
        ------
        ServiceMissing
            Where the service is not installed: ``pip install 'ringland[embedded]'``.
        """
        from ringland import embedded

        session = embedded.session(embedded.service() if app is None else app)
        found = cls(embedded.BASE_URL, retries=0, session=session)
        found._closes = session
        return found

    def close(self) -> None:
        """Close the connections; a session that was given stays open."""
        if self._closes is not None:
            self._closes.close()

    def __enter__(self) -> "Client":
        """Return the client."""
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        traceback: TracebackType | None,
    ) -> None:
        """Close the connections."""
        self.close()

    def ask(
        self, name: str, /, *, units: Units | None = None, trace: bool = False, **fields: Any
    ) -> Answer[Mapping[str, Any]]:
        """Return the answer of a calculation by name, its result as a mapping.

        Also for calculations that the service has and this package does not know yet; give their
        quantities as ``Quantity`` or ``(68, "mm")``.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        asked = self._named(name)
        body, params = asked.request(fields), options(units, trace)
        data, request_id = self.caller.named("POST", asked.path, body=body, params=params)
        return read_answer(None, data, request_id)

    def batch(
        self,
        name: str,
        /,
        *,
        columns: Mapping[str, ColumnLike],
        shared: Mapping[str, Any] | None = None,
        units: Units | None = None,
    ) -> BatchAnswer:
        """Return the answers of many rows; see ``Calculation.batch``."""
        return self._named(name).batch(columns=columns, shared=shared, units=units)

    def many(
        self, name: str, rows: Iterable[Mapping[str, Any]], /, *, units: Units | None = None
    ) -> tuple[Answer[Any] | ServiceError, ...]:
        """Return the answer of each row, or what is wrong with it; see ``Calculation.many``."""
        return self._named(name).many(rows, units=units)

    def text(self, name: str, /, *, units: Units | None = None, **fields: Any) -> str:
        """Return the answer of a calculation as text for people.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        asked = self._named(name)
        body = asked.request(fields)
        return self.caller.text("POST", asked.path, body=body, params=options(units))

    def calculations(self) -> tuple[CalculationInfo, ...]:
        """Return what the service can calculate, in its order."""
        listed = self.caller.json("GET", "/v1")["calculations"]
        return tuple(read(CalculationInfo, entry) for entry in listed)

    def sources(self) -> tuple[SourceInfo, ...]:
        """Return the standards and books that the service rests on, checked or not."""
        listed = self.caller.json("GET", "/v1/sources")["sources"]
        return tuple(read(SourceInfo, entry) for entry in listed)

    def version(self) -> ServiceVersion:
        """Return the version of the service, and of each calculation's arithmetic."""
        return read(ServiceVersion, self.caller.json("GET", "/version"))

    def _named(self, name: str) -> Calculation[Any]:
        """Return a calculation by its name in the service; without types where not known here."""
        module = name.replace("-", "_")
        if module not in CLASSES:
            return Calculation(self.caller, name)
        of = getattr(import_module(f"ringland._generated.{module}"), CLASSES[module])
        found: Calculation[Any] = of(self.caller)
        return found
