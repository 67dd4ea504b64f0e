"""Every refusal helps: it says what would do, and its example is understood by the same reader."""

from collections.abc import Callable
from datetime import UTC, date, datetime
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.language.choices import read_choice
from bot.language.dates import read_age, read_date
from bot.language.errors import NotUnderstoodError
from bot.language.moments import read_moment
from bot.language.quantities import Units, read_length, read_number, read_percent, read_temperature
from bot.language.readings import read_dated_readings, read_placed_readings
from bot.language.screens import Blocks, NoScreen, Passes, Weave, read_screen
from bot.language.sizes import read_size
from bot.language.words import split_line
from bot.language.zones import read_clock, read_year, read_zone
from tests.bot.language.test_hostile import ENDLESS, HOSTILE, READERS
from tests.bot.refusing import accepted, refused, sentence
from tests.some import some

NOON = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)
OPTIONS = {"tube": "12%", "screen": "45%", "animal": "corn snake"}
MORE: dict[str, Callable[[str], Any]] = {
    "moment": lambda text: read_moment(text, NOON),
    "clock": read_clock,
    "year": read_year,
    "zone": read_zone,
    "choice": lambda text: read_choice(text, {"glass": ["pane"], "wood": ["plywood"]}),
}
ALL = {name: read for name, read in READERS.items() if "line" not in name} | MORE
# What people type that is nearly right, so that each way of refusing is taken.
NEARLY = [
    *("", " ", "14", "14 in 2", "1,200 mm", "4/4 in", "3/3 in", "-14in", "10-", "in"),
    *("-300C", "-300C to 20C", "98", "12:99", "25:00", "13 pm", "0", "1949", "2091"),
    *("03/04/2026", "2026-02-30", "1 jan 1980", "31.12.2150", "yesterday", "in 9 years"),
    *("glass", "acrylic pane", "screen", "120%", "passes 0%", "100%", "18x16", "18x16 0.1in"),
    *("4x2", "4x2x0", "40x20x20", "1,200x600x600mm", "4.2 at", "4.2 at 12 in, 3", "at 12 in"),
    *("5 on", "5 on 2026-01-01, 4", "a-b", "5-3", "12% or 6%", "30 minutes ago", "Europe/Nowhere"),
]


def refusals(read: Callable[[str], Any], texts: list[str]) -> list[NotUnderstoodError]:
    found = []
    for text in texts:
        try:
            read(text)
        except NotUnderstoodError as error:
            found.append(error)
    return found


@pytest.mark.parametrize("name", ALL)
def test_the_example_of_a_refusal_is_understood(name: str) -> None:
    refused = refusals(ALL[name], [*NEARLY, *HOSTILE, *ENDLESS])
    assert refused
    for error in refused:
        assert accepted(error), error
        assert ALL[name](error.example) is not None, error


@pytest.mark.parametrize("name", ALL)
@settings(max_examples=some(60))
@given(st.text(alphabet="0123456789.,/-'\" xX%°½fFcCinmtapo:", max_size=20))
def test_the_example_of_any_refusal_is_understood(name: str, text: str) -> None:
    for error in refusals(ALL[name], [text]):
        assert ALL[name](error.example) is not None


@pytest.mark.parametrize(
    "line", ["", "distance tube", "distance tube:", "distance tube:1 tube:2", "distance color:red"]
)
def test_a_line_that_cannot_be_taken_apart_is_answered_with_one_that_can(line: str) -> None:
    with pytest.raises(NotUnderstoodError) as caught:
        split_line(line, OPTIONS)
    error = caught.value
    assert accepted(error)
    assert split_line(f"distance {error.example}", OPTIONS)[1]


def test_the_sentences_name_what_is_wanted() -> None:
    for read, text, wanted in (
        (read_number, "x", "a number, for example 4."),
        (read_percent, "101%", "0"),
        (read_temperature, "-300C", "a temperature above absolute zero (−273.15 °C)"),
        (read_screen, "120%", "a share from 0% to 100%"),
        (lambda text: split_line(text, OPTIONS), "", "a question"),
        (lambda text: split_line(text, OPTIONS), "distance tube:", "a value after tube:"),
    ):
        with pytest.raises(NotUnderstoodError) as caught:
            read(text)
        assert wanted in sentence(caught.value)


def test_what_was_typed_is_kept_with_its_single_spaces() -> None:
    assert read_size("  4x2x2   ft ").text == "4x2x2 ft"
    assert read_length(" 14   in ").text == "14 in"
    screens = [
        read_screen(text) for text in ("  18x16   0.011in ", " none ", "45  %", "passes  55%")
    ]
    assert [screen.text for screen in screens] == ["18x16 0.011in", "none", "45 %", "passes 55%"]
    assert [type(screen) for screen in screens] == [Weave, NoScreen, Blocks, Passes]


def test_ends_of_what_is_taken() -> None:
    assert read_percent("100%") == pytest.approx(read_percent("50%") * 2)
    assert read_number("0") == 0.0
    assert read_year("1950") == 1950
    assert read_year("2090") == 2090
    assert read_placed_readings("0 at 12 in")[0].value == 0.0
    assert read_temperature("-273.15C").low == pytest.approx(-273.15)
    for text in ("-274C to 20C", "-274 to 20 C"):
        with pytest.raises(NotUnderstoodError):
            read_temperature(text)


def test_a_fraction_is_less_than_one() -> None:
    for text in ("4/4 in", "3/2 in", "1 8/8 in"):
        with pytest.raises(NotUnderstoodError):
            read_length(text)
    assert read_length("1 7/8 in").low == pytest.approx(1.875 * 0.0254)


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("two and a half inches", 2.5),
        ("1 and a half in", 1.5),
        ("half an inch", 0.5),
        ("12 and a half in", 12.5),
    ],
)
def test_a_half_more_is_a_half_more(text: str, inches: float) -> None:
    assert read_length(text).low == pytest.approx(inches * 0.0254)


def test_days_near_today_and_dates_that_may_be_two() -> None:
    today = date(2026, 5, 4)
    assert [read_date(word, today) for word in ("today", "now")] == [today, today]
    assert read_date("13/12/2026") == date(2026, 12, 13)
    assert read_date("12/13/2026") == date(2026, 12, 13)
    with refused("one clear date"):
        read_date("12/11/2026")
    for word in ("new", "brand new", "unused"):
        assert read_age(word).high == 0.0


def test_a_day_alone_means_nine_in_the_morning() -> None:
    assert read_moment("tomorrow", NOON) == datetime(2026, 5, 5, 9, 0, tzinfo=UTC)
    assert read_moment("on 2026-06-01 at 7 pm", NOON) == datetime(2026, 6, 1, 19, 0, tzinfo=UTC)


def test_digits_of_other_scripts_are_no_year() -> None:
    with pytest.raises(NotUnderstoodError):
        read_year("१९९९" + "a")
    assert read_dated_readings("5 on 2026-01-01, 4 on 2026-02-01")
    assert read_length("14", Units.IN).low == pytest.approx(14 * 0.0254)
