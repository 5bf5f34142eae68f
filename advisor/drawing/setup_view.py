"""Setup -> drawing to scale: from above with hold, centers and rest, and the held end; dimensions of the case."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from math import cos, pi, radians, sin, tan

from advisor.drawing.setup import Blank, Setup, Tail
from advisor.drawing.setup_blank import block, box, end, ring, side
from advisor.drawing.setup_holds import Drawn, Place, hold
from advisor.drawing.shapes import Anchor, Circle, Dimension, Leader, Line, Shape, Text, View
from advisor.drawing.svg import Picture, Placed

Say = Callable[[float], str]  # a length in mm as it is written on the drawing

STEPS = (1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8)  # of a scale, times a power of ten
RATIOS = sorted({10.0**power * step for power in range(5) for step in STEPS})
SCALES = [*reversed(RATIOS), *(1 / ratio for ratio in RATIOS if ratio > 1)]  # the largest first
TAIL = 15.0  # page mm of the quill beside the blank
BODY = 12.0  # page mm of the chuck or plate
END_SHARE = 0.26  # of the width, for the end view
TITLE = 5.0  # page mm over the views
JAW = 4.0
LEAST = 10.0  # page mm that the blank gets at least


def ratio_text(scale: float) -> str:
    """The scale as a drawing says it."""
    return f"{scale:g}:1" if scale >= 1 else f"1:{1 / scale:.4g}"


def setup_picture(setup: Setup, say: Say, width: float, height: float, words: str) -> Picture:
    """The drawing on a page of `width` by at most `height` mm; `words` say what it shows."""
    rooms = (width * (1 - END_SHARE), width * END_SHARE)
    across = setup.blank.diameter
    above = _largest(lambda scale: _above(setup, say, scale), (setup.blank.length, across), rooms[0], height - TITLE)
    face = _largest(lambda scale: _end(setup, say, scale), (across, across), rooms[1], height - TITLE)
    tall = max(_size(above)[1], _size(face)[1])
    placed = []
    for view, left, room in ((above, 0.0, rooms[0]), (face, rooms[0], rooms[1])):
        low_x, low_y, high_x, high_y = (edge * view.scale for edge in view.box())
        placed.append(Placed(view, (left + (room - high_x - low_x) / 2, TITLE + (tall + high_y + low_y) / 2)))
    titles = (
        Text((0.0, 3.2), f"{above.title}, {ratio_text(above.scale)}", "start", bold=True),
        Text((width, 3.2), f"{face.title}, {ratio_text(face.scale)}", "end", bold=True),
    )
    return Picture(words, tuple(placed), titles, width, TITLE + tall + 0.5)


def _size(view: View) -> tuple[float, float]:
    low_x, low_y, high_x, high_y = view.box()
    return (high_x - low_x) * view.scale, (high_y - low_y) * view.scale


def _largest(draw: Callable[[float], View], blank: tuple[float, float], width: float, height: float) -> View:
    """The view at the largest scale at which all of it, lettering included, stays within this room.

    Where the lettering alone takes the height, the blank gets LEAST of its own.
    """
    bare = _size(draw(SCALES[-1]))[1]
    height = max(height, bare + LEAST)
    most = min(width / blank[0], height / blank[1])
    for scale in (scale for scale in SCALES if scale <= most):
        view = draw(scale)
        wide, tall = _size(view)
        if wide <= width and tall <= height:
            break
    return view


def _above(setup: Setup, say: Say, scale: float) -> View:
    blank, held = setup.blank, setup.held
    view = View("From above", scale)
    page = view.page
    drawn = hold(held, blank, page) if held is not None else Drawn()
    view.add(*drawn.behind, *side(blank), *drawn.before)
    if setup.tail is not None:
        view.add(*_tail(setup.tail, blank, page))
    if setup.steady is not None:
        view.add(*_steady(min(setup.steady, blank.length), blank, page))
    if held is not None and setup.hand_rest:
        view.add(*_rest(blank, page, view.box()[1]))
    low_x, low_y, high_x, high_y = view.box()
    view.add(Line((low_x - page(2), 0), (high_x + page(2), 0), "center"))
    view.add(*_labels(setup, drawn, say, page, high_y + page(3)))
    half = blank.diameter / 2
    view.add(
        Dimension((blank.length, -half), (0, -half), (-half - low_y) * scale + 5, say(blank.length)),
        Dimension(
            (blank.length, half), (blank.length, -half), (high_x - blank.length) * scale + 4, f"Ø {say(blank.diameter)}"
        ),
    )
    return view


def _tail(tail: Tail, blank: Blank, page: Place) -> list[Shape]:
    """The tail center, its point angle and cup to scale, on a quill that is for place only."""
    face = blank.length
    wide = page(4.5)
    start = face + page(4)
    if tail.cup is not None:
        shapes = block(box(face, -tail.cup / 2, start, tail.cup / 2), "steel")
    elif tail.angle is not None:
        long = wide / tan(radians(tail.angle / 2))
        deep = min(page(1.5), long / 3)
        start = face - deep + long
        shapes = block(((face - deep, 0.0), (start, wide), (start, -wide)), "steel")
    else:
        shapes = block(box(face, -wide * 1.5, start, wide * 1.5), "steel")
    return shapes + block(box(start, -wide, start + page(TAIL) / 2, wide), "steel")


def _steady(at: float, blank: Blank, page: Place) -> list[Shape]:
    half = blank.diameter / 2
    shapes: list[Shape] = []
    for turn in (1, -1):
        low, high = sorted((turn * half, turn * (half + page(4))))
        shapes += block(box(at - page(1.5), low, at + page(1.5), high), "steel")
    return shapes


def _rest(blank: Blank, page: Place, low: float) -> list[Shape]:
    """The rest on the turner's side, clear of all that swings; where it stands along the bed is for place only."""
    edge = low - page(1.5)
    reach = max(blank.length * 0.3, page(6))
    left, right = blank.length / 2 - reach, blank.length / 2 + reach
    return [
        *block(box(left, edge - page(1.4), right, edge), "land", "thin"),
        Text((right + page(1.5), edge - page(2.4)), "rest", "start"),
    ]


