"""Friction of wood on steel: McKenzie and Karpovich 1968, Lemoine et al. 1970, Koubek and Dedicova 2014.

The design values must span what was measured: low for grip, high for heat.
"""

from __future__ import annotations

import pytest

from advisor.physics.contact import friction, sliding_friction

SOURCES = ("mckenzie-karpovich-1968", "lemoine-1970", "koubek-dedicova-2014", "friction-design")
ORDINARY_STEEL_DRY, ORDINARY_STEEL_WET = 0.65, 0.7  # McKenzie and Karpovich, at rest
AT_4_M_PER_S_DRY, AT_4_M_PER_S_WET = 0.4, 0.15  # the same
POLISHED_OVEN_DRY = (0.10, 0.25)  # Lemoine, McMillin and Manwiller
SMOOTH_PLATE = (0.1, 0.3)  # Koubek and Dedicova


def test_dry_span_ends_where_ordinary_steel_was_measured() -> None:
    found = friction("steel-dry")
    assert found.high == ORDINARY_STEEL_DRY
    assert POLISHED_OVEN_DRY[0] < found.low < min(POLISHED_OVEN_DRY[1], SMOOTH_PLATE[1])


def test_wet_span_ends_where_ordinary_steel_was_measured() -> None:
    assert friction("steel-wet").high == ORDINARY_STEEL_WET


def test_sliding_spans_hold_the_measured_values() -> None:
    dry, wet = sliding_friction("steel-dry"), sliding_friction("steel-wet")
    assert dry.low < AT_4_M_PER_S_DRY < dry.high
    assert wet.low < AT_4_M_PER_S_WET < wet.high
    assert wet.typical == AT_4_M_PER_S_WET


@pytest.mark.parametrize("pair", ["steel-dry", "steel-wet"])
def test_what_slips_keeps_slipping(pair: str) -> None:
    assert all(moving < still for moving, still in zip(sliding_friction(pair), friction(pair), strict=True))
