"""What `advisor center --make` asks beside the center itself: metal, shank, point, tail center."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from advisor import units
from advisor.centers.inputs import CenterInputError, Quantity, Wanted, read_quantity, read_wanted
from advisor.units import System

WORDS = {
    "shank": ("straight", "taper"),
    "point": ("fixed", "sprung", "floating"),
    "lathe": ("light", "industrial"),
    "tool": ("steel", "carbide"),
    "tail": ("cup", "cone"),
}
LENGTHS = {
    "shank_diameter": Quantity(units.LENGTH, 3, 100, "a diameter from 3 to 100 mm, such as 1/2 in"),
    "work_end": Quantity(units.LENGTH, 5, 600, "the smallest end to be driven, from 5 to 600 mm"),
}
TAPER_NUMBERS = ("0", "1", "2", "3", "4", "5")
FIELDS = (*WORDS, *LENGTHS, "shank_taper", "metal")


@dataclass(frozen=True)
class Making:
    """How the center is to be made. Lengths in mm; the work's end is taken as twice the head when not given."""

    wanted: Wanted
    metal: str = "12L14"
    shank: str = "straight"
    shank_taper: int = 2
    shank_diameter: float | None = None
    point: str = "fixed"
    lathe: str = "light"
    tool: str = "steel"
    tail: str = "cup"
    work_end: float | None = None


def read_making(pairs: Mapping[str, str], system: System) -> Making:
    """Read the pairs of both kinds. Raises CenterInputError for the first field that is wrong."""
    own = {name: text for name, text in pairs.items() if name in FIELDS}
    wanted = read_wanted({name: text for name, text in pairs.items() if name not in FIELDS}, system)
    bare = System(pairs["units"].strip().lower()) if "units" in pairs else None
    words = {name: _word(name, own[name]) for name in WORDS if name in own}
    lengths = {name: read_quantity(name, own[name], LENGTHS[name], bare) for name in LENGTHS if name in own}
    making = Making(
        wanted,
        metal=own.get("metal", Making.metal),
        shank=words.get("shank", "taper" if "shank_taper" in own else Making.shank),
        shank_taper=_taper_number(own.get("shank_taper", str(Making.shank_taper))),
        shank_diameter=lengths.get("shank_diameter"),
        point=words.get("point", Making.point),
        lathe=words.get("lathe", Making.lathe),
        tool=words.get("tool", Making.tool),
        tail=words.get("tail", Making.tail),
        work_end=lengths.get("work_end"),
    )
    if making.shank == "straight" and making.shank_diameter is not None and making.shank_diameter >= wanted.diameter:
        raise CenterInputError(
            "shank_diameter",
            own["shank_diameter"],
            "leaves no shoulder to seat against the jaws or the collet",
            "less than the diameter of the head",
        )
    return making


def _word(name: str, text: str) -> str:
    word = text.strip().lower()
    if word not in WORDS[name]:
        raise CenterInputError(name, text, "is not one of the words", ", ".join(WORDS[name]))
    return word


def _taper_number(text: str) -> int:
    if text.strip() not in TAPER_NUMBERS:
        raise CenterInputError("shank_taper", text, "is no Morse-type taper in the table", ", ".join(TAPER_NUMBERS))
    return int(text)
