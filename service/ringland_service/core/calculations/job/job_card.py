"""The job card: whatever is known of a job, worked out as far as it goes."""

from typing import Any

from ringland_service.core.calculations.decision import cylinder_steps as cylinder
from ringland_service.core.calculations.engine_tests import compression_steps as compression
from ringland_service.core.calculations.job import _assembly_steps as assembly
from ringland_service.core.calculations.job import _head_sections as head
from ringland_service.core.calculations.job import _head_steps as head_steps
from ringland_service.core.calculations.job import _sections as sections
from ringland_service.core.calculations.job import _test_sections as tests
from ringland_service.core.calculations.job import _test_steps as test_steps
from ringland_service.core.calculations.job import _work_sections as work
from ringland_service.core.calculations.job._agreements import AGREEMENTS
from ringland_service.core.declare import Composite, Derived, Known, record, section


@record
class Inputs:
    """A job: every section and every field optional."""

    about: Any = section(sections.About, "what the job is about")
    engine: Any = section(sections.Engine, "the engine as built, and as measured")
    place: Any = section(sections.Place, "where the engine was tested")
    compression: Any = section(sections.Compression, "the compression test")
    leak_down: Any = section(tests.LeakDown, "the leak-down test")
    crankcase: Any = section(tests.Crankcase, "the test of a two-stroke's crankcase")
    oil: Any = section(tests.Oil, "oil that the engine used")
    signs: Any = section(tests.Signs, "what was seen, heard or found")
    cylinder: Any = section(sections.Cylinder, "the cylinder on the bench")
    piston: Any = section(sections.Piston, "the piston on the bench, and its pin")
    rings: Any = section(sections.Rings, "the rings, new and old")
    plan: Any = section(sections.Plan, "what is meant to be done, and what is on the shelf")
    order: Any = section(work.Order, "what the order to the machinist states besides")
    squish: Any = section(head.Squish, "squish clearance, and base gaskets at hand")
    head_face: Any = section(head.HeadFace, "the head's face, and the ratio wanted")
    valve: Any = section(head.Valve, "the worst valve: guide, seat and sink")
    spring: Any = section(head.Spring, "one valve spring")
    lash: Any = section(head.Lash, "valve lash")
    cam: Any = section(head.Cam, "cam lobes, cam timing, valves to piston")
    bottom: Any = section(work.Bottom, "the rod and the crank below")
    hone: Any = section(work.Hone, "the machinist's hone")
    sleeve: Any = section(work.Sleeve, "a new sleeve")
    hot: Any = section(work.Hot, "temperatures when running")
    torque: Any = section(work.Torque, "one kind of fastener and its torque")
    fastening: Any = section(work.Fasteners, "where the fasteners of one face stand")
    clocking: Any = section(work.Clocking, "where the ring gaps go")
    fuel: Any = section(work.Fuel, "fuel and oil of a two-stroke")
    running_in: Any = section(work.RunIn, "running in")
    price: Any = section(work.Price, "prices")


def _derived(known: Known) -> Derived:
    return {**compression.last_reading(known), **cylinder.survey_readings(known)}


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
        *test_steps.TESTS,
        test_steps.DIAGNOSIS,
        head_steps.SQUISH,
        # What head work changes counts in the ratio after, which follows with the cylinder.
        *head_steps.HEAD,
        *cylinder.STEPS,
        assembly.ROD,
        *assembly.ENGINE_AFTER,
        *assembly.AFTER_DECISION,
        *assembly.ASSEMBLY,
    ),
    derive=_derived,
    derived_extremes=compression.lowest_of,
    agreements=AGREEMENTS,
    cautions=("records", "lifting"),
)
