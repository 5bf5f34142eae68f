"""What a person asks of `advisor center`, read from key=value pairs."""

from __future__ import annotations

import difflib
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from advisor import units
from advisor.units import Kind, System, UnitError

BARE_ZERO = re.compile(r"[+-]?0*\.?0+")
BARE_NUMBER = re.compile(r"[+-]?\d+(\.\d+)?|\.\d+")


class CenterInputError(ValueError):
    """Input that is wrong or cannot be cut: the field, what was given if anything, why not, what is accepted."""

    def __init__(self, field: str, value: str | None, message: str, accepted: str) -> None:
        given = "" if value is None else f" {value!r}:"
        super().__init__(f"{field}:{given} {message}; accepted: {accepted}")
        self.field = field
        self.value = value
        self.message = message
        self.accepted = accepted


class Quantity(NamedTuple):
    """A field with a unit: its kind, its floor and ceiling in the canonical unit, and those as a person reads them."""

    kind: Kind
    low: float
    high: float
    accepted: str


LENGTHS = {
    "diameter": Quantity(units.LENGTH, 3, 300, "a length from 3 to 300 mm, such as 1 in or 25 mm"),
    "hole": Quantity(units.LENGTH, 0.5, 250, "a length from 0.5 to 250 mm, such as 0.251 in or 6 mm"),
    "cutter": Quantity(units.LENGTH, 1, 150, "an end mill's diameter from 1 to 150 mm, such as 1/2 in"),
    "depth": Quantity(units.LENGTH, 0.1, 75, "a depth of cut from 0.1 to 75 mm, such as 0.200 in"),
    "land": Quantity(units.LENGTH, 0, 20, "a width from 0 to 20 mm, such as 0.005 in"),
    "height_offset": Quantity(units.LENGTH, -50, 50, "a length from -50 to 50 mm, negative below the axis"),
    "corner_radius": Quantity(units.LENGTH, 0, 30, "a radius from 0 to 30 mm"),
    "overshoot": Quantity(units.LENGTH, 0, 100, "a length from 0 to 100 mm"),
}
OTHERS = {
    "tip_angle": Quantity(units.ANGLE, 0, 60, "an angle from 0 to 60 deg"),
    "min_tip_angle": Quantity(units.ANGLE, 0, 60, "an angle from 0 to 60 deg"),
    "thrust": Quantity(units.FORCE, 1, 50_000, "a force from 1 N to 50 kN, such as 600 N or 150 lbf"),
    "torque": Quantity(units.TORQUE, 0.01, 2000, "a torque from 0.01 to 2000 N·m, such as 5 N-m"),
    "end_strength": Quantity(units.STRESS, 0.5, 500, "a stress from 0.5 to 500 MPa, such as 45 MPa or 6500 psi"),
    "tooth_strength": Quantity(units.STRESS, 10, 3000, "a stress from 10 to 3000 MPa, such as 200 MPa"),
}
QUANTITIES = {**LENGTHS, **OTHERS}
LISTS = {"cutters": QUANTITIES["cutter"], "radii": Quantity(units.LENGTH, 0.25, 150, "radii from 0.25 to 150 mm")}
WORDS = {"settings": ("auto", "1", "2"), "rotation": ("forward", "reverse"), "units": ("inch", "metric")}
FIELDS = (*QUANTITIES, *LISTS, *WORDS, "teeth")
TEETH = (2, 8)


@dataclass(frozen=True)
class Wanted:
    """What was asked, in mm, N, N·m, MPa and degrees; None where nothing was said and nothing need be."""

    diameter: float
    hole: float
    cutter: float | None = None
    depth: float | None = None
    teeth: int = 4
    land: float = 0.127
    height_offset: float = 0.0
    corner_radius: float = 0.0
    overshoot: float = 0.0
    settings: str = "auto"
    rotation: str = "forward"
    tip_angle: float | None = None
    min_tip_angle: float | None = None
    cutters: tuple[float, ...] = ()
    radii: tuple[float, ...] = ()
    thrust: float | None = None
    torque: float | None = None
    end_strength: float = 45.0
    tooth_strength: float = 200.0
    system: System = System.INCH
    given: Mapping[str, str] = field(default_factory=dict)

    @property
    def reverse(self) -> bool:
        return self.rotation == "reverse"

    @property
    def passes(self) -> int:
        """Settings for each tooth: as asked, or two where one leaves no cutting tooth. Four teeth never need two."""
        if self.teeth == 4:
            return 1
        return 1 if self.settings == "1" else 2

    def text(self, name: str) -> str:
        """What was typed for a field."""
        return self.given.get(name, "not given")


