"""A tenon under a fifth of the bowl tears off."""

import pytest

from tests.rules.bench import fired

RULE = "tenon-too-small"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=45mm",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=90mm",
    "SPINDLE",
    "BOWL; hold.tenon.diameter=45mm; hold.method=cup-drive",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=45mm; work.grain=along",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=45mm; work.diameter=8.5in",
    "BOWL; hold.method=jaws-on-tenon; work.diameter=250mm; hold.tenon.diameter=50mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
