"""What to do with a cylinder: its measurements judged, each way asked after, one taken."""

from ringland_service.core.calculations.decision import cylinder_fields as fields
from ringland_service.core.calculations.decision.agreements import AGREEMENTS
from ringland_service.core.calculations.decision.cylinder_steps import STEPS, survey_readings
from ringland_service.core.calculations.decision.repair_options import VERBS
from ringland_service.core.declare import Composite, partial_record

# A worn cylinder's example; a new fit would contradict it.
UNSAID = (
    "bore_largest_mm",
    "bore_smallest_mm",
    "bore_alpha_per_k",
    "piston_alpha_per_k",
    "worn_pin_axis_mm",
    "worn_thrust_axis_mm",
    "hone_removal_mm",
    "clearance_target_mm",
    "leak_grade",
    "least_score",
    "least_lead",
    "gasket_area_mm2",
    "new_deck_mm",
    "new_gasket_bore_mm",
    "new_gasket_thickness_mm",
    "size_uncertainty_mm",
)
Inputs = partial_record(
    "Inputs",
    "What is known of the cylinder: every field optional.",
    *fields.GEOMETRY,
    *fields.CYLINDER,
    *fields.PISTON,
    *fields.OLD_AND_NEW_RINGS,
    *fields.MACHINING,
    *fields.TESTS,
    without_example=UNSAID,
)

CALCULATION = Composite(
    name="cylinder-decision",
    number="section D",
    stage="decision",
    title="Decision for the cylinder",
    summary=f"{', '.join(VERBS[:-1]).capitalize()} or {VERBS[-1]}: the first way that stands, why "
    "each other way falls out, with its numbers, and what to measure where it is open. A plated, "
    "chromed or bare silicon bore is never sent for boring; an unknown bore gets no machining "
    "decision.",
    inputs=Inputs,
    steps=STEPS,
    derive=survey_readings,
    agreements=AGREEMENTS,
    cautions=("measuring", "boring_and_honing", "records", "chemical_smear_removal"),
)
