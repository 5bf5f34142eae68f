"""Words and signs that must never come out."""

from __future__ import annotations

import math
import re

from advisor.models.case import Case
from advisor.models.fields import field_names
from tests.whole.forbidden.kinds import Answer, never, numbers, texts

PROMISES = re.compile(
    r"food[- ]?safe|non-?toxic|not toxic|harmless|perfectly safe|completely safe|no risk|cannot hurt|risk-free"
    r"|guaranteed|safe to eat"
)
DENIED = ("no limit value makes it harmless", "no program can call a wood harmless")
LEFT_OPEN = re.compile(r"\{[a-z_]*\}|\bnan\b|\binf\b|\bNone\b")
SIGNED = re.compile(r"_(rpm|n|nm|j|kg)$")
FIELDS = frozenset(field_names(Case))
KEPT = ("work.material", "hold.screws")  # which wood of that name was taken; screws given for another way of holding


def _own(case: Case, found: Answer) -> str:
    """All texts of the answer without those the person typed."""
    typed = [case.work.material, *(case.work.parts or ()), *(case.person.reacted_before or ()), case.title or ""]
    said = "\n".join(texts(found))
    for text in (*DENIED, *typed):
        said = said.replace(text, " ") if text else said
    return said


@never
def a_promise_of_safety(case: Case, found: Answer) -> bool:
    """No finish, wood or speed is safe for everybody, and nobody may say so."""
    return PROMISES.search(_own(case, found).lower()) is not None


@never
def no_cautions(case: Case, found: Answer) -> bool:
    """The usual cautions are never left out."""
    del case
    return not found["cautions"]


@never
def no_word_of_the_eyes(case: Case, found: Answer) -> bool:
    """Safety glasses under a shield, always."""
    del case
    return "eyes" not in {entry["rule"] for entry in found["cautions"]}


@never
def a_text_left_open(case: Case, found: Answer) -> bool:
    """A gap in a sentence is where the number should have been."""
    return "{" not in case.work.material and LEFT_OPEN.search(_own(case, found)) is not None


@never
def an_empty_text(case: Case, found: Answer) -> bool:
    """A reason, caution or check that says nothing hides the one that does."""
    del case
    said = [entry["text"] for part in ("reasons", "cautions") for entry in found[part]]
    return not all(text.strip() for text in (*said, *found["checks"], *found["notes"]))


@never
def signs_that_a_terminal_obeys(case: Case, found: Answer) -> bool:
    """What a person typed is shown and never obeyed."""
    del case
    return any(not text.isprintable() for text in texts(found))


@never
def a_number_that_is_none(case: Case, found: Answer) -> bool:
    """What could not be worked out is left out and said; it is neither null nor infinite."""
    del case
    return any(value is None or not math.isfinite(value) for _, value in numbers(found))


@never
def a_number_below_nothing(case: Case, found: Answer) -> bool:
    """No speed, force, torque, energy or mass is negative."""
    del case
    return any(SIGNED.search(name) and value is not None and value < 0 for name, value in numbers(found))


@never
def an_assumption_in_place_of_what_was_said(case: Case, found: Answer) -> bool:
    """What a person measured is not overruled by a guess."""
    return any(
        entry["field"] in FIELDS and not entry["field"].startswith(KEPT) and case.at(entry["field"]) is not None
        for entry in found["assumed"]
    )


@never
def something_unchecked_without_what_it_is(case: Case, found: Answer) -> bool:
    """Who is told that something was not checked must be told what."""
    del case
    return any(not entry["what"].strip() for entry in found["could_not_check"])
