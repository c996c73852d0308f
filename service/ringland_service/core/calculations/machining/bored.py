"""Which kinds of bore may be sent for boring, and which ways the others leave."""

from ringland_service.core.declare import Rule

# Common practice, no source: a plated, chromed or bare silicon surface is not there any more once
# it is cut, and the metal under it does not run.
NEVER_BORED: dict[str, tuple[str, str]] = {
    "plated_aluminium": (
        "a plated bore is never sent for boring, nor honed with ordinary stones",
        "a graded or selected piston in a sound bore; else replate, an iron sleeve, or replace",
    ),
    "chromed": (
        "a chromed bore is never sent for boring, nor honed with ordinary stones",
        "a graded or selected piston in a sound bore (no chromed rings); else replate, an iron "
        "sleeve, or replace",
    ),
    "bare_silicon_aluminium": (
        "a bare silicon bore is never sent for plain boring and honing",
        "special lapping that lays the silicon open, with matching coated pistons; else a sleeve, "
        "or replace",
    ),
}
KIND_NOT_KNOWN = (
    "no machining decision while the kind of bore is not known",
    "find out: a magnet on the bore, the maker's sheet, a look above the top ring's travel",
)


def _rule(kind: str, message: str, right: str) -> Rule:
    return Rule(("bore_kind",), lambda i: i.bore_kind == kind, message, right)


NEVER_BORED_RULES = tuple(_rule(kind, *words) for kind, words in NEVER_BORED.items())
BORED_RULES = (*NEVER_BORED_RULES, _rule("unknown", *KIND_NOT_KNOWN))
