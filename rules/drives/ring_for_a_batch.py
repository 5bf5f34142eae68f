"""For many alike a toothed ring saves the seating.

What it looks at   end grain from 12 to 100 mm, dry and without checks, on four teeth
Why it matters     a ring marks little, needs no seating, stops when the thrust is taken off and lets go in a
                   catch
What to do         a toothed ring with a sprung point; shaping cuts, not roughing of squares
Does not apply     wet, checked or large ends; side grain
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, between, fact, none_of

rule = Rule(
    when=fact("drive", drive="four", grain=none_of("across"), wet="no", checked="no", end_mm=between(12.0, 100.0)),
    effect=Effect.NOTE,
    says=(
        "Many alike, or a drive that is to let go in a catch: a toothed ring with a sprung point. It shapes; "
        "it does not rough squares."
    ),
)
