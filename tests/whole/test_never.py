"""What must never come out, whatever goes in: situations sound, absurd and hostile against the list of `forbidden`."""

from __future__ import annotations

import random
from collections import Counter

import pytest

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.quantity import FigureInputError
from advisor.reading import InputFault
from tests.conftest import SEED, scale
from tests.whole.anything import Question, question
from tests.whole.forbidden import FORBIDDEN

BLOCKS = 20  # each with dice of its own, so that workers share them
ENOUGH = 100
WITH_CHANGES = 10  # one answer in so many tries its changes in the model as well
ODD = 7_368_787  # a prime, so that no two seeds near each other share a block


def wrong_with(asked: Question, changes: bool) -> list[str] | None:
    """Which of the forbidden combinations this question brings about; None where the reader refuses it."""
    try:
        case = asked.read()
    except InputFault as fault:
        return ["an error without a word"] if not str(fault).strip() else None
    try:
        found = answer_for(case, ANSWER_PARTS["advise"], changes=changes)
    except FigureInputError:  # the command says which number no formula takes, and ends with 2
        return None
    return [entry.name for entry in FORBIDDEN if entry.found_in(case, found)]


def run(count: int, dice: random.Random) -> Counter[str]:
    """Ask `count` random questions; how they ended."""
    ends: Counter[str] = Counter()
    for number in range(count):
        asked = question(dice)
        changes = number % WITH_CHANGES == 0
        try:
            wrong = wrong_with(asked, changes)
        except Exception as error:
            raise AssertionError(f"{error!r} at {asked}") from error
        assert not wrong, (wrong, asked)
        ends["clear error" if wrong is None else "answer, changes tried" if changes else "answer"] += 1
    return ends


def check_shares(ends: Counter[str], count: int) -> None:
    """At least half get past the reader, where there are enough for chance not to matter."""
    print(f"{count} situations: {dict(ends)}")
    assert ends["answer"] + ends["answer, changes tried"] >= count / 2 or count < ENOUGH


def test_fifty_situations() -> None:
    assert run(50, random.Random(20))["answer"] >= 25


@pytest.mark.slow
@pytest.mark.situations
@pytest.mark.parametrize("block", range(BLOCKS))
def test_a_hundred_thousand_situations(block: int) -> None:
    count = scale(100_000 // BLOCKS)
    print(f"seed {SEED}, block {block}")
    check_shares(run(count, random.Random(SEED * ODD + block)), count)
