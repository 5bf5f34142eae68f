"""Drawings read back: SVG by an XML parser, DXF by ezdxf. Land and radii on the paper are those of the answer."""

from __future__ import annotations

import io
from pathlib import Path
from xml.etree import ElementTree

import pytest
from ezdxf.document import Drawing
from ezdxf.filemanagement import read as read_dxf

from advisor.center_command import CenterAnswer, center_answer
from advisor.drawing.center_sheet import dxf, svg, views
from advisor.drawing.dxf import Laid, write_dxf
from advisor.drawing.shapes import Dimension, Line, Text, View
from advisor.drawing.svg import Placed, write_svg
from advisor.units import System

SVG = "{http://www.w3.org/2000/svg}"
PLAIN = {"diameter": "1 in", "hole": "0.251 in", "cutter": "1/2 in", "depth": "0.200 in", "land": "0.020 in"}
OTHERS = [
    {},
    {"rotation": "reverse"},
    {"teeth": "2", "settings": "1"},
    {"teeth": "2"},
    {"teeth": "3"},
    {"teeth": "3", "settings": "1", "overshoot": "0.15 in", "land": "0"},
    {"teeth": "5", "hole": "0.5 in", "cutter": "1/4 in", "depth": "0.1 in"},
    {"teeth": "6", "settings": "1", "cutter": "3/8 in", "depth": "0.15 in", "height_offset": "-0.01 in"},
    {"teeth": "8", "settings": "1", "cutter": "1/4 in", "depth": "0.11 in", "land": "0", "overshoot": "0.008 in"},
    {"overshoot": "0.05 in", "corner_radius": "0.03 in", "height_offset": "-0.02 in"},
]


def answered(**changes: str) -> CenterAnswer:
    return center_answer({**PLAIN, **changes})


def read(text: str) -> Drawing:
    drawing = read_dxf(io.StringIO(text))
    assert not drawing.audit().errors
    return drawing


@pytest.mark.parametrize("changes", OTHERS, ids=lambda c: "-".join(c.values()) or "plain")
def test_every_kind_of_center_is_drawn_inside_the_page(changes: dict[str, str]) -> None:
    root = ElementTree.fromstring(svg(answered(**changes).answer))
    left, top, width, height = (float(n) for n in root.attrib["viewBox"].split())
    xs: list[float] = []
    ys: list[float] = []
    for element in root.iter():
        for key, into in (("x1", xs), ("x2", xs), ("x", xs), ("cx", xs), ("y1", ys), ("y2", ys), ("y", ys), ("cy", ys)):
            if key in element.attrib:
                into.append(float(element.attrib[key]))
        for pair in element.attrib.get("points", "").split():
            x, y = pair.split(",")
            xs.append(float(x))
            ys.append(float(y))
    assert len(xs) > 50
    assert left <= min(xs)
    assert max(xs) <= left + width
    assert top <= min(ys)
    assert max(ys) <= top + height


@pytest.mark.parametrize("changes", OTHERS, ids=lambda c: "-".join(c.values()) or "plain")
def test_every_kind_of_center_reads_back_as_release_12(changes: dict[str, str]) -> None:
    answer = answered(**changes)
    drawing = read(dxf(answer.answer))
    assert drawing.dxfversion == "AC1009"
    circles = {round(c.dxf.radius, 6) for c in drawing.modelspace().query("CIRCLE")}
    center = answer.answer.center
    assert {round(r, 6) for r in (center.outer_radius, center.hole_radius, center.cutter_radius)} <= circles


@pytest.mark.parametrize(("rotation", "side"), [("forward", 1), ("reverse", -1)])
def test_land_on_the_drawing_is_the_land_of_the_answer(rotation: str, side: int) -> None:
    """In the end view the land of the first tooth hangs under a level line beside the hole: right of it, or left of it
    where the work turns the other way."""
    answer = answered(rotation=rotation)
    lines = [
        line
        for line in read(dxf(answer.answer)).modelspace().query('LINE[layer=="EDGE"]')
        if line.dxf.start.y == pytest.approx(line.dxf.end.y)
        and all(3 < side * point.x < 13 for point in (line.dxf.start, line.dxf.end))
    ]
    heights = sorted({round(line.dxf.start.y, 6) for line in lines if abs(line.dxf.start.y) < 1})
    assert len(heights) == 2
    assert heights[1] == pytest.approx(0, abs=1e-6)
    assert heights[1] - heights[0] == pytest.approx(answer.as_dict()["land_od_mm"], abs=2e-4)


