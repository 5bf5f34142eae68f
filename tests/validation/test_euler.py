"""Buckling against the forms in which books print Euler: by slenderness, by end conditions, by energy.

Timoshenko, Theory of Elastic Stability: σ_cr = π²·E/(K·L/r)², K = 1, 0.699, 0.5, 2; a sine half-wave makes the work of
the thrust and the bending energy equal.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy.integrate import trapezoid

from advisor.figure import NoAnswer
from advisor.physics import slender

SOURCES = ("theory-of-elastic-stability",)
BARS = [(25.0, 900.0, 12.6), (12.0, 600.0, 9.0), (38.0, 1200.0, 7.5)]


@pytest.mark.parametrize(("diameter", "length", "modulus"), BARS)
def test_by_slenderness(diameter: float, length: float, modulus: float) -> None:
    """The radius of gyration of a round is a quarter of its diameter."""
    stress = np.pi**2 * modulus * 1000 / (length / (diameter / 4)) ** 2
    found = slender.buckling_force(diameter=diameter, length=length, modulus=modulus)
    assert found == pytest.approx(stress * np.pi * diameter**2 / 4)


@pytest.mark.parametrize(("factor", "times"), [(0.5, 4.0), (2.0, 0.25), (0.699, 2.0466)])
def test_by_the_ends(factor: float, times: float) -> None:
    """Fixed ends carry four times as much, a flagpole a quarter, fixed and pinned 20.19/π² times as much."""
    pinned = slender.buckling_force(diameter=25, length=900, modulus=12.6)
    assert slender.buckling_force(diameter=25, length=900, modulus=12.6, end_factor=factor) == pytest.approx(
        times * pinned, rel=1e-3
    )


@pytest.mark.parametrize(("diameter", "length", "modulus"), BARS)
def test_by_energy(diameter: float, length: float, modulus: float) -> None:
    x = np.linspace(0, length, 20001)
    slope = np.pi / length * np.cos(np.pi * x / length)
    bend = (np.pi / length) ** 2 * np.sin(np.pi * x / length)
    stiff = modulus * 1000 * np.pi * diameter**4 / 64
    thrust = stiff * trapezoid(bend**2, x) / trapezoid(slope**2, x)
    assert slender.buckling_force(diameter=diameter, length=length, modulus=modulus) == pytest.approx(thrust, rel=1e-6)


def test_a_stubby_bar_is_crushed_before_it_bows() -> None:
    with pytest.raises(NoAnswer, match="crushes before"):
        slender.buckling_force(diameter=25, length=190, modulus=12)
