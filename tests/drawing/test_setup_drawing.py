"""The drawing of a setup read back by an XML parser: what is measured on the paper, times the scale, is the case."""

from __future__ import annotations

import re
from fractions import Fraction
from xml.etree import ElementTree

import pytest

from advisor.drawing.setup import Blank, Drive, Held, Setup, Tail
from advisor.drawing.setup_view import SCALES, setup_picture
from advisor.drawing.svg import TONES
from advisor.models.case import METHODS
from advisor.units import LENGTH, System, show

SVG = "{http://www.w3.org/2000/svg}"
DRIVE = Held("spur-drive", {}, Drive("four", 27.0, 10.8, 4, 2.2))
POINT, CUP = Tail("live-point", 60.0), Tail("live-cup", None, 20.0)
SQUARE = Blank("square", 76.2, 457.2, 53.88, False, False, finished=44.45)
DISC = Blank("disc", 279.4, 114.3, 279.4, False, True)
SETUPS = {
    "square spindle": Setup(SQUARE, DRIVE, POINT),
    "octagon": Setup(Blank("octagon", 100.0, 300.0, 92.39, False, False), DRIVE, CUP),
    "round": Setup(Blank("round", 25.0, 120.0, 25.0, True, False), Held("three-jaw", {}, None, 90.0), POINT),
    "disc": Setup(
        DISC,
        Held("faceplate-screws", {"plate": 111.8, "circle": 89.4, "count": 6, "diameter": 5.5, "length": 31.75}),
        POINT,
    ),
    "platter": Setup(
        Blank("disc", 304.8, 30.2, 304.8, True, True, wall=8.0),
        Held("jaws-in-recess", {"diameter": 75.0, "depth": 4.0}),
    ),
    "tenon": Setup(
        Blank("disc", 228.6, 88.9, 228.6, True, True), Held("jaws-on-tenon", {"diameter": 76.2, "length": 9.5})
    ),
    "half-log": Setup(Blank("half-log", 180.0, 300.0, 180.0, False, False, flat=21.8, log_radius=87.3), DRIVE, CUP),
    "half-log across": Setup(
        Blank("half-log", 250.0, 110.0, 250.0, False, True),
        Held("screw-chuck", {"face": 100.0, "diameter": 10.0, "length": 30.0}),
    ),
    "sphere": Setup(Blank("sphere", 80.0, 80.0, 80.0, True, False), Held("sphere-cups", {"diameter": 48.0}), CUP),
    "tube": Setup(Blank("tube", 60.0, 100.0, 60.0, True, False, wall=10.0), Held("mandrel", {"diameter": 40.0}), POINT),
    "cracked log": Setup(Blank("log", 180.0, 350.0, 180.0, False, False, crack=85.0, from_pith=True)),
    "thin rod": Setup(Blank("round", 12.0, 900.0, 12.0, True, False), DRIVE, POINT, steady=450.0),
}
SYSTEMS = (System.METRIC, System.INCH)


def drawn(setup: Setup, system: System = System.METRIC, height: float = 55.0) -> ElementTree.Element:
    return ElementTree.fromstring(
        setup_picture(setup, lambda mm: show(mm, LENGTH, system), 194.0, height, "words").element()
    )


def view(root: ElementTree.Element, name: str) -> ElementTree.Element:
    return next(group for group in root.iter(f"{SVG}g") if group.attrib.get("aria-label") == name)


def scale(root: ElementTree.Element, name: str) -> float:
    """The ratio that stands over a view."""
    found = next(re.fullmatch(rf"{name}, ([\d.]+):([\d.]+)", t.text or "") for t in root.iter(f"{SVG}text")
                 if (t.text or "").startswith(name))  # fmt: skip
    assert found is not None
    return float(found[1]) / float(found[2])


def texts(element: ElementTree.Element) -> list[str]:
    return [entry.text or "" for entry in element.iter(f"{SVG}text")]


def blank_extent(root: ElementTree.Element) -> tuple[float, float]:
    """Width and height of the blank on the paper, divided by the scale."""
    group = view(root, "From above")
    polygons = [p for p in group.iter(f"{SVG}polygon") if p.attrib["fill"] == TONES["back"]]
    sizes = []
    for polygon in polygons:
        points = [tuple(map(float, pair.split(","))) for pair in polygon.attrib["points"].split()]
        xs, ys = [p[0] for p in points], [p[1] for p in points]
        sizes.append((max(xs) - min(xs), max(ys) - min(ys)))
    width, height = max(sizes, key=lambda size: size[0] * size[1])
    ratio = scale(root, "From above")
    return width / ratio, height / ratio


def millimeters(text: str) -> float:
    """What a dimension says, read by other means than the program's own reader."""
    number, unit = text.rsplit(" ", 1)
    value = sum(float(Fraction(part)) for part in number.split())
    return value * (25.4 if unit == "in" else 1000.0 if unit == "m" else 1.0)


@pytest.mark.parametrize("name", SETUPS)
def test_the_blank_is_drawn_to_scale(name: str) -> None:
    blank = SETUPS[name].blank
    across = {"square spindle": blank.end, "octagon": blank.end, "half-log": 87.3}.get(name, blank.diameter)
    assert blank_extent(drawn(SETUPS[name])) == pytest.approx((blank.length, across), rel=0.002)


