"""C03: lengths of a bore and of the part in it brought to 20 °C, and the clearance."""

import dataclasses

from ringland_service.core.calculations.general import _warm_parts
from ringland_service.core.declare import Calculation, choice, kinds, quantity, record, result
from ringland_service.core.engines.bore_expansion import expansion_of_bore
from ringland_service.core.engines.materials import (
    BORE_KINDS,
    MATERIAL_CHOICES,
    alpha_of_bore_per_k,
    alpha_of_material_per_k,
)
from ringland_service.core.formulas import air, fits
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import cited

EXPANSION = cited("{iso_1}; {machinerys_handbook_expansion}")
AT_20 = "length / (1 + expansion coefficient × (temperature − 20 °C))"


@record
class Inputs:
    """One part as measured, its temperature and what it is made of; the part in it likewise."""

    bore_mm: Number = quantity(lengths.LENGTH, "bore, or another length or diameter, as measured")
    bore_temperature_c: Number = quantity(
        quantities.PART_TEMPERATURE, "temperature of the part with the bore"
    )
    bore_alpha_per_k: Number | None = quantity(
        quantities.ALPHA, "expansion coefficient of the bore; wins over its kind", default=None
    )
    bore_kind: str | None = choice(
        "kind of bore; gives the expansion coefficient where none is given",
        BORE_KINDS,
        example="iron",
        default=None,
    )
    piston_mm: Number | None = quantity(
        lengths.LENGTH,
        "piston, or another part in that bore, as measured",
        example=71.982,
        default=None,
    )
    piston_temperature_c: Number | None = quantity(
        quantities.PART_TEMPERATURE, "temperature of the piston", example=20.5, default=None
    )
    piston_alpha_per_k: Number | None = quantity(
        quantities.ALPHA,
        "expansion coefficient of the piston; wins over its material",
        example=2.05e-5,
        default=None,
    )
    piston_material: str | None = choice(
        "material of the piston; gives the expansion coefficient where none is given",
        MATERIAL_CHOICES,
        example="piston_cast_eutectic",
        default=None,
    )


@record
class Outputs:
    """Lengths at 20 °C, and the clearance as it seems and as it is."""

    bore_alpha_used_per_k: Number | None = result(
        "expansion coefficient of the bore, as used",
        kind=kinds.EXPANSION,
        digits=7,
        basis="as given, else that of the kind of bore",
        source="table of materials",
        default=None,
    )
    bore_at_20_mm: Number = result(
        "bore at 20 °C",
        kind=kinds.LENGTH,
        digits=4,
        basis=AT_20,
        source=EXPANSION,
    )
    piston_alpha_used_per_k: Number | None = result(
        "expansion coefficient of the piston, as used",
        kind=kinds.EXPANSION,
        digits=7,
        basis="as given, else that of the material",
        source="table of materials",
        default=None,
    )
    piston_at_20_mm: Number | None = result(
        "piston at 20 °C",
        kind=kinds.LENGTH,
        digits=4,
        basis=AT_20,
        source=EXPANSION,
        default=None,
    )
    apparent_clearance_mm: Number | None = result(
        "diametral clearance as it seems, temperatures left out",
        kind=kinds.LENGTH,
        digits=4,
        formula="bore_mm - piston_mm",
        source="difference of the two diameters",
        default=None,
    )
    corrected_clearance_mm: Number | None = result(
        "diametral clearance at 20 °C",
        kind=kinds.LENGTH,
        digits=4,
        formula="bore_at_20_mm - piston_at_20_mm",
        source="difference of the two diameters",
        default=None,
    )
    error_avoided_mm: Number | None = result(
        "error avoided: the clearance as it seems less that at 20 °C",
        kind=kinds.LENGTH,
        digits=4,
        formula="apparent_clearance_mm - corrected_clearance_mm",
        source="difference of the two clearances",
        default=None,
    )


@dataclasses.dataclass(frozen=True)
class Cooled:
    """A part brought to 20 °C."""

    alpha_per_k: Number | None
    length_mm: Number


def cooled(
    length_mm: Number, temperature_c: Number, given: Number | None, of_material: float | None
) -> Cooled:
    """Return a part brought to 20 °C; the coefficient given wins over that of the material."""
    alpha_per_k = of_material if given is None else given
    # Without a coefficient the part is at 20 °C, as the rules insist, and has not grown.
    known_per_k = 0.0 if alpha_per_k is None else alpha_per_k
    return Cooled(alpha_per_k, air.length_at_20c_mm(length_mm, temperature_c, known_per_k))


def compute(inputs: Inputs) -> Outputs:
    """Bring the bore to 20 °C, and the part in it where one is given."""
    bore = cooled(
        inputs.bore_mm,
        inputs.bore_temperature_c,
        inputs.bore_alpha_per_k,
        alpha_of_bore_per_k(inputs.bore_kind),
    )
    found = Outputs(
        bore_alpha_used_per_k=bore.alpha_per_k,
        bore_at_20_mm=bore.length_mm,
    )
    if inputs.piston_mm is None or inputs.piston_temperature_c is None:
        return found
    piston = cooled(
        inputs.piston_mm,
        inputs.piston_temperature_c,
        inputs.piston_alpha_per_k,
        alpha_of_material_per_k(inputs.piston_material),
    )
    apparent_mm = fits.clearance_mm(inputs.bore_mm, inputs.piston_mm)
    corrected_mm = fits.clearance_mm(bore.length_mm, piston.length_mm)
    return dataclasses.replace(
        found,
        piston_alpha_used_per_k=piston.alpha_per_k,
        piston_at_20_mm=piston.length_mm,
        apparent_clearance_mm=apparent_mm,
        corrected_clearance_mm=corrected_mm,
        error_avoided_mm=apparent_mm - corrected_mm,
    )


CALCULATION = Calculation(
    name="length-at-20c",
    number="C03",
    stage="general",
    title="Length at 20 °C",
    summary="A bore, and the piston in it, brought to 20 °C; the clearance as it seems and as "
    "it is.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    figures=(
        expansion_of_bore(
            ("bore_alpha_used_per_k", "bore_at_20_mm", "corrected_clearance_mm"),
            when=lambda i: True,
        ),
    ),
    rules=_warm_parts.RULES,
    notices=_warm_parts.NOTICES,
)
