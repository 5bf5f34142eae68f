"""What the drawing of a setup is made from: blank, hold, centers, in mm, the headstock end of the blank at zero."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True)
class Blank:
    """The piece as it stands in the lathe. `diameter` is swept; `end` is the side of a square, the flats of an octagon.

    `flat` and `log_radius` describe a half-log along its grain: axis above the flat, radius of the log; else they are
    missing. `crack` is how far one runs over the face.
    """

    form: str
    diameter: float
    length: float
    end: float
    trued: bool
    across: bool
    flat: float | None = None
    log_radius: float | None = None
    wall: float | None = None
    floor: float | None = None
    finished: float | None = None
    profile: tuple[tuple[float, float], ...] = ()
    crack: float | None = None
    from_pith: bool = False


@dataclass(frozen=True)
class Drive:
    """The drive center: its kind, diameters and teeth; `seated` is how deep they are sunk in."""

    kind: str
    outer: float
    inner: float = 0.0
    teeth: int | None = None
    seated: float = 0.0


@dataclass(frozen=True)
class Tail:
    """The tail center; `angle` is the included angle of a point, `cup` the outside diameter of a cup."""

    kind: str
    angle: float | None = None
    cup: float | None = None


@dataclass(frozen=True)
class Held:
    """The way of holding by its id, and its sizes by the names of the answer."""

    method: str
    sizes: Mapping[str, float] = field(default_factory=dict)
    drive: Drive | None = None
    overhang: float | None = None


@dataclass(frozen=True)
class Setup:
    """Everything on the drawing; without a hold the blank stands alone."""

    blank: Blank
    held: Held | None = None
    tail: Tail | None = None
    steady: float | None = None
    hand_rest: bool = True
