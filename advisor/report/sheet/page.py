"""What stands on a sheet, before anybody asks in which file: one page of blocks for one answer."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from advisor.drawing.svg import Picture

WIDTH, HEIGHT = 194.0, 262.0  # mm of the part that is printed, 8 mm within A4 and letter alike
LONG_REASON = 400  # letters


class Big(NamedTuple):
    """Something to read from across the shop: what it is, the value, its unit, and a smaller line below."""

    label: str
    value: str
    unit: str = ""
    note: str = ""


class Rows(NamedTuple):
    """A table: heads of the columns, cells, and the share of the width that each column takes."""

    heads: tuple[str, ...]
    cells: tuple[tuple[str, ...], ...]
    shares: tuple[float, ...]


class Section(NamedTuple):
    """A titled block: a list, with boxes to tick or without, a table, or a picture.

    What is `fine` is run in, in small print over the whole width, at the foot of the page.

    Only what `may_be_cut` ever is: `kept` is how many of its items have room, and the sheet
    says how many more there are.
    """

    title: str
    items: tuple[str, ...] = ()
    boxes: bool = False
    fine: bool = False
    rows: Rows | None = None
    picture: Picture | None = None
    kept: int | None = None
    may_be_cut: bool = False

    @property
    def shown(self) -> tuple[str, ...]:
        """The items with room, and one that says how many have none."""
        if self.kept is None or self.kept >= len(self.items):
            return self.items
        return (*self.items[: self.kept], f"and {len(self.items) - self.kept} more: advisor advise prints them all")


class Page(NamedTuple):
    """One sheet. `drawing` gives the picture of the setup at most so many mm high, where there is something to draw."""

    name: str
    made: str
    verdict: str
    headline: str
    reason: str
    remedy: str
    speeds: tuple[Big, ...]
    hold: tuple[Big, ...]
    facts: tuple[tuple[str, str], ...]
    drawing: Callable[[float], Picture] | None
    sections: tuple[Section, ...]
    foot: str
    units: str

    @property
    def reason_points(self) -> float:
        """Size of the reason in the frame; one that lists many names is set smaller."""
        return 13.0 if len(self.reason) + len(self.remedy) <= LONG_REASON else 7.0
