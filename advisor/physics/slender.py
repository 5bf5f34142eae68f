"""Slender blanks: buckling, bending and whirl."""

from __future__ import annotations

import itertools
import math
from collections.abc import Mapping, Sequence
from typing import Any, Literal

from advisor.figure import Also, Grade, NoAnswer, figure
from advisor.physics.balance import per_minute
from advisor.physics.beam import GAUSS, least_frequency
from advisor.quantity import FigureInputError, GPa, N, kg_per_m3, mm, positive, profile_pairs

Ends = Literal["pinned-pinned", "fixed-pinned", "fixed-fixed", "free"]

# theory-of-elastic-stability
LENGTH_FACTOR: Mapping[str, float] = {"pinned-pinned": 1.0, "fixed-pinned": 0.699, "fixed-fixed": 0.5, "free": 2.0}
BEND_DIVISOR: Mapping[str, str] = {"pinned-pinned": "48", "fixed-pinned": "(768/7)", "fixed-fixed": "192", "free": "3"}
# roark
_BEND: Mapping[str, float] = {"pinned-pinned": 48.0, "fixed-pinned": 768 / 7, "fixed-fixed": 192.0, "free": 3.0}
WHIRL_NUMBER: Mapping[str, float] = {  # beam-vibration
    "pinned-pinned": 9.870,
    "fixed-pinned": 15.418,
    "fixed-fixed": 22.373,
    "free": 3.516,
}
# Degrees of freedom that the ends hold, as `beam.least_frequency` counts them.
HELD: Mapping[str, tuple[int, ...]] = {  # numerics
    "pinned-pinned": (0, -2),
    "fixed-pinned": (0, 1, -2),
    "fixed-fixed": (0, 1, -2, -1),
    "free": (0, 1),
}
# Deflection by shear as a share of that by bending is this times (D/L)², for wood with E/G about 16; derived.
SHEAR_SHARE: Mapping[str, float] = {"pinned-pinned": 13.3, "fixed-pinned": 30.0, "fixed-fixed": 53.0, "free": 3.3}
# What shear leaves of the whirling speed at a length over diameter, both ends pinned; from memory.
_WHIRL_SHEAR = ((5.0, 0.83), (8.0, 0.92), (10.0, 0.95), (15.0, 0.98))
SHORTEST_COLUMN = 8.0  # length over diameter; below it the wood crushes first
SHORTEST_WHIRL = 5.0
MOST_PROFILE_PAIRS = 500
SLICES = 8  # of each stretch of a profile, where its bending is added up
PUSHES = 12  # places at which a profile is pushed, one in the middle
_MPA_PER_GPA = 1000.0


def second_moment(diameter: float) -> float:
    """Second moment of area of a round bar, π·D⁴/64 in mm⁴ of a diameter in mm. Source: geometry.

    >>> round(second_moment(25))
    19175
    """
    return math.pi * diameter**4 / 64


def bowing_factor(thrust: float, buckling: float) -> float:
    """How many times a thrust grows bow and deflection: 1/(1 − F/P_cr). NoAnswer from the buckling force upward.

    Forces in one unit. Source: beam-column theory.

    >>> round(bowing_factor(1000, 2945), 3)
    1.514
    """
    if thrust >= buckling:
        raise NoAnswer("the thrust is as great as the buckling force")
    return 1 / (1 - thrust / buckling)


def shear_fraction(length: float, diameter: float, ends: Ends) -> float:
    """Deflection by shear as a share of the deflection by bending, for wood (E/G about 16; 10 to 25).

    Lengths in one unit. Derived; not checked numerically.

    >>> round(shear_fraction(250, 25, "pinned-pinned"), 3)
    0.133
    """
    return SHEAR_SHARE[ends] * (diameter / length) ** 2


