"""The toothed center in whole numbers: a cutter and blank made of Pythagorean triangles, so that each value can be done
by hand.

Cutter radius 25 at a depth of 10: half chord 20 on the turned face, 15 at a depth of 5, 7 at 9, none at 10.
Cutter end 12 below or above the axis: the driving face runs from 5 at the hole (radius 13) to 35 at the rim (37).
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from math import acos, asin, atan2, cos, degrees, hypot, pi, radians, sin, sqrt

import pytest
from scipy.integrate import quad
from scipy.optimize import brentq, minimize_scalar

from advisor.physics.center import (
    Setting,
    ToothedCenter,
    core_radius,
    face_depth,
    face_span,
    land,
    removed_arc,
    root_thickness,
    section_area,
    thickness,
    tip_drop,
    wall_at,
    wedge_angle,
)
from advisor.physics.center_setting import (
    bore_for_two_settings,
    flank_for_tip,
    largest_cutter,
    one_setting,
    two_settings,
)
from advisor.physics.center_strength import (
    bending_angle,
    bite,
    face_moment,
    face_pressure,
    greatest_bending,
    land_for_angle,
)

RIM, HOLE = 37.0, 13.0
ROOT_3 = sqrt(3)


def by_hand(teeth: int, *settings: Setting, corner: float = 0.0, scale: float = 1.0) -> ToothedCenter:
    """Such a center; `scale` makes all of it larger."""
    sized = tuple(Setting(one.y * scale, one.z * scale, one.turn) for one in settings)
    return ToothedCenter(74 * scale, 26 * scale, 50 * scale, 10 * scale, teeth, sized, corner * scale)


def under_circle(radius: float, low: float, high: float) -> float:
    """∫ √(R² − y²) dy."""

    def upto(y: float) -> float:
        return (y * sqrt(radius**2 - y**2) + radius**2 * asin(y / radius)) / 2

    return upto(high) - upto(low)


# --- the wall and what a pocket takes


def test_wall_runs_out_in_the_cutter_s_circle() -> None:
    center = by_hand(4, Setting(20, 0))
    assert [wall_at(center, center.driving, u) for u in (0, 5, 9, 10)] == [0, 5, 13, 20]
    assert wall_at(center, center.driving, 0, radius_of_cutter=17) == 20 - 8


def test_pocket_ends_on_the_far_side_where_the_circle_comes_back_to_the_floor() -> None:
    center = by_hand(2, Setting(15.5, 3))  # wall at −4.5, behind the circle of 5 at the height of the floor, 4
    assert removed_arc(center, center.driving, 5, 0) == pytest.approx((asin(0.6), pi - asin(0.6)))


def test_small_circle_over_the_floor_is_cut_by_the_wall_alone() -> None:
    center = by_hand(2, Setting(22, -5))
    assert removed_arc(center, center.driving, 4, 0) == pytest.approx((-pi / 3, pi / 3))


@pytest.mark.parametrize(("turns", "steel"), [((10, 55), 30), ((20, 75), 30), ((10, 20), 50), ((0, 30), 30)])
def test_steel_is_what_all_pockets_leave_of_the_pitch(turns: tuple[float, float], steel: float) -> None:
    """Pockets of 30° at the circle of 20 with the wall at 10·√3, of a pitch of 90°; 75° to 105° goes on at 0°."""
    center = by_hand(4, *(Setting(20 + 10 * ROOT_3, 0, turn) for turn in turns))
    assert thickness(center, 20, 0) == pytest.approx(20 * radians(steel))


# --- razor edges are told as such, whatever rounding does


def test_razor_edge_has_no_land_and_stands_on_the_face() -> None:
    """Four teeth with the wall as far beyond the axis as the floor is below it."""
    for below in (0.0, -5.0, -9.0, 7.0):
        center = by_hand(4, Setting(20 - below, below))
        radii = [HOLE + step / 7 for step in range(169)]
        assert {land(center, radius) for radius in radii} == {0.0}
        assert {tip_drop(center, radius) for radius in radii} == {0.0}


@pytest.mark.parametrize("teeth", [3, 5, 6, 7, 8])
def test_razor_edge_at_one_place_is_told_as_none(teeth: int) -> None:
    for step in range(-17, 18):
        blank = (74.0, 26.0, 50.0, 10.0, teeth, step * 0.37, 0.0)
        center = by_hand(teeth, one_setting(*blank))
        sharp = HOLE if teeth == 3 else RIM
        assert (land(center, sharp), tip_drop(center, sharp)) == (0.0, 0.0)


def test_tip_lowered_by_less_than_a_hundred_thousandth_of_the_depth_is_a_razor_edge() -> None:
    """A step past the razor edge lowers the tip by 20/15 of it at first."""
    for scale in (1.0, 0.01):
        slight = by_hand(4, Setting(32 - 0.75 * 5e-5, -12), scale=scale)
        assert tip_drop(slight, RIM * scale) == 0.0
        told = by_hand(4, Setting(32 - 0.75 * 3e-4, -12), scale=scale)
        assert tip_drop(told, RIM * scale) == pytest.approx(3e-4 * scale, rel=1e-3)


def test_back_stands_square_to_the_face_where_the_cutter_is_widest() -> None:
    for depth in range(1, 195):
        center = ToothedCenter(74, 26, 3.9, depth / 100, 4, (Setting(2, 0),))
        assert wedge_angle(center, center.depth) == pytest.approx(90)


# --- the driving face


@pytest.mark.parametrize(
    ("teeth", "y", "u", "ends"),
    [
        (2, 10, 0, (5, 35)),
        (2, 28, 0, (8, 35)),
        (2, 28, 5, (13, 35)),
        (4, 28, 5, (13, 35)),
        (3, 15, 0, (10 + 12 * ROOT_3, 35)),
        (3, 15, 5, (12 * ROOT_3, 35)),
        (3, 28, 0, (8, 35)),
        (6, 45, 0, (25, 50 - 12 * ROOT_3)),
        (6, 50, 0, (30, 35)),
        (6, 38, 0, (18, 18)),  # the tip is gone wherever the wall leaves a face
    ],
)
def test_ends_of_the_driving_face(teeth: int, y: float, u: float, ends: tuple[float, float]) -> None:
    """Inner end: the hole or the wall. The back meets the face where s·cos θ = yw − 12·sin θ."""
    assert face_span(by_hand(teeth, Setting(y, -12)), u) == pytest.approx(ends)


def test_two_settings_leave_the_face_whole() -> None:
    assert face_span(by_hand(6, Setting(45, -12), Setting(50, 0)), 0) == pytest.approx((25, 35))


@pytest.mark.parametrize(("teeth", "y", "inward"), [(3, 15, -1), (6, 45, 1), (5, 41, 1)])
def test_face_ends_where_the_tooth_has_no_thickness(teeth: int, y: float, inward: int) -> None:
    center = by_hand(teeth, Setting(y, -12))
    end = face_span(center, 0)[0 if teeth == 3 else 1]
    assert 5 < end < 35
    assert thickness(center, hypot(end, 12), 0) == pytest.approx(0, abs=1e-9)
    assert thickness(center, hypot(end - inward * 0.01, 12), 0) > 0.001
    assert thickness(center, hypot(end + inward * 0.01, 12), 0) == 0


def test_depth_of_the_driving_face() -> None:
    """25² = 24² + 7²; with a corner of 5 the flat of the cutter has a radius of 20: 20² = 16² + 12²."""
    assert face_depth(by_hand(4, Setting(27, -12))) == pytest.approx(24 - 15)  # at (5 + 35)/2
    assert face_depth(by_hand(4, Setting(27, -12)), along=12) == pytest.approx(20 - 15)
    assert face_depth(by_hand(4, Setting(32, -12), corner=5)) == pytest.approx(16 - 15)
    assert face_depth(by_hand(4, Setting(20, -12), corner=5)) == 5
    assert face_depth(by_hand(4, Setting(27, -12)), along=27) == 10


def test_no_face_where_the_cutter_never_came() -> None:
    assert face_depth(by_hand(4, Setting(60, -12))) == 0
    nearly_half = ToothedCenter(74, 26, 20, 9.5, 4, (Setting(60, -12),))
    assert face_depth(nearly_half) == 0


def test_core_and_root() -> None:
    assert core_radius(by_hand(4, Setting(16, 12)), 10) == 20
    assert core_radius(by_hand(4, Setting(16, -12)), 10) == 16
    assert root_thickness(by_hand(6, Setting(17.5 + 10 * ROOT_3, -12))) == pytest.approx(20 - 12)
    assert root_thickness(by_hand(4, Setting(27, -12))) == 15


# --- areas


@pytest.mark.parametrize(
    ("height", "pocket"),
    [
        (-12.0, under_circle(RIM, 15, RIM) + 12 * 20 + under_circle(RIM, 35, RIM)),
        (12.0, under_circle(RIM, 15, 35) - 12 * 20),
    ],
)
def test_area_of_two_jaws_is_the_ring_less_two_corners_of_a_disc(height: float, pocket: float) -> None:
    center = by_hand(2, Setting(35, height))
    assert section_area(center, 0) == pytest.approx(pi * (RIM**2 - HOLE**2) - 2 * pocket, rel=1e-7)


def test_area_with_pockets_of_the_second_setting_alone() -> None:
    """The first never reaches the steel; six corners of the second, from 12.5 out and 7 up, lie apart."""
    center = by_hand(6, Setting(60, -12), Setting(32.5, 7, -30))
    along = sqrt(RIM**2 - 7**2)
    pocket = under_circle(RIM, 12.5, along) - 7 * (along - 12.5)
    assert section_area(center, 0) == pytest.approx(pi * (RIM**2 - HOLE**2) - 6 * pocket, rel=1e-7)


def test_area_stops_where_the_tip_is_gone() -> None:
    """Six teeth walked too far: the wall at 25, the tooth's end at 50 − 12·√3 along its face."""
    center = by_hand(6, Setting(45, -12))
    places = [HOLE, 25.0, hypot(25, 12), hypot(50 - 12 * ROOT_3, 12)]
    area = sum(quad(lambda r: thickness(center, r, 0), low, high, epsabs=1e-11)[0] for low, high in pairwise(places))
    assert section_area(center, 0) == pytest.approx(6 * area, rel=1e-7)


