"""What a rule is: a condition, an effect, what it says, what to do about it, what would change it, what it rests on."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from copy import copy
from dataclasses import dataclass
from enum import Enum
from typing import NamedTuple

from advisor.rulebook.conditions import BookError, Value, When, in_words

SECTIONS = ("What it looks at", "Why it matters", "What to do", "Does not apply", "Sources")
PRACTICE_KEY = "common-practice"
PRACTICE_TEXT = "common practice, no source"
WINDOWS = ("", "open", "narrow", "empty")
MOST_CHOICES = 12

_NAME = re.compile(r"\{([a-z][a-z0-9_]*)\}")
_LABEL = rf"^({'|'.join(SECTIONS)})(?:$|:|  )(.*)$"


class Effect(str, Enum):
    """What a rule does when it fires."""

    DO_NOT_MOUNT = "do-not-mount"
    ASK_FIRST = "ask-first"
    WITH_CARE = "go-with-care"
    REFUSE = "refused"
    NOT_ADVISED = "not-advised"
    HOLD_WITH_CARE = "with-care"
    SUITS = "suits"
    REACH = "reach"
    CAUTION = "caution"
    CHECK = "check"
    NOTE = "note"
    COULD_NOT_CHECK = "could-not-check"

    def __str__(self) -> str:
        return self.value


SILENT = (Effect.SUITS, Effect.REACH)
REFUSALS = (Effect.REFUSE, Effect.DO_NOT_MOUNT)


class MissingWord(BookError):  # noqa: N818 -- named for what is missing
    """A text names something that its fact does not carry."""


class Page(NamedTuple):
    """A rule's docstring: a title and the sections, in their order."""

    title: str
    sections: tuple[tuple[str, str], ...]

    @property
    def labels(self) -> tuple[str, ...]:
        """The labels found, in the order they stand."""
        return tuple(label for label, _ in self.sections)


def read_page(doc: str) -> Page:
    """Take a docstring apart. A section starts at the margin: its label, then a colon, two spaces or the line's end."""
    title, _, rest = doc.strip().partition("\n")
    sections: list[tuple[str, list[str]]] = []
    for line in rest.splitlines():
        found = re.match(_LABEL, line)
        if found is not None:
            sections.append((found[1], [found[2].strip()]))
        elif sections:
            sections[-1][1].append(line.strip())
    return Page(title.strip(), tuple((label, " ".join(filter(None, lines))) for label, lines in sections))


