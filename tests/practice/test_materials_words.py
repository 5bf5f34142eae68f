"""Names that mean nothing or two things, the path of questions, missing controls, and words that must never be said."""

from __future__ import annotations

import csv
import re
from collections import defaultdict
from pathlib import Path

import pytest

from advisor.advice import default_engine
from advisor.models import exposure, hazards, questions
from advisor.models import material as materials
from advisor.models.material_names import FIRST_QUESTION, named
from advisor.report.explain import explain
from tests.practice.materials_bench import rulings, verdict
from tests.rules.bench import advice
from tests.whole.answers import of

DATA = Path(materials.__file__).parents[1] / "data"
ORDER = ("go", "go-with-care", "ask-first", "do-not-mount")
FORBIDDEN = re.compile(r"\b(non-?\s?toxic|food[- ]safe|safe|safer|safely)\b", re.IGNORECASE)
TOPICS = ("material", "hazard", "person", "condition")
OUTSIDE = [record for record in materials.all_materials() if not record.is_wood]


def texts(situation: str) -> list[str]:
    """Everything the rules of materials, hazards and the person say of a situation."""
    return [text for ruling in rulings(situation) for text in (ruling.text, ruling.remedy) if text]


@pytest.mark.parametrize("word", ["flubberwood", "mystery", "stuff from the attic", "kryptonium", "brown rod"])
def test_a_word_that_means_nothing_ends_in_questions(word: str) -> None:
    assert verdict(f"PLASTIC; work.material={word}") == "ask-first"
    first = questions.step()
    assert isinstance(first, questions.Question)
    assert any(first.text in text for text in texts(f"PLASTIC; work.material={word}"))


def shared_names() -> dict[str, set[str]]:
    """Names of the table that several materials carry, with the ids."""
    found: dict[str, set[str]] = defaultdict(set)
    with (DATA / "material_names.csv").open(encoding="utf-8") as file:
        for row in csv.DictReader(file):
            found[row["name"]].add(row["material"])
    return {name: ids for name, ids in found.items() if len(ids) > 1}


@pytest.mark.parametrize("name", [name for name in shared_names() if "treated" not in name])
def test_a_word_that_means_two_things_shows_both(name: str) -> None:
    spoken = " ".join(texts(f"PLASTIC; work.material={name}"))
    assert verdict(f"PLASTIC; work.material={name}") in ("ask-first", "do-not-mount")
    assert all(materials.get(one).title in spoken for one in shared_names()[name])


def test_several_names_take_the_most_troublesome() -> None:
    assert named("ivory").records[0].id == "ivory"
    assert named("light metal").records[0].id == "magnesium"
    assert named("celluloid").records[0].id == "celluloid"


@pytest.mark.parametrize(
    ("name", "condition"),
    [
        ("treated pine", "treated-wood"),
        ("creosoted oak", "creosoted-wood"),
        ("painted pine", "painted-wood"),
        ("spalted maple", "spalted-wood"),
    ],
)
def test_what_a_name_says_of_its_condition_is_heard(name: str, condition: str) -> None:
    assert condition in {record.id for record in named(name).spoken}


def test_wood_changed_by_heat_is_not_taken_for_preserved() -> None:
    assert not named("heat-treated ash").spoken
    assert not named("untreated pine").spoken


def ends(step_id: str, seen: tuple[str, ...] = ()) -> set[str]:
    """The ids of all ends that can be reached from a step; no path may come back to where it was."""
    assert step_id not in seen
    here = questions.step(step_id)
    if isinstance(here, questions.End):
        assert here.advice
        return {here.id}
    return {end for answer in here.answers for end in ends(answer.next, (*seen, step_id))}


@pytest.mark.parametrize("start", ["start", "wood", *FIRST_QUESTION.values()])
def test_every_path_of_questions_ends_in_advice(start: str) -> None:
    found = [questions.step(end) for end in ends(start)]
    known = {record.id for record in materials.all_materials()}
    assert all(isinstance(end, questions.End) and (not end.material or end.material in known) for end in found)
    unnamed = [end for end in found if isinstance(end, questions.End) and end.material.startswith("unknown")]
    verdicts = {materials.get(end.material).verdict for end in unnamed if end.material}
    assert verdicts <= {"ask-first", "do-not-mount"}


def tokens(kind: str) -> set[str]:
    """The tokens that rules of a kind read."""
    found: set[str] = set()
    for rule in default_engine().book.of_kind(kind):
        for key, test in rule.when.tests():
            if key == "token":
                found |= set(getattr(test, "values", None) or [getattr(test, "value", "")])
    return found


def test_every_refusal_of_a_material_has_a_rule() -> None:
    asked = {token for record in OUTSIDE for token in record.refuse_when}
    assert asked - {"asthma"} <= tokens("refusal")  # asthma is judged by what the dust is


def test_every_refusal_speaks_in_one_state_at_least() -> None:
    states = ["", "; work.tested=no; work.raw=yes; cut.cooling=dry; person.extraction=no; person.respirator=none"]
    states.append("; work.tested=; cut.cooling=; person.extraction=; person.respirator=; work.moisture=wet")
    states.append("; machine.extinguisher=none; work.condition=[nails, void]; work.diameter=300mm")
    states.append("; hold.method=faceplate-screws; work.raw=yes")
    for record in OUTSIDE:
        spoken = set()
        for state in states:
            found = rulings(f"PLASTIC; work.material={record.id}{state}")
            spoken |= {ruling.fact.values.get("token") for ruling in found if ruling.fact.kind == "refusal"}
        hidden = {"asthma", "screwed"} if record.family != "board" else {"asthma"}
        wanted = {"always"} if "always" in record.refuse_when else set(record.refuse_when) - hidden
        assert wanted <= spoken, record.id