# --- a cutter with a corner radius


CORNER = 2.0


def fillet(y: float, z: float, u: float) -> Callable[[float], tuple[float, float]]:
    """The pocket's corner at a depth: a circle of the cutter, 0 on the floor to 1 on the wall, as a place (y, z)."""

    def place(share: float) -> tuple[float, float]:
        turn = share * pi / 2
        reach = 25 - CORNER + CORNER * sin(turn)
        return y - sqrt(max(reach**2 - (15 + u) ** 2, 0.0)), z + CORNER * (1 - cos(turn))

    return place


def crossing(corner: Callable[[float], tuple[float, float]], radius: float, low: float, high: float) -> float:
    """The angle at which a circle about the axis meets the corner between two shares of it."""
    share = brentq(lambda share: hypot(*corner(share)) - radius, low, high, xtol=1e-15, rtol=1e-14)
    across, up = corner(share)
    return atan2(up, across)


def test_corner_takes_nothing_of_a_circle_that_passes_it_by() -> None:
    setting = Setting(30, 3)
    for radius in (14, 15.3, 17.1, 20.2, 23.7, 28.9, 36.6):
        sharp = removed_arc(by_hand(4, setting), setting, radius, 0)
        assert removed_arc(by_hand(4, setting, corner=CORNER), setting, radius, 0) == sharp


