"""C06: spread of the readings between cylinders, and a low pair of neighbours."""

import math

import numpy as np

from ringland_service.core.calculations.engine_tests._spread_extremes import extremes
from ringland_service.core.declare import (
    Calculation,
    Check,
    Notice,
    Rule,
    Unjudged,
    choice,
    count,
    kinds,
    quantity,
    readings,
    record,
    result,
)
from ringland_service.core.engines import condition
from ringland_service.core.formulas import readings as formulas
from ringland_service.core.metrology.limits import GRADES, LIMITS, Limit
from ringland_service.core.metrology.propagation import Component, Effect
from ringland_service.core.numbers import Column, Number
from ringland_service.core.quantities import common as quantities
from ringland_service.core.tables.sources import NO_SOURCE as COMMON

# Highest reading over the expected one under which no cylinder is a sound one to compare with.
SOUND_SHARE = 0.80
# First cylinder at the end over the same at the beginning, under which the battery has sagged.
SAG_SHARE = 0.95


@record
class Inputs:
    """The cylinders' readings, and how the cylinders stand."""

    readings_kpa: tuple[float, ...] = readings(
        quantities.COMPRESSION,
        "reading of each cylinder, gauge; same gauge, one after another, bank by bank",
        least=2,
        most=8,
        example=(1180.0, 760.0, 790.0, 1165.0),
    )
    layout: str = choice(
        "how the cylinders stand; in two banks the first half of the readings is one bank",
        condition.LAYOUT,
        example="in_line",
        default="in_line",
    )
    expected_kpa: Number | None = quantity(
        quantities.EXPECTED, "pressure expected of a sound cylinder here, gauge", default=None
    )
    cylinder_count: int | None = count(
        "number of cylinders; where fewer are read, the others are not told",
        low=1,
        high=8,
        example=4,
        default=None,
    )
    first_again_kpa: Number | None = quantity(
        quantities.COMPRESSION,
        "the first cylinder read once more at the end, gauge",
        example=1175.0,
        default=None,
    )
    repeatability_kpa_diff: Number | None = quantity(
        quantities.REPEAT, "how well each reading repeats, ±", default=None
    )


