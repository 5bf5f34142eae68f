"""What was typed into the form -> the words of a question."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from urllib.parse import parse_qsl, urlencode

from advisor.models.case import Case
from advisor.models.fields import Shape, spec_at
from advisor.models.parts import WHOLE

MOST_FIELDS = 400
ASKS: dict[str, tuple[str, tuple[str, ...]]] = {
    "advise": ("Whole answer", WHOLE),
    "mount": ("May it be mounted?", ()),
    "hold": ("Which hold?", ("holding",)),
    "speed": ("How fast?", ("holding", "speed")),
    "thrust": ("Which thrust?", ("holding", "thrust", "centers")),
}
"""The questions: what a person reads, and the parts of the answer they want."""


class TooMuch(Exception):  # noqa: N818 -- what is wrong with the form
    """More fields than any case has."""


@dataclass(frozen=True)
class Question:
    """What is asked, each field as it was typed, the form it is compared with, and whether every field is wanted."""

    ask: str = "advise"
    typed: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    before: str = ""
    everything: bool = False

    @property
    def parts(self) -> tuple[str, ...]:
        """The parts of the answer that this question wants."""
        return ASKS[self.ask][1]

    @property
    def words(self) -> tuple[str, ...]:
        """The same as words of a command."""
        return tuple(f"{name}={_text(name, values)}" for name, values in self.typed.items())

    @property
    def again(self) -> str:
        """The form in one line, to be compared with the next one."""
        pairs = [(name, value) for name, values in self.typed.items() for value in values]
        return urlencode([("ask", self.ask), *pairs])


def _text(name: str, values: tuple[str, ...]) -> str:
    spec = spec_at(Case, tuple(name.split(".")))
    several = ", ".join(values)
    if spec is None or spec.shape is not Shape.LIST or several.lstrip().startswith("["):
        return several
    return f"[{several}]"


def read_form(body: bytes) -> Question:
    """The question in a form as browsers send it; empty fields were not said. Raises TooMuch."""
    try:
        pairs = parse_qsl(body.decode("utf-8", "replace"), errors="replace", max_num_fields=MOST_FIELDS)
    except ValueError:
        raise TooMuch(f"More than {MOST_FIELDS} fields: a case has fewer.") from None
    return _question(pairs)


def _question(pairs: Iterable[tuple[str, str]]) -> Question:
    typed: dict[str, tuple[str, ...]] = {}
    own = {"ask": "advise", "before": "", "all": ""}
    for name, value in pairs:
        if name in own:
            own[name] = value
        elif value.strip():
            typed[name] = (*typed.get(name, ()), value)
    ask = own["ask"] if own["ask"] in ASKS else "advise"
    return Question(ask, typed, own["before"], own["all"] == "yes")
