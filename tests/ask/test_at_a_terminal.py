"""The interview as a process at a terminal, with random persons who know more or less of their job."""

from __future__ import annotations

import os
import random
import re
import statistics
import sys
from pathlib import Path
from typing import Any

import pexpect
import pytest

from advisor.advice import default_engine
from advisor.advice.trial import Bench
from advisor.ask.interview import Interview
from advisor.ask.questions import Asked, questions
from advisor.reading import read_case
from tests.ask.persons import person
from tests.conftest import SEED, scale
from tests.test_commands import ROOT

HEADS = {" ".join(question.text.split()): question for question in questions()}
MOST_IN_THE_MEDIAN = 12


def start(folder: Path, *words: str) -> Any:
    """The process at a wide terminal, so that every field stands on its own line."""
    environment = {**os.environ, "TERM": "dumb", "PYTHONPATH": str(ROOT), "XDG_STATE_HOME": str(folder / "state")}
    return pexpect.spawn(
        sys.executable, ["-m", "advisor.cli", "ask", "--plain", *words], cwd=str(folder), env=environment,
        encoding="utf-8", timeout=120, dimensions=(60, 250), echo=False,
    )  # fmt: skip


def asked_for(shown: str) -> tuple[str, list[Asked]]:
    """The question on the screen and the fields it asks for."""
    text = " ".join(shown.split())
    number, head = re.findall(r"(\d+)\. (.*?\?) ", text)[-1]
    fields = HEADS[head].fields
    after = text.rpartition(head)[2]
    named = [
        field for field in fields if f" {field.name.rpartition('.')[2].replace('_', ' ')} ({field.about})" in after
    ]
    return number, named or [field for field in fields if after.strip().startswith(field.about)]


def say(known: dict[str, str], fields: list[Asked]) -> str:
    """What a person types who knows this much."""
    return ", ".join(known.get(field.name, "-") for field in fields)


def interview(folder: Path, known: dict[str, str], *words: str) -> int:
    """A whole interview; the number of questions."""
    child, count = start(folder, "-o", "made.yaml", *words), 0
    while child.expect(["\n?> $", pexpect.EOF]) == 0:
        _, fields = asked_for(child.before)
        assert fields, child.before
        count += 1
        child.sendline(say(known, fields))
    child.close()
    assert child.exitstatus == 0, child.before
    return count


def same_answer(folder: Path, known: dict[str, str]) -> None:
    """The case file gives the answer of the full case: verdict, hold, start, ceiling."""
    bench = Bench(default_engine())
    made = bench.outcome(read_case(str(folder / "made.yaml")))
    full = bench.outcome(read_case(None, [f"{name}={text}" for name, text in known.items()]))
    assert (made.verdict, made.hold) == (full.verdict, full.hold)
    assert made.start_rpm == pytest.approx(full.start_rpm)
    assert made.ceiling_rpm == pytest.approx(full.ceiling_rpm)


def test_it_can_be_stopped_and_goes_on(tmp_path: Path) -> None:
    words = ["hold.kit=[spur-drive]", "hold.method=spur-drive", "work.condition=[through-crack]"]
    child = start(tmp_path, *words)
    child.expect("What is it made of")
    child.expect("> $")
    child.sendline("ash")
    child.expect("How large is it")
    child.expect("> $")
    child.sendintr()
    child.expect("what you said is kept: advisor ask")
    child.expect(pexpect.EOF)
    child.close()
    assert child.exitstatus == 130
    child = start(tmp_path, *words)
    child.expect("Going on where it was stopped, with 1 answer")
    child.expect("2. How large is it")
    child.expect("> $")
    child.sendline("3 in x 1 ft")
    child.expect("No answer to a question that is left would change verdict, hold or speed")
    child.expect("case.yaml")
    child.sendline("")
    child.expect("DO NOT MOUNT")
    child.expect(pexpect.EOF)
    child.close()
    assert child.exitstatus == 0
    assert read_case(str(tmp_path / "case.yaml")).work.material == "ash"


@pytest.mark.slow
@pytest.mark.cases
@pytest.mark.parametrize("number", range(scale(50)))
def test_a_person_reaches_the_answer_of_the_full_case(tmp_path: Path, number: int) -> None:
    known = person(random.Random(SEED * 1000 + number))
    count = interview(tmp_path, known)
    print(f"\nADVISOR_SEED={SEED} person {number}: {count} questions")
    same_answer(tmp_path, known)


@pytest.mark.slow
@pytest.mark.cases
def test_most_persons_are_asked_twelve_questions_at_most() -> None:
    counts = []
    for number in range(scale(50)):
        known = person(random.Random(SEED * 1000 + number))
        talked = Interview(Bench(default_engine()), {})
        counts.append(_talk(talked, known))
    print(f"\nADVISOR_SEED={SEED}: {sorted(counts)} questions, median {statistics.median(counts):g}")
    assert statistics.median(counts) <= MOST_IN_THE_MEDIAN


def _talk(talked: Interview, known: dict[str, str]) -> int:
    from tests.ask.test_interview import given

    count = 0
    while (following := talked.next()) is not None:
        count += 1
        talked.answer(following, given(following, known))
    return count
