"""What nobody said is never better than the stated default, field by field, through the whole answer.

The defaults are written down here from the models and from what the trade takes, apart from the program: a light lathe
on an ordinary stand, a hand-tightened key, the weakest glue in use, the point that splits most readily.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from functools import lru_cache
from typing import Any, NamedTuple

import pytest

from advisor import verdicts
from advisor.models.case import Case
from advisor.models.fields import field_names
from advisor.reading import read_case
from advisor.situation import Situation, settle
from tests.rules.bench import words_of
from tests.whole.answers import answer

ROOM = 1e-6
BASES = {
    "bowl on a tenon": "BOWL; hold.method=jaws-on-tenon; hold.overhang=80mm",
    "bowl to hollow": "BOWL; hold.method=jaws-on-tenon; work.state=round; cut.operation=hollowing",
    "bowl on screws": "BOWL; hold.method=faceplate-screws; hold.tail.kind=none",
    "spindle": "SPINDLE; hold.method=spur-drive",
    "rod with a cup": "NARROW; hold.method=spur-drive; hold.tail.kind=live-cup",
    "platter": "PLATTER; work.floor=8mm",
    "glued": "HOLLOW; hold.method=glue-block; hold.glue.kind=epoxy",
    "taped": "DISC; hold.method=double-sided-tape",
    "sucked": "BOWL; work.state=finished; hold.method=vacuum; hold.vacuum.gauge=70kPa",
    "half-log": "SPINDLE; work.form=half-log; work.axis_from_flat=35mm; work.grain=along; hold.method=two-spur-drive",
    "wet log": "SPINDLE; work.form=log; work.moisture=green; work.diameter=6in; hold.method=spur-drive",
    "drilled": "KNOB; cut.operation=drilling; cut.drill_diameter=12mm; work.state=round; work.form=round",
    "plastic": "PEN; work.material=acrylic",
}
SHARES = {"square": 0.01, "log": 0.03, "irregular": 0.05, "slab": 0.05}
FORCES = {"roughing": 100.0, "finishing": 25.0, "sanding": 10.0}


class Told(NamedTuple):
    """A case as it is said, and what is settled of it."""

    words: tuple[str, ...]
    found: Situation

    def said(self, field: str) -> str | None:
        return next((word.partition("=")[2] for word in self.words if word.partition("=")[0] == field), None)

    @property
    def end(self) -> float:
        """Diameter of the end face."""
        return self.found.body.end_diameter

    @property
    def across(self) -> bool:
        return self.found.traits.grain == "across"


Default = Callable[[Told], str | None]


def fixed(text: str) -> Default:
    return lambda _: text


def _mass(told: Told) -> str | None:
    """The stated shape, full, at the high end of the density."""
    body, form = told.found.body, told.found.traits.form
    area = {"square": body.diameter**2 / 2}.get(form, math.pi / 4 * body.diameter**2)
    if form == "half-log":
        return None
    volume = math.pi / 6 * body.diameter**3 if form == "sphere" else area * body.length
    return f"{volume * told.found.density.high * 1e-9:.9f}kg"


def _offset(told: Told) -> str | None:
    traits = told.found.traits
    if traits.form == "half-log":
        return None
    share = (0.005 if traits.green else 0.002) if traits.state != "not-round" else SHARES.get(traits.form, 0.015)
    return f"{share * told.found.body.diameter:.9f}mm"


def _lathe_mass(told: Told) -> str:
    return f"{40 * max(1.0, (told.found.body.diameter / 254) ** 2):.9f}kg"


def _force(told: Told) -> str | None:
    """A hand cut: less on thin work, more in dense wood, less in wet."""
    wood, body = told.found.wood, told.found.body
    if told.found.operation in ("drilling", "balancing"):
        return None
    force = FORCES.get(told.found.operation, 60.0) * min(1.0, body.end_diameter / 50)
    if wood is None:
        return f"{force / 2:.9f}N"
    wet = 1 - 0.3 * min(max((wood.moisture_percent - 12) / 18, 0.0), 1.0)
    return f"{force * min(max(wood.density12 / 650, 0.5), 1.5) * wet:.9f}N"


def _tenon(told: Told) -> float:
    size, end = told.found.body.diameter, told.end
    if told.across:
        return min(150.0, max(min(0.4 * size, 100.0), size / 4))
    return min(0.85 * end, max(0.4 * end, told.found.body.length / 3.5))


def on(method: str, size: Callable[[Told], float], unit: str = "mm") -> Default:
    """A size that only one way of holding has."""
    return lambda told: f"{size(told):.9f}{unit}" if told.said("hold.method") == method else None


def _count(told: Told) -> float:
    size = told.found.body.diameter
    return 4 if size <= 200 else 6 if size <= 300 else 8


def _drive(told: Told) -> float:
    given = told.found.case.hold.drive
    if given is not None and given.outer_diameter is not None:
        return given.outer_diameter
    if told.across:
        return min(max(told.found.body.diameter / 4, 25.0), 50.0)
    return min(told.end / 2, max(38.0, min(told.end / 3, 50.0)))


def _glue_face(told: Told) -> float:
    return told.end if told.end <= 75 else max(75.0, told.found.body.diameter / 2)


SPUR = "spur-drive"
TENON = "jaws-on-tenon"
SCREWS = "faceplate-screws"
DEFAULTS: dict[str, Default] = {
    "work.form": fixed("irregular"),
    "work.state": fixed("not-round"),
    "work.grain": lambda told: (
        "across"
        if told.said("work.form") in ("disc", "slab", "half-log") or told.said("work.purpose") in ("bowl", "platter")
        else "along"
    ),
    "work.moisture": lambda told: (
        "green" if told.said("work.form") in ("log", "half-log", "slab", "irregular", None) else "12%"
    ),
    "work.mass": _mass,
    "work.offset": _offset,
    "work.finished_diameter": lambda told: f"{told.end:.9f}mm",
    "work.thinnest_diameter": lambda told: f"{told.end:.9f}mm",
    "work.axis_from_flat": lambda told: (
        f"{told.found.body.diameter / 2 / math.hypot(1, 0.25) / 4:.9f}mm"
        if told.said("work.form") == "half-log"
        else None
    ),
    "work.floor": on("jaws-in-recess", lambda _: 0.1),
    "work.end_waste": lambda told: f"{min(10.0, told.found.body.length / 2):.9f}mm",
    "work.one_side_wet": fixed("no"),
    "work.raw": fixed("no"),
    "work.condition": fixed("[sound]"),
    "work.marks_allowed": fixed("any"),
    "work.use": fixed("other"),
    "work.tested": fixed("no"),
    "machine.mass": _lathe_mass,
    "machine.base_width": fixed("500mm"),
    "machine.spindle_height": fixed("1100mm"),
    "machine.stand": fixed("ordinary"),
    "machine.bolted_down": fixed("no"),
    "machine.tailstock": fixed("yes"),
    "hold.overhang": lambda told: f"{told.found.body.length:.9f}mm",
    "hold.drive.teeth": lambda told: "4" if told.said("hold.method") == SPUR else None,
    "hold.drive.outer_diameter": on(SPUR, _drive),
    "hold.drive.inner_diameter": on(SPUR, lambda told: 0.4 * _drive(told)),
    "hold.drive.face_angle": on(SPUR, lambda _: 30.0, "deg"),
    "hold.drive.back_angle": on(SPUR, lambda _: 30.0, "deg"),
    "hold.drive.taper_seated": lambda told: "no" if told.said("hold.method") in (SPUR, "two-spur-drive") else None,
    "hold.tail.kind": lambda told: None if told.said("hold.tail.kind") == "none" else "live-point",
    "hold.tail.point_angle": fixed("60deg"),
    "hold.tail.rating": fixed("2000N"),
    "hold.tail.cup_diameter": lambda told: f"{min(19.0, 0.6 * told.end):.9f}mm",
    "hold.tail.lip_height": fixed("1.25mm"),
    "hold.tenon.diameter": on(TENON, _tenon),
    "hold.tenon.length": on(TENON, lambda told: min(max(told.found.body.diameter / 20, 8.0), 12.0)),
    "hold.tenon.shoulder_diameter": on(TENON, lambda told: _tenon(told) + 16),
    "hold.recess.diameter": on("jaws-in-recess", lambda told: min(0.3 * told.found.body.diameter, 100.0)),
    "hold.recess.depth": on("jaws-in-recess", lambda _: 4.0),
    "hold.recess.wall": on("jaws-in-recess", lambda _: 20.0),
    "hold.screws.count": lambda told: f"{_count(told):.0f}" if told.said("hold.method") == SCREWS else None,
    "hold.screws.diameter": on(SCREWS, lambda _: 5.5),
    "hold.screws.length": on(SCREWS, lambda _: 25.0),
    "hold.screws.circle": on(SCREWS, lambda told: 0.8 * min(max(0.4 * told.found.body.diameter, 75.0), 200.0)),
    "hold.screws.kind": lambda told: "wood" if told.said("hold.method") == SCREWS else None,
    "hold.glue.kind": lambda told: "hot-melt" if told.said("hold.method") == "glue-block" else None,
    "hold.glue.diameter": on("glue-block", _glue_face),
    "hold.glue.cured": lambda told: "yes" if told.said("hold.method") == "glue-block" else None,
    "hold.vacuum.gauge": on("vacuum", lambda _: 50.0, "kPa"),
    "hold.vacuum.seal_diameter": on("vacuum", lambda told: 0.6 * told.found.body.diameter),
    "hold.chuck.grip": on(TENON, lambda _: 6000.0, "N"),
    "hold.outboard": fixed("no"),
    "cut.operation": lambda told: {"not-round": "roughing", "round": "shaping", "finished": "finishing"}[
        told.found.traits.state
    ],
    "cut.rotation": fixed("forward"),
    "cut.tool": fixed("hand"),
    "cut.tool_material": fixed("steel"),
    "cut.force": _force,
    "cut.diameter": lambda told: (
        None if told.found.traits.state == "finished" else f"{told.found.body.diameter:.9f}mm"
    ),
    "cut.drill_diameter": lambda told: (
        f"{min(50.0, 0.4 * told.found.body.diameter):.9f}mm" if told.found.operation == "drilling" else None
    ),
    "cut.cooling": fixed("dry"),
}
# Fields for which nothing is assumed, and why that is no better than saying so.
NONE_STATED = {
    "a hazard nobody mentioned is asked for, not assumed": (
        "work.grain_slope", "work.crack.along", "work.crack.across", "work.crack.gap", "work.crack.runs", "work.parts",
        "machine.extinguisher", "hold.rear_overhang", "hold.left_mounted", "person.reacted_before", "person.asthma",
        "person.respirator", "person.extraction", "person.others_in_room",
    ),
    "measured or not there: the default is that of what it measures": (
        "work.radii", "work.radii_far_end", "work.balance_test.weight", "work.balance_test.radius", "work.profile",
        "hold.slip_test.torque", "hold.slip_test.thrust", "hold.handwheel_torque", "hold.steady.position",
    ),
    "a limit of the machine or the device that stands in its papers and cannot be guessed": (
        "machine.swing", "machine.swing_over_carriage", "machine.between_centers", "machine.spindle_bore",
        "machine.min_rpm", "machine.max_rpm", "machine.speeds", "machine.rpm_set", "machine.power", "machine.altitude",
        "machine.spindle_taper", "machine.tail_taper", "machine.handwheel_lead", "machine.handwheel_diameter",
        "hold.chuck.max_rpm", "hold.chuck.jaw_depth", "hold.chuck.jaw_circle", "hold.chuck.jaw_smallest",
        "hold.chuck.jaw_largest", "hold.drive.tooth_height", "hold.drive.shank_taper",
    ),
    "advised by the answer itself, which is then the advice and no assumption": (
        "hold.method", "hold.kit", "hold.drive.kind", "hold.drive.seated_depth",
    ),
    "changes words and checks, no limit by itself": (
        "title", "units", "work.purpose", "work.finished_length", "work.wall", "machine.kind", "machine.nose",
        "machine.reverse", "machine.nose_lock", "machine.brake", "machine.drawbar", "cut.wanted_rpm",
    ),
    "the toolpost's own, beside the hand": ("cut.depth", "cut.feed"),
}  # fmt: skip
NEEDED = {"work.material", "work.diameter", "work.length"}


@lru_cache(maxsize=4096)
def asked(words: tuple[str, ...]) -> dict[str, Any]:
    return answer(words)


def without(words: Sequence[str], field: str) -> tuple[str, ...]:
    return tuple(word for word in words if word.partition("=")[0] != field)


def numbers(found: dict[str, Any]) -> dict[str, float]:
    """What may not be better: higher is better for each."""
    thrust, hold = found.get("thrust", {}), found["holding"][0]
    return {
        "verdict": -float(verdicts.MOUNT.index(found["verdict"])),
        "ceiling": float(found["speed"]["ceiling_rpm"]),
        "start": float(found["speed"].get("start_rpm", 0.0)),
        "allowed thrust": float(thrust.get("allowed_n", math.inf)),
        "hold, low": float(hold.get("low", 0.0)),
        "hold, typical": float(hold.get("typical_over_divisor", 0.0)),
    }


def better(base: str, field: str) -> list[str]:
    """What the silence about a field makes better than its stated default does; empty is right."""
    silent = without(words_of(BASES[base]), field)
    default = DEFAULTS[field](Told(silent, settle(read_case(None, list(silent)))))
    if default is None:
        return []
    unsaid, said = numbers(asked(silent)), numbers(asked((*silent, f"{field}={default}")))
    rose = {name: unsaid[name] - said[name] for name in said if unsaid[name] > said[name] + ROOM * abs(said[name])}
    return [f"{name}: {unsaid[name]} > {said[name]}" for name in rose]


def test_every_field_has_a_default_or_a_reason_for_none() -> None:
    named = [name for names in NONE_STATED.values() for name in names]
    every = {name for name in field_names(Case) if not name.startswith("expect.")}
    assert len(named) == len(set(named))
    assert set(named) | set(DEFAULTS) | NEEDED == every
    assert not set(named) & set(DEFAULTS)


@pytest.mark.slow
@pytest.mark.properties
@pytest.mark.parametrize("field", DEFAULTS)
@pytest.mark.parametrize("base", BASES)
def test_silence_is_never_better_than_the_default(base: str, field: str) -> None:
    assert better(base, field) == []


SAMPLE = [
    ("bowl on a tenon", "machine.mass"), ("bowl on a tenon", "hold.chuck.grip"), ("bowl to hollow", "hold.overhang"),
    ("bowl on screws", "hold.screws.count"), ("spindle", "work.form"), ("spindle", "hold.tail.rating"),
    ("spindle", "cut.force"), ("rod with a cup", "hold.tail.kind"), ("rod with a cup", "work.thinnest_diameter"),
    ("platter", "work.floor"), ("glued", "hold.glue.kind"), ("sucked", "hold.vacuum.gauge"),
    ("wet log", "work.moisture"), ("half-log", "work.axis_from_flat"), ("plastic", "work.mass"),
]  # fmt: skip


@pytest.mark.parametrize(("base", "field"), SAMPLE)
def test_silence_is_never_better_in_a_sample(base: str, field: str) -> None:
    assert better(base, field) == []


def test_the_comparison_sees_what_is_better() -> None:
    """A default that is worse than what the program takes is noticed."""
    words = words_of(BASES["bowl on a tenon"])
    silent = without(words, "machine.mass")
    unsaid, heavy = numbers(asked(silent)), numbers(asked((*silent, "machine.mass=20kg")))
    assert unsaid["ceiling"] > heavy["ceiling"]


def test_nothing_left_to_cut_away_is_a_value_and_no_silence() -> None:
    """A point must not sink where no waste is left; none is never better than little."""
    words = words_of(BASES["spindle"])
    allowed = [numbers(asked((*words, f"work.end_waste={waste}")))["allowed thrust"] for waste in ("0mm", "1mm", "3mm")]
    assert allowed == sorted(allowed)
    assert allowed[0] < 2.0
    assert asked((*words, "work.end_waste=0mm"))["thrust"]["window"] == "empty"


ALWAYS = {
    "work.form", "work.state", "work.grain", "work.moisture", "work.mass", "work.offset", "machine.mass",
    "machine.base_width", "machine.spindle_height", "machine.stand", "machine.bolted_down", "hold.method",
    "hold.overhang", "cut.operation", "cut.force",
}  # fmt: skip


def test_every_default_of_a_bare_case_is_listed() -> None:
    found = asked(("work.material=ash", "work.diameter=10in", "work.length=3in"))
    assert {entry["field"] for entry in found["assumed"]} >= ALWAYS


def test_a_wood_value_that_was_filled_in_is_told_with_its_unit() -> None:
    told = {entry["field"]: entry["value"] for entry in answer(words_of("SPINDLE; work.material=ramin"))["assumed"]}
    assert told["wood.tension_perpendicular"].endswith(" MPa")
    assert told["wood.gravity"].replace(".", "").isdigit()
