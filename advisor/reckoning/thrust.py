"""The tailstock window: what the drive needs, what the ends and the bar allow, what to set."""

from __future__ import annotations

import math
from typing import NamedTuple

from advisor.figure import Spread
from advisor.physics import drive as drive_physics
from advisor.physics import tail as tail_physics
from advisor.physics import teeth
from advisor.reckoning import ends
from advisor.reckoning.drives import Drive, measured_grip, seat_depth, tooth_bearing
from advisor.reckoning.holds import BETWEEN_CENTERS as BETWEEN_CENTERS
from advisor.reckoning.limit import Limit, smallest
from advisor.reckoning.thrust_need import (
    LOCATE_NEED_N,
    LOCATE_SET_N,
    RELAXATION,
    Need,
    Window,
)
from advisor.situation import Situation

HANDWHEEL_EFFICIENCY = Spread(0.15, 0.25, 0.35)  # memory
BEYOND_N = 1e7  # numerics: no figure takes a thrust like it, no tailstock gives one
PRESS_DIVISOR = 1.5  # on splitting, for the moment in which the teeth go in; memory
MEASURED_BAND = (0.8, 1.2)  # a measured slip is known to 20 %; memory


class Thrust(NamedTuple):
    """The window of one drive and one tail center.

    `full` is the need of the whole cutting force, `light` of the largest that fits; `light_share` is their ratio.
    `bound_by` is "depth" where the teeth would have to go deeper than the end allows, else "thrust". `rpm` is the
    starting speed it was worked out for. `wheel` is what the stated handwheel torque gives, N at the low, usual and
    high efficiency of a screw; `handwheel_most` the torque that stays under every limit at the high one.
    """

    method: str
    between: bool
    drive: Drive | None
    center: ends.TailCenter
    limits: tuple[Limit, ...]
    allowed: Limit
    runner_up: Limit | None
    full: Need
    light: Need | None
    light_share: float
    pressed_only: float | None
    slip: tuple[float, float] | None
    seated: str
    press_force: float | None
    press_allowed: float | None
    depth_most: float | None
    handwheel: float | None
    taper_torque: float | None
    torque: float
    critical: float | None
    gaps: tuple[tuple[str, str], ...]
    rpm: float
    bound_by: str
    wheel: Spread | None
    handwheel_most: float | None


def _at_the_ends(window: Window) -> tuple[list[Limit], list[tuple[str, str]]]:
    """What drive and tail center do to the ends they are in, and what is not known of it."""
    situation, center = window.situation, window.center
    gaps: list[tuple[str, str]] = []
    split = ends.splitting(situation, center, window.drive)
    if situation.side_grain and situation.wood is not None:
        gaps.append(("splitting at a center", "no model for a center in side grain"))
    if situation.wood is None and split is None and ends.splits(situation):
        gaps.append(("splitting at the centers", "strength of this material"))
    if situation.traits.form in ends.BORED and ends.bore_capacity(situation) is None:
        gaps.append(("a bored end opened from inside", "work.wall, or the strength of this material"))
    if ends.end_strength(situation) is None:
        gaps.append(("crushing at the centers", "strength of this material"))
    return [limit for limit in (ends.crushing(situation, center), split) if limit], gaps


def _limits(window: Window) -> tuple[list[Limit], float | None, list[tuple[str, str]]]:
    situation, center = window.situation, window.center
    on_arbor = window.method in ends.ON_ARBOR
    at_ends, gaps = ([], []) if on_arbor else _at_the_ends(window)
    found = [ends.center_rating(center)]
    if situation.case.hold.handwheel_torque is not None and situation.case.machine.handwheel_lead is None:
        gaps.append(("thrust of the stated handwheel torque", "machine.handwheel_lead, the travel per turn"))
    critical = None
    buckling = ends.buckling_capacity(situation, window.between)
    bows = ends.arbor_bows(situation) if on_arbor else None
    if buckling is not None:
        bows = buckling[0] if bows is None else min(bows, buckling[0], key=lambda limit: limit.value)
        critical = buckling[1]
    found += [bows] if bows else []
    short = ends.short_column(situation)
    return [*found, *at_ends, *([short] if short else [])], critical, gaps


def _slip(window: Window, need: Need) -> tuple[float, float] | None:
    """Torque in N·m at which the drive lets go, low to high, at the thrust set."""
    drive, wood, pad, test = window.drive, window.situation.wood, window.pad, window.situation.case.hold.slip_test
    if pad is not None:
        arm = need.to_set * pad.arm * 1e-3
        return pad.friction.low * RELAXATION * arm, pad.friction.typical * arm
    if drive is None or drive.kind == "point":
        return None
    if window.seated != "pressed" and need.depth is not None and wood is not None:
        if test is not None and window.seated == "given":
            return MEASURED_BAND[0] * test.torque, MEASURED_BAND[1] * test.torque
        low = tooth_bearing(window.situation, drive, need.depth, wood.perpendicular.low)
        return low, tooth_bearing(window.situation, drive, need.depth, wood.perpendicular.high)
    arm = drive.share * need.to_set * drive.mean_radius * 1e-3
    measured = measured_grip(window.situation, drive.share, drive.mean_radius)
    if measured is not None:
        return MEASURED_BAND[0] * measured * RELAXATION * arm, MEASURED_BAND[1] * measured * arm
    return drive.effective.low * RELAXATION * arm, drive.effective.high * arm


