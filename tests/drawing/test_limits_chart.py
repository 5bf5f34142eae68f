"""The chart of limits: well-formed, to scale, the governing limit marked, nothing over the edge."""

import math
from xml.etree import ElementTree

import pytest

from advisor.drawing.limits_chart import limits_chart
from advisor.drawing.shapes import TEXT_HEIGHT, text_width
from tests.whole.answers import of

SVG = "{http://www.w3.org/2000/svg}"


def chart(text: str) -> tuple[ElementTree.Element, list[dict[str, object]], float]:
    speed = of(text)["speed"]
    page = limits_chart(speed["limits"], "bowl <blank> & more", speed["start_rpm"])
    return ElementTree.fromstring(page), speed["limits"], speed["start_rpm"]


def bars(root: ElementTree.Element) -> list[tuple[str, float]]:
    """Tone and length of each bar."""
    found = []
    for polygon in root.iter(f"{SVG}polygon"):
        xs = [float(point.split(",")[0]) for point in polygon.attrib["points"].split()]
        found.append((polygon.attrib["fill"], max(xs) - min(xs)))
    return found


@pytest.mark.parametrize("text", ["BOWL", "SPINDLE", "NARROW", "BOWL; work.condition=[crack]; work.crack.across=60mm"])
def test_one_bar_for_each_limit_the_shortest_dark(text: str) -> None:
    root, limits, _ = chart(text)
    found = bars(root)
    assert len(found) == len(limits)
    lengths = [length for _, length in found]
    assert lengths == sorted(lengths)
    assert len({tone for tone, _ in found[1:]}) == 1
    assert found[0][0] != found[1][0]


def test_bars_are_on_one_logarithmic_axis() -> None:
    page = limits_chart([{"name": n, "rpm": r, "grade": "practice"} for n, r in (("a", 100), ("b", 1000))], "t", None)
    root = ElementTree.fromstring(page)
    ticks = {t.text: float(t.attrib["x"]) for t in root.iter(f"{SVG}text") if (t.text or "").isdigit()}
    (_, short), (_, long) = bars(root)
    decade = ticks["1000"] - ticks["100"]
    assert long - short == pytest.approx(decade, abs=0.01)
    assert decade == pytest.approx((ticks["200"] - ticks["100"]) / math.log10(2), abs=0.01)


def test_numbers_are_rounded_down_and_the_governing_one_decides() -> None:
    page = limits_chart([{"name": "walking", "rpm": 309.9, "grade": "rough-guide"}], "t", 185.0)
    assert "300, decides (rough-guide)" in page
    assert "start 180" in page


@pytest.mark.parametrize("text", ["BOWL", "NARROW", "KNOB", "PEN"])
def test_lettering_stays_on_the_page(text: str) -> None:
    root, _, _ = chart(text)
    width = float(root.attrib["viewBox"].split()[2])
    for entry in root.iter(f"{SVG}text"):
        reach = text_width(entry.text or "", TEXT_HEIGHT)
        left = {"start": 0.0, "middle": reach / 2, "end": reach}[entry.attrib["text-anchor"]]
        x = float(entry.attrib["x"])
        assert x - left >= 0
        assert x - left + reach <= width


def test_no_limits_no_chart() -> None:
    with pytest.raises(ValueError, match="one limit"):
        limits_chart([], "t")
