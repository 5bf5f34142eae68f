"""Teeth of a drive center pressed or driven into the end of the work."""

from __future__ import annotations

import math

from advisor.figure import Also, Grade, NoAnswer, figure
from advisor.physics.relations import grain_angle_strength
from advisor.quantity import (
    FigureInputError,
    MPa,
    N,
    count,
    flank_angle_deg,
    friction_number,
    mm,
    mm_or_zero,
    part_number,
)

# Strength at working deformation over the proportional limit, across the grain (1.0 to 2.5); from memory.
WORKING_FACTOR = 1.5
# Constraint of the indented wood (0.7 to 2.5); from memory.
INDENTATION_FACTOR = 1.3
TOOTH_FRICTION = 0.35  # flank on wood (0.2 to 0.65); from memory
TOOTH_FRICTION_LOW = 0.20
TOOTH_SHARE = 0.9  # of the thrust; the rest is on the center point (0.7 to 1.0)
CLIMB_CAP = 1.5  # no thrust-pressed tooth is believed to carry more than this times thrust and radius; memory
SINK_GAIN = 2.0  # the unloaded back lets the tooth sink to about twice its depth; part of the tooth model
NO_RESISTANCE = "square flanks without friction meet no resistance in this model"


def flank_pressure(angle: float, parallel: float, perpendicular: float) -> float:
    """Pressure in MPa on a tooth flank that is biting in, its half-angle in degrees from the axis.

    p_n = k_n·Hankinson(f0, k_u·f90, 90° − β). Source: tooth model, constants from memory.

    >>> round(flank_pressure(30, 54.0, 10.1), 1)
    24.0
    """
    bearing = WORKING_FACTOR * perpendicular
    return INDENTATION_FACTOR * grain_angle_strength(parallel=parallel, perpendicular=bearing, angle=90 - angle)


def entry_resistance(
    face_angle: float, back_angle: float, friction: float, parallel: float, perpendicular: float
) -> float:
    """Thrust in N per mm of depth and mm of tooth length that a tooth asks for to bite in. Source: tooth model."""
    face = flank_pressure(face_angle, parallel, perpendicular) * (math.tan(math.radians(face_angle)) + friction)
    back = flank_pressure(back_angle, parallel, perpendicular) * (math.tan(math.radians(back_angle)) + friction)
    return face + back


def grip_low(face_angle: float, back_angle: float, friction: float, parallel: float, perpendicular: float) -> float:
    """Effective friction of pressed teeth before they sink further: C_low. Source: tooth model, constants from memory.

    >>> round(grip_low(30, 30, 0.35, 54.0, 10.1), 2)
    0.34
    """
    floor = min(TOOTH_FRICTION_LOW, friction)
    resistance = entry_resistance(face_angle, back_angle, friction, parallel, perpendicular)
    return max(WORKING_FACTOR * perpendicular / resistance, floor) if resistance > 0 else math.inf


def grip_ride(face_angle: float, friction: float) -> float:
    """Effective friction at which teeth climb out of their slots: 1/tan(β − atan µ), infinite when self-holding.

    Source: statics.

    >>> round(grip_ride(30, 0.35), 1)
    5.3
    """
    lean = math.radians(face_angle) - math.atan(friction)
    return 1 / math.tan(lean) if lean > 0 else math.inf


def grip_best(low: float, ride: float) -> float:
    """Effective friction that pressed teeth reach at their best: min(2·C_low, C_ride, 1.5). Source: tooth model.

    >>> round(grip_best(0.34, 5.3), 2)
    0.68
    """
    return min(SINK_GAIN * low, ride, CLIMB_CAP)


def _tooth_length(inner_radius: float, outer_radius: float) -> float:
    if inner_radius >= outer_radius:
        raise FigureInputError("inner_radius", inner_radius, f"less than the outer radius {outer_radius:g} mm")
    return outer_radius - inner_radius


