"""The short sentences of an answer that the terminal and the sheet share."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from advisor.models.spoken import spoken
from advisor.report.numbers import angle, assumed_value, energy, force, length, limit_down, wheel_torque
from advisor.report.words import WINDOW_WORDS


def words_of(identifier: str) -> str:
    """An id as words."""
    return identifier.replace("-", " ")


def tail_words(hold: Mapping[str, Any]) -> str:
    """What part the tailstock plays."""
    return "tailstock up" if hold["tail"] == "up" else "no tailstock"


def hold_words(hold: Mapping[str, Any]) -> str:
    """The way of holding with the tailstock's part."""
    return f"{spoken(hold['method'])}, {tail_words(hold)}"


def next_limit(speed: Mapping[str, Any]) -> str:
    """The limit that decides, and the one that would be next."""
    after = f", next {speed['runner_up']}" if "runner_up" in speed else ""
    return f"{speed['governed_by']} decides{after}"


def no_thrust(thrust: Mapping[str, Any], units: str) -> str:
    """What an empty window lacks."""
    needed = f"{force(thrust['needed_n'], units, up=True)} needed before it beds in, " if "needed_n" in thrust else ""
    return f"{needed}{force(thrust['allowed_n'], units, up=False)} allowed ({thrust['governed_by']})"


def most_thrust(thrust: Mapping[str, Any], units: str) -> str:
    """The largest thrust, and what allows no more."""
    return f"at most {force(thrust['allowed_n'], units, up=False)} ({thrust['governed_by']})"


def thrust_extras(thrust: Mapping[str, Any], units: str) -> list[str]:
    """What goes with the thrust to set: teeth first, light cuts, the handwheel."""
    extra = []
    if thrust.get("seat_depth_mm"):
        extra.append(f"teeth seated {length(thrust['seat_depth_mm'], units)} first")
    if "light_cuts_n" in thrust:
        extra.append(f"light cuts, up to {force(thrust['light_cuts_n'], units, up=False)}")
    if "handwheel_nm" in thrust:
        extra.append(f"{wheel_torque(thrust['handwheel_nm'], units)} at the handwheel")
    return extra


def window_words(thrust: Mapping[str, Any]) -> str:
    """How the window stands."""
    return WINDOW_WORDS[thrust["window"]]


def centers_text(centers: Mapping[str, Any], units: str) -> str:
    """Drive and tail center."""
    tail = f"{words_of(centers['tail']['kind'])} at the tail"
    drive = centers.get("drive")
    return tail if drive is None else f"drive {length(drive['outer_diameter_mm'], units)} across; {tail}"


def tool_text(tool: Mapping[str, Any]) -> str:
    """The tool, its grind, and why this one."""
    angles = (("bevel", "bevel_deg"), ("rake", "rake_deg"), ("clearance", "clearance_deg"))
    ground = [f"{name} {angle(tool[key])}" for name, key in angles if key in tool]
    return f"{', '.join([tool['kind'], *ground])}: {tool['why']}"


def step_text(step: Mapping[str, Any]) -> str:
    """One step of the way up."""
    return f"{step['when']}: {limit_down(step['rpm'])} rpm, {energy(step['energy_j'])}; {step['check']}"


def with_remedy(reason: Mapping[str, Any]) -> str:
    """A reason, and what to do about it unless it says so itself."""
    return str(reason["text"]) if reason["do"] in reason["text"] else f"{reason['text']} {reason['do']}"


def assumed_lines(answer: Mapping[str, Any], units: str) -> Iterable[str]:
    """Everything nobody said."""
    found = answer["assumed"]
    return (f"{entry['field']} = {assumed_value(entry['value'], units)}: {entry['why']}" for entry in found)


def unchecked_lines(answer: Mapping[str, Any]) -> Iterable[str]:
    """Everything that could not be checked."""
    return (f"{entry['what']}: {entry['missing']}" for entry in answer["could_not_check"])


NO_VALUE = "None of these is a value to run at: it must not be mounted."
NOT_MODELED = "Not modeled: chatter, the dynamics of a catch, hidden shakes, steered grain."
GOVERNED = f"Local codes and licensed practice govern where they say more. {NOT_MODELED}"
