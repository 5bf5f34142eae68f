"""Cutter and depth: as given, or worked backwards from the tip that is wanted."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import NamedTuple

from advisor.centers.inputs import CenterInputError, Wanted
from advisor.centers.wording import length
from advisor.physics.center import Setting, ToothedCenter, wall_at, wedge_angle
from advisor.physics.center_setting import (
    cutter_for_flank,
    depth_for_flank,
    flank_for_tip,
    largest_cutter,
    one_setting,
    two_settings,
)

KNIFE = 10.0
"""Tip angle below which a tooth of a turning center is a knife, degrees (common practice, no source)."""


class Choice(NamedTuple):
    """One cutter and depth looked at: the tip it gives, and whether the face is cut to full depth inside the rim."""

    cutter: float
    depth: float
    tip_angle: float | None
    full_depth: bool
    chosen: bool = False

    def as_dict(self) -> dict[str, object]:
        return {
            "cutter_mm": self.cutter,
            "depth_mm": self.depth,
            "tip_angle_deg": self.tip_angle,
            "full_depth": self.full_depth,
            "chosen": self.chosen,
        }


def place(wanted: Wanted, cutter: float, depth: float) -> ToothedCenter:
    """The center that a cutter and a depth give for what is wanted, the cutter walked past the land as asked."""
    blank = (wanted.diameter, wanted.hole, cutter, depth, wanted.teeth, wanted.height_offset, wanted.land)
    settings: tuple[Setting, ...] = (one_setting(*blank),) if wanted.passes == 1 else two_settings(*blank)
    last = settings[-1]
    settings = (*settings[:-1], last._replace(y=last.y - wanted.overshoot))
    return ToothedCenter(wanted.diameter, wanted.hole, cutter, depth, wanted.teeth, settings, wanted.corner_radius)


def choose(wanted: Wanted) -> tuple[float, float, list[Choice]]:
    """Cutter and depth for what is wanted, with everything that was looked at on the way.

    Raises CenterInputError where they are not given and cannot be worked out, where three things that fix one another
    are all given, or where nothing at hand does what is asked.
    """
    _check_question(wanted)
    if wanted.cutter is not None and wanted.depth is not None:
        _check_not_sharper(wanted, wanted.cutter, wanted.depth)
        return wanted.cutter, wanted.depth, []
    tip = wanted.tip_angle if wanted.tip_angle is not None else wanted.min_tip_angle
    if wanted.cutters:
        return _from_cutters(wanted, tip)
    assert tip is not None, "seen to by _check_question"
    flank = flank_for_tip(tip, wanted.teeth, wanted.passes)
    if wanted.cutter is not None:
        return wanted.cutter, depth_for_flank(wanted.cutter, flank), []
    assert wanted.depth is not None, "seen to by _check_question"
    return cutter_for_flank(wanted.depth, flank), wanted.depth, []


def _check_question(wanted: Wanted) -> None:
    tip, least = wanted.tip_angle, wanted.min_tip_angle
    if tip is not None and least is not None and tip < least:
        raise CenterInputError(
            "tip_angle", wanted.text("tip_angle"), "is sharper than min_tip_angle allows", f"{least:g} deg or more"
        )
    if (tip is not None or least is not None) and wanted.teeth == 2 and wanted.passes == 1:
        raise CenterInputError(
            "teeth", "2", "two teeth of one setting have a square back and no tip angle", "settings=2"
        )
    if wanted.cutter is not None and wanted.cutters:
        raise CenterInputError(
            "cutters", wanted.text("cutters"), "cutter is given as well", "one of cutter= and cutters="
        )
    if tip is not None and wanted.cutter is not None and wanted.depth is not None:
        raise CenterInputError(
            "tip_angle",
            wanted.text("tip_angle"),
            "cutter and depth fix the tip angle already",
            "two of cutter, depth and tip_angle; min_tip_angle where the angle is only a limit",
        )
    angle = tip is not None or least is not None
    known = [wanted.cutter is not None or bool(wanted.cutters), wanted.depth is not None, angle]
    if sum(known) < 2:
        missing = "cutter" if not known[0] else "depth"
        raise CenterInputError(
            missing,
            None,
            "is missing, and cannot be worked out from the rest",
            "cutter= (or cutters=[..]) and depth=, or one of them with tip_angle= or min_tip_angle=",
        )


def _check_not_sharper(wanted: Wanted, cutter: float, depth: float) -> None:
    least = wanted.min_tip_angle
    if least is None or depth > cutter / 2:
        return
    angle = wedge_angle(place(wanted, cutter, depth), 0.0)
    if angle is not None and angle < least - 1e-9:
        flank = flank_for_tip(least, wanted.teeth, wanted.passes)
        raise CenterInputError(
            "min_tip_angle",
            wanted.text("min_tip_angle"),
            f"this cutter at this depth leaves a tip of {angle:.1f} deg, sharper than asked",
            f"a depth of {length(depth_for_flank(cutter, flank), wanted.system)} or less with this cutter, "
            f"or a cutter of {length(cutter_for_flank(depth, flank), wanted.system)} or more at this depth",
        )


def look_at(wanted: Wanted, cutter: float, depth: float) -> Choice:
    """One cutter at one depth, without judging it."""
    if depth > cutter / 2:
        return Choice(cutter, depth, None, False)
    center = place(replace(wanted, overshoot=0.0), cutter, depth)
    rim = center.outer_radius
    full = wall_at(center, center.driving, 0.0) < rim and cutter <= largest_cutter(center) + 1e-9
    return Choice(cutter, depth, wedge_angle(center, 0.0), full)


def _from_cutters(wanted: Wanted, tip: float | None) -> tuple[float, float, list[Choice]]:
    """The cutter out of a drawer.

    At a given depth the smallest that is not sharper than asked: a larger one is milder but cuts less of the face to
    full depth. With an angle alone, the one that gives the highest tooth.
    """
    least = KNIFE if tip is None else tip
    flank = flank_for_tip(least, wanted.teeth, wanted.passes)
    depth = wanted.depth
    looked = [
        look_at(wanted, c, depth_for_flank(c, flank) if depth is None else depth) for c in sorted(set(wanted.cutters))
    ]
    fit = [c for c in looked if c.full_depth and c.tip_angle is not None and c.tip_angle >= least - 1e-9]
    if not fit:
        raise CenterInputError(
            "cutters", wanted.text("cutters"), _why_none(wanted, looked, least), _what_would_do(wanted, flank)
        )
    best = fit[0] if depth is not None else max(fit, key=lambda c: c.depth)
    return best.cutter, best.depth, [c._replace(chosen=c is best) for c in looked]


def _why_none(wanted: Wanted, looked: Sequence[Choice], least: float) -> str:
    parts = []
    for choice in looked:
        if choice.tip_angle is None:
            why = "deeper than the cutter's radius"
        elif choice.tip_angle < least - 1e-9:
            why = f"tip {choice.tip_angle:.1f} deg"
        else:
            why = "too large to reach full depth inside the rim"
        parts.append(f"{length(choice.cutter, wanted.system)}: {why}")
    return f"none leaves {least:g} deg or more and a full face ({'; '.join(parts)})"


def _what_would_do(wanted: Wanted, flank: float) -> str:
    if wanted.depth is not None:
        size = length(cutter_for_flank(wanted.depth, flank), wanted.system)
        return f"a cutter of {size} or a little more, or less depth"
    return "smaller cutters"
