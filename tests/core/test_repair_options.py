"""Every repair option answers in every table, and no table but its own row names it.

Which option asks for what: common practice, no source.
"""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

import ringland_service.core as core
from ringland_service.core.calculations import EVERY
from ringland_service.core.calculations.assembly import parts_of_work
from ringland_service.core.calculations.decision import cylinder_ways, repair_options, ruled_out
from ringland_service.core.calculations.decision.repair_options import OPTIONS, Cut, RepairOption
from ringland_service.core.calculations.job import before_assembly, parts_to_order, re_check
from ringland_service.core.calculations.order_card import order_card, order_choices
from ringland_service.core.engines.materials import BORE_KINDS, UNKNOWN

CORE = Path(str(core.__file__)).parent
ROWS = CORE / "calculations" / "decision" / "repair_options.py"
NAMES = [option.name for option in OPTIONS]
each = pytest.mark.parametrize("option", OPTIONS, ids=NAMES)
ORDER = order_card.Inputs(
    work="bore_and_hone",
    bore_kind="iron",
    piston_size_mm=68.461,
    clearance_low_mm=0.03,
    clearance_high_mm=0.04,
    interference_mm=0.11,
    heat_c=115.0,
    hone_stock_mm=0.06,
)


# --- every option in every table --------------------------------------------------------------


def test_names_and_labels_are_unlike() -> None:
    assert len(set(NAMES)) == len(NAMES)
    assert len(set(repair_options.LABELS.values())) == len(NAMES)


@pytest.mark.parametrize("kind", [kind for kind in BORE_KINDS if kind != UNKNOWN])
def test_every_kind_of_bore_is_left_an_option(kind: str) -> None:
    """The last one, another cylinder, holds whatever is found."""
    asked = [option for option in OPTIONS if kind in option.asked_of]
    nothing_told = cylinder_ways.Inputs(bore_kind=kind)
    broken = cylinder_ways.Inputs(bore_kind=kind, damage="crack")
    for inputs in (nothing_told, broken):
        assert asked[-1].assess(inputs).standing == "possible"
        rows = cylinder_ways.compute(inputs).ways
        assert [row.way for row in rows] == [option.name for option in asked]


@each
def test_option_is_asked_of_kinds_of_bore_that_there_are(option: RepairOption) -> None:
    assert set(option.asked_of) <= set(BORE_KINDS) - {UNKNOWN}
    assert option.asked_of


@each
def test_option_takes_shop_work_and_parts_that_there_are(option: RepairOption) -> None:
    assert option.shop_work is None or option.shop_work in repair_options.SHOP_WORK
    assert option.usual_parts is None or option.usual_parts in parts_of_work.WORK
    # What cuts the bore goes to the machine shop, and whoever fits new rings orders some.
    assert option.shop_work is not None or option.cuts is Cut.NOTHING
    assert option.usual_parts is not None or not option.new_rings
    assert option.mends or not (option.new_rings or option.shop_work or option.outside)


def test_every_shop_work_is_asked_for_by_an_option() -> None:
    assert {option.shop_work for option in OPTIONS} - {None} == set(repair_options.SHOP_WORK)
    assert set(repair_options.SHOP_WORK) <= set(order_choices.WORK)


def test_every_kind_of_work_has_its_parts() -> None:
    assert parts_of_work.PARTS_OF.keys() == parts_of_work.WORK.keys()
    parts = {part for parts in parts_of_work.PARTS_OF.values() for part in parts}
    assert set(parts_of_work.ONE_EACH) <= parts


