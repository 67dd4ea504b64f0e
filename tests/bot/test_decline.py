"""The decline question: a trend and its dates, or what few readings and an age can say."""

from dataclasses import replace
from datetime import date, timedelta
from math import inf

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.ask import ask
from bot.drawing import Chart
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.reply import Reply, Value
from tests.some import some

FADING = "2026-01-03 5.2, 2026-03-01 4.6, 2026-05-02 4.1, 2026-07-02 3.6"
DRAGON = "animal:bearded dragon"


LAST_READ = date(2026, 7, 2)


def on(day: date, line: str) -> Reply:
    """Return the answer of a day."""
    return ask(line, replace(Preferences(), today=day))


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def test_a_fading_tube_gets_a_date_between_two_others() -> None:
    reply = on(LAST_READ, f"decline readings:{FADING} {DRAGON}")
    assert reply.status == "ok"
    assert "fades by about 6 % a month" in reply.answer
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
    assert "no fading yet" in reply.answer
    assert not [v for v in reply.values if v.name == "falls_below_in"]


@pytest.mark.parametrize(
    ("readings", "told"),
    [
        ("2026-01-03 4.2", "Only one day was read"),
        ("2026-01-03 4.2, 2026-03-01 4.1", "no real change"),
        ("2026-01-03 6.2, 2026-03-01 4.1", "a real change"),
    ],
)
def test_few_readings_say_what_they_can(readings: str, told: str, anyone: Preferences) -> None:
    reply = ask(f"decline readings:{readings} {DRAGON}", anyone)
    assert "too few" in reply.answer
    assert told in reply.answer


def test_a_tube_already_below_is_told_first() -> None:
    below = "2026-01-03 3.2, 2026-03-01 2.4, 2026-05-01 1.9"
    reply = on(date(2026, 5, 1), f"decline readings:{below} {DRAGON}")
    assert reply.answer.startswith("Too weak: UV index")
    assert value(reply, "read_again_in").best == pytest.approx(14 * 24)


def test_rising_readings_are_doubted(anyone: Preferences) -> None:
    reply = ask(f"decline readings:2026-01-03 3.2, 2026-03-01 4.4, 2026-05-01 5.6 {DRAGON}", anyone)
    assert "rose" in reply.answer


@pytest.mark.parametrize(
    ("age", "told"),
    [
        ("3 days", "it is new"),
        ("3 months", "need not be replaced"),
        ("8 months", "many keepers replace it"),
        ("2 years", "past its age"),
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
        ("LED", "tells nothing"),
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
    assert "past its age" in ask("decline lamp:T8 age:8 months", anyone).answer


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
    assert "Too strong: UV index" in reply.answer
    assert [(danger.key, danger.urgency) for danger in reply.dangers] == [
        ("uv_too_strong", "today")
    ]
    assert any("how far away" in step for step in reply.steps)


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


def test_a_day_that_is_past_is_already() -> None:
    later = on(date(2026, 11, 28), f"decline readings:{FADING} {DRAGON}")
    assert "Maybe below 3 since 1 October 2026" in later.answer
    assert value(later, "falls_below_in").best < 0.0
    assert value(later, "read_again_in").best == 0.0
    assert value(later, "uvi_today").best < 3.0 < value(later, "uvi").best


def test_the_day_moves_the_figures_and_not_the_date() -> None:
    line = f"decline readings:{FADING} {DRAGON}"
    then, later = on(LAST_READ, line), on(LAST_READ + timedelta(days=30), line)
    falls = [value(reply, "falls_below_in").best / 24 for reply in (then, later)]
    assert falls[0] - falls[1] == pytest.approx(30.0)
    for reply in (then, later):
        assert "October 2026" in reply.answer


def test_readings_that_are_too_old_say_nothing_of_today() -> None:
    reply = on(LAST_READ + timedelta(days=1000), f"decline readings:{FADING} uvi:0.5-1")
    assert "say nothing of today" in reply.answer
    assert not [v for v in reply.values if v.name == "uvi_today"]


@given(
    st.lists(
        st.tuples(st.dates(date(2020, 1, 1), date(2026, 6, 1)), st.floats(0.1, 60.0)),
        min_size=1,
        max_size=6,
    ),
    st.integers(0, 900),
)
@settings(max_examples=some(60), deadline=None)
def test_the_next_reading_is_never_past(seen: list[tuple[date, float]], later: int) -> None:
    typed = ", ".join(f"{day} {uvi:.2f}" for day, uvi in seen)
    today = max(day for day, _ in seen) + timedelta(days=later)
    reply = on(today, f"decline readings:{typed} {DRAGON}")
    assert reply.status == "ok"
    assert value(reply, "read_again_in").best >= 0.0
    again = next(r.text for r in reply.rows if r.label == "Read again")
    assert "if that is past" not in again
    assert again.startswith("today") == (value(reply, "read_again_in").best < 12.0)


def test_a_late_end_that_is_open_is_a_value_and_null_in_json() -> None:
    slow = "2026-01-03 4.4, 2026-03-01 4.0, 2026-05-02 3.7"
    reply = on(date(2026, 5, 2), f"decline readings:{slow} {DRAGON}")
    assert "at the earliest" in reply.answer
    falls = value(reply, "falls_below_in")
    assert falls.high == inf
    told = reply.model_dump_json()
    assert '"high":null' in told
    assert "Infinity" not in told
    assert value(Reply.model_validate_json(told), "falls_below_in") == falls


@pytest.mark.parametrize(
    ("readings", "first"),
    [
        ("2026-04-01 4.4, 2026-04-08 2.0", "UVI 4.4 to 2 in 7 days is too fast"),
        ("2026-03-01 3.4, 2026-05-01 4.7", "It rose from UVI 3.4 to UVI 4.7"),
        ("2026-03-01 4.4, 2026-03-01 6.1, 2026-05-01 4.2", "You read both UVI 4.4 and UVI 6.1"),
        ("2026-03-01 4.2, 2026-05-01 0.4", "UVI 4.2 and UVI 0.4 are ten times apart"),
        ("2026-01-01 4.4, 2026-03-01 4.2, 2026-05-01 0.41", "UVI 0.41 on 1 May 2026 is a tenth"),
    ],
)
def test_what_no_tube_does_is_named_before_any_figure(readings: str, first: str) -> None:
    reply = on(LAST_READ, f"decline readings:{readings} {DRAGON}")
    assert reply.answer.removeprefix("These readings cannot all be right. ").startswith(first)
    assert any("Read again today" in line.text for line in reply.brief)
    assert not [v for v in reply.values if v.name in ("falls_below_in", "month_factor")]
    assert "fades by" not in reply.answer
    assert reply.steps[0].startswith("Wipe the sensor")


def test_a_last_reading_that_may_have_lost_its_point_is_taken_for_a_danger_all_the_same() -> None:
    reply = on(LAST_READ, f"decline readings:2026-03-01 4.2, 2026-05-01 42 {DRAGON}")
    assert [danger.key for danger in reply.dangers] == ["uv_too_strong"]
    assert "are ten times apart" in reply.answer


def test_a_lost_point_among_good_readings_is_named_and_left_out() -> None:
    slipped = FADING.replace("4.6", "46")
    reply = on(LAST_READ, f"decline readings:{slipped} {DRAGON}")
    assert reply.answer.startswith("UVI 46 on 1 March 2026 is ten times the others. Was it 4")
    good = ", ".join(one for one in FADING.split(", ") if "4.6" not in one)
    without = on(LAST_READ, f"decline readings:{good} {DRAGON}")
    assert reply.values == without.values
    assert without.brief[0].text in reply.answer