def whirl_shear_factor(ratio: float) -> float | None:
    """What shear leaves of the whirling speed at a length over diameter: 0.98, 0.95, 0.92, 0.83 at 15, 10, 8, 5.

    Straight lines between, toward 1 as (D/L)² beyond 15; None below 5, where it is not carried on. Both ends pinned;
    from memory.

    >>> round(whirl_shear_factor(9), 3)
    0.935
    """
    if ratio < SHORTEST_WHIRL:
        return None
    last, factor = _WHIRL_SHEAR[-1]
    if ratio >= last:
        return 1 - (1 - factor) * (last / ratio) ** 2
    for (left, low), (right, high) in itertools.pairwise(_WHIRL_SHEAR):
        if ratio <= right:
            return low + (high - low) * (ratio - left) / (right - left)
    return factor


@figure(
    title="thrust at which the bar buckles",
    symbol="F_cr",
    equation="π²·E·I/(K·L)²",
    unit="N",
    grade=Grade.CALCULATED,
    sources=("theory-of-elastic-stability",),
    valid="length / diameter above 8; straight bar",
    section="2.4",
    symbols={"modulus": "E", "length": "L", "end_factor": "K", "second_moment": "I"},
    also=lambda diameter, **_: {"second_moment": (second_moment(diameter), "mm⁴")},
)
def buckling_force(diameter: mm, length: mm, modulus: GPa, end_factor: positive = 1.0) -> float:
    """Thrust at which a slender round bar bows without limit (Euler).

    Formula  F_cr = π²·E·I/(K·L)², I = π·D⁴/64
    Inputs   diameter mm of the thinnest finished section, length mm, modulus GPa along the grain (lower 5 % value for a
             limit), end_factor K: 1 between centers, 0.8 chuck and tail (theory 0.699), 2 without a tail
    Gives    N
    Valid    straight bar, length over diameter above 8
    Errors   no answer for a shorter bar: the wood crushes first
    Source   Timoshenko, Theory of Elastic Stability

    >>> round(buckling_force(diameter=25, length=900, modulus=12.6))
    2944
    """
    if length < SHORTEST_COLUMN * diameter:
        raise NoAnswer(f"below length / diameter {SHORTEST_COLUMN:g} the wood crushes before it bows")
    return math.pi**2 * modulus * _MPA_PER_GPA * second_moment(diameter) / (end_factor * length) ** 2


def mean_stress(thrust: float, diameter: float) -> float:
    """Mean compression in MPa of a round section of `diameter` mm under `thrust` N: F/A. Source: statics.

    >>> round(mean_stress(1000, 25), 2)
    2.04
    """
    return thrust / (math.pi / 4 * diameter**2)


@figure(
    title="deflection of a round bar",
    symbol="δ",
    equation="F·L³/(48·E·I)",
    unit="mm",
    grade=Grade.CALCULATED,
    sources=("roark",),
    valid="uniform bar, small deflection, shear left out (wood: see the shear share)",
    section="3",
    symbols={"force": "F", "length": "L", "modulus": "E", "second_moment": "I"},
    forms=lambda inputs: f"F·L³/({BEND_DIVISOR[inputs['ends']]}·E·I)",
    also=lambda diameter, length, ends, **_: {
        "second_moment": (second_moment(diameter), "mm⁴"),
        "shear_share": (shear_fraction(length, diameter, ends), ""),
    },
)
def deflection(force: N, diameter: mm, length: mm, modulus: GPa, ends: Ends) -> float:
    """How far a round bar gives at mid-span under a side force there; with `free`, at its loaded free end.

    Formula  δ = F·L³/(c·E·I), I = π·D⁴/64, c = 48, 768/7, 192, 3
    Inputs   force N, diameter mm, length mm, modulus GPa, ends pinned-pinned, fixed-pinned, fixed-fixed or free
    Gives    mm; `shear_share` is what shear adds to it in wood, as a share
    Valid    uniform bar, shear left out; fixed-pinned gives 2.2 % more at its worst place than at mid-span
    Source   Roark's Formulas for Stress and Strain

    >>> round(deflection(force=50, diameter=25, length=900, modulus=12.6, ends="pinned-pinned"), 2)
    3.14
    """
    return force * length**3 / (_BEND[ends] * modulus * _MPA_PER_GPA * second_moment(diameter))


