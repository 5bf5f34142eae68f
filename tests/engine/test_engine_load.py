"""Size and time: memory that stays flat, books ten times as large, requests that stay quick."""

from __future__ import annotations

from pathlib import Path

import pytest

from advisor.engine import Engine
from advisor.rulebook import Book
from tests.engine.chance import chance_book, chance_facts, digest

PAGE = 4096
MEGABYTE = 1024 * 1024
STATM = Path("/proc/self/statm")


def resident() -> int:
    """Memory held by this process, in bytes."""
    return int(STATM.read_text().split()[1]) * PAGE


def growth(requests: int) -> float:
    """Megabytes gained over this many requests, after warming up."""
    engine = Engine(chance_book(7, 40))
    facts = chance_facts(7, 6)
    for _ in range(300):
        engine.run(facts)
    before = resident()
    for _ in range(requests):
        engine.run(facts)
    return (resident() - before) / MEGABYTE


def test_memory_stays_flat() -> None:
    assert growth(2000) < 3


@pytest.mark.slow
def test_memory_stays_flat_over_50000_requests() -> None:
    assert growth(50_000) < 5


def test_memory_stays_flat_when_requests_fail(monkeypatch: pytest.MonkeyPatch) -> None:
    engine = Engine(chance_book(7, 40))
    facts = chance_facts(7, 6)

    def fail(*_: object) -> None:
        raise ValueError("no")

    monkeypatch.setattr(engine._trace, "note", fail)
    before = 0
    for turn in range(1500):
        with pytest.raises(ValueError, match="no"):
            engine.run(facts)
        before = resident() if turn == 300 else before
    assert (resident() - before) / MEGABYTE < 3


def test_a_book_ten_times_as_large_gives_the_same_rulings_of_the_first() -> None:
    small = chance_book(3, 40)
    large = Book((*small, *(rule for rule in chance_book(4, 440) if rule.topic == "t" and rule.name > "r0039")))
    assert len(large) > 9 * len(small)
    names = {rule.name for rule in small}
    for seed in range(5):
        kept = [mark for mark in digest(Engine(large), seed).split() if mark.partition(":")[2] in names]
        assert " ".join(kept) == digest(Engine(small), seed)


def test_the_answer_does_not_depend_on_what_ran_before() -> None:
    used = Engine(chance_book(1, 120))
    for seed in range(10):
        digest(used, seed)
    assert digest(used, 3) == digest(Engine(chance_book(1, 120)), 3)


def test_many_facts_of_one_request() -> None:
    engine = Engine(chance_book(1, 120))
    facts = chance_facts(5, 600)
    together = [(ruling.rule.name, id(ruling.fact)) for ruling in engine.run(facts)]
    alone = [(ruling.rule.name, id(ruling.fact)) for entry in facts for ruling in engine.run([entry])]
    assert together == alone
