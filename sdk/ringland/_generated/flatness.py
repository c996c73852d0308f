"""Flatness and resurfacing.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, LimitAsked, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, ReadingsLike


class FlatnessLimits(TypedDict, total=False):
    """Limits of your own, by check: flatness.

    Attributes
    ----------
    flatness : LimitAsked
        flatness of the face
    skim_in_all : LimitAsked
        metal off the face in all
    face_roughness : LimitAsked
        roughness Ra of the face
    """

    flatness: LimitAsked
    skim_in_all: LimitAsked
    face_roughness: LimitAsked


@dataclass(frozen=True, kw_only=True)
class FlatnessResult:
    """None is what cannot be known.

    Attributes
    ----------
    flatness : Quantity
        largest gap under the straightedge
    worst_line : int
        line with the largest gap, counted from 1 in the order given
    skim : Quantity
        metal to take off, if the face is to be skimmed
    skim_in_all : Quantity
        metal off this face in all after the skim
    chamber_loss : Quantity | None
        volume that the skim takes from the chamber
    clearance_after : Quantity | None
        clearance volume after the skim
    ratio_before : float | None
        compression ratio before the skim
    ratio_after : float | None
        compression ratio after the skim
    """

    flatness: Quantity
    worst_line: int
    skim: Quantity
    skim_in_all: Quantity
    chamber_loss: Quantity | None = None
    clearance_after: Quantity | None = None
    ratio_before: float | None = None
    ratio_after: float | None = None


class Flatness(Calculation[FlatnessResult]):
    """Flatness and resurfacing.

    Flatness of a face from a straightedge, the skim that it takes, and the chamber volume and ratio
    after. Head and cylinder both; studs pull the face up around their holes: repair threads by
    insert, square to the face, before the skim. On the bench too: crack test by dye between seats
    and plug hole, leak test of the valves, and a liquid-cooled head pressure-tested warm under
    water.
    """

    NAME = "flatness"
    RESULT = FlatnessResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "lines": "readings",
        "face_length": "quantity",
        "skim_allowance": "quantity",
        "skim_done": "quantity",
        "chamber_area": "quantity",
        "swept": "quantity",
        "clearance": "quantity",
        "roughness": "quantity",
        "limits": {
            "flatness": {"low": "quantity", "high": "quantity"},
            "skim_in_all": {"low": "quantity", "high": "quantity"},
            "face_roughness": {"low": "quantity", "high": "quantity"},
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        lines: ReadingsLike,
        face_length: QuantityLike | None = None,
        rocks: bool | None = None,
        skim_allowance: QuantityLike | None = None,
        skim_done: QuantityLike | None = None,
        chamber_area: QuantityLike | None = None,
        swept: QuantityLike | None = None,
        clearance: QuantityLike | None = None,
        gasket_kind: Literal["composite", "multi_layer_steel"] | None = None,
        roughness: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        limits: FlatnessLimits | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[FlatnessResult]:
        """Ask ``flatness`` one question.

        Parameters
        ----------
        lines : ReadingsLike
            largest feeler that passes under the straightedge on each line: four edges and two
            diagonals; 0 where none passes
        face_length : QuantityLike, optional
            longest side of the face, for the limit that shops keep
        rocks : bool, optional
            whether the face rocks on a surface plate: then it is crowned, not hollow
        skim_allowance : QuantityLike, optional
            metal to take off beyond the hollow, for a clean cut all over (default 0.0 mm)
        skim_done : QuantityLike, optional
            metal already taken off this face, in all
        chamber_area : QuantityLike, optional
            area of the combustion chamber at the face, as measured: it shrinks with depth
        swept : QuantityLike, optional
            swept volume of one cylinder
        clearance : QuantityLike, optional
            clearance volume before the skim: above the piston at top dead centre
        gasket_kind : str, optional
            kind of gasket that the face seals (composite: composite or fibre gasket;
            multi_layer_steel: multi-layer steel gasket)
        roughness : QuantityLike, optional
            roughness Ra of the face as it goes back
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        limits : FlatnessLimits, optional
            limits by check; these win over the common-practice ones
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "lines": lines,
            "face_length": face_length,
            "rocks": rocks,
            "skim_allowance": skim_allowance,
            "skim_done": skim_done,
            "chamber_area": chamber_area,
            "swept": swept,
            "clearance": clearance,
            "gasket_kind": gasket_kind,
            "roughness": roughness,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
            "limits": limits,
        }
        return self._answer(fields, units, trace)
