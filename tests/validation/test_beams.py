"""Bars against transfer matrices and direct integration, built here with scipy and nothing of the program.

A bar is cut into short uniform pieces; the state (deflection, slope, moment, shear) is carried along by the matrix
exponential of the exact equations, and the frequency or thrust is where the end conditions can be met.
Compared: `buckling-force`, `deflection`, `whirl-speed`, `profile-whirl-speed`.
"""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.linalg import expm
from scipy.optimize import brentq

from advisor.figure import NoAnswer
from advisor.physics import slender
from advisor.physics.steadied import supported_whirl_speed

SOURCES = ("theory-of-elastic-stability", "beam-vibration", "roark")
Profile = list[tuple[float, float]]
PIECES = 60  # of a tapered stretch
# Which entries of the state (deflection, slope, moment, shear) are zero at an end.
PINNED, FIXED, FREE = (0, 2), (0, 1), (2, 3)
ENDS: dict[slender.Ends, tuple[tuple[int, int], tuple[int, int]]] = {
    "pinned-pinned": (PINNED, PINNED),
    "fixed-pinned": (FIXED, PINNED),
    "fixed-fixed": (FIXED, FIXED),
    "free": (FIXED, FREE),
}
PROFILES: dict[str, Profile] = {
    "uniform": [(0, 25), (900, 25)],
    "thick middle": [(0, 16), (275, 16), (275, 60), (325, 60), (325, 16), (600, 16)],
    "thin middle": [(0, 38), (150, 38), (150, 22), (450, 22), (450, 38), (600, 38)],
    "taper": [(0, 40), (700, 20)],
    "spindle": [(0, 20), (350, 60), (700, 20)],
    "waist": [(0, 50), (300, 15), (600, 50)],
    "stair": [(0, 50), (200, 50), (200, 35), (400, 35), (400, 20), (600, 20)],
    "thick end": [(0, 60), (100, 60), (100, 18), (700, 18)],
    "far knob": [(0, 18), (600, 18), (600, 50), (700, 50)],
    "legs": [(100, 45), (180, 45), (180, 30), (500, 18), (520, 28), (800, 22)],
}


