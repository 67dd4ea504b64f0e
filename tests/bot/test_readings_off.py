"""Slips and dirt in placed readings are named before any figure, and nothing is moved by them."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

NAMED = "tube:12% reflector:polished screen:none animal:bearded dragon"


def meter(readings: str, rest: str = NAMED) -> Reply:
    return ask(f"meter readings:{readings} {rest}", Preferences())


@pytest.mark.parametrize(
    ("readings", "first", "question"),
    [
        ("4.2 at 14 cm", "You read far less", "Was it 14 inches, not cm?"),
        ("5.5 at 30 in", "You read far more", "Was it 30 cm, not inches?"),
        ("42 at 14 in", "You read far more", "Was it 4.2, not 42?"),
        ("0.42 at 14 in", "You read far less", "Was it 4.2, not 0.42?"),
        ("4.2 at 14 cm, 3.5 at 17 cm", "You read far less", "Was it 14 inches, not cm?"),
    ],
)
@pytest.mark.parametrize("question_asked", ["meter", "distance", "uvi distance:14in"])
def test_a_slip_in_all_readings_is_asked_about_first(
    readings: str, first: str, question: str, question_asked: str
) -> None:
    reply = ask(f"{question_asked} readings:{readings} {NAMED}", Preferences())
    # Behind the head of the brief, where the question has moved.
    assert (reply.why[0] if reply.why else reply.answer).startswith(first)
    assert question in reply.answer
    told = " ".join((*reply.steps, *(line.text for line in reply.brief)))
    assert "Read again" in told
    for move in ("Move the tube", "Hang the tube at", "Leave it"):
        assert move not in told


@pytest.mark.parametrize(
    ("readings", "first", "question"),
    [
        (
            "5.8 at 12 in, 4.3 at 15 cm, 3.4 at 18 in",
            "UV index 4.3 at 15 cm",
            "15 inches",
        ),
        (
            "5.8 at 12 in, 43 at 15 in, 3.4 at 18 in",
            "UV index 43 at 15 in",
            "Was it 4.3",
        ),
        ("5.8 at 30 cm, 4.3 at 38 in, 3.4 at 46 cm", "UV index 4.3 at 38 in", "38 cm"),
        ("5.8 at 12 in, 4.3 at 15 in, 3.4 at 180 in", "", ""),
    ],
)
def test_a_slip_in_one_reading_is_named_and_left_out(
    readings: str, first: str, question: str
) -> None:
    reply = meter(readings)
    if not first:
        assert reply.status == "problem"
        return
    assert reply.why[0].startswith(f"{first} does not fit")
    assert question in " ".join(reply.why)
    assert "I left out" in reply.answer
    assert reply.answer.startswith("Hang it")


@pytest.mark.parametrize("share", [0.5, 0.7, 1.0, 1.4])
@pytest.mark.parametrize("strength", [6, 12])
def test_an_honest_lamp_is_believed(share: float, strength: int) -> None:
    uvi = 5.9 * share * strength / 12.0
    rest = NAMED.replace("12%", f"{strength}%") + " length:22in"
    assert not meter(f"{uvi:.1f} at 12 in", rest).answer.startswith("You read")


def test_a_worn_lamp_is_to_be_replaced_and_not_hung_nearer() -> None:
    reply = meter("0.9 at 12 in")
    assert reply.answer.startswith("Not closer")
    assert "Is the sensor or the tube dirty" in reply.why[0]
    assert any("worn out" in step for step in reply.steps)
    assert reply.steps[0].startswith("Wipe the sensor")


def test_a_lamp_without_a_name_is_not_called_weak() -> None:
    assert "far less" not in meter("0.9 at 12 in", "animal:bearded dragon").answer
