"""Readings given to the UV questions: what they replace, and what they warn of."""

import re

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.queries.query import Query
from bot.queries.uv import DistanceQuery
from bot.queries.uv_depth import MeterQuery
from bot.reply import Reply

DRAGON = "animal:bearded dragon"
ODD = "readings:2 at 12in, 8 at 12in"
NAMED = "tube:12% reflector:polished screen:none"


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


@pytest.mark.parametrize(
    "question",
    [
        f"distance {NAMED}",
        f"distance {NAMED} uvi:0.05-0.1",
        f"distance {NAMED} uvi:6-8",
        f"uvi {NAMED} distance:12in",
        "tube screen:none distance:12in",
        "meter",
    ],
)
def test_contradicting_readings_are_told_first_and_read_again_first(
    question: str, anyone: Preferences
) -> None:
    animal = "" if "uvi:" in question else DRAGON
    reply = ask(f"{question} {ODD} {animal}", anyone)
    first = ("Your readings do not fit one tube: read again", "Not yet: your readings do not agree")
    assert reply.answer.startswith(first)
    assert reply.steps[0].startswith("Read again after 30 minutes")


def test_contradicting_readings_stand_behind_a_place_too_near_for_any_tube(
    anyone: Preferences,
) -> None:
    reply = ask(f"tube screen:none distance:5in {ODD} {DRAGON}", anyone)
    danger, odd, rest = reply.answer.partition("Not yet: your readings do not agree")
    assert danger.startswith("Keep any tube at least 8 in (20 cm) from the back")
    assert odd
    assert "No tube: 5 in (13 cm) is too close." in rest
    assert reply.steps[0].startswith("Read again after 30 minutes")


@pytest.mark.parametrize("uvi", ["18-20", "9-20"])
@pytest.mark.parametrize("readings", [ODD, "readings:4.2 at 12in"])
def test_a_wish_that_harms_any_animal_is_refused_whatever_was_read(
    readings: str, uvi: str, anyone: Preferences
) -> None:
    reply = ask(f"distance {NAMED} uvi:{uvi} {readings}", anyone)
    assert reply.status == "problem"
    assert reply.answer.startswith("Keep any tube at least 8 in (20 cm) from the back")
    assert "too strong" in reply.answer
    assert reply.values == ()


@pytest.mark.parametrize("question", [f"distance {NAMED}", f"uvi {NAMED} distance:12in", "meter"])
def test_a_reading_that_was_set_aside_is_told(question: str, anyone: Preferences) -> None:
    wild = "readings:6.9 at 30cm, 4.6 at 40cm, 2.4 at 60cm, 1.2 at 50cm"
    assert "1.2" in row(ask(f"{question} {wild} {DRAGON}", anyone), "Set aside")


@pytest.mark.parametrize("question", [f"distance {NAMED}", f"uvi {NAMED} distance:16in", "meter"])
def test_one_weak_reading_among_good_ones_is_no_contradiction(
    question: str, anyone: Preferences
) -> None:
    good = "readings:2.1 at 4in, 1.2 at 6in, 0.2 at 16in"
    reply = ask(f"{question} {good} uvi:0.3-1", anyone)
    assert "do not fit" not in reply.answer
    assert not any(r.label == "Set aside" for r in reply.rows)


@pytest.mark.parametrize("uvi", ["0.05-0.1", "7-8"])
def test_a_refusal_of_an_own_lamp_is_in_plain_grammar(uvi: str, anyone: Preferences) -> None:
    reply = ask(f"distance {NAMED} readings:4.2 at 12in uvi:{uvi}", anyone)
    assert reply.status == "problem"
    assert "a your" not in reply.answer
    assert reply.answer.startswith("No: ")
    assert "your own lamp, by your readings" in row(reply, "Tube")


@pytest.mark.parametrize("question", ["distance", "uvi distance:14in"])
def test_readings_need_no_label_no_fixture_and_no_screen(
    question: str, anyone: Preferences
) -> None:
    bare = ask(f"{question} readings:4.2 at 12 in {DRAGON}", anyone)
    named = ask(f"{question} {NAMED} readings:4.2 at 12 in {DRAGON}", anyone)
    assert bare.status == "ok"
    figures = {v.name: v for v in named.values}
    assert all(v == figures[v.name] for v in bare.values)
    assert any("your readings hold them" in one.text for one in bare.rows)
    assert "read again" in row(bare, "Screen")


