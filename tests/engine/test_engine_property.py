"""The engine against a matcher written here: the same rulings for any book and any facts."""

from __future__ import annotations

import operator
from decimal import Context, Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor.engine import Engine, Fact
from advisor.rulebook import (
    Among,
    Book,
    Compare,
    Effect,
    Equal,
    Known,
    Matcher,
    Rule,
    Test,
    Value,
    When,
    above,
    absent,
    all_of,
    at_least,
    at_most,
    below,
    between,
    fact,
    none_of,
    one_of,
    present,
)
from tests.conftest import scale

KINDS = ("blank", "hold", "thrust-window")
WORDS = ("a", "ab", "b", "unknown", "1", "true", "it's", 'say "x"', "back\\slash", "ä 木")
BOUNDS = (0.0, 1.0, 1, 2, -1, 0.5, 1 / 3, 0.0001, -0.0001, 123456789.25, 1e14, 9007199254740993)
COMPARES = {"below": operator.lt, "at_most": operator.le, "above": operator.gt, "at_least": operator.ge}

bounds = st.sampled_from(BOUNDS[:-1])
near = st.sampled_from(BOUNDS).flatmap(
    lambda bound: st.sampled_from([bound, bound * (1 + 1e-12), bound * (1 - 1e-7), bound * (1 + 1e-7), -bound])
)
numbers = near | st.floats(allow_nan=False, allow_infinity=False) | st.integers(-(10**20), 10**20)
words = st.sampled_from(WORDS)
edges = st.sampled_from([below, at_most, above, at_least]).flatmap(bounds.map)
bands = st.sampled_from([(0, 1), (-1, 0.5), (1 / 3, 2), (0.0001, 123456789.25)]).map(lambda two: between(*two))
among = st.sampled_from([one_of, none_of])
counts = st.lists(st.integers(-3, 3), min_size=1, max_size=4, unique=True)
some_words = st.lists(words, min_size=1, max_size=4, unique=True)
some_numbers = among.flatmap(lambda choose: counts.map(lambda some: choose(*some)))
some_texts = among.flatmap(lambda choose: some_words.map(lambda some: choose(*some)))
known = st.sampled_from([present, absent])
number_tests = edges | bands | bounds | some_numbers | known | st.builds(all_of, edges, some_numbers)
text_tests = words | some_texts | known | st.builds(all_of, some_texts, known)


def keys() -> st.SearchStrategy[dict[str, Matcher | Value]]:
    """Tests of keys that hold numbers (n), texts (t), and of keys nobody compares (u)."""
    number = {f"n{place}": number_tests for place in range(3)}
    text = {f"t{place}": text_tests for place in range(3)}
    return st.fixed_dictionaries({}, optional={**number, **text, "u": known})


conditions = st.builds(lambda kind, tests: fact(kind, **tests), st.sampled_from(KINDS), keys())
facts = st.builds(
    Fact,
    st.sampled_from(KINDS),
    st.fixed_dictionaries(
        {},
        optional={
            **{f"n{place}": numbers for place in range(3)},
            **{f"t{place}": words for place in range(3)},
            "u": numbers | words,
        },
    ),
)


def nine(number: float) -> float:
    """The number to nine significant figures, by decimal arithmetic."""
    return float(Context(prec=9).create_decimal(Decimal(number)))


def fits(test: Test, value: Value | None, holds: str) -> bool:
    """Whether one test holds for one value, as the pages of the conditions say."""
    if holds == "text" and value is None:
        value = "unknown"
    if isinstance(value, (int, float)):
        value = nine(float(value))
    if isinstance(test, Known):
        return (value is not None and value != "unknown") is test.known
    if value is None:
        return False
    if isinstance(test, Equal):
        return value == test.value
    if isinstance(test, Among):
        return (value in test.values) is test.inside
    assert isinstance(test, Compare)
    return bool(COMPARES[test.sign](value, test.bound))


def expected(rules: list[Rule], posted: list[Fact]) -> list[tuple[int, str]]:
    """The rulings by the matcher of this test."""
    types = {key: test.reads for rule in rules for key, test in rule.when.tests() if test.reads != "either"}
    return [
        (place, rule.name)
        for place, entry in enumerate(posted)
        for rule in rules
        if rule.when.kind == entry.kind
        and all(fits(test, entry.values.get(key), types.get(key, "either")) for key, test in rule.when.tests())
    ]


def check(whens: list[When], posted: list[Fact]) -> None:
    rules = [Rule(when, Effect.NOTE, says="x", name=f"r{place:03}", topic="t") for place, when in enumerate(whens)]
    rules += [Rule(fact(kind), Effect.NOTE, says="x", name=f"z-{kind}", topic="t") for kind in KINDS]
    rules.sort(key=lambda rule: rule.name)
    places = {id(entry): place for place, entry in enumerate(posted)}
    rulings = Engine(Book(rules)).run(posted)
    found = [(places[id(ruling.fact)], ruling.rule.name) for ruling in rulings]
    assert found == expected(rules, posted)


@settings(max_examples=150, deadline=None)
@given(st.lists(conditions, max_size=12), st.lists(facts, max_size=5))
def test_engine_matches_as_the_conditions_say(whens: list[When], posted: list[Fact]) -> None:
    check(whens, posted)


@settings(max_examples=25, deadline=None)
@given(st.lists(conditions, min_size=2, max_size=8), st.lists(facts, min_size=1, max_size=3))
def test_engine_matches_the_same_in_several_sets(whens: list[When], posted: list[Fact]) -> None:
    check(whens * 60, posted)


@pytest.mark.slow
@pytest.mark.properties
@settings(max_examples=scale(4_000), deadline=None)
@given(st.lists(conditions, max_size=30), st.lists(facts, max_size=8))
def test_engine_matches_as_the_conditions_say_many_times(whens: list[When], posted: list[Fact]) -> None:
    check(whens, posted)
