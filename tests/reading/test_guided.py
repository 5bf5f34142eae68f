"""The target of the fuzzer: what it starts from passes, and a fault of a reader does not."""

import pytest

from advisor.reading import InputFault, Problem
from tests.reading import guided

STEP = 23  # every so many of the inputs the fuzzer starts from


@pytest.mark.parametrize("start", range(2))
def test_what_the_fuzzer_starts_from_passes(start: int) -> None:
    found = list(dict.fromkeys(guided.corpus()))
    assert {data[0] for data in found} == set(range(len(guided.READERS)))
    for data in found[start::STEP]:
        guided.one_input(data)


def test_every_case_is_read_in_every_format(monkeypatch: pytest.MonkeyPatch) -> None:
    read: list[bool] = []

    def noted(do: object) -> None:
        try:
            do()  # type: ignore[operator]  # a reader of the corpus
        except InputFault:
            read.append(False)
        else:
            read.append(True)

    monkeypatch.setattr(guided, "_judged", noted)
    starts = [data for data in guided.corpus() if len(data) > 300]
    for data in starts[: 4 * len(guided.CASES)]:
        guided.one_input(data)
    assert len(read) >= 3 * len(guided.CASES)
    assert sum(read) >= 3 * len(guided.CASES)


def test_an_input_repeated_to_the_largest_size_is_refused_in_time() -> None:
    guided.one_input(bytes([guided.PUMPED + 2]) + b'{"a": [')
    guided.one_input(bytes([guided.PUMPED + 1]) + b"a = 1\n")


def test_what_is_not_text_and_nothing_at_all_pass() -> None:
    for data in (b"", b"\0", b"\x80", b"\0\xff\xfe", b"\x04"):
        guided.one_input(data)


def broken(*_: object) -> None:
    raise KeyError("work")


def loud(*_: object) -> None:
    raise InputFault([Problem("a", 1, 1, "work", "x", "")])


def silent(*_: object) -> None:
    raise InputFault([])


@pytest.mark.parametrize(("fault", "raised"), [(broken, KeyError), (loud, AssertionError), (silent, AssertionError)])
def test_a_fault_of_a_reader_is_a_finding(
    fault: object, raised: type[Exception], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("advisor.reading.case_file._root", fault)
    with pytest.raises(raised):
        guided.one_input(b"\0work: {}")


def test_a_case_that_does_not_read_back_is_a_finding(monkeypatch: pytest.MonkeyPatch) -> None:
    case = b"\0work: {material: ash, diameter: 3 in, length: 3 in}"
    guided.one_input(case)
    monkeypatch.setattr(
        "advisor.reading.write_case", lambda _: "work: {material: ash, diameter: 3 in, length: 3.01 in}"
    )
    with pytest.raises(AssertionError, match="read back"):
        guided.one_input(case)


def test_the_dictionary_has_fields_words_and_units() -> None:
    found = guided.dictionary()
    assert {"work.diameter", "diameter", "half-log", "steady-rest", "inHg"} <= set(found)
    assert found == sorted(found)
