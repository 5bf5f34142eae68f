"""Sizes of the holds and what drying does, as the answer writes them: what is not known is left out."""

from __future__ import annotations

import math
from typing import Any

import pytest

from advisor.advice import proportioned
from advisor.advice.advise import Advice
from advisor.advice.judge import Judgement
from advisor.advice.proportioned import add_proportions
from advisor.reckoning.drying import Drying, GripDrying
from advisor.reckoning.proportions import Check, Circle, Proportions, Size
from advisor.situation import Situation
from tests.advice.bench import judged, kept_advice

TENON = Size("tenon.diameter", 60.0, "mm", True, 40.0, 90.0, "what the trade makes it")
COUNT = Size("screws.count", 4.0, "", False, None, None, "")
FOUND = Proportions(
    "jaws-on-tenon",
    (TENON, COUNT),
    enough=True,
    margin=1.5,
    gives_first="turns",
    checks=(Check("turning", 30.0, 12.0, "N·m", "rough-guide"), Check("tipping", math.inf, 1.0, "N·m", "estimate")),
    circle=Circle(None, 2.0, 1.2),
    notes=("Cut it square.",),
)
WET = Drying(
    from_moisture=60.0,
    to_moisture=6.0,
    most=9.0,
    least=1.0,
    diameter=254.0,
    oval=20.0,
    wall=30.0,
    wall_of_oval=12.0,
    finished_wall=8.0,
    woods="sugar maple",
    filled=False,
    total=9.9,
)
HOLDS = judged("jaws-on-tenon"), judged("spur-drive")._replace(rpm=450.0)


def advice() -> Advice:
    return kept_advice("BOWL; hold.kit=[jaws-on-tenon]")._replace(judgement=Judgement(HOLDS, (), (), ()))


def added(
    monkeypatch: pytest.MonkeyPatch,
    found: Proportions = FOUND,
    dry: Drying | None = None,
    dried: GripDrying | None = None,
) -> dict[str, Any]:
    """An answer of two holds with their proportions put in."""
    base = advice()

    def proportions(situation: Situation, method: str, rpm: float) -> Proportions:
        assert situation is base.situation
        assert rpm == base.judgement.of(method).rpm
        return found if method == "jaws-on-tenon" else Proportions(method, (), None, None, "")

    def drying(situation: Situation) -> Drying | None:
        assert situation is base.situation
        return dry

    def grip_drying(*asked: object) -> GripDrying:
        assert asked == (base.situation, dry, "jaws-on-tenon", 60.0, 600.0)
        assert dried is not None
        return dried

    monkeypatch.setattr(proportioned, "proportions", proportions)
    monkeypatch.setattr(proportioned, "drying", drying)
    monkeypatch.setattr(proportioned, "grip_drying", grip_drying)
    answer: dict[str, Any] = {"holding": [{"method": hold.method} for hold in HOLDS]}
    add_proportions(answer, base)
    return answer


def test_every_hold_gets_its_sizes_its_margin_and_what_gives_first(monkeypatch: pytest.MonkeyPatch) -> None:
    answer = added(monkeypatch)
    assert answer["holding"][0] == {
        "method": "jaws-on-tenon",
        "proportions": {
            "sizes": [
                {
                    "name": "tenon.diameter",
                    "value": 60.0,
                    "unit": "mm",
                    "given": True,
                    "least": 40.0,
                    "most": 90.0,
                    "why": "what the trade makes it",
                },
                {"name": "screws.count", "value": 4.0, "unit": "", "given": False, "why": ""},
            ],
            "enough": True,
            "margin": 1.5,
            "gives_first": "turns",
            "checks": [{"name": "turning", "have": 30.0, "need": 12.0, "unit": "N·m", "grade": "rough-guide"}],
            "jaw_circle": {"margin_on": 2.0, "margin_off": 1.2},
            "notes": ["Cut it square."],
        },
    }
    assert "drying" not in answer


def test_what_practice_alone_judges_has_no_margin_and_nothing_that_gives_first(monkeypatch: pytest.MonkeyPatch) -> None:
    practice: dict[str, Any] = {"sizes": [], "checks": [], "notes": []}
    assert added(monkeypatch)["holding"][1] == {"method": "spur-drive", "proportions": practice}


def test_a_hold_that_is_not_enough_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    weak = added(monkeypatch, FOUND._replace(enough=False, circle=None))["holding"][0]["proportions"]
    assert weak["enough"] is False
    assert "jaw_circle" not in weak


def test_the_true_circle_of_the_jaws_is_told_where_it_is_known(monkeypatch: pytest.MonkeyPatch) -> None:
    found = added(monkeypatch, FOUND._replace(circle=Circle(45.0, 2.0, 1.2)))["holding"][0]["proportions"]
    assert found["jaw_circle"] == {"diameter_mm": 45.0, "margin_on": 2.0, "margin_off": 1.2}


def test_wet_wood_is_told_what_drying_does_to_the_piece_and_to_its_tenon(monkeypatch: pytest.MonkeyPatch) -> None:
    answer = added(monkeypatch, dry=WET, dried=GripDrying(oval=4.8, leave=66.0, loosens=18.0))
    first, second = (hold["proportions"] for hold in answer["holding"])
    assert first["drying"] == {"oval_mm": 4.8, "leave_mm": 66.0, "loosens_percent": 18.0}
    assert "drying" not in second  # it has no tenon
    assert answer["drying"] == {
        "from_percent": 60.0,
        "to_percent": 6.0,
        "shrinks_most_percent": 9.0,
        "shrinks_least_percent": 1.0,
        "diameter_mm": 254.0,
        "oval_mm": 20.0,
        "wall_mm": 30.0,
        "wall_of_oval_mm": 12.0,
        "finished_wall_mm": 8.0,
        "woods": "sugar maple",
        "filled": False,
    }


def test_a_grip_that_stays_tight_names_no_moisture_and_solid_work_no_wall(monkeypatch: pytest.MonkeyPatch) -> None:
    solid = WET._replace(wall=None, wall_of_oval=None)
    answer = added(monkeypatch, dry=solid, dried=GripDrying(4.8, 66.0, None))
    assert answer["holding"][0]["proportions"]["drying"] == {"oval_mm": 4.8, "leave_mm": 66.0}
    assert {"wall_mm", "wall_of_oval_mm", "finished_wall_mm"}.isdisjoint(answer["drying"])
