"""C48: oil in the fuel of a two-stroke, and a tank that holds another mix."""

from ringland_service.core.declare import (
    Calculation,
    Notice,
    Rule,
    kinds,
    number,
    quantity,
    record,
    result,
)
from ringland_service.core.formulas import running_in
from ringland_service.core.numbers import Number
from ringland_service.core.quantities import assembly as quantities

RATIO = "arithmetic of a ratio by volume"


@record
class Inputs:
    """Fuel to be mixed, the ratio, and what the tank already holds."""

    fuel_l: Number = quantity(quantities.FUEL, "fuel to be mixed, without oil")
    ratio_fuel_to_oil: Number = number(
        "fuel to oil by volume: 32 stands for 32:1",
        low=8.0,
        high=200.0,
        warn=(16.0, 60.0),
        example=32.0,
    )
    tank_has_l: Number | None = quantity(
        quantities.TANK_MIX, "mix that the tank already holds, fuel and oil together", default=None
    )
    tank_ratio: Number | None = number(
        "fuel to oil of the mix in the tank",
        low=8.0,
        high=200.0,
        warn=(16.0, 60.0),
        example=40.0,
        default=None,
    )


@record
class Outputs:
    """Oil for the fuel, and what brings the tank to the same ratio."""

    oil_ml: Number = result(
        "oil for this fuel",
        kind=kinds.LIQUID,
        digits=0,
        formula="1000 * fuel_l / ratio_fuel_to_oil",
        source=RATIO,
    )
    oil_of_fuel_pct: Number = result(
        "oil, share of the fuel",
        kind=kinds.PERCENT,
        digits=2,
        formula="100 / ratio_fuel_to_oil",
        source=RATIO,
    )
    oil_of_mix_pct: Number = result(
        "oil, share of the mix",
        kind=kinds.PERCENT,
        digits=2,
        formula="100 / (ratio_fuel_to_oil + 1)",
        source=RATIO,
    )
    oil_in_tank_ml: Number | None = result(
        "oil already in the tank",
        kind=kinds.LIQUID,
        digits=1,
        formula="1000 * tank_has_l / (tank_ratio + 1)",
        source=RATIO,
        default=None,
    )
    fuel_in_tank_ml: Number | None = result(
        "fuel already in the tank, without its oil",
        kind=kinds.LIQUID,
        digits=0,
        formula="1000 * tank_has_l - oil_in_tank_ml",
        source=RATIO,
        default=None,
    )
    oil_to_bring_tank_to_ratio_ml: Number | None = result(
        "oil that brings the tank's mix to the ratio; 0 where it holds enough",
        kind=kinds.LIQUID,
        digits=1,
        formula="max(fuel_in_tank_ml / ratio_fuel_to_oil - oil_in_tank_ml, 0)",
        source=RATIO,
        default=None,
    )
    fuel_to_bring_tank_to_ratio_ml: Number | None = result(
        "fuel without oil that brings the tank's mix to the ratio; 0 where it holds enough",
        kind=kinds.LIQUID,
        digits=0,
        formula="max(oil_in_tank_ml * ratio_fuel_to_oil - fuel_in_tank_ml, 0)",
        source=RATIO,
        default=None,
    )


def compute(inputs: Inputs) -> Outputs:
    """Work out the oil, and the tank's part where what it holds is known."""
    ratio = inputs.ratio_fuel_to_oil
    oil = fuel = add_oil = add_fuel = None
    if inputs.tank_has_l is not None and inputs.tank_ratio is not None:
        mix = 1000.0 * inputs.tank_has_l
        oil = running_in.oil_in_mix_ml(mix, inputs.tank_ratio)
        fuel = mix - oil
        add_oil = running_in.lacking(running_in.oil_ml(fuel, ratio), oil)
        add_fuel = running_in.lacking(oil * ratio, fuel)
    return Outputs(
        oil_ml=running_in.oil_ml(1000.0 * inputs.fuel_l, ratio),
        oil_of_fuel_pct=running_in.oil_ml(100.0, ratio),
        oil_of_mix_pct=running_in.oil_in_mix_ml(100.0, ratio),
        oil_in_tank_ml=oil,
        fuel_in_tank_ml=fuel,
        oil_to_bring_tank_to_ratio_ml=add_oil,
        fuel_to_bring_tank_to_ratio_ml=add_fuel,
    )


def _richer_in_oil(inputs: Inputs, _: Outputs) -> object:
    if inputs.tank_ratio is None:
        return False
    return inputs.ratio_fuel_to_oil < inputs.tank_ratio


def _tank_over_oiled(_: Inputs, outputs: Outputs) -> object:
    if outputs.fuel_to_bring_tank_to_ratio_ml is None:
        return False
    # A tank at the ratio itself differs in the last digits only.
    return outputs.fuel_to_bring_tank_to_ratio_ml > 0.01


CALCULATION = Calculation(
    name="premix",
    number="C48",
    stage="assembly",
    title="Fuel and oil premix",
    summary="Oil for a two-stroke's fuel at a ratio of fuel to oil, and what brings the mix in the "
    "tank to it. The makers of engine and oil say which ratio; more oil for running in only if "
    "they say so.",
    inputs=Inputs,
    outputs=Outputs,
    compute=compute,
    rules=(
        Rule(
            ("tank_has_l",),
            lambda i: i.tank_ratio is None,
            "the ratio of the mix in the tank is missing",
            "give tank_ratio, or leave the tank out",
        ),
        Rule(
            ("tank_ratio",),
            lambda i: i.tank_has_l is None,
            "how much mix the tank holds is missing",
            "give tank_has, or leave the tank out",
        ),
    ),
    notices=(
        Notice(
            "more_oil_leans_the_fuel",
            "ratio_fuel_to_oil",
            _richer_in_oil,
            "more oil than in the tank so far takes the place of fuel and leans the mixture: look "
            "at the plug and the jetting",
        ),
        Notice(
            "tank_over_oiled",
            "tank_has_l",
            _tank_over_oiled,
            "the tank holds more oil than the ratio asks for: fuel without oil brings it there",
        ),
    ),
    cautions=("fuel",),
)