@dataclass(frozen=True)
class Rule:
    """One rule. Name, topic and docstring come from the file it stands in.

    when    the condition over one fact                effect  what it does when it fires
    says    text, {names} filled from the fact         do      the remedy, filled the same way
    opens   what would change the ruling               basis   keys of the sources it rests on
    order   methods best first, row its rank (REACH)   hard    a refusal that nothing switches off
    window  what it makes of the tailstock window: open, narrow, empty, or nothing
    Raises BookError where a part does not fit the others.
    """

    when: When
    effect: Effect
    says: str = ""
    do: str = ""
    opens: tuple[str, ...] = ()
    order: tuple[str, ...] = ()
    row: int = 0
    basis: tuple[str, ...] = (PRACTICE_KEY,)
    hard: bool = False
    window: str = ""
    name: str = ""
    topic: str = ""
    doc: str = ""

    def __post_init__(self) -> None:
        problem = next(self._problems(), None)
        if problem is not None:
            raise BookError(problem)

    def _problems(self) -> Iterator[str]:
        if not isinstance(self.when, When):
            yield f"when must be one fact(...), not {self.when!r}"
            return
        if not isinstance(self.effect, Effect):
            yield f"effect must be one of {', '.join(Effect)}, not {self.effect!r}"
        for part in ("opens", "order", "basis"):
            if not isinstance(getattr(self, part), tuple):
                yield f"{part} must be a tuple of texts, not {getattr(self, part)!r}"
        if not self.basis or not all(self.basis):
            yield f"basis names no source; it needs one key at least, for instance {PRACTICE_KEY!r}"
        if not self.says and self.effect not in SILENT:
            yield f"says is empty; only {' and '.join(SILENT)} may be silent"
        if (self.effect is Effect.REACH) != bool(self.order) or (self.row and not self.order):
            yield "order and row belong to the effect reach, which needs an order"
        if len(set(self.order)) < len(self.order):
            yield f"order names a method twice: {', '.join(self.order)}"
        if self.hard and self.effect not in REFUSALS:
            yield f"hard belongs to a refusal ({' or '.join(REFUSALS)}), not to {self.effect}"
        if self.window not in WINDOWS:
            yield f"window must be open, narrow or empty, not {self.window!r}"
        if sum(1 for _, test in self.when.tests() if getattr(test, "inside", False)) > MOST_CHOICES:
            yield f"more than {MOST_CHOICES} one_of() in one condition; put a derived word into the fact"
        yield from self._text_problems()

    def _text_problems(self) -> Iterator[str]:
        for part, text in (("says", self.says), ("do", self.do)):
            if "{" in (rest := _NAME.sub("", text)) or "}" in rest:
                yield f"{part} has a brace that is no {{name}}: {text!r}"

    def placed(self, name: str, topic: str, doc: str) -> Rule:
        """The same rule, checked already, as it stands in its file."""
        twin = copy(self)
        for part, value in (("name", name), ("topic", topic), ("doc", doc)):
            object.__setattr__(twin, part, value)  # frozen for everybody else
        return twin

    def names(self) -> frozenset[str]:
        """The names its texts take from the fact."""
        return frozenset(_NAME.findall(self.says + self.do))

    def fill(self, text: str, values: Mapping[str, Value], words: Mapping[str, str]) -> str:
        """The text with its {names} filled: from the words, else from the values (numbers to three figures).

        Raises MissingWord naming the rule and what the fact carries.
        """

        def one(found: re.Match[str]) -> str:
            name = found[1]
            if name in words:
                return words[name]
            if name not in values:
                carried = ", ".join(sorted({*words, *values})) or "nothing"
                raise MissingWord(f"rule {self.name}: no word for {{{name}}} in {text!r}; the fact carries {carried}")
            value = values[name]
            return value if isinstance(value, str) else in_words(float(f"{value:.3g}"))

        return _NAME.sub(one, text)

    def explain(self) -> str:
        """The page about the rule: title, what its docstring says, when it fires, what it then does and says."""
        page = read_page(self.doc)
        parts = [*page.sections, ("Fires when", self.when.words), ("Then", self._then())]
        parts += [("Says", self.says), ("Remedy", self.do), ("Order", ", ".join(self.order))]
        parts += [("What would change it", ", ".join(self.opens)), ("Basis", ", ".join(self.basis))]
        body = "\n".join(f"{label}\n    {text}" for label, text in parts if text)
        return f"{self.name} ({self.topic})\n{page.title}\n\n{body}\n"

    def _then(self) -> str:
        marks = [str(self.effect)]
        if self.hard:
            marks.append("nothing switches it off")
        if self.window:
            marks.append(f"the tailstock window is {self.window}")
        return ", ".join(marks)


def page_problems(rule: Rule) -> Iterator[str]:
    """What is missing from a rule's docstring."""
    page = read_page(rule.doc)
    if not page.title:
        yield "has no docstring that starts with a title line"
        return
    if page.labels != SECTIONS:
        found = ", ".join(page.labels) or "none"
        yield f"its docstring has the sections {found}; needed, in this order: {', '.join(SECTIONS)}"
        return
    yield from (f"its section {label!r} is empty" for label, text in page.sections if not text)
    marked = PRACTICE_TEXT in page.sections[-1][1]
    if marked != (PRACTICE_KEY in rule.basis):
        yield f"Sources has {PRACTICE_TEXT!r} exactly when basis has {PRACTICE_KEY!r}; here only one of them has"
