"""Fine titanium chips burn like magnesium.

What it looks at   titanium with a water or ordinary powder extinguisher, or none
Why it matters     water and ordinary powder feed it
What to do         class D powder or dry sand within reach
Does not apply     titanium with class D at hand; magnesium, which is refused for good
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, one_of

rule = Rule(
    when=fact("refusal", token="no-class-D", hard="no", extinguisher=one_of("water", "powder", "none")),
    effect=Effect.DO_NOT_MOUNT,
    says="{title} without class D powder or dry sand at hand.",
    do="{step}, or get class D powder.",
    opens=("machine.extinguisher", "work.material"),
)
