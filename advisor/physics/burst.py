"""Whether the piece holds together at speed: discs, rings, cracks."""

from __future__ import annotations

import math
from collections.abc import Mapping
from typing import Any

from advisor.figure import Also, Grade, figure
from advisor.physics.balance import angular, per_minute
from advisor.quantity import (
    FigureInputError,
    MPa,
    kg_per_m3,
    m_per_s,
    mm,
    mm_or_zero,
    poisson_number,
    rpm,
    share_number,
)

POISSON_WOOD = 0.4  # memory
# Tension across the grain on a diametral plane: falls with size above 100 mm, never below what timber codes give
# structural members (EN 338, quoted from memory).
SIZE_REFERENCE_MM = 100.0
SIZE_POWER = 0.6
SIZE_FLOOR = {"hardwood": 0.6, "softwood": 0.4}
TOUGHNESS_LOW = 0.2  # MPa·√m; 0.2 to 0.5 from memory
TOUGHNESS_DIVISOR = 2.0
EDGE_CRACK = 1.12  # shape factor of a crack from an edge


def diametral_strength(tension_perpendicular: float, diameter: float, group: str) -> float:
    """Tension across the grain in MPa to count on over the diametral plane of a blank of `diameter` mm.

    f·min(1, (100 mm/D)^0.6), not below 0.6 (hardwood) or 0.4 MPa (softwood), never above the value given.
    Source: size effect from memory; floor from EN 338, quoted from memory.

    >>> round(diametral_strength(2.7, 300, "hardwood"), 2)
    1.4
    """
    shrunk = tension_perpendicular * math.pow(SIZE_REFERENCE_MM / diameter, SIZE_POWER)
    return min(tension_perpendicular, max(shrunk, SIZE_FLOOR[group]))


def mean_disc_stress(density: float, diameter: float, rpm: float, bore: float = 0.0) -> float:
    """Mean stress in kPa across a diameter: ρ·ω²·R²/3, with a bore ρ·ω²·(Ro² + Ro·Ri + Ri²)/3.

    Density kg/m³, diameters mm. Source: statics of half a disc.

    >>> round(mean_disc_stress(700, 300, 1000), 1)
    57.6
    """
    outer, inner = diameter / 2000, bore / 2000
    return density * angular(rpm) ** 2 * (outer**2 + outer * inner + inner**2) / 3 / 1000


def _disc_form(inputs: Mapping[str, Any]) -> str:
    if not inputs["bore"]:
        return "(3 + ν)/8·ρ·ω²·(D/2)²"
    return "(3 + ν)/4·ρ·ω²·((D/2)² + (1 − ν)/(3 + ν)·(d/2)²)"


def _disc_parts(density: float, diameter: float, rpm: float, bore: float | None, **_: float) -> Also:
    return {
        "angular_speed": (angular(rpm), "rad/s"),
        "mean_stress": (mean_disc_stress(density, diameter, rpm, bore or 0.0), "kPa"),
    }


