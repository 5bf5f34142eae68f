"""Cases answered in turn, by threads at once and by processes, each answer as the text that `--json` prints.

python -m tests.whole.together in_turn | by_threads | by_processes
"""

from __future__ import annotations

import json
import random
import sys
from collections.abc import Callable
from concurrent.futures import ProcessPoolExecutor, ThreadPoolExecutor
from multiprocessing import get_context
from pathlib import Path

from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.reading import InputFault
from tests.conftest import SEED, scale
from tests.whole.anything import Question, question

CASES = sorted((Path(__file__).resolve().parents[2] / "cases").glob("*.yaml"))
THREADS, PROCESSES = 4, 2


def questions() -> list[Question]:
    """The cases of the folder, and random ones."""
    dice = random.Random(SEED)
    known = [Question(text=path.read_text(encoding="utf-8")) for path in CASES[: max(5, scale(400))]]
    return [*known, *(question(dice) for _ in range(scale(400)))]


def text_of(asked: Question) -> str:
    """The answer, or what is said of a wrong input."""
    try:
        case = asked.read()
    except InputFault as fault:
        return str(fault)
    return json.dumps(answer_for(case, ANSWER_PARTS["advise"], changes=False), ensure_ascii=True)


def in_turn() -> list[str]:
    return [text_of(asked) for asked in questions()]


def by_threads() -> list[str]:
    """Four threads from the first answer on, so that they race for everything that is made once."""
    sys.setswitchinterval(1e-5)
    with ThreadPoolExecutor(THREADS) as pool:
        return list(pool.map(text_of, questions()))


def by_processes() -> list[str]:
    """Two processes forked from one that has answered already, so that they share what it had made."""
    text_of(questions()[0])
    with ProcessPoolExecutor(PROCESSES, mp_context=get_context("fork")) as pool:
        return list(pool.map(text_of, questions()))


def by_spawned_processes() -> list[str]:
    """Two processes that begin with nothing."""
    with ProcessPoolExecutor(PROCESSES, mp_context=get_context("spawn")) as pool:
        return list(pool.map(text_of, questions()))


WAYS: dict[str, Callable[[], list[str]]] = {
    way.__name__: way for way in (in_turn, by_threads, by_processes, by_spawned_processes)
}

if __name__ == "__main__":
    for line in WAYS[sys.argv[1]]():
        print(line.replace("\n", " "))
