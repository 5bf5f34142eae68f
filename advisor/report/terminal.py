"""The answer as a person reads it: verdict, one reason, what to do, then the numbers."""

from __future__ import annotations

import math
import textwrap
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, NamedTuple

from advisor.report.cut_lines import cut_lines
from advisor.report.numbers import FACE_SHIELD_J, energy, force, length, rpm_down, torque
from advisor.report.words import HEADLINE, METHOD_WORDS, WINDOW_WORDS

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


def _hold_line(answer: Mapping[str, Any]) -> Iterator[Line]:
    first = answer["holding"][0]
    text = METHOD_WORDS.get(first["method"], first["method"].replace("-", " "))
    tail = ", tailstock up" if first["tail"] == "up" else ", no tailstock"
    yield from wrapped(f"{text}{tail} ({first['verdict'].replace('-', ' ')})", "  Hold     ", "do", 11)


def _speed_line(part: Mapping[str, Any]) -> Iterator[Line]:
    if not part.get("start_rpm"):
        yield Line("  Speed    none: do not switch it on", "do")
        return
    next_one = f", next {part['runner_up']}" if "runner_up" in part else ""
    text = (
        f"start at {rpm_down(part['start_rpm'])} rpm; never above {rpm_down(part['ceiling_rpm'])} rpm"
        f" ({part['governed_by']} decides{next_one})"
    )
    yield from wrapped(text, "  Speed    ", "do", 11)


def _thrust_line(part: Mapping[str, Any], units: str) -> Iterator[Line]:
    word = part["window"]
    if word == "not-used":
        return
    if "set_n" not in part:
        allowed = force(part["allowed_n"], units, up=False)
        needed = f"{force(part['needed_n'], units, up=True)} needed before it beds in, " if "needed_n" in part else ""
        yield from wrapped(
            f"no safe thrust with these centers: {needed}{allowed} allowed ({part['governed_by']})",
            "  Thrust   ",
            "do",
            11,
        )
        return
    extra = []
    if part.get("seat_depth_mm"):
        extra.append(f"teeth seated {length(part['seat_depth_mm'], units)} first")
    if "light_cuts_n" in part:
        extra.append(f"light cuts, up to {force(part['light_cuts_n'], units, up=False)}")
    if "handwheel_nm" in part:
        extra.append(f"{torque(part['handwheel_nm'], units)} at the handwheel")
    told = f"; {'; '.join(extra)}" if extra else ""
    text = (
        f"set {force(part['set_n'], units, up=True)}, at most {force(part['allowed_n'], units, up=False)}"
        f" ({part['governed_by']}){told}; {WINDOW_WORDS[word]}"
    )
    yield from wrapped(text, "  Thrust   ", "do", 11)


def _centers_line(part: Mapping[str, Any], units: str) -> Iterator[Line]:
    if not part:
        return
    tail = part["tail"]["kind"].replace("-", " ")
    text = f"{tail} at the tail"
    drive = part.get("drive")
    if drive is not None:
        text = f"drive {length(drive['outer_diameter_mm'], units)} across; {text}"
    yield from wrapped(text, "  Centers  ", "do", 11)


def _tool_line(part: Mapping[str, Any]) -> Iterator[Line]:
    bevel = part.get("bevel_deg")
    ground = f", bevel {bevel[0]:.0f} to {bevel[1]:.0f}°" if bevel else ""
    rake = part.get("rake_deg")
    if rake:
        ground = f", rake {rake[0]:.0f} to {rake[1]:.0f}°, clearance {part['clearance_deg'][0]:.0f} to "
        ground += f"{part['clearance_deg'][1]:.0f}°"
    yield from wrapped(f"{part['kind']}{ground}: {part['why']}", "  Tool     ", "do", 11)


def doing(answer: Mapping[str, Any], units: str) -> Iterator[Line]:
    """Hold, speed, thrust, centers and tool, a line or two each."""
    if answer.get("holding"):
        yield from _hold_line(answer)
    if "speed" in answer:
        yield from _speed_line(answer["speed"])
    if "thrust" in answer:
        yield from _thrust_line(answer["thrust"], units)
    yield from _centers_line(answer.get("centers", {}), units)
    if "tool" in answer:
        yield from _tool_line(answer["tool"])


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
        told = f"{step['when']}: {rpm_down(step['rpm'])} rpm, {energy(step['energy_j'])}; {step['check']}"
        yield from wrapped(told, f"  {offset}. ", hang=5)


def _bar(share: float) -> str:
    return "█" * max(1, round(share * BAR))


