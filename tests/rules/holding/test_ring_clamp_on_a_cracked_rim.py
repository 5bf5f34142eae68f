"""A clamping ring levers a cracked rim apart."""

import pytest

from tests.rules.bench import fired

RULE = "ring-clamp-on-a-cracked-rim"
RING = "BOWL; work.state=finished; cut.operation=finishing; hold.kit=[ring-clamp-plate]"
FIRES = [f"{RING}; work.condition=[check]", f"{RING}; work.condition=[crack]"]
QUIET = [
    RING,
    f"{RING}; work.condition=[live-edge]",
    "BOWL; work.state=finished; cut.operation=finishing; hold.kit=[friction-block]; work.condition=[check]",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