def read_wanted(pairs: Mapping[str, str], system: System = System.INCH) -> Wanted:
    """Read the pairs; `system` is that of what is said back. Raises CenterInputError for the first wrong field."""
    for name in pairs:
        if name not in FIELDS:
            close = difflib.get_close_matches(name, FIELDS, n=1)
            hint = f" (did you mean {close[0]}?)" if close else ""
            raise CenterInputError(name, pairs[name], f"there is no such field{hint}", ", ".join(FIELDS))
    bare = System(_word(pairs, "units")) if "units" in pairs else None
    values: dict[str, Any] = {}
    for name in pairs:
        if name in QUANTITIES:
            values[name] = read_quantity(name, pairs[name], QUANTITIES[name], bare)
        elif name in LISTS:
            values[name] = _list(name, pairs[name], LISTS[name], bare)
        elif name in WORDS and name != "units":
            values[name] = _word(pairs, name)
    if "teeth" in pairs:
        values["teeth"] = _teeth(pairs["teeth"])
    for name in ("diameter", "hole"):
        if name not in values:
            raise CenterInputError(name, None, "is missing", QUANTITIES[name].accepted)
    wanted = Wanted(system=system, given=dict(pairs), **values)
    _check_blank(wanted)
    return wanted


def read_quantity(name: str, text: str, quantity: Quantity, bare: System | None) -> float:
    given = text.strip()
    if BARE_ZERO.fullmatch(given) and quantity.low <= 0:
        return 0.0
    if quantity.kind is units.ANGLE and BARE_NUMBER.fullmatch(given):
        given += " deg"
    try:
        value = units.parse(given, quantity.kind, bare)
    except UnitError as error:
        raise CenterInputError(name, text, error.reason, quantity.accepted) from None
    if not quantity.low <= value <= quantity.high:
        raise CenterInputError(name, text, "is outside what makes sense", quantity.accepted)
    return value


def _list(name: str, text: str, quantity: Quantity, bare: System | None) -> tuple[float, ...]:
    items = [item for item in text.strip().removeprefix("[").removesuffix("]").split(",") if item.strip()]
    if not items:
        raise CenterInputError(name, text, "is an empty list", f"[{quantity.accepted}, ..]")
    return tuple(read_quantity(name, item, quantity, bare) for item in items)


def _word(pairs: Mapping[str, str], name: str) -> str:
    word = pairs[name].strip().lower()
    if word not in WORDS[name]:
        raise CenterInputError(name, pairs[name], "is not one of the words", ", ".join(WORDS[name]))
    return word


def _teeth(text: str) -> int:
    low, high = TEETH
    given = text.strip()
    if not (given.isascii() and given.isdigit()) or not low <= int(given) <= high:
        raise CenterInputError("teeth", text, "is not a number of teeth that was checked", f"{low} to {high}")
    return int(given)


def _check_blank(wanted: Wanted) -> None:
    """Refuse a blank that is no ring, or a cutter's end that misses the hole's edge."""
    if wanted.hole > wanted.diameter - 1:
        raise CenterInputError(
            "hole", wanted.text("hole"), "leaves no ring to cut teeth on", "at least 1 mm less than the diameter"
        )
    if abs(wanted.height_offset) >= 0.95 * wanted.hole / 2:
        raise CenterInputError(
            "height_offset",
            wanted.text("height_offset"),
            "puts the cutter's end outside the hole, so the driving face no longer runs from hole to rim",
            "less than 0.95 of half the hole, above or below the axis",
        )
    for radius in wanted.radii:
        if not wanted.hole / 2 <= radius <= wanted.diameter / 2:
            raise CenterInputError(
                "radii", wanted.text("radii"), "a radius is off the ring", "from the hole to the rim"
            )