@pytest.mark.parametrize("radius", [12.0, 12.5, 12.8])
def test_corner_keeps_the_circle_off_the_floor(radius: float) -> None:
    setting = Setting(30, 3)
    arc = removed_arc(by_hand(4, setting, corner=CORNER), setting, radius, 0)
    assert arc is not None
    assert arc[0] == pytest.approx(crossing(fillet(30, 3, 0), radius, 0, 0.9), abs=1e-12)
    assert arc[1] == acos(10 / radius)


@pytest.mark.parametrize("radius", [23.65, 23.7, 23.75])
def test_corner_keeps_the_circle_off_the_wall(radius: float) -> None:
    setting = Setting(30, 20)
    arc = removed_arc(by_hand(4, setting, corner=CORNER), setting, radius, 0)
    assert arc is not None
    assert arc[0] == asin(20 / radius)
    assert arc[1] == pytest.approx(crossing(fillet(30, 20, 0), radius, 0.1, 1), abs=1e-12)


@pytest.mark.parametrize("z", [2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 7.0, 8.0, 10.0])
def test_corner_leaves_as_much_of_a_circle_as_passes_inside_it(z: float) -> None:
    """From a sliver of a fiftieth of the sharp cutter's arc on; a circle that stays inside the steel loses nothing."""
    corner, setting = fillet(30, z, 0), Setting(30, z)
    sharp, center = by_hand(4, setting), by_hand(4, setting, corner=CORNER)
    nearest = minimize_scalar(
        lambda share: hypot(*corner(share)), bounds=(0, 1), method="bounded", options={"xatol": 1e-9}
    ).x
    touch = hypot(*corner(nearest))
    assert removed_arc(center, setting, touch - 1e-6, 0) is None

    def ends(radius: float) -> tuple[float, float]:
        return crossing(corner, radius, 0, nearest), crossing(corner, radius, nearest, 1)

    def share_left(radius: float) -> float:
        low, high = removed_arc(sharp, setting, radius, 0) or (0.0, 0.0)
        return (ends(radius)[1] - ends(radius)[0]) / (high - low)

    for share in (0.018, 0.02, 0.05, 0.2, 0.5):
        radius = brentq(lambda radius, share=share: share_left(radius) - share, touch + 1e-7, hypot(*corner(1.0)))
        assert removed_arc(center, setting, radius, 0) == pytest.approx(ends(radius), abs=1e-9)


