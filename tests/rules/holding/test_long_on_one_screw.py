"""Work longer than wide levers one screw out."""

import pytest

from tests.rules.bench import fired

RULE = "long-on-one-screw"
FIRES = [
    "KNOB; hold.method=screw-chuck; work.length=100mm; cut.operation=hollowing; work.state=round",
    "KNOB; hold.method=screw-chuck; cut.operation=hollowing; work.state=round; work.length=60mm",
]
QUIET = [
    "KNOB; hold.method=screw-chuck",
    "BOWL; hold.method=screw-chuck",
    "KNOB; hold.method=screw-chuck; cut.operation=hollowing; work.state=round; work.length=50mm",
    "KNOB; work.length=100mm; cut.operation=hollowing; work.state=round; hold.method=jaws-on-tenon",
    "KNOB; hold.method=screw-chuck; work.length=100mm; work.state=round; cut.operation=finishing",
    "KNOB; hold.method=screw-chuck; cut.operation=hollowing; work.state=round; work.diameter=50mm; work.length=50mm",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