LEFT: Anchor = "end"  # lettering that ends at its point
RIGHT: Anchor = "start"
ROOMY = 75.0  # page mm of blank above which both labels find room


def _labels(setup: Setup, drawn: Drawn, say: Say, page: Place, level: float) -> list[Shape]:
    """Depth of the hold to the left, tail center to the right, steady where it stands."""
    shapes: list[Shape] = []
    roomy = setup.blank.length > page(ROOMY)
    for deep, name in drawn.depths[:1]:
        reach = drawn.circles[0][0] / 2 if drawn.circles else setup.blank.end / 2
        elbow, anchor = (deep + page(4), RIGHT) if roomy else (-page(1), LEFT)
        shapes.append(Leader((deep, reach), (elbow, level), f"{name} {say(deep)}", anchor))
    if setup.tail is not None:
        angle = f" {setup.tail.angle:g}°" if setup.tail.angle is not None else ""
        cup = f" Ø {say(setup.tail.cup)}" if setup.tail.cup is not None else ""
        text = f"{setup.tail.kind.replace('-', ' ')}{angle}{cup}"
        end_face = setup.blank.length
        elbow, anchor = (end_face - page(4), LEFT) if roomy else (end_face + page(2), RIGHT)
        shapes.append(Leader((end_face + page(1), page(1)), (elbow, level), text, anchor))
    if setup.steady is not None:
        at = min(setup.steady, setup.blank.length)
        tip = (at, setup.blank.diameter / 2 + page(4))
        shapes.append(Leader(tip, (at, level + page(5)), f"steady at {say(setup.steady)}", "middle"))
    return shapes


