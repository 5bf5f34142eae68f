"""The whirl of a real profile against one warm engine request, as a ratio within one run."""

from __future__ import annotations

import pytest

from advisor.advice import advise, default_engine
from advisor.physics import slender
from advisor.physics.steadied import supported_whirl_speed
from advisor.reading import read_case
from tests.benchmarks.ratios import ratio
from tests.rules.bench import words_of
from tests.validation.test_beams import PROFILES

pytestmark = [pytest.mark.slow, pytest.mark.memory]


@pytest.mark.parametrize("name", list(PROFILES))
def test_whirl_of_a_profile_takes_no_longer_than_one_warm_engine_request(name: str) -> None:
    engine = default_engine()
    facts = [fact for fact in advise(read_case(None, words_of("BOWL")), engine).facts if fact.kind in ("hold", "reach")]
    profile = PROFILES[name]

    def whirl() -> object:
        return slender.profile_whirl_speed(profile=profile, modulus=9, density=700, ends="pinned-pinned", thrust=50)

    def steadied() -> object:
        middle = (profile[0][0] + profile[-1][0]) / 2
        return supported_whirl_speed(profile, 9, 700, "pinned-pinned", 50, middle)

    for call in (whirl, steadied):
        found = ratio(call, lambda: engine.run(facts), rounds=20)
        print(f"\n{call.__name__} of {name} against one request over {len(facts)} facts: {found:.2f} times as long")
        assert found <= 1.0
