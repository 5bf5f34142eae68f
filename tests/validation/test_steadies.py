"""A bar with a steady, or heavier than its profile, against the closed forms of spans that swing alike."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
from scipy.optimize import brentq

from advisor.physics import slender
from advisor.physics.steadied import supported_whirl_speed

SOURCES = ("beam-vibration",)
EVEN = [(0.0, 25.0), (900.0, 25.0)]


def plain(length: float, ends: slender.Ends = "pinned-pinned") -> float:
    """rpm of an even bar 25 mm thick: b²/(2π·L²)·(D/4)·√(E/ρ)·60, b from the frequency equation of the ends."""
    root = {"pinned-pinned": math.pi, "fixed-pinned": brentq(lambda b: math.tan(b) - math.tanh(b), 3.6, 4.2)}[ends]
    speed = root**2 * 0.025 / 4 * math.sqrt(12e9 / 700) / (length / 1000) ** 2
    return float(speed * 60 / math.tau)


def two_spans(first: float, second: float) -> float:
    """Lowest frequency of a bar on three knife edges: the moments of both spans at the middle one turn it alike."""

    def miss(b: float) -> float:
        return sum(1 / math.tan(b * span) - 1 / math.tanh(b * span) for span in (first, second))

    # between the frequencies of the longer span pinned and of the shorter one pinned the sum of both runs from +∞ to -∞
    longer, shorter = max(first, second), min(first, second)
    low, high = math.pi / longer, math.pi / shorter
    steps = np.linspace(low + 1e-9, min(high, 2 * low) - 1e-9, 400)
    for before, after in pairwise(steps):
        if miss(before) > 0 >= miss(after):
            root = brentq(miss, before, after)
            return float(root**2 * 0.025 / 4 * math.sqrt(12e9 / 700) * 60 / math.tau * 1e6)
    raise AssertionError("no root")


def test_steady_in_the_middle_makes_two_bars_of_half_the_length() -> None:
    found = supported_whirl_speed(EVEN, 12, 700, "pinned-pinned", 0, steady=450)
    assert found == pytest.approx(plain(450), rel=1e-4)


def test_steady_holds_the_axis_and_lets_it_turn() -> None:
    """Both ends fixed: the lowest shape is lopsided, each half fixed at one end and pinned at the steady."""
    found = supported_whirl_speed(EVEN, 12, 700, "fixed-fixed", 0, steady=450)
    assert found == pytest.approx(plain(450, "fixed-pinned"), rel=1e-4)


@pytest.mark.parametrize("place", [200.0, 317.3, 400.0, 583.0, 650.0])
def test_steady_off_the_middle(place: float) -> None:
    found = supported_whirl_speed(EVEN, 12, 700, "pinned-pinned", 0, steady=place)
    assert found == pytest.approx(two_spans(place, 900 - place), rel=2e-3)


def test_steady_counts_from_the_same_zero_as_the_profile() -> None:
    shifted = [(at + 130.0, diameter) for at, diameter in EVEN]
    found = supported_whirl_speed(shifted, 12, 700, "pinned-pinned", 0, steady=447.3)
    assert found == pytest.approx(supported_whirl_speed(EVEN, 12, 700, "pinned-pinned", 0, steady=317.3), rel=1e-9)


@pytest.mark.parametrize("place", [150.0, 333.0, 700.0])
def test_steady_may_stand_anywhere_on_a_taper(place: float) -> None:
    """The pair that the steady needs lies on the straight line between its neighbors: written out, nothing changes."""
    taper = [(100.0, 40.0), (500.0, 20.0), (800.0, 30.0)]
    diameter = float(np.interp(place, [at for at, _ in taper], [wide for _, wide in taper]))
    written = sorted([*taper, (place, diameter)])
    found = supported_whirl_speed(taper, 12, 700, "fixed-pinned", 50, steady=place)
    assert found == pytest.approx(supported_whirl_speed(written, 12, 700, "fixed-pinned", 50, steady=place), rel=1e-9)


def test_steady_on_a_step_is_that_on_either_side_of_it() -> None:
    step = [(0.0, 40.0), (300.0, 40.0), (300.0, 20.0), (700.0, 20.0)]
    found = [supported_whirl_speed(step, 12, 700, "pinned-pinned", 0, steady=at) for at in (299.9, 300.0, 300.1)]
    assert found == pytest.approx([found[1]] * 3, rel=2e-3)


def test_thrust_slows_each_half_as_it_does_a_bar_of_its_length() -> None:
    """√(1 − F/P), P of half the length: exact for pinned bars, whose bending and swinging shapes are the same."""
    buckling = math.pi**2 * 12000 * math.pi * 25**4 / 64 / 450**2
    found = supported_whirl_speed(EVEN, 12, 700, "pinned-pinned", 0.6 * buckling, steady=450)
    assert found == pytest.approx(plain(450) * math.sqrt(0.4), rel=1e-4)


def test_bar_twice_as_heavy_as_it_is_thick_swings_half_as_fast() -> None:
    """A mass four times as great under the same stiffness."""
    found = supported_whirl_speed(EVEN, 12, 700, "pinned-pinned", 0, heavy=50)
    assert found == pytest.approx(plain(900) / 2, rel=1e-4)
