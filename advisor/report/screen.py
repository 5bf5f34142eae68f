"""Lines to a terminal in color, or to a pipe as they are."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from typing import Any, TextIO

from advisor.report.terminal import Line, lines

STYLES = {
    "go": "bold green",
    "go-with-care": "bold yellow",
    "ask-first": "bold yellow",
    "do-not-mount": "bold red",
    "title": "bold underline",
    "do": "bold",
    "caution": "yellow",
    "first": "bold cyan",
    "quiet": "dim",
    "reason": "",
    "text": "",
}


def show(answer: Mapping[str, Any], title: str, units: str, out: TextIO, *, plain: bool, holds: bool) -> None:
    """Print an answer; color only on a terminal that wants it."""
    write(lines(answer, title, units, holds), out, plain=plain)


def write(found: Iterable[Line], out: TextIO, *, plain: bool) -> None:
    """Print lines; color only on a terminal that wants it."""
    if plain or not out.isatty() or os.environ.get("NO_COLOR"):
        out.write("\n".join(line.text for line in found) + "\n")
        return
    from rich.console import Console
    from rich.text import Text

    console = Console(file=out, highlight=False, soft_wrap=True)
    for line in found:
        console.print(Text(line.text, style=STYLES.get(line.role, "")))
