"""The table of moves at the mill: zeros, depth first, nibbling in, the last light cut, indexing."""

from __future__ import annotations

from math import ceil, sqrt
from typing import NamedTuple

from advisor.centers.wording import length, place
from advisor.physics.center import Setting, ToothedCenter, half_chord
from advisor.units import System

CLEARANCE = 1.0
"""Air between cutter and stock before the first nibble, mm (common practice, no source)."""


class Move(NamedTuple):
    """One line of the table: what is done, and where the readout stands when it is done (mm, None: not moved)."""

    setting: str
    action: str
    text: str
    x: float | None = None
    y: float | None = None
    z: float | None = None

    def as_dict(self, step: int) -> dict[str, object]:
        return {
            "step": step,
            "setting": self.setting,
            "action": self.action,
            "x_mm": self.x,
            "y_mm": self.y,
            "z_mm": self.z,
            "text": self.text,
        }


def schedule(center: ToothedCenter, reverse: bool, system: System) -> list[Move]:
    """Every move for one center, readout zeros as set in its first lines.

    X 0 where the side of the cutter touches the face, Y 0 on the part axis, Z 0 where the cutter's end touches the top
    of the blank. Reverse rotation is the same with Y and the sense of indexing mirrored.
    """
    names = ("A",) if len(center.settings) == 1 else ("A", "B")
    moves = _zeros(center, reverse, system)
    for name, setting in zip(names, center.settings, strict=True):
        for level in _levels(center, system):
            moves += _rough(center, name, setting, level, reverse, system)
            moves.append(_index(center, name, reverse, "rough every tooth before any is finished"))
        moves += _finish(center, name, setting, reverse, system)
        moves.append(_index(center, name, reverse, "the same X, Y and Z for every tooth"))
    return moves


def _zeros(center: ToothedCenter, reverse: bool, system: System) -> list[Move]:
    side = -1 if reverse else 1
    rim = center.outer_radius + center.cutter_radius
    which = "-Y" if reverse else "+Y"
    return [
        Move("", "zero", "X: touch the turned face with the side of the cutter and set X to 0", x=0.0),
        Move(
            "",
            "zero",
            f"Y: touch the rim on the {which} side with the side of the cutter and set Y to "
            f"{place(side * rim, system)}, so that Y 0 is the part axis",
            y=side * rim,
        ),
        Move("", "zero", "Z: touch the top of the blank with the end of the cutter and set Z to 0", z=0.0),
    ]


def _levels(center: ToothedCenter, system: System) -> list[float]:
    """Half the depth, then the whole: a shallower pass at the last Y leaves more land, so it never spoils the tooth."""
    small = 0.02 * 25.4 if system is System.INCH else 0.5
    return [center.depth] if center.depth <= 2 * small else [center.depth / 2, center.depth]


def nibble_places(center: ToothedCenter, setting: Setting, level: float, allowance: float) -> list[float]:
    """Y of every nibble at one level: from air outside the rim in steps of about c/8, stopping short of the last Y."""
    stock = center.outer_radius if setting.z <= 0 else sqrt(center.outer_radius**2 - setting.z**2)
    start = stock + half_chord(center.cutter, level) + CLEARANCE
    last = setting.y + allowance
    count = max(ceil((start - last) / (center.cutter / 8) - 1e-9), 1)
    return [start + (last - start) * i / count for i in range(count + 1)]


def scallop(center: ToothedCenter, step: float) -> float:
    """Height of the cusps that nibbling leaves on the floor of the pocket: a - √(a² - s²/4), mm."""
    a = center.cutter_radius
    return a - sqrt(a * a - step * step / 4)


def _rough(
    center: ToothedCenter, name: str, setting: Setting, level: float, reverse: bool, system: System
) -> list[Move]:
    side = -1 if reverse else 1
    allowance = 0.002 * 25.4 if system is System.INCH else 0.05
    places = nibble_places(center, setting, level, allowance)
    down = setting.z - center.outer_radius
    cusp = scallop(center, places[0] - places[1])
    listed = ", ".join(place(side * y, system) for y in places)
    return [
        Move(name, "height", f"cutter end down from the top of the blank by {length(-down, system)}; lock Z", z=down),
        Move(
            name,
            "depth",
            f"out of the stock in Y, set the depth first: X {place(-level, system)}; lock X",
            x=-level,
            y=side * places[0],
        ),
        Move(
            name,
            "nibble",
            f"walk in over Y {listed}; stop {length(allowance, system)} short "
            f"(plunged singly, these steps leave cusps of {length(cusp, system)} on the floor)",
            y=side * places[-1],
        ),
    ]


def _finish(center: ToothedCenter, name: str, setting: Setting, reverse: bool, system: System) -> list[Move]:
    side = -1 if reverse else 1
    y = side * setting.y
    down = setting.z - center.outer_radius
    start = Move(
        name,
        "depth",
        f"at full depth again: X {place(-center.depth, system)}, Z {place(down, system)}, Y outside the last place",
        x=-center.depth,
        z=down,
    )
    back = "away in +X: it touches nothing on the way"
    if not reverse:
        text = (
            f"last light cut, feeding toward -Y to {place(y, system)}: with the spindle turning clockwise seen from "
            "above this is a climb cut, so take up the slack of the screw and keep a hand on the lock"
        )
    else:
        text = (
            f"last light cut at Y {place(y, system)}: set Y in air and plunge toward -X, which climbs on the back; "
            "feeding toward +Y would cut conventionally"
        )
    return [start, Move(name, "climb", text, y=y), Move(name, "withdraw", f"lock Y, draw {back}", x=CLEARANCE)]


def _index(center: ToothedCenter, name: str, reverse: bool, why: str) -> Move:
    setting = center.settings[0 if name == "A" else 1]
    pitch = 360 / center.teeth
    text = f"index {pitch:g} deg {center.teeth - 1} times and repeat: {why}"
    if setting.turn:
        turn = -setting.turn if reverse else setting.turn
        text += (
            f"; setting B starts {abs(turn):g} deg off setting A: turn the blank {abs(turn):g} deg "
            f"{'from +Y toward +Z' if turn < 0 else 'from +Z toward +Y'} (the blank turns against the pocket)"
        )
    return Move(name, "index", text)


def least_flute(center: ToothedCenter) -> float:
    """Flute length the cutter needs to clear the top of the blank: R - z of the lowest setting, mm."""
    return center.outer_radius - min(s.z for s in center.settings)
