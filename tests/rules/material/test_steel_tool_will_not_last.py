"""Glass and carbon wear steel tools away."""

import pytest

from tests.rules.bench import fired

RULE = "steel-tool-will-not-last"
FIRES = [
    "PLASTIC; work.material=glass epoxy; cut.tool_material=steel",
]
QUIET = [
    "PLASTIC; work.material=glass epoxy; cut.tool_material=carbide",
    "PLASTIC; cut.tool_material=steel",
    "SPINDLE; cut.tool_material=steel",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
