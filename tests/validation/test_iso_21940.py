"""ISO 21940-11: permissible residual offset of the balance quality grades, as commonly tabled from the standard.

Compared: `balance-grade`, `permissible-offset`, `unbalance-force`, `counterweight`.
"""

from __future__ import annotations

import math

import pytest

from advisor.physics import balance

SOURCES = ("iso-21940-11", "dynamics")
GRADES = (0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000)
# (grade mm/s, rpm, permissible offset g·mm/kg); 9549·G/n with 9549 = 60000/2π
TABLE = [(6.3, 3000, 20.05), (40, 1000, 382.0), (2.5, 3000, 7.96), (16, 1500, 101.9), (1, 10000, 0.955)]


@pytest.mark.parametrize(("grade", "rpm", "offset"), TABLE)
def test_permissible_offset(grade: float, rpm: float, offset: float) -> None:
    assert balance.permissible_offset(grade=grade, rpm=rpm) == pytest.approx(offset, rel=1e-3)


@pytest.mark.parametrize("grade", GRADES)
def test_a_rotor_at_its_permissible_offset_has_its_grade(grade: float) -> None:
    offset = balance.permissible_offset(grade=grade, rpm=1800) / 1000
    assert balance.balance_grade(offset=offset, rpm=1800) == pytest.approx(grade)


def test_a_rough_blank_is_far_outside_the_grades_of_machine_tools() -> None:
    assert balance.balance_grade(offset=10, rpm=600) == pytest.approx(628, abs=0.5)


def test_force_is_mass_times_the_acceleration_of_the_circle() -> None:
    """Second difference of the place of the mass in time."""
    speed, step = 2 * math.pi * 450 / 60, 1e-6
    place = [4e-3 * math.cos(speed * time) for time in (-step, 0.0, step)]
    expected = -6 * (place[0] - 2 * place[1] + place[2]) / step**2
    assert balance.unbalance_force(mass=6, offset=4, rpm=450) == pytest.approx(expected, rel=1e-4)


def test_counterweight_leaves_no_force() -> None:
    weight = balance.counterweight(mass=6, offset=4, radius=90) / 1000
    turned = balance.unbalance_force(mass=weight, offset=90, rpm=500)
    assert turned == pytest.approx(balance.unbalance_force(mass=6, offset=4, rpm=500))
