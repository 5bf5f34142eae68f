"""Memory stays flat over thousands of whole answers."""

from __future__ import annotations

import gc
import random

import pytest

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.reading import InputFault
from tests.conftest import SEED, scale
from tests.engine.test_engine_load import MEGABYTE, resident
from tests.whole.anything import Question, question

DIFFERENT = 200  # asked again and again: what the caches keep of each is there after the first rounds
WARM_ROUNDS = 2
NOISE = 8 * MEGABYTE  # of the allocator
MOST_EACH = 800  # bytes a request


def ask(asked: Question) -> None:
    try:
        case = asked.read()
    except InputFault:
        return
    answer_for(case, ANSWER_PARTS["advise"], changes=False)


def growth(requests: int, different: int, dice: random.Random) -> int:
    """Bytes gained over this many requests, after every one of them was asked before."""
    questions = [question(dice) for _ in range(different)]
    for _ in range(WARM_ROUNDS):
        for asked in questions:
            ask(asked)
    gc.collect()
    before = resident()
    for number in range(requests):
        ask(questions[number % different])
    gc.collect()
    return resident() - before


@pytest.mark.slow
@pytest.mark.memory
def test_memory_stays_flat_over_twenty_thousand_answers() -> None:
    requests = scale(20_000)
    gained = growth(requests, min(DIFFERENT, scale(2000)), random.Random(SEED))
    print(f"seed {SEED}: {gained / MEGABYTE:+.1f} MB")
    assert gained < NOISE + MOST_EACH * requests


def test_a_leak_shows(monkeypatch: pytest.MonkeyPatch) -> None:
    kept: list[bytes] = []
    monkeypatch.setattr("tests.whole.test_memory.ask", lambda asked: kept.append(repr(asked).encode() * 1000))
    assert growth(60, 2, random.Random(1)) > NOISE + MOST_EACH * 60
