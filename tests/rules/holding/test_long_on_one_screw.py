"""Work longer than wide levers one screw out."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-one-screw"
FIRES = [
    "KNOB; hold.method=screw-chuck; work.length=100mm; cut.operation=hollowing; work.state=round",
]
QUIET = [
    "KNOB; hold.method=screw-chuck",
    "BOWL; hold.method=screw-chuck",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
