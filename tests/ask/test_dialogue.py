"""The interview as it is read and typed, with a script in place of the keyboard."""

from __future__ import annotations

import builtins
from functools import lru_cache
from pathlib import Path

import pytest

from advisor.advice import default_engine
from advisor.advice.trial import Bench
from advisor.ask import command, interview
from advisor.ask.command import run
from advisor.ask.dialogue import Dialogue, _not_now
from advisor.ask.interview import Interview, Next, Reason
from advisor.ask.questions import questions, value_of
from advisor.ask.saved import Said, Saved
from advisor.cli import main
from advisor.reading import InputFault, read_case
from tests.rules.bench import words_of

# One way of holding and an early end: every trial takes a fraction of the time.
WORDS = ["hold.kit=[spur-drive]", "hold.method=spur-drive", "work.form=square", "work.state=not-round"]


@lru_cache(maxsize=1)
def bench() -> Bench:
    """One bench for all tests: what one tried, no other has to."""
    return Bench(default_engine())


@pytest.fixture(autouse=True)
def _few_questions(monkeypatch: pytest.MonkeyPatch) -> None:
    """Those of the first minute: fewer answers to try in the model."""
    few = tuple(question for question in questions() if question.id in ("material", "size", "seen", "shape"))
    monkeypatch.setattr(interview, "questions", lambda: few)


class Script:
    """Lines in place of a person; after the last comes the end, as it is given."""

    def __init__(self, *lines: str, end: type[BaseException] = EOFError) -> None:
        self.lines, self.end, self.shown = list(lines), end, [""]

    def read(self, prompt: str) -> str:
        self.shown.append(prompt)
        if not self.lines:
            raise self.end
        return self.lines.pop(0)

    @property
    def text(self) -> str:
        """Everything that was shown, on one line."""
        return " ".join(" ".join(self.shown).split())


def dialogue(script: Script, path: Path) -> Dialogue:
    pairs = [word.partition("=") for word in WORDS]
    start = {name: value_of(name, text) for name, _, text in pairs}
    saved = Saved(path, WORDS)
    return Dialogue(Interview(bench(), start), saved, "metric", script.read, script.shown.append)


def test_it_asks_says_why_goes_back_and_ends_when_told_enough(tmp_path: Path) -> None:
    script = Script("?", "ash", "why", "3 in x 12 in", "why", "back", "", "75 mm, 300 mm", "through-crack", "Enough")
    case = dialogue(script, tmp_path / "x").run()
    assert case.work.material == "ash"
    assert (case.work.diameter, case.work.length) == (75, 300)
    assert case.work.condition == ("through-crack",)
    assert "1. What is it made of?" in script.text
    assert "Strength, weight, dust and what it does to people come from the material." in script.text
    assert "1 diameter (largest swept diameter, corner to corner for a square): 10 in, 38 mm" in script.text
    assert "With work.condition through-crack: verdict do not mount instead of go with care" in script.text
    assert "work.diameter, work.length: 'work.diameter" not in script.text
    assert "cannot be left out" in script.text
    assert "So far: do not mount; four-spur drive; no speed." in script.text
    assert script.shown.count("") == 1 + 5  # the start and one before each question, the one gone back to twice


def test_enough_is_not_enough_before_the_size_is_known(tmp_path: Path) -> None:
    script = Script("enough", "enough")
    with pytest.raises(EOFError):
        dialogue(script, tmp_path / "x").run()
    assert "2. How large is it?" in script.text
    assert "work.diameter: 'enough'" in script.text


def test_back_at_the_start_says_so(tmp_path: Path) -> None:
    script = Script("back", end=KeyboardInterrupt)
    with pytest.raises(KeyboardInterrupt):
        dialogue(script, tmp_path / "x").run()
    assert "This is the first question." in script.text


def test_it_goes_on_where_it_was_stopped_and_restart_forgets(tmp_path: Path) -> None:
    first = Script("ash", "75 mm, 300 mm", end=KeyboardInterrupt)
    with pytest.raises(KeyboardInterrupt):
        dialogue(first, tmp_path / "x").run()
    second = Script("restart", "oak")
    resumed = dialogue(second, tmp_path / "x")
    assert resumed.resume() == 2
    with pytest.raises(EOFError):
        resumed.run()
    assert "3. What do you see on it?" in second.text
    assert "1. What is it made of?" in second.text
    assert Saved(tmp_path / "x", WORDS).load() == [Said("material", ("work.material",), "oak")]


@pytest.mark.parametrize(
    "said",
    [
        [Said("nonsense", ("work.material",), "ash")],
        [Said("material", ("work.colour",), "ash")],
        [Said("size", ("work.diameter", "work.length"), "3")],
    ],
)
def test_an_earlier_interview_is_taken_as_far_as_it_makes_sense(tmp_path: Path, said: list[Said]) -> None:
    Saved(tmp_path / "x", WORDS).save([Said("material", ("work.material",), "ash"), *said])
    resumed = dialogue(Script(), tmp_path / "x")
    assert resumed.resume() == 1
    assert resumed.interview.said["work.material"] == "ash"


