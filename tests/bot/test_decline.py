"""The decline question: a trend and its dates, or what few readings and an age can say."""

from datetime import date

import pytest

from bot.ask import ask
from bot.drawing import Chart
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.reply import Reply, Value

FADING = "2026-01-03 5.2, 2026-03-01 4.6, 2026-05-02 4.1, 2026-07-02 3.6"
DRAGON = "animal:bearded dragon"


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def test_a_fading_tube_gets_a_date_between_two_others(anyone: Preferences) -> None:
    reply = ask(f"decline readings:{FADING} {DRAGON}", anyone)
    assert reply.status == "ok"
    assert "fading by about 6 % a month" in reply.answer
    falls = value(reply, "falls_below_in")
    assert falls.low < falls.best < falls.high
    # By hand: ln(5.2/3.6)/180 d; from 3.6 down to 3.0 takes about 89 days more.
    assert falls.best / 24 == pytest.approx(89, abs=6)
    assert "October 2026" in reply.answer


def test_the_order_and_the_way_of_writing_dates_do_not_matter(anyone: Preferences) -> None:
    turned = "2 May 2026: 4.1; July 2, 2026 3.6; 2026-01-03 5.2; 1 March 2026 4.6"
    assert (
        ask(f"decline readings:{turned} {DRAGON}", anyone).values
        == ask(f"decline readings:{FADING} {DRAGON}", anyone).values
    )


def test_a_change_within_repeatability_is_no_fading(anyone: Preferences) -> None:
    reply = ask(f"decline readings:2026-01-03 4.4, 2026-03-01 4.5, 2026-06-02 4.3 {DRAGON}", anyone)
    assert "No fading can be told" in reply.answer
    assert not [v for v in reply.values if v.name == "falls_below_in"]


@pytest.mark.parametrize(
    ("readings", "told"),
    [
        ("2026-01-03 4.2", "only one day was read"),
        ("2026-01-03 4.2, 2026-03-01 4.1", "no more than they repeat to"),
        ("2026-01-03 6.2, 2026-03-01 4.1", "more than readings repeat to"),
    ],
)
def test_few_readings_say_what_they_can(readings: str, told: str, anyone: Preferences) -> None:
    reply = ask(f"decline readings:{readings} {DRAGON}", anyone)
    assert "too few" in reply.answer
    assert told in reply.answer


def test_a_tube_already_below_is_told_first(anyone: Preferences) -> None:
    reply = ask(f"decline readings:2026-01-03 3.2, 2026-03-01 2.4, 2026-05-01 1.9 {DRAGON}", anyone)
    assert "already below" in reply.answer
    assert value(reply, "read_again_in").best == pytest.approx(14 * 24)


def test_rising_readings_are_doubted(anyone: Preferences) -> None:
    reply = ask(f"decline readings:2026-01-03 3.2, 2026-03-01 4.4, 2026-05-01 5.6 {DRAGON}", anyone)
    assert "rise" in reply.answer


@pytest.mark.parametrize(
    ("age", "told"),
    [
        ("3 days", "It is new"),
        ("3 months", "need not be replaced"),
        ("8 months", "many keepers replace it"),
        ("2 years", "past the age"),
    ],
)
def test_without_a_meter_the_age_is_common_practice(
    age: str, told: str, anyone: Preferences
) -> None:
    reply = ask(f"decline age:{age}", anyone)
    assert told in reply.answer
    assert "6 to 12 months" in reply.answer
    kinds = {source.key: source.kind for source in reply.sources}
    assert kinds["uv_replace_ages"] == "common practice"


