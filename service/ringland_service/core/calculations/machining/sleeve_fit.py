"""C44: interference of a sleeve in its cylinder, and how hot the cylinder must be to take it."""

from collections.abc import Callable
from dataclasses import replace

from ringland_service.core.declare import (
    Calculation,
    Check,
    Figure,
    Notice,
    Rule,
    choice,
    kinds,
    quantity,
    record,
    result,
    usual,
)
from ringland_service.core.engines.materials import MATERIALS
from ringland_service.core.formulas import sleeves
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.metrology.limits import LIMITS, Limit
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import machining as sizes
from ringland_service.core.tables.sources import NO_SOURCE, cited

DIFFERENCE = "difference of two diameters"
EXPANSION = cited("{machinerys_handbook_expansion}")
TABLE = cited("table of materials: {machinerys_handbook_coefficients}; {material_tables}")
HELD_BY = {
    "fit_alone": "no flange and nothing clamps it: the fit alone holds the sleeve",
    "flange_or_head": "a flange, or the head clamped on it, holds the sleeve",
}
MOST_INTERFERENCE_MM = 0.3
USUAL_SHARE = (0.0012, 0.0020)


@record
class Inputs:
    """Sleeve and cylinder at 20 °C, what they are made of, and how the sleeve goes in."""

    cylinder_bore_mm: Number = quantity(
        sizes.SLEEVE_FIT, "bore of the cylinder that takes the sleeve, at 20 °C", example=75.99
    )
    sleeve_od_mm: Number = quantity(sizes.SLEEVE_FIT, "outside of the sleeve, at 20 °C")
    drop_in_clearance_mm: Number = quantity(
        sizes.DROP_IN,
        "room wanted around the sleeve while it drops in, diametral",
        default=usual(0.05),
    )
    held_by: str | None = choice(
        "what holds the sleeve in place", HELD_BY, example="fit_alone", default=None
    )
    sleeve_temperature_c: Number = quantity(
        sizes.SLEEVE_TEMPERATURE,
        "temperature of the sleeve as it goes in; below 0 when chilled",
        default=20.0,
    )
    running_temperature_c: Number | None = quantity(
        sizes.RUNNING_TEMPERATURE,
        "temperature of sleeve and jacket when running, taken as one",
        default=None,
    )
    cylinder_alpha_per_k: Number | None = quantity(
        quantities.ALPHA,
        "expansion of the cylinder; aluminium where not given",
        example=2.2e-5,
        default=None,
    )
    sleeve_alpha_per_k: Number | None = quantity(
        quantities.ALPHA, "expansion of the sleeve; grey iron where not given", default=None
    )


