"""Changes the program in many small ways, one at a time, and says which changes no test notices.

    .venv/bin/python .ci/mutate.py PART [FILE...]    physics, reading, engine or advice; of FILEs, CHANGES at most
    .venv/bin/python .ci/mutate.py --changed [N]     the files changed in the last N commits, 1 when none is given

mutmut makes the changes, keeps the accounts and finds the tests that come by a function, in a copy of the program. Two
things are done for it. It passes over functions with a decorator, which is every figure: in the copy `@figure(...)`
above a function becomes `name = figure(...)(name)` below it. It starts pytest once a change: here the tests are
collected once, each change gets a fork of that process, and of the tests the likeliest that the budget has time for.

Left out: texts with a space in them (sentences that a person reads), what stands at the top of a module and in the call
of a decorator (.ci/plant.py changes the numbers there), rules/ (.ci/without.py takes each rule out), docstrings.

Survivors that were looked at stand in tests/survivors.csv with the reason why they may live. Fewer than nine in ten
noticed in a package, or, of FILEs, fewer than eight in ten noticed or listed there: exit code 1. ADVISOR_WORKERS=1
leaves a core free; ADVISOR_MUTANTS=FOLDER keeps the copy.
"""

from __future__ import annotations

import ast
import csv
import gc
import importlib
import os
import random
import resource
import shutil
import subprocess
import sys
import tempfile
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from fnmatch import fnmatch
from pathlib import Path
from typing import Any, NamedTuple

import pytest
from plant import ROOT, copy_tracked_files, tracked

LEAST_SHARE = 0.9
LEAST_SHARE_OF_FILES = 0.8
PER_TEST = 0.002  # seconds around a test
CHANGES = 150
MOST_MEMORY = 4 << 30  # bytes; some changes never stop gathering
SURVIVORS = ROOT / "tests/survivors.csv"
NO_SHRINKING = """
from hypothesis import Phase
settings.register_profile("first", settings.get_profile("quick"), phases=[Phase.explicit, Phase.generate])
settings.load_profile("first")
"""
SLOW_PLACES = ("tests/house", "tests/benchmarks", "tests/browser", "tests/web", "tests/batch")


class Part(NamedTuple):
    """What is changed, package by package, and the tests that ought to notice.

    budget: seconds of tests for one change, by the clock of the run that counted them. read: module and function that
    reads once, for all changes, what none of them touches.
    """

    packages: dict[str, tuple[str, ...]]
    tests: tuple[str, ...]
    budget: float = 3.0
    read: tuple[str, str] | None = None


PARTS = {
    "physics": Part({"physics": ("advisor/physics/*.py",)}, ("tests/physics", "tests/validation")),
    "reading": Part(
        {
            "units and quantities": ("advisor/units.py", "advisor/quantity.py"),
            "reading": ("advisor/reading/*.py",),
        },
        (
            "tests/reading",
            "tests/test_units.py",
            "tests/test_quantity.py",
            "tests/test_inputs_in_words.py",
            "tests/test_figure.py",
        ),
    ),
    "engine": Part(
        {"engine": ("advisor/engine.py",), "rule book": ("advisor/rulebook/*.py",)},
        ("tests/engine", "tests/test_engine.py", "tests/test_rulebook.py", "tests/test_kept.py"),
    ),
    "advice": Part({"advice": ("advisor/advice/*.py",)}, ("tests/advice",), 6.0, ("tests.advice.bench", "read_once")),
}


def main(words: Sequence[str]) -> int:
    if words[:1] == ["--changed"]:
        return changed(words[1] if len(words) > 1 else "1")
    if not words or words[0] not in PARTS:
        print((__doc__ or "").strip())
        return 2
    part = PARTS[words[0]]
    files = [path for path in files_of(part) if str(path) in words[1:] or len(words) == 1]
    with tempfile.TemporaryDirectory() as folder:
        place = Path(os.environ.get("ADVISOR_MUTANTS") or folder)
        names = tried(place, part, files, few=len(words) > 1)
        found = list(outcomes(files, names))
        os.chdir(ROOT)
    return judged(part, found, bool(names))


