"""JSON as the type checker sees it: what may stand in a request, an answer or the document."""

from typing import TypeAlias

Json: TypeAlias = "dict[str, Json] | list[Json] | str | float | int | bool | None"
JsonObject: TypeAlias = dict[str, Json]
