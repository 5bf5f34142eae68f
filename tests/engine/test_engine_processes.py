"""The same answers from one process, from threads, and from processes forked and spawned."""

from __future__ import annotations

import subprocess
import sys
from functools import lru_cache

import pytest

from tests.engine.chance import SEEDS, WAYS


@lru_cache(maxsize=8)
def answers(way: str) -> tuple[str, ...]:
    """What a child process answers in this way."""
    command = [sys.executable, "-m", "tests.engine.chance", way]
    child = subprocess.run(command, capture_output=True, text=True, timeout=120, check=True)
    return tuple(child.stdout.splitlines())


def test_there_is_something_to_compare() -> None:
    found = answers("in_turn")
    assert len(found) == len(SEEDS)
    assert len(set(found)) == len(SEEDS)
    assert all("always-hold" in line for line in found)


@pytest.mark.parametrize("way", sorted(set(WAYS) - {"in_turn"}))
def test_every_way_answers_alike(way: str) -> None:
    assert answers(way) == answers("in_turn")


def test_no_warning_of_the_engine_comes_out() -> None:
    command = [sys.executable, "-W", "error", "-m", "tests.engine.chance", "in_turn"]
    child = subprocess.run(command, capture_output=True, text=True, timeout=120, check=True)
    assert child.stderr == ""
    assert tuple(child.stdout.splitlines()) == answers("in_turn")
