"""What was moved by so much, numbers alone, and what is asked for once."""

from collections.abc import Iterator

import pytest

from bot.ask import ask
from bot.dialogue import START, Dialogue, turn
from bot.dialogue.moves import changed_in
from bot.preferences import Preferences
from bot.render.text import render_brief
from bot.reply import Reply

ANYONE = Preferences()
CHECKED = "check: bearded dragon, 12% T5 at 20in, no mesh, mirror, basking 95F, cool 85F"
UNDER_MESH = "uvi tube:12% reflector:plain screen:none distance:40cm animal:bearded dragon"


def replies(*lines: str, packed: bool = False) -> Iterator[Reply]:
    """Yield the answer to each line; packed: as a page carries the conversation."""
    dialogue = START
    for line in lines:
        reply, dialogue = turn(dialogue, line, ANYONE, ask)
        assert reply is not None
        dialogue = Dialogue.unpacked(dialogue.packed()) if packed else dialogue
        yield reply


def last(*lines: str, packed: bool = False) -> Reply:
    return list(replies(*lines, packed=packed))[-1]


@pytest.mark.parametrize("packed", [False, True])
@pytest.mark.parametrize(
    ("moved", "now"),
    [
        ("i moved the log up 5 inches", "distance:15 in"),
        ("raised the tube 3 in", "distance:23 in"),
        ("lowered it by 2", "distance:18 in"),
        ("dropped the basking spot 2in", "distance:22 in"),
        ("habe die Röhre 10 cm tiefer gehängt", "distance:16.06 in"),
    ],
)
def test_a_move_changes_the_distance_that_was_told(moved: str, now: str, *, packed: bool) -> None:
    reply = last(CHECKED, moved, packed=packed)
    assert reply.asked.startswith("uvi tube:12%")
    assert now in reply.asked
    assert "measure the hot spot again" in render_brief(reply) or "miss den" in render_brief(reply)


@pytest.mark.parametrize(
    "line",
    [
        "i lowered it 2 inches because it caught fire",
        "raised it 3 in, he is limp",
        "moved the log up 2 inches but the plug is melting",
    ],
)
def test_a_danger_beside_a_move_is_heard(line: str) -> None:
    assert last(CHECKED, line).dangers


def test_a_move_of_no_told_distance_asks_how_far_it_is_now() -> None:
    reply = last("how far for a 12% t5 for my bearded dragon?", "raised it 3 inches")
    assert render_brief(reply).startswith("How far is it from the tube")
    assert not reply.dangers


def test_a_move_that_leads_too_near_is_a_danger() -> None:
    reply = last(UNDER_MESH, "i lowered it by 30 cm")
    assert "distance:10 cm" in reply.asked
    assert reply.dangers


@pytest.mark.parametrize(
    "line",
    ["raised it to 14 inches", "should i raise it 3 in?", "temp dropped 4", "he moved up 3 inches"],
)
def test_what_is_asked_or_told_as_a_place_is_no_move(line: str) -> None:
    assert changed_in(line) is None


@pytest.mark.parametrize(
    ("line", "meant"),
    [
        ("its 118 now", "basking:118"),
        ("dimmed it, 106", "basking:106 F"),
        ("raised it 4 inches, now 108", "basking:108 F"),
    ],
)
def test_a_number_that_is_no_distance_is_a_temperature(line: str, meant: str) -> None:
    reply = last(CHECKED, line)
    assert meant in reply.asked
    assert "distance:118" not in reply.asked


def test_a_number_that_may_be_two_things_is_asked_about_and_taken_by_its_place() -> None:
    asked, taken = list(replies(CHECKED.replace("95F", "35C"), "its 18 now", "2"))[1:]
    assert "how far the tube is, or a temperature" in render_brief(asked)
    assert "distance:18" not in taken.asked
    assert ":18" in taken.asked


def test_the_place_of_a_reading_is_no_danger_of_its_own() -> None:
    reply = last("my meter says 3 for my panther chameleon", "its 6 inches under the screen")
    assert reply.asked == "meter readings:3 at 6 in animal:panther chameleon"
    assert not reply.dangers


def test_what_was_asked_once_is_not_asked_again() -> None:
    told = list(replies("how many watts for my corn snake", "no idea", "no idea"))
    first, second, third = map(render_brief, told)
    assert first.startswith("How warm is the room")
    assert second.startswith("How far")
    assert "Still open: how warm the room is." in third


def test_the_answer_goes_on_where_what_was_open_is_told_at_last() -> None:
    reply = last("how many watts for a beardie", "dunno", "no idea", "room is 70F", "12 inches")
    assert reply.asked == "watts room:70 F distance:12 in animal:bearded dragon"
    assert reply.status == "ok"


@pytest.mark.parametrize("taken", ["yes", "ja", "1", "blue tongue", "the australian"])
def test_a_name_with_one_animal_that_has_figures_is_one_question(taken: str) -> None:
    lines = ("needs bearded dragon", "and a blue tongue?")
    asked = last(*lines)
    assert "Is it an Australian blue-tongued skink?" in render_brief(asked)
    assert "animal:Australian blue-tongued skink" in last(*lines, taken).asked


def test_another_question_is_answered_for_the_only_animal_and_says_so() -> None:
    reply = last("needs bearded dragon", "and a blue tongue?", "and the cool end?")
    assert "This holds for an Australian blue-tongued skink." in render_brief(reply)


@pytest.mark.parametrize(
    ("lines", "meant"),
    [
        ((UNDER_MESH, "is that safe for babies"), "state:young"),
        (("needs corn snake about:night", "my room goes to 14 in winter"), "night room:14 C"),
        (("night room:12C animal:crested gecko", "which one of those"), "guide page:nights"),
        (("needs leopard gecko", "and hours"), "needs animal:leopard gecko about:hours"),
        (("needs crested gecko", "ok for the leo then"), "animal:leo"),
        (("t5 or t8?", "mine doesn't say. its about 26mm thick"), "lamp:T8 or other tube"),
        ((CHECKED, "what should i do first"), "next setup:"),
        ((UNDER_MESH, "hab kein messgerät"), "uvi tube:12%"),
        ((UNDER_MESH, "make it celsius please"), "uvi tube:12%"),
        (("what uvi for an emerald swift", "ok then a bearded dragon"), "needs animal:bearded"),
    ],
)
def test_short_lines_that_go_on(lines: tuple[str, ...], meant: str) -> None:
    assert meant in last(*lines).asked


@pytest.mark.parametrize(
    ("line", "shown"),
    [
        ("i dont get it", "The first line is what matters"),
        ("is it right like that then", "UV index"),
    ],
)
def test_a_line_that_no_pattern_knows_is_heard_by_what_was_learned(line: str, shown: str) -> None:
    reply = last(UNDER_MESH, line)
    assert reply.asked.startswith("uvi tube:12%")
    assert shown in render_brief(reply)


def test_a_line_that_means_nothing_is_told_what_is_spoken_of() -> None:
    lines = ("needs corn snake about:uvi", "flibber")
    told = render_brief(last(*lines))
    assert told.startswith("I did not follow that. We speak of a corn snake.")
    assert last(*lines, "2").asked == "hours animal:corn snake"
