"""Volumes of cylinder, chamber and gasket, and the compression ratio they make."""

from math import pi

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas.elementary import insist, insist_positive, sqrt
from ringland_service.core.numbers import Number

MM3_PER_CC = 1000.0


def piston_area_mm2(bore_mm: Number) -> Number:
    """Area of the bore, on which the gas pressure acts.

    Parameters
    ----------
    bore_mm : float or array
        Cylinder bore [mm].

    Returns
    -------
    float or array
        Area [mm²].

    References
    ----------
    Plane geometry: area of a circle.
    """
    return pi / 4 * bore_mm * bore_mm


def disc_volume_cc(diameter_mm: Number, height_mm: Number) -> Number:
    """Volume of a round disc: gasket, deck space, plug hole, gauge hose.

    A negative height gives a negative volume: a piston proud of the deck takes room away.

    Parameters
    ----------
    diameter_mm : float or array
        Diameter [mm].
    height_mm : float or array
        Height, thickness, depth or length [mm].

    Returns
    -------
    float or array
        Volume [cm³].

    References
    ----------
    Solid geometry: volume of a circular cylinder.
    """
    return piston_area_mm2(diameter_mm) * height_mm / MM3_PER_CC


def swept_volume_cc(bore_mm: Number, stroke_mm: Number) -> Number:
    """Volume swept by one piston.

    Parameters
    ----------
    bore_mm : float or array
        Cylinder bore [mm].
    stroke_mm : float or array
        Stroke, or the effective part of it [mm].

    Returns
    -------
    float or array
        Swept volume of one cylinder [cm³].

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals.
    """
    return disc_volume_cc(bore_mm, stroke_mm)


def displacement_cc(bore_mm: Number, stroke_mm: Number, cylinders: Number) -> Number:
    """Swept volume of all cylinders, all of one bore.

    Parameters
    ----------
    bore_mm : float or array
        Cylinder bore [mm].
    stroke_mm : float or array
        Stroke [mm].
    cylinders : float or array
        Number of cylinders [1].

    Returns
    -------
    float or array
        Displacement [cm³].

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals.
    """
    return swept_volume_cc(bore_mm, stroke_mm) * cylinders


def largest_bore_mm(limit_cc: Number, stroke_mm: Number, cylinders: Number) -> Number:
    """Bore at which the displacement reaches a class limit.

    Parameters
    ----------
    limit_cc : float or array
        Displacement limit of the class [cm³].
    stroke_mm : float or array
        Stroke [mm].
    cylinders : float or array
        Number of cylinders [1].

    Returns
    -------
    float or array
        Largest bore [mm].

    Raises
    ------
    OutOfBounds
        When the limit, the stroke or the number of cylinders is not above zero.

    References
    ----------
    `displacement_cc` solved for the bore.
    """
    insist_positive("limit_cc", limit_cc)
    insist_positive("stroke_mm", stroke_mm)
    insist_positive("cylinders", cylinders)
    return sqrt(4 * MM3_PER_CC * limit_cc / (pi * stroke_mm * cylinders))


def crevice_cc(bore_mm: Number, land_mm: Number, height_mm: Number) -> Number:
    """Ring of space between the bore and the top land, down to the top ring.

    Parameters
    ----------
    bore_mm : float or array
        Cylinder bore [mm].
    land_mm : float or array
        Diameter of the top land [mm].
    height_mm : float or array
        Height of the top land [mm].

    Returns
    -------
    float or array
        Crevice volume [cm³].

    References
    ----------
    Solid geometry: difference of two circular cylinders.
    """
    # The factored difference of squares keeps the digits of a narrow crevice.
    return pi / 4 * (bore_mm - land_mm) * (bore_mm + land_mm) * height_mm / MM3_PER_CC


def clearance_volume_cc(
    chamber_cc: Number,
    gasket_cc: Number,
    deck_cc: Number,
    dish_cc: Number,
    dome_cc: Number,
    crevice_cc: Number,
) -> Number:
    """Volume left above the piston at top dead centre.

    Parameters
    ----------
    chamber_cc : float or array
        Combustion chamber in the head [cm³].
    gasket_cc : float or array
        Bore of the compressed head gasket [cm³].
    deck_cc : float or array
        Space between crown edge and deck; negative for a piston proud of the deck [cm³].
    dish_cc : float or array
        Dish and valve pockets in the crown, never negative [cm³].
    dome_cc : float or array
        Dome on the crown, never negative [cm³].
    crevice_cc : float or array
        Top-land crevice [cm³].

    Returns
    -------
    float or array
        Clearance volume [cm³].

    References
    ----------
    Sum of the parts; common practice.
    """
    return chamber_cc + gasket_cc + deck_cc + dish_cc - dome_cc + crevice_cc


def compression_ratio(swept_cc: Number, clearance_cc: Number) -> Number:
    """Ratio of the largest to the smallest volume above the piston.

    The whole swept volume gives the geometric ratio, the part left after the intake valve
    has closed the dynamic ratio, the part above the exhaust port the trapped ratio.

    Parameters
    ----------
    swept_cc : float or array
        Swept, effective or trapped volume [cm³].
    clearance_cc : float or array
        Clearance volume [cm³].

    Returns
    -------
    float or array
        Compression ratio [1].

    Raises
    ------
    OutOfBounds
        When the clearance volume is not above zero.

    References
    ----------
    Heywood, Internal Combustion Engine Fundamentals.
    """
    insist(
        clearance_cc > 0,
        OutOfBounds,
        "clearance_cc",
        "the parts leave no volume above the piston at top dead centre",
        "a clearance volume above zero: check the signs of deck and dome",
    )
    return (swept_cc + clearance_cc) / clearance_cc


def clearance_for_ratio_cc(swept_cc: Number, ratio: Number) -> Number:
    """Clearance volume that gives a wanted compression ratio.

    Parameters
    ----------
    swept_cc : float or array
        Swept volume of one cylinder [cm³].
    ratio : float or array
        Wanted compression ratio [1].

    Returns
    -------
    float or array
        Clearance volume [cm³].

    Raises
    ------
    OutOfBounds
        When the ratio is not above one.

    References
    ----------
    `compression_ratio` solved for the clearance volume.
    """
    insist(ratio > 1, OutOfBounds, "ratio", "must be above one", "a compression ratio above one")
    return swept_cc / (ratio - 1)


def gasket_overhang_mm(gasket_bore_mm: Number, bore_mm: Number) -> Number:
    """Distance of the gasket edge from the bore, on each side.

    Parameters
    ----------
    gasket_bore_mm : float or array
        Bore of the head gasket [mm].
    bore_mm : float or array
        Cylinder bore [mm].

    Returns
    -------
    float or array
        Distance on each side, negative where the gasket reaches into the bore [mm].

    References
    ----------
    Half the difference of the diameters.
    """
    return (gasket_bore_mm - bore_mm) / 2


def change_percent(old: Number, new: Number) -> Number:
    """Change from the old to the new value.

    Parameters
    ----------
    old, new : float or array
        Two values of one kind in one unit.

    Returns
    -------
    float or array
        Change as a share of the old value [%].

    Raises
    ------
    OutOfBounds
        When the old value is not above zero.

    References
    ----------
    Definition of a relative change.
    """
    insist_positive("old", old)
    return 100 * (new - old) / old
