"""The bore by depth as a picture: both axes against new size, limit and uncertainty.

Depth runs down the page as it does in the cylinder, the deck on top; the diameter across, much
magnified. Axes differ by marker and dash, never by colour.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import cast

from ringland_service.api.json_types import AnswerJson, VerdictJson
from ringland_service.api.shapes import members as shapes
from ringland_service.api.shapes.figures import REMARK, Told, interval, plain, quantity, told_value
from ringland_service.api.writing.pages import blocks
from ringland_service.api.writing.pages.templates import filled
from ringland_service.api.writing.pictures import bore_layout as layout
from ringland_service.api.writing.pictures.surveyed import Axis, Line, Surveyed, surveyed
from ringland_service.core.declare import Calculation, Operation
from ringland_service.core.metrology.conformity import WORDS

AXIS_WORDS = {"thrust": "thrust axis, across the pin", "pin": "pin axis, along the pin"}
LEGEND_STEP, VERDICT_STEP, INTERVAL_STEP = 22.0, 20.0, 15.0


@dataclass(frozen=True)
class Entry:
    """One entry of the legend: the sign drawn, and its words."""

    sign: str
    label: str
    x: float
    y: float


@dataclass(frozen=True)
class Below:
    """A verdict below the picture; its interval has a line of its own, for want of width."""

    told: blocks.Judged
    interval: str
    y: float


def picture(calculation: Operation, found: AnswerJson) -> str:
    """Return the answer of ``bore-survey`` as an SVG document."""
    return drawing(cast(Calculation, calculation), found, alone=True)


def drawing(calculation: Calculation, found: AnswerJson, *, alone: bool) -> str:
    """Return the picture; ``alone`` with its title, verdicts and caution, else for a page."""
    drawn = surveyed(found)
    scene = layout.scene(drawn)
    legend = _legend(drawn, scene)
    first = legend[-1].y + 42.0
    verdicts = _below(found["verdicts"], first) if alone else []
    cautions = found["cautions"] if alone else ()
    last = _end(verdicts[-1]) if verdicts else legend[-1].y
    return filled(
        "bore_survey.svg",
        alone=alone,
        title=calculation.title,
        shape=_shape(calculation, found["result"]),
        scene=scene,
        drawn=drawn,
        legend=legend,
        verdicts=verdicts,
        first=first,
        interval_step=INTERVAL_STEP,
        caution=cautions[0] if cautions else "",
        first_y=0.0 if alone else 44.0,
        height=last + (40.0 if alone else 14.0),
        told=told(drawn, found),
        size=lambda value: size_text(drawn, value),
        px=lambda value: plain(value, 2),
    )


def _below(verdicts: Sequence[VerdictJson], first: float) -> list[Below]:
    """Return the verdicts, one below the other."""
    found: list[Below] = []
    for verdict in verdicts:
        (told_,) = blocks.verdicts([{**verdict, "interval": None}])
        y = _end(found[-1]) if found else first
        found.append(Below(told_, _interval(verdict), y))
    return found


def _end(one: Below) -> float:
    """Return where the next verdict stands."""
    return one.y + VERDICT_STEP + (INTERVAL_STEP if one.interval else 0.0)


def _interval(verdict: VerdictJson) -> str:
    ends, value = verdict["interval"], told_value(verdict["value"])
    if ends is None or REMARK in verdict:
        return ""
    return f"{interval(ends, value['decimals'])} {value['unit']}"


def size_text(drawn: Surveyed, value: float) -> str:
    """Return a diameter with its unit."""
    return f"{plain(value, drawn.decimals)} {drawn.unit}"


def _shape(calculation: Calculation, result: AnswerJson) -> list[str]:
    """Return the words for the bore lengthwise and across."""
    known = shapes.members(calculation.outputs)
    names = [name for name in ("shape", "cross_section") if name in result]
    return [known[name].shape.page_text(result[name]) for name in names]


def _legend(drawn: Surveyed, scene: layout.Scene) -> list[Entry]:
    words = [(axis.name, AXIS_WORDS[axis.name]) for axis in drawn.axes]
    for sign, line, about in (
        ("new", drawn.new, "new size {}"),
        ("high", drawn.high, "limit at most {}"),
        ("low", drawn.low, "limit at least {}"),
    ):
        if line is not None:
            words.append((sign, _line_words(drawn, scene, line, about)))
    uncertainties = _uncertainties(drawn)
    if uncertainties:
        words.append(("uncertainty", uncertainties))
    top = scene.bottom + 68.0
    return [
        Entry(sign, told_, 24.0 if i % 2 == 0 else 404.0, top + LEGEND_STEP * (i // 2))
        for i, (sign, told_) in enumerate(words)
    ]


def _line_words(drawn: Surveyed, scene: layout.Scene, line: Line, about: str) -> str:
    told_ = f"{about.format(size_text(drawn, line.size))} ({line.label})"
    if scene.across.holds(line.size):
        return told_
    return f"{told_}, off scale"


def _uncertainties(drawn: Surveyed) -> str:
    """Return the uncertainty of a reading in words; of each axis where they differ."""
    known = [axis for axis in drawn.axes if axis.uncertainty is not None]
    shown = {axis.name: _uncertainty(drawn, axis) for axis in known}
    if not shown:
        return ""
    if len(shown) == len(drawn.axes) and len(set(shown.values())) == 1:
        return f"{shown[known[0].name]} (k = 2), uncertainty of a reading"
    return "; ".join(f"{name} {one}" for name, one in shown.items()) + " (k = 2)"


def _uncertainty(drawn: Surveyed, axis: Axis) -> str:
    value: Told = {
        "value": 0.0,
        "unit": drawn.unit,
        "decimals": drawn.decimals,
        "uncertainty": axis.uncertainty,
    }
    return "±" + quantity(value).partition("±")[2]


def told(drawn: Surveyed, found: AnswerJson) -> str:
    """Return the picture in words, for those who do not see it."""
    texts = []
    for i, depth in enumerate(drawn.depths):
        shown = [
            f"{axis.name} {'not read' if size is None else size_text(drawn, size)}"
            for axis in drawn.axes
            for size in axis.sizes[i : i + 1]
        ]
        at = f"{plain(depth, drawn.depth_digits)} {drawn.depth_unit}"
        texts.append(f"At {at} below the deck: {', '.join(shown)}.")
    if drawn.new is not None:
        texts.append(f"New size {size_text(drawn, drawn.new.size)}, {drawn.new.label}.")
    texts += [f"{v['label']}: {WORDS[v['verdict']]}." for v in found["verdicts"]]
    return " ".join(texts)