def test_at_the_bottom_of_the_cut_the_corner_alone_has_reached_the_steel() -> None:
    """Depth 9: the cutter's flat of 23 ends short of the plane at 24; its corner comes there 0.268 over the floor."""
    setting = Setting(30, 3)
    center = by_hand(4, setting, corner=CORNER)
    arc = removed_arc(center, setting, 36, 9)
    assert arc == pytest.approx((asin((3 + CORNER * (1 - ROOT_3 / 2)) / 36), acos(23 / 36)), abs=1e-12)


# --- where the cutter goes


def test_two_settings_with_the_cutter_off_the_axis() -> None:
    """Six teeth: backs a sixth of a turn less a quarter on, over the axis by 35·cos 60° − 12·sin 60°."""
    face, back = two_settings(74, 26, 50, 10, 6, -12.0, 0.5)
    assert face == one_setting(74, 26, 50, 10, 6, -12.0, 0.5)
    assert back == pytest.approx((0.5 + 12 + 20, 17.5 - 6 * ROOT_3, -30))


def test_bore_is_asked_for_by_five_and_more_teeth_of_two_settings_only() -> None:
    two = (Setting(45, -12), Setting(32.5, 7))
    assert bore_for_two_settings(by_hand(3, *two)) == 0
    assert bore_for_two_settings(by_hand(6, two[0])) == 0
    assert bore_for_two_settings(by_hand(6, *two)) == pytest.approx(2 * sqrt(25**2 + 7**2 - 25 * 7) / (ROOT_3 / 2))


