"""How far a long piece of work is."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager


@contextmanager
def progress(label: str, total: int, plain: bool) -> Iterator[Callable[[int], None]]:
    """Called with the number done; a bar where standard error is a terminal, else nothing."""
    if plain or not sys.stderr.isatty():
        yield lambda _: None
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeRemainingColumn

    columns = (TextColumn("{task.description}"), BarColumn(), MofNCompleteColumn(), TimeRemainingColumn())
    with Progress(*columns, console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task(label, total=total)
        yield lambda done: bar.update(task, completed=done)
