"""A plain taper walks out of the spindle without thrust.

What it looks at   a hold that sits in a taper, the tailstock away, no drawbar stated
Why it matters     a self-holding taper carries torque only while it is pressed home
What to do         fit a drawbar, bring the tailstock up, or use a hold on the nose
Does not apply     threaded, cam-lock and bolted noses; work under tailstock thrust
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("machine", nose="taper-only", tail="away", drawbar=none_of("yes")),
    effect=Effect.ASK_FIRST,
    says="A plain taper with no thrust on it and no drawbar: side load walks it out of the spindle.",
    do="Fit a drawbar or bring the tailstock up.",
    opens=("machine.drawbar", "hold.tail.kind"),
)
