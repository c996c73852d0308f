"""Squish clearance, squish area, and the gasket that gives a wanted squish."""

from ringland_service.core.formulas.elementary import insist_positive
from ringland_service.core.numbers import Number


def squish_of_stack_mm(deck_mm: Number, gasket_mm: Number, head_step_mm: Number) -> Number:
    """Squish clearance from the parts that make it.

    Parameters
    ----------
    deck_mm : float or array
        Crown edge below the deck at top dead centre; negative when proud [mm].
    gasket_mm : float or array
        Head gasket, compressed [mm].
    head_step_mm : float or array
        Squish band recessed in the head's gasket face; negative where it stands out [mm].

    Returns
    -------
    float or array
        Squish clearance, negative where the parts meet [mm].

    References
    ----------
    Sum of a stack of lengths; common practice.
    """
    return deck_mm + gasket_mm + head_step_mm


def squish_area_share(bore_mm: Number, bowl_mm: Number) -> Number:
    """Share of the bore's area that the squish band covers.

    Parameters
    ----------
    bore_mm : float or array
        Cylinder bore [mm].
    bowl_mm : float or array
        Diameter of the bowl inside the band [mm].

    Returns
    -------
    float or array
        Area of the band over that of the bore [1].

    Raises
    ------
    OutOfBounds
        When the bore is not above zero.

    References
    ----------
    Plane geometry: ring over circle, ``1 - (d / D)²``.
    """
    insist_positive("bore_mm", bore_mm)
    return (bore_mm - bowl_mm) * (bore_mm + bowl_mm) / (bore_mm * bore_mm)


def squish_with_gasket_mm(squish_mm: Number, fitted_mm: Number, gasket_mm: Number) -> Number:
    """Squish clearance with another gasket under the cylinder or the head.

    Parameters
    ----------
    squish_mm : float or array
        Squish clearance now [mm].
    fitted_mm : float or array
        Gasket fitted now [mm].
    gasket_mm : float or array
        Gasket fitted instead [mm].

    Returns
    -------
    float or array
        Squish clearance, negative where piston and head would meet [mm].

    References
    ----------
    The clearance falls by what the gasket is thinner; common practice.
    """
    return squish_mm - (fitted_mm - gasket_mm)


def gasket_for_squish_mm(squish_mm: Number, fitted_mm: Number, wanted_mm: Number) -> Number:
    """Gasket that gives a wanted squish clearance.

    Parameters
    ----------
    squish_mm : float or array
        Squish clearance now [mm].
    fitted_mm : float or array
        Gasket fitted now [mm].
    wanted_mm : float or array
        Squish clearance wanted [mm].

    Returns
    -------
    float or array
        Thickness, negative where no gasket is thin enough [mm].

    References
    ----------
    `squish_with_gasket_mm` solved for the gasket.
    """
    return fitted_mm + wanted_mm - squish_mm