SETTINGS = {
    "person.extraction": ("yes", "", "no"),
    "person.respirator": ("P3", "P2", "none"),
    "person.asthma": ("no", "yes"),
    "work.tested": ("yes", "", "no"),
    "work.raw": ("no", "", "yes"),
    "cut.cooling": ("wet", "", "dry"),
    "work.use": ("other", "food"),
}


def _worse_never_helps(name: str) -> None:
    base = f"PLASTIC; work.material={name}; person.respirator=P3; work.tested=yes; work.raw=no"
    for field, values in SETTINGS.items():
        if field == "cut.cooling" and "dry" not in materials.get(name).refuse_when:
            continue
        ranks = [ORDER.index(verdict(f"{base}; {field}={value}")) for value in values]
        assert ranks == sorted(ranks), (name, field, ranks)


@pytest.mark.parametrize("name", [record.id for record in OUTSIDE][::4])
def test_a_missing_control_never_gives_a_better_verdict(name: str) -> None:
    _worse_never_helps(name)


@pytest.mark.slow
@pytest.mark.cases
def test_a_missing_control_never_gives_a_better_verdict_for_any_material() -> None:
    for record in OUTSIDE:
        _worse_never_helps(record.id)


WOODS = [
    "SPINDLE",
    "BOWL; work.material=cocobolo",
    "SPINDLE; work.material=yew; work.use=food",
    "SPINDLE; work.use=toy",
]


@pytest.mark.parametrize("situation", [*WOODS, *(f"PLASTIC; work.material={record.id}" for record in OUTSIDE)])
def test_nothing_is_ever_called_safe(situation: str) -> None:
    assert not [text for text in texts(situation) if FORBIDDEN.search(text)]


def test_no_rule_page_or_table_calls_anything_safe() -> None:
    rules = [rule for rule in default_engine().book if rule.topic in TOPICS]
    pages = [materials.explain(record) for record in materials.all_materials()]
    pages += [exposure.limits_page(), questions.path_page(), *(entry.note for entry in hazards.all_hazards())]
    pages += [f"{rule.says} {rule.do} {rule.doc}" for rule in rules]
    assert len(rules) > 100
    assert not [page for page in pages if FORBIDDEN.search(page)]


def test_limits_in_the_air_are_a_page_and_no_promise() -> None:
    name, page = explain("dust-limits")
    assert name == "dust-limits"
    assert all(limit.text in page for limit in exposure.exposure_limits())
    assert "no promise" in page
    assert "as printed in the copy read" in page


def test_the_path_of_questions_is_a_page() -> None:
    page = explain("what-is-it")[1]
    assert all(step.text in page for step in questions.all_steps() if isinstance(step, questions.Question))


def test_a_wood_known_for_its_dust_alone_has_a_page() -> None:
    assert "poison to the heart" in explain("yew")[1]


def test_a_sound_dry_spindle_is_not_nagged() -> None:
    found = advice("SPINDLE; work.state=round")
    cautions = {ruling.text for ruling in found.rulings if ruling.rule.effect.value == "caution"}
    assert found.verdict == "go"
    assert 1 <= len(cautions) <= 5


@pytest.mark.parametrize("record", OUTSIDE, ids=lambda record: record.id)
def test_one_caution_for_each_matter(record: materials.Material) -> None:
    found = rulings(f"PLASTIC; work.material={record.id}; person.respirator=P3; work.tested=yes; work.raw=no")
    cautions = {ruling.text for ruling in found if ruling.rule.effect.value == "caution"}
    assert len(cautions) <= 4


SAID_IN_THE_NAME = [
    ("spalted maple", "maple", "work.condition=[spalted]"),
    ("checked ash", "ash", "work.condition=[check]"),
    ("rotten birch", "birch", "work.condition=[punky, rot]"),
    ("walnut with knots", "walnut", "work.condition=[knot]"),
    ("wet walnut", "walnut", "work.moisture=green"),
    ("frozen maple", "maple", "work.moisture=frozen"),
]


@pytest.mark.parametrize(("name", "plain", "said"), SAID_IN_THE_NAME)
def test_what_the_name_says_counts_like_what_the_case_says(name: str, plain: str, said: str) -> None:
    spoken, listed = (
        of(f"BOWL; work.moisture=; work.material={name}"),
        of(f"BOWL; work.moisture=; work.material={plain}; {said}"),
    )
    assert spoken["verdict"] == listed["verdict"]
    for key in ("start_rpm", "ceiling_rpm", "governed_by"):
        assert spoken["speed"][key] == listed["speed"][key]


def test_what_the_case_says_wins_over_the_name() -> None:
    said = of("BOWL; work.material=wet walnut; work.moisture=12%")
    assert said["speed"]["ceiling_rpm"] == of("BOWL; work.material=walnut; work.moisture=12%")["speed"]["ceiling_rpm"]


def test_a_species_of_that_name_is_no_moisture() -> None:
    assert named("green ash").moisture is None
