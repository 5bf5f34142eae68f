"""The page in a browser: the main job by mouse, by keyboard alone, at 375 px, without script, and for everybody."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, Route, expect

from advisor.advice.whole import answer_for
from advisor.reading import read_case, read_text
from advisor.report.numbers import limit_down
from tests.browser import axe
from tests.web.serving import Serving, serving

pytestmark = [pytest.mark.slow, pytest.mark.browser]

WORDS = ["work.material=sugar maple", "work.diameter=3 in", "work.length=18 in", "work.form=square"]
LONG = 60_000  # milliseconds; a busy machine takes its time
LEG = "?" + "&".join(word.replace(" ", "+") for word in WORDS)
TALL = "?work.material=ash&work.diameter=12+in&work.length=5+in&ask="


@pytest.fixture(scope="module")
def site() -> Iterator[Serving]:
    with serving() as opened:
        yield opened


@pytest.fixture(autouse=True)
def patience(page: Page) -> None:
    page.set_default_timeout(LONG)
    expect.set_options(timeout=LONG)


def start_and_ceiling() -> tuple[str, str]:
    speed = answer_for(read_case(None, WORDS), ("holding", "speed"))["speed"]
    return f"{limit_down(speed['start_rpm'])} rpm", f"{limit_down(speed['ceiling_rpm'])} rpm"


def number(page: Page, key: str) -> Locator:
    return page.locator(f'#answer details[data-key="{key}"] .number')


def fill(page: Page) -> None:
    page.get_by_label("Material (needed)").fill("sugar maple")
    page.get_by_label("Largest diameter (needed)").fill("3 in")
    page.get_by_label("Length (needed)").fill("18 in")
    page.get_by_label("Shape now").select_option("square")


def expect_the_answer(page: Page) -> None:
    start, ceiling = start_and_ceiling()
    expect(number(page, "start")).to_have_text(start)
    expect(number(page, "ceiling")).to_have_text(ceiling)


def test_the_main_job_by_form(page: Page, site: Serving) -> None:
    page.goto(site.address)
    fill(page)
    expect_the_answer(page)
    why = page.locator('#answer details[data-key="ceiling"]')
    expect(why.locator(".formula")).to_be_hidden()
    why.locator("summary").click()
    expect(why.locator(".formula")).to_be_visible()
    assert "Grade: " in why.inner_text()
    assert "Source: " in why.inner_text()


def tab_to(page: Page, name: str, most: int = 80) -> None:
    """Press Tab until the field of that name, or the button of that text, has the focus."""
    for _ in range(most):
        page.keyboard.press("Tab")
        told = page.evaluate("[document.activeElement.name, document.activeElement.textContent.trim()]")
        if name in told:
            return
    raise AssertionError(f"{name} cannot be reached by Tab")


def test_the_main_job_by_keyboard_alone(page: Page, site: Serving) -> None:
    page.goto(site.address)
    for name, text in (("work.material", "sugar maple"), ("work.diameter", "3 in"), ("work.length", "18 in")):
        tab_to(page, name)
        page.keyboard.type(text)
    tab_to(page, "work.form")
    page.keyboard.type("square")
    tab_to(page, "Answer")
    page.keyboard.press("Enter")
    expect_the_answer(page)
    expect(page.locator("#answer")).to_be_focused()
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(page.locator('#answer details[data-key="start"] .formula')).to_be_visible()
    assert page.evaluate("getComputedStyle(document.activeElement).outlineStyle") != "none"


def test_the_skip_link_comes_first(page: Page, site: Serving) -> None:
    page.goto(site.address + LEG)
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "To the answer"
    page.keyboard.press("Enter")
    expect(page.locator("#answer")).to_be_focused()


@pytest.mark.parametrize("path", ["/", "/" + LEG, "/" + TALL + "hold", "/what-is-it", "/explain/no-window"])
def test_nothing_is_cut_off_at_375_px(page: Page, site: Serving, path: str) -> None:
    page.set_viewport_size({"width": 375, "height": 720})
    page.goto(site.address + path)
    assert page.evaluate("document.documentElement.scrollWidth") <= 375
    small = page.evaluate(
        """[...document.querySelectorAll('input:not([type=hidden]), select, button, .button, summary')]
        .filter(one => one.offsetParent && !one.closest('label'))
        .filter(one => one.getBoundingClientRect().height < 24).map(one => one.outerHTML)"""
    )
    assert small == []


def test_the_main_job_on_a_phone(page: Page, site: Serving) -> None:
    page.set_viewport_size({"width": 375, "height": 720})
    page.goto(site.address)
    fill(page)
    strip = page.locator("#line")
    start, _ = start_and_ceiling()
    expect(strip).to_contain_text(f"Start {start}")
    expect(strip).to_be_in_viewport()
    strip.click()
    expect(page.locator(".verdict")).to_be_in_viewport()


def test_the_main_job_without_script(browser: Browser, site: Serving) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.set_default_timeout(LONG)
    page.goto(site.address)
    fill(page)
    page.get_by_role("button", name="Answer", exact=True).click()
    expect_the_answer(page)
    page.get_by_label("Largest diameter (needed)").fill("6 in")
    page.get_by_role("button", name="Answer", exact=True).click()
    expect(page.locator(".compared")).to_contain_text("3 in")
    page.get_by_label("Length (needed)").fill("long")
    page.get_by_role("button", name="Answer", exact=True).click()
    expect(page.locator('[id="wrong-work.length"]')).to_contain_text("Accepted: from 1 mm")
    context.close()


def test_typing_while_answers_arrive_loses_nothing(page: Page, site: Serving) -> None:
    page.goto(site.address + LEG)
    title = page.get_by_label("Name of the case")
    text = "a leg for the low table, one of four, the last of the plank"
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    title.press_sequentially(text, delay=90)  # longer than the pause now and then: answers come in between
    page.get_by_label("Moisture").press_sequentially("12 %", delay=400)
    expect(page.locator("#answer .title")).to_have_text(text)
    expect(title).to_have_value(text)
    expect(page.get_by_label("Moisture")).to_have_value("12 %")
    expect(page.get_by_label("Moisture")).to_be_focused()
    assert len([url for url in asked if url.endswith("/live")]) >= 2


def test_a_late_answer_never_takes_the_place_of_a_later_one(page: Page, site: Serving) -> None:
    page.goto(site.address + LEG)
    held: list[Route] = []

    def hold(route: Route) -> None:
        held.append(route)

    page.route("**/live", hold, times=1)
    length = page.get_by_label("Length (needed)")
    with page.expect_request("**/live"):
        length.fill("20 in")
    length.fill("9 in")
    expect(page.locator(".compared")).to_contain_text("9 in")
    held[0].fulfill(json={"error": "late"})
    page.wait_for_timeout(500)
    expect(page.locator(".compared")).to_contain_text("9 in")
    expect(length).to_have_value("9 in")


def test_an_error_waits_until_the_field_is_left_and_the_answer_stays(page: Page, site: Serving) -> None:
    page.goto(site.address + LEG)
    wrong = page.locator('[id="wrong-work.diameter"]')
    with page.expect_response("**/live"):
        page.get_by_label("Largest diameter (needed)").fill("4")
    expect(wrong).to_be_hidden()
    page.get_by_label("Length (needed)").focus()
    expect(wrong).to_contain_text("Has no unit: write 4 in or 4 mm")
    expect(page.get_by_label("Largest diameter (needed)")).to_have_attribute("aria-invalid", "true")
    expect_the_answer(page)
    page.get_by_label("Largest diameter (needed)").fill("4 in")
    expect(wrong).to_be_hidden()


def test_one_change_is_shown_before_and_after(page: Page, site: Serving) -> None:
    page.goto(site.address + LEG)
    page.get_by_label("Largest diameter (needed)").fill("6 in")
    changed = page.locator(".compared tr", has_text="Largest diameter (you)")
    expect(changed).to_contain_text("3 in")
    expect(changed).to_contain_text("6 in")
    expect(page.locator(".compared tr", has_text="Never above")).to_contain_text(start_and_ceiling()[1])


def test_fields_come_up_when_they_matter_and_an_open_why_stays_open(page: Page, site: Serving) -> None:
    page.goto(site.address + LEG)
    page.locator('#answer details[data-key="start"] summary').click()
    asthma = page.get_by_label("Asthma")
    expect(asthma).to_be_hidden()
    page.get_by_label("May it be mounted?").check()
    expect(asthma).to_be_visible()
    page.get_by_label("Whole answer").check()
    expect(asthma).to_be_hidden()
    page.get_by_label("Length (needed)").fill("17 in")
    expect(page.locator(".compared")).to_be_visible()


def test_the_program_gone_is_said_and_what_was_typed_stays(page: Page, site: Serving) -> None:
    page.goto(site.address + LEG)
    page.route("**/live", lambda route: route.abort())
    page.get_by_label("Length (needed)").fill("16 in")
    expect(page.locator("#wrong-")).to_contain_text("does not answer. What you typed is still here")
    expect(page.get_by_label("Length (needed)")).to_have_value("16 in")
    page.unroute("**/live")
    page.get_by_label("Length (needed)").fill("15 in")
    expect(page.locator(".compared")).to_contain_text("15 in")
    expect(page.locator("#wrong-")).to_be_hidden()


def test_what_is_taken_along_is_what_was_asked(page: Page, site: Serving, tmp_path: Path) -> None:
    page.goto(site.address + LEG)
    with page.expect_download() as case:
        page.get_by_role("button", name="Case (YAML)").click()
    case.value.save_as(tmp_path / "case.yaml")
    assert read_text((tmp_path / "case.yaml").read_text(), "yaml", "it") == read_case(None, WORDS)
    with page.expect_download() as answer:
        page.get_by_role("button", name="Answer (JSON)").click()
    answer.value.save_as(tmp_path / "answer.json")
    assert json.loads((tmp_path / "answer.json").read_text())["verdict"] == "go-with-care"
    with page.expect_download() as sheet:
        page.get_by_role("button", name="Sheet to pin up (PDF)").click()
    sheet.value.save_as(tmp_path / "sheet.pdf")
    assert (tmp_path / "sheet.pdf").read_bytes().startswith(b"%PDF-")


def test_an_unknown_material_is_found_step_by_step(page: Page, site: Serving) -> None:
    page.goto(site.address)
    page.get_by_role("link", name="I do not know what it is made of").click()
    for _ in range(20):
        if page.get_by_role("link", name=re.compile("^Go on with")).count():
            break
        page.locator(".answers a").last.click()
    page.get_by_role("link", name=re.compile("^Go on with")).click()
    expect(page.get_by_label("Material (needed)")).not_to_have_value("")


PATHS = ("/", "/" + LEG, "/" + TALL + "speed", "/?work.material=ash", "/what-is-it", "/explain/no-window")


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize(("path", "width"), [*((path, 1280) for path in PATHS), ("/" + LEG, 375)])
def test_nobody_is_shut_out(browser: Browser, site: Serving, scheme: str, width: int, path: str) -> None:
    context = browser.new_context(
        color_scheme="dark" if scheme == "dark" else "light", viewport={"width": width, "height": 800}, bypass_csp=True
    )
    page = context.new_page()
    page.set_default_timeout(LONG)
    page.goto(site.address + path)
    page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
    page.evaluate(axe.script())
    found = page.evaluate("axe.run(document, {resultTypes: ['violations']})")
    told = [(one["id"], [node["html"][:200] for node in one["nodes"][:3]]) for one in found["violations"]]
    context.close()
    assert told == []
    assert len(found["passes"]) > 10
