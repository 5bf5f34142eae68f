"""What is said about a wrong field: where, which, what was given, what is accepted, what was perhaps meant."""

import pytest

from advisor.reading import InputFault, read_case, read_text
from tests.reading.texts import GOOD_YAML, only, problems

ONE = [
    # lines added below `work`, field, value, message, accepted (a part), nearest
    ("diamter: 5 in", "work.diamter", None, "is not a known field", "fields of work: material, form", "work.diameter"),
    ("swing: 12 in", "work.swing", None, "is not a known field", "fields of work", "machine.swing"),
    ("Wall: 3 mm", "work.Wall", None, "is not a known field", "fields of work", "work.wall"),
    ("end-waste: 3 mm", "work.end-waste", None, "is not a known field", "fields of work", "work.end_waste"),
    ("qqqq: 3", "work.qqqq", None, "is not a known field", "fields of work", None),
    ("form: dics", "work.form", "dics", "is no word of this field", "one of square, octagon, round, disc", "disc"),
    ("form: half log", "work.form", "half log", "is no word of this field", "one of square", "half-log"),
    ("form: 7", "work.form", "7", "is no word of this field", "one of square", None),
    ("form:", "work.form", None, "has no value; give one or leave the line out", "one of square", None),
    ("form: ~", "work.form", None, "has no value; give one or leave the line out", "one of square", None),
    ("form: ''", "work.form", "", "is no word of this field", "one of square", None),
    ("form: [disc]", "work.form", None, "has a list where one value belongs", "one of square", None),
    ("form: {disc: 1}", "work.form", None, "has fields of its own where one value belongs", "one of square", None),
    ("raw: maybe", "work.raw", "maybe", "is neither yes nor no", "yes or no", None),
    ("raw: 1", "work.raw", "1", "is neither yes nor no", "yes or no", None),
    ("wall: 1,5 mm", "work.wall", "1,5 mm", "has a comma, which may stand", "0.1 mm to 3000 mm (0.004 in to", None),
    ("wall: 5 kg", "work.wall", "5 kg", "is a mass, not a length", "written like 10 in", None),
    ("wall: -5 mm", "work.wall", "-5 mm", "is too small", "from 0.1 mm to 3000 mm", None),
    ("wall: .nan", "work.wall", ".nan", "is not a number", "from 0.1 mm to 3000 mm", None),
    ("wall: .inf", "work.wall", ".inf", "is not a number", "from 0.1 mm to 3000 mm", None),
    ("mass: 5 t", "work.mass", "5 t", "is too large", "from 0.1 g to 2000 kg (0.00353 oz to 4400 lb)", None),
    (
        "moisture: 0.12",
        "work.moisture",
        "0.12",
        "is too small",
        "from 1 % to 250 %, written like 12% or 12, or dry",
        None,
    ),
    ("moisture: moist", "work.moisture", "moist", "is no word of this field", "or dry, or air-dry", None),
    ("moisture: gren", "work.moisture", "gren", "is no word of this field", "or dry, or air-dry", "green"),
    ("grain_slope: 10", "work.grain_slope", "10", "is not a slope", "from 1:1 to 1:1000, written like 1:10", None),
    ("condition: check", "work.condition", "check", "stands where a list belongs", "a list of 1 to 27 entries", None),
    ("condition: []", "work.condition", None, "has 0 entries", "a list of 1 to 27 entries in brackets", None),
    ("condition: [pith, chek]", "work.condition", "chek", "is no word of this field", "one of sound", "check"),
    ("condition: [pith, pith]", "work.condition", "pith", "is listed twice", "a list of 1 to 27 entries", None),
    ("radii: [1, 2]", "work.radii", None, "has 2 entries", "a list of 6 to 72 entries in brackets, each from", None),
    ("radii: [[1], 1, 1, 1, 1, 1]", "work.radii", None, "has a list where one value belongs", "from 0.1 mm", None),
    ("profile: [0:1, 5]", "work.profile", "5", "has no colon between", "a position:diameter, both from 0 mm", None),
    ("profile: [0:1, [1, 2, 3]]", "work.profile", "3 values", "has no colon between", "a position:diameter", None),
    ("profile: [0:1, [[1], 2]]", "work.profile", "[..]:2", "is not a number", "a position:diameter", None),
    ("balance_test: 5 g", "work.balance_test", "5 g", "stands where fields belong", "fields of its own: weight", None),
    ("balance_test: [5 g]", "work.balance_test", None, "stands where fields belong", "fields of its own: weight", None),
    ("material: ash", "work.material", None, "is given twice", "text of 1 to 100 characters on one line", None),
    ("parts: ['']", "work.parts", "", "is empty", "text of 1 to 100 characters on one line", None),
    ("parts: ['" + "a" * 101 + "']", "work.parts", "a" * 101, "is too long", "text of 1 to 100", None),
    ('parts: ["a\\e[31m"]', "work.parts", "a\x1b[31m", "holds signs that cannot be printed", "text of", None),
]


