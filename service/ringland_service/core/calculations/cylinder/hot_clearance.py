"""C26: clearance of a piston when hot, to compare kinds of cylinder; never a verdict."""

from ringland_service.core.declare import (
    Calculation,
    Figure,
    Notice,
    Rule,
    choice,
    kinds,
    quantity,
    record,
    result,
)
from ringland_service.core.engines import condition
from ringland_service.core.engines.bore_expansion import expansion_of_bore, no_standard
from ringland_service.core.engines.materials import (
    MATERIAL_CHOICES,
    MATERIALS,
    UNKNOWN,
    alpha_of_bore_per_k,
    alpha_of_material_per_k,
    material_of_bore,
)
from ringland_service.core.formulas import bore, fits
from ringland_service.core.metrology.conformity import beyond
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.quantities import lengths
from ringland_service.core.tables.sources import NO_SOURCE, cited

EXPANSION = cited("{machinerys_handbook_expansion}")
IRON, SLEEVE = "iron", "iron_sleeve_in_aluminium"
ALUMINIUM = "plated_aluminium"
MOST_ROOM_MM, MOST_INTERFERENCE_MM = 3.0, 0.05
HOT_C = 60.0


def _of_kind_per_k(bore_kind: str) -> float:
    """Return the table's expansion of a kind of bore that stands in it [1/K]."""
    material = material_of_bore(bore_kind)
    if material is None:
        raise LookupError(f"no material of the table is that of a bore of kind {bore_kind}")
    return material.alpha


def _basis(bore_kind: str) -> str:
    """Return how a clearance is worked out with the table's expansion of a kind of bore."""
    alpha = _of_kind_per_k(bore_kind) * 1e6
    return (
        f"bore · (1 + {alpha:g} · 10⁻⁶ · (its temperature − 20)) less the hot piston, "
        "the expansion from the table of materials"
    )


@record
class Inputs:
    """Both sizes at 20 °C, both temperatures when running, and what expands."""

    bore_mm: Number = quantity(lengths.BORE, "bore at 20 °C", example=68.496)
    piston_mm: Number = quantity(
        lengths.PISTON,
        "piston at 20 °C across the thrust axis, at the maker's height on the skirt",
        example=68.461,
    )
    bore_hot_c: Number = quantity(
        quantities.RUNNING_TEMPERATURE, "temperature of the cylinder when running"
    )
    piston_hot_c: Number = quantity(
        quantities.RUNNING_TEMPERATURE,
        "temperature of the piston skirt when running",
        example=110.0,
    )
    piston_material: str | None = choice(
        "alloy of the piston, for its expansion",
        MATERIAL_CHOICES,
        example="piston_cast_eutectic",
        default=None,
    )
    piston_alpha_per_k: Number | None = quantity(
        quantities.ALPHA,
        "expansion of the piston; wins over its alloy",
        example=1.95e-5,
        default=None,
    )
    bore_kind: str = choice("kind of bore", condition.BORE_KIND, example=SLEEVE, default=UNKNOWN)
    bore_alpha_per_k: Number | None = quantity(
        quantities.ALPHA,
        "effective expansion of the bore; wins over its kind",
        example=1.5e-5,
        default=None,
    )


