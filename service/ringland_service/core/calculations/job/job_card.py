"""The job card: whatever is known of a job, worked out as far as it goes."""

from collections.abc import Mapping
from typing import Any

from ringland_service.core.calculations.cylinder import piston_clearance, ring_gap
from ringland_service.core.calculations.engine_tests import _compression_steps as compression
from ringland_service.core.calculations.geometry import displacement, overbore_ratio
from ringland_service.core.calculations.job._sections import (
    About,
    Compression,
    Cylinder,
    Engine,
    Piston,
    Place,
    Plan,
    Rings,
)
from ringland_service.core.declare import Composite, Step, record, section


@record
class Inputs:
    """A job: every section and every field optional."""

    about: About | None = section(About, "what the job is about")
    engine: Engine | None = section(Engine, "the engine as built, and as measured")
    place: Place | None = section(Place, "where the engine was tested")
    compression: Compression | None = section(Compression, "the compression test")
    cylinder: Cylinder | None = section(Cylinder, "the cylinder on the bench")
    piston: Piston | None = section(Piston, "the piston on the bench")
    rings: Rings | None = section(Rings, "the rings, new and old")
    plan: Plan | None = section(Plan, "what is meant to be done")


def _machining(known: Mapping[str, Any]) -> bool:
    return "new_bore_mm" in known


CALCULATION = Composite(
    name="job-card",
    number="the whole job",
    stage="job",
    title="Job card",
    summary="The whole job in one call, from whatever is known so far, and what to measure next.",
    inputs=Inputs,
    steps=(
        compression.RATIO,
        *compression.EXPECTATION,
        *compression.GRADING,
        Step(
            part="displacement",
            calculation=displacement.CALCULATION,
            purpose="displacement, before and after machining",
        ),
        Step(
            part="overbore_ratio",
            calculation=overbore_ratio.CALCULATION,
            purpose="compression ratio after machining, and the gasket's room",
            when=_machining,
        ),
        Step(
            part="piston_clearance",
            calculation=piston_clearance.CALCULATION,
            purpose="piston clearance, new or worn",
        ),
        Step(
            part="ring_gap",
            calculation=ring_gap.CALCULATION,
            purpose="ring end gaps: wanted, to file, and what wear added",
            sources={"bore_mm": ("gap_bore_mm", "new_bore_mm", "unworn_bore_mm")},
        ),
    ),
    derive=compression.last_reading,
    cautions=("records",),
)
