"""The plan as it is read at the lathe."""

from __future__ import annotations

import re

import pytest

from advisor.report.plan import plan_lines
from tests.planning.bench import JOBS, answer_of

GREEN = "BOWL; work.moisture=green"


def text_of(case: str, units: str = "metric") -> str:
    """The whole text."""
    return "\n".join(line.text for line in plan_lines(answer_of(case), "a title", units))


def test_verdict_first_then_one_reason_then_the_stages_in_order() -> None:
    lines = text_of("BOWL").splitlines()
    assert lines[0] == "GO, WITH CARE.  a title: bowl, 5 stages"
    assert lines[1].startswith("  Stage 5: The hold (friction block) will do with care")
    heads = [line for line in lines if re.match(r"\d+\. ", line)]
    assert [head.split("  ")[0] for head in heads] == [
        "1. Rough",
        "2. Shape the outside",
        "3. Hollow",
        "4. Finish",
        "5. Clear the foot",
    ]


def test_each_stage_says_hold_speed_tool_and_what_to_leave() -> None:
    found = text_of(GREEN)
    assert found.count("  Hold     ") == found.count("  Speed    ") == found.count("  Tool     ") == 8
    found = " ".join(found.split())
    assert "at the foot a tenon, 111 mm across, 12 mm long, its shoulder flat to 116 mm (for: rough hollow)" in found
    assert "leave wall and floor 25 mm thick, the same all round" in found
    assert "expect it 20 mm out of round" in found


@pytest.mark.parametrize("job", JOBS)
def test_no_caution_is_told_twice_and_no_stage_is_long(job: str) -> None:
    found = text_of(JOBS[job])
    assert found.count("Safety glasses under a face shield") == 1
    assert found.count("Two fingers on the wheel") <= 1
    blocks = re.split(r"\n(?=\d+\. )", found.split("\nCautions")[0])[1:]
    assert max(block.count("\n") for block in blocks) <= 26


def test_screws_are_told_once_with_number_thickness_depth_and_circle() -> None:
    found = text_of(GREEN)
    assert found.count("  Screws   ") == 1
    assert "6 of them, 5.5 mm thick, 25 mm into the work, on a circle of 81 mm" in " ".join(found.split())
    assert "one, 10 mm thick, 25 mm into the work" in text_of("BOWL; work.length=50mm")


def test_a_caution_with_a_speed_is_that_of_the_slowest_stage() -> None:
    case = "SPINDLE; machine.max_rpm=12000"
    found = [entry["text"] for entry in answer_of(case)["cautions"] if entry["rule"] == "runaway-dial"]
    limits = [float(re.findall(r"cannot pass (\d+) rpm", text)[0]) for text in found]
    assert len(limits) > 1
    assert limits[0] == min(limits)
    told = " ".join(text_of(case).split())
    assert [text in told for text in found] == [True] + [False] * (len(found) - 1)


def test_inch_and_metric() -> None:
    assert "4.4 in across" in text_of(GREEN, "inch")
    assert "1.0 in thick" in text_of(GREEN, "inch")
    solid = "SPINDLE; work.moisture=green; work.finished_diameter=45mm"
    assert "leave it 51 mm across or more for a finished 45 mm" in text_of(solid)


def test_a_plan_that_stops_says_where_why_and_what_to_do() -> None:
    found = text_of("BOWL; hold.kit=[faceplate-screws, jaws-on-tenon]")
    assert found.startswith("DO NOT MOUNT.  a title: bowl, stops at stage 5\n")
    assert "  -> What would do it: friction block" in found
    assert "  Stop     Nothing in the kit can hold it for this stage." in found
    last = found.split("\n5. ")[1]
    assert "rpm" not in last.split("Cautions")[0]


def test_holds_that_were_passed_over_are_told_when_nothing_else_is_left() -> None:
    found = text_of("SPINDLE; machine.tailstock=no")
    assert "- four-spur drive: This hold is nothing without the tailstock" in found
    assert found.count("           - ") <= 6


def test_an_assumed_job_is_told() -> None:
    assert "work.purpose = tube" in text_of("PEN; work.purpose=")
    told = " ".join(text_of("BOWL").split("Could not be checked")[1].split())
    assert "thrust on a hollow piece: no model for wall and floor under the tail center (clear the foot)" in told
    assert "hollow piece" not in text_of("SPINDLE")
