"""Oil that an engine uses, by distance, by time and by fuel."""

from ringland_service.core.formulas.elementary import insist_positive
from ringland_service.core.numbers import Number

ML_PER_L = 1000.0


def oil_per_ml(oil_ml: Number, amount: Number, each: float = 1.0) -> Number:
    """Oil used for each so many hours, kilometres or whatever it is counted by.

    Parameters
    ----------
    oil_ml : float or array
        Oil used [mL].
    amount : float or array
        Hours or kilometres that it was used in [1].
    each : float, optional
        How many of them the answer is for [1].

    Returns
    -------
    float or array
        Oil [mL].

    Raises
    ------
    OutOfBounds
        When the amount is not above zero.

    References
    ----------
    Common practice.
    """
    insist_positive("amount", amount)
    return each * oil_ml / amount


def oil_of_fuel_percent(oil_ml: Number, fuel_l: Number) -> Number:
    """Oil used as a share of the fuel used, by volume.

    Parameters
    ----------
    oil_ml : float or array
        Oil used [mL].
    fuel_l : float or array
        Fuel used [L].

    Returns
    -------
    float or array
        Share [%].

    Raises
    ------
    OutOfBounds
        When the fuel is not above zero.

    References
    ----------
    Common practice.
    """
    insist_positive("fuel_l", fuel_l)
    return 100 * oil_ml / (ML_PER_L * fuel_l)
