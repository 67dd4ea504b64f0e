"""Dates, ages, enclosure sizes and lists of readings."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.ask import ask
from bot.language.dates import read_age, read_date
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units, read_duration
from bot.language.readings import read_dated_readings, read_placed_readings
from bot.language.sizes import read_size
from bot.preferences import Preferences
from tests.bot.refusing import refused


@pytest.mark.parametrize(
    "text",
    [
        *("2026-01-23", "2026/1/23", "23 Jan 2026", "23. January 2026", "23rd of jan 2026"),
        *(
            "January 23, 2026",
            "Jan 23rd 2026",
            "23-Jan-2026",
            "23/01/2026",
            "1/23/2026",
            "23.1.2026",
        ),
    ],
)
def test_a_date_is_read(text: str) -> None:
    assert read_date(text) == date(2026, 1, 23)


def test_a_date_that_may_be_two_is_asked_about() -> None:
    with refused("2026-04-03 or 2026-03-04"):
        read_date("03/04/2026")
    assert read_date("03/03/2026") == date(2026, 3, 3)
    assert read_date("3.4.2026") == date(2026, 4, 3)


@pytest.mark.parametrize(
    "text", ["2026-13-01", "30 Feb 2026", "1800-01-01", "1/2/26", "Jan", "today"]
)
def test_what_is_no_date_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_date(text)


def test_today_is_known_where_the_caller_says_so() -> None:
    assert read_date("today", date(2026, 3, 1)) == date(2026, 3, 1)
    assert read_date("Yesterday", date(2026, 3, 1)) == date(2026, 2, 28)


@given(st.dates(date(1990, 1, 1), date(2100, 12, 31)))
def test_every_written_form_of_a_date_is_the_same_date(day: date) -> None:
    worded = f"{day.day} {day:%B %Y}", f"{day:%b} {day.day}, {day.year}", day.isoformat()
    assert {read_date(text) for text in worded} == {day}


def test_an_age_is_a_time() -> None:
    assert read_age("6 months") == read_duration("6 months")
    assert read_age("2 years old").low == read_duration("2 years").low
    assert read_age("brand new").low == 0
    with pytest.raises(NotUnderstoodError):
        read_age("old")


@pytest.mark.parametrize(
    ("text", "metres"),
    [
        *(("4x2x2 ft", (1.2192, 0.6096, 0.6096)), ("4'x2'x2'", (1.2192, 0.6096, 0.6096))),
        *(("4ft x 2ft x 2ft", (1.2192, 0.6096, 0.6096)), ("48x24x24in", (1.2192, 0.6096, 0.6096))),
        *(("120x60x60 cm", (1.2, 0.6, 0.6)), ("120 × 60 × 45cm", (1.2, 0.6, 0.45))),
        *(("4 by 2 by 2 feet", (1.2192, 0.6096, 0.6096)), ("1,2m x 0,6m x 60cm", (1.2, 0.6, 0.6))),
        *(
            ('36" x 18" x 18"', (0.9144, 0.4572, 0.4572)),
            ("4ftx2ftx18in", (1.2192, 0.6096, 0.4572)),
        ),
    ],
)
def test_a_size_is_read(text: str, metres: tuple[float, float, float]) -> None:
    size = read_size(text)
    assert (size.length_m, size.depth_m, size.height_m) == metres
    assert not size.assumed


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("4x2x2", "ft"),
        ("18x18x24", "in"),
        ("48x24x24", "in"),
        ("36x18x18", "in"),
        ("45x45x60", "cm"),
        ("120x60x60", "cm"),
    ],
)
def test_a_bare_size_takes_the_only_unit_that_makes_a_home(text: str, unit: str) -> None:
    size = read_size(text)
    assert (size.unit, size.assumed) == (unit, True)


@pytest.mark.parametrize("text", ["30x30x45", "60x30x30", "20x200x20"])
def test_a_bare_size_that_both_or_no_units_fit_is_asked_about(text: str) -> None:
    with refused("inches or centimetres"):
        read_size(text)


def test_a_bare_size_takes_the_unit_that_the_asker_keeps() -> None:
    assert read_size("120x60x60", Units.CM).length_m == 1.2
    assert read_size("48x24x24", Units.IN).length_m == 1.2192


@pytest.mark.parametrize(
    "text", ["4x2", "4x2x2x2 ft", "0x2x2 ft", "-4x2x2 ft", "4 ft", "1,200x600x600 mm"]
)
def test_what_is_no_size_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_size(text)


@pytest.mark.parametrize(
    "text",
    [
        *("4.2 at 12 in, 2.9 at 15 in", "12in 4.2; 15in 2.9", "12in: 4.2 and 15in: 2.9"),
        *(
            "4,2 @ 12in; 2,9 @ 15 in",
            "UVI 4.2 at 1 ft, UVI 2.9 at 1 ft 3 in",
            "12 in = 4.2\n15 in = 2.9",
        ),
        *("4.2 at 12in,2.9 at 15in,", "4.2@12in & 2.9@15in", "4.2at12in 2.9at15in"),
        *("12in=4.2,15in=2.9", "4.2 12in, 2.9 15in", "4.2 at 12 in, then 2.9 at 15 inches away"),
        "4.1-4.3 at 12in + 2.8 to 3.0 at 15in",
    ],
)
def test_readings_have_a_place(text: str) -> None:
    readings = read_placed_readings(text)
    assert [(r.value, r.distance.low) for r in readings] == [(4.2, 0.3048), (2.9, 0.381)]


def test_a_bare_distance_of_a_reading_takes_the_setting() -> None:
    with pytest.raises(NotUnderstoodError):
        read_placed_readings("4.2 at 12")
    assert read_placed_readings("4.2 at 12", Units.IN)[0].distance.low == 0.3048


@pytest.mark.parametrize("text", ["4.2", "at 12in", "4.2 at 12in, oops", "-1 at 12in", ", ,"])
def test_what_is_no_placed_reading_is_named(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_placed_readings(text)


@pytest.mark.parametrize(
    "text",
    [
        *("2026-01-03 4.2, 2026-03-01 3.9", "1 Mar 2026: 3.9; 3 Jan 2026: 4.2"),
        *("4.2 on January 3, 2026, 3.9 on Mar 1, 2026", "2026-01-03 4,2\n2026-03-01 3,9"),
        *("2026-01-03 4.2,2026-03-01 3.9,", "2026-01-03 4.2 2026-03-01 3.9"),
        *("2026-01-03 4.2 & 2026-03-01 3.9", "2026-01-03 4.1-4.3 and 2026-03-01 3.8 to 4.0"),
    ],
)
def test_readings_have_a_day_and_are_sorted(text: str) -> None:
    readings = read_dated_readings(text)
    assert [(r.day, r.value) for r in readings] == [
        (date(2026, 1, 3), 4.2),
        (date(2026, 3, 1), 3.9),
    ]


def test_a_doubtful_day_among_readings_is_asked_about() -> None:
    with refused("2026-04-03 or 2026-03-04"):
        read_dated_readings("2026-01-03 4.2, 03/04/2026 3.9")


def test_today_among_readings_is_the_askers_day_and_is_asked_again_as_its_date() -> None:
    there = Preferences(today=date(2026, 5, 4))
    line = "decline readings:2026-01-03 4.2, yesterday 3.9, today 3.8 uvi:3-5"
    reply = ask(line, there)
    assert "2026-01-03 4.2, 2026-05-03 3.9, 2026-05-04 3.8" in reply.asked
    later = Preferences(today=date(2026, 5, 9))
    readings = [v.best for v in ask(reply.asked, later).values if v.name == "changed"]
    assert readings
    assert readings == [v.best for v in reply.values if v.name == "changed"]
