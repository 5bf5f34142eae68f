"""Which question comes next: the one whose answer could change what the person does."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, NamedTuple

from advisor.advice.trial import Bench, Outcome, disagreements, laid
from advisor.ask.questions import Asked, Question, questions, tries, value_of
from advisor.models.case import Case, Work
from advisor.reading.problems import InputFault

REQUIRED = ("work.material", "work.diameter", "work.length")
SAME = 1e-6
Differs = Callable[[Outcome, Outcome], bool]


class Reason(NamedTuple):
    """An answer that was tried, beside what other field's value if any, and what it made of the outcome."""

    field: str
    value: Any
    beside: tuple[str, Any] | None
    before: Outcome
    after: Outcome


class Next(NamedTuple):
    """A question, the fields of it that matter, and why the first of them does; no reason for what must be known."""

    question: Question
    fields: tuple[Asked, ...]
    reason: Reason | None


class Given(NamedTuple):
    """An answer: the question, the fields that were asked for, and the values that were given."""

    question: Question
    fields: tuple[str, ...]
    values: dict[str, Any]


def decides(one: Outcome, other: Outcome) -> bool:
    """Another verdict, another hold, or another limit that governs."""
    return (one.verdict, one.hold, one.governed_by) != (other.verdict, other.hold, other.governed_by)


def moves(one: Outcome, other: Outcome) -> bool:
    """Another starting speed or ceiling."""
    pairs = ((one.start_rpm or 0.0, other.start_rpm or 0.0), (one.ceiling_rpm, other.ceiling_rpm))
    return any(abs(left - right) > SAME * max(left, right) for left, right in pairs)


class Interview:
    """What was said so far. `start` is what was known before the first question."""

    def __init__(self, bench: Bench, start: Mapping[str, Any], base: Case | None = None) -> None:
        self.bench, self.start, self.base = bench, dict(start), base
        self.answers: list[Given] = []
        self.turn = 0

    @property
    def said(self) -> dict[str, Any]:
        """Every field with a value, from the start or an answer."""
        found = dict(self.start)
        for given in self.answers:
            found.update(given.values)
        return found

    @property
    def case(self) -> Case | None:
        """The case so far; None before material and size are known."""
        said = self.said
        if self.base is not None:
            return laid(self.base, said)
        if any(name not in said for name in REQUIRED):
            return None
        work = Work(**{name.partition(".")[2]: said[name] for name in REQUIRED})
        return laid(Case(work=work), said)

    def open_fields(self, question: Question) -> tuple[Asked, ...]:
        """The fields of a question that nothing is known of and that were not asked for."""
        closed = {*self.said, *(name for given in self.answers for name in given.fields)}
        return tuple(field for field in question.fields if field.name not in closed and not self._in_base(field.name))

    def _in_base(self, name: str) -> bool:
        return self.base is not None and self.base.at(name) is not None

    def answer(self, asked: Next, values: Mapping[str, Any]) -> None:
        """Note an answer; a field that is left out stays as it is assumed. Raises InputFault for a contradiction."""
        names = tuple(field.name for field in asked.fields)
        self.answers.append(Given(asked.question, names, dict(values)))
        case = self.case
        against = disagreements(case) if case is not None else []
        if against:
            self.answers.pop()
            raise contradiction(against[0])

    def back(self) -> Next | None:
        """Take the last answer back; the question as it was asked."""
        if not self.answers:
            return None
        given = self.answers.pop()
        return Next(given.question, tuple(f for f in given.question.fields if f.name in given.fields), None)

    def next(self) -> Next | None:
        """The next question; None when no answer to any of those left changes anything a person acts on."""
        for question in questions():
            fields = self.open_fields(question)
            if any(field.name in REQUIRED for field in fields):
                return Next(question, fields, None)
        case = self.case
        assert case is not None
        return self._find(case, decides) or self._find(case, moves)

    def _find(self, case: Case, differs: Differs) -> Next | None:
        """The first question with an answer that makes a difference, from where the last one was found."""
        every, now = questions(), self.bench.outcome(case)
        for step in range(len(every)):
            turn = (self.turn + step) % len(every)
            fields = tuple(field for field in self.open_fields(every[turn]) if field.fits(case, now))
            first = next((found for field in fields if (found := self._reason(case, field, differs))), None)
            if first is not None:
                self.turn = turn
                return Next(every[turn], tuple(field for field in fields if self._belongs(case, field)), first)
        return None

    def _belongs(self, case: Case, field: Asked) -> bool:
        """Whether a field is asked for with the others of its question."""
        return field.always or any(self._reason(case, field, differs) for differs in (decides, moves))

    def _reason(self, case: Case, field: Asked, differs: Differs) -> Reason | None:
        """An answer that makes a difference, alone or beside another field's value that it needs."""
        company = ((name, value_of(name, text)) for name, text in field.company if self._is_open(name))
        for beside in (None, *company):
            base = case if beside is None else laid(case, dict([beside]))
            for value in tries(field, case):
                tried = laid(base, {field.name: value})
                if not disagreements(tried) and differs(self.bench.outcome(base), self.bench.outcome(tried)):
                    return Reason(field.name, value, beside, self.bench.outcome(base), self.bench.outcome(tried))
        return None

    def _is_open(self, name: str) -> bool:
        return any(field.name == name for question in questions() for field in self.open_fields(question))


def contradiction(fields: tuple[str, ...]) -> InputFault:
    """What was said does not go together with what was said before."""
    from advisor.reading.problems import Place, fault

    return fault(Place("this answer"), f"contradicts what was said: {' and '.join(fields)} do not go together")
