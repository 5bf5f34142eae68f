"""Figures move the way they must: no input that makes things worse ever raises a limit, and the other way about."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from advisor.figure import NoAnswer, find_figure

Span = tuple[float, float]
UP, DOWN = 1, -1

SPANS: dict[str, dict[str, Any]] = {
    "grain-angle-strength": {"parallel": (30, 90), "perpendicular": (3, 25), "angle": (0, 90)},
    "moisture-strength": {"dry": (40, 90), "green": (15, 39), "moisture": (6, 40), "intersection": (21, 28)},
    "lower-value": {"mean": (1, 100), "variation": (0, 1)},
    "tooth-penetration": {
        "thrust": (50, 4000),
        "teeth": [2, 4, 6],
        "inner_radius": (2, 6),
        "outer_radius": (7, 25),
        "face_angle": (5, 50),
        "back_angle": (5, 50),
        "parallel": (30, 90),
        "perpendicular": (3, 20),
        "friction": (0.1, 0.65),
    },
    "required-thrust": {
        "cutting_force": (5, 200),
        "radius": (5, 100),
        "peak": (1, 3),
        "safety": (1, 3),
        "share": (0.7, 1),
        "grip": (0.1, 1),
        "mean_radius": (4, 20),
        "tail_friction": (0.05, 0.3),
        "tail_radius": (0.5, 2),
        "tail_half_angle": (20, 45),
    },
    "taper-torque": {"friction": (0.05, 0.3), "thrust": (50, 4000), "half_angle": (1, 10), "mean_radius": (3, 20)},
    "dead-center-heat": {
        "friction": (0.05, 0.6),
        "thrust": (50, 3000),
        "radius": (0.5, 6),
        "half_angle": (20, 45),
        "rpm": (50, 4000),
    },
    "cone-sink": {"thrust": (50, 4000), "end_strength": (5, 100), "half_angle": (15, 60)},
    "cone-splitting-force": {"thrust": (50, 4000), "half_angle": (5, 80), "friction": (0, 0.8)},
    "wedge-splitting-force": {"thrust": (50, 4000), "half_angle": (5, 80), "friction": (0, 0.8)},
    "split-capacity": {
        "diameter": (10, 300),
        "tension_perpendicular": (1, 9),
        "modulus_perpendicular": (0.3, 1.9),
        "modulus_along": (5, 18),
        "fracture_energy": (100, 500),
        "crack_depth": (0, 100),
        "sound": (0, 1),
    },
    "buckling-force": {"diameter": (8, 50), "length": (400, 2000), "modulus": (5, 18), "end_factor": (0.5, 2)},
    "deflection": {
        "force": (1, 300),
        "diameter": (8, 60),
        "length": (50, 2000),
        "modulus": (5, 18),
        "ends": ["pinned-pinned", "fixed-pinned", "fixed-fixed", "free"],
    },
    "whirl-speed": {
        "diameter": (15, 50),
        "length": (300, 1500),
        "modulus": (5, 18),
        "density": (300, 1100),
        "ends": ["pinned-pinned", "fixed-pinned", "fixed-fixed", "free"],
        "thrust": (0, 300),
    },
    "unbalance-force": {"mass": (0.1, 40), "offset": (0, 30), "rpm": (0, 4000)},
    "slide-force": {"mass": (20, 900), "friction": (0, 1)},
    "tip-force": {"mass": (20, 900), "half_base": (100, 600), "spindle_height": (300, 1300)},
    "walking-speed": {
        "lathe_mass": (30, 900),
        "blank_mass": (0.2, 40),
        "offset": (0.1, 40),
        "friction": (0.1, 0.8),
        "half_base": (100, 600),
        "spindle_height": (300, 1300),
        "amplification": (1, 6),
    },
    "rim-rule-speed": {"diameter": (20, 900), "band": (3000, 9000)},
    "disc-stress": {
        "density": (300, 1400),
        "diameter": (100, 600),
        "rpm": (50, 4000),
        "poisson": (0, 0.5),
        "bore": (1, 90),
    },
    "cracked-disc-speed": {
        "density": (300, 1400),
        "diameter": (50, 600),
        "sound": (0, 1),
        "strength": (0.05, 5),
    },
    "jaw-torque": {"friction": (0, 0.8), "grip": (0, 20000), "diameter": (20, 200)},
    "jaw-moment": {
        "friction": (0.05, 0.8),
        "grip": (0, 20000),
        "diameter": (20, 200),
        "length": (3, 40),
        "shoulder_radius": (0, 150),
    },
    "jaw-crush-force": {"diameter": (20, 200), "length": (3, 40), "strength": (1, 30), "contact": (0.1, 1)},
    "recess-force": {
        "diameter": (30, 100),
        "depth": (2, 8),
        "outside_diameter": (110, 400),
        "tension_perpendicular": (1, 9),
    },
    "tenon-root-diameter": {"moment": (0, 200), "strength": (1, 100), "divisor": (1, 5)},
    "tenon-grip-length": {"grip": (0, 20000), "diameter": (20, 200), "strength": (1, 30), "contact": (0.1, 1)},
    "recess-outside-diameter": {
        "grip": (0, 5000),
        "diameter": (25, 150),
        "depth": (2, 12),
        "tension_perpendicular": (1, 8),
    },
    "glue-face-diameter": {
        "torque": (0, 100),
        "moment": (0, 100),
        "shear": (0.1, 10),
        "peel": (0.05, 3),
        "divisor": (1, 8),
    },
    "screw-count": {"torque": (0, 300), "lateral": (50, 3000), "radius": (20, 100), "divisor": (1, 6)},
    "thread-length": {"pull": (0, 5000), "gravity": (0.3, 1), "diameter": (3, 12), "divisor": (1, 6)},
    "drying-shrinkage": {"total": (0.5, 20), "from_moisture": (0, 120), "to_moisture": (0, 30)},
    "dried-oval": {"diameter": (10, 600), "larger": (8, 20), "smaller": (0, 8)},
    "diameter-to-leave": {"finished": (10, 300), "shrinkage": (0, 20), "allowance": (0, 5)},
    "wall-to-leave": {"diameter": (20, 600), "larger": (8, 20), "smaller": (0, 8), "finished_wall": (2, 20)},
    "drying-that-loosens": {"pressure": (0.1, 20), "modulus": (0.2, 3), "total": (1, 20)},
    "chuck-speed": {
        "grip": (9000, 40000),
        "needed_grip": (0, 2900),
        "safety": (1.5, 3),
        "jaw_moment": (0.01, 1),
    },
    "screw-withdrawal": {
        "gravity": (0.3, 0.9),
        "diameter": (3, 10),
        "thread": (8, 60),
        "kind": ["wood", "lag"],
        "fiber": ["side", "end"],
    },
    "glue-torque": {"shear": (0.01, 10), "diameter": (20, 200)},
    "jam-fit": {
        "interference": (0, 0.4),
        "diameter": (20, 90),
        "outside_diameter": (100, 250),
        "modulus": (0.2, 2),
        "length": (2, 20),
        "friction": (0.1, 0.6),
    },
    "air-pressure": {"altitude": (-100, 5000)},
    "vacuum-force": {"pressure": (0, 100), "diameter": (20, 400)},
    "suction-floor-stress": {"pressure": (1, 100), "radius": (20, 200), "thickness": (2, 30), "poisson": (0, 0.5)},
    "wood-cutting-force": {
        "width": (0.5, 20),
        "thickness": (0.05, 1.5),
        "density": (300, 1100),
        "mode": ["along", "across", "end"],
        "sharpness": (1, 3),
        "moisture": (6, 120),
        "rake": (0, 45),
    },
    "plastic-cutting-force": {
        "material": ["nylon", "acetal", "ptfe"],
        "width": (0.1, 10),
        "thickness": (0.05, 1.5),
    },
}
# figure, input, which way the value goes when the input grows (never the other way; level is allowed)
ORDERS = [
    ("grain-angle-strength", "angle", DOWN),
    ("moisture-strength", "moisture", DOWN),
    ("lower-value", "variation", DOWN),
    ("tooth-penetration", "face_angle", DOWN),  # a blunter tooth never bites better
    ("tooth-penetration", "friction", DOWN),
    ("tooth-penetration", "perpendicular", DOWN),
    ("tooth-penetration", "thrust", UP),
    ("required-thrust", "cutting_force", UP),
    ("required-thrust", "peak", UP),
    ("required-thrust", "safety", UP),
    ("required-thrust", "grip", DOWN),
    ("required-thrust", "tail_friction", UP),
    ("required-thrust", "mean_radius", DOWN),
    ("taper-torque", "friction", UP),
    ("taper-torque", "thrust", UP),
    ("dead-center-heat", "friction", UP),
    ("dead-center-heat", "rpm", UP),
    ("cone-sink", "thrust", UP),
    ("cone-sink", "end_strength", DOWN),
    ("cone-splitting-force", "half_angle", DOWN),  # a blunter cone never splits more
    ("cone-splitting-force", "friction", DOWN),
    ("wedge-splitting-force", "half_angle", DOWN),
    ("wedge-splitting-force", "friction", DOWN),
    ("split-capacity", "crack_depth", DOWN),
    ("split-capacity", "sound", UP),
    ("split-capacity", "tension_perpendicular", UP),
    ("split-capacity", "fracture_energy", UP),
    ("split-capacity", "diameter", UP),
    ("buckling-force", "length", DOWN),
    ("buckling-force", "diameter", UP),
    ("buckling-force", "modulus", UP),
    ("buckling-force", "end_factor", DOWN),
    ("deflection", "length", UP),
    ("deflection", "diameter", DOWN),
    ("deflection", "modulus", DOWN),
    ("whirl-speed", "length", DOWN),
    ("whirl-speed", "thrust", DOWN),
    ("whirl-speed", "density", DOWN),
    ("whirl-speed", "modulus", UP),
    ("whirl-speed", "diameter", UP),
    ("unbalance-force", "offset", UP),
    ("unbalance-force", "mass", UP),
    ("unbalance-force", "rpm", UP),
    ("slide-force", "mass", UP),
    ("slide-force", "friction", UP),
    ("tip-force", "half_base", UP),
    ("tip-force", "spindle_height", DOWN),
    ("walking-speed", "lathe_mass", UP),
    ("walking-speed", "blank_mass", DOWN),
    ("walking-speed", "offset", DOWN),
    ("walking-speed", "amplification", DOWN),
    ("walking-speed", "friction", UP),
    ("walking-speed", "spindle_height", DOWN),
    ("rim-rule-speed", "diameter", DOWN),
    ("rim-rule-speed", "band", UP),
    ("disc-stress", "diameter", UP),
    ("disc-stress", "density", UP),
    ("disc-stress", "bore", UP),
    ("cracked-disc-speed", "sound", UP),
    ("cracked-disc-speed", "density", DOWN),
    ("cracked-disc-speed", "diameter", DOWN),
    ("cracked-disc-speed", "strength", UP),
    ("jaw-torque", "friction", UP),
    ("jaw-torque", "grip", UP),
    ("jaw-moment", "friction", UP),
    ("jaw-moment", "length", UP),
    ("jaw-moment", "shoulder_radius", UP),
    ("jaw-crush-force", "contact", UP),
    ("jaw-crush-force", "diameter", UP),
    ("jaw-crush-force", "length", UP),
    ("recess-force", "outside_diameter", UP),  # a thicker wall never lowers it
    ("recess-force", "depth", UP),
    ("tenon-root-diameter", "moment", UP),  # a bigger load never needs a smaller tenon
    ("tenon-root-diameter", "divisor", UP),
    ("tenon-root-diameter", "strength", DOWN),
    ("tenon-grip-length", "grip", UP),
    ("tenon-grip-length", "strength", DOWN),
    ("tenon-grip-length", "contact", DOWN),
    ("recess-outside-diameter", "grip", UP),
    ("recess-outside-diameter", "depth", DOWN),
    ("recess-outside-diameter", "tension_perpendicular", DOWN),
    ("glue-face-diameter", "torque", UP),
    ("glue-face-diameter", "moment", UP),
    ("glue-face-diameter", "peel", DOWN),
    ("screw-count", "torque", UP),
    ("screw-count", "radius", DOWN),
    ("screw-count", "lateral", DOWN),
    ("thread-length", "pull", UP),
    ("thread-length", "gravity", DOWN),
    ("drying-shrinkage", "total", UP),
    ("drying-shrinkage", "from_moisture", UP),  # wetter never shrinks less
    ("drying-shrinkage", "to_moisture", DOWN),
    ("dried-oval", "larger", UP),
    ("dried-oval", "smaller", DOWN),
    ("diameter-to-leave", "shrinkage", UP),
    ("diameter-to-leave", "allowance", UP),
    ("wall-to-leave", "larger", UP),
    ("wall-to-leave", "finished_wall", UP),
    ("drying-that-loosens", "pressure", UP),
    ("drying-that-loosens", "total", DOWN),
    ("chuck-speed", "grip", UP),
    ("chuck-speed", "needed_grip", DOWN),
    ("chuck-speed", "safety", DOWN),
    ("chuck-speed", "jaw_moment", DOWN),
    ("screw-withdrawal", "thread", UP),
    ("screw-withdrawal", "diameter", UP),
    ("screw-withdrawal", "gravity", UP),
    ("glue-torque", "diameter", UP),
    ("glue-torque", "shear", UP),
    ("jam-fit", "interference", UP),
    ("jam-fit", "outside_diameter", UP),
    ("air-pressure", "altitude", DOWN),
    ("vacuum-force", "pressure", UP),
    ("vacuum-force", "diameter", UP),
    ("suction-floor-stress", "thickness", DOWN),
    ("suction-floor-stress", "radius", UP),
    ("wood-cutting-force", "thickness", UP),
    ("wood-cutting-force", "width", UP),
    ("wood-cutting-force", "density", UP),
    ("wood-cutting-force", "rake", DOWN),
    ("wood-cutting-force", "moisture", DOWN),
    ("wood-cutting-force", "sharpness", UP),
    ("plastic-cutting-force", "thickness", UP),
]


def drawn(span: Any) -> st.SearchStrategy[Any]:
    return st.sampled_from(span) if isinstance(span, list) else st.floats(*span)


@pytest.mark.parametrize(("name", "key", "way"), ORDERS, ids=[f"{name}-{key}" for name, key, _ in ORDERS])
@given(data=st.data())
def test_value_goes_its_one_way(name: str, key: str, way: int, data: st.DataObject) -> None:
    spans = SPANS[name]
    formula = find_figure(name)
    inputs = {other: data.draw(drawn(span), label=other) for other, span in spans.items()}
    low, high = sorted((inputs[key], data.draw(drawn(spans[key]), label=f"{key} again")))
    try:
        less, more = formula(**{**inputs, key: low}), formula(**{**inputs, key: high})
    except NoAnswer:
        assume(False)
    assert way * (more - less) >= -1e-9 * max(abs(less), abs(more))


@given(data=st.data())
def test_more_thrust_never_raises_the_whirl_of_a_profile(data: st.DataObject) -> None:
    size = st.floats(15, 60)
    profile = [(place * 200.0, data.draw(size)) for place in range(4)]
    formula = find_figure("profile-whirl-speed")
    low, high = sorted((data.draw(st.floats(0, 400)), data.draw(st.floats(0, 400))))
    less, more = (
        formula(profile=profile, modulus=9, density=700, ends="pinned-pinned", thrust=push) for push in (low, high)
    )
    assert more <= less * (1 + 1e-9)


@given(sizes=st.lists(st.floats(15, 60), min_size=3, max_size=6), scale=st.floats(1.01, 3))
def test_longer_profile_never_whirls_faster(sizes: list[float], scale: float) -> None:
    formula = find_figure("profile-whirl-speed")
    short = [(place * 150.0, size) for place, size in enumerate(sizes)]
    long = [(position * scale, size) for position, size in short]
    same = {"modulus": 10, "density": 650, "ends": "fixed-pinned"}
    try:
        assert formula(profile=long, **same) == pytest.approx(formula(profile=short, **same) / scale**2, rel=1e-6)
    except NoAnswer:
        assume(False)


@given(sizes=st.lists(st.floats(15, 60), min_size=4, max_size=6))
def test_profile_turned_about_whirls_the_same(sizes: list[float]) -> None:
    formula = find_figure("profile-whirl-speed")
    there = [(place * 200.0, size) for place, size in enumerate(sizes)]
    back = [(place * 200.0, size) for place, size in enumerate(reversed(sizes))]
    same = {"modulus": 10, "density": 650, "ends": "pinned-pinned", "thrust": 100}
    assert formula(profile=there, **same) == pytest.approx(formula(profile=back, **same), rel=1e-4)


@given(
    radii=st.lists(st.floats(80, 120), min_size=12, max_size=24),
    scale=st.floats(0.1, 5),
    turn=st.integers(0, 23),
)
def test_offset_does_not_care_where_the_measuring_began(radii: list[float], scale: float, turn: int) -> None:
    formula = find_figure("offset-from-radii")
    turned = radii[turn % len(radii) :] + radii[: turn % len(radii)]
    base = formula(radii=radii)
    assert formula(radii=turned) == pytest.approx(base, abs=1e-9)
    assert formula(radii=[radius * scale for radius in radii]) == pytest.approx(base * scale, abs=1e-9)
