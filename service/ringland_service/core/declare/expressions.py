"""Formula texts: one expression, shown in words and with numbers, evaluated in the tests.

A result's ``formula`` is written in the names of inputs and results. So the text that an answer
shows is the text that a test evaluates: it cannot drift from the arithmetic.
"""

import ast
from collections.abc import Callable

# Functions that a formula may call; the ``d`` of sind and its like says degrees.
FUNCTIONS = ("sqrt", "sind", "cosd", "asind", "acosd", "max", "min", "abs")
SIGNS: dict[type[ast.operator], str] = {
    ast.Add: " + ",
    ast.Sub: " − ",
    ast.Mult: " · ",
    ast.Div: " / ",
}
RANK: dict[type[ast.operator], int] = {ast.Add: 1, ast.Sub: 1, ast.Mult: 2, ast.Div: 2, ast.Pow: 4}
POWERS = {"2": "²", "3": "³"}


def names_in(formula: str) -> tuple[str, ...]:
    """Return the names that a formula uses, in order, without pi and functions."""
    tree = ast.parse(formula, mode="eval")
    nodes = [node for node in ast.walk(tree) if isinstance(node, ast.Name)]
    nodes.sort(key=lambda node: (node.lineno, node.col_offset))
    names = (node.id for node in nodes)
    return tuple(dict.fromkeys(n for n in names if n != "pi" and n not in FUNCTIONS))


def shown(formula: str, name: Callable[[str], str]) -> str:
    """Return a formula as text, each name shown by ``name``."""
    return _text(ast.parse(formula, mode="eval").body, name)[0]


def _text(node: ast.expr, name: Callable[[str], str]) -> tuple[str, int]:
    """Return the text of a node and how tightly it binds."""
    if isinstance(node, ast.Name):
        return ("π" if node.id == "pi" else name(node.id)), 9
    if isinstance(node, ast.Constant):
        return str(node.value), 9
    if isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub):
        inner, rank = _text(node.operand, name)
        return "−" + _wrapped(inner, rank, 3), 3
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
        arguments = ", ".join(_text(a, name)[0] for a in node.args)
        return f"{node.func.id.removesuffix('d')}({arguments})", 9
    if isinstance(node, ast.BinOp):
        return _binary(node, name)
    raise ValueError(f"not a formula: {ast.dump(node)}")


def _binary(node: ast.BinOp, name: Callable[[str], str]) -> tuple[str, int]:
    own = RANK[type(node.op)]
    left, left_rank = _text(node.left, name)
    if isinstance(node.op, ast.Pow):
        base = _wrapped(left, left_rank, 5)
        power, _ = _text(node.right, name)
        if power in POWERS:
            return base + POWERS[power], 5
        if power == "0.5":
            return f"√{base}", 5
        return f"{base}^{_wrapped(*_text(node.right, name), 9)}", 4
    right, right_rank = _text(node.right, name)
    # a − (b − c) and a / (b / c) keep their brackets; sums and products need none on the right.
    least = own + isinstance(node.op, (ast.Sub, ast.Div))
    return _wrapped(left, left_rank, own) + SIGNS[type(node.op)] + _wrapped(
        right, right_rank, least
    ), own


def _wrapped(text: str, rank: int, least: int) -> str:
    return text if rank >= least else f"({text})"
