"""Two answers side by side."""

from __future__ import annotations

from typing import Any

from advisor.web.asked import Question
from advisor.web.compared import Row, changed_values, compare


def answer(**given: Any) -> dict[str, Any]:
    return {
        "verdict": "go", "reasons": [], "checks": [], "cautions": [],
        "holding": [{"method": "three-jaw", "verdict": "suits"}],
        "speed": {"start_rpm": 500.0, "ceiling_rpm": 1000.0, "governed_by": "walking"},
        "thrust": {"window": "open", "set_n": 200.0, "allowed_n": 900.0, "governed_by": "crushing"},
        **given,
    }  # fmt: skip


def rows(before: dict[str, Any], after: dict[str, Any]) -> list[Row]:
    return compare(before, after, "metric", []).rows


def test_equal_answers_have_no_lines() -> None:
    found = compare(answer(), answer(), "metric", [])
    assert (found.rows, found.new, found.gone) == ([], [], [])


def test_every_line_that_differs_is_there() -> None:
    after = answer(
        verdict="ask-first",
        holding=[{"method": "collet", "verdict": "with-care"}],
        speed={"start_rpm": 400.0, "ceiling_rpm": 1000.0, "governed_by": "whirl"},
        thrust={"window": "empty", "allowed_n": 100.0, "governed_by": "splitting"},
    )
    assert rows(answer(), after) == [
        Row("verdict", "go", "ask first"),
        Row("held by", "engineer's three-jaw chuck (suits)", "collet (with care)"),
        Row("start at", "500 rpm", "400 rpm"),
        Row("never above", "1000 rpm (walking)", "1000 rpm (whirl)"),
        Row("tail thrust", "open", "empty"),
        Row("thrust to set", "200 N (45 lbf)", "none"),
        Row("thrust at most", "900 N (200 lbf) (crushing)", "100 N (22 lbf) (splitting)"),
    ]


def test_a_refusal_has_no_speed() -> None:
    found = rows(answer(), answer(verdict="do-not-mount", speed={"ceiling_rpm": 0}, thrust={"window": "not-used"}))
    assert Row("start at", "500 rpm", "none") in found
    assert Row("never above", "1000 rpm (walking)", "none") in found
    assert Row("thrust at most", "900 N (200 lbf) (crushing)", "none") in found


def test_an_answer_without_the_parts_compares_the_rest() -> None:
    bare = {"verdict": "go", "reasons": [], "checks": [], "cautions": []}
    assert rows(bare, bare | {"verdict": "ask-first"}) == [Row("verdict", "go", "ask first")]


def test_what_is_said_anew_and_no_longer() -> None:
    before = answer(checks=["Tighten it.", "Set it to 500 N (110 lbf)."], cautions=[{"text": "Eyes."}])
    after = answer(checks=["Set it to 40.5 N (9 lbf).", "Look at it."], reasons=[{"text": "It is cracked."}])
    found = compare(before, after, "metric", [])
    assert found.new == ["It is cracked.", "Look at it."]
    assert found.gone == ["Tighten it.", "Eyes."]


def test_the_values_that_were_typed_differently() -> None:
    before = Question(typed={"work.material": ("ash",), "work.form": ("disc",)})
    after = Question(typed={"work.material": ("ash",), "work.condition": ("check", "pith"), "title": ("x",)})
    assert changed_values(before, after) == [
        Row("Shape now", "disc", "not said"),
        Row("What you see on it", "not said", "check, pith"),
        Row("title", "not said", "x"),
    ]
