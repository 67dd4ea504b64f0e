"""Numbers and few words on their own: which unit a number can only have, and since which month."""

from datetime import date

import pytest

from bot.dialogue.bare import age_told, bare_told
from bot.dialogue.topics import topic_of
from bot.language.quantities import Measure

NOVEMBER = date(2026, 11, 29)


@pytest.mark.parametrize(
    ("line", "months"),
    [
        ("the tube is from last june", 5),
        ("it has hung there since november", 0),
        ("since december", 11),
        ("bought it in march 2025", 20),
        ("seit märz 2025", 20),
        ("since december 2026", None),
    ],
)
def test_a_month_tells_how_old_a_lamp_is(line: str, months: int | None) -> None:
    told = age_told(line, NOVEMBER)
    assert (told and told.text) == (None if months is None else f"{months} months")


def test_without_a_day_a_month_tells_no_age() -> None:
    assert age_told("since december", None) is None


@pytest.mark.parametrize(
    ("option", "told", "unit"),
    [
        ("room", "35", "degC"),
        ("room", "36", None),
        ("room", "39", None),
        ("room", "40", "degF"),
        ("surface", "52", "degC"),
        ("surface", "53", None),
        ("surface", "60", "degF"),
        ("room", "0", None),
    ],
)
def test_a_temperature_has_the_only_unit_that_it_can_have(
    option: str, told: str, unit: str | None
) -> None:
    found = bare_told("temps", ("room", "surface"), {}, told, (option,), None)
    value = found and found[1]
    assert ((isinstance(value, Measure) and value.unit) or None) == unit


@pytest.mark.parametrize("before", ["needs", "distance", "uvi", "hours", "guide", "check"])
def test_which_one_asks_of_a_tube_after_what_tells_of_uv(before: str) -> None:
    topic = topic_of("and which one then?", before)
    assert topic is not None
    assert topic.command == "tube"


def test_which_one_asks_of_a_heater_after_a_night() -> None:
    topic = topic_of("and which one then?", "night")
    assert topic is not None
    assert topic.values["page"] == "nights"