def changed(commits: str) -> int:
    """Each part that has files changed in the last commits or not yet committed."""
    asked = ["git", "diff", "--name-only", "--diff-filter=d", f"HEAD~{commits}", "--", "advisor"]
    told = subprocess.run(asked, cwd=ROOT, check=False, capture_output=True, text=True)
    if told.returncode != 0:
        print(f"there are no {commits} commits before this one: nothing to compare with")
        return 0
    paths = {Path(line) for line in told.stdout.splitlines()}
    worst = 0
    for name, part in PARTS.items():
        if files := sorted(str(path) for path in files_of(part) if path in paths):
            print(f"{name}: {', '.join(files)}", flush=True)
            worst = max(worst, subprocess.run([sys.executable, __file__, name, *files], check=False).returncode)
    return worst


# --- what is changed ----------------------------------------------------------------------------------------------


def files_of(part: Part) -> list[Path]:
    patterns = [pattern for patterns in part.packages.values() for pattern in patterns]
    return [path for path in tracked("advisor") if any(fnmatch(str(path), pattern) for pattern in patterns)]


def undecorated(source: str) -> str:
    """The same module with each decorator of a function called below the function instead of standing above it."""
    lines = source.splitlines()
    found = [node for node in ast.walk(ast.parse(source)) if isinstance(node, ast.FunctionDef) and node.decorator_list]
    for node in sorted(found, key=lambda node: -node.lineno):
        indent = " " * node.col_offset
        made = node.name
        for decorator in reversed(node.decorator_list):
            made = f"{ast.unparse(decorator)}({made})"
        lines.insert(node.end_lineno or 0, f"{indent}{node.name} = {made}")
        del lines[node.decorator_list[0].lineno - 1 : node.lineno - 1]
    return "\n".join(lines) + "\n"


def sentences_left_alone() -> None:
    """Take texts with a space in them, which a person reads, away from mutmut."""
    import libcst
    from mutmut.mutation import mutators

    place, (kind, change) = next(
        (place, entry)
        for place, entry in enumerate(mutators.mutation_operators)
        if entry[1] is mutators.operator_string
    )

    def words_only(node: Any) -> Iterable[Any]:
        if isinstance(node, libcst.SimpleString) and " " not in node.value:
            yield from change(node)

    assert isinstance(mutators.mutation_operators, list)
    mutators.mutation_operators[place] = (kind, words_only)


def some_changes(files: Iterable[Path]) -> tuple[str, ...]:
    """Names of CHANGES of the changes mutmut would make in these files of the copy; ADVISOR_SEED chooses which."""
    from mutmut.mutation.file_mutation import mutate_file_contents
    from mutmut.utils.format_utils import get_mutant_name

    names = [
        get_mutant_name(path, name)
        for path in files
        for name in mutate_file_contents(str(path), path.read_text(encoding="utf-8")).mutant_names
    ]
    return tuple(random.Random(int(os.environ.get("ADVISOR_SEED", "1"))).sample(names, min(CHANGES, len(names))))


# --- which tests, and how they are run ------------------------------------------------------------------------------


def settings(part: Part, files: Iterable[Path]) -> str:
    ignored = [f"--ignore={place}" for place in SLOW_PLACES]
    options = ["-m", "not slow", "-p", "no:cacheprovider", "-p", "no:xdist", "-s", *ignored]
    return f"""
[tool.mutmut]
source_paths = ["advisor"]
only_mutate = {[str(path) for path in files]}
pytest_add_cli_args = {options}
pytest_add_cli_args_test_selection = {[test for test in part.tests if (ROOT / test).exists()]}
process_isolation = "forkserver"
timeout_multiplier = 3.0
timeout_constant = 2.0
use_git_change_detection = false
track_dependencies = false
"""


