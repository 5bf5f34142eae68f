"""A plain taper walks out of the spindle without thrust."""

import pytest

from tests.rules.bench import fired

RULE = "taper-walks-out"
TAPER = "BOWL; machine.nose=taper-only; cut.operation=hollowing; hold.method=jaws-on-tenon; work.state=round"
FIRES = [
    TAPER,
]
QUIET = [
    "BOWL",
    "BOWL; machine.nose=taper-only",
    "BOWL; machine.nose=threaded; cut.operation=hollowing; hold.method=jaws-on-tenon; work.state=round",
    f"{TAPER}; machine.drawbar=yes",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
