"""Two-stroke port timing from port heights, and the volume trapped above the exhaust port."""

from ringland_service.core.errors import OutOfBounds
from ringland_service.core.formulas import crank
from ringland_service.core.formulas.elementary import insist
from ringland_service.core.formulas.geometry import swept_volume_cc
from ringland_service.core.numbers import Number


def port_travel_mm(port_top_below_deck_mm: Number, edge_below_deck_mm: Number) -> Number:
    """Piston travel from top dead centre to the top edge of a port.

    A base gasket thinner by t lets the cylinder down: the edge stands t higher against the
    deck, and the travel to every port grows by t.

    Parameters
    ----------
    port_top_below_deck_mm : float or array
        Top edge of the port below the deck; the port edge, not its chamfer [mm].
    edge_below_deck_mm : float or array
        Crown edge below the deck at top dead centre; negative when proud [mm].

    Returns
    -------
    float or array
        Travel [mm].

    References
    ----------
    Blair, Design and Simulation of Two-Stroke Engines.
    """
    return port_top_below_deck_mm - edge_below_deck_mm


def port_opening_deg(
    stroke_mm: Number,
    rod_mm: Number,
    port_top_below_deck_mm: Number,
    edge_below_deck_mm: Number = 0.0,
) -> Number:
    """Crank angle at which the crown edge uncovers a port.

    Parameters
    ----------
    stroke_mm : float or array
        Stroke [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    port_top_below_deck_mm : float or array
        Top edge of the port below the deck [mm].
    edge_below_deck_mm : float or array, optional
        Crown edge below the deck at top dead centre; zero is level with it [mm].

    Returns
    -------
    float or array
        Opening angle after top dead centre [deg].

    Raises
    ------
    OutOfBounds
        When the crown edge never reaches the port, or the stroke is not above zero.
    Contradiction
        When the rod is not longer than half the stroke.

    References
    ----------
    Blair, Design and Simulation of Two-Stroke Engines; slider-crank inverse.
    """
    reach_mm = port_travel_mm(port_top_below_deck_mm, edge_below_deck_mm)
    insist(
        (reach_mm >= 0) & (reach_mm <= stroke_mm * (1 + crank.ROUNDING)),
        OutOfBounds,
        "port_top_below_deck_mm",
        "the crown edge does not pass the top of this port",
        "a port top between the crown edge at top and at bottom dead centre",
    )
    return crank.angle_deg(stroke_mm, rod_mm, reach_mm)


def port_duration_deg(opening_deg: Number) -> Number:
    """Crank angle for which a port stays open.

    Parameters
    ----------
    opening_deg : float or array
        Opening angle after top dead centre [deg].

    Returns
    -------
    float or array
        Duration, even about bottom dead centre [deg].

    References
    ----------
    Blair, Design and Simulation of Two-Stroke Engines.
    """
    return 360.0 - 2 * opening_deg


def travel_for_duration_mm(stroke_mm: Number, rod_mm: Number, duration_deg: Number) -> Number:
    """Piston travel at which a port must open to stay open for so long.

    Parameters
    ----------
    stroke_mm : float or array
        Stroke [mm].
    rod_mm : float or array
        Connecting rod, centre to centre [mm].
    duration_deg : float or array
        Duration wanted, even about bottom dead centre [deg].

    Returns
    -------
    float or array
        Travel from top dead centre to the top edge of the port [mm].

    Raises
    ------
    Contradiction
        When the rod is not longer than half the stroke.

    References
    ----------
    `port_duration_deg` solved for the opening angle, and `crank.travel_mm` there.
    """
    return crank.travel_mm(stroke_mm, rod_mm, 180.0 - duration_deg / 2)


def blowdown_deg(exhaust_opening_deg: Number, transfer_opening_deg: Number) -> Number:
    """Crank angle from exhaust opening to transfer opening.

    Parameters
    ----------
    exhaust_opening_deg, transfer_opening_deg : float or array
        Opening angles after top dead centre [deg].

    Returns
    -------
    float or array
        Blowdown; negative when the transfer port opens first [deg].

    References
    ----------
    Blair, Design and Simulation of Two-Stroke Engines.
    """
    return transfer_opening_deg - exhaust_opening_deg


def trapped_volume_cc(
    bore_mm: Number, port_top_below_deck_mm: Number, edge_below_deck_mm: Number = 0.0
) -> Number:
    """Volume swept after the crown edge has shut the exhaust port.

    With `geometry.compression_ratio` it gives the trapped ratio.

    Parameters
    ----------
    bore_mm : float or array
        Cylinder bore [mm].
    port_top_below_deck_mm : float or array
        Top edge of the exhaust port below the deck [mm].
    edge_below_deck_mm : float or array, optional
        Crown edge below the deck at top dead centre; zero is level with it [mm].

    Returns
    -------
    float or array
        Trapped swept volume, clearance volume not included [cm³].

    References
    ----------
    Blair, Design and Simulation of Two-Stroke Engines.
    """
    return swept_volume_cc(bore_mm, port_travel_mm(port_top_below_deck_mm, edge_below_deck_mm))