def pieces(profile: Profile) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Lengths and diameters in m of uniform pieces."""
    lengths: list[float] = []
    diameters: list[float] = []
    for (start, first), (end, last) in pairwise(profile):
        count = 1 if first == last else PIECES
        if end > start:
            lengths += [(end - start) / count / 1000] * count
            diameters += [(first + (last - first) * (place + 0.5) / count) / 1000 for place in range(count)]
    return np.array(lengths), np.array(diameters)


def misfit(
    profile: Profile,
    modulus: float,
    density: float,
    ends: slender.Ends,
    thrust: float,
    speed: float,
    bar: float | None = None,
) -> float:
    """Determinant that is zero where the end conditions can be met; modulus GPa, speed rad/s; `bar` mm is the bar whose
    mass is still there."""
    lengths, diameters = pieces(profile)
    stiff = modulus * 1e9 * math.pi * diameters**4 / 64
    heavy = density * math.pi * (diameters if bar is None else np.full_like(diameters, bar / 1000)) ** 2 / 4
    unit = stiff.max()  # moment and shear are carried over this, to keep the numbers of one size
    steps = np.zeros((len(lengths), 4, 4))
    steps[:, 0, 1] = 1
    steps[:, 1, 2] = unit / stiff
    steps[:, 2, 3] = 1
    steps[:, 2, 1] = -thrust / unit
    steps[:, 3, 0] = heavy * speed**2 / unit
    whole = np.eye(4)
    for step in expm(steps * lengths[:, None, None]):
        whole = step @ whole
    start, end = ENDS[ends]
    loose = [entry for entry in range(4) if entry not in start]
    return float(np.linalg.det(whole[np.ix_(list(end), loose)]))


def first_root(
    profile: Profile, modulus: float, density: float, ends: slender.Ends, thrust: float, bar: float | None = None
) -> float:
    """Lowest whirling speed in rpm, found by going up from standing still."""

    def miss(speed: float) -> float:
        return misfit(profile, modulus, density, ends, thrust, speed, bar)

    before = 20.0
    while True:
        after = before * 1.15
        if miss(before) * miss(after) < 0:
            return float(brentq(miss, before, after, rtol=1e-9)) * 30 / math.pi
        before = after


@pytest.mark.parametrize("ends", list(ENDS))
@pytest.mark.parametrize("name", list(PROFILES))
def test_profile_whirls_as_the_transfer_matrix_says(name: str, ends: slender.Ends) -> None:
    found = slender.profile_whirl_speed(profile=PROFILES[name], modulus=12, density=700, ends=ends)
    assert found == pytest.approx(first_root(PROFILES[name], 12, 700, ends, 0.0), rel=1e-3)


@pytest.mark.parametrize("name", ["thin middle", "waist", "far knob"])
def test_a_bar_on_the_way_to_its_profile_has_the_mass_of_the_bar(name: str) -> None:
    profile = PROFILES[name]
    found = supported_whirl_speed(profile, 12, 700, "pinned-pinned", 100, heavy=60)
    assert found == pytest.approx(first_root(profile, 12, 700, "pinned-pinned", 100.0, bar=60), rel=1e-3)


def test_a_neck_gives_like_the_even_bar_of_the_same_deflection() -> None:
    """A push in the middle: ∫ (x/2)²/I dx over both halves of 250 mm of 25, 100 mm of 12, 250 mm of 25."""
    outer, inner = (250.0**3) / 12 / 25**4, (300.0**3 - 250.0**3) / 12 / 12**4
    even = (600.0**3 / 48 / (2 * (outer + inner))) ** 0.25
    neck = [(0.0, 25.0), (250.0, 25.0), (250.0, 12.0), (350.0, 12.0), (350.0, 25.0), (600.0, 25.0)]
    assert slender.even_diameter(neck, "pinned-pinned") == pytest.approx(even)
    loose = [(0.0, 12.0), (100.0, 12.0), (100.0, 25.0), (400.0, 25.0)]
    by_hand = ((400.0**3 - 300.0**3) / 3 / 12**4 + 300.0**3 / 3 / 25**4) * 3 / 400.0**3
    assert slender.even_diameter(loose, "free") == pytest.approx(by_hand**-0.25)


@pytest.mark.parametrize("ends", ["pinned-pinned", "fixed-pinned"])
@pytest.mark.parametrize("name", ["uniform", "thick middle", "taper", "stair"])
def test_thrust_in_a_profile(name: str, ends: slender.Ends) -> None:
    found = slender.profile_whirl_speed(profile=PROFILES[name], modulus=12, density=700, ends=ends, thrust=700)
    assert found == pytest.approx(first_root(PROFILES[name], 12, 700, ends, 700.0), rel=1e-3)


@pytest.mark.parametrize("ends", list(ENDS))
def test_uniform_bar_whirls_as_the_transfer_matrix_says(ends: slender.Ends) -> None:
    found = slender.whirl_speed(diameter=25, length=900, modulus=12.6, density=705, ends=ends)
    assert found == pytest.approx(first_root([(0, 25), (900, 25)], 12.6, 705, ends, 0.0), rel=1e-3)


@pytest.mark.parametrize(("ends", "factor"), [("pinned-pinned", 1.0), ("fixed-fixed", 0.5), ("free", 2.0)])
def test_bar_buckles_where_the_ends_can_be_met_without_turning(ends: slender.Ends, factor: float) -> None:
    bar: Profile = [(0, 25), (900, 25)]
    found = slender.buckling_force(diameter=25, length=900, modulus=12.6, end_factor=factor)
    # from one side of the first root to the other; the determinant touches zero at no thrust
    low, high = 0.6 * found, 1.4 * found
    root = brentq(lambda thrust: misfit(bar, 12.6, 705, ends, thrust, 0.0), low, high, rtol=1e-9)
    assert found == pytest.approx(root, rel=1e-4)
    with pytest.raises(NoAnswer):
        slender.profile_whirl_speed(profile=bar, modulus=12.6, density=705, ends=ends, thrust=1.002 * root)
    assert slender.profile_whirl_speed(profile=bar, modulus=12.6, density=705, ends=ends, thrust=0.998 * root) < 400


@pytest.mark.parametrize("ends", list(ENDS))
def test_deflection_by_integrating_the_moment(ends: slender.Ends) -> None:
    """Moment linear on both sides of the load, twice integrated; four constants from the ends, load 60 N."""
    force, length, stiff = 60.0, 0.8, 11e9 * math.pi * 0.03**4 / 64
    place = length if ends == "free" else length / 2

    def state(x: float) -> NDArray[np.float64]:
        """Rows deflection, slope, moment, shear; columns the constants and the load's own part."""
        past = max(x - place, 0.0)
        return np.array(
            [
                [1, x, x**2 / 2 / stiff, x**3 / 6 / stiff, force * past**3 / 6 / stiff],
                [0, 1, x / stiff, x**2 / 2 / stiff, force * past**2 / 2 / stiff],
                [0, 0, 1, x, force * past],
                [0, 0, 0, 1, force if x >= place else 0.0],
            ]
        )

    start, end = ENDS[ends]
    rows = np.vstack([state(0.0)[list(start)], state(length)[list(end)]])
    constants = np.linalg.solve(rows[:, :4], -rows[:, 4])
    expected = abs(float(state(place)[0, :4] @ constants)) * 1000
    found = slender.deflection(force=60, diameter=30, length=800, modulus=11, ends=ends)
    assert found == pytest.approx(expected, rel=1e-6)


def test_shear_share_of_the_middle_of_a_pinned_bar() -> None:
    """Timoshenko beam: shear adds F·L/(4·κ·G·A) at mid-span, κ 0.9 for a round section, E/G 16 for wood.

    The share used is a little below that of κ 5/6 and of κ 0.9 alike within a tenth.
    """
    length, diameter, modulus = 300.0, 30.0, 12000.0
    area = math.pi * diameter**2 / 4
    bend = length**3 / (48 * modulus * slender.second_moment(diameter))
    shear = length / (4 * 0.9 * modulus / 16 * area)
    assert slender.shear_fraction(length, diameter, "pinned-pinned") == pytest.approx(shear / bend, rel=0.12)