@record
class Outputs:
    """The fit cold, the heat to put it together, and what is left of it running."""

    interference_mm: Number = result(
        "interference at 20 °C, diametral",
        kind=kinds.LENGTH,
        decimals=3,
        formula="sleeve_od_mm - cylinder_bore_mm",
        source=DIFFERENCE,
    )
    interference_share: Number = result(
        "interference as a share of the bore",
        decimals=5,
        formula="interference_mm / cylinder_bore_mm",
        source=NO_SOURCE,
    )
    heat_cylinder_to_c: Number = result(
        "temperature at which the cylinder drops over the sleeve; it cools while it is handled, "
        "so add 20 to 40 K",
        kind=kinds.TEMPERATURE,
        decimals=0,
        formula="20 + (interference_mm + drop_in_clearance_mm"
        " + sleeve_alpha_used_per_k * sleeve_od_mm * (sleeve_temperature_c - 20))"
        " / (cylinder_alpha_used_per_k * cylinder_bore_mm)",
        source=EXPANSION,
    )
    cylinder_alpha_used_per_k: Number = result(
        "expansion of the cylinder that was used",
        kind=kinds.EXPANSION,
        decimals=7,
        basis="as given, else of an aluminium cylinder",
        source=TABLE,
    )
    sleeve_alpha_used_per_k: Number = result(
        "expansion of the sleeve that was used",
        kind=kinds.EXPANSION,
        decimals=7,
        basis="as given, else of grey iron",
        source=TABLE,
    )
    interference_left_mm: Number | None = result(
        "interference left at the running temperature, diametral; negative: the sleeve is loose",
        kind=kinds.LENGTH,
        decimals=4,
        formula="interference_mm - (cylinder_alpha_used_per_k * cylinder_bore_mm"
        " - sleeve_alpha_used_per_k * sleeve_od_mm) * (running_temperature_c - 20)",
        source=EXPANSION,
        default=None,
    )
    interference_wanted_mm: Number | None = result(
        "least interference for a sleeve that its fit alone holds: what running takes off, and "
        "what must be left",
        kind=kinds.LENGTH,
        decimals=4,
        basis="(cylinder_alpha_used − sleeve_alpha_used) · cylinder_bore · (running_temperature "
        "− 20) + 0.010 mm to be left",
        source=f"linear expansion; what must be left: {NO_SOURCE}",
        common_practice=True,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the fit cold, going in and running."""
    bore, od = inputs.cylinder_bore_mm, inputs.sleeve_od_mm
    cylinder, sleeve = _alphas_per_k(inputs)
    running = inputs.running_temperature_c
    left = LIMITS["sleeve.left"].low or 0.0
    interference = sleeves.interference_mm(od, bore)
    return Outputs(
        interference_mm=interference,
        interference_share=interference / bore,
        heat_cylinder_to_c=sleeves.heat_cylinder_to_c(
            bore, od, inputs.drop_in_clearance_mm, inputs.sleeve_temperature_c, cylinder, sleeve
        ),
        cylinder_alpha_used_per_k=cylinder,
        sleeve_alpha_used_per_k=sleeve,
        interference_left_mm=None
        if running is None
        else sleeves.interference_left_mm(bore, od, running, cylinder, sleeve),
        interference_wanted_mm=None
        if running is None
        else sleeves.interference_wanted_mm(bore, running, cylinder, sleeve, left),
    )


def _alphas_per_k(inputs: Inputs) -> tuple[Number, Number]:
    cylinder, sleeve = inputs.cylinder_alpha_per_k, inputs.sleeve_alpha_per_k
    return (
        MATERIALS["aluminium_cylinder"].alpha if cylinder is None else cylinder,
        MATERIALS["grey_iron"].alpha if sleeve is None else sleeve,
    )


def _fit(inputs: Inputs, outputs: Outputs) -> Limit | None:
    if inputs.held_by is None:
        return None
    row = LIMITS[f"sleeve.{inputs.held_by}"]
    limit = row.limit(inputs.cylinder_bore_mm)
    if inputs.held_by == "fit_alone" and outputs.interference_wanted_mm is not None:
        source = f"what running takes off + 0.010 mm to be left; {NO_SOURCE}"
        return replace(limit, low=outputs.interference_wanted_mm, high=None, source=source)
    return limit


def _unusual(side: int) -> Callable[[object, Outputs], object]:
    if side == 0:
        return lambda _, o: o.interference_share < USUAL_SHARE[0]
    return lambda _, o: o.interference_share > USUAL_SHARE[1]


CALCULATION = Calculation(
    name="sleeve-fit",
    number="C44",
    stage="decision",
    title="Sleeve interference and heating",
    summary="Interference of a sleeve cold and running, and how hot the cylinder must be to take "
    "it. A jacket hotter than its sleeve holds it worse than shown. The sleeve closes in when "
    "pressed: bore it last, cut the deck after. Seat the flange; line up the port windows of a "
    "two-stroke before it grips.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    checks=(
        Check(
            "sleeve_interference",
            "interference_mm",
            "interference of the sleeve at 20 °C",
            "measure bore and sleeve with the gauge set in the same micrometer, both at 20 °C",
            _fit,
        ),
        Check(
            "sleeve_heating",
            "heat_cylinder_to_c",
            "temperature of the cylinder",
            "chill the sleeve, or ask the maker how hot the cylinder may get",
            lambda i, o: LIMITS["sleeve.heating"].limit(),
        ),
        Check(
            "sleeve_interference_left",
            "interference_left_mm",
            "interference left when running",
            "measure bore and sleeve again at 20 °C, and the jacket's temperature when running",
            lambda i, o: LIMITS["sleeve.left"].limit(),
        ),
    ),
    rules=(
        Rule(
            ("sleeve_od_mm", "cylinder_bore_mm"),
            lambda i: at_most(i.sleeve_od_mm, i.cylinder_bore_mm),
            "the sleeve is not larger than its bore: it has no interference",
            "a sleeve larger than the bore; both are diameters at 20 °C",
        ),
        Rule(
            ("sleeve_od_mm", "cylinder_bore_mm"),
            lambda i: beyond(i.sleeve_od_mm, i.cylinder_bore_mm + MOST_INTERFERENCE_MM),
            "an interference above 0.3 mm cracks the cylinder or never goes in",
            "at most 0.3 mm on the diameter; check both sizes and their units",
        ),
    ),
    notices=(
        Notice(
            "interference_small",
            "interference_share",
            _unusual(0),
            "under 0.0012 of the bore: an aluminium cylinder may let go of it when hot",
        ),
        Notice(
            "interference_large",
            "interference_share",
            _unusual(1),
            "above 0.0020 of the bore: the cylinder may crack, and the sleeve closes in",
        ),
        Notice(
            "holding_not_told",
            "held_by",
            lambda i, _: i.held_by is None,
            "without knowing what holds the sleeve no common-practice limit judges the fit; the "
            "sleeve maker's wins anyway",
        ),
        Notice(
            "expansion_assumed",
            "cylinder_alpha_used_per_k",
            lambda i, _: i.cylinder_alpha_per_k is None or i.sleeve_alpha_per_k is None,
            "worked out for an iron sleeve in an aluminium cylinder where no expansion was given",
        ),
        Notice(
            "running_fit_not_known",
            "running_temperature_c",
            lambda i, _: i.running_temperature_c is None,
            "without the running temperature nobody can say whether the sleeve stays tight",
        ),
        Notice(
            "heat_lost_in_handling",
            "heat_cylinder_to_c",
            lambda i, _: True,
            "the cylinder cools while it is carried: allow 20 to 40 K more",
        ),
    ),
    cautions=("measuring", "sleeve_heating"),
    figures=(Figure("drop_in_clearance_mm"),),
)