@record
class Outputs:
    """The clearance cold, hot in this bore, and hot were the bore of another kind."""

    cold_clearance_mm: Number = result(
        "clearance at 20 °C, diametral",
        kind=kinds.LENGTH,
        digits=3,
        formula="bore_mm - piston_mm",
        source="difference of two diameters",
    )
    hot_piston_mm: Number = result(
        "piston skirt when running",
        kind=kinds.LENGTH,
        digits=3,
        basis="piston · (1 + its expansion · (its temperature − 20)); expansion as given, else of "
        "the alloy",
        source=EXPANSION,
    )
    hot_clearance_all_iron_mm: Number = result(
        "clearance when running, were the cylinder all iron",
        kind=kinds.LENGTH,
        digits=3,
        basis=_basis(IRON),
        source=EXPANSION,
    )
    hot_clearance_sleeve_in_aluminium_mm: Number = result(
        "clearance when running, were it an iron sleeve in aluminium",
        kind=kinds.LENGTH,
        digits=3,
        basis=_basis(SLEEVE),
        source=NO_SOURCE,
    )
    hot_clearance_plated_aluminium_mm: Number = result(
        "clearance when running, were it aluminium: plated, chromed or bare",
        kind=kinds.LENGTH,
        digits=3,
        basis=_basis(ALUMINIUM),
        source=EXPANSION,
    )
    hot_clearance_mm: Number | None = result(
        "clearance when running in this bore",
        kind=kinds.LENGTH,
        digits=3,
        basis="bore · (1 + its expansion · (its temperature − 20)) less the hot piston; expansion "
        "as given, else of the kind of bore",
        source=EXPANSION,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Let both parts grow, the bore by each kind of cylinder in turn."""
    own = inputs.bore_alpha_per_k
    if own is None:
        own = alpha_of_bore_per_k(inputs.bore_kind)
    return Outputs(
        cold_clearance_mm=fits.clearance_mm(inputs.bore_mm, inputs.piston_mm),
        hot_piston_mm=bore.hot_size_mm(
            inputs.piston_mm, inputs.piston_hot_c, _piston_alpha_per_k(inputs)
        ),
        hot_clearance_all_iron_mm=_hot_mm(inputs, _of_kind_per_k(IRON)),
        hot_clearance_sleeve_in_aluminium_mm=_hot_mm(inputs, _of_kind_per_k(SLEEVE)),
        hot_clearance_plated_aluminium_mm=_hot_mm(inputs, _of_kind_per_k(ALUMINIUM)),
        hot_clearance_mm=None if own is None else _hot_mm(inputs, own),
    )


def _piston_alpha_per_k(inputs: Inputs) -> Number:
    """Return the expansion of the piston, as given, else of its alloy [1/K]."""
    if inputs.piston_alpha_per_k is not None:
        return inputs.piston_alpha_per_k
    of_alloy = alpha_of_material_per_k(inputs.piston_material)
    return MATERIALS["piston_cast_eutectic"].alpha if of_alloy is None else of_alloy


def _hot_mm(inputs: Inputs, bore_alpha_per_k: Number) -> Number:
    return bore.hot_clearance_mm(
        inputs.bore_mm,
        inputs.bore_hot_c,
        bore_alpha_per_k,
        inputs.piston_mm,
        inputs.piston_hot_c,
        _piston_alpha_per_k(inputs),
    )


RULES = (
    Rule(
        ("piston_mm", "bore_mm"),
        lambda i: beyond(i.piston_mm, i.bore_mm + MOST_INTERFERENCE_MM),
        "the piston is more than 0.05 mm larger than the bore",
        "a piston that goes into this bore; check both sizes and their units",
    ),
    Rule(
        ("piston_mm", "bore_mm"),
        lambda i: beyond(i.bore_mm, i.piston_mm + MOST_ROOM_MM),
        "the piston is more than 3 mm smaller than the bore",
        "the skirt across the thrust axis at the maker's height, not the crown; check the units",
    ),
)

NOTICES = (
    Notice(
        "for_comparison_only",
        "hot_clearance_mm",
        lambda _, __: True,
        "for comparison only: the temperatures are guesses, and skirt flex, ovality and struts "
        "make the bare figure look worse than the fit; the maker's cold clearance decides",
    ),
    Notice(
        "bore_not_known",
        "bore_kind",
        lambda i, _: i.bore_alpha_per_k is None and i.bore_kind == UNKNOWN,
        "neither the kind of bore nor its expansion is given: the three kinds are shown side by "
        "side",
    ),
    Notice(
        "piston_alloy_assumed",
        "piston_material",
        lambda i, _: i.piston_alpha_per_k is None and i.piston_material is None,
        "neither the piston's alloy nor its expansion is given: eutectic cast alloy is taken",
    ),
    Notice(
        "sleeve_is_neither",
        "bore_kind",
        lambda i, _: i.bore_alpha_per_k is None and i.bore_kind == SLEEVE,
        "a sleeve in aluminium grows neither like iron nor like aluminium: its figure is common "
        "practice, and a plated cylinder that is sleeved needs the clearance of an iron sleeve",
        common_practice=True,
    ),
    Notice(
        "not_hot",
        "piston_hot_c",
        lambda i, _: (i.piston_hot_c < HOT_C) | (i.bore_hot_c < HOT_C),
        "below 60 °C the engine is not at running temperature",
    ),
    Notice(
        "bore_hotter_than_piston",
        "bore_hot_c",
        lambda i, _: i.bore_hot_c > i.piston_hot_c,
        "the cylinder is given hotter than the piston: heat flows the other way",
    ),
)

CALCULATION = Calculation(
    name="hot-clearance",
    number="C26",
    stage="cylinder",
    title="Running clearance, for comparison only",
    summary="What becomes of a cold clearance at running temperature, in this bore and in other "
    "kinds of cylinder: why one kind of bore needs more cold clearance than another. Never a "
    "verdict.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    figures=(
        Figure(
            "bore_alpha_per_k",
            ("hot_clearance_sleeve_in_aluminium_mm",),
            lambda i, _: no_standard(SLEEVE),
        ),
        expansion_of_bore(("hot_clearance_mm",), when=lambda i: True),
    ),
    rules=RULES,
    notices=NOTICES,
    cautions=("measuring",),
)
