"""`advisor batch FOLDER`: a table of all cases in a folder, or a line of JSON for each."""

from __future__ import annotations

import os
from collections.abc import Callable
from contextlib import closing
from typing import TextIO

from advisor.batch.one import Outcome, case_files, exit_code
from advisor.batch.pool import Pool
from advisor.report.batch_table import summary, table
from advisor.report.progress import progress
from advisor.report.screen import write


def cores() -> int:
    """How many processors this process may use."""
    allowed = getattr(os, "sched_getaffinity", None)
    return len(allowed(0)) if allowed is not None else os.cpu_count() or 1


class _InOrder:
    """Outcomes as they come, handed on in the order of the files."""

    def __init__(self, total: int, tell: Callable[[Outcome], None]) -> None:
        self.found: list[Outcome | None] = [None] * total
        self.tell = tell
        self.told = self.done = 0

    def take(self, number: int, outcome: Outcome) -> None:
        """One more is done; it and those behind it are handed on when nothing before them is missing."""
        self.found[number] = outcome
        self.done += 1
        while self.told < len(self.found) and (ready := self.found[self.told]) is not None:
            self.tell(ready)
            self.found[self.told] = ready._replace(answer=None)  # answers are long, and there may be many
            self.told += 1

    @property
    def outcomes(self) -> list[Outcome]:
        """Those that were handed on."""
        return [outcome for outcome in self.found[: self.told] if outcome is not None]


def run(folder: str, jobs: int | None, *, as_json: bool, plain: bool, units: str, out: TextIO, errors: TextIO) -> int:
    """Answer every case of a folder. Raises InputFault for a folder without cases.

    Exit code 0 when all were answered, 2 when the input of any was wrong, 1 when the program was at fault in any.
    """
    files = case_files(folder)
    told: list[Outcome] = []
    direct = as_json and not (out.isatty() and errors.isatty())  # a bar and lines do not share a terminal

    def tell(outcome: Outcome) -> None:
        if direct:
            out.write(outcome.line + "\n")
            out.flush()
        else:
            told.append(outcome)

    order = _InOrder(len(files), tell)
    try:
        pool = Pool(files, jobs or cores(), as_json)
        with progress("cases", len(files), plain) as done, closing(pool.outcomes()) as found:
            for number, outcome in found:
                order.take(number, outcome)
                done(order.done)
    except KeyboardInterrupt:
        errors.write(f"{order.done} of {len(files)} cases were done; ")
        raise
    if as_json:
        out.write("".join(outcome.line + "\n" for outcome in told))
    else:
        rows = [(outcome.file, outcome.row) for outcome in order.outcomes]
        write(table(rows, units), out, plain=plain)
        out.write(f"\n{summary(rows)}\n")
    out.flush()
    errors.write("".join(f"{outcome.error}\n" for outcome in order.outcomes if outcome.error is not None))
    return exit_code(order.outcomes)
