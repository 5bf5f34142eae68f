"""The answer of `advisor center` as lines for a terminal or a pipe."""

from __future__ import annotations

from collections.abc import Iterator

from advisor.centers.answer import SHARES, Answer, hole_open_to
from advisor.centers.schedule import least_flute
from advisor.centers.wording import angle, length, place, two_figures
from advisor.physics.center import core_radius, face_depth, land, root_thickness, thickness
from advisor.physics.center_setting import bore_for_two_settings

CAUTIONS = (
    "Cutting toward the vise: eye protection on, no gloves, work and block clamped, spindle stopped before measuring.",
    "Fresh teeth are knives: break the outer corners with a stone before handling. Local rules and the shop's own "
    "come first.",
)


def lines(answer: Answer) -> list[str]:
    """All of the answer in reading order."""
    return [
        *_heading(answer),
        *_warnings(answer),
        *_choices(answer),
        *_tooth(answer),
        *_moves(answer),
        *_errors(answer),
        *_strength(answer),
        *_assumed(answer),
        "",
        *CAUTIONS,
    ]


def _heading(answer: Answer) -> Iterator[str]:
    center, system = answer.center, answer.system
    yield (
        f"Drive center of {center.teeth} teeth: {length(center.diameter, system)} blank, "
        f"{length(center.hole, system)} hole, {length(center.cutter, system)} cutter, "
        f"{length(center.depth, system)} deep, {answer.wanted.rotation} rotation"
    )


def _warnings(answer: Answer) -> Iterator[str]:
    if answer.warnings:
        yield ""
        yield "Mind first"
    for warning in answer.warnings:
        yield f"  ! {warning}"


def _choices(answer: Answer) -> Iterator[str]:
    if not answer.choices:
        return
    yield ""
    yield "Cutters looked at"
    for c in answer.choices:
        note = "chosen" if c.chosen else "" if c.full_depth else "not full depth inside the rim"
        sizes = f"{length(c.cutter, answer.system):>12}  {length(c.depth, answer.system):>12} deep"
        yield f"  {sizes}  tip {angle(c.tip_angle):>9}  {note}".rstrip()


def _tooth(answer: Answer) -> Iterator[str]:
    center, system = answer.center, answer.system
    root = root_thickness(center)
    lands = [land(center, r) for r in (center.hole_radius, center.mid_radius, center.outer_radius)]
    thick = [thickness(center, center.mid_radius, share * center.depth) for share in SHARES]
    bore = bore_for_two_settings(center)
    rows = [
        ("cutter center from the part axis, Y", length(answer.side * center.driving.y, system)),
        ("cutter center outside the face, X", length(center.x, system)),
        ("land at hole, middle, rim", ", ".join(length(w, system) for w in lands)),
        ("recommended land", length(answer.recommended_land, system)),
        ("tip angle", angle(answer.tip_angle)),
        ("tooth height", length(center.depth - answer.tip_loss, system)),
        ("lost past zero land", length(answer.tip_loss, system)),
        ("depth of the driving face at its middle", length(face_depth(center), system)),
        ("thickness at 10, 25, 50, 75, 95 % of depth", ", ".join(place(t, system) for t in thick)),
        ("thickness at the root", "no back to measure to" if root is None else length(root, system)),
        ("core at the root, radius", length(core_radius(center), system)),
        ("hole broken into down to", length(hole_open_to(center), system)),
        ("wall clear of the tips", "yes" if answer.wall_clear else "no: tips are lowered"),
        ("cutter flutes at least", length(least_flute(center), system)),
        *([("bore of the face at least", length(bore, system))] if bore else []),
    ]
    yield ""
    yield "The tooth"
    for name, value in rows:
        yield f"  {name:<45}{value}"


def _moves(answer: Answer) -> Iterator[str]:
    yield ""
    yield "Moves (X 0 at the face, Y 0 on the part axis, Z 0 at the top of the blank)"
    for step, move in enumerate(answer.moves, start=1):
        yield f"  {step:>2} {move.setting:<2}{move.action:<9} {move.text}"


def _errors(answer: Answer) -> Iterator[str]:
    yield ""
    yield "What an error does (everything else as set)"
    for e in answer.effects:
        by = length(e.change_mm, answer.system) if e.change_mm else ""
        yield (
            f"  {e.what + (' by ' + by if by else ''):<55} land {_signed(e.land_change, answer):>10}"
            f"  tip lost {place(e.tip_loss, answer.system):>7}  tip {angle(e.tip_angle)}"
        )


def _signed(mm: float, answer: Answer) -> str:
    text = place(mm, answer.system)
    return text if text.startswith("-") or float(text) == 0 else f"+{text}"


STRENGTH_ROWS = (
    ("end_strength_mpa", "crushing strength of the end of the work", "MPa"),
    ("thrust_to_bite_n", "thrust that crushes the lands before teeth enter", "N"),
    ("thrust_n", "thrust", "N"),
    ("torque_dry_nm", "torque the faces carry in dry hardwood", "N·m"),
    ("torque_wet_nm", "torque the faces carry in wet wood", "N·m"),
    ("torque_nm", "torque asked for", "N·m"),
    ("face_pressure_mpa", "pressure on the driving faces", "MPa"),
    ("bending_mpa", "bending stress near the tip, at most", "MPa"),
    ("tooth_strength_mpa", "bending stress allowed in the teeth", "MPa"),
)


def _strength(answer: Answer) -> Iterator[str]:
    yield ""
    unbored = bore_for_two_settings(answer.center) > answer.center.hole
    yield "Strength (rough guide: within a factor of about 2; friction left out, so a knife's bite is overstated)"
    for key, title, unit in STRENGTH_ROWS:
        value = answer.strength.get(key)
        name = "thrust to crush the face while it is not bored" if key == "thrust_to_bite_n" and unbored else title
        if isinstance(value, float):
            yield f"  {name:<50}{two_figures(value)} {unit}"
    bite = answer.strength.get("bite_mm")
    if isinstance(bite, float):
        yield f"  {'bite under that thrust':<50}{length(bite, answer.system)}"


def _assumed(answer: Answer) -> Iterator[str]:
    assumed = answer.as_dict()["assumed"]
    if assumed:
        yield ""
        yield "Assumed"
    for entry in assumed:
        yield f"  {entry['field']} = {entry['value']}: {entry['why']}"
