"""The whole shop plan of `advisor center --make`, for drive center and tail center."""

from __future__ import annotations

from typing import Any, NamedTuple

from advisor.centers.answer import Answer, answer
from advisor.centers.make_inputs import Making
from advisor.centers.make_steps import inspection, ream_allowance, scrap_test, shank_diameter, stages
from advisor.centers.make_tail import TailCenter, tail_center, work_end
from advisor.centers.metals import CuttingRate, growth, metal, rates, taper
from advisor.centers.wording import about, length, two_figures
from advisor.data.tables import Row
from advisor.units import System

WARM = 25.0
"""Rise of a part just machined over a cool shop, kelvin; too hot to hold is about 35 (memory)."""
HEAD_LOW, HEAD_HIGH = 0.25, 0.5
"""Head as a share of the work's smallest end (common practice, no source)."""
CAUTIONS = (
    "Eye protection at lathe, mill, drill and stone; no gloves, rings, long sleeves or loose hair near a turning "
    "spindle.",
    "Chuck key out, work clamped, guards shut, spindle stopped before measuring or brushing chips; never chips by "
    "hand.",
    "Striking a hardened end: soft mallet only, or it throws splinters.",
    "Quenching and hardening: hot oil burns; keep a lid at hand and follow the local rules, or have it done.",
    "This does not replace the machine's manual, the shop's rules, local codes or a licensed person's word.",
)


class Plan(NamedTuple):
    """Everything needed to make one drive center and the tail center that goes with it."""

    making: Making
    answer: Answer
    metal: Row
    rates: tuple[CuttingRate, ...]
    tail: TailCenter

    def as_dict(self) -> dict[str, Any]:
        """The plan in plain words; lengths in mm."""
        center = self.answer.center
        return {
            "metal": {
                "name": self.metal.text("metal"),
                "title": self.metal.text("title"),
                "source": self.metal.text("source"),
            },
            "blank_mm": center.diameter,
            "drill_mm": center.hole - ream_allowance(center.hole),
            "speeds": [rate.as_dict() for rate in self.rates],
            "heat": self._heat(),
            "shank": self._shank(),
            "point": self.making.point,
            "steps": [{"stage": stage, "text": text} for stage, text in stages(self.making, self.answer)],
            "inspection": inspection(self.answer),
            "test": scrap_test(self.making),
            "tail": self.tail.as_dict(),
            "warnings": [*self._head_size(), *self.answer.warnings],
            "cautions": list(CAUTIONS),
            "center": self.answer.as_dict(),
        }

    def _heat(self) -> dict[str, float]:
        center = self.answer.center
        return {
            "rise_k": WARM,
            "diameter_growth_um": growth(self.metal, center.diameter, WARM) * 1000,
            "hole_growth_um": growth(self.metal, center.hole, WARM) * 1000,
            "diameter_growth_tenths": growth(self.metal, center.diameter, WARM) / 0.00254,
        }

    def _shank(self) -> dict[str, Any]:
        if self.making.shank == "straight":
            return {"kind": "straight", "diameter_mm": shank_diameter(self.making)}
        size = taper(self.making.shank_taper)
        return {
            "kind": "taper",
            "number": size.number,
            "large_diameter_mm": size.large_diameter,
            "half_angle_deg": size.half_angle,
        }

    def _head_size(self) -> list[str]:
        end, head, system = work_end(self.making), self.answer.center.diameter, self.answer.system
        if HEAD_LOW * end <= head <= HEAD_HIGH * end:
            return []
        return [
            f"Head of {length(head, system)} for an end of {length(end, system)}: a quarter to a half of the end is "
            "usual, "
            "with at least 3 mm of wood outside the teeth."
        ]

    def lines(self) -> list[str]:
        """The plan as plain lines."""
        plan, system = self.as_dict(), self.answer.system
        heat = plan["heat"]
        rows = [
            f"Shop plan: toothed drive center and {self.making.tail} tail center, {plan['metal']['title']}",
            *_block("Mind first", [f"! {text}" for text in plan["warnings"]]),
            *_block("Order of work", [f"{s['stage']:<6} {s['text']}" for s in plan["steps"]]),
            *_block(
                "Speeds (range of the table; a reamer at half the drilling speed)",
                [_rate_line(r, system) for r in self.rates],
            ),
            *_block("Heat", [_heat_line(heat)]),
            *_block("Inspection, cold", plan["inspection"]),
            *_block("Test on a scrap blank", plan["test"]),
            *_block("Tail center that cannot split the work", plan["tail"]["steps"]),
            *_block("Cautions", plan["cautions"]),
            "",
        ]
        from advisor.centers.text import lines

        return [*rows, *lines(self.answer)]


def _block(title: str, lines: list[str]) -> list[str]:
    return ["", title, *[f"  {line}" for line in lines]] if lines else []


def _rate_line(rate: CuttingRate, system: System) -> str:
    low, high = two_figures(rate.rpm(rate.low)), two_figures(rate.rpm(rate.high))
    table = f"{low} rpm" if low == high else f"{low} to {high} rpm"
    start = two_figures(rate.rpm(rate.start))
    return f"{rate.operation:<9} {about(rate.diameter, system):>9}: start at {start} rpm (table {table})"


def _heat_line(heat: dict[str, float]) -> str:
    return (
        f"Measure cool, under 25 deg C: {heat['rise_k']:.0f} K warm, the head reads "
        f"{heat['diameter_growth_um']:.1f} µm "
        f"({heat['diameter_growth_tenths']:.1f} tenths of a thousandth of an inch) large, the hole "
        f"{heat['hole_growth_um']:.1f} µm. Too hot to hold is 55 to 60 deg C."
    )


def plan(making: Making) -> Plan:
    """Work the plan out. Raises CenterInputError for what cannot be cut or is not in the tables."""
    row = metal(making.metal)
    worked = answer(making.wanted)
    center = worked.center
    speeds = rates(
        row,
        center.diameter,
        center.hole,
        center.hole - ream_allowance(center.hole),
        carbide=making.tool == "carbide",
        light=making.lathe == "light",
    )
    return Plan(making, worked, row, tuple(speeds), tail_center(making))
