"""More than two tenon diameters without the tailstock asks for care."""

import pytest

from tests.rules.bench import fired

RULE = "stands-out-of-the-tenon"
FIRES = [
    "HOLLOWING; hold.tenon.diameter=64mm; work.length=170mm",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
