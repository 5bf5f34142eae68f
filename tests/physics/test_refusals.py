"""What each formula refuses, at the very edge of what it takes: the input it names, the value, what is accepted."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from advisor.figure import FigureInputError, NoAnswer
from advisor.physics import (
    balance,
    burst,
    cutting,
    drive,
    drying,
    glue,
    jaws,
    proportions,
    relations,
    screws,
    slender,
    steadied,
    tail,
    teeth,
)

Call = Callable[[], float]
BAR = [(0.0, 20.0), (400.0, 20.0)]
ALL_THREE = "all three of a dead center, or none of them for a live one"
RING = "inner_radius", 5, "less than the outer radius 5 mm"

REFUSED: list[tuple[Call, str, object, str]] = [
    (lambda: balance.offset_from_radii([50] * 5), "radii", "5 radii", "6 to 72 radii at equal angles"),
    (lambda: balance.offset_from_radii([50] * 73), "radii", "73 radii", "6 to 72 radii at equal angles"),
    (
        lambda: balance.center_from_radii([0.0] * 6)[0],
        "radii",
        "all zero",
        "radii from the axis, at least one above zero",
    ),
    (lambda: burst.disc_stress(700, 300, 1000, 0.4, bore=300), "bore", 300, "a diameter less than 300 mm"),
    (lambda: drive.ring_drive_torque(friction=0.3, thrust=100, outer_radius=5, inner_radius=5), *RING),
    (lambda: drive.number_taper_torque(8, 1000), "taper", 8, "a number from 0 to 7"),
    (lambda: drying.drying_shrinkage(50, 30, 6), "total", 50, "a shrinkage from 0 to 50 percent"),
    (lambda: drying.dried_oval(100, 3, 3.5), "larger", 3, "at least the smaller one, 3.5 percent"),
    (lambda: drying.diameter_to_leave(75, 50), "shrinkage", 50, "less than 50 percent"),
    (lambda: drying.wall_to_leave(250, 3, 3.5, 8), "larger", 3, "at least the smaller one, 3.5 percent"),
    (lambda: drying.drying_that_loosens(2.3, 0.8, 0), "total", 0, "more than 0 percent"),
    (lambda: glue.jam_fit(0.1, 80, 80, 0.8, 10, 0.3), "outside_diameter", 80, "more than the fit, 80 mm"),
    (lambda: jaws.recess_force(50, 4, 50, 3), "outside_diameter", 50, "more than the recess, 50 mm"),
    (
        lambda: relations.moisture_strength(54, 27.7, 8, intersection=12),
        "intersection",
        12,
        "a moisture above 12 %, 21 to 28 % by species",
    ),
    (
        lambda: screws.screw_group_moment(1000, []),
        "positions",
        [],
        "distances from the pivot edge, at least one above zero",
    ),
    (
        lambda: screws.screw_group_moment(1000, [0.0, 0.0]),
        "positions",
        [0.0, 0.0],
        "distances from the pivot edge, at least one above zero",
    ),
    (lambda: tail.ring_crush_force(20, 20, 40), "inner_diameter", 20, "less than the outer diameter 20 mm"),
    (lambda: drive.required_thrust(9, 9, 1, 1, 1, 1, 9, None, 1.0, 30), "tail_friction", None, ALL_THREE),
    (lambda: drive.required_thrust(9, 9, 1, 1, 1, 1, 9, 0.3, None, 30), "tail_radius", None, ALL_THREE),
    (lambda: drive.required_thrust(9, 9, 1, 1, 1, 1, 9, 0.3, 1.0, None), "tail_half_angle", None, ALL_THREE),
    (
        lambda: cutting.plastic_cutting_force("acetall", 1, 1),
        "material",
        "acetall",
        f"one of {', '.join(cutting.specific_forces())}; did you mean acetal?",
    ),
    (
        lambda: slender.profile_whirl_speed([(0, 20), (99, 9e-4)], 12, 700, "free"),
        "profile",
        9e-4,
        "diameters from 0.001 mm",
    ),
    (lambda: teeth.tooth_penetration(1000, 4, 5, 5, 30, 30, 54, 10), *RING),
    (lambda: teeth.tooth_slip_torque(1000, 4, 5, 5, 30, 30, 54, 10), *RING),
    (
        lambda: slender.profile_whirl_speed([(0, 20)], 12, 700, "free"),
        "profile",
        "1 pairs",
        "2 to 500 pairs position:diameter",
    ),
    (
        lambda: slender.profile_whirl_speed([(0, 20), (9, 20), (8.9, 20)], 12, 700, "free"),
        "profile",
        8.9,
        "positions that never go back; the same one twice is a step",
    ),
    (
        lambda: slender.profile_whirl_speed([(0, 20), (0, 20)], 12, 700, "free"),
        "profile",
        0,
        "a length from 0.001 mm between the first and the last position",
    ),
    (
        lambda: steadied.supported_whirl_speed(BAR, 12, 700, "free", 0, steady=0),
        "steady",
        0,
        "a place between 0 and 400 mm",
    ),
    (
        lambda: steadied.supported_whirl_speed(BAR, 12, 700, "free", 0, steady=400),
        "steady",
        400,
        "a place between 0 and 400 mm",
    ),
]

NONE_THERE: list[tuple[Call, str]] = [
    (lambda: balance.speed_of_force(60, 10, 0), "a blank without offset turns with no force of its own"),
    (
        lambda: cutting.wood_cutting_force(6, 0.0499, 650, "along"),
        "chip thickness outside 0.05 to 1.5 mm: the model ends there",
    ),
    (
        lambda: cutting.wood_cutting_force(6, 0.2, 650, "along", rake=45.5),
        "rake outside 0 to 45°: the model ends there",
    ),
    (
        lambda: proportions.recess_outside_diameter(1000, 10, 2, 5),
        "a recess this small and shallow splits whatever the wood round it",
    ),
    (
        lambda: cutting.plastic_cutting_force("acetal", 6, 1.501),
        "chip thickness outside 0.05 to 1.5 mm: the model ends there",
    ),
    (
        lambda: drive.required_thrust(100, 50, 1, 1, 0.5, 0.2, 10, 0.5, 1.0, 30),
        "this drive cannot turn this dead center: it drags more than the drive carries",
    ),
    (
        lambda: jaws.chuck_speed(grip=3000, needed_grip=1000, safety=3, jaw_moment=0.02),
        "the grip at rest over its safety is already no more than what is needed",
    ),
    (lambda: jaws.collet_grip(100, 60, 0.5774), "a cone this blunt with this friction does not close"),
    (lambda: proportions.screw_count(100, 0, 40, 3), "screws that carry nothing sideways"),
    (lambda: relations.moisture_strength(54, 27.7, 5.9), "the moisture relation is not carried below 6 %"),
    (lambda: slender.bowing_factor(1000, 1000), "the thrust is as great as the buckling force"),
    (
        lambda: slender.buckling_force(diameter=20, length=159.9, modulus=12),
        "below length / diameter 8 the wood crushes before it bows",
    ),
    (
        lambda: slender.whirl_speed(20, 99.9, 12, 700, "pinned-pinned"),
        "below length / diameter 5 the bar is too stubby for bending alone",
    ),
    (
        lambda: slender.whirl_speed(20, 49.9, 12, 700, "free"),
        "below length / diameter 2.5 the bar is too stubby for bending alone",
    ),
    (
        lambda: slender.whirl_speed(20, 400, 12, 700, "pinned-pinned", thrust=1e5),
        "the thrust is as great as the buckling force: the bar bows away at any speed",
    ),
    (
        lambda: slender.profile_whirl_speed(BAR, 12, 700, "pinned-pinned", thrust=1e5),
        "the thrust is as great as the buckling force: the bar bows away at any speed",
    ),
    (
        lambda: steadied.supported_whirl_speed(BAR, 12, 700, "pinned-pinned", 1e5),
        "the thrust is as great as the buckling force: the bar bows away at any speed",
    ),
    (lambda: teeth.tooth_penetration(1000, 4, 5, 12, 0, 0, 54, 10, friction=0), teeth.NO_RESISTANCE),
    (lambda: teeth.tooth_slip_torque(1000, 4, 5, 12, 0, 0, 54, 10, friction=0), teeth.NO_RESISTANCE),
]


@pytest.mark.parametrize(("call", "name", "value", "accepted"), REFUSED)
def test_refused_at_the_edge(call: Call, name: str, value: object, accepted: str) -> None:
    with pytest.raises(FigureInputError) as refused:
        call()
    assert (refused.value.name, refused.value.value) == (name, value)
    assert refused.value.accepted == accepted


@pytest.mark.parametrize(("call", "reason"), NONE_THERE)
def test_no_answer_beyond_the_edge(call: Call, reason: str) -> None:
    with pytest.raises(NoAnswer) as none:
        call()
    assert none.value.reason == reason


ALLOWED: list[Call] = [
    lambda: drying.drying_shrinkage(0, 30, 6) + 1,
    lambda: drying.drying_shrinkage(49.9, 30, 6),
    lambda: drying.dried_oval(100, 3.5, 3.5) + 1,
    lambda: drying.diameter_to_leave(75, 49.9),
    lambda: drying.wall_to_leave(250, 3.5, 3.5, 8),
    lambda: jaws.chuck_speed(grip=3000, needed_grip=999.5, safety=3, jaw_moment=0.02),
    lambda: relations.moisture_strength(54, 27.7, 6),
    lambda: cutting.wood_cutting_force(6, 0.05, 650, "along"),
    lambda: cutting.wood_cutting_force(6, 1.5, 650, "end", rake=0),
    lambda: cutting.wood_cutting_force(6, 1.5, 650, "end", rake=45),
    lambda: slender.buckling_force(diameter=20, length=160, modulus=12),
    lambda: slender.whirl_speed(20, 100, 12, 700, "pinned-pinned"),
    lambda: slender.whirl_speed(20, 50, 12, 700, "free"),
    lambda: slender.profile_whirl_speed([(0, 0.001), (0.1, 0.001)], 12, 700, "free"),
    lambda: slender.profile_whirl_speed([(step, 20) for step in range(0, 2000, 4)], 12, 700, "free"),
    lambda: proportions.screw_count(100, 0.5, 40, 3),
    lambda: balance.speed_of_force(60, 10, 0.5),
    lambda: balance.offset_from_radii([0.1, 0.1, 0.1, 0.1, 0.1, 0.2]),
    lambda: screws.screw_group_moment(1000, [0.5]),
]


@pytest.mark.parametrize("call", ALLOWED)
def test_taken_on_the_edge(call: Call) -> None:
    assert call() > 0