def even_diameter(profile: Sequence[tuple[float, float]], ends: Ends) -> float:
    """Diameter in mm of the even bar that gives as much under a side push as a profile does at its worst place.

    δ = ∫ M²/(E·I) dx for a push of one: anywhere along a bar held at both ends (taken as pinned), at the loose end of
    one held at one end only, whichever end that is. Source: bending theory (unit load).

    >>> round(even_diameter([(0, 25), (900, 25)], "pinned-pinned"), 3)
    25.0
    """
    start, length = profile[0][0], profile[-1][0] - profile[0][0]
    soft = []
    for (before, first), (after, last) in itertools.pairwise(profile):
        for part in range(SLICES):
            for at, weight in GAUSS:
                middle = (part + at) / SLICES
                place = (before - start + (after - before) * middle) / length
                give = (after - before) / SLICES / length * weight / (first + (last - first) * middle) ** 4
                soft.append((place, give))
    if ends == "free":
        given = max(sum(x**2 * give for x, give in soft), sum((1 - x) ** 2 * give for x, give in soft))
        return math.sqrt(math.sqrt(1 / 3 / given))
    pushes = [place / PUSHES for place in range(1, PUSHES)]
    given = max(sum((min(x, a) * (1 - max(x, a))) ** 2 * give for x, give in soft) for a in pushes)
    return math.sqrt(math.sqrt(1 / 48 / given))


def _require_slender(length: float, diameter: float, ends: Ends) -> None:
    least = SHORTEST_WHIRL / (2 if ends == "free" else 1)  # a bar free at one end swings like half of a pinned one
    if length < least * diameter:
        raise NoAnswer(f"below length / diameter {least:g} the bar is too stubby for bending alone")


def _whirl_parts(diameter: float, length: float, modulus: float, ends: Ends, **_: Any) -> Also:
    factor = LENGTH_FACTOR[ends]
    return {
        "end_number": (WHIRL_NUMBER[ends], ""),
        "true_buckling_force": (
            math.pi**2 * modulus * _MPA_PER_GPA * second_moment(diameter) / (factor * length) ** 2,
            "N",
        ),
    }


@figure(
    title="first whirling speed of a round bar",
    symbol="n_c",
    equation="(30/π)·(b/L²)·(D/4)·√(E/ρ)·√(1 − F/P_cr)",
    unit="rpm",
    grade=Grade.CALCULATED,
    sources=("beam-vibration",),
    valid="uniform bar; length / diameter above 15, the shear factor below that, nothing below 5 (2.5 for free)",
    section="3",
    symbols={
        "diameter": "D",
        "length": "L",
        "modulus": "E",
        "density": "ρ",
        "thrust": "F",
        "end_number": "b",
        "true_buckling_force": "P_cr",
    },
    also=_whirl_parts,
)
def whirl_speed(diameter: mm, length: mm, modulus: GPa, density: kg_per_m3, ends: Ends, thrust: N = 0.0) -> float:
    """Speed at which a uniform round bar begins to whip.

    Formula  n_c = (30/π)·(b/L²)·(D/4)·√(E/ρ)·√(1 − F/P_cr), b = 9.870, 15.418, 22.373, 3.516
    Inputs   diameter mm, length mm, modulus GPa, density kg/m³ at the actual moisture, ends pinned-pinned,
             fixed-pinned, fixed-fixed or free, thrust N
    Gives    rpm
    Valid    shear left out: multiply by the shear factor below length over diameter 15
    Errors   no answer from the buckling force upward, and for a stubby bar
    Source   Timoshenko, Vibration Problems in Engineering; buckling of those very ends (length factor 1, 0.699, 0.5, 2)

    >>> round(whirl_speed(diameter=25, length=900, modulus=12.6, density=705, ends="pinned-pinned"))
    3074
    """
    _require_slender(length, diameter, ends)
    buckling = _whirl_parts(diameter, length, modulus, ends)["true_buckling_force"][0]
    if thrust >= buckling:
        raise NoAnswer("the thrust is as great as the buckling force: the bar bows away at any speed")
    wave = diameter / 4000 * math.sqrt(modulus * 1e9 / density)
    shape = WHIRL_NUMBER[ends] / (length / 1000) ** 2
    return per_minute(shape * wave * math.sqrt(1 - thrust / buckling))


