"""Where formulas meet: zero thrust, no crack, one end of a range, and the steps between laws."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest

from advisor.figure import FigureInputError, Grade, NoAnswer
from advisor.physics import balance, burst, cutting, drive, jaws, relations, slender, steadied, tail, teeth
from advisor.physics.beam import elements
from advisor.physics.contact import friction

ENDS: tuple[slender.Ends, ...] = ("pinned-pinned", "fixed-pinned", "fixed-fixed", "free")


@pytest.mark.parametrize("ends", ENDS)
def test_uniform_profile_is_the_uniform_bar(ends: slender.Ends) -> None:
    bar = slender.whirl_speed(diameter=25, length=900, modulus=12, density=700, ends=ends, thrust=0)
    profile = slender.profile_whirl_speed(profile=[(0, 25), (900, 25)], modulus=12, density=700, ends=ends)
    assert profile == pytest.approx(bar, rel=2e-4)


def test_step_and_steep_taper_are_neighbors() -> None:
    """The same position twice is a step; a step an atom wide is one too, and a short steep taper is nearly one."""
    same = {"modulus": 12.0, "density": 700.0}
    step = [(0.0, 30.0), (300.0, 30.0), (300.0, 20.0), (700.0, 20.0)]
    atom = [(0.0, 30.0), (300.0, 30.0), (300.000001, 20.0), (700.0, 20.0)]
    taper = [(0.0, 30.0), (299.9, 30.0), (300.1, 20.0), (700.0, 20.0)]
    found = [slender.profile_whirl_speed(profile=form, ends="pinned-pinned", **same) for form in (step, atom, taper)]
    assert found == pytest.approx([found[0]] * 3, rel=1e-3)


def test_profile_may_begin_anywhere_and_repeat_points() -> None:
    plain = [(0.0, 30.0), (500.0, 18.0), (700.0, 25.0)]
    shifted = [(40.0, 30.0), (40.0, 30.0), (540.0, 18.0), (540.0, 18.0), (740.0, 25.0)]
    found = [
        slender.profile_whirl_speed(profile=form, modulus=12, density=700, ends="fixed-pinned")
        for form in (plain, shifted)
    ]
    assert found[0] == pytest.approx(found[1], rel=1e-9)


def test_elements_fill_the_bar() -> None:
    form = [(0.0, 1.0), (0.3, 1.0), (0.3, 0.4), (0.30001, 0.5), (1.0, 0.9)]
    pieces = list(elements(form))
    assert sum(length for length, _, _ in pieces) == pytest.approx(1.0, abs=1e-12)
    assert pieces[0][1] == 1.0
    assert pieces[-1][2] == pytest.approx(0.9)


def test_elements_are_no_longer_than_a_twentieth_and_no_more_than_that_asks_for() -> None:
    assert len(list(elements([(0.0, 1.0), (1.0, 1.0)]))) == 20
    assert len(list(elements([(0.0, 1.0), (0.05, 1.0), (1.0, 1.0)]))) == 20
    assert len(list(elements([(0.0, 1.0), (0.04, 1.0), (1.0, 1.0)]))) == 1 + 20
    assert max(length for length, _, _ in elements([(0.0, 1.0), (0.32, 1.0), (1.0, 1.0)])) <= 0.05


@pytest.mark.parametrize("thin", [0.9, 0.5, 0.1])
def test_a_steep_taper_is_cut_as_fine_as_its_slope_asks_for(thin: float) -> None:
    """As many pieces as the logarithm of the diameters has steps of 0.15, whichever end is the thicker."""
    for form in (
        [(0.0, 1.0), (0.05, thin), (1.0, thin)],
        [(0.0, thin), (0.05, 1.0), (1.0, 1.0)],
        [(0.0, 1.0), (0.05, 1.0), (0.05, 0.3), (0.1, 0.3 * thin), (1.0, 0.3 * thin)],
    ):
        pieces = [piece for piece in elements(form) if piece[1] != piece[2]]
        assert len(pieces) == math.ceil(-math.log(thin) / 0.15)
    spread = list(elements([(0.0, 1.0), (1.0, thin)]))
    assert len(spread) == max(20, len(pieces))


@pytest.mark.parametrize("share", [0.05, 0.1, 0.2, 0.35])
def test_steady_holds_alike_from_either_end(share: float) -> None:
    bar = [(0.0, 25.0), (900.0, 25.0)]
    for ends in ("pinned-pinned", "fixed-fixed"):
        near, far = (
            steadied.supported_whirl_speed(bar, 12, 700, ends, 0, steady=900 * place) for place in (share, 1 - share)
        )
        assert near == pytest.approx(far, rel=1e-6)


def test_thrust_just_under_buckling_almost_stops_the_whirl() -> None:
    limit = slender.buckling_force(diameter=20, length=800, modulus=10)
    full = slender.whirl_speed(diameter=20, length=800, modulus=10, density=600, ends="pinned-pinned")
    near = slender.whirl_speed(
        diameter=20, length=800, modulus=10, density=600, ends="pinned-pinned", thrust=0.9999 * limit
    )
    assert near < 0.02 * full
    with pytest.raises(NoAnswer):
        slender.whirl_speed(diameter=20, length=800, modulus=10, density=600, ends="pinned-pinned", thrust=limit)


@pytest.mark.parametrize(("ratio", "factor"), [(5, 0.83), (6.5, 0.875), (8, 0.92), (10, 0.95), (15, 0.98)])
def test_shear_factor_at_its_points(ratio: float, factor: float) -> None:
    assert slender.whirl_shear_factor(ratio) == pytest.approx(factor)


def test_shear_factor_goes_to_one_without_a_jump_and_ends_at_five() -> None:
    values = [slender.whirl_shear_factor(5 + step / 10) or 0.0 for step in range(600)]
    assert all(0 <= after - before < 0.004 for before, after in pairwise(values))
    assert values[-1] > 0.998
    assert slender.whirl_shear_factor(4.999) is None
    assert slender.whirl_shear_factor(30) == pytest.approx(1 - 0.02 / 4)  # what is missing falls as (D/L)²


def test_no_thrust_does_nothing() -> None:
    bar = {"diameter": 5.0, "length": 900.0, "modulus": 12.0, "density": 700.0}
    assert slender.whirl_speed(**bar, ends="free") == slender.whirl_speed(**bar, ends="free", thrust=0)
    assert drive.ring_drive_torque(friction=0.3, thrust=0, outer_radius=10) == 0
    assert tail.cone_splitting_force(thrust=0, half_angle=30, friction=0.3) == 0
    assert tail.cone_sink(thrust=0, end_strength=40, half_angle=30) == 0
    assert slender.bowing_factor(0, 1000) == 1
    assert drive.dead_center_heat(friction=0.3, thrust=0, radius=3, half_angle=30, rpm=900) == 0


def test_split_without_a_crack_is_the_default() -> None:
    wood = {"tension_perpendicular": 6.0, "modulus_perpendicular": 0.8, "modulus_along": 12.0, "fracture_energy": 300.0}
    sound = tail.split_capacity(diameter=60, **wood)
    assert tail.split_capacity(diameter=60, crack_depth=0, sound=1, **wood) == sound
    assert tail.split_capacity(diameter=60, crack_depth=1e-6, sound=1, **wood) == pytest.approx(sound, rel=1e-6)
    assert tail.split_capacity(diameter=60, sound=0, **wood) == 0


def test_small_blanks_split_by_strength_and_large_ones_by_energy() -> None:
    """D² at first, D^1.5 once fracture energy rules."""
    wood = {"tension_perpendicular": 5.0, "modulus_perpendicular": 0.8, "modulus_along": 12.0, "fracture_energy": 300.0}
    small = tail.split_capacity(diameter=20, **wood) / tail.split_capacity(diameter=10, **wood)
    large = tail.split_capacity(diameter=600, **wood) / tail.split_capacity(diameter=300, **wood)
    assert math.log2(small) == pytest.approx(2, abs=1e-9)
    assert math.log2(large) == pytest.approx(1.5, abs=1e-9)


@pytest.mark.parametrize(("density", "energy"), [(100, 100), (245, 100.15), (450, 319.5), (618.7, 500), (900, 500)])
def test_fracture_energy_keeps_its_bounds(density: float, energy: float) -> None:
    assert tail.fracture_energy(density) == pytest.approx(energy, abs=0.1)


def test_flank_too_blunt_to_slide_in_opens_nothing() -> None:
    assert tail.cone_splitting_force(thrust=1000, half_angle=70, friction=0.4) == 0
    assert tail.wedge_splitting_force(thrust=1000, half_angle=70, friction=0.4) == 0
    near = tail.cone_splitting_force(thrust=1000, half_angle=68, friction=0.4)
    assert 0 < near < 5


def test_sharp_ring_never_carries_less_than_a_flat_one() -> None:
    flat = drive.ring_drive_torque(friction=0.9, thrust=1000, outer_radius=10)
    assert drive.sharp_ring_torque(0.9, 1000, 10, 80) == pytest.approx(flat)
    assert drive.sharp_ring_torque(0.2, 1000, 10, 20) > drive.ring_drive_torque(
        friction=0.2, thrust=1000, outer_radius=10
    )


# Taper on the diameter, 1 in so much, of the number-series shanks; ISO 296 from memory.
SHANK_TAPERS = (19.212, 20.047, 20.020, 19.922, 19.254, 19.002, 19.180, 19.231)


@pytest.mark.parametrize("number", range(8))
def test_number_tapers_are_those_of_the_standard(number: int) -> None:
    found = drive.NUMBER_TAPERS[number]
    slope = 1 / (2 * SHANK_TAPERS[number])
    assert math.tan(math.radians(found.half_angle)) == pytest.approx(slope, rel=0.006)
    carried = 0.12 * 700 * found.mean_radius / 1000 / (slope + 0.12) * math.hypot(1, slope)
    assert drive.number_taper_torque(number, 700, 0.12) == pytest.approx(carried, rel=0.002)


def test_larger_tapers_carry_more() -> None:
    torques = [drive.number_taper_torque(number, 500) for number in drive.NUMBER_TAPERS]
    assert torques == sorted(torques)
    with pytest.raises(FigureInputError, match="taper"):
        drive.number_taper_torque(9, 500)


def test_drive_that_hardly_carries_more_than_the_dead_center_drags_still_has_a_thrust() -> None:
    """Half a millimeter of arm is left of 1.5: 20 N at 10 mm, three times over, ask for 1200 N."""
    thrust = drive.required_thrust(20, 10, 1.5, 2, 0.5, 0.25, 12, tail_friction=0.25, tail_radius=2, tail_half_angle=30)
    assert thrust == pytest.approx(1200)


def test_wood_softer_than_a_megapascal_still_meets_the_teeth() -> None:
    """Half of all strengths: twice the depth, the same grip."""
    firm = {"face_angle": 30.0, "back_angle": 30.0, "friction": 0.35, "parallel": 1.0, "perpendicular": 0.2}
    soft = {**firm, "parallel": 0.5, "perpendicular": 0.1}
    assert teeth.entry_resistance(**firm) < 1
    assert teeth.grip_low(**soft) == pytest.approx(teeth.grip_low(**firm))
    assert math.isfinite(teeth.grip_low(**soft))
    depths = [
        teeth.tooth_penetration(thrust=5, teeth=4, inner_radius=5, outer_radius=12, **wood) for wood in (firm, soft)
    ]
    assert depths[1] == pytest.approx(2 * depths[0])


def test_effective_grip_is_capped_three_ways() -> None:
    assert teeth.grip_best(0.3, 5) == pytest.approx(0.6)
    assert teeth.grip_best(0.9, 1.2) == pytest.approx(1.2)
    assert teeth.grip_best(2.0, math.inf) == 1.5


def test_low_friction_lowers_the_floor_of_the_grip() -> None:
    """Below its 0.20 floor the grip of blunt teeth is no better than the friction that was given."""
    assert teeth.grip_low(75, 75, 0.10, 54, 3) == pytest.approx(0.10)
    assert teeth.grip_low(75, 75, 0.50, 54, 3) == pytest.approx(0.20)


@pytest.mark.parametrize(("half_angle", "span"), [(30, (0.13, 0.75)), (15, (0.21, 1.45))])
def test_span_of_the_grip_over_what_is_not_known(
    half_angle: float, span: tuple[float, float], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Constraint 0.7 to 2.5 and friction 0.2 to 0.65 move the grip of 60° and 30° teeth this far."""
    found = []
    for constraint, rub in ((2.5, 0.65), (0.7, 0.2)):
        monkeypatch.setattr(teeth, "INDENTATION_FACTOR", constraint)
        bearing = teeth.WORKING_FACTOR * 10.1
        found.append(bearing / teeth.entry_resistance(half_angle, half_angle, rub, 54, 10.1))
    assert found == pytest.approx(span, abs=0.01)


