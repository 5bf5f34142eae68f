"""A stage is a case of its own: written out as a file and asked like any other, it gets the same answer."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from advisor.advice.advise import default_engine
from advisor.advice.whole import answer_for
from advisor.engine import Fact, Ruling
from advisor.models.parts import WHOLE
from advisor.planning import Plan, walk
from advisor.planning.answer import compose
from advisor.planning.faults import does_not_fit
from advisor.planning.stage import Stage
from advisor.reading import read_case, read_text, write_case
from tests.planning.bench import JOBS, answer_of, plan_of
from tests.rules.bench import words_of

PLANS = [*JOBS.values(), "BOWL; work.moisture=green"]


def turned(plan: Plan) -> list[Stage]:
    """The stages on the lathe."""
    return [stage for stage in plan.stages if stage.answer is not None]


def check(stage: Stage, changes: bool) -> None:
    """The stage's case survives being written and read, contradicts nothing, and is answered as in the plan."""
    assert stage.case is not None
    again = read_text(write_case(stage.case), "yaml", "stage.yaml")
    assert again == stage.case
    assert does_not_fit(stage.case) is None
    assert answer_for(again, WHOLE, changes=changes) == stage.answer


@pytest.mark.parametrize("text", PLANS)
def test_the_last_stage_is_what_advise_says_of_its_case(text: str) -> None:
    check(turned(plan_of(text))[-1], changes=False)


def test_each_stage_of_a_bowl_is_what_advise_says_of_its_case_changes_tried_included() -> None:
    plan = walk(read_case(None, [*words_of("BOWL"), "hold.kit=[screw-chuck, jaws-on-tenon, friction-block]"]))
    stages = turned(plan)
    assert len(stages) == 5
    for stage in stages:
        check(stage, changes=True)
    parts = compose(plan)["stages"]
    for stage, part in zip(stages, parts, strict=True):
        assert stage.answer is not None
        assert {name: part[name] for name in ("reasons", "speed", "thrust", "centers", "tool")} == {
            name: stage.answer[name] for name in ("reasons", "speed", "thrust", "centers", "tool")
        }
        assert part["holding"] == stage.answer["holding"][:1]
        assert part["verdict"] == stage.answer["verdict"]


@pytest.mark.slow
@pytest.mark.cases
@pytest.mark.parametrize("text", PLANS)
def test_every_stage_of_every_job_with_every_method_to_hand(text: str) -> None:
    for stage in turned(walk(read_case(None, words_of(text)))):
        check(stage, changes=True)


@pytest.mark.parametrize("text", PLANS)
def test_the_verdict_is_the_worst_of_the_stages(text: str) -> None:
    order = ("go", "go-with-care", "ask-first", "do-not-mount")
    found = answer_of(text)
    assert found["verdict"] == max((stage["verdict"] for stage in found["stages"]), key=order.index)


def test_the_first_stage_keeps_what_was_measured_and_the_later_ones_do_not() -> None:
    text = "BOWL; work.mass=6kg; work.offset=3mm; hold.overhang=90mm; cut.operation=roughing; cut.force=50N"
    first, second, *_ = [stage.case for stage in plan_of(text).stages]
    assert first is not None
    assert second is not None
    assert (first.work.mass, first.work.offset, first.hold.overhang, first.cut.force) == (6.0, 3.0, 90.0, 50.0)
    assert (second.work.mass, second.work.offset, second.hold.overhang, second.cut.force) == (None,) * 4


class _Counted:
    """The engine, with its requests counted."""

    def __init__(self) -> None:
        self.facts = 0

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        self.facts += len(facts)
        return default_engine().run(facts)


@pytest.mark.parametrize("text", ["BOWL", "SPINDLE; work.purpose=rod; work.diameter=20mm; work.length=400mm"])
def test_a_plan_asks_the_engine_little_more_than_its_stages_would_alone(text: str) -> None:
    whole, alone = _Counted(), _Counted()
    plan = walk(read_case(None, words_of(text)), whole, changes=False)
    for stage in turned(plan):
        assert stage.case is not None
        answer_for(stage.case, WHOLE, alone, changes=False)
    assert alone.facts < whole.facts < 1.5 * alone.facts
