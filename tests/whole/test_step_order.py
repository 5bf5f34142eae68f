"""The steps before the switch come in the order of the work."""

from advisor.advice.answer import STEPS
from advisor.data.tables import load
from advisor.rulebook import Effect, load_book
from tests.whole.answers import of


def test_the_table_of_steps_names_rules_that_ask_for_a_step() -> None:
    steps = {rule.name for rule in load_book() if rule.effect is Effect.CHECK}
    assert {row.text("rule") for row in load(STEPS)} <= steps


def test_centers_are_popped_before_teeth_are_seated_and_the_tail_is_set_last() -> None:
    steps = of("SPINDLE; hold.method=spur-drive; machine.kind=metal-lathe")["checks"]
    places = [
        next(place for place, step in enumerate(steps) if word in step)
        for word in ("pop the marks", "Seat the teeth", "Set ")
    ]
    assert places == sorted(places)
    assert len(steps) <= 8