def press_force(
    depth: float,
    teeth: float,
    inner_radius: float,
    outer_radius: float,
    face_angle: float,
    back_angle: float,
    parallel: float,
    perpendicular: float,
    friction: float = TOOTH_FRICTION,
    share: float = TOOTH_SHARE,
) -> float:
    """Thrust in N that presses teeth to a depth in mm: the tooth model solved for the thrust.

    Radii mm, angles degrees from the axis, strengths MPa. Source: tooth model, constants from memory.

    >>> round(press_force(0.67, 4, 5, 12.5, 30, 30, 54.0, 10.1), -2)
    1000.0
    """
    resistance = entry_resistance(face_angle, back_angle, friction, parallel, perpendicular)
    return depth * teeth * _tooth_length(inner_radius, outer_radius) * resistance / share


_TOOTH_SYMBOLS = {
    "thrust": "F",
    "teeth": "N",
    "share": "s",
    "tooth_length": "L",
    "mean_radius": "r_m",
    "entry_resistance": "w",
    "grip_best": "C_best",
}


@figure(
    title="depth to which teeth bite in under thrust",
    symbol="h",
    equation="s·F/(N·L·w)",
    unit="mm",
    grade=Grade.ROUGH_GUIDE,
    sources=("tooth-model", "memory"),
    valid="clean end grain, tooth length 3 mm and more, depth up to half the tooth length",
    section="1.1",
    symbols=_TOOTH_SYMBOLS,
    also=lambda inner_radius, outer_radius, face_angle, back_angle, friction, parallel, perpendicular, **_: {
        "tooth_length": (outer_radius - inner_radius, "mm"),
        "entry_resistance": (entry_resistance(face_angle, back_angle, friction, parallel, perpendicular), "MPa"),
    },
)
def tooth_penetration(
    thrust: N,
    teeth: count,
    inner_radius: mm_or_zero,
    outer_radius: mm,
    face_angle: flank_angle_deg,
    back_angle: flank_angle_deg,
    parallel: MPa,
    perpendicular: MPa,
    friction: friction_number = TOOTH_FRICTION,
    share: part_number = TOOTH_SHARE,
) -> float:
    """How deep the teeth of a drive bite into end grain under the thrust alone.

    Formula  h = s·F/(N·L·w), w = p_n(β1)·(tan β1 + µ) + p_n(β2)·(tan β2 + µ),
             p_n(β) = 1.3·Hankinson(f0, 1.5·f90, 90° − β)
    Inputs   thrust N, teeth, inner_radius mm, outer_radius mm, face_angle and back_angle degrees from the axis,
             parallel MPa, perpendicular MPa (proportional limit), friction 0.35, share 0.9 of the thrust on the teeth
    Gives    mm
    Valid    clean end grain; constants from memory, a factor of two either way
    Errors   no answer for square flanks without friction: nothing stops them
    Source   tooth model, derived; constants from memory

    >>> round(tooth_penetration(thrust=1000, teeth=4, inner_radius=5, outer_radius=12.5, face_angle=30, back_angle=30,
    ...                         parallel=54, perpendicular=10.1), 2)
    0.67
    """
    length = _tooth_length(inner_radius, outer_radius)
    resistance = entry_resistance(face_angle, back_angle, friction, parallel, perpendicular)
    if resistance <= 0:
        raise NoAnswer(NO_RESISTANCE)
    return share * thrust / (teeth * length * resistance)


def _slip_parts(
    thrust: float,
    teeth: float,
    inner_radius: float,
    outer_radius: float,
    face_angle: float,
    back_angle: float,
    parallel: float,
    perpendicular: float,
    friction: float,
    share: float,
) -> Also:
    low = grip_low(face_angle, back_angle, friction, parallel, perpendicular)
    ride = grip_ride(face_angle, friction)
    depth = tooth_penetration(
        thrust, teeth, inner_radius, outer_radius, face_angle, back_angle, parallel, perpendicular, friction, share
    )
    parts: dict[str, tuple[float, str]] = {
        "penetration": (depth, "mm"),
        "bite_torque": (seated_torque(teeth, inner_radius, outer_radius, depth, perpendicular), "N·m"),
        "mean_radius": ((inner_radius + outer_radius) / 2, "mm"),
        "grip_low": (low, ""),
        "grip_best": (grip_best(low, ride), ""),
    }
    if math.isfinite(ride):  # a self-holding face never climbs out
        parts["grip_ride"] = (ride, "")
    return parts


