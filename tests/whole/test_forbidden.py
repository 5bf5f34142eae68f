"""Every forbidden combination is noticed when it is planted, and none is found in a sound answer."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from copy import deepcopy
from functools import lru_cache
from typing import Any

import pytest

from advisor.advice.advise import default_engine
from advisor.advice.whole import answer_for
from advisor.cli import ANSWER_PARTS
from advisor.engine import Fact, Ruling
from advisor.reading import read_case
from tests.rules.bench import words_of
from tests.whole.answers import answer
from tests.whole.forbidden import FORBIDDEN, Answer

SOUND = "SPINDLE; hold.method=spur-drive; machine.handwheel_lead=4mm"
GO = {"verdict": "go", "reasons": []}
CARE = {"verdict": "go-with-care"}
EMPTY = {"thrust.window": "empty"}
SUITS = {"holding.0.verdict": "suits"}
FAST = {"speed.ceiling_rpm": 99_999.0}
ANY = {"speed.ceiling_rpm": 1.0}
HOLD = "holding.0"
Change = dict[str, Any]


def held(method: str, verdict: str = "suits") -> Change:
    """A hold in use of this name and verdict, with nothing said of it."""
    return {HOLD: {"method": method, "verdict": verdict, "margins": [], "grounds": []}}


def ground(rule: str) -> Change:
    """The hold in use suits although this rule spoke."""
    return {**SUITS, f"{HOLD}.grounds": [{"rule": rule, "text": "x"}]}


# name of the combination | what the case says beside SOUND | what is changed in its answer
PLANTS: dict[str, tuple[str, Change]] = {
    "milder than a rule that spoke": ("", {"verdict": "go", "fired": ["cracked-through"]}),
    "harsher than every rule that spoke": ("", {"verdict": "do-not-mount", "fired": []}),
    "a verdict without a reason": ("", {"verdict": "ask-first", "reasons": []}),
    "a first reason that is not the worst": ("", {"reasons": [{"rule": "eyes", "text": "x"}]}),
    "a go for what is cracked through or treated": ("work.condition=[treated]", GO),
    "a go for what is never turned": ("work.material=manchineel", CARE),
    "a go for magnesium without the extinguisher for it": (
        "work.material=magnesium; machine.extinguisher=water",
        {"verdict": "ask-first"},
    ),
    "a go for celluloid cut dry without water": (
        "work.material=celluloid; machine.extinguisher=none; cut.cooling=dry",
        CARE,
    ),
    "a go for a stone that may hold asbestos cut dry": ("work.material=soapstone; cut.cooling=dry", CARE),
    "a go in reverse on a nose that unscrews": ("machine.nose=threaded; cut.rotation=reverse", CARE),
    "a go for what strikes the machine": ("machine.swing=20mm", GO),
    "a go out of round over the carriage": ("machine.swing_over_carriage=20mm; work.state=not-round", GO),
    "a go for a long bar behind the spindle": ("hold.rear_overhang=900mm", CARE),
    "a go for an unknown large cracked lump": (
        "work.material=unknown; work.condition=[crack]; work.diameter=200mm",
        CARE,
    ),
    "a plain go for an unknown piece": ("work.material=unknown", GO),
    "a go for a strong sensitizer with nothing against it": ("work.material=cocobolo; person.respirator=none", CARE),
    "a plain go for a strong sensitizer where nothing was said of dust": (
        "work.material=teak; -person.extraction; -person.respirator",
        GO,
    ),
    "a strong sensitizer without a word of a mask": (
        "work.material=yew; -person.respirator",
        {"cautions": [], "reasons": [], "checks": [], "notes": []},
    ),
    "a go for asthma and a wood that sensitizes lungs": ("work.material=teak; person.asthma=yes", CARE),
    "a plain go for asthma": ("person.asthma=yes", GO),
    "a go for what this person reacted to": ("work.material=iroko; person.reacted_before=[Iroko]", CARE),
    "a go for large work on a machine nobody described": ("work.diameter=500mm", CARE),
    "a plain go for large work": ("work.mass=30kg", GO),
    "a go outboard": ("hold.outboard=yes", CARE),
    "a go with nails in it": ("work.condition=[nails]", CARE),
    "a plain go for frozen wood": ("work.moisture=frozen", GO),
    "a go for food and a sensitizer": ("work.material=rosewood; work.use=food", CARE),
    "a speed for what must not be mounted": ("", {"verdict": "do-not-mount"}),
    "no speed for what may be mounted": ("", {"speed.start_rpm": 0}),
    "a start above the ceiling": ("", {"speed.start_rpm": 9e9}),
    "a step above the ceiling": ("", {"speed.steps": [{"rpm": 9e9}]}),
    "a ceiling above one of its limits": ("", FAST),
    "a governing limit that does not govern": ("", {"speed.ceiling_rpm": 1.0}),
    "a ceiling above the top band": ("", FAST),
    "a ceiling above what a gaping crack allows": ("work.crack.gap=2mm", {"speed.ceiling_rpm": 3400.0}),
    "a ceiling past what hands can follow": ("", {"speed.ceiling_rpm": 4001.0}),
    "a ceiling above the machine maximum": ("machine.max_rpm=900", {"speed.ceiling_rpm": 901.0}),
    "a ceiling above the speed marked on the chuck": (
        "hold.chuck.max_rpm=900",
        {**held("long-jaws"), "speed.ceiling_rpm": 901.0},
    ),
    "a ceiling too fast for sanding": ("cut.operation=sanding", {"speed.ceiling_rpm": 3900.0}),
    "a ceiling too fast for the bit": (
        "cut.operation=drilling; cut.drill_diameter=30mm",
        {"speed.ceiling_rpm": 501.0},
    ),
    "a start no speed of the lathe": ("machine.speeds=[300, 600]", {"speed.start_rpm": 450.0}),
    "a speed below the slowest of the lathe": ("machine.min_rpm=200", {"speed.start_rpm": 150.0}),
    "a brisk start out of round": ("work.state=not-round; -machine.min_rpm", {"speed.start_rpm": 3000.0}),
    "a plain go with more energy than a falling brick": ("", {**GO, "speed.energy_j": 51.0}),
    "a wanted speed over the ceiling passed in silence": ("cut.wanted_rpm=3900", {**ANY, "fired": []}),
    "a dial left over the ceiling passed in silence": ("machine.rpm_set=3900", {**ANY, "fired": []}),
    "a tool speed over the ceiling": ("", {"tool.speeds": [{"rpm": [9e9]}]}),
    "a thrust number for an empty window": ("", {**EMPTY, "thrust.set_n": 100.0}),
    "a go for an empty window": ("", {**EMPTY, **CARE}),
    "a plain go for a narrow window": ("", {"thrust.window": "narrow", **GO}),
    "a thrust to set above what is allowed": ("", {"thrust.set_n": 9e9}),
    "a thrust to set below what is needed": ("", {"thrust.set_n": 1.0}),
    "a thrust above what is marked on the center": ("hold.tail.rating=900N", {"thrust.set_n": 901.0}),
    "a turn of the wheel past the most": ("", {"thrust.handwheel_nm": 9e9, "thrust.handwheel_most_nm": 1.0}),
    "a thrust without a tailstock": ("machine.tailstock=no", {"thrust.window": "open"}),
    "a hold that suits with too little in hand": ("", {**SUITS, f"{HOLD}.margins": [{"ratio": 0.9}]}),
    "a hold accepted against its own grounds": ("", ground("lets-go")),
    "a hold refused without grounds": ("", {**held("collet", "refused")}),
    "a go with a chosen hold that will not do": ("", {f"{HOLD}.verdict": "refused", **CARE}),
    "a go with nothing that holds": ("", {f"{HOLD}.verdict": "not-advised", **CARE}),
    "a plain go with a hold that asks for care": ("", {f"{HOLD}.verdict": "with-care", **GO}),
    "the chosen hold not judged first": ("", held("collet")),
    "a hold that is not in the kit": ("hold.kit=[collet]", held("long-jaws")),
    "an aid taken for a hold": ("", held("wrap")),
    "a worse hold ranked above a better": (
        "",
        {"holding": [{"verdict": word, "method": "x", "grounds": [], "margins": []} for word in (
            "suits", "refused", "suits")]},
    ),
    "spurs or screws in what they split": ("work.material=acrylic", held("screw-chuck")),
    "glue on what nothing sticks to": ("work.material=acetal", held("glue-block")),
    "a lone screw in a large end": ("work.diameter=100mm; work.grain=along", held("screw-chuck", "with-care")),
    "centers without a tailstock": ("machine.tailstock=no", held("cup-drive")),
    "a device larger than it is made": ("", held("drill-chuck")),
    "three jaws on a square": ("work.form=square; work.state=not-round", held("three-jaw", "with-care")),
    "tall work on tape": ("", held("double-sided-tape")),
    "heavy work in a jam fit": ("work.mass=5kg", held("jam-chuck")),
    "heavy work on one screw": ("work.mass=9kg", held("screw-chuck")),
    "a recess in end grain": ("work.grain=along", held("jaws-in-recess")),
    "a hole that stays where none may": (
        "work.state=finished; work.marks_allowed=none",
        held("faceplate-screws"),
    ),
    "suction or cups on a rough piece": ("work.condition=[live-edge]; work.state=not-round", held("vacuum")),
    "a roughing gouge on side grain": ("work.grain=across", {"tool.kind": "spindle roughing gouge"}),
    "a tool that it says never to use": ("", {"tool.kind": "hook", "tool.never": "never a hook here"}),
    "a promise of safety": ("", {"notes": ["This oil is food-safe."]}),
    "no cautions": ("", {"cautions": []}),
    "no word of the eyes": ("", {"cautions": [{"rule": "dust", "text": "x"}]}),
    "a text left open": ("", {"notes": ["Set it to {start}."]}),
    "an empty text": ("", {"checks": [" "]}),
    "signs that a terminal obeys": ("", {"notes": ["\x1b[2J"]}),
    "a number that is none": ("", {"speed.energy_j": float("nan")}),
    "a number below nothing": ("", {"speed.energy_j": -1.0}),
    "an assumption in place of what was said": ("", {"assumed": [{"field": "work.diameter"}]}),
    "something unchecked without what it is": ("", {"could_not_check": [{"what": "", "missing": "x"}]}),
}  # fmt: skip


def words_with(said: str) -> list[str]:
    """The words of the sound case with some of them changed, or left out: `-person.extraction`."""
    fields = {word.partition("=")[0]: word for word in words_of(SOUND)}
    fields.update({word.partition("=")[0]: word for word in said.split("; ") if "=" in word})
    return [word for name, word in fields.items() if f"-{name}" not in said.split("; ")]


def changed(found: Answer, change: Change) -> Answer:
    """The answer with some places set: `holding.0.verdict`."""
    other = deepcopy(found)
    for path, new in change.items():
        *above, last = path.split(".")
        part: Any = other
        for key in above:
            part = part[int(key)] if isinstance(part, list) else part[key]
        part[int(last) if isinstance(part, list) else last] = new
    return other


@lru_cache(maxsize=1)
def sound() -> Answer:
    """The answer to the sound case."""
    return answer(words_of(SOUND))


def noticed(said: str, found: Answer) -> set[str]:
    """The combinations found in an answer to the sound case with these words."""
    case = read_case(None, words_with(said))
    return {entry.name for entry in FORBIDDEN if entry.found_in(case, found)}


def test_every_combination_has_a_name_a_reason_and_a_plant() -> None:
    names = [entry.name for entry in FORBIDDEN]
    assert len(set(names)) == len(names) > 80
    assert all(entry.why.endswith(".") for entry in FORBIDDEN)
    assert set(PLANTS) == set(names)


def test_nothing_is_found_in_a_sound_answer() -> None:
    assert not noticed("", sound())
    assert sound()["thrust"]["window"] != "not-used"


@pytest.mark.parametrize("name", PLANTS)
def test_a_planted_combination_is_noticed(name: str) -> None:
    said, change = PLANTS[name]
    assert name in noticed(said, changed(sound(), change))


# A rule that is gone, and the words of a case that then gets what is forbidden.
GONE = {
    "treated-wood": "work.condition=[treated]",
    "cracked-through": "work.condition=[through-crack]",
    "reverse-unscrews": "machine.nose=threaded; cut.rotation=reverse",
    "strikes-the-bed": "machine.swing=20mm",
    "strikes-the-carriage": "machine.swing_over_carriage=20mm; work.state=not-round",
    "whips-behind-the-spindle": "hold.rear_overhang=900mm",
    "outboard-reach": "hold.outboard=yes",
    "metal-in-it": "work.condition=[nails]",
    "eyes": "",
    "hold-with-care": "",
    "chosen-hold-will-not-do": "hold.method=screw-chuck; work.diameter=100mm",
    "wanted-too-fast": "cut.wanted_rpm=3900",
    "left-at-yesterdays-speed": "machine.rpm_set=3900",
}


class Without:
    """The engine with one rule gone."""

    def __init__(self, rule: str) -> None:
        self.rule = rule

    def run(self, facts: Sequence[Fact]) -> list[Ruling]:
        return [ruling for ruling in default_engine().run(facts) if ruling.rule.name != self.rule]


@pytest.mark.parametrize("rule", GONE)
def test_a_rule_that_is_gone_is_noticed(rule: str) -> None:
    case = read_case(None, words_with(GONE[rule]))
    whole = answer_for(case, ANSWER_PARTS["advise"], changes=False)
    lame = answer_for(case, ANSWER_PARTS["advise"], Without(rule), changes=False)
    assert not [entry.name for entry in FORBIDDEN if entry.found_in(case, whole)]
    assert [entry.name for entry in FORBIDDEN if entry.found_in(case, lame)]


@pytest.mark.parametrize(
    ("place", "value", "said"),
    [
        ("advisor.reckoning.speed.smallest", lambda limits: (limits[-1], limits[0]), ""),
        ("advisor.reckoning.speed.START_SHARE_ROUND", 1.2, "work.state=round"),
        ("advisor.reckoning.speed.START_SHARE_NOT_ROUND", 0.9, "work.state=not-round; -machine.min_rpm"),
    ],
)
def test_a_wrong_reckoning_is_noticed(
    place: str, value: Callable[[Any], Any] | float, said: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    words = words_with(said)
    assert not noticed(said, answer(words))
    monkeypatch.setattr(place, value)
    assert noticed(said, answer(words))
