"""What a larger rule book costs, measured and drawn: `python -m tests.benchmarks.curve` writes it into docs/ anew."""

from __future__ import annotations

import gc
import re
import time
from collections.abc import Callable
from functools import partial
from itertools import pairwise
from typing import NamedTuple

from advisor.drawing.shapes import Circle, Line, Pen, Point, Text, View
from advisor.drawing.svg import Placed, write_svg
from advisor.engine import Engine
from tests.benchmarks.ratios import ratio
from tests.engine.chance import chance_book, chance_facts
from tests.house.tree import ROOT

SMALLEST = 40
TIMES = (1, 2, 3, 4, 6, 8, 10)
SEED, FACTS, ROUNDS = 2, 30, 25
PAGE = ROOT / "docs" / "proof.md"
PICTURE = ROOT / "docs" / "pictures" / "growth.svg"
BLOCK = re.compile(r"(?<=<!-- measured: python -m tests\.benchmarks\.curve -->\n).*?(?=<!-- end -->)", re.DOTALL)
SIDE, LEFT, TOP = 112.0, 14.0, 16.0  # page mm
WIDEST = 14  # times
STEP = SIDE / WIDEST
TITLE = "Cost of a rule book up to ten times as large"


class Cost(NamedTuple):
    """A book so many times as large as the smallest: how many times as long it takes to fire and to build."""

    times: int
    firing: float
    building: float


def measured() -> list[Cost]:
    """Ratios of the least processor times, taken in turn."""
    facts = chance_facts(SEED, FACTS)
    small = chance_book(SEED, SMALLEST)
    ready = Engine(small)
    found = []
    gc.disable()
    for times in TIMES:
        large = chance_book(SEED, SMALLEST * times)
        engine = Engine(large)
        firing = _ratio(partial(engine.run, facts), partial(ready.run, facts))
        found.append(Cost(times, firing, _ratio(partial(Engine, large), partial(Engine, small))))
    gc.enable()
    return found


def _ratio(one: Callable[[], object], other: Callable[[], object]) -> float:
    return ratio(one, other, ROUNDS, min, time.process_time)


def table(costs: list[Cost]) -> str:
    """The rows of the page."""
    head = "| rules | times as many | firing, times as long | building, times as long |\n|---|---|---|---|\n"
    rows = (f"| {SMALLEST * c.times} | {c.times} | {c.firing:.2f} | {c.building:.2f} |\n" for c in costs)
    return f"\n{head}{''.join(rows)}\n"


def picture(costs: list[Cost]) -> str:
    """Both curves beside the line on which ten times as many rules cost ten times as much."""
    view = View("times as long over times as many rules", 1.0)
    for times in range(2, WIDEST + 1, 2):
        view.add(Line((times * STEP, 0), (times * STEP, SIDE), "thin"), Text((times * STEP, -5), str(times)))
        view.add(Line((0, times * STEP), (SIDE, times * STEP), "thin"), Text((-2, times * STEP - 1), str(times), "end"))
    view.add(Line((0, 0), (SIDE, 0)), Line((0, 0), (0, SIDE)), Line((0, 0), (SIDE, SIDE), "hidden"))
    view.add(Text((SIDE + 2, SIDE - 1), "in proportion", "start"))
    _curve(view, "firing", [(cost.times * STEP, cost.firing * STEP) for cost in costs], "edge")
    _curve(view, "building", [(cost.times * STEP, cost.building * STEP) for cost in costs], "center")
    notes = (
        Text((LEFT, 9), TITLE, "start", True),
        Text((LEFT, TOP + SIDE + 12), f"times as many rules (1 is {SMALLEST} rules); upward: times as long", "start"),
    )
    return write_svg(TITLE, [Placed(view, (LEFT, TOP + SIDE))], notes, LEFT + SIDE + 30, TOP + SIDE + 18)


def _curve(view: View, name: str, points: list[Point], pen: Pen) -> None:
    view.add(*(Line(one, other, pen) for one, other in pairwise(points)))
    view.add(*(Circle(point, 0.9) for point in points))
    view.add(Text((points[-1][0] + 3, points[-1][1] - 1), name, "start", True))


def write() -> None:
    """Measure, and put table and picture in their places."""
    costs = measured()
    PICTURE.write_text(picture(costs), encoding="utf-8")
    PAGE.write_text(BLOCK.sub(table(costs), PAGE.read_text(encoding="utf-8")), encoding="utf-8")
    print(table(costs))


if __name__ == "__main__":
    write()
