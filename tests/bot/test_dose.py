"""The dose question: the arithmetic of a day, the sun beside it, and people."""

import re

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply, Value


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def test_the_dose_is_nine_tenths_of_uvi_times_hours(anyone: Preferences) -> None:
    # 0.9 UVI t, from 0.025 W/m² a UVI and 100 J/m² a SED (CIE 17-26-073, CIE 125).
    assert value(ask("dose uvi:4 hours:10", anyone), "dose_sed").best == pytest.approx(36.0)
    spread = value(ask("dose uvi:3-5 hours:10", anyone), "dose_sed")
    assert (spread.low, spread.high) == pytest.approx((27.0, 45.0))


@pytest.mark.parametrize("hours", ["10", "10 hours", "10h", "600 min"])
def test_hours_are_read_with_and_without_a_unit(hours: str, anyone: Preferences) -> None:
    assert value(ask(f"dose uvi:4 hours:{hours}", anyone), "dose_sed").best == pytest.approx(36.0)


def test_people_reach_the_limit_when_the_directive_says(anyone: Preferences) -> None:
    # 30 J/m² over 0.64 of the erythemal irradiance: 1875 s at UVI 1.
    reply = ask("dose uvi:3 hours:10", anyone)
    assert value(reply, "people_hours_at_spot").best * 3600 == pytest.approx(625.0)
    assert "at most 10 min" in reply.answer
    assert any("Never look" in caution for caution in reply.cautions)
    assert any("290 nm" in caution for caution in reply.cautions)
    assert any("290 nm" in line.text for line in reply.brief)


def test_arm_s_length_is_told_where_the_distance_is_known(anyone: Preferences) -> None:
    reply = ask("dose uvi:4 hours:10 distance:60cm", anyone)
    assert value(reply, "uvi_at_arm").best == pytest.approx(4.0)
    near = ask("dose uvi:4 hours:10 distance:30cm", anyone)
    assert value(near, "uvi_at_arm").best < 2.0
    assert not [v for v in ask("dose uvi:4 hours:10", anyone).values if v.name == "uvi_at_arm"]


def test_the_sun_stands_beside_it(anyone: Preferences) -> None:
    reply = ask("dose uvi:4 hours:10 latitude:27S month:December", anyone)
    assert value(reply, "sun_noon_uvi").best == pytest.approx(12.4, abs=0.2)
    assert "27° S, December" in " ".join(row.text for row in reply.rows)
    assert "madronich2007" in {source.key for source in reply.sources}


def test_the_polar_night_is_no_stumbling_block(anyone: Preferences) -> None:
    reply = ask("dose uvi:4 hours:10 latitude:80N month:December", anyone)
    assert reply.status == "ok"
    assert value(reply, "sun_dose_sed").best == 0.0


def test_a_weak_spot_gives_people_the_whole_day(anyone: Preferences) -> None:
    assert "all of an 8 h workday" in ask("dose uvi:0.06 hours:10", anyone).answer


@pytest.mark.parametrize(
    "line",
    [
        "dose uvi:4",
        "dose hours:4",
        "dose uvi:0 hours:4",
        "dose uvi:4 hours:0",
        "dose uvi:4 hours:25",
        "dose uvi:4 hours:3 days",
        "dose uvi:4 hours:4 latitude:40N",
        "dose uvi:4 hours:4 month:June",
        "dose uvi:4 hours:4 latitude:95 month:June",
        "dose uvi:4 hours:4 latitude:40N month:13",
    ],
)
def test_what_cannot_be_answered_is_refused(line: str, anyone: Preferences) -> None:
    assert ask(line, anyone).status == "problem"


def test_without_a_length_arm_s_length_counts_for_the_worst_tube(anyone: Preferences) -> None:
    unknown = value(ask("dose uvi:4 hours:10 distance:14in", anyone), "uvi_at_arm").best
    lengths = ("549mm", "849mm", "1149mm", "1449mm")
    known = [
        value(ask(f"dose uvi:4 hours:10 distance:14in length:{each}", anyone), "uvi_at_arm").best
        for each in lengths
    ]
    assert unknown == pytest.approx(max(known))
    assert max(known) > 1.1 * min(known)


def test_more_than_any_sun_gives_is_an_alarm_and_no_dose(anyone: Preferences) -> None:
    reply = ask("dose uvi:40 hours:4", anyone)
    assert [(danger.key, danger.urgency) for danger in reply.dangers] == [("uv_too_strong", "now")]
    assert "up to 20" in reply.answer
    assert reply.values == ()


@pytest.mark.parametrize("month", ["December", "January", "March", "June"])
@pytest.mark.parametrize("latitude", ["0", "45N", "60N", "66N", "70N", "89N"])
def test_no_sun_makes_a_figure_that_says_nothing(
    latitude: str, month: str, anyone: Preferences
) -> None:
    told = ask(f"dose uvi:4 hours:10 latitude:{latitude} month:{month}", anyone).answer
    assert ("next to nothing" in told) is not ("of midday" in told)
    assert all(float(figure) < 1000 for figure in re.findall(r"\d+", told))


def test_a_dose_is_told_as_time_in_the_midday_sun(anyone: Preferences) -> None:
    # Exact: UVI 4 for 10 h is UVI 10 for 4 h.
    assert "4 hours of midday summer sun" in ask("dose uvi:4 hours:10", anyone).answer
    assert "96 min of midday summer sun" in ask("dose uvi:4 hours:4", anyone).answer
    reply = ask("dose uvi:4 hours:10 latitude:27S month:December", anyone)
    low, noon, high = (getattr(value(reply, "sun_noon_uvi"), e) for e in ("low", "best", "high"))
    rows = " ".join(row.text for row in reply.rows)
    told = re.search(r"([\d.]+) \(([\d.]+) to ([\d.]+)\) hours of midday", rows)
    assert told is not None
    wanted = [40.0 / uvi for uvi in (noon, high, low)]
    assert [float(figure) for figure in told.groups()] == pytest.approx(wanted, abs=0.25)


@pytest.mark.parametrize("uvi", ["0.1", "0.5", "1.1", "2.7", "3", "4", "7", "11", "19"])
def test_no_one_is_told_to_stay_longer_than_the_limit(uvi: str, anyone: Preferences) -> None:
    told = re.search(
        r"at most (?:(\d+) h)?\s?(?:(\d+) min)?", ask(f"dose uvi:{uvi} hours:8", anyone).answer
    )
    assert told is not None
    minutes = 60 * int(told[1] or 0) + int(told[2] or 0)
    # 30 J/m² over 0.64 of the erythemal irradiance, UVI / 40 W/m².
    allowed = 30.0 / (0.64 * float(uvi) / 40.0) / 60.0
    assert allowed - 1.0 < minutes <= allowed
