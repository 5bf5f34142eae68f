"""The answer to a case with everything in it, changes tried included."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from advisor.advice.advise import Advice, advise, default_engine
from advisor.advice.answer import compose
from advisor.advice.changes import hold_changes, rungs, speed_changes, thrust_changes
from advisor.engine import Fires
from advisor.models.case import Case
from advisor.rulebook import Effect


def answer_for(case: Case, parts: Iterable[str], engine: Fires | None = None, changes: bool = True) -> dict[str, Any]:
    """The answer of the interface with these parts; `changes` says whether single changes are tried in the model."""
    engine = engine if engine is not None else default_engine()
    wanted = set(parts)
    advice = advise(case, engine)
    tried: dict[str, list[str]] = {}
    if changes and "speed" in wanted and _speed_matters(advice):
        tried["speed"] = speed_changes(advice)
    if changes and "thrust" in wanted and _speed_matters(advice):
        tried["thrust"] = thrust_changes(advice, engine)
    ladder = rungs(advice) if changes and "speed" in wanted and advice.verdict != "do-not-mount" else ()
    answer = compose(advice, wanted, tried, lambda method: _hold_changes(advice, engine, method, changes), ladder)
    if "proportions" in wanted and "holding" in wanted:
        from advisor.advice.proportioned import add_proportions

        add_proportions(answer, advice)
    return answer


def _speed_matters(advice: Advice) -> bool:
    """A refusal for what the piece is made of is not mended by a lathe; one for its speed may be."""
    refusals = [ruling for ruling in advice.rulings if ruling.rule.effect is Effect.DO_NOT_MOUNT]
    return all(ruling.fact.kind in ("machine", "speed", "choice") for ruling in refusals)


def _hold_changes(advice: Advice, engine: Fires, method: str, changes: bool) -> list[str]:
    """Only the hold in use and the best one are worth trying changes on."""
    if not changes or method not in (advice.used.method, advice.judgement.holds[0].method):
        return []
    return hold_changes(advice, engine, method)
