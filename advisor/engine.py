"""Facts and a book of rules in, rulings out. The matching is done by durable_rules, which only this module knows.

The engine breaks on many things, most of them by ending the process, so nothing reaches it that it was not seen to
bear: each rule set holds rules of one kind and far fewer than it can take; a fact is flat, its numbers are finite and
plainly written, its keys hold one type; facts are asserted one by one under ids of our own; nothing is joined.
"""

import json
import math
import os
import threading
import time
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any, NamedTuple, Protocol

from advisor.rulebook import UNKNOWN, Among, Book, BookError, Compare, Equal, Reads, Rule, Test, Value
from advisor.rulebook.conditions import FIGURES, LONGEST_WORD

BUILD_COMMAND = "CPPFLAGS='-DPyEval_CallObject=PyObject_CallObject' pip install --no-cache-dir durable_rules"
REQUEST = "q"
RULES_PER_SET = 48
BRANCHES_PER_SET = 300
KEYS_PER_KIND = 200
SIGNS = {"below": "$lt", "at_most": "$lte", "above": "$gt", "at_least": "$gte"}
NO_HOST = None

Definition = dict[str, Any]


class EngineMissing(RuntimeError):  # noqa: N818 -- named for what is missing
    """The rules engine cannot be imported; the message says which command builds it."""


class EngineFault(RuntimeError):  # noqa: N818 -- a fault is what it is
    """The rules engine gave up on a request; nothing it said is used."""


class RunawayRules(EngineFault):
    """A fact made more rules fire than there are."""


class BadFact(ValueError):  # noqa: N818 -- named for what is bad
    """A fact holds something the engine must not be given; the message names kind, key and value."""


class UnreadFact(BadFact):
    """No rule reads facts of this kind."""


@dataclass(frozen=True)
class Fact:
    """One flat fact. `values` are matched; `words` never reach the engine and only fill the texts of rulings.

    A yes or no is the text "yes" or "no" (a bool becomes that). A text nobody gave may be left out: the rules then
    read `unknown`. A number nobody gave is left out and fits no comparison.
    """

    kind: str
    values: Mapping[str, Value]
    words: Mapping[str, str] = field(default_factory=dict)


class Ruling(NamedTuple):
    """A rule that fired, and the fact it fired on."""

    rule: Rule
    fact: Fact

    @property
    def text(self) -> str:
        """What the rule says about this fact. Raises MissingWord."""
        return self.rule.fill(self.rule.says, self.fact.values, self.fact.words)

    @property
    def remedy(self) -> str:
        """What the rule says to do. Raises MissingWord."""
        return self.rule.fill(self.rule.do, self.fact.values, self.fact.words)


class Fires(Protocol):
    """Whatever takes facts and returns rulings."""

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """The rulings on these facts, in the order of the facts and, for each, of the book."""
        ...


@lru_cache(maxsize=1)
def _durable() -> Any:
    """The engine's Python side. Raises EngineMissing."""
    try:
        import durable.engine
    except ImportError as error:
        raise EngineMissing(
            f"The rules engine durable_rules is missing or was built wrongly ({error}); this builds it: {BUILD_COMMAND}"
        ) from error
    # Its own clock warns on Python 3.12 and later, and a jump of the wall clock makes it drop rulings.
    durable.engine._unix_now = time.monotonic
    return durable.engine


def plain(number: float) -> str:
    """A number to nine significant figures without exponent: the engine misreads 1e-05 and 1e+16.

    Raises ValueError for nan and the infinities.
    """
    if not math.isfinite(number):
        raise ValueError(f"{number!r} is not finite")
    text = f"{number:.{FIGURES}g}"
    if "e" in text:
        places = FIGURES - 1 - int(text.partition("e")[2])
        return f"{float(text):.{max(places, 1)}f}"
    return text if "." in text else text + ".0"


def _branches(key: str, test: Test, reads: Reads) -> tuple[list[Definition], int]:
    """The engine's conditions for one test of one key, all of which must hold, and how many branches they open."""
    if isinstance(test, Equal):
        return [{key: test.value}], 1
    if isinstance(test, Compare):
        return [{SIGNS[test.sign]: {key: test.bound}}], 1
    if isinstance(test, Among):
        if not test.inside:
            return [{"$neq": {key: value}} for value in test.values], 1
        if len(test.values) == 1:
            return [{key: test.values[0]}], 1
        return [{"$or": [{key: value} for value in test.values]}], len(test.values)
    there, gone = {"$ex": {key: 1}}, {"$nex": {key: 1}}
    if reads == "number":
        return [there if test.known else gone], 1
    if test.known:
        return [there, {"$neq": {key: UNKNOWN}}], 1
    return ([{key: UNKNOWN}], 1) if reads == "text" else ([{"$or": [gone, {key: UNKNOWN}]}], 2)


