"""Small formulas against the statics they come from: sums over pieces, second ways round, neighbors."""

from __future__ import annotations

import functools
import math
from collections.abc import Callable

import pytest
from scipy.integrate import quad

from advisor.figure import NoAnswer
from advisor.physics import (
    burst,
    center,
    center_setting,
    cutting,
    drive,
    drying,
    glue,
    jaws,
    proportions,
    rim,
    screws,
    slender,
    steadied,
    tail,
    teeth,
    vacuum,
)


def rubbing_moment(inner: float, outer: float) -> float:
    """Mean radius at which even pressure on a ring rubs, by summing over rings."""
    moment, _ = quad(lambda r: 2 * math.pi * r**2, inner, outer)
    return float(moment) / (math.pi * (outer**2 - inner**2))


def test_face_of_a_screw_chuck_rubs_as_a_disc() -> None:
    expected = 0.2 * 600 * rubbing_moment(0, 30) / 1000
    assert screws.screw_chuck_torque(0.2, 600, 30) == pytest.approx(expected)


def test_lone_screw_is_pulled_out_over_the_edge_of_its_face() -> None:
    """3410 N, 30 mm from the edge: 102.3 N·m."""
    assert screws.screw_chuck_moment(3410, 30) == pytest.approx(102.3)


def test_screws_share_a_pull_and_a_push() -> None:
    assert screws.screw_use(400, 400, 0, 200) == 1
    assert screws.screw_use(0, 400, 200, 200) == 1
    assert screws.screw_use(100, 400, 50, 200) == pytest.approx(0.5)


def test_one_screw_alone_carries_its_own_moment() -> None:
    """At half a millimeter and at ten: one screw, its pull times its distance."""
    assert screws.screw_group_moment(withdrawal=1000, positions=[0.5]) == pytest.approx(0.5)
    assert screws.screw_group_moment(withdrawal=1000, positions=[0, 10]) == pytest.approx(10)


def test_seal_lets_go_half_way_to_turning_over() -> None:
    """A force in the middle of a ring overturns at F·r; even pressure is gone at the edge at half of that."""
    assert vacuum.seal_moment(628.3, 50) == pytest.approx(628.3 * 0.050 / 2)
    assert vacuum.seal_torque(0.35, 628.3, 50) == pytest.approx(0.35 * 628.3 * 0.050)


def test_mean_stress_is_the_force_over_the_area_of_the_circle() -> None:
    area, _ = quad(lambda x: 2 * math.sqrt(12.5**2 - x**2), -12.5, 12.5)
    assert slender.mean_stress(1000, 25) == pytest.approx(1000 / area)


def test_half_of_the_buckling_force_doubles_a_bow() -> None:
    assert slender.bowing_factor(500, 1000) == pytest.approx(2)


def test_side_grain_bears_between_its_two_strengths() -> None:
    """Half of the teeth across the grain at 1.5 times its strength, half along it, there at twice that at most."""
    assert teeth.side_grain_bearing(54.0, 10.0) == pytest.approx((15 + 30) / 2)
    assert teeth.side_grain_bearing(20.0, 10.0) == pytest.approx((15 + 20) / 2)


def test_collet_closes_until_wedge_and_friction_make_a_right_angle() -> None:
    nearly = jaws.collet_grip(draw_force=100, half_angle=60, friction=math.tan(math.radians(29)))
    assert nearly == pytest.approx(100 / math.tan(math.radians(89)))


def test_energy_of_a_spinning_disc_is_that_of_its_rings() -> None:
    """10 kg, 300 mm, 1000 rpm: ½·∫ v² dm over rings of the disc."""
    speed = 1000 * math.tau / 60
    energy, _ = quad(lambda r: 0.5 * (speed * r) ** 2 * 10 * 2 * r / 0.150**2, 0, 0.150)
    assert rim.spinning_energy(mass=10, diameter=300, rpm=1000) == pytest.approx(energy)


def test_strength_across_the_grain_does_not_grow_in_small_blanks() -> None:
    assert burst.diametral_strength(2.7, 50, "hardwood") == 2.7
    assert burst.diametral_strength(2.7, 200, "hardwood") == pytest.approx(2.7 * 0.5**0.6)


def test_crack_intensity_is_that_of_an_edge_crack() -> None:
    """1.12·σ·√(π·a) for a crack from an edge: 1 MPa, 1/π m deep, gives 1.12 MPa·√m."""
    assert burst.crack_intensity(1.0, 1000 / math.pi) == pytest.approx(1.12)
    assert burst.crack_stress(1000 / math.pi, toughness=0.5) == pytest.approx(0.5 / 2 / 1.12)


