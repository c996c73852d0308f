"""What several works of a composite change together, in the place of what each changes alone."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from ringland_service.core.declare import Step
from ringland_service.engine.known import Known
from ringland_service.engine.response import Response

# Result of a part to what stands in its place, and to the ``part.result`` that it is.
Joint = Mapping[str, tuple[Known, str]]


def joint_results(step: Step, parts: Mapping[str, Response], known: Mapping[str, Known]) -> Joint:
    """Return the results of a part that give way to those of several works together."""
    return {
        name: (known[source], source)
        for name, source in step.gives_way.items()
        if source in known and getattr(parts[step.part].outputs, name) is not None
    }


def joint(parts: Mapping[str, Response], name: str, given_way: Joint) -> Response:
    """Return a part's answer, with what several works change together in its place."""
    part = parts[name]
    if not given_way:
        return part
    outputs = replace(part.outputs, **{n: one.value for n, (one, _) in given_way.items()})
    of_each: dict[str, Any] = {}
    for about in ("u", "left_out", "intervals"):
        own = getattr(part, about).items()
        of_each[about] = {n: one for n, one in own if n not in given_way}
        for n, (_, source) in given_way.items():
            of, result = source.split(".")
            theirs = getattr(parts[of], about)
            if result in theirs:
                of_each[about][n] = theirs[result]
    return replace(part, outputs=outputs, **of_each)
