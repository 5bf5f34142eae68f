"""VDI 3106: permissible speed of jaw chucks, with the factors as trade literature quotes them.

Compared: `chuck-speed`.
"""

from __future__ import annotations

import math

import pytest

from advisor.figure import NoAnswer
from advisor.physics import jaws

SOURCES = ("vdi-3106",)
LEAST_SAFETY = 1.5


def test_quoted_example() -> None:
    """18 kN at rest, factor 1.5, 4.5 kN needed at speed, 0.48 kg·m of jaws."""
    found = jaws.chuck_speed(grip=18000, needed_grip=4500, safety=LEAST_SAFETY, jaw_moment=0.48)
    assert found == pytest.approx(1194, abs=0.5)


def test_grip_at_rest_is_the_factor_times_what_is_needed_and_what_the_jaws_lose() -> None:
    """F_sp0 = S_sp·(F_sp + F_c), F_c = Σ m·r·ω²."""
    speed = jaws.chuck_speed(grip=12000, needed_grip=3000, safety=LEAST_SAFETY, jaw_moment=0.2) * math.pi / 30
    assert LEAST_SAFETY * (3000 + 0.2 * speed**2) == pytest.approx(12000)


@pytest.mark.parametrize("grip", [1000.0, 4499.9, 4500.0])
def test_no_speed_where_the_grip_at_rest_is_too_little(grip: float) -> None:
    with pytest.raises(NoAnswer):
        jaws.chuck_speed(grip=grip, needed_grip=3000, safety=LEAST_SAFETY, jaw_moment=0.2)
