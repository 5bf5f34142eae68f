"""axe-core from the npm registry, put beside the environment once and never into the repository."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

VERSION = "4.10.3"
FOLDER = Path(sys.prefix) / "axe-core" / VERSION


def script() -> str:
    """The text of axe, fetched with npm on the first call."""
    file = FOLDER / "node_modules" / "axe-core" / "axe.min.js"
    if not file.exists():
        FOLDER.mkdir(parents=True, exist_ok=True)
        quiet = ["--no-audit", "--no-fund", "--no-save", "--ignore-scripts", "--loglevel=error"]
        subprocess.run(["npm", "install", *quiet, "--prefix", str(FOLDER), f"axe-core@{VERSION}"], check=True)
    return file.read_text(encoding="utf-8")
