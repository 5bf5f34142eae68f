"""Quantities as people write them: exact, and refused where they could be read in two ways."""

import csv
import re
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor import units
from advisor.units import (
    ANGLE,
    CUTTING_SPEED,
    DENSITY,
    EXPANSION,
    FORCE,
    FRACTURE_ENERGY,
    LENGTH,
    MASS,
    MASS_RADIUS,
    NUMBER,
    PER_TURN,
    PERCENT,
    POWER,
    PRESSURE,
    RISE,
    RPM,
    SLOPE,
    SPEED,
    STRESS,
    TIME,
    TORQUE,
    TRAVERSE,
    Kind,
    System,
    UnitError,
    convert,
    parse,
    parse_exact,
    show,
)
from tests.conftest import scale

KINDS = [kind for kind in vars(units).values() if isinstance(kind, Kind)]

# Expected values from the definitions in NIST SP 811: inch 25.4 mm, pound 0.45359237 kg, gravity 9.80665 m/s2.
WRITTEN = [
    ("1 1/2 in", LENGTH, "38.1"),
    ('1-1/2"', LENGTH, "38.1"),
    ("1-1/2in", LENGTH, "38.1"),
    ('3/4"', LENGTH, "19.05"),
    ("3/4in", LENGTH, "19.05"),
    (".750 in", LENGTH, "19.05"),
    ("0.750 in", LENGTH, "19.05"),
    ("19.05mm", LENGTH, "19.05"),
    ("10. in", LENGTH, "254"),
    ("10 inches", LENGTH, "254"),
    ("10 IN", LENGTH, "254"),
    ("4 ft 2 in", LENGTH, "1270"),
    ("4' 2\"", LENGTH, "1270"),
    ("4'-2 1/2\"", LENGTH, "1282.7"),
    ("4''", LENGTH, "101.6"),
    ("4″", LENGTH, "101.6"),
    ("1½ in", LENGTH, "38.1"),
    ("½ in", LENGTH, "12.7"),
    ("10\u00a0in", LENGTH, "254"),
    ("5 thou", LENGTH, "0.127"),
    ("1.2 m", LENGTH, "1200"),
    ("5 µm", LENGTH, "0.005"),
    ("-0.5 mm", LENGTH, "-0.5"),
    ("−0.5 mm", LENGTH, "-0.5"),
    ("5 kg", MASS, "5"),
    ("500g", MASS, "0.5"),
    ("11 lb", MASS, "4.98951607"),
    ("2 lb 4 oz", MASS, "1.0205828325"),
    ("200 N", FORCE, "200"),
    ("1.5kN", FORCE, "1500"),
    ("45 lbf", FORCE, "200.1699726867225"),
    ("45 lb", FORCE, "200.1699726867225"),
    ("20 inHg", PRESSURE, "67.72778"),
    ("20 in. Hg", PRESSURE, "67.72778"),
    ('20"Hg', PRESSURE, "67.72778"),
    ("1 bar", PRESSURE, "100"),
    ("3N-m", TORQUE, "3"),
    ("3 N·m", TORQUE, "3"),
    ("3 N m", TORQUE, "3"),
    ("40in-lbf", TORQUE, "4.519393161104668"),
    ("6 ft-lbf", TORQUE, "8.1349076899884024"),
    ("12 GPa", STRESS, "12000"),
    ("49 N/mm²", STRESS, "49"),
    ("30deg", ANGLE, "30"),
    ("22.5°", ANGLE, "22.5"),
    ("1° 30'", ANGLE, "1.5"),
    ("1° 15' 18\"", ANGLE, "1.255"),
    ("770 rpm", RPM, "770"),
    ("770", RPM, "770"),
    ("80ft/min", CUTTING_SPEED, "24.384"),
    ("8 m/s", CUTTING_SPEED, "480"),
    ("25 m per min", CUTTING_SPEED, "25"),
    ("10 ft/s", SPEED, "3.048"),
    ("120mm/min", TRAVERSE, "2"),
    ("0.2in/s", TRAVERSE, "5.08"),
    ("1 1/2 hp", POWER, "1118.54980737340533"),
    ("0.7 g/cm3", DENSITY, "700"),
    ("560 kg/m³", DENSITY, "560"),
    ("450J/m2", FRACTURE_ENERGY, "450"),
    ("30K", RISE, "30"),
    ("45F", RISE, "25"),
    ("45 °F", RISE, "25"),
    ("11.5e-6/K", EXPANSION, "0.0000115"),
    ("6.4e-6/F", EXPANSION, "0.00001152"),
    ("0.1kg-m", MASS_RADIUS, "0.1"),
    ("9 lb-in", MASS_RADIUS, "0.103691215782"),
    ("0.1 mm/rev", PER_TURN, "0.1"),
    ("1/10 in", PER_TURN, "2.54"),
    ("90 min", TIME, "1.5"),
    ("2 days", TIME, "48"),
    ("12%", PERCENT, "12"),
    ("12", PERCENT, "12"),
    ("1/3", NUMBER, "0.33333333333333"),
    ("1:10", SLOPE, "10"),
    ("1 in 10", SLOPE, "10"),
]