def definition(rule: Rule, types: Mapping[str, Reads]) -> tuple[Definition, int]:
    """A rule's condition as the engine takes it, without its action, and the branches it opens.

    The kind comes first in the one `$and`, so that no absence is ever asked for alone.
    """
    parts: list[Definition] = [{"kind": rule.when.kind}]
    most = 1
    for key, test in rule.when.tests():
        found, branches = _branches(key, test, types[key])
        parts += found
        most = max(most, branches)
    if most > BRANCHES_PER_SET:
        raise BookError(f"rule {rule.name}: one_of() with {most} values; the engine bears {BRANCHES_PER_SET}")
    return {"all": [{"m": {"$and": parts}}]}, most


class _Fired(NamedTuple):
    fact: int
    rule: int


class _Trace:
    """What fired in the request under way, and what went wrong in an action."""

    def __init__(self) -> None:
        self.fired: list[_Fired] = []
        self.faults: list[BaseException] = []
        self.steps = 0

    def clear(self) -> None:
        """Forget the request."""
        self.fired, self.faults, self.steps = [], [], 0

    def note(self, rule: int, message_id: str) -> None:
        """Write down that a rule fired on a fact."""
        self.fired.append(_Fired(int(message_id[1:]), rule))


def _action(trace: _Trace, rule: int | None, most: int) -> Callable[[Any], None]:
    """The action of a rule; None is the catch-all. It takes exactly one parameter: two would make it asynchronous."""

    def act(closure: Any) -> None:
        trace.steps += 1
        if trace.steps > most:
            closure._completed = True  # the one way to stop the engine's loop from inside
            return
        if rule is None:
            return
        try:
            trace.note(rule, closure.m.id)
        except BaseException as error:  # the engine swallows whatever an action raises
            trace.faults.append(error)

    return act


class _RuleSet:
    """One rule set of the engine: rules of one kind, by their places in the book."""

    def __init__(self, name: str, rules: Sequence[tuple[int, Definition]], trace: _Trace) -> None:
        self.most = len(rules) + 1
        self.trace = trace
        self._name = name
        self._definitions = {f"r_{place}": {**body, "run": _action(trace, place, self.most)} for place, body in rules}
        # A fact that nothing matches would be an error to the engine.
        self._definitions["any"] = {"all": [{"m": {"$ex": {"kind": 1}}}], "run": _action(trace, None, self.most)}
        self._durable = _durable()
        self._made()

    def _made(self) -> None:
        """Have the engine make the rule set; without the engine's host there are no timer threads."""
        definitions = {name: dict(body) for name, body in self._definitions.items()}  # it takes the actions out of them
        self._rules = self._durable.Ruleset(self._name, NO_HOST, definitions)
        self._begun = False

    def post(self, text: str) -> None:
        """Assert one fact and let the rules fire. Raises what went wrong."""
        rules, trace = self._rules, self.trace
        trace.steps = 0
        outcome: list[Any] = []
        try:
            state = rules._handle_result(self._durable.durable_rules_engine.assert_fact(rules._handle, text), text)
            rules.do_actions(state, lambda error, after: outcome.extend((error, after)))
        finally:
            self._begun |= trace.steps > 0
        if trace.faults:
            raise trace.faults[0]
        if trace.steps > self.most:
            raise RunawayRules(f"more than {self.most} rules fired on one fact: {text}")
        if outcome and outcome[0] is not None:
            if not isinstance(outcome[0], Exception):  # Ctrl-C, which the engine takes for a fault of its own
                raise outcome[0]
            raise EngineFault(f"the rules engine failed on {text}: {outcome[0]}")
        if not outcome or not isinstance(outcome[1], dict) or "exception" in outcome[1]:
            raise EngineFault(f"the rules engine broke off on {text}: {outcome[1:]}")

    def clear(self) -> None:
        """Forget all facts of the request.

        Of a request that never came to an action the engine would free memory that nobody set. Such a one is left
        where it is, and the rule set is made anew.
        """
        if self._begun:
            self._rules.delete_state(REQUEST)
            self._begun = False
        else:
            self._made()


