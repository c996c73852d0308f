"""What can be seen of a cylinder without a gauge."""

NONE = "none"
FLAKED = "plating_flaked"
DAMAGE: dict[str, str] = {
    NONE: "looked for, none found",
    "crack": "a crack",
    "hole": "a hole",
    "broken_spigot": "a broken spigot",
    "pulled_stud_boss": "a pulled stud boss",
    "port_bridge_broken": "a broken port bridge",
    FLAKED: "plating flaked in the ring travel",
}
CATCHES = "catches_a_nail"
RIDGE: dict[str, str] = {
    NONE: "no ridge above the ring travel",
    CATCHES: "a ridge that a finger nail catches",
    "cut": "ridge cut",
}
