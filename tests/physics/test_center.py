"""The shape of a toothed center against published trigonometry of its making and against polygons cut by shapely."""

from __future__ import annotations

import random
from math import atan, cos, degrees, pi, radians, sin, sqrt

import pytest
from shapely import affinity
from shapely.geometry import LineString, Point, Polygon
from shapely.ops import unary_union

from advisor.physics.center import (
    ToothedCenter,
    core_radius,
    face_depth,
    land,
    ring_inside,
    root_thickness,
    section_area,
    thickness,
    tip_angle,
    tip_drop,
    wall_at,
    wedge_angle,
)
from advisor.physics.center_setting import (
    bore_for_two_settings,
    cutter_for_flank,
    depth_for_flank,
    flank_for_tip,
    largest_cutter,
    most_teeth,
    one_setting,
    two_settings,
)

INCH = 25.4


def inch_center(
    teeth: int = 4,
    cutter: float = 0.5,
    depth: float = 0.24,
    land_: float = 0.0,
    height: float = 0.0,
    overshoot: float = 0.0,
    hole: float = 0.251,
) -> ToothedCenter:
    """A center of 1 in with one setting, in inches: every function works in any one unit of length."""
    setting = one_setting(1.0, hole, cutter, depth, teeth, height, land_)
    return ToothedCenter(1.0, hole, cutter, depth, teeth, (setting._replace(y=setting.y - overshoot),))


# --- the tip


@pytest.mark.parametrize(("cutter", "expected"), [(0.500, 2.29), (0.625, 13.4), (0.750, 21.1)])
def test_a_larger_cutter_at_the_same_depth_is_milder(cutter: float, expected: float) -> None:
    assert wedge_angle(inch_center(cutter=cutter), 0.0) == pytest.approx(expected, abs=0.05)


@pytest.mark.parametrize(
    ("angle", "share"), [(0, 0.5), (2.3, 0.480), (11.5, 0.400), (15, 0.371), (20, 0.329), (25, 0.289), (30, 0.250)]
)
def test_depth_and_cutter_for_a_wanted_tip(angle: float, share: float) -> None:
    assert depth_for_flank(1.0, angle) == pytest.approx(share, abs=5e-4)
    assert cutter_for_flank(share, angle) == pytest.approx(1.0, abs=3e-3)


@pytest.mark.parametrize("teeth", [3, 5, 6, 8])
def test_flank_for_a_tip_of_one_setting_gives_that_tip(teeth: int) -> None:
    depth = depth_for_flank(0.5, flank_for_tip(20, teeth, 1))
    assert wedge_angle(inch_center(teeth=teeth, depth=depth), 0.0) == pytest.approx(20)


# --- one setting: where the land runs sharp


@pytest.mark.parametrize(
    ("teeth", "wall", "hole_land", "rim_land", "area"),
    [
        (2, -0.251, 0.0, 0.658, 0.269),
        (3, -0.1255, 0.0, 0.199, 0.113),
        (4, 0.0, 0.0, 0.0, 0.0),
        (5, 0.309, 0.158, 0.0, 0.134),
        (6, 0.500, 0.131, 0.0, 0.275),
        (7, 0.623, 0.113, 0.0, 0.377),
        (8, 0.707, 0.099, 0.0, 0.451),
    ],
)
def test_razor_position_and_plateau(teeth: int, wall: float, hole_land: float, rim_land: float, area: float) -> None:
    center = inch_center(teeth=teeth, cutter=0.25, depth=0.1)
    assert wall_at(center, center.driving, 0.0) / 0.5 == pytest.approx(wall, abs=6e-4)
    assert land(center, center.hole_radius) == pytest.approx(hole_land, abs=6e-4)
    assert land(center, center.outer_radius) == pytest.approx(rim_land, abs=6e-4)
    assert section_area(center, 0.0) == pytest.approx(area, abs=6e-4)


@pytest.mark.parametrize(("teeth", "ring"), [(5, 0.309), (6, 0.5), (7, 0.623), (8, 0.707)])
def test_ring_that_one_setting_leaves(teeth: int, ring: float) -> None:
    assert ring_inside(inch_center(teeth=teeth, cutter=0.25, depth=0.1)) == pytest.approx(ring / 2, abs=3e-4)


def test_most_teeth_for_a_face_length() -> None:
    assert most_teeth(1.0, 0.25) == 6
    assert most_teeth(1.0, 0.5) == 4


# --- past the land


