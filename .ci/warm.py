"""The tests of rules, collected once in a warm process: every run of them is a fork that has a book of its own."""

from __future__ import annotations

import gc
import importlib
import json
import os
import signal
import sys
from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path
from typing import NamedTuple

import pytest
from plant import ROOT, mirror

sys.path.insert(0, str(ROOT))  # this program, not another one that the environment may know

from advisor.rulebook import Book, Rule, load_book

WORKERS = 2
LONGEST = 120  # seconds; a run that never ends has noticed something


class Run(NamedTuple):
    """A rule, what stands in its place while its tests run (None: nothing), that in words, and the kind of fault."""

    rule: Rule
    instead: Rule | None
    words: str
    kind: str = ""


class Outcome(NamedTuple):
    """The first test that failed and the exception it failed with; two empty words where none did."""

    run: Run
    test: str
    error: str

    @property
    def noticed(self) -> bool:
        return bool(self.error)


def rules_with_tests() -> list[Rule]:
    """Every rule of the book. Ends the program where one has no test of its own."""
    rules = list(load_book(checked=False))
    without = [str(file_of(rule)) for rule in rules if not mirror(file_of(rule), ROOT).endswith(".py")]
    if without:
        sys.exit("no test mirrors " + ", ".join(without))
    return rules


def file_of(rule: Rule) -> Path:
    return Path("rules", rule.topic, rule.name.replace("-", "_") + ".py")


def outcomes(runs: Sequence[Run], tell: Callable[[Outcome], None]) -> None:
    """Tells what comes of each run. A test that cannot be collected ends the program."""
    os.chdir(ROOT)
    files = sorted({mirror(file_of(run.rule), ROOT) for run in runs})
    quiet = ["-qq", "-s", "--no-header", "--no-summary", "-p", "no:cacheprovider", "-p", "no:xdist"]
    status = pytest.main([*quiet, *files], plugins=[_Forks(runs, tell)])
    if status not in (pytest.ExitCode.OK, pytest.ExitCode.NO_TESTS_COLLECTED):
        sys.exit(f"the tests of the rules could not be run: {status!r}")


class _Forks:
    """The part of pytest that runs what was collected, for every run anew in a child."""

    def __init__(self, runs: Sequence[Run], tell: Callable[[Outcome], None]) -> None:
        self.runs, self.tell = runs, tell
        self.failure: tuple[str, str] = ("", "")

    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        if session.testsfailed:
            raise session.Interrupted("a test could not be collected")
        items: dict[str, list[pytest.Item]] = defaultdict(list)
        for item in session.items:
            items[str(item.path.relative_to(ROOT))].append(item)
        book = load_book(checked=False)
        _warm_up()
        gc.freeze()  # what is shared stays shared
        under_way: dict[int, tuple[Run, int]] = {}
        for run in self.runs:
            if len(under_way) == WORKERS:
                self.tell(_ended(under_way))
            reading, writing = os.pipe()
            child = os.fork()
            if child == 0:
                self._child(run, book, items[mirror(file_of(run.rule), ROOT)], writing)
            os.close(writing)
            under_way[child] = run, reading
        while under_way:
            self.tell(_ended(under_way))
        return True

    def pytest_exception_interact(self, node: pytest.Item, call: pytest.CallInfo[None]) -> None:
        if call.excinfo is not None:
            self.failure = node.nodeid, call.excinfo.typename

    def _child(self, run: Run, book: Book, items: Sequence[pytest.Item], writing: int) -> None:
        """Never returns: what the parent has under way is not the child's."""
        try:
            signal.alarm(LONGEST)
            os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
            _use(book.without(run.rule.name) if run.instead is None else book.with_rules([run.instead]))
            for item, after in zip(items, [*items[1:], None], strict=True):
                item.ihook.pytest_runtest_protocol(item=item, nextitem=after)
                if self.failure[1]:
                    break
            os.write(writing, json.dumps(self.failure).encode())
        finally:
            os._exit(0)


def _ended(under_way: dict[int, tuple[Run, int]]) -> Outcome:
    """Waits for the next child that ends; one that says nothing was ended by the fault."""
    child, _ = os.wait()
    run, reading = under_way.pop(child)
    with os.fdopen(reading, "rb") as pipe:
        test, error = json.loads(pipe.read() or '["", "end of the process"]')
    return Outcome(run, test, error)


def _use(book: Book) -> None:
    """From here on advice rests on this book, and what was remembered of another is forgotten."""
    advise = importlib.import_module("advisor.advice.advise")
    bench = importlib.import_module("tests.rules.bench")
    vars(advise)["kept_book"] = lambda: book
    advise.default_engine.cache_clear()
    bench.advice.cache_clear()
    assert advise.default_engine().book is book


def _warm_up() -> None:
    """Reads every table once, so that no child has to."""
    bench = importlib.import_module("tests.rules.bench")
    for base in bench.BASES:
        bench.fired(base)


def same(rules: Sequence[Rule]) -> Iterator[Run]:
    """Each rule in its own place: a run in which nothing may fail."""
    return (Run(rule, rule, "itself in its place") for rule in rules)
