"""Running clearance, for comparison only.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike


@dataclass(frozen=True, kw_only=True)
class HotClearanceResult:
    """None is what cannot be known.

    Attributes
    ----------
    cold_clearance : Quantity
        clearance at 20 °C, diametral
    hot_piston : Quantity
        piston skirt when running
    hot_clearance_all_iron : Quantity
        clearance when running, were the cylinder all iron
    hot_clearance_sleeve_in_aluminium : Quantity | None
        clearance when running, were it an iron sleeve in aluminium
    hot_clearance_plated_aluminium : Quantity
        clearance when running, were it aluminium: plated, chromed or bare
    hot_clearance : Quantity | None
        clearance when running in this bore
    """

    cold_clearance: Quantity
    hot_piston: Quantity
    hot_clearance_all_iron: Quantity
    hot_clearance_sleeve_in_aluminium: Quantity | None = None
    hot_clearance_plated_aluminium: Quantity
    hot_clearance: Quantity | None = None


class HotClearance(Calculation[HotClearanceResult]):
    """Running clearance, for comparison only.

    What becomes of a cold clearance at running temperature, in this bore and in other kinds of
    cylinder: why one kind of bore needs more cold clearance than another. Never a verdict.
    """

    NAME = "hot-clearance"
    RESULT = HotClearanceResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "bore": "quantity",
        "piston_size": "quantity",
        "bore_hot": "quantity",
        "piston_hot": "quantity",
        "piston_alpha": "quantity",
        "bore_alpha": "quantity",
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        bore: QuantityLike,
        piston_size: QuantityLike,
        bore_hot: QuantityLike,
        piston_hot: QuantityLike,
        piston_material: Literal[
            "grey_iron",
            "steel",
            "piston_forged_low_silicon",
            "piston_cast_eutectic",
            "piston_high_silicon",
            "aluminium_cylinder",
            "iron_sleeve_in_aluminium",
        ]
        | None = None,
        piston_alpha: QuantityLike | None = None,
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ]
        | None = None,
        bore_alpha: QuantityLike | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[HotClearanceResult]:
        """Ask ``hot-clearance`` one question.

        Parameters
        ----------
        bore : QuantityLike
            bore at 20 °C
        piston_size : QuantityLike
            piston at 20 °C across the thrust axis, at the maker's height on the skirt
        bore_hot : QuantityLike
            temperature of the cylinder when running
        piston_hot : QuantityLike
            temperature of the piston skirt when running
        piston_material : str, optional
            alloy of the piston, for its expansion (grey_iron: grey iron; steel: steel;
            piston_forged_low_silicon: low-silicon forged piston alloy; piston_cast_eutectic:
            eutectic cast piston alloy; piston_high_silicon: high-silicon piston alloy;
            aluminium_cylinder: aluminium cylinder, plated, chromed or bare;
            iron_sleeve_in_aluminium: iron sleeve cast in aluminium, effective)
        piston_alpha : QuantityLike, optional
            expansion of the piston; wins over its alloy
        bore_kind : str, optional
            kind of bore (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve in an aluminium
            cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium: bare silicon
            aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not known)
            (default unknown)
        bore_alpha : QuantityLike, optional
            effective expansion of the bore; wins over its kind
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
            "bore": bore,
            "piston_size": piston_size,
            "bore_hot": bore_hot,
            "piston_hot": piston_hot,
            "piston_material": piston_material,
            "piston_alpha": piston_alpha,
            "bore_kind": bore_kind,
            "bore_alpha": bore_alpha,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
