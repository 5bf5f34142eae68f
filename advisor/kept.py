"""What takes long to read, kept as Python keeps its bytecode: beside its source, until the source changes.

Reading four hundred rules takes longer than all advice on one case; taking them as they were read last takes a tenth of
that. It is written where and when bytecode may be written, and nothing that is wrong with it is a fault: the source
itself is read then.
"""

from __future__ import annotations

import os
import pickle
import sys
from collections.abc import Callable, Iterable, Iterator
from importlib.util import cache_from_source
from typing import TypeVar, cast

Found = TypeVar("Found")
Mark = tuple[str, int, int]


def kept(beside: str, sources: Iterable[str], make: Callable[[], Found], of: str = "") -> Found:
    """What `make` makes of these files and folders of Python files; kept beside a path under that path's name.

    `of` is anything else it is made from, in words. What `make` raises is raised.
    """
    marks: list[str | Mark] = [of, *(mark for source in sources for mark in _marks(source))]
    place = f"{cache_from_source(f'{beside}.py')}.kept"
    found = _read(place, marks)
    if found is not None:
        return cast("Found", found)
    made = make()
    if not sys.dont_write_bytecode:
        _write(place, marks, made)
    return made


def _marks(source: str) -> Iterator[Mark]:
    """Path, time and size of a file, or of every Python file below a folder: what tells that one has changed."""
    if not os.path.isdir(source):
        state = os.stat(source)
        yield (source, state.st_mtime_ns, state.st_size)
        return
    with os.scandir(source) as entries:
        found = sorted(entries, key=lambda entry: entry.name)
    for entry in found:
        if entry.name.endswith(".py"):
            state = entry.stat()
            yield (entry.path, state.st_mtime_ns, state.st_size)
        elif not entry.name.startswith(("_", ".")) and entry.is_dir():
            yield from _marks(entry.path)


def _read(place: str, marks: list[str | Mark]) -> object:
    """What is kept at a place; None where nothing is, or not of these very files."""
    try:
        with open(place, "rb") as file:
            of, found = pickle.load(file)
    except Exception:  # cut off, of another version, not ours: whatever it is, the source is there
        return None
    return found if of == marks else None


def _write(place: str, marks: list[str | Mark], made: object) -> None:
    """Keep it, whole or not at all; where nothing may be written it is not kept."""
    draft = f"{place}.{os.getpid()}"
    try:
        os.makedirs(os.path.dirname(place), exist_ok=True)
        with open(draft, "wb") as file:
            pickle.dump((marks, made), file, protocol=5)
        os.replace(draft, place)
    except OSError:
        if os.path.exists(draft):
            os.remove(draft)
