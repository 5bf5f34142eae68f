"""Books and facts drawn by chance from a seed, and the digest of what fires on them.

Run as a child, `python -m tests.engine.chance WAY`, it answers the same requests in one of several ways and prints the
digest of each: in turn, in threads, in forked processes (one of them forked in the middle of a request), in spawned
ones.
"""

from __future__ import annotations

import multiprocessing
import os
import random
import sys
import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor

from advisor.engine import Engine, Fact
from advisor.rulebook import (
    Book,
    Effect,
    Matcher,
    Rule,
    Value,
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

KINDS = ("blank", "hold", "thrust", "speed", "machine")
WORDS = ("a", "b", "c", "unknown")
SEEDS = range(24)


def chance_rule(draw: random.Random, number: int) -> Rule:
    """A rule of up to four tests."""
    tests: dict[str, Matcher | Value] = {}
    for place in draw.sample(range(8), draw.randint(0, 2)):
        bound = draw.randint(0, 9) / 10
        choices = (
            below(bound),
            above(bound),
            at_least(bound),
            between(bound, bound + 0.3),
            absent,
            all_of(present, at_most(bound)),
        )
        tests[f"n{place}"] = draw.choice(choices)
    for place in draw.sample(range(8), draw.randint(1, 2)):
        tests[f"t{place}"] = draw.choice((one_of("a", "b"), none_of("c"), "a", present, absent))
    return Rule(fact(draw.choice(KINDS), **tests), Effect.NOTE, says="x", name=f"r{number:04}", topic="t")


def chance_book(seed: int, size: int) -> Book:
    """A book of rules; every kind has one."""
    draw = random.Random(seed)
    always = (Rule(fact(kind), Effect.NOTE, says="x", name=f"always-{kind}", topic="s") for kind in KINDS)
    return Book((*always, *(chance_rule(draw, number) for number in range(size))))


def chance_facts(seed: int, size: int = 30) -> list[Fact]:
    """Facts with some of their keys missing."""
    draw = random.Random(seed)
    facts = []
    for _ in range(size):
        numbers: dict[str, Value] = {f"n{n}": draw.randint(0, 10) / 10 for n in range(8) if draw.random() < 0.8}
        texts: dict[str, Value] = {f"t{n}": draw.choice(WORDS) for n in range(8) if draw.random() < 0.8}
        facts.append(Fact(draw.choice(KINDS), {**numbers, **texts}))
    return facts


def digest(engine: Engine, seed: int) -> str:
    """What fires on the facts of a seed."""
    facts = chance_facts(seed)
    places = {id(entry): place for place, entry in enumerate(facts)}
    return " ".join(f"{places[id(ruling.fact)]}:{ruling.rule.name}" for ruling in engine.run(facts))


ENGINE: Engine | None = None


def answer(seed: int) -> str:
    """The digest from the engine of this process, built when first asked for."""
    global ENGINE  # noqa: PLW0603 -- one engine in a process is what is under test
    if ENGINE is None:
        ENGINE = Engine(chance_book(1, 120))
    return digest(ENGINE, seed)


def in_turn() -> list[str]:
    return [answer(seed) for seed in SEEDS]


def in_threads() -> list[str]:
    answer(0)
    with ThreadPoolExecutor(6) as pool:
        return list(pool.map(answer, SEEDS))


def _in_processes(method: str) -> list[str]:
    answer(0)
    with multiprocessing.get_context(method).Pool(2) as pool:
        return pool.map(answer, SEEDS)


def forked() -> list[str]:
    return _in_processes("fork")


def spawned() -> list[str]:
    return _in_processes("spawn")


def forked_in_the_middle() -> list[str]:
    """Fork again and again while another thread keeps the engine busy; each child answers one seed."""
    done = threading.Event()

    def keep_busy() -> None:
        while not done.is_set():
            answer(3)

    busy = threading.Thread(target=keep_busy)
    answer(0)
    busy.start()
    found = []
    try:
        for seed in SEEDS:
            reading, writing = os.pipe()
            child = os.fork()
            if child == 0:
                os.write(writing, answer(seed).encode())
                os._exit(0)
            os.close(writing)
            with os.fdopen(reading) as stream:
                found.append(stream.read())
            os.waitpid(child, 0)
    finally:
        done.set()
        busy.join()
    return found


WAYS: dict[str, Callable[[], list[str]]] = {
    way.__name__: way for way in (in_turn, in_threads, forked, spawned, forked_in_the_middle)
}

if __name__ == "__main__":
    print("\n".join(WAYS[sys.argv[1]]()))
