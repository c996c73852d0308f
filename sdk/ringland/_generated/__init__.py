"""The calculations of a client, each loaded when it is first used.

Generated from the OpenAPI document by sdk/generate.py; do not edit.
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ringland._caller import Caller
    from ringland._generated.air_pressure import AirPressure
    from ringland._generated.bore_order import BoreOrder
    from ringland._generated.bore_survey import BoreSurvey
    from ringland._generated.cam_check import CamCheck
    from ringland._generated.charged_crank_torque import ChargedCrankTorque
    from ringland._generated.choice_by_consequence import ChoiceByConsequence
    from ringland._generated.clean_up import CleanUp
    from ringland._generated.compression_level import CompressionLevel
    from ringland._generated.compression_ratio import CompressionRatio
    from ringland._generated.compression_test import CompressionTest
    from ringland._generated.convert import Convert
    from ringland._generated.crankcase_leak import CrankcaseLeak
    from ringland._generated.cranking_pressure import CrankingPressure
    from ringland._generated.crosshatch import Crosshatch
    from ringland._generated.cylinder_decision import CylinderDecision
    from ringland._generated.cylinder_spread import CylinderSpread
    from ringland._generated.diagnosis import Diagnosis
    from ringland._generated.displacement import Displacement
    from ringland._generated.dynamic_ratio import DynamicRatio
    from ringland._generated.estimate import Estimate
    from ringland._generated.fastener_order import FastenerOrder
    from ringland._generated.flatness import Flatness
    from ringland._generated.gauge_hose_loss import GaugeHoseLoss
    from ringland._generated.guide_clearance import GuideClearance
    from ringland._generated.hot_clearance import HotClearance
    from ringland._generated.job_card import JobCard
    from ringland._generated.lash_screw import LashScrew
    from ringland._generated.lash_shim import LashShim
    from ringland._generated.leak_area import LeakArea
    from ringland._generated.leak_down import LeakDown
    from ringland._generated.length_at_20c import LengthAt20c
    from ringland._generated.liner_wall import LinerWall
    from ringland._generated.oil_use import OilUse
    from ringland._generated.order_card import OrderCard
    from ringland._generated.order_card_check import OrderCardCheck
    from ringland._generated.overbore_ratio import OverboreRatio
    from ringland._generated.oversize_choice import OversizeChoice
    from ringland._generated.pin_fits import PinFits
    from ringland._generated.piston_clearance import PistonClearance
    from ringland._generated.piston_position import PistonPosition
    from ringland._generated.port_timing import PortTiming
    from ringland._generated.premix import Premix
    from ringland._generated.pressure_build_up import PressureBuildUp
    from ringland._generated.ring_clocking import RingClocking
    from ringland._generated.ring_gap import RingGap
    from ringland._generated.ring_side_clearance import RingSideClearance
    from ringland._generated.rod_play import RodPlay
    from ringland._generated.run_in import RunIn
    from ringland._generated.sleeve_fit import SleeveFit
    from ringland._generated.squish import Squish
    from ringland._generated.torque_steps import TorqueSteps
    from ringland._generated.valve_seat import ValveSeat
    from ringland._generated.valve_sink import ValveSink
    from ringland._generated.valve_spring import ValveSpring
    from ringland._generated.verdict import Verdict
    from ringland._generated.wanted_ratio import WantedRatio
    from ringland._generated.wet_gain import WetGain

CLASSES = {
    "convert": "Convert",
    "air_pressure": "AirPressure",
    "length_at_20c": "LengthAt20c",
    "verdict": "Verdict",
    "compression_test": "CompressionTest",
    "compression_level": "CompressionLevel",
    "cylinder_spread": "CylinderSpread",
    "wet_gain": "WetGain",
    "pressure_build_up": "PressureBuildUp",
    "gauge_hose_loss": "GaugeHoseLoss",
    "cranking_pressure": "CrankingPressure",
    "leak_down": "LeakDown",
    "leak_area": "LeakArea",
    "charged_crank_torque": "ChargedCrankTorque",
    "crankcase_leak": "CrankcaseLeak",
    "oil_use": "OilUse",
    "diagnosis": "Diagnosis",
    "displacement": "Displacement",
    "compression_ratio": "CompressionRatio",
    "overbore_ratio": "OverboreRatio",
    "wanted_ratio": "WantedRatio",
    "piston_position": "PistonPosition",
    "dynamic_ratio": "DynamicRatio",
    "port_timing": "PortTiming",
    "squish": "Squish",
    "bore_survey": "BoreSurvey",
    "piston_clearance": "PistonClearance",
    "hot_clearance": "HotClearance",
    "ring_gap": "RingGap",
    "ring_side_clearance": "RingSideClearance",
    "pin_fits": "PinFits",
    "rod_play": "RodPlay",
    "guide_clearance": "GuideClearance",
    "valve_seat": "ValveSeat",
    "valve_sink": "ValveSink",
    "valve_spring": "ValveSpring",
    "lash_shim": "LashShim",
    "lash_screw": "LashScrew",
    "flatness": "Flatness",
    "cam_check": "CamCheck",
    "clean_up": "CleanUp",
    "oversize_choice": "OversizeChoice",
    "liner_wall": "LinerWall",
    "bore_order": "BoreOrder",
    "crosshatch": "Crosshatch",
    "sleeve_fit": "SleeveFit",
    "cylinder_decision": "CylinderDecision",
    "choice_by_consequence": "ChoiceByConsequence",
    "order_card": "OrderCard",
    "order_card_check": "OrderCardCheck",
    "torque_steps": "TorqueSteps",
    "fastener_order": "FastenerOrder",
    "ring_clocking": "RingClocking",
    "premix": "Premix",
    "run_in": "RunIn",
    "estimate": "Estimate",
    "job_card": "JobCard",
}


class Calculations:
    """One property a calculation; call it with the calculation's fields."""

    def __init__(self, caller: "Caller") -> None:
        self.caller = caller

    @property
    def convert(self) -> "Convert":
        """Unit conversion."""
        from ringland._generated.convert import Convert

        return Convert(self.caller)

    @property
    def air_pressure(self) -> "AirPressure":
        """Air pressure and altitude correction."""
        from ringland._generated.air_pressure import AirPressure

        return AirPressure(self.caller)

    @property
    def length_at_20c(self) -> "LengthAt20c":
        """Length at 20 °C."""
        from ringland._generated.length_at_20c import LengthAt20c

        return LengthAt20c(self.caller)

    @property
    def verdict(self) -> "Verdict":
        """Combined uncertainty and three-way verdict."""
        from ringland._generated.verdict import Verdict

        return Verdict(self.caller)

    @property
    def compression_test(self) -> "CompressionTest":
        """Compression test."""
        from ringland._generated.compression_test import CompressionTest

        return CompressionTest(self.caller)

    @property
    def compression_level(self) -> "CompressionLevel":
        """Cranking compression: grading the level."""
        from ringland._generated.compression_level import CompressionLevel

        return CompressionLevel(self.caller)

    @property
    def cylinder_spread(self) -> "CylinderSpread":
        """Spread between cylinders."""
        from ringland._generated.cylinder_spread import CylinderSpread

        return CylinderSpread(self.caller)

    @property
    def wet_gain(self) -> "WetGain":
        """Wet-test gain."""
        from ringland._generated.wet_gain import WetGain

        return WetGain(self.caller)

    @property
    def pressure_build_up(self) -> "PressureBuildUp":
        """Build-up over the first strokes."""
        from ringland._generated.pressure_build_up import PressureBuildUp

        return PressureBuildUp(self.caller)

    @property
    def gauge_hose_loss(self) -> "GaugeHoseLoss":
        """Loss of reading in the gauge's hose."""
        from ringland._generated.gauge_hose_loss import GaugeHoseLoss

        return GaugeHoseLoss(self.caller)

    @property
    def cranking_pressure(self) -> "CrankingPressure":
        """Expected cranking pressure."""
        from ringland._generated.cranking_pressure import CrankingPressure

        return CrankingPressure(self.caller)

    @property
    def leak_down(self) -> "LeakDown":
        """Leak-down."""
        from ringland._generated.leak_down import LeakDown

        return LeakDown(self.caller)

    @property
    def leak_area(self) -> "LeakArea":
        """Leak area."""
        from ringland._generated.leak_area import LeakArea

        return LeakArea(self.caller)

    @property
    def charged_crank_torque(self) -> "ChargedCrankTorque":
        """Crank torque of a charged cylinder."""
        from ringland._generated.charged_crank_torque import ChargedCrankTorque

        return ChargedCrankTorque(self.caller)

    @property
    def crankcase_leak(self) -> "CrankcaseLeak":
        """Crankcase leak of a two-stroke."""
        from ringland._generated.crankcase_leak import CrankcaseLeak

        return CrankcaseLeak(self.caller)

    @property
    def oil_use(self) -> "OilUse":
        """Oil consumption."""
        from ringland._generated.oil_use import OilUse

        return OilUse(self.caller)

    @property
    def diagnosis(self) -> "Diagnosis":
        """Diagnosis."""
        from ringland._generated.diagnosis import Diagnosis

        return Diagnosis(self.caller)

    @property
    def displacement(self) -> "Displacement":
        """Displacement."""
        from ringland._generated.displacement import Displacement

        return Displacement(self.caller)

    @property
    def compression_ratio(self) -> "CompressionRatio":
        """Static compression ratio."""
        from ringland._generated.compression_ratio import CompressionRatio

        return CompressionRatio(self.caller)

    @property
    def overbore_ratio(self) -> "OverboreRatio":
        """Compression ratio after an overbore."""
        from ringland._generated.overbore_ratio import OverboreRatio

        return OverboreRatio(self.caller)

    @property
    def wanted_ratio(self) -> "WantedRatio":
        """Metal or gasket for a wanted ratio."""
        from ringland._generated.wanted_ratio import WantedRatio

        return WantedRatio(self.caller)

    @property
    def piston_position(self) -> "PistonPosition":
        """Piston position against crank angle."""
        from ringland._generated.piston_position import PistonPosition

        return PistonPosition(self.caller)

    @property
    def dynamic_ratio(self) -> "DynamicRatio":
        """Dynamic compression ratio."""
        from ringland._generated.dynamic_ratio import DynamicRatio

        return DynamicRatio(self.caller)

    @property
    def port_timing(self) -> "PortTiming":
        """Port timing and trapped ratio."""
        from ringland._generated.port_timing import PortTiming

        return PortTiming(self.caller)

    @property
    def squish(self) -> "Squish":
        """Squish clearance and base gasket."""
        from ringland._generated.squish import Squish

        return Squish(self.caller)

    @property
    def bore_survey(self) -> "BoreSurvey":
        """Bore survey."""
        from ringland._generated.bore_survey import BoreSurvey

        return BoreSurvey(self.caller)

    @property
    def piston_clearance(self) -> "PistonClearance":
        """Piston clearance."""
        from ringland._generated.piston_clearance import PistonClearance

        return PistonClearance(self.caller)

    @property
    def hot_clearance(self) -> "HotClearance":
        """Running clearance, for comparison only."""
        from ringland._generated.hot_clearance import HotClearance

        return HotClearance(self.caller)

    @property
    def ring_gap(self) -> "RingGap":
        """Ring end gap."""
        from ringland._generated.ring_gap import RingGap

        return RingGap(self.caller)

    @property
    def ring_side_clearance(self) -> "RingSideClearance":
        """Side and back clearance of rings."""
        from ringland._generated.ring_side_clearance import RingSideClearance

        return RingSideClearance(self.caller)

    @property
    def pin_fits(self) -> "PinFits":
        """Piston-pin fits."""
        from ringland._generated.pin_fits import PinFits

        return PinFits(self.caller)

    @property
    def rod_play(self) -> "RodPlay":
        """Rod and crank play."""
        from ringland._generated.rod_play import RodPlay

        return RodPlay(self.caller)

    @property
    def guide_clearance(self) -> "GuideClearance":
        """Valve stem to guide clearance."""
        from ringland._generated.guide_clearance import GuideClearance

        return GuideClearance(self.caller)

    @property
    def valve_seat(self) -> "ValveSeat":
        """Valve seat width and narrowing cuts."""
        from ringland._generated.valve_seat import ValveSeat

        return ValveSeat(self.caller)

    @property
    def valve_sink(self) -> "ValveSink":
        """Valve sink: lash, spring and chamber."""
        from ringland._generated.valve_sink import ValveSink

        return ValveSink(self.caller)

    @property
    def valve_spring(self) -> "ValveSpring":
        """Valve spring."""
        from ringland._generated.valve_spring import ValveSpring

        return ValveSpring(self.caller)

    @property
    def lash_shim(self) -> "LashShim":
        """Valve-lash shim."""
        from ringland._generated.lash_shim import LashShim

        return LashShim(self.caller)

    @property
    def lash_screw(self) -> "LashScrew":
        """Adjusting screw of the valve lash."""
        from ringland._generated.lash_screw import LashScrew

        return LashScrew(self.caller)

    @property
    def flatness(self) -> "Flatness":
        """Flatness and resurfacing."""
        from ringland._generated.flatness import Flatness

        return Flatness(self.caller)

    @property
    def cam_check(self) -> "CamCheck":
        """Cam lobe, cam timing and valve-to-piston clearance."""
        from ringland._generated.cam_check import CamCheck

        return CamCheck(self.caller)

    @property
    def clean_up(self) -> "CleanUp":
        """Clean-up diameter."""
        from ringland._generated.clean_up import CleanUp

        return CleanUp(self.caller)

    @property
    def oversize_choice(self) -> "OversizeChoice":
        """Smallest oversize that cleans up."""
        from ringland._generated.oversize_choice import OversizeChoice

        return OversizeChoice(self.caller)

    @property
    def liner_wall(self) -> "LinerWall":
        """Remaining liner wall."""
        from ringland._generated.liner_wall import LinerWall

        return LinerWall(self.caller)

    @property
    def bore_order(self) -> "BoreOrder":
        """Sizes for the machinist, and the work returned."""
        from ringland._generated.bore_order import BoreOrder

        return BoreOrder(self.caller)

    @property
    def crosshatch(self) -> "Crosshatch":
        """Crosshatch angle."""
        from ringland._generated.crosshatch import Crosshatch

        return Crosshatch(self.caller)

    @property
    def sleeve_fit(self) -> "SleeveFit":
        """Sleeve interference and heating."""
        from ringland._generated.sleeve_fit import SleeveFit

        return SleeveFit(self.caller)

    @property
    def cylinder_decision(self) -> "CylinderDecision":
        """Decision for the cylinder."""
        from ringland._generated.cylinder_decision import CylinderDecision

        return CylinderDecision(self.caller)

    @property
    def choice_by_consequence(self) -> "ChoiceByConsequence":
        """Choice by consequence."""
        from ringland._generated.choice_by_consequence import ChoiceByConsequence

        return ChoiceByConsequence(self.caller)

    @property
    def order_card(self) -> "OrderCard":
        """Order card to the machinist."""
        from ringland._generated.order_card import OrderCard

        return OrderCard(self.caller)

    @property
    def order_card_check(self) -> "OrderCardCheck":
        """Check of a written order card."""
        from ringland._generated.order_card_check import OrderCardCheck

        return OrderCardCheck(self.caller)

    @property
    def torque_steps(self) -> "TorqueSteps":
        """Torque steps."""
        from ringland._generated.torque_steps import TorqueSteps

        return TorqueSteps(self.caller)

    @property
    def fastener_order(self) -> "FastenerOrder":
        """Order of fasteners."""
        from ringland._generated.fastener_order import FastenerOrder

        return FastenerOrder(self.caller)

    @property
    def ring_clocking(self) -> "RingClocking":
        """Ring clocking."""
        from ringland._generated.ring_clocking import RingClocking

        return RingClocking(self.caller)

    @property
    def premix(self) -> "Premix":
        """Fuel and oil premix."""
        from ringland._generated.premix import Premix

        return Premix(self.caller)

    @property
    def run_in(self) -> "RunIn":
        """Running in."""
        from ringland._generated.run_in import RunIn

        return RunIn(self.caller)

    @property
    def estimate(self) -> "Estimate":
        """Parts list and estimate."""
        from ringland._generated.estimate import Estimate

        return Estimate(self.caller)

    @property
    def job_card(self) -> "JobCard":
        """Job card."""
        from ringland._generated.job_card import JobCard

        return JobCard(self.caller)
