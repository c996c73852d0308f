"""Parts that go with each kind of work, and those that are always new."""

WORK: dict[str, str] = {
    "re_ring": "new rings in the bore as it is",
    "overbore": "bored to an oversize piston",
    "plated_cylinder": "plated cylinder with a piston of its grade",
    "head": "work on valves and head",
}
# Common practice, no source.
PARTS_OF: dict[str, tuple[str, ...]] = {
    "re_ring": ("ring set", "gaskets", "circlips", "seals"),
    "overbore": ("piston", "rings", "pin", "circlips", "gaskets", "seals"),
    "plated_cylinder": ("graded piston", "rings", "circlips", "gaskets"),
    "head": ("valves", "seals", "keepers", "springs", "shims"),
}
ALWAYS_NEW = (
    "gaskets",
    "circlips",
    "stem seals",
    "o-rings",
    "rings, when the piston comes out",
    "single-use bolts",
)
