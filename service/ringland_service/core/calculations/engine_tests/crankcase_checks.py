"""How the losses of a crankcase are judged, what is refused and what is warned of."""

from typing import Any

import numpy as np

from ringland_service.core.declare import Check, Notice, Rule, Unjudged
from ringland_service.core.metrology.conformity import beyond, is_column
from ringland_service.core.metrology.limits import LIMITS, Limit

FINDING = {
    "holds": "holds pressure and vacuum",
    "vacuum_not_tested": "holds pressure; the vacuum test is still to be made",
    "pressure_not_tested": "holds vacuum; the pressure test is still to be made",
    "leaks_under_pressure": "leaks under pressure",
    "leaks_under_vacuum": "leaks under vacuum",
    "leaks_under_both": "leaks under pressure and under vacuum",
    "repeat_the_test": "it gains instead of losing: the test is not valid",
}
# Two steps of a gauge that shows 0.2 kPa (common practice, no source).
GAIN_KPA = 0.4


def finding(inputs: Any, outputs: Any) -> Any:
    """Return what the tests say together, or None while a test has no limit to go by."""
    pressure = _leaks(inputs, outputs, *PRESSURE)
    vacuum = _leaks(inputs, outputs, *VACUUM)
    gains = _gains(*PRESSURE)(inputs, outputs) | _gains(*VACUUM)(inputs, outputs)
    tested = inputs.start_kpa is not None, inputs.vacuum_start_kpa is not None
    if (tested[0] and pressure is None) or (tested[1] and vacuum is None):
        return None
    if vacuum is None:
        word = _word(pressure, "leaks_under_pressure", "vacuum_not_tested")
    elif pressure is None:
        word = _word(vacuum, "leaks_under_vacuum", "pressure_not_tested")
    else:
        one = _word(vacuum, "leaks_under_vacuum", _word(pressure, "leaks_under_pressure", "holds"))
        word = _word(pressure & vacuum, "leaks_under_both", one)
    return _word(gains, "repeat_the_test", word)


# Of each test: its loss, its minutes, its own limit and its row of the table.
PRESSURE = (
    "loss_per_minute_kpa_diff",
    "minutes",
    "most_under_pressure_kpa_diff",
    "crankcase.pressure",
)
VACUUM = (
    "vacuum_loss_per_minute_kpa_diff",
    "vacuum_minutes",
    "most_under_vacuum_kpa_diff",
    "crankcase.vacuum",
)


def _leaks(inputs: Any, outputs: Any, loss: str, _: str, own: str, row: str) -> Any:
    """Return whether more is lost than the limit, or None where the test or its limit lacks."""
    lost, most = getattr(outputs, loss), _most(inputs, getattr(inputs, own), row)
    return None if lost is None or most is None else beyond(lost, most)


def _gains(loss: str, minutes: str, *_: str) -> Any:
    def when(i: Any, o: Any) -> Any:
        lost = getattr(o, loss)
        return False if lost is None else lost * getattr(i, minutes) < -GAIN_KPA

    return when


def _most(inputs: Any, own: Any, row: str) -> Any:
    if own is not None:
        return own
    return LIMITS[row].high if inputs.usual else None


def _word(holds: Any, word: Any, otherwise: Any) -> Any:
    """Return a word where something holds, one or a column of them."""
    if is_column(holds):
        return np.where(holds, word, otherwise)
    return word if holds else otherwise


def _default(row: str) -> Any:
    def limit(_: Any, __: Any) -> Limit:
        return LIMITS[row].limit()

    return limit


SETTLE = (
    "let the engine and the bench come to one temperature, soap plates, plug and hose, read a "
    "finer gauge over a longer time, and repeat with the crank turned"
)


def _gained(*test: str) -> tuple[Unjudged, ...]:
    gains = _gains(*test)
    return (
        Unjudged(
            "gains_instead_of_losing",
            lambda i, o, _: gains(i, o),
            "let the engine come to one temperature, shut the pump off, and test again",
        ),
    )


CHECKS = (
    Check(
        "crankcase_pressure_loss",
        "loss_per_minute_kpa_diff",
        "pressure that the crankcase loses a minute",
        SETTLE,
        _default("crankcase.pressure"),
        unjudged=_gained(*PRESSURE),
    ),
    Check(
        "crankcase_vacuum_loss",
        "vacuum_loss_per_minute_kpa_diff",
        "vacuum that the crankcase loses a minute",
        SETTLE,
        _default("crankcase.vacuum"),
        unjudged=_gained(*VACUUM),
    ),
)


def _missing(*names: str) -> Any:
    return lambda i: any(getattr(i, name) is None for name in names)


def _test_rules(before: str, words: str) -> tuple[Rule, ...]:
    """Return the rules of one test: its readings go together, and so do its temperatures."""
    start, end, minutes = f"{before}start_kpa", f"{before}end_kpa", f"{before}minutes"
    first, last = f"{before}start_temperature_c", f"{before}end_temperature_c"
    needs = f"give {before}start, {before}end and {before}minutes together"
    both = f"give both, {before}start_temperature and {before}end_temperature, or neither"
    return (
        Rule(
            (start,),
            _missing(end, minutes),
            f"the end or the time of the {words} is lacking",
            needs,
        ),
        Rule((end,), _missing(start), f"the start of the {words} is lacking", needs),
        Rule((minutes,), _missing(start), f"the start of the {words} is lacking", needs),
        Rule((first,), _missing(last), f"one temperature of the {words} is lacking", both),
        Rule((last,), _missing(first), f"one temperature of the {words} is lacking", both),
        Rule((first,), _missing(start), f"temperatures without the {words} say nothing", needs),
    )


RULES = (*_test_rules("", "pressure test"), *_test_rules("vacuum_", "vacuum test"))


def _no_temperatures(i: Any, _: Any) -> bool:
    pressure = i.start_kpa is not None and i.start_temperature_c is None
    vacuum = i.vacuum_start_kpa is not None and i.vacuum_start_temperature_c is None
    return pressure or vacuum


def _blamed(_: Any, o: Any) -> Any:
    """Return whether a leak was found."""
    if o.finding is None:
        return False
    found = (o.finding == word for word in FINDING if word.startswith("leaks"))
    return np.logical_or.reduce(list(found))


NOTICES = (
    Notice(
        "temperatures_not_given",
        "start_temperature_c",
        _no_temperatures,
        "taken as of one temperature: half a degree of cooling is about 0.25 kPa, fakes a leak "
        "under pressure and hides one under vacuum; measure it at start and end",
    ),
    Notice(
        "plates_not_soaped",
        "plates_soaped",
        lambda i, o: (i.plates_soaped is not True) & _blamed(i, o),
        "blanking plates, plug and hose leak first: soap them before a seal is blamed",
    ),
    Notice(
        "crank_in_one_position",
        "second_crank_position",
        lambda i, _: i.second_crank_position is not True,
        "repeat with the crank turned: a seal may leak where the shaft is worn or run out",
    ),
    Notice(
        "gains_instead_of_losing",
        "loss_per_minute_kpa_diff",
        _gains(*PRESSURE),
        "the pressure rises: warming, a gauge that creeps or a pump that is not shut; repeat at "
        "one temperature before it counts as tight",
    ),
    Notice(
        "gains_instead_of_losing",
        "vacuum_loss_per_minute_kpa_diff",
        _gains(*VACUUM),
        "the vacuum deepens: cooling, a gauge that creeps or a pump that is not shut; repeat at "
        "one temperature before it counts as tight",
    ),
)
