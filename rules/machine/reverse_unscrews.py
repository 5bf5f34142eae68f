"""A threaded nose unscrews in reverse.

What it looks at   a threaded spindle nose, reverse rotation, and no lock stated
Why it matters     friction tightens a right-hand thread forward and loosens it in reverse
What to do         run forward, or fit the lock screw or clamp that belongs to the nose and say so
Does not apply     cam-lock and bolted noses; a locked thread
Sources            common practice, no source
"""

from advisor.rulebook import Effect, Rule, fact, none_of

rule = Rule(
    when=fact("machine", nose="threaded", rotation="reverse", nose_lock=none_of("yes")),
    effect=Effect.DO_NOT_MOUNT,
    says="Reverse on a threaded nose without a lock: the chuck unscrews and leaves with the work.",
    do="Run forward, or lock the chuck on its thread.",
    hard=True,
    opens=("cut.rotation", "machine.nose_lock"),
)