def _end(setup: Setup, say: Say, scale: float) -> View:
    blank, held = setup.blank, setup.held
    view = View("Held end" if held is not None else "End", scale)
    page = view.page
    view.add(*end(blank))
    drawn = hold(held, blank, page) if held is not None else Drawn()
    view.add(*_held_end(drawn, page), *_crack(blank, page, say))
    low_x, low_y, high_x, high_y = view.box()
    over = page(2)
    view.add(Line((low_x - over, 0), (high_x + over, 0), "center"))
    view.add(Line((0, low_y - over), (0, high_y + over), "center"))
    half = max(blank.diameter / 2, high_y)
    for across, name in drawn.circles[:1]:
        view.add(Dimension((-across / 2, 0), (across / 2, 0), half * scale + 4, ""))
        view.add(Text((0, half + page(5)), f"{name} Ø {say(across)}"))
    for top, bottom, name in _flats(blank):
        view.add(Dimension((high_x, top), (high_x, bottom), 4, ""))
        view.add(Text((0, low_y - page(5.5)), f"{name} {say(top - bottom)}"))
    return view


def _flats(blank: Blank) -> list[tuple[float, float, str]]:
    """Heights between which a flat form is measured on its end, and their name."""
    if blank.trued:
        return []
    edge = blank.end / 2
    known = {"square": [(edge, -edge, "side")], "octagon": [(edge, -edge, "flats")]}
    if blank.form == "half-log" and blank.flat is not None:
        return [(0.0, -blank.flat, "axis from flat")]
    return known.get(blank.form, [])


def _crack(blank: Blank, page: Place, say: Say) -> list[Shape]:
    """A crack that was measured, as far as it runs over the face: out from the pith, or in from the rim."""
    if blank.crack is None:
        return []
    half = blank.diameter / 2
    long = min(blank.crack, 2 * half)
    start = -half if long > half or not blank.from_pith else -long
    turns = [start + long * i / 6 for i in range(7)]
    points = [(x, page(0.8) * (-1) ** i if 0 < i < 6 else 0.0) for i, x in enumerate(turns)]
    lines: list[Shape] = [Line(a, b) for a, b in pairwise(points)]
    return [*lines, Text((0, page(3)), f"crack {say(blank.crack)}")]


def _held_end(drawn: Drawn, page: Place) -> list[Shape]:
    """What holds the end, dashed: circles, screws, jaws, teeth."""
    shapes: list[Shape] = []
    for across, _ in drawn.circles:
        shapes.append(Circle((0, 0), across / 2, "hidden"))
    reach = drawn.circles[0][0] / 2 if drawn.circles else 0.0
    for i in range(drawn.screws):
        turn = 2 * pi * i / drawn.screws
        shapes.append(Circle((reach * cos(turn), reach * sin(turn)), page(0.8)))
    for i in range(drawn.teeth if drawn.teeth <= 12 else 0):
        turn = 2 * pi * i / drawn.teeth + pi / 4
        shapes.append(Line((reach * 0.4 * cos(turn), reach * 0.4 * sin(turn)), (reach * cos(turn), reach * sin(turn))))
    for i in range(drawn.jaws):
        shapes += _jaw(drawn.jaws_at, 2 * pi * i / drawn.jaws + pi / 2, page)
    return shapes


def _jaw(at: float, turn: float, page: Place) -> list[Shape]:
    """One jaw outside a circle, or inside it where `at` is negative."""
    inner, outer = (at, at + page(JAW)) if at > 0 else (max(-at - page(JAW), -at / 4), -at)
    half = min(page(JAW / 2), abs(at) * 0.4)
    corners = [(inner, -half), (outer, -half), (outer, half), (inner, half)]
    return ring([(x * cos(turn) - y * sin(turn), x * sin(turn) + y * cos(turn)) for x, y in corners])
