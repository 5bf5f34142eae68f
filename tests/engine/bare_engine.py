"""What the bare engine does when it is given what the adapter never gives it. Run as a child: `bare_engine.py TRAP`.

Each trap prints `survived` at its end, which none of them reaches.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from typing import Any

from durable.engine import Ruleset


def quiet(_: Any) -> None:
    """An action that does nothing."""


def rule_set(*conditions: dict[str, Any]) -> Any:
    """A rule set of one-fact rules, without host and timers."""
    rules = {f"r_{place}": {"all": [{"m": condition}], "run": quiet} for place, condition in enumerate(conditions)}
    return Ruleset("bare", None, rules)


def post(rules: Any, **values: object) -> list[Any]:
    """Assert one fact and let the rules fire; the engine's error and state."""
    outcome: list[Any] = []
    state = rules.assert_fact({"sid": "q", "id": "f1", "kind": "thrust", **values})
    rules.do_actions(state, lambda error, after: outcome.extend((error, after)))
    return outcome


def no_facts() -> None:
    """An empty list of facts: segmentation fault."""
    rules = rule_set({"kind": "thrust"})
    rules.do_actions(rules.assert_facts([]), lambda *_: None)


def division_by_zero() -> None:
    """Arithmetic in a condition: the process dies of a floating point exception."""
    quotient = {"$div": {"$l": {"$m": "margin"}, "$r": 0}}
    post(rule_set({"$and": [{"kind": "thrust"}, {"$gt": {"margin": quotient}}]}), margin=1)


def too_many_alike() -> None:
    """257 rules of one condition: error 108 when built; 256 write past the end and sometimes die."""
    post(rule_set(*({"kind": "thrust"} for _ in range(257))))


def too_many_true() -> None:
    """65 rules true for one fact: error 303."""
    post(rule_set(*({"$and": [{"kind": "thrust"}, {"$lt": {"margin": bound}}]} for bound in range(1, 66))), margin=0)


def lone_absence() -> None:
    """Absence asked for alone: endless loop."""
    post(rule_set({"$nex": {"margin": 1}}))


def condition_on_id() -> None:
    """A condition on the id: endless loop."""
    post(rule_set({"$ex": {"id": 1}}))


def condition_on_sid() -> None:
    """A condition on the sid: endless loop."""
    post(rule_set({"sid": "q"}))


def too_many_first_conditions() -> None:
    """512 first conditions: endless loop."""
    post(rule_set(*({"kind": f"k{place}"} for place in range(512))), kind="k5")


def too_many_branches() -> None:
    """512 values of one key below one kind: endless loop."""
    post(rule_set({"$and": [{"kind": "thrust"}, {"$or": [{"drive": f"d{n}"} for n in range(512)]}]}), drive="d5")


DEADLY: dict[str, Callable[[], None]] = {
    trap.__name__: trap for trap in (no_facts, division_by_zero, too_many_alike, too_many_true)
}
ENDLESS: dict[str, Callable[[], None]] = {
    trap.__name__: trap
    for trap in (lone_absence, condition_on_id, condition_on_sid, too_many_first_conditions, too_many_branches)
}

if __name__ == "__main__":
    (DEADLY | ENDLESS)[sys.argv[1]]()
    print("survived")
