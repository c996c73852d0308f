"""C32: width and place of a valve's contact on its seat, and the cuts that narrow it."""

from ringland_service.core.calculations.head import _seat_checks as judged
from ringland_service.core.calculations.head._seat_cuts import cuts, needed
from ringland_service.core.calculations.head._seat_fields import Inputs, Outputs
from ringland_service.core.declare import Calculation
from ringland_service.core.formulas import valves


def compute(inputs: Inputs) -> Outputs:
    """Work out the contact's width and place, and what the cutters do to it."""
    i = inputs
    outer, inner = i.seat_outer_diameter_mm, i.seat_inner_diameter_mm
    mean, head = (outer + inner) / 2, i.valve_head_diameter_mm
    inside = None if head is None else valves.inside_rim_mm(head, outer)
    return Outputs(
        width_mm=valves.width_along_face_mm(outer, inner, i.seat_angle_deg),
        contact_mean_diameter_mm=mean,
        outer_edge_inside_valve_rim_mm=inside,
        contact_place=None
        if head is None or i.face_width_mm is None
        else valves.place_on_face(head, mean, i.face_width_mm, i.seat_angle_deg),
        **cuts(i, inside),
        **needed(i),
    )


CALCULATION = Calculation(
    name="valve-seat",
    number="C32",
    stage="head",
    title="Valve seat width and narrowing cuts",
    summary="Width of the contact along its face and its place on the valve, what a feed of the "
    "top and the bottom cutter does to it, and the feed that a wanted contact takes. Feed in small "
    "bites; lapping does not cure width; titanium and coated valves are neither lapped nor "
    "refaced. After any valve work a leak test: solvent in the port and no drip for 30 to 60 s, or "
    "a vacuum on the port that holds (common practice).",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=judged.CHECKS,
    rules=judged.RULES,
    notices=judged.NOTICES,
    cautions=("measuring", "seat_cutting", "exhaust_valves"),
)
