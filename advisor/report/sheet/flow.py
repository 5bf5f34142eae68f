"""A page laid out in mm: the size of its lettering, what stands in which column, and where every line comes to lie."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import product
from typing import NamedTuple

from advisor.drawing.svg import Picture
from advisor.report.sheet.measure import MM_PER_POINT, width, wrap
from advisor.report.sheet.page import HEIGHT, WIDTH, Big, Page, Section

GUTTER = 5.0
COLUMN = (WIDTH - GUTTER) / 2
LEADING = 1.2  # line height over type size
FINE = 0.9
BOX = 0.95  # side of a box to tick over type size
FOOT = 6.2  # points
BETWEEN = " • "  # run-in items

# From roomy to crowded: points of the text, most mm of the drawing, size of the head.
TRIES = (
    *((12.0, 90.0, 1.3), (11.0, 80.0, 1.2), (10.5, 74.0, 1.1), (10.0, 68.0, 1.05)),
    *((9.5, 64.0, 1.0), (9.0, 60.0, 1.0), (8.5, 56.0, 1.0), (8.0, 52.0, 1.0), (7.75, 50.0, 1.0), (7.5, 48.0, 1.0)),
    *((7.25, 46.0, 0.97), (7.0, 44.0, 0.94), (6.75, 43.0, 0.92), (6.5, 42.0, 0.9), (6.25, 41.0, 0.87)),
    *((6.0, 40.0, 0.84), (5.75, 38.0, 0.8), (5.5, 36.0, 0.78), (5.25, 34.0, 0.76), (5.0, 34.0, 0.74)),
)


class Mark(NamedTuple):
    """A line of text, a box to tick, a rule or a picture, from the top left of its flow in mm."""

    x: float
    y: float
    text: str = ""
    points: float = 0.0
    bold: bool = False
    box: float = 0.0
    rule: float = 0.0
    picture: Picture | None = None
    zoom: float = 1.0


class Flow(NamedTuple):
    """Marks and the height they take."""

    marks: tuple[Mark, ...]
    height: float

    def moved(self, x: float, y: float) -> list[Mark]:
        """The marks at another place."""
        return [mark._replace(x=mark.x + x, y=mark.y + y) for mark in self.marks]


def high(points: float) -> float:
    """Height of a line in mm."""
    return points * MM_PER_POINT * LEADING


def text_flow(text: str, points: float, room: float, bold: bool = False) -> Flow:
    """A paragraph; a line stands on its baseline at four fifths of its height."""
    lines = wrap(text, points, room, bold) if text else []
    step = high(points)
    marks = tuple(Mark(0.0, step * (i + 0.8), line, points, bold) for i, line in enumerate(lines))
    return Flow(marks, step * len(lines))


def stacked(flows: Iterable[Flow], gap: float = 0.0) -> Flow:
    """One below the other."""
    marks: list[Mark] = []
    at = 0.0
    for flow in flows:
        marks += flow.moved(0.0, at)
        at += flow.height + gap
    return Flow(tuple(marks), at)


def beside(flows: Sequence[Flow], lefts: Sequence[float]) -> Flow:
    """One beside the other, as high as the highest."""
    marks = [mark for flow, left in zip(flows, lefts, strict=True) for mark in flow.moved(left, 0.0)]
    return Flow(tuple(marks), max(flow.height for flow in flows))


def section_flow(section: Section, body: float) -> Flow:
    """A section in its column, or over the whole width where it is fine print."""
    if section.fine:
        return run_in(section, body * FINE)
    parts = [Flow((Mark(0.0, 0.5, rule=COLUMN),), 1.0), text_flow(section.title, body * 1.1, COLUMN, bold=True)]
    if section.picture is not None:
        zoom = COLUMN / section.picture.width
        parts.append(Flow((Mark(0.0, 0.0, picture=section.picture, zoom=zoom),), section.picture.height * zoom))
    parts += _table(section, body)
    parts += [_item(text, body, section.boxes) for text in section.shown]
    return stacked([*parts, Flow((), high(body) * 0.3)])


def run_in(section: Section, points: float) -> Flow:
    """A fine section: its title and items one after the other."""
    title = text_flow(section.title, points, WIDTH, bold=True)
    return stacked([title, text_flow(BETWEEN.join(section.shown), points, WIDTH)])


def _table(section: Section, points: float) -> list[Flow]:
    if section.rows is None:
        return []
    shares = section.rows.shares
    lefts = [sum(shares[:i]) * COLUMN for i in range(len(shares))]
    rows = []
    for number, cells in enumerate((section.rows.heads, *section.rows.cells)):
        flows = [
            text_flow(cell, points, share * COLUMN - 1.5, bold=number == 0 or column == 1)
            for column, (cell, share) in enumerate(zip(cells, shares, strict=True))
        ]
        rows.append(beside(flows, lefts))
    return rows


def _item(text: str, points: float, boxed: bool) -> Flow:
    size = points * MM_PER_POINT
    indent = size * (1.5 if boxed else 0.9)
    words = text_flow(text, points, COLUMN - indent)
    line = high(points)
    sign = Mark(0.0, line * 0.86 - size * BOX, box=size * BOX) if boxed else Mark(0.0, line * 0.8, "–", points)
    return Flow((sign, *words.moved(indent, 0.0)), words.height + line * 0.1)


def big_flow(big: Big, room: float, value: float, head: float) -> Flow:
    """A label, the value in large type with its unit, a note."""
    label = text_flow(big.label, 9 * head, room, bold=True)
    lines = wrap(big.value, value * head, room - (16 if big.unit else 0), bold=True)
    step = value * head * MM_PER_POINT * 1.02
    marks = [Mark(0.0, step * (i + 0.84), line, value * head, True) for i, line in enumerate(lines)]
    if big.unit:
        marks.append(Mark(width(lines[-1], value * head, True) + 1, marks[-1].y, big.unit, 18 * head, True))
    return stacked([label, Flow(tuple(marks), step * len(lines)), text_flow(big.note, 9 * head, room)])


VERDICT = 38.0
PAD, INSET = 4.5, 8.5  # mm from the frame's outer edge to its words, above and beside: the thickest frame is 3.2 mm
SPEED, HELD = 52.0, 20.0


def verdict_flow(page: Page, head: float) -> Flow:
    """What stands in the frame."""
    room = WIDTH - 2 * INSET
    return stacked(
        [
            text_flow(page.headline, VERDICT * head, room, bold=True),
            text_flow(page.reason, page.reason_points * head, room),
            text_flow(page.remedy, page.reason_points * head, room, bold=True),
        ]
    )


def top_flows(page: Page, head: float) -> list[Flow]:
    """Name and date; speeds; hold and thrust; centers and tool. The verdict's frame goes between the first two."""
    made = width(page.made, 12)
    names = [text_flow(page.name, 12, WIDTH - made - 4, bold=True), text_flow(page.made, 12, made + 1)]
    flows = [beside(names, [0.0, WIDTH - made])]
    for bigs, value in ((page.speeds, SPEED), (page.hold, HELD)):
        if bigs:
            flows.append(
                beside([big_flow(big, COLUMN, value, head) for big in bigs], [0.0, COLUMN + GUTTER][: len(bigs)])
            )
    for name, text in page.facts:
        label = text_flow(name.upper(), 9 * head, 20, bold=True)
        flows.append(beside([label, text_flow(text, 10.5 * head, WIDTH - 21)], [0.0, 21.0]))
    return flows


