"""The curve of `docs/proof.md`: drawn where its numbers say, and the page tells the same numbers."""

from __future__ import annotations

import re
from xml.etree import ElementTree

from tests.benchmarks.curve import BLOCK, LEFT, PAGE, PICTURE, SIDE, SMALLEST, STEP, TIMES, TOP, Cost, picture, table


def centers(svg: str) -> list[tuple[float, float]]:
    """Where the points of both curves stand, in times as many and times as long."""
    found = ElementTree.fromstring(svg.encode()).iter("{http://www.w3.org/2000/svg}circle")
    return [((float(c.get("cx", "")) - LEFT) / STEP, (TOP + SIDE - float(c.get("cy", ""))) / STEP) for c in found]


def test_points_stand_where_their_numbers_say() -> None:
    drawn = centers(picture([Cost(1, 1.0, 1.0), Cost(4, 2.5, 4.0), Cost(10, 6.0, 9.5)]))
    wanted = [(1, 1), (4, 2.5), (10, 6), (1, 1), (4, 4), (10, 9.5)]
    assert [(round(x, 3), round(y, 3)) for x, y in drawn] == wanted


def test_the_page_and_the_picture_tell_the_same_and_ten_times_the_rules_cost_at_most_ten_times() -> None:
    block = BLOCK.search(PAGE.read_text(encoding="utf-8"))
    assert block is not None
    rows = re.findall(r"^\| (\d+) \| (\d+) \| ([\d.]+) \| ([\d.]+) \|$", block[0], re.MULTILINE)
    costs = [Cost(int(times), float(firing), float(building)) for _, times, firing, building in rows]
    assert [cost.times for cost in costs] == list(TIMES)
    assert block[0] == table(costs)
    assert costs[-1].firing <= 10
    assert f"| {SMALLEST * 10} |" in block[0]
    drawn = centers(PICTURE.read_text(encoding="utf-8"))
    told = [cost.firing for cost in costs] + [cost.building for cost in costs]
    assert all(abs(y - value) < 0.006 for (_, y), value in zip(drawn, told, strict=True))
