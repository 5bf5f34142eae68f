"""Cutting force in wood: the level Pałubicki (2021) measured, the trends Woodson (1979) printed over 22 hardwoods.

Compared: `wood-cutting-force`. Its constants are from memory; the papers say how large and which way.
"""

from __future__ import annotations

import pytest

from advisor.physics.cutting import wood_cutting_force

SOURCES = ("palubicki-2021", "woodson-1979")
PARTICLEBOARD = (32.0, 38.0)  # specific cutting force N/mm² of milling with chips of a tenth
DENSITIES = (600.0, 700.0)  # of particleboard, kg/m³
WITHIN = 1.7  # what the model says of itself, either way


@pytest.mark.parametrize("density", DENSITIES)
def test_level_of_particleboard(density: float) -> None:
    found = wood_cutting_force(width=10, thickness=0.1, density=density, mode="along", moisture=8) / (10 * 0.1)
    assert PARTICLEBOARD[0] / WITHIN < found < PARTICLEBOARD[1] * WITHIN


def test_force_rises_with_depth_and_with_gravity() -> None:
    depths = [wood_cutting_force(width=5, thickness=t, density=650, mode="across") for t in (0.38, 0.76, 1.14, 1.5)]
    assert depths == sorted(set(depths))
    gravities = [wood_cutting_force(width=5, thickness=0.5, density=d, mode="across") for d in (450, 550, 650, 800)]
    assert gravities == sorted(set(gravities))


def test_force_falls_with_rake_and_with_moisture() -> None:
    rakes = [wood_cutting_force(width=5, thickness=0.5, density=650, mode="along", rake=r) for r in (10, 20, 30)]
    assert rakes == sorted(set(rakes), reverse=True)
    wet = [wood_cutting_force(width=5, thickness=0.5, density=650, mode="along", moisture=m) for m in (10.4, 17, 30)]
    assert wet == sorted(set(wet), reverse=True)
