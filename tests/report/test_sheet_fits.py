"""The layout: what does not fit at one size is tried at a smaller one, and only assumptions and notes are ever cut."""

from __future__ import annotations

import random

import pytest

from advisor.report.sheet import flow
from advisor.report.sheet.measure import width, wrap
from advisor.report.sheet.page import HEIGHT, Big, Page, Section
from tests.report.sheets import case_of, laid

PAGE = Page("name", "2026-01-01", "go", "GO.", "", "", (), (), (), None, (), "foot", "metric")


def page(*sections: Section) -> Page:
    return PAGE._replace(sections=sections)


def height(made: flow.Laid) -> float:
    """Height of all that is on a page, reckoned once more from its parts."""
    columns = [sum(flow.section_flow(s, made.body).height for s in column) for column in made.columns]
    fine = sum(flow.section_flow(s, made.body).height for s in made.fine)
    return flow.fixed_height(made.page, made.head, made.drawing) + max(columns) + fine


@pytest.mark.parametrize("name", ["spindle", "cracked", "platter"])
def test_what_is_laid_out_stays_on_the_page(name: str) -> None:
    made, _ = laid(case_of(name))
    assert height(made) <= HEIGHT
    assert all(section.kept is None for column in made.columns for section in column)


def test_little_is_set_large_and_much_is_set_small() -> None:
    line = "Take the key out of the chuck before anything else is done at the machine."
    little = flow.lay_out(page(Section("Before the switch", (line,) * 3, boxes=True)))
    much = flow.lay_out(page(Section("Before the switch", (line,) * 90, boxes=True)))
    assert little.body == flow.TRIES[0][0]
    assert flow.TRIES[-1][0] <= much.body < 9
    assert height(much) <= HEIGHT


def test_assumptions_go_first_and_the_sheet_says_so() -> None:
    lines = tuple(f"field number {i} = so many millimeters: because nobody said what it was" for i in range(900))
    checks = Section("Before the switch", lines[:20], boxes=True)
    made = flow.lay_out(page(checks, Section("Assumed", lines, fine=True, may_be_cut=True)))
    (fine,) = made.fine
    assert fine.kept is not None
    assert fine.shown[-1] == f"and {900 - fine.kept} more: advisor advise prints them all"
    assert made.columns[0][0] == checks
    assert height(made) <= HEIGHT


def test_checks_and_cautions_are_never_cut() -> None:
    lines = tuple(f"look at number {i} before the switch" for i in range(2000))
    with pytest.raises(OverflowError, match="more than can be printed"):
        flow.lay_out(page(Section("Before the switch", lines, boxes=True)))


def test_both_columns_are_about_as_long() -> None:
    dice = random.Random(4)
    for _ in range(20):
        sections = [Section(str(i), ("a line",) * dice.randint(1, 9)) for i in range(6)]
        (left, right), longer = flow.split(sections, 8.0)
        heights = [sum(flow.section_flow(s, 8.0).height for s in column) for column in (left, right)]
        assert longer == pytest.approx(max(heights))
        assert left[0] == sections[0]
        assert [s for s in sections if s in left] == list(left)
        largest = max(flow.section_flow(s, 8.0).height for s in sections)
        assert max(heights) - min(heights) <= largest + 1e-9


@pytest.mark.parametrize("text", ["two words", "x" * 400, "a " * 200, "漢字" * 60, "", "long" * 50 + " short"])
def test_no_line_is_wider_than_its_room(text: str) -> None:
    lines = wrap(text.strip(), 8.0, 60.0)
    assert all(width(line, 8.0) <= 60.0 for line in lines)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")


def test_a_unit_stands_behind_the_last_line_of_its_value() -> None:
    made = flow.big_flow(Big("START AT", "800", "rpm", "note"), 90.0, 50.0, 1.0)
    value, unit = (next(mark for mark in made.marks if mark.text == text) for text in ("800", "rpm"))
    assert unit.x > width("800", 50.0)
    assert unit.y == value.y


def test_a_reason_that_names_a_crowd_is_set_smaller_and_still_fits() -> None:
    crowd = PAGE._replace(reason="W" * 97 + " and more; " * 190, sections=(Section("Cautions", ("look",)),))
    assert crowd.reason_points < PAGE.reason_points
    assert height(flow.lay_out(crowd)) <= HEIGHT


def test_a_piece_of_twenty_hostile_parts_fills_a_page_and_no_more() -> None:
    parts = ", ".join(f"{'W' * 96}{number}" for number in range(10, 30))
    condition = "[through-crack, rot, nails, grit, untested-glue, uncured, punky, void, burl, live-edge]"
    case = case_of(
        "cracked", f"work.parts=[{parts}]", f"person.reacted_before=[{parts}]", f"work.condition={condition}"
    )
    made, answer = laid(case)
    assert height(made) <= HEIGHT
    shown = [text for column in made.columns for section in column for text in section.shown]
    assert len(answer["reasons"]) > len(shown)
    assert any("more: advisor advise prints them all" in text for text in shown)
    assert {entry["text"] for entry in answer["cautions"]} <= set(shown)
