"""Everything that must never come out, whatever goes in: FORBIDDEN, each with its reason."""

from tests.whole.forbidden import holds, speeds, verdicts, words
from tests.whole.forbidden.kinds import FORBIDDEN, Answer, Forbidden

__all__ = ["FORBIDDEN", "Answer", "Forbidden", "holds", "speeds", "verdicts", "words"]
