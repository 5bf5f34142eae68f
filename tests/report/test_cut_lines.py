"""The tool's numbers as lines: every table with its source, the cautious one first, the unit once."""

from __future__ import annotations

from typing import Any

import pytest

from advisor.report.cut_lines import cut_lines
from advisor.report.sentences import tool_text
from tests.whole.answers import of


def told(situation: str, units: str = "metric") -> list[str]:
    return list(cut_lines(of(situation)["tool"], units))


CARRIAGE = "SPINDLE; work.material={}; machine.kind=metal-lathe; cut.tool=carriage; machine.power=750W"


def test_both_tables_stand_with_their_sources_and_the_slow_one_first() -> None:
    steel = [line for line in told(CARRIAGE.format("acrylic")) if line.startswith("steel")]
    assert len(steel) == 2
    assert steel[0].startswith("steel 50 m/min: ")
    assert "Carvill" in steel[0]
    assert steel[1].startswith("steel 60 to 150 m/min: ")
    assert "common practice, no source" in steel[1]


def test_feed_depth_nose_heat_and_motor_are_said() -> None:
    lines = "\n".join(told(CARRIAGE.format("acrylic")))
    for part in ("feed 0.1 to 0.2 mm a turn", "depth ", "nose radius 0.5 to 1.5 mm", "below 80 °C", "% of the motor"):
        assert part in lines


def test_inch_prints_inches() -> None:
    lines = "\n".join(told(CARRIAGE.format("acrylic"), "inch"))
    assert "ft/min" in lines
    assert " mm" not in lines


def test_a_speed_above_the_ceiling_is_held_down() -> None:
    answer = of(CARRIAGE.format("acrylic"))
    clipped = [row for row in answer["tool"]["speeds"] if row["clipped"]]
    lines = told(CARRIAGE.format("acrylic"))
    assert clipped
    assert sum("held down by the ceiling" in line for line in lines) == len(clipped)


@pytest.mark.parametrize("part", [{}, {"kind": "none", "why": "it is not to be mounted"}])
def test_nothing_is_said_of_a_tool_without_numbers(part: dict[str, Any]) -> None:
    assert list(cut_lines(part, "metric")) == []


def test_a_second_table_of_the_same_wood_gives_its_own_rake() -> None:
    lines = told("BOWL; machine.kind=metal-lathe; cut.tool=carriage")
    assert any("has rake" in line for line in lines)
    assert not any("% of the motor" in line for line in lines)


def test_an_angle_that_is_one_is_told_once() -> None:
    assert "bevel 90°" in tool_text({"kind": "scraper", "why": "it scrapes", "bevel_deg": [90.0, 90.0]})
    assert "rake 0 to 5°" in tool_text({"kind": "bit", "why": "it cuts", "rake_deg": [0.0, 5.0]})
