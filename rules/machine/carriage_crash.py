"""The carriage of a metal lathe is in the way of everything.

What it looks at   work on a metal-cutting lathe
Why it matters     jaw corners, dog tails and carriage meet at speed, and an engaged feed does not wait
What to do         walk it through by hand; lock the carriage clear
Does not apply     wood lathes
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact

rule = Rule(
    when=fact("machine", machine="metal-lathe"),
    effect=Effect.CHECK,
    says=(
        "Turn the work once round by hand with the carriage and the rest at both ends of their travel; feed levers out."
    ),
)
