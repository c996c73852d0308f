"""What an answer on torque refuses and warns of, besides the sizes of the thread."""

import itertools
from typing import Any

from ringland_service.core.declare import Notice, Rule
from ringland_service.core.formulas.elementary import cosine_deg
from ringland_service.core.metrology.conformity import beyond

# Below this share of the wrench's length an adapter reaches back nearly to the hand.
LEAST_LEVER_SHARE = 0.5
# A click wrench holds its accuracy from a fifth of its range (common practice, no source).
LEAST_WRENCH_SHARE = 0.2


def _stages_wrong(i: Any) -> bool:
    fractions = i.stage_fractions
    rising = all(a < b for a, b in itertools.pairwise(fractions))
    return not rising or abs(fractions[-1] - 1.0) > 1e-9


def _reaches_back(i: Any) -> Any:
    back_mm = -i.adapter_extension_mm * cosine_deg(i.adapter_angle_deg)
    return beyond(back_mm, (1.0 - LEAST_LEVER_SHARE) * i.wrench_length_mm)


def _odd_angle(i: Any, _: Any) -> bool:
    return bool(i.adapter_extension_mm > 0 and i.adapter_angle_deg not in (0.0, 90.0))


def _too_much_for_wrench(i: Any, outputs: Any) -> bool:
    if i.wrench_top_nm is None:
        return False
    return bool(_settings(outputs)[-1] > i.wrench_top_nm)


def _too_little_for_wrench(i: Any, outputs: Any) -> bool:
    if i.wrench_top_nm is None:
        return False
    return bool(_settings(outputs)[0] < LEAST_WRENCH_SHARE * i.wrench_top_nm)


def _settings(outputs: Any) -> tuple[float, ...]:
    settings: tuple[float, ...] = outputs.stage_settings_nm or outputs.stages_nm
    return settings


def _over_one(value: Any) -> bool:
    return value is not None and bool(value > 1.0)


RULES = (
    Rule(
        ("stage_fractions",),
        _stages_wrong,
        "the stages do not rise to the final torque",
        "rising shares of the final torque, the last one 1, such as 0.4, 0.7, 1",
    ),
    Rule(
        ("adapter_extension_mm",),
        lambda i: i.adapter_extension_mm > 0 and i.wrench_length_mm is None,
        "an adapter is given without the length of the wrench",
        "give wrench_length, from the centre of the grip to the square",
    ),
    Rule(
        ("adapter_extension_mm", "wrench_length_mm"),
        _reaches_back,
        "the adapter reaches back over more than half of the wrench",
        "adapter_angle 0 for straight on, 90 for across; a longer wrench or a shorter adapter",
    ),
)

NOTICES = (
    Notice(
        "adapter_angle_estimated",
        "adapter_angle_deg",
        _odd_angle,
        "only 0° (straight on) and 90° (across: no correction) are surely held by hand: use one "
        "of them",
    ),
    Notice(
        "wrench_too_small",
        "wrench_top_nm",
        _too_much_for_wrench,
        "the last setting is above the range of this wrench: take a larger one",
    ),
    Notice(
        "wrench_too_large",
        "wrench_top_nm",
        _too_little_for_wrench,
        "the first setting is under 20 % of this wrench's range, where it is not accurate: take a "
        "smaller one",
        common_practice=True,
    ),
    Notice(
        "over_proof_with_torsion",
        "combined_stress_over_proof",
        lambda _, o: _over_one(o.combined_stress_over_proof),
        "with the torsion of tightening the fastener stands over its proof stress, which the plain "
        "clamp over proof leaves out",
    ),
    Notice(
        "over_proof_in_band",
        "clamp_over_proof_high",
        lambda _, o: _over_one(o.clamp_over_proof_high),
        "at the low end of the nut factor's band the clamp load passes the proof load: clean and "
        "lubricate the threads as the maker's torque was stated for",
    ),
    Notice(
        "moly_paste",
        "lubricant",
        lambda i, _: i.lubricant == "moly_paste",
        "molybdenum paste lowers friction: the torque must be the figure stated for that lubricant",
    ),
    Notice(
        "clamp_before_the_turn",
        "clamp_n",
        lambda i, o: i.turns_deg is not None and o.clamp_n is not None,
        "the clamp load is that of the torque alone, the turn adds to it; bolts tightened by angle "
        "may be for single use: ask the maker",
    ),
)
