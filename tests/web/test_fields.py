"""The fields of the form and which of them are shown."""

from __future__ import annotations

from typing import Any, get_args

import pytest

from advisor.models.case import Case
from advisor.models.fields import field_names
from advisor.models.words import Form
from advisor.web.asked import ASKS
from advisor.web.fields import form_fields, matters
from advisor.web.labels import ALWAYS, BEHIND, FIRST, GROUPS, LABELS

NAMES = {entry.name for entry in form_fields()}


def found(**answer: Any) -> dict[str, Any]:
    return {"answer": {"assumed": [], **answer}, "opens": answer.pop("opens", [])}


def test_every_field_of_a_case_can_be_filled_in() -> None:
    of_a_case = {name for name in field_names(Case) if name.partition(".")[0] in GROUPS}
    assert of_a_case == NAMES
    assert len(form_fields()) == len(NAMES) > 100


def test_the_form_names_only_fields_that_exist() -> None:
    named = {*ALWAYS, *LABELS, *(name for names in (*FIRST.values(), *BEHIND.values()) for name in names)}
    assert named <= NAMES
    assert set(FIRST) == set(ASKS)


def test_no_two_fields_have_the_same_label() -> None:
    by_group = [(entry.group, entry.label) for entry in form_fields()]
    assert len(set(by_group)) == len(by_group)


def test_what_is_needed_comes_first() -> None:
    first = form_fields()[:4]
    assert [entry.name for entry in first] == list(ALWAYS)
    assert [entry.needed for entry in first] == [True, True, True, False]


@pytest.mark.parametrize(
    ("name", "shape"),
    [
        ("work.material", "text"),
        ("work.form", "word"),
        ("work.condition", "several"),
        ("machine.brake", "word"),
        ("work.moisture", "text"),
        ("hold.kit", "several"),
        ("work.parts", "text"),
    ],
)
def test_a_field_is_filled_in_as_its_kind_asks(name: str, shape: str) -> None:
    assert next(entry.shape for entry in form_fields() if entry.name == name) == shape


def test_words_are_those_of_the_case() -> None:
    words = next(entry.words for entry in form_fields() if entry.name == "work.form")
    assert words == get_args(Form)


@pytest.mark.parametrize("ask", list(ASKS))
def test_a_fresh_form_shows_few_fields(ask: str) -> None:
    shown = matters(ask, (), None)
    assert set(ALWAYS) <= shown
    assert len(shown) < 15


def test_the_question_decides_what_is_shown() -> None:
    assert "person.asthma" in matters("mount", (), None) - matters("speed", (), None)
    assert "machine.max_rpm" in matters("speed", (), None) - matters("mount", (), None)
    assert "hold.tail.kind" in matters("thrust", (), None) - matters("speed", (), None)


def test_what_was_filled_in_stays_in_sight() -> None:
    assert "hold.vacuum.gauge" in matters("mount", ("hold.vacuum.gauge",), None)
    assert "nonsense" not in matters("mount", ("nonsense",), None)


def test_a_field_that_would_change_the_verdict_comes_up() -> None:
    assert "work.tested" in matters("speed", (), found(opens=["work.tested"]))


def test_an_assumed_field_behind_the_limit_that_decides_comes_up_and_no_other() -> None:
    assumed = [{"field": "machine.mass"}, {"field": "machine.base_width"}, {"field": "hold.drive.teeth"}]
    walking = matters("mount", (), found(assumed=assumed, speed={"governed_by": "walking"}))
    burst = matters("mount", (), found(assumed=assumed, speed={"governed_by": "burst"}))
    assert {"machine.mass", "machine.base_width"} <= walking
    assert not {"machine.mass", "machine.base_width"} & burst
    assert "hold.drive.teeth" not in walking
    assert "hold.tail.rating" in matters(
        "mount", (), found(assumed=[{"field": "hold.tail.rating"}], thrust={"governed_by": "center-rating"})
    )