@pytest.mark.parametrize(
    ("cutter", "depth", "overshoot", "loss", "angle"),
    [
        (0.5, 0.24, 0.001, 0.0145, 5.6),
        (0.5, 0.24, 0.010, 0.0607, 16.4),
        (0.5, 0.20, 0.001, 0.0047, None),
        (0.75, 0.24, 0.001, 0.0026, None),
    ],
)
def test_walking_past_center_lowers_the_tooth(
    cutter: float, depth: float, overshoot: float, loss: float, angle: float | None
) -> None:
    center = inch_center(cutter=cutter, depth=depth, overshoot=overshoot)
    assert tip_drop(center, 0.5) == pytest.approx(loss, abs=6e-5)
    if angle is not None:
        assert tip_angle(center, 0.5) == pytest.approx(angle, abs=0.05)


def test_a_lowered_tooth_is_that_of_a_shallower_depth() -> None:
    """(Y + z)² = H·(c - H): past zero land four teeth are fixed by one number."""
    center = inch_center(overshoot=0.03, height=-0.02)
    height = center.depth - tip_drop(center, 0.3)
    assert (center.driving.y + center.driving.z) ** 2 == pytest.approx(height * (0.5 - height))


@pytest.mark.parametrize("teeth", [3, 5, 6, 7, 8])
def test_loss_along_the_face_follows_the_closed_form(teeth: int) -> None:
    center = inch_center(teeth=teeth, cutter=0.3, depth=0.12, overshoot=0.015, height=-0.01)
    y, z = center.driving.y, center.driving.z
    radius = center.hole_radius if teeth == 3 else center.outer_radius
    along = sqrt(radius**2 - z**2)
    e = along * cos(2 * pi / teeth) - z * sin(2 * pi / teeth)
    expected = sqrt(0.15**2 - (y - e) ** 2) - (0.15 - 0.12)
    assert tip_drop(center, radius) == pytest.approx(expected, rel=1e-9)


def test_lowering_the_cutter_is_walking_in_further() -> None:
    lower = inch_center(height=-0.02, land_=0.01)
    level = inch_center(height=0.0, land_=0.01)
    assert root_thickness(lower) == pytest.approx(root_thickness(level), abs=2e-5)
    assert lower.driving.y - level.driving.y == pytest.approx(0.02, abs=2e-5)


def test_depth_is_set_before_the_offset() -> None:
    """A shallower pass at the last Y leaves more land, so it never spoils the tooth."""
    center = inch_center(land_=0.005)
    shallow = center._replace(depth=0.12)
    assert land(shallow, 0.5) > land(center, 0.5) + 0.02


# --- two settings


@pytest.mark.parametrize("teeth", [2, 3, 5, 6, 7, 8])
def test_two_settings_leave_a_parallel_land(teeth: int) -> None:
    hole = 0.251 if teeth < 5 else 0.8
    settings = two_settings(1.0, hole, 0.25, 0.1, teeth, 0.0, 0.005)
    center = ToothedCenter(1.0, hole, 0.25, 0.1, teeth, settings)
    for radius in (hole / 2, center.mid_radius, 0.5):
        assert land(center, radius) == pytest.approx(0.005, abs=3e-6)
    assert wedge_angle(center, 0.0) == pytest.approx(degrees(atan(0.025 / sqrt(0.125**2 - 0.025**2))))


@pytest.mark.parametrize(("teeth", "bore"), [(5, 0.39), (6, 0.58), (7, 0.70), (8, 0.77)])
def test_bore_that_clears_the_islands(teeth: int, bore: float) -> None:
    settings = two_settings(1.0, 0.2, 0.25, 0.1, teeth, 0.0, 0.005)
    center = ToothedCenter(1.0, 0.2, 0.25, 0.1, teeth, settings)
    assert bore_for_two_settings(center) == pytest.approx(bore, abs=0.006)


# --- walls, core, corner radius


def test_full_depth_inside_the_rim() -> None:
    center = inch_center(teeth=6, cutter=0.375, depth=0.15)
    largest = largest_cutter(center)
    fits = inch_center(teeth=6, cutter=largest, depth=0.15)
    assert fits.driving.y == pytest.approx(0.5, abs=1e-9)
    assert face_depth(fits, 0.5) == pytest.approx(0.15)


def test_core_grows_with_depth_and_never_below_the_hole() -> None:
    center = inch_center()
    assert core_radius(center, 0.0) == center.hole_radius
    assert core_radius(center, center.depth) == pytest.approx(center.driving.y)
    assert core_radius(center) < core_radius(center, center.depth)


def test_corner_radius_takes_the_bottom_of_the_face_and_nothing_of_the_tip() -> None:
    sharp = inch_center(depth=0.2, land_=0.005)
    round_ = sharp._replace(corner_radius=0.03)
    assert face_depth(round_, 0.5) == pytest.approx(0.17)
    assert land(round_, 0.3) == pytest.approx(land(sharp, 0.3), abs=1e-9)
    assert tip_angle(round_, 0.3) == tip_angle(sharp, 0.3)
    assert thickness(round_, 0.3, 0.19) > thickness(sharp, 0.3, 0.19) + 0.007


