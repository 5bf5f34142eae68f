"""Which tool and how it is ground; speeds of the printed tables below the ceiling; what the cut asks of the machine.

The tools of the hand are common practice, no source; the speeds are those of the tables in their rows.
"""

from __future__ import annotations

import math
from typing import Any

import pytest

from advisor.advice.tools import tables, tool_of
from tests.advice.bench import PRACTICE, kept_advice, limit, situation_of


def tool(text: str, start: float = 600.0, ceiling: float = 1000.0, verdict: str = "go") -> dict[str, Any]:
    base = kept_advice("SPINDLE; hold.kit=[spur-drive]")
    rate = base.speed._replace(start=start, ceiling=limit("rim-speed", ceiling))
    return tool_of(base._replace(situation=situation_of(text), speed=rate, verdict=verdict))


def test_what_is_not_to_be_mounted_gets_no_tool() -> None:
    assert tool("SPINDLE", verdict="do-not-mount") == {"kind": "none", "why": "it is not to be mounted"}


def test_a_hand_tool_comes_with_its_bevel_its_never_and_the_load_of_the_cut() -> None:
    """100 N at 40 mm are 4 N·m; at 600 rpm and 80 mm they draw 251 W; edges travel π·80 mm·n."""
    text = "SPINDLE; work.diameter=80mm; work.length=300mm; cut.force=100N; machine.power=500W"
    found = tool(text)
    assert found.pop("why").startswith("a broad edge ")
    assert found == {
        "kind": "spindle roughing gouge",
        "source": PRACTICE,
        "bevel_deg": [40.0, 45.0],
        "never": "on side-grain bowls: its thin tang snaps",
        "edge_speed_m_per_min": [pytest.approx(math.pi * 0.08 * 600), pytest.approx(math.pi * 0.08 * 1000)],
        "force_n": 100.0,
        "torque_nm": pytest.approx(4.0),
        "power_w": pytest.approx(4.0 * 2 * math.pi * 10),
        "motor_w": 500.0,
        "motor_share": pytest.approx(4.0 * 2 * math.pi * 10 / 500),
    }
    unknown = tool("SPINDLE; cut.force=100N")
    assert {"motor_w", "motor_share", "coolant", "heat_cap_c", "speeds"}.isdisjoint(unknown)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("SPINDLE; work.diameter=149mm; work.length=298mm", "spindle roughing gouge"),
        ("SPINDLE; work.diameter=150mm; work.length=300mm", "bowl gouge"),  # thick, and no longer than twice that
        ("SPINDLE; work.diameter=150mm; work.length=301mm", "spindle roughing gouge"),
        ("SPINDLE; work.diameter=150mm; work.length=300mm; cut.operation=shaping", "spindle gouge"),
        ("SPINDLE; work.grain=; work.diameter=90mm; work.length=90mm", "bowl gouge"),  # it may be a disc
        ("SPINDLE; work.grain=; work.diameter=90mm; work.length=91mm", "spindle roughing gouge"),
        ("SPINDLE; work.grain=along; work.diameter=90mm; work.length=30mm", "spindle roughing gouge"),
        ("SPINDLE; work.grain=; work.diameter=90mm; work.length=30mm; cut.operation=shaping", "spindle gouge"),
        ("BOWL", "bowl gouge"),
        ("SPINDLE; cut.operation=hollowing", "ring or hook tool or a round-nose scraper"),
        ("SPINDLE; cut.operation=sanding", "abrasive in folded paper"),
        ("BOWL; cut.operation=sanding", "abrasive in folded paper"),
        ("PLASTIC", "round-nose scraper with zero or negative rake"),
        ("PLASTIC; cut.operation=sanding", "wet abrasive"),
        ("STONE", "stone scraper, square, no relief, flipped for its second edge"),
        ("STONE; cut.operation=sanding", "wet abrasive"),  # as for anything else
        ("PLASTIC; work.material=brass", "hand graver on a close steel rest"),
        ("PLASTIC; work.material=flubberwood", "round-nose scraper with zero or negative rake"),  # nobody knows it
        ("BOWL; cut.operation=balancing", "none"),
    ],
)
def test_the_hand_tool_is_that_of_the_material_the_grain_the_cut_and_the_size(text: str, kind: str) -> None:
    assert tool(text)["kind"] == kind


