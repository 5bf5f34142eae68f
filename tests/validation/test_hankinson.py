"""Strength at an angle to the grain against the forms in which Hankinson is printed.

Wood Handbook, chapter 5: N = P·Q/(P·sin²θ + Q·cos²θ). In flexibilities that is a straight line in sin²θ: 1/N runs from
1/P along the grain to 1/Q across it, so that 45° lies at the harmonic mean.
"""

from __future__ import annotations

import numpy as np
import pytest

from advisor.physics.relations import grain_angle_strength

SOURCES = ("wood-handbook-5",)
WOODS = [(54.0, 10.1), (7410.0, 1160.0), (30.0, 2.6)]


@pytest.mark.parametrize(("along", "across"), WOODS)
def test_its_inverse_is_a_straight_line_in_the_square_of_the_sine(along: float, across: float) -> None:
    angles = np.linspace(0, 90, 19)
    found = [1 / grain_angle_strength(parallel=along, perpendicular=across, angle=float(angle)) for angle in angles]
    line = np.interp(np.sin(np.radians(angles)) ** 2, [0, 1], [1 / along, 1 / across])
    assert found == pytest.approx(list(line))


@pytest.mark.parametrize(("along", "across"), WOODS)
def test_halfway_it_is_the_harmonic_mean(along: float, across: float) -> None:
    found = grain_angle_strength(parallel=along, perpendicular=across, angle=45)
    assert found == pytest.approx(2 / (1 / along + 1 / across))


@pytest.mark.parametrize(("along", "across"), WOODS)
def test_it_falls_all_the_way_from_along_to_across(along: float, across: float) -> None:
    found = [grain_angle_strength(parallel=along, perpendicular=across, angle=angle) for angle in range(0, 91, 5)]
    assert found == sorted(found, reverse=True)
    assert [found[0], found[-1]] == pytest.approx([along, across])
