"""What the helpers of several calculations on bore and piston read of their inputs."""

from typing import Protocol

from ringland_service.core.engines.survey import Survey
from ringland_service.core.numbers import Number


class WarmBore(Protocol):
    """A bore, its temperature when measured, and how it expands."""

    @property
    def bore_kind(self) -> str: ...
    @property
    def bore_temperature_c(self) -> Number: ...
    @property
    def bore_alpha_per_k(self) -> Number | None: ...


class WarmPiston(Protocol):
    """A piston, its temperature when measured, and how it expands."""

    @property
    def piston_kind(self) -> str | None: ...
    @property
    def piston_material(self) -> str | None: ...
    @property
    def piston_temperature_c(self) -> Number: ...
    @property
    def piston_alpha_per_k(self) -> Number | None: ...


class BoreRead(Protocol):
    """The bore in the skirt travel: surveyed, or told by its largest and its smallest size."""

    @property
    def bore_survey(self) -> Survey | None: ...
    @property
    def bore_largest_mm(self) -> Number | None: ...
    @property
    def bore_smallest_mm(self) -> Number | None: ...
    @property
    def skirt_from_mm(self) -> Number | None: ...
    @property
    def skirt_to_mm(self) -> Number | None: ...


class OfOneCycle(Protocol):
    """A kind of piston, and the cycle of its engine."""

    @property
    def cycle(self) -> str | None: ...
    @property
    def piston_kind(self) -> str | None: ...


class Paired(Protocol):
    """A kind of piston, and the kind of bore that it is for."""

    @property
    def bore_kind(self) -> str: ...
    @property
    def piston_kind(self) -> str | None: ...
