"""Random persons at the lathe: what they know of one job, as field=value. Some know a lot, some little."""

from __future__ import annotations

import random

WOODS = (
    "sugar maple",
    "white ash",
    "black walnut",
    "ponderosa pine",
    "beech",
    "white oak",
    "cocobolo",
    "maple",
    "unknown",
)
OTHERS = ("acrylic", "canvas phenolic", "bone", "brass", "acetal")


def person(dice: random.Random) -> dict[str, str]:
    """Everything one person knows, material, diameter and length always."""
    kinds = (_spindle, _bowl, _bowl, _platter, _box, _rod)
    known = {"work.material": dice.choice(WOODS if dice.random() < 0.9 else OTHERS), **dice.choice(kinds)(dice)}
    sure = ("work.material", "work.diameter", "work.length")
    knows = dice.choice((0.5, 0.75, 0.95))
    known = {
        name: text
        for name, text in {**known, **_lathe(dice), **_self(dice)}.items()
        if name in sure or dice.random() < knows
    }
    if dice.random() < 0.15:
        known["work.condition"] = f"[{dice.choice(('check', 'knot', 'through-crack', 'live-edge', 'sound', 'punky'))}]"
    return known


def _mm(dice: random.Random, low: float, high: float) -> str:
    return f"{dice.uniform(low, high):.0f} mm"


def _spindle(dice: random.Random) -> dict[str, str]:
    return {
        "work.diameter": _mm(dice, 25, 110),
        "work.length": _mm(dice, 150, 700),
        "work.form": dice.choice(("square", "square", "octagon", "round")),
        "work.state": dice.choice(("not-round", "round")),
        "work.grain": "along",
        "work.purpose": dice.choice(("spindle", "handle", "column")),
        "work.moisture": dice.choice(("8%", "12%", "dry", "air-dry")),
        "hold.method": dice.choice(("spur-drive", "two-spur-drive", "toothed-ring-drive", "jaws-on-tenon")),
        "hold.tail.kind": dice.choice(("live-point", "live-cup", "live-cone")),
        "cut.operation": dice.choice(("roughing", "shaping", "sanding")),
    }


def _bowl(dice: random.Random) -> dict[str, str]:
    return {
        "work.diameter": _mm(dice, 150, 380),
        "work.length": _mm(dice, 60, 130),
        "work.form": dice.choice(("disc", "disc", "half-log")),
        "work.state": dice.choice(("not-round", "round")),
        "work.grain": "across",
        "work.purpose": "bowl",
        "work.moisture": dice.choice(("green", "wet", "12%", "air-dry")),
        "hold.method": dice.choice(("faceplate-screws", "screw-chuck", "jaws-on-tenon", "glue-block")),
        "cut.operation": dice.choice(("roughing", "shaping", "hollowing")),
        "hold.screws.count": str(dice.randint(4, 8)),
    }


def _platter(dice: random.Random) -> dict[str, str]:
    return {
        "work.diameter": _mm(dice, 200, 350),
        "work.length": _mm(dice, 25, 45),
        "work.form": "disc",
        "work.state": dice.choice(("round", "finished")),
        "work.grain": "across",
        "work.purpose": "platter",
        "work.moisture": "10%",
        "hold.method": dice.choice(("jaws-in-recess", "vacuum", "double-sided-tape", "faceplate-screws")),
        "cut.operation": dice.choice(("shaping", "finishing", "sanding")),
    }


def _box(dice: random.Random) -> dict[str, str]:
    return {
        "work.diameter": _mm(dice, 45, 100),
        "work.length": _mm(dice, 50, 130),
        "work.form": "round",
        "work.state": "round",
        "work.grain": "along",
        "work.purpose": "box",
        "work.moisture": "12%",
        "hold.method": dice.choice(("jaws-on-tenon", "long-jaws", "jam-chuck", "collet")),
        "cut.operation": dice.choice(("shaping", "hollowing", "parting")),
    }


def _rod(dice: random.Random) -> dict[str, str]:
    return {
        "work.diameter": _mm(dice, 10, 30),
        "work.length": _mm(dice, 80, 500),
        "work.form": "round",
        "work.state": "round",
        "work.grain": "along",
        "work.purpose": dice.choice(("pen", "bush", "other")),
        "work.moisture": "dry",
        "hold.method": dice.choice(("collet", "three-jaw", "drill-chuck", "split-bushing", "mandrel")),
        "cut.operation": dice.choice(("shaping", "finishing", "drilling")),
    }


def _lathe(dice: random.Random) -> dict[str, str]:
    kind = dice.choice(("wood-lathe", "metal-lathe"))
    known = {
        "machine.kind": kind,
        "machine.nose": dice.choice(("threaded", "cam-lock")) if kind == "metal-lathe" else "threaded",
        "machine.min_rpm": str(dice.choice((50, 100, 250, 400))),
        "machine.max_rpm": str(dice.choice((1400, 2000, 3200))),
        "machine.mass": f"{dice.choice((45, 90, 160, 300, 700))} kg",
        "machine.stand": dice.choice(("heavy-iron", "ordinary", "light")),
        "machine.swing": f"{dice.choice((250, 350, 500))} mm",
        "machine.between_centers": f"{dice.choice((400, 750, 1000))} mm",
        "cut.rotation": "forward",
    }
    if dice.random() < 0.15:
        known["cut.rotation"] = "reverse"
    return known


def _self(dice: random.Random) -> dict[str, str]:
    return {
        "person.extraction": dice.choice(("yes", "no")),
        "person.respirator": dice.choice(("none", "P2", "P3")),
        "person.asthma": "yes" if dice.random() < 0.1 else "no",
        "work.use": dice.choice(("food", "other")),
    }
