"""Words for a few things, time zones and times of day, as people type them."""

from datetime import time

import pytest

from bot.commands import ALL_COMMANDS
from bot.language.choices import (
    LAMP_PLACES,
    LAMP_SHAPES,
    LIDS,
    MATERIALS,
    MONTHS,
    SURFACES,
    THERMOMETERS,
    YES_NO,
    choice_said,
    read_choice,
    read_thermometers,
)
from bot.language.errors import NotUnderstoodError
from bot.language.glossary import chosen
from bot.language.units import Units
from bot.language.zones import read_clock, read_year, read_zone, zone_names
from bot.preferences import FIRST, LANGUAGES
from bot.saying.voice import voice
from tests.bot.refusing import refused

EVERY = (LAMP_PLACES, LAMP_SHAPES, LIDS, MATERIALS, MONTHS, SURFACES, THERMOMETERS, YES_NO)


@pytest.mark.parametrize("names", EVERY)
def test_no_word_stands_for_two_things(names: dict[str, tuple[str, ...]]) -> None:
    words = [word for name, aliases in names.items() for word in {name, *aliases}]
    assert len(words) == len(set(words))
    for name, aliases in names.items():
        for word in (name, *aliases):
            assert read_choice(f" {word.upper()} ", names) == name
            assert read_choice(word.replace(" ", "-"), names) == name


@pytest.mark.parametrize("text", ["", "x" * 100, "gless", "\x00", "@everyone", "12"])
def test_a_word_that_is_none_of_them_is_refused_with_all_of_them(text: str) -> None:
    with refused("glass, wood, pvc, mesh or melamine"):
        read_choice(text, MATERIALS)


def test_a_slip_is_told_what_was_meant() -> None:
    with refused("did you mean glass"):
        read_choice("gless", MATERIALS)


@pytest.mark.parametrize(
    ("text", "tools"),
    [
        ("gun", {"infrared gun"}),
        ("IR gun + probe", {"infrared gun", "digital probe"}),
        ("an infrared gun, and a strip", {"infrared gun", "dial or strip"}),
        ("dial or strip", {"dial or strip"}),
    ],
)
def test_several_thermometers_may_be_named(text: str, tools: set[str]) -> None:
    assert read_thermometers(text) == tools


@pytest.mark.parametrize("text", ["a stick", "gun and a stick", "y" * 200])
def test_an_unknown_thermometer_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_thermometers(text)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("America/Chicago", "America/Chicago"),
        ("europe/london", "Europe/London"),
        ("new york", "America/New_York"),
        ("EST", "America/New_York"),
        ("pacific", "America/Los_Angeles"),
        ("UTC", "UTC"),
    ],
)
def test_a_zone_is_known_by_name_city_or_short_form(text: str, key: str) -> None:
    assert read_zone(text).key == key


@pytest.mark.parametrize("text", ["", "Mars", "../../etc/passwd", "z" * 300, "America"])
def test_what_is_no_zone_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_zone(text)


def test_every_offered_zone_can_be_read() -> None:
    assert {read_zone(name).key for name in zone_names()} == set(zone_names())


@pytest.mark.parametrize(
    ("text", "moment"),
    [
        ("8", time(8)),
        ("08:15", time(8, 15)),
        ("8.30", time(8, 30)),
        ("12 am", time(0)),
        ("12pm", time(12)),
        ("7:05 p.m.", time(19, 5)),
        ("23:59", time(23, 59)),
    ],
)
def test_a_time_of_day_is_read(text: str, moment: time) -> None:
    assert read_clock(text) == moment


@pytest.mark.parametrize("text", ["", "24:00", "13pm", "0am", "8:60", "noonish", "8" * 60])
def test_what_is_no_time_of_day_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_clock(text)


@pytest.mark.parametrize("text", ["26", "1890", "3000", "2026.5", "year"])
def test_what_is_no_year_is_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_year(text)


def test_a_year_is_read() -> None:
    assert read_year(" 2026 ") == 2026


LISTED = sorted(
    {choice for one in ALL_COMMANDS for o in one.query.options() for choice in o.choices}
)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("choice", LISTED)
def test_every_choice_has_its_words_and_they_are_read_as_it(choice: str, language: str) -> None:
    said = choice_said(choice)
    words = said if isinstance(said, str) else voice(language, Units.CM).text(said)
    if language == FIRST:
        assert words.lower() == choice.lower()
        return
    for option in {o for one in ALL_COMMANDS for o in one.query.options() if choice in o.choices}:
        assert words.lower() == choice.lower() or chosen(words, option.choices) == choice