@pytest.mark.parametrize(
    ("text", "never"),
    [
        ("BOWL", "bowl-gouge"),
        ("SPINDLE; work.state=round", "spindle-gouge"),
        ("BOWL; work.state=finished", "bowl-gouge"),  # or a scraper: what is named at length counts
        ("STONE", "stone-scraper"),  # and no scraper for wood
    ],
)
def test_what_must_never_be_done_with_it_is_that_of_the_tool_named(text: str, never: str) -> None:
    from advisor.models.tooling import hand_tools

    assert tool(text)["never"] == next(entry.never for entry in hand_tools() if entry.id == never)


def test_what_has_no_bevel_and_no_name_says_neither() -> None:
    found = tool("BOWL; cut.operation=sanding")
    assert set(found) == {"kind", "why", "source"}
    assert found["why"].startswith("rest off; hand trailing")


TOOLPOST = "PLASTIC; work.material=acetal; cut.tool=carriage"


def test_a_toolpost_tool_has_angles_nose_feeds_and_chip_of_the_fullest_table() -> None:
    found = tool(TOOLPOST)
    record = situation_of(TOOLPOST).material
    assert record is not None
    first = {
        "rake_deg": [0.0, 5.0],
        "clearance_deg": [6.0, 8.0],
        "nose_mm": [0.5, 1.5],
        "feed_mm": [0.1, 0.38],
        "feed_finish_mm": 0.1,
    }
    told = {key: found[key] for key in (*first, "kind", "edge", "depth_mm", "chip_mm", "why", "source")}
    assert told == {
        **first,
        "kind": "toolpost tool, polished",
        "edge": "polished",
        "depth_mm": 1.0,  # the depth and feed that the force is reckoned with where nobody says
        "chip_mm": 0.15,
        "why": record.tool,
        "source": PRACTICE,
    }
    assert found["tables"] == [
        {"table": "Acetal", "source": PRACTICE, "note": "", **first},
        {
            "table": "Acetal, printed table",
            "source": found["tables"][1]["source"],
            "note": "depth 4 mm",
            "feed_mm": [0.25, 0.25],
        },
    ]
    assert found["tables"][1]["source"].startswith("Carvill")
    assert (found["coolant"], found["heat_cap_c"]) == ("air", 90.0)


def test_depth_and_feed_are_those_of_the_person_where_they_were_said() -> None:
    found = tool(f"{TOOLPOST}; cut.depth=0.4mm; cut.feed=0.08mm/rev")
    assert (found["depth_mm"], found["chip_mm"]) == (0.4, 0.08)


def test_one_table_is_not_compared_with_itself() -> None:
    found = tool(f"{TOOLPOST}; work.material=ABS")
    assert "tables" not in found
    assert (found["rake_deg"], found["source"]) == ([25.0, 30.0], PRACTICE)


def test_a_tool_of_which_no_table_says_the_edge_is_a_toolpost_tool() -> None:
    found = tool(f"{TOOLPOST}; work.material=PVC")
    assert (found["kind"], found["edge"]) == ("toolpost tool", "")


def test_each_table_gives_its_spindle_speeds_clipped_to_the_ceiling() -> None:
    """n = 1000·v/(π·D): 50 m/min at 40 mm are 398 rpm, 150 are 1194, 300 are 2387."""
    found = {(entry["table"], entry["tool"]): entry for entry in tool(TOOLPOST, ceiling=1000.0)["speeds"]}
    assert list(found) == [
        ("Acetal", "steel"),
        ("Acetal", "carbide"),
        ("Acetal, printed table", "steel"),
        ("Acetal, printed table", "carbide"),
    ]
    assert found["Acetal", "steel"] == {
        "tool": "steel",
        "table": "Acetal",
        "source": PRACTICE,
        "m_per_min": [50.0, 150.0],
        "rpm": [pytest.approx(1000 * 50 / (math.pi * 40)), 1000.0],
        "clipped": True,
    }
    assert found["Acetal", "carbide"]["rpm"] == [1000.0, 1000.0]
    assert found["Acetal, printed table", "steel"]["clipped"] is False
    exact = 1000 * 150 / (math.pi * 40)
    assert tool(TOOLPOST, ceiling=exact)["speeds"][0]["clipped"] is False


def test_a_kind_of_tool_that_a_table_does_not_have_has_no_speed() -> None:
    kinds = [entry["tool"] for entry in tool("STONE")["speeds"]]
    assert kinds == ["carbide"]


def test_speeds_are_those_at_the_diameter_where_the_tool_cuts() -> None:
    speeds = tool(f"{TOOLPOST}; cut.diameter=20mm", ceiling=1e6)["speeds"]
    assert speeds[0]["rpm"][0] == pytest.approx(1000 * 50 / (math.pi * 20))


