"""Raw bone, horn and shell carry disease."""

import pytest

from tests.rules.bench import fired

RULE = "raw-and-not-cleaned"
FIRES = [
    "STONE; work.material=bone; work.raw=yes",
    "STONE; work.material=horn; work.raw=yes",
    "SPINDLE; work.material=corn cob; work.raw=yes",
]
QUIET = [
    "STONE; work.material=bone; work.raw=no",
    "STONE; work.material=bone",
    "STONE; work.raw=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
