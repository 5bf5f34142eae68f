"""Jaws opened past their travel drop off their scroll."""

import pytest

from tests.rules.bench import fired

RULE = "jaws-past-their-travel"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=110mm; hold.chuck.jaw_largest=100mm",
    "ROD; hold.kit=[three-jaw]; hold.chuck.jaw_largest=20mm",
    "ROD; hold.kit=[three-jaw]; hold.chuck.jaw_largest=20mm; hold.method=four-jaw-independent",
    "BOWL; hold.tenon.diameter=110mm; hold.chuck.jaw_largest=100mm; hold.method=long-jaws",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=100mm; hold.chuck.jaw_largest=100mm",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=110mm",
    "BOWL; hold.method=jaws-on-tenon; hold.chuck.jaw_largest=70mm",
    "ROD; hold.kit=[collet]; hold.chuck.jaw_largest=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
