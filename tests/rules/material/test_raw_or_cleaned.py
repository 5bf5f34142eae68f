"""Bone, horn and shell: raw or cleaned?"""

import pytest

from tests.rules.bench import fired

RULE = "raw-or-cleaned"
FIRES = [
    "STONE; work.material=bone",
    "STONE; work.material=antler",
]
QUIET = [
    "STONE",
    "STONE; work.material=bone; work.raw=no",
    "STONE; work.material=bone; work.raw=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
