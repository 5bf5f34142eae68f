"""Holds in situations next to each other: one thing changes, and the answer changes with it or must not.

Every verdict here is common practice, no source. The ground named is the rule a turner would give as the reason in
the situation where the hold does worse; a dash where the answer must stay what it was.
"""

import pytest

from tests.practice.holding import CARE, NO, OK, REFUSED, SUITS, grounds, judged

TENON = "BOWL; hold.tenon.diameter=100mm; work.state=round"
FINISHED = "BOWL; work.state=finished; cut.operation=finishing"
END = "SPINDLE; work.form=round; work.state=round; work.length=4in"
LIGHT_DISC = "DISC; cut.operation=finishing"

# (situation, method, verdicts there, what changes, verdicts then, ground)
Pair = tuple[str, str, tuple[str, ...], str, tuple[str, ...], str]
SCREWED: list[Pair] = [
    ("KNOB", "screw-chuck", OK, "work.diameter=80mm", REFUSED, "lone-screw-in-end-grain"),
    ("KNOB; work.state=round", "screw-chuck", OK, "work.material=red oak", OK, "-"),
    ("BOWL; work.diameter=100mm; work.length=50mm", "screw-chuck", OK, "work.grain=along", REFUSED,
     "lone-screw-in-end-grain"),
    ("BOWL", "screw-chuck", OK, "cut.rotation=reverse", REFUSED, "unscrews-in-reverse"),
    ("BOWL", "screw-chuck", OK, "work.moisture=green", NO, "wet-on-one-screw"),
    ("BOWL; work.diameter=6in; work.length=2in", "screw-chuck", SUITS, "work.moisture=green", CARE,
     "damp-on-one-screw"),
    ("BOWL", "screw-chuck", OK, "work.length=8in", NO, "heavy-on-one-screw"),
    ("BOWL; work.diameter=6in; work.length=3in", "screw-chuck", OK, "work.length=7in; machine.tailstock=no", NO,
     "long-on-one-screw"),
    ("BOWL", "faceplate-screws", SUITS, "work.moisture=green", OK, "-"),
    ("BOWL", "faceplate-screws", SUITS, "work.length=20mm", REFUSED, "too-thin-for-screws"),
    ("BOWL", "faceplate-screws", SUITS, "work.length=30mm", CARE, "thin-for-screws"),
    ("BOWL", "faceplate-screws", SUITS, "hold.screws.kind=plasterboard", REFUSED, "brittle-screws"),
    ("BOWL", "faceplate-screws", SUITS, "hold.screws.kind=sheet-metal", SUITS, "-"),
    ("BOWL", "faceplate-screws", SUITS, "work.condition=[punky]", CARE, "soft-wood-in-the-hold"),
    ("BOWL", "faceplate-screws", SUITS, "cut.rotation=reverse; machine.nose=threaded; machine.nose_lock=no", REFUSED,
     "reverse-loosens-a-thread"),
    ("BOWL; machine.nose=threaded; machine.nose_lock=no", "faceplate-screws", SUITS, "machine.nose_lock=yes", SUITS,
     "-"),
    ("BOWL", "faceplate-screws", SUITS, "work.state=finished; cut.operation=finishing", REFUSED, "holes-that-stay"),
    ("BOWL", "faceplate-screws", SUITS, "work.diameter=60mm; work.length=40mm", NO, "plate-on-a-small-end"),
    ("BOWL", "pin-chuck", OK, "machine.tailstock=no", NO, "pin-without-tail"),
    ("BOWL", "pin-chuck", OK, "work.condition=[crack]", REFUSED, "pin-in-cracked-wood"),
    ("BOWL", "pin-chuck", OK, "work.length=25mm", REFUSED, "thin-for-a-pin"),
    ("BOWL", "pin-chuck", SUITS, "work.diameter=14in", CARE, "large-on-a-pin"),
]  # fmt: skip
JAWED: list[Pair] = [
    (TENON, "jaws-on-tenon", OK, "hold.tenon.diameter=58mm", CARE, "tenon-small"),
    (TENON, "jaws-on-tenon", OK, "hold.tenon.diameter=58mm; machine.tailstock=no", NO, "tenon-small-and-alone"),
    (TENON, "jaws-on-tenon", OK, "hold.tenon.diameter=45mm", NO, "tenon-too-small"),
    (TENON, "jaws-on-tenon", OK, "hold.tenon.diameter=85mm", OK, "-"),
    (f"{TENON}; hold.tenon.length=10mm; hold.chuck.jaw_depth=12mm", "jaws-on-tenon", OK, "hold.tenon.length=20mm",
     REFUSED, "tenon-bottoms"),
    (f"{TENON}; hold.tenon.length=20mm; hold.chuck.jaw_depth=12mm", "jaws-on-tenon", REFUSED,
     "hold.chuck.jaw_depth=30mm", OK, "tenon-bottoms"),
    ("BOWL; work.state=round", "jaws-on-tenon", OK, "work.state=finished; cut.operation=finishing", REFUSED,
     "nothing-left-to-grip"),
    ("BOWL; work.state=round", "jaws-on-tenon", SUITS, "work.state=not-round", CARE, "tenon-still-to-be-cut"),
    ("PLATTER", "jaws-in-recess", OK, "work.moisture=green", NO, "recess-in-wet-wood"),
    ("PLATTER", "jaws-in-recess", OK, "hold.recess.wall=12mm", REFUSED, "recess-wall-too-thin"),
    ("PLATTER", "jaws-in-recess", OK, "hold.recess.wall=30mm", OK, "-"),
    ("PLATTER", "jaws-in-recess", OK, "work.condition=[check]", REFUSED, "recess-in-cracked-wood"),
    ("PLATTER", "jaws-in-recess", OK, "work.grain=along", NO, "recess-in-end-grain"),
    ("PLATTER; work.state=round", "jaws-in-recess", OK, "work.state=not-round", NO, "recess-in-a-lopsided-blank"),
    (f"{END}; work.diameter=2in", "long-jaws", OK, "work.grain=across", NO, "long-jaws-on-side-grain"),
    ("BOWL; work.moisture=green", "long-jaws", CARE, "work.moisture=12%", NO, "long-jaws-on-side-grain"),
    ("ROD; hold.kit=[three-jaw]", "three-jaw", OK, "hold.kit=[three-jaw, collet]", NO, "bare-jaws-on-wood"),
    ("ROD; hold.kit=[three-jaw]", "three-jaw", OK, "work.form=square; work.state=not-round", REFUSED,
     "three-jaws-on-a-square"),
    ("PLASTIC", "three-jaw", OK, "work.form=tube; work.wall=4mm", REFUSED, "tube-in-three-jaws"),
    ("ROD; hold.kit=[three-jaw]", "three-jaw", OK, "machine.tailstock=no; hold.kit=[three-jaw]; work.length=140mm",
     REFUSED, "long-in-engineers-jaws"),
    ("ROD", "four-jaw-independent", OK, "machine.kind=wood-lathe", NO, "engineers-chuck-on-a-wood-lathe"),
    ("ROD", "four-jaw-independent", OK, "work.grain=across", NO, "four-jaws-on-side-grain"),
    ("ROD", "four-jaw-independent", OK, "work.form=square; work.state=not-round", OK, "-"),
    ("ROD", "collet", OK, "work.diameter=45mm", REFUSED, "too-large-for-collet"),
    ("ROD", "collet", OK, "work.form=square; work.state=not-round", REFUSED, "sawn-stock-in-a-collet"),
    ("ROD", "collet", SUITS, "work.moisture=green", CARE, "green-in-a-full-grip"),
    ("ROD; work.diameter=10mm; work.length=40mm; machine.drawbar=yes", "drill-chuck", OK, "machine.drawbar=no", NO,
     "drill-chuck-walks-out"),
    (FINISHED, "rubber-button-jaws", OK, "work.condition=[live-edge]", REFUSED, "buttons-on-a-natural-edge"),
    (FINISHED, "rubber-button-jaws", OK, "cut.operation=shaping", NO, "heavy-cuts-on-buttons"),
]  # fmt: skip
FITTED: list[Pair] = [
    ("DISC", "double-sided-tape", OK, "work.length=40mm", REFUSED, "tall-on-tape"),
    ("DISC", "double-sided-tape", OK, "work.length=16mm; work.diameter=50mm", REFUSED, "narrow-on-tape"),
    ("DISC", "double-sided-tape", OK, "work.diameter=180mm", NO, "wide-on-tape"),
    ("DISC", "double-sided-tape", OK, "cut.operation=hollowing", REFUSED, "hollowing-on-tape"),
    ("DISC", "double-sided-tape", OK, "work.state=not-round", NO, "tape-and-blows"),
    ("DISC", "double-sided-tape", OK, "work.material=acetal; work.grain=none; work.moisture=", REFUSED,
     "nothing-sticks"),
    ("DISC", "glue-block", OK, "work.moisture=green; hold.glue.kind=pva", NO, "glue-on-wet-wood"),
    ("DISC", "glue-block", OK, "work.moisture=green; hold.glue.kind=cyanoacrylate", REFUSED, "thin-glue-on-wet-wood"),
    ("DISC", "glue-block", OK, "work.moisture=green; hold.glue.kind=polyurethane", OK, "-"),
    ("DISC; hold.glue.cured=yes", "glue-block", OK, "hold.glue.cured=no", REFUSED, "glue-not-cured"),
    ("DISC", "glue-block", SUITS, "work.condition=[oily]", CARE, "glue-on-oily-wood"),
    ("DISC", "glue-block", OK, "work.length=240mm", NO, "tall-on-a-glue-block"),
    ("DISC", "glue-block", OK, "work.length=150mm; machine.tailstock=no", NO, "tall-on-a-glue-block-alone"),
    ("DISC", "paper-joint", OK, "work.state=not-round", NO, "paper-and-blows"),
    ("DISC", "paper-joint", OK, "work.length=50mm", NO, "tall-on-paper"),
    ("BALL", "jam-chuck", OK, "work.condition=[check]", REFUSED, "cracked-in-a-jam-fit"),
    ("BALL", "jam-chuck", OK, "work.moisture=green", NO, "wet-in-a-jam-fit"),
    (f"{FINISHED}; hold.vacuum.gauge=70kPa; hold.vacuum.seal_diameter=8in", "vacuum", OK, "work.condition=[worm-holes]",
     REFUSED, "suction-leaks"),
    (f"{FINISHED}; hold.vacuum.gauge=70kPa; hold.vacuum.seal_diameter=8in", "vacuum", OK, "work.state=not-round",
     REFUSED, "suction-on-a-rough-piece"),
    (LIGHT_DISC, "clamped-faceplate", OK, "work.length=60mm", NO, "clamps-on-tall-work"),
    (LIGHT_DISC, "clamped-faceplate", OK, "work.diameter=70mm", REFUSED, "clamps-on-small-work"),
    (FINISHED, "ring-clamp-plate", CARE, "work.state=not-round", REFUSED, "ring-clamp-on-a-rough-piece"),
]  # fmt: skip
CENTERS: list[Pair] = [
    ("SPINDLE", "spur-drive", OK, "machine.tailstock=no", REFUSED, "centers-need-the-tailstock"),
    ("SPINDLE", "spur-drive", OK, "work.condition=[check]", OK, "-"),
    ("SPINDLE", "toothed-ring-drive", OK, "work.grain=across", NO, "ring-on-side-grain"),
    ("SPINDLE", "toothed-ring-drive", OK, "work.condition=[rot]", NO, "ring-in-a-soft-end"),
    ("SPINDLE; work.state=round", "toothed-ring-drive", OK, "work.diameter=10in; work.grain=across", NO,
     "ring-on-a-large-end"),
    ("SPINDLE; work.form=round; work.state=round; work.diameter=2in; work.length=8in; cut.operation=finishing",
     "cup-drive", OK, "work.diameter=90mm; work.length=12in", NO, "cup-on-a-large-end"),
    ("SPINDLE", "two-spur-drive", OK, "work.diameter=35mm; work.form=round", NO, "two-spurs-in-a-small-end"),
    ("SPINDLE", "square-socket-drive", OK, "work.form=round", REFUSED, "socket-needs-a-square"),
    ("SPINDLE", "square-socket-drive", OK, "work.diameter=5in", REFUSED, "socket-too-small"),
    ("ROD; work.diameter=15mm", "point-and-pin-drive", OK, "work.diameter=30mm", REFUSED, "pin-drive-for-small-ends"),
    ("PEN", "mandrel", OK, "work.form=round; work.wall=", REFUSED, "mandrel-needs-a-bore"),
    ("PEN", "mandrel", SUITS, "work.length=180mm", CARE, "long-on-a-mandrel"),
    ("BALL", "sphere-cups", OK, "work.form=round", REFUSED, "cups-need-a-ball"),
    ("PLATTER", "friction-block", OK, "work.state=not-round; cut.operation=roughing", NO,
     "friction-block-is-for-the-end"),
    ("PLASTIC", "driving-dog", OK, "work.diameter=90mm; work.length=200mm", REFUSED, "dog-too-large"),
    ("PLASTIC", "driving-dog", SUITS, "work.material=sugar maple; work.grain=along; work.moisture=12%", CARE,
     "dog-on-wood"),
    ("ROD; work.length=900mm; machine.spindle_bore=30mm", "through-spindle", OK, "machine.spindle_bore=20mm", REFUSED,
     "spindle-bore-too-small"),
    ("ROD; work.length=900mm; machine.spindle_bore=30mm", "through-spindle", OK, "machine.spindle_bore=",
     ("could-not-check",), "spindle-bore-not-given"),
]  # fmt: skip
PAIRS = [*SCREWED, *JAWED, *FITTED, *CENTERS]


def ident(pair: Pair) -> str:
    return f"{pair[1]}: {pair[0]}; {pair[3]}"


@pytest.mark.parametrize("pair", PAIRS, ids=ident)
def test_one_thing_changes(pair: Pair) -> None:
    situation, method, before, change, after, ground = pair
    here, there = judged(situation, method), judged(f"{situation}; {change}", method)
    assert here.verdict in before, grounds(here)
    assert there.verdict in after, grounds(there)
    if ground != "-":
        assert ground in grounds(here) ^ grounds(there)


def test_there_are_sixty() -> None:
    assert len(PAIRS) >= 60
    assert len({ident(pair) for pair in PAIRS}) == len(PAIRS)
