"""Who does not know the fixture or the screen is told every way it may be, and guessed nothing."""

import pytest

from bot.ask import ask
from bot.language.unsure import SomeMesh, Unsure, read_some_mesh, read_unsure
from bot.preferences import Preferences
from bot.reply import Reply

UNSURE = "distance tube:12% reflector:not sure screen:mesh animal:bearded dragon"


def single(line: str, name: str, preferences: Preferences) -> tuple[float, float, float]:
    found = next(v for v in ask(line, preferences).values if v.name == name)
    return found.low, found.best, found.high


def figure(reply: Reply, name: str) -> tuple[float, float, float]:
    found = next(v for v in reply.values if v.name == name)
    return found.low, found.best, found.high


@pytest.mark.parametrize("text", ["not sure", "I don't know", "idk", "?", "Unknown.", "DUNNO"])
def test_not_knowing_is_read(text: str) -> None:
    assert read_unsure(text) == Unsure(text)
    assert read_some_mesh(text) == Unsure(text)


@pytest.mark.parametrize("text", ["mesh", "screen top", "over the mesh"])
def test_a_mesh_of_which_no_more_is_known_is_read(text: str) -> None:
    assert read_some_mesh(text) == SomeMesh(text)


@pytest.mark.parametrize("text", ["plain", "45%", "none", "no", ""])
def test_what_is_known_is_left_to_its_own_reader(text: str) -> None:
    assert read_unsure(text) is None
    assert read_some_mesh(text) is None


def test_the_start_is_that_of_the_strongest_way(anyone: Preferences) -> None:
    low, start, high = figure(ask(UNSURE, anyone), "distance")
    line = "distance tube:12% reflector:{} screen:{} animal:bearded dragon"
    ways = [
        single(line.format(reflector, screen), "distance", anyone)
        for reflector in ("polished", "plain")
        for screen in ("30%", "45%")
    ]
    assert start == max(way[1] for way in ways)
    assert high == max(way[2] for way in ways)
    assert low <= min(way[0] for way in ways)


def test_each_row_is_what_the_single_question_answers(anyone: Preferences) -> None:
    table = ask(UNSURE, anyone).table
    assert table is not None
    assert [row[0].partition(",")[0] for row in table.rows] == 3 * ["polished reflector"] + 3 * [
        "plain fixture"
    ]
    line = "distance tube:12% reflector:polished screen:45% animal:bearded dragon"
    assert table.rows[1][1] in " ".join(row.text for row in ask(line, anyone).rows)


def test_a_way_that_will_not_do_is_named(anyone: Preferences) -> None:
    table = ask(UNSURE, anyone).table
    assert table is not None
    assert table.rows[-1][1] == "too close: do not use"


def test_nothing_between_is_a_way_only_where_no_mesh_was_told(anyone: Preferences) -> None:
    unsure = ask(UNSURE.replace("mesh", "not sure"), anyone).table
    mesh = ask(UNSURE, anyone).table
    assert unsure is not None
    assert mesh is not None
    assert len(unsure.rows) == len(mesh.rows) + 2
    assert "no screen" in unsure.rows[0][0]


def test_the_steps_say_how_to_find_out_and_what_to_ask_then(anyone: Preferences) -> None:
    steps = ask(UNSURE, anyone).steps
    assert any("look up into the fixture" in step for step in steps)
    assert any("how much UV the mesh blocks" in step for step in steps)
    asked = next(step for step in steps if "ask again" in step).partition("such as: ")[2]
    assert ask(asked, anyone).status == "ok"


@pytest.mark.parametrize(
    ("distance", "told"),
    [
        ("4in", "Dangerous either way: aim for 3 to 5."),
        ("60in", "Far too low for 3 to 5 either way."),
        ("14in", "Maybe too much"),
        ("16in", "Maybe too little"),
        ("10in", "Maybe too much"),
    ],
)
def test_a_given_distance_is_judged_as_far_as_every_way_agrees(
    distance: str, told: str, anyone: Preferences
) -> None:
    line = f"uvi tube:12% reflector:idk screen:mesh animal:beardie distance:{distance}"
    assert told in ask(line, anyone).answer


def test_a_given_distance_is_told_where_to_hang_it_as_distance_does(anyone: Preferences) -> None:
    start = ask(UNSURE, anyone).answer.partition("For now: ")[2].partition(" to its")[0]
    line = "uvi tube:12% reflector:not sure screen:mesh animal:bearded dragon distance:{}"
    for distance in ("4in", "12in", "60in"):
        assert any(f"hang it {start} from" in s for s in ask(line.format(distance), anyone).steps)
    (there, *_) = ask(line.format(start.partition(" (")[0]), anyone).steps
    assert there.startswith("Leave it there")


def test_what_may_be_too_much_by_the_lamps_doubt_is_said(anyone: Preferences) -> None:
    line = "uvi tube:12% reflector:not sure screen:mesh animal:bearded dragon distance:12in"
    line += " length:24W"
    answer = ask(line, anyone).answer
    assert "UV index 0.9 to 5.3" in answer
    assert "Maybe too little, or too much with a strong lamp: aim for 3 to 5." in answer


def test_a_place_too_near_for_any_tube_is_said_to_be(anyone: Preferences) -> None:
    line = "uvi tube:12% reflector:idk screen:mesh animal:beardie distance:4in"
    assert "Too close for any tube" in ask(line, anyone).answer


def test_readings_hold_what_is_not_known(anyone: Preferences) -> None:
    line = "distance tube:12% reflector:not sure screen:mesh readings:4.2 at 12in animal:beardie"
    sure = "distance readings:4.2 at 12in animal:beardie"
    assert single(line, "distance", anyone) == single(sure, "distance", anyone)


def test_what_was_not_told_is_still_asked_for(anyone: Preferences) -> None:
    reply = ask("distance tube:12% animal:bearded dragon", anyone)
    assert reply.status == "problem"
    assert all("not sure" in step for step in reply.steps[:2])