@pytest.mark.parametrize("decision", repair_options.DECISIONS)
def test_every_part_of_a_job_answers_every_decision(decision: str) -> None:
    option = repair_options.TAKEN_BY[decision]
    parts = parts_to_order.compute(parts_to_order.Inputs(way=decision, cylinder_count=2)).parts
    assert bool(parts) == (option is not None and option.usual_parts is not None)
    if option is not None and option.outside is not None:
        assert parts[0].part == option.outside.part
        assert (parts[0].pieces == 2) == option.outside.one_each
    read = re_check.compute(
        re_check.Inputs(
            way=decision,
            finish_low_mm=68.491,
            finish_high_mm=68.501,
            clearance_low_mm=0.03,
            clearance_high_mm=0.04,
            gap_bore_mm=68.496,
        )
    )
    said = " ".join(value.what for value in (*(read.values or ()), *(read.usual_values or ())))
    assert ("finish bore" in said) == (option is not None and option.cuts is not Cut.NOTHING)
    assert ("clearance" in said) == (option is not None and option.new_fit)
    assert ("new top ring" in said) == (option is not None and option.new_rings)
    checks = before_assembly.compute(before_assembly.Inputs(way=decision)).checks
    assert any(check.startswith("head:") for check in checks) == (option is None or option.mends)
    known = {"cylinder_decision.way": decision, "bore_kind": "iron"}
    without = ruled_out.of_the_decision(known)
    assert bool(without) == (option is not None and option.cuts is Cut.NOTHING)


@pytest.mark.parametrize("work", order_choices.WORK)
def test_order_card_bores_for_no_work_but_boring(work: str) -> None:
    """A work that the points of the card forget must not be read as boring."""
    inputs = order_card.Inputs(**{**vars(ORDER), "work": work})
    points = {line.heading: line.text for line in order_card.compute(inputs).lines}
    bores = work in order_choices.BORED
    assert ("68.436 mm" in points["boring and stock"]) == bores
    assert "to bore to" not in points["boring and stock"]
    assert ("clean up" in points["stop orders"]) == (bores or work == order_choices.HONE)
    assert ("wall" in points["stop orders"]) == bores


def test_texts_list_every_option() -> None:
    texts = [repair_options.NOUNS, ", ".join(repair_options.VERBS)]
    assert all(option.noun in texts[0] and option.verb in texts[1] for option in OPTIONS)
    decision = next(one for one in EVERY if one.name == "cylinder-decision")
    for verb in repair_options.VERBS:
        assert verb in decision.summary.lower()


# --- no table elsewhere -----------------------------------------------------------------------


def sources() -> Iterator[tuple[str, ast.Module]]:
    for path in sorted(CORE.rglob("*.py")):
        if path != ROWS:
            yield str(path.relative_to(CORE)), ast.parse(path.read_text("utf-8"))


def constants(tree: ast.Module) -> set[int]:
    """Return the literals that a module gives a name of its own: ``SLEEVE = "sleeve"``."""
    named: set[int] = set()
    for node in tree.body:
        targets = node.targets if isinstance(node, ast.Assign) else []
        value = node.value if isinstance(node, ast.Assign) else None
        if isinstance(value, ast.Constant):
            named.add(id(value))
        elif isinstance(value, ast.Tuple) and all(isinstance(t, ast.Tuple) for t in targets):
            named |= {id(one) for one in value.elts}
    return named


def literals(tree: ast.Module) -> Iterator[ast.Constant]:
    named = constants(tree)
    # A part of a composite has a name of its own.
    keywords = (node for node in ast.walk(tree) if isinstance(node, ast.keyword))
    named |= {id(node.value) for node in keywords if node.arg == "part"}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and id(node) not in named:
            yield node


def test_no_table_elsewhere_names_an_option() -> None:
    """Words that are also those of a shop work or a kind of parts have a constant there."""
    found = [
        f"{path}:{node.lineno}: {node.value}"
        for path, tree in sources()
        for node in literals(tree)
        if node.value in NAMES
    ]
    assert not found, "ask the option's row instead"


def test_no_closed_list_has_a_silent_default() -> None:
    """A constant table is indexed: a token that it forgets is an error, not a default."""
    found = [
        f"{path}:{node.lineno}"
        for path, tree in (*sources(), (ROWS.name, ast.parse(ROWS.read_text("utf-8"))))
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute)
        if node.func.attr == "get" and _is_constant(node.func.value)
    ]
    assert not found


def _is_constant(node: ast.expr) -> bool:
    if isinstance(node, ast.Subscript):
        return _is_constant(node.value)
    name = node.attr if isinstance(node, ast.Attribute) else getattr(node, "id", "")
    return name.isupper()
