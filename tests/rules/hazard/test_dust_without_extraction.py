"""Even ordinary dust and fume is drawn off."""

import pytest

from tests.rules.bench import fired

RULE = "dust-without-extraction"
FIRES = [
    "PLASTIC; person.extraction=no",
    "SPINDLE; work.condition=[live-edge]; person.extraction=no",
    "PLASTIC; person.extraction=no; work.material=plywood",
]
QUIET = [
    "PLASTIC",
    "STONE; work.material=bone; work.raw=no; person.extraction=no",
    "SPINDLE; person.extraction=no",
    "PLASTIC; person.extraction=no; work.material=glass epoxy",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