def _checked_profile(profile: Sequence[tuple[float, float]]) -> tuple[float, float]:
    """Length and greatest diameter in mm of a profile that makes sense."""
    if not 2 <= len(profile) <= MOST_PROFILE_PAIRS:
        raise FigureInputError("profile", f"{len(profile)} pairs", f"2 to {MOST_PROFILE_PAIRS} pairs position:diameter")
    for (before, _), (after, _) in itertools.pairwise(profile):
        if after < before:
            raise FigureInputError("profile", after, "positions that never go back; the same one twice is a step")
    thinnest = min(diameter for _, diameter in profile)
    if thinnest < 1e-3:
        raise FigureInputError("profile", thinnest, "diameters from 0.001 mm")
    length = profile[-1][0] - profile[0][0]
    if length < 1e-3:
        raise FigureInputError("profile", length, "a length from 0.001 mm between the first and the last position")
    return length, max(diameter for _, diameter in profile)


def _mean_diameter(profile: Sequence[tuple[float, float]], length: float) -> float:
    pairs = itertools.pairwise(profile)
    return sum((after - before) * (first + last) / 2 for (before, first), (after, last) in pairs) / length


@figure(
    title="first whirling speed of a profile",
    symbol="n_c",
    equation="(30/π)·√(least ω² of (E·I(x)·y'')'' + F·y'' = ω²·ρ·A(x)·y)",
    unit="rpm",
    grade=Grade.CALCULATED,
    sources=("beam-vibration",),
    valid="round bar of any profile, no shear; mean length / diameter from 5 (2.5 for free)",
    section="3",
    symbols={"modulus": "E", "density": "ρ", "thrust": "F"},
)
def profile_whirl_speed(
    profile: profile_pairs, modulus: GPa, density: kg_per_m3, ends: Ends, thrust: N = 0.0
) -> float:
    """Speed at which a stepped, tapered or coved bar begins to whip.

    Formula  least ω² of (E·I(x)·y'')'' + F·y'' = ω²·ρ·A(x)·y, by Hermite beam elements
    Inputs   profile as pairs position:diameter in mm (straight between, the same position twice is a step),
             modulus GPa, density kg/m³, ends (the fixed end is the first position), thrust N
    Gives    rpm
    Valid    no shear, no rotary inertia; a uniform bar of the smallest diameter is not a safe stand-in
    Errors   no answer from the buckling force upward and for a stubby bar; positions that go back are refused
    Source   beam vibration theory (Timoshenko, Vibration Problems in Engineering)

    >>> lump = [(0, 16), (275, 16), (275, 60), (325, 60), (325, 16), (600, 16)]
    >>> round(profile_whirl_speed(profile=lump, modulus=12, density=700, ends="pinned-pinned"))
    2724
    """
    length, thickest = _checked_profile(profile)
    _require_slender(length, _mean_diameter(profile, length), ends)
    start = profile[0][0]
    shape = [((position - start) / length, diameter / thickest) for position, diameter in profile]
    push = thrust * length**2 / (modulus * _MPA_PER_GPA * second_moment(thickest))
    least = least_frequency(shape, push, HELD[ends])
    if least is None:
        raise NoAnswer("the thrust is as great as the buckling force: the bar bows away at any speed")
    wave = thickest / 4000 * math.sqrt(modulus * 1e9 / density) / (length / 1000) ** 2
    return per_minute(math.sqrt(least) * wave)
