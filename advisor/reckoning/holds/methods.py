"""The thirty-five ways of holding, sorted by what this room needs to know of them."""

from __future__ import annotations

from functools import lru_cache

from advisor.models.methods import all_methods

GROUP_OF_FAMILY = {
    "between-centers": "between-centers",
    "screwed": "screwed",
    "jawed": "jawed",
    "fit-glue-suction": "fit",
    "clamped": "clamped",
}
# Meant to slip before anything breaks, with a tool held in the hand.
SLIPS = frozenset({"toothed-ring-drive", "cup-drive", "friction-block", "mandrel", "sphere-cups"})
SPURS = frozenset({"spur-drive", "two-spur-drive"})
SCREW_METHODS = frozenset({"faceplate-screws", "screw-chuck", "offset-faceplate"})
GLUED = frozenset({"glue-block", "waste-block-faceplate", "paper-joint"})


@lru_cache(maxsize=1)
def groups() -> dict[str, str]:
    """Group of every method, in the order in which the trade groups them; aids are not in it."""
    return {entry.id: GROUP_OF_FAMILY[entry.family] for entry in all_methods() if not entry.is_aid}


@lru_cache(maxsize=1)
def tail_parts() -> dict[str, str]:
    """What part the tailstock plays in every method: "needed", "optional" or "none"."""
    return {entry.id: entry.tail for entry in all_methods() if not entry.is_aid}


METHODS: tuple[str, ...] = tuple(groups())
# Drives that cannot do without the tail; two cups round a ball are one of them.
BETWEEN_CENTERS = frozenset(method for method, part in tail_parts().items() if part == "needed")
TAKES_TAIL = frozenset(method for method, part in tail_parts().items() if part != "none")
