"""The path for the unknown ends everywhere, ends carefully, and asks nobody to burn, sniff or taste."""

import re

from advisor.models import material, questions


def _walk(step_id: str, path: tuple[str, ...]) -> list[questions.End]:
    assert step_id not in path, f"{path} comes back to {step_id}"
    here = questions.step(step_id)
    if isinstance(here, questions.End):
        return [here]
    return [end for answer in here.answers for end in _walk(answer.next, (*path, step_id))]


def test_every_path_ends() -> None:
    assert len(_walk(questions.START, ())) >= 15


def test_every_step_is_reached() -> None:
    reached = {questions.START}
    for step in questions.all_steps():
        if isinstance(step, questions.Question):
            reached |= {answer.next for answer in step.answers}
    assert {step.id for step in questions.all_steps()} == reached


def test_every_question_has_a_choice() -> None:
    for step in questions.all_steps():
        if isinstance(step, questions.Question):
            assert len(step.answers) >= 2, step.id
            assert len({answer.text for answer in step.answers}) == len(step.answers)


def test_every_end_leads_to_a_known_record_or_stays_unknown() -> None:
    for end in _walk(questions.START, ()):
        assert not end.material or material.get(end.material)


def test_not_knowing_never_ends_in_a_go() -> None:
    for step in questions.all_steps():
        if isinstance(step, questions.Question):
            for answer in step.answers:
                if "not sure" in answer.text or "cannot tell" in answer.text:
                    ends = _walk(answer.next, ())
                    assert all(material.get(end.material).verdict in ("ask-first", "do-not-mount") for end in ends)


def test_nobody_is_asked_to_burn_sniff_or_taste() -> None:
    forbidden = re.compile(r"\b(burn|sniff|smell|taste|lick|light it|match|hot needle)", re.IGNORECASE)
    for step in questions.all_steps():
        text = step.advice if isinstance(step, questions.End) else step.text
        assert not forbidden.search(text), text
