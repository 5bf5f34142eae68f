"""Every trap of the bare engine: what it does when stepped on, and that the adapter refuses it or walks around it."""

from __future__ import annotations

import subprocess
import sys
import threading
import time
from pathlib import Path
from typing import Any

import durable.engine
import pytest

from advisor import engine as adapter
from advisor.engine import BadFact, Engine, EngineFault, Fact, RunawayRules
from advisor.rulebook import (
    Book,
    BookError,
    Effect,
    Rule,
    above,
    absent,
    at_least,
    below,
    fact,
    none_of,
    one_of,
    present,
)
from tests.engine.bare_engine import DEADLY, ENDLESS, post, rule_set

BARE = Path(__file__).with_name("bare_engine.py")
PATIENCE = 1.5


def note(name: str, kind: str = "thrust", /, **tests: Any) -> Rule:
    return Rule(fact(kind, **tests), Effect.NOTE, says="x", name=name, topic="t")


def engine_of(*rules: Rule) -> Engine:
    return Engine(Book(rules))


def fired(engine: Engine, *facts: Fact) -> list[str]:
    return [ruling.rule.name for ruling in engine.run(facts)]


def dies(trap: str) -> bool:
    child = subprocess.run([sys.executable, BARE, trap], capture_output=True, timeout=60, check=False)
    return child.returncode != 0 and b"survived" not in child.stdout


def test_the_bare_engine_dies_of_most_of_its_traps() -> None:
    """What a stray read of memory meets differs from run to run, so no single trap is relied on."""
    assert sum(map(dies, DEADLY)) > len(DEADLY) / 2


@pytest.mark.slow
@pytest.mark.parametrize("trap", sorted(ENDLESS))
def test_bare_engine_never_ends(trap: str) -> None:
    with pytest.raises(subprocess.TimeoutExpired):
        subprocess.run([sys.executable, BARE, trap], capture_output=True, timeout=PATIENCE, check=False)


def test_no_facts_at_all() -> None:
    assert engine_of(note("a")).run([]) == []


def test_absence_is_never_asked_alone() -> None:
    engine = engine_of(note("no-number", margin=absent), note("number", margin=above(0)), note("no-word", tail=absent))
    assert fired(engine, Fact("thrust", {})) == ["no-number", "no-word"]
    assert fired(engine, Fact("thrust", {"margin": 1, "tail": "cup"})) == ["number"]


def test_facts_are_not_joined() -> None:
    with pytest.raises(BookError, match="looks at one fact"):
        fact("thrust", margin=fact("limit"))  # type: ignore[arg-type]  # the mistake under test
    with pytest.raises(BookError, match="when must be one fact"):
        Rule((fact("thrust"), fact("limit")), Effect.NOTE, says="x")  # type: ignore[arg-type]  # the mistake under test


@pytest.mark.parametrize("key", ["id", "sid", "kind"])
def test_keys_of_the_engine_are_not_read(key: str) -> None:
    with pytest.raises(BookError, match="belongs to the engine"):
        fact("thrust", **{key: present})


def test_ids_from_outside_never_reach_the_engine() -> None:
    engine = engine_of(note("a", tail="cup"))
    twice = [Fact("thrust", {"tail": "cup", "id": "same", "sid": "other"})] * 2
    assert fired(engine, *twice) == ["a", "a"]
    rules = rule_set({"kind": "thrust"})
    post(rules, id="same")
    with pytest.raises(durable.engine.MessageObservedException):
        post(rules, id="same")


def test_a_word_that_looks_like_the_engines_own_text_is_only_a_word() -> None:
    word = 'cup","kind":"limit","sid":"x'
    engine = engine_of(note("quoted", tail=word), note("plain", tail="cup"), note("limit", "limit"))
    assert fired(engine, Fact("thrust", {"tail": word})) == ["quoted"]
    assert fired(engine, Fact("thrust", {"tail": "\\"}), Fact("thrust", {"tail": "Küchenholz 木"})) == []


def test_more_rules_of_a_kind_than_the_engine_bears() -> None:
    engine = engine_of(*(note(f"r{n:03}", margin=below(n)) for n in range(1, 301)))
    assert fired(engine, Fact("thrust", {"margin": 0})) == [f"r{n:03}" for n in range(1, 301)]
    assert fired(engine, Fact("thrust", {"margin": 298.5})) == ["r299", "r300"]


