"""Order of work for a shop-made drive center: blank, shank, hole, head, teeth, inspection, test (common practice)."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from advisor.centers.answer import Answer
from advisor.centers.make_inputs import Making
from advisor.centers.metals import Taper, taper
from advisor.centers.wording import about, length
from advisor.physics.center import land
from advisor.physics.center_setting import bore_for_two_settings
from advisor.units import System

EIGHTH = 25.4 / 8
BORE_MORE = 0.05
"""What a bore is larger than it must be, mm."""
CIRCLES = (15, 16, 17, 18, 19, 20, 21, 23, 27, 29, 31, 33, 37, 39, 41, 43, 47, 49)
"""Holes of the ordinary plates of a dividing head (common practice, no source)."""
WORM = 40
"""Turns of the crank for one turn of an ordinary dividing head (common practice, no source)."""
BLOCK_TEETH = (2, 4)
UNDERCUT = (1.5, 0.3)
HOLLOW = 0.05
CHAMFER = 1.5
FLATNESS = 0.1
RUNOUT = 0.05
"""Width and depth of the relief in the corner, hollow of the shoulder, chamfer, plane of the tips, runout: mm (common
practice, no source)."""
POINT_ANGLE, POINT_PROUD = 60, 2.5
SPRING = "4 to 6 mm of stroke, 20 to 60 N"


def ream_allowance(hole: float) -> float:
    """Stock left for the reamer, on the diameter: 0.1 to 0.25 mm for 6 to 12 mm, mm."""
    return min(max(0.1 + (hole - 6) * 0.025, 0.1), 0.25)


def crank(teeth: int) -> str:
    """Turns of the crank for one tooth, and the holes on a plate for what is left of a turn."""
    turns, left = divmod(WORM, teeth)
    whole = f"{turns} turn{'' if turns == 1 else 's'} of a {WORM}:1 crank"
    if left == 0:
        return whole
    share = Fraction(left, teeth)
    circle = next((holes for holes in CIRCLES if holes % share.denominator == 0), None)
    if circle is None:
        return f"{whole} and {share} of a turn"
    return f"{whole} and {share.numerator * circle // share.denominator} holes of the {circle}-hole circle"


def uses_block(answer: Answer) -> bool:
    """Whether a square block gives every position: two and four teeth, whatever turn is a quarter."""
    return answer.center.teeth in BLOCK_TEETH


def stages(making: Making, answer: Answer) -> list[tuple[str, str]]:
    """Stage and what is done, in order."""
    return [
        *(("blank", text) for text in _blank(making, answer)),
        *(("hole", text) for text in _hole(making, answer)),
        *(("teeth", text) for text in _teeth(answer)),
        *(("shank", text) for text in _shank(making, answer)),
        *(("point", text) for text in _point(making, answer)),
    ]


def _blank(making: Making, answer: Answer) -> Iterator[str]:
    center, system = answer.center, answer.system
    yield (
        f"Saw bar a little over {length(center.diameter, system)}, long enough for head, shank and a chucking piece; "
        "free-cutting steel for the body, tool steel where the teeth are to be hardened."
    )
    if making.shank == "taper":
        yield (
            "Leave the tapered end straight for now: a taper does not sit in a block. Drill, ream and mill the "
            "teeth on the "
            "straight bar, then turn the taper between centers."
        )
    yield (
        f"Face both ends; turn the head to {length(center.diameter, system)} for its whole length in one chucking. "
        "Let the part cool before the last cut: touch-cool, under 25 deg C."
    )


def _hole(making: Making, answer: Answer) -> Iterator[str]:
    center, system = answer.center, answer.system
    drill = center.hole - ream_allowance(center.hole)
    fit = {
        "fixed": "a press or grub-screwed fit for a fixed point",
        "sprung": "a sliding fit with a spring behind the point",
        "floating": "a loose sliding fit, 0.05 to 0.1 mm larger, so that the point finds the mark and the teeth drive",
    }
    yield (
        f"In the same chucking: center drill, pilot drill to {about(drill, system)} or the next under it, ream to "
        f"{length(center.hole, system)} ({fit[making.point]}). Feed the reamer two to three times as fast as the "
        "drill, "
        "never turn it backward, do not dwell in stainless."
    )
    bore = bore_for_two_settings(center)
    if bore > center.hole:
        yield (
            f"Bore the face out to {about(bore + BORE_MORE, system)}, a little deeper than "
            f"{length(center.depth, system)}."
        )


def _teeth(answer: Answer) -> Iterator[str]:
    center, system = answer.center, answer.system
    pitch = 360 / center.teeth
    if uses_block(answer):
        yield (
            f"Clamp the bar in a square block and the block against a stop in the mill vise; index {pitch:g} deg by "
            "turning "
            "the block on its sides. Clean the vise and the block at every turn: each side carries its own error."
        )
    else:
        yield (
            f"Hold the bar in a dividing head (a square block gives only two and four teeth): {pitch:g} deg is "
            f"{crank(center.teeth)}; take the slack out always in the same sense."
        )
    yield f"Indicate the bar to {about(0.0127, system)}; then the moves of the table, depth before the offset."
    yield "Mark one tooth, so that the center goes back into the work the same way round."


def _shank(making: Making, answer: Answer) -> Iterator[str]:
    system = answer.system
    width, depth = UNDERCUT
    seat = (
        f"Undercut the corner {about(width, system)} wide and {about(depth, system)} deep, and turn the shoulder "
        "hollow by "
        f"{about(HOLLOW, system)}, so that its outer ring seats flat against the jaws or the collet: the shoulder "
        "takes "
        "the thrust, or the center is pushed in."
    )
    if making.shank == "straight":
        yield f"Reverse in the collet; turn the shank to {about(shank_diameter(making), system)}, straight and smooth."
        yield seat
    else:
        size = taper(making.shank_taper)
        yield _taper_text(size, answer)
        yield (
            "Prove it with blue in the spindle it will live in: three quarters of the length touch, more at the "
            "large end. "
            "Clean and dry; seat with a soft mallet off the work, or a drawbar. Running thrust alone does not drive it."
        )
    yield (
        f"Chamfer the struck end {about(CHAMFER, system)} by 45 deg, and dish it a little: a hammer blow then "
        "spreads the "
        "end and not the diameter that must leave the spindle."
    )


def _taper_text(size: Taper, answer: Answer) -> str:
    return (
        f"Turn the number {size.number} Morse-type taper between centers: "
        f"{length(size.large_diameter, answer.system)} at "
        f"the large end, half angle {size.half_angle:.3f} deg (set over with an indicator and a known taper, not by "
        "the scale)."
    )


def shank_diameter(making: Making) -> float:
    """Diameter of a straight shank: as given, or half of the head to an eighth of an inch or half a millimeter, at
    least 6 mm."""
    if making.shank_diameter is not None:
        return making.shank_diameter
    if making.wanted.system is System.INCH and making.wanted.diameter > 12:
        return max(round(making.wanted.diameter / 2 / EIGHTH), 2) * EIGHTH
    return max(round(making.wanted.diameter) / 2, 6.0) if making.wanted.diameter > 7 else making.wanted.diameter * 0.8


def _point(making: Making, answer: Answer) -> Iterator[str]:
    system = answer.system
    shape = f"Point of {POINT_ANGLE} deg included, {about(POINT_PROUD, system)} proud of the tips"
    if making.point == "fixed":
        yield f"{shape}, grub-screwed so that it can be taken out and ground."
    elif making.point == "sprung":
        yield f"{shape}, on a spring of {SPRING}; a cross pin keeps it from being thrown."
    else:
        yield f"{shape}, free to slide; a cross pin in a slot keeps it in, the teeth alone carry the thrust."
    yield "Stone the outer corners; stamp diameter and slip thrust on the body."


def _inner_land(answer: Answer) -> str:
    """Land at the inner end of the teeth: at the hole, or at the bore that clears the islands."""
    center = answer.center
    bore = bore_for_two_settings(center)
    if bore > center.hole:
        return f"{length(land(center, bore / 2 + BORE_MORE), answer.system)} at the bore"
    return f"{length(land(center, center.hole_radius), answer.system)} at the hole"


def inspection(answer: Answer) -> list[str]:
    """What is measured, cold, before the center drives anything."""
    center, system = answer.center, answer.system
    data = answer.as_dict()
    return [
        f"All tips in one plane within {about(FLATNESS, system)}: stand it on a flat plate over blue.",
        f"Land {length(data['land_od_mm'], system)} at the rim, {_inner_land(answer)}, under a glass with a scale.",
        f"Tooth height {length(data['tooth_height_mm'], system)} with a depth micrometer; tip angle against a gauge.",
        f"Root thickness: {length(data['root_thickness_mm'], system)}."
        if data["root_thickness_mm"] is not None
        else "Two square jaws: no root thickness to measure.",
        f"Runout in its own spindle: {about(RUNOUT, system)} or less at the point and on the head, by indicator.",
        f"Wall between hole and pockets at the root: {length(data['web_mm'], system)} on a radius of "
        f"{length(data['core_radius_mm'], system)}.",
        *([f"Islands gone inside {length(data['bore_mm'], system)}."] if data["bore_mm"] > center.hole else []),
    ]


def scrap_test(making: Making) -> list[str]:
    """Trying it on a scrap blank, power off first."""
    torque = making.wanted.torque
    goal = f" It should hold {torque:.1f} N·m with half as much again." if torque is not None else ""
    return [
        "Power off and the switch locked: mount a sound scrap blank, tailstock on, tail locked.",
        "Grip: turn the blank by hand against the held spindle. It must not creep.",
        "Slip torque: hold the spindle, turn the far end with a torque wrench on a square or a strap, and raise the "
        "thrust "
        f"until it holds the torque wanted. Write down thrust and torque at which it slips.{goal}",
        "Take the blank off: a clean slot of equal length for each tooth says that all of them bear.",
        "Only then run it: lowest speed, guard or face shield, nobody in the plane of the blank, light cut, then "
        "heavier "
        "until it slips once. Stamp the thrust on the tool.",
        "Indicate the point again after the test: more runout than before means a bent tooth or a seat that moved.",
    ]
