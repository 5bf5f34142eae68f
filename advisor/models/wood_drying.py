"""How much the woods that a name may mean shrink, tangentially and radially, each wood by itself."""

from functools import lru_cache
from typing import NamedTuple

from advisor.models.wood_cells import shrinkage
from advisor.models.wood_names import Resolution, woods

TANGENTIAL_TO_RADIAL = 2.0  # tangential shrinkage is about twice the radial, Wood Handbook, chapter 4; memory


class Shrinks(NamedTuple):
    """Percent from green to oven-dry of one wood; `filled` where no cell of the table gave one of both."""

    name: str
    tangential: float
    radial: float
    filled: bool


@lru_cache(maxsize=256)
def shrinkages(found: Resolution) -> tuple[Shrinks, ...]:
    """Every wood the name may mean; every wood whose shrinkage is printed where nobody knows.

    A filled radial value stands at its upper end. Where the difference of both matters, that would make a wood better
    than it is, so it counts for no more than half the tangential one.
    """
    names = [wood.species_id for wood in found.woods] if found.woods else list(woods())
    entries = []
    for species in names:
        tangential, tangential_origin = shrinkage(species, "shrinkage_tangential")
        radial, radial_origin = shrinkage(species, "shrinkage_radial")
        filled = "fit" in (tangential_origin.kind, radial_origin.kind)
        if filled:
            radial = min(radial, tangential / TANGENTIAL_TO_RADIAL)
        entries.append(Shrinks(woods()[species].label, tangential, min(radial, tangential), filled))
    return tuple(entry for entry in entries if found.woods or not entry.filled)
