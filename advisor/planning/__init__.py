"""The whole job stage by stage: each stage is a case of its own, judged like any other."""

from advisor.planning.answer import plan_answer
from advisor.planning.jobs import JobUnclear, which_job
from advisor.planning.stage import Plan, Stage
from advisor.planning.walk import walk

__all__ = ["JobUnclear", "Plan", "Stage", "plan_answer", "walk", "which_job"]