@pytest.mark.parametrize("question", ["distance", "uvi distance:14in"])
def test_without_readings_what_is_missing_is_asked_for_at_once(
    question: str, anyone: Preferences
) -> None:
    reply = ask(f"{question} {DRAGON}", anyone)
    assert reply.status == "problem"
    assert reply.answer.startswith("I still need tube, reflector and screen.")
    example = reply.answer.rpartition("For example: ")[2]
    assert ask(example, anyone).status == "ok"


@pytest.mark.parametrize("given", ["tube:12% screen:none", "reflector:plain screen:none"])
def test_half_a_lamp_is_asked_for_the_other_half(given: str, anyone: Preferences) -> None:
    reply = ask(f"distance {given} {DRAGON}", anyone)
    assert "still need" in reply.answer
    assert ask(reply.answer.rpartition("For example: ")[2], anyone).status == "ok"


@pytest.mark.parametrize(
    "question",
    [
        "meter",
        "meter tube:12% reflector:plain",
        f"distance {NAMED}",
        "distance",
        f"uvi {NAMED} distance:12in",
        "tube screen:none distance:12in",
    ],
)
def test_more_than_any_tube_gives_is_told_before_anything_else(
    question: str, anyone: Preferences
) -> None:
    reply = ask(f"{question} readings:40 at 12 in {DRAGON}", anyone)
    assert re.search("far more than|far too much UV", reply.answer.partition(".")[0])
    assert re.search("do not let the animal under it|Keep your animal out", reply.answer)
    assert "Was it 4" in reply.answer
    assert reply.steps[0].startswith("Read again")


@pytest.mark.parametrize("uvi", [4.2, 7.0, 12.0])
def test_what_a_strong_tube_gives_is_believed(uvi: float, anyone: Preferences) -> None:
    reply = ask(f"meter readings:{uvi} at 12 in {DRAGON}", anyone)
    assert "far more" not in reply.answer


def test_a_figure_is_never_rounded_away(anyone: Preferences) -> None:
    reply = ask(f"distance {NAMED} uvi:0.05-0.1", anyone)
    assert "UV index 0.05 to 0.1" in " ".join(reply.why)
    assert "UVI 0 to" not in str(reply)


def test_a_single_weak_reading_is_to_be_taken_nearer(anyone: Preferences) -> None:
    reply = ask("meter readings:0.1 at 30 in uvi:1-2", anyone)
    assert "do not fit" not in reply.answer
    assert any("closer to the tube" in step for step in reply.steps)
    assert "contradict" not in str(reply.rows)


@pytest.mark.parametrize("readings", [ODD, "readings:40 at 12in", "readings:9 at 8in, 9 at 16in"])
@pytest.mark.parametrize("question", [f"distance {NAMED}", f"uvi {NAMED} distance:12in", "meter"])
def test_nothing_is_moved_by_readings_that_cannot_be(
    question: str, readings: str, anyone: Preferences
) -> None:
    reply = ask(f"{question} {readings} {DRAGON}", anyone)
    assert reply.steps[1].startswith("Then ask again with the new readings")
    told = " ".join(reply.steps)
    for move in ("Move the tube", "Hang the tube at", "Leave it"):
        assert move not in told


def test_two_readings_that_contradict_each_other_are_not_called_too_few(
    anyone: Preferences,
) -> None:
    reply = ask(f"meter {ODD} {DRAGON}", anyone)
    assert "at least one" in row(reply, "Your readings")
    assert "By what you read now: by your readings" not in reply.answer


def test_a_tube_over_the_box_is_told(anyone: Preferences) -> None:
    line = f"tube distance:14in screen:none {DRAGON} enclosure:48x24x"
    assert "above the box" in row(ask(f"{line}10in", anyone), "Enclosure")
    assert "above the box" not in row(ask(f"{line}24in", anyone), "Enclosure")


@pytest.mark.parametrize("query", [DistanceQuery, MeterQuery])
def test_an_option_that_may_stay_empty_is_completed_all_the_same(query: type[Query]) -> None:
    options = {option.name: option for option in query.options()}
    assert options["tube"].completes == "tube"
    assert options["reflector"].choices[:2] == ("polished", "plain")
