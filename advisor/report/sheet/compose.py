"""Answer -> page: every word and number is the answer's; this only says where it stands."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import cache
from typing import Any

from advisor import __version__
from advisor.drawing.limits_chart import IN_COLUMN, limits_picture
from advisor.drawing.setup import Setup
from advisor.drawing.setup_view import setup_picture
from advisor.drawing.svg import Picture
from advisor.models.case import Case
from advisor.models.spoken import spoken
from advisor.report import sentences as say
from advisor.report.cut_lines import cut_lines
from advisor.report.numbers import energy, force, length, limit_down
from advisor.report.sheet.clean import clean
from advisor.report.sheet.page import WIDTH, Big, Page, Rows, Section
from advisor.report.sheet.setup_of import setup_of
from advisor.report.words import HEADLINE
from advisor.situation import settle
from advisor.units import LENGTH, System, show

REFUSED = "do-not-mount"
MOST_LIMITS = 8  # the lowest ones; more are far away
NOT_A_PERMISSION = "; limits are no permission"


def page_of(
    case: Case, answer: Mapping[str, Any], name: str, units: str, made: str, first: Sequence[Section] = ()
) -> Page:
    """The page of one answer. `name` is the case's, `made` the date that is printed, `first` what stands before all."""
    refused = answer["verdict"] == REFUSED
    reason, *others = answer["reasons"] or [None]
    return Page(
        name=clean(name),
        made=made,
        verdict=answer["verdict"],
        headline=HEADLINE[answer["verdict"]],
        reason=clean(reason["text"]) if reason else "",
        remedy=clean(reason["do"]) if reason and reason["do"] not in reason["text"] else "",
        speeds=() if refused else _speeds(answer["speed"], answer["verdict"]),
        hold=() if refused else (_hold(answer["holding"][0]), _thrust(answer["thrust"], units)),
        facts=() if refused else tuple(_facts(answer, units)),
        drawing=drawing_of(case, answer, units),
        sections=(*first, *_sections(answer, others, units)),
        foot=foot(made),
        units=units,
    )


def foot(made: str) -> str:
    """Program, version, date and who governs."""
    return f"advisor {__version__}, {made}. {say.GOVERNED}"


def drawing_of(case: Case, answer: Mapping[str, Any], units: str) -> Callable[[float], Picture]:
    """The drawing of the setup for a height in mm."""
    setup = setup_of(case, settle(case), answer)
    words = _alternative(setup, units)
    system = System(units)

    @cache
    def say_length(mm: float) -> str:
        return show(mm, LENGTH, system)

    return cache(lambda height: setup_picture(setup, say_length, WIDTH, height, words))


def _alternative(setup: Setup, units: str) -> str:
    """The drawing in words."""
    blank = setup.blank
    system = System(units)
    size = f"{show(blank.length, LENGTH, system)} long, {show(blank.diameter, LENGTH, system)} swept diameter"
    held = f", held by {spoken(setup.held.method)}" if setup.held is not None else ""
    tail = f", {say.words_of(setup.tail.kind)} in the tailstock" if setup.tail is not None else ""
    return f"Drawing to scale: {say.words_of(blank.form)} blank {size}{held}{tail}"


def _speeds(speed: Mapping[str, Any], verdict: str) -> tuple[Big, ...]:
    carries = f"carries {energy(speed['energy_j'])}, rim {speed['rim_m_per_s']:.2g} m/s"
    return (
        Big(
            "ONCE THAT IS SETTLED, START AT" if verdict == "ask-first" else "START AT",
            limit_down(speed["start_rpm"]),
            "rpm",
            carries,
        ),
        Big("NEVER ABOVE", limit_down(speed["ceiling_rpm"]), "rpm", say.next_limit(speed)),
    )


def _hold(hold: Mapping[str, Any]) -> Big:
    grounds = [ground["text"] for ground in hold["grounds"][:1]]
    note = f"{say.tail_words(hold)}; {say.words_of(hold['verdict'])}"
    return Big("HOLD", spoken(hold["method"]), "", clean(". ".join([note, *grounds])))


