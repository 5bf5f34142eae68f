"""The answer as a person reads it: verdict, one reason, what to do, then the numbers."""

import math
import textwrap
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, NamedTuple

from advisor.models.spoken import spoken
from advisor.report import sentences as say
from advisor.report.cut_lines import cut_lines
from advisor.report.numbers import FACE_SHIELD_J, energy, force, length, limit_down
from advisor.report.words import HEADLINE

WIDTH = 88
BAR = 40
LIMIT_ROWS = 8
HOLD_ROWS = 5
AGAINST = ("not-advised", "refused", "could-not-check")


class Line(NamedTuple):
    """One line of text with the role it plays; a terminal colors roles, a pipe does not."""

    text: str
    role: str = "text"


def wrapped(text: str, lead: str, role: str = "text", hang: int | None = None) -> Iterator[Line]:
    """A text in lines behind a lead; what does not fit hangs below it."""
    indent = " " * (len(lead) if hang is None else hang)
    for number, part in enumerate(textwrap.wrap(text, WIDTH - len(indent), break_long_words=True) or [""]):
        yield Line((lead if number == 0 else indent) + part, role)


def _title(text: str) -> Iterator[Line]:
    yield Line("")
    yield Line(text, "title")


def _do(name: str, text: str) -> Iterator[Line]:
    yield from wrapped(text, f"  {name:<9}", "do", 11)


def _speed_text(part: Mapping[str, Any]) -> str:
    if not part.get("start_rpm"):
        return "none: do not switch it on"
    start, ceiling = limit_down(part["start_rpm"]), limit_down(part["ceiling_rpm"])
    return f"start at {start} rpm; never above {ceiling} rpm ({say.next_limit(part)})"


def _thrust_text(part: Mapping[str, Any], units: str) -> str:
    if "set_n" not in part:
        return f"no safe thrust with these centers: {say.no_thrust(part, units)}"
    to_set = force(part["set_n"], units, True, part["allowed_n"])
    parts = [f"set {to_set}, {say.most_thrust(part, units)}"]
    return "; ".join([*parts, *say.thrust_extras(part, units), say.window_words(part)])


def doing(answer: Mapping[str, Any], units: str) -> Iterator[Line]:
    """Hold, speed, thrust, centers and tool, a line or two each."""
    if answer.get("holding"):
        first = answer["holding"][0]
        settle = ": settle this first, the rest goes by this hold" if first["verdict"] in AGAINST else ""
        yield from _do("Hold", f"{say.hold_words(first)} ({say.words_of(first['verdict'])}){settle}")
    if "speed" in answer:
        yield from _do("Speed", _speed_text(answer["speed"]))
    if "thrust" in answer and answer["thrust"]["window"] != "not-used":
        yield from _do("Thrust", _thrust_text(answer["thrust"], units))
    elif "thrust" in answer and "speed" not in answer:
        yield from _do("Thrust", "none to set: the tailstock is not in use, the hold carries it alone")
    if answer.get("centers"):
        yield from _do("Centers", say.centers_text(answer["centers"], units))
    if "tool" in answer:
        yield from _do("Tool", say.tool_text(answer["tool"]))


def _steps(answer: Mapping[str, Any]) -> Iterator[Line]:
    steps = answer.get("speed", {}).get("steps", [])
    checks = answer.get("checks", [])
    if not steps and not checks:
        return
    yield from _title("Step by step")
    number = 0
    for number, text in enumerate(checks, 1):
        yield from wrapped(text, f"  {number}. ", hang=5)
    for offset, step in enumerate(steps, number + 1):
        yield from wrapped(say.step_text(step), f"  {offset}. ", hang=5)


def _bar(share: float) -> str:
    return "█" * max(1, round(share * BAR))


def _limits(part: Mapping[str, Any], key: str, unit: str, refused: bool) -> Iterator[Line]:
    limits = part.get("limits", [])
    if not limits:
        return
    yield from _title(f"Limits, {unit} (the shortest bar decides)")
    if refused:
        yield Line(f"  {say.NO_VALUE}", "reason")
    shown = limits[:LIMIT_ROWS]
    top = math.log10(max(limit[key] for limit in shown) + 1)
    bottom = math.log10(min(limit[key] for limit in shown) + 1)
    span = max(top - bottom, 0.3)
    for number, limit in enumerate(shown):
        share = 0.15 + 0.85 * (math.log10(limit[key] + 1) - bottom) / span
        mark = "<" if number == 0 else " "
        text = f"  {limit['name']:<16} {limit_down(limit[key]):>7} {mark} {_bar(share):<{BAR}}"
        yield Line(f"{text} {limit['grade']}".rstrip(), "first" if number == 0 else "text")
    for limit in shown[:2]:
        why = limit["why"] or limit["formula"]
        yield from wrapped(f"{limit['name']}: {why}. {limit['formula']}", "    ", "quiet", 6)
        yield from wrapped(f"Source: {limit['source']}", "      ", "quiet", 6)
    if key == "rpm":
        yield Line("  (bars on a logarithmic scale)", "quiet")


