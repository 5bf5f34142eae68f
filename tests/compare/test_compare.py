"""Two situations side by side: what is said must be what the whole program answers to the changed case."""

from __future__ import annotations

import json
from typing import Any

import pytest

from advisor.advice.compare import Comparison, compare
from advisor.cli import main
from advisor.reading import read_case
from tests.rules.bench import words_of
from tests.test_commands import advisor
from tests.whole.answers import answer

SPINDLE = "cases/maple-spindle.yaml"
HEAVY = "BOWL; machine.mass=40kg; work.moisture=wet"


def of(base: str, *words: str) -> Comparison:
    """A base against itself with words changed."""
    return compare(read_case(None, words_of(base)), read_case(None, [*words_of(base), *words]))


def alone(found: Comparison, field: str) -> Any:
    return next(entry.outcome for entry in found.tried if field in entry.fields)


@pytest.mark.parametrize(
    ("base", "words", "most", "idle"),
    [
        (HEAVY, ["machine.mass=400kg", "person.others_in_room=yes"], "machine.mass", "person.others_in_room"),
        ("SPINDLE", ["work.condition=[through-crack]", "work.length=13in"], "work.condition", None),
        ("SPINDLE", ["machine.max_rpm=300", "machine.swing=14in"], "machine.max_rpm", "machine.swing"),
        ("BOWL", ["hold.method=paper-joint", "machine.power=1000W"], "hold.method", "machine.power"),
        ("SPINDLE", ["work.diameter=20mm", "work.length=900mm"], "work.diameter", None),
    ],
)
def test_the_field_that_makes_it_is_named_and_each_is_tried_in_the_whole_model(
    base: str, words: list[str], most: str, idle: str | None
) -> None:
    found = of(base, *words)
    assert found.matters_most == (most,)
    for word in words:
        whole = answer([*words_of(base), word])
        tried = alone(found, word.partition("=")[0])
        assert tried.verdict == whole["verdict"]
        assert tried.hold == whole["holding"][0]["method"]
        assert tried.ceiling_rpm == whole["speed"]["ceiling_rpm"]
        assert tried.start_rpm == whole["speed"].get("start_rpm")
        assert tried.governed_by == whole["speed"].get("governed_by")
        assert tried.window == whole["thrust"]["window"]
        assert tried.set_n == whole["thrust"].get("set_n")
    if idle is not None:
        assert alone(found, idle) == found.a.outcome
        assert idle not in found.enough


def test_fields_that_contradict_alone_are_tried_together() -> None:
    base = "SPINDLE; work.finished_diameter=2in"
    found = of(base, "work.diameter=1in", "work.finished_diameter=20mm")
    assert {entry.fields for entry in found.tried} >= {("work.diameter", "work.finished_diameter")}


@pytest.mark.parametrize(
    ("words", "verdict"),
    [
        (["machine.nose=threaded", "cut.rotation=reverse"], "do-not-mount"),
        (["machine.handwheel_lead=3mm", "hold.handwheel_torque=30Nm"], "ask-first"),
    ],
)
def test_what_only_two_make_together_is_told_as_theirs(words: list[str], verdict: str) -> None:
    found = of("SPINDLE", *words, "person.others_in_room=no")
    assert found.b.outcome.verdict == verdict
    assert all(entry.outcome == found.a.outcome for entry in found.tried)
    assert found.matters_most == found.enough == tuple(word.partition("=")[0] for word in words)


def test_the_page_names_those_that_change_nothing_alone(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", SPINDLE, "machine.nose=threaded", "cut.rotation=reverse"]) == 0
    text = " ".join(capsys.readouterr().out.split())
    assert "Only together: machine.nose, cut.rotation. None of them changes anything alone." in text


def test_a_difference_that_changes_nothing_is_listed_and_makes_nothing() -> None:
    found = of("SPINDLE; machine.max_rpm=300", "machine.max_rpm=300", "person.others_in_room=yes")
    assert found.matters_most == ()
    assert found.enough == ()
    assert [entry.field for entry in found.differences] == ["person.others_in_room"]


def test_what_is_assumed_on_one_side_stands_beside_what_is_said_on_the_other() -> None:
    found = of("BOWL", "machine.base_width=700mm", "work.diameter=12in")
    width = next(entry for entry in found.differences if entry.field == "machine.base_width")
    assert (width.a, width.assumed_a, width.b, width.assumed_b) == (None, "500 mm", 700.0, None)
    assert {entry.field for entry in found.silent} >= {"work.mass", "work.offset"}


def test_the_printed_page_says_what_made_it(capsys: pytest.CaptureFixture[str]) -> None:
    words = ["work.moisture=wet", "machine.max_rpm=900", "person.respirator=none", "--units", "metric"]
    assert main(["compare", SPINDLE, *words]) == 0
    text = capsys.readouterr().out
    assert text.startswith("GO, WITH CARE.\n")
    assert "machine.max_rpm matters most." in text
    assert "machine.max_rpm alone: start at 540 rpm instead of 800 rpm" in text
    assert "Alone they change nothing: person.respirator" in text
    assert "All of it takes: work.moisture, machine.max_rpm" in text
    assert [line.split() for line in text.splitlines() if "limit machine-maximum" in line] == [
        ["limit", "machine-maximum", "1400", "rpm", "900", "rpm"]
    ]
    assert max(len(line) for line in text.splitlines()) <= 100


def test_a_new_verdict_gives_both_and_its_reason(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", SPINDLE, "work.condition=[through-crack]"]) == 0
    first, second = capsys.readouterr().out.splitlines()[:2]
    assert first == "DO NOT MOUNT.  Before: GO, WITH CARE."
    assert second.strip().startswith("A crack runs right through it")


def test_a_case_beside_itself_differs_in_nothing(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["compare", SPINDLE, SPINDLE]) == 0
    assert "nothing that any advice looks at" in capsys.readouterr().out
    assert main(["compare", SPINDLE, "person.others_in_room=no"]) == 0
    assert "Nothing: verdict, hold, speed and thrust come out the same." in capsys.readouterr().out


def test_a_script_gets_both_sides_and_every_trial() -> None:
    done = advisor("compare", "-", "machine.mass=30kg", "hold.drive.teeth=2", "--json",
                   stdin="work: {material: ash, diameter: 10 in, length: 3 in, form: disc}\n")  # fmt: skip
    assert done.returncode == 0, done.stderr
    found = json.loads(done.stdout)
    assert found["a"]["name"] == "-"
    assert found["a"]["ceiling_rpm"] > 0
    assert {entry["field"] for entry in found["differs"]} == {"machine.mass", "hold.drive.teeth"}
    assert next(entry["b"] for entry in found["differs"] if entry["field"] == "machine.mass") == "30 kg"
    assert [entry["fields"] for entry in found["tried"]]
    assert found["matters_most"] == ["hold.drive.teeth"]


WRONG = {
    "nothing": ([], "nothing was named"),
    "one file": ([SPINDLE], "one side was named"),
    "three files": ([SPINDLE] * 3, "three files or more was named"),
    "words alone": (["work.material=ash"], "one side was named"),
    "the same input twice": (["-", "-"], "cannot be both sides"),
    "a wrong word": ([SPINDLE, "work.colour=red"], "is not a known field"),
    "a file that is not there": ([SPINDLE, "nowhere.yaml"], "there is no such file"),
}


@pytest.mark.parametrize(("words", "message"), WRONG.values(), ids=WRONG)
def test_wrong_words_are_told(capsys: pytest.CaptureFixture[str], words: list[str], message: str) -> None:
    assert main(["compare", *words]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert message in told.err
