"""`field=value` words, alone and over a file."""

from pathlib import Path

import pytest

from advisor.reading import InputFault, read_case
from tests.reading.texts import GOOD_YAML, only, word_problems

THREE = ["work.material=ash", "work.diameter=10 in", "work.length=3in"]


@pytest.fixture
def file(tmp_path: Path) -> str:
    path = tmp_path / "bowl.yaml"
    path.write_text(GOOD_YAML + "  wall: 1/4 in\nhold:\n  tail:\n", encoding="utf-8")
    return str(path)


def test_words_alone_make_a_case() -> None:
    case = read_case(None, [*THREE, "work.condition=[check, pith]", "hold.tail.kind=live-cup", "work.raw=no"])
    assert (case.work.material, case.work.diameter, case.work.length) == ("ash", 254, 76.2)
    assert case.work.condition == ("check", "pith")
    assert case.work.raw is False
    assert case.hold.tail is not None
    assert case.hold.tail.kind == "live-cup"


@pytest.mark.parametrize(
    "word",
    [
        "work.profile=[0mm:38mm, 76mm:38mm]",
        "work.profile=[0 mm: 38 mm, 76 mm: 38 mm]",
        "work.profile=[[0 mm, 38 mm], [76 mm, 38 mm]]",
    ],
)
def test_a_profile_may_be_written_in_three_ways(word: str) -> None:
    assert read_case(None, [*THREE, word]).work.profile == ((0, 38), (76, 38))


def test_lists_fields_and_texts() -> None:
    words = ["hold.kit=[collet, steady-rest]", "work.balance_test={weight: 50 g, radius: 4 in}"]
    words += ['work.radii=[4", 4.1 in, 4 1/8 in, 100 mm, 4", 4"]', "title=a = b: [draft] # 2"]
    case = read_case(None, [*THREE, *words])
    assert case.hold.kit == ("collet", "steady-rest")
    assert case.work.balance_test is not None
    assert case.work.balance_test.radius == 101.6
    assert case.work.radii is not None
    assert case.work.radii[2] == pytest.approx(104.775)
    assert case.title == "a = b: [draft] # 2"


def test_a_word_wins_over_the_file(file: str) -> None:
    case = read_case(file, ["work.diameter=12", "hold.tail.kind=live-cup", "machine.min_rpm=50"])
    assert case.work.diameter == pytest.approx(304.8)  # the file says units: inch
    assert case.work.length == pytest.approx(76.2)
    assert case.work.wall == pytest.approx(6.35)
    assert case.hold.tail is not None
    assert case.machine.min_rpm == 50


def test_a_later_word_wins_over_an_earlier_one() -> None:
    assert read_case(None, [*THREE, "work.length=5 in"]).work.length == 127
    case = read_case(None, [*THREE, "hold.tail={kind: live-cup}", "hold.tail.rating=1 kN"])
    assert case.hold.tail is not None
    assert (case.hold.tail.kind, case.hold.tail.rating) == ("live-cup", 1000)


def test_a_word_puts_a_wrong_field_of_the_file_right(tmp_path: Path) -> None:
    path = tmp_path / "wrong.yaml"
    path.write_text(GOOD_YAML.replace("3 in", "three"), encoding="utf-8")
    assert read_case(str(path), ["work.length=3 in"]).work.length == pytest.approx(76.2)


WRONG = [
    ("work.diamter=10 in", "work.diamter", None, "is not a known field", "work.diameter"),
    ("wrok.diameter=10 in", "wrok.diameter", None, "is not a known field", "work.diameter"),
    ("swing=12 in", "swing", None, "is not a known field", "machine.swing"),
    ("work.diameter.x=3", "work.diameter.x", None, "is not a known field", None),
    ("hold.tail.knd=cup", "hold.tail.knd", None, "is not a known field", "hold.tail.kind"),
    ("wall", "", None, "is not field=value", None),
    ("=3", "", None, "is not a known field", None),
    ("work.wall=", "work.wall", None, "has no value; give one or leave the line out", None),
    ("work.wall=3", "work.wall", "3", "has no unit: write 3 in or 3 mm", None),
    ("work.form=dics", "work.form", "dics", "is no word of this field", "disc"),
    ("work.condition=check", "work.condition", "check", "stands where a list belongs", None),
    ("work.condition=[check", "work.condition", "[check", "cannot be read: brackets open and close", None),
    ("work.condition=[*a]", "work.condition", "[*a]", "cannot be read: brackets open and close", None),
    ("hold.tail=live-cup", "hold.tail", "live-cup", "stands where fields belong", None),
    ("work.wall=[3 mm]", "work.wall", "[3 mm]", "cannot be read as one number", None),
]


@pytest.mark.parametrize(("word", "field", "value", "message", "near"), WRONG, ids=[row[0] for row in WRONG])
def test_a_wrong_word_is_named(word: str, field: str, value: str | None, message: str, near: str | None) -> None:
    found = only(word_problems(*THREE, word))
    assert found.file == f"the word {word}"
    assert (found.line, found.column) == (None, None)
    assert (found.field, found.value) == (field, value)
    assert message in found.message
    assert found.nearest == near
    assert found.accepted


def test_a_contradiction_names_the_word(file: str) -> None:
    found = only(word_problems("work.finished_diameter=11 in", path=file))
    assert found.file == "the word work.finished_diameter=11 in"
    assert found.field == "work.finished_diameter and work.diameter"


def test_a_plain_value_for_a_section_stays_wrong_under_a_word(tmp_path: Path) -> None:
    path = tmp_path / "wrong.yaml"
    path.write_text(GOOD_YAML + "hold: collet\n", encoding="utf-8")
    found = only(word_problems("hold.method=collet", path=str(path)))
    assert (found.file, found.line, found.field, found.value) == (str(path), 7, "hold", "collet")


def test_nothing_at_all_is_refused_with_an_example() -> None:
    with pytest.raises(
        InputFault, match="neither a file nor a field was named; accepted: a case file, or words such as"
    ):
        read_case(None)


def test_a_very_long_word_is_cut_in_the_message() -> None:
    found = only(word_problems(*THREE, "work." + "x" * 5000 + "=1"))
    assert len(str(found)) < 700


@pytest.mark.parametrize("word", ["\x1b[2J", "\x1b=1", "work.\x07=1", "work.wall=\x1b]0;x\x07", "work.parts=[\u202e,"])
def test_a_complaint_holds_nothing_that_a_terminal_would_obey(word: str) -> None:
    found = word_problems(*THREE, word)
    assert found
    assert all(str(problem).isprintable() for problem in found)
    assert word[0] == "w" or str(found[0]).startswith("the word \\x1b")


def test_a_file_whose_name_would_move_the_cursor_is_named_harmlessly(tmp_path: Path) -> None:
    path = tmp_path / "a\x1b[2J.yaml"
    path.write_text("work: [", encoding="utf-8")
    assert r"a\x1b[2J.yaml" in str(only(word_problems(path=str(path))))


def test_thousands_of_wrong_words_are_refused_without_looking_for_what_each_was_meant_for() -> None:
    found = word_problems(*THREE, *(f"wall{number}=1" for number in range(2000)))
    assert len(found) == 2000
    assert found[0].nearest == "work.wall"
    assert {problem.nearest for problem in found[30:]} == {None}


def test_a_sign_beyond_all_signs_in_a_word_is_refused() -> None:
    found = only(word_problems(*THREE, r'work.parts=["\U90110000"]'))
    assert found.message == "cannot be read: brackets open and close, commas between"
