"""Drives by friction, the taper behind them, the thrust a drive needs."""

import math
from typing import NamedTuple

from advisor.figure import Grade, NoAnswer, Spread, figure
from advisor.physics.balance import angular
from advisor.quantity import (
    FigureInputError,
    N,
    factor_number,
    friction_number,
    half_angle_deg,
    mm,
    mm_or_zero,
    part_number,
    positive,
    rpm,
)

TAPER_FRICTION = Spread(0.10, 0.15, 0.20)  # steel on steel, oily to dry; from memory
TAPPED_PRELOAD_N = 2000.0  # what seating a taper with a tap counts as; from memory
DEAD_CENTER_WARM_WOOD_W = 10.0  # heat at which wood wants grease or a live center; from memory
DEAD_CENTER_WARM_PLASTIC_W = 3.0  # memory


class NumberTaper(NamedTuple):
    """A self-holding shank taper: half-angle in degrees, mean radius in mm."""

    half_angle: float
    mean_radius: float


# Number-series shank tapers, from memory of their standard sizes; mean radius over the length of the plug.
NUMBER_TAPERS = {
    0: NumberTaper(1.49, 3.8),
    1: NumberTaper(1.43, 5.3),
    2: NumberTaper(1.43, 8.0),
    3: NumberTaper(1.44, 10.9),
    4: NumberTaper(1.49, 14.2),
    5: NumberTaper(1.51, 20.3),
    6: NumberTaper(1.49, 28.9),
    7: NumberTaper(1.49, 38.2),
}


def mean_ring_radius(outer_radius: float, inner_radius: float) -> float:
    """Radius in mm at which even pressure on a ring rubs: (2/3)·(ro³ − ri³)/(ro² − ri²). Source: statics.

    >>> round(mean_ring_radius(12.5, 5.0), 2)
    9.29
    """
    return 2 / 3 * (outer_radius**3 - inner_radius**3) / (outer_radius**2 - inner_radius**2)


@figure(
    title="torque of a ring or cup drive",
    symbol="T",
    equation="µ·F·r",
    unit="N·m",
    grade=Grade.ESTIMATE,
    sources=("statics",),
    valid="even pressure on a flat, faced end",
    section="1.2",
    symbols={"friction": "µ", "thrust": "F", "outer_radius": "r", "mean_radius": "r_m"},
    forms=lambda inputs: "µ·F·r" if inputs["inner_radius"] is None else "µ·F·r_m",
    also=lambda outer_radius, inner_radius, **_: (
        {} if inner_radius is None else {"mean_radius": (mean_ring_radius(outer_radius, inner_radius), "mm")}
    ),
)
def ring_drive_torque(
    friction: friction_number, thrust: N, outer_radius: mm, inner_radius: mm_or_zero | None = None
) -> float:
    """Torque that friction under a ring or cup carries; slipping there is the overload clutch of a spindle.

    Formula  T = µ·F·r for a thin ring; r becomes (2/3)·(ro³ − ri³)/(ro² − ri²) for a wide one
    Inputs   friction (0.20 low, 0.35, 0.65 high, dry), thrust N, outer_radius mm, inner_radius mm or nothing
    Gives    N·m
    Valid    even pressure on a faced end
    Errors   an inner radius that is not smaller than the outer is refused
    Source   statics of a clutch

    >>> round(ring_drive_torque(friction=0.35, thrust=1000, outer_radius=11), 2)
    3.85
    """
    radius = outer_radius
    if inner_radius is not None:
        if inner_radius >= outer_radius:
            raise FigureInputError("inner_radius", inner_radius, f"less than the outer radius {outer_radius:g} mm")
        radius = mean_ring_radius(outer_radius, inner_radius)
    return friction * thrust * radius / 1000


