"""The uncertainty of a card against a Monte Carlo of its components, within its noise."""

import json
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from bench_jobs import CARD, bench_job
from direct_propagation import direct
from monte_carlo import sampled, spreads, straight
from whole_chain import chain_of

from ringland_service.api.reading.request import parsed
from ringland_service.core.declare import Composite

DEMO = Path(__file__).parents[2] / "demo_data"
JOBS: dict[str, Any] = {
    path.stem: json.loads(path.read_text("utf-8")) for path in sorted(DEMO.glob("*.json"))
}
JOBS |= {f"invented {seed}": bench_job(seed) for seed in range(7)}
# Of some hundred results that hang together none strays farther by chance.
NOISE = 4.0


@pytest.mark.long
@pytest.mark.parametrize("body", JOBS.values(), ids=JOBS)
def test_draws_spread_as_far_as_stated(body: Any) -> None:
    """Of the results that are straight lines over what their components move."""
    assert isinstance(CARD, Composite)
    chain = chain_of(CARD, parsed(CARD, body))
    found = direct(chain)
    parts = sampled(chain, found)
    drawn = spreads(chain, parts, seed=7)
    compared = 0
    for name in straight(chain, found):
        part, result = name.split(".")
        source = chain.found.joint.get(part, {}).get(result)
        if part not in parts or source is not None:
            continue
        compared += 1
        u, spread = chain.found.parts[part].u[result], drawn[name]
        off = np.abs(spread.deviation - u) / (spread.noise + found[name].dust)
        assert np.all(off < NOISE), (name, off, u, spread)
    assert compared > 15