def _thrust(thrust: Mapping[str, Any], units: str) -> Big:
    if thrust["window"] == "not-used":
        return Big("THRUST", "none", "", "the tailstock does not press on this work")
    if "set_n" not in thrust:
        return Big("THRUST", "no safe thrust", "", f"with these centers: {say.no_thrust(thrust, units)}")
    notes = [say.most_thrust(thrust, units), *say.thrust_extras(thrust, units), say.window_words(thrust)]
    return Big("THRUST", f"set {force(thrust['set_n'], units, True, thrust['allowed_n'])}", "", "; ".join(notes))


def _facts(answer: Mapping[str, Any], units: str) -> Iterable[tuple[str, str]]:
    if answer.get("centers"):
        yield "Centers", say.centers_text(answer["centers"], units)
    if "tool" in answer:
        tool = answer["tool"]
        never = f"; never {tool['never']}" if tool.get("never") else ""
        yield "Tool", clean(say.tool_text(tool) + never)


def _texts(texts: Iterable[str]) -> tuple[str, ...]:
    return tuple(clean(text) for text in texts)


def _sections(answer: Mapping[str, Any], others: Iterable[Mapping[str, Any]], units: str) -> Iterable[Section]:
    refused = answer["verdict"] == REFUSED
    also = _texts(say.with_remedy(reason) for reason in others)
    speed, thrust = answer["speed"], answer.get("thrust", {})
    if not refused:
        yield Section("Before the switch", _texts(answer["checks"]), boxes=True)
        yield from _way_up(speed, units)
    if also:
        yield Section("And because" if refused else "Also", also, may_be_cut=True)
    yield from _chart(speed, refused)
    settings = [] if refused else [text for text in cut_lines(answer["tool"], units) if not text.startswith("never")]
    if "feed_mm" in answer.get("tool", {}):
        yield Section("The cut", _texts(settings), may_be_cut=True)
    yield Section("Cautions", _texts(entry["text"] for entry in answer["cautions"]))
    if not refused and answer["notes"]:
        yield Section("Watch", _texts(answer["notes"]), may_be_cut=True)
    if answer["verdict"] not in ("go", "go-with-care"):
        changes = [*speed.get("would_change", []), *thrust.get("would_change", [])]
        if changes:
            yield Section("What would change it", _texts(changes), may_be_cut=True)
    yield Section("Nobody said, so assumed", _texts(say.assumed_lines(answer, units)), fine=True, may_be_cut=True)
    yield Section(
        "Could not be checked", _texts(say.unchecked_lines(answer)) or ("nothing",), fine=True, may_be_cut=True
    )


def _way_up(speed: Mapping[str, Any], units: str) -> Iterable[Section]:
    """The steps after each of which one looks and listens, and what the ceiling becomes as wood comes off."""
    steps = tuple(
        (clean(step["when"]), f"{limit_down(step['rpm'])} rpm", f"{clean(step['check'])}; {energy(step['energy_j'])}")
        for step in speed.get("steps", [])
    )
    if steps:
        yield Section("The way up", rows=Rows(("When", "Speed", "Then"), steps, (0.24, 0.18, 0.58)))
    rungs = tuple(
        (length(rung["radius_removed_mm"], units), f"{limit_down(rung['ceiling_rpm'])} rpm", _governs(rung))
        for rung in speed.get("ladder", [])
    )
    if len(rungs) > 1:
        heads = ("Taken off", "Never above", "Decided by")
        yield Section("As it gets round", rows=Rows(heads, rungs, (0.3, 0.3, 0.4)))


def _governs(rung: Mapping[str, Any]) -> str:
    return f"{rung['governed_by']}{' (finished)' if rung['state'] == 'finished' else ''}"


def _chart(speed: Mapping[str, Any], refused: bool) -> Iterable[Section]:
    if not speed.get("limits"):
        return
    start = None if refused else speed.get("start_rpm")
    lowest = sorted(speed["limits"], key=lambda limit: float(limit["rpm"]))[:MOST_LIMITS]
    words = f"Chart of the limits on speed: {lowest[0]['name']} decides at {limit_down(lowest[0]['rpm'])} rpm"
    picture = limits_picture(lowest, words, start, IN_COLUMN)
    yield Section(f"Limits on speed, rpm{NOT_A_PERMISSION if refused else ''}", picture=picture)
