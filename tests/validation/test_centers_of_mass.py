"""Centers of mass of outlines against the polygon library shapely, on circles, ovals and a half-log."""

from __future__ import annotations

import math

import pytest
from shapely import Point, Polygon, box

from advisor.physics import balance

SOURCES = ("geometry",)
TURN = [2 * math.pi * place / 3600 for place in range(3600)]


def outline(offset: float, oval: float) -> Polygon:
    """Oval of half-axes 100 and 100·oval mm, its middle `offset` mm from the axis."""
    return Polygon([(offset + 100 * math.cos(a), 100 * oval * math.sin(a)) for a in TURN])


def radii(offset: float, oval: float, count: int) -> list[float]:
    found = []
    for place in range(count):
        c, s = math.cos(2 * math.pi * place / count), math.sin(2 * math.pi * place / count) / oval
        # |r·c − offset|² + |r·s|² = 100²
        half, rest = c * offset, offset**2 - 100**2
        norm = c * c + s * s
        found.append((half + math.sqrt(half**2 - norm * rest)) / norm)
    return found


@pytest.mark.parametrize("count", [8, 12, 24])
@pytest.mark.parametrize(("offset", "oval"), [(10.0, 1.0), (4.0, 1.0), (8.0, 0.94), (15.0, 1.05)])
def test_offset_from_radii(offset: float, oval: float, count: int) -> None:
    shape = outline(offset, oval)
    x, y = balance.center_from_radii(radii(offset, oval, count))
    assert (x, y) == pytest.approx((shape.centroid.x, shape.centroid.y), abs=0.01 * offset)


@pytest.mark.parametrize("height", [0.0, 30.0, 60.0])
def test_half_log(height: float) -> None:
    half = Point(0, 0).buffer(90, quad_segs=720).intersection(box(-100, 0, 100, 100))
    found = balance.half_log_offset(radius=90, axis_from_flat=height)
    assert found == pytest.approx(abs(half.centroid.y - height), rel=1e-4)


def test_uneven_density() -> None:
    """One half of a disc 20 % of the mean denser than the other."""
    half = Point(0, 0).buffer(100, quad_segs=720).intersection(box(-200, 0, 200, 200))
    heavy, light = 1.1, 0.9
    expected = half.centroid.y * (heavy - light) / (heavy + light)
    assert balance.density_offset(0.2, 100) == pytest.approx(expected, rel=1e-4)
