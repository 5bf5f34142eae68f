"""The one place that joins figures, rules and answer."""

from advisor.advice.advise import Advice, advise, default_engine

__all__ = ["Advice", "advise", "default_engine"]
