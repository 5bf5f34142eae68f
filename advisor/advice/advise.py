"""Case -> advice: two engine requests, first the holds, then everything else."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING, NamedTuple

from advisor import facts as fact_of
from advisor import verdicts
from advisor.advice.judge import JudgedHold, Judgement, implied_method, judge
from advisor.center_facts import facts_of_centers
from advisor.engine import Engine, Fact, Fires, Ruling
from advisor.material_facts import facts_of_materials
from advisor.models.case import Case
from advisor.models.spoken import spoken
from advisor.reckoning import holds
from advisor.reckoning.slender import slender_bar
from advisor.reckoning.speed import Speed, speed
from advisor.reckoning.thrust import BETWEEN_CENTERS, Thrust, thrust_window
from advisor.rulebook import Effect, kept_book
from advisor.situation import Situation, settle

if TYPE_CHECKING:
    from advisor.advice.beyond import OneThing

MOUNT_VERDICT = {
    Effect.WITH_CARE: "go-with-care",
    Effect.ASK_FIRST: "ask-first",
    Effect.DO_NOT_MOUNT: "do-not-mount",
}
NEXT_TRIED = 3  # holds tried in place of a first one that no thrust is safe for
AGAINST_A_HOLD = (Effect.REFUSE, Effect.NOT_ADVISED, Effect.COULD_NOT_CHECK)


class Advice(NamedTuple):
    """Everything that was worked out and decided for one case, before anybody shows it.

    one_thing: what to make or to get where nothing to hand holds the piece.
    """

    situation: Situation
    judgement: Judgement
    used: JudgedHold
    thrust: Thrust | None
    speed: Speed
    rulings: tuple[Ruling, ...]
    facts: tuple[Fact, ...]
    verdict: str
    one_thing: OneThing | None = None

    @property
    def fired(self) -> tuple[Ruling, ...]:
        """Every ruling in the order it came: holds first, then the rest."""
        return self.judgement.rulings + self.rulings

    @property
    def window(self) -> str:
        """open, narrow, empty or not-used, as the rules decided."""
        if self.thrust is None:
            return "not-used"
        return verdicts.worst(
            ("open", "narrow", "empty"), (ruling.rule.window for ruling in self.rulings if ruling.rule.window)
        )


@lru_cache(maxsize=1)
def default_engine() -> Engine:
    """The engine over the rule book of this package, built once."""
    return Engine(kept_book())


def _thrust_of(situation: Situation, used: JudgedHold) -> Thrust | None:
    between = used.method in BETWEEN_CENTERS
    if not used.figures.tail_up and not between:
        return None
    if not situation.lathe.tailstock:
        return None
    return thrust_window(situation, used.method, used.rpm)


def _would_do(situation: Situation, engine: Fires, judgement: Judgement) -> tuple[OneThing | None, str] | None:
    """What would do where nothing to hand does: all other holds are judged then, and only then."""
    if judgement.accepted:
        return None
    from advisor.advice.beyond import would_do

    return would_do(situation, engine, judgement)


def _facts(
    situation: Situation,
    judgement: Judgement,
    used: JudgedHold,
    thrust: Thrust | None,
    rate: Speed,
    would: tuple[OneThing | None, str] | None,
) -> list[Fact]:
    tail_up = used.figures.tail_up
    found = [
        fact_of.blank(situation),
        fact_of.machine(situation, tail_up, rate),
        fact_of.person(situation),
        fact_of.speed_fact(situation, rate),
        fact_of.slender(situation, slender_bar(situation, thrust is not None and thrust.between, tail_up)),
    ]
    found += facts_of_materials(situation)
    if thrust is not None:
        found += facts_of_centers(situation, thrust)
    best = judgement.holds[0]
    words = {
        "method": spoken(used.method),
        "best": spoken(best.method),
        "reason": next((r.text for r in used.rulings if r.rule.effect in AGAINST_A_HOLD), ""),
    }
    if would is not None:
        words["would_do"] = would[1]
    found.append(fact_of.choice(situation, used.verdict, best.verdict, words))
    return found


def _with(situation: Situation, engine: Fires, judgement: Judgement, used: JudgedHold, beyond: bool) -> Advice:
    """Thrust, speed and everything decided for one hold in use."""
    thrust = _thrust_of(situation, used)
    rate = speed(situation, used.method, used.figures.tail_up, holds.hold_speed(situation, used.method), thrust)
    would = _would_do(situation, engine, judgement) if beyond else None
    facts = _facts(situation, judgement, used, thrust, rate, would)
    rulings = tuple(engine.run(facts))
    verdict = verdicts.worst(
        verdicts.MOUNT,
        (MOUNT_VERDICT[ruling.rule.effect] for ruling in rulings if ruling.rule.effect in MOUNT_VERDICT),
    )
    one_thing = would[0] if would is not None else None
    return Advice(situation, judgement, used, thrust, rate, rulings, judgement.facts + tuple(facts), verdict, one_thing)


def _next_that_runs(first: Advice, engine: Fires) -> Advice:
    """Where no thrust is safe for the hold that comes first and nobody chose it: the next accepted one that has one.

    The ranking stays what practice makes it; only the hold in use is another.
    """
    others = [hold for hold in first.judgement.holds[1:] if hold.accepted][:NEXT_TRIED]
    for other in others:
        tried = _with(first.situation, engine, first.judgement, other, beyond=False)
        if tried.window != "empty":
            return tried
    return first


def advise(case: Case, engine: Fires | None = None, *, beyond: bool = True) -> Advice:
    """Settle the case, judge the holds, work out thrust and speed for the hold in use, and let the rules decide.

    Without `beyond` nothing outside the kit is looked for, and the texts that name it cannot be filled: no verdict
    depends on it, and it takes longer than all the rest.
    Raises nothing of its own for a valid case; what could not be worked out is in the situation's gaps.
    """
    engine = engine if engine is not None else default_engine()
    situation = settle(case)
    judgement = judge(situation, engine)
    chosen = implied_method(situation)
    used = judgement.of(chosen) if chosen is not None else judgement.holds[0]
    found = _with(situation, engine, judgement, used, beyond)
    return _next_that_runs(found, engine) if chosen is None and found.window == "empty" else found
