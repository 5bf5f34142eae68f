"""What stands on a page for cases at the edge: a toolpost, no thrust, an open question, a half-log, a crack."""

from __future__ import annotations

import pytest

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.reading import read_case
from advisor.report.sentences import no_thrust, thrust_extras
from advisor.report.sheet.compose import MOST_LIMITS, page_of
from advisor.report.sheet.measure import width
from advisor.report.sheet.page import Page, Section
from tests.rules.bench import words_of


def page(text: str, units: str = "metric") -> Page:
    case = read_case(None, words_of(text))
    return page_of(case, answer_for(case, ANSWER_PARTS["advise"], changes=False), "piece", units, "2026-09-21")


def section(found: Page, title: str) -> Section | None:
    return next((section for section in found.sections if section.title.startswith(title)), None)


def test_a_toolpost_gets_feed_and_depth_and_a_hand_tool_does_not() -> None:
    cut = section(page("SPINDLE; cut.tool=carriage; machine.kind=metal-lathe"), "The cut")
    assert cut is not None
    assert any("feed" in text and "depth" in text for text in cut.items)
    assert section(page("SPINDLE"), "The cut") is None


def test_without_thrust_the_sheet_says_so() -> None:
    _, thrust = page("BOWL; cut.operation=hollowing; work.state=round; hold.method=jaws-on-tenon").hold
    assert thrust.value == "none"


def test_numbers_are_not_to_be_used_before_an_open_question_is_settled() -> None:
    asked = page("BOWL; hold.method=three-jaw")
    assert asked.verdict == "ask-first"
    assert asked.speeds[0].label == "ONCE THAT IS SETTLED, START AT"
    assert page("BOWL").speeds[0].label == "START AT"


def test_a_half_log_is_drawn_from_its_geometry() -> None:
    found = page("SPINDLE; work.form=half-log; work.axis_from_flat=20mm")
    assert found.drawing is not None
    assert any("axis from flat 20 mm" in str(placed.view.shapes) for placed in found.drawing(50.0).placed)


@pytest.mark.parametrize("words", ["PEN", "BOWL; work.condition=[crack]; work.crack.across=60mm"])
def test_the_chart_shows_the_limits_that_matter(words: str) -> None:
    chart = section(page(words), "Limits on speed")
    assert chart is not None
    assert chart.picture is not None
    rows = chart.picture.element().count("<polygon")
    assert 1 < rows <= MOST_LIMITS


def test_the_short_sentences_of_the_window() -> None:
    thrust = {"allowed_n": 136.0, "needed_n": 306.0, "governed_by": "buckling", "light_cuts_n": 89.0}
    assert no_thrust(thrust, "metric") == "310 N (69 lbf) needed before it beds in, 130 N (30 lbf) allowed (buckling)"
    assert no_thrust({"allowed_n": 136.0, "governed_by": "buckling"}, "metric") == "130 N (30 lbf) allowed (buckling)"
    assert thrust_extras(thrust, "metric") == ["light cuts, up to 89 N (20 lbf)"]


@pytest.mark.parametrize(("sign", "ems"), [("\ufdfd", 12.0), ("\U00012000", 4.0), ("漢", 1.35), ("ж", 0.9)])
def test_unusual_signs_are_given_room(sign: str, ems: float) -> None:
    assert width(sign, 72.0) == pytest.approx(ems * 25.4)
