"""The tailstock window: what the drive needs, what the ends and the bar allow, what to set."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from advisor.figure import NoAnswer
from advisor.physics import drive as drive_physics
from advisor.physics import tail as tail_physics
from advisor.physics import teeth
from advisor.reckoning import ends
from advisor.reckoning.drives import Drive, drive_for, seat_depth, tooth_bearing
from advisor.reckoning.holds import peak
from advisor.reckoning.limit import Limit, smallest
from advisor.situation import Situation

GRAVITY = 9.80665
RELAXATION = 0.6  # thrust left after the first minutes
SAFETY = 1.5
SAFETY_FEED_GOES_ON = 2.5
LEAST_N = 50.0
LEAST_CAP_N = 150.0
LOCATE_NEED_N = 30.0
LOCATE_SET_N = 100.0
MOTOR_STALL = 1.5
HANDWHEEL_EFFICIENCY = 0.25
TAPER_PRELOAD_N = 2000.0
WEAK_END_GRIP = 0.5
SEATED_KINDS = frozenset({"four", "two"})
SLIPPING_KINDS = frozenset({"ring", "cup"})
BETWEEN_CENTERS = frozenset(
    {
        "spur-drive",
        "two-spur-drive",
        "toothed-ring-drive",
        "cup-drive",
        "point-and-pin-drive",
        "square-socket-drive",
        "driving-dog",
        "mandrel",
        "friction-block",
        "sphere-cups",
    }
)
SEARCH_STEPS = 24


@dataclass(frozen=True)
class Need:
    """What one cutting force asks of the tailstock: N before and after relaxation, teeth depth in mm."""

    force: float
    needed: float
    to_set: float
    depth: float | None
    depth_fits: bool


@dataclass(frozen=True)
class Thrust:
    """The window of one drive and one tail center.

    `full` is the need of the whole cutting force, `light` of the largest that fits; `light_share` is their ratio.
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


def least_thrust(situation: Situation, force: float, k_peak: float, rpm: float) -> float:
    """Thrust in N that keeps the work centered: the cut's push, and half of weight plus unbalance."""
    body = situation.body
    omega = 2 * math.pi * rpm / 60
    weight = body.mass * GRAVITY
    unbalance = body.mass * body.offset * 1e-3 * omega**2
    return max(LEAST_N, min(2 * k_peak * force, LEAST_CAP_N), (weight + unbalance) / 2)


def _torque(situation: Situation, force: float, k_peak: float, rpm: float) -> float:
    """Peak torque of the cut in N·m, never more than the motor gives when it stalls."""
    torque = k_peak * force * situation.cut.arm * 1e-3 + situation.cut.torque
    power = situation.case.machine.power
    if power is not None and rpm > 0:
        torque = min(torque, MOTOR_STALL * power / (2 * math.pi * rpm / 60))
    return torque


def _effective_grip(situation: Situation, drive: Drive) -> float:
    """Design grip of the drive; a measured slip test replaces it, a weak end halves it."""
    test = situation.case.hold.slip_test
    if test is not None:
        return test.torque / (drive.share * test.thrust * drive.mean_radius * 1e-3)
    weak = situation.traits.conditions & {"punky", "rot", "pith", "check"}
    return drive.effective.design * (WEAK_END_GRIP if weak else 1.0)