@figure(
    title="torque at which pressed teeth slip",
    symbol="T",
    equation="C_best·s·F·r_m",
    unit="N·m",
    grade=Grade.ROUGH_GUIDE,
    sources=("tooth-model", "memory"),
    valid="clean end grain, teeth pressed in by the thrust alone; a slip test replaces it",
    section="1.1",
    symbols=_TOOTH_SYMBOLS,
    also=_slip_parts,
)
def tooth_slip_torque(
    thrust: N,
    teeth: count,  # noqa: ARG001 -- strength and count cancel in the effective friction; `also` uses it
    inner_radius: mm_or_zero,
    outer_radius: mm,
    face_angle: flank_angle_deg,
    back_angle: flank_angle_deg,
    parallel: MPa,
    perpendicular: MPa,
    friction: friction_number = TOOTH_FRICTION,
    share: part_number = TOOTH_SHARE,
) -> float:
    """Torque at which the teeth of a drive, pressed in by the thrust alone, let go at their best.

    Formula  T = C_best·s·F·r_m, C_best = min(2·C_low, C_ride, 1.5), C_low = max(1.5·f90/w, 0.20),
             C_ride = 1/tan(β1 − atan µ), w as in tooth-penetration
    Inputs   thrust N, teeth, inner_radius mm, outer_radius mm, face_angle (driving flank) and back_angle degrees from
             the axis, parallel MPa, perpendicular MPa (proportional limit), friction 0.35, share 0.9 of the thrust
    Gives    N·m; `bite_torque` is what the teeth carry before they sink further
    Valid    clean end grain; punky, pithy or checked ends carry half
    Source   tooth model, derived; constants from memory

    >>> round(tooth_slip_torque(thrust=1000, teeth=4, inner_radius=5, outer_radius=12.5, face_angle=30, back_angle=30,
    ...                         parallel=54, perpendicular=10.1), 1)
    5.4
    """
    _tooth_length(inner_radius, outer_radius)
    low = grip_low(face_angle, back_angle, friction, parallel, perpendicular)
    if not math.isfinite(low):
        raise NoAnswer(NO_RESISTANCE)
    best = grip_best(low, grip_ride(face_angle, friction))
    return best * share * thrust * (inner_radius + outer_radius) / 2000


def seated_torque(
    teeth: float, inner_radius: float, outer_radius: float, depth: float, perpendicular: float
) -> float:
    """Torque in N·m that teeth driven in beforehand carry, whatever the thrust: N·k_u·f90·L·h0·r_m.

    Lengths mm, `perpendicular` MPa (proportional limit, mean). No divisor. Source: tooth model.

    >>> round(seated_torque(4, 5.0, 12.5, 3.0, 10.1), 1)
    11.9
    """
    length = _tooth_length(inner_radius, outer_radius)
    return teeth * WORKING_FACTOR * perpendicular * length * depth * (inner_radius + outer_radius) / 2000


def side_grain_bearing(parallel: float, perpendicular: float) -> float:
    """Mean bearing in MPa of teeth in side grain: half at k_u·f90, half at min(f0, 2·k_u·f90). Source: tooth model.

    >>> round(side_grain_bearing(54.0, 10.1), 1)
    22.7
    """
    across = WORKING_FACTOR * perpendicular
    return (across + min(parallel, 2 * across)) / 2


def hold_down_thrust(torque: float, mean_radius: float, face_angle: float, friction: float) -> float:
    """Thrust in N that keeps seated teeth down under a torque in N·m: T·tan(β1 − atan µ)/r_m, never below zero.

    `mean_radius` mm, `face_angle` degrees from the axis. Source: statics; friction at its low end.

    >>> round(hold_down_thrust(2 * 75 * 0.038, 8.75, 30, 0.20), -1)
    220.0
    """
    lean = math.radians(face_angle) - math.atan(friction)
    return torque * 1000 * math.tan(lean) / mean_radius if lean > 0 else 0.0