def test_more_rules_of_one_condition_than_the_engine_bears() -> None:
    engine = engine_of(*(note(f"r{n:03}") for n in range(300)))
    assert len(fired(engine, Fact("thrust", {}), Fact("thrust", {}))) == 600


def test_more_kinds_than_first_conditions_the_engine_bears() -> None:
    engine = engine_of(*(note(f"r{n:03}", f"k{n}") for n in range(600)))
    assert fired(engine, Fact("k5", {}), Fact("k599", {})) == ["r005", "r599"]


def test_more_values_than_the_engine_bears() -> None:
    words = [f"d{n}" for n in range(250)]
    engine = engine_of(*(note(f"r{n}", drive=one_of(*words[n:])) for n in range(9)))
    assert fired(engine, Fact("thrust", {"drive": "d3"})) == ["r0", "r1", "r2", "r3"]
    with pytest.raises(BookError, match="one_of"):
        engine_of(note("wide", drive=one_of(*(f"d{n}" for n in range(301)))))
    with pytest.raises(BookError, match="more than 12 one_of"):
        note("deep", **{f"k{n}": one_of("a", "b") for n in range(13)})
    deepest = engine_of(note("deep", **{f"k{n}": one_of("a", "b") for n in range(12)}))
    assert fired(deepest, Fact("thrust", {f"k{n}": "b" for n in range(12)})) == ["deep"]


def test_more_keys_than_a_fact_may_have() -> None:
    many = {f"k{n}": n for n in range(400)}
    assert fired(engine_of(note("a", k5=5)), Fact("thrust", many)) == ["a"]
    with pytest.raises(BookError, match="400 keys of thrust"):
        engine_of(*(note(key, **{key: above(0)}) for key in many))


def test_one_of_fires_once() -> None:
    engine = engine_of(note("a", tail=one_of("cup", "cone"), drive=one_of("two", "four")))
    assert fired(engine, Fact("thrust", {"tail": "cone", "drive": "two"})) == ["a"]
    with pytest.raises(BookError, match="twice"):
        one_of("cup", "cup")
    with pytest.raises(BookError, match="twice"):
        one_of(1.0, 1.00000000001)
    bare = rule_set({"$or": [{"$lt": {"margin": 1}}, {"$lt": {"margin": 2}}]})
    heard: list[int] = []
    bare._actions["r_0"]._func = lambda _: heard.append(1)
    post(bare, margin=0)
    assert len(heard) == 2


@pytest.mark.parametrize(
    "number", [1e-05, 1e16, -1e-05, 3e-300, 1e300, 5e-324, 123456789012.0, 0.1 + 0.2, -0.0, 10**30]
)
def test_numbers_are_written_plainly(number: float) -> None:
    engine = engine_of(
        note("positive", x=above(0)), note("negative", x=below(0)), note("zero", x=0), note("after", y=7)
    )
    sign = "zero" if not number else "positive" if number > 0 else "negative"
    assert fired(engine, Fact("thrust", {"x": number, "y": 7})) == ["after", sign]
    text = adapter.plain(float(number))
    assert "e" not in text
    assert float(text) == pytest.approx(number, rel=5e-9)


def test_numbers_are_compared_to_nine_figures() -> None:
    engine = engine_of(note("below", x=below(1)), note("equal", x=1), note("third", x=1 / 3))
    assert fired(engine, Fact("thrust", {"x": 1 - 1e-10})) == ["equal"]
    assert fired(engine, Fact("thrust", {"x": 1 - 1e-9})) == ["below"]
    assert fired(engine, Fact("thrust", {"x": 0.33333333333})) == ["below", "third"]


def test_bare_engine_misreads_exponents() -> None:
    for number in (1e-05, 1e16):
        with pytest.raises(durable.engine.durable_rules_engine.error, match="error code: 2"):
            post(rule_set({"$and": [{"kind": "thrust"}, {"$gt": {"x": 0}}]}), x=number)


@pytest.mark.parametrize("value", [float("nan"), float("inf"), -float("inf"), 10**400])
def test_numbers_that_are_none_are_refused(value: float) -> None:
    with pytest.raises(BadFact, match=r"thrust\.x = .*finite"):
        engine_of(note("a", x=above(0))).run([Fact("thrust", {"x": value})])