def sharp_ring_torque(friction: float, thrust: float, radius: float, half_angle: float) -> float:
    """Torque in N·m of a sharp V-shaped ring, never less than µ·F·r: µ·F·r/(sin β + µ·cos β).

    `thrust` N, `radius` mm, `half_angle` degrees from the axis. Source: statics of a cone clutch.

    >>> round(sharp_ring_torque(0.4, 1000, 11, 30), 2)
    5.2
    """
    turned = math.radians(half_angle)
    flat = friction * thrust * radius / 1000
    return max(flat, flat / (math.sin(turned) + friction * math.cos(turned)))


@figure(
    title="torque of a cone or point by friction",
    symbol="T",
    equation="µ·F·r/sin(α)",
    unit="N·m",
    grade=Grade.ESTIMATE,
    sources=("statics",),
    valid="even pressure",
    section="1.3",
    symbols={"friction": "µ", "thrust": "F", "half_angle": "α", "mean_radius": "r"},
)
def cone_torque(friction: friction_number, thrust: N, half_angle: half_angle_deg, mean_radius: mm) -> float:
    """Torque that friction on a cone or point carries: a bare point drives almost nothing.

    Formula  T = µ·F·r/sin α
    Inputs   friction, thrust N, half_angle degrees from the axis (30 for a 60° point), mean_radius mm of the contact
    Gives    N·m
    Valid    even pressure
    Source   statics of a cone clutch

    >>> round(cone_torque(friction=0.35, thrust=1000, half_angle=30, mean_radius=mean_ring_radius(2.3, 0)), 2)
    1.07
    """
    return friction * thrust * mean_radius / 1000 / math.sin(math.radians(half_angle))


@figure(
    title="torque of a shank taper",
    symbol="T",
    equation="µ·F·r/(sin(α) + µ·cos(α))",
    unit="N·m",
    grade=Grade.ESTIMATE,
    sources=("statics", "memory"),
    valid="clean taper pressed by the thrust alone; a tap to seat it counts as 2 kN more",
    section="1.4",
    symbols={"friction": "µ", "thrust": "F", "half_angle": "α", "mean_radius": "r"},
)
def taper_torque(friction: friction_number, thrust: N, half_angle: half_angle_deg, mean_radius: mm) -> float:
    """Torque at which the center's own taper turns in the spindle: a small one can let go before the teeth do.

    Formula  T = µ·F·r/(sin α + µ·cos α)
    Inputs   friction (0.15 steel on steel, 0.10 oily), thrust N, half_angle degrees (1.43 for number 2), mean_radius mm
    Gives    N·m
    Valid    even pressure; friction resists the taper going in
    Source   statics of a cone clutch; friction from memory

    >>> round(taper_torque(friction=0.15, thrust=1000, half_angle=1.43, mean_radius=8), 1)
    6.9
    """
    turned = math.radians(half_angle)
    return friction * thrust * mean_radius / 1000 / (math.sin(turned) + friction * math.cos(turned))


def seated_taper_torque(friction: float, thrust: float, half_angle: float, mean_radius: float) -> float:
    """Torque in N·m of a taper seated by a tap, which counts as 2 kN more thrust. Units as taper-torque; from memory.

    >>> round(seated_taper_torque(0.15, 1000, 1.43, 8), 1)
    20.6
    """
    return taper_torque(friction, thrust + TAPPED_PRELOAD_N, half_angle, mean_radius)


def number_taper_torque(taper: int, thrust: float, friction: float = TAPER_FRICTION.low) -> float:
    """Torque in N·m of a number-series shank taper (0 to 7) under `thrust` N, at the low end of the friction.

    Raises FigureInputError for another number. Source: statics; sizes and friction from memory.

    >>> round(number_taper_torque(2, 1000, 0.15), 1)
    6.9
    """
    if taper not in NUMBER_TAPERS:
        raise FigureInputError("taper", taper, f"a number from {min(NUMBER_TAPERS)} to {max(NUMBER_TAPERS)}")
    return taper_torque(friction, thrust, *NUMBER_TAPERS[taper])