# Printed in NIST SP 811 appendix B to seven figures.
PUBLISHED = [
    ("1 lb/ft3", DENSITY, 16.01846),
    ("1 psi", PRESSURE, 6.894757),
    ("1 ksi", STRESS, 6.894757),
    ("1 inHg", PRESSURE, 3.386389),
    ("1 mmHg", PRESSURE, 0.1333224),
    ("1 hp", POWER, 745.6999),
    ("1 ft-lbf", TORQUE, 1.355818),
    ("1 in-lbf", TORQUE, 0.1129848),
    ("1 lbf", FORCE, 4.448222),
    ("1 oz", MASS, 0.02834952),
    ("1 mph", SPEED, 0.44704),
    ("1 lb/in3", DENSITY, 27679.90),
]

REFUSED = [
    ("1,5", LENGTH, "has a comma"),
    ("1,5 mm", LENGTH, "has a comma"),
    ("1,000 rpm", RPM, "has a comma"),
    ("10", LENGTH, "has no unit: write 10 in or 10 mm, or say units: inch or units: metric"),
    ("10", MASS, "has no unit: write 10 lb or 10 kg"),
    ("60", ANGLE, "has no unit: write 60 deg, or say units"),
    ("2'' 3", LENGTH, "holds more than one number, or one without a unit"),
    ("4 ft 2", LENGTH, "holds more than one number, or one without a unit"),
    ("4 ft 14 in", LENGTH, "holds more than one number"),
    ("2 in 4 ft", LENGTH, "holds more than one number"),
    ("4 mm 2 mm", LENGTH, "holds more than one number"),
    ("1 1/2 3/4 in", LENGTH, "holds more than one number"),
    ("4 ft 2 in 3", LENGTH, "holds more than one number"),
    ("2 in 0 ft", LENGTH, "holds more than one number"),
    ("4 ft 0.5 ft", LENGTH, "holds more than one number"),
    ("1.1e100 mm", LENGTH, "is larger than anything here"),
    ("4 ft 1/0 in", LENGTH, "holds more than one number"),
    ("5 LB/FY3", DENSITY, "has a unit that is not known here (LB/FY3)"),
    ("NaN5 mm", LENGTH, "is not a number"),
    ("-inf 5 mm", LENGTH, "is not a number"),
    ("10-12 in", LENGTH, "is a range"),
    ("10 in to 12 in", LENGTH, "is a range"),
    ("10..12 mm", LENGTH, "cannot be read as one number"),
    ("about 10 in", LENGTH, "does not start with a number"),
    ("~10 in", LENGTH, "does not start with a number"),
    (">10 in", LENGTH, "does not start with a number"),
    ("1 5/4 in", LENGTH, "is no ordinary fraction"),
    ("1/0 in", LENGTH, "is no ordinary fraction"),
    ("10.5.2 in", LENGTH, "cannot be read as one number"),
    ("nan", LENGTH, "is not a number"),
    ("-inf mm", LENGTH, "is not a number"),
    ("ten inches", LENGTH, "is not a number"),
    ("1e999 mm", LENGTH, "is larger than anything here"),
    ("1e9999 mm", LENGTH, "holds more than one number"),
    ("", LENGTH, "is empty"),
    ("  ", LENGTH, "is empty"),
    ("1" * 61 + " mm", LENGTH, "is too long"),
    ("5 kg", LENGTH, "is a mass, not a length"),
    ("5 in", MASS, "is a length, not a mass"),
    ("5 kg", FORCE, "is a mass, not a force"),
    ("5 foo", LENGTH, "has a unit that is not known here (foo)"),
    ("4 teeth", NUMBER, "needs no unit (teeth)"),
    ("10", SLOPE, "is not a slope"),
    ("1:0", SLOPE, "is not a slope"),
    ("٣ mm", LENGTH, "cannot be read as one number"),
]


@pytest.mark.parametrize(("text", "kind", "expected"), WRITTEN, ids=[text for text, *_ in WRITTEN])
def test_reads_what_people_write(text: str, kind: Kind, expected: str) -> None:
    assert parse(text, kind) == pytest.approx(float(expected), rel=1e-11)