@pytest.mark.parametrize(
    ("lamp", "told"),
    [
        ("T8", "a T8 or other tube after about 6 months"),
        ("coil", "a compact lamp after about 6 months"),
        ("mvb", "a mercury vapour lamp after 6 to 12 months"),
        ("metal halide", "a metal halide lamp after about 12 months"),
        ("LED", "its age tells nothing"),
    ],
)
def test_other_lamps_are_told_what_is_known_of_them(
    lamp: str, told: str, anyone: Preferences
) -> None:
    reply = ask(f"decline lamp:{lamp} age:8 months", anyone)
    assert told in reply.answer
    kinds = {source.key: source.kind for source in reply.sources}
    assert kinds["uv_replace_ages_others"] == "memory"
    assert "uv_replace_ages" not in kinds


def test_a_t8_tube_of_eight_months_is_past_its_age(anyone: Preferences) -> None:
    assert "past the age" in ask("decline lamp:T8 age:8 months", anyone).answer


@pytest.mark.parametrize("readings", ["2099-01-01 4.2", "2026-01-03 4.2, 2098-12-31 4"])
def test_a_day_that_is_not_here_yet_is_refused(readings: str, anyone: Preferences) -> None:
    reply = ask(f"decline readings:{readings} {DRAGON}", anyone)
    assert reply.status == "problem"
    assert "days that have been" in reply.answer
    assert "209" in reply.answer
    example = reply.answer.rpartition("for example ")[2].removesuffix(".")
    assert ask(f"decline {example} {DRAGON}", anyone).status == "ok"


@pytest.mark.parametrize("line", ["decline", f"decline {DRAGON}"])
def test_without_meter_and_age_it_still_tells_the_common_practice(
    line: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    assert reply.status == "ok"
    assert "6 to 12 months" in reply.answer
    assert not [v for v in reply.values if v.name == "age"]


def test_readings_need_no_name_before_them(anyone: Preferences) -> None:
    named = ask(f"decline readings:{FADING} {DRAGON}", anyone)
    assert ask(f"decline {FADING} {DRAGON}", anyone) == named


def test_a_tube_above_the_range_is_told_first_however_it_fades(anyone: Preferences) -> None:
    reply = ask(f"decline readings:2026-01-03 9, 2026-03-01 8.6, 2026-05-02 8.1 {DRAGON}", anyone)
    assert "It is above the wanted 3 to 5" in reply.answer
    assert [(danger.key, danger.urgency) for danger in reply.dangers] == [
        ("uv_too_strong", "today")
    ]
    assert any("how far away" in step for step in reply.steps)


def test_the_picture_names_the_day_it_is_below(anyone: Preferences) -> None:
    reply = ask(f"decline readings:{FADING} {DRAGON}", anyone)
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Chart)
    (mark,) = reply.picture.drawing.marks
    assert mark.label.startswith("below UVI 3: ")
    assert mark.label.endswith(" 2026")
    assert mark.label.removeprefix("below UVI 3: ") in reply.answer


@pytest.mark.parametrize(
    "line",
    [
        f"decline readings:{FADING}",
        f"decline readings:{FADING} uvi:0-1",
        "decline readings:03/04/2026 4.2 animal:bearded dragon",
        "decline readings:2026-02-30 4.2 animal:bearded dragon",
        "decline readings:2026-01-03 0 animal:bearded dragon",
        "decline readings:4.2 at 12 in animal:bearded dragon",
    ],
)
def test_what_cannot_be_answered_is_refused(line: str, anyone: Preferences) -> None:
    assert ask(line, anyone).status == "problem"


@pytest.mark.parametrize("readings", [FADING, "2026-01-03 4.2", "2026-01-03 4.2, 2026-03-01 4.1"])
def test_the_picture_shows_every_reading_and_can_be_drawn(
    readings: str, anyone: Preferences
) -> None:
    reply = ask(f"decline readings:{readings} {DRAGON}", anyone)
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Chart)
    assert len(drawing.points) == readings.count("2026-")
    assert drawing.points[0].x == date(2026, 1, 3).toordinal()
    assert len(reply.picture.alt) <= 1024
    assert draw(drawing).startswith(b"\x89PNG")
