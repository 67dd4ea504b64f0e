"""Examples beside a refusal that did not work once, each as it was found."""

import pytest

from bot.preferences import Preferences
from bot.queries.question import Question
from bot.understood import take_apart
from tests.fuzz.advice import assert_advice_leads_to_an_answer, by_name
from tests.fuzz.stored import asked_of_the_office, office_cleared

SECTION = "section tube:12% reflector:polished screen:none animal:bearded dragon"


@pytest.mark.parametrize(
    "line",
    [
        f"{SECTION} distance:16in enclosure:48x24x24in back:14in",
        f"{SECTION} distance:25cm enclosure:90x45x10cm",
        f"{SECTION} distance:25cm enclosure:90x45x45cm back:45cm",
        f"{SECTION} distance:25cm enclosure:90x45x45cm start:14in length:22in",
        f"{SECTION} distance:25cm enclosure:40x45x45cm start:14in length:22in",
        f"{SECTION} distance:25cm enclosure:90x45x45cm start:40in",
        "tube distance:14in screen:none animal:bearded dragon enclosure:18in length:34in",
        "tube distance:14in screen:none animal:bearded dragon enclosure:1in length:34in",
        "meter readings:3.1 at 30cm without:5.6 at 30cm screen:45% animal:bearded dragon",
        'meter readings:"4.2 at 12 in" animal:"bearded dragon" without:"0 at 12in"',
        'server screen name:lid readings:"4.2 at 12 in" without:"900 at 12in"',
        "mine prefer zone:Mars/Base",
        "mine save name:1",
        "server set zone:1_0",
        "server set zone:none",
        "remind me about:season zone:9**9",
        "server stats weeks:0",
        "server stats weeks:105",
        "server target animal:bearded dragon of:uvi range:95-110F",
        "server target animal:bearded dragon of:basking range:95-110F best:4",
    ],
)
def test_what_a_refusal_gives_as_an_example_leads_on(line: str) -> None:
    office_cleared()
    apart = take_apart(line, Preferences())
    assert isinstance(apart, Question)
    assert_advice_leads_to_an_answer(*by_name(apart), asked_of_the_office)


def test_a_number_of_weeks_that_cannot_be_is_told_with_its_ends() -> None:
    told = asked_of_the_office("server stats", {"weeks": "0"}).answer
    assert "I read “0” for weeks. I need a number of weeks from 1 to 104" in told


def test_the_example_of_a_missing_file_names_a_file() -> None:
    assert asked_of_the_office("mine import", {}).answer.endswith("mine import file:mine.json")


def test_a_figure_that_is_missing_is_asked_for_with_the_enclosure_that_was_named() -> None:
    office_cleared()
    for name in ("Pebble", "Rex"):
        asked_of_the_office("mine save", {"name": name, "animal": "bearded dragon"})
    told = asked_of_the_office("mine reading", {"name": "Rex"})
    assert told.status == "problem"
    assert "Try: mine reading name:Rex uvi:4.2" in told.steps
