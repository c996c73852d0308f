"""Every question at hand: demo files, examples of the document, reference cases, whole cards."""

import json
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from case_requests import request_of
from reference_cases import cases

from cards import JOBS, ORDERS
from ringland_service.api.openapi.document import document
from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Operation

DEMO = Path(__file__).parents[2] / "demo_data"


@dataclass(frozen=True)
class Asked:
    """A request to one calculation, and where it comes from."""

    calculation: str
    origin: str
    body: Any

    def __str__(self) -> str:
        return f"{self.calculation}: {self.origin}"

    @property
    def declaration(self) -> Operation:
        """The calculation asked."""
        return BY_NAME[self.calculation]

    @property
    def path(self) -> str:
        """The route of the calculation."""
        return f"/v1/{self.calculation}"


def demo_files() -> list[Asked]:
    """Return every file of the demo data: whole jobs, and their stages."""
    return [
        Asked("job-card", str(path.relative_to(DEMO)), json.loads(path.read_text("utf-8")))
        for path in sorted(DEMO.rglob("*.json"))
    ]


def examples() -> list[Asked]:
    """Return the example of every POST of the document."""
    found = []
    for path, item in document()["paths"].items():
        name = path.removeprefix("/v1/")
        if name in BY_NAME and "post" in item:
            content = item["post"]["requestBody"]["content"]["application/json"]
            body = content["example"]
            found.append(Asked(name, "example of the document", body))
    return found


def reference_cases() -> list[Asked]:
    """Return every reference case that is answered and has a route of its own."""
    return [
        Asked(case.calculation, case.name, request_of(case))
        for case in cases()
        if case.calculation in BY_NAME and not case.refused
    ]


def whole_cards() -> list[Asked]:
    """Return the cards that the tests of the pages show: hostile texts among them."""
    jobs = [Asked("job-card", f"card {name}", body) for name, body in JOBS.items()]
    return jobs + [Asked("order-card", f"order {name}", body) for name, body in ORDERS.items()]


@cache
def every() -> tuple[Asked, ...]:
    """Return all of them."""
    return (*demo_files(), *examples(), *reference_cases(), *whole_cards())
