"""What can be asked, and which answers are tried in the model before it is."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from typing import Any, NamedTuple

from advisor.advice.trial import Outcome
from advisor.data.tables import Table, Text, load
from advisor.models.case import Case
from advisor.models.fields import Shape, Spec, spec_at, specs
from advisor.models.methods import method as method_record
from advisor.models.section import Section
from advisor.reading.fill import Filler
from advisor.reading.nodes import Fields
from advisor.reading.problems import InputFault, Place
from advisor.reading.words import lay_over
from advisor.situation import Situation, settle
from advisor.situation.shape import CHECKS
from advisor.units import System

ALWAYS = "always"
TABLE = Table(
    "interview.csv",
    (
        Text("group"),
        Text("field"),
        Text("question", required=False),
        Text("why", required=False),
        Text("tries", required=False),
        Text("with", required=False),
        Text("when", required=False),
        Text("parts", one_of=(ALWAYS, "as needed")),
        Text("source"),
    ),
    key=("field",),
    rows=84,
)
SHARE = re.compile(r"([\d.]+) ([DLMFO])")
MATERIAL = "[MATERIAL]"


class Asked(NamedTuple):
    """A field of a question, the answers to try, and other fields' values without which some change nothing.

    What a person has at hand at once is always asked for together, other fields only where they matter. `when` says
    for which work the field makes sense.
    """

    name: str
    tries: tuple[str, ...]
    company: tuple[tuple[str, str], ...]
    always: bool
    when: str

    def fits(self, case: Case, now: Outcome) -> bool:
        """Whether it makes sense for this case with the hold in use."""
        key, _, words = self.when.partition("=")
        if key == "method":
            return now.hold in words.split()
        if key == "family":
            return method_record(now.hold).family == words
        if key == "cracked":
            return bool(CHECKS & set(case.work.condition or ()))
        here = {"form": case.work.form, "operation": case.cut.operation}
        return not key or here[key] == words

    @property
    def about(self) -> str:
        """What the field holds, in the words of the case file."""
        model: type[Section] = Case
        *above, last = self.name.split(".")
        for part in above:
            section = specs(model)[part].section
            assert section is not None
            model = section
        return model.declared[last].description or last

    @property
    def spec(self) -> Spec:
        """How the field is written."""
        found = spec_at(Case, tuple(self.name.split(".")))
        assert found is not None
        return found


class Question(NamedTuple):
    """One question, which may fill more than one field."""

    id: str
    text: str
    why: str
    fields: tuple[Asked, ...]


@cache
def questions() -> tuple[Question, ...]:
    """All questions in the order in which they are thought of."""
    found: dict[str, Question] = {}
    for row in load(TABLE):
        company = [tuple(pair.split("=")) for pair in _parts(row.text("with"))]
        asked = Asked(
            row.text("field"),
            _parts(row.text("tries")),
            tuple((name, text) for name, text in company),
            row.text("parts") == ALWAYS,
            row.text("when"),
        )
        earlier = found.get(row.text("group"))
        if earlier is None:
            texts = (row.text("question"), row.text("why"))
            found[row.text("group")] = Question(row.text("group"), *texts, (asked,))
        else:
            found[earlier.id] = earlier._replace(fields=(*earlier.fields, asked))
    return tuple(found.values())


def _parts(text: str) -> tuple[str, ...]:
    return tuple(part.strip() for part in text.split(";") if part.strip())


def value_of(path: str, text: str, bare: System | None = None) -> Any:
    """The value of a field as it was typed. Raises InputFault."""
    spec = spec_at(Case, tuple(path.split(".")))
    if spec is not None and spec.shape is Shape.LIST and not text.lstrip().startswith("["):
        text = f"[{text}]"
    root = Fields(Place("your answer"))
    problems = lay_over(root, [f"{path}={text}"])
    filler = Filler(bare)
    filler.section(Case, root)
    problems += [problem for problem in filler.problems if problem.field == path]
    if problems:
        raise InputFault(problem._replace(file=None) for problem in problems[:1])
    return filler.found[path]


def tries(asked: Asked, case: Case) -> Iterator[Any]:
    """The answers to try for a field of this case."""
    situation: Situation | None = None
    for text in asked.tries:
        share = SHARE.fullmatch(text)
        if text == MATERIAL:
            yield (case.work.material,)
        elif share is None:
            yield value_of(asked.name, text)
        else:
            situation = situation or settle(case)
            yield _within(float(share[1]) * _measure(situation, share[2]), asked.spec)


def _measure(situation: Situation, sign: str) -> float:
    """Diameter, length, mass, offset of the piece, or the force of the cut."""
    body = situation.body
    sizes = {"D": body.diameter, "L": body.length, "M": body.mass, "O": body.offset, "F": situation.cut.force}
    return sizes[sign]


def _within(value: float, spec: Spec) -> float:
    assert spec.quantity is not None
    return min(max(value, spec.quantity.least), spec.quantity.most)
