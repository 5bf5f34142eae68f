"""Threads and processes at once give the same answers as one: byte for byte."""

from __future__ import annotations

import os
import subprocess
import sys
from functools import lru_cache

import pytest

from tests.conftest import SEED
from tests.whole.together import WAYS

OTHERS = sorted(set(WAYS) - {"in_turn"})


@lru_cache(maxsize=8)
def answers(way: str, scale: str) -> tuple[bytes, ...]:
    """What a fresh process answers in this way."""
    settings = {**os.environ, "ADVISOR_SEED": str(SEED), "ADVISOR_SCALE": scale, "PYTHONHASHSEED": str(len(way))}
    command = [sys.executable, "-m", "tests.whole.together", way]
    child = subprocess.run(command, capture_output=True, env=settings, check=False)
    assert child.returncode == 0, child.stderr.decode()
    return tuple(child.stdout.splitlines())


def check(way: str, scale: str, count: int) -> None:
    alone, together = answers("in_turn", scale), answers(way, scale)
    assert len(alone) >= count
    assert sum(line.startswith(b'{"schema"') for line in set(alone)) >= min(5, count)
    differing = [number for number, pair in enumerate(zip(alone, together, strict=True)) if pair[0] != pair[1]]
    assert not differing


def test_threads_answer_as_one_does() -> None:
    check("by_threads", "0.005", 7)


@pytest.mark.slow
@pytest.mark.fuzz
@pytest.mark.parametrize("way", OTHERS)
def test_hundreds_of_answers_at_once_are_those_of_one(way: str) -> None:
    scale = os.environ.get("ADVISOR_SCALE", "0.1")
    check(way, scale, round(400 * float(scale)))