# --- polygons: a second way without the formulas


def sliced(center: ToothedCenter, u: float) -> Polygon:
    """The steel on a plane at a depth: ring less pockets, each the sweep of the cutter's outline at that plane."""
    far, a, rho = 4 * center.outer_radius, center.cutter_radius, center.corner_radius
    pockets = []
    for setting in center.settings:
        edge = []
        for i in range(201):
            up = rho * (1 - cos(pi / 2 * i / 200))
            reach = a - rho + rho * sin(pi / 2 * i / 200)
            offset = a - center.depth + u
            if reach > offset:
                edge.append((setting.y - sqrt(reach**2 - offset**2), setting.z + up))
        corner = [(far, edge[0][1]), *edge, (edge[-1][0], far), (far, far)]
        for tooth in range(center.teeth):
            turn = setting.turn + 360 * tooth / center.teeth
            pockets.append(affinity.rotate(Polygon(corner), turn, origin=(0, 0)))
    ring = Point(0, 0).buffer(center.outer_radius, 2000).difference(Point(0, 0).buffer(center.hole_radius, 2000))
    return ring.difference(unary_union(pockets))


def arc_of(shape: Polygon, radius: float, teeth: int) -> float:
    """Length of the circle of a radius inside a shape, for each tooth."""
    circle = LineString([(radius * cos(radians(i / 40)), radius * sin(radians(i / 40))) for i in range(14401)])
    return float(circle.intersection(shape).length) / teeth


def some_centers() -> list[ToothedCenter]:
    dice = random.Random(20)
    centers = []
    for teeth in (2, 3, 4, 4, 5, 6, 7, 8):
        for passes in (1, 2) if teeth != 4 else (1,):
            diameter = dice.uniform(15, 50)
            hole = diameter * dice.uniform(0.2, 0.6)
            depth = diameter * dice.uniform(0.06, 0.15)
            cutter = depth * dice.uniform(2.1, 3.0)
            height, width = hole * dice.uniform(-0.1, 0.1), dice.uniform(0, 0.4)
            rho = dice.choice((0.0, 0.2 * depth))
            blank = (diameter, hole, cutter, depth, teeth, height, width)
            settings = (one_setting(*blank),) if passes == 1 else two_settings(*blank)
            past = dice.choice((0.0, 0.02 * diameter))
            last = settings[-1]._replace(y=settings[-1].y - past)
            centers.append(ToothedCenter(diameter, hole, cutter, depth, teeth, (*settings[:-1], last), rho))
    return centers


@pytest.mark.parametrize("center", some_centers(), ids=lambda c: f"{c.teeth}x{len(c.settings)}-{c.diameter:.1f}")
def test_sections_are_those_of_cut_polygons(center: ToothedCenter) -> None:
    for share in (0.0, 0.3, 0.7):
        u = share * center.depth
        shape = sliced(center, u)
        assert section_area(center, u) == pytest.approx(shape.area, rel=5e-4, abs=0.01)
        for radius in (center.hole_radius * 1.02, center.mid_radius, center.outer_radius * 0.98):
            expected = arc_of(shape, radius, center.teeth)
            assert thickness(center, radius, u) == pytest.approx(expected, rel=1e-4, abs=4e-3)


def test_core_touches_the_pockets_of_cut_polygons() -> None:
    center = inch_center(land_=0.005, hole=0.1)
    empty = Point(0, 0).buffer(0.49, 500).difference(sliced(center, 0.999 * center.depth))
    outside = empty.difference(Point(0, 0).buffer(center.hole_radius * 1.001, 500))
    assert Point(0, 0).distance(outside) == pytest.approx(core_radius(center), abs=1e-5)


# --- driven hard: nothing breaks, nothing goes the wrong way


@pytest.mark.parametrize("teeth", range(2, 9))
def test_thickness_grows_with_depth_and_stays_within_the_pitch(teeth: int) -> None:
    center = inch_center(teeth=teeth, cutter=0.3, depth=0.13, overshoot=0.01)
    for radius in (center.hole_radius, center.mid_radius, center.outer_radius):
        values = [thickness(center, radius, center.depth * i / 20) for i in range(21)]
        assert values == sorted(values)
        assert values[0] >= 0
        assert values[-1] <= radius * center.pitch + 1e-12


def test_tip_of_two_jaws_is_no_wedge() -> None:
    center = inch_center(teeth=2)
    assert wedge_angle(center, 0.0) is None
    assert root_thickness(center) is None
