"""More than 8 kg on one screw is not advised."""

import pytest

from tests.rules.bench import fired

RULE = "heavy-on-one-screw"
FIRES = [
    "BOWL; hold.method=screw-chuck; work.mass=9kg",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "BOWL; hold.method=screw-chuck; work.mass=8kg",
    "BOWL; work.mass=9kg; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
