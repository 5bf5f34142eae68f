"""Files that a command writes: the ending says what kind, and each is written whole or not at all."""

from __future__ import annotations

import os
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path


class OutputFault(Exception):  # noqa: N818 -- the house says fault for what a user did wrong
    """The name given for a file cannot be used; the message says what is accepted."""


def ending_of(path: str | None, endings: Sequence[str], command: str) -> str:
    """The ending of a file to be written. Raises OutputFault without a name or for any other ending."""
    accepted = endings[0] if len(endings) == 1 else f"{', '.join(endings[:-1])} or {endings[-1]}"
    if not path:
        raise OutputFault(f"{command} needs -o FILE, a name ending in {accepted}")
    ending = Path(path).suffix.lower()
    if ending not in endings:
        raise OutputFault(f"-o {path}: {command} writes no such file; a name ending in {accepted} is accepted")
    return ending


def write_whole(path: str, content: str | bytes) -> None:
    """Write beside the target, then put it in its place: what stood there stays until all of the new file is there."""
    target = Path(path)
    beside = target.with_name(f".{target.name[:80]}.{os.getpid()}.part")
    data = content if isinstance(content, bytes) else content.encode("utf-8")
    try:
        if target.is_dir():
            raise IsADirectoryError(21, "is a folder")
        beside.write_bytes(data)
        beside.replace(target)
    except (OSError, ValueError) as fault:
        with suppress(OSError, ValueError):
            beside.unlink()
        why = fault.strerror if isinstance(fault, OSError) else str(fault)
        raise OutputFault(f"-o {path}: cannot be written ({why}); nothing was changed") from None
