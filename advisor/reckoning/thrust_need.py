"""What a drive asks of the tailstock: teeth sunk in, rims and pads pressed on, or only to stay centered."""

from __future__ import annotations

import math
from typing import NamedTuple

from advisor.figure import NoAnswer
from advisor.physics import drive as drive_physics
from advisor.physics import teeth
from advisor.physics.balance import GRAVITY
from advisor.reckoning import ends
from advisor.reckoning.drives import Drive, drive_for, measured_grip, seat_depth, tooth_bearing
from advisor.reckoning.holds import BETWEEN_CENTERS, SLIPS, peak
from advisor.reckoning.holds.between_centers import CUP_OF_BALL, PAD_MEAN, PAD_SHARE, WEAK_END, WEAK_END_GRIP
from advisor.reckoning.holds.need import MOTOR_STALL
from advisor.reckoning.holds.workmanship import Ends, workmanship
from advisor.reckoning.speed_limits import DEAD_FRICTION
from advisor.situation import Situation

RELAXATION = 0.6  # thrust left after the first minutes; common practice, no source
SAFETY = 1.5  # memory
SAFETY_FEED_GOES_ON = 2.5  # memory
LEAST_N = 50.0  # memory
LEAST_CAP_N = 150.0  # memory
LOCATE_NEED_N = 30.0  # memory
LOCATE_SET_N = 100.0  # memory
SEATED_KINDS = frozenset({"four", "two"})
SLIPPING_KINDS = frozenset({"ring", "cup"})
SEARCH_STEPS = 24  # numerics
DEAD_STRENGTH_MPA = 40.0  # of an end whose strength nobody knows; memory
DEAD_STEPS = 40  # numerics
DEAD_SETTLED = 1e-6  # numerics
DEAD_RUNS_AWAY_N = 1e5  # far above any tailstock: the drag grows faster than the drive; numerics


class Need(NamedTuple):
    """What one cutting force asks of the tailstock: N before and after relaxation, teeth depth in mm."""

    force: float
    needed: float
    to_set: float
    depth: float | None
    depth_fits: bool


class Pad(NamedTuple):
    """A soft face that drives by friction alone: its friction, and the mean radius in mm at which it rubs."""

    friction: Ends
    arm: float


def pad_of(situation: Situation, method: str) -> Pad | None:
    """The pad of a friction block (half the work, evenly pressed) or the cup of a ball drive; None for other methods.

    Source: statics; sizes and friction from memory.
    """
    diameter = situation.body.diameter
    if method == "friction-block":
        return Pad(workmanship(method, "friction"), PAD_MEAN * PAD_SHARE * diameter / 2)
    if method == "sphere-cups":
        return Pad(workmanship(method, "friction"), CUP_OF_BALL * diameter / 2)
    return None


def least_thrust(situation: Situation, force: float, k_peak: float, rpm: float) -> float:
    """Thrust in N that keeps the work centered: the cut's push, and half of weight plus unbalance."""
    body = situation.body
    omega = 2 * math.pi * rpm / 60
    weight = body.mass * GRAVITY
    unbalance = body.mass * body.offset * 1e-3 * omega**2
    return max(LEAST_N, min(2 * k_peak * force, LEAST_CAP_N), (weight + unbalance) / 2)


def peak_torque(situation: Situation, force: float, k_peak: float, rpm: float) -> float:
    """Peak torque of the cut in N·m, never more than the motor gives when it stalls."""
    torque = k_peak * force * situation.cut.arm * 1e-3 + situation.cut.torque
    power = situation.case.machine.power
    if power is not None and rpm > 0:
        torque = min(torque, MOTOR_STALL * power / (2 * math.pi * rpm / 60))
    return torque


def effective_grip(situation: Situation, drive: Drive) -> float:
    """Design grip of the drive; a measured slip test replaces it, a weak end halves it."""
    measured = measured_grip(situation, drive.share, drive.mean_radius)
    if measured is not None:
        return measured
    weak = situation.traits.conditions & WEAK_END
    return drive.effective.design * (WEAK_END_GRIP if weak else 1.0)


