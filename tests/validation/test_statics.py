"""Closed forms of friction and strength against pressure summed over small pieces with scipy.

Compared: the cone, ring, taper and splitting figures, `jaw-moment`, `collet-grip`, the glue and tenon figures,
`slide-force`, `tip-force`, `screw-group-moment`, `required-thrust`, the teeth, `air-pressure` aside.
"""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.optimize import brentq

from advisor.physics import balance, drive, glue, jaws, screws, tail, teeth

SOURCES = ("statics", "roark")



def test_cone_opens_what_the_pressure_on_one_half_gives() -> None:
    """Normal pressure p on the flank, friction along it; the two halves part across one plane."""
    thrust, alpha, friction, radius = 800.0, math.radians(25), 0.3, 4.0
    # per unit of p: axial force and force across the plane, over r from 0 to R on the slant surface
    rings, _ = quad(lambda r: r / math.sin(alpha), 0, radius)
    axial = 2 * math.pi * rings * (math.sin(alpha) + friction * math.cos(alpha))
    radial = rings * (math.cos(alpha) - friction * math.sin(alpha))
    across, _ = quad(lambda turn: radial * math.cos(turn), -math.pi / 2, math.pi / 2)
    found = tail.cone_splitting_force(thrust=thrust, half_angle=25, friction=friction)
    assert found == pytest.approx(thrust * across / axial, rel=1e-9)


def test_wedge_opens_what_its_two_flanks_give() -> None:
    alpha, friction, thrust = math.radians(20), 0.25, 500.0
    normal = thrust / (2 * (math.sin(alpha) + friction * math.cos(alpha)))
    expected = normal * (math.cos(alpha) - friction * math.sin(alpha))
    assert tail.wedge_splitting_force(thrust=thrust, half_angle=20, friction=friction) == pytest.approx(expected)


def test_ring_rubs_at_its_mean_radius() -> None:
    moment, _ = quad(lambda r: 2 * math.pi * r**2, 5, 14)
    area = math.pi * (14**2 - 5**2)
    found = drive.ring_drive_torque(friction=0.3, thrust=900, outer_radius=14, inner_radius=5)
    assert found == pytest.approx(0.3 * 900 * moment / area / 1000, rel=1e-9)


def test_point_rubs_on_its_slant_surface() -> None:
    alpha, radius = math.radians(30), 2.3
    area, _ = quad(lambda r: 2 * math.pi * r, 0, radius)
    moment, _ = quad(lambda r: 2 * math.pi * r**2 / math.sin(alpha), 0, radius)
    expected = 0.35 * 1000 * moment / area / 1000
    found = drive.cone_torque(
        friction=0.35, thrust=1000, half_angle=30, mean_radius=drive.mean_ring_radius(radius, 0)
    )
    assert found == pytest.approx(expected, rel=1e-9)


def test_taper_carries_what_its_normal_force_rubs() -> None:
    alpha, friction, thrust = math.radians(1.43), 0.15, 700.0
    normal = brentq(lambda n: n * math.sin(alpha) + friction * n * math.cos(alpha) - thrust, 0, 1e6)
    found = drive.taper_torque(friction=friction, thrust=thrust, half_angle=1.43, mean_radius=8)
    assert found == pytest.approx(friction * normal * 8 / 1000, rel=1e-9)


def test_seated_taper_is_the_same_with_two_kilonewtons_more() -> None:
    assert drive.seated_taper_torque(0.15, 1000, 1.43, 8) == drive.taper_torque(0.15, 3000, 1.43, 8)


def test_collet_closes_by_its_wedge() -> None:
    alpha, friction, pull = math.radians(10), 0.12, 3000.0
    normal = pull / (math.sin(alpha) + friction * math.cos(alpha))
    expected = normal * (math.cos(alpha) - friction * math.sin(alpha))
    assert jaws.collet_grip(draw_force=pull, half_angle=10, friction=friction) == pytest.approx(expected)


def test_jaws_resist_tipping_by_shifted_pressure_and_axial_friction() -> None:
    """Even pressure round a tenon may shift until one edge is bare, and rubs axially on both sides."""
    grip, diameter, length, friction = 4000.0, 50.0, 8.0, 0.35
    pressure = grip / (math.pi * diameter * length)
    rubbing, _ = quad(lambda turn: abs(math.sin(turn)) * diameter / 2, 0, 2 * math.pi)
    axial = friction * pressure * length * diameter / 2 * rubbing
    # pressure p·(1 + sin(turn)·2z/h) keeps the grip and reaches zero at the edges
    lever, _ = quad(lambda z: 2 * z**2 / length, -length / 2, length / 2)
    shift, _ = quad(lambda turn: math.sin(turn) ** 2, 0, 2 * math.pi)
    tilting = pressure * lever * shift * diameter / 2
    found = jaws.jaw_moment(friction=friction, grip=grip, diameter=diameter, length=length)
    assert found * 1000 == pytest.approx(axial + tilting, rel=1e-6)


