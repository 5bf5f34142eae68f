"""A case becomes advice: which hold is used, what the rules are told of it, and what comes out at worst."""

from __future__ import annotations

import pytest

from advisor.advice import advise, beyond, default_engine
from advisor.advice.advise import Advice
from advisor.advice.beyond import OneThing
from advisor.advice.judge import Judgement
from advisor.engine import Fires
from advisor.models.spoken import spoken
from advisor.reckoning.speed import speed
from advisor.rulebook import Effect
from advisor.situation import Situation, settle
from tests.advice.bench import Deaf, Recording, advice_of, case_of, judged, kept_advice, ruling

BETWEEN = "SPINDLE; hold.kit=[spur-drive, square-socket-drive]"
# a dead point asks for more than an end of balsa bears of a ring; a square socket turns by its shape
SOFT = "SPINDLE; hold.tail.kind=dead-point; work.material=balsa"
THIN_ROD = "SPINDLE; work.length=60in; work.diameter=20mm"


def asked(text: str, beyond: bool = True) -> tuple[Advice, Recording]:
    engine = Recording()
    return advise(case_of(text), engine, beyond=beyond), engine


def test_the_engine_is_asked_twice_first_about_the_holds_then_about_everything_else() -> None:
    found, engine = asked(BETWEEN)
    first, second = ([fact.kind for fact in facts] for facts in engine.asked)
    assert first == ["reach", "hold", "hold"]
    assert second[:5] == ["blank", "machine", "person", "speed", "slender"]
    assert second[-4:] == ["thrust", "tail", "drive", "choice"]
    assert {"name", "hazard", "shop", "tool"} == set(second[5:-4])
    assert [fact.kind for fact in found.facts] == first + second
    assert found.rulings == tuple(default_engine().run(engine.asked[1]))


def test_without_an_engine_the_rule_book_of_the_program_decides() -> None:
    plate = case_of("BOWL; hold.kit=[faceplate-screws]")
    found = advise(plate)
    assert [entry.rule for entry in found.fired] == [entry.rule for entry in advise(plate, default_engine()).fired]
    assert found.fired
    assert advise(plate, Deaf()).fired == ()


def test_what_speaks_on_the_holds_comes_before_the_rest() -> None:
    holds, rest = ruling(Effect.SUITS, "", "on-a-hold"), ruling(Effect.NOTE, "N.", "on-the-piece")
    found = kept_advice(BETWEEN)._replace(judgement=Judgement((judged(),), (), (holds,), ()), rulings=(rest,))
    assert found.fired == (holds, rest)


@pytest.mark.parametrize(
    ("spoken", "window"),
    [(("",), "open"), (("open",), "open"), (("narrow", "", "open"), "narrow"), (("narrow", "empty", "open"), "empty")],
)
def test_the_worst_that_a_rule_makes_of_the_window_counts(spoken: tuple[str, ...], window: str) -> None:
    rulings = tuple(ruling(Effect.NOTE, "N.", window=word) for word in spoken)
    found = kept_advice(BETWEEN)._replace(rulings=rulings)
    assert found.window == window
    assert found._replace(thrust=None).window == "not-used"


@pytest.mark.parametrize(
    ("effects", "verdict"),
    [
        ([Effect.CAUTION, Effect.NOTE], "go"),
        ([Effect.WITH_CARE, Effect.NOTE], "go-with-care"),
        ([Effect.WITH_CARE, Effect.ASK_FIRST], "ask-first"),
        ([Effect.DO_NOT_MOUNT, Effect.ASK_FIRST, Effect.WITH_CARE], "do-not-mount"),
    ],
)
def test_the_worst_word_on_the_piece_is_the_verdict(effects: list[Effect], verdict: str) -> None:
    engine = Deaf(*(ruling(effect, "So.") for effect in effects))
    assert advise(case_of(BETWEEN), engine).verdict == verdict


