"""A tenon that bottoms in the jaws has no shoulder."""

import pytest

from tests.rules.bench import fired

RULE = "tenon-bottoms"
FIRES = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm; hold.tenon.length=20mm; hold.chuck.jaw_depth=12mm",
    "BOWL; hold.tenon.diameter=75mm; hold.tenon.length=20mm; hold.chuck.jaw_depth=12mm; hold.method=long-jaws",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm; hold.tenon.length=20mm; hold.chuck.jaw_depth=16mm",
]
QUIET = [
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm; hold.tenon.length=9mm; hold.chuck.jaw_depth=12mm",
    "BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=75mm; hold.tenon.length=20mm; hold.chuck.jaw_depth=20mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
