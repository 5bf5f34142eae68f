"""Sizes typed by a careless hand: an answer or a refusal, never anything else."""

from __future__ import annotations

import json
import random
from pathlib import Path

import pytest

from advisor.center_command import CenterInputError, center_answer
from tests.conftest import SEED, scale


def anything(seed: int) -> dict[str, str]:
    """Sizes that a careless hand might type, many of them beyond what can be cut."""
    dice = random.Random(seed)
    size = dice.choice((3, 25.4, 300))

    def part(*shares: float) -> str:
        return f"{size * dice.choice(shares):.6f} mm"

    return {
        "diameter": f"{size} mm",
        "hole": part(0.1, 0.25, 0.6, 0.95),
        "cutter": part(0.1, 0.2, 0.5, 1),
        "depth": part(0.05, 0.1, 0.2, 0.25),
        "teeth": str(dice.randint(2, 8)),
        "settings": dice.choice(("auto", "1", "2")),
        "land": part(0, 0, 0.005, 0.05, 0.4),
        "height_offset": part(0, -0.01, 0.01, -0.1, 0.1),
        "corner_radius": part(0, 0, 0.01, 0.04),
        "overshoot": part(0, 0, 0.001, 0.02, 0.1, 0.3),
        "rotation": dice.choice(("forward", "reverse")),
        "thrust": f"{dice.choice((1, 100, 50000))} N",
        "torque": f"{dice.choice((0.01, 5, 2000))} N-m",
    }


def answered_of(seeds: range, folder: Path) -> int:
    """How many of these were answered; each answer must make sense and be drawn."""
    answered = 0
    for seed in seeds:
        try:
            answer = center_answer(anything(seed))
        except CenterInputError:
            continue
        answered += 1
        found = answer.as_dict()
        json.dumps(found, allow_nan=False)
        assert 0 < found["tooth_height_mm"] <= found["depth_mm"]
        assert all(t >= 0 for t in found["thickness_mm"])
        answer.draw(folder / "tooth.svg")
        answer.draw(folder / "tooth.dxf")
    return answered


def test_careless_sizes_are_answered_or_refused_and_nothing_else(tmp_path: Path) -> None:
    assert answered_of(range(10), tmp_path) >= 3


@pytest.mark.slow
def test_many_more_careless_sizes(tmp_path: Path) -> None:
    first = SEED * 1000
    assert answered_of(range(first, first + scale(500)), tmp_path) >= 10
