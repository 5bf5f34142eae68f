"""What a larger rule book costs: at most in proportion. Ratios within one run; `.ci/long memory` prints the curve."""

from __future__ import annotations

import gc
import time
from collections.abc import Iterator

import pytest

from advisor.engine import Engine
from tests.benchmarks.ratios import ratio
from tests.engine.chance import chance_book, chance_facts


@pytest.fixture(autouse=True)
def _no_sweeping() -> Iterator[None]:
    """The tests' own heap is large: looking through it would be charged to the larger book."""
    gc.disable()
    yield
    gc.enable()


pytestmark = [pytest.mark.slow, pytest.mark.memory]
SMALL = 40
SIZES = (80, 160, 400)
TEN_TIMES = 400
ROUNDS = 15
NOISE = 1.5  # of a ratio between times below a millisecond


@pytest.mark.parametrize("size", SIZES)
def test_firing_grows_at_most_in_proportion(size: int) -> None:
    facts = chance_facts(2, 30)
    small, large = Engine(chance_book(2, SMALL)), Engine(chance_book(2, size))
    found = ratio(lambda: large.run(facts), lambda: small.run(facts), rounds=ROUNDS, pick=min, clock=time.process_time)
    print(f"\nfiring {size} rules against {SMALL}: {found:.2f} times as long")
    assert found <= size / SMALL * (1 if size == TEN_TIMES else NOISE)


@pytest.mark.parametrize("size", SIZES)
def test_building_grows_little_faster_than_the_book(size: int) -> None:
    small, large = chance_book(2, SMALL), chance_book(2, size)
    found = ratio(lambda: Engine(large), lambda: Engine(small), rounds=ROUNDS, pick=min, clock=time.process_time)
    print(f"\nbuilding {size} rules against {SMALL}: {found:.2f} times as long")
    assert found <= NOISE * size / SMALL  # done once in a process; the engine's own tables grow a little faster
