"""Wood Handbook, chapter 5: moisture and grain angle; variation as printed there and in ASTM D2555.

Compared: `moisture-strength`, `grain-angle-strength`, `lower-value`.
"""

from __future__ import annotations

import pytest
from scipy.stats import norm

from advisor.physics import relations


def test_bending_strength_of_white_ash_at_8_percent() -> None:
    """Printed example after the moisture equation: 103 MPa dry, 66 MPa green, intersection 24 %, about 119.5 MPa."""
    found = relations.moisture_strength(dry=103, green=66, moisture=8, intersection=24)
    assert found == pytest.approx(119.5, rel=2e-3)


def test_moisture_relation_meets_both_of_its_points() -> None:
    assert relations.moisture_strength(dry=54, green=27.7, moisture=12) == pytest.approx(54)
    assert relations.moisture_strength(dry=54, green=27.7, moisture=24.999) == pytest.approx(27.7, rel=1e-4)


def test_grain_angle_lies_between_the_exponents_of_the_handbook() -> None:
    """Tests fit P·Q/(P·sinⁿ + Q·cosⁿ) with n from 2 to 2.5: the 2 used is the lower of the two at every angle."""
    from math import cos, radians, sin

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
