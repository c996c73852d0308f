"""The uncertainty of every part of a card against finite differences of the whole card.

Each component of the job is moved up and down through the whole chain, and the squares of what
that does are summed (JCGM 100:2008, from memory, 5.1). Results with tied readings are left out:
those that bend under a component, where no slope is.
"""

import dataclasses
import json
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from ringland_service.api.reading.request import parsed
from ringland_service.core.calculations import BY_NAME
from ringland_service.core.declare import Composite
from ringland_service.core.metrology.propagation import STEP, Component, moved, numeric_leaves
from ringland_service.engine import scalar as single
from ringland_service.engine.composite import CompositeResponse, answer_composite
from ringland_service.engine.request import Request, stated_components

TESTS = Path(__file__).parents[1]
DEMO = TESTS.parent / "demo_data"
FILES = [*sorted(DEMO.rglob("*.json")), *sorted((TESTS / "api" / "jobs").glob("*.json"))]
CARD = BY_NAME["job-card"]
assert isinstance(CARD, Composite)
Leaves = dict[str, Any]


def leaves(found: CompositeResponse) -> Leaves:
    return {
        f"{part}.{name}": value
        for part, one in found.parts.items()
        if part not in found.joint
        for name, value in numeric_leaves(one.outputs).items()
    }


def bare_card(request: Request, told: dict[Any, Any], monkey: pytest.MonkeyPatch) -> Leaves:
    """Work the card out with the uncertainties as told, so that each verdict stays."""
    calls = iter(told["calls"])
    with monkey.context() as m:
        m.setattr(single, "doubt", lambda *_: next(calls))
        m.setattr(single, "left_out", lambda *_: {})
        m.setattr(single, "doubt_notices", lambda *_: ())
        assert isinstance(CARD, Composite)
        return leaves(answer_composite(CARD, request))


def told_by(request: Request, monkey: pytest.MonkeyPatch) -> tuple[CompositeResponse, Any]:
    calls: list[Any] = []
    real = single.uncertainty

    def noted(*given: Any) -> Any:
        calls.append(real(*given))
        return calls[-1]

    with monkey.context() as m:
        m.setattr(single, "doubt", noted)
        assert isinstance(CARD, Composite)
        return answer_composite(CARD, request), {"calls": calls}


def own_of_parts(found: CompositeResponse) -> set[str]:
    """Return the parts that uncertainty of their own, or of a usual temperature, enters."""
    return {
        part
        for part, one in found.parts.items()
        for name, _ in one.shares
        if not name[:5].isdigit()
    }


def resting_on(found: CompositeResponse, parts: set[str]) -> set[str]:
    """Return the parts, and those that anything of theirs is carried to."""
    carried = {
        part
        for part, one in found.parts.items()
        for name, _ in one.shares
        if name.split(":")[0] in parts or name.startswith("usual ")
    }
    return parts | carried


@pytest.mark.parametrize("path", FILES, ids=lambda p: f"{p.parent.name}/{p.stem}")
def test_every_part_of_a_job(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert isinstance(CARD, Composite)
    request = parsed(CARD, json.loads(path.read_text("utf-8")))
    found, told = told_by(request, monkeypatch)
    here = leaves(found)
    assert bare_card(request, told, monkeypatch).keys() == here.keys()
    squares: Leaves = dict.fromkeys(here, 0.0)
    bent: set[str] = set()
    slopes: dict[Any, tuple[Leaves, set[str]]] = {}
    for one in stated_components(request):
        if one.effects not in slopes:
            slopes[one.effects] = slope(request, one, here, told, monkeypatch)
        rises, bends = slopes[one.effects]
        bent |= bends
        for name, rise in rises.items():
            squares[name] = squares[name] + (rise * one.u) ** 2
    apart = resting_on(found, own_of_parts(found))
    compared = 0
    for name, square in squares.items():
        part, result = name.split(".")
        u = found.parts[part].u.get(result, 0.0)
        if name in bent or part in apart or not np.any(u):
            continue
        compared += 1
        # A share below the digits of the result itself is rounding of the differences.
        dust = 1e-10 * np.max(np.abs(here[name]))
        assert np.allclose(u, np.sqrt(square), rtol=1e-6, atol=dust), (name, u, np.sqrt(square))
    if stated_components(request) and "measured" in path.stem:
        assert compared >= 5


def slope(
    request: Request,
    one: Component,
    here: Leaves,
    told: Any,
    monkeypatch: pytest.MonkeyPatch,
) -> tuple[Leaves, set[str]]:
    """Return the slope of each result of the whole card under a component, and which bend."""
    step = STEP * max(effect.scale for effect in one.effects)
    up, down = (
        bare_card(
            dataclasses.replace(request, inputs=moved(request.inputs, one, way)),
            told,
            monkeypatch,
        )
        for way in (step, -step)
    )
    rises: Leaves = {}
    bends: set[str] = set()
    for name, middle in here.items():
        if name not in up or name not in down:
            bends.add(name)
            continue
        rise, bend = up[name] - down[name], up[name] + down[name] - 2.0 * middle
        if np.any((np.abs(bend) > 1e-3 * np.abs(rise)) & (np.abs(bend) > 1e-11 * np.abs(middle))):
            bends.add(name)
        rises[name] = rise / (2.0 * step)
    return rises, bends


def test_what_one_reading_does_twice_counts_once() -> None:
    """The clean-up diameter rests on one gauge's readings twice: 4.27 µm, not 7.44."""
    assert isinstance(CARD, Composite)
    job = json.loads((DEMO / "crawler_twin.json").read_text("utf-8"))
    u = answer_composite(CARD, parsed(CARD, job)).parts["clean_up"].u["clean_up_mm"]
    assert u == pytest.approx(0.0042720, rel=1e-4)
