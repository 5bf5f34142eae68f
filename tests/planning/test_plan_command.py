"""`advisor plan` as a person runs it, and the example cases that have a plan."""

from __future__ import annotations

from pathlib import Path

import jsonschema
import pytest

from advisor.cli import main
from advisor.planning import JobUnclear, plan_answer, which_job
from advisor.reading import read_case
from advisor.situation import settle
from tests.test_cases import FILES
from tests.test_commands import advisor, document

PLANNED = [path for path in FILES if getattr(read_case(str(path)).expect, "stages", None)]


def test_at_least_a_green_bowl_and_a_spindle_are_among_the_cases() -> None:
    jobs = {read_case(str(path)).work.purpose for path in PLANNED}
    assert jobs >= {"bowl", "spindle"}


@pytest.mark.parametrize("path", PLANNED, ids=[path.name for path in PLANNED])
def test_the_stages_that_must_come_out_come_out(path: Path) -> None:
    case = read_case(str(path))
    assert case.expect is not None
    found = plan_answer(case)
    assert tuple(stage["name"] for stage in found["stages"]) == case.expect.stages
    assert "stopped" not in found


def test_the_process_prints_a_plan_and_one_json_document() -> None:
    done = advisor("plan", "cases/cherry-leg-plan.toml", "--units", "inch")
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("GO, WITH CARE.  cherry leg between centers: spindle, 4 stages\n")
    found = document("plan", "cases/cherry-leg-plan.toml")
    jsonschema.validate(found, document("schema", "answer"))
    assert [stage["kind"] for stage in found["stages"]] == ["lathe", "lathe", "lathe", "bench"]


def test_an_unclear_job_names_the_words_it_takes(capsys: pytest.CaptureFixture[str]) -> None:
    log = ["plan", "work.material=ash", "work.form=log", "work.diameter=10in", "work.length=20in", "work.grain=along"]
    assert main(log) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert err == (
        "work.purpose: a log like this can become many things; accepted: spindle, bowl, platter, box, hollow-form, "
        "bush, handle, ring, sphere, knob, rod, tube, disc, pen, column\n"
    )
    assert main([*log, "work.purpose=bowl", "--plain"]) == 0


def test_a_piece_without_a_shape_is_unclear_too() -> None:
    case = read_case(None, ["work.material=ash", "work.diameter=10in", "work.length=20in", "work.purpose=other"])
    with pytest.raises(JobUnclear, match="piece without a shape"):
        which_job(settle(case))


@pytest.mark.parametrize("purpose", ["bowl", "platter", "box", "hollow-form"])
def test_a_finished_piece_whose_marks_may_stay_has_no_plan(purpose: str, capsys: pytest.CaptureFixture[str]) -> None:
    done = ["plan", "work.material=maple", "work.diameter=60mm", "work.length=60mm", "work.state=finished"]
    done.append(f"work.purpose={purpose}")
    assert main([*done, "work.marks_allowed=any"]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert err.startswith("work.state: the ")
    assert "is finished and its marks may stay, so nothing of the job is left to plan; say what is still to be" in err
    assert main([*done, "work.marks_allowed=none", "--plain"]) == 0
    assert main([*done, "work.marks_allowed=any", "cut.operation=hollowing", "--plain"]) == 0
