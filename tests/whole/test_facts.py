"""Facts: every one is read by a rule, none is a verdict in disguise."""

from advisor.advice import default_engine
from tests.rules.bench import BASES, advice

CASES = [
    *BASES,
    "STONE; work.parts=[alabaster, brass]",
    "SPINDLE; work.material=cocobolo; person.reacted_before=[rosewood]",
]


def test_no_fact_carries_a_key_that_no_rule_reads() -> None:
    engine = default_engine()
    unread = {key for text in CASES for key in engine.unread_keys(advice(text).facts)}
    assert not unread


def test_every_kind_of_fact_that_rules_read_is_asserted_somewhere() -> None:
    asserted = {fact.kind for text in CASES for fact in advice(text).facts}
    assert asserted == set(default_engine().book.kinds)


def test_margins_reach_the_rules_as_numbers() -> None:
    facts = {fact.kind: fact for fact in advice("NARROW").facts}
    assert isinstance(facts["thrust"].values["set_over_allowed"], float)
    assert isinstance(facts["speed"].values["ceiling_rpm"], float)
    holds = [fact for fact in advice("BOWL").facts if fact.kind == "hold" and fact.values["model"] == "yes"]
    assert holds
    assert all(isinstance(fact.values["divided"], float) for fact in holds)
