"""Where a piece stands in its job: the stages that lie behind it and those to come."""

from __future__ import annotations

from advisor.models.case import Case
from advisor.planning.jobs import WET_ONLY, Job, Template
from advisor.situation import Situation

SHAPED = ("tube", "ring", "sphere")  # forms that say how far the piece has come


def active(job: Job, green: bool) -> tuple[Template, ...]:
    """The stages that such a piece goes through: a dry one needs no pause and no truing after it."""
    return tuple(stage for stage in job.stages if green or stage.when not in WET_ONLY)


def first_stage(job: Job, situation: Situation) -> int:
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


def stages_of(job: Job, situation: Situation) -> tuple[tuple[Template, ...], tuple[Template, ...]]:
    """The stages that lie behind the piece, and those to come."""
    if not situation.traits.green and situation.traits.state == "not-round" and _seated(situation.case):
        for place, stage in enumerate(job.stages):
            if stage.when == "green" and stage.grips == "foot" and stage.state == "not-round":
                dry = [after for after in job.stages[place + 1 :] if after.when in ("always", "marked")]
                return job.stages[:place], (stage, *dry)
    stages = active(job, situation.traits.green)
    start = first_stage(job, situation)
    return stages[:start], stages[start:]