class Window:
    """Solves one drive against one tail center; holds what does not change with the cutting force."""

    def __init__(self, situation: Situation, method: str, rpm: float, drive: Drive | None = None) -> None:
        self.situation = situation
        self.method = method
        self.rpm = rpm
        self.between = method in BETWEEN_CENTERS
        self.drive = drive or (drive_for(situation, method) if self.between else None)
        self.pad = pad_of(situation, method)
        ball = 2 * self.pad.arm if method == "sphere-cups" and self.pad is not None else None
        self.center = ends.tail_center(situation, ball)
        kind = self.drive.kind if self.drive is not None else "none"
        slips = (kind in SLIPPING_KINDS or method in SLIPS) and not situation.cut.carriage
        self.k_peak = 1.0 if slips else peak(situation, method, True)
        self.safety = SAFETY_FEED_GOES_ON if situation.cut.carriage else SAFETY
        given = situation.case.hold.drive
        depth = given.seated_depth if given is not None else None
        self.seated = "pressed"
        if kind in SEATED_KINDS and situation.wood is not None:
            self.seated = "advised" if depth is None else "given" if depth > 0 else "pressed"
        self.given_depth = depth
        self.friction = ends.friction_low(situation)

    def torque(self, force: float) -> float:
        """Peak torque in N·m of a cutting force in N."""
        return peak_torque(self.situation, force, self.k_peak, self.rpm)

    def pressed_need(self, force: float) -> float | None:
        """Thrust in N for a drive that bites by thrust alone; None where no thrust turns this dead center."""
        drive, pad = self.drive, self.pad
        if pad is not None:
            measured = measured_grip(self.situation, 1.0, pad.arm)
            return self._pressed(force, 1.0, measured if measured is not None else pad.friction.low, pad.arm)
        if drive is None or drive.mean_radius <= 0:
            return None
        return self._pressed(force, drive.share, effective_grip(self.situation, drive), drive.mean_radius)

    def _pressed(self, force: float, share: float, grip: float, mean_radius: float) -> float | None:
        """The thrust needed, a dead center dragging at the size of dent that this very thrust makes."""
        found, last = 0.0, 0.0
        for _ in range(DEAD_STEPS if self.center.dead else 1):
            try:
                found = drive_physics.required_thrust(
                    cutting_force=force + self.situation.cut.torque * 1e3 / self.situation.cut.arm,
                    radius=self.situation.cut.arm,
                    peak=self.k_peak,
                    safety=self.safety,
                    share=share,
                    grip=grip,
                    mean_radius=mean_radius,
                    **self._drag(last / RELAXATION),
                )
            except NoAnswer:
                return None
            if found - last <= DEAD_SETTLED * found:
                return found
            if found > DEAD_RUNS_AWAY_N:
                break
            last = found
        return None if self.center.dead else found

    def _drag(self, thrust: float) -> dict[str, float]:
        """The dead center's part of the required thrust; nothing for a live one."""
        if not self.center.dead:
            return {}
        radius = dead_radius(self.situation, self.center, thrust)
        return {"tail_friction": DEAD_FRICTION, "tail_radius": radius, "tail_half_angle": self.center.half_angle}

    def needs(self, force: float) -> Need | None:
        """What this cutting force asks for."""
        least = least_thrust(self.situation, force, self.k_peak, self.rpm)
        if not self.between:
            return Need(force, LOCATE_NEED_N, LOCATE_SET_N, None, True)
        drive = self.drive
        if self.pad is None and (drive is None or drive.kind == "point"):
            return Need(force, least, least, None, True)
        if drive is not None and self.seated != "pressed":
            return self._seated_need(drive, force, least)
        pressed = self.pressed_need(force)
        if pressed is None:
            return None
        return Need(force, max(pressed, least), max(pressed / RELAXATION, least), None, True)

    def _seated_need(self, drive: Drive, force: float, least: float) -> Need:
        """Depth and hold-down thrust of seated teeth, which turn a dead center's drag as well."""
        cut, drag, last = self.torque(force), 0.0, 0.0
        need = Need(force, least, least, None, False)
        for _ in range(DEAD_STEPS if self.center.dead else 1):
            need = self._seated_for(drive, force, cut + drag, least)
            if need.to_set - last <= DEAD_SETTLED * need.to_set:
                return need
            if need.to_set > DEAD_RUNS_AWAY_N:
                break
            last = need.to_set
            drag = dead_drag(self.situation, self.center, need.to_set)
        return need._replace(depth_fits=False) if self.center.dead else need

    def _seated_for(self, drive: Drive, force: float, torque: float, least: float) -> Need:
        advised, most = seat_depth(self.situation, drive, torque, self.safety)
        depth = advised if self.given_depth is None else min(self.given_depth, most)
        fits = self.seated_capacity(drive, depth) / self.safety >= torque * (1 - 1e-9)
        hold = teeth.hold_down_thrust(torque, drive.mean_radius, drive.face_angle, self.friction)
        return Need(force, max(hold, least), max(hold / RELAXATION, least), depth, fits)

    def seated_capacity(self, drive: Drive, depth: float) -> float:
        """Torque in N·m that seated teeth carry, mean strength; what was measured replaces it for teeth seated then."""
        test, wood = self.situation.case.hold.slip_test, self.situation.wood
        if test is not None and self.seated == "given":
            return test.torque
        return tooth_bearing(self.situation, drive, depth, wood.perpendicular.typical if wood is not None else 0.0)

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


def dead_radius(situation: Situation, center: ends.TailCenter, thrust: float) -> float:
    """Mean radius in mm at which a dead center rubs under `thrust` N: the cup's, or two thirds of the dent's.

    The dent is that of the crushing strength's low end, which gives the largest. Source: statics.
    """
    if center.kind == "dead-cup":
        return center.cup_diameter / 2
    wood = situation.wood
    strength = DEAD_STRENGTH_MPA
    if wood is not None:
        strength = wood.perpendicular.low if situation.side_grain else wood.crushing.low
    return math.sqrt(4 * max(thrust, 1.0) / (math.pi * strength)) / 3


def dead_drag(situation: Situation, center: ends.TailCenter, thrust: float) -> float:
    """Torque in N·m with which a dead center drags on the work: µ·F·r/sin α, 0 for a live one. Source: statics."""
    if not center.dead:
        return 0.0
    return drive_physics.cone_torque(
        friction=DEAD_FRICTION,
        thrust=thrust,
        half_angle=center.half_angle,
        mean_radius=dead_radius(situation, center, thrust),
    )
