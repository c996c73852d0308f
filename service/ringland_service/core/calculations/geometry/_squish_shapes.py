"""What the choice of a base gasket reads of the inputs of a squish clearance."""

from typing import Protocol

from ringland_service.core.metrology.limits import Limit


class Stack(Protocol):
    """The squish by crushed solder, or by the stack of deck, gasket and head step."""

    @property
    def solder_mm(self) -> tuple[float, ...] | None: ...
    @property
    def solder_uncertainty_mm(self) -> float | None: ...
    @property
    def deck_mm(self) -> float | None: ...
    @property
    def gasket_thickness_mm(self) -> float | None: ...
    @property
    def head_step_mm(self) -> float | None: ...
    @property
    def usual(self) -> bool: ...


class Cylinder(Protocol):
    """The cylinder, and the floor of its squish."""

    @property
    def cycle(self) -> str | None: ...
    @property
    def bore_mm(self) -> float | None: ...
    @property
    def stroke_mm(self) -> float | None: ...
    @property
    def floor_given(self) -> Limit | None: ...
    @property
    def usual(self) -> bool: ...


class Gaskets(Stack, Cylinder, Protocol):
    """The base gasket fitted, those at hand, and the squish wanted."""

    @property
    def base_gasket_fitted_mm(self) -> float | None: ...
    @property
    def base_gaskets_mm(self) -> tuple[float, ...] | None: ...
    @property
    def squish_wanted_mm(self) -> float | None: ...
