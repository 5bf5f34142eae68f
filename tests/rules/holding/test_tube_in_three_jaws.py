"""Three jaws crush a tube."""

import pytest

from tests.rules.bench import fired

RULE = "tube-in-three-jaws"
FIRES = [
    "ROD; work.form=tube; work.wall=5mm; hold.method=three-jaw",
]
QUIET = [
    "ROD; hold.method=three-jaw",
    "ROD; work.form=tube; work.wall=5mm; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
