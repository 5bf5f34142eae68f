"""Whirl of a bar with a steady somewhere along it, or not yet cut to its profile."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from advisor.figure import NoAnswer
from advisor.physics.balance import per_minute
from advisor.physics.beam import elements, least_frequency
from advisor.physics.slender import HELD, Ends, second_moment
from advisor.quantity import FigureInputError

Profile = Sequence[tuple[float, float]]


def _with_node(profile: Profile, place: float) -> list[tuple[float, float]]:
    """The profile with a pair at `place`, so that a beam element ends there."""
    found = [profile[0]]
    for (before, first), (after, last) in pairwise(profile):
        if before < place < after:
            found.append((place, first + (last - first) * (place - before) / (after - before)))
        found.append((after, last))
    return found


def _node(shape: Profile, place: float) -> int:
    """Number of the beam node nearest to `place`, a share of the length."""
    ends, reached = [0.0], 0.0
    for length, _, _ in elements(shape):
        reached += length
        ends.append(reached)
    return min(range(len(ends)), key=lambda node: abs(ends[node] - place))


def supported_whirl_speed(
    profile: Profile,
    modulus: float,
    density: float,
    ends: Ends,
    thrust: float,
    steady: float | None = None,
    heavy: float | None = None,
) -> float:
    """Speed in rpm at which a bar begins to whip, with a steady along it, or heavier than its profile says.

    Least ω² of (E·I(x)·y'')'' + F·y'' = ω²·ρ·A(x)·y by the Hermite elements of `profile-whirl-speed`; y = 0 at the
    steady, which holds the axis and lets it turn. `profile` pairs position, diameter in mm; modulus GPa, density
    kg/m³, thrust N; `steady` mm on the scale of the positions; `heavy` mm, the bar that the profile is still to be
    cut from, whose mass is there and whose stiffness may be gone. No shear. Raises NoAnswer where the thrust bends the
    bar out, FigureInputError for a steady that is not between the ends. Source: beam vibration theory.

    >>> round(supported_whirl_speed([(0, 25), (900, 25)], 12.6, 705, "pinned-pinned", 0.0, 450) / 3074, 2)
    4.0
    >>> round(supported_whirl_speed([(0, 25), (900, 25)], 12.6, 705, "pinned-pinned", 0.0, heavy=50) / 3074, 2)
    0.5
    """
    start, end = profile[0][0], profile[-1][0]
    if steady is not None and not start < steady < end:
        raise FigureInputError("steady", steady, f"a place between {start:g} and {end:g} mm")
    length, thickest = end - start, max(diameter for _, diameter in profile)
    points = profile if steady is None else _with_node(profile, steady)
    shape = [((at - start) / length, diameter / thickest) for at, diameter in points]
    push = thrust * length**2 / (modulus * 1000 * second_moment(thickest))
    held = HELD[ends] if steady is None else (*HELD[ends], 2 * _node(shape, (steady - start) / length))
    least = least_frequency(shape, push, held, None if heavy is None else heavy / thickest)
    if least is None:
        raise NoAnswer("the thrust is as great as the buckling force: the bar bows away at any speed")
    return per_minute(math.sqrt(least) * thickest / 4000 * math.sqrt(modulus * 1e9 / density) / (length / 1000) ** 2)
