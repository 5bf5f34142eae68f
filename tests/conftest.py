"""What every test may use: how much to do, and with which seed.

The quick suite is everything that is not marked `slow`. A slow test says how often it wants to run in full and
asks `scale` how often it is to run now; it draws its random numbers from `random.Random(SEED)`:

    from tests.conftest import SEED, scale

    @pytest.mark.slow
    @pytest.mark.fuzz                           # the part of `.ci/long` that runs it in full; without one: `rest`
    @settings(max_examples=scale(20_000))
    @given(...)

`ADVISOR_SCALE` is 1 in `.ci/long` and 0.1 in `.ci/run`; a slow test started by hand does a tenth as well.
`ADVISOR_SEED` repeats a run. Hypothesis follows: 6 fixed examples a test in the quick suite, random ones from
`--hypothesis-seed` where a scale is set.
"""

from __future__ import annotations

import gc
import os
import signal

from hypothesis import HealthCheck, settings

for threads in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):  # on small matrices they only wait for each other
    os.environ.setdefault(threads, "1")

if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:  # a background job's, and then that of all that it starts
    signal.signal(signal.SIGINT, signal.default_int_handler)

SCALE = float(os.environ.get("ADVISOR_SCALE", "0.1"))
SEED = int(os.environ.get("ADVISOR_SEED", "1"))


def scale(count: int) -> int:
    """How many of `count` runs to do now, one at least."""
    return max(1, round(count * SCALE))


busy = [HealthCheck.too_slow]  # a machine shared with other work is slow at times
settings.register_profile("quick", max_examples=6, deadline=None, derandomize=True, suppress_health_check=busy)
settings.register_profile(
    "scaled", max_examples=scale(1000), deadline=None, print_blob=True, suppress_health_check=busy
)
settings.load_profile("scaled" if "ADVISOR_SCALE" in os.environ else "quick")


def pytest_collection_finish() -> None:
    """Thousands of collected tests stay to the end: nothing is won by looking through them again and again."""
    gc.freeze()


def pytest_report_header() -> str:
    return f"advisor: ADVISOR_SCALE={SCALE:g} ADVISOR_SEED={SEED}"
