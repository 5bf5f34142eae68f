"""Situations nobody would type, and some that somebody would on purpose: any field, hostile texts, broken files.

A question is what is given to the reader: `read` turns it into a case or raises InputFault.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from functools import cache
from typing import NamedTuple

from advisor.models import material, wood_names
from advisor.models.case import Case
from advisor.models.fields import Shape, Spec, field_names, spec_at
from advisor.reading import InputFault, read_case, read_text, write_case
from advisor.units import PERCENT, SLOPE
from tests.practice.test_materials_refused import REFUSED, SMALL_ENOUGH
from tests.whole.situations import NONSENSE, situation

MOST_FIELDS = 25  # of the hundred and more there are
HOSTILE = (
    "<script>alert(1)</script>", "{ceiling}", "{0}", "%s%n", "'; drop table cases; --", "../../etc/passwd", "\x1b[2J",
    "\u202egpj.exe", "a" * 100, "a" * 101, "é" * 50, "☃", "\u0000", "$(reboot)", "`ls`", "=1+1", "\u2028", "🪵" * 20,
    "none", "null", "nan", "true", "[]", "{}", "unknown", "sound", "__proto__", "id", "sid", "$ex", "-0", "ash\u00a0",
)  # fmt: skip
SPOILERS = (
    "\0",
    "\t",
    "{",
    "[",
    "]",
    ":",
    "\\",
    '"',
    "&a ",
    "*a",
    "!!python/object ",
    "---\n",
    "\ufeff",
    "1e400",
    "\r",
)


class Question(NamedTuple):
    """Words of a command, or the text of a YAML file."""

    words: tuple[str, ...] = ()
    text: str = ""

    def read(self) -> Case:
        """The case. Raises InputFault."""
        return read_text(self.text, "yaml", "case.yaml") if self.text else read_case(None, self.words)


@cache
def names() -> tuple[str, ...]:
    """Names of every wood and every other material there is."""
    return (*wood_names.woods(), *(entry.title for entry in material.all_materials()))


def value(spec: Spec, dice: random.Random) -> str:
    """Any value a field may hold, as text; often one of its ends."""
    if spec.item is not None:
        least, most = spec.size
        count = dice.randint(least, min(most, least + 7))
        if spec.item.words:
            return f"[{', '.join(dice.sample(spec.item.words, min(count, len(spec.item.words))))}]"
        return f"[{', '.join(value(spec.item, dice) for _ in range(count))}]"
    if spec.words and (spec.quantity is None or dice.random() < 0.5):
        return dice.choice(spec.words)
    if spec.shape is Shape.FLAG:
        return dice.choice(("yes", "no"))
    if spec.quantity is None:
        return dice.choice(names()).replace(",", "")
    if spec.shape is Shape.COUNT:
        return str(dice.randint(int(spec.quantity.least), int(spec.quantity.most)))
    if spec.shape is Shape.PAIR:
        return f"{dice.uniform(0, 100):.1f} mm:{dice.uniform(5, 50):.1f} mm"
    return _quantity(spec, dice)


def _quantity(spec: Spec, dice: random.Random) -> str:
    assert spec.quantity is not None
    kind, least, most = spec.quantity
    low = max(least, most * 1e-6)
    number = dice.choice((least, most, low * (most / low) ** dice.random(), low * (most / low) ** dice.random()))
    if kind is SLOPE:
        return f"1:{number!r}"
    return f"{number!r}%" if kind is PERCENT else f"{number!r} {kind.unit}"


def absurd(dice: random.Random) -> Question:
    """Any fields at all, each within its own limits."""
    fields = [name for name in field_names(Case) if not name.startswith("expect.")]
    chosen = dice.sample(fields, dice.randint(0, MOST_FIELDS))
    words = situation(dice)[:3]
    for name in chosen:
        spec = spec_at(Case, tuple(name.split(".")))
        assert spec is not None
        words.append(f"{name}={value(spec, dice)}")
    return Question(_agreeing(words))


def _agreeing(words: list[str]) -> tuple[str, ...]:
    """The words without those that the reader finds to contradict others."""
    while len(words) > 3:
        try:
            read_case(None, words)
        except InputFault as fault:
            wrong = {name for problem in fault.problems for name in problem.field.split(" and ")}
            kept = [word for word in words if word.partition("=")[0] not in wrong or word in words[:3]]
            if len(kept) == len(words):
                break
            words = kept
        else:
            break
    return tuple(words)


def planted(dice: random.Random) -> Question:
    """A situation with a refusal planted in it."""
    fields = {word.partition("=")[0]: word for word in situation(dice)}
    fields.update({word.partition("=")[0]: word for word in REFUSED[dice.choice(tuple(REFUSED))]})
    return Question(tuple(word for key, word in fields.items() if key not in SMALL_ENOUGH))


def any_material(dice: random.Random) -> Question:
    """A situation with any material the tables have, mixed ones and what the person reacted to included."""
    words = situation(dice)
    words[0] = f"work.material={dice.choice(names())}"
    if dice.random() < 0.2:
        words.append(f"work.parts=[{', '.join(name.replace(',', '') for name in dice.sample(names(), 2))}]")
    if dice.random() < 0.3:
        words.append(f"person.reacted_before=[{dice.choice((words[0].partition('=')[2], *names())).replace(',', '')}]")
    return Question(tuple(words))


def hostile(dice: random.Random) -> Question:
    """Texts that something below might obey, in fields that take a text and in those that take none."""
    words = situation(dice)
    for _ in range(dice.randint(1, 3)):
        place = dice.randrange(len(words)) if dice.random() < 0.3 else 0
        words[place] = words[place].partition("=")[0] + "=" + dice.choice((*HOSTILE, *NONSENSE))
    words.append(f"title={dice.choice(HOSTILE)}")
    return Question(tuple(words))


def spoiled_file(dice: random.Random) -> Question:
    """A case file of which now and then a few signs are lost, doubled or strange."""
    words = situation(dice)
    try:
        text = write_case(read_case(None, words))
    except InputFault:
        return Question(tuple(words))
    for _ in range(dice.choice((0, 1, 1, 3))):
        at = dice.randrange(len(text))
        cut = dice.choice((0, 1, 1, 10))
        text = text[:at] + dice.choice((*SPOILERS, "", "", text[at : at + 30], "1", "a", "\n")) + text[at + cut :]
    return Question(text=text or "\n")


MAKERS: tuple[tuple[float, Callable[[random.Random], Question]], ...] = (
    (0.60, lambda dice: Question(tuple(situation(dice)))),
    (0.10, any_material),
    (0.05, planted),
    (0.10, absurd),
    (0.08, hostile),
    (0.07, spoiled_file),
)


def question(dice: random.Random) -> Question:
    """Sound, absurd or hostile."""
    maker = dice.choices([maker for _, maker in MAKERS], [share for share, _ in MAKERS])[0]
    return maker(dice)
