"""A pool of worker processes: a dead one is replaced and its question asked once more; nothing is lost in silence."""

from __future__ import annotations

import asyncio
import json
import sys
from asyncio.subprocess import PIPE, Process
from collections.abc import Mapping, Sequence
from contextlib import suppress
from typing import Any

COMMAND = (sys.executable, "-m", "advisor.web.worker")
LONGEST_ANSWER = 16 * 1024 * 1024  # bytes
ATTEMPTS = 2


class Unanswered(Exception):  # noqa: N818 -- what happened to the question
    """A question got no answer; the text says why, in words for the person who asked."""


class _Died(Exception):  # noqa: N818 -- what happened to the worker
    """The worker ended before it answered."""


class _Worker:
    """A process, started when it is first needed and again when it has ended."""

    def __init__(self, command: Sequence[str]) -> None:
        self.command = command
        self.process: Process | None = None

    async def start(self) -> Process:
        if self.process is None or self.process.returncode is not None:
            self.process = await asyncio.create_subprocess_exec(
                *self.command, stdin=PIPE, stdout=PIPE, limit=LONGEST_ANSWER
            )
        return self.process

    async def ask(self, line: bytes) -> dict[str, Any]:
        """The reply to one task. Raises _Died."""
        process = await self.start()
        assert process.stdin is not None
        assert process.stdout is not None
        try:
            process.stdin.write(line)
            await process.stdin.drain()
            reply = await process.stdout.readline()
            found: dict[str, Any] = json.loads(reply)
        except (OSError, ValueError) as wrong:
            await self.kill()
            raise _Died from wrong
        return found

    async def kill(self) -> None:
        process, self.process = self.process, None
        if process is not None:
            with suppress(ProcessLookupError):
                process.kill()
            await process.wait()

    async def end(self, seconds: float) -> None:
        """Let it finish in so many seconds, or not."""
        process = self.process
        if process is None or process.stdin is None:
            return
        process.stdin.close()
        with suppress(asyncio.TimeoutError):
            await asyncio.wait_for(process.wait(), seconds)
        await self.kill()


class Pool:
    """So many workers; a question waits for the first that is free. Times in seconds."""

    def __init__(
        self,
        size: int,
        command: Sequence[str] = COMMAND,
        *,
        longest_wait: float = 300.0,
        longest_work: float = 20.0,
        end_seconds: float = 3.0,
    ) -> None:
        self.workers = [_Worker(command) for _ in range(size)]
        self.longest_wait = longest_wait
        self.longest_work = longest_work
        self.end_seconds = end_seconds
        self._idle: asyncio.LifoQueue[_Worker] = asyncio.LifoQueue()
        for worker in reversed(self.workers):
            self._idle.put_nowait(worker)

    @property
    def pids(self) -> list[int]:
        """The processes that run now."""
        processes = [worker.process for worker in self.workers]
        return [entry.pid for entry in processes if entry is not None and entry.returncode is None]

    async def start(self) -> None:
        """Start every worker, so that the first question does not wait for it."""
        await asyncio.gather(*(worker.start() for worker in self.workers))

    async def stop(self) -> None:
        """End every worker."""
        await asyncio.gather(*(worker.end(self.end_seconds) for worker in self.workers))

    async def ask(self, task: Mapping[str, Any]) -> dict[str, Any]:
        """The reply of a worker. Raises Unanswered: all busy for too long, too slow, ended twice over it."""
        line = json.dumps(task).encode() + b"\n"
        try:
            worker = await asyncio.wait_for(self._idle.get(), self.longest_wait)
        except asyncio.TimeoutError:
            raise Unanswered("Too many questions at once: this one was not worked on. Ask again.") from None
        try:
            return await self._answer(worker, line)
        finally:
            self._idle.put_nowait(worker)

    async def _answer(self, worker: _Worker, line: bytes) -> dict[str, Any]:
        for _ in range(ATTEMPTS):
            try:
                return await asyncio.wait_for(worker.ask(line), self.longest_work)
            except _Died:
                continue
            except asyncio.TimeoutError:
                await worker.kill()
                raise Unanswered("This question took too long and was given up: no advice was given.") from None
            except asyncio.CancelledError:
                await worker.kill()  # its late reply would be taken for the next one's
                raise
        raise Unanswered("This question ended the process that works on it, twice: no advice was given.")
