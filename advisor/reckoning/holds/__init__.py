"""What each of the thirty-five ways of holding stands, against what this cut asks. Rules give the verdict."""

from advisor.reckoning.holds.facts import hold_fact, lighter, reach_values
from advisor.reckoning.holds.margins import HoldFigures, Margin, hold_figures, hold_speed
from advisor.reckoning.holds.methods import BETWEEN_CENTERS, METHODS, SLIPS, TAKES_TAIL
from advisor.reckoning.holds.need import peak, tail_up

__all__ = [
    "BETWEEN_CENTERS",
    "METHODS",
    "SLIPS",
    "TAKES_TAIL",
    "HoldFigures",
    "Margin",
    "hold_fact",
    "hold_figures",
    "hold_speed",
    "lighter",
    "peak",
    "reach_values",
    "tail_up",
]
