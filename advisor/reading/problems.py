"""What is wrong with a case, said so that it can be put right."""

from collections.abc import Iterable, Sequence
from typing import NamedTuple

MOST_PRINTED = 30
LONGEST_QUOTE = 60


class Place(NamedTuple):
    """Where something was written: a file, or a word of the command, with line and column where there are any."""

    file: str
    line: int | None = None
    column: int | None = None


WORDS = Place("the words")


class Problem(NamedTuple):
    """One thing wrong with a case."""

    file: str | None
    line: int | None
    column: int | None
    field: str
    value: str | None
    message: str
    accepted: str | None = None
    nearest: str | None = None
    example: str | None = None

    def __str__(self) -> str:
        spot = [self.file] if self.file is not None else []
        spot += [f"line {self.line}"] if self.line is not None else []
        spot += [f"column {self.column}"] if self.column is not None else []
        given = quote(self.value) if self.value is not None else ""
        said = [", ".join(spot), self.field, f"{given} {self.message}".strip()]
        text = ": ".join(part for part in said if part)
        text += f"; write e.g. {self.example}" if self.example else ""
        text += f"; accepted: {self.accepted}" if self.accepted else ""
        return harmless(text + (f"; did you mean {self.nearest}?" if self.nearest else ""))


class InputFault(Exception):  # noqa: N818 -- the fault lies in the input, not in the program
    """The input is wrong; `problems` holds everything that is, and the text has a line for each."""

    def __init__(self, problems: Iterable[Problem]) -> None:
        self.problems = list(problems)
        super().__init__(self.problems)

    def __str__(self) -> str:
        lines = [str(problem) for problem in self.problems[:MOST_PRINTED]]
        if len(self.problems) > MOST_PRINTED:
            lines.append(f"and {len(self.problems) - MOST_PRINTED} more")
        return "\n".join(lines)


def fault(place: Place, message: str, accepted: str | None = None, value: str | None = None) -> InputFault:
    """A fault of a whole text, which stops the reading of it."""
    return InputFault([Problem(*place, "", value, message, accepted)])


def quote(value: str) -> str:
    """A value as it is shown: short and on one line."""
    short = value if len(value) <= LONGEST_QUOTE else value[: LONGEST_QUOTE - 1] + "…"
    return f"'{harmless(short)}'"


def harmless(text: str) -> str:
    """A text without anything that a terminal would obey; also file names and words may hold such signs."""
    return "".join(sign if sign.isprintable() else ascii(sign)[1:-1] for sign in text)


def nearest(word: str, known: Sequence[str]) -> str | None:
    """The known word most like the one given, None where none is like it."""
    from difflib import get_close_matches

    return next(iter(get_close_matches(word[:LONGEST_QUOTE].casefold(), known, n=1, cutoff=0.6)), None)