@pytest.mark.parametrize("value", [float("nan"), float("inf"), 1e-5, 1e15, -1e16, True, None])
def test_constants_that_cannot_be_written_plainly_are_refused(value: float) -> None:
    with pytest.raises(BookError, match=r"number|out of range"):
        at_least(value)


def test_one_type_per_key() -> None:
    with pytest.raises(BookError, match="'teeth' is read as"):
        Book([note("a", teeth=4), note("b", "drive", teeth="four")])
    engine = engine_of(note("a", teeth=3), note("b", tail="3"))
    with pytest.raises(BadFact, match=r"thrust\.teeth = '3': the rules read a number"):
        engine.run([Fact("thrust", {"teeth": "3"})])
    with pytest.raises(BadFact, match=r"thrust\.tail = 3: the rules read a text"):
        engine.run([Fact("thrust", {"tail": 3})])
    assert post(rule_set({"tail": "3"}), tail=3)[0] is None, "the bare engine takes a number for a text"


def test_a_bool_becomes_yes_or_no() -> None:
    engine = engine_of(
        note("yes", crack="yes"), note("no", crack="no"), note("true", crack="true"), note("one", crack="1")
    )
    assert fired(engine, Fact("thrust", {"crack": True}), Fact("thrust", {"crack": False})) == ["yes", "no"]
    with pytest.raises(BookError, match="write 'yes' or 'no'"):
        fact("thrust", crack=True)


def test_a_missing_text_reads_unknown() -> None:
    engine = engine_of(note("not-forward", rotation=none_of("forward")), note("slow", rpm=none_of(1, 2)))
    assert fired(engine, Fact("thrust", {})) == ["not-forward"]
    with pytest.raises(durable.engine.MessageNotHandledException):
        post(rule_set({"$and": [{"kind": "thrust"}, {"$neq": {"rotation": "forward"}}]}))


@pytest.mark.parametrize("value", [None, ["a"], {"a": 1}, ("a",), b"a"])
def test_facts_are_flat(value: Any) -> None:
    with pytest.raises(BadFact, match=r"thrust\.x = .*flat"):
        engine_of(note("a")).run([Fact("thrust", {"x": value})])


@pytest.mark.parametrize("value", ["", " ", "a\nb", "\x00", "\ud800", "x" * 201])
def test_words_are_printable_and_short(value: str) -> None:
    with pytest.raises(BadFact, match=r"thrust\.x = .*printable"):
        engine_of(note("a", x="b")).run([Fact("thrust", {"x": value})])


def test_actions_take_one_parameter() -> None:
    engine = engine_of(note("a"), note("b", margin=below(1)))
    actions = [promise._func for promise in engine._sets["thrust"][0]._rules._actions.values()]
    assert [action.__code__.co_argcount for action in actions] == [1, 1, 1]


@pytest.mark.parametrize("error", [ValueError("bad"), KeyboardInterrupt(), SystemExit(3)])
def test_what_an_action_raises_comes_out_and_the_next_request_is_clean(
    error: BaseException, monkeypatch: pytest.MonkeyPatch
) -> None:
    engine = engine_of(note("a"), note("b"))

    def fail(*_: object) -> None:
        raise error

    with monkeypatch.context() as patch:
        patch.setattr(engine._trace, "note", fail)
        with pytest.raises(type(error)):
            engine.run([Fact("thrust", {}), Fact("thrust", {})])
    assert fired(engine, Fact("thrust", {}), Fact("thrust", {})) == ["a", "b", "a", "b"]


def test_the_bare_engine_swallows_what_an_action_raises() -> None:
    rules = rule_set({"kind": "thrust"})
    rules._actions["r_0"]._func = lambda _: 1 / 0
    error, state = post(rules)
    assert error is None
    assert "division by zero" in state["exception"]


def test_the_engine_failing_is_told_and_the_next_request_is_clean(monkeypatch: pytest.MonkeyPatch) -> None:
    engine = engine_of(note("a"))
    with monkeypatch.context() as patch:
        patch.setattr(durable.engine.json, "loads", lambda _: 1 / 0)
        with pytest.raises(EngineFault, match="division by zero"):
            engine.run([Fact("thrust", {})])
    assert fired(engine, Fact("thrust", {})) == ["a"]


