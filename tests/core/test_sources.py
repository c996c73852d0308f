"""The table of sources: what is cited stands in it, what stands in it is used, checks are real."""

import ast
import copy
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import ringland_service
from ringland_service.api.openapi.source_list import texts_of, used_by
from ringland_service.core.calculations import EVERY
from ringland_service.core.engines.materials import MATERIALS
from ringland_service.core.metrology.limits import GRADES, LIMITS
from ringland_service.core.tables.sources import (
    NO_SOURCE,
    SOURCES,
    UNCHECKED,
    Source,
    cited,
    sources_of,
)

PACKAGE = Path(ringland_service.__file__).parent
TESTS = Path(__file__).parents[1]
CODE = {path.relative_to(PACKAGE): path.read_text("utf-8") for path in PACKAGE.rglob("*.py")}
HOME = Path("core", "tables", "sources.py")
TITLES = {source.title for source in SOURCES.values()}
# ISO 1 is not named by ISO 12181.
WHOLE = {title: re.compile(rf"{re.escape(title)}(?!-?\d)") for title in TITLES}
# A standard is named by its body and number; a part's number belongs to it, an edition does not.
STANDARD = re.compile(
    r"\b(?:ISO|EN|DIN|VDI|JCGM|NIST SP|FAA Advisory Circular) \d+(?:\.\d+)*(?:-\d+)*"
)
# The test that holds published values of a source, and how that test names it.
HELD = {
    "iso_898_1_stress_area": (
        "core/formulas/test_fasteners.py",
        "tabled stress\n# areas as printed",
    ),
    "iso_898_1_proof_load": ("core/formulas/test_fasteners.py", "# Source: ISO 898-1, proof loads"),
}


def texts_that_go_out(tree: ast.Module) -> Iterator[str]:
    """Yield the texts of a module but its docstrings."""
    alone = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in alone:
            yield node.value


def declared_texts() -> Iterator[str]:
    for of in EVERY:
        yield from texts_of(of)
    for row in (*LIMITS.values(), *GRADES.values(), *MATERIALS.values()):
        yield row.source


@pytest.mark.parametrize(
    ("source", "named"),
    [
        (Source("", "ISO 1"), "ISO 1 (from memory)"),
        (Source("", "ISO 1", "2022", "5.2"), "ISO 1:2022, 5.2 (from memory)"),
        (Source("", "ISO 1", "2022", "5.2", "a value"), "ISO 1:2022, 5.2"),
        (Source("", "A Book", "3rd edition", "fits"), "A Book, 3rd edition, fits (from memory)"),
        (Source("", "A Book", checked="a value"), "A Book"),
    ],
    ids=lambda value: value if isinstance(value, str) else "",
)
def test_a_source_in_a_sentence(source: Source, named: str) -> None:
    assert source.cited == named


def test_a_text_knows_what_it_cites() -> None:
    text = cited("sprocket; {iso_606}, {iso_724}")
    assert text == f"sprocket; {SOURCES['iso_606'].cited}, {SOURCES['iso_724'].cited}"
    assert sources_of(text) == (SOURCES["iso_606"], SOURCES["iso_724"])
    assert sources_of(copy.deepcopy(text)) == sources_of(text)
    assert sources_of(str(text)) == sources_of(cited("plain")) == ()
    with pytest.raises(KeyError, match="iso_none"):
        cited("{iso_none}")


def test_a_standard_named_in_the_code_stands_in_the_table() -> None:
    named = {path: set(STANDARD.findall(code)) for path, code in CODE.items()}
    assert {path: names - TITLES for path, names in named.items() if names - TITLES} == {}
    assert "ISO 2533" in set().union(*named.values())


def test_no_text_of_the_code_spells_a_source_out() -> None:
    """Docstrings and comments may; what goes out is made of the table."""
    spelled = {
        (path, text)
        for path, code in CODE.items()
        for text in texts_that_go_out(ast.parse(code))
        if any(title.search(text) for title in WHOLE.values())
    }
    assert spelled == set()


def test_standards_are_found_where_they_are_named() -> None:
    text = "ISO 898-1, JCGM 100:2008 and EN 13906-1; NIST SP 811. ISO is no number"
    assert STANDARD.findall(text) == ["ISO 898-1", "JCGM 100", "EN 13906-1", "NIST SP 811"]


def test_nothing_is_cited_by_hand() -> None:
    """A text that names a title of the table has it from the table."""
    texts = set(declared_texts())
    assert len(texts) > 100
    for text in texts:
        of_table = {source.title for source in sources_of(text)}
        assert {title for title, found in WHOLE.items() if found.search(text)} == of_table, text


@pytest.mark.parametrize("source", SOURCES.values(), ids=lambda s: s.token)
def test_every_source_is_used(source: Source) -> None:
    assert any(used_by(source).values())


def test_a_title_that_only_methods_rest_on_is_named_in_the_code() -> None:
    code = " ".join(" ".join(CODE.values()).split())
    methods = {source.title for source in SOURCES.values() if source.methods}
    assert methods
    assert {title for title in methods if title not in code} == set()


def test_no_mark_is_written_by_hand() -> None:
    """Neither the mark of the unchecked nor the sentence of common practice."""
    marked = {path for path, code in CODE.items() if "from memory" in " ".join(code.split())}
    assert marked == {HOME}
    common = {
        path
        for path, code in CODE.items()
        for node in ast.walk(ast.parse(code))
        if isinstance(node, ast.Constant) and node.value == NO_SOURCE
    }
    assert common == {HOME}


@pytest.mark.parametrize("table", ["limits", "grades", "materials"])
def test_no_table_marks_a_source_by_hand(table: str) -> None:
    assert UNCHECKED not in (PACKAGE / "core" / "tables" / f"{table}.toml").read_text("utf-8")


def test_what_says_checked_is_held_by_a_test() -> None:
    assert {token for token, source in SOURCES.items() if source.checked} == HELD.keys()
    for path, line in HELD.values():
        assert line in (TESTS / path).read_text("utf-8")
