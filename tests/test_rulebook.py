"""Conditions as data, rules that fit together, docstrings that are pages, and a book found by folder."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from advisor.rulebook import (
    SECTIONS,
    Book,
    BookError,
    Effect,
    MissingWord,
    Rule,
    UnknownRule,
    above,
    absent,
    all_of,
    at_least,
    at_most,
    below,
    between,
    fact,
    kept_book,
    load_book,
    none_of,
    one_of,
    present,
    read_page,
)

ROOT = Path(__file__).parents[1]

PAGE = '''"""No thrust drives this work without splitting it.

What it looks at   the least thrust the drive needs,
                   and the most that wood allows
Why it matters     between the two there is nothing to set
What to do:        seat the teeth first
Does not apply
    work held in a chuck
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, below, fact

rule = Rule(when=fact("thrust", margin=below(1)), effect=Effect.ASK_FIRST, says="No thrust: {needed} needed.",
            do="Seat the teeth.", opens=("seated depth", "tail.kind"), window="empty")
'''


def rule(**parts: Any) -> Rule:
    return Rule(**{"when": fact("thrust"), "effect": Effect.NOTE, "says": "x", "name": "a", "topic": "t", **parts})


@pytest.mark.parametrize(
    ("condition", "words"),
    [
        (fact("thrust"), "thrust: always"),
        (fact("thrust", window=below(1.0), tail="live-point"), "thrust: window below 1; tail is live-point"),
        (
            fact("hold", teeth=4, low=at_least(0.5), high=at_most(2)),
            "hold: teeth is 4; low at least 0.5; high at most 2",
        ),
        (fact("hold", low=between(0.25, 2)), "hold: low at least 0.25 and below 2"),
        (fact("hold", low=all_of(above(1), below(2)), glue=present), "hold: low above 1 and below 2; glue is known"),
        (fact("hold", form=one_of("log", "half-log", "slab")), "hold: form is log, half-log or slab"),
        (fact("hold", form=one_of("log", "slab")), "hold: form is log or slab"),
        (fact("hold", form=none_of("log"), glue=absent), "hold: form is none of log; glue is not known"),
        (fact("hold", big=above(123456789), small=below(0.0001)), "hold: big above 123456789; small below 0.0001"),
    ],
)
def test_conditions_are_told_in_plain_words(condition: Any, words: str) -> None:
    assert condition.words == words


def test_conditions_are_equal_by_content_and_can_be_keys() -> None:
    assert fact("thrust", margin=below(1)) == fact("thrust", margin=below(1.0))
    assert len({fact("thrust", margin=below(1)), fact("thrust", margin=at_most(1))}) == 2


@pytest.mark.parametrize(
    ("mistake", "message"),
    [
        (lambda: fact(""), "not a kind of fact"),
        (lambda: fact("two words"), "not a kind of fact"),
        (lambda: fact("t", x=""), "not a word"),
        (lambda: fact("t", x="a\nb"), "not a word"),
        *((lambda value=value: fact("t", x=value), "not a number") for value in (["a"], None, below)),
        (lambda: fact("t", x=one_of("a", True)), "write 'yes' or 'no'"),
        (one_of, "names nothing"),
        (lambda: none_of("a", 1), "mixes texts and numbers"),
        (lambda: below("1"), "not a number"),  # type: ignore[arg-type]  # the mistake under test
        (lambda: between(2, 1), "can never hold"),
        (lambda: between(1, 1), "can never hold"),
        (lambda: all_of(below(1)), "at least two"),
    ],
)
def test_conditions_that_mean_nothing_are_refused(mistake: Any, message: str) -> None:
    with pytest.raises(BookError, match=message):
        mistake()


@pytest.mark.parametrize(
    ("parts", "message"),
    [
        ({"when": "thrust"}, "when must be one fact"),
        ({"effect": "note"}, "effect must be one of do-not-mount"),
        ({"says": ""}, "says is empty"),
        ({"basis": ()}, "basis names no source"),
        ({"basis": "common-practice"}, "basis must be a tuple"),
        ({"opens": "tail"}, "opens must be a tuple"),
        ({"order": ("screw",)}, "order and row belong"),
        ({"effect": Effect.REACH}, "order and row belong"),
        ({"row": 3}, "order and row belong"),
        ({"effect": Effect.REACH, "order": ("a", "b", "a")}, "twice"),
        ({"hard": True}, "hard belongs to a refusal"),
        ({"window": "shut"}, "window must be open"),
        ({"says": "{Needed}"}, "says has a brace"),
        ({"says": "{needed:.2f}"}, "says has a brace"),
        ({"do": "50 % {of"}, "do has a brace"),
    ],
)
def test_rules_whose_parts_do_not_fit_are_refused(parts: dict[str, Any], message: str) -> None:
    with pytest.raises(BookError, match=message):
        rule(**parts)


def test_rules_that_fit_are_taken() -> None:
    assert rule(effect=Effect.REACH, says="", order=("a", "b"), row=2).row == 2
    assert rule(effect=Effect.SUITS, says="").fill("", {}, {}) == ""
    assert rule(effect=Effect.DO_NOT_MOUNT, hard=True).hard
    assert rule(says="{one} and {two_b}", do="{one}").names() == {"one", "two_b"}
    assert [str(effect) for effect in (Effect.REFUSE, Effect.WITH_CARE)] == ["refused", "go-with-care"]


def test_names_are_filled_with_texts_and_with_numbers_to_three_figures() -> None:
    filled = rule().fill(
        "{tail}, {count} of {share}", {"tail": "cup", "count": 12, "share": 0.12345}, {"count": "a dozen"}
    )
    assert filled == "cup, a dozen of 0.123"
    with pytest.raises(MissingWord, match=r"rule a: no word for \{tail\} in '\{tail\}'; the fact carries nothing$"):
        rule().fill("{tail}", {}, {})


def test_what_a_rule_does_is_on_its_page() -> None:
    reach = rule(effect=Effect.REACH, says="", order=("collet", "jam-chuck")).explain()
    assert "\nOrder\n    collet, jam-chuck\n" in reach
    refusal = rule(effect=Effect.DO_NOT_MOUNT, hard=True).explain()
    assert "\nThen\n    do-not-mount, nothing switches it off\n" in refusal


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """An importable package `shelf` with one topic; rules go below it."""
    shelf = tmp_path / "shelf"
    (shelf / "thrust").mkdir(parents=True)
    (shelf / "__init__.py").touch()
    (shelf / "thrust" / "__init__.py").touch()
    monkeypatch.syspath_prepend(str(tmp_path))
    yield shelf
    for name in [name for name in sys.modules if name == "shelf" or name.startswith("shelf.")]:
        del sys.modules[name]


def test_a_rule_takes_name_topic_and_page_from_its_file(folder: Path) -> None:
    (folder / "thrust" / "no_window.py").write_text(PAGE)
    deeper = folder / "holding" / "glue"
    deeper.mkdir(parents=True)
    (folder / "holding" / "__init__.py").touch()
    (deeper / "__init__.py").touch()
    (deeper / "cold.py").write_text(PAGE)
    (folder / "thrust" / "table.csv").write_text("a,b\n")
    for passed_over in (".hidden", "__pycache__"):
        (folder / passed_over).mkdir()
    book = load_book("shelf")
    assert [(entry.topic, entry.name) for entry in book] == [("holding/glue", "cold"), ("thrust", "no-window")]
    assert book.topics == ("holding/glue", "thrust")
    assert book.by_name("no-window").doc.startswith("No thrust drives")


def test_explain_is_the_page(folder: Path) -> None:
    (folder / "thrust" / "no_window.py").write_text(PAGE)
    text = load_book("shelf").by_name("no-window").explain()
    lines = text.splitlines()
    assert lines[0] == "no-window (thrust)"
    assert lines[1] == "No thrust drives this work without splitting it."
    for label in (*SECTIONS, "Fires when", "Then", "Says", "Remedy", "What would change it", "Basis"):
        assert label in lines
    for line in (
        "    the least thrust the drive needs, and the most that wood allows",
        "    work held in a chuck",
        "    thrust: margin below 1",
        "    ask-first, the tailstock window is empty",
        "    No thrust: {needed} needed.",
        "    seated depth, tail.kind",
    ):
        assert line in lines
    assert "Order" not in lines


def test_the_page_is_read_by_its_labels() -> None:
    page = read_page(
        "Title.\n\nWhat it looks at  one\n  What to do  inner\nSources of error are no label\nSources: two"
    )
    assert page.title == "Title."
    assert page.sections == (
        ("What it looks at", "one What to do  inner Sources of error are no label"),
        ("Sources", "two"),
    )


@pytest.mark.parametrize(
    ("text", "message"),
    [
        (PAGE.replace("rule = Rule", "role = Rule"), r"thrust/bad\.py: holds no `rule = Rule"),
        (PAGE + "\nother = Rule(fact('x'), Effect.NOTE, says='x')\n", r"thrust/bad\.py: holds more than one rule"),
        (PAGE.split('"""')[2], r"thrust/bad\.py: has no docstring"),
        ('"""Title."""' + PAGE.split('"""')[2], r"its docstring has the sections none; needed, in this order: What it"),
        ('"""A.\n\nSources  x\n"""' + PAGE.split('"""')[2], r"its docstring has the sections Sources; needed"),
        (PAGE.replace("Why it matters ", "Why it is bad "), r"thrust/bad\.py: its docstring has the sections"),
        (PAGE.replace("What to do: ", "What to do instead: "), r"thrust/bad\.py: its docstring has the sections"),
        (PAGE.replace("    work held in a chuck\n", ""), r"thrust/bad\.py: its section 'Does not apply' is empty"),
        (PAGE.replace("common practice, no source", "a handbook"), r"thrust/bad\.py: Sources has 'common practice"),
        (PAGE.replace("window=", "basis=('roark',), window="), r"thrust/bad\.py: Sources has 'common practice"),
        (PAGE.replace("below(1)", "below('1')"), r"thrust/bad\.py: '1' is not a number"),
        (PAGE.replace("below(1)", "below(1"), r"thrust/bad\.py: .*(never closed|closing parenthesis)"),
        (PAGE.replace("import Effect", "import Efect"), r"thrust/bad\.py: cannot import name 'Efect'"),
    ],
)
def test_a_file_that_is_no_rule_is_named(text: str, message: str, folder: Path) -> None:
    (folder / "thrust" / "bad.py").write_text(text)
    (folder / "thrust" / "good.py").write_text(PAGE)
    with pytest.raises(BookError, match=message) as caught:
        load_book("shelf")
    assert "good" not in str(caught.value)


def test_a_page_is_looked_at_only_when_asked_for(folder: Path) -> None:
    (folder / "thrust" / "bare.py").write_text(PAGE.split('"""')[2])
    assert load_book("shelf", checked=False).by_name("bare").doc == ""
    with pytest.raises(BookError, match="has no docstring"):
        load_book("shelf")


def test_a_rule_file_knows_its_name_and_place(folder: Path) -> None:
    told = "\nplace = (__name__, __file__)\nassert place == ('shelf.thrust.known', {!r})\n"
    (folder / "thrust" / "known.py").write_text(PAGE + told.format(str(folder / "thrust" / "known.py")))
    assert load_book("shelf").by_name("known").topic == "thrust"


def test_the_book_of_an_answer_has_no_pages(folder: Path) -> None:
    (folder / "thrust" / "no_window.py").write_text(PAGE)
    (folder / "thrust" / "bare.py").write_text(PAGE.split('"""')[2])
    assert [(entry.name, entry.topic, entry.doc) for entry in kept_book("shelf")] == [
        ("bare", "thrust", ""),
        ("no-window", "thrust", ""),
    ]


def test_all_bad_files_are_named_at_once(folder: Path) -> None:
    (folder / "thrust" / "one.py").write_text("rule = 1\n")
    (folder / "thrust" / "two.py").write_text("rule = 2\n")
    (folder / "three.py").write_text(PAGE)
    with pytest.raises(BookError) as caught:
        load_book("shelf")
    lines = str(caught.value).splitlines()
    assert [line.partition(":")[0] for line in lines] == ["three.py", "thrust/one.py", "thrust/two.py"]
    assert lines[0] == "three.py: a rule stands in the folder of its topic"


def test_a_topic_that_would_not_be_installed_is_told(folder: Path) -> None:
    (folder / "speed").mkdir()
    with pytest.raises(BookError, match=r"folder speed has no __init__\.py"):
        load_book("shelf")
    (folder / "speed" / "__init__.py").touch()
    (folder / "speed" / "slow").mkdir()
    with pytest.raises(BookError, match=r"folder speed/slow has no __init__\.py"):
        load_book("shelf")


def test_names_stand_once_in_the_book(folder: Path) -> None:
    (folder / "speed").mkdir()
    for topic in ("speed", "thrust"):
        (folder / topic / "__init__.py").touch()
        (folder / topic / "same.py").write_text(PAGE)
    with pytest.raises(BookError, match="two rules are called same"):
        load_book("shelf")
    with pytest.raises(BookError, match="no name"):
        Book([rule(name="")])


def test_a_wrong_name_gets_the_nearest() -> None:
    book = Book([rule(name="no-window"), rule(name="green-split")])
    with pytest.raises(UnknownRule, match="no rule 'no-widow'; did you mean no-window"):
        book.by_name("no-widow")
    with pytest.raises(UnknownRule, match="list rules"):
        book.by_name("qqqqqq")
    alike = Book([rule(name=f"window-{number}") for number in range(5)])
    with pytest.raises(UnknownRule, match=r"did you mean window-\d or window-\d or window-\d\?$"):
        alike.by_name("window")


def test_kinds_and_types_come_from_the_rules() -> None:
    book = Book(
        [
            rule(name="a", when=fact("thrust", margin=below(1), glue=present)),
            rule(name="b", when=fact("thrust", tail=one_of("a", "b"), margin=absent)),
            rule(name="c", when=fact("speed", margin=present)),
        ]
    )
    assert book.kinds == {"thrust": {"margin", "glue", "tail"}, "speed": {"margin"}}
    assert book.types == {"margin": "number", "glue": "either", "tail": "text"}
    assert [entry.name for entry in book.of_kind("speed")] == ["c"]
    with pytest.raises(BookError, match="'margin' is read as number by a and as text by d"):
        Book([*book, rule(name="d", when=fact("speed", margin="low"))])


def test_copies_lack_or_change_one_rule() -> None:
    book = Book([rule(name="a", when=fact("thrust", margin=below(1))), rule(name="b", when=fact("speed"))])
    fewer = book.without("a")
    assert [entry.name for entry in fewer] == ["b"]
    assert fewer.kinds == book.kinds
    assert fewer.types == book.types
    changed = book.with_rules([rule(name="b", says="y"), rule(name="c")])
    assert [(entry.name, entry.says) for entry in changed] == [("a", "x"), ("b", "y"), ("c", "x")]
    assert [(entry.name, entry.says) for entry in book] == [("a", "x"), ("b", "x")]
    silent = book.with_rules([rule(name="a")])
    assert (silent.kinds, silent.types) == (book.kinds, book.types)
    with pytest.raises(UnknownRule):
        book.without("z")


def test_the_rulebook_does_not_know_the_engine() -> None:
    look = "import sys, advisor.rulebook; advisor.rulebook.load_book(); print(*sys.modules)"
    child = subprocess.run([sys.executable, "-c", look], capture_output=True, text=True, cwd=ROOT, check=True)
    loaded = set(child.stdout.split())
    assert "advisor.rulebook" in loaded
    assert not {name for name in loaded if name.partition(".")[0] == "durable"}
    strangers = {name for name in loaded if name.startswith("advisor.")} - {
        "advisor.kept",
        "advisor.rulebook",
        "advisor.rules",
    }
    assert {name for name in strangers if not name.startswith(("advisor.rulebook.", "advisor.rules."))} == set()
