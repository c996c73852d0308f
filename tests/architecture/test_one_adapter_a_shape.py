"""Only the adapters know the classes of fields: all else in the API asks them."""

import ast
from pathlib import Path

import ringland_service
from ringland_service.core.declare import fields

API = Path(ringland_service.__file__).parent / "api"
CLASSES = {
    name
    for name, of in vars(fields).items()
    if isinstance(of, type) and issubclass(of, fields.Field) and of is not fields.Field
}
# Module: why it must name a class of field.
ALLOWED: dict[str, str] = {}


def named_in(path: Path) -> set[str]:
    """Return the classes of fields that a module imports or names."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.ImportFrom):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.Attribute):
            found.add(node.attr)
        elif isinstance(node, ast.Name):
            found.add(node.id)
    return found & CLASSES


NAMED = {
    str(path.relative_to(API)): names
    for path in sorted(API.rglob("*.py"))
    if (names := named_in(path))
}


def test_no_other_module_names_a_class_of_field() -> None:
    outside = {name for name in NAMED if not name.startswith("shapes/")}
    assert outside == ALLOWED.keys(), "ask adapter(field) instead"
    assert all(ALLOWED.values())


def test_each_class_is_known_to_few() -> None:
    """Its adapter, one that shares its form, and for results the lookup and the list of them."""
    for of in sorted(CLASSES):
        known = [name for name, names in NAMED.items() if of in names]
        assert len(known) <= (4 if of == "ResultField" else 2), (of, known)