@figure(
    title="greatest stress in a spinning disc",
    symbol="σ",
    equation="(3 + ν)/8·ρ·ω²·(D/2)²",
    unit="kPa",
    grade=Grade.CALCULATED,
    sources=("roark",),
    valid="sound flat disc, alike in all directions; wood lets go across its grain, at a crack or a glue line",
    section="4.8",
    symbols={"poisson": "ν", "density": "ρ", "diameter": "D", "bore": "d", "angular_speed": "ω"},
    forms=_disc_form,
    also=_disc_parts,
)
def disc_stress(
    density: kg_per_m3, diameter: mm, rpm: rpm, poisson: poisson_number, bore: mm_or_zero | None = None
) -> float:
    """Greatest stress in a disc that spins: at its center, or at its bore, where it is about twice as great.

    Formula  σ = (3 + ν)/8·ρ·ω²·R²; with a bore (3 + ν)/4·ρ·ω²·(Ro² + (1 − ν)/(3 + ν)·Ri²)
    Inputs   density kg/m³, diameter mm, rpm, poisson (0.4 here for wood), bore mm: a diameter, or nothing
    Gives    kPa; `mean_stress` is that across a diameter
    Valid    sound, flat, alike in all directions
    Errors   a bore that is not smaller than the disc is refused
    Source   Roark's Formulas for Stress and Strain

    >>> round(disc_stress(density=700, diameter=300, rpm=1000, poisson=0.4), 1)
    73.4
    """
    pull = density * angular(rpm) ** 2 / 1000
    outer, inner = diameter / 2000, (bore or 0.0) / 2000
    if inner >= outer:
        raise FigureInputError("bore", bore, f"a diameter less than {diameter:g} mm")
    if inner <= 0:
        return (3 + poisson) / 8 * pull * outer**2
    return (3 + poisson) / 4 * pull * (outer**2 + (1 - poisson) / (3 + poisson) * inner**2)


@figure(
    title="stress in a thin spinning ring",
    symbol="σ",
    equation="ρ·v²",
    unit="MPa",
    grade=Grade.CALCULATED,
    sources=("roark",),
    valid="ring thin against its diameter",
    section="4.8",
    symbols={"density": "ρ", "speed": "v"},
)
def ring_stress(density: kg_per_m3, speed: m_per_s) -> float:
    """Stress along a thin ring that spins, whatever its diameter.

    Formula  σ = ρ·v²
    Inputs   density kg/m³, speed m/s of the ring
    Gives    MPa
    Valid    ring thin against its diameter
    Source   Roark's Formulas for Stress and Strain

    >>> round(ring_stress(density=700, speed=20), 2)
    0.28
    """
    return density * speed**2 / 1e6


@figure(
    title="speed at which a cracked disc lets go",
    symbol="n",
    equation="(30/π)·√(3·q·f/(ρ·(D/2)²))",
    unit="rpm",
    grade=Grade.ROUGH_GUIDE,
    sources=("statics", "memory"),
    valid="necessary, not sufficient; a crack that gapes over 1 mm or crosses the rim asks for a band or a refusal",
    section="4.8",
    symbols={"density": "ρ", "diameter": "D", "sound": "q", "strength": "f"},
)
def cracked_disc_speed(density: kg_per_m3, diameter: mm, sound: share_number, strength: MPa) -> float:
    """Speed at which the sound part of a diameter no longer holds the two halves of a cracked disc.

    Formula  n = (30/π)·√(3·q·f/(ρ·R²))
    Inputs   density kg/m³, diameter mm, sound: share of the diametral section that is whole, strength MPa across the
             grain, with its divisor already in it
    Gives    rpm
    Valid    a necessary test, not a sufficient one
    Source   statics of half a disc; strength across the grain from memory or table

    >>> round(cracked_disc_speed(density=700, diameter=300, sound=0.3, strength=0.5))
    1614
    """
    return per_minute(math.sqrt(3 * sound * strength * 1e6 / (density * (diameter / 2000) ** 2)))


def crack_intensity(stress: float, depth: float) -> float:
    """Stress intensity in MPa·√m of a crack `depth` mm deep from the rim under `stress` MPa: 1.12·σ·√(π·a).

    To be kept under half of the toughness, 0.2 to 0.5 MPa·√m. Source: fracture mechanics; toughness from memory.

    >>> round(crack_intensity(0.0734, 75), 3)
    0.04
    """
    return EDGE_CRACK * stress * math.sqrt(math.pi * depth / 1000)


def crack_stress(depth: float, toughness: float = TOUGHNESS_LOW) -> float:
    """Stress in MPa at which a rim crack `depth` mm deep reaches half of the toughness. Source as crack_intensity.

    >>> round(crack_stress(75), 3)
    0.184
    """
    return toughness / TOUGHNESS_DIVISOR / crack_intensity(1.0, depth)