def test_moisture_relation_is_flat_above_its_intersection() -> None:
    wet = [relations.moisture_strength(dry=50, green=25, moisture=moisture) for moisture in (25, 30, 80, 120)]
    assert wet == [25] * 4
    with pytest.raises(NoAnswer):
        relations.moisture_strength(dry=50, green=25, moisture=5.99)


def test_lower_value_keeps_a_quarter_of_the_mean() -> None:
    assert relations.lower_value(mean=8, variation=0) == 8
    assert relations.lower_value(mean=8, variation=2) == 2
    edge = 0.75 / 1.645
    below, above = (relations.lower_value(mean=1, variation=edge * share) for share in (0.999, 1.001))
    assert below - above < 0.001


def test_total_factor_is_two_at_least() -> None:
    assert relations.total_factor(0.05, 0.05, 2) == 2
    assert relations.design_resistance(1, 0.3, 3) < 1 < relations.design_load(1, 0.3, 3)
    assert set(relations.MODEL_VARIATION) == {Grade.CALCULATED, Grade.ESTIMATE, Grade.ROUGH_GUIDE}


def test_shoulder_counts_only_where_it_gives_more() -> None:
    bare = jaws.jaw_moment(friction=0.3, grip=4000, diameter=50, length=8)
    assert jaws.jaw_moment(friction=0.3, grip=4000, diameter=50, length=8, shoulder_radius=0) == bare
    assert jaws.jaw_moment(friction=0.3, grip=4000, diameter=50, length=8, shoulder_radius=10) == bare