def _press(window: Window, need: Need, limits: list[Limit]) -> tuple[float, float] | None:
    """Force in N that presses the teeth to depth with the tailstock, and what both ends, bar and center stand.

    While the teeth go in the end is opened by them, the other by the tail center: the worse of the two counts.
    """
    drive, wood = window.drive, window.situation.wood
    if drive is None or wood is None or not need.depth or window.situation.side_grain:
        return None
    force = teeth.press_force(
        depth=need.depth,
        share=drive.share,
        teeth=drive.teeth,
        inner_radius=drive.inner / 2,
        outer_radius=drive.outer / 2,
        face_angle=drive.face_angle,
        back_angle=drive.back_angle,
        friction=teeth.TOOTH_FRICTION,
        parallel=wood.crushing.high,
        perpendicular=wood.perpendicular.high,
    )
    stands = [limit.value for limit in limits if limit.name != "splitting"]
    capacity = ends.split_capacity(window.situation)
    if capacity is not None:
        opening = max(ends.drive_opening(window.situation, drive), ends.tail_opening(window.situation, window.center))
        stands.append(capacity / (PRESS_DIVISOR * opening))
    return force, min(stands)


def _taper(window: Window, to_set: float) -> float | None:
    """Torque in N·m that the shank's taper carries, low friction; None when no taper is known."""
    given = window.situation.case.hold.drive
    number = given.shank_taper if given is not None and given.shank_taper is not None else None
    if number is None:
        number = window.situation.case.machine.spindle_taper
    if number is None or not window.between:
        return None
    seated = given is not None and given.taper_seated is True
    return drive_physics.number_taper_torque(number, to_set + (drive_physics.TAPPED_PRELOAD_N if seated else 0.0))


def _full_and_light(window: Window, allowed: float) -> tuple[Need, Need | None]:
    """The need of the whole cutting force, without end where nothing turns; and of the largest that fits, if any."""
    force = window.situation.cut.force
    full = window.needs(force)
    if full is None:
        return Need(force, math.inf, math.inf, None, False), None
    if not window.between:
        setting = min(LOCATE_SET_N, RELAXATION * allowed)
        full = full._replace(to_set=setting, needed=min(LOCATE_NEED_N, setting))
        return full, full
    return full, window.lightest(allowed)


def thrust_window(situation: Situation, method: str, rpm: float) -> Thrust:
    """Work out the window for one method at the starting speed `rpm` (worked out without thrust).

    Source: model of section names in the limits; divisors as stated with each limit.
    """
    window = Window(situation, method, rpm)
    limits, critical, gaps = _limits(window)
    allowed, runner_up = smallest(limits)
    force = situation.cut.force
    full, light = _full_and_light(window, allowed.value)
    if not math.isfinite(full.to_set):
        gaps.append(("thrust", "this drive cannot turn this dead center"))
    chosen = light if light is not None else full
    press = _press(window, chosen, limits)
    lead = situation.case.machine.handwheel_lead
    finite = chosen.to_set < BEYOND_N
    too_deep = not full.depth_fits and full.to_set <= allowed.value
    return Thrust(
        method=method,
        between=window.between,
        drive=window.drive,
        center=window.center,
        limits=tuple(limits),
        allowed=allowed,
        runner_up=runner_up,
        full=full,
        light=light,
        light_share=0.0 if light is None else light.force / force if force > 0 else 1.0,
        pressed_only=window.pressed_need(force) if window.seated == "advised" else None,
        slip=_slip(window, chosen) if finite else None,
        seated=window.seated,
        press_force=press[0] if press else None,
        press_allowed=press[1] if press else None,
        depth_most=_deepest(window),
        handwheel=_at_the_wheel(chosen.to_set, lead, HANDWHEEL_EFFICIENCY.typical) if finite else None,
        taper_torque=_taper(window, chosen.to_set) if finite else None,
        torque=window.torque(force),
        critical=critical,
        gaps=tuple(gaps),
        rpm=rpm,
        bound_by="depth" if too_deep else "thrust",
        wheel=_wheel(situation),
        handwheel_most=_at_the_wheel(allowed.value, lead, HANDWHEEL_EFFICIENCY.high),
    )


def _at_the_wheel(force: float, lead: float | None, efficiency: float) -> float | None:
    """Torque in N·m at the handwheel for a thrust in N; None where the screw's travel per turn is not known."""
    return None if lead is None else tail_physics.handwheel_torque(force, lead, efficiency)


def _wheel(situation: Situation) -> Spread | None:
    """Thrust in N that the stated handwheel torque gives, low to high efficiency."""
    torque, lead = situation.case.hold.handwheel_torque, situation.case.machine.handwheel_lead
    if torque is None or lead is None:
        return None
    return Spread(
        *(tail_physics.handwheel_thrust(torque=torque, lead=lead, efficiency=part) for part in HANDWHEEL_EFFICIENCY)
    )


def _deepest(window: Window) -> float | None:
    if window.drive is None or window.seated == "pressed":
        return None
    return seat_depth(window.situation, window.drive, 0.0, window.safety)[1]
