"""Where a fault is said to be, in every format and in words, and what of the text is quoted."""

from __future__ import annotations

import pickle

import pytest

from advisor.reading import InputFault, Problem, read_case, read_text
from advisor.reading.files import Format, text_of_bytes
from tests.reading.texts import only, problems, word_problems

THREE = ["work.material=ash", "work.diameter=10 in", "work.length=3 in"]
MISSING = ["work.material", "work.diameter", "work.length"]
Spot = tuple[int | None, int | None]


@pytest.mark.parametrize(
    ("format_", "text", "spot"),
    [
        ("yaml", "title: x\nwork:\n", (2, 6)),
        ("yaml", "title: x\nwork: {}\n", (2, 7)),
        ("yaml", "title: x\n", (1, 1)),
        ("json", '{"title": "x",\n "work": {}}', (2, 10)),
        ("json", '\n {"title": "x"}', (2, 2)),
        ("toml", 'title = "x"\n[work]\n', (2, 2)),
        ("toml", 'title = "x"\n', (None, None)),
    ],
)
def test_what_is_missing_is_missing_in_its_section(format_: Format, text: str, spot: Spot) -> None:
    found = problems(text, format_, "my case")
    assert [problem.field for problem in found] == MISSING
    assert {(problem.file, problem.line, problem.column) for problem in found} == {("my case", *spot)}


def test_what_is_missing_in_words_is_missing_in_all_of_them() -> None:
    assert {problem[:3] for problem in word_problems("title=x")} == {("the words", None, None)}
    assert [problem[:3] for problem in word_problems("work.material=ash")] == [("the words", None, None)] * 2
    with pytest.raises(InputFault) as refused:
        read_case(None)
    assert refused.value.problems[0].file == "no case"


def test_a_list_or_fields_of_a_word_lie_in_that_word() -> None:
    for word in ("work.radii=[x, 1 in, 1 in, 1 in, 1 in, 1 in]", "work.balance_test={weight: x, radius: 1 in}"):
        problem = only(word_problems(*THREE, word))
        assert (problem.file, problem.line, problem.column, problem.value) == (f"the word {word}", None, None, "x")


def test_fields_where_a_list_belongs() -> None:
    problem = only(word_problems(*THREE, "work.condition={check: yes}"))
    assert (problem.value, problem.message) == (None, "stands where a list belongs")


TOML = """\
[work]
'material' = "ash"
"diameter" = "10 parsec"
length = "3 in"
walX = 3
radii = ["1 in",
  "2 in"]
hold = { "method" = 3 }
"""


def test_places_in_toml() -> None:
    found = [(problem.field, problem.line, problem.column) for problem in problems(TOML, "toml")]
    assert found == [("work.diameter", 3, 14), ("work.walX", 5, 8), ("work.radii", 6, 9), ("work.hold", 8, 8)]


@pytest.mark.parametrize("text", ['a = 1\nb = 2\nc = """x', 'title = "x"\n\n[work]\nc = """x'])
def test_a_toml_text_that_breaks_off_is_wrong_behind_its_last_sign(text: str) -> None:
    problem = only(problems(text, "toml"))
    assert (problem.line, problem.column) == (text.count("\n") + 1, 9)


def test_toml_values_are_texts_as_they_were_typed() -> None:
    def title(written: str) -> str | None:
        head = f"title = {written}\n[work]\n"
        case = read_text(head + 'material = "White Ash"\ndiameter = "10 in"\nlength = "3 in"', "toml", "case")
        assert case.work.material == "White Ash"
        return case.title

    assert [title(text) for text in ("true", "1.50", "17", '"Yes"')] == ["true", "1.50", "17", "Yes"]


@pytest.mark.parametrize(("opened", "closed"), [('{"a": ', "}"), ("[", "]"), ('{"a": [', "]}")])
def test_json_goes_twelve_deep(opened: str, closed: str) -> None:
    levels = len(opened.replace('"a": ', ""))
    times = 12 // levels
    assert "too deep" not in str(problems(opened * times + "1" + closed * times, "json")[0])
    assert only(problems(opened * times + "[1]" + closed * times, "json")).message == "goes too deep"


def test_json_quotes_twenty_signs_of_what_it_is_not() -> None:
    problem = only(problems('{"title": ' + "x" * 30, "json"))
    assert (problem.field, problem.value) == ("", "x" * 20)
    assert only(problems('{"title": xx\n}', "json")).value == "xx"
    assert [problem.field for problem in problems('{"title": "x"} \n\t', "json")] == MISSING


@pytest.mark.parametrize("ends", ["\n", "\r\n", "\r"])
def test_lines_are_counted_alike_whatever_ends_them(ends: str) -> None:
    text = "work:\n  material: ash\n  diameter: 1 in\n  length: 1 in\n  wal: 3\n"
    problem = only(problems(text.replace("\n", ends)))
    assert (problem.line, problem.column) == (5, 3)


