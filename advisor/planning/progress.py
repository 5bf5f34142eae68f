"""How far the piece has come: what is left at each end, what was cut there, how wet it is."""

from __future__ import annotations

from dataclasses import dataclass, field

from advisor.models.case import Drive, Recess, Tenon
from advisor.planning.jobs import ENDS, PAUSE, Template, grips
from advisor.situation import Situation

STOCK, CUT, GONE = "stock", "cut", "gone"
SEATED = ("tenon", "recess")  # grips that are cut to the jaws
HOLLOWED = frozenset({"bowl", "platter", "hollow-form"})
HOLLOWS = "hollow"
NO_MARK = ("touch", "bore")
EACH_END = tuple(end for end in ENDS if end != "both")


@dataclass
class Progress:
    """What the stages so far have done.

    ends     of foot and top: stock to cut or to mark, cut for a hold, or gone
    seats    the tenon and recess that were cut at an end and are used again; seated_by: the hold they were cut for
    stock    mm of its length that an end gives up to its holds
    marks    kinds of grip that have marked the foot; gone_by: the stage that took an end away
    dried, hollowed: the pause, and the stage that hollows it, lie behind it
    drive    the drive center that stays in its holes; when_dry: the tenon to be trued out of the one cut wet
    """

    green: bool
    ends: dict[str, str]
    seats: dict[str, tuple[Tenon | None, Recess | None]]
    stock: dict[str, float] = field(default_factory=lambda: dict.fromkeys(EACH_END, 0.0))
    marks: set[str] = field(default_factory=set)
    gone_by: dict[str, str] = field(default_factory=dict)
    seated_by: dict[str, str] = field(default_factory=dict)
    method: str = ""
    drive: Drive | None = None
    when_dry: Tenon | None = None
    first: bool = True
    dried: bool = False
    hollowed: bool = False

    def after(self, stage: Template, method: str) -> None:
        """What the piece is like when the stage is done."""
        if stage.operation == PAUSE:
            self.dried = True
            self.drive = None
            if self.when_dry is not None:
                self.seats["foot"] = (self.when_dry, None)
        for end in stage.makes:
            self.ends[end] = CUT
        for end in stage.clears:
            self.ends[end] = GONE
            self.gone_by[end] = stage.name
        self.hollowed = self.hollowed or (stage.job in HOLLOWED and HOLLOWS in stage.name)
        if method:
            self.method = method
            kind = grips()[method].kind
            if stage.grips in ("foot", "both") and kind not in NO_MARK:
                self.marks.add(kind)
        self.first = self.first and not stage.on_the_lathe


def begun(situation: Situation, skipped: tuple[Template, ...]) -> Progress:
    """A piece as the person has it: stages that lie behind it are taken as done.

    A finished piece has nothing left at its foot, unless the person gives the tenon or the recess in it.
    """
    hold = situation.case.hold
    given = (hold.tenon, hold.recess)
    progress = Progress(situation.traits.green, dict.fromkeys(EACH_END, STOCK), {"foot": given, "top": (None, None)})
    for stage in skipped:
        progress.after(stage, "")
    progress.first = True
    if given != (None, None):
        progress.ends["foot"] = CUT
    elif skipped and situation.traits.state == "finished":
        progress.ends["foot"] = GONE
        progress.gone_by["foot"] = "before this plan"
    return progress
