"""Each limit that an answer can name has a page: what happens above it, what moves it, which figures stand behind."""

import re
from pathlib import Path

import pytest

from advisor.data.tables import Row, load
from advisor.figure import all_figures
from advisor.models.limits import LIMITS, limit_names, limit_page
from advisor.sources import all_sources
from advisor.web.labels import BEHIND
from tests.whole.answers import of

RECKONING = Path(__file__).parents[2] / "advisor/reckoning"
MADE = re.compile(r'(?:Limit|from_figure)\(\s*"([a-z-]+)"')


def made() -> set[str]:
    """The names of limits as the modules that make them write them."""
    return {name for path in RECKONING.rglob("*.py") for name in MADE.findall(path.read_text(encoding="utf-8"))}


def test_every_limit_that_is_made_has_a_row_and_no_other_has() -> None:
    assert len(made()) > 15
    assert made() == set(limit_names())


def test_what_the_page_shows_beside_a_limit_is_a_limit() -> None:
    assert set(BEHIND) <= set(limit_names())


@pytest.mark.parametrize("row", load(LIMITS), ids=lambda row: row.text("limit"))
def test_a_row_names_figures_and_sources_that_there_are(row: Row) -> None:
    assert set(row.text("figures").split()) <= set(all_figures())
    assert row.text("source") in all_sources()


@pytest.mark.parametrize("part", ["speed", "thrust"])
@pytest.mark.parametrize("words", ["BOWL", "SPINDLE", "NARROW"])
def test_the_page_says_speed_or_thrust_as_the_answer_does(words: str, part: str) -> None:
    for row in of(words)[part].get("limits", ()):
        assert (limit_page(row["name"]) or "").startswith(f"{row['name']}: a limit on {part}\n")


def test_a_page_in_full() -> None:
    assert limit_page("walking") == (
        "walking: a limit on speed\n\n"
        "The unbalance lifts or shoves the lathe: it rocks and then walks across the floor.\n"
        "What moves it: the center of mass nearer to the axis, less off one side, a heavier lathe, a wider stand, "
        "bolts into the floor.\n"
        "Figures behind it: walking-speed, tip-force, slide-force, unbalance-force."
    )
    assert limit_page("walk") is None
