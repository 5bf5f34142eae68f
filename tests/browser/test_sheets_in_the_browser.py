"""No lettering leaves its place: sheets of random cases measured in a browser, on screen, on paper, and as PDF."""

from __future__ import annotations

import random
import subprocess
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Page as BrowserPage
from pypdfium2 import PdfDocument

from advisor.reading import InputFault, read_case
from advisor.report.sheet.as_html import sheet_html
from advisor.report.sheet.as_pdf import sheet_pdf
from advisor.report.sheet.as_svg import sheet_svg
from advisor.report.sheet.flow import Laid
from advisor.report.sheet.measure import MM_PER_POINT, width
from tests.conftest import SEED, scale
from tests.report.sheets import CASES, WHEN, case_of, laid
from tests.report.test_sheet_hostile import NASTY
from tests.whole.situations import situation

pytestmark = [pytest.mark.slow, pytest.mark.browser]
PIXELS = 96 / 25.4  # of a browser, to the mm
NAMES = [*NASTY, "W" * 100, "a plain name", "long words " * 8]

LETTERING = subprocess.run(["fc-list"], check=False, capture_output=True, text=True).stdout
# What is reckoned fits to the hair; what stands in for it is narrowed to fit sentences, not rows of braces.
SPARE = 1.0 if "Liberation Sans" in LETTERING or "Arial" in LETTERING else 1.12

OVERFLOWING = """() => {
  const wrong = [];
  for (const page of document.querySelectorAll('.page')) {
    const box = page.getBoundingClientRect();
    if (box.height > 262 * 96 / 25.4 + 1) wrong.push(`page ${box.height / 96 * 25.4} mm high`);
    for (const element of page.querySelectorAll('*:not(svg *)')) {
      const own = element.getBoundingClientRect();
      if (element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0)
        wrong.push(`${element.tagName} ${element.textContent.slice(0, 60)}`);
      if (own.right > box.right + 1 || own.left < box.left - 1 || own.bottom > box.bottom + 1)
        wrong.push(`outside: ${element.tagName} ${element.textContent.slice(0, 60)}`);
    }
    for (const text of page.querySelectorAll('svg text')) {
      const own = text.getBoundingClientRect(), around = text.closest('svg').getBoundingClientRect();
      if (own.right > around.right + 1 || own.left < around.left - 1 || own.bottom > around.bottom + 2)
        wrong.push(`outside its drawing: ${text.textContent}`);
    }
    const columns = [...page.querySelectorAll('.columns > div')].map(column => column.getBoundingClientRect());
    if (columns[0].right > columns[1].left) wrong.push('columns overlap');
  }
  return wrong;
}"""
LINES = """() => [...document.querySelectorAll('svg > g > text')].map(text =>
  [text.textContent, text.getComputedTextLength(), parseFloat(text.getAttribute('font-size')),
   text.hasAttribute('font-weight')])"""


def random_sheets(count: int) -> Iterator[tuple[list[str], Laid]]:
    """So many sheets of random cases that get past the reader, with the words that made them."""
    dice = random.Random(SEED)
    while count:
        words = situation(dice)
        try:
            case = read_case(None, words)
        except InputFault:
            continue
        count -= 1
        yield words, laid(case, dice.choice(("metric", "inch")), dice.choice(NAMES))[0]


def shown(page: BrowserPage, text: str) -> None:
    page.set_content(text)


def check_svg(page: BrowserPage, sheet: Laid) -> list[Any]:
    """Lines that are wider in the browser than the layout reckoned."""
    shown(page, sheet_svg([sheet]).partition("\n")[2])
    found = page.evaluate(LINES)
    assert len(found) > 10
    return [line for line in found if line[1] > SPARE * width(line[0], line[2] / MM_PER_POINT, line[3]) + 0.3]


def test_random_sheets_stay_in_their_place(page: BrowserPage) -> None:
    page.set_viewport_size({"width": 1000, "height": 1200})
    for number, (words, sheet) in enumerate(random_sheets(scale(500))):
        html = sheet_html([sheet])
        for paper in (False, True):
            page.emulate_media(media="print" if paper else "screen")
            shown(page, html)
            assert page.evaluate(OVERFLOWING) == [], (paper, words)
        if number % 10 == 0:
            for size in ("A4", "Letter"):
                assert len(PdfDocument(page.pdf(format=size))) == 1, (size, words)
        assert check_svg(page, sheet) == [], words
        assert len(PdfDocument(sheet_pdf([sheet], WHEN))) == 1, words


@pytest.mark.parametrize("width_of_screen", [375, 760, 1280])
@pytest.mark.parametrize("name", CASES)
def test_no_sheet_has_to_be_moved_sideways(page: BrowserPage, name: str, width_of_screen: int) -> None:
    page.set_viewport_size({"width": width_of_screen, "height": 800})
    shown(page, sheet_html([laid(case_of(name), name="x" * 100)[0]]))
    assert page.evaluate("document.documentElement.scrollWidth") <= width_of_screen


def test_boxes_can_be_ticked_by_keyboard(page: BrowserPage) -> None:
    shown(page, sheet_html([laid(case_of("spindle"))[0]]))
    boxes = page.get_by_role("checkbox")
    assert boxes.count() > 3
    page.keyboard.press("Tab")
    page.keyboard.press("Space")
    assert boxes.first.is_checked()


def test_largest_lettering_is_verdict_and_speeds(page: BrowserPage) -> None:
    """Cap height 8 mm and more can be read at two meters: a two-hundred-and-fiftieth of the distance."""
    shown(page, sheet_html([laid(case_of("spindle"))[0]]))
    sizes = page.evaluate(
        "() => ['.verdict p', '.speed .value'].map(s => getComputedStyle(document.querySelector(s)).fontSize)"
    )
    capital = [float(size.removesuffix("px")) / PIXELS * 0.716 for size in sizes]
    assert min(capital) >= 7.5
    assert capital[1] >= 10