class _Window:
    """Solves one drive against one tail center; holds what does not change with the cutting force."""

    def __init__(self, situation: Situation, method: str, rpm: float) -> None:
        self.situation = situation
        self.method = method
        self.rpm = rpm
        self.between = method in BETWEEN_CENTERS
        self.drive = drive_for(situation, method) if self.between else None
        self.center = ends.tail_center(situation)
        kind = self.drive.kind if self.drive is not None else "none"
        self.slips = kind in SLIPPING_KINDS and not situation.cut.carriage
        self.k_peak = 1.0 if self.slips else peak(situation, method, True)
        self.safety = SAFETY_FEED_GOES_ON if situation.cut.carriage else SAFETY
        given = situation.case.hold.drive
        depth = given.seated_depth if given is not None else None
        self.seated = "pressed"
        if kind in SEATED_KINDS and situation.wood is not None:
            self.seated = "advised" if depth is None else "given" if depth > 0 else "pressed"
        self.given_depth = depth
        self.friction = ends.friction_low(situation)

    def pressed_need(self, force: float) -> float | None:
        """Thrust in N for a drive that bites by thrust alone; None where no thrust turns this dead center."""
        drive, situation = self.drive, self.situation
        if drive is None or drive.mean_radius <= 0:
            return None
        drag: dict[str, float] = {}
        if self.center.dead:
            friction, radius = self._dead_tail(force)
            drag = {"tail_friction": friction, "tail_radius": radius, "tail_half_angle": self.center.half_angle}
        try:
            return drive_physics.required_thrust(
                cutting_force=force + situation.cut.torque * 1e3 / situation.cut.arm,
                radius=situation.cut.arm,
                peak=self.k_peak,
                safety=self.safety,
                share=drive.share,
                grip=_effective_grip(situation, drive),
                mean_radius=drive.mean_radius,
                **drag,
            )
        except NoAnswer:
            return None

    def _dead_tail(self, force: float) -> tuple[float, float]:
        """Friction, high end, and mean contact radius in mm of a dead center under a few hundred newtons."""
        wood = self.situation.wood
        if self.center.kind == "dead-cup":
            return 0.5, self.center.cup_diameter / 2
        strength = wood.crushing.low if wood is not None else 40.0
        dent = math.sqrt(4 * max(force, 1.0) * 10 / (math.pi * strength))
        return 0.5, dent / 3

    def needs(self, force: float) -> Need | None:
        """What this cutting force asks for."""
        least = least_thrust(self.situation, force, self.k_peak, self.rpm)
        if not self.between:
            return Need(force, LOCATE_NEED_N, LOCATE_SET_N, None, True)
        drive = self.drive
        if drive is None or drive.kind == "point":
            return Need(force, least, least, None, True)
        if self.seated == "pressed":
            pressed = self.pressed_need(force)
            if pressed is None:
                return None
            needed = max(pressed, least)
            return Need(force, needed, max(pressed / RELAXATION, least), None, True)
        return self._seated_need(drive, force, least)

    def _seated_need(self, drive: Drive, force: float, least: float) -> Need:
        torque = _torque(self.situation, force, self.k_peak, self.rpm)
        advised, most = seat_depth(self.situation, drive, torque, self.safety)
        depth = advised if self.given_depth is None else min(self.given_depth, most)
        wood = self.situation.wood
        mean = wood.perpendicular.typical if wood is not None else 0.0
        fits = tooth_bearing(self.situation, drive, depth, mean) / self.safety >= torque * (1 - 1e-9)
        hold = teeth.hold_down_thrust(torque, drive.mean_radius, drive.face_angle, self.friction)
        return Need(force, max(hold, least), max(hold / RELAXATION, least), depth, fits)

    def fits(self, force: float, allowed: float) -> bool:
        """Both the thrust and the seating depth fit."""
        need = self.needs(force)
        return need is not None and need.depth_fits and need.to_set <= allowed

    def lightest(self, allowed: float) -> Need | None:
        """The need of the largest force, up to the case's own, that fits under `allowed`."""
        full = self.situation.cut.force
        if self.fits(full, allowed):
            return self.needs(full)
        low, high = 0.0, full
        if not self.fits(low, allowed):
            return None
        for _ in range(SEARCH_STEPS):
            middle = (low + high) / 2
            low, high = (middle, high) if self.fits(middle, allowed) else (low, middle)
        return self.needs(low)


