"""When the lights go on and off: twelve hours all year, or the seasons of a latitude."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, time
from zoneinfo import ZoneInfo

from bot.answers.animals import known_by
from bot.answers.figures import hours, number
from bot.answers.heat_parts import HEAT_CAUTIONS, Kept, kept_named
from bot.answers.hours_night import at_night, burns_at_night, clock
from bot.answers.hours_picture import year_picture
from bot.answers.linking import page_links, source_lines
from bot.answers.verdicts import verdict_word
from bot.dangers.past_limits import alarms_past
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.queries.day import Home, HoursQuery
from bot.reply import Picture, Reply, Row, Table, Value
from calc.animals import Target
from calc.daylight import DayKind
from calc.judgement import judge_value, with_doubt
from calc.limits import Met, limits_of
from calc.quantities import Quantity
from calc.timer import LONGEST_H, SHORTEST_H, LightMonth, LightTimes, flat_times, month_plan
from calc.uncertainty import Estimate

__all__ = ["answer_hours"]

_GUIDE = ("day-length", "nights")
_MONTHS = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)
_TIMER = (
    "Put the UV tube and the basking lamp on one timer that can bear the watts of both.",
    "At night everything that shines is off: a dark night is part of the day.",
)
_CAUTIONS = (
    "More hours do not make up for a weak tube, and lights on all night do harm.",
    *HEAT_CAUTIONS[1:],
)
_SEASON_SOURCES = ("meeus1998", "usno1990", "iana_tz", "day_bound", "common_practice")
_HALF_QUARTER_H = 0.125
_HOUR_S = 3600.0
_SIMPLE = "12 hours on, 12 hours off, all year (common practice, no source)"
_DAY_MIN, _HALF_DAY_MIN = 24 * 60, 12 * 60


def answer_hours(query: HoursQuery, context: Context) -> Reply:
    """Answer with a flat day, or with a plan for each month where a latitude is given."""
    if query.latitude is None:
        return _flat(query, kept_named(query.animal, context), context)
    if not isinstance(query.latitude, Home):
        # A place has its seasons whoever lives there: the animal is not asked for.
        return _seasons(_Sky(query.latitude, _degrees(query.latitude), ()), query, context)
    return _seasons(_home_sky(kept_named(query.animal, context)), query, context)


def _flat(query: HoursQuery, kept: Kept, context: Context) -> Reply:
    target = kept.animal.light_hours
    told = _times_told(query)
    times = told or (flat_times() if query.on is None else flat_times(on=query.on))
    met = Met(light_s=times.hours * _HOUR_S)
    alarms = alarms_past(limits_of(kept.animal), met)
    # Where it is light all day, what is done about that comes first.
    night = burns_at_night(times) and not alarms
    rows = [Row(label="The simple answer", text=_SIMPLE)]
    if target is not None and target.low < target.high:
        text = f"{_span(target)} over the year for {kept.whom} ({known_by(target)})"
        rows.append(Row(label="Keepers use", text=text))
    low, high = (12.0, 12.0) if target is None else (target.low, target.high)
    values = [Value(name="light", low=min(low, 12.0), best=12.0, high=max(high, 12.0), unit="h")]
    if told:
        values.append(Value.of("light_told", Estimate.exact(told.hours), "h"))
    first = _judged(told, kept) if told else ""
    return Reply(
        command="hours",
        status="ok",
        title=f"Hours of light for {kept.whom}",
        answer=f"{first}{at_night(times, kept) if night else _fine(told, times, kept)}",
        values=tuple(values),
        rows=(*rows, *_unused_rows(query)),
        steps=(
            "Set a timer once, at hours that suit your own day, and keep them at weekends too.",
            *_TIMER,
            (
                "Want seasons? Ask hours with latitude:home and your zone, such as "
                "zone:America/Chicago."
            ),
        ),
        alarms=alarms,
        cautions=_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines(("common_practice", *([target.source] if target else []))),
    )


def _fine(told: LightTimes | None, times: LightTimes, kept: Kept) -> str:
    fine = f"12 hours on and 12 hours off, all year, is a fine answer for {kept.whom}"
    if told:
        return f"{fine}."
    return f"{fine}: on at {clock(times.on)}, off at {clock(times.off)}, UV and heat together."


def _times_told(query: HoursQuery) -> LightTimes | None:
    """Return the keeper's own times, where it was told when the lights go off."""
    if query.off is None:
        return None
    off = _minutes(query.off)
    on = (off - _HALF_DAY_MIN) % _DAY_MIN if query.on is None else _minutes(query.on)
    lit = (off - on) % _DAY_MIN or _DAY_MIN
    return LightTimes(time(on // 60, on % 60), query.off, lit / 60.0)


def _judged(told: LightTimes, kept: Kept) -> str:
    """Return how the keeper's own hours are, by the one judgement."""
    lit = f"{clock(told.on)} to {clock(told.off)} is {hours(told.hours)} of light"
    target = kept.animal.light_hours
    if target is None:
        return f"{lit}; no target for {kept.whom} is known here. "
    read = with_doubt(Quantity.LIGHT_HOURS, told.hours)
    judged = judge_value(Quantity.LIGHT_HOURS, read, target.low, target.high)
    return f"{lit}: {verdict_word(judged)}, wanted {_span(target)}. "


def _span(target: Target) -> str:
    ends = dict.fromkeys(number(end, 0.25) for end in (target.low, target.high))
    return f"{' to '.join(ends)} h"


@dataclass(frozen=True, slots=True)
class _Sky:
    """Whose seasons: the latitude [degree], in words, and where it is from."""

    latitude_deg: float
    whose: str
    sources: tuple[str, ...]


def _home_sky(kept: Kept) -> _Sky:
    home = kept.animal.home_latitude_deg
    if home is None:
        raise NotUnderstoodError(
            "home", f"a latitude, because the home of {kept.whom} is not known here", "latitude:30S"
        )
    whose = f"{_degrees(home.aim)}, the middle of where {kept.whom} comes from"
    return _Sky(home.aim, whose, (home.source,))


def _seasons(sky: _Sky, query: HoursQuery, context: Context) -> Reply:
    latitude, whose = sky.latitude_deg, sky.whose
    zone = query.zone or ZoneInfo("UTC")
    year = query.year or datetime.now(UTC).year
    turned = query.months == "turned"
    plan = month_plan(latitude, zone, year, half_year_later=turned)
    longest = max(plan, key=lambda month: month.times.hours)
    shortest = min(plan, key=lambda month: month.times.hours)
    return Reply(
        command="hours",
        status="ok",
        title=f"The light of {whose}, month by month",
        answer=(
            f"{_from_to(shortest, longest)}, as in the table; a steady 12 hours is just as good "
            "for a beginner."
        ),
        values=tuple(
            Value(
                name=f"light_{month.month:02d}",
                low=month.times.hours - _HALF_QUARTER_H,
                best=month.times.hours,
                high=month.times.hours + _HALF_QUARTER_H,
                unit="h",
            )
            for month in plan
        ),
        rows=_season_rows(query, plan, zone, latitude),
        table=Table(
            columns=("Month", "Lights", "On", "Off", "Day outside there"),
            rows=tuple(_table_row(month) for month in plan),
        ),
        steps=(
            "Change the timer once a month, to the row of the month.",
            *_TIMER,
            (
                "Seasons can change appetite and start breeding or a winter rest. If you are not "
                "ready for that, stay with 12 hours."
            ),
        ),
        cautions=_CAUTIONS,
        guide=page_links(_GUIDE, context.guide_url),
        sources=source_lines((*sky.sources, *_SEASON_SOURCES)),
        picture=Picture.later(year_picture, f"The light of {whose}", latitude, year, plan, turned),
    )


def _from_to(shortest: LightMonth, longest: LightMonth) -> str:
    if shortest.times.hours == longest.times.hours:
        return f"{hours(longest.times.hours)} in every month"
    return (
        f"From {hours(shortest.times.hours)} in {_MONTHS[shortest.month - 1]} to "
        f"{hours(longest.times.hours)} in {_MONTHS[longest.month - 1]}"
    )


def _unused_rows(query: HoursQuery) -> Iterator[Row]:
    """Return what was typed and changes nothing."""
    unused = [name for name in ("zone", "months", "year") if name in query.model_fields_set]
    if unused:
        told = f"{' and '.join(unused)}: it counts only with a latitude, such as latitude:home"
        yield Row(label="Not used", text=told)


def _season_rows(
    query: HoursQuery, plan: tuple[LightMonth, ...], zone: ZoneInfo, latitude: float
) -> tuple[Row, ...]:
    bound = f"never shorter than {number(SHORTEST_H)} h nor longer than {number(LONGEST_H)} h"
    rows = [
        Row(
            label="Latitude",
            text=f"{_degrees(latitude)}; south of the equator write it with S, such as 30S",
        ),
        Row(label="Bound", text=f"{bound}, whatever the sky does; that limit is our own"),
        Row(label="Day", text="sunrise to sunset, the mean of each month; twilight not counted"),
        Row(label="Clock", text=_clock_text(query, plan, zone)),
    ]
    if query.months == "turned":
        told = "turned by half a year, so that its summer falls in the other half of the calendar"
        rows.append(Row(label="Seasons", text=told))
    elif latitude < 0:
        told = "of the southern half of the earth: summer is in December. months:turned swaps them"
        rows.append(Row(label="Seasons", text=told))
    clocks = [name for name in ("on", "off") if getattr(query, name) is not None]
    if clocks:
        named = " and ".join(clocks)
        told = f"{named}: seasonal lights are centred on noon, so that they follow the sun"
        rows.append(Row(label="Not used", text=told))
    polar = [_MONTHS[month.month - 1] for month in plan if month.kind is not DayKind.ORDINARY]
    if polar:
        when = "all year" if len(polar) == len(_MONTHS) else f"in {', '.join(polar)}"
        told = f"{when} the sun there never sets or never rises; the bound holds"
        rows.append(Row(label="Polar", text=told))
    return tuple(rows)


def _clock_text(query: HoursQuery, plan: tuple[LightMonth, ...], zone: ZoneInfo) -> str:
    if query.zone is None:
        return (
            "no time zone given, so these are standard times all year: move the timer by an hour "
            "when your clocks change, or ask with zone:America/Chicago"
        )
    changes = [f"{month.clocks_change:%Y-%m-%d}" for month in plan if month.clocks_change]
    if not changes:
        return f"{zone.key}, where the clocks do not change"
    return (
        f"{zone.key}; the clocks change on {' and '.join(changes)}, and the times hold for the "
        "middle of each month"
    )


def _table_row(month: LightMonth) -> tuple[str, ...]:
    times: LightTimes = month.times
    return (
        _MONTHS[month.month - 1],
        hours(times.hours),
        clock(times.on),
        clock(times.off),
        hours(month.daylight_h),
    )


def _minutes(moment: time) -> int:
    return 60 * moment.hour + moment.minute


def _degrees(latitude: float) -> str:
    side = "S" if latitude < 0 else "N"
    return f"{number(abs(latitude), 0.5)}° {side}"
