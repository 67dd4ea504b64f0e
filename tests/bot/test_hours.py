"""The timer: twelve hours, or the seasons of a place in the keeper's own time."""

import re

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply
from tests.bot.saying.pinning import everything


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


def lights(reply: Reply) -> list[tuple[str, str]]:
    assert reply.table is not None
    return [(line[2], line[3]) for line in reply.table.rows]


def test_twelve_hours_all_year_is_the_simple_answer(anyone: Preferences) -> None:
    reply = ask("hours animal:bearded dragon on:7:30 am", anyone)
    assert reply.answer.startswith("12 hours on, 12 hours off")
    assert "On at 07:30, off at 19:30" in reply.answer
    assert "common practice" in {source.kind for source in reply.sources}


def test_the_seasons_of_home_come_in_the_keeper_s_time_with_its_clock_changes(
    anyone: Preferences,
) -> None:
    line = "hours animal:corn snake latitude:home zone:chicago year:2026"
    reply = ask(line, anyone)
    assert len(lights(reply)) == 12
    assert lights(reply)[5] == ("06:00", "20:00")
    assert "8 March 2026 and 1 November 2026" in row(reply, "Clock")
    assert "Never shorter than 10 h nor longer than 14 h" in row(reply, "Bound")
    assert len(reply.values) == 12
    assert all(10.0 <= v.best <= 14.0 for v in reply.values)


def test_without_a_zone_the_times_are_standard_times_and_that_is_said(
    anyone: Preferences,
) -> None:
    reply = ask("hours latitude:0 year:2026", anyone)
    assert set(lights(reply)) == {("06:00", "18:00")}
    assert "standard times" in row(reply, "Clock")


def test_a_southern_year_can_be_turned_round(anyone: Preferences) -> None:
    own = ask("hours latitude:30S zone:Europe/London year:2026", anyone)
    turned = ask("hours latitude:30S zone:Europe/London year:2026 months:turned", anyone)
    assert own.values[0].best > 13.0 > 11.0 > turned.values[0].best
    assert "months:turned" in row(own, "Seasons")
    assert "Turned by half a year" in row(turned, "Seasons")


def test_polar_months_are_named_and_bounded(anyone: Preferences) -> None:
    reply = ask("hours latitude:75N year:2026", anyone)
    assert "June" in row(reply, "Polar")
    assert "December" in row(reply, "Polar")
    assert max(v.best for v in reply.values) == 14.0
    assert min(v.best for v in reply.values) == 10.0


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("hours latitude:home zone:Chicgo", "America/Chicago"),
        ("hours latitude:95N", "latitude"),
        ("hours on:25:00", "time of day"),
        ("hours latitude:30S year:20266", "a year"),
        ("hours latitude:30S months:sideways", "own or turned"),
    ],
)
def test_a_slip_is_told_with_what_would_do(line: str, told: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert told in reply.answer


@pytest.mark.parametrize("clocks", ["on:22:00", "on:1:00", "on:15:00 off:5:00", "off:4:00"])
@pytest.mark.parametrize("animal", ["bearded dragon", "crested gecko"])
def test_lights_that_burn_through_the_night_are_asked_about_first(
    animal: str, clocks: str, anyone: Preferences
) -> None:
    reply = ask(f"hours animal:{animal} {clocks}", anyone)
    told = everything(reply)
    assert reply.answer.startswith("Is that meant?")
    assert ("is awake by day" in told) is (animal == "bearded dragon")
    by_day = re.search(r"ask hours with (on:[0-9:]*[0-9])", told)
    assert by_day is not None
    assert "meant" not in ask(f"hours animal:{animal} {by_day[1]}", anyone).answer


@pytest.mark.parametrize(
    ("clocks", "lit", "word"),
    [
        ("on:8:00 off:20:00", 12.0, "Yes: 12 h of light is right."),
        ("on:7:30 off:22:00", 14.5, "No: 14 h 30 min of light is too long."),
        ("on:8:00 off:14:00", 6.0, "No: 6 h of light is far too short."),
        ("off:20:00", 12.0, "Yes: 12 h of light is right."),
    ],
)
def test_hours_that_are_told_are_judged(
    clocks: str, lit: float, word: str, anyone: Preferences
) -> None:
    reply = ask(f"hours animal:bearded dragon {clocks}", anyone)
    assert next(v.best for v in reply.values if v.name == "light_told") == lit
    assert reply.answer.startswith(word)
    assert "Aim for 12 h" in reply.answer
    assert not reply.alarms


@pytest.mark.parametrize(
    ("line", "is_all_day"),
    [
        ("hours animal:bearded dragon on:8:00 off:8:00", True),
        ("hours animal:bearded dragon on:4:00 off:22:00", True),
        ("hours animal:bearded dragon on:4:15 off:22:00", False),
        ("dose uvi:4 hours:24", True),
        ("dose uvi:4 hours:17", False),
        ("check animal:bearded dragon hours:20", True),
        ("check animal:bearded dragon hours:16", False),
        ("check bearded dragon, lights on 20 hours a day", True),
        ("check bearded dragon, lights on 14 hours a day", False),
        ("check bearded dragon, lights on all night, uv 12 hours", True),
    ],
)
def test_light_all_day_is_a_danger_wherever_it_is_told(
    line: str, is_all_day: bool, anyone: Preferences
) -> None:
    # Pinned: 18 hours or more, our judgement.
    assert ("light_all_day" in {d.key for d in ask(line, anyone).dangers}) is is_all_day
