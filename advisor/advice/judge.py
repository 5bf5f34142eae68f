"""First engine request: every hold judged and ranked."""

from collections.abc import Sequence
from typing import NamedTuple

from advisor import facts as fact_of
from advisor import verdicts
from advisor.engine import Fact, Fires, Ruling
from advisor.models.case import METHODS
from advisor.reckoning import holds
from advisor.reckoning.drives import kind_by_teeth
from advisor.reckoning.speed import first_speed
from advisor.rulebook import Effect
from advisor.situation import Situation

HOLD_VERDICT = {
    Effect.SUITS: "suits",
    Effect.HOLD_WITH_CARE: "with-care",
    Effect.COULD_NOT_CHECK: "could-not-check",
    Effect.NOT_ADVISED: "not-advised",
    Effect.REFUSE: "refused",
}
CLASS = {"suits": 0, "with-care": 0, "could-not-check": 1, "not-advised": 1, "refused": 2}
WORST_FIRST = tuple(reversed(HOLD_VERDICT))
NOT_LISTED = 99
HEAVY_KG = 10.0
LIVELY_J = 50.0


class JudgedHold(NamedTuple):
    """One method with its figures, its verdict and the rulings on it: those that made it first, remarks last."""

    method: str
    verdict: str
    figures: holds.HoldFigures
    rulings: tuple[Ruling, ...]
    place: int
    rpm: float

    @property
    def accepted(self) -> bool:
        """Suits, or suits with care."""
        return self.verdict in ("suits", "with-care")


class Judgement(NamedTuple):
    """All methods, best first; `reach` are the rulings that say what an old hand reaches for."""

    holds: tuple[JudgedHold, ...]
    reach: tuple[Ruling, ...]
    rulings: tuple[Ruling, ...]
    facts: tuple[Fact, ...]

    @property
    def accepted(self) -> bool:
        """Whether any of them will do."""
        return any(hold.accepted for hold in self.holds)

    def of(self, method: str) -> JudgedHold:
        """The judgement of one method."""
        return next(hold for hold in self.holds if hold.method == method)


def implied_method(situation: Situation) -> str | None:
    """The method the person chose: named, or meant by describing its drive center."""
    hold = situation.case.hold
    if hold.method is not None:
        return hold.method
    if hold.drive is None:
        return None
    kind = hold.drive.kind
    if kind in ("toothed-ring", "cup"):
        return {"toothed-ring": "toothed-ring-drive", "cup": "cup-drive"}[kind]
    if kind == "point":
        return "point-and-pin-drive"
    teeth = hold.drive.teeth
    by_teeth = "four" if teeth is None else kind_by_teeth(teeth)
    if by_teeth == "ring" and kind == "toothed":
        by_teeth = "four"
    return {"two": "two-spur-drive", "four": "spur-drive", "ring": "toothed-ring-drive"}[by_teeth]


def candidates(situation: Situation) -> tuple[str, ...]:
    """The methods of the kit, all of them when no kit is given, and the chosen one in any case."""
    kit: list[str] = [word for word in situation.case.hold.kit or () if word in METHODS]
    found = kit or list(METHODS)
    chosen = implied_method(situation)
    if chosen is not None and chosen not in found:
        found = [chosen, *found]
    return tuple(dict.fromkeys(found))


def _verdict(rulings: Sequence[Ruling]) -> str:
    return verdicts.worst(
        verdicts.HOLD, (HOLD_VERDICT[ruling.rule.effect] for ruling in rulings if ruling.rule.effect in HOLD_VERDICT)
    )


def _weight(ruling: Ruling) -> int:
    effect = ruling.rule.effect
    return WORST_FIRST.index(effect) if effect in WORST_FIRST else len(WORST_FIRST)


def _rank(hold: JudgedHold, lively: bool) -> tuple[int, bool, int, bool, float]:
    careful = hold.verdict != "suits"
    return CLASS[hold.verdict], careful and lively, hold.place, careful, -(hold.figures.divided or 0.0)


def judge(situation: Situation, engine: Fires, methods: Sequence[str] | None = None) -> Judgement:
    """Judge the methods (those of the kit unless named) with one engine request and rank them."""
    names = tuple(methods) if methods is not None else candidates(situation)
    chosen = implied_method(situation)
    figures: list[tuple[str, float, holds.HoldFigures]] = []
    for method in names:
        rpm = first_speed(situation, method, holds.tail_up(situation, method))
        figures.append((method, rpm, holds.hold_figures(situation, method, rpm)))
    facts = [fact_of.reach(situation)]
    facts += [fact_of.hold(situation, entry, method == chosen) for method, _, entry in figures]
    rulings = engine.run(facts)
    reach = sorted((entry for entry in rulings if entry.rule.effect is Effect.REACH), key=lambda entry: entry.rule.row)
    order = reach[0].rule.order if reach else ()
    by_method: dict[str, list[Ruling]] = {method: [] for method in names}
    for entry in rulings:
        if entry.fact.kind == "hold":
            by_method[str(entry.fact.values["method"])].append(entry)
    judged = [
        JudgedHold(
            method,
            _verdict(by_method[method]),
            entry,
            tuple(sorted(by_method[method], key=_weight)),
            order.index(method) if method in order else NOT_LISTED,
            rpm,
        )
        for method, rpm, entry in figures
    ]
    lively = situation.body.mass > HEAVY_KG or _energy(situation, figures) > LIVELY_J
    ranked = tuple(sorted(judged, key=lambda hold: _rank(hold, lively)))
    return Judgement(ranked, tuple(reach[:1]), tuple(rulings), tuple(facts))


def _energy(situation: Situation, figures: Sequence[tuple[str, float, holds.HoldFigures]]) -> float:
    """Joules in the spinning blank at the highest first speed among the methods."""
    from advisor.physics import rim

    body = situation.body
    fastest = max((rpm for _, rpm, _ in figures), default=0.0)
    return rim.spinning_energy(mass=body.mass, diameter=body.diameter, rpm=fastest)
