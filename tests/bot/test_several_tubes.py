"""Two tubes give twice the UV in every question, and are heard in free words."""

import pytest

from bot.ask import ask
from bot.language.hearing import FactName
from bot.preferences import Preferences
from bot.questions.setup.told import heard_in
from bot.reply import Reply

_TOLD = "tube:12% reflector:polished screen:none animal:bearded dragon"


def _value(reply: Reply, name: str) -> tuple[float, float, float]:
    (found,) = [value for value in reply.values if value.name == name]
    return found.low, found.best, found.high


def test_two_tubes_give_twice_the_uv_at_a_place(anyone: Preferences) -> None:
    one, two = (ask(f"uvi distance:20in {_TOLD}{n}", anyone) for n in ("", " tubes:2"))
    assert _value(two, "uvi")[1] == pytest.approx(2.0 * _value(one, "uvi")[1], rel=1e-3)


def test_two_tubes_hang_farther_away_and_a_gap_brings_them_nearer(anyone: Preferences) -> None:
    one, two, apart = (
        _value(ask(f"distance {_TOLD} length:22in{n}", anyone), "distance")
        for n in ("", " tubes:2", " tubes:2 gap:30cm")
    )
    assert one[0] < apart[0] < two[0]
    assert one[2] < apart[2] < two[2]


def test_the_table_of_tubes_and_the_plan_know_of_two(anyone: Preferences) -> None:
    one, two = (
        ask(f"tube distance:24in screen:none animal:bearded dragon{n}", anyone)
        for n in ("", " tubes:2")
    )
    name = "uvi_12_polished"
    assert _value(two, name)[1] == pytest.approx(2.0 * _value(one, name)[1], rel=1e-3)
    box = "plan animal:bearded dragon enclosure:48x24x36in lid:full mesh tube:12%"
    plans = [ask(f"{box} reflector:polished{n}", anyone) for n in ("", " tubes:2")]
    assert any("2 × T5 HO" in step for step in plans[1].steps)
    assert plans[0].answer != plans[1].answer


@pytest.mark.parametrize("units", ["in", "cm"])
def test_readings_of_two_tubes_are_those_of_both(units: str, anyone: Preferences) -> None:
    read = "4.2 at 12 in, 2.9 at 15 in" if units == "in" else "4.2 at 30 cm, 2.9 at 38 cm"
    one, two = (
        _value(ask(f"meter readings:{read} animal:bearded dragon{n}", anyone), "distance")
        for n in ("", " tubes:2")
    )
    assert two == pytest.approx(one, rel=1e-6)


@pytest.mark.parametrize("text", ["0", "5", "1.5", "many"])
def test_what_is_no_number_of_tubes_is_refused(text: str, anyone: Preferences) -> None:
    reply = ask(f"distance {_TOLD} tubes:{text}", anyone)
    assert reply.status == "problem"
    assert "tubes" in reply.answer


@pytest.mark.parametrize(
    ("said", "count"),
    [
        ("two 12% tubes", 2),
        ("i have two t5s, 12% each", 2),
        ("a pair of 12% tubes", 2),
        ("dual t5 ho fixture 12%", 2),
        ("double fixture with 12% tubes", 2),
        ("twin t5 hood, 6%", 2),
        ("2x 12% uvb", 2),
        ("2 x 39w t5 12%", 2),
        ("12% t5 x2", 2),
        ("both tubes are 12%", 2),
        ("3 12% tubes", 3),
        ("quad t5 fixture 6%", 4),
        ("dual fixture but only one 12% tube in it", 1),
        ("double hood, one tube, 12%", 1),
        ("i dont have two tubes, just a 12%", 1),
        ("2 ft 12% tube", 1),
        ("4ft 12% tube", 1),
        ("two leopard geckos and a 6% tube", 1),
        ("2 halogen bulbs and a 12% t5", 1),
        ("4x2x2 with a 12% t5", 1),
        ("my 2 year old dragon has a 12% tube", 1),
        ("12% tube, 2 inches above the mesh", 1),
    ],
)
def test_several_tubes_are_heard_in_words(said: str, count: int) -> None:
    found = [fact.value for fact in heard_in(said).facts if fact.name is FactName.TUBES]
    assert found == ([count] if count > 1 else [])


def test_two_tubes_in_a_question_get_their_own_distance(anyone: Preferences) -> None:
    said = "i have two t5s, 12% each, polished reflector no mesh, how far for my bearded dragon"
    reply = ask(f"ask {said}", anyone)
    typed = ask(f"distance {_TOLD} tubes:2", anyone)
    assert reply.values == typed.values
    assert reply.table == typed.table
    (row,) = [row.text for row in reply.rows if row.label == "Tube"]
    assert "2 × T5 HO" in row
    assert any("Their UV adds" in one.text for one in reply.rows)


def test_two_tubes_in_a_set_up_are_not_judged_as_one(anyone: Preferences) -> None:
    said = "bearded dragon, two 12% t5 side by side, polished, 14 in, no mesh, basking 100, cool 78"
    reply = ask(f"check {said}", anyone)
    assert reply.table is not None
    (uv,) = [row for row in reply.table.rows if row[0] == "UV"]
    assert uv[1] == "change"
    assert any("2 tubes" in text for text in reply.why)
    assert _value(reply, "uvi")[1] > 9.0


@pytest.mark.parametrize(
    ("said", "across"),
    [
        ("12% tube lies across the tank the short way", True),
        ("the uvb runs front to back", True),
        ("my t5 12% is mounted sideways", True),
        ("12% tube along the back, he runs across the tank", False),
        ("he sleeps sideways, 12% tube at 16 in", False),
        ("12% tube, 16 in to his back", False),
    ],
)
def test_a_tube_that_lies_across_is_heard(said: str, across: bool) -> None:
    found = [fact for fact in heard_in(said).facts if fact.name is FactName.ACROSS]
    assert bool(found) is across


def test_a_tube_that_lies_across_is_answered(anyone: Preferences) -> None:
    reply = ask("ask my tube lies across the enclosure the short way, is that ok", anyone)
    assert reply.command == "guide"
    assert "Along or across" in reply.asked
    told = "bearded dragon, 12% t5 22in long lies across the tank, polished, no mesh, 17in to back"
    checked = ask(f"check {told}", anyone)
    assert checked.table is not None
    (uv,) = [text for text in checked.why if text.startswith("UV: ")]
    assert "only straight under it, as it lies across" in uv
