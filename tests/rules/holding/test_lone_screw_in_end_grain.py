"""One screw in end grain strips like a corkscrew."""

import pytest

from tests.rules.bench import fired

RULE = "lone-screw-in-end-grain"
FIRES = [
    "HOLLOW; hold.method=screw-chuck",
    "HOLLOW; hold.method=screw-chuck; work.diameter=3.5in",
]
QUIET = [
    "BOWL; hold.method=screw-chuck",
    "KNOB; hold.method=screw-chuck",
    "HOLLOW; hold.method=screw-chuck; work.diameter=75mm",
    "HOLLOW; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
