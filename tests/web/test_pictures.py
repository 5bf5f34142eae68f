"""The pictures of the README and of docs."""

from __future__ import annotations

import re

import pytest

from tests.house.tree import ROOT

README = (ROOT / "README.md").read_text(encoding="utf-8")
NAMED = re.findall(r"!\[([^\]]+)\]\((docs/pictures/[^)]+)\)", README)
DOCS = "".join(path.read_text(encoding="utf-8") for path in sorted((ROOT / "docs").glob("*.md")))
SHOWN = {path for _, path in NAMED} | {f"docs/{path}" for path in re.findall(r"!\[[^\]]+\]\((pictures/[^)]+)\)", DOCS)}


def test_every_picture_is_shown_and_no_other_is_kept() -> None:
    kept = {str(path.relative_to(ROOT)) for path in (ROOT / "docs" / "pictures").iterdir()}
    assert kept == SHOWN
    assert 0 < len(NAMED) <= 3


@pytest.mark.parametrize(("told", "path"), NAMED)
def test_a_picture_is_small_and_told_in_words(told: str, path: str) -> None:
    picture = (ROOT / path).read_bytes()
    assert picture.startswith(b"\x89PNG")
    assert len(picture) < 150_000
    assert len(told) > 20
