"""The sizes of a hold, and what drying does to wet work, as a person reads them."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from advisor.models.spoken import spoken
from advisor.report.terminal import Line, wrapped
from advisor.units import LENGTH, MM_PER_INCH, Rounding, System, show

FIRST_WORDS = {
    "turns": "In a cut too heavy for it, it turns in the jaws first.",
    "tips": "In a cut too heavy for it, it rocks out of the jaws first.",
    "snaps": "In a cut too heavy for it, it snaps at its root first: the grain is short there.",
    "crushes": "The jaws crush it before they grip any harder: snug, not fierce.",
    "splits": "Jaws that open split it before they grip any harder: hand-snug.",
    "pulls-out": "In a cut too heavy for it, the screws pull out first.",
    "shears": "In a cut too heavy for it, it shears off first.",
    "peels": "In a cut too heavy for it, it peels off first: keep the work short and the tail up.",
    "lifts": "In a cut too heavy for it, the seal lifts first.",
    "cracks": "The suction cracks the floor before it lets go.",
    "tears": "In a cut too heavy for it, its teeth tear out of the wood.",
    "slips": "In a cut too heavy for it, it slips.",
}
# The last word of a size that says nothing by itself without what stands before the dot.
SHORT = {"tenon.shoulder_diameter": "shoulder diameter", "screws.count": "screws", "screws.length": "thread length"}
ON_A_TENON = ("jaws-on-tenon", "long-jaws")
LONG_NAME, LONG_VALUE = 20, 12
FINE_BELOW_MM = 12.0
NEARLY = 1e-6
NEAR_CIRCLE = 0.04  # of the jaws' circle; as near as the jaws still touch fully
AT_ONCE_PERCENT = 0.5


def _length(value: float, system: System, way: Rounding = "up") -> str:
    """A length to what a rule shows: whole millimeters, or sixteenths of an inch; halves of either below 12 mm."""
    step = 1.0 if system is System.METRIC else MM_PER_INCH / 16
    step = step if value >= FINE_BELOW_MM else step / 2
    steps = {"up": math.ceil(value / step - NEARLY), "down": math.floor(value / step + NEARLY)}
    return show(steps.get(way, round(value / step)) * step, LENGTH, system)


def _value(size: Mapping[str, Any], key: str, system: System, way: Rounding) -> str:
    if size["unit"] == "":
        return f"{size[key]:.0f}"
    return _length(size[key], system, way)


def _room(size: Mapping[str, Any], system: System) -> str:
    """From the least that carries to the most there is room for."""
    least = _value(size, "least", system, "up") if "least" in size else ""
    most = _value(size, "most", system, "down") if "most" in size else ""
    if least and most and size["least"] <= size["most"]:
        return f"{least} to {most}"
    if least:
        return f"at least {least}"
    return f"at most {most}" if most else ""


def _size(size: Mapping[str, Any], method: str, system: System) -> Iterator[Line]:
    name = SHORT.get(size["name"], size["name"].replace(".", " ").replace("_", " "))
    if size["name"] == "tenon.diameter" and method not in ON_A_TENON:
        name = "gripped diameter"
    value = _value(size, "value", system, "near" if size["given"] else "up")
    room = _room(size, system)
    told = f"({room}) " if room else ""
    why = "yours" if size["given"] else size["why"]
    yield from wrapped(f"{told}{why}", f"  {name:<{LONG_NAME}} {value:<{LONG_VALUE}} ", "do")


def _circle(part: Mapping[str, Any], tenon: float, system: System) -> str:
    on, off = f"{part['margin_on']:.1f}", f"{part['margin_off']:.1f}"
    own = part.get("diameter_mm", tenon)
    if abs(own - tenon) > NEAR_CIRCLE * own:
        at = _length(own, system, "near")
        return f"The true circle of your jaws, {at}, is not its size: they touch at their corners, margin {off}."
    return f"Cut it to the true circle of your jaws: there the margin is {on}, at their corners {off}."


def _grip_drying(part: Mapping[str, Any], system: System) -> str:
    text = (
        f"It dries {_length(part['oval_mm'], system)} out of round: leave it {_length(part['leave_mm'], system)} "
        "across and true it when it is dry."
    )
    loosens = part.get("loosens_percent")
    if loosens is None:
        return text
    soon = "as soon as it begins to shrink" if loosens < AT_ONCE_PERCENT else f"when it has dried by {loosens:.1g} %"
    return f"{text} The jaws lose their grip {soon}: tighten at every stop."


def _too_small(sizes: Sequence[Mapping[str, Any]]) -> str:
    """Whether a larger one would do."""
    small = any(size["given"] and size["value"] < size.get("least", 0.0) for size in sizes)
    return "Yours is too small for this cut." if small else "No size of it is enough for this cut."


def hold_lines(hold: Mapping[str, Any], units: str) -> Iterator[Line]:
    """Sizes of one hold with their reasons, what gives first, and what drying does to it."""
    part, system = hold["proportions"], System(units)
    if not part["sizes"] and not part["notes"]:
        return
    name = spoken(hold["method"])
    yield Line("")
    yield Line(f"Sizes: {name}", "title")
    if part.get("enough") is False:
        yield from wrapped(_too_small(part["sizes"]), "  ", "caution")
    for size in part["sizes"]:
        yield from _size(size, hold["method"], system)
    texts = [FIRST_WORDS[part["gives_first"]]] if part.get("gives_first") else []
    if "jaw_circle" in part:
        tenon = next(size["value"] for size in part["sizes"] if size["name"] == "tenon.diameter")
        texts.append(_circle(part["jaw_circle"], tenon, system))
    if "drying" in part:
        texts.append(_grip_drying(part["drying"], system))
    for text in [*texts, *(f"{note[:1].upper()}{note[1:]}." for note in part["notes"])]:
        yield from wrapped(text, "  - ", "quiet", 4)


def drying_lines(part: Mapping[str, Any], units: str) -> Iterator[Line]:
    """How oval wet work dries, the wall to leave, and when to true it."""
    system = System(units)
    yield Line("")
    yield Line("When it dries", "title")
    doubt = ", estimated: the table has no figure of its own" if part["filled"] else ""
    most, least = part["shrinks_most_percent"], part["shrinks_least_percent"]
    ways = f"{most:.1f} % along its rings and {least:.1f} % across them"
    if least == 0:
        ways = f"{most:.1f} % across the grain and next to nothing along it"
    yield from wrapped(
        f"From {part['from_percent']:.0f} % to {part['to_percent']:.0f} % it shrinks {ways} ({part['woods']}{doubt}): "
        f"turned round now, {_length(part['diameter_mm'], system, 'near')} ends "
        f"{_length(part['oval_mm'], system)} out of round.",
        "  - ",
        "text",
        4,
    )
    if "wall_mm" in part:
        yield from wrapped(
            f"To have it round in the end, rough it with an even wall of {_length(part['wall_mm'], system)} (the oval "
            f"alone takes {_length(part['wall_of_oval_mm'], system)}), dry it until it loses no more weight, then true "
            "tenon, outside, inside. Or turn it to its final wall in one go and let it move.",
            "  - ",
            "do",
            4,
        )
    else:
        yield from wrapped("Rough it oversize, dry it until it loses no more weight, then true it.", "  - ", "do", 4)
