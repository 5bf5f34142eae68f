"""`advisor ask`: an interview that ends in a case file and the answer to it."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence

from advisor.models.case import Case
from advisor.models.parts import WHOLE
from advisor.reading import read_case, write_case
from advisor.reading.problems import InputFault, Place, fault

ENDINGS = (".yaml", ".yml")
WANTED = "a name of a new file that ends in .yaml"
DEFAULT = "case.yaml"


def run(words: Sequence[str], output: str | None, *, plain: bool, units: str | None) -> int:
    """Interview, write the case, print the answer. Raises InputFault.

    Exit code 0 when the case is written, 130 after Ctrl-C, 2 where there is nobody to ask.
    """
    if not at_a_terminal():
        raise fault(Place("ask"), "needs a terminal to ask at", "a case file or field=value words to `advisor advise`")
    if output is not None:
        _usable(output)
    return _Session(words, output, plain=plain, units=units).run()


def at_a_terminal() -> bool:
    """Whether there is somebody who reads and types."""
    return sys.stdin.isatty() and sys.stdout.isatty()


def _usable(path: str) -> str:
    """The name of a case file that may be written. Raises InputFault."""
    if not path.lower().endswith(ENDINGS):
        raise fault(Place(path), "has an ending that names no case file", WANTED)
    if os.path.lexists(path):
        raise fault(Place(path), "is there already", WANTED)
    return path


class _Session:
    def __init__(self, words: Sequence[str], output: str | None, *, plain: bool, units: str | None) -> None:
        from advisor.advice.advise import default_engine
        from advisor.advice.trial import Bench
        from advisor.ask.dialogue import Dialogue
        from advisor.ask.interview import Interview
        from advisor.ask.questions import value_of
        from advisor.ask.saved import Saved, place

        files = [word for word in words if "=" not in word]
        if len(files) > 1:
            raise fault(Place(files[1]), "is a second case file", "one case file and any number of field=value words")
        base = read_case(files[0], [word for word in words if "=" in word], sys.stdin) if files else None
        pairs = [] if files else [word.partition("=") for word in words]
        start = {name.strip(): value_of(name.strip(), text) for name, _, text in pairs}
        self.words, self.output, self.plain = words, output, plain
        self.units = units or (base.units if base is not None else None) or "metric"
        self.saved = Saved(place(output), words)
        interview = Interview(Bench(default_engine()), start, base)
        self.dialogue = Dialogue(interview, self.saved, self.units, input, print)

    def run(self) -> int:
        earlier = self.dialogue.resume()
        if earlier:
            print(f"Going on where it was stopped, with {earlier} answer{'s' * (earlier > 1)}. restart: begin anew.")
        try:
            case = self.dialogue.run()
            print("\nNo answer to a question that is left would change verdict, hold or speed.")
            path = self._write(case)
        except EOFError:
            return self._stopped("the input ended", 2)
        except KeyboardInterrupt:
            return self._stopped("stopped", 130)
        self.saved.remove()
        self._show(path)
        return 0

    def _stopped(self, how: str, code: int) -> int:
        words = " ".join(repr(word) if set(word) & set(" []'") else word for word in self.words)
        again = f"advisor ask {words}".strip() + (f" -o {self.output}" if self.output else "")
        kept = self.saved.path.exists()
        sys.stderr.write(
            f"\n{how}; {'what you said is kept: ' + again + ' goes on from here' if kept else 'nothing is kept'}\n"
        )
        return code

    def _write(self, case: Case) -> str:
        from advisor.report.output import OutputFault, write_whole

        path = self.output
        while True:
            try:
                name = path or input(f"Where shall the case go? [{DEFAULT}] ").strip() or DEFAULT
                write_whole(_usable(name), write_case(case))
            except (InputFault, OutputFault) as wrong:
                print(str(wrong))
                path = None
                continue
            return name

    def _show(self, path: str) -> None:
        """The answer to the file as it was written."""
        from advisor.advice.whole import answer_for
        from advisor.report.screen import show

        case = read_case(path)
        answer = answer_for(case, WHOLE)
        print()
        show(answer, case.heading, self.units, sys.stdout, plain=self.plain, holds=False)
        print(f"\nWritten to {path}: advisor advise {path} gives this answer again.")