@pytest.mark.parametrize(
    ("line", "field", "value", "message", "accepted", "near"), ONE, ids=[row[0][:30].replace("\x1b", "") for row in ONE]
)
def test_one_wrong_field_is_named_with_what_is_accepted(
    line: str, field: str, value: str | None, message: str, accepted: str, near: str | None
) -> None:
    found = only(problems(f"{GOOD_YAML}  {line}\n"))
    assert (found.file, found.line, found.field, found.value) == ("case.yaml", 7, field, value)
    assert found.message.startswith(message)
    assert accepted in (found.accepted or "")
    assert found.nearest == near


def test_a_whole_message() -> None:
    found = problems(GOOD_YAML + "  wall: 0 mm\nmachine:\n  swing: 12 feets\nhold:\n  method: tape\n")
    assert [str(problem) for problem in found] == [
        "case.yaml, line 7, column 9: work.wall: '0 mm' is too small; accepted: from 0.1 mm to 3000 mm (0.004 in to "
        """118 in), written like 10 in, 1 1/2 in, 3/4", 4 ft 2 in, 38 mm or 1.2 m""",
        "case.yaml, line 9, column 10: machine.swing: '12 feets' has a unit that is not known here (feets); accepted: "
        "from 0.1 mm to 3000 mm (0.004 in to 118 in), written like 10 in, "
        """1 1/2 in, 3/4", 4 ft 2 in, 38 mm or 1.2 m""",
        f"case.yaml, line 11, column 11: hold.method: 'tape' is no word of this field; accepted: {found[2].accepted}",
    ]


def test_all_problems_of_a_file_come_at_once_in_the_order_of_its_lines() -> None:
    text = "titel: x\nwork:\n  form: cube\n  diameter: 10\n  wall: 3 in\n  finished_diameter: 1 in\n"
    text += "  thinnest_diameter: 2 in\nmachine: fast\nhold: {drive: {teeth: 2.5, tooth: 1}}\n"
    found = problems(text)
    assert [(problem.line, problem.field) for problem in found] == [
        (1, "titel"),
        (3, "work.material"),
        (3, "work.length"),
        (3, "work.form"),
        (4, "work.diameter"),
        (7, "work.thinnest_diameter and work.finished_diameter"),
        (8, "machine"),
        (9, "hold.drive.teeth"),
        (9, "hold.drive.tooth"),
    ]
    assert "is not a whole number" in str(found[7])
    with pytest.raises(InputFault) as caught:
        read_text(text, "yaml", "case.yaml")
    assert str(caught.value).splitlines() == [str(problem) for problem in found]


def test_what_is_missing_is_named_with_an_example() -> None:
    found = problems("title: x\n")
    assert [(problem.field, problem.message, problem.example) for problem in found] == [
        ("work.material", "is missing", "material: white ash"),
        ("work.diameter", "is missing", "diameter: 10 in"),
        ("work.length", "is missing", "length: 3 in"),
    ]
    found = problems(GOOD_YAML + "  balance_test: {}\nhold: {slip_test: {}}\n")
    assert [str(problem).partition(": is missing; ")[2] for problem in found] == [
        "write e.g. weight: 50 g",
        "write e.g. radius: 4 in",
        "write e.g. torque: 5 N-m",
        "write e.g. thrust: 600 N",
    ]


def test_what_is_missing_among_words_is_asked_for_as_a_word() -> None:
    with pytest.raises(InputFault) as caught:
        read_case(None, ["work.material=ash", "hold.slip_test.torque=5 N-m"])
    assert str(caught.value).splitlines() == [
        'the words: work.diameter: is missing; write e.g. "work.diameter=10 in"',
        'the words: work.length: is missing; write e.g. "work.length=3 in"',
        'the words: hold.slip_test.thrust: is missing; write e.g. "hold.slip_test.thrust=600 N"',
    ]