def test_a_bore_of_nothing_is_a_solid_disc_and_a_pin_hole_doubles_the_stress() -> None:
    solid = burst.disc_stress(density=700, diameter=300, rpm=1000, poisson=0.4)
    assert burst.disc_stress(density=700, diameter=300, rpm=1000, poisson=0.4, bore=0) == solid
    assert burst.disc_stress(density=700, diameter=300, rpm=1000, poisson=0.4, bore=0.01) == pytest.approx(2 * solid)


def test_strength_of_the_diametral_plane() -> None:
    assert burst.diametral_strength(3, 80, "hardwood") == 3
    assert burst.diametral_strength(3, 1000, "hardwood") == pytest.approx(3 * 0.1**0.6)
    assert burst.diametral_strength(1, 1000, "hardwood") == 0.6
    assert burst.diametral_strength(1, 1000, "softwood") == 0.4
    assert burst.diametral_strength(0.3, 1000, "hardwood") == 0.3


def test_crack_stress_is_where_half_of_the_toughness_is_reached() -> None:
    stress = burst.crack_stress(40)
    assert burst.crack_intensity(stress, 40) == pytest.approx(0.1)
    assert burst.crack_stress(80) < stress


def test_wet_wood_cuts_easier_down_to_seven_tenths() -> None:
    assert [cutting.moisture_factor(moisture) for moisture in (0, 12, 30, 100)] == [1, 1, 0.7, 0.7]
    assert cutting.rake_factor(60) == 0.7


