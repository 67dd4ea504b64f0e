"""A year of two digits is asked for in four, with a date that can be copied."""

from datetime import date

import pytest

from bot.ask import ask
from bot.language.dates import read_date
from bot.language.errors import NotUnderstoodError
from bot.preferences import Preferences
from tests.bot.refusing import accepted


@pytest.mark.parametrize(
    "text", ["03/01/26", "3-1-26", "3.1.26", "3 Jan 26", "Jan 3, 26", "3 January '26", "26-01-03"]
)
def test_a_short_year_is_asked_for_in_four_digits(text: str) -> None:
    with pytest.raises(NotUnderstoodError) as refused:
        read_date(text)
    assert "four digits" in accepted(refused.value)
    assert read_date(refused.value.example) > date(2000, 1, 1)


@pytest.mark.parametrize("readings", ["03/01/26 4.2", "4.2 on 3/1/26", "3 Jan 26 4.2, 1 Mar 26 4"])
def test_dated_readings_with_a_short_year_are_refused_with_a_working_list(
    readings: str, anyone: Preferences
) -> None:
    reply = ask(f"decline readings:{readings} uvi:3-5", anyone)
    assert reply.status == "problem"
    assert "four digits" in reply.answer
    example = reply.answer.rpartition("for example ")[2].removesuffix(".")
    assert ask(f"decline {example} uvi:3-5", anyone).status == "ok"


@pytest.mark.parametrize("text", ["2026-01-03", "3 Jan 2026", "January 3, 2026", "31.1.2026"])
def test_four_digits_are_read_as_before(text: str) -> None:
    assert read_date(text).year == 2026
