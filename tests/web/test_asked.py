"""Forms as browsers send them -> the words of a question."""

from __future__ import annotations

from urllib.parse import urlencode

import pytest

from advisor.reading import read_case
from advisor.web.asked import TooMuch, read_form

NEEDED = [("work.material", "ash"), ("work.diameter", "10 in"), ("work.length", "3 in")]


def form(*pairs: tuple[str, str]) -> bytes:
    return urlencode([*NEEDED, *pairs]).encode()


def test_a_form_becomes_the_words_of_a_command() -> None:
    assert read_form(form()).words == ("work.material=ash", "work.diameter=10 in", "work.length=3 in")


def test_a_field_left_empty_was_not_said() -> None:
    assert read_form(form(("work.form", ""), ("work.mass", "   "))).words == read_form(form()).words


def test_ticks_become_a_list() -> None:
    asked = read_form(form(("work.condition", "check"), ("work.condition", "pith")))
    assert asked.words[-1] == "work.condition=[check, pith]"
    assert read_case(None, asked.words).work.condition == ("check", "pith")


@pytest.mark.parametrize("text", ["walnut, resin", "[walnut, resin]", " [ walnut, resin ] "])
def test_a_list_may_be_typed_with_or_without_brackets(text: str) -> None:
    assert read_case(None, read_form(form(("work.parts", text))).words).work.parts == ("walnut", "resin")


def test_the_form_asks_in_its_own_words() -> None:
    asked = read_form(b"ask=thrust&before=x%3D1&all=yes&work.material=ash")
    assert (asked.ask, asked.before, asked.everything) == ("thrust", "x=1", True)
    assert asked.parts == ("holding", "thrust", "centers")
    assert asked.words == ("work.material=ash",)


def test_an_unknown_question_is_the_whole_one() -> None:
    assert read_form(b"ask=nonsense").ask == "advise"


def test_what_was_asked_can_be_asked_again() -> None:
    asked = read_form(form(("ask", "speed"), ("work.condition", "check"), ("work.condition", "pith")))
    again = read_form(asked.again.encode())
    assert (again.ask, again.typed) == (asked.ask, asked.typed)


def test_bytes_that_are_no_text_do_no_harm() -> None:
    (word,) = read_form(b"work.material=%ff\xfe").words
    assert word.startswith("work.material=\ufffd")
    word.encode()


def test_more_fields_than_any_case_has_are_refused() -> None:
    with pytest.raises(TooMuch, match="More than 400 fields: a case has fewer"):
        read_form(b"a=1&" * 401)
