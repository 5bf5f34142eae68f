"""The methods are those that case files may name, each complete, each found under any of its names."""

import pytest

from advisor.models import methods
from advisor.sources import all_sources

BETWEEN_CENTERS = (
    "spur-drive two-spur-drive toothed-ring-drive cup-drive point-and-pin-drive square-socket-drive driving-dog "
    "mandrel friction-block"
)
SCREWED = "faceplate-screws waste-block-faceplate screw-chuck pin-chuck"
JAWED = (
    "jaws-on-tenon jaws-in-recess long-jaws rubber-button-jaws three-jaw four-jaw-independent soft-jaws collet "
    "collet-block split-bushing drill-chuck"
)
GLUED = "jam-chuck glue-block paper-joint double-sided-tape vacuum"
CLAMPED = "ring-clamp-plate sphere-cups offset-faceplate through-spindle clamped-faceplate keyed-stud"
AIDS = "steady-rest wrap tail-support"
FAMILY_IDS = {
    "between-centers": BETWEEN_CENTERS,
    "screwed": SCREWED,
    "jawed": JAWED,
    "fit-glue-suction": GLUED,
    "clamped": CLAMPED,
    "aid": AIDS,
}


@pytest.mark.parametrize("family", FAMILY_IDS)
def test_a_family_holds_exactly_the_methods_of_the_case_file(family: str) -> None:
    assert [entry.id for entry in methods.all_methods() if entry.family == family] == FAMILY_IDS[family].split()


def test_there_are_thirty_five_methods_and_three_aids() -> None:
    aids = [entry for entry in methods.all_methods() if entry.is_aid]
    assert (len(methods.all_methods()) - len(aids), len(aids)) == (35, 3)


def test_no_two_methods_share_a_name() -> None:
    names = [
        name
        for entry in methods.all_methods()
        for name in {word.lower().replace("-", " ") for word in (entry.id, entry.title, *entry.other_names)}
    ]
    assert sorted(names) == sorted(set(names))


def test_every_method_has_a_source() -> None:
    assert {entry.source for entry in methods.all_methods()} <= set(all_sources())


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        ("donut chuck", "ring-clamp-plate"),
        ("worm screw", "screw-chuck"),
        ("Carrier and catch plate", "driving-dog"),
        ("expansion hold", "jaws-in-recess"),
        ("jaws on tenon", "jaws-on-tenon"),
    ],
)
def test_a_method_is_found_under_its_other_names(name: str, expected: str) -> None:
    assert methods.method(name).id == expected


def test_an_unknown_method_names_the_nearest() -> None:
    with pytest.raises(KeyError, match="faceplate-screws"):
        methods.method("faceplate screw")


def test_a_name_without_a_neighbor_says_only_that() -> None:
    with pytest.raises(KeyError, match=r"is called 'qqqq'\"$"):
        methods.method("qqqq")


# Facts that every textbook of the trade repeats; each is looked for in the words of its method.
@pytest.mark.parametrize(
    ("method_id", "where", "fact"),
    [
        ("screw-chuck", "never", "reverse"),
        ("faceplate-screws", "never", "plasterboard"),
        ("spur-drive", "never", "bearings"),
        ("steady-rest", "never", "oval"),
        ("drill-chuck", "never", "drawbar"),
        ("jaws-in-recess", "limited_by", "wedge"),
        ("through-spindle", "never", "killed"),
        ("wrap", "limited_by", "no strength"),
        ("glue-block", "never", "wet wood"),
        ("vacuum", "needs", "20 inHg"),
    ],
)
def test_the_warning_a_method_is_known_for_is_there(method_id: str, where: str, fact: str) -> None:
    assert fact in getattr(methods.method(method_id), where)


def test_explain_names_everything_a_person_decides_by() -> None:
    text = methods.explain(methods.method("vacuum"))
    for part in ("Also called", "needs", "Marks", "gives out first", "Never", "Tailstock"):
        assert part in text
    assert "never a hold by itself" in methods.explain(methods.method("wrap"))


def test_the_list_has_a_name_and_a_title_for_each() -> None:
    listed = methods.list_methods()
    assert len(listed) == 38
    assert all(entry["name"] and entry["title"] for entry in listed)
