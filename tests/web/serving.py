"""The page as a process of its own, as a person starts it."""

from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

ADDRESS = re.compile(r"http://127\.0\.0\.1:(\d+)/")
LONGEST_STOP = 30.0


@dataclass(frozen=True)
class Serving:
    """A page that runs: its process and its port."""

    process: subprocess.Popen[str]
    port: int

    @property
    def address(self) -> str:
        return f"http://127.0.0.1:{self.port}"

    def workers(self) -> list[int]:
        """The processes below it."""
        path = f"/proc/{self.process.pid}/task/{self.process.pid}/children"
        with open(path, encoding="ascii") as file:
            return [int(word) for word in file.read().split()]


def start(*words: str) -> subprocess.Popen[str]:
    command = [sys.executable, "-m", "advisor.cli", "serve", *words]
    return subprocess.Popen(
        command, stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env={**os.environ}
    )


def address_of(process: subprocess.Popen[str]) -> int:
    """The port of a page that has just said where it is."""
    assert process.stdout is not None
    found = ADDRESS.search(process.stdout.readline())
    assert found is not None
    return int(found[1])


def stop(process: subprocess.Popen[str]) -> tuple[int, str, str]:
    """Ctrl-C; exit code and what it said."""
    process.send_signal(signal.SIGINT)
    out, errors = process.communicate(timeout=LONGEST_STOP)
    return process.returncode, out, errors


@contextmanager
def serving() -> Iterator[Serving]:
    """A page on a free port, stopped at the end; it must end cleanly and have said nothing of a fault."""
    process = start("--port", "0")
    try:
        yield Serving(process, address_of(process))
        code, _, errors = stop(process)
        assert (code, errors) == (0, ""), f"exit code {code}: {errors}"
    finally:
        process.kill()
        process.wait()