@pytest.mark.parametrize("system", SYSTEMS, ids=lambda system: system.value)
@pytest.mark.parametrize("name", SETUPS)
def test_length_and_swept_diameter_are_those_of_the_case(name: str, system: System) -> None:
    blank = SETUPS[name].blank
    written = texts(view(drawn(SETUPS[name], system), "From above"))
    unit = "in" if system is System.INCH else "mm"
    lengths = [millimeters(text) for text in written if re.fullmatch(r"[\d ./]+ (?:in|mm|m)", text)]
    across = [millimeters(text[2:]) for text in written if text.startswith("Ø ")]
    assert lengths == pytest.approx([blank.length], rel=0.008)
    assert across == pytest.approx([blank.diameter], rel=0.008)
    assert any(text.endswith(f" {unit}") for text in written)


@pytest.mark.parametrize("name", ["square spindle", "disc", "tenon"])
def test_a_dimension_line_is_as_long_as_it_says(name: str) -> None:
    root = drawn(SETUPS[name])
    ratio = scale(root, "From above")
    spans = []
    for line in view(root, "From above").iter(f"{SVG}line"):
        x1, x2, y1, y2 = (float(line.attrib[key]) for key in ("x1", "x2", "y1", "y2"))
        if "dasharray" not in line.attrib and y1 == y2:
            spans.append(abs(x2 - x1) / ratio)
    assert any(span == pytest.approx(SETUPS[name].blank.length, rel=0.002) for span in spans)


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("square spindle", {"seated 2.2 mm", "live point 60°", "drive Ø 27 mm", "side 53.9 mm"}),
        ("octagon", {"live cup Ø 20 mm", "flats 92.4 mm"}),
        ("round", {"gripped 30 mm"}),
        ("disc", {"screws 31.8 mm", "circle Ø 89.4 mm"}),
        ("platter", {"recess 4 mm", "recess Ø 75 mm"}),
        ("tenon", {"tenon 9.5 mm", "tenon Ø 76.2 mm"}),
        ("half-log", {"axis from flat 21.8 mm"}),
        ("half-log across", {"screw 30 mm", "face Ø 100 mm"}),
        ("sphere", {"cup Ø 48 mm"}),
        ("tube", {"bore Ø 40 mm"}),
        ("cracked log", {"crack 85 mm"}),
        ("thin rod", {"steady at 450 mm"}),
    ],
)
def test_sizes_of_hold_and_centers_are_written(name: str, said: set[str]) -> None:
    assert said <= set(texts(drawn(SETUPS[name])))


def test_a_circle_of_the_hold_is_drawn_to_scale() -> None:
    root = drawn(SETUPS["disc"])
    ratio = scale(root, "Held end")
    circles = [float(c.attrib["r"]) / ratio for c in view(root, "Held end").iter(f"{SVG}circle")]
    assert max(circles) == pytest.approx(279.4 / 2, rel=0.002)
    assert any(radius == pytest.approx(89.4 / 2, rel=0.002) for radius in circles)
    assert len(circles) == 2 + 6


def coordinates(root: ElementTree.Element) -> list[tuple[float, float]]:
    found = []
    for element in root.iter():
        for x, y in (("x1", "y1"), ("x2", "y2"), ("x", "y"), ("cx", "cy")):
            if x in element.attrib:
                found.append((float(element.attrib[x]), float(element.attrib[y])))
        found += [tuple(map(float, p.split(","))) for p in element.attrib.get("points", "").split()]  # type: ignore[misc]  # pairs
    return found


@pytest.mark.parametrize("height", [45.0, 64.0])
@pytest.mark.parametrize("name", SETUPS)
def test_everything_stays_on_the_picture(name: str, height: float) -> None:
    picture = setup_picture(SETUPS[name], lambda mm: show(mm, LENGTH, System.INCH), 194.0, height, "words")
    assert picture.height <= height + (6 if SETUPS[name].steady else 1)
    for x, y in coordinates(ElementTree.fromstring(picture.element())):
        assert -0.1 <= x <= picture.width + 0.1
        assert -0.1 <= y <= picture.height + 0.1


KNOWN = {"plate": 60.0, "circle": 48.0, "count": 4, "diameter": 5.0, "length": 20.0, "face": 50.0, "depth": 4.0}


@pytest.mark.parametrize("sizes", [KNOWN, {}], ids=["sizes", "no sizes"])
@pytest.mark.parametrize("method", METHODS)
def test_every_way_of_holding_has_a_drawing(method: str, sizes: dict[str, float]) -> None:
    drive = Drive("two", 30.0) if "drive" in method and sizes else None
    root = drawn(Setup(DISC, Held(method, sizes, drive), POINT))
    steel = [p for p in root.iter(f"{SVG}polygon") if p.attrib["fill"] == TONES["steel"]]
    assert len(steel) >= 3  # the quill, its point, and what holds


def test_scales_are_those_of_a_drawing_office() -> None:
    assert {1.0, 2.0, 0.5, 0.2, 0.1} <= {round(scale, 9) for scale in SCALES}
    assert sorted(SCALES, reverse=True) == SCALES


def test_without_a_hold_only_the_blank_is_drawn() -> None:
    root = drawn(SETUPS["cracked log"])
    assert not [p for p in root.iter(f"{SVG}polygon") if p.attrib["fill"] == TONES["steel"]]
    assert "rest" not in texts(root)
