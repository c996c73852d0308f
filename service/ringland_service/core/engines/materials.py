"""Linear expansion coefficients of cylinder and piston materials, and what a bore is made of."""

from dataclasses import dataclass

from ringland_service.core.tables import read_table
from ringland_service.core.tables.sources import cited


@dataclass(frozen=True)
class Material:
    """A row of the table of materials.

    Attributes
    ----------
    id : str
        Token on the wire.
    label : str
    alpha : float
        Coefficient that stands in where only the material is known [1/K].
    low, high : float
        Usual range of the coefficient [1/K].
    bore_kinds : tuple of str
        Kinds of bore whose diameter grows with this coefficient.
    standing, source : str
    """

    id: str
    label: str
    alpha: float
    low: float
    high: float
    bore_kinds: tuple[str, ...]
    standing: str
    source: str


MATERIALS: dict[str, Material] = {
    row["id"]: Material(
        **{**row, "bore_kinds": tuple(row["bore_kinds"]), "source": cited(row["source"])}
    )
    for row in read_table("materials")
}
MATERIAL_CHOICES: dict[str, str] = {m.id: m.label for m in MATERIALS.values()}

UNKNOWN = "unknown"
BORE_KINDS: dict[str, str] = {
    "iron": "iron cylinder",
    "iron_sleeve_in_aluminium": "iron sleeve in an aluminium cylinder",
    "plated_aluminium": "plated aluminium",
    "bare_silicon_aluminium": "bare silicon aluminium, no plating",
    "chromed": "aluminium, bore hard-chromed",
    UNKNOWN: "not known",
}

_BY_BORE_KIND: dict[str, Material | None] = {
    UNKNOWN: None,
    **{kind: material for material in MATERIALS.values() for kind in material.bore_kinds},
}


def material_of_bore(bore_kind: str | None) -> Material | None:
    """Return the material that a kind of bore expands with, or None where it is not known."""
    return None if bore_kind is None else _BY_BORE_KIND[bore_kind]


def alpha_of_bore_per_k(bore_kind: str | None) -> float | None:
    """Return the expansion coefficient of a kind of bore [1/K], or None where it is not known."""
    material = material_of_bore(bore_kind)
    return None if material is None else material.alpha


def alpha_of_material_per_k(material: str | None) -> float | None:
    """Return the expansion coefficient of a material [1/K], or None where it is not named."""
    return None if material is None else MATERIALS[material].alpha
