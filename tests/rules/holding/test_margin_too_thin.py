"""A hold that only just carries the cut is not advised."""

import pytest

from tests.rules.bench import fired

RULE = "margin-too-thin"
FIRES = [
    "HOLLOWING; hold.tenon.diameter=52mm; cut.force=80N",
    "HOLLOWING; hold.tenon.diameter=52mm; cut.force=80N; work.material=ponderosa pine",
    "HOLLOWING; hold.tenon.diameter=52mm; cut.force=80N; work.diameter=5.5in",
]
QUIET = [
    "SPINDLE",
    "BOWL; hold.method=faceplate-screws",
    "BOWL; hold.method=two-spur-drive",
    "HOLLOWING; hold.tenon.diameter=52mm; cut.force=80N; hold.method=vacuum",
    "SPINDLE; hold.method=toothed-ring-drive",
    "SPINDLE; work.material=ponderosa pine; hold.method=two-spur-drive",
    "HOLLOWING; hold.tenon.diameter=52mm; cut.force=80N; work.diameter=3.8in",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