def test_the_piece_is_judged_with_the_tail_where_the_hold_in_use_has_it() -> None:
    up, engine = asked("BOWL; hold.kit=[faceplate-screws]")
    assert up.used.figures.tail_up
    assert (engine.fact("machine").values["tail"], engine.fact("slender").values["tail"]) == ("up", "up")
    away, engine = asked("BOWL; hold.kit=[faceplate-screws]; hold.tail.kind=none")
    assert not away.used.figures.tail_up
    assert (engine.fact("machine").values["tail"], engine.fact("slender").values["tail"]) == ("away", "away")
    assert "thrust" not in {fact.kind for fact in away.facts}


def test_a_bar_between_centers_bends_between_two_rests_and_a_gripped_one_less() -> None:
    """A bar fixed at one end and carried at the other bends 0.4 times as far (beam tables)."""
    bar = f"{BETWEEN}; work.form=round; work.state=round; work.length=24in; work.diameter=1in; cut.force=10N"
    _, between = asked(f"{bar}; hold.method=spur-drive")
    _, gripped = asked(f"{bar}; hold.method=collet")
    low, high = gripped.fact("slender").values["deflection_mm"], between.fact("slender").values["deflection_mm"]
    assert 0 < float(low) < 0.6 * float(high)


def test_the_rules_read_the_speed_of_the_hold_in_use() -> None:
    found, engine = asked("BOWL; hold.kit=[screw-chuck]; hold.tail.kind=none")
    assert "hold" in {limit.name for limit in found.speed.limits}
    values = engine.fact("speed").values
    assert (values["ceiling_rpm"], values["governed_by"]) == (found.speed.ceiling.value, found.speed.ceiling.name)
    assert values["energy_j"] == found.speed.energy
    assert engine.fact("machine").words["governed_by"] == found.speed.ceiling.name


def test_a_bar_that_is_pressed_whirls_sooner_than_one_that_nobody_presses() -> None:
    found = advice_of("NARROW; hold.method=spur-drive; hold.kit=[spur-drive]")
    assert found.thrust is not None
    assert (found.thrust.method, found.thrust.rpm) == ("spur-drive", found.used.rpm)
    free = speed(found.situation, "spur-drive", True, None, None)
    pressed, loose = (
        next(entry.value for entry in rate.limits if entry.name == "whirl") for rate in (found.speed, free)
    )
    assert pressed < loose


@pytest.mark.parametrize(
    ("text", "window"),
    [
        ("BOWL; hold.kit=[faceplate-screws]", "open"),  # tail up behind a plate: it locates
        ("BOWL; hold.kit=[faceplate-screws]; hold.tail.kind=none", "not-used"),
        ("BOWL; hold.kit=[faceplate-screws]; machine.tailstock=no", "not-used"),
        ("SPINDLE; hold.kit=[spur-drive]; machine.tailstock=no", "not-used"),
        ("SPINDLE; hold.kit=[spur-drive]; hold.tail.kind=none", "open"),  # between centers it cannot be left away
    ],
)
def test_a_thrust_is_worked_out_where_the_tailstock_presses(text: str, window: str) -> None:
    found = advice_of(text)
    assert (found.window, found.thrust is None) == (window, window == "not-used")


def test_the_hold_in_use_the_best_one_and_what_speaks_against_the_first_are_told_in_words() -> None:
    found, engine = asked("BOWL; hold.method=double-sided-tape; hold.kit=[faceplate-screws]")
    fact = engine.fact("choice")
    assert (fact.values["verdict"], fact.values["best_verdict"]) == ("refused", "suits")
    assert fact.words == {
        "method": spoken("double-sided-tape"),
        "best": spoken("faceplate-screws"),
        "reason": next(entry.text for entry in found.used.rulings if entry.rule.effect is Effect.REFUSE),
    }


def test_a_hold_that_suits_has_nothing_against_it() -> None:
    _, engine = asked("BOWL; hold.kit=[faceplate-screws]")
    assert engine.fact("choice").words == {
        "method": spoken("faceplate-screws"),
        "best": spoken("faceplate-screws"),
        "reason": "",
    }


POOR = "BOWL; hold.kit=[double-sided-tape, three-jaw]"


