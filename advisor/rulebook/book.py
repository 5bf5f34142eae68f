"""The book of rules: found by folder, checked when built, asked by name, kind and key."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator, Mapping
from functools import cached_property
from importlib import import_module
from importlib.machinery import SourceFileLoader

from advisor.kept import kept
from advisor.rulebook.conditions import BookError, Reads
from advisor.rulebook.rule import Rule, page_problems


class UnknownRule(BookError):  # noqa: N818 -- named for what was asked
    """There is no rule of that name; the message names the nearest."""


def _types(rules: Iterable[Rule]) -> dict[str, Reads]:
    """key -> text or number, as the rules read it; `either` where they only ask whether it is known."""
    found: dict[str, tuple[Reads, Rule]] = {}
    for rule in rules:
        for key, test in rule.when.tests():
            known = found.get(key)
            if known is None or known[0] == "either":
                found[key] = (test.reads, rule)
            elif test.reads not in ("either", known[0]):
                raise BookError(
                    f"the key {key!r} is read as {known[0]} by {known[1].name} and as {test.reads} by {rule.name}; "
                    "a key holds one or the other everywhere"
                )
    return {key: reads for key, (reads, _) in found.items()}


def _kinds(rules: Iterable[Rule], like: Book | None) -> dict[str, frozenset[str]]:
    """kind -> the keys that some rule of that kind reads."""
    kinds: dict[str, set[str]] = {kind: set(keys) for kind, keys in like.kinds.items()} if like is not None else {}
    for rule in rules:
        kinds.setdefault(rule.when.kind, set()).update(key for key, _ in rule.when.keys)
    return {kind: frozenset(keys) for kind, keys in kinds.items()}


class Book:
    """Rules in their order (topic, name). `types` says what each key holds, `kinds` which keys of a kind are read."""

    def __init__(self, rules: Iterable[Rule], like: Book | None = None) -> None:
        """Raises BookError for a rule without a name, two of one name, or a key read as text and as number.

        The kinds and keys of the book `like` stay known here although the rules that read them may be gone.
        """
        self.rules = tuple(sorted(rules, key=lambda rule: (rule.topic, rule.name)))
        self._by_name = {rule.name: rule for rule in self.rules}
        if "" in self._by_name:
            raise BookError("a rule of the book has no name")
        if len(self._by_name) < len(self.rules):
            names = [rule.name for rule in self.rules]
            twice = sorted({name for name in names if names.count(name) > 1})
            raise BookError(f"two rules are called {', '.join(twice)}; a name stands once in the whole book")
        known = {} if like is None else like.types
        self.types: Mapping[str, Reads] = {**known, **_types(self.rules)}
        self.kinds: Mapping[str, frozenset[str]] = _kinds(self.rules, like)

    def __iter__(self) -> Iterator[Rule]:
        return iter(self.rules)

    def __len__(self) -> int:
        return len(self.rules)

    @cached_property
    def topics(self) -> tuple[str, ...]:
        """The topics in their order."""
        return tuple(dict.fromkeys(rule.topic for rule in self.rules))

    def of_kind(self, kind: str) -> tuple[Rule, ...]:
        """The rules that read facts of this kind."""
        return tuple(rule for rule in self.rules if rule.when.kind == kind)

    def by_name(self, name: str) -> Rule:
        """The rule of this name. Raises UnknownRule, which names the nearest."""
        rule = self._by_name.get(name)
        if rule is None:
            from difflib import get_close_matches

            near = get_close_matches(name, self._by_name, n=3)
            hint = f"did you mean {' or '.join(near)}?" if near else "`advisor list rules` names them all"
            raise UnknownRule(f"there is no rule {name!r}; {hint}")
        return rule

    def without(self, name: str) -> Book:
        """A copy that lacks one rule. Facts that only this rule read stay known."""
        gone = self.by_name(name)
        return Book((rule for rule in self.rules if rule is not gone), like=self)

    def with_rules(self, rules: Iterable[Rule]) -> Book:
        """A copy with these rules in place of those of the same name, or beside the others."""
        changed = {rule.name: rule for rule in rules}
        kept = (rule for rule in self.rules if rule.name not in changed)
        return Book((*kept, *changed.values()), like=self)


def _files(folder: str, topic: tuple[str, ...] = ()) -> Iterator[tuple[str, ...]]:
    """The rule files below a folder, as parts of their path without the ending."""
    with os.scandir(folder) as entries:
        found = sorted(entries, key=lambda entry: entry.name)
    for entry in found:
        stem, dot, ending = entry.name.partition(".")
        if entry.name.startswith(("_", ".")):
            continue
        if entry.is_dir():
            if not os.path.exists(os.path.join(entry.path, "__init__.py")):
                raise BookError(f"the folder {'/'.join((*topic, stem))} has no __init__.py and would not be installed")
            yield from _files(entry.path, (*topic, stem))
        elif dot and ending == "py":
            yield (*topic, stem)


def _held(package: str, parts: tuple[str, ...]) -> dict[str, object]:
    """What a rule file holds. Run straight from its file: finding each one anew would take three times as long."""
    name = f"{package}.{'.'.join(parts)}"
    loader = SourceFileLoader(name, f"{os.path.join(import_module(package).__path__[0], *parts)}.py")
    held: dict[str, object] = {"__name__": name, "__file__": loader.path}
    code = loader.get_code(name)
    if code is not None:
        exec(code, held)
    return held


def _read(package: str, parts: tuple[str, ...], checked: bool) -> Rule:
    """The one rule of a file, with the name, topic and docstring of the file. Raises BookError."""
    if len(parts) < 2:
        raise BookError("a rule stands in the folder of its topic")
    held = _held(package, parts)
    if not isinstance(held.get("rule"), Rule):
        raise BookError("holds no `rule = Rule(...)`")
    if sum(isinstance(value, Rule) for value in held.values()) > 1:
        raise BookError("holds more than one rule; one rule, one file")
    rule = held["rule"]
    assert isinstance(rule, Rule)  # said above; for the type checker
    name, topic = parts[-1].replace("_", "-"), "/".join(parts[:-1])
    rule = rule.placed(name, topic, str(held.get("__doc__") or "").strip())
    problems = "; ".join(page_problems(rule)) if checked else ""
    if problems:
        raise BookError(problems)
    return rule


def load_book(package: str = "advisor.rules", checked: bool = True) -> Book:
    """Every rule below a package: one file each, the folder is the topic, the file name is the rule's name.

    `checked` says whether docstrings must be as they should be.
    Raises BookError with one line for each file that is not as it must be.
    """
    rules, problems = [], []
    for parts in _files(import_module(package).__path__[0]):
        try:
            rules.append(_read(package, parts, checked))
        except Exception as error:  # a rule file is a program: whatever goes wrong in it is told with the file's name
            problems.append(f"{'/'.join(parts)}.py: {error}")
    if problems:
        raise BookError("\n".join(problems))
    return Book(rules)


def kept_book(package: str = "advisor.rules") -> Book:
    """The whole book without its docstrings, which advice does not need, as it was last read.

    Raises BookError as `load_book` does.
    """
    folder = import_module(package).__path__[0]

    def read() -> Book:
        return Book(rule.placed(rule.name, rule.topic, "") for rule in load_book(package, checked=False))

    return kept(os.path.join(folder, "book"), (os.path.dirname(__file__), folder), read)
