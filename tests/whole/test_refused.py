"""What must not be mounted is answered with why, and with nothing that reads like how."""

from advisor.report.terminal import lines
from tests.whole.answers import of

NOT_A_VALUE = "None of these is a value to run at: it must not be mounted."


def told(situation: str) -> str:
    return "\n".join(line.text for line in lines(of(situation), "piece", "metric"))


def test_a_refusal_gives_no_advice_on_holding_it_with_care() -> None:
    found = of("BOWL; hold.method=jaws-on-tenon; work.condition=[crack]; work.crack.runs=pith-to-rim")
    assert found["verdict"] == "do-not-mount"
    assert "hold-with-care" in found["fired"]
    assert "hold-with-care" not in {reason["rule"] for reason in found["reasons"]}


def test_the_same_advice_stands_where_the_piece_may_be_mounted() -> None:
    found = of("BOWL; hold.method=jaws-on-tenon")
    assert found["verdict"] != "do-not-mount"
    assert "hold-with-care" in {reason["rule"] for reason in found["reasons"]}


def test_its_limits_are_called_no_values_to_run_at() -> None:
    assert NOT_A_VALUE in told("SPINDLE; work.condition=[through-crack]")
    assert NOT_A_VALUE not in told("SPINDLE")


def test_a_hold_that_will_not_do_is_to_be_settled_before_its_speeds_and_thrust_are_used() -> None:
    settle = "settle this first, the rest goes by this hold"
    assert settle in " ".join(told("BOWL; hold.method=double-sided-tape").split())
    assert settle not in " ".join(told("BOWL; hold.method=faceplate-screws").split())
