"""Every case in a folder, answered by several processes at once; one bad file stops nothing.

Each process starts the rules engine once and ends by itself when the pipe to it closes, however the parent came to its
end. A process that dies takes one file with it and is replaced.
"""

from __future__ import annotations

import multiprocessing
import signal
from collections import deque
from collections.abc import Generator, Iterator, Sequence
from contextlib import contextmanager, suppress
from multiprocessing.connection import Connection, wait
from multiprocessing.context import SpawnProcess

from advisor.batch.one import PROGRAM, Outcome, answer_file

GONE = "the process that worked on it died; no advice was given"
PATIENCE_S = 2.0  # for a process to end by itself


def _work(pipe: Connection, whole: bool) -> None:
    """The life of a worker: a file in, its outcome out, until the pipe closes."""
    while True:
        try:
            path = pipe.recv()
            pipe.send(answer_file(path, whole))
        except (EOFError, OSError, KeyboardInterrupt):
            return


@contextmanager
def _deaf_to_interrupts() -> Iterator[None]:
    """What starts in here never hears Ctrl-C: the parent does and closes the pipes."""
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


class _Worker:
    """A process and the pipe to it; `at` is the number of the file it works on."""

    def __init__(self, whole: bool) -> None:
        context = multiprocessing.get_context("spawn")
        self.pipe, other = context.Pipe()
        self.process: SpawnProcess = context.Process(target=_work, args=(other, whole), daemon=True)
        with _deaf_to_interrupts():
            self.process.start()
        other.close()
        self.at = -1

    def take(self, number: int, path: str) -> None:
        """Give it a file."""
        self.at = number
        with suppress(OSError):  # one that is dead says so when its outcome is asked for
            self.pipe.send(path)

    def outcome(self) -> Outcome | None:
        """What it sends back for its file, None when it died over it."""
        try:
            found: Outcome = self.pipe.recv()
        except (EOFError, OSError):
            return None
        return found

    def stop(self) -> None:
        """Tell it to end; one in the middle of a case is ended."""
        self.pipe.close()
        self.process.terminate()

    def join(self) -> None:
        """Wait until it is gone."""
        self.process.join(PATIENCE_S)
        if self.process.is_alive():
            self.process.kill()
            self.process.join()


class Pool:
    """Workers over a list of files; `outcomes` yields (number of the file, outcome) as they come."""

    def __init__(self, files: Sequence[str], jobs: int, whole: bool) -> None:
        self.files, self.whole = files, whole
        self.todo = deque(range(len(files)))
        self.jobs = min(jobs, len(files))
        self.workers: list[_Worker] = []

    def _start(self) -> None:
        """One more worker, where there is still a file for it."""
        if self.todo:
            self.workers.append(_Worker(self.whole))
            self._next(self.workers[-1])

    def _next(self, worker: _Worker) -> None:
        """Give a worker its next file; without one it may go."""
        if not self.todo:
            self._part_with(worker)
            return
        number = self.todo.popleft()
        worker.take(number, self.files[number])

    def _part_with(self, worker: _Worker) -> None:
        worker.stop()
        worker.join()
        self.workers.remove(worker)

    def outcomes(self) -> Generator[tuple[int, Outcome], None, None]:
        """Every file's outcome, in the order they are done. However this ends, no process is left behind."""
        try:
            for _ in range(self.jobs):
                self._start()
            while self.workers:
                ready = wait([worker.pipe for worker in self.workers])
                for worker in [worker for worker in self.workers if worker.pipe in ready]:
                    number, found = worker.at, worker.outcome()
                    if found is None:
                        self._part_with(worker)
                        self._start()
                        found = Outcome(self.files[number], error=f"{self.files[number]}: {GONE}", fault=PROGRAM)
                    else:
                        self._next(worker)
                    yield number, found
        finally:
            for worker in self.workers:
                worker.stop()
            for worker in self.workers:
                worker.join()
