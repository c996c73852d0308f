"""What a length at 20 °C is worked out from."""

from ringland_service.core.declare import choice, quantity, record
from ringland_service.core.engines.materials import BORE_KINDS, MATERIAL_CHOICES
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths


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
    piston_size_mm: Number | None = quantity(
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