def test_contradictions_name_both_fields() -> None:
    found = only(problems(GOOD_YAML + "  wall: 6 in\n"))
    assert found.field == "work.wall and work.diameter"
    assert found.message == "work.wall is larger than half of work.diameter"
    assert (found.line, found.column) == (7, 9)


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ("0 in", "'0 in' is too small; accepted: from 1 mm to 3000 mm (0.04 in to 118 in)"),
        ("-10 in", "'-10 in' is too small"),
        ("0.5 mm", "'0.5 mm' is too small"),
        ("12 ft", "'12 ft' is too large"),
        ("1e90 in", "'1e90 in' is too large"),
    ],
)
def test_an_impossible_diameter_is_refused_with_the_range_in_both_systems(given: str, said: str) -> None:
    assert said in str(only(problems(f"work: {{material: ash, diameter: {given}, length: 3 in}}")))


BARE = "work: {material: ash, diameter: 10, length: 3 in}\n"


def test_a_bare_number_needs_a_setting() -> None:
    found = only(problems(BARE))
    assert found.message == "has no unit: write 10 in or 10 mm, or say units: inch or units: metric"
    assert read_text(BARE + "units: inch", "yaml", "x").work.diameter == 254
    assert read_text("units: Metric\n" + BARE, "yaml", "x").work.diameter == 10
    assert [problem.field for problem in problems(BARE + "units: imperial")] == ["work.diameter", "units"]
    assert [problem.field for problem in problems(BARE + "units: [inch]")] == ["work.diameter", "units"]


def test_fields_that_name_their_unit_or_count_take_bare_numbers() -> None:
    text = GOOD_YAML.replace("units: inch\n", "").replace("10", "10 in") + "  moisture: 12\n"
    text += "machine: {min_rpm: 50, max_rpm: 3000, speeds: [50, 3000], rpm_set: 700, spindle_taper: 2, tail_taper: 2}\n"
    text += "hold: {drive: {teeth: 4, shank_taper: 2}, chuck: {max_rpm: 2500}, screws: {count: 6}}\n"
    text += "cut: {wanted_rpm: 900}\n"
    case = read_text(text, "yaml", "x")
    assert case.machine.speeds == (50, 3000)
    assert case.hold.screws is not None
    assert case.hold.screws.count == 6


@pytest.mark.parametrize(
    ("setting", "expected"),
    [
        ("inch", (4.5359237, 44.482216, 1.1298483, 33.86389, 7456.9987, 3.048, 254.0)),
        ("metric", (10, 10, 10, 10, 10, 10, 10)),
    ],
)
def test_the_setting_says_what_a_bare_number_is(setting: str, expected: tuple[float, ...]) -> None:
    text = f"units: {setting}\nwork: {{material: ash, diameter: 30, length: 30, mass: 10}}\n"
    text += "machine: {power: 10, altitude: 10, between_centers: 10}\n"
    text += "hold: {handwheel_torque: 10, tail: {rating: 10}, vacuum: {gauge: 10}}\n"
    case = read_text(text, "yaml", "x")
    machine, hold = case.machine, case.hold
    assert hold.tail is not None
    assert hold.vacuum is not None
    found = (case.work.mass, hold.tail.rating, hold.handwheel_torque, hold.vacuum.gauge)
    assert (*found, machine.power, machine.altitude, machine.between_centers) == pytest.approx(expected, rel=1e-6)


@pytest.mark.parametrize(
    ("given", "kind"), [("PVA", "pva"), ("CA", "cyanoacrylate"), ("hot melt", "hot-melt"), ("Epoxy", "epoxy")]
)
def test_glues_are_named_as_people_name_them(given: str, kind: str) -> None:
    glue = read_text(GOOD_YAML + f"hold: {{glue: {{kind: {given}}}}}\n", "yaml", "x").hold.glue
    assert glue is not None
    assert glue.kind == kind


def test_a_word_of_a_glue_is_no_word_elsewhere() -> None:
    assert only(problems(GOOD_YAML + "  form: ca\n")).message == "is no word of this field"


def test_many_problems_are_cut_short_when_printed_and_take_no_time() -> None:
    text = GOOD_YAML + "".join(f"  field_{number}: 1\n" for number in range(1500))
    with pytest.raises(InputFault) as caught:
        read_text(text, "yaml", "x")
    assert len(caught.value.problems) == 1500
    lines = str(caught.value).splitlines()
    assert len(lines) == 31
    assert lines[-1] == "and 1470 more"
    assert all(problem.nearest is None for problem in caught.value.problems[30:])
