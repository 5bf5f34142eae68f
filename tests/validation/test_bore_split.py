"""The end of a tube opened from inside, against the shell of the textbooks taken another way."""

import math

import pytest

from advisor.physics.tail import bore_split_capacity

SOURCES = ("bore-model",)


def by_plates(diameter: float, wall: float, tension: float) -> float:
    """Ring load Q at the end: w = Q/(2·β³·B), B = E·t³/(12·(1 − ν²)), hoop stress E·w/R; half the ring pulls 2·R·Q."""
    radius, modulus, poisson = (diameter - wall) / 2, 1000.0, 0.3
    plate = modulus * wall**3 / (12 * (1 - poisson**2))
    decay = math.pow(modulus * wall / (4 * radius**2 * plate), 0.25)
    stress_of_one = modulus * (1 / (2 * decay**3 * plate)) / radius
    return 2 * radius * tension / stress_of_one


@pytest.mark.parametrize(("diameter", "wall", "tension"), [(90, 12, 3.0), (16, 2, 2.0), (300, 8, 40.0)])
def test_it_is_the_shell(diameter: float, wall: float, tension: float) -> None:
    assert bore_split_capacity(diameter, wall, tension) == pytest.approx(by_plates(diameter, wall, tension))


def test_it_grows_with_wall_size_and_strength() -> None:
    base = bore_split_capacity(80, 6, 3)
    assert bore_split_capacity(80, 7, 3) > base
    assert bore_split_capacity(90, 6, 3) > base
    assert bore_split_capacity(80, 6, 6) == pytest.approx(2 * base)
    assert bore_split_capacity(80, 0, 3) == 0.0
    assert math.isfinite(bore_split_capacity(5, 10, 3))
