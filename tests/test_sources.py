"""Every source once, by key, and every key that is cited is there."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from advisor import sources
from advisor.figure import all_figures
from advisor.sources import KINDS, all_sources, source

HEADER = "key,title,detail,kind\n"


def test_the_two_special_sources_say_what_they_are() -> None:
    assert source("common-practice").title == "common practice, no source"
    assert source("memory").title == "from memory"


def test_keys_are_kebab_case_and_titles_differ() -> None:
    every = all_sources()
    assert all(re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", key) for key in every)
    assert len({entry.title for entry in every.values()}) == len(every)
    assert {entry.kind for entry in every.values()} == set(KINDS)


def test_every_figure_cites_sources_that_are_there() -> None:
    for name, formula in all_figures().items():
        assert formula.spec.sources, name
        assert all(key in all_sources() for key in formula.spec.sources), name


def test_unknown_key_is_named() -> None:
    with pytest.raises(KeyError, match="no-such-book"):
        source("no-such-book")


@pytest.mark.parametrize(
    "text",
    [
        "key,title,kind\na,A,memory\n",
        HEADER + "a,A,,memory\na,B,,memory\n",
        HEADER + "a,,,memory\n",
        HEADER + "a,A,,hearsay\n",
        HEADER + "a,A,,memory,more\n",
        HEADER + "a,A\n",
    ],
    ids=["column missing", "key twice", "no title", "unknown kind", "cell too many", "cells missing"],
)
def test_damaged_file_is_refused(text: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "sources.csv"
    file.write_text(text, encoding="utf-8")
    monkeypatch.setattr(sources, "FILE", file)
    all_sources.cache_clear()
    try:
        with pytest.raises(ValueError, match=r"sources\.csv"):
            all_sources()
    finally:
        all_sources.cache_clear()
