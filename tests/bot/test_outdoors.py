"""Real sun: when it is right, that glass lets no UVB through, and that shade comes first."""

from datetime import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Role
from calc.animals import animals
from calc.uv.dose import sun_day
from calc.uv.sun import sun_course
from tests.bot.saying.pinning import everything

GERMAN = Preferences(language="de")
LATITUDES, MONTHS = st.floats(-90.0, 90.0), st.integers(1, 12)


@given(LATITUDES, MONTHS)
def test_noon_is_that_of_the_day_and_morning_mirrors_the_afternoon(
    latitude: float, month: int
) -> None:
    course = sun_course(latitude, month)
    noon = course.uvi(12.0)
    assert noon.best == pytest.approx(sun_day(latitude, month).noon_uvi.best)
    for before in (1.0, 3.5, 6.0):
        there = course.uvi(12.0 - before)
        assert there.best == pytest.approx(course.uvi(12.0 + before).best, abs=1e-9)
        assert there.best <= noon.best


@given(LATITUDES, MONTHS, st.floats(0.5, 4.0), st.floats(0.1, 5.0))
def test_the_hours_told_are_those_in_the_range(
    latitude: float, month: int, low: float, wide: float
) -> None:
    course, high = sun_course(latitude, month), low + wide
    spans = course.hours_within(low, high)
    assert len(spans) <= 2
    for start, end in spans:
        for hour in (start, (start + end) / 2.0, end):
            assert low - 1e-6 <= course.uvi(hour).best <= high + 1e-6
    if not spans:
        assert not low <= course.uvi(12.0).best <= high


NAMES = [animal.name for animal in animals().values()]


@pytest.mark.parametrize("name", NAMES)
def test_every_animal_gets_an_answer_in_both_languages(name: str, anyone: Preferences) -> None:
    for who, shade in ((anyone, "halb"), (GERMAN, "halb")):
        line = f"outdoors latitude:45N month:June hour:9:00 animal:{name}"
        reply = ask(line, who)
        assert reply.status == "ok"
        assert any(line.role is Role.CAUTION for line in reply.brief)
        assert {"en": "Half in shade", "de": shade}[who.language or "en"] in everything(reply)


@pytest.mark.parametrize("name", ["bearded dragon", "Hermann's tortoise", "crested gecko"])
def test_a_hot_shade_keeps_it_indoors_before_any_hour_is_told(
    name: str, anyone: Preferences
) -> None:
    reply = ask(f"outdoors latitude:40N month:June shade:97F animal:{name}", anyone)
    assert reply.status == "problem"
    assert reply.answer.startswith("Not now: even the shade is too warm")
    assert "UV right" not in reply.answer


@pytest.mark.parametrize("place", ["window", "greenhouse"])
def test_glass_is_no_sun_and_a_box_in_it_a_danger(place: str, anyone: Preferences) -> None:
    reply = ask(f"outdoors place:{place} animal:bearded dragon", anyone)
    assert reply.status == "problem"
    assert reply.answer.startswith("Never: no glass or plastic box in the sun")
    assert "UV" in reply.answer


@pytest.mark.parametrize(
    ("words", "latitude", "month", "hour"),
    [
        (
            "how strong is the sun outside for my beardie at latitude 40N in june",
            "40",
            "June",
            None,
        ),
        ("is the uv ok outdoors at 33S in january at 9am for a tegu", "33", "January", time(9)),
        ("when can my hermanns go outside, 45 north, in may", "45", "May", None),
    ],
)
def test_place_month_and_hour_are_heard(
    words: str, latitude: str, month: str, hour: time | None, anyone: Preferences
) -> None:
    reply = ask(words, anyone)
    told = everything(reply)
    assert reply.command == "outdoors"
    assert latitude in told
    assert month in told
    assert (hour is None) == ("At 0" not in told)


def test_it_is_heard_in_german() -> None:
    line = "wie stark ist die Sonne draußen im Juni bei 50N für meine Bartagame"
    assert ask(line, GERMAN).command == "outdoors"


def test_may_alone_is_no_month(anyone: Preferences) -> None:
    assert ask("may i take my beardie outside", anyone).command != "outdoors"


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("outdoors", "I still need latitude"),
        ("outdoors latitude:95N month:June", "from 0 to 90 degrees"),
        ("outdoors latitude:40N month:Juin", "June"),
        ("outdoors latitude:40N month:June animal:dragon of komodo land", "animal"),
        ("outdoors latitude:40N month:June hour:25:00", "hour"),
    ],
)
def test_what_cannot_be_read_is_told_with_an_example(
    line: str, told: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert told in reply.answer


def test_a_young_animal_has_less_of_the_sun() -> None:
    line = "outdoors latitude:40N month:June animal:bearded dragon"
    kind, young = (ask(f"{line}{state}", Preferences()) for state in ("", " state:young"))
    assert kind.rows != young.rows
    assert any("half the UV" in line.text for line in young.brief)