def test_a_jump_of_the_clock_loses_no_ruling_in_silence(monkeypatch: pytest.MonkeyPatch) -> None:
    engine = engine_of(note("a"), note("b"))
    clock = iter(range(0, 10_000, 11))
    with monkeypatch.context() as patch:
        patch.setattr(durable.engine, "_unix_now", lambda: next(clock))
        with pytest.raises(EngineFault, match="broke off"):
            engine.run([Fact("thrust", {})])
    assert fired(engine, Fact("thrust", {})) == ["a", "b"]


def test_the_engine_runs_on_a_clock_that_never_jumps() -> None:
    fired(engine_of(note("a")), Fact("thrust", {}))
    assert durable.engine._unix_now is time.monotonic


def test_a_request_that_starts_no_rule_at_all_is_a_fault(monkeypatch: pytest.MonkeyPatch) -> None:
    engine = engine_of(note("a"))
    monkeypatch.setattr(durable.engine.durable_rules_engine, "start_action_for_state", lambda *_: None)
    with pytest.raises(EngineFault, match="broke off"):
        engine.run([Fact("thrust", {})])


def test_a_request_that_came_to_no_action_is_never_given_back_to_the_engine(monkeypatch: pytest.MonkeyPatch) -> None:
    """The engine frees what only an action sets: of memory that held something before, a pointer to anywhere."""
    engine, given_back = engine_of(note("a")), []
    inside = durable.engine.durable_rules_engine
    delete = inside.delete_state

    def deleted(handle: int, request: str) -> object:
        given_back.append(handle)
        return delete(handle, request)

    monkeypatch.setattr(inside, "delete_state", deleted)
    for broken in ("start_action_for_state", "assert_fact"):
        with monkeypatch.context() as patch:
            patch.setattr(inside, broken, interrupted)
            with pytest.raises(KeyboardInterrupt):
                engine.run([Fact("thrust", {})])
        assert given_back == []
        assert fired(engine, Fact("thrust", {})) == ["a"]
        assert len(given_back) == 1
        given_back.clear()


def test_a_request_that_breaks_off_after_an_action_is_given_back(monkeypatch: pytest.MonkeyPatch) -> None:
    engine = engine_of(note("a"))
    given_back: list[str] = []
    inside = durable.engine.durable_rules_engine
    start, answers = inside.start_action_for_state, iter((True, False))
    monkeypatch.setattr(inside, "start_action_for_state", lambda *words: start(*words) if next(answers) else None)
    monkeypatch.setattr(engine._sets["thrust"][0]._rules, "delete_state", given_back.append)
    with pytest.raises(EngineFault, match="broke off"):
        engine.run([Fact("thrust", {}), Fact("thrust", {})])
    assert len(given_back) == 1


def interrupted(*_: object) -> None:
    raise KeyboardInterrupt


def test_the_order_of_rule_sets_does_not_show() -> None:
    engine = engine_of(*(note(f"r{n:03}") for n in range(100)))
    engine._sets["thrust"].reverse()
    assert fired(engine, Fact("thrust", {})) == [f"r{n:03}" for n in range(100)]


def test_no_timer_threads() -> None:
    before = threading.active_count()
    fired(engine_of(note("a")), Fact("thrust", {}))
    assert threading.active_count() == before


def test_a_fact_that_nothing_matches_is_no_error() -> None:
    engine = engine_of(note("a", margin=below(1)))
    assert fired(engine, Fact("thrust", {"margin": 2})) == []


def test_a_runaway_chain_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    original = adapter._action

    def chained(trace: Any, rule: int | None, most: int) -> Any:
        act, numbers = original(trace, rule, most), iter(range(10**9))

        def again(closure: Any) -> None:
            act(closure)
            closure.assert_fact({"id": f"f{next(numbers)}{rule}", "kind": "thrust"})

        return again

    with monkeypatch.context() as patch:
        patch.setattr(adapter, "_action", chained)
        engine = engine_of(note("a"))
    with pytest.raises(RunawayRules, match="more than 2 rules fired on one fact"):
        engine.run([Fact("thrust", {})])
