"""Jaws cannot close on a tenon under their smallest size."""

import pytest

from tests.rules.bench import fired

RULE = "jaws-do-not-close"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=60mm; hold.chuck.jaw_smallest=70mm",
    "ROD; work.diameter=10mm; hold.kit=[three-jaw]; hold.chuck.jaw_smallest=20mm",
    "BOWL; hold.tenon.diameter=60mm; hold.chuck.jaw_smallest=70mm; hold.method=four-jaw-independent",
    "BOWL; hold.tenon.diameter=60mm; hold.chuck.jaw_smallest=70mm; hold.method=long-jaws",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=70mm; hold.chuck.jaw_smallest=70mm",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=60mm",
    "ROD; work.diameter=10mm; hold.kit=[collet]; hold.chuck.jaw_smallest=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
