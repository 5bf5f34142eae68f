"""The pictures of the README, taken of the page as it is now: python -m tests.browser.pictures."""

from __future__ import annotations

from pathlib import Path

from playwright.sync_api import sync_playwright

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.reading import read_case
from advisor.report.sheet.as_svg import sheet_svg
from advisor.report.sheet.compose import page_of
from advisor.report.sheet.flow import lay_out
from tests.browser.conftest import CHROMIUM, QUIET
from tests.house.tree import ROOT
from tests.web.serving import serving

FOLDER = ROOT / "docs" / "pictures"
LEG = (
    "/?work.material=sugar+maple&work.form=square&work.diameter=3+in&work.length=18+in&work.finished_diameter=1+3%2F4+in"
    "&work.moisture=9%25&work.purpose=spindle&machine.kind=metal-lathe&machine.mass=1500+lb&machine.max_rpm=1400"
    "&person.extraction=yes&person.respirator=P2&hold.method=spur-drive&units=inch"
)
BOWL = (
    "/?work.material=white+ash&work.form=disc&work.state=not-round&work.moisture=wet&work.diameter=280+mm"
    "&work.length=110+mm&work.purpose=bowl&hold.method=faceplate-screws&machine.mass=170+kg&units=metric"
)
PICTURES = {
    "page.png": (LEG, 1280, 660, "light", ""),
    "page-on-a-phone.png": (BOWL, 375, 780, "dark", "#answer"),
}


def sheet() -> str:
    """The sheet of a bowl blank, as it hangs by the lathe."""
    case = read_case(str(ROOT / "cases" / "wet-ash-faceplate.yaml"), [])
    answer = answer_for(case, ANSWER_PARTS["advise"])
    laid = lay_out(page_of(case, answer, case.title or "", "inch", "2026-01-02"))
    return sheet_svg([laid]).partition("\n")[2]


def take() -> list[Path]:
    """Take every picture; the files."""
    FOLDER.mkdir(parents=True, exist_ok=True)
    made = []
    with serving() as site, sync_playwright() as driver:
        browser = driver.chromium.launch(executable_path=str(CHROMIUM), args=QUIET)
        for name, (path, width, height, scheme, place) in PICTURES.items():
            context = browser.new_context(
                viewport={"width": width, "height": height}, color_scheme="dark" if scheme == "dark" else "light"
            )
            page = context.new_page()
            page.goto(site.address + path + place)
            page.screenshot(path=FOLDER / name)
            made.append(FOLDER / name)
            context.close()
        paper = browser.new_page(viewport={"width": 816, "height": 1056}, device_scale_factor=0.9)
        paper.set_content(f"<body style='margin: 0; filter: grayscale(1)'>{sheet()}")
        paper.screenshot(path=FOLDER / "sheet.png")
        made.append(FOLDER / "sheet.png")
        browser.close()
    return made


if __name__ == "__main__":
    for file in take():
        print(file.relative_to(ROOT), file.stat().st_size)