def test_back_and_land_of_the_tooth_view() -> None:
    answer = answered()
    found = answer.as_dict()
    arcs = list(read(dxf(answer.answer)).modelspace().query('ARC[layer=="EDGE"]'))
    backs = [arc for arc in arcs if arc.dxf.radius == pytest.approx(6.35) and arc.dxf.end_angle == pytest.approx(270)]
    assert len(backs) == 1
    tip, root = backs[0].start_point, backs[0].end_point
    assert root.x - tip.x == pytest.approx(found["root_thickness_mm"] - found["land_od_mm"], abs=2e-4)
    assert tip.y - root.y == pytest.approx(found["tooth_height_mm"])


def test_numbers_are_written_on_both() -> None:
    answer = answered()
    texts = [t.dxf.text for t in read(dxf(answer.answer)).modelspace().query("TEXT")]
    page = ElementTree.fromstring(svg(answer.answer))
    letters = [t.text or "" for t in page.iter(f"{SVG}text")]
    for number in ("0.0200 in", "0.2000 in", "0.2649 in", "11.5 deg"):
        assert any(number in text for text in texts), number
        assert any(number in text for text in letters), number
    assert all(text.isascii() for text in texts)


def test_metric_drawing_says_millimeters() -> None:
    answer = center_answer(PLAIN, System.METRIC)
    assert "25.400 mm" in svg(answer.answer)
    assert " in<" not in svg(answer.answer)


def test_files_are_written_by_their_ending(tmp_path: Path) -> None:
    answered().draw(tmp_path / "center.svg")
    answered().draw(tmp_path / "center.DXF")
    assert (tmp_path / "center.svg").read_text(encoding="utf-8").startswith("<?xml")
    assert read((tmp_path / "center.DXF").read_text(encoding="utf-8")).dxfversion == "AC1009"


def test_lettering_is_escaped() -> None:
    nasty = "a < b & \"c\" 'd' </text><script>"
    view = View(nasty, 1.0, [Text((0, 0), nasty), Line((0, 0), (1, 1))])
    root = ElementTree.fromstring(write_svg(nasty, [Placed(view, (5, 5))], [], 10, 10))
    assert [t.text for t in root.iter(f"{SVG}text")] == [nasty]
    assert not list(root.iter(f"{SVG}script"))
    texts = [t.dxf.text for t in read(write_dxf([Laid(view, (0, 0))])).modelspace().query("TEXT")]
    assert texts == [nasty]


def test_a_line_break_cannot_smuggle_an_entity_into_a_dxf() -> None:
    view = View("v", 1.0, [Text((0, 0), "x\n  0\nLINE\n")])
    assert not list(read(write_dxf([Laid(view, (0, 0))])).modelspace().query("LINE"))


def test_a_dimension_measures_between_its_ends() -> None:
    view = View("v", 2.0, [Dimension((0, 0), (40, 0), 8, "40 mm")])
    lines = [s for s in view.plain() if isinstance(s, Line)]
    level = [line for line in lines if line.start[1] == line.end[1]]
    assert [(line.start, line.end) for line in level] == [((0, 4), (40, 4))]
    (text,) = [s for s in view.plain() if isinstance(s, Text)]
    assert text.at == (20, 4.5)


def test_views_fit_their_boxes_at_the_scale_that_is_written() -> None:
    for view in views(answered().answer).values():
        low_x, low_y, high_x, high_y = view.box()
        assert (high_x - low_x) * view.scale <= 143
        assert (high_y - low_y) * view.scale <= 104


def test_the_bore_that_clears_the_islands_is_drawn_and_lettered() -> None:
    answer = answered(teeth="6", hole="0.251 in", cutter="3/8 in", depth="0.15 in")
    bore = answer.as_dict()["bore_mm"]
    hidden = [c.dxf.radius for c in read(dxf(answer.answer)).modelspace().query("CIRCLE") if c.dxf.layer == "HIDDEN"]
    assert hidden == [pytest.approx(bore / 2)]
    told = svg(answer.answer)
    assert f"bore ⌀ {bore / 25.4:.4f} in" in told
    assert "Land at the bore 0.0200 in" in told
    assert "bore" not in svg(answered().answer)
