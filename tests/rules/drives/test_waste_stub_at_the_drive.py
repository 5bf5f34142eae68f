"""Where the smaller drive would slip, leave a stub."""

import pytest

from tests.rules.bench import fired

RULE = "waste-stub-at-the-drive"
FIRES = [
    "SPINDLE; work.finished_diameter=12mm; hold.method=spur-drive",
]
QUIET = [
    "SPINDLE; hold.method=spur-drive",
    "SPINDLE; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
