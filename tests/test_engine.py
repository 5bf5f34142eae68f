"""What the engine gives back: rulings, their order, their texts, and plain errors."""

from __future__ import annotations

import pickle
import sys
from typing import Any

import pytest

from advisor import engine as adapter
from advisor.engine import BUILD_COMMAND, BadFact, Engine, EngineMissing, Fact, Fires, Ruling, UnreadFact
from advisor.rulebook import (
    Book,
    Effect,
    MissingWord,
    Rule,
    Value,
    absent,
    below,
    fact,
    load_book,
    none_of,
    one_of,
    present,
)
from advisor.rulebook.conditions import LONGEST_WORD, Matcher, Reads


def rule(name: str, topic: str = "thrust", **parts: Any) -> Rule:
    return Rule(**{"when": fact("thrust"), "effect": Effect.NOTE, "says": "x", "name": name, "topic": topic, **parts})


NO_WINDOW = rule(
    "no-window",
    when=fact("thrust", margin=below(1)),
    effect=Effect.ASK_FIRST,
    says="{needed} needed, {margin} of it allowed with a {tail}.",
    do="Seat the teeth; {margin} is too little.",
)


def test_rulings_come_in_the_order_of_facts_then_of_the_book() -> None:
    book = Book([rule("b", "z"), rule("a", "z"), rule("c", "a"), rule("d", "m", when=fact("speed"))])
    facts = [Fact("thrust", {}), Fact("speed", {}), Fact("thrust", {})]
    rulings = Engine(book).run(facts)
    assert [(facts.index(ruling.fact), ruling.rule.name) for ruling in rulings[:4]] == [
        (0, "c"),
        (0, "a"),
        (0, "b"),
        (1, "d"),
    ]
    assert [ruling.rule.name for ruling in rulings[4:]] == ["c", "a", "b"]
    assert rulings[4].fact is facts[2]


def test_texts_are_filled_from_words_then_values() -> None:
    posted = Fact("thrust", {"margin": 0.81234, "tail": "cup"}, {"needed": "900 N", "tail": "cup center"})
    (ruling,) = Engine(Book([NO_WINDOW])).run([posted])
    assert ruling.text == "900 N needed, 0.812 of it allowed with a cup center."
    assert ruling.remedy == "Seat the teeth; 0.812 is too little."


@pytest.mark.parametrize(
    ("number", "shown"), [(1234.5, "1230"), (4, "4"), (0.00012345, "0.000123"), (-2.50, "-2.5"), (98765432, "98800000")]
)
def test_numbers_are_shown_without_exponent(number: float, shown: str) -> None:
    assert Ruling(rule("a", says="{x}"), Fact("thrust", {"x": number})).text == shown


@pytest.mark.parametrize(
    ("number", "written"),
    [
        (3, "3.0"),
        (0.1, "0.1"),
        (1.23456789e-7, "0.000000123456789"),
        (-1.2345678949e-7, "-0.000000123456789"),
        (1e-5, "0.0000100000000"),
        (1e16, "10000000000000000.0"),
        (123456789012345.0, "123456789000000.0"),
        (1e9, "1000000000.0"),
    ],
)
def test_numbers_reach_the_engine_to_nine_figures_without_exponent(number: float, written: str) -> None:
    assert adapter.plain(number) == written


THERE, GONE, KNOWN = {"$ex": {"x": 1}}, {"$nex": {"x": 1}}, {"$neq": {"x": "unknown"}}


@pytest.mark.parametrize(
    ("test", "reads", "asked", "branches"),
    [
        ("low", "text", [{"x": "low"}], 1),
        (2, "number", [{"x": 2.0}], 1),
        (below(1), "number", [{"$lt": {"x": 1.0}}], 1),
        (one_of("a"), "text", [{"x": "a"}], 1),
        (one_of("a", "b", "c"), "text", [{"$or": [{"x": "a"}, {"x": "b"}, {"x": "c"}]}], 3),
        (none_of("a", "b"), "text", [{"$neq": {"x": "a"}}, {"$neq": {"x": "b"}}], 1),
        (present, "number", [THERE], 1),
        (absent, "number", [GONE], 1),
        (present, "text", [THERE, KNOWN], 1),
        (absent, "text", [{"x": "unknown"}], 1),
        (present, "either", [THERE, KNOWN], 1),
        (absent, "either", [{"$or": [GONE, {"x": "unknown"}]}], 2),
    ],
)
def test_the_engine_is_asked_for_what_a_test_says_and_nothing_more(
    test: Value | Matcher, reads: Reads, asked: list[Any], branches: int
) -> None:
    """And the branches that this opens are counted, for a set of rules bears so many."""
    made = adapter.definition(rule("a", when=fact("thrust", x=test)), {"x": reads})
    assert made == ({"all": [{"m": {"$and": [{"kind": "thrust"}, *asked]}}]}, branches)


def test_a_missing_word_is_told_with_the_rule_and_what_there_is() -> None:
    (ruling,) = Engine(Book([NO_WINDOW])).run([Fact("thrust", {"margin": 0.5})])
    with pytest.raises(MissingWord, match=r"rule no-window: no word for \{needed\}.*carries margin"):
        _ = ruling.text
    assert ruling.remedy == "Seat the teeth; 0.5 is too little."


def test_words_never_decide() -> None:
    engine = Engine(Book([NO_WINDOW, rule("no-tail", when=fact("thrust", tail=absent))]))
    rulings = engine.run([Fact("thrust", {}, {"margin": "0.5", "tail": "cup"})])
    assert [ruling.rule.name for ruling in rulings] == ["no-tail"]


