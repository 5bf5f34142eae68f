"""A jam fit takes finishing cuts."""

import pytest

from tests.rules.bench import fired

RULE = "heavy-cuts-in-a-jam-fit"
FIRES = [
    "BOWL; hold.method=vacuum; work.state=round; cut.operation=hollowing",
    "BOWL; work.state=round; cut.operation=hollowing; hold.method=jam-chuck",
    "BOWL; work.state=round; cut.operation=hollowing; hold.method=friction-block",
    "BOWL; hold.method=vacuum; work.state=round; cut.operation=roughing",
]
QUIET = [
    "BOWL; hold.method=vacuum; work.state=finished",
    "BOWL; work.state=round; cut.operation=hollowing; hold.method=jaws-on-tenon",
]


@pytest.mark.parametrize("words", FIRES)
def test_it_fires(words: str) -> None:
    assert RULE in fired(words)


@pytest.mark.parametrize("words", QUIET)
def test_it_stays_quiet(words: str) -> None:
    assert RULE not in fired(words)
