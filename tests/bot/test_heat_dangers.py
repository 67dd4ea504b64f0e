"""Heat questions where a wrong first step could hurt."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply


def test_a_lamp_to_be_switched_off_is_not_left_as_it_is(anyone: Preferences) -> None:
    reply = ask("temps basking:130F lamp_on:10 minutes animal:bearded dragon", anyone)
    steps = " ".join(reply.steps)
    assert "off" in reply.steps[0].lower()
    assert "leave everything as it is" not in steps.lower()


def test_a_freezing_room_is_left_before_anything_is_heated(anyone: Preferences) -> None:
    for room in ("-10C", "13C"):
        cold = ask(f"night room:{room} animal:bearded dragon", anyone)
        assert keys(cold) == ["night_too_cold"]
        assert "warmer room" in cold.steps[0]
    # Under its floor, and over its limit: heat is the answer, and no alarm.
    cool = ask("night room:15.2C animal:bearded dragon", anyone)
    assert keys(cool) == []
    assert cool.answer.startswith("Yes, heat:")


def test_a_dimmed_lamp_is_turned_up_before_it_is_lowered(anyone: Preferences) -> None:
    line = "basking surface:85F air:75F distance:12in want:100F watts:75W animal:bearded dragon"
    dimmed = ask(f"{line} dimmer:50%", anyone)
    assert "dimmer up" in dimmed.steps[0]
    assert "dimmer up" in dimmed.answer
    assert "dimmer up" not in ask(line, anyone).answer


def test_a_dimmer_turned_up_is_never_called_turned_down(anyone: Preferences) -> None:
    line = "basking surface:92F air:75F distance:12in want:96F watts:75W dimmer:60%"
    told = " ".join(row.text for row in ask(f"{line} animal:bearded dragon", anyone).rows)
    assert "go down" not in told


def test_a_dimmer_at_nothing_is_to_be_turned_up_first(anyone: Preferences) -> None:
    reply = ask("basking surface:85F air:75F distance:12in want:100F dimmer:0%", anyone)
    assert reply.status == "problem"
    assert "turn it up first" in reply.answer


@pytest.mark.parametrize("latitude", ["35", "35N"])
def test_a_latitude_without_a_side_is_said_to_be_north(latitude: str, anyone: Preferences) -> None:
    reply = ask(f"hours latitude:{latitude} zone:UTC animal:bearded dragon", anyone)
    assert any("35° N" in row.text and "30S" in row.text for row in reply.rows)


@pytest.mark.parametrize("kind", ["red", "blue bulb"])
def test_a_night_lamp_stays_off_tonight(kind: str, anyone: Preferences) -> None:
    assert "off tonight" in ask(f"lamp kind:{kind}", anyone).steps[0]


@pytest.mark.parametrize(
    "line",
    [
        "basking surface:150F air:80F distance:10in animal:bearded dragon",
        "basking surface:150F air:80F distance:10in watts:75W animal:bearded dragon",
        "basking surface:130F air:80F distance:10in want:103F",
        "basking surface:110F air:80F distance:10in animal:corn snake",
        "basking surface:60C air:27C distance:25cm safe:50cm animal:bearded dragon",
    ],
)
def test_a_surface_that_burns_is_an_alarm_whatever_is_asked(line: str, anyone: Preferences) -> None:
    alarms = ask(line, anyone).alarms
    assert [(alarm.key, alarm.urgency) for alarm in alarms] == [("box_too_hot", "now")]


def test_a_surface_that_is_a_little_too_hot_is_changed_today(anyone: Preferences) -> None:
    reply = ask("basking surface:118F air:80F distance:10in animal:bearded dragon", anyone)
    assert [(alarm.key, alarm.urgency) for alarm in reply.alarms] == [("box_too_hot", "today")]


def keys(reply: Reply) -> list[str]:
    return [alarm.key for alarm in reply.alarms]


@pytest.mark.parametrize(
    ("line", "told"),
    [
        # Pinned: wood from 65 °C on, and well over 45 °C for whatever lies on it.
        ("surface reading:165F material:wood", {"box_too_hot", "touching"}),
        ("surface reading:165F material:slate", {"box_too_hot"}),
        ("surface reading:98F material:wood", set()),
        ("basking surface:165F air:80F distance:10in animal:bearded dragon", {"box_too_hot"}),
        ("basking surface:100F wood:165F air:80F distance:10in animal:beardie", {"touching"}),
    ],
)
def test_wood_that_is_near_burning_is_questioned(
    line: str, told: set[str], anyone: Preferences
) -> None:
    assert {danger.key for danger in ask(line, anyone).dangers} == told
