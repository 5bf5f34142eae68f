"""Bite, torque and bending of the teeth against quadrature by scipy and a numerical maximum of the beam formula."""

from __future__ import annotations

from itertools import pairwise
from math import sqrt

import pytest
from scipy.integrate import quad
from scipy.optimize import minimize_scalar

from advisor.physics.center import ToothedCenter, thickness, wall_at
from advisor.physics.center_setting import one_setting
from advisor.physics.center_strength import (
    bending_angle,
    bite,
    face_pressure,
    greatest_bending,
    land_for_angle,
    least_bending_angle,
    thrust_to_bite,
    torque_at,
)


def center(cutter: float = 12.7, depth: float = 5.08, width: float = 0.127, teeth: int = 4) -> ToothedCenter:
    setting = one_setting(25.4, 6.3754, cutter, depth, teeth, 0.0, width)
    return ToothedCenter(25.4, 6.3754, cutter, depth, teeth, (setting,))


@pytest.mark.parametrize(
    ("cutter", "depth", "razor", "with_land"),
    [(12.7, 6.096, 1872, 51), (12.7, 5.08, 72, 17), (15.875, 6.096, 53, 16), (19.05, 6.096, 20, 9)],
)
def test_bending_factor_of_the_usual_cutters(cutter: float, depth: float, razor: float, with_land: float) -> None:
    assert greatest_bending(center(cutter, depth, 0.0), 0.0, 1.0) == pytest.approx(razor, rel=0.03)
    assert greatest_bending(center(cutter, depth), 0.127, 1.0) == pytest.approx(with_land, rel=0.03)


@pytest.mark.parametrize(("cutter", "depth"), [(12.7, 5.08), (15.875, 6.096), (19.05, 6.096)])
def test_bending_bound_is_the_maximum_over_the_depth(cutter: float, depth: float) -> None:
    worked = center(cutter, depth)

    def stress(u: float) -> float:
        back = wall_at(worked, worked.driving, u) + worked.driving.z
        return -3 * (u / back) ** 2

    found = minimize_scalar(stress, bounds=(1e-6, depth), method="bounded", options={"xatol": 1e-9})
    assert greatest_bending(worked, 0.127, 1.0) == pytest.approx(-found.fun, rel=2e-3)


def test_land_and_angle_undo_each_other() -> None:
    worked = center()
    assert land_for_angle(worked, bending_angle(worked, 0.3)) == pytest.approx(0.3)
    assert land_for_angle(worked, 5.0) == 0.0
    needed = least_bending_angle(6.0, 200.0)
    width = land_for_angle(center(depth=6.096), needed)
    assert greatest_bending(center(depth=6.096), width, 6.0) == pytest.approx(200.0)


@pytest.mark.parametrize(("teeth", "width"), [(3, 0.1), (4, 0.127), (5, 0.2), (6, 0.2)])
def test_bite_balances_the_thrust(teeth: int, width: float) -> None:
    worked = center(9.525, 3.81, width, teeth)
    thrust = thrust_to_bite(worked, 45.0) * 1.1 + 300
    depth = bite(worked, thrust, 45.0)
    assert 0 < depth < worked.depth
    radii = sorted({3.1877, 12.7, *(r for r in (abs(wall_at(worked, worked.driving, depth)),) if 3.1877 < r < 12.7)})
    area = sum(quad(lambda r: thickness(worked, r, depth), a, b, limit=200)[0] for a, b in pairwise(radii))
    assert teeth * area * 45.0 == pytest.approx(thrust, rel=1e-4)


def test_bite_of_four_teeth_follows_the_short_formula() -> None:
    """p = √(a² - (a·cos ψ + w - t)²) - a·sin ψ with t = F/(N·L·σ): within .0001 in of the full integral."""
    worked = center()
    a, rise = 6.35, 6.35 - 5.08
    t = 600 / (4 * (12.7 - 3.1877) * 45)
    short = sqrt(a * a - (sqrt(a * a - rise * rise) + 0.127 - t) ** 2) - rise
    assert bite(worked, 600, 45) == pytest.approx(short, abs=0.0026)


def test_too_little_thrust_does_not_bite() -> None:
    worked = center()
    assert thrust_to_bite(worked, 45) == pytest.approx(4 * (12.7 - 3.1877) * 0.127 * 45, rel=1e-3)
    assert bite(worked, 0.99 * thrust_to_bite(worked, 45), 45) == 0.0
    assert bite(worked, 1e6, 45) == pytest.approx(worked.depth)


def test_torque_of_a_face_from_hole_to_rim() -> None:
    worked = center()
    expected = 4 * 6.0 * 1.0 * (12.7**2 - 3.1877**2) / 2 / 1000
    assert torque_at(worked, 1.0, 6.0) == pytest.approx(expected, rel=1e-9)
    assert face_pressure(worked, 1.0, expected) == pytest.approx(6.0)
