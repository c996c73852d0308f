"""What the rules and figures that several calculations share read of their inputs."""

from typing import Protocol

from ringland_service.core.numbers import Number


class Air(Protocol):
    """The air where a test was made, as far as it is known."""

    @property
    def altitude_m(self) -> Number | None: ...
    @property
    def air_pressure_kpa_abs(self) -> Number | None: ...
    @property
    def weather_report_kpa_abs(self) -> Number | None: ...


class WarmBore(Protocol):
    """A bore as measured: its temperature, and what gives its expansion."""

    @property
    def bore_temperature_c(self) -> Number: ...
    @property
    def bore_alpha_per_k(self) -> Number | None: ...
    @property
    def bore_kind(self) -> str | None: ...