@record
class Outputs:
    """How far the cylinders lie apart; cylinders count from 1 in the order of the readings."""

    spread_pct: Number = result(
        "highest less lowest reading, share of the highest",
        kind=kinds.PERCENT,
        decimals=1,
        formula="100 * (1 - lowest_over_highest)",
        source=COMMON,
        extreme=True,
    )
    lowest_over_highest: Number = result(
        "lowest reading over the highest",
        decimals=3,
        basis="smallest of the readings over the largest; the error of the gauge cancels",
        source=COMMON,
        extreme=True,
    )
    each_over_highest: tuple[float, ...] = result(
        "each reading over the highest, in order",
        decimals=3,
        basis="the reading over the largest of the readings",
        source=COMMON,
    )
    grade: str | None = result(
        "spread between the cylinders; absent where not all of them are read",
        basis="steps of the spread",
        source=COMMON,
        common_practice=True,
        choices=GRADES["cylinder_spread"].choices,
        default=None,
    )
    pair_mismatch_pct: Number | None = result(
        "difference of the two neighbours in one bank that read lowest together, share of the "
        "higher; absent where no two cylinders share a bank, or not all are read",
        kind=kinds.PERCENT,
        decimals=1,
        basis="the neighbours with the smallest sum: their difference over the higher one",
        source=COMMON,
        default=None,
    )
    adjacent_low_pair: tuple[int, ...] | None = result(
        "two low neighbours in one bank: a leak between them, a gasket bridge say",
        decimals=0,
        basis="neighbours both under 0.80 of the highest, within 10 % of each other, all others "
        "at 0.90 or more",
        source=COMMON,
        common_practice=True,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Compare the cylinders with the highest, and look for a low pair of neighbours."""
    taken = np.array(inputs.readings_kpa)
    each = formulas.each_over_highest(taken)
    spread = formulas.spread_percent(taken)
    pair = None if _not_all_told(inputs) else _lowest_neighbours(inputs)
    mismatch = None if pair is None else _mismatch_pct(taken[pair[0]], taken[pair[1]])
    low = pair is not None and mismatch is not None and _is_low_pair(each, pair, mismatch)
    return Outputs(
        spread_pct=spread,
        lowest_over_highest=formulas.lowest_over_highest(taken),
        each_over_highest=tuple(each.tolist()),
        grade=None if _not_all_told(inputs) else GRADES["cylinder_spread"].word(spread),
        pair_mismatch_pct=mismatch,
        adjacent_low_pair=(pair[0] + 1, pair[1] + 1) if pair is not None and low else None,
    )


def _not_all_told(inputs: Inputs) -> bool:
    """Return whether the engine has cylinders that are not read."""
    return inputs.cylinder_count is not None and len(inputs.readings_kpa) < inputs.cylinder_count


def _mismatch_pct(first_kpa: float, second_kpa: float) -> Number:
    """Return the difference of two neighbours; two dead ones are alike."""
    if max(first_kpa, second_kpa) <= 0:
        return 0.0
    return formulas.mismatch_percent(first_kpa, second_kpa)


def _lowest_neighbours(inputs: Inputs) -> tuple[int, int] | None:
    """Return the neighbours in one bank with the smallest sum, counted from 0."""
    taken = inputs.readings_kpa
    bank = len(taken) if inputs.layout == "in_line" else len(taken) // 2
    pairs = [(k, k + 1) for k in range(len(taken) - 1) if (k + 1) % bank]
    return min(pairs, key=lambda pair: taken[pair[0]] + taken[pair[1]], default=None)


def _is_low_pair(each: Column, pair: tuple[int, int], mismatch_pct: Number) -> bool:
    words = [GRADES["cylinder_share"].word(share) for share in each.tolist()]
    both_low = all(words[k] == "low" for k in pair)
    others_sound = all(word == "sound" for k, word in enumerate(words) if k not in pair)
    alike = GRADES["pair_mismatch"].word(mismatch_pct) == "alike"
    return bool(both_low and others_sound and alike)


def components(inputs: Inputs) -> list[Component]:
    """Return the repeat of each reading; the error of the one gauge cancels in a ratio."""
    if not inputs.repeatability_kpa_diff:
        return []
    u, span = inputs.repeatability_kpa_diff / math.sqrt(3.0), quantities.COMPRESSION.span
    return [
        Component(f"repeat of cylinder {k + 1}", u, (Effect(("readings_kpa", k), span),))
        for k in range(len(inputs.readings_kpa))
    ]


def _floor(_: Inputs, __: Outputs) -> Limit:
    return LIMITS["cylinder_spread.floor"].limit()


def _no_sound_reference(i: Inputs, _: Outputs) -> bool:
    if i.expected_kpa is None:
        return len(i.readings_kpa) == 2
    return bool(max(i.readings_kpa) < SOUND_SHARE * i.expected_kpa)


def _sagged(i: Inputs, _: Outputs) -> bool:
    again = i.first_again_kpa
    return again is not None and bool(again < SAG_SHARE * i.readings_kpa[0])


CALCULATION = Calculation(
    name="cylinder-spread",
    number="C06",
    stage="engine_tests",
    title="Spread between cylinders",
    summary="Spread of the compression readings of one engine, and a low pair of neighbours. A "
    "single has no spread. Peaks of the starter current may stand in for readings here. One "
    "cylinder's worn cam lobe, or a decompressor on one cylinder only, makes a spread too.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    extremes=extremes,
    components=components,
    columns=False,
    checks=(
        Check(
            "lowest_over_highest",
            "lowest_over_highest",
            "lowest cylinder over the highest",
            "read all cylinders again with the same gauge, the first one last",
            _floor,
            unjudged=(
                Unjudged(
                    "cylinders_not_all_told",
                    lambda i, o, _: _not_all_told(i),
                    "read the other cylinders too, same gauge, one after another",
                ),
                Unjudged(
                    "readings_not_repeating",
                    lambda i, o, _: _sagged(i, o),
                    "charge the battery and read all cylinders again, the first one last",
                ),
            ),
        ),
    ),
    rules=(
        Rule(
            ("readings_kpa", "cylinder_count"),
            lambda i: len(i.readings_kpa) > i.cylinder_count,
            "more readings than the engine has cylinders",
            "one reading a cylinder, or the number of cylinders as it is",
        ),
        Rule(
            ("readings_kpa",),
            lambda i: max(i.readings_kpa) <= 0,
            "no cylinder reads anything",
            "readings above zero; check gauge, adaptor and starter",
        ),
        Rule(
            ("readings_kpa", "layout"),
            lambda i: (
                i.layout != "in_line" and len(i.readings_kpa) % 2 == 1 and not _not_all_told(i)
            ),
            "two banks with an odd number of readings",
            "one reading per cylinder, the first half of them one bank",
        ),
    ),
    notices=(
        Notice(
            "cylinders_not_all_told",
            "readings_kpa",
            lambda i, _: _not_all_told(i),
            "the engine has more cylinders than readings: the others are not told, so the "
            "spread of the engine is not known",
        ),
        Notice(
            "no_sound_reference",
            "readings_kpa",
            _no_sound_reference,
            "cylinders that are low together show no spread: compare the highest with the "
            "expected pressure",
        ),
        Notice(
            "battery_sag",
            "first_again_kpa",
            _sagged,
            "the first cylinder reads over 5 % lower at the end: the battery sagged; charge it and "
            "read all again",
        ),
        Notice(
            "first_not_read_again",
            "first_again_kpa",
            lambda i, _: i.first_again_kpa is None,
            "the gauge's error cancels here, a sagging battery does not: read the first cylinder "
            "again last",
        ),
    ),
    cautions=("compression_test", "fuel"),
)
