"""What is to be minded about a center that can be cut: in the shop's words."""

from __future__ import annotations

from collections.abc import Iterator
from math import asin, degrees

from advisor.centers.choose import KNIFE
from advisor.centers.inputs import Wanted
from advisor.centers.sensitivity import land_radius
from advisor.centers.wording import length, two_figures
from advisor.physics.center import ToothedCenter, core_radius, land, section_area, tip_drop, wedge_angle
from advisor.physics.center_setting import bore_for_two_settings, largest_cutter
from advisor.units import System

BLUNT = 45.0
"""Tip angle from which a tooth crushes more than it cuts, degrees (common practice, no source)."""
THIN_WEB = 0.5
"""Web between hole and pocket at the root below which the head is weak there, mm (common practice, no source)."""


def shape_warnings(wanted: Wanted, center: ToothedCenter, for_errors: float) -> list[str]:
    """Every caution about the shape itself, worst first."""
    system = wanted.system
    return [
        *_lowered(center, system),
        *_no_cutting_tooth(wanted, center),
        *_ridge(center, system),
        *_islands(center, system),
        *_reach(center, system),
        *_sharp(center),
        *_small_land(wanted, center, for_errors),
        *_rake(wanted, center),
        *_web(center, system),
    ]


def _lowered(center: ToothedCenter, system: System) -> Iterator[str]:
    where = {"hole": center.hole_radius, "middle": center.mid_radius, "rim": center.outer_radius}
    lost = {name: tip_drop(center, radius) for name, radius in where.items()}
    worst = max(lost.values())
    if worst <= 0:
        return
    if len({round(v, 6) for v in lost.values()}) == 1:
        place = "from hole to rim"
    else:
        place = ", ".join(f"{length(v, system)} at the {name}" for name, v in lost.items())
        place = f"({place})"
    yield (
        f"The cutter is walked past no land: the tips stand {length(worst, system)} below the turned face {place}, "
        "and any error between pockets makes the teeth unequal in height. Wind Y back out, or leave a land."
    )


def _no_cutting_tooth(wanted: Wanted, center: ToothedCenter) -> Iterator[str]:
    if len(center.settings) == 2 or center.teeth == 4:
        if center.teeth == 4 and wanted.settings == "2":
            yield "Four teeth need no second setting: the back stands parallel to the driving face as it is."
        return
    if center.teeth == 2:
        yield "Two teeth of one setting are dog-clutch jaws: the back is square to the face, nothing bites."
    crush = section_area(center, 0.0) * wanted.end_strength
    wide = "the rim" if center.teeth == 3 else "the hole" if center.teeth > 4 else "both"
    yield (
        f"One setting leaves no cutting tooth with {center.teeth} teeth: the land is a wedge (wide at {wide}), and "
        f"about {two_figures(crush)} N must crush that plateau before anything bites. Use settings=2, or four teeth."
    )


def _ridge(center: ToothedCenter, system: System) -> Iterator[str]:
    if center.teeth != 2 or len(center.settings) == 1:
        return
    furthest = center.driving.y - center.hole_radius
    yield (
        "Halfway between two teeth the wall of A and the floor of B meet in a razor ridge as high as the teeth. Take "
        f"it down by walking setting A in further, to Y {length(furthest, system)} at the most."
    )


def _islands(center: ToothedCenter, system: System) -> Iterator[str]:
    bore = bore_for_two_settings(center)
    if bore <= center.hole + 1e-6:
        return
    if bore >= center.diameter:
        yield "Two settings leave nothing but islands on this face: fewer teeth, or a smaller cutter depth."
        return
    yield (
        f"Islands stay standing inside: bore the face out to {length(bore, system)} at least as deep as the teeth, or "
        "they hold the teeth off the wood."
    )


def _reach(center: ToothedCenter, system: System) -> Iterator[str]:
    largest = largest_cutter(center)
    if center.cutter > largest + 1e-9:
        yield (
            "The cutter is too large to reach full depth inside the rim: the driving face runs out of depth before "
            f"the edge. At this depth {length(largest, system)} is the largest that does."
        )


def _sharp(center: ToothedCenter) -> Iterator[str]:
    tip = wedge_angle(center, tip_drop(center, land_radius(center)))
    if tip is not None and tip < KNIFE:
        yield (
            f"The tip of {tip:.1f} deg is a knife: it bends, chips and cuts. A larger cutter at the same depth, "
            "or the same cutter less deep, is milder; a small land stiffens it most."
        )
    if tip is not None and tip > BLUNT:
        yield (
            f"The tip of {tip:.0f} deg is blunt: it crushes the end more than it cuts in, and wants much more thrust. "
            "A smaller cutter at the same depth, or the same cutter deeper, is keener; 30 to 35 deg is usual."
        )


def _small_land(wanted: Wanted, center: ToothedCenter, for_errors: float) -> Iterator[str]:
    if center.teeth == 2 and len(center.settings) == 1:
        return
    if land(center, land_radius(center)) < for_errors - 1e-9 and not wanted.overshoot:
        yield (
            f"The land is smaller than the errors of setting up can eat: leave {length(for_errors, wanted.system)} so "
            "that all tips stay on the turned face and equally high."
        )


def _rake(wanted: Wanted, center: ToothedCenter) -> Iterator[str]:
    height = wanted.height_offset
    if height == 0:
        return
    at_hole = degrees(asin(abs(height) / center.hole_radius))
    at_rim = degrees(asin(abs(height) / center.outer_radius))
    turned = f"{at_rim:.1f} deg at the rim and {at_hole:.1f} deg at the hole"
    if height < 0:
        yield (
            f"Cutter end below center: the driving faces push the work toward the axis ({turned}). It does not make "
            "the teeth stiffer: walked in to the same land they are the same teeth."
        )
    else:
        yield f"Cutter end above center: the driving faces push the work outward ({turned}), which tends to split it."


def _web(center: ToothedCenter, system: System) -> Iterator[str]:
    web = core_radius(center) - center.hole_radius
    if web < THIN_WEB:
        yield (
            f"At the root the pockets come within {length(web, system)} of the hole: the teeth stand on little more "
            "than the ring behind them. A smaller hole, or less depth."
        )