def test_the_largest_and_the_longest_are_still_read() -> None:
    assert parse("1e100", NUMBER) == 1e100
    assert parse("7" + " " * 57 + "mm", LENGTH) == 7
    assert units.spellings(SLOPE) == ()
    assert "mm" in units.spellings(LENGTH)


def test_reads_exactly() -> None:
    assert parse_exact("1 1/2 in", LENGTH) == Fraction(381, 10)
    assert parse_exact("1/3 in", LENGTH) == Fraction(127, 15)
    assert parse_exact("11 lb", MASS) == Fraction(498951607, 10**8)


@pytest.mark.parametrize(("text", "kind", "expected"), PUBLISHED, ids=[text for text, *_ in PUBLISHED])
def test_factors_are_those_of_the_published_table(text: str, kind: Kind, expected: float) -> None:
    assert parse(text, kind) == pytest.approx(expected, rel=5e-7)


@pytest.mark.parametrize(("text", "kind", "why"), REFUSED, ids=[repr(text)[:20] for text, *_ in REFUSED])
def test_refuses_and_says_why_and_what_is_accepted(text: str, kind: Kind, why: str) -> None:
    with pytest.raises(UnitError, match=re.escape(why)) as caught:
        parse(text, kind)
    assert f"accepted: {kind.example}" in str(caught.value)
    assert len(str(caught.value)) < 300


@pytest.mark.parametrize(
    ("kind", "inch", "metric"),
    [
        (LENGTH, 254.0, 10.0),
        (MASS, 4.5359237, 10.0),
        (FORCE, 44.482216, 10.0),
        (PRESSURE, 33.86389, 10.0),
        (TORQUE, 1.1298483, 10.0),
        (POWER, 7456.9987, 10.0),
        (ANGLE, 10.0, 10.0),
        (units.ALTITUDE, 3.048, 10.0),
    ],
    ids=lambda value: value.name if isinstance(value, Kind) else "",
)
def test_a_bare_number_follows_the_setting(kind: Kind, inch: float, metric: float) -> None:
    assert parse("10", kind, System.INCH) == pytest.approx(inch)
    assert parse("10", kind, System.METRIC) == pytest.approx(metric)


def test_a_unit_wins_over_the_setting() -> None:
    assert parse("10 mm", LENGTH, System.INCH) == 10


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind is not SLOPE], ids=lambda kind: kind.name)
def test_the_examples_of_every_kind_are_accepted(kind: Kind) -> None:
    for example in re.split(r", | or ", kind.example.replace(" (a difference)", "")):
        assert parse(example, kind) > 0


def test_every_spelling_means_one_unit_of_its_kind_and_its_factor_stands_in_the_file() -> None:
    with (Path(units.__file__).parent / "data" / "units.csv").open(encoding="utf-8", newline="") as lines:
        rows = list(csv.DictReader(lines))
    kinds = {kind.name: kind for kind in KINDS}
    seen: set[tuple[str, str]] = set()
    for row in rows:
        top, _, bottom = row["factor"].partition("/")
        for spelling in row["spellings"].split(" "):
            assert (row["kind"], spelling) not in seen
            seen.add((row["kind"], spelling))
            assert parse_exact(f"1 {spelling}", kinds[row["kind"]]) == Fraction(top) / Fraction(bottom or 1)
    assert {kind.name for kind in KINDS} - {row["kind"] for row in rows} == {"number", "slope"}


SHOWN = [
    (19.05, LENGTH, "inch", "near", "3/4 in"),
    (38.1, LENGTH, "inch", "down", "1 1/2 in"),
    (38.0, LENGTH, "inch", "near", "1 1/2 in"),
    (38.0, LENGTH, "inch", "down", "1 31/64 in"),
    (254.0, LENGTH, "inch", "up", "10 in"),
    (0.127, LENGTH, "inch", "near", "0.005 in"),
    (3000.0, LENGTH, "inch", "near", "118 in"),
    (-12.7, LENGTH, "inch", "near", "-1/2 in"),
    (0.0, LENGTH, "inch", "near", "0 in"),
    (1234.5, LENGTH, "metric", "near", "1230 mm"),
    (0.35, MASS, "metric", "near", "350 g"),
    (0.3, MASS, "inch", "near", "10.6 oz"),
    (12300.0, STRESS, "metric", "near", "12.3 GPa"),
    (1.15e-5, EXPANSION, "metric", "near", "1.15e-05/K"),
    (200.0, FORCE, "inch", "down", "44.9 lbf"),
    (200.0, FORCE, "inch", "up", "45 lbf"),
    (10.0, SLOPE, "inch", "near", "1:10"),
    (12.0, PERCENT, "metric", "near", "12 %"),
    (4.0, NUMBER, "metric", "near", "4"),
]


