"""The answer of `advisor center`: every number of the tooth, the moves, what an error does, what the teeth stand."""

from __future__ import annotations

from math import hypot, sqrt
from typing import Any, NamedTuple

from advisor.centers.choose import Choice
from advisor.centers.cutting import build
from advisor.centers.inputs import Wanted
from advisor.centers.schedule import Move, least_flute, schedule
from advisor.centers.sensitivity import Effect, land_for_errors, sensitivity
from advisor.centers.strength import land_for_strength, strength, strength_warnings
from advisor.centers.warnings import shape_warnings
from advisor.physics.center import (
    ToothedCenter,
    core_radius,
    face_depth,
    face_span,
    land,
    root_thickness,
    section_area,
    thickness,
    tip_angle,
    tip_drop,
    wall_at,
)
from advisor.physics.center_setting import bore_for_two_settings
from advisor.units import System

SHARES = (0.10, 0.25, 0.50, 0.75, 0.95)
"""Shares of the depth at which the tooth's thickness is listed."""

ASSUMED = {
    "teeth": ("4", "the only number that one setting cuts to parallel teeth"),
    "land": ("0.005 in", "a small land stiffens the tip and keeps all tips on the turned face"),
    "end_strength": ("45 MPa", "end of the work, crushing; a placeholder, memory"),
    "tooth_strength": ("200 MPa", "bending stress allowed in unhardened steel; memory"),
}


class Answer(NamedTuple):
    """Everything worked out for one center."""

    wanted: Wanted
    center: ToothedCenter
    choices: tuple[Choice, ...]
    moves: tuple[Move, ...]
    effects: tuple[Effect, ...]
    strength: dict[str, object]
    recommended_land: float
    warnings: tuple[str, ...]

    @property
    def system(self) -> System:
        """The system of what is printed."""
        return self.wanted.system

    @property
    def side(self) -> int:
        """-1 where reverse rotation mirrors Y."""
        return -1 if self.wanted.reverse else 1

    @property
    def tip_loss(self) -> float:
        """The greater of the loss of height at mid radius and at the rim."""
        return max(tip_drop(self.center, self.center.mid_radius), tip_drop(self.center, self.center.outer_radius))

    @property
    def tip_angle(self) -> float | None:
        """Wedge angle where the tip loss is taken."""
        center = self.center
        mid, rim = center.mid_radius, center.outer_radius
        return tip_angle(center, mid if tip_drop(center, mid) > tip_drop(center, rim) else rim)

    @property
    def wall_clear(self) -> bool:
        """Whether the wall stops short of the place where it takes a tip away, anywhere from hole to rim."""
        center = self.center
        stations = (center.hole_radius, center.mid_radius, center.outer_radius)
        return all(tip_drop(center, radius) == 0 for radius in stations)

    def as_dict(self) -> dict[str, Any]:
        """The answer in the words of the interface, lengths in mm, unrounded."""
        return {
            **self._tooth(),
            **self._body(),
            "settings": [
                {"y_mm": self.side * s.y, "z_mm": s.z, "index_deg": self.side * s.turn + 0.0}
                for s in self.center.settings
            ],
            "schedule": [move.as_dict(i) for i, move in enumerate(self.moves, start=1)],
            "sensitivity": [effect.as_dict() for effect in self.effects],
            "recommended_land_mm": self.recommended_land,
            "strength": self.strength,
            "choices": [choice.as_dict() for choice in self.choices],
            "at_radii": [self._at(radius) for radius in self.wanted.radii],
            "assumed": [
                {"field": name, "value": value, "why": why}
                for name, (value, why) in ASSUMED.items()
                if name not in self.wanted.given
            ],
            "warnings": list(self.warnings),
        }

    def _tooth(self) -> dict[str, Any]:
        center = self.center
        depths = [share * center.depth for share in SHARES]
        return {
            "y_mm": self.side * center.driving.y,
            "x_mm": center.x,
            "land_hole_mm": land(center, center.hole_radius),
            "land_mid_mm": land(center, center.mid_radius),
            "land_od_mm": land(center, center.outer_radius),
            "tip_angle_deg": self.tip_angle,
            "tooth_height_mm": center.depth - self.tip_loss,
            "tip_loss_mm": self.tip_loss,
            "tip_loss_hole_mm": tip_drop(center, center.hole_radius),
            "face_depth_mm": face_depth(center),
            "face_depth_od_mm": face_depth(center, center.outer_radius),
            "thickness_mm": [thickness(center, center.mid_radius, u) for u in depths],
            "thickness_od_mm": [thickness(center, center.outer_radius, u) for u in depths],
            "root_thickness_mm": root_thickness(center),
            "wall_clear": self.wall_clear,
        }

    def _body(self) -> dict[str, Any]:
        center = self.center
        inner, outer = face_span(center, 0.0)
        return {
            "core_radius_mm": core_radius(center),
            "core_radius_root_mm": core_radius(center, center.depth),
            "web_mm": core_radius(center) - center.hole_radius,
            "hole_open_to_mm": hole_open_to(center),
            "face_inner_mm": inner,
            "face_outer_mm": outer,
            "section_area_half_mm2": section_area(center, center.depth / 2),
            "face_area_mm2": section_area(center, 0.0),
            "bore_mm": bore_for_two_settings(center),
            "flute_mm": least_flute(center),
            "diameter_mm": center.diameter,
            "hole_mm": center.hole,
            "cutter_mm": center.cutter,
            "depth_mm": center.depth,
            "teeth": center.teeth,
            "height_offset_mm": center.driving.z,
            "corner_radius_mm": center.corner_radius,
            "overshoot_mm": self.wanted.overshoot,
            "rotation": self.wanted.rotation,
        }

    def _at(self, radius: float) -> dict[str, Any]:
        center = self.center
        return {
            "radius_mm": radius,
            "land_mm": land(center, radius),
            "tip_loss_mm": tip_drop(center, radius),
            "tip_angle_deg": tip_angle(center, radius),
            "thickness_mm": [thickness(center, radius, share * center.depth) for share in SHARES],
        }


def hole_open_to(center: ToothedCenter) -> float:
    """Depth down to which the pockets break into the hole: √(a² - (Y - r₀)²) - (a - h), 0 where they do not (mm)."""
    depths = []
    for setting in center.settings:
        reach = sqrt(max(center.hole_radius**2 - max(setting.z, 0.0) ** 2, 0.0))
        if hypot(max(wall_at(center, setting, 0.0), 0.0), max(setting.z, 0.0)) >= center.hole_radius:
            depths.append(0.0)
        elif setting.y <= reach:
            depths.append(center.depth)
        else:
            depths.append(sqrt(center.cutter_radius**2 - (setting.y - reach) ** 2) - center.x)
    return max(depths)


def answer(wanted: Wanted) -> Answer:
    """Work everything out. Raises CenterInputError for what cannot be cut."""
    center, choices = build(wanted)
    system = wanted.system
    strong = strength(wanted, center)
    for_errors, for_strength = land_for_errors(center, system), land_for_strength(center, strong)
    warnings = shape_warnings(wanted, center, for_errors) + strength_warnings(wanted, strong, for_strength)
    return Answer(
        wanted,
        center,
        tuple(choices),
        tuple(schedule(center, wanted.reverse, system)),
        tuple(sensitivity(center, system)),
        strong,
        max(for_errors, for_strength),
        tuple(warnings),
    )
