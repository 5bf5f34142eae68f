"""How an input of a figure says what it accepts, and how each shape of it is read."""

from __future__ import annotations

from typing import Annotated, Any, Literal

import pytest

from advisor.quantity import FigureInputError, Input, Unit, declared_input, nearest, split_given

ONE = Unit("LENGTH", "mm", 1.0, 100.0)
LIST = Unit("LENGTH", "mm", 1.0, 100.0, shape="list")
PAIRS = Unit("LENGTH", "mm", 0.0, 100.0, shape="pairs")
WHOLE = Unit("NUMBER", "", 1.0, 9.0, whole=True)
GIVEN = Unit("NUMBER", "", 0.0, 1e15, shape="given")
STIFF = Unit("STRESS", "GPa", 0.1, 100.0, convert_to="GPa")


@pytest.mark.parametrize(
    ("unit", "words"),
    [
        (ONE, "a value in mm from 1 to 100"),
        (LIST, "a list of values in mm from 1 to 100"),
        (PAIRS, "pairs position:diameter in mm from 0 to 100"),
        (WHOLE, "a whole number from 1 to 9"),
        (GIVEN, "a value from 0 to 1e+15"),
    ],
)
def test_accepted(unit: Unit, words: str) -> None:
    assert unit.accepted == words
    assert Input("x", unit, (), True, None).accepted == words


def test_words_and_names_are_accepted() -> None:
    assert Input("ends", None, ("free", "fixed"), True, None).accepted == "one of free, fixed"
    assert Input("material", None, (), True, None).accepted == "a name"
    assert Input("material", None, (), True, None).text == ""
    assert Input("x", ONE, (), True, None).text == "mm"


@pytest.mark.parametrize(
    ("unit", "text", "value"),
    [
        (ONE, "1 in", 25.4),
        (LIST, "1in, 2in", (25.4, 50.8)),
        (LIST, " [1in, 2in] ", (25.4, 50.8)),
        (PAIRS, "[0mm:1in, 2in:10mm]", ((0.0, 25.4), (50.8, 10.0))),
        (STIFF, "12600 MPa", 12.6),
        (GIVEN, "54 MPa", 54.0),
    ],
)
def test_read(unit: Unit, text: str, value: Any) -> None:
    assert unit.read("x", text) == pytest.approx(value) if unit is not PAIRS else unit.read("x", text) == value


@pytest.mark.parametrize(
    ("unit", "text", "value", "accepted"),
    [
        (PAIRS, "0mm:1mm, 7mm", "7mm", "pairs position:diameter with commas between, a unit on every number"),
        (GIVEN, "much", "much", "a number with or without a unit"),
    ],
)
def test_not_read(unit: Unit, text: str, value: str, accepted: str) -> None:
    with pytest.raises(FigureInputError) as refused:
        unit.read("x", text)
    assert (refused.value.name, refused.value.value, refused.value.accepted) == ("x", value, accepted)


@pytest.mark.parametrize("text", ["7 kg", "7mm:8kg", "7 kg:8mm"])
def test_a_wrong_unit_says_which_would_do(text: str) -> None:
    with pytest.raises(FigureInputError, match="kg") as refused:
        (PAIRS if ":" in text else ONE).read("x", text)
    assert refused.value.name == "x"
    assert refused.value.value == next(part for part in text.split(":") if "kg" in part)
    assert "mm" in refused.value.accepted
    assert "is a mass, not a length; accepted: " in str(refused.value)


@pytest.mark.parametrize(
    ("unit", "value", "at_fault"),
    [
        (ONE, 0.99, 0.99),
        (ONE, 100.1, 100.1),
        (LIST, (5.0, 101.0), 101.0),
        (PAIRS, ((5.0, 6.0), (7.0, 101.0)), 101.0),
        (WHOLE, 1.5, 1.5),
        (GIVEN, -1.0, -1.0),
    ],
)
def test_out_of_bounds(unit: Unit, value: Any, at_fault: float) -> None:
    with pytest.raises(FigureInputError) as refused:
        Input("x", unit, (), True, None).check(value)
    assert (refused.value.name, refused.value.value, refused.value.accepted) == ("x", at_fault, unit.accepted)


@pytest.mark.parametrize(("unit", "value"), [(ONE, 1), (ONE, 100), (LIST, (1, 100)), (PAIRS, ((0, 1),)), (WHOLE, 9)])
def test_bounds_are_taken(unit: Unit, value: Any) -> None:
    Input("x", unit, (), True, None).check(value)


def test_a_word_that_is_no_choice_shows_the_likeliest() -> None:
    ends = Input("ends", None, ("free", "fixed"), True, None)
    ends.check("free")
    with pytest.raises(FigureInputError) as refused:
        ends.check("freee")
    assert (refused.value.name, refused.value.value) == ("ends", "freee")
    assert refused.value.accepted == "one of free, fixed; did you mean free?"


def test_nothing_is_a_value_only_where_it_may_be_left_out() -> None:
    Input("x", ONE, (), False, None).check(None)
    Input("ends", None, ("free",), False, None).check(None)
    with pytest.raises(FigureInputError):
        Input("ends", None, ("free", "None"), True, None).check(None)


def test_three_likely_words_at_most_and_none_that_is_unlike() -> None:
    assert nearest("abcd", ["abce", "abcf", "abcg", "abch"]).count(" or ") == 2
    assert nearest("ABCD", ["abcd"]) == "; did you mean abcd?"
    assert nearest("abcd", ["abxy"]) == ""
    assert nearest("abcde", ["abcxx"]) == "; did you mean abcxx?"


def test_a_hint_declares_unit_choices_and_default() -> None:
    length = Annotated[float, ONE]
    assert declared_input("x", length, {}) == Input("x", ONE, (), True, None)
    assert declared_input("x", length, {"x": 2.0}) == Input("x", ONE, (), False, 2.0)
    assert declared_input("x", length | None, {"x": None}) == Input("x", ONE, (), False, None)
    assert declared_input("x", Literal["a", "b"], {"x": "a"}) == Input("x", None, ("a", "b"), False, "a")
    assert declared_input("x", str, {}) == Input("x", None, (), True, None)


def test_a_value_in_any_unit_is_split_from_it() -> None:
    assert split_given("mean", "54 MPa") == (54.0, "MPa")
    assert split_given("mean", "0.18") == (0.18, "")