@pytest.mark.parametrize(("value", "kind", "system", "round_", "expected"), SHOWN, ids=[row[-1] for row in SHOWN])
def test_prints_as_a_person_writes(
    value: float, kind: Kind, system: str, round_: units.Rounding, expected: str
) -> None:
    assert show(value, kind, System(system), round_) == expected


def test_fewer_figures_on_request() -> None:
    assert show(777.0, RPM, System.METRIC, "down", 2) == "770 rpm"


def test_converts_to_a_named_unit() -> None:
    assert convert(12000.0, STRESS, "GPa") == 12
    assert convert(25.4, LENGTH, "in") == 1
    assert convert(9.80665, FORCE, "kgf") == 1
    assert convert(50.8, LENGTH, "Inches") == 2
    assert convert(3, NUMBER, "") == 3
    with pytest.raises(KeyError):
        convert(1.0, LENGTH, "kg")


VALUES = st.floats(min_value=1e-3, max_value=1e5)
SHOWABLE = st.sampled_from([kind for kind in KINDS if kind is not FRACTURE_ENERGY])


def check_shown(value: float, kind: Kind, system: System) -> None:
    """What is printed reads back near to the value, on the side it was rounded to."""
    ways: tuple[units.Rounding, ...] = ("down", "near", "up")
    down, near, up = (parse(show(value, kind, system, way), kind) for way in ways)
    slack = 1 + 1e-8
    assert down <= value * slack
    assert up * slack >= value
    assert down <= near <= up
    inches = kind is LENGTH and system is System.INCH
    # thousandths below an eighth: half of one is more than a share of very small sizes
    assert near == pytest.approx(value, rel=0.04 if inches else 0.006, abs=0.0128 if inches else 0)


def check_mixed(whole: int, top: int, bottom: int, join: str) -> None:
    expected = (whole + Fraction(top, bottom)) * Fraction(254, 10)
    assert parse_exact(f"{whole}{join}{top}/{bottom} in", LENGTH) == expected


def check_garbage(text: str, kind: Kind) -> None:
    try:
        value = parse(text, kind)
    except UnitError:
        return
    assert -1e110 < value < 1e110


LIKE_QUANTITIES = st.text(alphabet="0123456789 ./-+eE,:'\"°½µ%infthmgkNlbrpHgKFJ²³", max_size=14)


@settings(max_examples=120, deadline=None)
@given(VALUES, SHOWABLE, st.sampled_from(System))
def test_what_is_printed_reads_back_on_the_right_side(value: float, kind: Kind, system: System) -> None:
    check_shown(value, kind, system)


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 99), st.integers(1, 63), st.integers(64, 128), st.sampled_from([" ", "-", "  "]))
def test_mixed_numbers_are_exact(whole: int, top: int, bottom: int, join: str) -> None:
    check_mixed(whole, top, bottom, join)


@settings(max_examples=150, deadline=None)
@given(st.text(max_size=20) | LIKE_QUANTITIES, st.sampled_from(KINDS))
def test_anything_ends_in_a_number_or_a_unit_error(text: str, kind: Kind) -> None:
    check_garbage(text, kind)


@pytest.mark.slow
@pytest.mark.properties
@settings(max_examples=scale(5_000), deadline=None)
@given(VALUES, SHOWABLE, st.sampled_from(System))
def test_what_is_printed_reads_back_many(value: float, kind: Kind, system: System) -> None:
    check_shown(value, kind, system)


@pytest.mark.slow
@pytest.mark.properties
@settings(max_examples=scale(10_000), deadline=None)
@given(st.text(max_size=20) | LIKE_QUANTITIES, st.sampled_from(KINDS))
def test_anything_ends_in_a_number_or_a_unit_error_many(text: str, kind: Kind) -> None:
    check_garbage(text, kind)


@pytest.mark.parametrize(
    ("told", "kind", "factor"),
    [
        ("1 in", units.LENGTH, units.MM_PER_INCH),
        ("1 lbf", units.FORCE, units.NEWTONS_PER_POUND),
        ("1 in-lbf", units.TORQUE, units.NM_PER_INCH_POUND),
    ],
)
def test_the_factors_used_alone_are_those_of_the_table(told: str, kind: Kind, factor: float) -> None:
    assert units.parse(told, kind) == pytest.approx(factor, rel=1e-12)


@pytest.mark.parametrize(
    ("value", "down", "up"),
    [(1234, 1200, 1300), (1200, 1200, 1200), (0.0567, 0.056, 0.057), (9.99, 9.9, 10), (0, 0, 0), (-3, 0, 0)],
)
def test_two_figures_never_flatter(value: float, down: float, up: float) -> None:
    assert units.two_figures(value, up=False) == pytest.approx(down)
    assert units.two_figures(value, up=True) == pytest.approx(up)
