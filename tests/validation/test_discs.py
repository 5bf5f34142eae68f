"""Spinning discs, thick rings and plates against boundary-value problems solved with scipy.

Compared: `disc-stress`, `mean_disc_stress`, `ring-stress`, `cracked-disc-speed`, `recess-force`, `jam-fit`,
`suction-floor-stress`.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.integrate import quad, solve_bvp

from advisor.physics import burst, glue, jaws, vacuum

SOURCES = ("roark",)
Array = NDArray[np.float64]


def disc_hoop(density: float, outer: float, inner: float, speed: float, poisson: float) -> float:
    """Greatest hoop stress in Pa of a spinning disc: radial stress and displacement as a two-point problem."""

    def slope(r: Array, state: Array) -> Array:
        radial, moved = state  # stress over ρω²R², displacement over ρω²R³/E; lengths over R
        hoop = moved / r + poisson * radial
        return np.vstack([(hoop - radial) / r - r, radial - poisson * hoop])

    def ends(a: Array, b: Array) -> Array:
        start = a[0] if inner > 0 else a[1] - 1e-4 * (1 - poisson) * a[0]
        return np.array([start, b[0]])

    nodes = np.linspace(max(inner / outer, 1e-4), 1, 400)
    found = solve_bvp(slope, ends, nodes, np.ones((2, nodes.size)), tol=1e-8, max_nodes=50000)
    assert found.success
    hoop = found.y[1] / found.x + poisson * found.y[0]
    return float(hoop.max()) * density * speed**2 * outer**2


@pytest.mark.parametrize(
    ("diameter", "bore", "poisson"), [(300, 0, 0.4), (300, 0, 0.3), (350, 40, 0.4), (200, 120, 0.3), (250, 200, 0.35)]
)
def test_disc(diameter: float, bore: float, poisson: float) -> None:
    expected = disc_hoop(700, diameter / 2000, bore / 2000, 100.0, poisson)
    rpm = 100.0 * 30 / math.pi
    found = burst.disc_stress(density=700, diameter=diameter, rpm=rpm, poisson=poisson, bore=bore)
    assert found * 1000 == pytest.approx(expected, rel=2e-3)


@pytest.mark.parametrize("bore", [0.0, 60.0, 200.0])
def test_mean_stress_holds_half_of_the_disc(bore: float) -> None:
    outer, inner, speed = 0.15, bore / 2000, 80.0
    pull, _ = quad(lambda r: 2 * 700 * speed**2 * r**2, inner, outer)
    expected = pull / (2 * (outer - inner)) / 1000
    found = burst.mean_disc_stress(700, 300, speed * 30 / math.pi, bore)
    assert found == pytest.approx(expected, rel=1e-9)


def test_cracked_disc_at_its_speed_has_its_strength_on_the_sound_part() -> None:
    rpm = burst.cracked_disc_speed(density=650, diameter=280, sound=0.4, strength=0.7)
    assert burst.mean_disc_stress(650, 280, rpm) / 0.4 == pytest.approx(700, rel=1e-9)


def test_thin_ring_is_the_limit_of_the_bored_disc() -> None:
    thin = burst.disc_stress(density=700, diameter=300, rpm=1000, poisson=0.3, bore=299.9)
    speed = math.pi * 0.3 * 1000 / 60
    assert burst.ring_stress(density=700, speed=speed) * 1000 == pytest.approx(thin, rel=1e-3)


def ring_hoop(pressure: float, inner: float, outer: float) -> float:
    """Hoop stress at the bore of a ring under inner pressure, plane stress, any poisson's ratio."""

    def slope(r: Array, state: Array) -> Array:
        radial, moved = state
        hoop = moved / r + 0.3 * radial
        return np.vstack([(hoop - radial) / r, radial - 0.3 * hoop])

    nodes = np.linspace(inner / outer, 1, 200)
    found = solve_bvp(
        slope, lambda a, b: np.array([a[0] + 1, b[0]]), nodes, np.ones((2, nodes.size)), tol=1e-8, max_nodes=50000
    )
    assert found.success
    return float(found.y[1][0] / found.x[0] + 0.3 * found.y[0][0]) * pressure


@pytest.mark.parametrize(("diameter", "outside"), [(50, 100), (45, 60), (60, 200)])
def test_recess(diameter: float, outside: float) -> None:
    force = jaws.recess_force(diameter=diameter, depth=4, outside_diameter=outside, tension_perpendicular=3)
    pressure = force / (math.pi * diameter * 4)
    assert ring_hoop(pressure, diameter / 2, outside / 2) == pytest.approx(3, rel=1e-3)


def test_hoop_tension_of_a_jam_fit() -> None:
    also = glue.jam_fit.figure(
        interference=0.1, diameter=80, outside_diameter=120, modulus=0.8, length=10, friction=0.3
    ).also
    assert also["hoop_tension"][0] == pytest.approx(ring_hoop(also["pressure"][0], 40, 60), rel=1e-3)


def test_jam_fit_takes_up_its_interference() -> None:
    """Spigot squeezed and ring spread by the pressure, E 800 MPa, must add up to half of the interference."""
    pressure = glue.jam_fit.figure(
        interference=0.12, diameter=70, outside_diameter=110, modulus=0.8, length=10, friction=0.3
    ).also["pressure"][0]
    spread = 35 / 800 * (ring_hoop(pressure, 35, 55) + 0.3 * pressure)
    squeezed = 35 / 800 * (1 - 0.3) * pressure
    assert spread + squeezed == pytest.approx(0.06, rel=1e-3)


@pytest.mark.parametrize("poisson", [0.3, 0.4])
def test_plate_on_its_edge(poisson: float) -> None:
    """Axisymmetric plate on a simple edge: slope and radial moment as a two-point problem, p 80 kPa, R 75, t 4 mm."""
    pressure, radius, thick = 0.08, 75.0, 4.0

    def slope(r: Array, state: Array) -> Array:
        turn, radial = state  # turn times D over p·R³, moment over p·R²
        around = (1 - poisson**2) * turn / r + poisson * radial
        return np.vstack([radial - poisson * turn / r, -r / 2 - (radial - around) / r])

    nodes = np.linspace(1e-3, 1, 400)
    middle = nodes[0] / (1 + poisson)  # the plate is a bowl there, bent alike both ways
    found = solve_bvp(
        slope,
        lambda a, b: np.array([a[0] - middle * a[1], b[1]]),
        nodes,
        np.ones((2, nodes.size)),
        tol=1e-8,
        max_nodes=50000,
    )
    assert found.success
    expected = 6 * abs(found.y[1]).max() * pressure * radius**2 / thick**2
    value = vacuum.suction_floor_stress(pressure=80, radius=75, thickness=4, poisson=poisson)
    assert value == pytest.approx(expected, rel=2e-3)


def test_thinnest_floor_is_at_its_stress() -> None:
    thick = vacuum.thinnest_floor(60, 50, 1.2)
    stress = vacuum.suction_floor_stress(pressure=60, radius=50, thickness=thick, poisson=0.3)
    assert stress == pytest.approx(1.2, rel=1e-9)