@pytest.mark.parametrize("thickness", [0.05, 1.5])
def test_ends_of_the_chip_are_inside(thickness: float) -> None:
    assert cutting.wood_cutting_force(width=5, thickness=thickness, density=600, mode="along") > 0
    assert cutting.plastic_cutting_force(material="PTFE", width=5, thickness=thickness) > 0


def test_materials_go_by_several_names() -> None:
    assert cutting.specific_force("Canvas Phenolic") == cutting.specific_force("canvas-phenolic") == 150
    assert cutting.specific_force("POM") == cutting.specific_force("acetal")


def test_plastics_cut_as_the_table_of_materials_says() -> None:
    """One plastic, one specific force, in whichever table it stands."""
    from advisor.models.material import resolve

    for name in ("ptfe", "hdpe", "nylon", "acetal", "acrylic", "pvc", "polycarbonate", "canvas-phenolic"):
        records = resolve(name).records
        assert cutting.specific_force(name) in {record.cutting_k for record in records}, name


def test_bolted_lathe_carries_more_than_a_free_one() -> None:
    free = balance.floor_force(200, 0.4, 250, 1100, 3)
    assert balance.bolted_force(200) > free
    assert balance.speed_of_force(free, 5, 5) == pytest.approx(
        balance.walking_speed(
            lathe_mass=195,
            blank_mass=5,
            offset=5,
            friction=0.4,
            half_base=250,
            spindle_height=1100,
            amplification=3,
        )
    )


@pytest.mark.parametrize("pair", ["steel-dry", "steel-wet", "rubber", "nylon-steel"])
def test_friction_rises_from_low_to_high(pair: str) -> None:
    found = friction(pair)
    assert found.low < found.typical < found.high
