"""From what is wanted to the center as it will be cut, or the reason why it cannot be."""

from __future__ import annotations

from math import asin, sqrt

from advisor.centers.choose import Choice, choose, place
from advisor.centers.inputs import CenterInputError, Wanted
from advisor.centers.wording import length
from advisor.physics.center import ToothedCenter, root_thickness, tip_drop, wall_at


def build(wanted: Wanted) -> tuple[ToothedCenter, list[Choice]]:
    """The center as cut and the cutters that were looked at. Raises CenterInputError for what cannot be cut."""
    cutter, depth, choices = choose(wanted)
    _check_cutter(wanted, cutter, depth)
    center = place(wanted, cutter, depth)
    _check_land(wanted, center)
    _check_teeth_left(wanted, center)
    return center, choices


def _check_cutter(wanted: Wanted, cutter: float, depth: float) -> None:
    if depth > cutter / 2 * (1 + 1e-12):
        raise CenterInputError(
            "depth",
            wanted.text("depth"),
            "is deeper than the cutter's radius: walked in from the rim the back would hook under the tip, and plunged "
            "it would leave a parallel-sided tip",
            f"at most half the cutter's diameter, here {length(cutter / 2, wanted.system)}, or a cutter of "
            f"{length(2 * depth, wanted.system)} or more",
        )
    if wanted.corner_radius >= depth:
        raise CenterInputError(
            "corner_radius",
            wanted.text("corner_radius"),
            "is as deep as the cut, so no flat driving face is left",
            f"less than the depth of {length(depth, wanted.system)}",
        )


def _check_land(wanted: Wanted, center: ToothedCenter) -> None:
    radius = center.outer_radius if center.teeth >= 4 else center.hole_radius
    room = radius * (center.pitch + asin(wanted.height_offset / radius))
    rim = sqrt(center.outer_radius**2 - center.driving.z**2)
    if wanted.land >= room or min(wall_at(center, s, 0.0) for s in center.settings) >= rim:
        raise CenterInputError(
            "land",
            wanted.text("land"),
            "is so wide that the cutter never reaches the face: nothing would be cut",
            f"less than {length(min(room, rim), wanted.system)} here; a small land of 0.005 in (0.1 mm) is usual",
        )


def _check_teeth_left(wanted: Wanted, center: ToothedCenter) -> None:
    root = root_thickness(center)
    lost = max(tip_drop(center, radius) for radius in (center.mid_radius, center.outer_radius))
    if lost >= center.depth or (root is not None and root <= 0):
        raise CenterInputError(
            "overshoot",
            wanted.text("overshoot"),
            "walks the cutter so far past the land that it takes the whole tooth away",
            "a smaller overshoot, or a larger land",
        )
