"""The path from "I do not know what this is" to an answer: look, weigh and ask, never burn or sniff."""

from functools import lru_cache
from typing import NamedTuple

from advisor.data.tables import Table, Text, load

START = "start"
QUESTIONS = Table(
    "material_questions.csv",
    (
        Text("id"),
        Text("question", required=False),
        Text("answer", required=False),
        Text("next"),
        Text("advice"),
    ),
    key=("id", "answer"),
    rows=56,
)
_MATERIAL = "material:"


class Answer(NamedTuple):
    """One answer to a question, what follows from it, and the id of the next step."""

    text: str
    next: str
    advice: str


class Question(NamedTuple):
    """A question with its answers."""

    id: str
    text: str
    answers: tuple[Answer, ...]


class End(NamedTuple):
    """Where the path stops: what to do, and the material's id to go on with, empty when it stays unknown."""

    id: str
    advice: str
    material: str


@lru_cache(maxsize=1)
def _steps() -> dict[str, Question | End]:
    found: dict[str, Question | End] = {}
    for row in load(QUESTIONS):
        key, following = row.text("id"), row.text("next")
        if following.startswith(_MATERIAL):
            found[key] = End(key, row.text("advice"), following.removeprefix(_MATERIAL))
            continue
        answer = Answer(row.text("answer"), following, row.text("advice"))
        earlier = found.get(key)
        answers = (*earlier.answers, answer) if isinstance(earlier, Question) else (answer,)
        found[key] = Question(key, row.text("question"), answers)
    return found


def step(step_id: str = START) -> Question | End:
    """The question or the end of this id; the path begins without one."""
    return _steps()[step_id]


def all_steps() -> tuple[Question | End, ...]:
    """Every question and every end."""
    return tuple(_steps().values())


def first_steps(step_id: str = START) -> str:
    """The question of this id with its answers, each with what it leads to, on one line."""
    here = step(step_id)
    if isinstance(here, End):
        return here.advice
    told = [f"{answer.text}: {_leads_to(answer)}" for answer in here.answers]
    return f"{here.text} ({'; '.join(told)})"


def _leads_to(answer: Answer) -> str:
    following = step(answer.next)
    if isinstance(following, End):
        return following.advice.rstrip(".")
    return f"then {following.text[:1].lower()}{following.text[1:]}"


def path_page() -> str:
    """The whole path from "I do not know what this is", question by question."""
    lines = ["What is this stuff? Look, weigh and ask; never burn or sniff. Begin at start."]
    for here in all_steps():
        if isinstance(here, End):
            continue
        lines += ["", f"{here.id}: {here.text}"]
        for answer in here.answers:
            following = step(answer.next)
            onward = following.advice if isinstance(following, End) else f"Go to {answer.next}."
            lines.append(f"  {answer.text}: {answer.advice} {onward}")
    return "\n".join(lines)