def _limits(window: _Window) -> tuple[list[Limit], float | None, list[tuple[str, str]]]:
    situation, center = window.situation, window.center
    gaps: list[tuple[str, str]] = []
    found = [ends.center_rating(center)]
    split = ends.splitting(situation, center, window.drive)
    if situation.side_grain and situation.wood is not None:
        gaps.append(("splitting at a center", "no model for a center in side grain"))
    if situation.wood is None:
        gaps.append(("splitting and crushing at the centers", "strength of this material"))
    critical = None
    buckling = ends.buckling_capacity(situation, window.between)
    if buckling is not None:
        found.append(buckling[0])
        critical = buckling[1]
    found += [limit for limit in (ends.crushing(situation, center), split, ends.short_column(situation)) if limit]
    return found, critical, gaps


def _slip(window: _Window, need: Need) -> tuple[float, float] | None:
    """Torque in N·m at which the drive lets go, low to high, at the thrust set."""
    drive, wood = window.drive, window.situation.wood
    if drive is None or drive.kind == "point":
        return None
    if window.seated != "pressed" and need.depth is not None and wood is not None:
        low = tooth_bearing(window.situation, drive, need.depth, wood.perpendicular.low)
        return low, tooth_bearing(window.situation, drive, need.depth, wood.perpendicular.high)
    arm = drive.share * need.to_set * drive.mean_radius * 1e-3
    return drive.effective.low * RELAXATION * arm, drive.effective.high * arm


def _press(window: _Window, need: Need) -> tuple[float, float] | None:
    """Force in N that presses the teeth to depth with the tailstock, and what that end and the center stand."""
    drive, wood = window.drive, window.situation.wood
    if drive is None or wood is None or need.depth is None or window.situation.side_grain:
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
    capacity = ends.split_capacity(window.situation)
    stands = window.center.rating
    if capacity is not None:
        stands = min(stands, capacity / (1.5 * ends.OPENING_AT_DRIVE[drive.kind]))
    return force, stands


def _taper(window: _Window, to_set: float) -> float | None:
    """Torque in N·m that the shank's taper carries, low friction; None when no taper is known."""
    given = window.situation.case.hold.drive
    number = given.shank_taper if given is not None and given.shank_taper is not None else None
    if number is None:
        number = window.situation.case.machine.spindle_taper
    if number is None or not window.between:
        return None
    seated = given is not None and given.taper_seated is True
    return drive_physics.number_taper_torque(number, to_set + (TAPER_PRELOAD_N if seated else 0.0))


def thrust_window(situation: Situation, method: str, rpm: float) -> Thrust:
    """Work out the window for one method at the starting speed `rpm` (worked out without thrust).

    Source: model of section names in the limits; divisors as stated with each limit.
    """
    window = _Window(situation, method, rpm)
    limits, critical, gaps = _limits(window)
    allowed, runner_up = smallest(limits)
    force = situation.cut.force
    full = window.needs(force)
    light = window.lightest(allowed.value) if full is not None else None
    if full is None:
        gaps.append(("thrust", "this drive cannot turn this dead center"))
        full = Need(force, math.inf, math.inf, None, False)
    if not window.between:
        setting = min(LOCATE_SET_N, RELAXATION * allowed.value)
        light = full = replace(full, to_set=setting, needed=min(LOCATE_NEED_N, setting))
    chosen = light if light is not None else full
    press = _press(window, chosen)
    lead = situation.case.machine.handwheel_lead
    finite = math.isfinite(chosen.to_set)
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
        handwheel=tail_physics.handwheel_torque(chosen.to_set, lead, HANDWHEEL_EFFICIENCY)
        if lead is not None and finite
        else None,
        taper_torque=_taper(window, chosen.to_set) if finite else None,
        torque=_torque(situation, force, window.k_peak, rpm),
        critical=critical,
        gaps=tuple(gaps),
    )


def _deepest(window: _Window) -> float | None:
    if window.drive is None or window.seated == "pressed":
        return None
    return seat_depth(window.situation, window.drive, 0.0, window.safety)[1]
