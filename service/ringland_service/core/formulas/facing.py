"""Facing of a head or a cylinder: height and volume of a cut."""

from ringland_service.core.formulas.elementary import insist_positive
from ringland_service.core.formulas.geometry import MM3_PER_CC
from ringland_service.core.numbers import Number


def cut_for_volume_mm(volume_cc: Number, area_mm2: Number) -> Number:
    """Height to take off so that the volume falls by so much.

    Parameters
    ----------
    volume_cc : float or array
        Volume to be lost; negative for volume to be gained [cm³].
    area_mm2 : float or array
        Area on which the height counts: chamber at the face, gasket opening or bore [mm²].

    Returns
    -------
    float or array
        Height of the cut, or thickness taken out of a gasket [mm].

    Raises
    ------
    OutOfBounds
        When the area is not above zero.

    References
    ----------
    Solid geometry: volume of a prism. A chamber that narrows with depth loses less.
    """
    insist_positive("area_mm2", area_mm2)
    return MM3_PER_CC * volume_cc / area_mm2


def volume_of_cut_cc(cut_mm: Number, area_mm2: Number) -> Number:
    """Volume that a cut takes from the chamber.

    Parameters
    ----------
    cut_mm : float or array
        Height of the cut [mm].
    area_mm2 : float or array
        Area of the chamber at the face [mm²].

    Returns
    -------
    float or array
        Volume lost [cm³].

    References
    ----------
    Solid geometry: volume of a prism. A chamber that narrows with depth loses less.
    """
    return area_mm2 * cut_mm / MM3_PER_CC


def skim_mm(hollow_mm: Number, allowance_mm: Number) -> Number:
    """Metal to take off a face so that it cleans up.

    Parameters
    ----------
    hollow_mm : float or array
        Largest gap under the straightedge [mm].
    allowance_mm : float or array
        Allowance for a clean cut all over [mm].

    Returns
    -------
    float or array
        Depth of the cut [mm].

    References
    ----------
    Sum; common practice.
    """
    return hollow_mm + allowance_mm
