"""Fields of a case that cannot both be true."""

from collections.abc import Callable, Iterable
from typing import Any, NamedTuple


class Contradiction(NamedTuple):
    """Two or more fields that cannot both be true, the one to look at first named first."""

    fields: tuple[str, ...]
    text: str


Get = Callable[[str], Any]

AT_MOST = (
    ("work.finished_diameter", "work.diameter"),
    ("work.finished_length", "work.length"),
    ("work.thinnest_diameter", "work.finished_diameter"),
    ("work.thinnest_diameter", "work.diameter"),
    ("work.floor", "work.length"),
    ("work.axis_from_flat", "work.diameter"),
    ("work.crack.along", "work.length", "work.diameter"),
    ("machine.min_rpm", "machine.max_rpm"),
    ("machine.swing_over_carriage", "machine.swing"),
    ("hold.drive.seated_depth", "hold.drive.tooth_height"),
    ("hold.steady.position", "work.length"),
    ("hold.tenon.diameter", "hold.tenon.shoulder_diameter"),
    ("hold.tenon.diameter", "work.diameter"),
    ("hold.tenon.shoulder_diameter", "work.diameter"),
    ("hold.tenon.length", "work.length"),
    ("hold.chuck.jaw_smallest", "hold.chuck.jaw_circle"),
    ("hold.chuck.jaw_smallest", "hold.chuck.jaw_largest"),
    ("hold.chuck.jaw_circle", "hold.chuck.jaw_largest"),
    ("hold.screws.circle", "work.diameter"),
    ("hold.glue.diameter", "work.diameter"),
    ("hold.vacuum.seal_diameter", "work.diameter"),
    ("cut.diameter", "work.diameter"),
)
"""First at most the second; with a third, at most the larger of the two."""

BELOW = (
    ("hold.drive.inner_diameter", "hold.drive.outer_diameter"),
    ("hold.drive.inner_diameter", "work.diameter"),
    ("hold.recess.diameter", "work.diameter"),
    ("hold.recess.depth", "work.length"),
    ("cut.drill_diameter", "work.diameter"),
)
HALF_OF = (
    ("work.wall", "work.diameter"),
    ("work.offset", "work.diameter"),
    ("work.end_waste", "work.length"),
)
RADII_OVER_HALF_DIAMETER = 1.1  # a tape measure errs; more than a tenth is a slip
ROUNDING = 1 + 1e-9


def contradictions(get: Get) -> list[Contradiction]:
    """Every contradiction among the fields that `get` knows by dotted name (None for one it does not)."""
    return [*_order(get), *_halves(get), *_steps(get), *_radii(get), *_profile(get)]


def _order(get: Get) -> Iterable[Contradiction]:
    for small, *large in AT_MOST:
        limits = [get(name) for name in large]
        if get(small) is not None and None not in limits and get(small) > max(limits) * ROUNDING:
            yield Contradiction((small, *large), f"{small} is larger than {' and '.join(large)}")
    for small, above in BELOW:
        if get(small) is not None and get(above) is not None and get(small) >= get(above):
            yield Contradiction((small, above), f"{small} is not smaller than {above}")


def _halves(get: Get) -> Iterable[Contradiction]:
    for part, whole in HALF_OF:
        if get(part) is not None and get(whole) is not None and get(part) > get(whole) / 2 * ROUNDING:
            yield Contradiction((part, whole), f"{part} is larger than half of {whole}")


def _steps(get: Get) -> Iterable[Contradiction]:
    """A step is a speed there is, so the range of the lathe holds it."""
    steps, low, high = get("machine.speeds"), get("machine.min_rpm"), get("machine.max_rpm")
    if steps and low is not None and min(steps) * ROUNDING < low:
        yield Contradiction(
            ("machine.speeds", "machine.min_rpm"), "the slowest of machine.speeds is below machine.min_rpm"
        )
    if steps and high is not None and max(steps) > high * ROUNDING:
        yield Contradiction(
            ("machine.speeds", "machine.max_rpm"), "the fastest of machine.speeds is above machine.max_rpm"
        )


def _radii(get: Get) -> Iterable[Contradiction]:
    diameter = get("work.diameter")
    for name in ("work.radii", "work.radii_far_end"):
        radii = get(name)
        if radii and diameter is not None and max(radii) > diameter / 2 * RADII_OVER_HALF_DIAMETER * ROUNDING:
            yield Contradiction(
                (name, "work.diameter"), f"the largest of {name} is more than a tenth above half of work.diameter"
            )


def _profile(get: Get) -> Iterable[Contradiction]:
    profile, diameter, length = get("work.profile"), get("work.diameter"), get("work.length")
    if not profile:
        return
    places = [place for place, _ in profile]
    if places != sorted(places):
        yield Contradiction(("work.profile",), "the positions of work.profile go back; list them from one end on")
    if length is not None and max(places) > length * ROUNDING:
        yield Contradiction(("work.profile", "work.length"), "work.profile runs past work.length")
    if diameter is not None and max(size for _, size in profile) > diameter * ROUNDING:
        yield Contradiction(("work.profile", "work.diameter"), "work.profile is thicker than work.diameter")
