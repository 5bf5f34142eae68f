"""The hold of a setup, from above: diameters and depths of the answer to scale, bodies for place only."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

from advisor.drawing.setup import Blank, Held
from advisor.drawing.setup_blank import block, box, ring
from advisor.drawing.shapes import Line, Shape

OUTSIDE = 9.0  # page mm that jaws reach over work whose gripped length nobody said
BODY = 7.0  # page mm of a chuck's or plate's body
JAW = 5.0  # page mm of a jaw across
PLATE = 3.0

JAWS = {"three-jaw": 3, "drill-chuck": 3, "collet": 0, "collet-block": 0, "split-bushing": 3}


@dataclass
class Drawn:
    """Shapes behind and before the blank, in model mm; circles to dimension in the end view, by diameter and name;
    depths to dimension from above, by length and name; jaws that close on the work."""

    behind: list[Shape] = field(default_factory=list)
    before: list[Shape] = field(default_factory=list)
    circles: list[tuple[float, str]] = field(default_factory=list)
    depths: list[tuple[float, str]] = field(default_factory=list)
    jaws: int = 0
    jaws_at: float = 0.0
    screws: int = 0
    teeth: int = 0


Place = Callable[[float], float]  # page mm -> model mm


def hold(held: Held, blank: Blank, page: Place) -> Drawn:
    """The hold as it stands at the headstock end of this blank."""
    if not NEEDED.get(held.method, frozenset()) <= held.sizes.keys():
        return _plain(held, blank, page)
    return FAMILY.get(held.method, _plain)(held, blank, page)


def _spindle(page: Place, right: float, half: float) -> list[Shape]:
    return block(box(right - page(BODY), -half, right, half), "steel")


def _diameter(held: Held, *names: str, other: float) -> tuple[float, bool]:
    """The first of these sizes, and whether there was one."""
    for name in names:
        if name in held.sizes:
            return held.sizes[name], True
    return other, False


def _plain(_held: Held, blank: Blank, page: Place) -> Drawn:
    """A plate of no stated size."""
    half = min(blank.end / 2, page(11))
    return Drawn(behind=[*block(box(-page(PLATE), -half, 0, half), "steel"), *_spindle(page, -page(PLATE), half / 2)])


def _screwed(held: Held, _blank: Blank, page: Place) -> Drawn:
    sizes = held.sizes
    plate, circle, thick, deep = (sizes[name] for name in ("plate", "circle", "diameter", "length"))
    drawn = Drawn(circles=[(circle, "circle")], depths=[(deep, "screws")], screws=int(sizes["count"]))
    drawn.behind = [*block(box(-page(PLATE), -plate / 2, 0, plate / 2), "steel")]
    drawn.behind += _spindle(page, -page(PLATE), min(plate / 4, page(6)))
    for y in (-circle / 2, circle / 2):
        drawn.before += ring(box(-page(PLATE), y - thick / 2, deep, y + thick / 2), "hidden")
    return drawn


def _one_screw(held: Held, _blank: Blank, page: Place) -> Drawn:
    face, thick, deep = (held.sizes[name] for name in ("face", "diameter", "length"))
    drawn = Drawn(circles=[(face, "face")], depths=[(deep, "screw")])
    drawn.behind = [*block(box(-page(PLATE), -face / 2, 0, face / 2), "steel")]
    drawn.behind += _spindle(page, -page(PLATE), min(face / 4, page(6)))
    drawn.before = ring(box(0, -thick / 2, deep, thick / 2), "hidden")
    return drawn


def _block(held: Held, blank: Blank, page: Place) -> Drawn:
    """Waste wood or tape between a plate and the work."""
    across, known = _diameter(held, "diameter", other=blank.end * 0.6)
    thick = page(1.2 if held.method == "double-sided-tape" else 5)
    plate = max(across, page(8))
    drawn = Drawn(circles=[(across, "joint")] if known else [])
    drawn.behind = [*block(box(-thick, -across / 2, 0, across / 2), "back")]
    drawn.behind += block(box(-thick - page(PLATE), -plate / 2, -thick, plate / 2), "steel")
    drawn.behind += _spindle(page, -thick - page(PLATE), min(plate / 4, page(6)))
    return drawn


def _jaw_pair(left: float, right: float, half: float, jaw: float) -> list[Shape]:
    return [
        *block(box(left, half, right, half + jaw), "steel"),
        *block(box(left, -half - jaw, right, -half), "steel"),
    ]


def _tenon(held: Held, blank: Blank, page: Place) -> Drawn:
    """Jaws round a tenon cut on the end of the blank."""
    across, known = _diameter(held, "diameter", other=blank.end * 0.5)
    deep, told = _diameter(held, "length", other=page(6))
    across, deep = min(across, blank.diameter), min(deep, blank.length)
    drawn = Drawn(jaws=JAWS.get(held.method, 4), jaws_at=across / 2)
    drawn.circles = [(across, "tenon")] if known else []
    drawn.depths = [(deep, "tenon")] if told else []
    reach = max(blank.diameter / 2, across / 2)
    # the waste beside the tenon is away: paper over the blank, then the tenon's own edges
    drawn.before = []
    for side in (1, -1):
        low, high = sorted((side * across / 2, side * (reach + page(0.4))))
        drawn.before += [*_cleared(-page(0.6), low, deep, high)]
        drawn.before += [Line((0, side * across / 2), (deep, side * across / 2)), _shoulder(side, across, reach, deep)]
    drawn.before.append(Line((0, -across / 2), (0, across / 2)))
    drawn.before += _jaw_pair(-page(1.5), deep - min(page(0.5), deep / 4), across / 2, page(JAW))
    drawn.behind = _chuck(page, across / 2 + page(JAW))
    return drawn


def _cleared(left: float, low: float, right: float, high: float) -> list[Shape]:
    return block(box(left, low, right, high), "paper")[:1]


def _shoulder(side: int, across: float, reach: float, deep: float) -> Line:
    return Line((deep, side * across / 2), (deep, side * reach))


def _chuck(page: Place, half: float) -> list[Shape]:
    left = -page(1.5)
    return [*block(box(left - page(BODY), -half, left, half), "steel")]


def _recess(held: Held, blank: Blank, page: Place) -> Drawn:
    """Jaws opened in a recess of the face."""
    across, known = _diameter(held, "diameter", other=blank.end * 0.3)
    deep, told = _diameter(held, "depth", other=page(3))
    drawn = Drawn(jaws=4, jaws_at=-across / 2)
    drawn.circles = [(across, "recess")] if known else []
    drawn.depths = [(deep, "recess")] if told else []
    inner = max(across / 2 - page(JAW), across / 8)
    drawn.before = block(box(0, -across / 2, deep, across / 2), "paper")
    for side in (1, -1):
        low, high = sorted((side * inner, side * across / 2))
        drawn.before += block(box(-page(2), low, deep, high), "steel")
    drawn.behind = block(box(-page(2) - page(BODY), -across / 2 - page(1), -page(2), across / 2 + page(1)), "steel")
    return drawn


def _outside(held: Held, blank: Blank, page: Place) -> Drawn:
    """Jaws or a collet on the work itself, as far as it does not stand out."""
    half = held.sizes.get("diameter", blank.end) / 2
    said = held.overhang is not None and held.overhang < blank.length
    deep = blank.length - (held.overhang or 0.0) if said else min(page(OUTSIDE), blank.length * 0.6)
    count = JAWS.get(held.method, 4)
    jaw = page(JAW if count else JAW * 0.6)
    drawn = Drawn(jaws=count, jaws_at=half, depths=[(deep, "gripped")] if said else [])
    drawn.before = _jaw_pair(-page(1.5), deep, half, jaw)
    drawn.behind = _chuck(page, half + jaw)
    return drawn


def _rod(held: Held, blank: Blank, page: Place) -> Drawn:
    """A rod or bolt along the axis: a mandrel right through, a pin or stud part of the way."""
    across, known = _diameter(held, "diameter", other=page(3))
    through = held.method == "mandrel"
    reach = blank.length + page(2) if through else min(page(12), blank.length * 0.6)
    drawn = Drawn(circles=[(across, "bore")] if known else [])
    drawn.before = ring(box(-page(3), -across / 2, reach, across / 2), "hidden")
    half = max(across, page(5))
    drawn.behind = block(box(-page(3 + BODY), -half, -page(3), half), "steel")
    return drawn


def _suction(held: Held, blank: Blank, page: Place) -> Drawn:
    seal = held.sizes.get("seal_diameter", blank.end * 0.6)
    drawn = Drawn(circles=[(seal, "seal")])
    for y in (-seal / 2, seal / 2):
        drawn.behind += block(box(-page(3), y - page(1), 0, y + page(1)), "land")
    drawn.behind += block(box(-page(6), -seal / 2 - page(2), -page(3), seal / 2 + page(2)), "steel")
    drawn.behind += _spindle(page, -page(6), page(4))
    return drawn


def _cup(held: Held, blank: Blank, page: Place) -> Drawn:
    across, known = _diameter(held, "diameter", other=blank.end * 0.6)
    drawn = Drawn(circles=[(across, "cup")] if known else [])
    deep = blank.length / 2 * (1 - max(1 - (across / blank.diameter) ** 2, 0.0) ** 0.5)
    drawn.behind = block(box(-page(8), -across / 2, deep, across / 2), "steel")
    return drawn


def _clamps(held: Held, blank: Blank, page: Place) -> Drawn:
    """A plate behind the work and something that draws it against the plate."""
    half = blank.diameter / 2
    drawn = Drawn(behind=block(box(-page(PLATE), -half - page(6), 0, half + page(6)), "steel"))
    drawn.behind += _spindle(page, -page(PLATE), page(5))
    reach = blank.length if held.method == "ring-clamp-plate" else min(blank.length, page(8))
    for side in (1, -1):
        low, high = sorted((side * (half - page(3)), side * (half + page(5))))
        drawn.before += block(box(reach, low, reach + page(2), high), "steel")
        drawn.before.append(Line((0, side * (half + page(4))), (reach, side * (half + page(4))), "edge"))
    return drawn


def _drive(held: Held, blank: Blank, page: Place) -> Drawn:
    """A drive center: its rim and teeth to scale, sunk in as deep as the answer says."""
    drive = held.drive
    across = drive.outer if drive is not None else held.sizes.get("diameter", min(blank.end * 0.6, page(14)))
    drawn = Drawn(circles=[(across, "drive")] if drive is not None else [])
    sunk = drive.seated if drive is not None else 0.0
    half, face = across / 2, -page(2.5)
    drawn.behind = [*block(box(face - page(3), -half, face, half), "steel"), *_shank(page, face - page(3), half)]
    if drive is not None and drive.kind in ("four", "two", "ring", "toothed", "toothed-ring"):
        drawn.teeth = drive.teeth or 0
        inner = min(max(drive.inner / 2, half * 0.3), half * 0.8)
        for side in (1, -1):
            points = ((face, side * half), (sunk, side * half), (face, side * inner))
            drawn.before += block(points, "steel")
        drawn.depths = [(sunk, "seated")] if sunk > 0 else []
    elif drive is not None and drive.kind == "cup":
        drawn.behind += block(box(face, -half, 0, half), "steel")
    tip = page(2)
    drawn.before += block(((face, tip), (page(2.5), 0.0), (face, -tip)), "steel")
    return drawn


def _shank(page: Place, right: float, half: float) -> list[Shape]:
    wide = min(half, page(3.5))
    left = right - page(BODY)
    return block(((left, -wide * 0.8), (right, -wide), (right, wide), (left, wide * 0.8)), "steel")


FAMILY: dict[str, Callable[[Held, Blank, Place], Drawn]] = {
    **dict.fromkeys(
        ("spur-drive", "two-spur-drive", "toothed-ring-drive", "cup-drive", "point-and-pin-drive", "driving-dog"),
        _drive,
    ),
    **dict.fromkeys(("faceplate-screws", "offset-faceplate"), _screwed),
    **dict.fromkeys(
        ("waste-block-faceplate", "glue-block", "paper-joint", "double-sided-tape", "friction-block"), _block
    ),
    "screw-chuck": _one_screw,
    **dict.fromkeys(("pin-chuck", "keyed-stud", "mandrel"), _rod),
    **dict.fromkeys(("jaws-on-tenon", "long-jaws", "jam-chuck"), _tenon),
    "jaws-in-recess": _recess,
    **dict.fromkeys(
        ("three-jaw", "four-jaw-independent", "soft-jaws", "collet", "collet-block", "split-bushing", "drill-chuck"),
        _outside,
    ),
    **dict.fromkeys(("rubber-button-jaws", "through-spindle", "square-socket-drive"), _outside),
    "vacuum": _suction,
    "sphere-cups": _cup,
    **dict.fromkeys(("clamped-faceplate", "ring-clamp-plate"), _clamps),
}
SCREWS = frozenset({"plate", "circle", "count", "diameter", "length"})
NEEDED = {
    "faceplate-screws": SCREWS,
    "offset-faceplate": SCREWS,
    "screw-chuck": frozenset({"face", "diameter", "length"}),
}
"""Sizes without which the hold is drawn as a bare plate: nobody could work them out."""
