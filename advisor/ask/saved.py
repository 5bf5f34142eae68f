"""An interview kept while it is under way, so that it can go on after Ctrl-C."""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from pathlib import Path
from typing import NamedTuple

VERSION = 1
LARGEST = 256 * 1024


class Said(NamedTuple):
    """An answer as it was typed."""

    question: str
    fields: tuple[str, ...]
    line: str


def place(output: str | None) -> Path:
    """Beside the case file that is to be written, or where a desktop keeps the state of programs."""
    if output is not None:
        target = Path(output)
        return target.with_name(f".{target.name}.interview")
    home = os.environ.get("XDG_STATE_HOME") or os.path.join(os.path.expanduser("~"), ".local", "state")
    return Path(home) / "advisor" / "interview.json"


class Saved:
    """The file of one interview; `start` are the words it began with, and another start is another interview."""

    def __init__(self, path: Path, start: Sequence[str]) -> None:
        self.path, self.start = path, list(start)

    def load(self) -> list[Said]:
        """What was said before; nothing where there is no such file, or none that can be used."""
        try:
            with self.path.open("rb") as file:
                found = json.loads(file.read(LARGEST))
            if found["interview"] != VERSION or found["start"] != self.start:
                return []
            entries = [(entry["question"], entry["fields"], entry["line"]) for entry in found["answers"]]
            return [Said(str(name), tuple(map(str, fields)), str(line)) for name, fields, line in entries]
        except (OSError, ValueError, KeyError, TypeError, RecursionError):
            return []

    def save(self, said: Sequence[Said]) -> str | None:
        """Write it whole or not at all; the reason where it cannot be kept."""
        answers = [entry._asdict() for entry in said]
        beside = self.path.with_name(f"{self.path.name}.{os.getpid()}")
        try:
            self.path.parent.mkdir(parents=True, exist_ok=True)
            beside.write_text(
                json.dumps({"interview": VERSION, "start": self.start, "answers": answers}), encoding="utf-8"
            )
            beside.replace(self.path)
        except (OSError, ValueError) as fault:
            return fault.strerror if isinstance(fault, OSError) and fault.strerror else str(fault)
        return None

    def remove(self) -> None:
        """The interview is over."""
        try:
            self.path.unlink(missing_ok=True)
        except OSError:
            return
