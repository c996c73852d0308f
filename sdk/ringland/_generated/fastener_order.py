"""Order of fasteners.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import ClassVar, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import QuantityLike


class FastenerOrderFastener(TypedDict):
    """Fields of one entry.

    Attributes
    ----------
    id : str
        number or name of the fastener
    x : QuantityLike
        place along x
    y : QuantityLike
        place along y
    group : int
        group by size of thread: 1 the largest, tightened first (default 1)
    """

    id: str
    x: QuantityLike
    y: QuantityLike
    group: NotRequired[int]


@dataclass(frozen=True, kw_only=True)
class FastenerOrderResult:
    """None is what cannot be known.

    Attributes
    ----------
    tighten_order : tuple[str | float, ...] | None
        order of tightening
    relieve_order : tuple[str | float, ...] | None
        order of relief
    tighten_list : tuple[str | float, ...] | None
        rounds of tightening
    relieve_list : tuple[str | float, ...] | None
        rounds of relief
    """

    tighten_order: tuple[str | float, ...] | None = None
    relieve_order: tuple[str | float, ...] | None = None
    tighten_list: tuple[str | float, ...] | None = None
    relieve_list: tuple[str | float, ...] | None = None


class FastenerOrder(Calculation[FastenerOrderResult]):
    """Order of fasteners.

    Order in which the fasteners of a head or cover are tightened, from the centre criss-cross, and
    relieved in reverse by part turns. The maker's drawing always wins. Cam caps have an order of
    their own, and their springs push: relieve them evenly.
    """

    NAME = "fastener-order"
    RESULT = FastenerOrderResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "fasteners": [{"x": "quantity", "y": "quantity"}],
        "relief_step_turn": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        fasteners: Sequence[FastenerOrderFastener],
        tighten_stages: int | None = None,
        relief_steps: int | None = None,
        relief_step_turn: QuantityLike | None = None,
        ring_share: float | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[FastenerOrderResult]:
        """Ask ``fastener-order`` one question.

        Parameters
        ----------
        fasteners : Sequence[FastenerOrderFastener]
            fasteners of one face, seen from above; x to the right, y up, any zero
        tighten_stages : int, optional
            number of torque stages (default 3)
        relief_steps : int, optional
            number of rounds in which the fasteners are relieved (default 3)
        relief_step_turn : QuantityLike, optional
            turn of each fastener in one round of relief (default 90.0 deg)
        ring_share : float, optional
            share of the largest distance from the centroid within which fasteners make one ring
            (default 0.1)
        rule : Rule, optional
            decision rule: guard_2u: guard of U = 2u on each limit (default); guard_1645u: guard of
            1.645·u, 95 % one-sided; simple: no guard: the value alone decides (default guard_2u)
        defaults : Defaults, optional
            whether common-practice figures stand in where the request gives none, as limits and
            inside the arithmetic; off: what rests on one is absent, and a warning (needs_figure)
            says what to give (default on)
        measuring : MeasuringAsked, optional
            how the readings were taken; one instrument shares its setting error
        units : str, optional
            Units of the answer.
        trace : bool, optional
            Whether to show each formula with its numbers.

        Raises
        ------
        InvalidInput, ServiceError, ConnectionFailed
        """
        fields = {
            "fasteners": fasteners,
            "tighten_stages": tighten_stages,
            "relief_steps": relief_steps,
            "relief_step_turn": relief_step_turn,
            "ring_share": ring_share,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
