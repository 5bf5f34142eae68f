"""How drive and tail center sit in their ends: how thin the tool may turn there, what another center would allow."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise
from typing import TYPE_CHECKING, NamedTuple

from advisor.physics import drive as drive_physics
from advisor.reckoning import ends
from advisor.reckoning.drives import INNER_SHARE, Drive
from advisor.reckoning.speed_limits import DEAD_FRICTION
from advisor.reckoning.thrust import Thrust, thrust_window
from advisor.reckoning.thrust_need import Window, dead_radius
from advisor.situation import Situation

if TYPE_CHECKING:
    from advisor.models.words import TailKind

WOOD_OUTSIDE_MM = 3.0  # left round teeth and rings; common practice, no source
STOP_SHORT_MM = 3.0  # between the tool and anything of metal; common practice, no source
# a drive smaller than the finished end by this much all round is out of the tool's way; common practice, no source
UNDER_THE_TOOL_MM = 1.0
SMALLEST_DRIVE_MM = 6.0  # common practice, no source
TAIL_KINDS: tuple[TailKind, ...] = ("live-point", "live-cup", "live-cone", "live-pad", "dead-point", "dead-cup")


class DriveFit(NamedTuple):
    """The driven end, mm: `near` is the smallest finished diameter there, `least` how thin it may be turned within
    `reach` of the end; `small` is a drive that stays under the finished size, and `small_carries` whether it does the
    work (None where nothing has to shrink)."""

    near: float
    reach: float
    least: float
    small: float | None
    small_carries: bool | None


class TailOption(NamedTuple):
    """One tail center in place of the present one: most thrust N, what limits it, thrust to set N, share of the cut."""

    kind: str
    allowed: float
    governed_by: str
    to_set: float
    light_share: float


class TailFit(NamedTuple):
    """The tail end, mm: `near` as above, `width` of the center where it stands in the wood, `reach` the tool stops
    short of; `opening` share of the thrust that opens the end; `heat` W of a dead center at the starting speed."""

    near: float
    width: float
    reach: float
    opening: float
    heat: float | None
    options: tuple[TailOption, ...]


def finished_near(situation: Situation, reach: float) -> float:
    """Smallest finished diameter in mm within `reach` mm of an end; the end itself where that much is cut off later.

    A profile says nothing of which end is driven: the thinner counts. Without one, the thinnest finished size does.
    """
    work, body = situation.case.work, situation.body
    if work.end_waste is not None and work.end_waste >= reach:
        return body.end_diameter
    if work.profile:
        return min(_profile_near(work.profile, reach), body.end_diameter)
    return min(body.thinnest, work.finished_diameter or body.thinnest)


def _profile_near(profile: Iterable[tuple[float, float]], reach: float) -> float:
    """Smallest diameter of straight lines between the points, within `reach` of either end."""
    points = sorted(profile)
    first, last = points[0][0], points[-1][0]
    sizes = [size for place, size in points if place - first <= reach or last - place <= reach]
    for (a, size_a), (b, size_b) in pairwise(points):
        for edge in (first + reach, last - reach):
            if a < edge < b:
                sizes.append(size_a + (size_b - size_a) * (edge - a) / (b - a))
    return min(sizes)


def resized(drive: Drive, outer: float, end: float) -> Drive:
    """The same kind of drive with another outside diameter, mm."""
    inner = INNER_SHARE[drive.kind] * outer
    reach = min(outer, end)
    return drive._replace(
        outer=outer,
        inner=inner,
        mean_radius=(reach + min(inner, reach)) / 4,
        bearing_length=max(reach - inner, 0.0) / 2,
    )


def drive_fit(situation: Situation, window: Thrust) -> DriveFit | None:
    """How the drive sits in its end; None where nothing bites the end.

    Source: common practice for the distances; whether the smaller drive carries is tried in the model of thrust.
    """
    drive = window.drive
    if drive is None or drive.kind == "point":
        return None
    reach = ((window.light or window.full).depth or 0.0) + STOP_SHORT_MM
    near = finished_near(situation, reach)
    small, carries = None, None
    if drive.outer > near:
        small = max(near - 2 * UNDER_THE_TOOL_MM, SMALLEST_DRIVE_MM)
        tried = Window(situation, window.method, window.rpm, resized(drive, small, situation.body.end_diameter))
        carries = tried.fits(situation.cut.force, window.allowed.value)
    return DriveFit(near, reach, drive.outer + 2 * WOOD_OUTSIDE_MM, small, carries)


def with_tail(situation: Situation, kind: TailKind) -> Situation:
    """The same job with another kind of tail center, its sizes the ordinary ones."""
    from advisor.models.case import Tail

    case = situation.case
    hold = case.hold.altered({"tail": Tail(kind=kind, rating=_rating(situation))})
    return situation._replace(case=case.altered({"hold": hold}))


def _rating(situation: Situation) -> float | None:
    tail = situation.case.hold.tail
    return tail.rating if tail is not None else None


def tail_fit(situation: Situation, window: Thrust) -> TailFit:
    """How the tail center sits in its end, and what each other kind would allow. Source: the model of thrust."""
    center, need = window.center, window.light or window.full
    thrust = min(need.to_set, window.allowed.value)
    dent = 3 * dead_radius(situation, center._replace(kind="dead-point"), thrust)
    width = center.cup_diameter if center.kind in ends.CUPS else dent
    heat = None
    if center.dead:
        heat = drive_physics.dead_center_heat(
            friction=DEAD_FRICTION,
            thrust=thrust,
            radius=dead_radius(situation, center, thrust),
            half_angle=center.half_angle,
            rpm=window.rpm,
        )
    return TailFit(
        near=finished_near(situation, STOP_SHORT_MM),
        width=width,
        reach=STOP_SHORT_MM,
        opening=ends.tail_opening(situation, center),
        heat=heat,
        options=tuple(_option(situation, window, kind) for kind in TAIL_KINDS),
    )


def _option(situation: Situation, window: Thrust, kind: TailKind) -> TailOption:
    tried = thrust_window(with_tail(situation, kind), window.method, window.rpm)
    need = tried.light or tried.full
    return TailOption(kind, tried.allowed.value, tried.allowed.name, need.to_set, tried.light_share)