def test_a_fact_that_no_rule_reads_is_an_error() -> None:
    with pytest.raises(UnreadFact, match=r"kind 'thrsut'; known: thrust"):
        Engine(Book([NO_WINDOW])).run([Fact("thrsut", {})])
    with pytest.raises(UnreadFact):
        Engine(Book([])).run([Fact("thrust", {})])


def test_nothing_is_asserted_when_one_fact_is_bad() -> None:
    engine = Engine(Book([rule("a", when=fact("thrust", margin=below(1)))]))
    good, bad = Fact("thrust", {"margin": 0}), Fact("thrust", {"margin": "low"})
    with pytest.raises(BadFact, match=r"thrust\.margin = 'low': the rules read a number here"):
        engine.run([good, bad])
    assert len(engine.run([good])) == 1


def test_unread_keys_are_named() -> None:
    engine = Engine(Book([NO_WINDOW, rule("tail", when=fact("thrust", tail="cup"))]))
    facts = [Fact("thrust", {"margin": 1, "tail": "cup", "spare": 3}), Fact("speed", {"margin": 1})]
    assert engine.unread_keys(facts) == {"thrust.spare", "speed.margin"}
    assert engine.unread_keys(facts[:0]) == set()


def test_a_book_lacking_a_rule_still_takes_the_facts() -> None:
    book = Book([NO_WINDOW, rule("other", when=fact("speed", tail=none_of("cup")))])
    fewer = book.without("no-window").without("other")
    engine = Engine(fewer)
    facts = [Fact("thrust", {"margin": 0.1}), Fact("speed", {})]
    assert engine.run(facts) == []
    assert engine.unread_keys(facts) == set()
    with pytest.raises(BadFact):
        engine.run([Fact("thrust", {"margin": "low"})])


def test_two_engines_do_not_mix() -> None:
    one, other = Engine(Book([rule("a")])), Engine(Book([rule("b")]))
    for _ in range(3):
        assert [ruling.rule.name for ruling in one.run([Fact("thrust", {})])] == ["a"]
        assert [ruling.rule.name for ruling in other.run([Fact("thrust", {})])] == ["b"]


def test_rulings_travel_between_processes() -> None:
    rulings = Engine(Book([rule("a")])).run([Fact("thrust", {"tail": "cup"}, {"w": "x"})])
    assert pickle.loads(pickle.dumps(rulings)) == rulings


def test_the_engine_is_what_advice_accepts() -> None:
    accepted: Fires = Engine(Book([rule("a")]))
    assert accepted.run([]) == []


@pytest.mark.parametrize("missing", ["durable", "durable.engine"])
def test_a_missing_engine_is_told_in_one_sentence(missing: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(sys.modules, missing, None)
    if missing == "durable":
        monkeypatch.delitem(sys.modules, "durable.engine")
    adapter._durable.cache_clear()
    with pytest.raises(EngineMissing) as caught:
        Engine(Book([rule("a")]))
    assert BUILD_COMMAND in str(caught.value)
    assert "\n" not in str(caught.value)


def test_the_book_of_the_package_is_ready_to_fire() -> None:
    book = load_book()
    engine = Engine(book)
    assert len(book) > 200
    rulings = engine.run([Fact(kind, {}) for kind in sorted(book.kinds)])
    assert {ruling.rule for ruling in rulings} <= set(book)


TEXT, NUMBER = rule("z", when=fact("thrust", a="z")), rule("z", when=fact("thrust", a=below(-9)))
MEANINGS: list[tuple[list[Rule], Value | Matcher, list[Value | None], list[Value | None]]] = [
    ([TEXT], present, ["x"], [None, "unknown"]),
    ([TEXT], absent, [None, "unknown"], ["x"]),
    ([TEXT], none_of("x"), [None, "unknown", "y"], ["x"]),
    ([TEXT], none_of("x", "unknown"), ["y"], [None, "unknown", "x"]),
    ([TEXT], one_of("x", "y"), ["x", "y"], [None, "unknown", "w"]),
    ([TEXT], one_of("x"), ["x"], [None, "unknown", "w"]),
    ([NUMBER], present, [3, -3.5], [None]),
    ([NUMBER], absent, [None], [3]),
    ([NUMBER], none_of(3, 4), [5], [3, 4, None]),
    ([NUMBER], one_of(3, 4), [3, 4], [5, None]),
    ([], present, [3, "x"], [None, "unknown"]),
    ([], absent, [None, "unknown"], [3, "x"]),
]


@pytest.mark.parametrize(("beside", "test", "fires", "quiet"), MEANINGS)
def test_what_each_test_of_a_key_means(
    beside: list[Rule], test: Value | Matcher, fires: list[Value | None], quiet: list[Value | None]
) -> None:
    engine = Engine(Book([*beside, rule("it", when=fact("thrust", a=test))]))

    def fired(value: Value | None) -> bool:
        rulings = engine.run([Fact("thrust", {} if value is None else {"a": value})])
        return "it" in [ruling.rule.name for ruling in rulings]

    assert [fired(value) for value in fires] == [True] * len(fires)
    assert [fired(value) for value in quiet] == [False] * len(quiet)


@pytest.mark.parametrize("word", ["é", "x" * LONGEST_WORD, "ø 12 mm", 'a "quoted" word', "back\\slash"])
def test_words_reach_the_engine_as_they_are(word: str) -> None:
    engine = Engine(Book([rule("it", when=fact("thrust", a=word))]))
    assert len(engine.run([Fact("thrust", {"a": word})])) == 1
    assert engine.run([Fact("thrust", {"a": word[:-1] or "-"})]) == []
