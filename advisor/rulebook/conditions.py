"""The words a rule's condition is written in. A condition is data: it can be printed, changed by a test, and handed on.

A condition looks at one fact: its kind, and any number of its keys, all of which must fit. There is no word for joining
two facts and none for "or": what must be compared is put into one fact before, and each condition has its own rule.
"""

import math
from collections.abc import Iterator
from typing import Literal, NamedTuple, TypeAlias

Reads: TypeAlias = Literal["text", "number", "either"]
Sign: TypeAlias = Literal["below", "at_most", "above", "at_least"]
Value: TypeAlias = str | int | float

UNKNOWN = "unknown"
LONGEST_WORD = 200
LEAST, MOST = 1e-4, 1e15
FIGURES = 9
RESERVED = frozenset({"kind", "id", "sid"})
SIGN_WORDS: dict[Sign, str] = {"below": "below", "at_most": "at most", "above": "above", "at_least": "at least"}


class BookError(Exception):
    """A rule, or the book of rules, is not written as it must be; the message says where and what is accepted."""


def rounded(number: float) -> float:
    """The number to nine significant figures, as facts and constants are compared."""
    return float(f"{number:.{FIGURES}g}")


def in_words(value: str | float) -> str:
    """A constant as a person writes it: no exponent, no idle decimals."""
    return value if isinstance(value, str) else f"{value:.10f}".rstrip("0").rstrip(".")


def _number(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not math.isfinite(value):
        raise BookError(f"{value!r} is not a number; a comparison takes a plain finite number")
    if value and not LEAST <= abs(value) < MOST:
        raise BookError(f"{value!r} is out of range; a constant is 0 or between 0.0001 and 1e15 in size")
    return rounded(value)


def _constant(value: object) -> str | float:
    if isinstance(value, bool):
        raise BookError(f"{value!r} is not a word of a fact; write 'yes' or 'no'")
    if not isinstance(value, str):
        return _number(value)
    if not value.strip() or not value.isprintable() or len(value) > LONGEST_WORD:
        raise BookError(f"{value!r} is not a word; accepted: 1 to {LONGEST_WORD} printable characters")
    return value


class Equal(NamedTuple):
    """The key has this value. A text nobody gave reads `unknown`."""

    value: str | float

    @property
    def reads(self) -> Reads:
        """What kind of value the key must hold."""
        return "text" if isinstance(self.value, str) else "number"

    @property
    def words(self) -> str:
        """The test in plain words."""
        return f"is {in_words(self.value)}"


class Compare(NamedTuple):
    """The number under the key lies on one side of a bound. A number nobody gave fits no comparison."""

    sign: Sign
    bound: float

    @property
    def reads(self) -> Reads:
        """What kind of value the key must hold."""
        return "number"

    @property
    def words(self) -> str:
        """The test in plain words."""
        return f"{SIGN_WORDS[self.sign]} {in_words(self.bound)}"


class Among(NamedTuple):
    """The value is one of these, or none of these. A text nobody gave reads `unknown`, so `none_of` fits it unless
    `unknown` is listed; a number nobody gave fits neither."""

    values: tuple[str | float, ...]
    inside: bool

    @property
    def reads(self) -> Reads:
        """What kind of value the key must hold."""
        return "text" if isinstance(self.values[0], str) else "number"

    @property
    def words(self) -> str:
        """The test in plain words."""
        names = [in_words(value) for value in self.values]
        listed = ", ".join(names[:-1]) + " or " + names[-1] if len(names) > 1 else names[0]
        return f"is {'' if self.inside else 'none of '}{listed}"


class Known(NamedTuple):
    """Whether anybody knows the value: a number is there, a text is not `unknown`."""

    known: bool

    @property
    def reads(self) -> Reads:
        """What kind of value the key must hold: the other rules tell."""
        return "either"

    @property
    def words(self) -> str:
        """The test in plain words."""
        return "is known" if self.known else "is not known"


Test: TypeAlias = Equal | Compare | Among | Known


class AllOf(NamedTuple):
    """Several tests of one key, all of which must fit."""

    tests: tuple[Test, ...]


Matcher: TypeAlias = Test | AllOf

present = Known(True)
absent = Known(False)


def below(bound: float) -> Compare:
    """Less than the bound."""
    return Compare("below", _number(bound))


def at_most(bound: float) -> Compare:
    """Less than the bound or equal to it."""
    return Compare("at_most", _number(bound))


def above(bound: float) -> Compare:
    """More than the bound."""
    return Compare("above", _number(bound))


def at_least(bound: float) -> Compare:
    """More than the bound or equal to it."""
    return Compare("at_least", _number(bound))


def between(low: float, high: float) -> AllOf:
    """At least the first and below the second, so that neighboring bands touch and never overlap."""
    least, most = at_least(low), below(high)
    if not least.bound < most.bound:
        raise BookError(f"between({low!r}, {high!r}) can never hold; the first must be below the second")
    return AllOf((least, most))


def _among(values: tuple[Value, ...], inside: bool) -> Among:
    name = "one_of" if inside else "none_of"
    constants = tuple(_constant(value) for value in values)
    if not constants:
        raise BookError(f"{name}() names nothing; it takes at least one value")
    if len({type(value) for value in constants}) > 1:
        raise BookError(f"{name}{values!r} mixes texts and numbers; a key holds one or the other")
    if len(set(constants)) < len(constants):
        raise BookError(f"{name}{values!r} names a value twice; each may stand once")
    return Among(constants, inside)


def one_of(*values: Value) -> Among:
    """Equal to one of the values. Each may stand once."""
    return _among(values, True)


def none_of(*values: Value) -> Among:
    """Equal to none of the values. A text nobody gave reads `unknown` and fits, unless `unknown` is named too."""
    return _among(values, False)


def all_of(*tests: Matcher) -> AllOf:
    """Several tests of one key at once."""
    flat: list[Test] = []
    for test in tests:
        flat += test.tests if isinstance(test, AllOf) else (_test(test),)
    if len(flat) < 2:
        raise BookError("all_of() joins at least two tests of one key")
    return AllOf(tuple(flat))


def _test(test: object) -> Test:
    if isinstance(test, (Equal, Compare, Among, Known)):
        return test
    if isinstance(test, When):
        raise BookError("a condition looks at one fact; put what must be compared into that fact")
    return Equal(_constant(test))


class When(NamedTuple):
    """A condition over one fact: its kind and the tests of its keys, in the order they were written."""

    kind: str
    keys: tuple[tuple[str, AllOf], ...]

    def tests(self) -> Iterator[tuple[str, Test]]:
        """Each key with each single test of it."""
        for key, matcher in self.keys:
            for test in matcher.tests:
                yield key, test

    @property
    def words(self) -> str:
        """The condition in plain words."""
        parts = [f"{key} {' and '.join(test.words for test in matcher.tests)}" for key, matcher in self.keys]
        return f"{self.kind}: {'; '.join(parts) or 'always'}"


def fact(kind: str, /, **tests: Value | Matcher) -> When:
    """The condition of a rule: one fact of this kind whose keys fit all the tests.

    A plain word or number means "equal to it". Raises BookError for anything the engine must not be given.
    """
    if not isinstance(kind, str) or not kind.replace("-", "_").isidentifier():
        raise BookError(f"{kind!r} is not a kind of fact; a kind is one word")
    keys = []
    for key, test in tests.items():
        if key in RESERVED:
            raise BookError(f"the key {key!r} belongs to the engine; choose another")
        keys.append((key, test if isinstance(test, AllOf) else AllOf((_test(test),))))
    return When(kind, tuple(keys))
