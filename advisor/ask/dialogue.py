"""The interview as it is read and typed: questions out, lines in."""

from __future__ import annotations

import re
import signal
from collections.abc import Callable, Iterator
from contextlib import contextmanager

from advisor.ask.interview import REQUIRED, Interview, Next
from advisor.ask.questions import Asked, questions
from advisor.ask.saved import Said, Saved
from advisor.ask.typed import BACK, ENOUGH, RESTART, UNKNOWN, WHY, plain, values_of
from advisor.models.case import Case
from advisor.models.fields import Shape
from advisor.models.spoken import spoken
from advisor.reading.problems import InputFault
from advisor.report.comparison import outcome_changes
from advisor.report.numbers import limit_down
from advisor.report.terminal import wrapped
from advisor.report.values import said as said_of

HOW = (
    "Enter alone: don't know. why: why it is asked. back: the question before. enough: no more questions. "
    "Ctrl-C: stop, and go on another time."
)


@contextmanager
def _not_now() -> Iterator[None]:
    """Ctrl-C waits until the model has been tried: the engine is not to be torn out of a request."""
    heard: list[int] = []
    before = signal.signal(signal.SIGINT, lambda number, _: heard.append(number))
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)
    if heard:
        raise KeyboardInterrupt


class Dialogue:
    """One interview with one person. `read` takes a prompt and returns a line, `write` takes lines to show."""

    def __init__(
        self, interview: Interview, saved: Saved, units: str, read: Callable[[str], str], write: Callable[[str], None]
    ) -> None:
        self.interview, self.saved, self.units, self.read, self.write = interview, saved, units, read, write
        self.said: list[Said] = []
        self.warned = False

    def resume(self) -> int:
        """Answer again what was answered before; the number of answers."""
        known = {question.id: question for question in questions()}
        for entry in self.saved.load():
            question = known.get(entry.question)
            fields = tuple(field for field in question.fields if field.name in entry.fields) if question else ()
            if question is None or not fields:
                break
            try:
                self.interview.answer(Next(question, fields, None), values_of(entry.line, fields))
            except InputFault:
                break
            self.said.append(entry)
        return len(self.said)

    def run(self) -> Case:
        """Ask until no answer would change anything. Raises EOFError or KeyboardInterrupt; all is kept by then."""
        self._tell(HOW)
        asked: Next | None = self._next()
        shown: Next | None = None
        while asked is not None:
            if asked is not shown:
                self._ask(asked)
                shown = asked
            line = self.read("> ")
            word = plain(line)
            if word in WHY:
                self._tell(self._why(asked))
            elif word == BACK:
                asked = self._back() or asked
            elif word == RESTART:
                asked = self._restart()
            elif word == ENOUGH and self.interview.case is not None:
                break
            elif self._take(asked, line):
                asked = self._next()
        case = self.interview.case
        assert case is not None
        return case

    def _next(self) -> Next | None:
        with _not_now():
            return self.interview.next()

    def _take(self, asked: Next, line: str) -> bool:
        """Note an answer; False where it was none, and it was said why."""
        try:
            needed = [field.name for field in asked.fields if field.name in REQUIRED]
            values = values_of("" if plain(line) in UNKNOWN else line, asked.fields, needed=needed)
            self.interview.answer(asked, values)
        except InputFault as fault:
            self._tell(str(fault))
            return False
        self.said.append(Said(asked.question.id, tuple(field.name for field in asked.fields), line))
        self._keep()
        case = self.interview.case
        if case is not None:
            with _not_now():
                now = self.interview.bench.outcome(case)
            speed = f"start at {limit_down(now.start_rpm)} rpm" if now.start_rpm else "no speed"
            self._tell(f"So far: {now.verdict.replace('-', ' ')}; {spoken(now.hold)}; {speed}.")
        return True

    def _keep(self) -> None:
        why = self.saved.save(self.said)
        if why is not None and not self.warned:
            self.warned = True
            self._tell(f"This interview cannot be kept in {self.saved.path} ({why}): Ctrl-C would lose it.")

    def _back(self) -> Next | None:
        before = self.interview.back()
        if before is None:
            self._tell("This is the first question.")
            return None
        self.said.pop()
        self._keep()
        return before

    def _restart(self) -> Next | None:
        while self.interview.back() is not None:
            self.said.pop()
        self._keep()
        return self._next()

    def _ask(self, asked: Next) -> None:
        self.write("")
        self._tell(f"{len(self.said) + 1}. {asked.question.text}", lead="")
        if len(asked.fields) == 1:
            self._tell(f"{asked.fields[0].about}: {self._accepted(asked.fields[0])}", lead="   ")
            return
        for number, field in enumerate(asked.fields, 1):
            name = field.name.rpartition(".")[2].replace("_", " ")
            self._tell(f"{name} ({field.about}): {self._accepted(field)}", lead=f"   {number} ")
        self._tell("in this order with commas between; - for what you don't know", lead="   ")

    def _accepted(self, field: Asked) -> str:
        """What may be answered, briefly."""
        spec = field.spec
        case = self.interview.case
        if field.name in ("hold.method", "hold.kit") and case is not None:
            return f"{', '.join(self._best(case))} would be the first for it; all: advisor list methods"
        if field.name == "work.material":
            return "the more exactly, the better"
        if spec.shape is Shape.LIST and spec.item is not None:
            return f"one or more of {', '.join(spec.item.words)}" if spec.item.words else "names, commas between"
        if spec.quantity is not None and spec.shape is not Shape.COUNT:
            examples = re.split(r", | or ", spec.quantity.kind.example)
            metric = next((text for text in examples if text.endswith(" mm")), examples[-1])
            return ", ".join(dict.fromkeys((examples[0], metric, *spec.words)))
        return spec.accepted

    def _best(self, case: Case) -> list[str]:
        from advisor.advice.advise import advise

        with _not_now():
            return [hold.method for hold in advise(case, self.interview.bench.engine, beyond=False).judgement.holds[:5]]

    def _why(self, asked: Next) -> str:
        reason = asked.reason
        if reason is None:
            return asked.question.why
        tried = [(reason.field, reason.value), *([reason.beside] if reason.beside is not None else [])]
        told = " and ".join(f"{name} {said_of(name, value, self.units)}" for name, value in tried)
        return f"{asked.question.why} With {told}: {outcome_changes(reason.before, reason.after, self.units)}"

    def _tell(self, text: str, lead: str = "  ") -> None:
        for part in text.splitlines():
            for line in wrapped(part, lead):
                self.write(line.text)