def _tail_drag(friction: float | None, radius: float | None, half_angle: float | None) -> float:
    """µ·r/sin α of a dead tail center in mm, zero for a live one."""
    given = {"tail_friction": friction, "tail_radius": radius, "tail_half_angle": half_angle}
    if all(value is None for value in given.values()):
        return 0.0
    if friction is None or radius is None or half_angle is None:
        missing = next(name for name, value in given.items() if value is None)
        raise FigureInputError(missing, None, "all three of a dead center, or none of them for a live one")
    return friction * radius / math.sin(math.radians(half_angle))


@figure(
    title="thrust that the drive needs",
    symbol="F_req",
    equation="SF·k·F_c·R/(s·C·r_m − d_t)",
    unit="N",
    grade=Grade.ROUGH_GUIDE,
    sources=("statics", "memory"),
    valid="teeth, ring or cup pressed in by the thrust alone",
    section="1.5",
    symbols={
        "cutting_force": "F_c",
        "radius": "R",
        "peak": "k",
        "safety": "SF",
        "share": "s",
        "grip": "C",
        "mean_radius": "r_m",
        "tail_drag": "d_t",
    },
    also=lambda tail_friction, tail_radius, tail_half_angle, **_: {
        "tail_drag": (_tail_drag(tail_friction, tail_radius, tail_half_angle), "mm")
    },
)
def required_thrust(
    cutting_force: N,
    radius: mm,
    peak: factor_number,
    safety: factor_number,
    share: part_number,
    grip: positive,
    mean_radius: mm,
    tail_friction: friction_number | None = None,
    tail_radius: mm | None = None,
    tail_half_angle: half_angle_deg | None = None,
) -> float:
    """Least thrust at which the drive carries the cut; a dead tail center drags against it.

    Formula  F_req = SF·k·F_c·R/(s·C·r_m − d_t), d_t = µ_t·r_t/sin α_t of a dead center, else 0
    Inputs   cutting_force N, radius mm, peak k, safety SF (1.5; 2.5 where a slip spoils the work), share s of the
             thrust on the teeth, grip C (effective friction), mean_radius mm; for a dead center tail_friction,
             tail_radius mm, tail_half_angle degrees
    Gives    N, before the wood relaxes
    Valid    drives pressed in by the thrust; the grip is a rough guide
    Errors   no answer where the dead center drags more than the drive carries
    Source   statics; grip from memory

    >>> round(required_thrust(cutting_force=60, radius=25, peak=2, safety=1.5, share=0.9, grip=0.5,
    ...                       mean_radius=8.75), -1)
    1140.0
    """
    arm = share * grip * mean_radius - _tail_drag(tail_friction, tail_radius, tail_half_angle)
    if arm <= 0:
        raise NoAnswer("this drive cannot turn this dead center: it drags more than the drive carries")
    return safety * peak * cutting_force * radius / arm


@figure(
    title="heat at a dead center",
    symbol="P",
    equation="µ·F·r·ω/sin(α)",
    unit="W",
    grade=Grade.ESTIMATE,
    sources=("statics", "memory"),
    valid="steady rubbing; over about 10 W on wood or 3 W on plastic grease it or use a live center",
    section="1.5",
    symbols={"friction": "µ", "thrust": "F", "radius": "r", "half_angle": "α", "angular_speed": "ω"},
    also=lambda rpm, **_: {"angular_speed": (angular(rpm), "rad/s")},
)
def dead_center_heat(friction: friction_number, thrust: N, radius: mm, half_angle: half_angle_deg, rpm: rpm) -> float:
    """Heat that a dead tail center makes in the end of the work.

    Formula  P = µ·F·r·ω/sin α, ω = 2·π·n/60
    Inputs   friction (sliding, high end), thrust N, radius mm of the contact, half_angle degrees from the axis, rpm
    Gives    W
    Valid    steady rubbing; 10 W on wood and 3 W on plastic are from memory
    Source   statics

    >>> round(dead_center_heat(friction=0.3, thrust=500, radius=3, half_angle=30, rpm=900), 1)
    84.8
    """
    return friction * thrust * radius / 1000 * angular(rpm) / math.sin(math.radians(half_angle))
