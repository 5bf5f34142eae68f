"""Every example in cases/: what it says must come out does come out, in every file format."""

from pathlib import Path

import pytest

from advisor.advice.whole import answer_for
from advisor.models.parts import WHOLE
from advisor.reading import read_case

FOLDER = Path(__file__).parent.parent / "cases"
FILES = sorted(path for path in FOLDER.iterdir() if path.suffix in (".yaml", ".toml", ".json"))


@pytest.mark.parametrize("path", FILES, ids=[path.name for path in FILES])
def test_what_must_come_out_comes_out(path: Path) -> None:
    case = read_case(str(path))
    assert case.expect is not None
    assert case.title
    found = answer_for(case, WHOLE)
    wanted = case.expect
    came = {
        "verdict": found["verdict"],
        "hold": found["holding"][0]["method"],
        "governed_by": found["speed"].get("governed_by"),
        "window": found["thrust"]["window"],
    }
    assert {key: came[key] for key in came if getattr(wanted, key)} == {
        key: getattr(wanted, key) for key in came if getattr(wanted, key)
    }
    assert set(wanted.fired or ()) <= set(found["fired"])


def test_there_are_cases_in_every_format_and_both_systems() -> None:
    assert len(FILES) >= 12
    assert {path.suffix for path in FILES} == {".yaml", ".toml", ".json"}
    assert {read_case(str(path)).units for path in FILES} >= {"inch", "metric"}
