"""The share of the opening force left to a short piece, against the beam itself solved in small steps."""

import math

import numpy as np
import pytest

from advisor.physics.tail import HALF_ROUND, short_split_share


def solved(reach: float, steps: int = 200) -> float:
    """k·y(0)/(2·P·λ) turned about, of a free beam with λ·L = `reach` loaded at its end, by finite differences."""
    h = reach / steps
    points = steps + 5  # two beyond either end
    matrix, load = np.zeros((points, points)), np.zeros(points)
    for row, place in enumerate(range(2, points - 2)):  # y'''' + 4·y = 0
        matrix[row, place - 2 : place + 3] = np.array([1, -4, 6, -4, 1]) / h**4
        matrix[row, place] += 4
    ends = points - 4
    for at, place in ((ends, 2), (ends + 2, points - 3)):
        matrix[at, place - 1 : place + 2] = np.array([1, -2, 1]) / h**2  # no bending at the end
        matrix[at + 1, place - 2 : place + 3] = np.array([-0.5, 1, 0, -1, 0.5]) / h**3  # shear
    load[ends + 1] = 4 / 2  # the load that opens the endless beam by 1
    return 1 / float(np.linalg.solve(matrix, load)[2])


@pytest.mark.parametrize("reach", [0.2, 0.7, 1.5, 2.0, 3.0, 5.0])
def test_it_is_the_beam_of_that_length(reach: float) -> None:
    radius = math.pow(HALF_ROUND, -0.25)  # λ = 1/mm
    assert short_split_share(2 * radius, reach) == pytest.approx(solved(reach), rel=2e-3)


def test_halves_that_stay_straight() -> None:
    """σ = 4·S/(D·L): half of x."""
    radius = math.pow(HALF_ROUND, -0.25)
    assert short_split_share(2 * radius, 0.01) == pytest.approx(0.005, rel=1e-4)


@pytest.mark.parametrize("length", [1000.0, 173.0, 172.0])
def test_a_long_piece_keeps_all(length: float) -> None:
    assert short_split_share(60.0, length) == pytest.approx(1.0, abs=1e-6)


@pytest.mark.parametrize("length", [0.0, -3.0])
def test_where_nothing_is_left_of_the_length(length: float) -> None:
    assert short_split_share(60.0, length) == 0.0


def test_longer_is_never_weaker_and_never_more_than_all() -> None:
    shares = [short_split_share(50.0, length / 4) for length in range(1, 700)]
    assert shares == sorted(shares)
    assert max(shares) <= 1.0
