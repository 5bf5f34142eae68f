"""ANSI Z87.1-2003, high-mass impact: a pointed 500 g weight falls from 1.27 to 1.30 m.

Compared: the energy beside which the program sets a thrown or spinning piece; `fragment-energy`.
"""

from __future__ import annotations

import math

import pytest

from advisor.physics import rim
from advisor.report import numbers

SOURCES = ("ansi-z87-1-2003",)
MASS_KG, FALL_M, GRAVITY = 0.5, (1.27, 1.30), 9.80665


def test_the_yardstick_is_the_lower_of_the_two_falls_rounded_down() -> None:
    least = MASS_KG * GRAVITY * FALL_M[0]
    assert math.floor(least * 10) / 10 == rim.FACE_SHIELD_TEST_J
    assert numbers.FACE_SHIELD_J == rim.FACE_SHIELD_TEST_J


@pytest.mark.parametrize("fall", FALL_M)
def test_the_weight_s_own_speed_gives_its_energy(fall: float) -> None:
    found = rim.fragment_energy(mass=MASS_KG, speed=math.sqrt(2 * GRAVITY * fall))
    assert found == pytest.approx(MASS_KG * GRAVITY * fall)
