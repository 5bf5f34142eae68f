"""The style files of a sheet; one of them narrows the lettering that stands in where the reckoned one is missing."""

from __future__ import annotations

from functools import cache
from importlib.resources import files


@cache
def stylesheet(name: str) -> str:
    """One of the style files of this folder."""
    return files("advisor.report.sheet").joinpath(name).read_text(encoding="utf-8")