def warm_runner(part: Part) -> type:
    """mutmut's runner of pytest that collects the tests once, in the process every change is forked from."""
    from mutmut.mutation.trampoline import get_mutant_under_test, set_mutant_under_test
    from mutmut.runners.harness import PytestRunner
    from mutmut.state import state
    from mutmut.utils.file_utils import change_cwd
    from mutmut.utils.format_utils import mangled_name_from_mutant_name

    class WarmRunner(PytestRunner):
        def run_stats(self, *, tests: Iterable[str]) -> int:
            status = super().run_stats(tests=tests)
            keep_likely_tests(state().tests_by_mangled_function_name, state().duration_by_test, part.budget)
            return status

        def warm_up(self) -> None:
            from _pytest.config import get_config  # pytest has no public way to hold on to what it collected
            from _pytest.main import Session

            set_mutant_under_test("stats")
            with change_cwd("mutants"):
                words = ["--rootdir=.", "-q", *self._pytest_add_cli_args, *self._pytest_add_cli_args_test_selection]
                config = get_config(words)
                config = config.pluginmanager.hook.pytest_cmdline_parse(pluginmanager=config.pluginmanager, args=words)
                config._do_configure()
                self.session = Session.from_config(config)
                config.hook.pytest_sessionstart(session=self.session)
                config.hook.pytest_collection(session=self.session)
            set_mutant_under_test("")
            self.items = {item.nodeid: item for item in self.session.items}
            self.early = frozenset(state()._stats)
            if part.read is not None:
                module, function = part.read
                getattr(sys.modules[module], function)()
            gc.freeze()

        def run_tests(self, *, mutant_name: str | None, tests: Iterable[str]) -> int:
            if mutant_name is None:
                return 0 if get_mutant_under_test() == "" else super().run_tests(mutant_name=mutant_name, tests=tests)
            gc.disable()
            resource.setrlimit(resource.RLIMIT_AS, (MOST_MEMORY, MOST_MEMORY))
            function = mangled_name_from_mutant_name(mutant_name)
            chosen = sorted(tests, key=state().duration_by_test.__getitem__)
            if function in self.early:
                chosen = made_again(function)
            with change_cwd("mutants"):
                return first_to_fail(self.session, [self.items[name] for name in chosen], Path("noticed_by") / function)

    return WarmRunner


def made_again(function: str) -> list[str]:
    """Make the module of a function anew that was called while it was imported; the tests that come by the module."""
    from mutmut.state import state

    module = function.rpartition(".")[0]
    importlib.reload(sys.modules[module])
    tests_of = state().tests_by_mangled_function_name
    tests = {test for name, tests in tests_of.items() if name.startswith(f"{module}.") for test in tests}
    return sorted(tests, key=state().duration_by_test.__getitem__)


def first_to_fail(session: Any, items: list[Any], diary: Path) -> int:
    """Run tests until one fails: 1, else 0. Those that noticed other changes of the function go first."""
    known = diary.read_text(encoding="utf-8").splitlines() if diary.exists() else []
    place = {name: -count for count, name in enumerate(known)}
    items = sorted(items, key=lambda item: place.get(item.nodeid, 1))
    session.config.pluginmanager.register(_AtOnce(diary.absolute()))
    for item, after in zip(items, [*items[1:], None], strict=True):
        item.config.hook.pytest_runtest_protocol(item=item, nextitem=after)
    return 0


class _AtOnce:
    """Ends the process as soon as a test fails: nobody reads a report of it."""

    def __init__(self, diary: Path) -> None:
        self.diary = diary

    @pytest.hookimpl(tryfirst=True)
    def pytest_runtest_makereport(self, item: pytest.Item, call: pytest.CallInfo[None]) -> None:
        if call.excinfo is not None and not call.excinfo.errisinstance(pytest.skip.Exception):  # a skip fails nothing
            self.diary.parent.mkdir(exist_ok=True)
            with self.diary.open("a", encoding="utf-8") as file:
                file.write(f"{item.nodeid}\n")
            os._exit(1)


def keep_likely_tests(tests_of: dict[str, set[str]], seconds: dict[str, float], budget: float) -> None:
    """Of each function the tests that come by few others, the quickest first, as many as the budget has time for."""
    reach = Counter(test for tests in tests_of.values() for test in tests)
    for function, tests in tests_of.items():
        spent, kept = 0.0, set()
        for test in sorted(tests, key=lambda test: (seconds[test] * (reach[test] + 3), test)):
            spent += seconds[test] + PER_TEST
            if kept and spent > budget:
                break
            kept.add(test)
        tests_of[function] = kept


