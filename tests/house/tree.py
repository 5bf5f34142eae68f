"""The repository as its tests see it: the files that belong to it, and copies of it."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
HIDDEN_BUT_OURS = (".ci", ".gitignore")
MADE_BY_TOOLS = ("__pycache__", "build", "dist")


def _ours(name: str) -> bool:
    made = name in MADE_BY_TOOLS or name.endswith((".egg-info", ".pyc"))
    return not made and (name in HIDDEN_BUT_OURS or not name.startswith("."))


def _walk(folder: Path) -> Iterator[Path]:
    for entry in os.scandir(folder):
        if not _ours(entry.name):
            continue
        if entry.is_dir(follow_symlinks=False):
            yield from _walk(Path(entry.path))
        else:
            yield Path(entry.path).relative_to(ROOT)


@cache
def files() -> tuple[Path, ...]:
    """Every file of the repository, relative to its top, without what tools leave behind; links as links."""
    return tuple(sorted(_walk(ROOT)))


def python_files(*folders: str) -> list[Path]:
    """The Python files below these folders of the top level."""
    return [path for path in files() if path.suffix == ".py" and path.parts[0] in folders]


def copy_to(target: Path) -> None:
    """Copy every file of the repository, links as links."""
    for path in files():
        place = target / path
        place.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(ROOT / path, place, follow_symlinks=False)
