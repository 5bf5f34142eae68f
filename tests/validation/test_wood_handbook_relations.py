"""Wood Handbook, chapters 4, 5 and 10: gravity, moisture and grain angle; variation as printed there and in ASTM D2555.

Compared: `moisture-strength`, `grain-angle-strength`, `lower-value`.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan, cos, radians, sin

import pytest
from scipy.stats import norm

from advisor.data import wood_tables
from advisor.data.tables import load
from advisor.models.wood_cells import carried_gravity
from advisor.physics import glue, relations

SOURCES = ("wood-handbook-5", "astm-d2555", "wood-handbook-4", "wood-handbook-10")



def test_bending_strength_of_white_ash_at_8_percent() -> None:
    """Printed example after the moisture equation: 103 MPa dry, 66 MPa green, intersection 24 %, about 119.5 MPa."""
    found = relations.moisture_strength(dry=103, green=66, moisture=8, intersection=24)
    assert found == pytest.approx(119.5, rel=2e-3)


def test_moisture_relation_meets_both_of_its_points() -> None:
    assert relations.moisture_strength(dry=54, green=27.7, moisture=12) == pytest.approx(54)
    assert relations.moisture_strength(dry=54, green=27.7, moisture=24.999) == pytest.approx(27.7, rel=1e-4)


def test_grain_angle_lies_between_the_exponents_of_the_handbook() -> None:
    """Tests fit P·Q/(P·sinⁿ + Q·cosⁿ) with n from 2 to 2.5: the 2 used is the lower of the two at every angle."""
    for angle in (10, 20, 30, 45, 60, 80):
        turned = radians(angle)
        higher = 54 * 10.1 / (54 * sin(turned) ** 2.5 + 10.1 * cos(turned) ** 2.5)
        assert relations.grain_angle_strength(parallel=54, perpendicular=10.1, angle=angle) < higher


@pytest.mark.parametrize("variation", [0.10, 0.14, 0.16, 0.18, 0.22, 0.25, 0.28])
def test_lower_value_is_passed_by_95_of_100_pieces(variation: float) -> None:
    lower = relations.lower_value(mean=1.0, variation=variation)
    assert norm(1.0, variation).sf(lower) == pytest.approx(0.95, abs=0.0005)
    assert norm(1.0, variation).cdf(relations.upper_value(1.0, variation)) == pytest.approx(0.95, abs=0.0005)


def test_variations_of_sums_of_independent_parts() -> None:
    """Product of independent factors: relative variances add, to the first order."""
    assert relations.combined_variation(0.28, 0.10, 0.20) ** 2 == pytest.approx(0.28**2 + 0.10**2 + 0.20**2)


STRENGTH = {(row.text("species_id"), row.text("row")): row for row in load(wood_tables.STRENGTH)}


def test_gravity_at_12_percent_follows_from_the_green_one() -> None:
    """Chapter 4: G = G_b/(1 − 0.265·G_b·(1 − M/30)), against the gravity that Table 5-3 prints beside it."""
    shares = {}
    for (species, row), cells in STRENGTH.items():
        dry = cells.optional("specific_gravity") if row == "dry" else None
        green = STRENGTH[species, "green"].optional("specific_gravity")
        if dry is not None and green is not None:
            shares[species] = carried_gravity(green, None, 12.0) / dry
    assert len(shares) == 111
    assert sorted(shares.values())[55] == pytest.approx(1.0, abs=0.01)
    assert all(0.89 < share < 1.09 for share in shares.values()), shares


def test_an_end_grain_butt_joint_keeps_a_quarter() -> None:
    """Chapter 10: about 25 percent of the strength along the grain, even with special techniques."""
    assert glue.END_GRAIN == 0.25


@pytest.mark.parametrize(
    ("column", "exponents", "quotients"),
    [("bending_pct", (1.5, 2.0), (0.04, 0.10)), ("crushing_pct", (2.0, 2.5), (0.05, 0.40))],
)
def test_slope_of_grain_lies_within_the_relation_of_the_grain_angle(
    column: str, exponents: tuple[float, float], quotients: tuple[float, float]
) -> None:
    """Chapter 5 prints the exponents and the quotients of strength, across over along, of the relation."""
    for row in load(wood_tables.SLOPE_OF_GRAIN):
        run = row.optional("run_per_unit_rise")
        if run is None:
            continue
        angle, ends = atan(1 / run), []
        for power, quotient in zip(exponents, quotients, strict=True):
            ends.append(100 * quotient / (sin(angle) ** power + quotient * cos(angle) ** power))
        assert min(ends) - 1 < row.number(column) < max(ends) + 1, (run, ends)


def test_heat_and_cold_act_more_on_wetter_wood() -> None:
    """Table 5-15 prints several moistures of a property, driest first."""
    rows = load(wood_tables.TEMPERATURE)
    compared = 0
    for before, after in pairwise(rows):
        for column in ("change_at_minus_50C_pct", "change_at_plus_50C_pct"):
            dry, wet = before.optional(column), after.optional(column)
            if before.text("property") == after.text("property") and dry is not None and wet is not None:
                assert abs(wet) >= abs(dry)
                compared += 1
    assert compared > 8