def test_where_nothing_to_hand_holds_it_what_would_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    engine, one = Recording(), OneThing(judged("screw-chuck"), "screw-chuck", "a coach screw", False)

    def would_do(situation: Situation, heard: Fires, judgement: Judgement) -> tuple[OneThing, str]:
        assert situation == settle(case_of(POOR))
        assert heard is engine
        assert [hold.method for hold in judgement.holds] == ["three-jaw", "double-sided-tape"]
        return one, "make a screw chuck"

    monkeypatch.setattr(beyond, "would_do", would_do)
    found = advise(case_of(POOR), engine)
    assert found.one_thing is one
    assert engine.fact("choice").words["would_do"] == "make a screw chuck"
    assert "make a screw chuck" in next(entry.remedy for entry in found.rulings if "{would_do}" in entry.rule.do)


def test_nothing_is_looked_for_where_nobody_asks_or_something_holds(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delattr(beyond, "would_do")
    found, engine = asked(POOR, beyond=False)
    assert found.one_thing is None
    assert "would_do" not in engine.fact("choice").words
    assert asked("BOWL; hold.kit=[faceplate-screws]")[0].one_thing is None


def test_where_the_first_hold_has_no_thrust_and_nothing_else_runs_nothing_is_looked_for(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """An accepted hold is there: the kit is not short of one."""
    monkeypatch.delattr(beyond, "would_do")
    assert advice_of(f"{SOFT}; hold.kit=[toothed-ring-drive]").one_thing is None


def test_the_hold_that_was_chosen_is_used_and_else_the_best() -> None:
    assert advice_of("BOWL; hold.method=pin-chuck; hold.kit=[faceplate-screws]").used.method == "pin-chuck"
    assert advice_of("SPINDLE; hold.drive.kind=cup; hold.kit=[spur-drive]").used.method == "cup-drive"
    assert advice_of("BOWL; hold.kit=[pin-chuck, faceplate-screws]").used.method == "faceplate-screws"


def test_where_no_thrust_is_safe_the_next_hold_that_has_one_is_used_and_the_order_stays() -> None:
    found = advice_of(f"{SOFT}; hold.kit=[toothed-ring-drive, square-socket-drive]")
    assert [hold.method for hold in found.judgement.holds] == ["toothed-ring-drive", "square-socket-drive"]
    assert (found.used.method, found.window) == ("square-socket-drive", "open")
    assert advice_of(f"{SOFT}; hold.kit=[toothed-ring-drive]").window == "empty"


def test_the_first_that_has_a_thrust_is_taken_not_the_last() -> None:
    found = advice_of(f"{THIN_ROD}; hold.kit=[square-socket-drive, spur-drive, jaws-on-tenon, long-jaws]")
    assert [hold.method for hold in found.judgement.holds][2] == "jaws-on-tenon"
    assert found.used.method == "jaws-on-tenon"
    second = advice_of(f"{THIN_ROD}; hold.kit=[square-socket-drive, jaws-on-tenon, long-jaws]")
    assert second.used.method == "jaws-on-tenon"


def test_a_hold_that_is_not_advised_does_not_stand_in() -> None:
    found = advice_of(f"{SOFT}; hold.kit=[toothed-ring-drive, clamped-faceplate]")
    assert [hold.accepted for hold in found.judgement.holds] == [True, False]
    assert (found.used.method, found.window) == ("toothed-ring-drive", "empty")


def test_a_hold_that_was_chosen_stays_in_use_though_no_thrust_is_safe_for_it() -> None:
    found = advice_of(f"{SOFT}; hold.method=toothed-ring-drive; hold.kit=[toothed-ring-drive, square-socket-drive]")
    assert (found.used.method, found.window) == ("toothed-ring-drive", "empty")


def test_a_hold_that_stands_in_is_told_in_all_its_words_too() -> None:
    _, engine = asked(f"{SOFT}; hold.kit=[toothed-ring-drive, square-socket-drive]")
    assert len(engine.asked) == 3
    assert engine.fact("choice").words["method"] == spoken("square-socket-drive")
    assert engine.fact("choice").words["best"] == spoken("toothed-ring-drive")