def _limits(part: Mapping[str, Any], key: str, unit: str) -> Iterator[Line]:
    limits = part.get("limits", [])
    if not limits:
        return
    yield from _title(f"Limits, {unit} (the shortest bar decides)")
    shown = limits[:LIMIT_ROWS]
    top = math.log10(max(limit[key] for limit in shown) + 1)
    bottom = math.log10(min(limit[key] for limit in shown) + 1)
    span = max(top - bottom, 0.3)
    for number, limit in enumerate(shown):
        share = 0.15 + 0.85 * (math.log10(limit[key] + 1) - bottom) / span
        mark = "<" if number == 0 else " "
        value = rpm_down(limit[key]) if key == "rpm" else f"{limit[key]:.0f}"
        text = f"  {limit['name']:<16} {value:>7} {mark} {_bar(share):<{BAR}}"
        yield Line(f"{text} {limit['grade']}".rstrip(), "first" if number == 0 else "text")
    for limit in shown[:2]:
        why = limit["why"] or limit["formula"]
        yield from wrapped(f"{limit['name']}: {why}. {limit['formula']}", "    ", "quiet", 6)
        yield from wrapped(f"Source: {limit['source']}", "      ", "quiet", 6)
    if key == "rpm":
        yield Line("  (bars on a logarithmic scale)", "quiet")


def _ladder(part: Mapping[str, Any], units: str) -> Iterator[Line]:
    rows = part.get("ladder", [])
    if len(rows) < 2:
        return
    yield from _title("As it gets round")
    yield Line("  taken off     offset left    ceiling   decided by", "quiet")
    for row in rows:
        state = " (finished shape)" if row["state"] == "finished" else ""
        off, left = length(row["radius_removed_mm"], units), length(row["offset_mm"], units)
        yield Line(f"  {off:<13} {left:<14} {rpm_down(row['ceiling_rpm']):>5} rpm  {row['governed_by']}{state}")


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
    yield from _title("Ways of holding, best first" if rows > HOLD_ROWS else "Holds compared")
    for hold in holds[:rows]:
        margin = hold.get("typical_over_divisor")
        told = f", margin {margin:.1f} (1 is just enough)" if margin is not None else ", by practice"
        yield Line(f"  {hold['rank']}. {hold['method'].replace('-', ' ')}: {hold['verdict'].replace('-', ' ')}{told}")
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
    """Sizes of the hold in use, and of the best one where another was chosen; only where they were asked for."""
    sized = [hold for hold in answer.get("holding", []) if "proportions" in hold][:2]
    if not sized:
        return
    from advisor.report.proportions import drying_lines, hold_lines

    chosen, *others = sized
    yield from hold_lines(chosen, units)
    if chosen["verdict"] in AGAINST and others and others[0]["verdict"] not in AGAINST:
        yield from hold_lines(others[0], units)
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
    yield Line(f"{HEADLINE[verdict]}  {title}", verdict)
    for reason in answer["reasons"][:1]:
        yield from wrapped(reason["text"], "  ", "reason", 2)
        if reason["do"] and reason["do"] not in reason["text"]:
            yield from wrapped(reason["do"], "  -> ", "do", 5)
    if verdict != "do-not-mount":
        if any(part in answer for part in ("holding", "speed", "thrust")):
            yield from _title("What to do")
        yield from doing(answer, units)
        yield from _sizes(answer, units)
        yield from _steps(answer)
    yield from _list("Cautions", (entry["text"] for entry in answer["cautions"]), "caution")
    others = [
        entry["text"] if entry["do"] in entry["text"] else f"{entry['text']} {entry['do']}"
        for entry in answer["reasons"][1:]
    ]
    yield from _list("Also", [*others, *(answer["notes"] if verdict != "do-not-mount" else [])])
    yield from _changes(answer)
    yield from _list("The cut", cut_lines(answer.get("tool", {}), units))
    yield from _limits(answer.get("speed", {}), "rpm", "rpm")
    yield from _energy(answer.get("speed", {}))
    yield from _ladder(answer.get("speed", {}), units)
    yield from _limits(answer.get("thrust", {}), "n", "newtons")
    yield from _holds(answer, len(answer.get("holding", [])) if everything_held else HOLD_ROWS)
    assumed = (f"{entry['field']} = {entry['value']}: {entry['why']}" for entry in answer["assumed"])
    yield from _list("Nobody said, so assumed", assumed, "quiet")
    gaps = (f"{entry['what']}: {entry['missing']}" for entry in answer["could_not_check"])
    yield from _list("Could not be checked", gaps, "quiet")
    yield Line("")
    yield from wrapped(
        "Local codes and licensed practice govern where they say more. Not modelled: chatter, the dynamics of a catch, "
        "hidden shakes, steered grain.",
        "",
        "quiet",
    )
