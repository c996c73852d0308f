"""The uncertainty of every result of a card against direct propagation of the job's components.

Left out are the results of tied readings: those that bend where they stand, so that they have no
slope; and where an extreme stands, which is no number with an uncertainty.
"""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from bench_jobs import CARD, bench_job
from direct_propagation import Direct, direct
from whole_chain import Chain, chain_of

from between_tally import Tally
from ringland_service.api.reading.request import parsed
from ringland_service.core.declare import Composite
from ringland_service.engine import composite as engine
from ringland_service.engine.carried import of_results

TESTS = Path(__file__).parents[1]
DEMO = TESTS.parent / "demo_data"
# The last stage of a job of the demo data is the whole job.
FILES = [*sorted((DEMO / "stages").rglob("*.json")), *sorted((TESTS / "api/jobs").glob("*.json"))]
# Invented jobs, by seed; all but the first few are for the long run.
QUICK, JOBS = 10, 50
SEEDS = [
    seed if seed < QUICK else pytest.param(seed, marks=pytest.mark.long) for seed in range(JOBS)
]
SAME = 1e-6
RELATION = "uncertainty through the parts"


def chain(body: Any) -> Chain:
    assert isinstance(CARD, Composite)
    return chain_of(CARD, parsed(CARD, body))


def read(path: Path) -> Any:
    return json.loads(path.read_text("utf-8"))


def on_card(one: Chain, found: dict[str, Direct]) -> Iterator[tuple[str, Any, Direct]]:
    """Yield each result that has an uncertainty: its name, u on the card, and the direct one.

    Where several works change a result together, the card shows that of all of them.
    """
    for name, of in found.items():
        part, result = name.split(".")
        u = one.found.parts[part].u.get(result, 0.0)
        source = one.found.joint.get(part, {}).get(result)
        of_all = of if source is None else found[".".join(map(str, source))]
        if np.any(u > of_all.dust) or np.any(of_all.u > of_all.dust):
            yield name, u, of_all


def apart(u: Any, of: Direct) -> float:
    """Return by how much two uncertainties differ, less rounding, against the direct one."""
    beyond = np.maximum(np.abs(u - of.u) - of.dust, 0.0)
    return float(np.max(beyond / np.maximum(of.u, of.dust)))


def compare(one: Chain, tally: Tally, label: str) -> int:
    """Insist that all agree, and return how many are left out."""
    found = direct(one)
    left = 0
    for name, u, of in on_card(one, found):
        if of.bent:
            left += 1
            continue
        tally.add(apart(u, of), f"{label} {name}")
        assert apart(u, of) <= SAME, (name, u, of)
    return left


def insist_faithful(one: Chain) -> None:
    """The chain, run without any move, gives the card's own results."""
    values = one.run()
    for part, working in one.last.items():
        assert working.answer is not None
        for name in working.results:
            assert values[f"{part}.{name}"] == getattr(working.answer.outputs, name), name


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_every_part_of_a_job(path: Path, tally: Tally) -> None:
    one = chain(read(path))
    insist_faithful(one)
    left = compare(one, tally, path.stem)
    if "measured" in path.stem:
        assert tally.cases > 30
        assert left < tally.cases / 5


@pytest.mark.parametrize("seed", SEEDS)
def test_every_part_of_an_invented_job(seed: int, tally: Tally) -> None:
    """Read with instruments that the parts share."""
    one = chain(bench_job(seed))
    insist_faithful(one)
    left = compare(one, tally, f"job {seed}")
    assert tally.cases > 30
    assert left < tally.cases / 5


def test_what_one_reading_does_twice_counts_once() -> None:
    """The clean-up diameter rests on one gauge's readings twice: 4.27 µm, not 7.44."""
    one = chain(read(DEMO / "crawler_twin.json"))
    u = one.found.parts["clean_up"].u["clean_up_mm"]
    assert u == pytest.approx(0.0042720, rel=1e-4)
    assert u == pytest.approx(float(direct(one)["clean_up.clean_up_mm"].u), rel=SAME)


def test_results_taken_for_independent_readings_do_not_agree(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """What two results of a part share is shared: parted by result, they state 7.44 µm."""

    def parted(*given: Any) -> Any:
        return {
            result: {f"{result}: {component}": places for component, places in carried.items()}
            for result, carried in of_results(*given).items()
        }

    monkeypatch.setattr(engine, "of_results", parted)
    one = chain(read(DEMO / "crawler_twin.json"))
    off = {name for name, u, of in on_card(one, direct(one)) if not of.bent and apart(u, of) > SAME}
    assert one.found.parts["clean_up"].u["clean_up_mm"] == pytest.approx(0.00744, abs=5e-6)
    assert "clean_up.clean_up_mm" in off
