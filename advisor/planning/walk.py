"""The walk along a job: stage after stage, each with the first hold that is safe and leaves room for the rest."""

from __future__ import annotations

from collections.abc import Iterator

from advisor.advice.advise import default_engine
from advisor.advice.judge import implied_method
from advisor.advice.whole import answer_for
from advisor.engine import Fires
from advisor.models.case import Case, Drive, Tenon
from advisor.models.parts import WHOLE
from advisor.planning.choose import Choice, choose, in_kit
from advisor.planning.derive import sizes, stage_case
from advisor.planning.faults import Fault, does_not_fit, stock_left, too_fast, too_thin
from advisor.planning.jobs import JobUnclear, Template, grips, which_job
from advisor.planning.progress import SEATED, begun
from advisor.planning.stage import InHand, Plan, Stage, looked_back
from advisor.planning.standing import stages_of
from advisor.reckoning.holds.methods import SPURS
from advisor.situation import settle

STAYS = {"ring": {"recess", "centers"}, "holes": {"recess", "screws", "centers"}, "none": set[str]()}
STAYS_UNASKED = {"recess"}
NOTHING_LEFT = (
    "work.state: the {} is finished and its marks may stay, so nothing of the job is left to plan; "
    "say what is still to be cut in cut.operation, or ask `advise` about holding it as it is"
)


class _Walk:
    """One plan in the making: the job in hand, and the hold that the person chose until a stage takes it."""

    def __init__(self, work: InHand, changes: bool) -> None:
        self.work = work
        self.changes = changes
        self.chosen = implied_method(work.situation)

    def stages(self) -> Iterator[Stage]:
        """Stage after stage, until one cannot be done."""
        for template in self.work.ahead:
            if template.when == "marked" and not self._marked():
                continue
            stage = self._on_the_lathe(template) if template.on_the_lathe else Stage(template, None, "", None, None)
            yield stage
            if stage.fault is not None:
                return
            self.work.progress.after(template, stage.method)

    def _marked(self) -> bool:
        """Whether the foot carries a mark that may not stay; nobody knows how a piece that comes finished was held."""
        marks, allowed = self.work.progress.marks, self.work.situation.case.work.marks_allowed
        if allowed == "any":
            return False
        return not marks or bool(marks - STAYS.get(allowed or "", STAYS_UNASKED))

    def _wanted(self, template: Template) -> str | None:
        """The hold the person chose, at the first stage that may use it, or at once where no stage may."""
        chosen = self.chosen
        if chosen is None or (chosen not in template.holds and any(chosen in stage.holds for stage in self.work.ahead)):
            return None
        self.chosen = None
        return chosen

    def _on_the_lathe(self, template: Template) -> Stage:
        work = self.work
        base = stage_case(work.situation, work.job, template, work.progress)
        fault = too_thin(work.situation, sizes(work.situation)) or too_fast(base) or does_not_fit(base)
        if fault is not None:
            return Stage(template, base, "", None, fault)
        choice = self._choice(template, base)
        if choice.found is None:
            return Stage(template, base, "", None, choice.fault, None, choice.judged, choice.rejected, choice.limited)
        stage = self._answered(template, choice)
        if stage.fault is None:
            self._remember(stage, choice.found.when_dry)
        return stage

    def _choice(self, template: Template, base: Case) -> Choice:
        """The person's hold, the one it stands in already, or the first of the stage's own that will do."""
        wanted = self._wanted(template)
        if wanted is not None:
            return choose(self.work, template, base, (wanted,), wanted)
        usable, now = in_kit(self.work.situation.case, template.holds), self.work.progress.method
        if template.same and now in usable:
            kept = choose(self.work, template, base, (now,), None)
            if kept.fault is None or len(usable) == 1:
                return kept
        return choose(self.work, template, base, usable, None)

    def _answered(self, template: Template, choice: Choice) -> Stage:
        assert choice.found is not None
        case, hold, _ = choice.found
        answer = answer_for(case, WHOLE, self.work.engine, self.changes)
        fault = None
        if answer["verdict"] == "do-not-mount":
            reason = answer["reasons"][0]
            fault = Fault(reason["rule"], reason["text"], reason["do"])
        return Stage(template, case, hold.method, answer, fault, hold, choice.judged, choice.rejected)

    def _remember(self, stage: Stage, when_dry: Tenon | None) -> None:
        """The grip that was used is there for the stages after, at the size it was used with."""
        assert stage.case is not None
        assert stage.used is not None
        progress, template, found = self.work.progress, stage.template, stage.used.figures.sizes
        progress.stock, _ = stock_left(template, stage.method, found, progress, self.work.situation.case)
        progress.when_dry = when_dry or progress.when_dry
        kind, hold = grips()[stage.method].kind, stage.case.hold
        if kind in SEATED and template.grips in progress.ends:
            progress.seats[template.grips] = (hold.tenon, None) if kind == "tenon" else (None, hold.recess)
            progress.seated_by[template.grips] = stage.method
        if kind == "centers":
            progress.drive = hold.drive or _drive(stage)


def _drive(stage: Stage) -> Drive | None:
    """A drive with spurs as the answer took it: it stays in its holes from stage to stage. None for any other."""
    assert stage.answer is not None
    found = stage.answer["centers"].get("drive")
    if found is None or stage.method not in SPURS:
        return None
    names = ("teeth", "outer_diameter", "inner_diameter", "face_angle", "back_angle")
    values = {name: found.get(f"{name}_mm", found.get(f"{name}_deg", found.get(name))) for name in names}
    return Drive(**values, seated_depth=stage.answer["thrust"].get("seat_depth_mm"))


def walk(case: Case, engine: Fires | None = None, changes: bool = True) -> Plan:
    """Plan the whole job from where the piece stands; `changes` says whether single changes are tried for each stage.

    Raises JobUnclear where nobody can tell what it becomes, or where nothing of the job is left.
    """
    situation = settle(case)
    choice = which_job(situation)
    behind, ahead = stages_of(choice.job, situation)
    engine = engine if engine is not None else default_engine()
    work = InHand(situation, choice.job, ahead, engine, begun(situation, behind))
    stages = looked_back(tuple(_Walk(work, changes).stages()))
    if not stages:
        raise JobUnclear(NOTHING_LEFT.format(choice.job.title))
    asked = any(stage.answer is not None for stage in stages)
    return Plan(choice.job, choice.assumed, situation, stages, None if asked else answer_for(case, (), engine, changes))
