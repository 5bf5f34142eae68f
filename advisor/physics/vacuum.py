"""Vacuum holding. Numbers are before any divisor."""

from __future__ import annotations

import math

from advisor.figure import Grade, figure
from advisor.quantity import altitude_m, kPa, mm, poisson_number

SEA_LEVEL_KPA = 101.325  # iso-2533
LAPSE_PER_M = 2.25577e-5  # iso-2533
LAPSE_POWER = 5.25588  # iso-2533
LIFT_SHARE = 0.5  # of the overturning moment, at which a ring seal starts to lift; derived
# Share of the air pressure that a shop's pump attains (from memory); ask for the gauge, read with the work on.
ATTAINED_LOW = 0.5
ATTAINED_HIGH = 0.85
VACUUM_DIVISOR = 3.0


@figure(
    title="pressure of the air",
    symbol="p",
    equation="101.325·(1 − 2.25577e-5·h)^5.25588",
    unit="kPa",
    grade=Grade.CALCULATED,
    sources=("iso-2533",),
    valid="up to 11 000 m; the weather moves it by a few percent",
    section="5.9",
    symbols={"altitude": "h"},
)
def air_pressure(altitude: altitude_m) -> float:
    """Pressure of the air at an altitude: the most that a vacuum chuck can have.

    Formula  p = 101.325·(1 − 2.25577·10⁻⁵·h)^5.25588
    Inputs   altitude m over the sea
    Gives    kPa
    Valid    up to 11 000 m
    Source   ISO 2533 Standard Atmosphere

    >>> round(air_pressure(altitude=1500), 1)
    84.6
    """
    return SEA_LEVEL_KPA * math.pow(1 - LAPSE_PER_M * altitude, LAPSE_POWER)


@figure(
    title="force of a vacuum chuck",
    symbol="F",
    equation="Δp·π·d²/4",
    unit="N",
    grade=Grade.CALCULATED,
    sources=("statics",),
    valid="gauge read with the work on; d is the diameter of the seal",
    section="5.9",
    symbols={"pressure": "Δp", "diameter": "d"},
)
def vacuum_force(pressure: kPa, diameter: mm) -> float:
    """Force with which the air presses the work on.

    Formula  F = Δp·π·d²/4
    Inputs   pressure kPa below that of the air, read with the work on, diameter mm of the seal
    Gives    N, before a divisor of 3
    Valid    any tight seal
    Source   statics

    >>> round(vacuum_force(pressure=80, diameter=100))
    628
    """
    return pressure / 1000 * math.pi * diameter**2 / 4


def seal_torque(friction: float, force: float, seal_radius: float) -> float:
    """Torque in N·m that the seal carries by friction, µ·F·r: N and mm. Source: statics; friction from memory.

    >>> round(seal_torque(0.35, 628.3, 50))
    11
    """
    return friction * force * seal_radius / 1000


def seal_moment(force: float, seal_radius: float) -> float:
    """Moment in N·m at which a ring seal starts to lift: half of F·r at which the work overturns. Source: statics.

    >>> round(seal_moment(628.3, 50), 1)
    15.7
    """
    return LIFT_SHARE * force * seal_radius / 1000


@figure(
    title="stress in a thin floor under suction",
    symbol="σ",
    equation="3·(3 + ν)/8·Δp·(R/t)²",
    unit="MPa",
    grade=Grade.CALCULATED,
    sources=("roark",),
    valid="flat round floor on a simple edge, small deflection; allowed: a third of the strength across the grain",
    section="5.9",
    symbols={"pressure": "Δp", "radius": "R", "thickness": "t", "poisson": "ν"},
)
def suction_floor_stress(pressure: kPa, radius: mm, thickness: mm, poisson: poisson_number) -> float:
    """Bending stress in the middle of a thin floor that the vacuum sucks in.

    Formula  σ = 3·(3 + ν)/8·Δp·(R/t)²
    Inputs   pressure kPa, radius mm inside the seal, thickness mm of the floor, poisson (0.3)
    Gives    MPa
    Valid    flat round plate on a simple edge
    Source   Roark's Formulas for Stress and Strain

    >>> round(suction_floor_stress(pressure=80, radius=75, thickness=4, poisson=0.3), 1)
    34.8
    """
    return 3 * (3 + poisson) / 8 * pressure / 1000 * (radius / thickness) ** 2


def thinnest_floor(pressure: float, radius: float, allowed: float, poisson: float = 0.3) -> float:
    """Thinnest floor in mm that an allowed stress in MPa lets the vacuum have: suction-floor-stress solved for t.

    >>> round(thinnest_floor(80, 75, 34.8), 1)
    4.0
    """
    return radius * math.sqrt(3 * (3 + poisson) / 8 * pressure / 1000 / allowed)
