"""More than 5 kg on one screw asks for care."""

import pytest

from tests.rules.bench import fired

RULE = "much-on-one-screw"
FIRES = [
    "BOWL; hold.method=screw-chuck; work.mass=6kg",
    "BOWL; hold.method=screw-chuck; work.mass=8kg",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "BOWL; hold.method=screw-chuck; work.mass=9kg",
    "BOWL; work.mass=6kg; hold.method=jaws-on-tenon",
    "BOWL; hold.method=screw-chuck; work.mass=5kg",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