def test_handwheel_lifts_like_a_screw_with_losses() -> None:
    """One turn moves the thrust by the lead: T·2π·η = F·lead."""
    assert tail.handwheel_torque(1000, 4, efficiency=1.0) * math.tau == pytest.approx(4.0)
    assert tail.handwheel_torque(1000, 4) == pytest.approx(4.0 / math.tau / 0.25)


@pytest.mark.parametrize("name", ["acetal", " Acetal ", "POM", "polyoxymethylene"])
def test_plastic_goes_by_every_name(name: str) -> None:
    assert cutting.specific_force(name) == 100


@pytest.mark.parametrize("name", ["canvas-phenolic", "Canvas Phenolic", "canvas_phenolic", "canvas"])
def test_words_of_a_name_may_be_joined_in_any_way(name: str) -> None:
    assert cutting.specific_force(name) == 150


def test_screws_are_counted_up() -> None:
    """100 N·m at 40 mm on screws of 1000 N with 2: five; 100.1 N·m: six."""
    assert proportions.screw_count(100, 1000, 40, 2) == 5
    assert proportions.screw_count(100.1, 1000, 40, 2) == 6


@pytest.mark.parametrize("rho", [0.3, 0.9])
@pytest.mark.parametrize("share", [0.1, 0.5, 0.95])
@pytest.mark.parametrize("height", [-0.8, 0.0, 0.8])
def test_arc_of_a_pocket_is_where_the_cutter_has_been(rho: float, share: float, height: float) -> None:
    """Each point of a circle asked by itself: is it in the disc of the cutter, its end rounded, or outside its path?"""
    setting = center_setting.one_setting(25, 9, 7, 3, 4, height, 0.2)
    tool = center.ToothedCenter(25, 9, 7, 3, 4, (setting,), rho)
    u, a = share * tool.depth, tool.cutter_radius
    for radius in (4.7, 7.0, 9.5, 12.3):
        cut = []
        for step in range(-1000, 1001):
            angle = step * math.pi / 1000
            above = radius * math.sin(angle) - setting.z
            across = radius * math.cos(angle)
            if above < 0:
                continue
            reach = a if above >= rho else a - rho + math.sqrt(rho**2 - (rho - above) ** 2)
            away = tool.x + u  # from the cutter's axis down to this depth
            aside = min(across - setting.y, 0.0)  # the cutter goes on outward
            if math.hypot(away, aside) < reach:
                cut.append(angle)
        arc = center.removed_arc(tool, setting, radius, u)
        if arc is None:
            assert len(cut) <= 1
        else:
            assert arc == pytest.approx((min(cut), max(cut)), abs=math.pi / 1000)


TAPERS = [(50.0, 30.0), (350.0, 20.0), (350.0, 26.0), (650.0, 16.0)]


def softness(weight: Callable[[float], float]) -> float:
    """∫ weight(x)/d(x)⁴ dx over the tapers, x a share of the length."""

    def piece(before: tuple[float, float], after: tuple[float, float]) -> float:
        (start, first), (end, last) = ((before[0] - 50) / 600, before[1]), ((after[0] - 50) / 600, after[1])
        found, _ = quad(lambda x: weight(x) / (first + (last - first) * (x - start) / (end - start)) ** 4, start, end)
        return float(found)

    return piece(*TAPERS[:2]) + piece(*TAPERS[2:])


def test_even_bar_gives_as_much_as_two_tapers_at_their_worst_place() -> None:
    """Moment of a push of one at a: x·(1 − a) up to it and a·(1 − x) beyond; an even bar gives 1/48 in the middle."""

    def push(place: float) -> float:
        return softness(lambda x: (min(x, place) * (1 - max(x, place))) ** 2)

    worst = max(push(step / 60) for step in range(1, 60))
    assert slender.even_diameter(TAPERS, "pinned-pinned") == pytest.approx((48 * worst) ** -0.25, rel=1e-3)


def test_even_bar_loose_at_one_end_gives_as_much_as_two_tapers_held_at_the_thinner() -> None:
    """Held where they are thin they give most: ∫ (1 − x)²/d⁴ or ∫ x²/d⁴, and 1/3 for an even bar."""
    worst = max(softness(lambda x: x**2), softness(lambda x: (1 - x) ** 2))
    assert slender.even_diameter(TAPERS, "free") == pytest.approx((3 * worst) ** -0.25, rel=1e-3)
    backward = [(700 - at, diameter) for at, diameter in reversed(TAPERS)]
    assert slender.even_diameter(backward, "free") == pytest.approx((3 * worst) ** -0.25, rel=1e-3)


