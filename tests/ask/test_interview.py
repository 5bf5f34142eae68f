"""The next question is one whose answer could change what the person does, and none is left when it ends."""

from __future__ import annotations

import random
from typing import Any

import pytest

from advisor.advice import default_engine
from advisor.advice.trial import Bench, Outcome, disagreements, laid
from advisor.ask.interview import Interview, Next, decides, moves
from advisor.ask.questions import Question, questions, tries, value_of
from advisor.reading import InputFault, read_case, read_text, write_case
from tests.ask.persons import person
from tests.whole.answers import answer

# One way of holding and no tailstock: every trial takes a fraction of the time.
KIT = {"hold.kit": "[faceplate-screws]", "machine.tailstock": "no"}
BOWL = {
    **KIT, "work.material": "sugar maple", "work.diameter": "250 mm", "work.length": "90 mm", "work.form": "disc",
    "work.state": "not-round", "work.purpose": "bowl", "work.grain": "across", "work.condition": "[sound]",
    "work.moisture": "12%", "hold.method": "faceplate-screws", "cut.operation": "roughing", "cut.rotation": "forward",
    "machine.kind": "wood-lathe", "machine.mass": "150 kg", "machine.min_rpm": "100", "machine.max_rpm": "3000",
    "machine.swing": "350 mm", "machine.between_centers": "1 m", "person.extraction": "yes", "person.respirator": "P2",
}  # fmt: skip


FEW = ("material", "size", "seen", "shape", "speeds", "lathe", "cut")


@pytest.fixture
def few(monkeypatch: pytest.MonkeyPatch) -> tuple[Question, ...]:
    """Some of the questions: fewer answers to try in the model."""
    found = tuple(question for question in questions() if question.id in FEW)
    monkeypatch.setattr("advisor.ask.interview.questions", lambda: found)
    return found


def interview(known: dict[str, str]) -> Interview:
    start = {name: value_of(name, text) for name, text in known.items()}
    return Interview(Bench(default_engine()), start)


def given(asked: Next, known: dict[str, str]) -> dict[str, Any]:
    """What a person says who knows this much."""
    return {field.name: value_of(field.name, known[field.name]) for field in asked.fields if field.name in known}


def whole(case: Any) -> Outcome:
    """The outcome by the way of a script: written to a file, read, answered."""
    found = answer_of(case)
    speed = found["speed"]
    return Outcome(
        found["verdict"], found["holding"][0]["method"], "", speed.get("start_rpm"), speed["ceiling_rpm"],
        speed.get("governed_by"), "", None, None, None,
    )  # fmt: skip


def answer_of(case: Any) -> Any:
    from advisor.advice.whole import answer_for

    return answer_for(read_text(write_case(case), "yaml", "x"), ("holding", "speed"), changes=False)


def talk(talked: Interview, known: dict[str, str]) -> list[Next]:
    """The whole interview with a person who knows this much."""
    asked = []
    while (following := talked.next()) is not None:
        asked.append(following)
        talked.answer(following, given(following, known))
    return asked


def test_material_and_size_come_first() -> None:
    talked = interview(KIT)
    first = talked.next()
    assert first is not None
    assert [field.name for field in first.fields] == ["work.material"]
    talked.answer(first, given(first, BOWL))
    second = talked.next()
    assert second is not None
    assert [field.name for field in second.fields] == ["work.diameter", "work.length"]
    assert talked.case is None
    talked.answer(second, given(second, BOWL))
    assert talked.case is not None


def test_each_question_could_change_the_answer_and_those_that_remain_could_not(few: tuple[Question, ...]) -> None:
    ask_until_nothing_matters(few)


@pytest.mark.slow
@pytest.mark.cases
def test_that_holds_for_all_questions() -> None:
    ask_until_nothing_matters(questions())


def ask_until_nothing_matters(every: tuple[Question, ...]) -> None:
    """Every reason is a real one, checked by the way of a script, and in the end no answer left is one."""
    known = {name: text for name, text in BOWL.items() if not name.startswith(("machine.", "work.condition"))}
    talked = interview(known)
    asked = 0
    while (following := talked.next()) is not None:
        asked += 1
        reason, case = following.reason, talked.case
        assert reason is not None
        assert case is not None
        assert reason.field in {field.name for field in following.fields}
        assert decides(reason.before, reason.after) or moves(reason.before, reason.after)
        base = laid(case, dict([reason.beside])) if reason.beside is not None else case
        before, after = whole(base), whole(laid(base, {reason.field: reason.value}))
        assert decides(before, after) or moves(before, after)
        talked.answer(following, given(following, BOWL))
    assert 2 <= asked <= 12
    case = talked.case
    assert case is not None
    now = talked.bench.outcome(case)
    left = [f for q in every for f in talked.open_fields(q) if f.fits(case, now)]
    assert len(left) > 5
    for field in left:
        for value in tries(field, case):
            tried = laid(case, {field.name: value})
            if not disagreements(tried):
                then = talked.bench.outcome(tried)
                assert not decides(now, then), (field.name, value)
                assert not moves(now, then), (field.name, value)