def test_wood_by_hand_goes_by_feel_and_from_the_toolpost_by_its_table() -> None:
    assert "speeds" not in tool("SPINDLE")
    found = tool("SPINDLE; work.state=round; cut.tool=carriage")
    assert [entry["m_per_min"] for entry in found["speeds"]] == [[300.0, 600.0], [300.0, 600.0]]
    assert found["why"] == "rake shears the fibers; a flat edge tears them"
    assert found["kind"] == "toolpost tool, honed"


@pytest.mark.parametrize("operation", ["sanding", "drilling", "balancing"])
def test_what_shapes_its_edge_as_it_goes_has_no_speed_of_the_edge_and_no_load(operation: str) -> None:
    found = tool(f"PLASTIC; cut.operation={operation}")
    assert {"speeds", "edge_speed_m_per_min", "force_n"}.isdisjoint(found)
    assert (found["coolant"], found["heat_cap_c"]) == ("air", 80.0)  # heat still counts


def test_what_has_no_coolant_on_record_is_cut_dry_and_what_bears_heat_has_no_cap() -> None:
    assert tool("PLASTIC; work.material=ivory")["coolant"] == "dry"
    assert tool("PLASTIC; work.material=soapstone")["coolant"] == "wet"
    assert "heat_cap_c" not in tool("STONE")


@pytest.mark.parametrize(
    ("text", "groups"),
    [
        ("SPINDLE; work.state=round", ["hardwood"]),
        ("SPINDLE; work.state=round; work.material=loblolly pine", ["softwood"]),
        ("BOWL", ["hardwood", "end-grain"]),  # half of every turn meets end grain
        ("BOWL; work.material=loblolly pine", ["softwood", "end-grain"]),
        ("SPINDLE; cut.operation=hollowing", ["end-grain", "hardwood"]),
        ("SPINDLE; cut.operation=drilling", ["end-grain", "hardwood"]),
        ("BOWL; work.condition=[oily]", ["dense-wood"]),
    ],
)
def test_wood_meets_the_tables_of_its_group_and_of_the_grain_it_shows(text: str, groups: list[str]) -> None:
    assert [row.group for row in tables(situation_of(text))] == groups


def test_a_material_of_which_nothing_is_known_gets_the_general_angles_without_a_speed() -> None:
    (row,) = tables(situation_of("PLASTIC; work.material=flubberwood"))
    assert (row.group, row.steel, row.carbide, row.source) == ("general", None, None, "memory")
    assert tool("PLASTIC; work.material=flubberwood; cut.tool=carriage")["rake_deg"] == [0.0, 0.0]


def test_a_table_without_angles_comes_behind_the_record_of_the_material_and_keeps_its_speeds() -> None:
    first, second = tables(situation_of("PLASTIC; work.material=polystyrene"))
    assert (first.group, first.rake, second.rake) == ("polystyrene", (0.0, 5.0), None)
    assert first.source == "carvill-5-2-7"  # of its speed, before that of its rake
    assert [row.rake is None for row in tables(situation_of("PLASTIC; work.material=nylon"))] == [False, False, True]


def test_what_no_table_has_is_ground_by_its_own_record() -> None:
    record = situation_of("PLASTIC; work.material=bronze").material
    assert record is not None
    (row,) = tables(situation_of("PLASTIC; work.material=bronze"))
    assert row._asdict() == {
        "group": "bronze",
        "title": record.title,
        "materials": ("bronze",),
        "rake": (0.0, 5.0),
        "clearance": (6.0, 10.0),
        "nose": (0.4, 0.8),
        "edge": "keen",
        "steel": (20.0, 40.0),
        "carbide": (60.0, 120.0),
        "feed_rough": (0.1, 0.3),
        "feed_finish": 0.05,
        "note": "",
        "source": "memory",
    }


def test_what_a_record_leaves_out_is_the_general_angle_and_the_source_that_of_what_it_has() -> None:
    (row,) = tables(situation_of("PLASTIC; work.material=mdf"))
    assert (row.rake, row.clearance, row.nose, row.feed_rough) == ((0.0, 0.0), (8.0, 12.0), (0.5, 1.0), (0.05, 0.2))
    (palm,) = tables(situation_of("PLASTIC; work.material=tagua nut"))
    assert (palm.rake, palm.source) == ((-5.0, 0.0), "memory")  # of the rake; the record itself is common practice
    casting = tables(situation_of("PLASTIC; work.material=urethane casting"))[0]
    assert casting.source == "memory"  # of the speed
    assert row.source == "common-practice"