def _sets(book: Book, trace: _Trace) -> dict[str, list[_RuleSet]]:
    """Rule sets by kind, each well below what the engine bears."""
    parts: dict[str, list[list[tuple[int, Definition]]]] = {kind: [] for kind in book.kinds}
    for kind, keys in book.kinds.items():
        if len(keys) > KEYS_PER_KIND:
            raise BookError(f"the rules read {len(keys)} keys of {kind}; the engine bears {KEYS_PER_KIND}")
    room: dict[str, int] = {}
    for place, rule in enumerate(book.rules):
        body, branches = definition(rule, book.types)
        kind = rule.when.kind
        chunks = parts[kind]
        if not chunks or len(chunks[-1]) == RULES_PER_SET or room[kind] < branches:
            chunks.append([])
            room[kind] = BRANCHES_PER_SET
        chunks[-1].append((place, body))
        room[kind] -= branches
    return {
        kind: [_RuleSet(f"{kind}-{number}", chunk, trace) for number, chunk in enumerate(chunks)]
        for kind, chunks in parts.items()
    }


_gate = threading.Lock()
if hasattr(os, "register_at_fork"):  # a child must not inherit a request half done, nor a lock nobody opens
    os.register_at_fork(before=_gate.acquire, after_in_parent=_gate.release, after_in_child=_gate.release)


class Engine:
    """A book made ready to fire. One request at a time in a process; for speed use processes, forked or spawned."""

    def __init__(self, book: Book) -> None:
        """Build the rule sets. Raises EngineMissing, or BookError for a rule the engine must not be given."""
        self.book = book
        self._trace = _Trace()
        self._texts = {
            kind: tuple(key for key in sorted(keys) if book.types[key] == "text") for kind, keys in book.kinds.items()
        }
        with _gate:
            self._sets = _sets(book, self._trace)

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        """The rulings on these facts, in the order of the facts and, for each, of the book (topic, name).

        Raises UnreadFact for a kind no rule reads, BadFact for a value that cannot be matched: both before anything is
        asserted. Raises EngineFault where the engine gives up. The state of a request is always cleared.
        """
        texts = [self._written(number, fact) for number, fact in enumerate(facts)]
        with _gate:
            fired = self._fire([fact.kind for fact in facts], texts)
        return [Ruling(self.book.rules[rule], facts[number]) for number, rule in sorted(fired)]

    def unread_keys(self, facts: Iterable[Fact]) -> set[str]:
        """The keys, as `kind.key`, that no rule of that kind reads: their values decide nothing."""
        read = self.book.kinds
        return {f"{fact.kind}.{key}" for fact in facts for key in fact.values if key not in read.get(fact.kind, ())}

    def _fire(self, kinds: Sequence[str], texts: Sequence[str]) -> list[_Fired]:
        used: dict[int, _RuleSet] = {}
        self._trace.clear()
        try:
            for kind, text in zip(kinds, texts, strict=True):
                for rule_set in self._sets[kind]:
                    used[id(rule_set)] = rule_set
                    rule_set.post(text)
        finally:
            for rule_set in used.values():
                rule_set.clear()
        return self._trace.fired

    def _written(self, number: int, fact: Fact) -> str:
        """The fact as the engine reads it: only the keys that rules of its kind read."""
        keys = self.book.kinds.get(fact.kind)
        if keys is None:
            raise UnreadFact(f"no rule reads facts of the kind {fact.kind!r}; known: {', '.join(self.book.kinds)}")
        types, values = self.book.types, fact.values
        parts = [f'"sid":"{REQUEST}","id":"f{number}","kind":"{fact.kind}"']
        for key, value in values.items():
            try:
                clean = _clean(value, types.get(key, "either"))
            except BadFact as error:
                raise BadFact(f"{fact.kind}.{key} = {value!r}: {error}") from None
            if key in keys:
                parts.append(f'"{key}":{clean}')
        parts += [f'"{key}":"{UNKNOWN}"' for key in self._texts[fact.kind] if key not in values]
        return "{" + ",".join(parts) + "}"


@lru_cache(maxsize=1024)
def _word(text: str) -> str:
    """A text as the engine reads it. Raises BadFact."""
    if not text.strip() or not text.isprintable() or len(text) > LONGEST_WORD:
        raise BadFact(f"a word has 1 to {LONGEST_WORD} printable characters")
    return json.dumps(text, ensure_ascii=False)


def _clean(value: object, reads: Reads) -> str:
    """A value as the engine reads it. Raises BadFact."""
    if isinstance(value, bool):
        value = "yes" if value else "no"
    if isinstance(value, str):
        if reads == "number":
            raise BadFact("the rules read a number here")
        return _word(value)
    if not isinstance(value, (int, float)):
        raise BadFact("a fact is flat, its values are texts or numbers")
    if reads == "text":
        raise BadFact("the rules read a text here")
    try:
        return plain(float(value))
    except (ValueError, OverflowError):
        raise BadFact("a number must be finite and fit a float; leave it out where there is none") from None
