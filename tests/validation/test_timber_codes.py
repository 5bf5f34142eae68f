"""Timber codes: EN 1990, annex C (first-order weights) and EN 338 (tension across the grain of structural timber).

Compared: `total_factor`, `diametral_strength`.
"""

from __future__ import annotations

import math

import pytest

from advisor.physics.burst import diametral_strength
from advisor.physics.relations import LEAST_TOTAL_FACTOR, total_factor

SOURCES = ("en-1990", "en-338")
# EN 338, characteristic strength across the grain, MPa, of every softwood and every hardwood class
SOFTWOOD, HARDWOOD = 0.4, 0.6


def reliability(factor: float, resistance: float, load: float) -> float:
    """Index of two log-normal quantities whose medians stand in this factor: exact."""
    return math.log(factor) / math.hypot(resistance, load)


@pytest.mark.parametrize("beta", [2.0, 3.0, 4.0])
@pytest.mark.parametrize(("resistance", "load"), [(0.2, 0.2), (0.4, 0.3), (0.45, 0.15), (0.3, 0.45), (0.15, 0.3)])
def test_the_weights_reach_the_index_they_are_meant_for(beta: float, resistance: float, load: float) -> None:
    """EN 1990 lets the weights stand where one scatter is 0.16 to 7.6 of the other."""
    assert 0.16 < load / resistance < 7.6
    assert reliability(total_factor(resistance, load, beta), resistance, load) >= beta * 0.98


def test_little_scatter_still_gets_the_least_factor() -> None:
    assert total_factor(0.05, 0.05, 2.0) == LEAST_TOTAL_FACTOR


@pytest.mark.parametrize(("group", "least"), [("softwood", SOFTWOOD), ("hardwood", HARDWOOD)])
def test_a_large_piece_keeps_what_the_code_gives_structural_timber(group: str, least: float) -> None:
    assert diametral_strength(2.0, 3000.0, group) == least
    assert diametral_strength(2.0, 100.0, group) == 2.0
