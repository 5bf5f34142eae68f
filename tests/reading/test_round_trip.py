"""A case written out reads back equal; anything at all ends in a case or in a fault of the input."""

from typing import Any

import jsonschema
import pytest
import yaml
from hypothesis import HealthCheck, given, reject, settings
from hypothesis import strategies as st

from advisor.models.case import Case, case_schema
from advisor.models.fields import Shape, Spec, specs
from advisor.models.section import Section
from advisor.reading import InputFault, read_case, read_text, write_case
from advisor.reading.files import Format, text_of_bytes
from tests.conftest import scale
from tests.models.twin import CaseContradiction, tree_of, validated
from tests.reading.texts import GOOD_YAML

FORMATS: tuple[Format, ...] = ("yaml", "toml", "json")
TEXTS = (
    st.text(min_size=1, max_size=30)
    .map(lambda text: " ".join(text.split()))
    .filter(lambda text: text.isprintable() and text != "")
)


def values(spec: Spec) -> st.SearchStrategy[Any]:
    """Every value a field may hold."""
    if spec.section is not None:
        return sections(spec.section)
    if spec.item is not None:
        unique = spec.item.shape is Shape.WORD
        least, most = spec.size[0], min(spec.size[1], 8)
        several = st.lists(values(spec.item), min_size=least, max_size=most, unique=unique)
        return several.map(sorted).map(tuple) if spec.item.shape is Shape.PAIR else several.map(tuple)
    if spec.shape is Shape.WORD:
        return st.sampled_from(spec.words)
    if spec.shape is Shape.FLAG:
        return st.booleans()
    if spec.quantity is None:
        return TEXTS
    if spec.shape is Shape.COUNT:
        return st.integers(int(spec.quantity.least), int(spec.quantity.most))
    number = st.floats(spec.quantity.least, spec.quantity.most)
    if spec.shape is Shape.PAIR:
        return st.tuples(number, st.floats(0.0, 3000.0))
    return number | st.sampled_from(spec.words) if spec.words else number


def sections(model: type[Section]) -> st.SearchStrategy[dict[str, Any]]:
    """A section with some of its fields."""
    must = {name: values(spec) for name, spec in specs(model).items() if model.declared[name].required}
    may = {name: values(spec) for name, spec in specs(model).items() if name not in must}
    return st.fixed_dictionaries(must, optional=may)


@st.composite
def cases(draw: st.DrawFn) -> Case:
    """A case without contradictions: one section at random, beside three sizes that are always there."""
    name = draw(st.sampled_from([name for name, spec in specs(Case).items() if spec.section is not None]))
    spec = specs(Case)[name]
    assert spec.section is not None
    tree: dict[str, Any] = {"work": {"material": draw(TEXTS), "diameter": 3000.0, "length": 10_000.0}}
    tree[name] = {**draw(sections(spec.section)), **tree.get(name, {})}
    tree["title"] = draw(TEXTS)
    try:
        return validated(tree)
    except CaseContradiction:
        reject()


SCHEMA = jsonschema.Draft202012Validator(case_schema())


def check_round_trip(case: Case) -> None:
    text = write_case(case)
    found = read_text(text, "yaml", "written")
    assert found == case
    assert validated(tree_of(found)) == case
    SCHEMA.validate(yaml.load(text, Loader=yaml.BaseLoader))


def outcome(text: str, format_: Format) -> str:
    """What comes of a text: a case written out, or what is wrong. A case that was read is one the models accept."""
    try:
        case = read_text(text, format_, "garbage")
    except InputFault as fault:
        return str(fault)
    assert validated(tree_of(case)) == case
    return write_case(case)


def check_garbage(text: str, format_: Format) -> None:
    assert outcome(text, format_).encode("utf-8")


def check_bytes(raw: bytes, format_: Format) -> None:
    try:
        text = text_of_bytes(raw, "garbage")
    except InputFault:
        return
    check_garbage(text, format_)


def check_word(word: str) -> None:
    words = ["work.material=ash", "work.diameter=10 in", "work.length=3in", word]
    try:
        text = write_case(read_case(None, words))
    except InputFault as fault:
        text = str(fault)
    assert text.encode("utf-8")


def changed(text: str, at: int, what: str) -> str:
    """The text with something put in, or with a few signs taken out."""
    at %= len(text)
    return text[:at] + what + text[at + 3 * (at % 2) :]


PIECES = [
    *("work", "material", "diameter", "length", "units", "hold", "kit", "profile", "radii", "machine", "10 in", "1,5"),
    *(": ", "\n", "\n  ", "- ", "[", "]", "{", "}", ",", '"', "'", "=", "&a ", "*a", "!x ", "<<", "---\n", "#", "\t"),
    *("1:10", "yes", "null", "nan", "\\", "\\ud800", "\x00", "\x85", "\ufeff", "é", "%YAML 9.9\n", "? ", "| \n"),
    *("@", "`", "\u2028", "0", "1e400", "-", "1979-05-27", "''", "\r", "\x1b", "> \n"),
]
NONSENSE = st.text(max_size=60) | st.lists(st.sampled_from(PIECES), max_size=25).map("".join)
NEAR_CASES = st.builds(changed, st.just(GOOD_YAML + "  radii: [1, 2]\n"), st.integers(0, 200), st.sampled_from(PIECES))
WORDS = st.sampled_from(["work.profile=", "hold.kit=", "work.balance_test=", "title=", "work.wall=", "units=", ""])
CHECKED = [HealthCheck.too_slow, HealthCheck.filter_too_much]


@settings(max_examples=40, deadline=None, suppress_health_check=CHECKED)
@given(cases())
def test_a_case_written_out_reads_back_equal(case: Case) -> None:
    check_round_trip(case)


@settings(max_examples=120, deadline=None)
@given(NONSENSE | NEAR_CASES, st.sampled_from(FORMATS))
def test_any_text_ends_in_a_case_or_a_fault(text: str, format_: Format) -> None:
    check_garbage(text, format_)


@settings(max_examples=60, deadline=None)
@given(st.binary(max_size=60), st.sampled_from(FORMATS))
def test_any_bytes_end_in_a_case_or_a_fault(raw: bytes, format_: Format) -> None:
    check_bytes(raw, format_)


@settings(max_examples=80, deadline=None)
@given(st.builds(str.__add__, WORDS, NONSENSE))
def test_any_word_ends_in_a_case_or_a_fault(word: str) -> None:
    check_word(word)


@pytest.mark.slow
@pytest.mark.properties
@settings(max_examples=scale(800), deadline=None, suppress_health_check=CHECKED)
@given(cases())
def test_many_cases_read_back_equal(case: Case) -> None:
    check_round_trip(case)


@pytest.mark.slow
@pytest.mark.properties
@settings(max_examples=scale(8_000), deadline=None)
@given(NONSENSE | NEAR_CASES, st.sampled_from(FORMATS))
def test_many_texts_end_in_a_case_or_a_fault(text: str, format_: Format) -> None:
    check_garbage(text, format_)


@pytest.mark.slow
@pytest.mark.properties
@settings(max_examples=scale(4_000), deadline=None)
@given(st.binary(max_size=120), st.sampled_from(FORMATS))
def test_many_bytes_end_in_a_case_or_a_fault(raw: bytes, format_: Format) -> None:
    check_bytes(raw, format_)


@pytest.mark.slow
@pytest.mark.properties
@settings(max_examples=scale(4_000), deadline=None)
@given(st.builds(str.__add__, WORDS, NONSENSE))
def test_many_words_end_in_a_case_or_a_fault(word: str) -> None:
    check_word(word)
