"""What the generated calculations share: asking one question, and many."""

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any, ClassVar, Generic, TypeVar
from urllib.parse import quote

from ringland._answers import Answer, BatchAnswer, read_answer
from ringland._asking import Shape, asked_json
from ringland._batch import ColumnLike, RowLimit, columns_json, cut, joined, row_count
from ringland._caller import Caller
from ringland._errors import ServiceError, UnreadableAnswer, from_problem
from ringland._generated._words import Units
from ringland._lines import REFUSED, in_full, line_chunks, reached
from ringland._reading import read

R = TypeVar("R")


class Calculation(Generic[R]):
    """One calculation of the service; call it with its fields."""

    NAME: ClassVar[str] = ""
    RESULT: ClassVar[type[Any] | None] = None
    SHAPES: ClassVar[Mapping[str, Shape]] = {}

    def __init__(self, caller: Caller, name: str = "") -> None:
        self.caller = caller
        self.path = f"/v1/{quote(name or self.NAME, safe='')}"
        self.limit = RowLimit()

    def _answer(
        self, fields: Mapping[str, Any], units: Units | None, trace: bool = False
    ) -> Answer[R]:
        body, params = self.request(fields), options(units, trace)
        data, request_id = self.caller.named("POST", self.path, body=body, params=params)
        return read_answer(self.RESULT, data, request_id)

    def request(self, fields: Mapping[str, Any]) -> dict[str, Any]:
        """Return the JSON of a request; fields that are None are left out.

        Raises
        ------
        InvalidInput
            Naming the field that cannot be sent.
        """
        return {
            name: asked_json(value, self.SHAPES.get(name), name)
            for name, value in fields.items()
            if value is not None
        }

    def batch(
        self,
        *,
        columns: Mapping[str, ColumnLike],
        shared: Mapping[str, Any] | None = None,
        units: Units | None = None,
    ) -> BatchAnswer:
        """Return the answers of many rows, in as many requests as the service's limit asks for.

        Rows count from 1, through all requests.

        Parameters
        ----------
        columns : mapping of str to ColumnLike
            By field: ``([68.0, 68.5], "mm")``, or values alone where the field has no unit.
            None or NaN is a gap.
        shared : mapping, optional
            Fields that all rows share.
        units : str, optional

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
            A row that is wrong raises nothing: it stands under ``problems``.
        """
        common = self.request(shared or {})
        path, params = f"{self.path}/batch", options(units)
        whole = columns_json(columns)
        parts: list[BatchAnswer] = []

        def ask(start: int, end: int) -> int:
            body = {"shared": common} if common else {}
            body["columns"] = cut(whole, start, end)
            data = self.caller.json("POST", path, body=body, params=params)
            parts.append(read(BatchAnswer, data))
            return end

        self.limit.asked(row_count(whole), ask)
        return joined(parts)

    def many(
        self, rows: Iterable[Mapping[str, Any]], *, units: Units | None = None
    ) -> tuple[Answer[R] | ServiceError, ...]:
        """Return the answer of each row, or what is wrong with it, in order.

        For what columns cannot hold: readings, sections, whole jobs. Such an answer leaves out what
        is the same in all of them: ``basis`` is empty, and what to measure next names the fields
        alone.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        path, params = f"{self.path}/batch", options(units)
        found: list[Answer[R] | ServiceError] = []
        asked = [self.request(row) for row in rows]

        def ask(start: int, end: int) -> int:
            body = next(line_chunks(asked[start:end], self.limit.most))
            lines, request_id = self.caller.lines(path, body, params)
            if len(lines) != (sent := body.count(b"\n")):
                raise UnreadableAnswer(f"{sent} rows were sent, {len(lines)} came back")
            answered = reached(lines)
            if not answered:
                detail = "the service had no time for a single row"
                raise from_problem(503, {"detail": detail}, request_id=request_id)
            found.extend(self._line(line, request_id) for line in answered)
            return len(found)

        self.limit.asked(len(asked), ask)
        return tuple(found)

    def _line(self, line: Any, request_id: str) -> Answer[R] | ServiceError:
        if isinstance(line, Mapping) and line.get("status") == REFUSED:
            problem = line.get("problem", {})
            return from_problem(int(problem.get("status", 500)), problem, request_id=request_id)
        return replace(read_answer(self.RESULT, in_full(line), request_id), raw=line)


def options(units: Units | None, trace: bool = False) -> dict[str, str]:
    """Return the options that shape an answer, as query parameters."""
    given = {"units": units, "trace": "true" if trace else None}
    return {name: value for name, value in given.items() if value is not None}