def _ladder(part: Mapping[str, Any], units: str) -> Iterator[Line]:
    rows = part.get("ladder", [])
    if len({limit_down(row["ceiling_rpm"]) for row in rows}) < 2:
        return
    yield from _title("As it gets round")
    yield Line("  taken off     offset left    ceiling   decided by", "quiet")
    for row in rows:
        state = " (finished shape)" if row["state"] == "finished" else ""
        off, left = length(row["radius_removed_mm"], units), length(row["offset_mm"], units)
        yield Line(f"  {off:<13} {left:<14} {limit_down(row['ceiling_rpm']):>5} rpm  {row['governed_by']}{state}")


def _energy(part: Mapping[str, Any]) -> Iterator[Line]:
    if not part.get("energy_j"):
        return
    text = f"At the start it carries {energy(part['energy_j'])}, its rim runs {part['rim_m_per_s']:.2g} m/s."
    if part["energy_j"] > FACE_SHIELD_J:
        text += " A face shield is tried with 6.2 J (ANSI Z87.1-2003, high mass): stand out of line."
    yield from wrapped(text, "  ", "quiet")


def _holds(answer: Mapping[str, Any], rows: int) -> Iterator[Line]:
    holds = answer.get("holding", [])
    if not holds:
        return
    title = "Ways of holding, best first" if rows > HOLD_ROWS else "Holds compared"
    yield from _title(f"{title}; a margin of 1 is just enough")
    for hold in holds[:rows]:
        margin = hold.get("typical_over_divisor")
        told = f", margin {limit_down(margin)}" if margin is not None else ", by practice"
        yield Line(f"  {hold['rank']}. {spoken(hold['method'])}: {hold['verdict'].replace('-', ' ')}{told}")
        grounds = [ground["text"] for ground in hold["grounds"]][:2]
        for text in grounds:
            yield from wrapped(text, "     - ", "quiet", 7)
        for text in hold["would_change"]:
            yield from wrapped(f"would change it: {text}", "     - ", "quiet", 7)


def _changes(answer: Mapping[str, Any]) -> Iterator[Line]:
    found = [*answer.get("speed", {}).get("would_change", []), *answer.get("thrust", {}).get("would_change", [])]
    if not found:
        return
    yield from _title("What would change it")
    for text in found:
        yield from wrapped(text, "  - ", hang=4)


def _sizes(answer: Mapping[str, Any], units: str) -> Iterator[Line]:
    """Sizes of the hold in use, and of the best one where another was chosen; only where they were asked for.

    A hold that is refused for what it is gets none: only one that is too small is told what would be enough.
    """
    sized = [hold for hold in answer.get("holding", []) if "proportions" in hold][:2]
    if not sized:
        return
    from advisor.report.proportions import drying_lines, hold_lines

    for number, hold in enumerate(sized):
        against = hold["verdict"] in AGAINST
        too_small = number == 0 and hold["proportions"].get("enough") is False
        if not against or too_small:
            yield from hold_lines(hold, units)
        if not against:
            break
    if "drying" in answer:
        yield from drying_lines(answer["drying"], units)


def _list(title: str, texts: Iterable[str], role: str = "text") -> Iterator[Line]:
    found = list(texts)
    if not found:
        return
    yield from _title(title)
    for text in found:
        yield from wrapped(text, "  - ", role, 4)


def lines(answer: Mapping[str, Any], title: str, units: str, everything_held: bool = False) -> Iterator[Line]:
    """The answer as lines, the verdict first."""
    verdict = answer["verdict"]
    refused = verdict == "do-not-mount"
    yield Line(f"{HEADLINE[verdict]}  {title}", verdict)
    for reason in answer["reasons"][:1]:
        yield from wrapped(reason["text"], "  ", "reason", 2)
        if reason["do"] and reason["do"] not in reason["text"]:
            yield from wrapped(reason["do"], "  -> ", "do", 5)
    if not refused:
        if any(part in answer for part in ("holding", "speed", "thrust")):
            yield from _title("What to do")
        yield from doing(answer, units)
        yield from _sizes(answer, units)
        yield from _steps(answer)
    yield from _list("Cautions", (entry["text"] for entry in answer["cautions"]), "caution")
    others = [say.with_remedy(reason) for reason in answer["reasons"][1:]]
    yield from _list("Also", [*others, *([] if refused else answer["notes"])])
    yield from _changes(answer)
    yield from _list("The cut", cut_lines(answer.get("tool", {}), units))
    yield from _limits(answer.get("speed", {}), "rpm", "rpm", refused)
    if "spread" in answer.get("speed", {}):
        from advisor.report.spread import spread_lines

        yield from spread_lines(answer["speed"]["spread"])
    yield from _energy(answer.get("speed", {}))
    yield from _ladder(answer.get("speed", {}), units)
    yield from _limits(answer.get("thrust", {}), "n", "newtons", refused)
    yield from _holds(answer, len(answer.get("holding", [])) if everything_held else HOLD_ROWS)
    yield from _list("Nobody said, so assumed", say.assumed_lines(answer, units), "quiet")
    yield from _list("Could not be checked", say.unchecked_lines(answer), "quiet")
    yield Line("")
    yield from wrapped(say.GOVERNED, "", "quiet")
