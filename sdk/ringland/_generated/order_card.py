"""Order card to the machinist.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar, Literal, NotRequired, TypedDict

from ringland._answers import Answer
from ringland._asking import Shape
from ringland._calculation import Calculation
from ringland._generated._envelope import MEASURING, MeasuringAsked
from ringland._generated._words import Defaults, Rule, Units
from ringland._types import Quantity, QuantityLike, ReadingsLike


class OrderCardHeads(TypedDict):
    """The head, where it is sent too.

    Attributes
    ----------
    seat_angle : QuantityLike
        angle of the valve seats
    intake_seat_width_low : QuantityLike
        intake seat, least width
    intake_seat_width_high : QuantityLike
        intake seat, largest width
    exhaust_seat_width_low : QuantityLike
        exhaust seat, least width
    exhaust_seat_width_high : QuantityLike
        exhaust seat, largest width
    contact : str
        where the seat is to touch the valve's face
    sink_max : QuantityLike
        most sink of a valve below its new place
    intake_guide_low : QuantityLike
        intake guide, least clearance
    intake_guide_high : QuantityLike
        intake guide, largest clearance
    exhaust_guide_low : QuantityLike
        exhaust guide, least clearance
    exhaust_guide_high : QuantityLike
        exhaust guide, largest clearance
    flatness_max : QuantityLike
        how flat the head's face must be
    skim_max : QuantityLike
        most that may be taken off the head's face
    valve_to_piston_checked : bool
        valve-to-piston clearance is checked for this work
    spring_installed_height : QuantityLike
        installed height of the valve springs
    """

    seat_angle: NotRequired[QuantityLike]
    intake_seat_width_low: NotRequired[QuantityLike]
    intake_seat_width_high: NotRequired[QuantityLike]
    exhaust_seat_width_low: NotRequired[QuantityLike]
    exhaust_seat_width_high: NotRequired[QuantityLike]
    contact: NotRequired[str]
    sink_max: NotRequired[QuantityLike]
    intake_guide_low: NotRequired[QuantityLike]
    intake_guide_high: NotRequired[QuantityLike]
    exhaust_guide_low: NotRequired[QuantityLike]
    exhaust_guide_high: NotRequired[QuantityLike]
    flatness_max: NotRequired[QuantityLike]
    skim_max: NotRequired[QuantityLike]
    valve_to_piston_checked: NotRequired[bool]
    spring_installed_height: NotRequired[QuantityLike]


@dataclass(frozen=True, kw_only=True)
class OrderCardResultLine:
    """None is what cannot be known.

    Attributes
    ----------
    point : int | None
        number of the point, 1 to 17
    heading : str | None
        what the point is about
    stated : bool | None
        nothing must be written in
    text : str | None
        the point in words
    """

    point: int | None = None
    heading: str | None = None
    stated: bool | None = None
    text: str | None = None


@dataclass(frozen=True, kw_only=True)
class OrderCardResult:
    """None is what cannot be known.

    Attributes
    ----------
    complete : Literal['complete', 'incomplete']
        whether the card can go out
    finish_low : Quantity | None
        finish bore, lower limit at 20 °C
    finish_high : Quantity | None
        finish bore, upper limit at 20 °C
    bore_to : Quantity | None
        diameter to bore to; the rest is the hone's
    zone : Quantity | None
        upper less lower limit of the finish bore
    still_to_fill : tuple[str | float, ...] | None
        what must be written in before the card goes out, by point
    lines : tuple[OrderCardResultLine, ...]
        the card, point by point
    """

    complete: Literal["complete", "incomplete"]
    finish_low: Quantity | None = None
    finish_high: Quantity | None = None
    bore_to: Quantity | None = None
    zone: Quantity | None = None
    still_to_fill: tuple[str | float, ...] | None = None
    lines: tuple[OrderCardResultLine, ...]


class OrderCard(Calculation[OrderCardResult]):
    """Order card to the machinist.

    The seventeen points that the machinist must know, each in words with a unit on every number,
    and what is still to be written in. Finish bore as two limits, never ±; a plated, chromed or
    bare silicon bore is never ordered bored. One card for each cylinder.
    """

    NAME = "order-card"
    RESULT = OrderCardResult
    SHAPES: ClassVar[Mapping[str, Shape]] = {
        "piston_size": "quantity",
        "measuring_height": "quantity",
        "clearance_low": "quantity",
        "clearance_high": "quantity",
        "gasket_bore": "quantity",
        "hone_stock": "quantity",
        "hone_removal": "quantity",
        "interference": "quantity",
        "heat": "quantity",
        "drop_in_clearance": "quantity",
        "out_of_round_max": "quantity",
        "taper_max": "quantity",
        "proof_depths": "readings",
        "included_angle": "quantity",
        "torque": "quantity",
        "port_chamfer_low": "quantity",
        "port_chamfer_high": "quantity",
        "port_chamfer_angle": "quantity",
        "bridge_relief_low": "quantity",
        "bridge_relief_high": "quantity",
        "mouth_chamfer_low": "quantity",
        "mouth_chamfer_high": "quantity",
        "mouth_chamfer_angle": "quantity",
        "deck_height": "quantity",
        "deck_cut": "quantity",
        "wall_floor": "quantity",
        "heads": {
            "seat_angle": "quantity",
            "intake_seat_width_low": "quantity",
            "intake_seat_width_high": "quantity",
            "exhaust_seat_width_low": "quantity",
            "exhaust_seat_width_high": "quantity",
            "sink_max": "quantity",
            "intake_guide_low": "quantity",
            "intake_guide_high": "quantity",
            "exhaust_guide_low": "quantity",
            "exhaust_guide_high": "quantity",
            "flatness_max": "quantity",
            "skim_max": "quantity",
            "spring_installed_height": "quantity",
        },
        "measuring": MEASURING,
    }

    def __call__(
        self,
        *,
        work: Literal["bore_and_hone", "hone", "light_hone", "sleeve", "replate", "heads_only"],
        bore_kind: Literal[
            "iron",
            "iron_sleeve_in_aluminium",
            "plated_aluminium",
            "bare_silicon_aluminium",
            "chromed",
            "unknown",
        ],
        cycle: Literal["four_stroke", "two_stroke"] | None = None,
        job: str | None = None,
        date: str | None = None,
        cylinder_number: int | None = None,
        end_up: str | None = None,
        exhaust_side_marked: bool | None = None,
        parts_sent: int | None = None,
        piston_size: QuantityLike | None = None,
        piston_mark: str | None = None,
        measuring_height: QuantityLike | None = None,
        piston_instrument: str | None = None,
        clearance_low: QuantityLike | None = None,
        clearance_high: QuantityLike | None = None,
        inches_too: bool | None = None,
        gasket_bore: QuantityLike | None = None,
        hone_stock: QuantityLike | None = None,
        hone_removal: QuantityLike | None = None,
        interference: QuantityLike | None = None,
        heat: QuantityLike | None = None,
        drop_in_clearance: QuantityLike | None = None,
        replate_to: str | None = None,
        out_of_round_max: QuantityLike | None = None,
        taper_max: QuantityLike | None = None,
        proof_depths: ReadingsLike | None = None,
        boring_centre: Literal["unworn_bottom", "existing_centre", "true_up"] | None = None,
        included_angle: QuantityLike | None = None,
        stroke_drive: Literal["constant", "crank", "unknown"] | None = None,
        ring_kind: Literal["plain_iron", "coated"] | None = None,
        finish: str | None = None,
        torque_plate: bool | None = None,
        gasket: str | None = None,
        torque: QuantityLike | None = None,
        studs: str | None = None,
        honed: Literal["cold", "hot"] | None = None,
        port_chamfer_low: QuantityLike | None = None,
        port_chamfer_high: QuantityLike | None = None,
        port_chamfer_angle: QuantityLike | None = None,
        exhaust_bridge: bool | None = None,
        bridge_relief_low: QuantityLike | None = None,
        bridge_relief_high: QuantityLike | None = None,
        mouth_chamfer_low: QuantityLike | None = None,
        mouth_chamfer_high: QuantityLike | None = None,
        mouth_chamfer_angle: QuantityLike | None = None,
        deck_height: QuantityLike | None = None,
        deck_cut: QuantityLike | None = None,
        wall_floor: QuantityLike | None = None,
        liner_kind: Literal["dry", "wet_or_air_cooled", "parent_iron"] | None = None,
        heads: OrderCardHeads | None = None,
        price_limit: float | None = None,
        currency: str | None = None,
        wanted: str | None = None,
        approver: str | None = None,
        rule: Rule | None = None,
        defaults: Defaults | None = None,
        measuring: MeasuringAsked | None = None,
        units: Units | None = None,
        trace: bool = False,
    ) -> Answer[OrderCardResult]:
        """Ask ``order-card`` one question.

        Parameters
        ----------
        work : str
            work ordered (bore_and_hone: bore, and hone to the finish limits; hone: hone to the
            finish limits, no boring; light_hone: light hone for new rings, the bore keeps its size;
            sleeve: fit an iron sleeve, then bore and hone it; replate: replate, and finish by the
            plating maker's method; heads_only: work on the head alone)
        bore_kind : str
            kind of bore as it is sent (iron: iron cylinder; iron_sleeve_in_aluminium: iron sleeve
            in an aluminium cylinder; plated_aluminium: plated aluminium; bare_silicon_aluminium:
            bare silicon aluminium, no plating; chromed: aluminium, bore hard-chromed; unknown: not
            known)
        cycle : str, optional
            cycle (four_stroke: four-stroke; two_stroke: two-stroke)
        job : str, optional
            job number
        date : str, optional
            date of the order
        cylinder_number : int, optional
            number of the cylinder sent
        end_up : str, optional
            which end is up, as a mark on the cylinder says it
        exhaust_side_marked : bool, optional
            the exhaust side is marked on the cylinder
        parts_sent : int, optional
            parts sent, counted
        piston_size : QuantityLike, optional
            the piston sent, as measured at 20 °C, 90° to the pin at the maker's height
        piston_mark : str, optional
            number or mark on the piston, its own for each cylinder
        measuring_height : QuantityLike, optional
            height above the skirt bottom at which the piston was measured
        piston_instrument : str, optional
            what measured the piston
        clearance_low : QuantityLike, optional
            least clearance wanted, diametral
        clearance_high : QuantityLike, optional
            largest clearance wanted, diametral
        inches_too : bool, optional
            give bore sizes in inches as well (default no)
        gasket_bore : QuantityLike, optional
            bore of the head gasket
        hone_stock : QuantityLike, optional
            stock left for the hone after boring, on the diameter
        hone_removal : QuantityLike, optional
            light hone: what comes off for new rings, on the diameter
        interference : QuantityLike, optional
            interference of the sleeve at 20 °C, on the diameter
        heat : QuantityLike, optional
            temperature to heat the cylinder to for the sleeve
        drop_in_clearance : QuantityLike, optional
            room around the sleeve as it drops in, diametral
        replate_to : str, optional
            size that the plating goes to: standard, or the repair size with its unit
        out_of_round_max : QuantityLike, optional
            most out-of-round, difference of two diameters
        taper_max : QuantityLike, optional
            most taper, difference of two diameters
        proof_depths : ReadingsLike, optional
            depths from the deck at which size and form are to be proven
        boring_centre : str, optional
            what boring is centred on (unworn_bottom: on the unworn bottom of the bore;
            existing_centre: on the existing centre of the worn bore; true_up: true up: square to
            the base face and on the centre of the spigot)
        included_angle : QuantityLike, optional
            included angle of the crosshatch; each line lies at half of it from horizontal
        stroke_drive : str, optional
            how the stroke is driven (constant: constant speed, turned round at the ends (hydraulic,
            or by hand); crank: driven by a crank, fastest at mid-stroke; unknown: not known)
        ring_kind : str, optional
            kind of rings that will run on it (plain_iron: plain iron ring; coated: coated or
            nitrided ring)
        finish : str, optional
            surface wanted, each figure with its unit; the ring maker's comes first
        torque_plate : bool, optional
            bored and honed with a torque plate
        gasket : str, optional
            kind of head gasket under the torque plate
        torque : QuantityLike, optional
            torque on the studs of the torque plate
        studs : str, optional
            studs or bolts of the torque plate
        honed : str, optional
            cold or hot while it is honed (cold: cold, at room temperature; hot: hot, with hot
            coolant going round)
        port_chamfer_low : QuantityLike, optional
            chamfer at the edges of all ports, least width
        port_chamfer_high : QuantityLike, optional
            chamfer at the edges of all ports, largest width
        port_chamfer_angle : QuantityLike, optional
            angle of the port chamfer to the bore's wall
        exhaust_bridge : bool, optional
            the exhaust port has a bridge
        bridge_relief_low : QuantityLike, optional
            relief of the exhaust bridge, least, radial
        bridge_relief_high : QuantityLike, optional
            relief of the exhaust bridge, largest, radial
        mouth_chamfer_low : QuantityLike, optional
            chamfer at both mouths of the bore, least width
        mouth_chamfer_high : QuantityLike, optional
            chamfer at both mouths of the bore, largest width
        mouth_chamfer_angle : QuantityLike, optional
            angle of the mouth chamfer to the bore's wall
        deck_height : QuantityLike, optional
            height of the cylinder as sent, base face to deck face
        deck_cut : QuantityLike, optional
            what is ordered off the deck face; left out, the deck is not touched
        wall_floor : QuantityLike, optional
            wall that must be left, radial
        liner_kind : str, optional
            kind of wall, for the floor that shops keep (dry: dry liner, carried by its cylinder all
            along; wet_or_air_cooled: wet liner, or sleeve of an air-cooled cylinder; parent_iron:
            parent iron, no liner)
        heads : OrderCardHeads, optional
            the head, where it is sent too
        price_limit : float, optional
            price that the work must not pass without a call, in the currency named
        currency : str, optional
            currency of the price limit
        wanted : str, optional
            date wanted
        approver : str, optional
            who may approve changes
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
            "work": work,
            "bore_kind": bore_kind,
            "cycle": cycle,
            "job": job,
            "date": date,
            "cylinder_number": cylinder_number,
            "end_up": end_up,
            "exhaust_side_marked": exhaust_side_marked,
            "parts_sent": parts_sent,
            "piston_size": piston_size,
            "piston_mark": piston_mark,
            "measuring_height": measuring_height,
            "piston_instrument": piston_instrument,
            "clearance_low": clearance_low,
            "clearance_high": clearance_high,
            "inches_too": inches_too,
            "gasket_bore": gasket_bore,
            "hone_stock": hone_stock,
            "hone_removal": hone_removal,
            "interference": interference,
            "heat": heat,
            "drop_in_clearance": drop_in_clearance,
            "replate_to": replate_to,
            "out_of_round_max": out_of_round_max,
            "taper_max": taper_max,
            "proof_depths": proof_depths,
            "boring_centre": boring_centre,
            "included_angle": included_angle,
            "stroke_drive": stroke_drive,
            "ring_kind": ring_kind,
            "finish": finish,
            "torque_plate": torque_plate,
            "gasket": gasket,
            "torque": torque,
            "studs": studs,
            "honed": honed,
            "port_chamfer_low": port_chamfer_low,
            "port_chamfer_high": port_chamfer_high,
            "port_chamfer_angle": port_chamfer_angle,
            "exhaust_bridge": exhaust_bridge,
            "bridge_relief_low": bridge_relief_low,
            "bridge_relief_high": bridge_relief_high,
            "mouth_chamfer_low": mouth_chamfer_low,
            "mouth_chamfer_high": mouth_chamfer_high,
            "mouth_chamfer_angle": mouth_chamfer_angle,
            "deck_height": deck_height,
            "deck_cut": deck_cut,
            "wall_floor": wall_floor,
            "liner_kind": liner_kind,
            "heads": heads,
            "price_limit": price_limit,
            "currency": currency,
            "wanted": wanted,
            "approver": approver,
            "rule": rule,
            "defaults": defaults,
            "measuring": measuring,
        }
        return self._answer(fields, units, trace)