def test_taper_is_as_stubby_as_its_mean_diameter() -> None:
    """30 to 10 mm is 20 in the mean: a length of five times that is just enough, half of it where one end is free."""
    pinned = functools.partial(slender.profile_whirl_speed, modulus=12, density=700, ends="pinned-pinned")
    free = functools.partial(slender.profile_whirl_speed, modulus=12, density=700, ends="free")
    for speed, least in ((pinned, 100.0), (free, 50.0)):
        assert speed(profile=[(0, 30), (least, 10)]) > 0
        with pytest.raises(NoAnswer, match="too stubby"):
            speed(profile=[(0, 30), (least - 0.1, 10)])


def test_steady_is_where_the_positions_say() -> None:
    """A bar measured from 40 on, its steady there too, is the bar measured from nothing."""
    plain = [(0.0, 30.0), (500.0, 18.0), (700.0, 25.0)]
    from_40 = [(at + 40, diameter) for at, diameter in plain]
    for ends in ("pinned-pinned", "free"):
        speed = steadied.supported_whirl_speed(plain, 12, 700, ends, 0, steady=300)
        assert steadied.supported_whirl_speed(from_40, 12, 700, ends, 0, steady=340) == pytest.approx(speed, rel=1e-9)
        assert slender.profile_whirl_speed(from_40, 12, 700, ends) == pytest.approx(
            slender.profile_whirl_speed(plain, 12, 700, ends), rel=1e-9
        )


JAM_PRESSURE = 800 * 0.1 / 160 * (1 - 4 / 9)  # E·δ/(2·d)·(1 − (d/D)²)
EXACT: list[tuple[Callable[[], float], float]] = [
    (lambda: drive.dead_center_heat(0.3, 500, 3, 30, 1000), 0.3 * 500 * 0.003 / 0.5 * 1000 * math.tau / 60),
    (lambda: drying.drying_that_loosens(2.4, 0.8, 9), 1.0),
    (lambda: glue.jam_fit(0.1, 80, 120, 0.8, 10, 0.3), 0.3 * JAM_PRESSURE * math.pi * 80 * 10 * 0.040),
    (lambda: jaws.jaw_moment(0.3, 1000, 1, 1), 1 / 12 + 0.3 / math.pi),
    (lambda: proportions.glue_face_diameter(math.pi / 16 * 60**3 / 1000, 0, 1, 0.5, 1), 60),
    (lambda: proportions.tenon_root_diameter(math.pi / 32 * 50**3 * 3 / 1000, 3, 1), 50),
    (
        lambda: slender.whirl_speed(25, 900, 12.6, 705, "pinned-pinned"),
        30 / math.pi * 9.870 / 0.9**2 * 0.025 / 4 * math.sqrt(12.6e9 / 705),
    ),
    (lambda: teeth.seated_torque(4, 5, 12.5, 3, 10.1), 4 * 1.5 * 10.1 * 7.5 * 3 * 8.75 / 1000),
    (lambda: teeth.tooth_slip_torque(1000, 4, 5, 12.5, 1, 1, 54, 10, 0.1), 1.5 * 0.9 * 1000 * 8.75 / 1000),
    (lambda: vacuum.vacuum_force(60, 100), 0.060 * math.pi * 50**2),
]


@pytest.mark.parametrize(("reckoned", "expected"), EXACT)
def test_statics_to_the_last_digit(reckoned: Callable[[], float], expected: float) -> None:
    assert reckoned() == pytest.approx(expected, rel=1e-12)


def test_wall_left_for_wood_that_shrinks_both_ways() -> None:
    """200 mm, 10 and 5 percent: 5 mm of oval and 14 mm of wall out of 19/0.95 mm."""
    assert drying.wall_to_leave(200, 10, 5, 14) == pytest.approx(20)


def test_half_round_on_its_springs_decays_as_a_beam_on_a_foundation() -> None:
    """λ⁴ = k·D/(4·E·I), k a pressure per millimeter, I of a half disc about its own center (π/8 − 8/(9·π))·r⁴."""
    inertia = (math.pi / 8 - 8 / (9 * math.pi)) * 25**4
    also = tail.split_capacity.figure(50, 7, 0.8, 12, 300).also
    (_, stress_unit), (decay, decay_unit) = also["opening_stress"], also["decay"]
    assert decay == pytest.approx((tail.split_foundation(0.8, 50) * 50 / (4 * 12000 * inertia)) ** 0.25, rel=2e-4)
    assert (stress_unit, decay_unit) == ("MPa", "/mm")
