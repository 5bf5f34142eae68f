"""Advice beside the lathe: may it be mounted, what holds it, how fast, how hard may the tailstock press."""

__version__ = "0.1.0"
