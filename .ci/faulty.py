"""Puts every single fault into the condition of every rule and says which of them the rule's own test does not notice.

    .venv/bin/python .ci/faulty.py [COUNT]

A fault is one comparison or choice turned into its opposite, a bound that counts to the other side, a bound a
quarter too high or a fifth too low, `present` for `absent`, a word gone from a choice, or a test of a key left out. The
language of the rules knows no "or" between keys, so no such fault. ADVISOR_SEED chooses which COUNT of all of them;
without a count it is every one. tests/rules/survivors.csv says of some why nothing need notice them.

Exit code 1: more than one in ten neither noticed nor listed; and, when every one is tried, fewer than nine in ten
noticed, or one listed that is noticed after all or that there is no more. A test that fails with its rule as it stands
is a fault too.
"""

from __future__ import annotations

import csv
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import replace

from plant import ROOT, chosen
from warm import Outcome, Run, file_of, outcomes, rules_with_tests, same

from advisor.rulebook import (
    AllOf,
    Among,
    Compare,
    Equal,
    Known,
    Rule,
    Test,
    When,
    above,
    at_least,
    at_most,
    below,
    none_of,
)

LISTED = ROOT / "tests/rules/survivors.csv"
LEAST_SHARE = 0.9
STEP = 1.25
OPPOSITE = {"below": at_least, "at_least": below, "at_most": above, "above": at_most}
BOUND_ACROSS = {"below": at_most, "at_most": below, "at_least": above, "above": at_least}
Fault = tuple[str, Test | None]  # what kind of fault, and the faulty test; None: left out


def main() -> int:
    rules = rules_with_tests()
    reasons = listed()
    every = [run for rule in rules for run in faulty(rule)]
    runs = chosen(every, int(sys.argv[1]) if len(sys.argv) > 1 else None)
    tried = dict.fromkeys(run.rule.name for run in runs)
    found: list[Outcome] = []
    outcomes([*same([rule for rule in rules if rule.name in tried]), *runs], found.append)
    broken = [one for one in found if one.run.kind == "" and one.noticed]
    found = [one for one in found if one.run.kind]
    for one in broken:
        print(f"{file_of(one.run.rule)} as it stands: {one.test} ends in {one.error}")
    wrong = told(found, reasons)
    if len(runs) == len(every):
        wrong |= sum(one.noticed for one in found) < LEAST_SHARE * len(found)
        known = {name(run) for run in every} - {name(one.run) for one in found if one.noticed}
        for rule, words in sorted(set(reasons) - known):
            print(f"listed, but noticed or gone: {rule}: {words}")
            wrong = True
    return int(wrong or bool(broken))


def told(found: list[Outcome], reasons: dict[tuple[str, str], str]) -> bool:
    """Prints what was found; whether too little was."""
    survived = sorted(name(one.run) for one in found if not one.noticed)
    for key in survived:
        print(": ".join(("not noticed", *key, reasons.get(key, "not listed"))))
    for kind, count in sorted(Counter(one.run.kind for one in found).items()):
        noticed = sum(one.noticed for one in found if one.run.kind == kind)
        print(f"{noticed:5} of {count:5} noticed: {kind}")
    unlisted = sum(key not in reasons for key in survived)
    noticed = len(found) - len(survived)
    print(f"{noticed} of {len(found)} faulty conditions were noticed ({noticed / len(found):.1%})")
    print(f"{len(survived)} were not, {unlisted} of them not listed")
    return unlisted > (1 - LEAST_SHARE) * len(found)


def name(run: Run) -> tuple[str, str]:
    return run.rule.name, run.words


def listed() -> dict[tuple[str, str], str]:
    with LISTED.open(encoding="utf-8", newline="") as file:
        return {(row["rule"], row["fault"]): row["reason"] for row in csv.DictReader(file)}


def faulty(rule: Rule) -> Iterator[Run]:
    """The rule with each single fault of its condition."""
    for place, (key, matcher) in enumerate(rule.when.keys):
        for part, test in enumerate(matcher.tests):
            for kind, wrong in faults(test):
                tests = (*matcher.tests[:part], *([wrong] if wrong is not None else []), *matcher.tests[part + 1 :])
                keys = list(rule.when.keys)
                keys[place : place + 1] = [(key, AllOf(tests))] if tests else []
                words = f"{key} {test.words} -> {wrong.words if wrong is not None else 'left out'}"
                yield Run(rule, replace(rule, when=When(rule.when.kind, tuple(keys))), words, kind)


def faults(test: Test) -> Iterator[Fault]:
    """Each single fault of one test of one key."""
    yield "a test left out", None
    if isinstance(test, Compare):
        yield "a comparison turned round", OPPOSITE[test.sign](test.bound)
        yield "a bound that counts to the other side", BOUND_ACROSS[test.sign](test.bound)
        if test.bound:
            yield "a bound moved up by a quarter", test._replace(bound=test.bound * STEP)
            yield "a bound moved down by a fifth", test._replace(bound=test.bound / STEP)
    elif isinstance(test, Equal):
        yield "another value than the one", none_of(test.value)
    elif isinstance(test, Among):
        yield "a choice turned round", test._replace(inside=not test.inside)
        if len(test.values) > 1:
            for word in test.values:
                left = tuple(one for one in test.values if one != word)
                yield "a word gone from a choice", test._replace(values=left)
    elif isinstance(test, Known):
        yield "known for not known", Known(not test.known)


if __name__ == "__main__":
    sys.exit(main())
