"""Every way of holding: where it comes first, and where it is refused or not advised, and for what reason.

All of it is common practice, no source. A kit is named where another hold would be reached for before it.
"""

import pytest

from advisor.models.case import METHODS
from tests.practice.holding import NO, grounds, judged
from tests.rules.bench import advice

FINISHED = "BOWL; work.state=finished; cut.operation=finishing"
ROUND = "SPINDLE; work.form=round; work.state=round"
SUCTION = f"{FINISHED}; hold.vacuum.gauge=70kPa; hold.vacuum.seal_diameter=8in"
BAR = "ROD; work.length=900mm; machine.spindle_bore=30mm; machine.between_centers=600mm"
FIRST = {
    "spur-drive": "SPINDLE",
    "two-spur-drive": "BOWL; work.form=log",
    "toothed-ring-drive": f"{ROUND}; work.diameter=24mm; work.length=150mm",
    "cup-drive": f"{ROUND}; work.diameter=40mm; cut.operation=finishing; hold.kit=[cup-drive, two-spur-drive]",
    "point-and-pin-drive": "ROD; work.diameter=10mm; machine.kind=wood-lathe; hold.kit=[point-and-pin-drive, vacuum]",
    "square-socket-drive": "PEN; hold.method=; work.form=square; work.wall=; work.state=not-round; work.length=130mm; "
    "hold.kit=[square-socket-drive, spur-drive]",
    "driving-dog": "PLASTIC; hold.kit=[driving-dog, friction-block]",
    "mandrel": "PEN; hold.method=",
    "friction-block": FINISHED,
    "faceplate-screws": "BOWL; work.moisture=green",
    "screw-chuck": "BOWL",
    "pin-chuck": "BOWL; work.form=log; hold.kit=[pin-chuck, screw-chuck]",
    "glue-block": "STONE",
    "waste-block-faceplate": "PLASTIC; work.form=disc; work.diameter=120mm; work.length=20mm",
    "paper-joint": "DISC; hold.kit=[paper-joint, vacuum, jam-chuck]",
    "double-sided-tape": "DISC",
    "jaws-on-tenon": "BOWL; work.state=round",
    "long-jaws": "KNOB; hold.kit=[long-jaws, jaws-on-tenon, collet]",
    "jaws-in-recess": "BOWL; work.state=round; work.length=40mm; work.purpose=platter; cut.operation=finishing",
    "rubber-button-jaws": f"{FINISHED}; hold.kit=[rubber-button-jaws, ring-clamp-plate]",
    "vacuum": f"{SUCTION}; hold.kit=[vacuum, rubber-button-jaws]",
    "jam-chuck": "BALL; hold.kit=[jam-chuck, vacuum, rubber-button-jaws]",
    "collet": "ROD",
    "collet-block": "ROD; hold.kit=[collet-block, three-jaw]",
    "split-bushing": "ROD; work.diameter=60mm; work.length=120mm",
    "soft-jaws": "PLASTIC; work.diameter=90mm",
    "four-jaw-independent": "PLASTIC; work.form=square; work.state=not-round",
    "three-jaw": "ROD; hold.kit=[three-jaw]",
    "drill-chuck": "ROD; work.diameter=10mm; work.length=40mm; machine.drawbar=yes; hold.kit=[drill-chuck, three-jaw]",
    "sphere-cups": "BALL",
    "clamped-faceplate": "PLASTIC; work.material=acetal; work.form=disc; work.diameter=120mm; work.length=20mm",
    "ring-clamp-plate": f"{FINISHED}; work.condition=[live-edge]; hold.kit=[ring-clamp-plate, rubber-button-jaws]",
    "offset-faceplate": "BOWL; work.offset=40mm",
    "through-spindle": BAR,
    "keyed-stud": "STONE; hold.kit=[keyed-stud, three-jaw]",
}
# Situation and the ground that speaks against it there.
AGAINST = {
    "spur-drive": [
        ("SPINDLE; machine.tailstock=no", "centers-need-the-tailstock"),
        (FINISHED, "holes-that-stay"),
        ("PLASTIC", "screws-in-the-wrong-stuff"),
    ],
    "two-spur-drive": [
        ("KNOB", "two-spurs-in-a-small-end"),
        (FINISHED, "holes-that-stay"),
        ("BOWL; cut.operation=hollowing", "centers-need-the-tailstock"),
    ],
    "toothed-ring-drive": [
        ("BOWL", "ring-on-side-grain"),
        ("BOWL", "ring-on-a-large-end"),
        ("SPINDLE; work.condition=[rot]", "ring-in-a-soft-end"),
    ],
    "cup-drive": [
        ("BOWL", "cup-on-a-large-end"),
        ("BOWL", "ring-on-side-grain"),
        ("SPINDLE", "slips-too-soon"),
    ],
    "point-and-pin-drive": [
        ("SPINDLE", "pin-drive-for-small-ends"),
        ("SPINDLE", "pin-drive-out-of-balance"),
        ("DISC", "ring-on-side-grain"),
    ],
    "square-socket-drive": [
        ("ROD", "socket-needs-a-square"),
        ("SPINDLE; work.diameter=5in", "socket-too-small"),
        ("SPINDLE; machine.tailstock=no", "centers-need-the-tailstock"),
    ],
    "driving-dog": [
        ("SPINDLE", "dog-on-a-square"),
        ("PLASTIC; work.diameter=90mm", "dog-too-large"),
        ("PLASTIC; machine.tailstock=no", "centers-need-the-tailstock"),
    ],
    "mandrel": [
        ("SPINDLE", "mandrel-needs-a-bore"),
        ("BOWL", "slips-too-soon"),
        ("PEN; machine.tailstock=no", "centers-need-the-tailstock"),
    ],
    "friction-block": [
        ("BOWL", "friction-block-is-for-the-end"),
        ("BOWL", "heavy-cuts-in-a-jam-fit"),
        ("DISC", "slips-too-soon"),
    ],
    "faceplate-screws": [
        ("DISC", "too-thin-for-screws"),
        ("KNOB", "plate-on-a-small-end"),
        ("STONE", "screws-in-the-wrong-stuff"),
    ],
    "screw-chuck": [
        ("SPINDLE", "lone-screw-in-end-grain"),
        ("BOWL; cut.rotation=reverse", "unscrews-in-reverse"),
        ("BOWL; work.moisture=green", "wet-on-one-screw"),
    ],
    "pin-chuck": [
        ("SPINDLE", "pin-in-end-grain"),
        ("BOWL; work.condition=[crack]", "pin-in-cracked-wood"),
        ("DISC", "thin-for-a-pin"),
    ],
    "glue-block": [
        ("SPINDLE", "tall-on-a-glue-block"),
        ("BOWL; work.moisture=green", "glue-on-wet-wood"),
        ("BALL", "ball-has-no-face"),
    ],
    "waste-block-faceplate": [
        ("BOWL; hold.glue.cured=no", "glue-not-cured"),
        ("PLASTIC; work.material=acetal", "nothing-sticks"),
        ("BOWL; hold.screws.kind=plasterboard", "brittle-screws"),
    ],
    "paper-joint": [
        ("BOWL", "paper-and-blows"),
        ("BOWL", "heavy-on-paper"),
        ("BOWL", "tall-on-paper"),
    ],
    "double-sided-tape": [
        ("BOWL", "tall-on-tape"),
        ("DISC; work.diameter=180mm", "wide-on-tape"),
        ("DISC; cut.operation=hollowing", "hollowing-on-tape"),
    ],
    "jaws-on-tenon": [
        ("BOWL; hold.tenon.diameter=45mm", "tenon-too-small"),
        (FINISHED, "nothing-left-to-grip"),
        ("STONE", "jaws-on-stone"),
    ],
    "long-jaws": [
        ("BOWL", "long-jaws-on-side-grain"),
        ("STONE", "jaws-on-stone"),
        (FINISHED, "jaw-marks-that-stay"),
    ],
    "jaws-in-recess": [
        ("PLATTER; hold.recess.wall=10mm", "recess-wall-too-thin"),
        ("PLATTER; work.condition=[crack]", "recess-in-cracked-wood"),
        ("PLATTER; work.grain=along", "recess-in-end-grain"),
    ],
    "rubber-button-jaws": [
        ("BOWL", "buttons-on-a-rough-piece"),
        (f"{FINISHED}; work.condition=[live-edge]", "buttons-on-a-natural-edge"),
        ("DISC", "heavy-cuts-on-buttons"),
    ],
    "vacuum": [
        ("BOWL", "suction-on-a-rough-piece"),
        (f"{SUCTION}; work.condition=[void]", "suction-leaks"),
        ("BALL", "lets-go"),
    ],
    "jam-chuck": [
        ("BOWL", "jam-needs-a-true-face"),
        ("BALL; work.condition=[check]", "cracked-in-a-jam-fit"),
        ("BALL; work.moisture=green", "wet-in-a-jam-fit"),
    ],
    "collet": [
        ("BOWL", "too-large-for-collet"),
        ("SPINDLE", "sawn-stock-in-a-collet"),
        ("BALL", "ball-in-a-sleeve"),
    ],
    "collet-block": [
        ("BOWL", "too-large-for-collet-block"),
        ("SPINDLE", "sawn-stock-in-a-collet"),
        ("ROD; machine.nose=threaded; cut.rotation=reverse", "reverse-loosens-a-thread"),
    ],
    "split-bushing": [
        ("BOWL", "too-large-for-split-bushing"),
        ("SPINDLE", "sawn-stock-in-a-collet"),
        ("BALL", "ball-in-a-sleeve"),
    ],
    "soft-jaws": [
        ("BOWL", "too-large-for-soft-jaws"),
        ("SPINDLE", "sawn-stock-in-a-collet"),
        ("ROD; machine.nose=threaded; cut.rotation=reverse", "reverse-loosens-a-thread"),
    ],
    "four-jaw-independent": [
        ("BOWL", "four-jaws-on-side-grain"),
        ("DISC", "four-jaws-on-a-thin-disc"),
        ("BOWL", "too-large-for-engineers-jaws"),
    ],
    "three-jaw": [
        ("SPINDLE", "three-jaws-on-a-square"),
        ("PEN", "tube-in-three-jaws"),
        ("ROD; hold.kit=[collet, three-jaw]", "bare-jaws-on-wood"),
    ],
    "drill-chuck": [
        ("ROD", "too-large-for-drill-chuck"),
        ("ROD; work.diameter=10mm", "drill-chuck-walks-out"),
        ("BALL", "jaw-marks-that-stay"),
    ],
    "sphere-cups": [
        ("SPINDLE", "cups-need-a-ball"),
        ("BALL; cut.operation=roughing", "heavy-cuts-on-buttons"),
        ("BALL; machine.tailstock=no", "pads-need-the-tailstock"),
    ],
    "clamped-faceplate": [
        ("BOWL", "clamps-on-tall-work"),
        ("KNOB", "clamps-on-small-work"),
        ("BALL", "ball-has-no-face"),
    ],
    "ring-clamp-plate": [
        ("BOWL", "ring-clamp-on-a-rough-piece"),
        ("DISC", "heavy-cuts-on-buttons"),
        (f"{FINISHED}; work.condition=[check]", "ring-clamp-on-a-cracked-rim"),
    ],
    "offset-faceplate": [
        ("KNOB", "plate-on-a-small-end"),
        ("BALL", "ball-has-no-face"),
        ("BOWL; work.length=20mm", "too-thin-for-screws"),
        ("BOWL; machine.nose=threaded; cut.rotation=reverse", "reverse-loosens-a-thread"),
    ],
    "through-spindle": [
        ("BOWL", "through-spindle-for-bars"),
        ("SPINDLE", "bar-not-round"),
        (f"{BAR}; machine.spindle_bore=20mm", "spindle-bore-too-small"),
    ],
    "keyed-stud": [
        ("BOWL", "stud-in-wood"),
        ("STONE; work.condition=[check]", "stud-in-cracked-stuff"),
        ("STONE; work.length=20mm", "stud-in-a-thin-piece"),
        ("STONE; work.diameter=28mm", "stud-in-a-small-end"),
        ("STONE; work.length=150mm; cut.operation=hollowing", "long-on-a-stud"),
    ],
}
CASES_AGAINST = [(method, text, ground) for method, entries in AGAINST.items() for text, ground in entries]


def test_every_method_is_in_both_tables() -> None:
    assert set(FIRST) == set(AGAINST) == set(METHODS)
    assert all(len({ground for _, ground in entries}) >= 3 for entries in AGAINST.values())


@pytest.mark.parametrize("method", FIRST)
def test_where_it_comes_first(method: str) -> None:
    best = advice(FIRST[method]).judgement.holds[0]
    assert best.method == method
    assert best.accepted
    assert best.figures.typical is not None or "by-practice" in grounds(best)


@pytest.mark.parametrize(("method", "text", "ground"), CASES_AGAINST)
def test_where_it_will_not_do(method: str, text: str, ground: str) -> None:
    hold = judged(text, method)
    assert hold.verdict in NO
    assert ground in grounds(hold)
