"""Ratios of two times taken in turn in one run, so that a slow machine slows both."""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).parent.parent.parent


def ratio(
    one: Callable[[], object],
    other: Callable[[], object],
    rounds: int,
    pick: Callable[[list[float]], float] = statistics.median,
    clock: Callable[[], float] = time.perf_counter,
) -> float:
    """Median (or the time that `pick` takes) of `one` over that of `other`, run in turn; each warmed up once.

    `clock` may be that of this process alone, where nothing runs outside it.
    """
    times: tuple[list[float], list[float]] = ([], [])
    for turn in range(rounds + 1):
        for which, call in enumerate((one, other)):
            start = clock()
            call()
            if turn:
                times[which].append(clock() - start)
    return pick(times[0]) / pick(times[1])


def process(*words: str) -> Callable[[], object]:
    """A whole process of this Python in the root of the repository, which may keep its bytecode as usual."""
    environment = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    return lambda: subprocess.run([sys.executable, *words], cwd=ROOT, check=True, capture_output=True, env=environment)
