"""Large work on a pin asks for care."""

import pytest

from tests.rules.bench import fired

RULE = "large-on-a-pin"
FIRES = [
    "BOWL; hold.method=pin-chuck; work.diameter=14in",
]
QUIET = [
    "BOWL; hold.method=pin-chuck",
    "BOWL; work.diameter=14in; hold.method=jaws-on-tenon",
    "BOWL; hold.method=pin-chuck; work.diameter=300mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
