"""The repair options of a cylinder: one row each, from which every table of them is derived.

The order of the rows is that in which they are asked after; the first that stands is taken
(common practice, no source).
"""

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum

from ringland_service.core.calculations.assembly import parts_of_work as work
from ringland_service.core.calculations.decision import _options_cut as cut
from ringland_service.core.calculations.decision import _options_kept as kept
from ringland_service.core.calculations.decision._conditions import Assessment
from ringland_service.core.calculations.decision._decision_inputs import Inputs
from ringland_service.core.calculations.machining.bored import NEVER_BORED
from ringland_service.core.calculations.order_card import order_choices as shop
from ringland_service.core.engines.materials import BORE_KINDS, UNKNOWN


class Cut(Enum):
    """What an option cuts of the bore."""

    NOTHING = "no new bore is cut"
    OVERSIZE = "bored to the size of an oversize piston"
    NEW_SURFACE = "bored or finished to size in new metal or plating"


# Kinds of bore, by whether stones and boring bars may touch them.
OF_ANY = tuple(kind for kind in BORE_KINDS if kind != UNKNOWN)
OF_HARD = tuple(NEVER_BORED)
OF_IRON = tuple(kind for kind in OF_ANY if kind not in OF_HARD)


@dataclass(frozen=True)
class Outside:
    """What must be had from outside; ``one_each`` where it is counted, one for each cylinder."""

    part: str
    one_each: bool = False


@dataclass(frozen=True, kw_only=True)
class RepairOption:
    """One way of mending a cylinder.

    Nothing but ``asked_of`` has a default: each row answers every question.

    Attributes
    ----------
    name : str
        Its name on the wire.
    label : str
        What to do, as people read it.
    noun, verb : str
        How the texts that list all options name it; options that share one are listed once.
    assess : callable
        Takes the decision's inputs; its conditions, and why it is taken where they hold.
    cuts : Cut
        Whether a new bore follows, and from what.
    shop_work : str or None
        What the order card asks of the machine shop, a token of ``order_choices.WORK``.
    usual_parts : str or None
        The parts that usually go with it, a token of ``parts_of_work.WORK``.
    outside : Outside or None
        What must be had from outside besides.
    mends : bool
        Whether the cylinder comes off: then the head is looked at, and the fault must be shown.
    new_rings : bool
        Whether new rings go in, whose gaps are read again.
    new_fit : bool
        Whether the piston must come out at the clearance wanted, which is then read again.
    asked_of : tuple of str
        The kinds of bore that it is asked of; of the others it is not listed at all.
    """

    name: str
    label: str
    noun: str
    verb: str
    assess: Callable[[Inputs], Assessment]
    cuts: Cut
    shop_work: str | None
    usual_parts: str | None
    outside: Outside | None
    mends: bool
    new_rings: bool
    new_fit: bool
    asked_of: tuple[str, ...] = OF_ANY


# The one that examples take.
EXAMPLE = "overbore"
OPTIONS = (
    RepairOption(
        name="leave_alone",
        label="leave it alone",
        noun="leave alone",
        verb="leave it",
        assess=kept.leave_alone,
        cuts=Cut.NOTHING,
        shop_work=None,
        usual_parts=None,
        outside=None,
        mends=False,
        new_rings=False,
        new_fit=False,
    ),
    RepairOption(
        name="hone_and_re_ring",
        label="hone lightly and fit new rings",
        noun="new rings",
        verb="hone and fit new rings",
        assess=kept.re_ring,
        cuts=Cut.NOTHING,
        shop_work=shop.LIGHT_HONE,
        usual_parts=work.RE_RING,
        outside=None,
        mends=True,
        new_rings=True,
        new_fit=False,
        asked_of=OF_IRON,
    ),
    RepairOption(
        name="deglaze_and_re_ring",
        label="deglaze by the plating maker's method and fit new rings; no stones",
        noun="new rings",
        verb="hone and fit new rings",
        assess=kept.re_ring,
        cuts=Cut.NOTHING,
        shop_work=None,
        usual_parts=work.RE_RING,
        outside=None,
        mends=True,
        new_rings=True,
        new_fit=True,
        asked_of=OF_HARD,
    ),
    RepairOption(
        name="select_piston",
        label="fit a piston chosen for the sound bore, with new rings",
        noun="chosen piston",
        verb="choose a piston",
        assess=kept.select_piston,
        cuts=Cut.NOTHING,
        shop_work=None,
        usual_parts=work.PLATED_CYLINDER,
        outside=None,
        mends=True,
        new_rings=True,
        new_fit=True,
    ),
    RepairOption(
        name=EXAMPLE,
        label="bore to an oversize piston",
        noun="overbore",
        verb="bore",
        assess=cut.overbore,
        cuts=Cut.OVERSIZE,
        shop_work=shop.BORE_AND_HONE,
        usual_parts=work.OVERBORE,
        outside=None,
        mends=True,
        new_rings=True,
        new_fit=True,
    ),
    RepairOption(
        name="replate",
        label="have it plated again",
        noun="replate",
        verb="plate",
        assess=cut.replate,
        cuts=Cut.NEW_SURFACE,
        shop_work=shop.REPLATE,
        usual_parts=work.PLATED_CYLINDER,
        outside=Outside("plating, to standard or repair size"),
        mends=True,
        new_rings=True,
        new_fit=True,
    ),
    RepairOption(
        name="sleeve",
        label="fit a new sleeve",
        noun="sleeve",
        verb="sleeve",
        assess=cut.sleeve,
        cuts=Cut.NEW_SURFACE,
        shop_work=shop.SLEEVE,
        usual_parts=work.OVERBORE,
        outside=Outside("sleeve", one_each=True),
        mends=True,
        new_rings=True,
        new_fit=True,
    ),
    RepairOption(
        name="replace",
        label="replace the cylinder",
        noun="replace",
        verb="replace",
        assess=cut.replace,
        cuts=Cut.NOTHING,
        shop_work=None,
        usual_parts=work.OVERBORE,
        outside=Outside("cylinder", one_each=True),
        mends=True,
        new_rings=True,
        new_fit=True,
    ),
)

LABELS: dict[str, str] = {option.name: option.label for option in OPTIONS}
NOUNS = ", ".join(dict.fromkeys(option.noun for option in OPTIONS))
VERBS = tuple(dict.fromkeys(option.verb for option in OPTIONS))
OUTSIDE_ONE_EACH = tuple(o.outside.part for o in OPTIONS if o.outside and o.outside.one_each)
# The shop works that options ask for, as the decision words them.
SHOP_WORK: dict[str, str] = {
    shop.LIGHT_HONE: "light hone for new rings",
    shop.BORE_AND_HONE: "bore and hone to the piston",
    shop.SLEEVE: "new sleeve",
    shop.REPLATE: "new plating",
}

NOT_SETTLED, FIND_OUT = "not_settled", "find_out_the_kind"
UNDECIDED: dict[str, str] = {
    NOT_SETTLED: "not settled: the first way that may do is still open",
    FIND_OUT: "find out the kind of bore first; no machining decision before",
}
DECISIONS: dict[str, str] = {**LABELS, **UNDECIDED}
# Of every decision the option taken; None where none is taken yet.
TAKEN_BY: dict[str, RepairOption | None] = {
    **{option.name: option for option in OPTIONS},
    **dict.fromkeys(UNDECIDED),
}
