"""Which sizes of the thread and which nut factor an answer on torque rests on."""

from ringland_service.core.calculations.assembly._torque_inputs import Inputs
from ringland_service.core.declare import Figure, Rule
from ringland_service.core.declare.usual import Usual
from ringland_service.core.formulas import fasteners, threads
from ringland_service.core.metrology.conformity import at_most, beyond
from ringland_service.core.numbers import Number

# Machine-design textbooks.
NUT_FACTOR: dict[str, float] = {"dry": 0.20, "oiled": 0.165, "moly_paste": 0.115}
# The coarsest metric threads have a pitch of about a quarter of their diameter.
COARSEST_SHARE = 0.27


def pitch_diameter_mm(i: Inputs) -> Number | None:
    """Return the pitch diameter: as given, else of the metric profile [mm]."""
    given = i.thread_pitch_diameter_mm
    if given is not None or i.thread_diameter_mm is None or i.pitch_mm is None:
        return given
    return threads.thread_pitch_diameter_mm(i.thread_diameter_mm, i.pitch_mm)


def minor_diameter_mm(i: Inputs) -> Number | None:
    """Return the minor diameter: as given, else of the metric profile [mm]."""
    given = i.thread_minor_diameter_mm
    if given is not None or i.thread_diameter_mm is None or i.pitch_mm is None:
        return given
    return threads.thread_minor_diameter_mm(i.thread_diameter_mm, i.pitch_mm)


def stress_area_mm2(i: Inputs) -> Number | None:
    """Return the stress area: as given, else of pitch and minor diameter [mm2]."""
    pitch_diameter, minor_diameter = pitch_diameter_mm(i), minor_diameter_mm(i)
    if i.stress_area_mm2 is not None or pitch_diameter is None or minor_diameter is None:
        return i.stress_area_mm2
    return threads.stress_area_mm2(pitch_diameter, minor_diameter)


def nut_factor(i: Inputs) -> Number | None:
    """Return the nut factor: as given, else of the frictions, else of the lubricant."""
    if i.nut_factor is not None:
        return i.nut_factor
    diameter, pitch, pitch_diameter = i.thread_diameter_mm, i.pitch_mm, pitch_diameter_mm(i)
    thread, head = i.thread_friction, i.head_friction
    if (
        diameter is not None
        and pitch is not None
        and pitch_diameter is not None
        and thread is not None
        and head is not None
    ):
        return fasteners.nut_factor_of_friction(
            diameter, pitch, pitch_diameter, thread, head, i.bearing_over_thread
        )
    return None if i.lubricant == "unknown" else NUT_FACTOR[i.lubricant]


def torsion_mpa(i: Inputs, clamp_n: Number | None) -> Number | None:
    """Return the shear stress of tightening, where thread and friction are known [MPa]."""
    pitch_diameter, minor_diameter = pitch_diameter_mm(i), minor_diameter_mm(i)
    if clamp_n is None or pitch_diameter is None or minor_diameter is None:
        return None
    if i.pitch_mm is None or i.thread_friction is None:
        return None
    return fasteners.torsion_stress_mpa(
        clamp_n, i.pitch_mm, pitch_diameter, minor_diameter, i.thread_friction
    )


RULES = (
    Rule(
        ("pitch_mm", "thread_diameter_mm"),
        lambda i: beyond(i.pitch_mm, COARSEST_SHARE * i.thread_diameter_mm),
        "the pitch is too coarse for this diameter",
        "a pitch in mm per turn, such as 1.25 for M8; 20 threads an inch are 1.27 mm",
    ),
    Rule(
        ("thread_pitch_diameter_mm", "thread_diameter_mm"),
        lambda i: at_most(i.thread_diameter_mm, i.thread_pitch_diameter_mm),
        "the pitch diameter is not smaller than the thread's diameter",
        "pitch diameter between minor and nominal diameter, such as 7.188 for M8x1.25",
    ),
    Rule(
        ("thread_minor_diameter_mm", "thread_pitch_diameter_mm"),
        lambda i: at_most(i.thread_pitch_diameter_mm, i.thread_minor_diameter_mm),
        "the minor diameter is not smaller than the pitch diameter",
        "minor diameter at the root of the thread, such as 6.466 for M8x1.25",
    ),
    Rule(
        ("thread_minor_diameter_mm", "thread_diameter_mm"),
        lambda i: at_most(i.thread_diameter_mm, i.thread_minor_diameter_mm),
        "the minor diameter is not smaller than the thread's diameter",
        "minor diameter at the root of the thread, such as 6.466 for M8x1.25",
    ),
    Rule(
        ("stress_area_mm2", "thread_diameter_mm"),
        lambda i: beyond(i.stress_area_mm2, 0.7854 * i.thread_diameter_mm**2),
        "the stress area is larger than the whole section of the thread",
        "stress area in mm2, such as 36.6 for M8x1.25",
    ),
)


def _of_frictions(i: Inputs) -> bool:
    parts = (i.thread_diameter_mm, i.pitch_mm, i.thread_friction, i.head_friction)
    return i.nut_factor is None and None not in parts


def _of_lubricant(i: Inputs) -> bool:
    return i.nut_factor is None and not _of_frictions(i)


RESTING = ("nut_factor_used", "torsion_stress_mpa")
FIGURES = (
    Figure(
        "nut_factor",
        RESTING,
        lambda i, _: _of_lubricant(i),
        "thread_friction and head_friction with the pitch",
    ),
    Figure(
        "bearing_over_thread",
        RESTING,
        lambda i, _: _of_frictions(i) and isinstance(i.bearing_over_thread, Usual),
        "nut_factor",
    ),
)
