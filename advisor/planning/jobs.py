"""What is to be made, and the stages by which the trade makes it. The tables are common practice, no source."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import get_args

from advisor.data.tables import Number, Row, Table, Text, load
from advisor.models.case import METHODS, Case
from advisor.models.words import Operation, Purpose, State
from advisor.situation import Situation

PAUSE, BENCH = "pause", "bench"
WALL = "wall"
WET_ONLY = ("green", "solid", WALL)
WHENS = ("always", "marked", *WET_ONLY)
ENDS = ("foot", "top", "both")
GRIPPED = (*ENDS, "rim", "bore", "ball")
SIZES = ("blank", "round", "finished")

JOBS = Table("jobs.csv", (Text("job"), Text("title"), Number("least_length", 1, 500), Text("source")), ("job",), 13)
WORDS = Table(
    "job_words.csv",
    (
        Number("place", 1, 99),
        Text("kind", one_of=("purpose", "form")),
        Text("word"),
        Text("grain", required=False),
        Number("ratio_low", 0, 100, required=False),
        Number("ratio_high", 0, 100, required=False),
        Number("diameter_high", 1, 3000, required=False),
        Text("job"),
        Text("source"),
    ),
    ("place",),
    32,
)
STAGES = Table(
    "job_stages.csv",
    (
        Text("job"),
        Number("place", 1, 20),
        Text("when", one_of=WHENS),
        Text("name"),
        Text("operation", one_of=(*get_args(Operation), PAUSE, BENCH)),
        Text("state", required=False, one_of=get_args(State)),
        Text("form", required=False),
        Text("size", one_of=SIZES),
        Number("share", 0.1, 1),
        Text("grips", required=False, one_of=GRIPPED),
        Text("holds", required=False),
        Text("makes", required=False, one_of=ENDS),
        Text("clears", required=False, one_of=ENDS),
        Text("purpose", required=False, one_of=get_args(Purpose)),
        Text("tail", required=False, one_of=("away",)),
        Number("most_rpm", 50, 5000, required=False),
        Text("does"),
        Text("check"),
        Text("source"),
    ),
    ("job", "place"),
    91,
)
SAME = "same"


class JobUnclear(ValueError):  # noqa: N818 -- what is unclear is the input
    """Nobody said what the piece shall become, or nothing of it is left to do; the message says what to say."""


@dataclass(frozen=True)
class Template:
    """One stage as the trade knows it.

    when     always; green: only for wet wood; solid, wall: a drying pause of a solid or hollowed piece;
             marked: only when the hold before left a mark that has to go
    grips    the end or face that the hold takes; holds: the ways of holding in the order of reach
    makes    ends on which the grip for a later hold is cut; clears: ends whose waste is cut away
    size     the diameter at this stage: of the blank, of the round in it, of the finished piece
    share    of the length that is on the lathe; purpose: what this part of the piece counts as, where it differs
    tail     away: the cut leaves no room for it, whatever the operation is called
    most_rpm what belt or dial is held to for this stage, where practice wants less than the piece would bear
    """

    job: str
    place: int
    when: str
    name: str
    operation: str
    state: str
    form: str
    size: str
    share: float
    grips: str
    holds: tuple[str, ...]
    same: bool
    makes: tuple[str, ...]
    clears: tuple[str, ...]
    purpose: str
    tail: str
    most_rpm: float | None
    does: str
    check: str

    @property
    def on_the_lathe(self) -> bool:
        """Neither a pause nor work at the bench."""
        return self.operation not in (PAUSE, BENCH)


@dataclass(frozen=True)
class Job:
    """A kind of job: the shortest piece of it in mm, and its stages in order."""

    name: str
    title: str
    least_length: float
    stages: tuple[Template, ...]


def ends(word: str) -> tuple[str, ...]:
    """The ends that a cell means."""
    return ("foot", "top") if word == "both" else (word,) if word else ()


def _template(row: Row, before: Template | None) -> Template:
    same = row.text("holds") == SAME
    own = tuple(filter(None, row.text("holds").split(";")))
    return Template(
        **{key: row.text(key) for key in ("job", "when", "name", "operation", "state", "form", "size", "grips")},
        **{key: row.text(key) for key in ("purpose", "tail", "does", "check")},
        place=int(row.number("place")),
        share=row.number("share"),
        most_rpm=row.optional("most_rpm"),
        holds=before.holds if same and before is not None else own,
        same=same,
        makes=ends(row.text("makes")),
        clears=ends(row.text("clears")),
    )


@lru_cache(maxsize=1)
def jobs() -> dict[str, Job]:
    """Every job by its word."""
    stages: dict[str, list[Template]] = {}
    for row in load(STAGES):
        found = stages.setdefault(row.text("job"), [])
        found.append(_template(row, found[-1] if found else None))
    rows = [(row.text("job"), row.text("title"), row.number("least_length")) for row in load(JOBS)]
    return {name: Job(name, title, least, tuple(stages[name])) for name, title, least in rows}


@dataclass(frozen=True)
class Choice:
    """The job, and how it was known: "said", or "assumed" with the reason."""

    job: Job
    assumed: str


def _fits(row: Row, situation: Situation) -> bool:
    body, grain = situation.body, row.text("grain")
    ratio = body.length / body.diameter
    low, high, thick = (row.optional(name) for name in ("ratio_low", "ratio_high", "diameter_high"))
    return (
        row.text("word") == situation.case.work.form
        and grain in ("", situation.traits.grain)
        and (low is None or ratio > low)
        and (high is None or ratio <= high)
        and (thick is None or body.end_diameter <= thick)
    )


def which_job(situation: Situation) -> Choice:
    """The job that the case names, else the one its shape tells. Raises JobUnclear with the words there are."""
    case: Case = situation.case
    rows = load(WORDS)
    said = case.work.purpose
    for row in rows:
        if row.text("kind") == "purpose" and row.text("word") == said:
            return Choice(jobs()[row.text("job")], "")
    for row in rows:
        if row.text("kind") == "form" and _fits(row, situation):
            job = jobs()[row.text("job")]
            return Choice(job, f"nobody said what it shall become; a {case.work.form} of this size is most often that")
    accepted = ", ".join(row.text("word") for row in rows if row.text("kind") == "purpose")
    shape = case.work.form or "piece without a shape"
    raise JobUnclear(f"work.purpose: a {shape} like this can become many things; accepted: {accepted}")


GRIPS = Table(
    "hold_grips.csv",
    (
        Text("method", one_of=METHODS),
        Text("grip", one_of=("centers", "tenon", "recess", "stub", "screws", "face", "touch", "bore")),
        Number("stock", 0, 100),
        Text("source"),
    ),
    ("method",),
    35,
)


@dataclass(frozen=True)
class Grip:
    """What a way of holding takes hold of, and the length in mm that it uses up besides its own sizes."""

    kind: str
    stock: float


@lru_cache(maxsize=1)
def grips() -> dict[str, Grip]:
    """What every way of holding takes hold of."""
    return {row.text("method"): Grip(row.text("grip"), row.number("stock")) for row in load(GRIPS)}
