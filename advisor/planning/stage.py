"""What a plan is: the job in hand while it is planned, and its stages."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from advisor.advice.judge import JudgedHold
from advisor.engine import Fires
from advisor.models.case import Case
from advisor.planning.faults import Fault, removed_too_early
from advisor.planning.jobs import Job, Template
from advisor.planning.progress import Progress
from advisor.situation import Situation


@dataclass(frozen=True)
class InHand:
    """The job while it is planned: the piece as the person has it, the stages ahead, and how far it has come."""

    situation: Situation
    job: Job
    ahead: tuple[Template, ...]
    engine: Fires
    progress: Progress


@dataclass(frozen=True)
class Stage:
    """One stage as planned: its case and answer when it is on the lathe, the fault when the plan stops here.

    `used` is the hold of the stage at the sizes to make; `judged` the holds that were looked at, best first;
    `rejected` why each of them was passed over; `limited` that the person's own kit or choice leaves no other.
    """

    template: Template
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
    """A job with its stages, up to the one that stops it.

    `piece` is what is said of the piece as it lies there, where no stage came so far that it was asked.
    """

    job: Job
    assumed: str
    situation: Situation
    stages: tuple[Stage, ...]
    piece: Mapping[str, Any] | None = None

    @property
    def answers(self) -> list[Mapping[str, Any]]:
        """What was answered for the stages, or for the piece alone."""
        found = [stage.answer for stage in self.stages if stage.answer is not None]
        return found or ([self.piece] if self.piece is not None else [])

    @property
    def stopped(self) -> Stage | None:
        """The stage that cannot be done; it is the last one then."""
        last = self.stages[-1] if self.stages else None
        return last if last is not None and last.fault is not None else None


def looked_back(stages: tuple[Stage, ...]) -> tuple[Stage, ...]:
    """The same stages, stopped at the first that holds an end which a stage before it has cleared."""
    early = dict(removed_too_early([(one.template, one.method) for one in stages]))
    if not early:
        return stages
    place = min(early)
    return (*stages[:place], replace(stages[place], fault=early[place]))
