"""Centers of mass from a few radii against integration over the whole outline, on two dozen outlines.

Outlines drawn with the polygon library shapely are measured along rays from the axis, as a turner would measure them;
smooth ones given by a formula are integrated by scipy. Compared: `offset-from-radii`.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest
from scipy.integrate import quad
from shapely import LineString, Point, Polygon, affinity, box

from advisor.physics import balance

SOURCES = ("geometry",)
Polar = Callable[[float], float]


def disc(radius: float, x: float = 0.0, y: float = 0.0) -> Polygon:
    return Point(x, y).buffer(radius, quad_segs=400)


def sides(count: int, radius: float, x: float, y: float) -> Polygon:
    turn = [math.tau * place / count + 0.1 for place in range(count)]
    return Polygon([(x + radius * math.cos(a), y + radius * math.sin(a)) for a in turn])


def oval(long: float, short: float, x: float, y: float) -> Polygon:
    return affinity.translate(affinity.rotate(affinity.scale(disc(1), long, short), 20), x, y)


def half_log(radius: float, axis: float) -> Polygon:
    return affinity.translate(disc(radius).intersection(box(-radius, 0, radius, radius)), 0, -axis)


def flat(radius: float, at: float, x: float = 0.0) -> Polygon:
    return disc(radius, x).intersection(box(-2 * radius, -2 * radius, at, 2 * radius))


DRAWN: dict[str, Polygon] = {
    "disc 10 off": disc(100, 10),
    "disc 3 off": disc(100, 2, 2),
    "disc 40 off": disc(100, 0, 40),
    "oval": oval(100, 80, 10, 5),
    "narrow oval": oval(120, 60, 5, -8),
    "small oval": oval(60, 50, 15, 0),
    "square off its middle": box(-44, -47, 56, 53),
    "slab": box(-60, -40, 80, 50),
    "five sides": sides(5, 100, 10, 0),
    "hexagon": sides(6, 90, 5, -6),
    "octagon": sides(8, 100, 8, 0),
    "twelve sides": sides(12, 80, 4, 4),
    "half-log, axis low": half_log(100, 20),
    "half-log, axis higher": half_log(100, 30),
    "shallow flat": flat(100, 80),
    "deep flat": flat(100, 50),
    "flat and off": flat(100, 70, 8),
    "notch on a ray": disc(100).difference(box(75, -10, 105, 10)),
    "notch between rays": disc(100).difference(affinity.rotate(box(65, -7, 105, 8), 50, origin=(0, 0))),
    "natural edge": disc(100).union(disc(40, 80, 30)),
    "crotch": disc(60, 30).union(disc(60, -10, 35)).union(disc(60, -10, -35)),
}
SMOOTH: dict[str, Polar] = {
    "egg": lambda a: 90 + 12 * math.cos(a) + 5 * math.cos(2 * a),
    "pear": lambda a: 80 + 15 * math.cos(a) + 10 * math.sin(3 * a),
    "five lobes": lambda a: 100 + 6 * math.cos(5 * a) + 8 * math.sin(a),
    "sapwood side": lambda a: 120 + 10 * math.sin(a) - 4 * math.cos(2 * a) + 2 * math.sin(4 * a),
}
# What a number of radii may miss on an outline with corners 200 mm across, mm.
MISSES = {12: 2.0, 24: 1.0, 36: 0.7, 72: 0.3}


def rays(outline: Polygon, count: int) -> list[float]:
    """Lengths from the axis to the outline at equal angles."""
    found = []
    for place in range(count):
        angle = math.tau * place / count
        ray = LineString([(0, 0), (1000 * math.cos(angle), 1000 * math.sin(angle))])
        found.append(float(ray.intersection(outline).length))
    return found


@pytest.mark.parametrize("count", list(MISSES))
@pytest.mark.parametrize("name", list(DRAWN))
def test_an_outline_drawn_and_measured(name: str, count: int) -> None:
    middle = DRAWN[name].centroid
    x, y = balance.center_from_radii(rays(DRAWN[name], count))
    assert math.hypot(x - middle.x, y - middle.y) <= MISSES[count]


@pytest.mark.parametrize("name", list(SMOOTH))
def test_a_smooth_outline_is_exact_from_twelve_radii_on(name: str) -> None:
    radius = SMOOTH[name]
    area = quad(lambda a: radius(a) ** 2 / 2, 0, math.tau)[0]
    x = quad(lambda a: radius(a) ** 3 * math.cos(a) / 3, 0, math.tau, epsabs=1e-2)[0] / area
    y = quad(lambda a: radius(a) ** 3 * math.sin(a) / 3, 0, math.tau, epsabs=1e-2)[0] / area
    for count in (12, 24, 72):
        measured = [radius(math.tau * place / count) for place in range(count)]
        assert balance.offset_from_radii(radii=measured) == pytest.approx(math.hypot(x, y), rel=2e-3)


@pytest.mark.parametrize("count", [6, 8])
def test_an_even_disc_off_its_middle_needs_no_more_than_six(count: int) -> None:
    assert balance.offset_from_radii(radii=rays(disc(100, 10), count)) == pytest.approx(10, rel=1e-3)


def test_few_radii_step_over_a_flat() -> None:
    """Why few radii on an uneven outline are never taken at their word."""
    short = balance.offset_from_radii(radii=rays(DRAWN["deep flat"], 6))
    assert short < 0.8 * math.hypot(*DRAWN["deep flat"].centroid.coords[0])
