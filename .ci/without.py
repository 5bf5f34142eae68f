"""Takes every rule out of the book, one at a time, and says which of them its own test does not miss.

    .venv/bin/python .ci/without.py [COUNT]

ADVISOR_SEED chooses which COUNT of all the rules; without a count it is every rule. Each test runs twice: with its rule
put back into its place, where it must pass, and without it, where an assertion must fail; anything else that goes wrong
is no proof. A rule that nothing misses, or whose test proves nothing: exit code 1.
"""

from __future__ import annotations

import sys

from plant import chosen
from warm import Outcome, Run, file_of, outcomes, rules_with_tests, same


def main() -> int:
    rules = chosen(rules_with_tests(), int(sys.argv[1]) if len(sys.argv) > 1 else None)
    found: list[Outcome] = []
    outcomes([*same(rules), *(Run(rule, None, "taken out") for rule in rules)], found.append)
    gone = [one for one in found if one.run.instead is None]
    broken = [one for one in found if one.run.instead is not None and one.noticed]
    unproved = [one for one in gone if one.noticed and one.error != "AssertionError"]
    missed = [one for one in gone if not one.noticed]
    for one in (*broken, *unproved):
        print(f"{file_of(one.run.rule)}, {one.run.words}: {one.test} ends in {one.error}")
    for one in missed:
        print(f"nothing misses {file_of(one.run.rule)}")
    proved = len(rules) - len(missed) - len(unproved)
    print(f"{proved} of {len(rules)} rules are missed by their tests when they are gone")
    return int(bool(broken or unproved or missed))


if __name__ == "__main__":
    sys.exit(main())
