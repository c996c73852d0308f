"""What must never be done to a bore of each kind."""

# Common practice, no source.
MUST_NOT: dict[str, tuple[str, ...]] = {
    "iron": (),
    "iron_sleeve_in_aluminium": ("bore past the floor of the wall",),
    "plated_aluminium": (
        "bore it",
        "hone it with ordinary stones",
        "run it without its plating",
        "fit a piston meant for an iron bore without the clearance of a plated one",
    ),
    "chromed": (
        "bore it",
        "hone it with ordinary stones",
        "run it without its plating",
        "run chrome-faced rings on the chromed bore",
        "fit a piston meant for an iron bore without the clearance of a plated one",
    ),
    "bare_silicon_aluminium": (
        "hone it like an iron bore",
        "run plain pistons in it",
    ),
    "unknown": ("machine it before its kind is known",),
}
