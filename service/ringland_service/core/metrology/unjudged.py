"""Where no verdict is due: the conditions of a test that were not met, and what that leaves open.

A reading taken under the wrong conditions is neither good nor bad. Where the condition can do
nothing but spoil the reading (a decompressor only lets pressure off), a pass stands all the same.

References
----------
Common practice, no source: which condition moves which reading which way.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

import numpy as np

from ringland_service.core.metrology.limits import Limit

NOT_JUDGED = "not_judged"
LOWERS, RAISES = "lowers", "raises"
WHY: dict[str, str] = {
    "decompressor_at_work": "a decompressor let pressure off during the test",
    "decompressor_unknown": "a decompressor may have let pressure off during the test",
    "limit_with_decompressor": "the limit is for a reading with the decompressor at work",
    "throttle_not_open": "throttle or choke was not held fully open",
    "engine_cold": "the engine was cold",
    "cranking_slow": "the starter turned too slowly",
    "readings_not_repeating": "repeat readings differ by more than 5 %",
    "cylinders_not_all_told": "not all cylinders of the engine were read",
    "gauge_unfit": "hose and adaptor take more than 10 % off the reading",
    "not_at_firing_dead_centre": "the piston was not at firing dead centre",
    "place_of_piston_unknown": "where the piston stood is not told",
    "decompressor_lets_air_out": "the decompressor lets air out during the leak-down",
    "tester_outside_the_scale": "the tester's restrictor or supply is not that of the limit, or "
    "not told",
    "gains_instead_of_losing": "the crankcase gained instead of losing",
    "surface_smeared": "metal is smeared on the bore: its size is not that of the bore",
    "parts_at_different_temperatures": "the two parts were not measured at one temperature",
    "measured_elsewhere": "the piston was not measured at its measuring height",
    "hydraulic_adjuster": "a hydraulic adjuster has no lash to measure",
    "part_gone": "the part is not used again",
    "valve_seat_to_be_cut": "the seat is still to be cut, which changes the lash",
}


@dataclass(frozen=True)
class Unjudged:
    """A condition under which a check passes no verdict.

    Attributes
    ----------
    why : str
        A token of ``WHY``.
    when : callable
        Takes inputs, results and the limit in force; whether the condition holds: a bool, or an
        array of them for a column.
    to_judge : str
        What would make the reading one that can be judged.
    only : str
        ``lowers`` or ``raises``, where that is all that the condition can do to the value: a pass
        then stands against a limit of that side alone.
    """

    why: str
    when: Callable[[Any, Any, Limit], Any]
    to_judge: str
    only: str = ""

    def lets_pass(self, limit: Limit) -> bool:
        """Return whether a pass against this limit stands although the condition holds."""
        if self.only == LOWERS:
            return limit.high is None
        return self.only == RAISES and limit.low is None


def reasons(
    conditions: Iterable[Unjudged], inputs: Any, outputs: Any, limit: Limit, passes: Any
) -> Any:
    """Return the first condition that keeps a verdict from being passed.

    Parameters
    ----------
    conditions : iterable of Unjudged
        The weightiest first.
    inputs, outputs : record
    limit : Limit
    passes : bool or array
        Whether the value passes as it stands.

    Returns
    -------
    str, None or array of object
        Token of the condition, None where the verdict stands; for a column an array of tokens,
        empty where it stands.
    """
    column = isinstance(passes, np.ndarray)
    found: Any = np.full(len(passes), "", dtype=object) if column else None
    for condition in conditions:
        holds = condition.when(inputs, outputs, limit)
        if condition.lets_pass(limit):
            holds = holds & ~passes if column else holds and not passes
        if column:
            found = np.where((found == "") & holds, condition.why, found)
        elif found is None and holds:
            found = condition.why
    return found