def test_tip_is_the_flank_itself_where_the_back_is_parallel() -> None:
    assert flank_for_tip(20, 4, 1) == 20
    assert flank_for_tip(20, 6, 2) == 20
    assert flank_for_tip(45, 6, 1) == pytest.approx(degrees(atan2(ROOT_3 / 2, 1)))


def test_largest_cutter_off_the_axis() -> None:
    """The rim is 35 along the face, the wall 5: a cutter of 10 + 30²/10."""
    assert largest_cutter(by_hand(6, Setting(25, -12))) == pytest.approx(100)


# --- bite, torque and bending


@pytest.mark.parametrize("scale", [1.0, 0.01, 1e-4])
def test_bite_of_four_teeth_is_where_their_strips_carry_the_thrust(scale: float) -> None:
    """A tooth is the strip of the ring up to the wall: 6 wide at a depth of 5. In any unit of length."""
    center = by_hand(4, Setting(21, 0), scale=scale)
    strip = under_circle(RIM, 0, 6) - under_circle(HOLE, 0, 6)
    assert bite(center, 4 * strip * scale**2 * 45, 45) == pytest.approx(5 * scale, rel=1e-7)


def test_moment_of_a_face_that_follows_the_wall() -> None:
    """∫ (35² − (45 − √(25² − v²))²)/2 dv from 15 to 20."""
    half_disc = 25**2 / 2 * (asin(0.8) - asin(0.6))  # ∫ √(25² − v²): 20·15 and 15·20 cancel
    moment = ((35**2 - 45**2 - 25**2) * 5 + (20**3 - 15**3) / 3 + 2 * 45 * half_disc) / 2
    assert face_moment(by_hand(4, Setting(45, -12)), 5) == pytest.approx(moment, rel=1e-9)


def test_pressure_on_the_faces_is_told_as_soon_as_they_are_in_the_work() -> None:
    """With the wall inside the hole a face runs from 5 to 35: a moment of 600 for each unit of depth."""
    center = by_hand(4, Setting(20, -12))
    assert face_pressure(center, 0.001, 24.0) == pytest.approx(24_000 / (4 * 0.6))
    assert face_pressure(center, 0.0, 24.0) is None


def test_jaws_of_one_setting_bend_as_square_ones() -> None:
    assert bending_angle(by_hand(2, Setting(20, 0)), 0.5) == 90


def test_lowered_tip_has_no_land_to_stiffen_it() -> None:
    """Half a millimeter past the razor edge the wall of 25 is met at 19.5 from the cutter's axis."""
    assert bending_angle(by_hand(4, Setting(31.5, -12)), 0.3) == pytest.approx(degrees(acos(19.5 / 25)))


def test_land_of_next_to_nothing_leaves_the_wedge_angle() -> None:
    for depth in range(1, 195):
        center = ToothedCenter(74, 26, 6.1, depth / 100, 4, (Setting(30, 0),))
        assert bending_angle(center, 1e-18) == pytest.approx(wedge_angle(center, 0.0) or 0.0, abs=1e-5)


def test_edge_of_half_a_degree_has_a_bound() -> None:
    depth = 25 * (1 - sin(radians(0.5)))
    razor = ToothedCenter(74, 26, 50, depth, 4, (Setting(25 * cos(radians(0.5)), 0),))
    assert greatest_bending(razor, 0.0, 2.0) == pytest.approx(6 / (sin(radians(0.5)) / cos(radians(0.5))) ** 2)


def test_no_land_is_asked_for_where_the_back_is_not_parallel() -> None:
    assert land_for_angle(by_hand(5, Setting(45, 0)), 80) == 0
    assert land_for_angle(by_hand(2, Setting(20, 0)), 80) == 0
