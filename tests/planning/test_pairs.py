"""Situations next to each other: one thing is changed and the plan must change, or must not. Practice, no source."""

from __future__ import annotations

import pytest

from advisor.planning import which_job
from advisor.planning.standing import stages_of
from advisor.reading import read_case
from advisor.situation import settle
from tests.planning.bench import PLATTER, answer_of, holds, stopped
from tests.rules.bench import words_of

KIT = "[screw-chuck, jaws-on-tenon, friction-block]"
SHALLOW = f"BOWL; work.length=45mm; work.finished_length=40mm; hold.kit={KIT}"
NO_REVERSE = "BOWL; hold.kit=[faceplate-screws, jaws-on-tenon]"
OPENED = [
    (NO_REVERSE, "BOWL; hold.kit=[faceplate-screws, jaws-on-tenon, friction-block]"),
    (NO_REVERSE, "BOWL; hold.kit=[faceplate-screws, jaws-on-tenon, jam-chuck]"),
    (NO_REVERSE, f"{NO_REVERSE}; work.marks_allowed=any"),
    ("BOWL; work.state=finished; cut.operation=hollowing",
     "BOWL; work.state=finished; cut.operation=hollowing; hold.tenon.diameter=75mm"),
    ("BOWL; work.state=finished; cut.operation=hollowing", "BOWL; work.state=round; cut.operation=hollowing"),
    ("BOWL; work.state=finished; cut.operation=hollowing", "BOWL; work.state=finished"),
    (SHALLOW, f"{SHALLOW}; work.length=60mm"),
    (SHALLOW, f"{SHALLOW}; work.finished_length=30mm"),
    (SHALLOW, f"{SHALLOW}; hold.kit=[screw-chuck, jaws-in-recess, friction-block]"),
    (f"{PLATTER}; hold.kit=[faceplate-screws, jaws-in-recess]; work.floor=8mm",
     f"{PLATTER}; hold.kit=[faceplate-screws, jaws-in-recess]; work.floor=10mm"),
    (f"{PLATTER}; hold.kit=[faceplate-screws, jaws-in-recess]; hold.recess.diameter=75mm; hold.recess.wall=12mm",
     f"{PLATTER}; hold.kit=[faceplate-screws, jaws-in-recess]; hold.recess.diameter=90mm; hold.recess.wall=100mm"),
    ("SPINDLE; machine.tailstock=no", "SPINDLE"),
    ("SPINDLE; work.finished_diameter=60mm", "SPINDLE; work.finished_diameter=50mm"),
    ("SPINDLE; work.finished_diameter=60mm", "SPINDLE; work.finished_diameter=60mm; work.form=round"),
    ("KNOB; hold.kit=[four-jaw-independent]", "KNOB; hold.kit=[spur-drive, jaws-on-tenon]"),
    ("BOWL; work.condition=[through-crack]", "BOWL; work.condition=[knot]"),
    ("BOWL; hold.method=double-sided-tape", "BOWL; hold.method=faceplate-screws"),
]  # fmt: skip


@pytest.mark.parametrize(("shut", "open_"), OPENED, ids=[open_ for _, open_ in OPENED])
def test_one_change_opens_the_plan(shut: str, open_: str) -> None:
    assert stopped(shut) != ("", "")
    assert stopped(open_) == ("", "")


def test_the_chosen_hold_is_used_at_the_first_stage_that_may_use_it() -> None:
    assert holds("BOWL; hold.method=faceplate-screws")["rough"] == "faceplate-screws"
    found = holds("BOWL; hold.method=jaws-in-recess; work.length=3in")
    assert found["rough"] != "jaws-in-recess"
    assert found["hollow"] == "jaws-in-recess"
    assert holds("BOWL; hold.method=vacuum")["clear the foot"] == "vacuum"


@pytest.mark.parametrize(
    ("text", "first"),
    [
        ("BOWL; work.state=round", "shape the outside"),
        ("BOWL; work.state=round; cut.operation=hollowing", "hollow"),
        ("BOWL; work.state=round; cut.operation=finishing", "finish"),
        ("BOWL; work.state=finished", "clear the foot"),
        ("BOWL; hold.method=jaws-on-tenon; hold.tenon.diameter=90mm", "true the outside"),
        ("SPINDLE; work.form=round; work.state=finished", "finish"),
        ("PEN", "turn the outside"),
        ("BALL", "true it across"),
        ("BOWL; work.moisture=green; work.state=round; cut.operation=hollowing", "rough hollow"),
    ],
)
def test_a_piece_goes_on_where_it_stands(text: str, first: str) -> None:
    situation = settle(read_case(None, words_of(text)))
    _, ahead = stages_of(which_job(situation).job, situation)
    assert ahead[0].name == first


@pytest.mark.parametrize(
    ("text", "job"),
    [
        ("BOWL; work.purpose=", "bowl"),
        ("BOWL; work.purpose=other", "bowl"),
        ("BOWL; work.purpose=; work.length=35mm", "platter"),
        ("BOWL; work.purpose=; work.length=15mm", "disc"),
        ("DISC", "disc"),
        ("SPINDLE; work.purpose=", "spindle"),
        ("SPINDLE; work.purpose=; work.diameter=20mm", "rod"),
        ("PEN; work.purpose=", "tube"),
        ("BALL; work.purpose=", "sphere"),
    ],
)
def test_a_job_that_nobody_named_is_told_by_the_shape_and_listed_as_assumed(text: str, job: str) -> None:
    choice = which_job(settle(read_case(None, words_of(text))))
    assert choice.job.name == job
    assert "nobody said" in choice.assumed


@pytest.mark.parametrize(("word", "job"), [("pen", "tube"), ("column", "spindle"), ("rod", "rod")])
def test_words_of_the_case_that_mean_a_job(word: str, job: str) -> None:
    choice = which_job(settle(read_case(None, words_of(f"SPINDLE; work.purpose={word}"))))
    assert choice.job.name == job
    assert not choice.assumed


def test_an_assumed_job_stands_first_among_what_was_assumed() -> None:
    found = answer_of("PEN; work.purpose=")
    assert found["job"] == {"name": "tube", "title": "tube", "assumed": True}
    assert found["assumed"][0]["field"] == "work.purpose"


def test_glue_lines_are_not_forgotten_when_the_piece_is_round() -> None:
    segmented = "BOWL; work.form=segmented"
    fast = next(entry for entry in answer_of("BOWL")["stages"] if entry["name"] == "finish")
    slow = next(entry for entry in answer_of(segmented)["stages"] if entry["name"] == "finish")
    assert slow["speed"]["ceiling_rpm"] < fast["speed"]["ceiling_rpm"]