def test_glue_and_tenon_sections() -> None:
    torque, _ = quad(lambda r: 2 * math.pi * r**2 * (r / 30), 0, 30)
    assert glue.glue_torque(shear=1, diameter=60) == pytest.approx(torque / 1000, rel=1e-9)
    moment, _ = quad(lambda y: 2 * math.sqrt(30**2 - y**2) * y * (y / 30), -30, 30)
    assert glue.glue_moment(peel=1, diameter=60) == pytest.approx(moment / 1000, rel=1e-6)
    assert jaws.tenon_root_moment(diameter=60, strength=1) == pytest.approx(moment / 1000, rel=1e-6)


def test_lathe_slides_at_the_worst_angle_of_the_turn() -> None:
    weight, friction = 120 * 9.80665, 0.4
    turns = np.linspace(0, 2 * math.pi, 200_001)
    force = friction * weight / (np.cos(turns) + friction * np.sin(turns))
    assert balance.slide_force(mass=120, friction=friction) == pytest.approx(force[force > 0].min(), rel=1e-6)


def test_lathe_tips_at_the_worst_angle_of_the_turn() -> None:
    weight, half_base, height = 120 * 9.80665, 0.25, 1.1
    turns = np.linspace(0, 2 * math.pi, 200_001)
    lever = height * np.cos(turns) + half_base * np.sin(turns)
    force = weight * half_base / lever[lever > 0]
    found = balance.tip_force(mass=120, half_base=250, spindle_height=1100)
    assert found == pytest.approx(force.min(), rel=1e-6)


def test_screwed_plate_on_springs() -> None:
    places = [15.0, 40.0, 90.0, 120.0]
    forces = [1000 * place / max(places) for place in places]
    moment = sum(force * place for force, place in zip(forces, places, strict=True)) / 1000
    assert screws.screw_group_moment(withdrawal=1000, positions=places) == pytest.approx(moment)
    assert screws.screw_group_torque(500, places) == pytest.approx(0.5 * sum(places))


def test_required_thrust_balances_the_torque() -> None:
    def spare(thrust: float) -> float:
        driven = 0.9 * 0.5 * thrust * 10
        dragged = drive.cone_torque(friction=0.3, thrust=thrust, half_angle=30, mean_radius=2) * 1000
        return driven - dragged - 1.5 * 1.5 * 30 * 20

    found = drive.required_thrust(
        cutting_force=30,
        radius=20,
        peak=1.5,
        safety=1.5,
        share=0.9,
        grip=0.5,
        mean_radius=10,
        tail_friction=0.3,
        tail_radius=2,
        tail_half_angle=30,
    )
    assert found == pytest.approx(brentq(spare, 0, 1e5), rel=1e-9)


def test_teeth_sink_until_their_flanks_carry_the_thrust() -> None:
    """Pressure and friction on both flanks over the sunk part, depth by root search; the wood's law is the model's."""

    def carried(depth: float) -> float:
        total = 0.0
        for angle in (30.0, 20.0):
            lean = math.radians(angle)
            slant = depth / math.cos(lean)
            pressure = teeth.flank_pressure(angle, 49.0, 4.8)
            total += 4 * 7 * slant * pressure * (math.sin(lean) + 0.3 * math.cos(lean))
        return total

    depth = brentq(lambda h: carried(h) - 0.9 * 900, 0, 50)
    found = teeth.tooth_penetration(
        thrust=900,
        teeth=4,
        inner_radius=4,
        outer_radius=11,
        face_angle=30,
        back_angle=20,
        parallel=49,
        perpendicular=4.8,
        friction=0.3,
    )
    assert found == pytest.approx(depth, rel=1e-9)
    pressed = teeth.press_force(found, 4, 4, 11, 30, 20, 49.0, 4.8, friction=0.3)
    assert pressed == pytest.approx(900, rel=1e-9)


def test_teeth_climb_out_where_friction_no_longer_holds_the_flank() -> None:
    """A block on an incline: sideways force over the force that keeps it down, at the point of sliding up."""
    lean, friction = math.radians(40), 0.25
    normal = 1.0
    sideways = normal * math.cos(lean) + friction * normal * math.sin(lean)
    lifting = normal * math.sin(lean) - friction * normal * math.cos(lean)
    assert teeth.grip_ride(40, friction) == pytest.approx(sideways / lifting, rel=1e-9)
    assert teeth.hold_down_thrust(5, 10, 40, friction) == pytest.approx(500 * lifting / sideways, rel=1e-9)
    assert math.isinf(teeth.grip_ride(10, 0.35))
    assert teeth.hold_down_thrust(5, 10, 10, 0.35) == 0


def test_handwheel_does_the_work_of_its_turn() -> None:
    thrust = tail.handwheel_thrust(torque=3, lead=5, efficiency=0.2)
    assert thrust * 0.005 == pytest.approx(0.2 * 3 * 2 * math.pi)
    assert tail.handwheel_torque(thrust, 5, 0.2) == pytest.approx(3)
