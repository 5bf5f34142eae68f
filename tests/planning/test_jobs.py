"""Every job as a whole plan: the trade's order of stages, each with a hold, a speed, a tool and its checks.

The order is common practice, no source: first hold, rough, the grip for the next hold, turn about, finish, part off or
clear the marks.
"""

from __future__ import annotations

import pytest

from advisor.planning.jobs import jobs
from tests.planning.bench import JOBS, PLATTER, SCHEMA, answer_of, holds, names, plan_of, stage

ORDER = {
    "spindle": ["rough", "shape", "finish", "take off the ends"],
    "handle": ["rough", "bore for the tang", "shape", "finish", "take off the butt"],
    "rod": ["rough", "bring it to size", "finish", "cut it off"],
    "knob": ["rough", "shape", "finish", "part off"],
    "bowl": ["rough", "shape the outside", "hollow", "finish", "clear the foot"],
    "platter": ["rough", "shape the underside", "hollow", "finish"],
    "box": ["rough", "part lid from body", "hollow the lid", "hollow the body", "finish with the lid on",
            "clear the foot"],
    "hollow-form": ["rough", "shape the outside", "bore the depth", "hollow", "finish", "clear the foot"],
    "bush": ["rough", "turn the outside", "drill", "bore", "part off", "face the sawn end"],
    "ring": ["rough", "shape the outside", "cut the ring free", "finish the other side"],
    "sphere": ["rough", "shape the ball", "saw off the necks", "true it across", "sand"],
    "tube": ["rough", "bore through", "turn the outside", "finish"],
    "disc": ["rough", "face the first side", "face the other side"],
}  # fmt: skip


def test_every_job_of_the_table_is_planned_here() -> None:
    assert set(jobs()) == set(JOBS) == set(ORDER)


@pytest.mark.parametrize("job", JOBS)
def test_the_whole_job_is_planned_to_its_end(job: str) -> None:
    found = answer_of(JOBS[job])
    assert "stopped" not in found
    assert found["job"] == {"name": job, "title": jobs()[job].title, "assumed": False}
    assert found["verdict"] in ("go", "go-with-care")
    assert names(JOBS[job]) == ORDER[job]


@pytest.mark.parametrize("job", JOBS)
def test_the_answer_follows_the_schema(job: str) -> None:
    SCHEMA.validate(answer_of(JOBS[job]))


@pytest.mark.parametrize("job", JOBS)
def test_every_stage_on_the_lathe_has_hold_speed_tool_and_check(job: str) -> None:
    for entry in answer_of(JOBS[job])["stages"]:
        assert entry["checks"]
        if entry["kind"] != "lathe":
            continue
        assert [hold["verdict"] in ("suits", "with-care") for hold in entry["holding"]] == [True]
        assert 0 < entry["speed"]["start_rpm"] <= entry["speed"]["ceiling_rpm"]
        assert entry["thrust"]["window"] in ("open", "narrow", "not-used")
        assert entry["tool"]["kind"] != "none"


@pytest.mark.parametrize("job", JOBS)
def test_a_grip_is_cut_before_it_is_used(job: str) -> None:
    cut: set[str] = set()
    for entry in plan_of(JOBS[job]).stages:
        if entry.method in ("jaws-on-tenon", "jaws-in-recess", "long-jaws"):
            assert entry.template.grips in cut, entry.template.name
        cut |= set(entry.template.makes)


@pytest.mark.parametrize("job", ["bowl", "platter", "box", "hollow-form", "knob", "handle", "bush"])
def test_what_is_left_for_the_next_hold_is_what_that_hold_uses(job: str) -> None:
    left = [entry for found in answer_of(JOBS[job])["stages"] for entry in found["leave"]]
    assert left
    for entry in left:
        user = stage(JOBS[job], entry["for"])
        assert user["holding"][0]["method"] == entry["hold"]
        sizes = user["holding"][0]["sizes"]
        if entry["what"] in ("tenon", "recess"):
            assert entry["diameter_mm"] == sizes["diameter"]


def test_a_bowl_is_turned_about_for_its_inside_and_again_for_its_foot() -> None:
    assert holds(JOBS["bowl"]) == {
        "rough": "screw-chuck",
        "shape the outside": "screw-chuck",
        "hollow": "jaws-on-tenon",
        "finish": "jaws-on-tenon",
        "clear the foot": "friction-block",
    }


def test_a_recess_may_stay_in_a_platter_and_a_tenon_may_not() -> None:
    assert holds(PLATTER)["hollow"] == "jaws-in-recess"
    kit = f"{PLATTER}; hold.kit=[faceplate-screws, jaws-on-tenon, friction-block]"
    assert names(kit)[-1] == "clear the foot"
    assert names(f"{PLATTER}; work.marks_allowed=none")[-1] == "clear the foot"


def test_the_drive_stays_in_its_holes_from_stage_to_stage() -> None:
    drives = {
        entry["name"]: entry["centers"]["drive"]["outer_diameter_mm"]
        for entry in answer_of("SPINDLE; work.finished_diameter=40mm")["stages"]
        if entry["kind"] == "lathe"
    }
    assert len(drives) == 3
    assert len(set(drives.values())) == 1


def test_a_cup_has_no_holes_to_stay_in() -> None:
    text = "SPINDLE; work.form=round; work.state=round; work.diameter=40mm; hold.kit=[cup-drive]; cut.force=5N"
    cases = [found.case for found in plan_of(text).stages if found.method]
    assert [case.hold.drive for case in cases if case] == [None, None]


def test_the_tail_is_away_where_the_cut_leaves_it_no_room() -> None:
    assert stage("BOWL", "rough")["holding"][0]["tail"] == "up"
    for name in ("hollow", "finish"):
        assert stage("BOWL", name)["holding"][0]["tail"] == "away"
    assert stage("BOWL", "clear the foot")["holding"][0]["tail"] == "up"