@pytest.mark.usefixtures("few")
def test_what_decides_is_asked_before_what_only_moves_the_speed() -> None:
    known = {name: text for name, text in BOWL.items() if name not in ("machine.mass", "work.condition")}
    talked = interview(known)
    first = talked.next()
    assert first is not None
    assert first.reason is not None
    assert decides(first.reason.before, first.reason.after)
    assert (first.question.id, first.reason.after.verdict) == ("seen", "do-not-mount")


@pytest.mark.usefixtures("few")
def test_two_fields_that_only_together_end_it_are_both_thought_of() -> None:
    known = {name: text for name, text in BOWL.items() if name != "cut.rotation"}
    talked = interview(known)
    asked = talk(talked, {**known, "cut.rotation": "reverse", "machine.nose": "threaded"})
    assert {"cut.rotation", "machine.nose"} <= {field.name for entry in asked for field in entry.fields}
    case = talked.case
    assert case is not None
    assert talked.bench.outcome(case).verdict == "do-not-mount"


@pytest.mark.usefixtures("few")
def test_a_field_that_is_not_known_stays_assumed_and_is_not_asked_again() -> None:
    known = {name: text for name, text in BOWL.items() if name != "machine.max_rpm"}
    talked = interview(known)
    asked = talk(talked, known)
    names = [field.name for entry in asked for field in entry.fields]
    assert "machine.max_rpm" in names
    assert len(names) == len(set(names))
    case = talked.case
    assert case is not None
    assert case.machine.max_rpm is None


def test_going_back_takes_the_answer_with_it() -> None:
    talked = interview(KIT)
    assert talked.back() is None
    first = talked.next()
    assert first is not None
    talked.answer(first, given(first, BOWL))
    again = talked.back()
    assert again == first._replace(reason=None)
    assert talked.said == {"hold.kit": ("faceplate-screws",), "machine.tailstock": False}
    assert talked.next() == first


def test_an_answer_that_contradicts_is_refused_and_not_kept() -> None:
    talked = interview({**BOWL, "work.finished_diameter": "200 mm"})
    shape = next(question for question in questions() if question.id == "shape")
    asked = Next(shape, talked.open_fields(shape), None)
    with pytest.raises(InputFault) as fault:
        talked.answer(asked, {"work.thinnest_diameter": 210.0})
    assert "work.thinnest_diameter and work.finished_diameter do not go together" in str(fault.value)
    assert talked.answers == []


@pytest.mark.usefixtures("few")
def test_an_interview_may_begin_with_a_case_file() -> None:
    base = read_case("cases/maple-spindle.yaml", ["hold.kit=[spur-drive]"])
    talked = Interview(Bench(default_engine()), {}, base)
    asked = talk(talked, {})
    names = {field.name for entry in asked for field in entry.fields}
    assert not names & {"work.material", "work.diameter", "machine.mass", "hold.method", "hold.kit"}
    assert talked.case == base


def same(one: Outcome, other: Outcome) -> bool:
    """What a person must get alike: verdict, hold, start, ceiling."""
    return (one.verdict, one.hold) == (other.verdict, other.hold) and not moves(one, other)


@pytest.mark.parametrize("seed", [11, 13, 23])
def test_a_person_reaches_the_answer_of_the_full_case(few: tuple[Question, ...], seed: int) -> None:
    asked_for = {field.name for question in few for field in question.fields}
    known = {name: text for name, text in person(random.Random(seed)).items() if name in asked_for} | KIT
    talked = interview(KIT)
    asked = talk(talked, known)
    case = talked.case
    assert case is not None
    full = answer([f"{name}={text}" for name, text in known.items()])
    assert whole(case).verdict == full["verdict"]
    assert whole(case).hold == full["holding"][0]["method"]
    assert whole(case).start_rpm == pytest.approx(full["speed"].get("start_rpm"))
    assert whole(case).ceiling_rpm == pytest.approx(full["speed"]["ceiling_rpm"])
    assert len(asked) <= 20
