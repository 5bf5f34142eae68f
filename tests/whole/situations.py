"""Random situations, sound and absurd, as field=value words: what people might type."""

from __future__ import annotations

import random
from typing import get_args

from advisor.models.case import METHODS, Condition, Form, Grain, State

WOODS = (
    "sugar maple",
    "American beech",
    "white oak",
    "black walnut",
    "ponderosa pine",
    "balsa",
    "teak",
    "maple",
    "cedar",
    "rosewood",
    "unknown",
    "hard maple",
    "Acer saccharum",
    "maple, sugar",
    "yew",
    "cocobolo",
)
OTHERS = ("acrylic", "acetal", "canvas phenolic", "alabaster", "bone", "brass", "celluloid", "flubberwood", "resin")
PURPOSES = ("spindle", "bowl", "platter", "box", "hollow-form", "bush", "handle", "ring", "sphere", "knob", "pen")
OPERATIONS = ("roughing", "shaping", "hollowing", "finishing", "sanding", "drilling", "parting", "balancing")
TAILS = ("live-point", "live-cup", "live-cone", "live-pad", "dead-point", "dead-cup", "none")
MOISTURES = ("dry", "air-dry", "wet", "green", "frozen", "8%", "12%", "19%", "45%")
NONSENSE = ("-3mm", "0mm", "1,5", "10", "1e400mm", "nan", "kg", "", "☃", "[1mm, 2mm]", "99999 km", "3'' 2", "null")


def _length(dice: random.Random, low: float, high: float) -> str:
    value = low * (high / low) ** dice.random()
    if dice.random() < 0.4:
        return f"{value / 25.4:.3f}in"
    return f"{value:.1f}mm"


def _maybe(dice: random.Random, words: list[str], chance: float, field: str, value: str) -> None:
    if dice.random() < chance:
        words.append(f"{field}={value}")


def situation(dice: random.Random) -> list[str]:
    """The words of one situation; now and then one of them is nonsense."""
    diameter = _length(dice, 8, 600)
    words = [
        f"work.material={dice.choice(WOODS if dice.random() < 0.85 else OTHERS)}",
        f"work.diameter={diameter}",
        f"work.length={_length(dice, 8, 1500)}",
    ]
    _maybe(dice, words, 0.8, "work.form", dice.choice(get_args(Form)))
    _maybe(dice, words, 0.6, "work.grain", dice.choice(get_args(Grain)))
    _maybe(dice, words, 0.8, "work.state", dice.choice(get_args(State)))
    _maybe(dice, words, 0.5, "work.moisture", dice.choice(MOISTURES))
    _maybe(dice, words, 0.5, "work.purpose", dice.choice(PURPOSES))
    _maybe(dice, words, 0.3, "work.condition", f"[{', '.join(dice.sample(get_args(Condition), dice.randint(1, 3)))}]")
    _maybe(dice, words, 0.2, "work.mass", f"{dice.uniform(0.05, 30):.2f}kg")
    _maybe(dice, words, 0.2, "work.offset", _length(dice, 0.1, 30))
    _maybe(dice, words, 0.15, "work.crack.across", _length(dice, 1, 200))
    _maybe(dice, words, 0.15, "work.crack.along", _length(dice, 1, 200))
    _machine(dice, words)
    _hold(dice, words)
    _maybe(dice, words, 0.5, "cut.operation", dice.choice(OPERATIONS))
    _maybe(dice, words, 0.2, "cut.force", f"{dice.uniform(1, 300):.0f}N")
    _maybe(dice, words, 0.2, "cut.wanted_rpm", f"{dice.uniform(50, 4000):.0f}")
    _maybe(dice, words, 0.2, "cut.tool", dice.choice(("hand", "carriage")))
    _maybe(dice, words, 0.2, "cut.rotation", dice.choice(("forward", "reverse")))
    _maybe(dice, words, 0.3, "person.asthma", dice.choice(("yes", "no")))
    _maybe(dice, words, 0.4, "person.extraction", dice.choice(("yes", "no")))
    _maybe(dice, words, 0.4, "person.respirator", dice.choice(("none", "P2", "P3", "powered")))
    if dice.random() < 0.15:
        spoiled = dice.randrange(len(words))
        words[spoiled] = words[spoiled].partition("=")[0] + "=" + dice.choice(NONSENSE)
    if dice.random() < 0.03:
        words.append("work.colour=red")
    return words


def _machine(dice: random.Random, words: list[str]) -> None:
    _maybe(dice, words, 0.5, "machine.kind", dice.choice(("wood-lathe", "metal-lathe")))
    _maybe(dice, words, 0.5, "machine.mass", f"{dice.uniform(20, 1500):.0f}kg")
    _maybe(dice, words, 0.3, "machine.min_rpm", f"{dice.uniform(20, 900):.0f}")
    _maybe(dice, words, 0.3, "machine.max_rpm", f"{dice.uniform(1000, 4000):.0f}")
    _maybe(dice, words, 0.3, "machine.nose", dice.choice(("threaded", "cam-lock", "bolted-taper", "taper-only")))
    _maybe(dice, words, 0.2, "machine.stand", dice.choice(("heavy-iron", "ordinary", "light")))
    _maybe(dice, words, 0.2, "machine.swing", _length(dice, 150, 800))
    _maybe(dice, words, 0.2, "machine.bolted_down", dice.choice(("yes", "no")))
    _maybe(dice, words, 0.1, "machine.tailstock", dice.choice(("yes", "no")))
    _maybe(dice, words, 0.2, "machine.power", f"{dice.uniform(100, 3000):.0f}W")
    _maybe(dice, words, 0.2, "machine.spindle_taper", str(dice.randint(0, 5)))


def _hold(dice: random.Random, words: list[str]) -> None:
    _maybe(dice, words, 0.5, "hold.method", dice.choice(METHODS))
    if dice.random() < 0.3:
        words.append(f"hold.kit=[{', '.join(dice.sample(METHODS, dice.randint(1, 6)))}]")
    _maybe(dice, words, 0.3, "hold.tail.kind", dice.choice(TAILS))
    _maybe(dice, words, 0.15, "hold.drive.seated_depth", f"{dice.uniform(0, 8):.1f}mm")
    _maybe(dice, words, 0.1, "hold.tenon.diameter", _length(dice, 15, 150))
    _maybe(dice, words, 0.1, "hold.screws.count", str(dice.randint(1, 12)))
    _maybe(dice, words, 0.1, "hold.overhang", _length(dice, 10, 400))
    _maybe(dice, words, 0.1, "hold.rear_overhang", _length(dice, 10, 1000))
