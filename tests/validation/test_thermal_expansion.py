"""Growth of a warm part against printed coefficients of linear expansion, in their own units (handbooks; memory).

The tables print per degree Fahrenheit in inch countries and per kelvin elsewhere; 1 µin/in/°F is 1.8 µm/m/K.
"""

from __future__ import annotations

import pytest

from advisor.centers.metals import growth, metal
from advisor.physics.metal import heat_growth

SOURCES = ("thermal-expansion",)
# µin/(in·°F), mean from room temperature to the boiling point of water
PRINTED = {"303": 9.6, "304": 9.6, "1045": 6.4, "12L14": 6.4, "O1": 6.1, "brass": 11.4, "aluminum": 13.1}


@pytest.mark.parametrize("name", PRINTED)
def test_coefficient_of_the_table(name: str) -> None:
    assert metal(name).number("expansion") == pytest.approx(PRINTED[name] * 1.8, rel=0.02)


@pytest.mark.parametrize("name", PRINTED)
def test_a_foot_of_bar_over_a_hundred_degrees(name: str) -> None:
    """A bar of 12 in, 100 °F warmer, in tenths of a thousandth."""
    grown = growth(metal(name), 12 * 25.4, 100 / 1.8) / 25.4 * 1e4
    assert grown == pytest.approx(12 * 100 * PRINTED[name] * 1e-6 * 1e4, rel=0.02)


def test_growth_goes_with_size_and_with_warmth() -> None:
    once = heat_growth(diameter=25, expansion=11.5e-6, rise=25)
    assert heat_growth(diameter=50, expansion=11.5e-6, rise=25) == pytest.approx(2 * once)
    assert heat_growth(diameter=25, expansion=11.5e-6, rise=50) == pytest.approx(2 * once)
