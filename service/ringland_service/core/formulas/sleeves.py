"""Fit of a sleeve in its cylinder: cold, while it goes in, and running. Diameters."""

from ringland_service.core.formulas.air import REFERENCE_TEMPERATURE_C
from ringland_service.core.formulas.elementary import insist_positive
from ringland_service.core.numbers import Number


def interference_mm(sleeve_od_mm: Number, cylinder_bore_mm: Number) -> Number:
    """Interference of a sleeve in its cylinder at 20 °C.

    Parameters
    ----------
    sleeve_od_mm, cylinder_bore_mm : float or array
        Outside of the sleeve and bore of the cylinder at 20 °C [mm].

    Returns
    -------
    float or array
        Interference on the diameter, negative for a loose sleeve [mm].

    References
    ----------
    Difference of two diameters; ISO 286.
    """
    return sleeve_od_mm - cylinder_bore_mm


def heat_cylinder_to_c(
    cylinder_bore_mm: Number,
    sleeve_od_mm: Number,
    drop_in_mm: Number,
    sleeve_temperature_c: Number,
    alpha_cylinder_per_k: Number,
    alpha_sleeve_per_k: Number,
) -> Number:
    """Temperature at which a cylinder has grown clear of its sleeve.

    Parameters
    ----------
    cylinder_bore_mm, sleeve_od_mm : float or array
        At 20 °C [mm].
    drop_in_mm : float or array
        Room wanted around the sleeve, on the diameter [mm].
    sleeve_temperature_c : float or array
        Of the sleeve as it goes in [°C].
    alpha_cylinder_per_k, alpha_sleeve_per_k : float or array
        Linear expansion [1/K].

    Returns
    -------
    float or array
        Temperature of the cylinder [°C].

    Raises
    ------
    OutOfBounds
        When the cylinder does not expand.

    References
    ----------
    Linear expansion, L·(1 + α·ΔT); Machinery's Handbook.
    """
    insist_positive("alpha_cylinder_per_k", alpha_cylinder_per_k)
    insist_positive("cylinder_bore_mm", cylinder_bore_mm)
    grown = alpha_sleeve_per_k * sleeve_od_mm * (sleeve_temperature_c - REFERENCE_TEMPERATURE_C)
    room = interference_mm(sleeve_od_mm, cylinder_bore_mm) + drop_in_mm + grown
    return REFERENCE_TEMPERATURE_C + room / (alpha_cylinder_per_k * cylinder_bore_mm)


def interference_left_mm(
    cylinder_bore_mm: Number,
    sleeve_od_mm: Number,
    running_temperature_c: Number,
    alpha_cylinder_per_k: Number,
    alpha_sleeve_per_k: Number,
) -> Number:
    """Interference that is left when sleeve and cylinder run at one temperature.

    Parameters
    ----------
    cylinder_bore_mm, sleeve_od_mm : float or array
        At 20 °C [mm].
    running_temperature_c : float or array
        Of both [°C].
    alpha_cylinder_per_k, alpha_sleeve_per_k : float or array
        Linear expansion [1/K].

    Returns
    -------
    float or array
        Interference on the diameter, negative for a loose sleeve [mm].

    References
    ----------
    Linear expansion, L·(1 + α·ΔT); Machinery's Handbook.
    """
    rise = running_temperature_c - REFERENCE_TEMPERATURE_C
    lost = (alpha_cylinder_per_k * cylinder_bore_mm - alpha_sleeve_per_k * sleeve_od_mm) * rise
    return interference_mm(sleeve_od_mm, cylinder_bore_mm) - lost


def interference_wanted_mm(
    cylinder_bore_mm: Number,
    running_temperature_c: Number,
    alpha_cylinder_per_k: Number,
    alpha_sleeve_per_k: Number,
    left_mm: Number,
) -> Number:
    """Cold interference that leaves a wanted one when running.

    Parameters
    ----------
    cylinder_bore_mm : float or array
        At 20 °C [mm].
    running_temperature_c : float or array
        Of sleeve and cylinder [°C].
    alpha_cylinder_per_k, alpha_sleeve_per_k : float or array
        Linear expansion [1/K].
    left_mm : float or array
        Interference to be left [mm].

    Returns
    -------
    float or array
        Interference on the diameter at 20 °C [mm].

    References
    ----------
    Linear expansion; the sleeve is taken as wide as the bore, which is right to 1e-3 of the rest.
    """
    rise = running_temperature_c - REFERENCE_TEMPERATURE_C
    return (alpha_cylinder_per_k - alpha_sleeve_per_k) * cylinder_bore_mm * rise + left_mm
