"""The walk along a job: stage after stage, each with the first hold that is safe and leaves room for the rest."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from advisor.advice.advise import default_engine
from advisor.advice.changes import hold_proposals, window_word
from advisor.advice.judge import HOLD_VERDICT, NOT_LISTED, JudgedHold, implied_method, judge
from advisor.advice.whole import answer_for
from advisor.engine import Fires
from advisor.models.case import METHODS, Case, Drive
from advisor.models.fields import changed
from advisor.models.methods import method as method_record
from advisor.physics.drying import diameter_to_leave
from advisor.planning import jobs as known
from advisor.planning.derive import sizes, stage_case
from advisor.planning.faults import Fault, does_not_fit, hold_fault, removed_too_early, stock_left, too_thin, words
from advisor.planning.progress import GONE, SEATED, Progress, begun
from advisor.reckoning.drying import drying
from advisor.reckoning.proportions import proportions
from advisor.reckoning.proportions.size import shop
from advisor.situation import Situation, settle

PARTS = ("holding", "speed", "thrust", "centers", "tool")
NO_SAFE_HOLD = "no-safe-hold"
SIZED = ("tenon", "recess", "screws", "face")
ACCEPTED = ("suits", "with-care")
SHAPED = ("tube", "ring", "sphere")  # forms that say how far the piece has come
ON_A_FACE = ("rim", "bore", "ball")  # where the orders of reach, which think of a blank, do not apply


@dataclass(frozen=True)
class Stage:
    """One stage as planned: its case and answer when it is on the lathe, the fault when the plan stops here.

    `used` is the hold of the stage at the sizes to make; `judged` the holds that were looked at, best first;
    `rejected` why each of them was passed over; `limited` that the person's own kit or choice leaves no other.
    """

    template: known.Template
    case: Case | None
    method: str
    answer: Mapping[str, Any] | None
    fault: Fault | None
    used: JudgedHold | None = None
    judged: tuple[JudgedHold, ...] = ()
    rejected: tuple[tuple[str, Fault], ...] = ()
    limited: bool = False


@dataclass(frozen=True)
class Plan:
    """A job with its stages, up to the one that stops it."""

    job: known.Job
    assumed: str
    situation: Situation
    stages: tuple[Stage, ...]

    @property
    def stopped(self) -> Stage | None:
        """The stage that cannot be done; it is the last one then."""
        last = self.stages[-1] if self.stages else None
        return last if last is not None and last.fault is not None else None


def active(job: known.Job, green: bool) -> tuple[known.Template, ...]:
    """The stages that such a piece goes through: a dry one needs no pause and no truing after it."""
    return tuple(stage for stage in job.stages if green or stage.when not in known.WET_ONLY)


def first_stage(job: known.Job, situation: Situation) -> int:
    """Where the piece stands in the job: by the cut that is meant and its state; a dried blank with a grip goes on."""
    traits, wanted = situation.traits, situation.case.cut.operation
    stages = active(job, traits.green)
    turning = [place for place, stage in enumerate(stages) if stage.on_the_lathe]
    shaped = [place for place in turning if traits.form in SHAPED and stages[place].form == traits.form]
    places = shaped or turning
    tests = [
        [place for place in places if stages[place].operation == wanted and stages[place].state == traits.state],
        [place for place in places if traits.state == "finished" and stages[place].operation == wanted],
        [place for place in places if stages[place].state == traits.state],
        [turning[-1]] if traits.state == "finished" else [],
        shaped,
    ]
    return next((found[0] for found in tests if found), 0)


def _seated(case: Case) -> bool:
    """It stands in jaws on a grip that is there already: a dried blank, not one to be roughed."""
    hold = case.hold
    return (hold.method == "jaws-on-tenon" and hold.tenon is not None) or (
        hold.method == "jaws-in-recess" and hold.recess is not None
    )


def _stages(job: known.Job, situation: Situation) -> tuple[tuple[known.Template, ...], tuple[known.Template, ...]]:
    """The stages that lie behind the piece, and those to come."""
    if not situation.traits.green and situation.traits.state == "not-round" and _seated(situation.case):
        for place, stage in enumerate(job.stages):
            if stage.when == "green" and stage.grips == "foot" and stage.state == "not-round":
                dry = [after for after in job.stages[place + 1 :] if after.when in ("always", "marked")]
                return job.stages[:place], (stage, *dry)
    stages = active(job, situation.traits.green)
    start = first_stage(job, situation)
    return stages[:start], stages[start:]


def _in_kit(case: Case, holds: Sequence[str]) -> tuple[str, ...]:
    kit = [word for word in case.hold.kit or () if word in METHODS]
    return tuple(method for method in holds if not kit or method in kit)


class _Walk:
    """One plan in the making."""

    def __init__(self, case: Case, engine: Fires, changes: bool) -> None:
        self.engine = engine
        self.changes = changes
        self.situation = settle(case)
        self.choice = known.which_job(self.situation)
        self.job = self.choice.job
        behind, self.ahead = _stages(self.job, self.situation)
        self.progress: Progress = begun(self.situation, behind)
        self.chosen = implied_method(self.situation)

    def plan(self) -> Plan:
        """Stage after stage, until one cannot be done."""
        return Plan(self.job, self.choice.assumed, self.situation, looked_back(tuple(self._stages())))

    def _stages(self) -> Iterator[Stage]:
        for template in self.ahead:
            if template.when == "marked" and not self._marked():
                continue
            stage = self._on_the_lathe(template) if template.on_the_lathe else Stage(template, None, "", None, None)
            yield stage
            if stage.fault is not None:
                return
            self.progress.after(template, stage.method)

    def _marked(self) -> bool:
        """Whether the foot carries a mark that may not stay; nobody knows how a piece that comes finished was held."""
        marks, allowed = self.progress.marks, self.situation.case.work.marks_allowed
        if allowed == "any":
            return False
        stays = {"ring": {"recess", "centers"}, "holes": {"recess", "screws", "centers"}, "none": set()}
        return not marks or bool(marks - stays.get(allowed or "", {"recess"}))

    def _wanted(self, template: known.Template) -> str | None:
        """The hold the person chose, at the first stage that may use it, or at once where no stage may."""
        chosen = self.chosen
        if chosen is None:
            return None
        may = any(chosen in stage.holds for stage in self.ahead)
        if chosen not in template.holds and may:
            return None
        self.chosen = None
        return chosen

    def _candidates(self, template: known.Template, wanted: str | None) -> tuple[str, ...]:
        if wanted is not None:
            return (wanted,)
        usable = _in_kit(self.situation.case, template.holds)
        return (self.progress.method,) if template.same and self.progress.method in usable else usable

    def _on_the_lathe(self, template: known.Template) -> Stage:
        base = stage_case(self.situation, self.job, template, self.progress)
        fault = too_thin(self.situation, sizes(self.situation)) or does_not_fit(base)
        if fault is not None:
            return Stage(template, base, "", None, fault)
        wanted = self._wanted(template)
        names = self._candidates(template, wanted)
        stage = self._try(template, base, names, wanted)
        again = _in_kit(self.situation.case, template.holds)
        if stage.fault is not None and wanted is None and template.same and set(again) - set(names):
            stage = self._try(template, base, again, None)
        if stage.fault is None:
            self._remember(stage)
        return stage

    def _try(self, template: known.Template, base: Case, names: Sequence[str], wanted: str | None) -> Stage:
        """The first of these holds that is accepted, has a thrust and leaves room for the rest of the job."""
        case = changed(base, "hold.method", wanted)
        if not names:
            return Stage(template, base, "", None, self._nothing_to_hand(template, base), limited=True)
        situation = settle(case)
        ranked = self._ranked(situation, template, names)
        rejected: list[tuple[str, Fault]] = []
        for entry in ranked:
            sized, hold = self._sized(template, base, entry)
            fault = self._against(template, settle(sized), hold)
            if fault is None:
                return self._answered(template, sized, hold, ranked, rejected)
            rejected.append((hold.method, fault))
        instead = self._instead(template, base, rejected, wanted)
        limited = not instead if wanted is not None else bool(self.situation.case.hold.kit)
        method, first = rejected[0]
        text = f"Not with {words(method)}: {first.text}" if first.name == NO_SAFE_HOLD else first.text
        do = f"{first.do} {instead}".strip() or self._opened(situation, ranked[0])
        fault = Fault(first.name, text, do)
        return Stage(template, base, "", None, fault, None, tuple(ranked), tuple(rejected), limited)

    def _ranked(self, situation: Situation, template: known.Template, names: Sequence[str]) -> list[JudgedHold]:
        """Accepted first; the grip that is already cut before any other; then the order of reach.

        Holds that no order of reach names stand in the order of the job's own table.
        """
        order, seats = template.holds, self.progress.seats.get(template.grips, (None, None))
        cut = [kind for kind, seat in zip(SEATED, seats, strict=True) if seat is not None]
        before = self.progress.seated_by.get(template.grips)
        judged = judge(situation, self.engine, names).holds

        def place(hold: JudgedHold) -> tuple[bool, bool, bool, int]:
            own = order.index(hold.method) if hold.method in order else len(order)
            fits = known.grips()[hold.method].kind in cut
            own = own if hold.place >= NOT_LISTED or template.grips in ON_A_FACE else -1
            return not hold.accepted, bool(cut) and not fits, before is not None and hold.method != before, own

        return sorted(judged, key=place)

    def _against(self, template: known.Template, situation: Situation, hold: JudgedHold) -> Fault | None:
        fault = hold_fault(self.job, template, hold.method, hold.figures.sizes, self.progress, self.situation.case)
        if fault is not None:
            return fault
        if hold.verdict not in ACCEPTED:
            return Fault(NO_SAFE_HOLD, _grounds(hold), "")
        word, _ = window_word(situation, hold.method, self.engine)
        if word == "empty":
            return Fault(
                "no-safe-thrust",
                f"Between centers ({words(hold.method)}) no thrust both drives the work and leaves its ends whole.",
                "Grip one end instead, or see `advisor thrust` for what opens the window.",
            )
        return None

    def _sized(self, template: known.Template, base: Case, hold: JudgedHold) -> tuple[Case, JudgedHold]:
        """The case with this hold at the sizes to make, and the hold judged with them.

        Where those sizes are no better than what the trade would take at first sight, that stays.
        """
        plain, kind = changed(base, "hold.method", hold.method), known.grips()[hold.method].kind
        if kind not in SIZED:
            return plain, hold
        situation = settle(plain)
        case = proportions(situation, hold.method, hold.rpm).put_into(base)
        if kind == "tenon":
            case = self._for_all(template, case, hold)
            case = case if self.progress.dried else self._oversize(case, situation)
        judged = judge(settle(case), self.engine, (hold.method,)).holds[0]
        return (case, judged) if judged.accepted or not hold.accepted else (plain, hold)

    def _for_all(self, template: known.Template, case: Case, hold: JudgedHold) -> Case:
        """The tenon as large as the hardest of the stages asks that stand on it, not only the first."""
        tenons = [case.hold.tenon]
        for later in self.ahead[self.ahead.index(template) + 1 :]:
            if template.grips in later.makes:
                break
            if later.grips == template.grips and hold.method in later.holds:
                own = stage_case(self.situation, self.job, later, self.progress)
                own = changed(own, "hold.method", hold.method)
                tenons.append(proportions(settle(own), hold.method, hold.rpm).put_into(own).hold.tenon)
        return changed(case, "hold.tenon", max(filter(None, tenons), key=lambda tenon: tenon.diameter or 0.0))

    def _oversize(self, case: Case, situation: Situation) -> Case:
        """A tenon in wet wood is left so large that a true one can be turned out of it when it has dried oval."""
        own, tenon = situation.case.hold.tenon, case.hold.tenon
        if tenon is None or tenon.diameter is None or (own is not None and own.diameter is not None):
            return case
        dried = drying(situation)
        if dried is None:
            return case
        self.progress.when_dry = tenon
        leave = diameter_to_leave(finished=tenon.diameter, shrinkage=dried.most)
        wide = min(shop(leave), situation.body.end_diameter)
        shoulder = max(tenon.shoulder_diameter or wide, wide)
        larger = tenon.model_copy(update={"diameter": wide, "shoulder_diameter": shoulder})
        return changed(case, "hold.tenon", larger)

    def _answered(
        self,
        template: known.Template,
        case: Case,
        hold: JudgedHold,
        ranked: Sequence[JudgedHold],
        rejected: Sequence[tuple[str, Fault]],
    ) -> Stage:
        answer = answer_for(case, PARTS, self.engine, self.changes)
        fault = None
        if answer["verdict"] == "do-not-mount":
            reason = answer["reasons"][0]
            fault = Fault(reason["rule"], reason["text"], reason["do"])
        return Stage(template, case, hold.method, answer, fault, hold, tuple(ranked), tuple(rejected))

    def _instead(
        self, template: known.Template, base: Case, rejected: Sequence[tuple[str, Fault]], wanted: str | None
    ) -> str:
        """What would do: in place of the chosen hold something of the kit, in place of the kit something outside it."""
        usable = _in_kit(self.situation.case, template.holds) if wanted is not None else template.holds
        tried = {name for name, _ in rejected}
        return self._would_do(template, base, [method for method in usable if method not in tried])

    def _opened(self, situation: Situation, hold: JudgedHold) -> str:
        """What would change the verdict on this hold, tried in the model."""
        case = changed(situation.case, "machine.tailstock", True)
        if not situation.lathe.tailstock and judge(settle(case), self.engine, (hold.method,)).accepted:
            return "What would change it: a tailstock."
        found = [entry.text for entry in hold_proposals(situation, self.engine, hold) if entry.verdict in ACCEPTED]
        return f"What would change it: {'; '.join(found)}." if found else "Another piece or another lathe."

    def _nothing_to_hand(self, template: known.Template, base: Case) -> Fault:
        end = "" if self.progress.ends.get(template.grips) != GONE else f" ({template.grips} turned away)"
        return Fault(
            "no-hold-to-hand",
            f"Nothing in the kit can hold it for this stage{end}.",
            self._would_do(template, base, template.holds) or "Nothing else would either: change the piece.",
        )

    def _would_do(self, template: known.Template, base: Case, methods: Sequence[str]) -> str:
        """What would hold it here that was not tried: the first that is accepted, with what it needs."""
        if not methods:
            return ""
        situation = settle(base)
        for hold in self._ranked(situation, template, methods):
            if self._against(template, situation, hold) is None:
                return f"What would do it: {words(hold.method)} (it needs {method_record(hold.method).needs})."
        return ""

    def _remember(self, stage: Stage) -> None:
        """The grip that was used is there for the stages after, at the size it was used with."""
        assert stage.case is not None
        assert stage.used is not None
        template, sizes = stage.template, stage.used.figures.sizes
        self.progress.stock, _ = stock_left(template, stage.method, sizes, self.progress, self.situation.case)
        kind, hold = known.grips()[stage.method].kind, stage.case.hold
        if kind in SEATED and template.grips in self.progress.ends:
            self.progress.seats[template.grips] = (hold.tenon, None) if kind == "tenon" else (None, hold.recess)
            self.progress.seated_by[template.grips] = stage.method
        if kind == "centers":
            self.progress.drive = hold.drive or _drive(stage)


def _grounds(hold: JudgedHold) -> str:
    """Everything that speaks against a hold as much as the worst of it."""
    worst = [entry.text for entry in hold.rulings if HOLD_VERDICT.get(entry.rule.effect) == hold.verdict and entry.text]
    return " ".join(dict.fromkeys(worst))


def looked_back(stages: tuple[Stage, ...]) -> tuple[Stage, ...]:
    """The same stages, stopped at the first that holds an end which a stage before it has cleared."""
    early = dict(removed_too_early([(one.template, one.method) for one in stages]))
    if not early:
        return stages
    place = min(early)
    return (*stages[:place], replace(stages[place], fault=early[place]))


def _drive(stage: Stage) -> Drive | None:
    """The drive center as the answer took it: it stays in its holes from stage to stage."""
    assert stage.answer is not None
    found = stage.answer["centers"].get("drive")
    if found is None:
        return None
    names = ("teeth", "outer_diameter", "inner_diameter", "face_angle", "back_angle")
    values = {name: found.get(f"{name}_mm", found.get(f"{name}_deg", found.get(name))) for name in names}
    depth = stage.answer["thrust"].get("seat_depth_mm")
    return Drive.model_construct(**values, seated_depth=depth)


def walk(case: Case, engine: Fires | None = None, changes: bool = True) -> Plan:
    """Plan the whole job from where the piece stands; `changes` says whether single changes are tried for each stage.

    Raises JobUnclear where nobody can tell what it becomes.
    """
    return _Walk(case, engine if engine is not None else default_engine(), changes).plan()
