"""The whole answer: which changes are tried for it, and on which holds."""

from __future__ import annotations

from typing import Any

import pytest

from advisor.advice import default_engine, whole
from advisor.advice.advise import Advice
from advisor.advice.whole import answer_for
from advisor.engine import Fires
from advisor.rulebook import Effect
from tests.advice.bench import Recording, advice_of, case_of, kept_advice, ruling

POOR = "NARROW; hold.kit=[spur-drive]"
TRIES = ("speed_changes", "thrust_changes", "rungs")


@pytest.fixture
def tried(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Names of the changes that were tried; each says that it was."""
    names: list[str] = []

    def put(name: str, told: Any, engine: int | None) -> None:
        def change(advice: Advice, *rest: Any) -> Any:
            assert isinstance(advice, Advice)
            assert all(entry is not None for entry in rest)
            assert engine is None or rest[engine] is not None
            names.append(" ".join([name, *(entry for entry in rest if isinstance(entry, str))]))
            return told

        monkeypatch.setattr(whole, name, change)

    put("speed_changes", ["less speed"], None)
    put("thrust_changes", ["less thrust"], 0)
    put("hold_changes", ["another hold"], 0)
    put("rungs", (), None)
    return names


def test_changes_are_tried_for_the_parts_that_were_asked_for(tried: list[str]) -> None:
    for parts, names in (
        (["speed"], ["speed_changes", "rungs"]),
        (["thrust"], ["thrust_changes"]),
        (["holding"], ["hold_changes spur-drive"]),
        (["centers", "tool"], []),
        (["holding", "speed", "thrust"], ["speed_changes", "thrust_changes", "rungs", "hold_changes spur-drive"]),
    ):
        tried.clear()
        answer_for(case_of(POOR), parts)
        assert tried == names


def test_what_was_tried_stands_in_its_part(tried: list[str]) -> None:
    answer = answer_for(case_of(POOR), iter(["holding", "speed", "thrust"]))
    assert answer["speed"]["would_change"] == ["less speed"]
    assert answer["thrust"]["would_change"] == ["less thrust"]
    assert answer["holding"][0]["would_change"] == ["another hold"]
    assert len(tried) == 4


def test_nothing_is_tried_where_nobody_asks_for_changes(tried: list[str]) -> None:
    answer = answer_for(case_of(POOR), ["holding", "speed", "thrust"], changes=False)
    assert tried == []
    assert answer["speed"]["ladder"] == answer["speed"]["would_change"] == answer["thrust"]["would_change"] == []
    assert answer["holding"][0]["would_change"] == []


def test_changes_of_a_hold_are_tried_on_the_one_in_use_and_on_the_best(tried: list[str]) -> None:
    answer = answer_for(case_of("BOWL; hold.kit=[faceplate-screws, vacuum, collet]; hold.method=vacuum"), ["holding"])
    assert tried == ["hold_changes vacuum", "hold_changes faceplate-screws"]
    assert [hold["would_change"] for hold in answer["holding"]] == [["another hold"], ["another hold"], []]


@pytest.mark.parametrize(
    ("kinds", "mended"),
    [
        (["machine"], True),
        (["speed"], True),
        (["choice"], True),
        (["blank"], False),  # it is cracked through: no lathe mends that
        (["speed", "hazard"], False),
    ],
)
def test_a_refusal_for_the_piece_itself_is_not_mended_by_a_change_of_speed(
    monkeypatch: pytest.MonkeyPatch, tried: list[str], kinds: list[str], mended: bool
) -> None:
    refusals = tuple(ruling(Effect.DO_NOT_MOUNT, "No.", kind=kind) for kind in kinds)
    spoken = (*refusals, ruling(Effect.CAUTION, "Mask.", kind="person"))
    advice = kept_advice(POOR)._replace(rulings=spoken, verdict="do-not-mount")
    monkeypatch.setattr(whole, "advise", lambda *_: advice)
    answer = answer_for(case_of(POOR), ["speed", "thrust"])
    assert tried == (["speed_changes", "thrust_changes"] if mended else [])  # and no way up for what is not mounted
    assert answer["speed"]["ceiling_rpm"] == 0


def test_the_engine_that_is_given_decides_and_else_that_of_the_program() -> None:
    engine = Recording()
    given = answer_for(case_of(POOR), ["holding"], engine)
    assert engine.asked
    assert given == answer_for(case_of(POOR), ["holding"])
    assert given["fired"] == list(dict.fromkeys(entry.rule.name for entry in advice_of(POOR).fired))


def test_changes_are_tried_in_the_engine_that_is_given(monkeypatch: pytest.MonkeyPatch) -> None:
    engine, heard = Recording(), []

    def change(_: Advice, asked: Fires, *_method: str) -> list[str]:
        heard.append(asked)
        return []

    monkeypatch.setattr(whole, "thrust_changes", change)
    monkeypatch.setattr(whole, "hold_changes", change)
    answer_for(case_of(POOR), ["holding", "thrust"], engine)
    assert heard == [engine, engine]
    heard.clear()
    answer_for(case_of(POOR), ["holding", "thrust"])
    assert heard == [default_engine()] * 2


def test_the_way_up_is_told_with_the_speed() -> None:
    answer = answer_for(case_of("BOWL; hold.kit=[faceplate-screws]"), ["speed"])
    assert answer["speed"]["ladder"][0]["ceiling_rpm"] == answer["speed"]["ceiling_rpm"]
    assert answer["speed"]["ladder"][-1]["state"] == "finished"


@pytest.mark.parametrize(
    ("parts", "sized"), [(["holding", "proportions"], True), (["holding"], False), (["proportions"], False)]
)
def test_sizes_are_put_on_the_holds_where_both_are_asked_for(parts: list[str], sized: bool) -> None:
    answer = answer_for(case_of("BOWL; hold.kit=[faceplate-screws]; work.moisture=green"), parts, changes=False)
    assert ("drying" in answer) is sized
    assert all(("proportions" in hold) is sized for hold in answer.get("holding", ()))