class Laid(NamedTuple):
    """A page with the sizes at which it fits, and its sections in two columns."""

    page: Page
    body: float
    head: float
    drawing: Picture | None
    columns: tuple[tuple[Section, ...], tuple[Section, ...]]
    fine: tuple[Section, ...]


FRAME = 2 * PAD + 3.5  # mm the verdict's frame takes beyond its words
APART = 1.5  # mm between the blocks of the page


def fixed_height(page: Page, head: float, drawing: Picture | None) -> float:
    """Height of everything but the columns."""
    tops = top_flows(page, head)
    foot = text_flow(page.foot, FOOT, WIDTH)
    blocks = [*tops, verdict_flow(page, head), foot]
    return (
        sum(block.height for block in blocks) + FRAME + (drawing.height if drawing else 0.0) + APART * (len(blocks) + 4)
    )


def lay_out(page: Page) -> Laid:
    """The largest sizes at which all of the page fits; where none do, the assumptions are cut short and say so."""
    return _first(range(len(TRIES)), lambda place: _tried(page, *TRIES[place])) or _cut_short(page)


def _first(choices: Sequence[int], tried: Callable[[int], Laid | None]) -> Laid | None:
    """What the first choice that fits gives; every choice after it fits as well."""
    found = None
    low, high_ = 0, len(choices)
    while low < high_:
        middle = (low + high_) // 2
        laid = tried(choices[middle])
        if laid is None:
            low = middle + 1
        else:
            found, high_ = laid, middle
    return found


def _tried(page: Page, body: float, most: float, head: float) -> Laid | None:
    drawing = page.drawing(most) if page.drawing is not None else None
    room = HEIGHT - fixed_height(page, head, drawing)
    fine = tuple(section for section in page.sections if section.fine)
    columns, height = split(tuple(section for section in page.sections if not section.fine), body)
    height += sum(section_flow(section, body).height for section in fine)
    return Laid(page, body, head, drawing, columns, fine) if height <= room else None


Columns = tuple[tuple[Section, ...], tuple[Section, ...]]


def split(sections: Sequence[Section], body: float) -> tuple[Columns, float]:
    """The sections in two columns, in order, so that the longer is as short as can be; the first stands left."""
    if not sections:
        return ((), ()), 0.0
    heights = [section_flow(section, body).height for section in sections]
    whole = sum(heights)
    choices = ((0, *sides) for sides in product((0, 1), repeat=len(sections) - 1))

    def longer(sides: tuple[int, ...]) -> float:
        right = sum(height for height, side in zip(heights, sides, strict=True) if side)
        return max(right, whole - right)

    best = min(choices, key=longer)
    left, right = (tuple(s for s, side in zip(sections, best, strict=True) if side == which) for which in (0, 1))
    return (left, right), longer(best)


def _cut_short(page: Page) -> Laid:
    """At the smallest sizes: fewer assumptions, then fewer notes, until the rest fits."""
    sections = list(page.sections)
    for place in sorted(range(len(sections)), key=lambda i: (not sections[i].fine, -i)):
        if not sections[place].may_be_cut:
            continue

        def keeping(kept: int, place: int = place) -> Laid | None:
            sections[place] = sections[place]._replace(kept=kept)
            return _tried(page._replace(sections=tuple(sections)), *TRIES[-1])

        laid = _first(range(len(sections[place].items) - 1, -1, -1), keeping)
        if laid is not None:
            return laid
        keeping(0)
    raise OverflowError("the page holds more than can be printed on it")
