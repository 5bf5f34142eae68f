"""A case becomes advice: which hold is used, what the rules are told of it, and what comes out at worst."""

from __future__ import annotations

import pytest

from advisor.advice import advise, default_engine
from advisor.advice.advise import Advice
from advisor.advice.judge import Judgement
from advisor.models.spoken import spoken
from advisor.reckoning.speed import speed
from advisor.rulebook import Effect
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
    found = advise(case_of(BETWEEN))
    assert found.fired
    assert [entry.rule for entry in found.fired] == [entry.rule for entry in advice_of(BETWEEN).fired]
    assert advise(case_of(BETWEEN), Deaf()).fired == ()


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


def words(text: str, beyond: bool = True) -> dict[str, str]:
    _, engine = asked(text, beyond)
    return dict(engine.fact("choice").words)


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
    assert words("BOWL; hold.kit=[faceplate-screws]") == {
        "method": spoken("faceplate-screws"),
        "best": spoken("faceplate-screws"),
        "reason": "",
    }


POOR = "BOWL; hold.kit=[double-sided-tape, three-jaw]"


def test_where_nothing_to_hand_holds_it_what_would_is_told_and_only_when_asked_for() -> None:
    found, _ = asked(POOR)
    assert found.one_thing is not None
    assert found.one_thing.thing == "screw-chuck"
    assert words(POOR)["would_do"].startswith(f"{spoken('screw-chuck')}, made in the shop: ")
    with pytest.raises(Exception, match="would_do"):
        next(entry.remedy for entry in asked(POOR, beyond=False)[0].rulings if "{would_do}" in entry.rule.do)
    assert asked(POOR, beyond=False)[0].one_thing is None
    assert "would_do" not in words(POOR, beyond=False)


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
