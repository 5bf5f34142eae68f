"""Wood: what a name means, and what the tables say of it at the moisture at hand.

Every property is a spread of low (5 % value), typical (mean) and high, and each use takes its adverse end. Where two
printings differ, or a name means several woods, `typical` is the adverse mean as well: the smallest for strengths,
stiffness and gravity, the largest for density and shrinkage.
"""

from functools import lru_cache

from advisor.models.wood_cells import Origin as Origin
from advisor.models.wood_moisture import SPLIT_MODULUS_ALONG as SPLIT_MODULUS_ALONG
from advisor.models.wood_moisture import SPLIT_MODULUS_PERPENDICULAR as SPLIT_MODULUS_PERPENDICULAR
from advisor.models.wood_moisture import WoodProperties as WoodProperties
from advisor.models.wood_moisture import accepted_moisture, of_species
from advisor.models.wood_names import Resolution as Resolution
from advisor.models.wood_names import Wood as Wood
from advisor.models.wood_names import list_species as list_species
from advisor.models.wood_names import resolve as resolve
from advisor.models.wood_worst import of_unknown, worst

EVERY_MOISTURE = ("dry", "green")  # what a wood of unknown moisture may be


@lru_cache(maxsize=1024)
def properties(woods: Resolution, moisture: float | str | None = None, gravity: float | None = None) -> WoodProperties:
    """Properties of the wood a name means, at a moisture.

    moisture: percent, or dry, air-dry (the dry row), wet, green, frozen (the green row); None where nothing is known,
    which takes the worse of dry and green for every property. gravity: measured specific gravity at 12 %, which only
    an unknown wood uses. Several woods give the worst of them, property by property.
    Raises ValueError for a name that is no wood's, for a moisture that is none, for a gravity outside 0.05 to 1.5.
    """
    if woods.kind == "none":
        raise ValueError(f"{woods.name!r} is not the name of a wood in the tables")
    if gravity is not None and not 0.05 <= gravity <= 1.5:
        raise ValueError(f"gravity {gravity!r}: expected a specific gravity from 0.05 to 1.5")
    steps = EVERY_MOISTURE if moisture is None else (accepted_moisture(moisture),)
    if woods.kind == "unknown":
        found = [of_unknown(woods.name, step, gravity) for step in steps]
    else:
        found = [of_species(wood, step) for wood in woods.woods for step in steps]
    name = woods.woods[0].label if len(woods.woods) == 1 else woods.name
    return found[0] if len(found) == 1 else worst(name, found)
