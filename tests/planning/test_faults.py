"""The job is looked at forward, whether what a hold needs was cut, and backward, whether it is still there."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from advisor.planning.fault_pages import fault_names, fault_page
from advisor.planning.faults import removed_too_early, turned_away
from advisor.planning.jobs import Template, grips, jobs
from advisor.planning.progress import Progress
from advisor.planning.stage import Stage, looked_back
from advisor.report.explain import explain
from tests.house.tree import ROOT
from tests.planning.bench import plan_of

BOWL = {stage.name: stage for stage in jobs()["bowl"].stages}
FAULTLESS = [
    (BOWL["rough"], "faceplate-screws"),
    (BOWL["shape the outside"], "faceplate-screws"),
    (BOWL["hollow"], "jaws-on-tenon"),
    (BOWL["finish"], "jaws-on-tenon"),
    (BOWL["clear the foot"], "friction-block"),
]


def fresh() -> Progress:
    """A piece on which nothing has been done."""
    return Progress(False, {"foot": "stock", "top": "stock"}, {"foot": (None, None), "top": (None, None)})


def test_the_bowl_in_its_order_holds_in_both_directions() -> None:
    assert list(removed_too_early(FAULTLESS)) == []


def test_a_foot_that_is_cleared_before_its_last_hold_is_found_from_the_end() -> None:
    order = [FAULTLESS[0], FAULTLESS[1], FAULTLESS[2], FAULTLESS[4], FAULTLESS[3]]
    [(place, fault)] = removed_too_early(order)
    assert place == 4
    assert fault.name == "removed-too-early"
    assert fault.text == "clear the foot takes the foot away, and finish still has to hold it there."


def test_a_grip_that_is_cut_anew_may_be_used_again() -> None:
    again = replace(BOWL["shape the outside"], name="cut another tenon")
    order = [FAULTLESS[2], FAULTLESS[4], (again, "friction-block"), FAULTLESS[3]]
    assert list(removed_too_early(order)) == []


def test_a_plan_in_the_wrong_order_stops_at_the_stage_that_misses_its_hold() -> None:
    order = [FAULTLESS[0], FAULTLESS[1], FAULTLESS[2], FAULTLESS[4], FAULTLESS[3]]
    stages = tuple(Stage(template, None, method, None, None) for template, method in order)
    found = looked_back((*stages, stages[0]))
    assert len(found) == 5
    assert found[-1].fault is not None
    assert found[-1].fault.name == "removed-too-early"
    assert looked_back(stages[:3]) == stages[:3]


def test_a_tenon_that_nobody_cut_and_a_foot_that_is_gone_are_found_on_the_way() -> None:
    progress = fresh()
    fault = turned_away(BOWL["hollow"], "jaws-on-tenon", progress)
    assert fault is not None
    assert fault.name == "grip-not-cut"
    assert turned_away(BOWL["hollow"], "glue-block", progress) is None
    progress.after(BOWL["shape the outside"], "screw-chuck")
    assert turned_away(BOWL["hollow"], "jaws-on-tenon", progress) is None
    progress.after(BOWL["clear the foot"], "friction-block")
    fault = turned_away(BOWL["finish"], "jaws-on-tenon", progress)
    assert fault is not None
    assert fault.name == "grip-turned-away"
    assert "(clear the foot)" in fault.text


def typical(stage: Template) -> str:
    """The hold on a cut grip where the stage has one, else its first."""
    if not stage.on_the_lathe:
        return ""
    return next((name for name in stage.holds if grips()[name].kind == "tenon"), stage.holds[0])


@pytest.mark.parametrize("job", jobs())
@pytest.mark.parametrize("green", [False, True])
def test_the_table_itself_is_in_order_both_ways(job: str, green: bool) -> None:
    stages = [stage for stage in jobs()[job].stages if green or stage.when in ("always", "marked")]
    order = [(stage, typical(stage)) for stage in stages]
    assert list(removed_too_early(order)) == []
    progress = fresh()
    for stage, method in order:
        between = stage.grips == "both" and stage.holds[0] != method
        name = stage.holds[0] if between else method
        assert not name or turned_away(stage, name, progress) is None, stage.name
        progress.after(stage, name)


def test_a_grip_that_is_cut_between_centers_is_cut_clear_of_the_drive() -> None:
    rows = [stage for job in jobs().values() for stage in job.stages if stage.grips == "both" and stage.makes]
    rough = [stage for stage in rows if stage.state == "not-round" and stage.when == "always"]
    assert len(rough) == 6
    assert all("clear of the drive" in stage.check for stage in rough)


@pytest.mark.parametrize("job", jobs())
def test_a_green_job_has_one_pause_and_a_dry_one_none(job: str) -> None:
    kinds = [stage.when for stage in jobs()[job].stages]
    assert sum(kinds.count(word) for word in ("solid", "wall")) == 1


def test_what_the_ends_give_up_to_holds_is_counted_once() -> None:
    kit = "hold.kit=[screw-chuck, jaws-on-tenon, jam-chuck]"
    assert plan_of(f"BOWL; work.length=60mm; work.finished_length=45mm; {kit}").stopped is None


def test_every_reason_to_stop_has_a_page() -> None:
    source = " ".join(
        (ROOT / "advisor" / "planning" / name).read_text(encoding="utf-8") for name in ("faults.py", "choose.py")
    )
    named = set(re.findall(r'(?:Fault\(\s*|NO_SAFE_HOLD = )"([a-z-]+)"', source))
    assert named == set(fault_names())
    for name in named:
        told, page = explain(name)
        assert told == name
        assert page.startswith(f"{name} (stops a plan)\n")
        assert "What to do\n    " in page
    assert fault_page("too-long") is None