def test_where_nothing_can_be_kept_it_says_so_once_and_goes_on(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    script = Script("ash", "75 mm, 300 mm", "enough")
    assert dialogue(script, tmp_path / "file" / "x").run().work.material == "ash"
    assert script.text.count("Ctrl-C would lose it") == 1


def test_an_interrupt_waits_until_the_model_has_been_tried() -> None:
    import signal

    done: list[str] = []
    before = signal.getsignal(signal.SIGINT)

    def try_it() -> None:
        with _not_now():
            signal.raise_signal(signal.SIGINT)
            done.append("tried")

    with pytest.raises(KeyboardInterrupt):
        try_it()
    assert done == ["tried"]
    assert signal.getsignal(signal.SIGINT) is before


@pytest.fixture
def terminal(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> pytest.MonkeyPatch:
    """A terminal, as far as the program can tell, in an empty folder."""
    monkeypatch.setattr(command, "at_a_terminal", lambda: True)
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    monkeypatch.setenv("NO_COLOR", "1")
    monkeypatch.chdir(tmp_path)
    return monkeypatch


def keyboard(patch: pytest.MonkeyPatch, *lines: str, end: type[BaseException] = EOFError) -> None:
    patch.setattr(builtins, "input", Script(*lines, end=end).read)


def test_it_ends_in_a_case_file_that_gives_the_answer_again(
    terminal: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    (tmp_path / "there.yaml").write_text("mine", encoding="utf-8")
    keyboard(terminal, "ash", "75 mm, 300 mm", "through-crack", "enough", "there.yaml", "x.txt", "no/x.yaml", "x.yaml")
    assert run(WORDS, None, plain=True, units=None) == 0
    shown = capsys.readouterr().out
    assert "there.yaml: is there already" in shown
    assert "x.txt: has an ending that names no case file" in shown
    assert "no/x.yaml: cannot be written" in shown
    assert "DO NOT MOUNT.  ash square" in shown
    assert "Written to x.yaml: advisor advise x.yaml gives this answer again." in shown
    assert (tmp_path / "there.yaml").read_text(encoding="utf-8") == "mine"
    assert read_case("x.yaml").work.condition == ("through-crack",)
    assert main(["advise", "x.yaml", "--plain"]) == 0
    again = capsys.readouterr().out
    assert again in shown
    assert not (tmp_path / "state" / "advisor" / "interview.json").exists()


@pytest.mark.parametrize(
    ("end", "code", "how"), [(KeyboardInterrupt, 130, "stopped"), (EOFError, 2, "the input ended")]
)
def test_stopped_it_says_how_to_go_on(
    terminal: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    tmp_path: Path,
    end: type[BaseException],
    code: int,
    how: str,
) -> None:
    keyboard(terminal, "ash", end=end)
    assert run(["work.form=square"], "leg.yaml", plain=True, units="inch") == code
    told = capsys.readouterr().err
    assert f"{how}; what you said is kept: advisor ask work.form=square -o leg.yaml goes on from here" in told
    assert [path.name for path in tmp_path.iterdir()] == [".leg.yaml.interview"]
    keyboard(terminal, end=KeyboardInterrupt)
    assert run(["work.form=square"], "leg.yaml", plain=True, units="inch") == 130
    assert "Going on where it was stopped, with 1 answer." in capsys.readouterr().out


def test_stopped_with_nothing_kept_it_says_that(
    terminal: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    keyboard(terminal, end=KeyboardInterrupt)
    assert run([], None, plain=True, units=None) == 130
    assert "stopped; nothing is kept" in capsys.readouterr().err


def test_it_may_begin_with_a_file(
    terminal: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    text = "work: {material: ash, diameter: 3 in, length: 1 ft, condition: [through-crack]}\n"
    (tmp_path / "a.yaml").write_text(text, encoding="utf-8")
    keyboard(terminal, "enough")
    assert run(["a.yaml", *WORDS], "b.yaml", plain=True, units=None) == 0
    assert "DO NOT MOUNT" in capsys.readouterr().out
    assert read_case("b.yaml").hold.method == "spur-drive"


WRONG = {
    "two files": (["a.yaml", "b.yaml"], None, "b.yaml: is a second case file"),
    "no such field": (["work.colour=red"], None, "is not a known field"),
    "a name that is taken": ([], "taken.yaml", "taken.yaml: is there already; accepted: a name of a new file"),
    "another ending": ([], "x.pdf", "x.pdf: has an ending that names no case file"),
}


@pytest.mark.parametrize(("words", "output", "message"), WRONG.values(), ids=WRONG)
@pytest.mark.usefixtures("terminal")
def test_wrong_words_are_told_before_anything_is_asked(
    tmp_path: Path, words: list[str], output: str | None, message: str
) -> None:
    (tmp_path / "taken.yaml").write_text("", encoding="utf-8")
    with pytest.raises(InputFault) as fault:
        run(words, output, plain=True, units=None)
    assert message in str(fault.value)


def test_without_a_terminal_nobody_is_asked(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["ask"]) == 2
    assert capsys.readouterr().err == (
        "ask: needs a terminal to ask at; accepted: a case file or field=value words to `advisor advise`\n"
    )


def test_why_names_both_answers_where_only_two_together_change_something(tmp_path: Path) -> None:
    before = bench().outcome(read_case(None, words_of("SPINDLE; machine.nose=threaded")))
    after = bench().outcome(read_case(None, words_of("SPINDLE; machine.nose=threaded; cut.rotation=reverse")))
    cut = next(question for question in questions() if question.id == "cut")
    reason = Reason("cut.rotation", "reverse", ("machine.nose", "threaded"), before, after)
    told = dialogue(Script(), tmp_path / "x")._why(Next(cut, cut.fields, reason))
    assert "With cut.rotation reverse and machine.nose threaded: verdict do not mount instead of" in told
