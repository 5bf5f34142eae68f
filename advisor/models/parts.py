"""The parts of an answer beside verdict, reasons and cautions, which are always in it."""

WHOLE = ("holding", "speed", "thrust", "centers", "tool")
