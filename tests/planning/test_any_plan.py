"""Any case at all ends in a plan, in a stop with a named reason, or in the words the job takes."""

from __future__ import annotations

import random
from typing import get_args

import pytest

from advisor.advice.whole import answer_for
from advisor.models import words
from advisor.planning import JobUnclear, walk
from advisor.planning.answer import compose
from advisor.planning.faults import does_not_fit
from advisor.reading import InputFault, read_case, read_text, write_case
from advisor.report.plan import plan_lines
from advisor.rulebook import Effect, load_book
from tests.conftest import SEED, scale
from tests.planning.bench import SCHEMA

HARD = {rule.name for rule in load_book() if rule.hard and rule.effect is Effect.DO_NOT_MOUNT}
STUFF = ["sugar maple", "white ash", "acrylic", "unknown", "alabaster", "lignum vitae", "balsa", "cocobolo", "steel"]
MAYBE = {
    "work.form": (0.8, get_args(words.Form)),
    "work.grain": (0.7, get_args(words.Grain)),
    "work.state": (0.7, get_args(words.State)),
    "work.purpose": (0.8, get_args(words.Purpose)),
    "work.moisture": (0.5, ("green", "12%", "wet", "frozen", "20%")),
    "work.condition": (0.2, ("[check]", "[spalted, live-edge]", "[through-crack]", "[knot]", "[treated]")),
    "work.marks_allowed": (0.2, get_args(words.MarksAllowed)),
    "work.mass": (0.1, ("2 kg",)),
    "work.floor": (0.2, ("6 mm", "3 mm")),
    "hold.method": (0.3, get_args(words.Method)),
    "hold.tail.kind": (0.2, get_args(words.TailKind)),
    "machine.kind": (0.3, get_args(words.MachineKind)),
    "machine.tailstock": (0.1, ("no",)),
    "machine.min_rpm": (0.3, ("50", "500", "900")),
    "cut.operation": (0.4, get_args(words.Operation)),
    "cut.tool": (0.2, get_args(words.Tool)),
}


def drawn(chance: random.Random) -> list[str]:
    """The words of some case."""
    across = chance.choice([8, 15, 25, 40, 60, 90, 150, 220, 300, 450])
    long = min(max(across * chance.choice([0.05, 0.1, 0.2, 0.4, 1, 2, 5, 12, 30]), 2), 3000)
    found = [f"work.material={chance.choice(STUFF)}", f"work.diameter={across} mm", f"work.length={long:.0f} mm"]
    found += [f"{name}={chance.choice(some)}" for name, (share, some) in MAYBE.items() if chance.random() < share]
    sizes = {
        "work.finished_diameter": across * 0.8,
        "work.finished_length": long * 0.8,
        "hold.tenon.diameter": across * 0.4,
        "hold.recess.diameter": across * 0.3,
    }
    found += [f"{name}={size:.1f} mm" for name, size in sizes.items() if chance.random() < 0.2]
    if chance.random() < 0.4:
        found.append(f"hold.kit=[{', '.join(chance.sample(get_args(words.Method), chance.randint(1, 8)))}]")
    return found


@pytest.mark.slow
@pytest.mark.fuzz
def test_any_case_ends_in_a_plan_or_a_named_stop_or_a_clear_word() -> None:
    chance = random.Random(SEED)
    ends: dict[str, int] = {}
    for _ in range(scale(2000)):
        case_words = drawn(chance)
        try:
            plan = walk(read_case(None, case_words), changes=False)
        except (InputFault, JobUnclear):
            continue
        answer = compose(plan)
        SCHEMA.validate(answer)
        refused = HARD & set(answer_for(plan.situation.case, (), changes=False)["fired"])
        assert not refused or answer["verdict"] == "do-not-mount", (refused, case_words)
        assert list(plan_lines(answer, "any", "inch")), case_words
        for stage in plan.stages:
            if stage.answer is not None and stage.case is not None:
                assert does_not_fit(stage.case) is None, case_words
                assert read_text(write_case(stage.case), "yaml", "stage.yaml") == stage.case, case_words
        end = answer["stopped"]["fault"] if "stopped" in answer else "whole"
        ends[end] = ends.get(end, 0) + 1
    assert sum(ends.values()) > 0.5 * scale(2000)
    print(SEED, sorted(ends.items(), key=lambda entry: -entry[1]))
    assert ends.get("whole", 0) > 0.05 * sum(ends.values())
    assert len(ends) >= 6