def laid_out(place: Path, part: Part, files: Iterable[Path]) -> None:
    """A copy for mutmut to read and, in `mutants`, one for the tests to run in."""
    (place / "mutants").mkdir(parents=True, exist_ok=True)
    copy_tracked_files(place)
    copy_tracked_files(place / "mutants")
    for path in files:
        (place / path).write_text(undecorated((place / path).read_text(encoding="utf-8")), encoding="utf-8")
        (place / "mutants" / path).unlink()
    with (place / "tests/conftest.py").open("a", encoding="utf-8") as file:
        file.write(NO_SHRINKING)
    shutil.copy(place / "tests/conftest.py", place / "mutants/tests/conftest.py")
    with (place / "pyproject.toml").open("a", encoding="utf-8") as file:
        file.write(settings(part, files))


def tried(place: Path, part: Part, files: list[Path], few: bool) -> tuple[str, ...]:
    """Try all changes, or a few; their names, nothing for all."""
    laid_out(place, part, files)
    os.chdir(place)
    sys.dont_write_bytecode = True  # nor does the program keep anything, so nothing hides a change
    os.environ.update(PYTHONPATH=str(place / "mutants"), PYTHONDONTWRITEBYTECODE="1")
    from mutmut import __main__ as mutmut
    from mutmut import stats
    from mutmut.workers import isolation

    for module in (mutmut, stats):
        module.print_status = lambda *_, **__: None  # a wheel that turns ten times a second
    sentences_left_alone()
    isolation.PytestRunner = warm_runner(part)
    names = some_changes(files) if few else ()
    mutmut._run(names, int(os.environ.get("ADVISOR_WORKERS", "2")))
    return names


# --- what came of it ------------------------------------------------------------------------------------------------


class Outcome(NamedTuple):
    """One change: where, what, and whether a test noticed it."""

    path: Path
    function: str
    change: str
    noticed: bool


def outcomes(files: Iterable[Path], names: Sequence[str]) -> Iterator[Outcome]:
    from mutmut.mutation.data import SourceFileMutationData
    from mutmut.mutation.diff_apply import get_diff_for_mutant
    from mutmut.stats import status_by_exit_code
    from mutmut.utils.format_utils import orig_function_and_class_names_from_key

    for path in files:
        accounts = SourceFileMutationData(path=path)
        accounts.load()
        for name, status in accounts.exit_code_by_key.items():
            if not names or name in names:
                noticed = status_by_exit_code[status] in ("killed", "timeout", "segfault", "suspicious")
                function = ".".join(filter(None, reversed(orig_function_and_class_names_from_key(name))))
                change = "" if noticed else " -> ".join(differing(get_diff_for_mutant(name, path=path)))
                yield Outcome(path, function, change, noticed)


def differing(difference: str) -> Iterator[str]:
    """The old and the new lines of a difference."""
    lines = difference.splitlines()[2:]
    for sign in "-+":
        text = " ".join(line[1:].strip() for line in lines if line.startswith(sign))
        yield text.replace("XX", "~")  # how mutmut changes a text


def judged(part: Part, found: Sequence[Outcome], of_files: bool) -> int:
    with SURVIVORS.open(encoding="utf-8", newline="") as file:
        listed = {(row["file"], row["function"], row["change"]) for row in csv.DictReader(file)}
    known = [(str(one.path), one.function, one.change) in listed for one in found]
    writer = csv.writer(sys.stdout)
    for one, listed_already in zip(found, known, strict=True):
        if not one.noticed and not listed_already:
            writer.writerow(("not noticed", one.path, one.function, one.change))
    if of_files:
        good = sum(one.noticed or reason for one, reason in zip(found, known, strict=True))
        print(f"{good} of {len(found)} changes were noticed by a test or are listed as harmless")
        return int(good < LEAST_SHARE_OF_FILES * len(found))
    good_enough = [enough(name, patterns, found) for name, patterns in part.packages.items()]
    return int(not all(good_enough))


def enough(name: str, patterns: Sequence[str], found: Iterable[Outcome]) -> bool:
    of_package = [one for one in found if any(fnmatch(str(one.path), pattern) for pattern in patterns)]
    noticed = sum(one.noticed for one in of_package)
    print(f"{name}: {noticed} of {len(of_package)} changes were noticed, {noticed / len(of_package):.1%}")
    return noticed >= LEAST_SHARE * len(of_package)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