@pytest.mark.parametrize(("text", "message"), [("", "is empty"), ("title: \ud800", "is not UTF-8 text")])
def test_a_text_that_is_none_is_named(text: str, message: str) -> None:
    problem = only(problems(text, "yaml", "my case"))
    assert (problem.file, problem.message) == ("my case", message)


def test_half_a_pair_is_quoted_as_it_stands() -> None:
    assert only(word_problems(*THREE, "work.profile=[[~, 30 mm], 3 mm:30 mm]")).value == ":30 mm"


def test_the_largest_count_is_taken() -> None:
    assert word_problems(*THREE, "hold.drive.teeth=200") == []


def test_bytes_that_are_no_text_are_placed_in_their_line() -> None:
    with pytest.raises(InputFault) as refused:
        text_of_bytes(b"title: x\nunits: inch\nwork: \xff\n", "a")
    assert refused.value.problems[0][:3] == ("a", 3, 7)
    assert refused.value.problems[0].accepted == "the same text saved as UTF-8"


def test_a_field_is_looked_for_beside_before_elsewhere() -> None:
    assert only(word_problems(*THREE, "cut.Diameter=3 mm")).nearest == "cut.diameter"
    assert only(word_problems(*THREE, "machine.Diameter=3 mm")).nearest == "work.diameter"


def test_an_unknown_word_is_told_what_its_section_holds() -> None:
    for word, section, field in (
        ("work.wal=1", "work", "diameter"),
        ("hold.drive.wal=1", "hold.drive", "teeth"),
        ("hold.nothing.wal=1", "a case", "hold"),
        ("wal=1", "a case", "machine"),
    ):
        problem = only(word_problems(*THREE, word))
        assert problem.field == word.removesuffix("=1")
        told, _, known = (problem.accepted or "").partition(": ")
        assert told == f"fields of {section}"
        assert field in known.split(", ")


def test_a_likeness_is_looked_for_thirty_times() -> None:
    fields = ", ".join(f"wall{number}: 1" for number in range(33))
    found = problems("work: {material: ash, diameter: 1 in, length: 1 in, " + fields + "}")
    assert [problem.nearest for problem in found] == ["work.wall"] * 30 + [None] * 3
    in_words = word_problems(*THREE, *(f"work.wall{number}=1" for number in range(33)))
    assert [problem.nearest for problem in in_words] == ["work.wall"] * 30 + [None] * 3


@pytest.mark.parametrize("length", [90, 300])
def test_an_unknown_name_is_given_by_its_first_hundred_signs(length: int) -> None:
    problem = only(problems("work: {material: ash, diameter: 1 in, length: 1 in, " + "x" * length + ": 1}"))
    assert problem.field == ("work." + "x" * length)[:100]


def test_a_problem_tells_what_there_is_to_tell() -> None:
    bare = Problem(None, None, None, "work.wall", "3", "has no unit")
    assert str(bare) == "work.wall: '3' has no unit"
    assert str(bare._replace(file="a", line=2, column=7, accepted="3 in")) == (
        "a, line 2, column 7: work.wall: '3' has no unit; accepted: 3 in"
    )
    assert str(bare._replace(nearest="work.walls")) == "work.wall: '3' has no unit; did you mean work.walls?"


@pytest.mark.parametrize("count", [29, 30, 31])
def test_thirty_problems_are_told(count: int) -> None:
    lines = str(InputFault([Problem(None, None, None, "", None, "x")] * count)).splitlines()
    assert lines == (["x"] * count if count <= 30 else ["x"] * 30 + ["and 1 more"])


def test_what_stands_for_units_decides_nothing_else() -> None:
    for written in ("units:\n", "units: [inch]\n", "units: {}\n"):
        found = problems(written + "work: {material: ash, diameter: 10, length: 1 in}\n")
        assert {problem.field for problem in found} == {"units", "work.diameter"}


def test_a_name_of_nothing_is_an_unknown_field() -> None:
    problem = problems("? \n: 3\nwork: {material: ash, diameter: 1 in, length: 1 in}")[0]
    assert (problem.field, problem.message) == ("", "is not a known field")


@pytest.mark.parametrize(("lists", "message"), [(12, "is not a known field"), (13, "goes too deep")])
def test_toml_goes_twelve_deep_below_a_field(lists: int, message: str) -> None:
    assert problems("a = " + "[" * lists + "]" * lists, "toml")[0].message == message


def test_a_fault_travels_between_processes_whole() -> None:
    found = InputFault(problems("work: {material: ash, diameter: 1, length: x}"))
    assert pickle.loads(pickle.dumps(found)).problems == found.problems
