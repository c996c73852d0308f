"""Parts that go with each kind of work, and those that are always new."""

RE_RING, OVERBORE, PLATED_CYLINDER, HEAD = "re_ring", "overbore", "plated_cylinder", "head"
WORK: dict[str, str] = {
    RE_RING: "new rings in the bore as it is",
    OVERBORE: "bored to an oversize piston",
    PLATED_CYLINDER: "plated cylinder with a piston of its grade",
    HEAD: "work on valves and head",
}
# Common practice, no source.
PARTS_OF: dict[str, tuple[str, ...]] = {
    RE_RING: ("ring set", "gaskets", "circlips", "seals"),
    OVERBORE: ("piston", "rings", "pin", "circlips", "gaskets", "seals"),
    PLATED_CYLINDER: ("graded piston", "rings", "circlips", "gaskets"),
    HEAD: ("valves", "seals", "keepers", "springs", "shims"),
}
# One of each for a cylinder; of the others the maker says how many.
ONE_EACH = ("piston", "graded piston", "rings", "ring set", "pin")
ALWAYS_NEW = (
    "gaskets",
    "circlips",
    "stem seals",
    "o-rings",
    "rings, when the piston comes out",
    "single-use bolts",
)
