"""A pool whose workers die, hang, talk nonsense or are too few."""

from __future__ import annotations

import asyncio
import os
import signal
import sys
from collections.abc import Awaitable, Callable
from typing import TypeVar

import pytest

from advisor.web.workers import Pool, Unanswered

Result = TypeVar("Result")
BODY = """
import json, os, sys, time
for line in sys.stdin:
    task = json.loads(line)
    if task.get("die") == "always" or (task.get("die") and not os.path.exists(task["die"])):
        task["die"] == "always" or open(task["die"], "w").close()
        os._exit(139)
    time.sleep(task.get("sleep", 0))
    print(task.get("say") or json.dumps({"pid": os.getpid(), "task": task}), flush=True)
"""
COMMAND = (sys.executable, "-S", "-E", "-c", BODY)


def with_pool(pool: Pool, run: Callable[[Pool], Awaitable[Result]]) -> Result:
    async def all_of_it() -> Result:
        await pool.start()
        try:
            return await run(pool)
        finally:
            await pool.stop()

    return asyncio.run(all_of_it())


def test_every_question_gets_its_own_answer() -> None:
    async def run(pool: Pool) -> list[object]:
        return [found["task"]["n"] for found in await asyncio.gather(*(pool.ask({"n": n}) for n in range(50)))]

    assert with_pool(Pool(2, COMMAND), run) == list(range(50))


def test_a_question_that_ends_its_worker_once_is_answered_by_the_next(tmp_path: object) -> None:
    async def run(pool: Pool) -> tuple[list[int], int]:
        before = pool.pids
        found = await pool.ask({"die": f"{tmp_path}/died"})
        return before, found["pid"]

    before, after = with_pool(Pool(1, COMMAND), run)
    assert after not in before


def test_a_question_that_always_ends_its_worker_is_refused_and_the_next_is_answered() -> None:
    async def run(pool: Pool) -> int:
        with pytest.raises(Unanswered, match="ended the process that works on it, twice: no advice was given"):
            await pool.ask({"die": "always"})
        found = await pool.ask({"n": 7})
        return int(found["task"]["n"])

    assert with_pool(Pool(1, COMMAND), run) == 7


def test_a_worker_killed_while_idle_is_replaced() -> None:
    async def run(pool: Pool) -> tuple[int, int]:
        first = (await pool.ask({}))["pid"]
        os.kill(first, signal.SIGKILL)
        return first, (await pool.ask({}))["pid"]

    first, second = with_pool(Pool(1, COMMAND), run)
    assert first != second


def test_a_worker_killed_at_work_loses_nothing() -> None:
    async def run(pool: Pool) -> list[object]:
        asked = [asyncio.create_task(pool.ask({"n": n, "sleep": 0.05})) for n in range(6)]
        await asyncio.sleep(0.02)
        for pid in pool.pids:
            os.kill(pid, signal.SIGKILL)
        return [found["task"]["n"] for found in await asyncio.gather(*asked)]

    assert with_pool(Pool(2, COMMAND), run) == list(range(6))


def test_a_question_that_takes_too_long_is_given_up_and_the_next_is_answered() -> None:
    async def run(pool: Pool) -> object:
        with pytest.raises(Unanswered, match="took too long and was given up"):
            await pool.ask({"sleep": 60})
        pool.longest_work = 20.0
        return (await pool.ask({"n": 3}))["task"]["n"]

    assert with_pool(Pool(1, COMMAND, longest_work=0.2), run) == 3


def test_a_question_nobody_has_time_for_is_told_so() -> None:
    async def run(pool: Pool) -> None:
        busy = asyncio.create_task(pool.ask({"sleep": 0.4}))
        await asyncio.sleep(0.02)
        with pytest.raises(Unanswered, match="Too many questions at once"):
            await pool.ask({})
        await busy

    with_pool(Pool(1, COMMAND, longest_wait=0.05), run)


def test_a_question_that_is_called_off_leaves_no_late_answer_behind() -> None:
    async def run(pool: Pool) -> object:
        late = asyncio.create_task(pool.ask({"n": 1, "sleep": 0.2}))
        await asyncio.sleep(0.05)
        late.cancel()
        with pytest.raises(asyncio.CancelledError):
            await late
        return (await pool.ask({"n": 2}))["task"]["n"]

    assert with_pool(Pool(1, COMMAND), run) == 2


def test_a_worker_that_talks_nonsense_is_replaced() -> None:
    async def run(pool: Pool) -> None:
        with pytest.raises(Unanswered, match="twice"):
            await pool.ask({"say": "this is no answer"})

    with_pool(Pool(1, COMMAND), run)


def test_no_worker_outlives_its_pool() -> None:
    async def run(pool: Pool) -> list[int]:
        return pool.pids

    stubborn = (sys.executable, "-S", "-E", "-c", "import time\nwhile True: time.sleep(1)")
    pool = Pool(1, stubborn, end_seconds=0.1)
    (pid,) = with_pool(pool, run)
    with pytest.raises(ProcessLookupError):
        os.kill(pid, 0)
    asyncio.run(pool.stop())  # a second time does no harm
